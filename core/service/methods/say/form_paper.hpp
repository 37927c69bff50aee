// A form on paper (form.write): one HTML document for A4, from what form.describe describes, so that both ask the same. Two columns
// of steps; RIGHT stands left of LEFT in every position, and each box carries its word. Blanks for measured values, words to ring for
// the others, a letter for why something was not done. Title, person and the key of
// marks and grades stand on each sheet; one sheet where the steps allow it. It runs and loads nothing.
#pragma once

#include "core/report/words/words.hpp"
#include "core/service/methods/say/form.hpp"

#include <string>

namespace limbledger::service {

[[nodiscard]] std::string form_paper(const reference::Edition& edition, const FormDescribeResult& form, const report::Words& words,
                                     const std::string& banner);

}  // namespace limbledger::service

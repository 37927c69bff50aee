// The words of a form in the language that was asked for, beside the names: labels of items, choices, positions, sides, reasons.
#pragma once

#include "core/report/words/words.hpp"
#include "core/service/methods/say/form.hpp"

namespace limbledger::service {

void add_form_texts(const report::Words& words, FormDescribeResult& form);

}  // namespace limbledger::service

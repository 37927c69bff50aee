// The words of a form, or of a part of the catalogue, in the language that was asked for, beside the names: every message that is named
// in it, and the words of its answers, sides and reasons.
#pragma once

#include "core/report/words/words.hpp"
#include "core/service/methods/say/form.hpp"

namespace limbledger::service {

void add_form_texts(const report::Words& words, FormDescribeResult& form);
// Of every message that is named anywhere in a reply of that type.
[[nodiscard]] std::vector<FormText> texts_named_in(const report::Words& words, const wire::Type& type, const void* reply);

}  // namespace limbledger::service

// Beside each fault a sentence for whoever is at the form: what is wrong and what to do, in the language that the call names. The hint
// stays what it is, for whoever makes the form. Nothing that was sent is repeated in it.
#pragma once

#include "core/reference/edition.hpp"
#include "core/report/words/words.hpp"
#include "core/wire/fault.hpp"
#include "core/wire/parse.hpp"
#include "core/wire/type.hpp"

#include <vector>

namespace limbledger::service {

// Nothing where there are no words. Of a call that writes nothing no sentence says that something was not recorded.
void add_fault_texts(const report::Words* words, const reference::Edition& edition, std::vector<wire::Fault>& faults, bool writes);
// The words of the language that these params name, by member or by place; null where they name none that is there.
[[nodiscard]] const report::Words* words_asked_for(const wire::Type& type, const wire::Document& document, const wire::Node* params);

}  // namespace limbledger::service

// What an entry that disagrees with another says, in words and whole: the value, the person, the reason as they were written, so that
// whoever decides needs no other page.
#pragma once

#include "core/ledger/fold/opened.hpp"
#include "core/report/words/words.hpp"
#include "core/service/context.hpp"
#include "core/service/methods/clinic/listed.hpp"

#include <string>

namespace limbledger::service {

// "gave the exam to Abena Nobody, born 1972. Reason: ..."; for a kind that holds nothing more to be said, what was done.
[[nodiscard]] std::string entry_in_words(Context& context, const ledger::Opened& entry, const report::Words& words);

}  // namespace limbledger::service

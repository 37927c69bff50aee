// What has come into an exam since one of its letters was written, in words, for the letter that corrects it (HC-066).
#pragma once

#include "core/report/page_parts.hpp"
#include "core/service/methods/exam/common.hpp"

#include <string>
#include <vector>

namespace limbledger::service {

[[nodiscard]] std::vector<std::string> changed_since_letter(const ledger::ExamRecord& record, const model::EntryId& letter, const report::PageView& view);

}  // namespace limbledger::service

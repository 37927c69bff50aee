// The only way into the interpretation: an exam as it stands, the person, the person's earlier exams and one edition of the
// facts in; statements out. Pure: no clock, no store, no words. Equal input gives equal bytes, whatever the order in which
// findings were entered; exchanging left and right exchanges the answer and changes nothing else.
#pragma once

#include "core/interpret/assess_ask.hpp"
#include "core/interpret/statement.hpp"
#include "core/model/exam/exam.hpp"
#include "core/model/person.hpp"
#include "core/reference/edition.hpp"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace limbledger::interpret {

[[nodiscard]] Assessment assess(const model::Exam& exam, const std::optional<model::Person>& person, std::span<const model::Exam> earlier,
                                const reference::Edition& edition, const AssessAsk& ask);

// The working of one statement ("motion.norm:knee.flexion_passive:left"), rule ("rule.ottawa_knee:left", or without the
// side where it ran once) or hypothesis ("condition.acl_tear:left"). Faults: statement.unknown.
[[nodiscard]] Result<Working> explain(const model::Exam& exam, const std::optional<model::Person>& person, std::span<const model::Exam> earlier,
                                      const reference::Edition& edition, const AssessAsk& ask, const model::StatementId& statement);

}  // namespace limbledger::interpret

#include "core/service/methods/say/assess.hpp"

namespace limbledger::service {

interpret::AssessAsk make_ask(const model::PartialDate& as_of, const std::optional<std::vector<wire::Name>>& only) {
  interpret::AssessAsk ask;
  ask.as_of = as_of;
  if (only) {
    for (const wire::Name& name : *only) {
      ask.only.push_back(name.text);
    }
  }
  return ask;
}

model::PartialDate day_of(const model::Exam& exam, const model::PartialDate& otherwise) {
  return exam.examined_at ? model::date_of(*exam.examined_at, exam.offset_min ? exam.offset_min->steps : 0) : otherwise;
}

}  // namespace limbledger::service

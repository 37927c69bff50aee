#include "core/service/methods/clinic/settled.hpp"

#include "core/report/brief/settled.hpp"
#include "core/service/methods/say/names.hpp"

namespace limbledger::service {

namespace {

[[nodiscard]] report::SettledIn words_of(Context& context, const report::Words& words, const model::Exam& exam) {
  return {words, *context.edition, [&context](const model::ExaminerId& id) { return examiner_in_words(context, id); }, exam.offset_min ? exam.offset_min->steps : 0};
}

}  // namespace

void add_settled_texts(Context& context, const report::Words& words, model::Exam& exam) {
  if (exam.settled) {
    for (model::Settled& one : *exam.settled) {
      one.text = wire::LongText{report::settled_text(words_of(context, words, exam), report::settled_about(words, one), one)};
    }
  }
  if (exam.findings) {
    for (model::Finding& finding : *exam.findings) {
      add_settled_texts(context, words, exam, finding);
    }
  }
}

void add_settled_texts(Context& context, const report::Words& words, const model::Exam& exam, model::Finding& finding) {
  if (!finding.settled) {
    return;
  }
  std::string what = report::item_label(words, *context.edition, finding.item);
  if (finding.side != model::Side::midline) {
    what += ", " + report::side_of(words, finding.side);
  }
  for (model::Settled& one : *finding.settled) {
    one.text = wire::LongText{report::settled_text(words_of(context, words, exam), what, one)};
  }
}

std::vector<model::Settled> settled_of_person(Context& context, const model::Exam& exam) {
  if (!exam.person) {
    return {};
  }
  const auto person = context.desk->records().person(*exam.person);
  return person ? (*person)->fold.settled : std::vector<model::Settled>{};
}

}  // namespace limbledger::service

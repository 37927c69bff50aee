#include "core/service/methods/letter/paper.hpp"

#include "core/service/desk.hpp"
#include "core/service/methods/clinic/queue.hpp"
#include "core/service/methods/clinic/settled.hpp"
#include "core/service/methods/exam/exam.hpp"
#include "core/service/methods/people/dates.hpp"

#include <algorithm>
#include <utility>

namespace limbledger::service {

Result<std::unique_ptr<Printed>> to_print(Context& context, const model::ExamId& exam, const report::Words& words, bool with_protected) {
  const auto record = exam_to_read(context, exam);
  if (!record) {
    return record.error();
  }
  auto printed = std::make_unique<Printed>();
  printed->judged = exam_to_judge(context, **record);
  ExamAssessParams ask;
  ask.exam = exam;
  ask.protected_ = with_protected;
  auto assessment = exam_assess(context, ask);
  if (!assessment) {
    return assessment.error();
  }
  printed->assessment = std::move(*assessment);
  const auto read = exam_read(context, {exam});
  if (!read) {
    return read.error();
  }
  printed->names.banner = banner_of(*context.desk, words);
  printed->names.now = now_if_right(context.desk->world().now());
  // What leaves the clinic does not even tell that there is something protected.
  printed->names.protected_note = with_protected ? report::ProtectedNote::shown : report::ProtectedNote::absent;
  if (read->names) {
    take_names(*read->names, words, printed->names);
  }
  printed->names.of_person = settled_of_person(context, printed->judged.exam);
  printed->names.undecided = undecided_of(context, printed->judged.exam, words, true);
  if (const auto& place = printed->judged.exam.place) {
    const auto places = context.desk->records().places();
    if (!places) {
      return places.error();
    }
    for (const ledger::PlaceFold& fold : *places) {
      if (fold.place.place == *place) {
        printed->telephones = fold.place.telephones.value_or(std::vector<model::Telephone>{});
      }
    }
  }
  printed->view = std::make_unique<report::PageView>(printed->judged.exam, printed->judged.person, printed->assessment, words, *context.edition, printed->names);
  return printed;
}

Result<bool> language_reviewed(Context& context, std::string_view language) {
  const auto places = context.desk->records().places();
  if (!places) {
    return places.error();
  }
  return std::any_of(places->begin(), places->end(), [&](const ledger::PlaceFold& fold) {
    const auto reviewed = fold.place.reviewed.value_or(std::vector<model::ReviewedLanguage>{});
    return std::any_of(reviewed.begin(), reviewed.end(), [&](const model::ReviewedLanguage& one) { return one.language.text == language; });
  });
}

}  // namespace limbledger::service

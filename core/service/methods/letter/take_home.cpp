#include "core/service/methods/letter/take_home.hpp"

#include "core/report/home/home.hpp"
#include "core/service/desk.hpp"
#include "core/service/methods/letter/paper.hpp"

namespace limbledger::service {

Result<TakeHomeWriteResult> take_home_write(Context& context, const TakeHomeWriteParams& params) {
  const auto words = language_known(params.language);
  if (!words) {
    return words.error();
  }
  const std::string language = params.language ? params.language->text : std::string(report::english);
  const auto reviewed = language_reviewed(context, language);
  if (!reviewed) {
    return reviewed.error();
  }
  const bool has_texts = (*words)->says_itself("msg.home.title");
  const bool invented_people = context.desk->kind() != LedgerKind::clinic;
  if (!*reviewed && !(invented_people && has_texts)) {
    return wire::Fault{"language.not_reviewed", "/language", "a language whose texts a named clinician has read"};
  }
  if (!has_texts) {
    return wire::Fault{"language.no_texts", "/language", std::string(report::english)};
  }
  const auto printed = to_print(context, params.exam, **words, false);
  if (!printed) {
    return printed.error();
  }
  const model::Exam& exam = (*printed)->judged.exam;
  if (exam.state == model::ExamState::withdrawn) {
    return wire::Fault{"exam.withdrawn", "/exam", "an exam that is not withdrawn"};
  }
  const report::HomeSheet home = report::home_sheet(*(*printed)->view, {(*printed)->telephones, *reviewed});
  TakeHomeWriteResult result{{report::sheet_text(home.sheet, **words)}, {report::sheet_html(home.sheet, **words)},
                             exam.revision.value_or(std::vector<model::EntryId>{}), {language}, std::nullopt, std::nullopt};
  if (!*reviewed) {
    result.for_review = true;
  }
  if (home.plan_later) {
    result.remarks = std::vector<model::Word>{{"plan_later"}};
  }
  if (home.left_out != 0) {
    result.left_out = wire::Count<1, 1000>{static_cast<std::int64_t>(home.left_out)};
  }
  return result;
}

}  // namespace limbledger::service

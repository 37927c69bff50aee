#include "core/service/methods/exam/note.hpp"

#include "core/report/page.hpp"
#include "core/service/desk.hpp"
#include "core/service/methods/clinic/queue.hpp"
#include "core/service/methods/clinic/settled.hpp"
#include "core/service/methods/exam/exam.hpp"
#include "core/service/methods/exam/watch.hpp"
#include "core/service/methods/people/dates.hpp"
#include "core/service/methods/say/texts.hpp"

namespace limbledger::service {

namespace {

constexpr std::string_view english = "en";

}  // namespace

Result<NoteWriteResult> note_write(Context& context, const NoteWriteParams& params) {
  const bool with_protected = params.protected_ && *params.protected_;
  if (params.language && params.language->text != english) {
    return wire::Fault{"params.unknown_word", "/language", std::string(english)};
  }
  if (with_protected && context.caller.scope != Scope::examiner) {
    return wire::Fault{"token.scope", "/protected", "a token of the scope examiner"};
  }
  const report::Words* words = report::built_in_words();
  if (words == nullptr) {
    return wire::Fault{"internal.failure", "", "words that load"};
  }
  const auto record = exam_to_read(context, params.exam);
  if (!record) {
    return record.error();
  }
  const ToJudge judged = exam_to_judge(context, **record);
  ExamAssessParams ask;
  ask.exam = params.exam;
  ask.protected_ = with_protected;
  const auto assessment = exam_assess(context, ask);
  if (!assessment) {
    return assessment.error();
  }
  const auto read = exam_read(context, {params.exam});
  if (!read) {
    return read.error();
  }
  report::PageNames names;
  // Who only looks on is not even told that there is a protected note.
  names.protected_note = with_protected                            ? report::ProtectedNote::shown
                         : context.caller.scope == Scope::examiner ? report::ProtectedNote::mentioned
                                                                   : report::ProtectedNote::absent;
  names.banner = banner_of(context.desk->kind(), *words);
  names.now = now_if_right(context.desk->world().now());
  if (read->names) {
    take_names(*read->names, *words, names);
  }
  names.of_person = settled_of_person(context, judged.exam);
  names.undecided = undecided_of(context, (*record)->fold.exam, *words, false);
  const report::Sheet sheet = report::exam_sheet(judged.exam, judged.person, *assessment, *words, *context.edition, names);
  NoteWriteResult result{{report::sheet_text(sheet, *words)}, {report::sheet_html(sheet, *words)}, read->revision, {std::string(english)}, std::nullopt};
  if (with_protected) {
    result.protected_ = true;
  }
  return result;
}

}  // namespace limbledger::service

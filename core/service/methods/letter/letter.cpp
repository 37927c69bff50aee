#include "core/service/methods/letter/letter.hpp"

#include "core/ledger/log/log.hpp"
#include "core/report/letter/letter.hpp"
#include "core/service/desk.hpp"
#include "core/service/methods/letter/changed.hpp"
#include "core/service/methods/letter/paper.hpp"
#include "core/wire/write.hpp"

#include <algorithm>

namespace limbledger::service {

namespace {

constexpr std::string_view consent_to_send = "consent.send";

// The letter as this request recorded it, also where the record has gone on since.
[[nodiscard]] const model::LetterBody* recorded_letter(const ledger::ExamRecord& record, const model::RequestId& request) {
  for (const ledger::Opened& opened : record.operations) {
    const auto* letter = std::get_if<model::LetterBody>(&opened.body());
    if (letter != nullptr && opened.operation().request == request) {
      return letter;
    }
  }
  return nullptr;
}

[[nodiscard]] const model::LetterBody* letter_body(const ledger::ExamRecord& record, const model::LetterId& id) {
  for (const ledger::Opened& opened : record.operations) {
    const auto* letter = std::get_if<model::LetterBody>(&opened.body());
    if (letter != nullptr && letter->letter == id) {
      return letter;
    }
  }
  return nullptr;
}

[[nodiscard]] const model::Letter* folded_letter(const model::Exam& exam, const model::LetterId& id) {
  if (!exam.letters) {
    return nullptr;
  }
  const auto at = std::find_if(exam.letters->begin(), exam.letters->end(), [&](const model::Letter& one) { return one.letter == id; });
  return at == exam.letters->end() ? nullptr : &*at;
}

[[nodiscard]] Result<const report::Words*> words_of_letters(const std::optional<model::Word>& language) {
  const auto words = language_known(language);
  if (words && *words != report::built_in_words()) {
    return wire::Fault{"language.no_texts", "/language", std::string(report::english)};
  }
  return words;
}

[[nodiscard]] Result<void> check_names(const ledger::ExamRecord& record, const LetterWriteParams& params) {
  if (params.plan_item) {
    const auto plan = record.fold.exam.plan.value_or(std::vector<model::PlanItem>{});
    const bool known = std::any_of(plan.begin(), plan.end(), [&](const model::PlanItem& item) {
      return item.plan_item == params.plan_item && item.kind == model::PlanKind::referral;
    });
    if (!known) {
      return wire::Fault{"plan.unknown", "/plan_item", "a referral of this exam's plan"};
    }
  }
  if (params.corrects && folded_letter(record.fold.exam, *params.corrects) == nullptr) {
    return wire::Fault{"letter.unknown", "/corrects", "a letter of this exam"};
  }
  const model::Letter* former = params.corrects ? folded_letter(record.fold.exam, *params.corrects) : nullptr;
  if (former != nullptr && former->protected_.value_or(false) != params.protected_.value_or(false)) {
    return wire::Fault{"letter.other_kind", "/corrects", "an open letter corrects an open one, a protected one a protected one"};
  }
  return {};
}

[[nodiscard]] Result<model::LetterPage> page_of_letter(Context& context, const ledger::ExamRecord& record, const LetterWriteParams& params,
                                                       const report::Words& words) {
  const bool is_private = params.protected_.value_or(false);
  const auto printed = to_print(context, params.exam, words, is_private);
  if (!printed) {
    return printed.error();
  }
  const report::PageView& view = *(*printed)->view;
  report::LetterAsk ask;
  ask.to = params.to ? std::optional(params.to->text) : std::nullopt;
  ask.question = params.question.text;
  ask.urgency = params.urgency;
  ask.protected_ = is_private;
  ask.telephones = (*printed)->telephones;
  if (params.corrects) {
    const model::Letter& former = *folded_letter(record.fold.exam, *params.corrects);
    ask.corrects = view.local(former.at);
    ask.changed = changed_since_letter(record, former.entry, view);
  }
  return report::letter_page(report::letter_sheet(view, ask));
}

[[nodiscard]] Result<void> may_be_written(Context& context, const ledger::ExamRecord& record, const LetterWriteParams& params) {
  if (record.unopened != 0) {
    return wire::Fault{"entry.seal", "/exam", "an exam whose entries all open"};
  }
  if (record.fold.unread != 0) {
    return wire::Fault{"format.newer", "/exam", "an exam that this edition can read whole"};
  }
  if (record.fold.exam.state == model::ExamState::withdrawn) {
    return wire::Fault{"exam.withdrawn", "/exam", "an exam that is not withdrawn"};
  }
  // A letter tells of what its writer was shown; what has come since is shown first.
  const std::vector<model::EntryId> heads = record.fold.exam.revision.value_or(std::vector<model::EntryId>{});
  if (auto shown = nothing_came_since(heads, seen_of(heads, params.seen, record.operations)); !shown) {
    return shown;
  }
  static_cast<void>(context);
  const auto& consent = record.fold.exam.consent;
  const bool refused = consent && consent->send && *consent->send != model::ConsentWord::yes;
  const auto confirmed = params.confirmed.value_or(std::vector<wire::Name>{});
  if (refused && std::none_of(confirmed.begin(), confirmed.end(), [](const wire::Name& one) { return one.text == consent_to_send; })) {
    return wire::Fault{std::string(consent_to_send), "/exam", "consent to send: yes"};
  }
  return {};
}

[[nodiscard]] LetterReply reply_of(const model::Exam& exam, const model::Letter& letter, const model::LetterPage& page, const report::Words& words) {
  const auto because = letter.stale_because.value_or(std::vector<model::Word>{});
  std::string written = report::local_time(letter.at, exam.offset_min ? exam.offset_min->steps : 0);
  if (!model::can_be_right(letter.at)) {
    written = words.say("msg.page.by_wrong_clock", {{"at", written, false, true}});
  }
  const report::Sheet sheet = report::letter_sheet(page, words, because, written);
  LetterReply reply;
  reply.letter = letter;
  reply.text.text = report::sheet_text(sheet, words);
  reply.html.text = report::sheet_html(sheet, words);
  reply.language = {std::string(report::english)};
  std::vector<model::Word> remarks;
  if (report::letter_lines(sheet) > report::letter_lines_max) {
    remarks.push_back({"longer_than_a_sheet"});
  }
  if (letter.stale) {
    remarks.push_back({"not_up_to_date"});
  }
  if (!remarks.empty()) {
    reply.remarks = std::move(remarks);
  }
  return reply;
}

}  // namespace

Result<LetterReply> letter_write(Context& context, const LetterWriteParams& params) {
  const auto words = words_of_letters(params.language);
  if (!words) {
    return words.error();
  }
  const auto record = exam_to_read(context, params.exam);
  if (!record) {
    return record.error();
  }
  if (auto known = check_seen(params.seen, (*record)->operations); !known) {
    return known.error();
  }
  if (auto known = check_names(**record, params); !known) {
    return known.error();
  }
  model::LetterBody body;
  body.letter = model::LetterId{context.desk->log().object_for(ledger::ObjectType::letter, params.request, 0).bytes};
  body.to = params.to;
  body.question = params.question;
  body.urgency = params.urgency;
  body.plan_item = params.plan_item;
  body.corrects = params.corrects;
  if (params.protected_.value_or(false)) {
    body.protected_ = true;
  }
  body.language = {std::string(report::english)};
  if (const model::LetterBody* before = recorded_letter(**record, params.request)) {
    body.page = before->page;
  } else {
    auto page = page_of_letter(context, **record, params, **words);
    if (!page) {
      return page.error();
    }
    body.page = std::move(*page);
  }
  ledger::NewOperation operation = operation_for(context, model::as_object(params.exam), ledger::ObjectType::exam, "letter", params.request, params.seen);
  operation.body_json = wire::write(body);
  const auto written = write(context, {operation}, [&] { return may_be_written(context, **record, params); });
  if (!written) {
    return written.error();
  }
  const auto after = exam_reply(context, params.exam, *written);
  if (!after) {
    return after.error();
  }
  const model::Letter* letter = folded_letter(after->exam, body.letter);
  if (letter == nullptr) {
    return wire::Fault{"internal.failure", "/exam", "a letter that was recorded"};
  }
  LetterReply reply = reply_of(after->exam, *letter, body.page, **words);
  reply.revision = after->revision;
  reply.repeat = after->repeat;
  reply.stale_letters = after->stale_letters;
  return reply;
}

Result<LetterReply> letter_read(Context& context, const LetterReadParams& params) {
  const auto record = exam_to_read(context, params.exam);
  if (!record) {
    return record.error();
  }
  const model::LetterBody* body = letter_body(**record, params.letter);
  const model::Letter* letter = folded_letter((*record)->fold.exam, params.letter);
  const bool is_private = body != nullptr && body->protected_.value_or(false);
  if (body == nullptr || letter == nullptr || (is_private && !sees_protected(context))) {
    return wire::Fault{"letter.unknown", "/letter", "a letter of this exam"};
  }
  if (is_private && !params.protected_.value_or(false)) {
    return wire::Fault{"letter.protected", "/protected", "true"};
  }
  const report::Words* words = report::built_in_words();
  if (words == nullptr) {
    return wire::Fault{"internal.failure", "", "words that load"};
  }
  LetterReply reply = reply_of((*record)->fold.exam, *letter, body->page, *words);
  reply.revision = (*record)->fold.exam.revision.value_or(std::vector<model::EntryId>{});
  return reply;
}

}  // namespace limbledger::service

// letter.write and letter.read: the letter about one exam, on one page of A4. It is an operation in the record: the page is kept as
// it was printed, and what is recorded afterwards marks it as not up to date. Where the person said no to sending, it is asked back
// and then written for the person's own hand (HC-064). A protected letter holds what is kept from the other, and that alone.
// Refused: an exam whose newest entries the caller was not shown, a withdrawn exam, a language without these texts.
#pragma once

#include "core/model/exam/letter.hpp"
#include "core/service/methods/exam/common.hpp"
#include "core/service/methods/exam/note.hpp"

#include <array>
#include <optional>
#include <vector>

namespace limbledger::service {

struct LetterWriteParams {
  model::ExamId exam;
  wire::Remark question;
  std::optional<wire::Name> to;
  std::optional<model::LetterUrgency> urgency;
  std::optional<model::PlanItemId> plan_item;
  std::optional<model::LetterId> corrects;
  std::optional<model::Word> language;
  std::optional<bool> protected_;
  std::vector<model::EntryId> seen;
  model::RequestId request;
  std::optional<std::vector<wire::Name>> confirmed;  // codes a person has answered for: consent.send
};
BOOST_DESCRIBE_STRUCT(LetterWriteParams, (), (exam, question, to, urgency, plan_item, corrects, language, protected_, seen, request, confirmed))
constexpr auto notes(const LetterWriteParams*) {
  return std::array{wire::Note{"seen", seen_note}, wire::Note{"question", "what the reader is asked, in the examiner's words"},
                    wire::Note{"urgency", "the examiner's own; alerts stand beside it whatever it says"},
                    wire::Note{"plan_item", "the referral that this letter is for; it counts as written while nothing more is recorded of it"},
                    wire::Note{"corrects", "a letter of this exam whose place this one has; it then says in words what has changed"},
                    wire::Note{"language", "en; the only one for letters, and the default"},
                    wire::Note{"protected", "true: a sealed letter of its own, which holds what is kept from a page and nothing else that was found"}};
}

struct LetterReply {
  model::Letter letter;
  NoteText text;  // 80 columns
  NoteText html;
  model::Word language;
  std::vector<model::EntryId> revision;
  std::optional<bool> repeat;
  std::optional<std::vector<model::LetterId>> stale_letters;
  std::optional<std::vector<model::Word>> remarks;
};
BOOST_DESCRIBE_STRUCT(LetterReply, (), (letter, text, html, language, revision, repeat, stale_letters, remarks))
constexpr auto notes(const LetterReply*) {
  return std::array{wire::Note{"html", "a whole document, black on white, for one sheet of A4; it loads nothing and runs nothing"},
                    wire::Note{"stale_letters", "letters of this exam that the record no longer agrees with and that no other corrects"},
                    wire::Note{"remarks", "longer_than_a_sheet: what was written by hand is never shortened, so that it runs over one sheet; not_up_to_date"}};
}
// Faults: consent.send (asked back), revision.old, exam.withdrawn, plan.unknown, letter.unknown, language.no_texts.
[[nodiscard]] Result<LetterReply> letter_write(Context& context, const LetterWriteParams& params);

struct LetterReadParams {
  model::ExamId exam;
  model::LetterId letter;
  std::optional<bool> protected_;
  std::optional<FaultLanguage> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(LetterReadParams, (), (exam, letter, protected_, language))
constexpr auto notes(const LetterReadParams*) {
  return std::array{wire::Note{"language", fault_words_note}, wire::Note{"protected", "true, by an examiner: opens a protected letter; to anybody else there is none"}};
}
// As it was written; on top what has changed since. Faults: letter.unknown, letter.protected.
[[nodiscard]] Result<LetterReply> letter_read(Context& context, const LetterReadParams& params);

}  // namespace limbledger::service

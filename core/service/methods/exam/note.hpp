// note.write: one recorded exam as a page, in plain text and as one HTML document that prints on A4. It is written anew from
// the record each time and stored nowhere; `about` names the entries that the record's heads were, so that a later reader can
// tell whether something came since.
#pragma once

#include "core/service/methods/exam/judge.hpp"

#include <optional>
#include <vector>

namespace limbledger::service {

struct NoteWriteParams {
  model::ExamId exam;
  std::optional<model::Word> language;  // en
  std::optional<bool> protected_;
};
BOOST_DESCRIBE_STRUCT(NoteWriteParams, (), (exam, language, protected_))
constexpr auto notes(const NoteWriteParams*) {
  return std::array{wire::Note{"language", "en; the only one so far, and the default"},
                    wire::Note{"protected", "true: also what is kept from a page by default (for an examiner alone); without it one line says that there is a protected note, and to a viewer nothing does"}};
}

using NoteText = wire::Text<1'000'000, true>;

struct NoteWriteResult {
  NoteText text;  // 80 columns
  NoteText html;
  std::vector<model::EntryId> about;
  model::Word language;
  std::optional<bool> protected_;  // this note holds what is kept from a page by default
};
BOOST_DESCRIBE_STRUCT(NoteWriteResult, (), (text, html, about, language, protected_))
constexpr auto notes(const NoteWriteResult*) {
  return std::array{wire::Note{"html", "a whole document, black on white, for A4; it loads nothing and runs nothing"},
                    wire::Note{"about", "the exam's revision that the note was written from"}};
}

// Faults: exam.unknown, params.unknown_word (a language without words here), token.scope (a viewer asks for what is protected).
[[nodiscard]] Result<NoteWriteResult> note_write(Context& context, const NoteWriteParams& params);

}  // namespace limbledger::service

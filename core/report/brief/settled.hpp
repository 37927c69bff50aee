// What a person decided between values that were written without knowledge of each other, in words: which value, whose it is, what was not
// taken and whose that was, who decided, when, why, and whether the page had been signed by then. Whoever reads a signature above a
// value that its signer had not written reads that here.
#pragma once

#include "core/report/text.hpp"

#include <cstdint>
#include <functional>
#include <string>
#include <vector>

namespace limbledger::report {

class PageView;
struct SheetSection;

struct SettledIn {
  const Words& words;
  const reference::Edition& edition;
  std::function<std::string(const model::ExaminerId&)> examiner;
  std::int64_t offset_min = 0;
};

// Of what was undone, that it was decided once. `what` names the value, with its side.
[[nodiscard]] std::string settled_text(const SettledIn& in, const std::string& what, const model::Settled& settled);
// "Impression", "side": of all but findings, which have names of their own.
[[nodiscard]] std::string settled_about(const Words& words, const model::Settled& settled);
// Impressions that stand against each other, undecided: none of them is the page's, and each is said.
[[nodiscard]] std::vector<std::string> impressions_undecided(const PageView& view);
// Whose the impression is that stands, where that was decided.
[[nodiscard]] std::optional<model::ExaminerId> impression_writer(const model::Exam& exam);

// Of the note: nothing where nothing was decided.
[[nodiscard]] SheetSection settled_section(const PageView& view);
// Beside the signature: what was decided since, by name; empty where nothing was.
[[nodiscard]] std::string settled_since_signed(const PageView& view);
// Of the letter, in its shortest form by name alone where there are many.
[[nodiscard]] SheetSection letter_settled(const PageView& view, bool shortest);

}  // namespace limbledger::report

// Message name + arguments -> text, from Fluent files. Read here: messages, terms, attributes, variables, quoted texts, references,
// select expressions, texts over several lines (their indentation is dropped). No functions. A dot of a message name is a dash in
// the file, so that "msg.item.knee_lachman.short" stands there as msg-item-knee_lachman-short; an attribute of that name serves too.
// Texts put in from outside are isolated for direction (U+2068 before, U+2069 after); numbers are not.
#pragma once

#include "core/wire/fault.hpp"

#include <map>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace limbledger::report {

struct Arg {
  std::string name;
  std::string text;
  bool number = false;   // chooses by plural, is not isolated
  bool our_own = false;  // made of our own words: not isolated
};
using Args = std::vector<Arg>;

class Words {
 public:
  // Several files are one set; a message that two of them hold is refused. Faults name the line.
  [[nodiscard]] static Result<Words> read(std::span<const std::string_view> files);
  // The same; what these files do not say is said in the language `behind`, with its mark after it. `behind` must outlive it.
  [[nodiscard]] static Result<Words> read(std::span<const std::string_view> files, const Words* behind);
  Words(Words&&) noexcept;
  Words& operator=(Words&&) noexcept;
  ~Words();

  // A name that is not there gives the name itself: shown, never silent.
  [[nodiscard]] std::string say(std::string_view name, const Args& args = {}) const;
  [[nodiscard]] bool has(std::string_view name) const;
  // In these files themselves, not in the language behind them.
  [[nodiscard]] bool says_itself(std::string_view name) const;
  // "en", "es": for the reader of a document.
  [[nodiscard]] std::string language() const;
  // As they stand in the files, with dashes.
  [[nodiscard]] std::vector<std::string> names() const;

 private:
  struct Inside;
  explicit Words(std::unique_ptr<Inside> inside);
  std::unique_ptr<Inside> inside_;
};

// English, compiled into the library; null only if the library itself was built wrong.
[[nodiscard]] const Words* built_in_words();

inline constexpr std::string_view english = "en";
// Stands after what was said in English for want of a translation.
inline constexpr std::string_view english_mark = " (en)";
// The languages there are words of. `form` alone: labels of a form, for review by a clinician; every other text is English.
struct Language {
  std::string_view code;
  bool form_alone = false;
};
[[nodiscard]] std::span<const Language> languages();
// Null for a language that is not there. English stands behind every other, and is marked where it is used.
[[nodiscard]] const Words* words_in_language(std::string_view code);

}  // namespace limbledger::report

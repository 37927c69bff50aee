// A letter about one exam: what was handed over, as it was printed, and whether the record has changed since. The page is kept
// because it left the clinic; a later edition or a correction never changes it. Source: clinical safety, requirements 14 and 18.
#pragma once

#include "core/model/exam/plan.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace limbledger::model {

// What a page says: like a text, and names and other words that people wrote may stand between U+2068 and U+2069.
struct PrintedText {
  std::string text;
  static constexpr wire::TextRule wire_rule{"text as it was printed; what people wrote stands between U+2068 and U+2069", "", 200000};
  [[nodiscard]] std::string to_text() const { return text; }
  [[nodiscard]] static wire::TextProblem from_text(std::string_view from, PrintedText& out) {
    std::string bare(from);
    for (const std::string_view mark : {std::string_view("\u2068"), std::string_view("\u2069")}) {
      for (auto at = bare.find(mark); at != std::string::npos; at = bare.find(mark, at)) {
        bare.erase(at, mark.size());
      }
    }
    const wire::TextProblem problem = wire::check_text(bare, wire_rule.length_max, true);
    if (problem.empty()) {
      out.text = std::string(from);
    }
    return problem;
  }
  friend bool operator==(const PrintedText&, const PrintedText&) = default;
};

enum class LetterUrgency { now, same_day, two_weeks, routine };
BOOST_DESCRIBE_ENUM(LetterUrgency, now, same_day, two_weeks, routine)

enum class LetterLineKind { plain, bullet, under };
BOOST_DESCRIBE_ENUM(LetterLineKind, plain, bullet, under)

struct LetterLine {
  LetterLineKind kind{};
  PrintedText text;
  friend bool operator==(const LetterLine&, const LetterLine&) = default;
};
BOOST_DESCRIBE_STRUCT(LetterLine, (), (kind, text))

struct LetterSection {
  PrintedText title;
  std::vector<LetterLine> lines;
  friend bool operator==(const LetterSection&, const LetterSection&) = default;
};
BOOST_DESCRIBE_STRUCT(LetterSection, (), (title, lines))

struct LetterPage {
  std::optional<PrintedText> banner;
  PrintedText title;
  PrintedText who;
  PrintedText examined;
  std::vector<PrintedText> head;
  std::vector<LetterSection> sections;
  friend bool operator==(const LetterPage&, const LetterPage&) = default;
};
BOOST_DESCRIBE_STRUCT(LetterPage, (), (banner, title, who, examined, head, sections))

// One letter in the record of its exam. Of a protected one that is all: neither reader nor question.
struct Letter {
  LetterId letter;
  EntryId entry;
  std::optional<ExaminerId> by;
  Instant at;
  std::optional<wire::Name> to;
  std::optional<wire::Remark> question;
  std::optional<LetterUrgency> urgency;
  std::optional<PlanItemId> plan_item;  // the referral it was written for
  std::optional<LetterId> corrects;
  std::optional<LetterId> corrected_by;
  std::optional<bool> protected_;
  std::optional<bool> stale;                      // the record has changed since
  std::optional<std::vector<Word>> stale_because;  // finding, impression, plan, consent, exam, addendum, countersigned, withdraw, move, swap_sides
  friend bool operator==(const Letter&, const Letter&) = default;
};
BOOST_DESCRIBE_STRUCT(Letter, (), (letter, entry, by, at, to, question, urgency, plan_item, corrects, corrected_by, protected_, stale, stale_because))

}  // namespace limbledger::model

// One table a type for the whole program, made in core/model/types.cpp: it is costly to make in every file.
namespace limbledger::wire {
extern template const Type& type_of<model::Letter>();
extern template const Type& type_of<model::LetterPage>();
}  // namespace limbledger::wire

// How far two examiners agree on the same thing: a table, the raw share that agrees, and Cohen's kappa beside what moves it. Kappa
// falls where nearly all answers are of one kind, also among examiners who agree; so the share of the commonest answer stands
// beside it, and no word grades it. Where chance alone would have made all agree there is no kappa. Whole numbers only, rounded
// half away from zero. Source: Cohen 1960 (kappa); Feinstein and Cicchetti 1990 (the effect of how common the finding is).
#pragma once

#include "core/model/exam/exam.hpp"
#include "core/wire/type.hpp"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace limbledger::interpret {

struct AgreementNumber {  // hundredths; kappa is from -1 to 1
  static constexpr wire::NumberRule wire_rule{-100, 100, 100, ""};
  std::int64_t steps = 0;
  friend bool operator==(const AgreementNumber&, const AgreementNumber&) = default;
};
struct OfHundred {  // in tenths
  static constexpr wire::NumberRule wire_rule{0, 1000, 10, ""};
  std::int64_t steps = 0;
  friend bool operator==(const OfHundred&, const OfHundred&) = default;
};

// What two examiners recorded for one place of one exam, as words of the catalogue; in the order in which they did.
struct DoubleFinding {
  std::string first;
  std::string second;
};

struct AgreementCell {
  wire::Name first;
  wire::Name second;
  wire::Count<1, 1000000> count;
};
BOOST_DESCRIBE_STRUCT(AgreementCell, (), (first, second, count))

struct Agreement {
  wire::Count<0, 1000000> pairs;
  std::vector<AgreementCell> table;        // by first, then second; what nobody said is left out
  std::optional<OfHundred> agree;          // so many in 100 pairs; none without pairs
  std::optional<AgreementNumber> kappa;    // none where `no_kappa` says why
  std::optional<model::Word> no_kappa;     // no_pairs, one_answer_only
  std::optional<wire::Name> commonest;     // of all answers of both
  std::optional<OfHundred> commonest_of;   // so many in 100 of them
};
BOOST_DESCRIBE_STRUCT(Agreement, (), (pairs, table, agree, kappa, no_kappa, commonest, commonest_of))
constexpr auto notes(const Agreement*) {
  return std::array{wire::Note{"agree", "in 100 pairs, both said the same"},
                    wire::Note{"kappa", "beyond what chance alone would give; it falls where one answer is far commoner than the others, whatever the examiners do, so it is read beside commonest_of"},
                    wire::Note{"no_kappa", "one_answer_only: both always said the same one thing, so chance alone would make them agree"}};
}

[[nodiscard]] Agreement agreement_of(std::span<const DoubleFinding> pairs);

struct DoubledItem {
  model::ItemId item;
  std::vector<DoubleFinding> pairs;
};
// What two examiners recorded side by side in one exam, or one under a countersignature, by item. Left out: what was not done,
// entered as a group, carried over, told by the person alone, or measured in a number.
[[nodiscard]] std::vector<DoubledItem> doubled_findings(std::span<const model::Exam* const> exams);

}  // namespace limbledger::interpret

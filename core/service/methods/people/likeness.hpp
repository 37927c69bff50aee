// Who may be the same person: a short list of reasons in words, made by fixed rules, never a score and never a decision.
// Nobody is merged or rejected by it. Births are compared as intervals of days, because a date may be known only to the
// year and an age only roughly; a birth that does not fit hides no one who shares a number, or name and home.
#pragma once

#include "core/match/register.hpp"
#include "core/model/person.hpp"
#include "core/model/quantity.hpp"
#include "core/wire/fault.hpp"

#include <map>
#include <optional>
#include <vector>

namespace limbledger::service {

using match::birth_days;
using match::Days;
using match::folded_name;
using match::folded_words;
using match::Letters;
using match::look_alike_skeleton;
using match::slips_between;
using match::trimmed;

// Whether what was said names this person: words of one of the names in any order, the birth, a number (alone or after its
// issuer), or the home. A person of whom none of these is known is named by nothing.
[[nodiscard]] bool names_person(std::string_view said, const model::Person& person);
// Fault person.mismatch for each of the identifiers that were read out and do not name the person; nothing once confirmed.
[[nodiscard]] Result<void> check_identified(const std::optional<std::vector<wire::Name>>& identified, const model::Person& person,
                                            const std::optional<std::vector<wire::Name>>& confirmed);

struct BitUnit {
  static constexpr std::int64_t low = -100000, high = 100000;
  static constexpr std::int32_t per_unit = 10;
  static constexpr std::string_view code = "bit";
};
using Bits = model::Quantity<BitUnit>;
[[nodiscard]] Bits to_bits(double weight);

struct WeighedField {
  match::Field field{};
  model::Word level;
  Bits weight;
};
BOOST_DESCRIBE_STRUCT(WeighedField, (), (field, level, weight))
constexpr auto notes(const WeighedField*) {
  return std::array{wire::Note{"level", "how well the two agree, or missing"},
                    wire::Note{"weight", "log2 of how much more often records of one person agree so than records of two; a missing field weighs 0"}};
}

struct LookAlike {
  model::PersonId person;
  // same_name, similar_name, look_alike_letters, same_birth, birth_may_agree, swapped_day_month, other_birth, same_home,
  // same_identifier, part_of_name, shares_word, perhaps_twins, decided_not_the_same
  std::vector<model::Word> because;
  Bits weight;                        // of all fields together
  std::vector<WeighedField> working;
};
BOOST_DESCRIBE_STRUCT(LookAlike, (), (person, because, weight, working))

// Those among `all` that may be `person`, by id; `person` itself left out. By the rules in words, and whoever weighs enough by `weighed_by`.
[[nodiscard]] std::vector<LookAlike> look_alikes_of(const model::PersonId& id, const model::Person& person,
                                                    const std::map<model::PersonId, model::Person>& all, const match::Model& weighed_by);

}  // namespace limbledger::service

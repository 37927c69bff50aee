#include "core/service/methods/people/likeness.hpp"

#include "core/service/writing.hpp"

#include <algorithm>

namespace limbledger::service {

namespace {

enum class Alike : std::uint8_t { no, similar, letters, same };

// Short names have no slips: half of all short names are one letter apart.
[[nodiscard]] std::size_t slips_allowed(const Letters& name) { return name.size() < 5 ? 0 : (name.size() < 12 ? 1 : 2); }

[[nodiscard]] Alike compare(const Letters& a, const Letters& b) {
  if (a == b) {
    return Alike::same;
  }
  if (look_alike_skeleton(a) == look_alike_skeleton(b)) {
    return Alike::letters;
  }
  const std::size_t most = std::min(slips_allowed(a), slips_allowed(b));
  return most > 0 && slips_between(a, b, most) <= most ? Alike::similar : Alike::no;
}

[[nodiscard]] std::vector<Letters> names_of(const model::Person& person) {
  std::vector<Letters> out;
  for (const model::PersonName& name : person.names.value_or(std::vector<model::PersonName>{})) {
    if (Letters folded = folded_name(name.text.text); !folded.empty()) {
      out.push_back(std::move(folded));
    }
  }
  return out;
}

[[nodiscard]] Alike compare(const std::vector<Letters>& a, const std::vector<Letters>& b) {
  Alike best = Alike::no;
  for (const Letters& one : a) {
    for (const Letters& other : b) {
      best = std::max(best, compare(one, other));
    }
  }
  return best;
}

[[nodiscard]] bool share_identifier(const model::Person& a, const model::Person& b) {
  if (!a.identifiers || !b.identifiers) {
    return false;
  }
  // The number as text: leading zeros make another number. The issuer as people write it.
  return std::any_of(a.identifiers->begin(), a.identifiers->end(), [&](const model::Identifier& one) {
    return std::any_of(b.identifiers->begin(), b.identifiers->end(), [&](const model::Identifier& other) {
      return one.text == other.text && folded_words(one.issuer.text) == folded_words(other.issuer.text);
    });
  });
}

[[nodiscard]] std::string_view birth_word(const std::optional<model::Birth>& a, const std::optional<model::Birth>& b) {
  const auto days_a = birth_days(a);
  const auto days_b = birth_days(b);
  if (!days_a || !days_b) {
    return "";
  }
  if (!days_a->meets(*days_b)) {
    return match::swapped_day_and_month(*a, *b) ? "swapped_day_month" : "other_birth";
  }
  return days_a->first == days_a->last && days_b->first == days_b->last ? "same_birth" : "birth_may_agree";
}

[[nodiscard]] bool share_home(const model::Person& a, const model::Person& b) {
  return a.home && b.home && folded_name(a.home->text) == folded_name(b.home->text);
}

}  // namespace

bool names_person(std::string_view said, const model::Person& person) {
  const std::string text = trimmed(said);
  if (text.empty()) {
    return false;
  }
  for (const model::Identifier& one : person.identifiers.value_or(std::vector<model::Identifier>{})) {
    // The number code point for code point: leading zeros make another number.
    const std::string number = trimmed(one.text.text);
    const std::size_t before = text.size() - std::min(text.size(), number.size());
    if (text.ends_with(number) && (before == 0 || folded_words(text.substr(0, before)) == folded_words(one.issuer.text))) {
      return true;
    }
  }
  model::PartialDate date;
  if (model::PartialDate::from_text(text, date).empty()) {
    const auto born = birth_days(person.birth);
    return born && born->meets({date.first_day(), date.last_day()});
  }
  const std::vector<Letters> words = folded_words(text);
  if (words.empty()) {
    return false;
  }
  for (const model::PersonName& name : person.names.value_or(std::vector<model::PersonName>{})) {
    const std::vector<Letters> known = folded_words(name.text.text);
    if (std::all_of(words.begin(), words.end(), [&](const Letters& word) { return std::find(known.begin(), known.end(), word) != known.end(); })) {
      return true;
    }
  }
  return person.home && folded_name(text) == folded_name(person.home->text);
}

Result<void> check_identified(const std::optional<std::vector<wire::Name>>& identified, const model::Person& person,
                              const std::optional<std::vector<wire::Name>>& confirmed) {
  constexpr std::string_view code = "person.mismatch";
  if (!identified || confirms(confirmed, code)) {
    return {};
  }
  std::vector<wire::Fault> faults;
  for (std::size_t i = 0; i < identified->size(); ++i) {
    if (!names_person((*identified)[i].text, person)) {
      faults.emplace_back(code, "/identified/" + std::to_string(i), "a name, the birth, a number or the home of this person");
    }
  }
  if (!faults.empty()) {
    return wire::Refusal(std::move(faults));
  }
  return {};
}

Bits to_bits(double weight) {
  const double tenths = weight * 10;
  return {static_cast<std::int64_t>(tenths < 0 ? tenths - 0.5 : tenths + 0.5)};
}

std::vector<LookAlike> look_alikes_of(const model::PersonId& id, const model::Person& person,
                                      const std::map<model::PersonId, model::Person>& all, const match::Model& weighed_by) {
  const std::vector<Letters> names = names_of(person);
  const match::Looked looked = match::look_at(person);
  std::size_t of_that_name = 1;
  for (const auto& [other_id, other] : all) {
    const std::vector<Letters> theirs = names_of(other);
    of_that_name += other_id != id && std::any_of(names.begin(), names.end(), [&](const Letters& one) { return std::find(theirs.begin(), theirs.end(), one) != theirs.end(); }) ? 1U : 0U;
  }
  std::vector<LookAlike> out;
  for (const auto& [other_id, other] : all) {
    if (other_id == id) {
      continue;
    }
    const bool number = share_identifier(person, other);
    const Alike alike = compare(names, names_of(other));
    const std::string_view birth = birth_word(person.birth, other.birth);
    const bool home = share_home(person, other);
    // Father and son: the same name in one house is worth a warning whatever the births.
    const bool by_rule = number || (alike != Alike::no && (birth != "other_birth" || (home && alike == Alike::same)));
    const match::Candidate weighed = match::judge_pair(weighed_by, id, looked, other_id, match::look_at(other), of_that_name, all.size());
    if (!by_rule && !match::is_worth_asking(weighed_by, weighed)) {
      continue;
    }
    LookAlike like;
    like.person = other_id;
    like.weight = to_bits(weighed.weight);
    for (const match::FieldWeight& one : weighed.working) {
      like.working.push_back({one.field, one.level, to_bits(one.weight)});
    }
    const auto add = [&](bool holds, std::string_view word) {
      if (holds) {
        like.because.push_back({std::string(word)});
      }
    };
    const auto name = static_cast<match::NameLevel>(weighed.pattern[0]);
    add(alike == Alike::same, "same_name");
    add(alike == Alike::letters, "look_alike_letters");
    add(alike == Alike::similar || (alike == Alike::no && (name == match::NameLevel::near || name == match::NameLevel::close)), "similar_name");
    add(alike == Alike::no && name == match::NameLevel::part, "part_of_name");
    add(name == match::NameLevel::shares_word, "shares_word");
    add(!birth.empty(), birth);
    add(home, "same_home");
    add(number, "same_identifier");
    add(weighed.perhaps_twins, "perhaps_twins");
    out.push_back(std::move(like));
  }
  return out;
}

}  // namespace limbledger::service

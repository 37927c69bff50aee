// person.find. Whose birth or home stands in a conflict shows neither value, and is found by either.
#include "core/service/methods/people/person.hpp"
#include "core/wire/read.hpp"

#include <algorithm>
#include <map>

namespace limbledger::service {

namespace {

constexpr std::size_t people_per_page = 50;

// What is looked for, made ready once.
struct Wanted {
  std::vector<Letters> words;
  std::string text;  // as typed, for numbers
  std::optional<Days> birth;
  std::vector<Letters> home;
};

// How well one wanted word is found among the words of a name.
enum class Match : std::uint8_t { none, similar, letters, exact };

[[nodiscard]] Match match_word(const Letters& wanted, const std::vector<Letters>& words) {
  Match best = Match::none;
  const Letters skeleton = look_alike_skeleton(wanted);
  for (const Letters& word : words) {
    if (word.find(wanted) != Letters::npos) {
      return Match::exact;
    }
    if (look_alike_skeleton(word).find(skeleton) != Letters::npos) {
      best = Match::letters;
    } else if (wanted.size() >= 4 && slips_between(wanted, word, 1) <= 1) {
      best = std::max(best, Match::similar);
    }
  }
  return best;
}

// The worst found word decides.
[[nodiscard]] Match match_names(const std::vector<Letters>& wanted, const model::Person& person) {
  Match best = Match::none;
  for (const model::PersonName& name : person.names.value_or(std::vector<model::PersonName>{})) {
    const std::vector<Letters> words = folded_words(name.text.text);
    Match worst = wanted.empty() ? Match::none : Match::exact;
    for (const Letters& word : wanted) {
      worst = std::min(worst, match_word(word, words));
    }
    best = std::max(best, worst);
  }
  return best;
}

[[nodiscard]] bool has_number(const std::string& text, const model::Person& person) {
  const auto& identifiers = person.identifiers;
  return identifiers && std::any_of(identifiers->begin(), identifiers->end(), [&](const model::Identifier& one) { return one.text.text == text; });
}

// What a record says of one member: the value that holds, or each of those that stand against each other.
struct Said {
  std::vector<std::optional<model::Birth>> births;
  std::vector<wire::Name> homes;
};
using SaidInConflict = std::map<model::PersonId, Said>;

template <class T>
void add_values(const model::Conflict& conflict, std::vector<T>& out) {
  for (const wire::Raw& value : conflict.values.value_or(std::vector<wire::Raw>{})) {
    if (auto read = wire::read_text<T>(value.json, wire::Unknown::ignore)) {
      out.push_back(std::move(*read));
    }
  }
}

// Who stands in a conflict shows neither value, and is asked for by either.
[[nodiscard]] Result<SaidInConflict> said_in_conflict(Context& context) {
  const auto known = context.desk->records().persons_in_conflict();
  if (!known) {
    return known.error();
  }
  SaidInConflict out;
  const std::vector<model::PersonId> persons((*known)->begin(), (*known)->end());
  for (const model::PersonId& id : persons) {
    const auto record = context.desk->records().person(id);
    if (!record) {
      return record.error();
    }
    for (const model::Conflict& one : (*record)->fold.conflicts) {
      std::vector<model::Birth> births;
      if (one.about.text == "birth") {
        add_values(one, births);
        out[id].births.assign(births.begin(), births.end());
      } else if (one.about.text == "home") {
        add_values(one, out[id].homes);
      }
    }
  }
  return out;
}

[[nodiscard]] Said said_of(const model::PersonId& id, const model::Person& person, const SaidInConflict& in_conflict) {
  const auto found = in_conflict.find(id);
  Said said = found == in_conflict.end() ? Said{} : found->second;
  if (said.births.empty()) {
    said.births.push_back(person.birth);
  }
  if (said.homes.empty() && person.home) {
    said.homes.push_back(*person.home);
  }
  return said;
}

// Nothing when a criterion is not met; without criteria everyone is found, without reasons.
[[nodiscard]] std::optional<std::vector<model::Word>> reasons(const PersonFindParams& params, const Wanted& wanted, const model::Person& person, const Said& said) {
  std::vector<model::Word> because;
  if (params.text) {
    const Match match = match_names(wanted.words, person);
    const bool number = has_number(wanted.text, person);
    if (match == Match::none && !number) {
      return std::nullopt;
    }
    if (match != Match::none) {
      because.push_back({match == Match::exact ? "name" : (match == Match::letters ? "look_alike_letters" : "similar_name")});
    }
    if (number) {
      because.push_back({"identifier"});
    }
  }
  if (params.birth) {
    const bool born_then = std::any_of(said.births.begin(), said.births.end(), [&](const std::optional<model::Birth>& one) {
      const auto born = birth_days(one);
      return born && born->meets(*wanted.birth);
    });
    if (!born_then) {
      return std::nullopt;
    }
    because.push_back({"birth"});
  }
  if (params.home) {
    const bool lives_there = std::any_of(said.homes.begin(), said.homes.end(), [&](const wire::Name& one) {
      const std::vector<Letters> home = folded_words(one.text);
      return std::all_of(wanted.home.begin(), wanted.home.end(), [&](const Letters& word) { return match_word(word, home) == Match::exact; });
    });
    if (!lives_there) {
      return std::nullopt;
    }
    because.push_back({"home"});
  }
  return because;
}

[[nodiscard]] Result<Wanted> prepared(const PersonFindParams& params) {
  Wanted wanted;
  if (params.text) {
    wanted.text = trimmed(params.text->text);
    wanted.words = folded_words(wanted.text);
    if (wanted.text.empty()) {
      return wire::Fault{"value.empty", "/text", "at least one character"};
    }
  }
  if (params.birth) {
    wanted.birth = Days{params.birth->first_day(), params.birth->last_day()};
  }
  if (params.home) {
    wanted.home = folded_words(params.home->text);
    if (wanted.home.empty()) {
      return wire::Fault{"value.empty", "/home", "at least one letter"};
    }
  }
  return wanted;
}

}  // namespace

Result<PersonFindResult> person_find(Context& context, const PersonFindParams& params) {
  const auto wanted = prepared(params);
  if (!wanted) {
    return wanted.error();
  }
  const auto in_conflict = params.birth || params.home ? said_in_conflict(context) : Result<SaidInConflict>(SaidInConflict{});
  if (!in_conflict) {
    return in_conflict.error();
  }
  const auto all = context.desk->records().persons();
  if (!all) {
    return all.error();
  }
  const auto links = context.desk->records().links();
  if (!links) {
    return links.error();
  }
  const std::size_t limit = params.limit ? static_cast<std::size_t>(params.limit->steps) : people_per_page;
  PersonFindResult result;
  // By id: whoever is registered between two pages comes before or after the cursor and shifts nobody.
  for (auto row = params.cursor ? (*all)->upper_bound(*params.cursor) : (*all)->begin(); row != (*all)->end(); ++row) {
    auto because = reasons(params, *wanted, row->second, said_of(row->first, row->second, *in_conflict));
    if (!because) {
      continue;
    }
    if (result.people.size() == limit) {
      result.cursor = result.people.back().person.person;
      break;
    }
    result.people.push_back({row->second, std::move(*because)});
    if (const auto under = (*links)->shown_under.find(row->first); under != (*links)->shown_under.end()) {
      result.people.back().shown_under = under->second;
    }
  }
  return result;
}

}  // namespace limbledger::service

#include "core/match/register.hpp"

#include "core/match/blocks.hpp"

#include <algorithm>
#include <array>

namespace limbledger::match {

namespace {

// Our conventions. A block that holds more is walked in a window.
constexpr std::size_t block_max = 200;
constexpr std::size_t window = 60;
constexpr std::size_t people_to_learn = 500;
constexpr std::size_t drawn_pairs = 400'000;
constexpr double tied_pairs = 50;        // what the starting model counts for when learning m
constexpr double tied_drawn = 2'000;     // and when counting u
constexpr double tied_people = 200;      // and for how common a name is
constexpr double ask_from = -3.3219;     // odds of one to ten
constexpr double strong_from = 3.1699;   // odds of nine to one

[[nodiscard]] bool near_birth(const Pattern& pattern) {
  const auto birth = static_cast<BirthLevel>(pattern[1]);
  return birth == BirthLevel::same_day || birth == BirthLevel::swapped_day_month || birth == BirthLevel::one_slip;
}

[[nodiscard]] bool are_perhaps_twins(const Compared& compared) {
  return compared.perhaps_twins && static_cast<NameLevel>(compared.pattern[0]) == NameLevel::shares_word;
}

[[nodiscard]] bool may_be_asked(const Pattern& pattern, bool perhaps_kin) {
  const auto name = static_cast<NameLevel>(pattern[0]);
  const auto birth = static_cast<BirthLevel>(pattern[1]);
  const bool number = static_cast<TextLevel>(pattern[4]) == TextLevel::same || static_cast<TextLevel>(pattern[4]) == TextLevel::near;
  // Different births and different names together are two people, whatever else agrees; so is a namesake a generation apart, and one
  // word in common says too little where no birth speaks.
  const bool no_birth = birth == BirthLevel::other || birth == BirthLevel::missing;
  return number || !(perhaps_kin || (name == NameLevel::shares_word && no_birth) ||
                     ((name == NameLevel::other || name == NameLevel::missing) && !near_birth(pattern)));
}

[[nodiscard]] double weight_in(const Model& model, std::size_t field, std::uint8_t level, std::size_t same_name, std::size_t people) {
  if (field != 0 || static_cast<NameLevel>(level) != NameLevel::same) {
    return weight_of(model, static_cast<Field>(field), level);
  }
  // A common name says less: u is its share among the clinic's own people, drawn towards the common u while they are few.
  const double u = (static_cast<double>(same_name) + tied_people * model.u[0][level]) / (static_cast<double>(people) + tied_people);
  return log2_of(model.m[0][level] / std::max(u, 1 / (static_cast<double>(people) + tied_people)));
}

[[nodiscard]] Candidate weighed(const Model& model, const PersonPair& pair, const Pattern& pattern, bool perhaps_twins, bool perhaps_kin, std::size_t same_name,
                                std::size_t people) {
  Candidate out;
  out.pair = pair;
  out.pattern = pattern;
  out.perhaps_twins = perhaps_twins;
  out.perhaps_kin = perhaps_kin;
  for (std::size_t field = 0; field < fields; ++field) {
    const double weight = weight_in(model, field, pattern[field], same_name, people);
    out.weight += weight;
    out.working.push_back({static_cast<Field>(field), model::Word{std::string(level_word(static_cast<Field>(field), pattern[field]))}, weight});
  }
  // One born with the other, or a parent of the same name, is never among the strong.
  out.strong = log_odds(model, out.weight) >= strong_from && !out.perhaps_twins && !out.perhaps_kin;
  return out;
}

}  // namespace

Candidate judge_pair(const Model& model, const model::PersonId& a, const Looked& looked_a, const model::PersonId& b, const Looked& looked_b,
                     std::size_t same_name, std::size_t people) {
  const Compared compared = compare(looked_a, looked_b);
  return weighed(model, a < b ? PersonPair{a, b} : PersonPair{b, a}, compared.pattern, are_perhaps_twins(compared), compared.perhaps_kin, same_name, people);
}

bool is_worth_asking(const Model& model, const Candidate& candidate) {
  return may_be_asked(candidate.pattern, candidate.perhaps_kin) && log_odds(model, candidate.weight) >= ask_from;
}

Register::Register(const PeopleById& people) : model_(starting_model(people.size())) {
  ids_.reserve(people.size());
  people_.reserve(people.size());
  for (const auto& [id, person] : people) {
    ids_.push_back(id);
    people_.push_back(look_at(person));
    std::set<Letters> names;
    for (const Looked::Name& name : people_.back().names) {
      names.insert(name.sorted);
    }
    for (const Letters& name : names) {
      ++how_many_[name];
    }
  }
  make_blocks();
}

void Register::make_blocks() {
  std::vector<std::pair<std::uint64_t, std::uint32_t>> keys;
  for (std::size_t i = 0; i < people_.size(); ++i) {
    for (const std::uint64_t key : block_keys(people_[i])) {
      keys.emplace_back(key, static_cast<std::uint32_t>(i));
    }
  }
  std::sort(keys.begin(), keys.end());
  std::vector<std::uint32_t> block;
  for (std::size_t start = 0; start < keys.size();) {
    std::size_t end = start;
    block.clear();
    for (; end < keys.size() && keys[end].first == keys[start].first; ++end) {
      block.push_back(keys[end].second);
    }
    const bool is_long = block.size() > block_max;
    if (is_long) {
      std::stable_sort(block.begin(), block.end(), [&](std::uint32_t a, std::uint32_t b) {
        const auto middle = [&](std::uint32_t i) { return people_[i].born ? people_[i].born->first + people_[i].born->last : 0; };
        return middle(a) < middle(b);
      });
    }
    for (std::size_t i = 0; i < block.size(); ++i) {
      for (std::size_t j = i + 1; j < block.size() && (!is_long || j <= i + window); ++j) {
        pairs_.emplace_back(std::min(block[i], block[j]), std::max(block[i], block[j]));
      }
    }
    start = end;
  }
  std::sort(pairs_.begin(), pairs_.end());
  pairs_.erase(std::unique(pairs_.begin(), pairs_.end()), pairs_.end());
}

std::size_t Register::people_of_one_name(std::size_t a, std::size_t b) const {
  std::size_t same_name = 0;
  for (const Looked::Name& one : people_[a].names) {
    for (const Looked::Name& other : people_[b].names) {
      if (one.sorted == other.sorted) {
        same_name = std::max(same_name, how_many_.at(one.sorted));
      }
    }
  }
  return same_name;
}

// u is of pairs drawn at random. Ids are hashes, so neighbours in their order are; every distance once round until enough are drawn.
bool Register::compare_more(std::size_t most) {
  for (; most > 0 && seen_.size() < pairs_.size(); --most) {
    const auto& [a, b] = pairs_[seen_.size()];
    const Compared compared = compare(people_[a], people_[b]);
    seen_.push_back({compared.pattern, are_perhaps_twins(compared), compared.perhaps_kin});
  }
  for (; most > 0 && done() < to_compare(); --most) {
    drawn_[compare(people_[next_], people_[(next_ + apart_) % people_.size()]).pattern] += 1;
    ++drawn_count_;
    if (++next_ == people_.size()) {
      next_ = 0;
      apart_ = apart_ * 2 + 1;
    }
  }
  return done() == to_compare();
}

std::size_t Register::to_compare() const {
  std::size_t drawn = 0;
  for (std::size_t apart = 1; people_.size() >= people_to_learn && apart <= people_.size() / 2; apart = apart * 2 + 1) {
    drawn += people_.size();
  }
  return pairs_.size() + std::min(drawn, drawn_pairs);
}

void Register::learn_from(const std::set<PersonPair>& one, const std::set<PersonPair>& two) {
  const Model start = starting_model(people_.size());
  model_ = start;
  if (people_.size() < people_to_learn) {
    return;
  }
  compare_more(to_compare());
  Counted counted;
  for (std::size_t i = 0; i < pairs_.size(); ++i) {
    const PersonPair pair{ids_[pairs_[i].first], ids_[pairs_[i].second]};
    const Pattern& pattern = seen_[i].pattern;
    if (one.contains(pair)) {
      counted.one[pattern] += 1;
    } else if (two.contains(pair)) {
      counted.two[pattern] += 1;
    } else {
      counted.pairs[pattern] += 1;
    }
  }
  // Among pairs that share a block the two kinds are told apart; there u is that of the blocks and is not kept.
  Model in_blocks = start;
  in_blocks.prior = std::min(0.5, start.prior * static_cast<double>(people_.size()) * static_cast<double>(people_.size()) / 2 /
                                      static_cast<double>(std::max<std::size_t>(pairs_.size(), 1)));
  const Learnt learnt = learn(in_blocks, counted, tied_pairs);
  model_.m = learnt.model.m;
  model_.u = count_shares(start.u, drawn_, tied_drawn);
  const double all = static_cast<double>(people_.size()) * static_cast<double>(people_.size() - 1) / 2;
  const double ones = learnt.model.prior * static_cast<double>(pairs_.size()) + static_cast<double>(one.size());
  model_.prior = std::max(ones / all, 0.1 * start.prior);
  model_.learnt = true;
}

std::vector<Candidate> Register::candidates(const std::set<PersonPair>& but) {
  compare_more(to_compare());
  std::array<std::array<double, levels_max>, fields> weights{};
  for (std::size_t field = 0; field < fields; ++field) {
    for (std::size_t level = 0; level < levels_of_field[field]; ++level) {
      weights[field][level] = weight_of(model_, static_cast<Field>(field), static_cast<std::uint8_t>(level));
    }
  }
  const double odds = log_odds(model_, 0);
  std::vector<Candidate> out;
  for (std::size_t i = 0; i < pairs_.size(); ++i) {
    const auto& [a, b] = pairs_[i];
    const Seen& seen = seen_[i];
    if (!may_be_asked(seen.pattern, seen.perhaps_kin)) {
      continue;
    }
    const bool one_name = static_cast<NameLevel>(seen.pattern[0]) == NameLevel::same;
    const std::size_t same_name = one_name ? people_of_one_name(a, b) : 0;
    double weight = one_name ? weight_in(model_, 0, seen.pattern[0], same_name, people_.size()) : weights[0][seen.pattern[0]];
    for (std::size_t field = 1; field < fields; ++field) {
      weight += weights[field][seen.pattern[field]];
    }
    if (odds + weight >= ask_from && !but.contains({ids_[a], ids_[b]})) {
      out.push_back(weighed(model_, {ids_[a], ids_[b]}, seen.pattern, seen.perhaps_twins, seen.perhaps_kin, same_name, people_.size()));
    }
  }
  std::sort(out.begin(), out.end(), [](const Candidate& x, const Candidate& y) {
    return x.weight == y.weight ? x.pair < y.pair : x.weight > y.weight;
  });
  return out;
}

std::optional<Candidate> Register::of(const model::PersonId& a, const model::PersonId& b) const {
  const auto at_a = std::lower_bound(ids_.begin(), ids_.end(), a);
  const auto at_b = std::lower_bound(ids_.begin(), ids_.end(), b);
  if (at_a == ids_.end() || at_b == ids_.end() || !(*at_a == a) || !(*at_b == b) || a == b) {
    return std::nullopt;
  }
  const auto first = static_cast<std::size_t>(at_a - ids_.begin());
  const auto second = static_cast<std::size_t>(at_b - ids_.begin());
  return judge_pair(model_, a, people_[first], b, people_[second], people_of_one_name(first, second), people_.size());
}

}  // namespace limbledger::match

// A register of invented people in four customs of naming, 15 in 100 of them registered twice as it happens: misspelt, with a word
// of the name left out or exchanged, a birth swapped, guessed or rounded, a home moved. Twins and namesakes live in it too. What
// is found of the doubles (recall) and how many of those asked about are doubles (precision) is printed; nothing is merged. 4,000
// people, with LIMBLEDGER_TIER=full 20,000.
#include "core/match/register.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cstdlib>
#include <iostream>
#include <set>
#include <string>

namespace limbledger::match::register_test {

namespace {

class Draw {
 public:
  explicit Draw(std::uint64_t seed) : state_(seed) {}
  std::uint64_t next() {  // splitmix64
    std::uint64_t z = state_ += 0x9E3779B97F4A7C15U;
    z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9U;
    z = (z ^ (z >> 27U)) * 0x94D049BB133111EBU;
    return z ^ (z >> 31U);
  }
  std::size_t below(std::size_t n) { return static_cast<std::size_t>(next() % n); }
  bool in_hundred(std::size_t n) { return below(100) < n; }
  // Small numbers often: a few names are common.
  std::size_t common(std::size_t n) { return std::min({below(n), below(n), below(n)}); }

 private:
  std::uint64_t state_;
};

// Words put together of syllables that no people has: the seed makes the lists.
std::vector<std::string> words_of(Draw& draw, const std::vector<std::string>& syllables, std::size_t count, std::size_t least, std::size_t most) {
  std::set<std::string> out;
  while (out.size() < count) {
    std::string word;
    for (std::size_t left = least + draw.below(most - least + 1); left > 0; --left) {
      word += syllables[draw.below(syllables.size())];
    }
    out.insert(word);
  }
  std::vector<std::string> list(out.begin(), out.end());
  for (std::size_t i = list.size(); i > 1; --i) {
    std::swap(list[i - 1], list[draw.below(i)]);
  }
  return list;
}

struct Custom {
  std::vector<std::string> given;
  std::vector<std::string> family;
};

struct Customs {
  explicit Customs(Draw& draw) {
    const std::vector<std::string> latin{"ba", "do", "ku", "mi", "na", "ro", "se", "ta", "wo", "li", "fa", "gu", "za", "ne", "po", "yi", "ka", "mo", "le", "so"};
    const std::vector<std::string> toned{"b\u1ea1", "d\u00f4", "k\u01b0", "m\u00ed", "n\u00e0", "r\u1ecd", "th\u1ebf", "t\u00e2", "ng\u1ed3", "l\u1ef3", "ph\u00e1", "gi\u1ea3"};
    const std::vector<std::string> arabic{"\u0628\u0627", "\u062f\u0648", "\u0643\u064a", "\u0645\u0627", "\u0646\u0648", "\u0631\u064a",
                                          "\u0633\u0627", "\u062a\u0648", "\u0644\u064a", "\u0641\u0627", "\u0632\u0648", "\u0639\u064a"};
    two = {words_of(draw, latin, 400, 2, 3), words_of(draw, latin, 600, 2, 4)};
    chain = {words_of(draw, arabic, 250, 2, 3), {}};
    single = {words_of(draw, latin, 2500, 2, 4), {}};
    family_first = {words_of(draw, toned, 110, 1, 2), words_of(draw, toned, 40, 1, 1 + 1)};
    homes = words_of(draw, latin, 60, 2, 3);
  }
  Custom two, chain, single, family_first;
  std::vector<std::string> homes;
};

struct Somebody {
  std::vector<std::string> words;
  std::int64_t year = 1970;
  unsigned month = 1, day = 1;
  model::Sex sex{};
  std::string home;
  std::string number;
  int birth_kind = 0;
};

Somebody born(Draw& draw, const Customs& customs) {
  Somebody out;
  switch (draw.below(4)) {
    case 0:
      out.words = {customs.two.given[draw.common(customs.two.given.size())], customs.two.family[draw.common(customs.two.family.size())]};
      break;
    case 1:
      for (int i = 0; i < 3; ++i) {
        out.words.push_back(customs.chain.given[draw.common(customs.chain.given.size())]);
      }
      break;
    case 2:
      out.words = {customs.single.given[draw.common(customs.single.given.size())]};
      break;
    default:
      out.words = {customs.family_first.family[draw.common(customs.family_first.family.size())],
                   customs.family_first.given[draw.below(customs.family_first.given.size())],
                   customs.family_first.given[draw.below(customs.family_first.given.size())]};
  }
  out.year = 1936 + static_cast<std::int64_t>(draw.below(90));
  out.month = 1 + static_cast<unsigned>(draw.below(12));
  out.day = 1 + static_cast<unsigned>(draw.below(28));
  out.sex = draw.in_hundred(50) ? model::Sex::female : model::Sex::male;
  out.home = customs.homes[draw.common(customs.homes.size())];
  out.number = std::to_string(10000 + draw.below(90000)) + std::to_string(draw.below(1000));
  out.birth_kind = static_cast<int>(draw.below(100));
  return out;
}

// One letter of a word exchanged with the next, left out or doubled: by code points, as a hand does.
std::string misspelt(Draw& draw, const std::string& word) {
  std::vector<std::string> letters;
  for (const char c : word) {
    if ((static_cast<unsigned char>(c) & 0xC0U) == 0x80U) {
      letters.back() += c;
    } else {
      letters.emplace_back(1, c);
    }
  }
  const std::size_t at = draw.below(letters.size());
  switch (draw.below(3)) {
    case 0:
      if (at + 1 < letters.size()) {
        std::swap(letters[at], letters[at + 1]);
      }
      break;
    case 1:
      if (letters.size() > 3) {
        letters.erase(letters.begin() + static_cast<std::ptrdiff_t>(at));
      }
      break;
    default:
      letters.insert(letters.begin() + static_cast<std::ptrdiff_t>(at), std::string(letters[at]));
  }
  std::string out;
  for (const std::string& letter : letters) {
    out += letter;
  }
  return out;
}

// As it is written down at one visit.
model::Person written(Draw& draw, Somebody who, const Customs& customs, bool again) {
  if (again) {
    if (draw.in_hundred(30)) {
      std::string& word = who.words[draw.below(who.words.size())];
      word = misspelt(draw, word);
    }
    if (who.words.size() > 1 && draw.in_hundred(12)) {
      std::swap(who.words.front(), who.words.back());
    }
    if (who.words.size() > 2 && draw.in_hundred(12)) {
      who.words.erase(who.words.begin() + 1);
    }
    if (draw.in_hundred(12)) {
      who.home = customs.homes[draw.common(customs.homes.size())];
    }
    if (draw.in_hundred(5) && who.day <= 12) {
      std::swap(who.day, who.month);
    }
    if (draw.in_hundred(5)) {
      who.day = 1 + static_cast<unsigned>(draw.below(28));
    }
    if (draw.in_hundred(40)) {
      who.birth_kind = static_cast<int>(draw.below(100));  // told by another this time
    }
  }
  model::Person person;
  std::string name;
  for (const std::string& word : who.words) {
    name += (name.empty() ? "" : " ") + word;
  }
  person.names = std::vector<model::PersonName>{{{name}}};
  person.sex = draw.in_hundred(1) ? model::Sex::unknown : who.sex;
  if (!draw.in_hundred(4)) {
    person.home = wire::Name{who.home};
  }
  if (draw.in_hundred(25)) {
    person.identifiers = std::vector<model::Identifier>{{{"invented district"}, {who.number}}};
  }
  model::Birth birth;
  if (who.birth_kind < 45) {
    birth.date = model::PartialDate{static_cast<std::int16_t>(who.year), static_cast<std::uint8_t>(who.month), static_cast<std::uint8_t>(who.day)};
  } else if (who.birth_kind < 60) {
    birth.date = model::PartialDate{static_cast<std::int16_t>(who.year), 1, 1};
  } else if (who.birth_kind < 75) {
    birth.date = model::PartialDate{static_cast<std::int16_t>(who.year), 0, 0};
  } else if (who.birth_kind < 95) {
    const std::int64_t age = 2026 - who.year;
    birth.age_years.emplace().steps = age > 15 && draw.in_hundred(60) ? (age + 2) / 5 * 5 : age;
    birth.on = model::PartialDate{2026, 11, 24};
  } else {
    return person;
  }
  person.birth = birth;
  return person;
}

model::PersonId drawn_id(Draw& draw) {
  model::PersonId id;
  for (std::uint8_t& byte : id.bytes) {
    byte = static_cast<std::uint8_t>(draw.next());
  }
  return id;
}

struct Made {
  PeopleById people;
  std::set<PersonPair> doubles;
  std::set<PersonPair> twins;
};

Made make(std::size_t count, std::uint64_t seed) {
  Draw draw(seed);
  const Customs customs(draw);
  Made out;
  const auto add = [&](const Somebody& who, bool again) {
    const model::PersonId id = drawn_id(draw);
    out.people[id] = written(draw, who, customs, again);
    return id;
  };
  const auto pair_of = [](const model::PersonId& a, const model::PersonId& b) { return a < b ? PersonPair{a, b} : PersonPair{b, a}; };
  while (out.people.size() < count) {
    const Somebody who = born(draw, customs);
    const model::PersonId first = add(who, false);
    std::vector<model::PersonId> all{first};
    if (draw.in_hundred(18)) {  // 18 more to 100 and some thrice: 15 in 100 records are doubles
      all.push_back(add(who, true));
      if (draw.in_hundred(10)) {
        all.push_back(add(who, true));
      }
    }
    for (std::size_t i = 0; i < all.size(); ++i) {
      for (std::size_t j = i + 1; j < all.size(); ++j) {
        out.doubles.insert(pair_of(all[i], all[j]));
      }
    }
    if (who.words.size() == 2 && draw.in_hundred(2)) {
      Somebody twin = who;
      while (twin.words.front() == who.words.front()) {
        twin.words.front() = customs.two.given[draw.below(customs.two.given.size())];
      }
      twin.number = std::to_string(10000 + draw.below(90000)) + "9";
      out.twins.insert(pair_of(first, add(twin, false)));
    }
    if (draw.in_hundred(2)) {  // a child of the same name in the same house
      Somebody child = who;
      child.year += 18 + static_cast<std::int64_t>(draw.below(15));
      child.number += "7";
      if (child.year < 2026) {
        add(child, false);
      }
    }
  }
  return out;
}

struct Found {
  std::size_t asked = 0, right = 0, strong = 0, strong_right = 0, strong_twins = 0;
  double recall = 0, precision = 0, strong_recall = 0, strong_precision = 0;
};

Found judge(Register& people, const Made& made) {
  Found out;
  for (const Candidate& candidate : people.candidates()) {
    const bool right = made.doubles.contains(candidate.pair);
    ++out.asked;
    out.right += right ? 1U : 0U;
    out.strong += candidate.strong ? 1U : 0U;
    out.strong_right += candidate.strong && right ? 1U : 0U;
    out.strong_twins += candidate.strong && made.twins.contains(candidate.pair) ? 1U : 0U;
  }
  const auto share = [](std::size_t part, std::size_t all) { return all == 0 ? 0 : static_cast<double>(part) / static_cast<double>(all); };
  out.recall = share(out.right, made.doubles.size());
  out.precision = share(out.right, out.asked);
  out.strong_recall = share(out.strong_right, made.doubles.size());
  out.strong_precision = share(out.strong_right, out.strong);
  return out;
}

void print(const char* what, const Found& found) {
  std::cout << what << ": asked about " << found.asked << ", recall " << found.recall << ", precision " << found.precision << "; strong " << found.strong
            << ", recall " << found.strong_recall << ", precision " << found.strong_precision << "\n";
}

}  // namespace

TEST_CASE("a generated register in four customs of naming, 15 in 100 registered twice: what is found, and what is asked in vain") {
  const char* tier = std::getenv("LIMBLEDGER_TIER");
  const std::size_t count = tier != nullptr && std::string(tier) == "full" ? 20'000 : 4'000;
  const Made made = make(count, 20261124);
  Register people(made.people);
  std::cout << "register of " << made.people.size() << " invented people, " << made.doubles.size() << " pairs of one person, " << made.twins.size()
            << " of twins; " << people.compared() << " pairs compared\n";
  const Found start = judge(people, made);
  print("starting weights", start);
  people.learn_from({}, {});
  const Found learnt = judge(people, made);
  print("learnt weights", learnt);
  const double share = static_cast<double>(made.doubles.size()) / static_cast<double>(made.people.size());
  CHECK(share > 0.13);
  CHECK(share < 0.19);
  // Floors under what this register gave when it was made; published: sensitivity 84 %, precision 95 % at best without review
  // (Kabudula 2014, BMC Med Res Methodol 14:71, real people, other fields).
  for (const Found& found : {start, learnt}) {
    CHECK(found.recall > 0.84);
    CHECK(found.strong_precision > 0.90);
    CHECK(found.strong_twins == 0);
  }
}

}  // namespace limbledger::match::register_test

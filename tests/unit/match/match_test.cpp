// Who may be registered twice: fields side by side by the cases of the project's own list (HC-...), and what is never a candidate. The
// people are invented.
#include "core/match/blocks.hpp"
#include "core/match/register.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

namespace limbledger::match::match_test {

namespace {

model::Person somebody(const std::string& name, const std::string& born = {}, model::Sex sex = model::Sex::unknown, const std::string& home = {}) {
  model::Person person;
  person.names = std::vector<model::PersonName>{{{name}}};
  if (!born.empty()) {
    person.birth.emplace();
    person.birth->date.emplace();
    REQUIRE(model::PartialDate::from_text(born, *person.birth->date).empty());
  }
  person.sex = sex;
  if (!home.empty()) {
    person.home = wire::Name{home};
  }
  return person;
}

model::Person aged(const std::string& name, int years, const std::string& on, int around = 0) {
  model::Person person = somebody(name);
  person.birth.emplace();
  person.birth->age_years.emplace().steps = years;
  if (around > 0) {
    person.birth->plus_minus.emplace().steps = around;
  }
  person.birth->on.emplace();
  REQUIRE(model::PartialDate::from_text(on, *person.birth->on).empty());
  return person;
}

model::PersonId id_of(unsigned number) {
  model::PersonId id;
  id.bytes[0] = static_cast<std::uint8_t>(number >> 8U);
  id.bytes[1] = static_cast<std::uint8_t>(number & 255U);
  return id;
}

NameLevel names(const std::string& a, const std::string& b) {
  return static_cast<NameLevel>(compare(look_at(somebody(a)), look_at(somebody(b))).pattern[0]);
}
BirthLevel births(const model::Person& a, const model::Person& b) { return compare_births(a.birth, b.birth); }
BirthLevel born(const std::string& a, const std::string& b) { return births(somebody("A", a), somebody("B", b)); }

Compared side_by_side(const model::Person& a, const model::Person& b) { return compare(look_at(a), look_at(b)); }

// Those two among a few hundred who are nobody in particular; nothing where they are no candidates.
std::optional<Candidate> asked_about(const model::Person& a, const model::Person& b) {
  PeopleById people;
  for (unsigned i = 0; i < 300; ++i) {
    const std::string tail(1, static_cast<char>('a' + i % 23));
    people[id_of(100 + i)] = somebody("Invented" + tail + " Person" + std::to_string(i * 7919 % 1000), std::to_string(1930 + i % 80), model::Sex::female);
  }
  people[id_of(1)] = a;
  people[id_of(2)] = b;
  for (const Candidate& candidate : Register(people).candidates()) {
    if (candidate.pair == PersonPair{id_of(1), id_of(2)}) {
      return candidate;
    }
  }
  return std::nullopt;
}

}  // namespace

TEST_CASE("names are compared as words in any order, with slips, parts left out, joined, and in letters that look alike") {
  CHECK(names("Amina Diallo", "DIALLO, Amina") == NameLevel::same);
  CHECK(names("Amina Diallo", "Amina Dialo") == NameLevel::near);
  CHECK(names("Nguyen Thi Hoa", "NguyenThi Hoa") == NameLevel::near);
  CHECK(names("Amina Fatou Diallo", "Amina Diallo") == NameLevel::part);
  CHECK(names("Wulan", "Wulan Invented") == NameLevel::part);
  CHECK(names("Hassan Invented", "Hussein Invented") == NameLevel::shares_word);
  CHECK(names("Kofi Mensah", "Awa Sall") == NameLevel::other);
  CHECK(names("Anna Petrova", "\u0410nna Petrova") == NameLevel::look_alike_letters);  // HC-071
  CHECK(names("\u0641\u0627\u0637\u0645\u0629 \u0639\u0644\u064a", "\u0641\u064e\u0627\u0637\u0650\u0645\u064e\u0629 \u0639\u0644\u064a") == NameLevel::same);
  CHECK(names("\u05d3\u05d5\u05d3 \u05db\u05d4\u05df", "\u05d3\u05d5\u05d9\u05d3 \u05db\u05d4\u05df") == NameLevel::near);
  CHECK(static_cast<NameLevel>(side_by_side(model::Person{}, somebody("Wulan")).pattern[0]) == NameLevel::missing);
}

TEST_CASE("HC-078 and others: births swapped, slipped, partial, guessed, heaped and estimated have a level each") {
  CHECK(born("2015-03-12", "2015-03-12") == BirthLevel::same_day);
  CHECK(born("2015-03-12", "2015-12-03") == BirthLevel::swapped_day_month);
  CHECK(born("2015-03-12", "2015-03-13") == BirthLevel::one_slip);
  CHECK(born("2015-03-21", "2015-03-12") == BirthLevel::one_slip);
  CHECK(born("1958-03-12", "1985-03-12") == BirthLevel::one_slip);
  CHECK(born("2015-03", "2015-03-12") == BirthLevel::same_month);
  CHECK(born("2015", "2015-03-12") == BirthLevel::same_year);
  CHECK(born("2015-01-01", "2015-01-01") == BirthLevel::same_year);  // "some day of 2015", twice
  CHECK(born("2015-01-01", "2015-08-30") == BirthLevel::same_year);
  CHECK(born("2014-01-01", "2015-08-30") == BirthLevel::about);
  CHECK(born("1971", "1973") == BirthLevel::about);
  CHECK(born("1971", "1976") == BirthLevel::other);
  CHECK(born("1971-05-12", "1973-09-30") == BirthLevel::other);
  CHECK(born("", "1973-09-30") == BirthLevel::missing);
  // 50 told in 2026 is 48 to 52, each with two years more: never better than about, and 43 is another.
  CHECK(births(aged("A", 50, "2026-11-24"), aged("B", 48, "2026-11-24")) == BirthLevel::about);
  CHECK(births(aged("A", 50, "2026-11-24"), somebody("B", "1976-05-12")) == BirthLevel::about);
  CHECK(births(aged("A", 50, "2026-11-24", 5), aged("B", 41, "2026-11-24")) == BirthLevel::about);
  CHECK(births(aged("A", 50, "2026-11-24"), aged("B", 43, "2026-11-24")) == BirthLevel::other);
}

TEST_CASE("what one of two does not have says nothing, and the sum is that of the fields") {
  const model::Person bare = somebody("Amina Diallo");
  model::Person full = somebody("Amina Diallo", "2015-03-12", model::Sex::female, "Upper Ford");
  const Model model = starting_model(300);
  const Candidate candidate = judge_pair(model, id_of(1), look_at(bare), id_of(2), look_at(full), 2, 300);
  REQUIRE(candidate.working.size() == fields);
  double sum = 0;
  for (std::size_t i = 0; i < fields; ++i) {
    sum += candidate.working[i].weight;
    CHECK((i == 0 || (candidate.working[i].weight == 0 && candidate.working[i].level.text == "missing")));
  }
  CHECK(candidate.working[0].level.text == "same");
  CHECK(sum == candidate.weight);
}

TEST_CASE("a name that many share says less than a rare one") {
  const Model model = starting_model(20000);
  const Looked one = look_at(somebody("Amina Diallo"));
  const auto weight = [&](std::size_t of_that_name) { return judge_pair(model, id_of(1), one, id_of(2), one, of_that_name, 20000).weight; };
  CHECK(weight(2) > weight(20));
  CHECK(weight(20) > weight(200));
  CHECK(weight(200) - weight(400) == doctest::Approx(1).epsilon(0.01));  // twice as common: one bit less
}

TEST_CASE("HC-076: one number of two issuers is nothing in common, and leading zeros make another number") {
  model::Person a = somebody("Amina Diallo");
  model::Person b = somebody("Awa Sall");
  a.identifiers = std::vector<model::Identifier>{{{"clinic K"}, {"17"}}};
  b.identifiers = std::vector<model::Identifier>{{{"clinic M"}, {"17"}}};
  CHECK(static_cast<TextLevel>(side_by_side(a, b).pattern[4]) == TextLevel::missing);
  b.identifiers = std::vector<model::Identifier>{{{"Clinic k"}, {"17"}}};
  CHECK(static_cast<TextLevel>(side_by_side(a, b).pattern[4]) == TextLevel::same);
  b.identifiers = std::vector<model::Identifier>{{{"clinic K"}, {"0017"}}};
  CHECK(static_cast<TextLevel>(side_by_side(a, b).pattern[4]) == TextLevel::other);
}

TEST_CASE("the woman registered twice is among the strong; nothing is done by it") {
  const auto found = asked_about(somebody("Amina Diallo", "2015-03-12", model::Sex::female, "Upper Ford"),
                                 somebody("Amina Dialo", "2015-12-03", model::Sex::female, "Upper Ford"));
  REQUIRE(found.has_value());
  CHECK(found->strong);
  CHECK(found->working[1].level.text == "swapped_day_month");
}

TEST_CASE("HC-079: twins are asked about as twins and never among the strong") {
  const auto found = asked_about(somebody("Hassan Invented", "2019-05-02", model::Sex::male, "Upper Ford"),
                                 somebody("Hussein Invented", "2019-05-02", model::Sex::male, "Upper Ford"));
  REQUIRE(found.has_value());
  CHECK(found->perhaps_twins);
  CHECK_FALSE(found->strong);
}

TEST_CASE("HC-080: father and son of one name in one house are known as kin and not asked about as one") {
  const model::Person father = somebody("Kofi Invented", "1968", model::Sex::male, "Upper Ford");
  const model::Person son = somebody("Kofi Invented", "1996", model::Sex::male, "Upper Ford");
  CHECK(side_by_side(father, son).perhaps_kin);
  CHECK_FALSE(asked_about(father, son).has_value());
}

TEST_CASE("another name and another birth together are two people, whatever else agrees") {
  CHECK_FALSE(asked_about(somebody("Kofi Invented", "1968-03-02", model::Sex::male, "Upper Ford"),
                          somebody("Yaw Otherwise", "1975-09-21", model::Sex::male, "Upper Ford")).has_value());
}

TEST_CASE("pairs that were decided are left out of a register's candidates") {
  PeopleById people;
  people[id_of(1)] = somebody("Amina Diallo", "2015-03-12");
  people[id_of(2)] = somebody("Amina Dialo", "2015-03-12");
  people[id_of(3)] = somebody("Awa Sall", "1990-06-30");
  Register one(people);
  REQUIRE(one.candidates().size() == 1);
  CHECK(one.candidates().front().pair == PersonPair{id_of(1), id_of(2)});
  CHECK(one.candidates({PersonPair{id_of(1), id_of(2)}}).empty());
}

TEST_CASE("a register that is compared a few pairs at a time comes to the candidates and the weights of one compared at once") {
  PeopleById people;
  for (unsigned i = 0; i < 600; ++i) {
    const std::string tail(1, static_cast<char>('a' + i % 23));
    people[id_of(100 + i)] = somebody("Invented" + tail + " Person" + std::to_string(i * 7919 % 500), std::to_string(1930 + i % 80), model::Sex::female, "Upper Ford");
  }
  Register at_once(people);
  Register by_steps(people);
  std::size_t calls = 1;
  for (std::size_t before = 0; !by_steps.compare_more(700); ++calls) {
    CHECK(by_steps.done() == before + 700);
    before = by_steps.done();
  }
  CHECK(calls == (by_steps.to_compare() + 699) / 700);
  CHECK(by_steps.done() == by_steps.to_compare());
  at_once.learn_from({}, {});
  by_steps.learn_from({}, {});
  REQUIRE(at_once.model().learnt);
  CHECK(at_once.model().u == by_steps.model().u);
  CHECK(at_once.model().m == by_steps.model().m);
  const std::vector<Candidate> one = at_once.candidates();
  const std::vector<Candidate> two = by_steps.candidates();
  REQUIRE(one.size() == two.size());
  REQUIRE(!one.empty());
  for (std::size_t i = 0; i < one.size(); ++i) {
    CHECK(one[i].pair == two[i].pair);
    // And each as it is weighed by itself.
    const auto alone = by_steps.of(two[i].pair.first, two[i].pair.second);
    REQUIRE(alone.has_value());
    CHECK(alone->weight == two[i].weight);
    CHECK(is_worth_asking(by_steps.model(), *alone));
  }
}

TEST_CASE("learning on pairs drawn from known shares finds them again") {
  // Two kinds of pairs, their patterns in the exact numbers that independence gives: nothing is random.
  Model truth = starting_model(1000);
  truth.m = {{{0, .6, .02, .1, .1, .05, .08, .05}, {0, .5, .05, .05, .1, .1, .15, .05}, {0, .97, .03}, {0, .8, .05, .15}, {0, .9, .04, .06}}};
  truth.u = {{{0, .002, .001, .002, .01, .005, .08, .9}, {0, .002, .001, .002, .005, .03, .06, .9}, {0, .5, .5}, {0, .1, .01, .89}, {0, .001, .001, .998}}};
  Counted counted;
  Pattern at{};
  const auto each = [&](const auto& self, std::size_t field, double one, double two) -> void {
    if (field == fields) {
      counted.pairs[at] = 100'000 * (0.1 * one + 0.9 * two);
      return;
    }
    for (std::uint8_t level = 1; level < levels_of_field[field]; ++level) {
      at[field] = level;
      self(self, field + 1, one * truth.m[field][level], two * truth.u[field][level]);
    }
  };
  each(each, 0, 1, 1);
  Model start = starting_model(1000);
  start.prior = 0.02;
  const Learnt learnt = learn(start, counted, 0);
  CHECK(learnt.model.prior == doctest::Approx(0.1).epsilon(0.001));
  for (std::size_t field = 0; field < fields; ++field) {
    for (std::size_t level = 1; level < levels_of_field[field]; ++level) {
      CHECK(learnt.model.m[field][level] == doctest::Approx(truth.m[field][level]).epsilon(0.005));
      CHECK(learnt.model.u[field][level] == doctest::Approx(truth.u[field][level]).epsilon(0.005));
    }
  }
}

TEST_CASE("a word sounds as others that are written for it") {
  CHECK(sound_of(U"diallo") == sound_of(U"dialo"));
  CHECK(sound_of(U"shona") == sound_of(U"sona"));
  CHECK(sound_of(U"roza") == sound_of(U"lossa"));
  CHECK_FALSE(sound_of(U"kofi") == sound_of(U"awa"));
}

}  // namespace limbledger::match::match_test

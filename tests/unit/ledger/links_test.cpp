// Who is one with whom, folded from decisions of writers who may not have known each other: every order and repetition gives one state,
// two decisions against each other join nobody, a chain that would join two who are not the same joins nobody, and undoing gives back.
#include "core/ledger/fold/links.hpp"
#include "tests/unit/ledger/two_writers.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <functional>

namespace limbledger::ledger::fold_test::links {

namespace {

model::PersonId person_of(std::uint8_t number) {
  model::PersonId id;
  id.bytes.fill(number);
  return id;
}

// The clinic's object, by the type that the writer's helper takes.
model::ExamId clinic_as_exam() { return {clinic_object(test_clinic()).bytes}; }

std::string link_body(std::uint8_t a, std::uint8_t b, std::string_view same) {
  model::LinkId link;
  link.bytes.fill(7);
  return R"({"link":")" + link.to_text() + R"(","persons":[")" + person_of(a).to_text() + R"(",")" + person_of(b).to_text() + R"("],"same":")" + std::string(same) +
         R"(","reason":"asked_person"})";
}

Opened decide(DeviceWriter& writer, std::uint8_t a, std::uint8_t b, std::string_view same, std::vector<model::EntryId> seen = {}) {
  return writer.act(clinic_as_exam(), "link", link_body(a, b, same), seen, seen, true);
}

LinkFold links_from(DeviceWriter& writer, std::span<const Opened> operations) {
  const ExaminerKeys keys = [&](const model::ExaminerId& who, const PublicKey& pub) { return writer.log().knows_examiner(who, pub); };
  return fold_links(operations, keys, test_clinic());
}
LinkFold links_of(DeviceWriter& writer) { return links_from(writer, writer.operations(clinic_as_exam())); }

// All of it in one text.
std::string told(const LinkFold& fold) {
  std::string text;
  for (const auto& [persons, pair] : fold.pairs) {
    text += persons.first.to_text().substr(0, 4) + persons.second.to_text().substr(0, 4) + (pair.same ? wire::write(*pair.same) : "open") + (pair.in_conflict ? "conflict" : "") +
            (pair.contradicted ? "contradicted" : "");
    for (const Decided& one : pair.heads) {
      text += one.entry.to_text().substr(0, 6);
    }
  }
  for (const auto& [person, group] : fold.groups) {
    text += " " + person.to_text().substr(0, 4) + "=" + std::to_string(group.size()) + fold.shown_under.at(person).to_text().substr(0, 4);
  }
  return text;
}

void meet(DeviceWriter& a, DeviceWriter& b) {
  a.take_from(b);
  b.take_from(a);
}

}  // namespace

TEST_CASE("a pair that was decided to be one is a group, and undoing it gives both back as they were") {
  DeviceWriter a(1);
  const Opened yes = decide(a, 1, 2, "yes");
  CHECK(links_of(a).group_of(person_of(2)).size() == 2);
  CHECK(links_of(a).shown_under.at(person_of(2)) == person_of(1));
  decide(a, 1, 2, "undo", {yes.entry()});
  const LinkFold after = links_of(a);
  CHECK(after.groups.empty());
  CHECK_FALSE(after.pairs.begin()->second.same.has_value());
  CHECK(after.pairs.begin()->second.history.size() == 2);
}

TEST_CASE("two who decided differently without knowing of each other have joined nobody, until somebody who saw both decides") {
  DeviceWriter a(1);
  DeviceWriter b(2);
  const Opened yes = decide(a, 1, 2, "yes");
  const Opened no = decide(b, 2, 1, "no");
  meet(a, b);
  const LinkFold apart = links_of(a);
  CHECK(told(apart) == told(links_of(b)));
  CHECK(apart.pairs.begin()->second.in_conflict);
  CHECK(apart.groups.empty());
  decide(b, 1, 2, "yes", {yes.entry(), no.entry()});
  meet(a, b);
  CHECK(links_of(a).group_of(person_of(1)).size() == 2);
  CHECK_FALSE(links_of(a).pairs.begin()->second.in_conflict);
}

TEST_CASE("two who decided the same without knowing of each other agree") {
  DeviceWriter a(1);
  DeviceWriter b(2);
  decide(a, 1, 2, "yes");
  decide(b, 1, 2, "yes");
  meet(a, b);
  CHECK(links_of(a).group_of(person_of(1)).size() == 2);
  CHECK(links_of(a).pairs.begin()->second.heads.size() == 2);
}

TEST_CASE("chains and closed chains are one group; a chain that joins two who are not the same joins nobody of it") {
  DeviceWriter a(1);
  DeviceWriter b(2);
  decide(a, 1, 2, "yes");
  decide(a, 2, 3, "yes");
  decide(a, 3, 4, "yes");
  const Opened closing = decide(a, 4, 1, "yes");
  decide(a, 8, 9, "yes");
  CHECK(links_of(a).group_of(person_of(3)).size() == 4);
  const Opened no = decide(b, 1, 3, "no");
  meet(a, b);
  const LinkFold torn = links_of(b);
  CHECK(torn.group_of(person_of(3)).size() == 1);
  CHECK(torn.group_of(person_of(8)).size() == 2);  // the others are as they were
  CHECK(torn.pairs.at(std::minmax(person_of(1), person_of(2))).contradicted);
  CHECK(torn.pairs.at(std::minmax(person_of(1), person_of(4))).contradicted);
  CHECK_FALSE(torn.pairs.at(std::minmax(person_of(8), person_of(9))).contradicted);
  decide(a, 1, 3, "undo", {no.entry()});
  decide(a, 1, 4, "undo", {closing.entry()});
  CHECK(links_of(a).group_of(person_of(3)).size() == 4);  // the chain still holds
}

TEST_CASE("a decision that its examiner did not sign, or that is of one person, joins nobody and is marked") {
  DeviceWriter a(1);
  a.act(clinic_as_exam(), "link", link_body(1, 2, "yes"), {}, {}, false);
  a.act(clinic_as_exam(), "link", link_body(3, 3, "yes"), {}, {}, true);
  const LinkFold fold = links_of(a);
  CHECK(fold.groups.empty());
  CHECK(fold.pairs.empty());
  REQUIRE(fold.marks.size() == 2);
  CHECK((fold.marks[0].mark.text == "signature_bad" || fold.marks[1].mark.text == "signature_bad"));
  CHECK((fold.marks[0].mark.text == "void_pair" || fold.marks[1].mark.text == "void_pair"));
}

TEST_CASE("every order and repetition of decisions by two writers who did not know each other gives one state") {
  using Deed = std::function<void(DeviceWriter&, const Opened&)>;
  const std::vector<Deed> deeds{
      [](DeviceWriter& w, const Opened& first) { decide(w, 1, 2, "undo", {first.entry()}); },
      [](DeviceWriter& w, const Opened& first) { decide(w, 1, 2, "no", {first.entry()}); },
      [](DeviceWriter& w, const Opened& first) { decide(w, 1, 2, "yes", {first.entry()}); },
      [](DeviceWriter& w, const Opened&) { decide(w, 2, 3, "yes"); },
      [](DeviceWriter& w, const Opened&) { decide(w, 1, 3, "no"); },
  };
  std::size_t folds = 0;
  bool same = true;
  for (const Deed& of_a : deeds) {
    for (const Deed& of_b : deeds) {
      DeviceWriter a(1);
      DeviceWriter b(2);
      const Opened first = decide(a, 1, 2, "yes");
      b.take_from(a);
      a.take_from(b);
      of_a(a, first);
      of_b(b, first);
      decide(b, 3, 4, "yes");
      meet(a, b);
      const std::vector<Opened> operations = a.operations(clinic_as_exam());
      REQUIRE(operations.size() == 4);
      const std::string wanted = told(links_from(a, operations));
      std::vector<std::size_t> order{0, 1, 2, 3};
      do {
        std::vector<Opened> turned;
        for (const std::size_t i : order) {
          turned.push_back(operations[i]);
        }
        same = same && told(links_from(a, turned)) == wanted;
        for (std::size_t twice = 0; twice < order.size(); ++twice) {
          std::vector<Opened> repeated = turned;
          repeated.push_back(turned[twice]);
          same = same && told(links_from(a, repeated)) == wanted;
          ++folds;
        }
      } while (std::next_permutation(order.begin(), order.end()));
    }
  }
  CHECK(same);
  CHECK(folds == 25 * 24 * 4);
}

}  // namespace limbledger::ledger::fold_test::links

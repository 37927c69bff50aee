// A register in which hundreds are there twice: no call of conflict.list or pair.list works through all of it. While pairs are left to
// compare they say so and list nobody as alike; a page holds its own rows; after a decision nothing is compared again. Invented people.
#include "core/ledger/fold/records.hpp"
#include "core/ledger/log/log.hpp"
#include "core/service/kept_register.hpp"
#include "core/service/methods/clinic/pair.hpp"
#include "tests/unit/service/desk_fixture.hpp"

#include <array>

namespace limbledger::service::test::many_alike {

namespace {

constexpr unsigned people = 900;

// Each twice, in one place, with names of the same sounds, so that everybody is compared with many.
void enrol_all(DeskFixture& fixture) {
  constexpr std::array<const char*, 5> vowels{"a", "e", "i", "o", "u"};
  std::vector<ledger::NewOperation> operations;
  for (unsigned i = 0; i < people; ++i) {
    const unsigned who = i / 2;
    std::string name = "Kofi Bant";
    for (unsigned left = who, k = 0; k < 4; ++k, left /= 5) {
      name += vowels[left % 5];
      name += "n";
    }
    char born[16];
    std::snprintf(born, sizeof born, "%04u-%02u-%02u", 1940 + who % 70, 1 + who % 12, 1 + who % 28);
    ledger::NewOperation one;
    REQUIRE(model::RequestId::from_text(request_id(5000), one.request).empty());
    one.object = fixture.desk->log().object_for(ledger::ObjectType::person, one.request, static_cast<std::uint16_t>(i));
    one.type = ledger::ObjectType::person;
    one.op = "person";
    one.by = fixture.desk->examiner();
    one.body_json = R"({"names":[{"text":")" + name + R"("}],"birth":{"date":")" + born + R"("},"sex":"male","home":"Upper Ford"})";
    operations.push_back(one);
  }
  const auto appended = fixture.desk->log().append(operations, fixture.desk->edition().id(), nullptr);
  REQUIRE(appended.has_value());
  fixture.desk->records().changed(*appended);
}

}  // namespace

TEST_CASE("among hundreds who look alike a call compares a part alone and says so, a page makes its own rows, and a decision compares nobody again") {
  DeskFixture fixture;
  enrol_all(fixture);
  std::string queue = fixture.ok("conflict.list", R"({"language":"en","limit":20})");
  CHECK(at(queue, "/total") == "0");
  CHECK(at(queue, "/looking/compared") == std::to_string(compared_a_call));
  CHECK(at(queue, "/text").find("WHO LOOKS ALIKE IS NOT LISTED YET: 40000 of ") != std::string::npos);
  const std::size_t of = std::stoul(at(queue, "/looking/of"));
  CHECK(of > compared_a_call);
  std::size_t calls = 1;
  for (; !at(queue, "/looking").empty() && calls < 20; ++calls) {
    queue = fixture.ok("conflict.list", R"({"language":"en","limit":20})");
  }
  CHECK(calls <= of / compared_a_call + 2);
  const std::size_t total = std::stoul(at(queue, "/total"));
  CHECK(total >= people / 2);
  CHECK(at(queue, "/queue/19/about") == "look_alike");
  CHECK(at(queue, "/queue/20").empty());
  CHECK(at(fixture.ok("pair.list", R"({"limit":1})"), "/total") == std::to_string(total));
  // The next page goes on where this one ends.
  CHECK(at(fixture.ok("conflict.list", R"({"limit":1,"from":19})"), "/queue/0/pair/persons") == at(queue, "/queue/19/pair/persons"));

  const match::Register* compared = fixture.desk->kept_register().people.get();
  fixture.ok("pair.decide", R"({"persons":)" + at(queue, "/queue/0/pair/persons") + R"(,"same":"no","reason":"asked_person","seen":[],"request":")" + request_id(2) + "\"}");
  const std::string after = fixture.ok("conflict.list", R"({"limit":20})");
  CHECK(at(after, "/looking").empty());
  CHECK(at(after, "/queue/0/pair/persons") != at(queue, "/queue/0/pair/persons"));
  CHECK(fixture.desk->kept_register().people.get() == compared);
  // Who is registered now has not been compared with anybody.
  fixture.ok("person.register", R"({"names":[{"text":"Awa Invented"}],"sex":"female","request":")" + request_id(3) + "\"}");
  CHECK_FALSE(at(fixture.ok("pair.list", "{}"), "/looking").empty());
}

}  // namespace limbledger::service::test::many_alike

// The form of an infant's hip, through the desk: what is for the first three months alone is offered there and nowhere else, and never
// where the age is not known (hip and ankle tests, H28: "older than 3 months rely on abduction and Galeazzi", Barlow once; consultation
// S02). All people are invented; the world stands at 2026-11-24.
#include "core/service/methods/say/form.hpp"
#include "tests/unit/service/desk_fixture.hpp"

using namespace limbledger;
using service::test::at;

namespace {

struct InfantForm : service::test::DeskFixture {
  unsigned requests = 8800;
  std::string request() { return R"("request":")" + service::test::request_id(++requests) + "\""; }
  std::string of(const std::string& birth) {
    const std::string person = at(ok("person.register", R"({"names":[{"text":"Invented Infant"}],"sex":"female")" +
                                                            (birth.empty() ? "" : R"(,"birth":)" + birth) + "," + request() + "}"),
                                  "/person/person");
    const std::string exam = at(ok("exam.open", R"({"complaint":"infant_hip","setting":"outreach","person":")" + person + "\"," + request() + "}"), "/exam/exam");
    return ok("form.describe", R"({"complaint":"infant_hip","exam":")" + exam + "\"}");
  }
};

[[nodiscard]] bool holds(const std::string& form, const std::string& text) { return form.find(text) != std::string::npos; }
// Whether a step of a position is this item: what is left out has its label beside it, not a control.
[[nodiscard]] bool offers(const std::string& form, const std::string& item) {
  for (int position = 0; !at(form, "/positions/" + std::to_string(position) + "/position").empty(); ++position) {
    for (int step = 0;; ++step) {
      const std::string name = at(form, "/positions/" + std::to_string(position) + "/steps/" + std::to_string(step) + "/item");
      if (name.empty()) {
        break;
      }
      if (name == item) {
        return true;
      }
    }
  }
  return false;
}

}  // namespace

TEST_CASE("Ortolani and Barlow are steps of an infant under three months, Barlow last; on the day of three months they are not") {
  InfantForm desk;
  const std::string young = desk.of(R"({"date":"2026-08-25"})");  // two months and thirty days
  CHECK(offers(young, "hip.ortolani"));
  CHECK(offers(young, "hip.barlow"));
  CHECK(young.find(R"("item":"hip.ortolani")") < young.find(R"("item":"hip.barlow")"));
  CHECK(at(young, "/not_applicable/0/item").empty());
  const std::string older = desk.of(R"({"date":"2026-08-24"})");
  CHECK_FALSE(offers(older, "hip.ortolani"));
  CHECK_FALSE(offers(older, "hip.barlow"));
}

TEST_CASE("S02: at five months the form has no Barlow and says why, and keeps the height of the knees and abduction in the minimum set") {
  InfantForm desk;
  const std::string form = desk.of(R"({"date":"2026-06-20"})");
  CHECK_FALSE(offers(form, "hip.ortolani"));
  CHECK_FALSE(offers(form, "hip.barlow"));
  CHECK(at(form, "/not_applicable/0/item") == "hip.ortolani");
  CHECK(at(form, "/not_applicable/1/item") == "hip.barlow");
  CHECK(at(form, "/not_applicable/1/because") == "msg.form.only_younger");
  CHECK(at(form, "/not_applicable/1/sides/0") == "left");
  CHECK(at(form, "/not_applicable/1/sides/1") == "right");
  CHECK(offers(form, "hip.knee_height_lower"));
  CHECK(offers(form, "hip.abduction_passive_flexed"));
  CHECK_FALSE(holds(form, R"("position":"standing")"));
  CHECK_FALSE(holds(form, R"("position":"walking")"));
}

TEST_CASE("where the age is not known, or may be three months, Barlow is left out by name with that reason") {
  InfantForm desk;
  // Born some time in a month or year, or not known: each may be older than three months.
  for (const std::string birth : {"", R"({"date":"2026"})", R"({"date":"2026-08"})"}) {
    CAPTURE(birth);
    const std::string form = desk.of(birth);
    CHECK_FALSE(offers(form, "hip.barlow"));
    CHECK(holds(form, R"({"item":"hip.barlow","why":"age_unknown")"));
    CHECK(holds(form, R"({"item":"hip.ortolani","why":"age_unknown")"));
  }
  // A month that ends less than three months ago is young enough on each of its days.
  CHECK(offers(desk.of(R"({"date":"2026-09"})"), "hip.barlow"));
  // Nobody in particular: a form for anybody offers neither.
  const std::string anybody = desk.ok("form.describe", R"({"complaint":"infant_hip"})");
  CHECK_FALSE(offers(anybody, "hip.barlow"));
  CHECK(holds(anybody, R"({"item":"hip.barlow","why":"age_unknown")"));
  const std::string paper = desk.ok("form.write", R"({"complaint":"infant_hip"})");
  CHECK(holds(paper, "only for a younger child; the age is not known closely enough"));
}

// A form that goes on where it stopped, late entry from paper, pregnancy, what is dropped first; through a desk.
#include "core/service/methods/say/form.hpp"

#include "tests/unit/invented/edition.hpp"
#include "tests/unit/service/desk_fixture.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

using namespace limbledger;
using service::test::at;

namespace {

// One exam of an acute knee that findings are put into.
class Sitting {
 public:
  explicit Sitting(const std::string& complaint = "acute_knee") : complaint_(complaint) {
    const std::string opened = fixture.ok("exam.open", R"({"complaint":")" + complaint + R"(","side":"right","setting":"outreach",)" + request() + "}");
    exam_ = R"("exam":")" + at(opened, "/exam/exam") + "\"";
    seen_ = at(opened, "/revision/0");
  }
  [[nodiscard]] std::string params(const std::string& findings) {
    return R"({"findings":[)" + findings + "]," + exam_ + R"(,"seen":[")" + seen_ + R"("],)" + request() + "}";
  }
  void record(const std::string& findings) { seen_ = at(fixture.ok("finding.record", params(findings)), "/revision/0"); }
  [[nodiscard]] std::string form(const std::string& more = "") {
    return fixture.ok("form.describe", R"({"complaint":")" + complaint_ + "\"," + exam_ + more + "}");
  }
  [[nodiscard]] std::string read() { return fixture.ok("exam.read", "{" + exam_ + "}"); }

  service::test::DeskFixture fixture;

 private:
  [[nodiscard]] std::string request() { return R"("request":")" + service::test::request_id(++requests_) + "\""; }
  std::string complaint_;
  std::string exam_;
  std::string seen_;
  unsigned requests_ = 7000;
};

[[nodiscard]] std::string answered_as(const std::string& item, const std::string& side, const std::string& says = "no") {
  return R"({"item":")" + item + R"(","side":")" + side + R"(","value":{"kind":"answer","answer":")" + says + "\"}}";
}

// Where a step stands in the JSON of a form: "/positions/1/steps/0".
[[nodiscard]] std::string place_of(const std::string& form, const std::string& item) {
  for (int position = 0;; ++position) {
    const std::string steps = "/positions/" + std::to_string(position) + "/steps/";
    if (at(form, steps + "0/item").empty()) {
      return {};
    }
    for (int step = 0;; ++step) {
      const std::string found = at(form, steps + std::to_string(step) + "/item");
      if (found.empty()) {
        break;
      }
      if (found == item) {
        return steps + std::to_string(step);
      }
    }
  }
}

[[nodiscard]] long number_at(const std::string& form, const std::string& pointer) { return std::stol(at(form, pointer)); }

}  // namespace

TEST_CASE("a form goes on where it stopped: sides that are recorded, reasons why not, and what of the minimum set is open") {
  Sitting sitting;
  const std::string fresh = sitting.form();
  CHECK(at(fresh, "/resume_at") == at(fresh, "/positions/0/steps/0/item"));
  CHECK(at(fresh, place_of(fresh, "vessel.pulse_dorsalis_pedis") + "/recorded").empty());
  const long whole = number_at(fresh, "/seconds");
  const long minimum = number_at(fresh, "/minimum_seconds");

  const std::string pulse = R"("value":{"kind":"grade","scale":"pulse/0-3","grade":"2"}})";
  sitting.record(R"({"item":"vessel.pulse_dorsalis_pedis","side":"right",)" + pulse);
  std::string form = sitting.form();
  std::string step = place_of(form, "vessel.pulse_dorsalis_pedis");
  CHECK(at(form, step + "/recorded/0/side") == "right");
  CHECK_FALSE(at(form, step + "/recorded/0/findings/0").empty());
  CHECK(at(form, step + "/recorded/1").empty());
  CHECK(at(form, step + "/done").empty());  // the left is open
  CHECK(at(form, "/minimum_open").find("vessel.pulse_dorsalis_pedis") != std::string::npos);

  sitting.record(R"({"item":"vessel.pulse_dorsalis_pedis","side":"left","value":{"kind":"not_done","reason":"covered"}})");
  form = sitting.form();
  step = place_of(form, "vessel.pulse_dorsalis_pedis");
  CHECK(at(form, step + "/done") == "true");
  CHECK(at(form, step + "/recorded/0/not_done") + at(form, step + "/recorded/1/not_done") == "covered");
  CHECK(at(form, "/minimum_open").find("vessel.pulse_dorsalis_pedis") == std::string::npos);
  CHECK(number_at(form, "/seconds") < whole);
  CHECK(number_at(form, "/minimum_seconds") < minimum);
  // The order of the whole form is what it was.
  CHECK(place_of(form, "knee.lachman") == place_of(fresh, "knee.lachman"));
}

TEST_CASE("a step is done by what may stand for it: both ends of an arc, or the item that replaces it") {
  Sitting sitting;
  sitting.record(R"({"item":"knee.lachman_prone","side":"right","value":{"kind":"not_done","reason":"pain"}})");
  const std::string form = sitting.form();
  const std::string step = place_of(form, "knee.lachman");
  CHECK(at(form, step + "/recorded/0/by") == "knee.lachman_prone");
  CHECK(at(form, "/minimum_open").find(R"("knee.lachman","side":"right")") == std::string::npos);
  CHECK(at(form, "/minimum_open").find(R"("knee.lachman","side":"left")") != std::string::npos);
}

TEST_CASE("C16: a value carried over, or reported by the person alone, leaves its step and the minimum set open; taken over, it is done") {
  Sitting sitting;
  const std::string steps = R"({"item":"history.steps_at_once","side":"midline","value":{"kind":"answer","answer":"yes"},"origin":")";
  sitting.record(steps + "self_reported\"}");
  sitting.record(R"({"item":"vessel.pulse_dorsalis_pedis","side":"right","value":{"kind":"grade","scale":"pulse/0-3","grade":"2"},"origin":"carried_over"})");
  std::string form = sitting.form();
  const std::string step = place_of(form, "history.steps_at_once");
  CHECK(at(form, step + "/recorded/0/to_confirm") == "true");
  CHECK(at(form, step + "/done").empty());
  CHECK(at(form, "/minimum_open").find("history.steps_at_once") != std::string::npos);
  CHECK(at(form, "/minimum_open").find(R"("vessel.pulse_dorsalis_pedis","side":"right")") != std::string::npos);
  const std::string held = at(sitting.read(), "/exam/findings/0/item") == "history.steps_at_once" ? at(sitting.read(), "/exam/findings/0/entry") : at(sitting.read(), "/exam/findings/1/entry");
  sitting.record(R"({"item":"history.steps_at_once","side":"midline","value":{"kind":"answer","answer":"yes"},"replaces":[")" + held + "\"]}");
  form = sitting.form();
  CHECK(at(form, step + "/done") == "true");
  CHECK(at(form, "/minimum_open").find("history.steps_at_once") == std::string::npos);
}

TEST_CASE("what is recorded takes no time: a short form keeps it and has room for more") {
  Sitting sitting;
  const std::string before = sitting.form(R"(,"minutes":10)");
  sitting.record(answered_as("history.fever", "midline"));
  const std::string after = sitting.form(R"(,"minutes":10)");
  CHECK(at(after, place_of(after, "history.fever") + "/done") == "true");
  CHECK(number_at(after, "/seconds") < number_at(before, "/seconds"));
  CHECK_FALSE(at(before, "/left_out/0/item").empty());
}

TEST_CASE("late in pregnancy nothing is done face down, and lying on the back is tilted to the left; earlier nothing changes") {
  Sitting sitting("chronic_knee");
  const auto positions = [](const std::string& form) {
    std::vector<std::string> names;
    for (int i = 0; !at(form, "/positions/" + std::to_string(i) + "/position").empty(); ++i) {
      names.push_back(at(form, "/positions/" + std::to_string(i) + "/position"));
    }
    return names;
  };
  const auto has = [](const std::vector<std::string>& all, const char* one) { return std::find(all.begin(), all.end(), one) != all.end(); };
  CHECK(has(positions(sitting.form()), "supine"));
  sitting.record(answered_as("body.pregnancy", "midline", "yes"));
  const std::string tilted = sitting.form();
  CHECK_FALSE(has(positions(tilted), "prone"));
  CHECK_FALSE(has(positions(tilted), "supine"));
  CHECK(has(positions(tilted), "left_tilt"));
  const std::string step = place_of(tilted, "knee.effusion_stroke");
  CHECK(at(tilted, step + "/positions").find("left_tilt") != std::string::npos);
  CHECK(tilted.find("msg.form.lies_tilted") != std::string::npos);
  // What the form shows can be recorded as it says.
  sitting.record(
      R"({"item":"knee.effusion_stroke","side":"right","position":"left_tilt","value":{"kind":"grade","scale":"effusion/stroke","grade":"0"}})");
  sitting.record(R"({"item":"body.pregnancy_weeks","side":"midline","value":{"kind":"count","count":12}})");
  CHECK(has(positions(sitting.form()), "supine"));
}

TEST_CASE("a withheld step says what lifts it, and a finding for it is still taken") {
  Sitting sitting;
  sitting.record(answered_as("general.concern_knee_fracture", "right", "yes"));
  const std::string form = sitting.form();
  CHECK(at(form, "/withheld/0/by") == "concern.knee_fracture");
  CHECK(at(form, "/withheld/0/lifted_by") == "general.concern_knee_fracture");
  CHECK(at(form, "/withheld/0/film_lifts") == "knee_fracture_not_seen");
  CHECK(at(form, "/withheld/0/until") == "msg.until.film");
  const std::string item = at(form, "/withheld/0/item");
  const std::string knowingly = R"({"item":")" + item +
                                R"(","side":"right","value":{"kind":"not_done","reason":"pain"}})";
  sitting.record(knowingly);
  const std::string after = sitting.form();
  std::size_t row = 0;
  while (!at(after, "/withheld/" + std::to_string(row) + "/item").empty() && at(after, "/withheld/" + std::to_string(row) + "/item") != item) {
    ++row;  // what a knee too painful to be moved raises withholds a step too
  }
  CHECK(at(after, "/withheld/" + std::to_string(row) + "/recorded/0/side") == "right");
}

TEST_CASE("HC-063: from paper: entered later with the time of the examination, told as such for ever, and it settles what it was examined for") {
  Sitting sitting;
  const std::string examined = "2026-11-24T08:30:00.000Z";  // the desk's clock says 10:15
  sitting.record(R"({"item":"gait.steps_now","side":"midline","origin":"from_paper","examined_at":")" + examined +
                 R"(","value":{"kind":"count","count":2}})");
  const std::string read = sitting.read();
  CHECK(at(read, "/exam/findings/0/origin") == "from_paper");
  CHECK(at(read, "/exam/findings/0/examined_at") == examined);
  CHECK(at(read, "/exam/findings/0/entered_at") > examined);
  CHECK(sitting.form().find(R"("resume_at")") != std::string::npos);
  // Nobody examined tomorrow.
  CHECK(service::test::codes_of(service::test::call(
            *sitting.fixture.desk, "finding.record",
            sitting.params(R"({"item":"knee.pop","side":"right","origin":"from_paper","examined_at":"2026-11-26T08:30:00.000Z","value":{"kind":"answer","answer":"no"}})"))) !=
        "");
}

TEST_CASE("where minutes are short what the page says can wait goes first, then what comes late, then from the end") {
  InventedTexts texts = invented_texts();
  const std::string squat = R"({"item":"knee.squat","position":"standing"})";
  texts.sequences.replace(texts.sequences.find(squat), squat.size(), R"({"item":"knee.squat","position":"standing","drop":2})");
  const std::string late = R"({"item":"knee.mcmurray","position":"supine"})";
  texts.sequences.replace(texts.sequences.find(late), late.size(), R"({"item":"knee.mcmurray","position":"supine","drop":1})");
  const auto edition = reference::Edition::load(texts.view());
  REQUIRE(edition.has_value());
  service::FormAsk ask;
  ask.sequence = &(*edition)->sequences()[0];
  ask.age = model::AgeInterval{40, 40};
  const auto whole = service::lay_out_form(**edition, ask).seconds.steps;
  std::vector<std::string> order;
  for (auto seconds = whole; seconds > 0; seconds -= 5) {
    ask.seconds = seconds;
    for (const service::LeftStep& left : service::lay_out_form(**edition, ask).left_out) {
      if (std::find(order.begin(), order.end(), left.item.text) == order.end()) {
        order.push_back(left.item.text);
      }
    }
  }
  REQUIRE(order.size() >= 3);
  CHECK(order[0] == "knee.mcmurray");
  CHECK(order[1] == "knee.squat");
  CHECK(order[2] == "knee.patellar_apprehension");
}

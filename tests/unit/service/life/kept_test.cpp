// What was raised once, and what was done about it, stays to be read: through an exchange of sides, several answers, a graver alert that
// it now stands inside, and answers told in two ways. Sources: clinical safety, C2 (a correction leaves "raised, withdrawn by correction",
// a flag inside another shows inside it) and C10; how what was said before is kept beside the line is our own rule. All is invented.
#include "tests/unit/service/life/life.hpp"

using namespace limbledger;
using namespace limbledger::service;
using namespace limbledger::service::test;
using namespace limbledger::service::test::life;

namespace {

class Kept : public Told {
 public:
  void open_free(const std::string& side) { open(R"("complaint":"free","side":")" + side + R"(","person":")" + mother + "\""); }
  void open_fall() {
    const std::string old = person_of("Old Invented", "1940-01-01");
    open(R"("complaint":"hip_after_fall","side":"left","person":")" + old + "\"");
    answer("history.fall_recent", "midline", "yes");
  }
  std::string film(const std::string& side, const std::string& seen_on_it, const std::string& replaces = "") {
    return tell("history.film_result", side, R"("kind":"choices","choices":[")" + seen_on_it + "\"]", replaces);
  }
  std::string steps(int count, const std::string& replaces = "") {
    return at(tell("gait.steps_now", "midline", R"("kind":"count","count":)" + std::to_string(count), replaces), "/recorded/0/entry");
  }
  void both(const std::string& item) {
    answer(item, "left", "yes");
    tell(item, "left", R"("kind":"answer","answer":"no")", "", R"(,"beside":true)");
  }
  void turn() { write("exam.swap_sides", R"("reason":"the form was turned round","confirmed":["alert.would_end"])"); }
  void called(const std::string& alert, const std::string& side, const std::string& what) { handle(alert, side, R"("action":")" + what + "\""); }
  [[nodiscard]] std::string said(const std::string& alert, const std::string& member, const std::string& side = "") const { return of_alert(alerts(), alert, member, side); }
  [[nodiscard]] bool printed(const std::string& text) const { return note().find(text) != std::string::npos; }
  [[nodiscard]] std::string note() const {
    std::string flat;
    for (const char one : at(ok("note.write", R"({"exam":")" + exam + "\"}"), "/text")) {
      const bool blank = one == '\n' || one == ' ';
      if (!blank || flat.empty() || flat.back() != ' ') {
        flat += blank ? ' ' : one;
      }
    }
    return flat;
  }
};

}  // namespace

TEST_CASE_FIXTURE(Kept, "C2: what is told in two ways elsewhere takes back no alert that stands") {
  open(R"("complaint":"acute_knee","side":"left","person":")" + mother + "\"");
  both("vessel.foot_cold");
  for (const char* pulse : {"vessel.pulse_dorsalis_pedis", "vessel.pulse_posterior_tibial"}) {
    tell(pulse, "left", R"("kind":"grade","scale":"pulse/0-3","grade":"0")");
  }
  REQUIRE(said("ali", "/state", "left") == "raised");
  for (const char* other : {"ankle.atfl_tender", "ankle.cfl_tender", "history.giving_way", "history.locking"}) {
    CAPTURE(other);
    both(other);
    CHECK(said("ali", "/state", "left") == "raised");
    CHECK(said("ali", "/interrupts", "left") == "true");
  }
}

TEST_CASE_FIXTURE(Kept, "C10: an exchange of sides that takes an alert away leaves its line and what was done, on the leg that it rests on") {
  for (const bool handled : {true, false}) {
    CAPTURE(handled);
    open_free("left");
    film("midline", "knee_fracture_seen");
    answer("knee.stretch_pain_calf", "left", "yes");
    REQUIRE(said("acs", "/state", "left") == "raised");
    if (handled) {
      called("acs", "left", "CALLED the surgeon");
    }
    turn();
    CHECK(said("acs", "/state", "left") == "absent");
    CHECK(said("acs", "/state", "right") == "withdrawn_by_correction");
    CHECK(said("acs", "/handled/action", "right") == (handled ? "CALLED the surgeon" : ""));
    CHECK(said("acs", "/rested_on/0/side", "right") != "left");
    CHECK(said("acs", "/rested_on/1/side", "right") != "left");
    CHECK(printed("CALLED the surgeon") == handled);
    amend(R"("side":"right")");
    CHECK(said("acs", "/state", "right") == "raised");
    CHECK(said("acs", "/handled_before/action", "right") == (handled ? "CALLED the surgeon" : ""));
  }
}

TEST_CASE_FIXTURE(Kept, "C10: what was done about an alert that rests on no leg stays beside it when the sides were exchanged and it goes") {
  open_fall();
  std::string entry = steps(0);
  REQUIRE(said("hip_fx_old", "/state", "left") == "raised");
  called("hip_fx_old", "left", "sent for a film");
  turn();
  REQUIRE(said("hip_fx_old", "/state", "left") == "handled");
  steps(4, entry);
  CHECK(said("hip_fx_old", "/state", "left") == "withdrawn_by_correction");
  CHECK(said("hip_fx_old", "/handled/action", "left") == "sent for a film");
  CHECK(said("hip_fx_old", "/state", "right") == "absent");
  // The side first, and then the exchange.
  open_fall();
  steps(0);
  called("hip_fx_old", "left", "sent for a film");
  amend(R"("side":"right")");
  turn();
  CHECK(said("hip_fx_old", "/state", "left") == "withdrawn_by_correction");
  CHECK(said("hip_fx_old", "/handled/action", "left") == "sent for a film");
  CHECK(printed("sent for a film"));
  CHECK(printed("Corrected since: the side of the complaint. DONE"));
  // A film of no side, and a complaint of none.
  open_free("left");
  film("midline", "knee_fracture_seen");
  called("fracture", "left", "rang the district");
  turn();
  amend(R"("side":"midline")");
  CHECK(said("fracture", "/handled/action", "left") == "rang the district");
  CHECK(printed("rang the district"));
}

TEST_CASE_FIXTURE(Kept, "C2: what was done about an alert shows inside the graver one that it now stands inside") {
  open(R"("complaint":"acute_knee","side":"left","injured_on":"2026-11-23","person":")" + mother + "\"");
  film("left", "shaft_fracture_seen");
  called("fracture", "left", "CALLED trauma for the shaft");
  REQUIRE(said("fracture", "/state", "left") == "handled");
  answer("knee.look_deformity", "left", "yes");
  REQUIRE(said("fracture", "/state", "left") == "absent");
  CHECK(said("knee_disloc_vasc", "/state", "left") == "raised");
  CHECK(said("knee_disloc_vasc", "/handled", "left") == "");
  CHECK(said("knee_disloc_vasc", "/handled_also/0/alert", "left") == "alert.fracture");
  CHECK(said("knee_disloc_vasc", "/handled_also/0/action", "left") == "CALLED trauma for the shaft");
  CHECK(said("knee_disloc_vasc", "/handled_also/0/unseen", "left") == "");
  CHECK(printed("CALLED trauma for the shaft"));
  write("exam.transfer", R"("set":{})");
  CHECK(at(ok("transfer.write", R"({"exam":")" + exam + "\"}"), "/text").find("CALLED trauma") != std::string::npos);
}

TEST_CASE_FIXTURE(Kept, "C2: of several answers to one alert none is lost: two in a row, and one on each side of an exchange or of a move") {
  const auto open_film = [&] {
    open_free("left");
    film("left", "knee_fracture_seen");
  };
  open_film();
  called("fracture", "left", "ONE");
  called("fracture", "left", "TWO");
  CHECK(said("fracture", "/handled/action", "left") == "TWO");
  CHECK(said("fracture", "/handled_also/0/action", "left") == "ONE");
  CHECK(said("fracture", "/handled_also/1", "left") == "");
  CHECK(printed("ONE"));
  open_film();
  called("fracture", "left", "ONE");
  turn();
  CHECK(said("fracture", "/handled_before/action", "right") == "ONE");
  CHECK(said("fracture", "/handled_also", "right") == "");
  called("fracture", "right", "TWO");
  turn();
  CHECK(said("fracture", "/handled/action", "left") == "ONE");
  CHECK(said("fracture", "/handled_also/0/action", "left") == "TWO");
  CHECK(printed("TWO"));
  open_film();
  called("fracture", "left", "ONE");
  move_to(person_of("Other Invented", "1990-01-01"));
  called("fracture", "left", "TWO");
  move_to(mother);
  CHECK(said("fracture", "/handled/action", "left") == "ONE");
  CHECK(said("fracture", "/handled_also/0/action", "left") == "TWO");
}

TEST_CASE_FIXTURE(Kept, "C2: a withdrawn line names what it rested on as that was told, and what was corrected, whether it was handled or not") {
  for (const bool handled : {true, false}) {
    CAPTURE(handled);
    open_fall();
    const std::string entry = steps(0);
    if (handled) {
      called("hip_fx_old", "left", "sent for a film");
    }
    steps(4, entry);
    REQUIRE(said("hip_fx_old", "/state", "left") == "withdrawn_by_correction");
    CHECK(said("hip_fx_old", "/rested_on", "left").find(R"("count":0)") != std::string::npos);
    CHECK(said("hip_fx_old", "/rested_on", "left").find(R"("count":4)") == std::string::npos);
    CHECK(printed("Rested on, as it was told then: "));
    CHECK(printed("Steps taken now (0 to 4): 0"));
    CHECK(printed("Raised, withdrawn by correction"));
  }
  open(R"("complaint":"acute_knee","side":"left","person":")" + child + "\"");
  choose("hip.leg_attitude", "left", "attitude_turned_out");
  REQUIRE(said("scfe", "/state", "left") == "raised");
  called("scfe", "left", "called the ward");
  amend_person(child, R"("birth":{"date":"1990-05-01"})");
  CHECK(printed("Corrected since: the date of birth. DONE, written "));
  CHECK(printed("called the ward"));
}

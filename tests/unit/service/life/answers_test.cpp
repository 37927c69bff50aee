// What was done or said about an alert answers it where it was said: on that leg, of that person, of what was read then. Sources: clinical
// safety, C2 (an alert interrupts once, on the answer that settles it) and C10 (changing person or side lists what is derived from it); that
// a value measured again and no worse is nothing new, and that in doubt it is, are our own rules.
#include "tests/unit/service/after/clinic.hpp"
#include "tests/unit/service/life/life.hpp"

using namespace limbledger;
using namespace limbledger::service;
using namespace limbledger::service::test;
using namespace limbledger::service::test::life;

namespace {

class Answered : public Told {
 public:
  void out_of_joint() {
    open(R"("complaint":"acute_knee","side":"left","injured_on":"2026-11-23","person":")" + mother + "\"");
    answer("history.knee_dislocated", "left", "yes");
    handle("knee_disloc_vasc", "left", R"("action":"called the district")");
    REQUIRE(of_alert(alerts(), "knee_disloc_vasc", "/state", "left") == "handled");
  }
  [[nodiscard]] std::string said(const std::string& alert, const std::string& member, const std::string& side = "") const { return of_alert(alerts(), alert, member, side); }
  void turn() { write("exam.swap_sides", R"("reason":"the form was turned round","confirmed":["alert.would_end"])"); }
};

}  // namespace

TEST_CASE_FIXTURE(Answered, "C10: after an exchange of sides an alert is asked again on the leg where it now is, with what was said before; turned back, it was answered") {
  out_of_joint();
  turn();
  CHECK(said("knee_disloc_vasc", "/state", "right") == "raised");
  CHECK(said("knee_disloc_vasc", "/interrupts", "right") == "true");
  CHECK(said("knee_disloc_vasc", "/handled", "right") == "");
  CHECK(said("knee_disloc_vasc", "/handled_before/action", "right") == "called the district");
  CHECK(said("knee_disloc_vasc", "/handled_before/corrected", "right") == R"(["exam.sides"])");
  CHECK(said("knee_disloc_vasc", "/state", "left") == "absent");
  turn();
  CHECK(said("knee_disloc_vasc", "/state", "left") == "handled");
  turn();
  handle("knee_disloc_vasc", "right", R"("action":"called again: RIGHT")");
  CHECK(said("knee_disloc_vasc", "/state", "right") == "handled");
  CHECK(said("knee_disloc_vasc", "/handled/action", "right") == "called again: RIGHT");
  const std::string read = ok("exam.read", R"({"exam":")" + exam + "\"}");
  CHECK(at(read, "/exam/alerts_handled/0/corrected") == R"(["exam.sides"])");
  CHECK(at(read, "/exam/alerts_handled/0/measured_again") == "");
  // Signing names it as without an action while nobody has answered it again.
  out_of_joint();
  turn();
  CHECK(write("exam.sign", R"("read_aloud":"invented, RIGHT knee","confirmed":["person.mismatch"])").find("\"alerts\"") != std::string::npos);
}

TEST_CASE_FIXTURE(Answered, "C10: an alert that rests on no leg stays answered when the sides are exchanged") {
  const std::string old = person_of("Old Invented", "1940-01-01");
  open(R"("complaint":"hip_after_fall","side":"left","person":")" + old + "\"");
  answer("history.fall_recent", "midline", "yes");
  answer("history.walking_lost", "midline", "yes");
  handle("hip_fx_old", "left", R"("action":"sent for a film")");
  turn();
  CHECK(said("hip_fx_old", "/state", "left") == "handled");
}

TEST_CASE_FIXTURE(Answered, "C10: an exam that is moved to another person has its alerts asked again; one that was nobody's yet has not") {
  out_of_joint();
  move_to(child);
  CHECK(said("knee_disloc_vasc", "/state") == "raised");
  CHECK(said("knee_disloc_vasc", "/handled_before/corrected") == R"(["exam.person"])");
  move_to(mother);
  CHECK(said("knee_disloc_vasc", "/state") == "handled");
  open(R"("complaint":"acute_knee","side":"left","injured_on":"2026-11-23")");
  answer("history.knee_dislocated", "left", "yes");
  handle("knee_disloc_vasc", "left", R"("action":"called the district")");
  move_to(mother);
  CHECK(said("knee_disloc_vasc", "/state") == "handled");
}

TEST_CASE_FIXTURE(Answered, "C2: a value measured again that says no worse interrupts no second time; a graver one does, and so does one that came after it had gone") {
  const auto open_hot_joint = [&] {
    open(R"("complaint":"chronic_knee","side":"left","person":")" + mother + "\"");
    answer("knee.look_skin_hot_red", "left", "yes");
    tell("knee.effusion_stroke", "left", R"("kind":"grade","scale":"effusion/stroke","grade":"2+")");
    answer("knee.joint_line_medial_tender", "left", "yes");
    tell("knee.flexion_active", "left", R"("kind":"angle","toward_deg":40)");
  };
  const auto heat = [&](const std::string& cel, const std::string& replaces = "") {
    return tell("general.temperature", "midline", R"("kind":"temperature","cel":)" + cel, replaces);
  };
  const auto entry_of = [](const std::string& reply) { return at(reply, "/recorded/0/entry"); };
  open_hot_joint();
  std::string entry = entry_of(heat("39.1"));
  REQUIRE(said("septic_adult", "/state") == "raised");
  handle("septic_adult", "left", R"("action":"sent today")");
  for (const char* cel : {"39.1", "39.0", "38.6"}) {
    CAPTURE(cel);
    entry = entry_of(heat(cel, entry));
    CHECK(said("septic_adult", "/state") == "handled");
    CHECK(said("septic_adult", "/handled/action") == "sent today");
  }
  entry = entry_of(heat("40.2", entry));
  CHECK(said("septic_adult", "/state") == "raised");
  CHECK(said("septic_adult", "/handled_before/action") == "sent today");

  open_hot_joint();
  entry = entry_of(heat("39.1"));
  handle("septic_adult", "left", R"("reason":"read on another person")");
  entry = entry_of(heat("36.8", entry));
  REQUIRE(said("septic_adult", "/state") == "withdrawn_by_correction");
  entry = entry_of(heat("38.9", entry));
  CHECK(said("septic_adult", "/state") == "raised");
  // Written anew, and not in the place of what was read: in doubt it interrupts.
  open_hot_joint();
  const std::string first = heat("39.1");
  handle("septic_adult", "left", R"("action":"sent today")");
  write("finding.withdraw", R"("finding":")" + at(first, "/recorded/0/finding") + R"(","reason":"invented","confirmed":["alert.would_end"])");
  heat("38.9");
  CHECK(said("septic_adult", "/state") == "raised");
}

// C2: an alert interrupts once, on the answer that settles it; which sentences are graver is our own convention (alerts.json).
TEST_CASE_FIXTURE(Answered, "C2: under a graver sentence an old answer is none: a knee out of line that was answered comes again when the pulse goes, once") {
  const auto pulse_of = [&](const std::string& item, const std::string& side, const std::string& grade, const std::string& replaces = "") {
    return tell("vessel." + item, side, R"("kind":"grade","scale":"pulse/0-3","grade":")" + grade + "\"", replaces);
  };
  open(R"("complaint":"acute_knee","side":"left","injured_on":"2026-11-23","person":")" + mother + "\"");
  answer("knee.look_deformity", "left", "yes");
  REQUIRE(said("knee_disloc_vasc", "/message") == "msg.alert.knee_disloc_vasc.deformed");
  handle("knee_disloc_vasc", "left", R"("action":"splinted, car called")");
  // What says no more interrupts nobody.
  answer("knee.bruising", "left", "yes");
  answer("history.knee_dislocated", "left", "yes");
  CHECK(said("knee_disloc_vasc", "/state") == "handled");
  CHECK(said("knee_disloc_vasc", "/handled/action") == "splinted, car called");
  const std::string before = said("knee_disloc_vasc", "/times_raised");
  pulse_of("pulse_dorsalis_pedis", "right", "2");
  const std::string gone = pulse_of("pulse_dorsalis_pedis", "left", "0");
  CHECK(of_alert(gone, "knee_disloc_vasc", "/message") == "msg.alert.knee_disloc_vasc.no_pulse_dorsal");
  CHECK(of_alert(gone, "knee_disloc_vasc", "/state") == "raised");
  CHECK(of_alert(gone, "knee_disloc_vasc", "/interrupts") == "true");
  CHECK(of_alert(gone, "knee_disloc_vasc", "/handled") == "");
  CHECK(of_alert(gone, "knee_disloc_vasc", "/handled_before/action") == "splinted, car called");
  CHECK(std::stoi(of_alert(gone, "knee_disloc_vasc", "/times_raised")) > std::stoi(before));
  // One emergency, one box: the foot says the same, and stands inside.
  CHECK(said("ali", "/state") == "absent");
  handle("knee_disloc_vasc", "left", R"("action":"surgeon called")");
  answer("vessel.foot_cold", "left", "yes");
  CHECK(said("ali", "/state") == "absent");
  CHECK(said("knee_disloc_vasc", "/state") == "handled");
  const std::string note = added::unwrapped(at(ok("note.write", R"({"exam":")" + exam + "\"}"), "/text"));
  CHECK(note.find("surgeon called") != std::string::npos);
  CHECK(note.find("No answer to this alert is recorded") == std::string::npos);
  // The second pulse is graver again; a foot that fails says more than a pulse, and has its own line.
  pulse_of("pulse_posterior_tibial", "left", "0");
  CHECK(said("knee_disloc_vasc", "/state") == "raised");
  handle("knee_disloc_vasc", "left", R"("action":"surgeon told again")");
  answer("ankle.movement", "left", "no");
  CHECK(said("knee_disloc_vasc", "/state") == "handled");
  CHECK(said("ali", "/state") == "raised");
  handle("ali", "left", R"("action":"goes now")");
  CHECK(write("exam.sign", R"("read_aloud":"invented, LEFT knee","confirmed":["person.mismatch"])").find("\"alerts\"") == std::string::npos);
}

TEST_CASE_FIXTURE(Answered, "C2: what was done about an alert answers what stood inside it, also where that comes out, and is named; what comes out graver is raised") {
  const auto lost = [&](const std::string& item) { tell("vessel." + item, "left", R"("kind":"grade","scale":"pulse/0-3","grade":"0")"); };
  const auto dislocated = [&] {
    open(R"("complaint":"acute_knee","side":"left","injured_on":"2026-11-23","person":")" + mother + "\"");
    const std::string told = answer("history.knee_dislocated", "left", "yes");
    lost("pulse_dorsalis_pedis");
    answer("vessel.foot_cold", "left", "yes");
    handle("knee_disloc_vasc", "left", R"("action":"surgeon called")");
    REQUIRE(said("ali", "/state") == "absent");
    return at(told, "/recorded/0/entry");
  };
  const auto take_back = [&](const std::string& entry) { return tell("history.knee_dislocated", "left", R"("kind":"answer","answer":"no")", entry); };
  const std::string entry = dislocated();
  const std::string out = take_back(entry);
  CHECK(of_alert(out, "knee_disloc_vasc", "/state") == "withdrawn_by_correction");
  CHECK(of_alert(out, "ali", "/state") == "handled");
  CHECK(of_alert(out, "ali", "/handled/action") == "surgeon called");
  CHECK(of_alert(out, "ali", "/handled/alert") == "alert.knee_disloc_vasc");
  const std::string second = dislocated();
  take_back(second);
  lost("pulse_posterior_tibial");
  CHECK(said("ali", "/state") == "raised");
  // What had been done about the foot before is kept where it goes inside.
  open(R"("complaint":"acute_knee","side":"left","injured_on":"2026-11-23","person":")" + mother + "\"");
  answer("vessel.foot_cold", "left", "yes");
  handle("ali", "left", R"("action":"foot wrapped")");
  lost("pulse_dorsalis_pedis");
  answer("history.knee_dislocated", "left", "yes");
  CHECK(said("ali", "/state") == "absent");
  CHECK(said("knee_disloc_vasc", "/state") == "raised");
  CHECK(said("knee_disloc_vasc", "/handled_also/0/action") == "foot wrapped");
}

// Whatever a correction raises is told on its own reply, as on the reply to a finding, and after the signature it is a call-back. Sources:
// clinical safety, C2, C12, C14; contract, section 9 (the shape of alerts on a reply). Of which exams person.amend tells is our own rule.
#include "tests/unit/service/life/life.hpp"

using namespace limbledger;
using namespace limbledger::service;
using namespace limbledger::service::test;
using namespace limbledger::service::test::life;

namespace {

const std::string of_a_knee = R"("complaint":"acute_knee","side":"left")";

}  // namespace

TEST_CASE_FIXTURE(Told, "C2: what a corrected person raises is told on the reply, of every open exam that it raises it in") {
  const std::string unknown = person_of("Somebody Invented", "1993-05-01");
  std::vector<std::string> exams;
  for (int i = 0; i < 2; ++i) {
    open(of_a_knee + R"(,"person":")" + unknown + "\"");
    REQUIRE(of_alert(choose("hip.leg_attitude", "left", "attitude_turned_out"), "scfe", "/state") == "absent");
    exams.push_back(exam);
  }
  open(of_a_knee + R"(,"person":")" + unknown + "\"");  // nothing was found in this one
  const std::string named = amend_person(unknown, R"("home":"Invented Ford")");
  CHECK(at(named, "/exams") == "");
  const std::string reply = amend_person(unknown, R"("birth":{"date":"2013-05-01"})");
  std::vector<std::string> told{at(reply, "/exams/0/exam"), at(reply, "/exams/1/exam")};
  std::sort(told.begin(), told.end());
  std::sort(exams.begin(), exams.end());
  CHECK(told == exams);
  CHECK(at(reply, "/exams/2") == "");
  for (const char* list : {"/exams/0/alerts", "/exams/1/alerts"}) {
    CHECK(of_alert(reply, "scfe", "/state", "left", list) == "raised");
  }
  // A void exam is told of no more.
  exam = exams.front();
  seen = at(ok("exam.read", R"({"exam":")" + exam + "\"}"), "/revision");
  write("exam.withdraw", R"("reason":"invented","confirmed":["alert.would_end"])");
  const std::string back = amend_person(unknown, R"("birth":{"date":"2012-05-01"})");
  CHECK(at(back, "/exams/0/exam") == exams.back());
  CHECK(at(back, "/exams/1") == "");
}

TEST_CASE_FIXTURE(Told, "C2: what a move, the day of the injury, the complaint, its side, an exchange of sides or who spoke raises is told on the reply") {
  open(of_a_knee + R"(,"injured_on":"2026-03-01","person":")" + mother + "\"");
  choose("hip.leg_attitude", "left", "attitude_turned_out");
  answer("history.knee_dislocated", "left", "yes");
  answer("leg.tense_compartment", "left", "yes");
  const std::string moved = move_to(child);
  CHECK(of_alert(moved, "scfe", "/state", "left") == "raised");
  CHECK(of_alert(moved, "knee_disloc_vasc", "/state") == "absent");
  const std::string day = amend(R"("injured_on":"2026-11-23")");
  CHECK(of_alert(day, "knee_disloc_vasc", "/state", "left") == "raised");
  CHECK(of_alert(day, "knee_disloc_vasc", "/interrupts", "left") == "true");
  CHECK(of_alert(day, "acs", "/state") == "absent");
  const std::string spoke = who_spoke("no");
  CHECK(of_alert(spoke, "acs", "/state", "left") == "raised");
  const std::string turned = write("exam.swap_sides", R"("reason":"invented","confirmed":["alert.would_end"])");
  CHECK(of_alert(turned, "knee_disloc_vasc", "/state", "right") == "raised");
  CHECK(of_alert(turned, "knee_disloc_vasc", "/state", "left") == "absent");
  // The same list as the assessment, and on a repeat today's.
  CHECK(at(turned, "/alerts") == at(assess(R"(,"only":["alert"])"), "/alerts"));

  open(R"("complaint":"free","side":"left","injured_on":"2026-11-23","person":")" + mother + "\"");
  tell("history.film_result", "left", R"("kind":"choices","choices":["shaft_fracture_seen"])");
  const std::string first = amend(R"("complaint":"after_plaster")");
  CHECK(of_alert(first, "fracture", "/state") == "withdrawn_by_correction");
  CHECK(of_alert(first, "fracture", "/corrected") == R"(["exam.complaint"])");
  CHECK(of_alert(amend(R"("complaint":"acute_knee")"), "fracture", "/state", "left") == "raised");

  const std::string old = person_of("Old Invented", "1940-01-01");
  open(R"("complaint":"hip_after_fall","side":"left","person":")" + old + "\"");
  answer("history.fall_recent", "midline", "yes");
  REQUIRE(of_alert(answer("history.walking_lost", "midline", "yes"), "hip_fx_old", "/state", "left") == "raised");
  handle("hip_fx_old", "left", R"("action":"sent for a film")");
  const std::string other = amend(R"("side":"right")");
  CHECK(of_alert(other, "hip_fx_old", "/state", "right") == "raised");
  CHECK(of_alert(other, "hip_fx_old", "/state", "left") == "withdrawn_by_correction");
  CHECK(of_alert(other, "hip_fx_old", "/handled/action", "left") == "sent for a film");
  CHECK(of_alert(other, "hip_fx_old", "/corrected", "left") == R"(["exam.side"])");
}

TEST_CASE_FIXTURE(Told, "C12, C14: what is raised by a correction after the signature is a call-back, on the reply and in the assessment from then on") {
  const std::string somebody = person_of("Somebody Invented", "1993-05-01");
  const auto signed_exam = [&](const std::string& more) {
    open(of_a_knee + R"(,"person":")" + somebody + "\"" + more);
    choose("hip.leg_attitude", "left", "attitude_turned_out");
    write("exam.sign", R"("read_aloud":"invented, LEFT knee","confirmed":["person.mismatch"])");
  };
  signed_exam("");
  const std::string born = amend_person(somebody, R"("birth":{"date":"2013-05-01"})");
  CHECK(at(born, "/exams/0/exam") == exam);
  CHECK(of_alert(born, "scfe", "/call_back", "left", "/exams/0/alerts") == "true");
  CHECK(of_alert(born, "scfe", "/state", "left", "/exams/0/alerts") == "raised");
  CHECK(of_alert(assess(), "scfe", "/call_back") == "true");
  desk->lock();
  unlock();
  CHECK(of_alert(assess(), "scfe", "/call_back") == "true");
  handle("scfe", "left", R"("action":"called back")");
  CHECK(of_alert(assess(), "scfe", "/state") == "handled");
  // What was there when it was signed is none, and goes with a trace.
  signed_exam("");
  CHECK(of_alert(assess(), "scfe", "/call_back") == "");
  const std::string grown = amend_person(somebody, R"("birth":{"date":"1993-05-01"})");
  CHECK(of_alert(assess(), "scfe", "/state") == "withdrawn_by_correction");
  CHECK(grown.find(exam) != std::string::npos);
  // A move and an exchange of sides, after the signature.
  const std::string moved = move_to(child);
  CHECK(of_alert(moved, "scfe", "/state", "left") == "raised");
  const std::string turned = write("exam.swap_sides", R"("reason":"invented","confirmed":["alert.would_end"])");
  CHECK(of_alert(turned, "scfe", "/call_back", "right") == "true");
  CHECK(of_alert(assess(), "scfe", "/call_back", "right") == "true");
}

TEST_CASE_FIXTURE(Told, "C14: what an addendum raised is not lost by a birth date that is corrected after it") {
  open(of_a_knee + R"(,"person":")" + child + "\"");
  write("exam.sign", R"("read_aloud":"invented, LEFT knee","confirmed":["person.mismatch"])");
  const std::string added = write("addendum.record", R"("kind":"findings","reason":"seen while dressing","findings":[{"item":"hip.leg_attitude","side":"left",)"
                                                     R"("value":{"kind":"choice","choice":"attitude_turned_out"},"replaces":[]}])");
  REQUIRE(of_alert(added, "scfe", "/call_back", "left", "/call_backs") == "true");
  const std::string born = amend_person(child, R"("birth":{"date":"1993-05-01"})");
  CHECK(of_alert(assess(), "scfe", "/state") == "withdrawn_by_correction");
  CHECK(of_alert(assess(), "scfe", "/corrected") == R"(["person.birth"])");
  CHECK(of_alert(born, "scfe", "/state", "left", "/exams/0/alerts") == "withdrawn_by_correction");
  move_to(mother);
  CHECK(of_alert(assess(), "scfe", "/state") == "withdrawn_by_correction");
}

TEST_CASE_FIXTURE(Told, "the reply to an impression carries no alerts, as nothing is judged by it; one that changes what they are judged by carries all that stand") {
  open(of_a_knee);
  answer("history.knee_dislocated", "left", "yes");
  CHECK(at(write("impression.record", R"("impression":{"text":"invented"},"replaces":[])"), "/alerts") == "");
  CHECK(of_alert(who_spoke("yes"), "knee_disloc_vasc", "/state") == "raised");
}

// Alerts on the wire: on the reply to a finding, to whom they are told, handled, taken back by a correction; what is withheld and
// asked back once; the signature and the next step. Sources: contract, sections 7 and 9; clinical safety, C2, C9, C12, C16, C21.
#include "tests/unit/service/after/clinic.hpp"

#include <doctest/doctest.h>

using namespace limbledger;
using namespace limbledger::service;
using namespace limbledger::service::test;

namespace {

class Knee : public DeskFixture {
 public:
  Knee() {
    const std::string opened = ok("exam.open", R"({"complaint":"acute_knee","setting":"outreach","side":"left","injured_on":"2026-11-23","request":")" +
                                                   request_id(1) + "\"}");
    exam = at(opened, "/exam/exam");
    seen = at(opened, "/revision/0");
  }

  [[nodiscard]] std::string params(const std::string& members) {
    return R"({"exam":")" + exam + R"(","seen":[")" + seen + R"("],"request":")" + request_id(++requests) + "\"," + members + "}";
  }
  [[nodiscard]] Result<std::string> try_record(const std::string& finding) {
    auto result = call("finding.record", params(R"("findings":[)" + finding + "]"));
    if (result) {
      seen = at(*result, "/revision/0");
    }
    return result;
  }
  std::string record(const std::string& finding) {
    auto result = try_record(finding);
    INFO(finding);
    REQUIRE(codes_of(result) == "answered");
    return std::move(*result);
  }
  std::string write(const std::string& method, const std::string& members) {
    const std::string reply = ok(method, params(members));
    seen = at(reply, "/revision/0");
    return reply;
  }
  [[nodiscard]] std::string assess(const std::string& more = "") const { return ok("exam.assess", R"({"exam":")" + exam + "\"" + more + "}"); }

  std::string exam;
  std::string seen;
  unsigned requests = 10;
};

std::string answer(const std::string& item, const std::string& side, const std::string& word, const std::string& more = "") {
  return R"({"item":")" + item + R"(","side":")" + side + R"(","value":{"kind":"answer","answer":")" + word + R"("},"replaces":[])" + more + "}";
}
std::string grade(const std::string& item, const std::string& more = "") {
  return R"({"item":")" + item + R"(","side":"left","value":{"kind":"grade","scale":"laxity/difference","grade":"0"},"replaces":[])" + more + "}";
}

}  // namespace

TEST_CASE_FIXTURE(Knee, "an alert rides on the reply that raises it, and on every later one; a repeat gives today's") {
  CHECK(at(record(answer("knee.look_open_wound", "left", "no")), "/alerts/0") == "");
  const std::string raised = record(answer("history.knee_dislocated", "left", "yes"));
  CHECK(at(raised, "/alerts/0/alert") == "alert.knee_disloc_vasc");
  CHECK(at(raised, "/alerts/0/state") == "raised");
  CHECK(at(raised, "/alerts/0/urgency") == "now");
  CHECK(at(raised, "/alerts/0/interrupts") == "true");
  CHECK(at(raised, "/tell_staff") == "");
  CHECK(at(assess(), "/alerts/0/alert") == "alert.knee_disloc_vasc");
}

TEST_CASE_FIXTURE(Knee, "an alert is handled by an action or a reason, never by neither; handled is kept, and a repeat says the same") {
  record(answer("history.knee_dislocated", "left", "yes"));
  CHECK(codes_of(call("alert.handle", params(R"("alert":"alert.knee_disloc_vasc","side":"left")"))) == "value.all_or_one");
  CHECK(codes_of(call("alert.handle", params(R"("alert":"alert.scfe","side":"left","action":"called")"))) == "alert.unknown");
  const std::string sent = params(R"("alert":"alert.knee_disloc_vasc","side":"left","action":"called the district, splinted")");
  const std::string first = ok("alert.handle", sent);
  CHECK(at(first, "/alert/state") == "handled");
  CHECK(at(first, "/alert/handled/action") == "called the district, splinted");
  CHECK(at(first, "/alert/handled/urgent") == "true");
  const std::string again = ok("alert.handle", sent);
  CHECK(at(again, "/repeat") == "true");
  CHECK(at(again, "/revision/0") == at(first, "/revision/0"));
  CHECK(at(assess(), "/alerts/0/state") == "handled");
  CHECK(at(ok("exam.read", R"({"exam":")" + exam + "\"}"), "/exam/alerts_handled/0/alert") == "alert.knee_disloc_vasc");
}

TEST_CASE_FIXTURE(Knee, "what was handled as the same day and becomes urgent is raised again") {
  record(R"({"item":"history.swelling_onset","side":"left","value":{"kind":"choice","choice":"within_2h"},"replaces":[]})");
  record(answer("history.blood_thinners", "midline", "yes"));
  write("alert.handle", R"("alert":"alert.bleed_joint","side":"left","action":"clotting test sent")");
  CHECK(at(assess(R"(,"only":["alert.bleed_joint"])"), "/alerts/0/state") == "handled");
  record(answer("leg.calf_swelling", "left", "yes"));
  record(answer("history.examiner_suspects_clot", "midline", "yes"));
  write("alert.handle", R"("alert":"alert.dvt","side":"left","action":"scan asked for")");
  CHECK(at(assess(R"(,"only":["alert.dvt"])"), "/alerts/0/state") == "handled");
  record(answer("history.breathless", "midline", "yes"));
  CHECK(at(assess(R"(,"only":["alert.dvt"])"), "/alerts/0/state") == "raised");
  CHECK(at(assess(R"(,"only":["alert.dvt"])"), "/alerts/0/urgency") == "now");
}

// Red flags page, section 10: the D-dimer is the lower tier. That it answers no scan is our own rule (alerts.json).
TEST_CASE_FIXTURE(Knee, "a D-dimer that was taken answers the line that asked for it, and not the scan that a positive one asks for") {
  for (const char* item : {"leg.calf_tender_vein", "history.leg_paralysed_or_plaster", "vessel.whole_leg_swollen", "vessel.oedema_more_this_side", "vessel.veins_collateral", "history.other_cause_as_likely"}) {
    record(answer(item, "left", "no"));
  }
  for (const char* item : {"history.cancer_active", "history.immobile_or_surgery_recent", "history.clot_before", "history.breathless", "history.examiner_suspects_clot", "body.pregnancy"}) {
    record(answer(item, "midline", "no"));
  }
  record(answer("leg.calf_swelling", "left", "yes"));
  const auto dvt = [&](const std::string& member) { return at(assess(R"(,"only":["alert.dvt"])"), "/alerts/0/" + member); };
  CHECK(dvt("message") == "msg.alert.dvt.under_two");
  CHECK(dvt("urgency") == "same_day");
  write("alert.handle", R"("alert":"alert.dvt","side":"left","action":"D-dimer taken, by the nurse")");
  CHECK(dvt("state") == "handled");
  record(R"({"item":"general.lab_d_dimer","side":"midline","value":{"kind":"choice","choice":"lab_positive"},"replaces":[]})");
  CHECK(dvt("message") == "msg.alert.dvt.d_dimer");
  CHECK(dvt("state") == "raised");
  write("alert.handle", R"("alert":"alert.dvt","side":"left","action":"scan asked for")");
  CHECK(dvt("state") == "handled");
}

// C2 closes an alert by an action or a reason; that it answers only what its writer had been shown is our own rule.
TEST_CASE_FIXTURE(Knee, "planted: a reason given for a mistake that was taken back answers no new raise; it interrupts again with the former reason beside it") {
  const auto absent = [](const std::string& pulse) {
    return R"({"item":"vessel.pulse_)" + pulse + R"(","side":"left","value":{"kind":"grade","scale":"pulse/0-3","grade":"0"},"replaces":[]})";
  };
  const auto ali = [&](const std::string& member) { return at(assess(R"(,"only":["alert.ali"])"), "/alerts/0/" + member); };
  const std::string dorsal = at(record(absent("dorsalis_pedis")), "/recorded/0/finding");
  const std::string tibial = at(record(absent("posterior_tibial")), "/recorded/0/finding");
  const std::string cold = record(answer("vessel.foot_cold", "left", "yes"));
  REQUIRE(ali("state") == "raised");
  write("alert.handle", R"("alert":"alert.ali","side":"left","reason":"recorded on the wrong leg")");
  CHECK(ali("state") == "handled");
  // The same said again in its place is nothing new.
  const auto again = [&](const std::string& entry, const std::string& word) {
    return record(R"({"item":"vessel.foot_cold","side":"left","value":{"kind":"answer","answer":")" + word + R"("},"replaces":[")" + entry + "\"]}");
  };
  const std::string same = again(at(cold, "/recorded/0/entry"), "yes");
  CHECK(ali("state") == "handled");
  const auto take_back = [&](const std::string& finding) { write("finding.withdraw", R"("finding":")" + finding + R"(","reason":"the other leg","confirmed":["alert.would_end"])"); };
  take_back(dorsal);
  take_back(tibial);
  // The cold foot of an injured leg still stands and raises it by itself; a pulse that is lost is another line than its writer read.
  CHECK(ali("state") == "handled");
  record(absent("dorsalis_pedis"));
  CHECK(ali("state") == "raised");
  // It is corrected, and only what came later raises.
  const std::string warm = again(at(same, "/recorded/0/entry"), "no");
  record(absent("posterior_tibial"));
  const std::string raised = again(at(warm, "/recorded/0/entry"), "yes");
  CHECK(at(raised, "/alerts/0/alert") == "alert.ali");
  CHECK(at(raised, "/alerts/0/state") == "raised");
  CHECK(at(raised, "/alerts/0/interrupts") == "true");
  CHECK(at(raised, "/alerts/0/handled") == "");
  CHECK(at(raised, "/alerts/0/handled_before/reason") == "recorded on the wrong leg");
  CHECK(at(raised, "/alerts/0/handled_before/unseen") == "");
  CHECK(at(ok("exam.read", R"({"exam":")" + exam + "\"}"), "/exam/alerts_handled/0/unseen") == "");
  CHECK(added::unwrapped(at(ok("note.write", R"({"exam":")" + exam + "\"}"), "/text")).find("Said of it before, no answer to what is found now") != std::string::npos);
  write("alert.handle", R"("alert":"alert.ali","side":"left","action":"called the district")");
  CHECK(ali("state") == "handled");
  CHECK(ali("handled/action") == "called the district");
  CHECK(ali("handled_before") == "");
}

// C2: an alert interrupts on the answer that settles it; a reason to do nothing was given for what was read then.
TEST_CASE_FIXTURE(Knee, "planted: a reason to do nothing holds for the line it was given for, and not for a graver one that is found later; something done does") {
  const auto ali = [&](const std::string& member) { return at(assess(R"(,"only":["alert.ali"])"), "/alerts/0/" + member); };
  const auto absent = [](const std::string& pulse) {
    return R"({"item":"vessel.pulse_)" + pulse + R"(","side":"left","value":{"kind":"grade","scale":"pulse/0-3","grade":"0"},"replaces":[]})";
  };
  record(answer("vessel.foot_cold", "left", "yes"));
  record(absent("dorsalis_pedis"));
  record(absent("posterior_tibial"));
  const std::string first = ali("message");
  REQUIRE(ali("state") == "raised");
  write("alert.handle", R"("alert":"alert.ali","side":"left","reason":"known for years")");
  REQUIRE(ali("state") == "handled");
  const std::string weak = record(answer("ankle.movement", "left", "no"));
  REQUIRE(ali("message") != first);
  CHECK(at(weak, "/alerts/0/state") == "raised");
  CHECK(at(weak, "/alerts/0/interrupts") == "true");
  CHECK(ali("handled_before/reason") == "known for years");
  write("alert.handle", R"("alert":"alert.ali","side":"left","action":"district called, goes now")");
  record(R"({"item":"nerve.foot_drop","side":"left","value":{"kind":"answer","answer":"yes"},"replaces":[]})");
  CHECK(ali("state") == "handled");
}

// C2: a correction that removes an alert leaves it; whose age and sex it is may be what was corrected.
TEST_CASE_FIXTURE(Knee, "planted: an alert that goes with a corrected birth date, or with the person, stays withdrawn and names what was corrected") {
  const auto person_of = [&](const std::string& born) {
    return at(ok("person.register", R"({"names":[{"text":"Rumi Invented"}],"sex":"female","birth":{"date":")" + born + R"("},"request":")" + request_id(++requests) + "\"}"), "/person/person");
  };
  const auto move_to = [&](const std::string& person) {
    write("exam.move", R"("person":")" + person + R"(","reason":"now known","confirmed":["value.unusual","alert.would_end"])");
  };
  const auto scfe = [&](const std::string& member) { return at(assess(R"(,"only":["alert.scfe"])"), "/alerts/0/" + member); };
  const std::string girl = person_of("2013-05-01");
  move_to(girl);
  CHECK(scfe("state") == "");
  record(R"({"item":"hip.leg_attitude","side":"left","value":{"kind":"choice","choice":"attitude_turned_out"},"position":"supine","replaces":[]})");
  REQUIRE(scfe("state") == "raised");
  const std::string read = ok("person.read", R"({"person":")" + girl + "\"}");
  ok("person.amend", R"({"person":")" + girl + R"(","changes":{"birth":{"date":"1993-05-01"}},"confirmed":["alert.would_end"],"replaces":)" + at(read, "/revision") + R"(,"seen":)" + at(read, "/revision") +
                         R"(,"request":")" + request_id(++requests) + "\"}");
  CHECK(scfe("state") == "withdrawn_by_correction");
  CHECK(scfe("corrected") == R"(["person.birth"])");
  CHECK(scfe("interrupts") == "false");
  CHECK(added::unwrapped(at(ok("note.write", R"({"exam":")" + exam + "\"}"), "/text")).find("Corrected since: the date of birth") != std::string::npos);
  // On the reply to a finding as well, and answered like any other.
  CHECK(record(answer("history.pop", "left", "no")).find("withdrawn_by_correction") != std::string::npos);
  write("alert.handle", R"("alert":"alert.scfe","side":"left","reason":"born in 1993")");
  CHECK(scfe("handled/reason") == "born in 1993");
  // A person who was corrected before the exam was opened leaves nothing.
  const std::string second = at(ok("exam.open", R"({"person":")" + girl + R"(","complaint":"acute_knee","setting":"outreach","side":"left","injured_on":"2026-11-23","request":")" +
                                                     request_id(++requests) + "\"}"), "/exam/exam");
  CHECK(ok("exam.assess", R"({"exam":")" + second + "\"}").find("withdrawn_by_correction") == std::string::npos);
}

TEST_CASE_FIXTURE(Knee, "planted: an alert that goes because the exam was moved to another person stays withdrawn and says so") {
  const auto person_of = [&](const std::string& name, const std::string& born) {
    return at(ok("person.register", R"({"names":[{"text":")" + name + R"("}],"sex":"female","birth":{"date":")" + born + R"("},"request":")" + request_id(++requests) + "\"}"), "/person/person");
  };
  const std::string child = person_of("Rumi Invented", "2013-05-01");
  const std::string mother = person_of("Ilse Madeup", "1986-05-01");
  write("exam.move", R"("person":")" + child + R"(","reason":"now known","confirmed":["alert.would_end"])");
  record(R"({"item":"hip.leg_attitude","side":"left","value":{"kind":"choice","choice":"attitude_turned_out"},"position":"supine","replaces":[]})");
  write("exam.move", R"("person":")" + mother + R"(","reason":"it was the mother","confirmed":["alert.would_end"])");
  const std::string all = assess(R"(,"only":["alert.scfe"])");
  CHECK(at(all, "/alerts/0/state") == "withdrawn_by_correction");
  CHECK(at(all, "/alerts/0/corrected") == R"(["exam.person"])");
  CHECK(all.find("Rumi") == std::string::npos);
}

TEST_CASE_FIXTURE(Knee, "C2: a correction that removes an alert leaves it raised, withdrawn by correction; so does taking the finding back") {
  const std::string said = record(answer("history.knee_dislocated", "left", "yes"));
  const std::string entry = at(said, "/recorded/0/entry");
  const std::string corrected = record(R"({"item":"history.knee_dislocated","side":"left","value":{"kind":"answer","answer":"no"},"replaces":[")" + entry + "\"]}");
  CHECK(at(corrected, "/alerts/0/alert") == "alert.knee_disloc_vasc");
  CHECK(at(corrected, "/alerts/0/state") == "withdrawn_by_correction");
  CHECK(at(corrected, "/alerts/0/interrupts") == "false");
  const std::string wound = record(answer("history.patella_dislocated", "left", "yes"));
  CHECK(at(wound, "/alerts/0/alert") == "alert.dislocation");
  const std::string taken = write("finding.withdraw", R"("finding":")" + at(wound, "/recorded/0/finding") + R"(","reason":"the other leg","confirmed":["alert.would_end"])");
  CHECK(at(taken, "/alerts/0/state") == "withdrawn_by_correction");
  CHECK(at(taken, "/alerts/1/state") == "withdrawn_by_correction");
  // Whoever reads the sentence alone does not call for help.
  CHECK(at(assess(R"(,"language":"en")"), "/alerts/0/text").starts_with("No longer raised, after a correction: "));
}

TEST_CASE_FIXTURE(Knee, "C16: a kiosk is told no alert; a dangerous answer says to tell the staff, settles nothing and is asked again") {
  caller.scope = Scope::kiosk;
  caller.exam = model::ExamId{};
  REQUIRE(model::ExamId::from_text(exam, *caller.exam).empty());
  const std::string ordinary = record(answer("history.pop", "left", "yes"));
  CHECK(at(ordinary, "/tell_staff") == "");
  const std::string dangerous = record(answer("history.saddle_numbness", "midline", "yes"));
  CHECK(at(dangerous, "/tell_staff") == "true");
  CHECK(at(dangerous, "/alerts/0") == "");
  CHECK(codes_of(call("exam.assess", R"({"exam":")" + exam + "\"}")) == "token.scope");
  CHECK(codes_of(call("step.suggest", R"({"exam":")" + exam + "\"}")) == "token.scope");
  caller = {};
  CHECK(at(assess(), "/alerts/0") == "");
  CHECK(at(assess(), "/questions/0/question") == "alert.ces");
}

TEST_CASE_FIXTURE(Knee, "C9: a withheld step is asked back once with its concern, is written with despite, and a reason why not is never asked about") {
  const auto asked = try_record(grade("knee.lachman"));
  CHECK(codes_of(asked) == "item.withheld");
  CHECK(path_of(asked) == "/findings/0");
  CHECK(asked.error().faults.front().got == "concern.knee_fracture");
  const std::string checked = ok("finding.check", R"({"exam":")" + exam + R"(","findings":[)" + grade("knee.lachman") + "]}");
  CHECK(at(checked, "/confirm/0/code") == "item.withheld");
  CHECK(at(record(grade("knee.lachman", R"(,"despite":{"how":"before","because":"done in the field"})")), "/recorded/0/entry") != "");
  record(R"({"item":"knee.mcmurray","side":"left","value":{"kind":"not_done","reason":"withheld"},"replaces":[]})");
}

TEST_CASE_FIXTURE(Knee, "a test does not withhold itself by what it found, and the examiner's no lifts a concern") {
  record(answer("general.concern_knee_fracture", "left", "no"));
  record(R"({"item":"knee.valgus_0","side":"left","value":{"kind":"grade","scale":"laxity/difference","grade":"2"},"replaces":[]},)"
         R"({"item":"knee.varus_0","side":"left","value":{"kind":"grade","scale":"laxity/difference","grade":"2"},"replaces":[]})");
  CHECK(codes_of(try_record(grade("knee.lachman"))) == "item.withheld");
  CHECK(at(assess(), "/alerts/0/alert") == "alert.knee_disloc_vasc");
}

TEST_CASE_FIXTURE(Knee, "signing lists the minimum set and alerts without an action, and is never refused for them") {
  record(answer("history.knee_dislocated", "left", "yes"));
  const std::string reply = ok("exam.sign", params(R"("read_aloud":"Nobody, left knee")"));
  bool minimum = false;
  bool alerts = false;
  for (int i = 0; i < 8; ++i) {
    const std::string word = at(reply, "/incomplete/" + std::to_string(i));
    minimum = minimum || word == "minimum_set";
    alerts = alerts || word == "alerts";
  }
  CHECK(minimum);
  CHECK(alerts);
  CHECK(at(reply, "/signed/by") != "");
  // To who is told of no protected alert the word would tell of one.
  caller.scope = Scope::viewer;
  const std::string viewed = ok("exam.read", R"({"exam":")" + exam + "\"}");
  CHECK(viewed.find("\"incomplete\":[") != std::string::npos);
  CHECK(viewed.find("\"alerts\"") == std::string::npos);
}

TEST_CASE_FIXTURE(Knee, "C21: step.suggest gives one step that is not withheld, names what is withheld, and none once something is planned") {
  const std::string before = ok("step.suggest", R"({"exam":")" + exam + "\"}");
  CHECK(at(before, "/steps/0/step") != "");
  CHECK(at(before, "/steps/1") == "");
  CHECK(at(before, "/withheld/0/by") == "concern.knee_fracture");
  // Weight lost alone changes nothing that is done: that no step is named is not that nothing may be asked.
  CHECK(at(ok("step.suggest", R"({"exam":")" + at(ok("exam.open", R"({"complaint":"chronic_knee","setting":"outreach","side":"left","request":")" + request_id(700) + "\"}"), "/exam/exam") + "\"}"), "/message") != "msg.step.none_advised_now");
  write("plan.record", R"("plan_items":[{"kind":"film","text":"film of the knee"}])");
  const std::string after = ok("step.suggest", R"({"exam":")" + exam + "\"}");
  CHECK(at(after, "/steps/0") == "");
  CHECK(at(after, "/message") == "msg.step.plan_is_set");
}

TEST_CASE_FIXTURE(Knee, "C16: a protected note is masked, opened by a deliberate act, and a viewer is not told of it") {
  const std::string person =
      ok("person.register", R"({"names":[{"text":"Invented Baby"}],"birth":{"date":"2026-04-20"},"sex":"unknown","request":")" + request_id(900) + "\"}");
  ok("exam.move", params(R"("person":")" + at(person, "/person/person") + R"(","reason":"now known")"));
  seen = at(ok("exam.read", R"({"exam":")" + exam + "\"}"), "/revision/0");
  record(answer("knee.bone_tender_elsewhere", "left", "yes"));
  CHECK(at(assess(R"(,"only":["alert.protected"])"), "/alerts/0/message") == "msg.alert.see_protected_note");
  CHECK(at(assess(R"(,"only":["alert.nai"],"protected":true)"), "/alerts/0/audience") == "protected");
  caller.scope = Scope::viewer;
  CHECK(assess(R"(,"protected":true)").find("protected") == std::string::npos);
}

TEST_CASE_FIXTURE(Knee, "C16: what is kept apart is not in a viewer's exam, its count, its history or its form, and an examiner has it all") {
  record(answer("history.hurt_or_afraid", "midline", "yes"));
  record(answer("knee.bone_tender_elsewhere", "left", "yes"));
  const std::string of_exam = R"("exam":")" + exam + "\"";
  const auto tells = [&] {
    const std::string history = ok("finding.history", "{" + of_exam + R"(,"item":"history.hurt_or_afraid"})");
    const std::string form = ok("form.describe", R"({"complaint":"limping_child",)" + of_exam + "}");
    return std::vector<bool>{ok("exam.read", "{" + of_exam + "}").find("hurt_or_afraid") != std::string::npos, at(history, "/findings/0/item") != "",
                             form.find("hurt_or_afraid") != std::string::npos, at(ok("exam.find", "{}"), "/exams/0/findings") == "2"};
  };
  CHECK(tells() == std::vector<bool>{true, true, true, true});
  caller.scope = Scope::viewer;
  CHECK(tells() == std::vector<bool>{false, false, false, false});
  CHECK(ok("exam.read", "{" + of_exam + "}").find("bone_tender_elsewhere") != std::string::npos);
  CHECK(at(ok("exam.find", "{}"), "/exams/0/findings") == "1");
}

TEST_CASE_FIXTURE(Knee, "S09: on the reply that raises it an alert says what this place can do: without what takes the load off nobody waits for it") {
  const std::string post = ok("place.amend", R"({"changes":{"name":"Invented Post","here":[{"what":"offloading","there":"no"}]},"replaces":[],"seen":[],"request":")" +
                                                 request_id(800) + "\"}");
  const auto raised_at = [&](const std::string& place, unsigned number) {
    const std::string opened = ok("exam.open", R"({"complaint":"diabetic_foot","setting":"outreach","side":"left")" + place + R"(,"request":")" + request_id(number) + "\"}");
    exam = at(opened, "/exam/exam");
    seen = at(opened, "/revision/0");
    record(answer("body.feeling_lost", "left", "yes"));
    return record(answer("foot.hot_red_swollen", "left", "yes"));
  };
  const std::string here = raised_at(R"(,"place":")" + at(post, "/places/0/place/place") + "\"", 801);
  CHECK(at(here, "/alerts/0/alert") == "alert.charcot");
  CHECK(at(here, "/alerts/0/meanwhile/0") == "msg.meanwhile.offload_none_here");
  CHECK(at(assess(R"(,"only":["alert.charcot"])"), "/alerts/0/meanwhile/0") == "msg.meanwhile.offload_none_here");
  CHECK(at(raised_at("", 802), "/alerts/0/meanwhile/0") == "msg.meanwhile.offload");
}

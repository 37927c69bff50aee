// What was once raised stays on the list of alerts. An answer that comes later and corrects nothing may take an alert away: it then leaves
// that it was raised, with what it rested on. Sources: contract, section 7; clinical safety, C2 and C3; the page of red flags for what
// raises the four (compartment, infected joint, knee out of joint, locked knee). Everything is invented.
#include "core/service/once_raised.hpp"
#include "tests/unit/service/desk_fixture.hpp"

#include <doctest/doctest.h>

#include <vector>

using namespace limbledger;
using namespace limbledger::service;
using namespace limbledger::service::test;

namespace {

std::string yes_no(const std::string& item, const std::string& side, const std::string& word) {
  return R"({"item":")" + item + R"(","side":")" + side + R"(","value":{"kind":"answer","answer":")" + word + "\"}";
}
std::string chosen(const std::string& item, const std::string& choice) {
  return R"({"item":")" + item + R"(","side":"midline","value":{"kind":"choice","choice":")" + choice + "\"}";
}
std::string counted(const std::string& item, int number) {
  return R"({"item":")" + item + R"(","side":"midline","value":{"kind":"count","count":)" + std::to_string(number) + "}";
}
std::string bent(const std::string& item, const std::string& side, int degrees) {
  return R"({"item":")" + item + R"(","side":")" + side + R"(","value":{"kind":"angle","toward_deg":)" + std::to_string(degrees) +
         R"(},"instrument":"goniometer_long","position":"supine")";
}

// Of one alert on a reply, by its place in the list.
std::string of_alert(const std::string& reply, const std::string& alert, const std::string& member, const std::string& side = "") {
  for (int i = 0; i < 40; ++i) {
    const std::string place = "/alerts/" + std::to_string(i);
    if (at(reply, place + "/alert") == alert && (side.empty() || at(reply, place + "/side") == side)) {
      return at(reply, place + member);
    }
  }
  return "absent";
}

// The page breaks its lines where they are full.
std::string in_one_line(const std::string& page) {
  std::string out;
  for (const char c : page) {
    if ((c != ' ' && c != '\n') || (!out.empty() && out.back() != ' ')) {
      out += c == '\n' ? ' ' : c;
    }
  }
  return out;
}

class OnceTold : public DeskFixture {
 public:
  OnceTold() { open("acute_knee"); }

  void open(const std::string& complaint) {
    const std::string opened =
        ok("exam.open", R"({"complaint":")" + complaint + R"(","setting":"outreach","side":"left","request":")" + request_id(++requests) + "\"}");
    exam = at(opened, "/exam/exam");
    seen = at(opened, "/revision/0");
  }
  std::string write(const std::string& method, const std::string& members, const std::string& revision = "") {
    const std::string reply = ok(method, R"({"exam":")" + exam + R"(","seen":[")" + (revision.empty() ? seen : revision) + R"("],"request":")" +
                                             request_id(++requests) + "\"," + members + "}");
    const std::string shown = at(reply, "/revision/0");
    seen = shown.empty() ? seen : shown;
    return reply;
  }
  // Whatever is withheld meanwhile is not what is looked at here.
  std::string tell(const std::string& finding, const std::string& replaces = "", const std::string& revision = "") {
    return write("finding.record",
                 R"("findings":[)" + finding + R"(,"despite":{"how":"before","because":"invented"},"replaces":[)" +
                     (replaces.empty() ? "" : "\"" + replaces + "\"") + "]}]",
                 revision);
  }
  std::string tell_all(const std::vector<std::string>& findings) {
    std::string reply;
    for (const std::string& finding : findings) {
      reply = tell(finding);
    }
    return reply;
  }
  [[nodiscard]] std::string assess() const { return ok("exam.assess", R"({"exam":")" + exam + "\"}"); }

  std::string exam;
  std::string seen;
  unsigned requests = 0;
};

const std::vector<std::string> hot_joint{yes_no("knee.look_skin_hot_red", "left", "yes"),
                                         R"({"item":"knee.effusion_stroke","side":"left","value":{"kind":"grade","scale":"effusion/stroke","grade":"2+"})",
                                         yes_no("knee.joint_line_medial_tender", "left", "yes"), counted("history.weeks_since_onset", 1),
                                         bent("knee.flexion_active", "left", 40)};
const std::vector<std::string> locked_joint{yes_no("history.locking", "left", "yes"), counted("history.weeks_since_onset", 1),
                                      bent("knee.extension_passive", "left", -30), bent("knee.extension_passive", "right", 0)};

}  // namespace

TEST_CASE_FIXTURE(OnceTold, "C2, C3: what is answered later and takes an alert away leaves that it was raised, with what it rested on") {
  struct Case {
    std::string alert;
    std::string complaint;
    std::vector<std::string> raise;
    std::string later;
  };
  const std::vector<Case> cases{
      {"alert.acs", "acute_knee", {yes_no("history.pain_out_of_proportion", "left", "yes")}, yes_no("history.injury_severe_or_crush", "midline", "no")},
      {"alert.septic_adult", "chronic_knee", hot_joint, chosen("history.mechanism", "twist")},
      {"alert.knee_disloc_vasc", "acute_knee", {yes_no("history.knee_dislocated", "left", "yes"), chosen("history.mechanism", "no_injury")}, counted("history.weeks_since_onset", 60)},
      {"alert.locked_knee", "acute_knee", locked_joint, yes_no("body.knee_fused", "left", "yes")},
  };
  for (const Case& one : cases) {
    CAPTURE(one.alert);
    open(one.complaint);
    const std::string raised = tell_all(one.raise);
    REQUIRE(of_alert(raised, one.alert, "/state") == "raised");
    REQUIRE(of_alert(raised, one.alert, "/because/0") != "");
    const std::string later = tell(one.later);
    CHECK(of_alert(later, one.alert, "/state") == "withdrawn_by_correction");
    CHECK(of_alert(later, one.alert, "/interrupts") == "false");
    CHECK(of_alert(later, one.alert, "/because") == of_alert(raised, one.alert, "/because"));
    // And so from then on: on the reply to something else, when assessed, and after the program was started again.
    CHECK(of_alert(tell(counted("history.pain_now", 3)), one.alert, "/state") == "withdrawn_by_correction");
    const std::string kept = assess();
    CHECK(of_alert(kept, one.alert, "/state") == "withdrawn_by_correction");
    reopen();
    unlock();
    CHECK(assess() == kept);
    const std::string page = in_one_line(at(ok("note.write", R"({"exam":")" + exam + "\"}"), "/text"));
    CHECK(page.find("Raised, withdrawn by correction or by what was told later.") != std::string::npos);
  }
}

TEST_CASE_FIXTURE(OnceTold, "what was told first never raises what the later answers would have taken away: without history the order of telling is nothing") {
  tell(yes_no("history.injury_severe_or_crush", "midline", "no"));
  CHECK(of_alert(tell(yes_no("history.pain_out_of_proportion", "left", "yes")), "alert.acs", "/state") == "absent");
  const auto document = [&](const std::string& first, const std::string& second) {
    return ok("document.assess", R"({"document":{"format":"limbledger-exam/1","as_of":"2026-11-24","exam":{"complaint":"acute_knee","side":"left","setting":"outreach"},"findings":[)" +
                                     first + "}," + second + "}]}}");
  };
  const std::string pain = yes_no("history.pain_out_of_proportion", "left", "yes");
  const std::string severe = yes_no("history.injury_severe_or_crush", "midline", "no");
  CHECK(document(pain, severe) == document(severe, pain));
  CHECK(document(pain, severe).find("withdrawn_by_correction") == std::string::npos);
}

TEST_CASE_FIXTURE(OnceTold, "findings of one call are shown together: what the call itself settles was never raised") {
  const std::string reply = write("finding.record", R"("findings":[)" + yes_no("history.pain_out_of_proportion", "left", "yes") + R"(,"replaces":[]},)" +
                                                        yes_no("history.injury_severe_or_crush", "midline", "no") + R"(,"replaces":[]}])");
  CHECK(of_alert(reply, "alert.acs", "/state") == "absent");
}

TEST_CASE_FIXTURE(OnceTold, "an alert stays to be seen however many corrections come after it") {
  tell(yes_no("history.pain_out_of_proportion", "left", "yes"));
  std::string reply = tell(yes_no("history.injury_severe_or_crush", "midline", "no"));
  std::string entry = at(tell(counted("history.pain_now", 0)), "/recorded/0/entry");
  for (int i = 1; i <= 25; ++i) {
    reply = tell(counted("history.pain_now", i % 10), entry);
    entry = at(reply, "/recorded/0/entry");
  }
  CHECK(of_alert(reply, "alert.acs", "/state") == "withdrawn_by_correction");
}

TEST_CASE_FIXTURE(OnceTold, "what was done about it stays beside it, and it is raised again when its inputs say so again") {
  tell(yes_no("history.pain_out_of_proportion", "left", "yes"));
  write("alert.handle", R"("alert":"alert.acs","side":"left","action":"called the district")");
  const std::string later = tell(yes_no("history.injury_severe_or_crush", "midline", "no"));
  CHECK(of_alert(later, "alert.acs", "/state") == "withdrawn_by_correction");
  CHECK(of_alert(later, "alert.acs", "/handled/action") == "called the district");
  const std::string page = in_one_line(at(ok("note.write", R"({"exam":")" + exam + "\"}"), "/text"));
  CHECK(page.find("Raised, withdrawn by correction or by what was told later.") != std::string::npos);
  CHECK(page.find("called the district") != std::string::npos);
  const std::string again = tell(yes_no("leg.tense_compartment", "left", "yes"));
  CHECK(of_alert(again, "alert.acs", "/state") == "handled");
}

TEST_CASE_FIXTURE(OnceTold, "an exchange of sides turns what was raised before it: nothing is left under the wrong leg") {
  tell(yes_no("history.pain_out_of_proportion", "left", "yes"));
  tell(yes_no("history.injury_severe_or_crush", "midline", "no"));
  tell(yes_no("history.knee_dislocated", "left", "yes"));
  write("exam.swap_sides", R"("reason":"the form was turned round","confirmed":["alert.would_end"])");
  const std::string turned = assess();
  CHECK(of_alert(turned, "alert.acs", "/state", "left") == "absent");
  CHECK(of_alert(turned, "alert.knee_disloc_vasc", "/state", "left") == "absent");
  CHECK(of_alert(turned, "alert.acs", "/state", "right") == "withdrawn_by_correction");
  CHECK(of_alert(turned, "alert.knee_disloc_vasc", "/state", "right") == "raised");
}

TEST_CASE_FIXTURE(OnceTold, "the day of the injury told later is such an answer too, and so is what a writer says who was not shown the alert") {
  tell(yes_no("history.knee_dislocated", "left", "yes"));
  const std::string before = seen;
  const std::string amended = write("exam.amend", R"("changes":{"injured_on":"2026-06-01"},"confirmed":["alert.would_end"])");
  CHECK(at(amended, "/exam/injured_on") == "2026-06-01");
  CHECK(of_alert(assess(), "alert.knee_disloc_vasc", "/state") == "withdrawn_by_correction");
  open("acute_knee");
  const std::string first = seen;
  REQUIRE(of_alert(tell(yes_no("history.pain_out_of_proportion", "left", "yes")), "alert.acs", "/state") == "raised");
  const std::string other = tell(yes_no("history.injury_severe_or_crush", "midline", "no"), "", first);
  CHECK(of_alert(other, "alert.acs", "/state") == "withdrawn_by_correction");
}

TEST_CASE_FIXTURE(OnceTold, "a value of the person as a whole that contradicts one of a leg is told later: neither stands, and the alert is seen to have been raised") {
  open("hip_after_fall");
  const std::string turned_out = R"({"item":"gait.pattern","side":"left","value":{"kind":"choice","choice":"turned_out"})";
  REQUIRE(of_alert(tell(turned_out), "alert.hip_fx_old", "/state") == "raised");
  CHECK(of_alert(tell(chosen("gait.pattern", "even")), "alert.hip_fx_old", "/state") == "withdrawn_by_correction");
  open("hip_after_fall");
  tell(chosen("gait.pattern", "even"));
  CHECK(of_alert(tell(turned_out), "alert.hip_fx_old", "/state") == "absent");
}

TEST_CASE_FIXTURE(OnceTold, "one that is now shown inside a graver one has not gone, and is not called withdrawn") {
  REQUIRE(of_alert(tell(yes_no("history.foot_drop_new", "left", "yes")), "alert.foot_drop_new", "/state") == "raised");
  const std::string inside = tell(yes_no("history.pain_out_of_proportion", "left", "yes"));
  REQUIRE(of_alert(inside, "alert.acs", "/state") == "raised");
  CHECK(of_alert(inside, "alert.foot_drop_new", "/state") == "absent");
  // The graver one gone, it stands by itself again.
  const std::string later = tell(yes_no("history.injury_severe_or_crush", "midline", "no"));
  CHECK(of_alert(later, "alert.acs", "/state") == "withdrawn_by_correction");
  CHECK(of_alert(later, "alert.foot_drop_new", "/state") == "raised");
}

TEST_CASE_FIXTURE(OnceTold, "C2: times_raised goes up when an alert came again after it was gone, and at nothing that changes nothing about it") {
  const std::string first = tell(yes_no("history.pain_out_of_proportion", "left", "yes"));
  CHECK(of_alert(first, "alert.acs", "/times_raised") == "1");
  CHECK(of_alert(tell(yes_no("history.locking", "left", "no")), "alert.acs", "/times_raised") == "1");
  const std::string gone = tell(yes_no("history.injury_severe_or_crush", "midline", "no"));
  REQUIRE(of_alert(gone, "alert.acs", "/state") == "withdrawn_by_correction");
  CHECK(of_alert(gone, "alert.acs", "/times_raised") == "1");
  const std::string again = tell(yes_no("history.injury_severe_or_crush", "midline", "yes"), at(gone, "/recorded/0/entry"));
  REQUIRE(of_alert(again, "alert.acs", "/state") == "raised");
  CHECK(of_alert(again, "alert.acs", "/times_raised") == "2");
  // Whoever asks is told the same, also after the ledger was opened anew.
  CHECK(of_alert(assess(), "alert.acs", "/times_raised") == "2");
  reopen();
  unlock();
  CHECK(of_alert(assess(), "alert.acs", "/times_raised") == "2");
}

TEST_CASE_FIXTURE(OnceTold, "a lost pulse under the alert of a cold foot comes once more, and so does what a reason answers no more") {
  const auto pulse = [](const std::string& item, const std::string& side, const std::string& grade) {
    return R"({"item":"vessel.)" + item + R"(","side":")" + side + R"(","value":{"kind":"grade","scale":"pulse/0-3","grade":")" + grade + "\"}";
  };
  tell(chosen("history.mechanism", "twist"));
  REQUIRE(of_alert(tell(yes_no("vessel.foot_cold", "left", "yes")), "alert.ali", "/times_raised") == "1");
  const std::string lost = tell(pulse("pulse_dorsalis_pedis", "left", "0"));
  CHECK(of_alert(lost, "alert.ali", "/times_raised") == "2");
  CHECK(of_alert(tell(yes_no("history.locking", "left", "no")), "alert.ali", "/times_raised") == "2");
  const std::string handled = write("alert.handle", R"("alert":"alert.ali","side":"left","reason":"seen by the surgeon","language":"en")");
  REQUIRE(at(handled, "/alert/state") == "handled");
  CHECK(at(handled, "/alert/times_raised") == "2");
  CHECK(!at(handled, "/alert/text").empty());
  CHECK(!at(handled, "/alert/meanwhile_text/0").empty());
  const std::string both = tell(pulse("pulse_posterior_tibial", "left", "0"));
  REQUIRE(of_alert(both, "alert.ali", "/handled_before/reason") == "seen by the surgeon");
  CHECK(of_alert(both, "alert.ali", "/state") == "raised");
  CHECK(std::stoi(of_alert(both, "alert.ali", "/times_raised")) > 2);
}

TEST_CASE("times raised: graver, another line or a new ground count; a ground that goes, a line said before and a branch that did not know it do not") {
  const reference::AlertRow* row = &reference::built_in_edition()->alerts().front();
  const auto ground = [](std::uint8_t number) {
    model::FindingId id{};
    id.bytes.back() = number;
    return id;
  };
  using Class = reference::AlertClass;
  const auto state = [&](Class urgency, std::string_view what, std::vector<model::FindingId> grounds, bool listed = true) {
    return std::vector<OnceRaised::Alert>{{row, model::Side::left, listed, urgency, what, std::move(grounds)}};
  };
  struct Step {
    std::vector<OnceRaised::Alert> state;
    bool knew;
    int times;
    std::string why;
  };
  const std::vector<Step> steps{
      {state(Class::same_day, "raised", {ground(1)}), true, 1, "first"},
      {state(Class::same_day, "raised", {ground(1)}), true, 1, "the same"},
      {state(Class::same_day, "raised", {ground(1), ground(2)}), true, 2, "a new ground"},
      {state(Class::same_day, "raised", {ground(2)}), true, 2, "a ground that went"},
      {state(Class::same_day, "no_pulse", {ground(2)}), true, 3, "says something new"},
      {state(Class::same_day, "raised", {ground(1), ground(2)}), true, 3, "said before, on grounds it had"},
      {state(Class::now, "raised", {ground(1)}), true, 4, "more urgent"},
      {state(Class::same_day, "raised", {ground(1)}), true, 4, "less urgent"},
      {{}, false, 4, "another branch, which did not know it"},
      {state(Class::now, "raised", {ground(1)}), true, 4, "stood all the while"},
      {state(Class::now, "raised", {ground(1)}, false), true, 4, "inside a graver one"},
      {state(Class::now, "raised", {ground(1)}), true, 5, "listed again"},
      {{}, true, 5, "gone"},
      {state(Class::same_day, "raised", {ground(1)}), true, 6, "came again"},
  };
  TimesRaised times;
  for (const Step& step : steps) {
    CAPTURE(step.why);
    times.add(step.state, [&](std::size_t) { return step.knew; });
    std::vector<interpret::Alert> alerts(2);
    alerts[0].alert = row->alert;
    alerts[0].side = model::Side::left;
    alerts[1].alert = row->alert;
    alerts[1].side = model::Side::right;
    times.mark(alerts);
    REQUIRE(alerts[0].times_raised.has_value());
    CHECK(alerts[0].times_raised->steps == step.times);
    CHECK(!alerts[1].times_raised.has_value());
  }
}

// Nothing that was raised is lost by a correction, nor by the next one: every kind of write that may change what an alert is judged by,
// crossed with every other, in both orders. Each case says what stands, what is withdrawn, and that what was done about it is there.
// Sources: clinical safety, C2; contract, section 7. That an exchange of sides, or another person, has the answer asked again is our own
// rule (C10 lists what is derived from either).
#include "tests/unit/service/life/life.hpp"

using namespace limbledger;
using namespace limbledger::service;
using namespace limbledger::service::test;
using namespace limbledger::service::test::life;

namespace {

struct Correction {
  std::string kind;
  std::vector<std::string> takes;  // which alerts go by it
};

// `later`: an answer that corrects nothing. Nothing hangs on the complaint, its side, the sex or the names of this exam; all the same they
// may lose none.
const std::vector<Correction> corrections{{"finding", {"scfe"}},   {"withdraw", {"scfe"}},        {"birth", {"scfe", "locked_knee"}}, {"move", {"scfe", "locked_knee"}},
                                          {"injury", {"acs", "knee_disloc_vasc"}}, {"who_spoke", {"acs"}}, {"later", {"locked_knee"}}, {"swap", {}},
                                          {"complaint", {}},       {"side", {}},                  {"sex", {}},          {"place", {}},
                                          {"plan", {}},            {"impression", {}}};
const std::vector<std::string> all_four{"scfe", "knee_disloc_vasc", "acs", "locked_knee"};

bool has(const std::vector<std::string>& all, const std::string& one) { return std::find(all.begin(), all.end(), one) != all.end(); }

class Pair : public Told {
 public:
  void raise_both() {
    of = person_of("Rumi Invented", "2013-05-01");
    open(R"("complaint":"acute_knee","side":"left","injured_on":"2026-11-23","person":")" + of + "\"");
    who_spoke("no");
    const std::string told = choose("hip.leg_attitude", "left", "attitude_turned_out");
    attitude = at(told, "/recorded/0/entry");
    finding = at(told, "/recorded/0/finding");
    answer("history.knee_dislocated", "left", "yes");
    answer("leg.tense_compartment", "left", "yes");
    const std::string measured = R"(,"instrument":"goniometer_long","position":"supine")";
    answer("history.locking", "left", "yes");
    tell("history.weeks_since_onset", "midline", R"("kind":"count","count":1)");
    tell("knee.extension_passive", "left", R"("kind":"angle","toward_deg":-30)", "", measured);
    tell("knee.extension_passive", "right", R"("kind":"angle","toward_deg":0)", "", measured);
    const std::string before = alerts();
    for (const std::string& one : all_four) {
      CAPTURE(one);
      REQUIRE(of_alert(before, one, "/state", "left") == "raised");
      handle(one, "left", R"("action":"called about )" + one + "\"");
    }
    gone_finding = false;
  }
  void correct(const std::string& kind) {
    if (kind == "finding" && !gone_finding) {
      attitude = at(choose("hip.leg_attitude", turned ? "right" : "left", "attitude_even", attitude), "/recorded/0/entry");
    } else if (kind == "withdraw") {
      write("finding.withdraw", R"("finding":")" + finding + R"(","reason":"invented","confirmed":["alert.would_end"])");
      gone_finding = true;
    } else if (kind == "birth") {
      amend_person(of, R"("birth":{"date":"1993-05-01"})");
    } else if (kind == "sex") {
      amend_person(of, R"("sex":"other")");
    } else if (kind == "move") {
      move_to(mother);
    } else if (kind == "injury") {
      amend(R"("injured_on":"2026-03-01")");
    } else if (kind == "complaint") {
      amend(R"("complaint":"free")");
    } else if (kind == "side") {
      amend(R"("side":"right")");
    } else if (kind == "who_spoke") {
      who_spoke("yes");
    } else if (kind == "later") {
      answer("body.knee_fused", turned ? "right" : "left", "yes");
    } else if (kind == "swap") {
      write("exam.swap_sides", R"("reason":"the form was turned round","confirmed":["alert.would_end"])");
      turned = !turned;
    } else if (kind == "place") {
      amend(R"("setting":"emergency")");
    } else if (kind == "plan") {
      write("plan.record", R"("plan_items":[{"kind":"splint","text":"invented"}])");
    } else if (kind == "impression") {
      const std::string held = at(ok("exam.read", R"({"exam":")" + exam + "\"}"), "/exam/impression");
      if (held.empty()) {
        write("impression.record", R"("impression":{"text":"invented"},"replaces":[])");
      }
    }
  }

  std::string of;
  std::string attitude;
  std::string finding;
  bool gone_finding = false;
  bool turned = false;
};

}  // namespace

TEST_CASE_FIXTURE(Pair, "C2: what was once raised stays, with what was done about it, whatever pair of corrections follows, in either order") {
  for (const Correction& first : corrections) {
    for (const Correction& second : corrections) {
      if (first.kind == second.kind && (first.kind == "withdraw" || first.kind == "later")) {
        continue;  // nothing is there to be taken back twice
      }
      CAPTURE(first.kind);
      CAPTURE(second.kind);
      turned = false;
      raise_both();
      correct(first.kind);
      correct(second.kind);
      const std::string now = alerts();
      const bool asked_again = turned || first.kind == "move" || second.kind == "move";
      for (const std::string& one : all_four) {
        CAPTURE(one);
        const std::string side = turned ? "right" : "left";
        const bool gone = has(first.takes, one) || has(second.takes, one);
        CHECK(of_alert(now, one, "/state", side) == std::string(gone ? "withdrawn_by_correction" : (asked_again ? "raised" : "handled")));
        if (gone) {
          CHECK(of_alert(now, one, "/interrupts", side) == "false");
        }
        CHECK(of_alert(now, one, gone || !asked_again ? "/handled/action" : "/handled_before/action", side) == "called about " + one);
        CHECK(of_alert(now, one, "/state", turned ? "left" : "right") == "absent");
      }
      // What is kept while the ledger is open says what the whole log says.
      desk->lock();
      unlock();
      CHECK(alerts() == now);
    }
  }
}

TEST_CASE_FIXTURE(Pair, "C2: three corrections in a row, and one that is taken back: the alert that comes again is the one that was answered") {
  raise_both();
  correct("birth");
  correct("finding");
  correct("move");
  CHECK(of_alert(alerts(), "scfe", "/state") == "withdrawn_by_correction");
  CHECK(of_alert(alerts(), "scfe", "/handled/action") == "called about scfe");
  CHECK(of_alert(alerts(), "scfe", "/corrected") == R"(["person.birth"])");
  raise_both();
  correct("move");
  correct("birth");
  CHECK(of_alert(alerts(), "scfe", "/corrected") == R"(["exam.person"])");
  amend_person(of, R"("birth":{"date":"2013-05-01"})");
  move_to(of);
  CHECK(of_alert(alerts(), "scfe", "/state") == "handled");
  raise_both();
  correct("injury");
  correct("sex");
  CHECK(of_alert(alerts(), "knee_disloc_vasc", "/corrected") == R"(["exam.injured_on"])");
  CHECK(of_alert(alerts(), "scfe", "/state") == "handled");
}

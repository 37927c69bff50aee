// Every danger has its row, its messages and its hazard; a line of class now starts with what to do and leaves nothing in doubt.
#include "tests/unit/interpret/alerts/planted.hpp"

#include "core/report/words/words.hpp"

#include <array>

using namespace limbledger;
using namespace limbledger::interpret_test;

namespace {

const report::Words& english() {
  const report::Words* words = report::built_in_words();
  REQUIRE(words != nullptr);
  return *words;
}

}  // namespace

TEST_CASE("every danger has a row of facts, a question, and a message for what it raises or refers") {
  for (const interpret::RedFlag& flag : interpret::all_red_flags()) {
    CAPTURE(flag.alert);
    const reference::AlertRow* row = reference::built_in_edition()->alert(flag.alert);
    REQUIRE(row != nullptr);
    const std::string name(flag.alert.substr(6));
    CHECK(english().has("msg.question." + name));
    const bool prompt = row->urgency == reference::AlertClass::two_weeks;
    CHECK(english().has((prompt ? "msg.referral." + name : "msg.alert." + name + ".raised")));
    for (const auto& message : row->meanwhile) {
      CHECK_MESSAGE(english().has(message.text), message.text);
    }
  }
  CHECK(interpret::all_red_flags().size() == reference::built_in_edition()->alerts().size());
}

TEST_CASE("every sentence that a danger names as graver has its words") {
  std::size_t named = 0;
  for (const reference::AlertRow& row : reference::built_in_edition()->alerts()) {
    for (const model::Word& what : row.graver.value_or(std::vector<model::Word>{})) {
      CAPTURE(row.alert.text + "." + what.text);
      CHECK(english().has("msg." + row.alert.text + "." + what.text));
      ++named;
    }
  }
  CHECK(named > 0);
}

TEST_CASE("A: a line of class now starts with what to do, and says neither possible, may nor consider") {
  for (const char* name : {"open_fx.raised", "open_fx.bone_seen", "open_fx.near_break", "open_fx.skin", "ali.no_pulse_dorsal", "ali.no_pulse_tibial",
                           "knee_disloc_vasc.no_pulse_dorsal", "knee_disloc_vasc.no_pulse_tibial", "septic_child.not_moved_now",
                           "septic_child.not_moved_fever", "tumour.broke_cancer", "tumour.broke_now", "knee_disloc_vasc.raised", "knee_disloc_vasc.no_pulse", "knee_disloc_vasc.deformed", "knee_disloc_vasc.loose",
                           "acs.raised", "acs.untold", "acs.plaster", "acs.plaster_pain", "bleeding.raised", "bleeding.inside", "pelvic_fx.raised", "pelvic_fx.shock", "ali.raised", "ali.no_pulse", "ces.raised", "ces.both_legs", "ces.cord", "septic_adult.ill", "septic_child.ill", "dvt.chest", "dvt.both_chest", "scfe.unstable",
                           "scfe.unstable_turned_out", "scfe.unstable_seen", "hip_disloc.raised", "hip_disloc.replaced", "hip_disloc.replaced_short", "ankle_disloc.skin", "ankle_disloc.pulse",
                           "ankle_disloc.held", "nsti.raised", "nsti.gas", "nsti.dead", "nsti.numb", "nsti.pain", "nsti.swelling", "nsti.ill", "nsti.red_foot_ill", "acutely_ill.raised", "acutely_ill.failing", "acutely_ill.shock", "acutely_ill.mottled", "acutely_ill.circulation", "acutely_ill.shock_ill", "acutely_ill.shock_bears", "acutely_ill.newborn", "acutely_ill.rash", "septic_child.raised_now", "df_infect.severe", "df_infect.wet", "deep_wound.venom",
                           "ali.grade_1", "ali.grade_2a", "ali.grade_2b", "ali.grade_3", "septic_adult.hip_ill", "septic_adult.ankle_ill", "septic_adult.toe_ill"}) {
    const std::string text = english().say(std::string("msg.alert.") + name, {{"side", "LEFT", false, true}});
    CAPTURE(text);
    CHECK(text.starts_with("Call now: "));
    for (const char* doubt : {"possible", "possibly", " may ", "consider", "perhaps"}) {
      CHECK(text.find(doubt) == std::string::npos);
    }
  }
}

TEST_CASE("A: every line that a planted danger raises has its words, its side in them, and at most three things to do meanwhile") {
  for (const Planted& one : planted()) {
    CAPTURE(one.alert);
    for (std::size_t told = 1; told <= one.answers.size(); ++told) {
      const Bench bench = tell_first(one, told);
      const auto assessment = bench.assess();
      for (const auto& found : assessment.alerts) {
        REQUIRE_MESSAGE(english().has(found.message.text), found.message.text);
        const std::string text = english().say(found.message.text, {{"side", "LEFT", false, true}});
        CHECK(text.starts_with(found.urgency == interpret::Urgency::now ? "Call now: " : (text.starts_with("Within") ? "Within one working day: " : "Same day")));
        CHECK_MESSAGE((!found.side || text.find("LEFT") != std::string::npos), text);
        CHECK(found.meanwhile.size() <= 3);
      }
      for (const auto& statement : assessment.statements) {
        CHECK_MESSAGE((!statement.statement.text.starts_with("referral.") || english().has(statement.message.text)), statement.message.text);
      }
    }
  }
}

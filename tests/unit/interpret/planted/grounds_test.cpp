// What an alert rests on is what it names (clinical safety, C2: it rests on recorded answers; C12: they are sealed with it). A logic test of
// our own rule, over all planted dangers and mixtures of them: the named findings alone raise the same line; taking away what is not named
// changes nothing; taking away what is named ends it, changes its line, or leaves it to the rest of what was named. All is invented.
#include "core/interpret/alerts/alerts.hpp"
#include "tests/unit/interpret/alerts/planted.hpp"

#include <set>

using namespace limbledger;
using namespace limbledger::interpret_test;

namespace {

struct StandingLine {
  std::string alert;  // with its side
  std::string line;
  bool now = false;
  std::set<model::FindingId> named;
};

std::vector<StandingLine> lines_standing(const Bench& bench) {
  const interpret::View view(bench.exam, bench.person, *bench.edition, day(2026, 11, 24));
  std::vector<StandingLine> all;
  for (const interpret::JudgedFlag& flag : interpret::judge_flags(view)) {
    if (!flag.raised.clue.is_yes()) {
      continue;
    }
    StandingLine one{flag.row->alert.text + (flag.side ? " " + std::string(interpret::side_word(*flag.side)) : ""), std::string(flag.raised.what),
               flag.raised.urgency == interpret::AlertClass::now, {}};
    for (const model::Finding* finding : flag.raised.clue.because.written()) {
      one.named.insert(*finding->finding);
    }
    all.push_back(one);
  }
  return all;
}

const StandingLine* line_found(const std::vector<StandingLine>& all, const std::string& alert) {
  const auto at = std::find_if(all.begin(), all.end(), [&](const StandingLine& one) { return one.alert == alert; });
  return at == all.end() ? nullptr : &*at;
}

template <class Keeps>
Bench with_findings(Bench bench, const Keeps& keeps) {
  auto& all = *bench.exam.findings;
  all.erase(std::remove_if(all.begin(), all.end(), [&](const model::Finding& one) { return !keeps(*one.finding); }), all.end());
  return bench;
}

// How many alerts were looked at.
std::size_t hold_to_grounds(const Bench& bench) {
  const std::vector<StandingLine> all = lines_standing(bench);
  for (const StandingLine& one : all) {
    CAPTURE(one.alert);
    CAPTURE(one.line);
    const std::vector<StandingLine> by_named = lines_standing(with_findings(bench, [&](const auto& id) { return one.named.contains(id); }));
    const StandingLine* same = line_found(by_named, one.alert);
    REQUIRE_MESSAGE(same != nullptr, "what is named does not raise it");
    CHECK_MESSAGE(same->line == one.line, "what is named raises another line: " << same->line);
    CHECK(same->now == one.now);
    for (const model::Finding& finding : *bench.exam.findings) {
      CAPTURE(finding.item.text);
      const std::vector<StandingLine> without = lines_standing(with_findings(bench, [&](const auto& id) { return id != *finding.finding; }));
      const StandingLine* left = line_found(without, one.alert);
      if (!one.named.contains(*finding.finding)) {
        REQUIRE_MESSAGE(left != nullptr, "it goes by what is not named");
        CHECK_MESSAGE(left->line == one.line, "its line changes by what is not named: " << left->line);
        CHECK(left->now == one.now);
      } else if (left != nullptr && left->line == one.line && left->now == one.now) {
        for (const model::FindingId& id : left->named) {
          CHECK_MESSAGE(one.named.contains(id), "held up by what was not named");
        }
      }
    }
  }
  return all.size();
}

}  // namespace

TEST_CASE("planted: an alert names every finding that it rests on, and none that changes nothing") {
  std::size_t alerts = 0;
  for (const Planted& one : planted()) {
    CAPTURE(one.alert);
    alerts += hold_to_grounds(tell_first(one, one.answers.size()));
    for (const Planted& other : {planted()[0], planted()[3], planted()[10], planted()[12], planted()[15]}) {
      CAPTURE(other.alert);
      Bench both = tell_first(one, one.answers.size());
      for (const std::string& line : other.answers) {
        tell(both, line);
      }
      alerts += hold_to_grounds(both);
    }
  }
  const std::vector<std::pair<std::string, std::string>> more{
      {"hip_after_fall", "history.fall_recent yes; hip.log_roll left positive; history.film_result left hip_fracture_seen"},
      {"hip_after_fall", "history.frail yes; history.fall_recent yes; gait.steps_now 0; hip.log_roll left positive"},
      {"acute_knee", "history.mechanism fall; leg.look_deformity left yes; history.film_result left shaft_fracture_seen"},
      {"ankle_injury", "history.mechanism fall; ankle.look_deformity left yes; ankle.movement left no; ankle.skin_tented left yes; vessel.pulse_dorsalis_pedis left 0"},
      {"calf_pain", "history.weeks_since_onset 0; vessel.foot_cold left yes; nerve.sensation_loss_level left loss_toes_only; ankle.movement left yes; nerve.sensation_foot_reduced left yes"},
      {"wound_or_numb_foot", "skin.black_toe left yes; vessel.pulse_dorsalis_pedis left 0; vessel.pulse_posterior_tibial left 0"},
      {"wound_or_numb_foot", "skin.black_toe left yes; history.weeks_since_onset 4; vessel.pulse_dorsalis_pedis left 0; vessel.pulse_posterior_tibial left 0"},
      {"chronic_knee", "history.mechanism no_injury; body.knee_replaced left yes; knee.look_skin_hot_red left yes; history.unwell yes; general.temperature 388"},
      {"free", "skin.redness_spreading left yes; skin.infection_signs left sign_redness+sign_pus; history.fever yes; general.pulse_rate 110; general.respiratory_rate 24"},
      {"free", "skin.deep_wound left wound_puncture; history.compartment_causes left cause_snake"},
      {"acute_knee", "history.memory_poor yes; history.mechanism fall; leg.tense_compartment left yes"},
      {"chronic_knee", "gait.steps_now 0; hip.turns_out_in_flexion left positive; history.film_result left hip_slip_seen"},
  };
  for (const auto& one : more) {
    CAPTURE(one.second);
    Bench bench = visit(one.first, one.second.find("slip") != std::string::npos ? 2013 : 1940, one.second);
    const std::size_t here = hold_to_grounds(bench);
    CHECK(here > 0);
    alerts += here;
  }
  CHECK(alerts > 150);
}

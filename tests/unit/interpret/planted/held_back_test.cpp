// Planted cases of what was examined with a held-back or doubtful hand, of who cannot tell of pain, and of a limb that is partly gone.
// Sources: decision rules page, section 0 (not reliable is unknown) and 15; clinical safety C2, C3, C16, C17 and S06; red flags page,
// section 4; where they are silent it is our own rule. All is invented.
#include "tests/unit/interpret/alerts/planted.hpp"

using namespace limbledger;
using namespace limbledger::interpret_test;

namespace {

const std::vector<model::Quality> each_quality{model::Quality::guarded, model::Quality::effort_limited, model::Quality::poor_contact, model::Quality::unsure_landmark};

// What was told is no examination.
Bench examined_held_back(Bench bench, model::Quality quality, bool told_too = false) {
  for (model::Finding& finding : *bench.exam.findings) {
    if (!told_too && finding.item.text.starts_with("history.")) {
      continue;
    }
    finding.quality = std::vector<model::Quality>{quality};
  }
  return bench;
}

std::vector<std::string> flags_answered_no(const Bench& bench) {
  std::vector<std::string> names;
  for (const interpret::Flag& one : bench.assess().flags) {
    if (one.answer == interpret::FlagAnswer::asked_no) {
      names.push_back(one.flag.text);
    }
  }
  return names;
}

const std::string stretched_without = "history.pain_out_of_proportion left no; knee.stretch_pain_calf left no; leg.stretch_pain_front left no; "
                                      "leg.stretch_pain_outer left no; leg.stretch_pain_deep left no";

}  // namespace

TEST_CASE("planted: no danger is answered no by what was examined held back, and none that was found goes by it") {
  const std::vector<std::pair<std::string, std::string>> noes{
      {"ali", "vessel.pulse_dorsalis_pedis left 2; vessel.pulse_posterior_tibial left 2; vessel.foot_cold left no"},
      {"achilles", "history.kick_to_heel_cord left yes; ankle.calf_squeeze left full"},
      {"hip_fx_old", "history.fall_recent yes; gait.steps_now 4; hip.log_roll left negative; hip.internal_rotation_passive_seated left 30"},
      {"ext_mech", "history.mechanism fall; knee.straight_leg_raise_active left negative"},
      {"acs", stretched_without + "; history.injury_severe_or_crush yes"},
      {"hip_disloc", "history.mechanism fall; hip.leg_attitude left attitude_even"},
      {"df_infect", "history.diabetes yes; skin.ulcer left no; skin.intact left yes"},
      {"nsti", "skin.redness_spreading left no; skin.gas_crackle left no; skin.dusky_or_blistered left no; skin.infection_signs left none_of_these"},
  };
  std::size_t answered = 0;
  for (const auto& one : noes) {
    CAPTURE(one.first);
    const Bench bench = visit(one.first == "hip_fx_old" || one.first == "hip_disloc" ? "hip_after_fall" : "free", 1950, one.second);
    const bool plain = flag(bench, one.first) == "asked_no";
    answered += plain ? 1U : 0U;
    for (const model::Quality quality : each_quality) {
      CAPTURE(static_cast<int>(quality));
      const Bench doubtful = examined_held_back(bench, quality, true);
      CHECK(flags_answered_no(doubtful).empty());
      if (plain) {
        const std::string now = flag(doubtful, one.first);
        CHECK((now == "cannot_answer" || now == "not_asked"));
      }
    }
  }
  CHECK(answered >= 5);  // the same examined well is an answer
  for (const Planted& one : planted()) {
    CAPTURE(one.alert);
    for (const model::Quality quality : each_quality) {
      CAPTURE(static_cast<int>(quality));
      CHECK(stands(examined_held_back(tell_first(one, one.answers.size()), quality), one));
    }
  }
  // A no, a low count and a full pulse of the other foot that ring are findings too.
  Bench still = visit("calf_pain", 1950, "history.weeks_since_onset 0; vessel.foot_cold left yes; ankle.movement left no");
  CHECK(is_now(examined_held_back(still, model::Quality::guarded), "ali"));
  Bench steps = visit("hip_after_fall", 1940, "history.fall_recent yes; gait.steps_now 2");
  CHECK(raised(examined_held_back(steps, model::Quality::effort_limited), "hip_fx_old"));
}

TEST_CASE("planted: who cannot tell of pain says no no about it: perhaps under three, of poor memory, through a child, or told by another") {
  const std::string told = stretched_without + "; history.injury_severe_or_crush yes; leg.tense_compartment left no";
  const auto plain = [&] { return visit("acute_knee", 1990, told); };
  CHECK(flag(plain(), "acs") == "asked_no");
  Bench about_two = plain();
  about_two.person->birth = model::Birth{std::nullopt, model::AgeYears{2}, model::AgeYears{1}, day(2026, 11, 24)};
  Bench born_in_a_year = plain();
  born_in_a_year.person->birth = model::Birth{};
  born_in_a_year.person->birth->date = day(2023, 12, 31);
  born_in_a_year.person->birth->date->month = 0;
  born_in_a_year.person->birth->date->day = 0;
  Bench unknown_child = visit("limping_child", 1990, told);
  unknown_child.person->birth.reset();
  Bench not_yet_walking = visit("free", 1990, told + "; history.moves_about moves_crawls");
  not_yet_walking.person->birth.reset();
  Bench memory = visit("acute_knee", 1940, told + "; history.memory_poor yes");
  Bench child_speaks = plain();
  child_speaks.exam.interpreter = model::Interpreter{model::InterpreterKind::child, std::nullopt};
  Bench by_another = plain();
  by_another.exam.who_spoke = model::WhoSpoke{{"daughter"}, std::nullopt};
  for (const Bench* one : {&about_two, &born_in_a_year, &unknown_child, &not_yet_walking, &memory, &child_speaks, &by_another}) {
    CAPTURE(one - &about_two);
    CHECK(flag(*one, "acs") == "cannot_answer");
    Bench hurts = *one;
    tell(hurts, "history.pain_out_of_proportion left yes");
    CHECK(is_now(hurts, "acs"));  // pain that is shown counts as everybody's
  }
  // Who is old enough by the whole interval, or of whom nobody knows the age and nothing says a child; who speaks for themselves, or through
  // a trained interpreter, or is known to be told of reliably.
  Bench four = plain();
  four.person->birth = model::Birth{std::nullopt, model::AgeYears{4}, model::AgeYears{1}, day(2026, 11, 24)};
  Bench no_birth = plain();
  no_birth.person->birth.reset();
  Bench trained = plain();
  trained.exam.interpreter = model::Interpreter{model::InterpreterKind::trained, std::nullopt};
  Bench self = plain();
  self.exam.who_spoke = model::WhoSpoke{{"self"}, std::nullopt};
  Bench reliably = plain();
  reliably.exam.who_spoke = model::WhoSpoke{{"the boy and his grandmother"}, model::Reliable::yes};
  for (const Bench* one : {&four, &no_birth, &trained, &self, &reliably}) {
    CHECK(flag(*one, "acs") == "asked_no");
  }
  // The same of other dangers: pain of a foot at rest, of the back.
  const std::string back = "history.back_pain no; history.pain_below_knee both no; history.leg_pain_both no; history.bladder_bowel_change no; history.saddle_numbness no";
  Bench spoken = visit("back_leg", 1960, back);
  CHECK(flag(spoken, "ces") == "asked_no");
}

// Section 4: who cannot report is open, not raised. Tense muscles there are our own rule; what is firm anyway is no sign of pressure.
TEST_CASE("planted: a spastic leg of somebody who cannot tell is asked about, and interrupts with a cause named; the other leg, tense too, lowers nothing") {
  const std::string dementia = "history.memory_poor yes; general.answers_reliable no; history.mechanism fall; leg.tense_compartment left yes";
  const auto hurt = [](Bench bench) {
    bench.exam.injured_on = day(2026, 11, 23);
    return bench;
  };
  CHECK(is_now(hurt(visit("acute_knee", 1940, dementia)), "acs"));  // one leg tense after a fall
  CHECK(is_now(hurt(visit("acute_knee", 1940, dementia + "; leg.tense_compartment right yes")), "acs"));
  const std::string spastic = dementia + "; body.spastic_tone left yes";
  const Bench bench = hurt(visit("acute_knee", 1940, spastic));
  CHECK_FALSE(raised(bench, "acs"));
  CHECK(asks(bench, "acs", "history.injury_severe_or_crush"));
  CHECK(flag(bench, "acs") != "asked_no");
  CHECK(is_now(hurt(visit("acute_knee", 1940, spastic + "; history.injury_severe_or_crush yes")), "acs"));
}

TEST_CASE("planted: a film that was recorded of no side is of the side complained of, or one line that says so") {
  const std::vector<std::pair<std::string, std::string>> films{{"fracture", "shaft_fracture_seen"}, {"hip_fx_old", "hip_fracture_seen"}, {"scfe", "hip_slip_seen"}, {"bone_stress_hip", "femoral_neck_stress_seen"}};
  for (const auto& film : films) {
    CAPTURE(film.first);
    const auto lines = [&](const Bench& bench) {
      std::vector<std::string> all;
      for (const auto& one : bench.assess().alerts) {
        if (one.alert.text == "alert." + film.first) {
          all.push_back((one.side ? (*one.side == Side::left ? "left " : "right ") : "none ") + one.message.text.substr(one.message.text.rfind('.') + 1));
        }
      }
      return all;
    };
    const std::string told = "history.mechanism fall; history.fall_recent yes; history.film_result " + film.second;
    Bench bench = visit("free", 1990, told);
    bench.exam.injured_on = day(2026, 11, 23);
    CHECK(lines(bench) == std::vector<std::string>{"left seen"});
    tell(bench, "knee.bruising right no");
    CHECK(lines(bench) == std::vector<std::string>{"left seen"});
    bench.exam.side.reset();
    CHECK(lines(bench) == std::vector<std::string>{"none seen_no_side"});
    tell(bench, "knee.bruising left no");
    CHECK(lines(bench) == std::vector<std::string>{"none seen_no_side"});
    Bench nothing_else = visit("free", 1990, told);
    nothing_else.exam.side.reset();
    nothing_else.exam.injured_on = day(2026, 11, 23);
    CHECK(lines(nothing_else) == std::vector<std::string>{"none seen_no_side"});
    Bench of_right = visit("free", 1990, "history.mechanism fall; history.fall_recent yes; history.film_result right " + film.second);
    of_right.exam.injured_on = day(2026, 11, 23);
    CHECK(lines(of_right) == std::vector<std::string>{"right seen"});
  }
}

TEST_CASE("planted: what a film of no side shows is one line, with the grounds of both legs, whichever leg they are of") {
  for (const char* leg : {"left", "right"}) {
    CAPTURE(leg);
    Bench bench = visit("hip_after_fall", 1940, "history.fall_recent yes; history.film_result hip_fracture_seen; hip.log_roll both negative; hip.heel_push " + std::string(leg) + " positive");
    bench.exam.side.reset();
    bool named = false;
    for (const auto& alert : bench.assess().alerts) {
      for (const auto& id : alert.alert.text == "alert.hip_fx_old" ? alert.because : std::vector<model::FindingId>()) {
        named = named || std::any_of(bench.exam.findings->begin(), bench.exam.findings->end(), [&](const auto& one) { return one.finding == id && one.item.text == "hip.heel_push"; });
      }
    }
    CHECK(named);
  }
}

TEST_CASE("planted: of a limb that is partly gone the part that is there is named, and a pulse that cannot be there is none that was lost") {
  // No hip is left to break; the other one is.
  const std::string fell = "history.fall_recent yes; gait.steps_now 0; history.pain_site left site_groin";
  CHECK(raised(visit("hip_after_fall", 1940, fell), "hip_fx_old"));
  CHECK_FALSE(raised(visit("hip_after_fall", 1940, fell + "; body.limb_level left at_hip"), "hip_fx_old"));
  CHECK(raised(visit("hip_after_fall", 1940, fell + "; body.limb_level left at_knee"), "hip_fx_old"));
  // Dead tissue of a stump.
  const std::string dry = "history.diabetes yes; skin.gangrene left gangrene_dry";
  CHECK(line_of(visit("after_amputation", 1950, dry), "df_infect") == "dead");
  CHECK(line_of(visit("after_amputation", 1950, dry + "; body.limb_level left through_shin"), "df_infect") == "stump");
  // Pulses of a foot that is gone.
  const std::string zeros = "vessel.pulse_dorsalis_pedis left 0; vessel.pulse_posterior_tibial left 0; history.rest_pain_foot left yes; history.weeks_since_onset 0";
  CHECK(is_now(visit("after_amputation", 1950, zeros), "ali"));
  for (const char* level : {"through_shin", "at_knee", "through_thigh", "at_hip"}) {
    const Bench gone = visit("after_amputation", 1950, zeros + "; body.limb_level left " + level);
    CHECK_FALSE(raised(gone, "ali"));
    CHECK_FALSE(raised(gone, "clti"));
    CHECK(flag(gone, "ali") != "asked_no");
  }
  // Out of shape where no joint is: the part above.
  for (const char* deformed : {"ankle.look_deformity left yes", "foot.look_deformity left yes", "leg.look_deformity left yes"}) {
    Bench bench = visit("free", 1980, std::string("history.mechanism fall; ") + deformed);
    bench.exam.injured_on = day(2026, 11, 23);
    Bench gone = bench;
    tell(gone, "body.limb_level left through_shin");
    CHECK_FALSE(raised(gone, "ankle_disloc"));
    CHECK(line_of(gone, "fracture") == "stump");
  }
  Bench knee = visit("free", 1980, "history.mechanism fall; knee.look_deformity left yes; body.limb_level left through_thigh");
  knee.exam.injured_on = day(2026, 11, 23);
  CHECK_FALSE(raised(knee, "knee_disloc_vasc"));
  CHECK(line_of(knee, "fracture") == "stump");
}

// An injury is lately for six weeks (our convention). A complaint is no injury, and nothing of long standing is made new by it.
TEST_CASE("planted: what is known to be old is not newly broken, and skin that is blistered without redness does not call") {
  const auto line = [](const std::string& complaint, const std::string& story) { return line_of(visit(complaint, 1970, story), "fracture"); };
  CHECK(line("acute_knee", "leg.look_deformity left yes") == "raised");
  CHECK(line("acute_knee", "leg.look_deformity left yes; history.weeks_since_onset 300") == "none");
  CHECK(line("acute_knee", "leg.look_deformity left yes; history.weeks_since_onset 6") == "raised");
  Bench old_film = visit("chronic_knee", 1970, "history.mechanism fall; history.film_result left shaft_fracture_seen");
  old_film.exam.injured_on = day(2025, 1, 5);
  CHECK(line_of(old_film, "fracture") == "none");
  old_film.exam.injured_on = day(2026, 11, 5);
  CHECK(line_of(old_film, "fracture") == "seen");
  CHECK(line("chronic_knee", "history.mechanism no_injury; history.weeks_since_onset 10; history.film_result left shaft_fracture_seen") == "seen");  // bone that breaks by itself
  // Section 6 asks for infected skin: nobody answered, it calls; redness answered no, and nothing else, it is a blister.
  CHECK(is_now(visit("free", 1980, "skin.dusky_or_blistered left yes"), "nsti"));
  const std::string blister = "skin.dusky_or_blistered left yes; skin.redness_spreading left no; skin.infection_signs left none_of_these";
  const Bench mere = visit("free", 1980, blister + "; general.temperature 368; general.pulse_rate 70");
  CHECK_FALSE(raised(mere, "nsti"));
  CHECK(flag(mere, "nsti") != "asked_no");
  for (const char* more : {"skin.numb_patch left yes", "skin.gas_crackle left yes", "history.pain_out_of_proportion left yes", "general.temperature 386", "general.pulse_rate 110"}) {
    CAPTURE(more);
    CHECK(is_now(visit("free", 1980, blister + "; " + more), "nsti"));
  }
}

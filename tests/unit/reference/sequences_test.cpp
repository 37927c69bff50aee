// The sequences of every complaint. Minimum sets and the order of the whole examination: examination sequence page (reference),
// sections 2 and 3; where the page gives none, our convention. The names of complaints: contract, section 6.
#include "core/reference/edition.hpp"
#include "core/report/words/words.hpp"
#include "core/service/methods/say/form.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>
#include <string>
#include <vector>

using namespace limbledger;

namespace {

const reference::Edition& edition() { return *reference::built_in_edition(); }

const model::Sequence& sequence_of(const std::string& complaint) {
  const model::Sequence* sequence = edition().sequence(model::Word{complaint});
  REQUIRE_MESSAGE(sequence != nullptr, complaint);
  return *sequence;
}

struct Minimum {
  std::string complaint;
  std::vector<std::string> items;
};

// The words of the page beside our items.
const std::vector<Minimum>& minimum_sets() {
  static const std::vector<Minimum> sets{
      // 3.1 pulses, fracture rule, active SLR, effusion, Lachman, posterior sag, valgus/varus 30, hip rotation
      {"acute_knee",
       {"vessel.pulse_dorsalis_pedis", "vessel.pulse_posterior_tibial", "history.steps_at_once", "gait.steps_now", "knee.patella_tender", "knee.fibular_head_tender",
        "knee.bone_tender_elsewhere", "knee.flexion_active", "knee.straight_leg_raise_active", "knee.effusion_stroke", "knee.lachman", "knee.posterior_sag",
        "knee.valgus_30", "knee.varus_30", "hip.internal_rotation_passive_supine"}},
      // 3.2 gait, alignment, range, effusion, joint-line tenderness, crepitus, hip rotation, quadriceps strength
      {"chronic_knee",
       {"gait.pattern", "knee.alignment_standing", "knee.flexion_passive", "knee.extension_passive", "knee.effusion_stroke", "knee.joint_line_medial_tender",
        "knee.joint_line_lateral_tender", "knee.crepitus", "hip.internal_rotation_passive_supine", "nerve.power_knee_extension"}},
      // 3.3 gait, log roll, flexion + IR in degrees, FADIR, FABER with site, trochanter palpation, SLR, pulses
      {"hip_groin",
       {"gait.pattern", "hip.log_roll", "hip.flexion_passive", "hip.internal_rotation_passive_seated", "hip.fadir", "hip.faber_groin", "hip.faber_behind",
        "hip.faber_lateral", "hip.trochanter_tender", "nerve.straight_leg_raise", "vessel.pulse_dorsalis_pedis", "vessel.pulse_posterior_tibial"}},
      // 3.3, after a fall: look, pulses, log roll, percussion, heel push once, active SLR
      {"hip_after_fall",
       {"hip.leg_attitude", "vessel.pulse_dorsalis_pedis", "vessel.pulse_posterior_tibial", "hip.log_roll", "hip.percussion_patellopubic", "hip.heel_push",
        "hip.straight_leg_lift"}},
      // 3.4 temperature, weight-bearing yes/no, both hips rotation, tibia/foot palpation, spine, skin
      {"limping_child",
       {"general.temperature", "history.refuses_weight", "hip.internal_rotation_passive_supine", "hip.external_rotation_passive_supine", "leg.shin_squeeze",
        "foot.calcaneal_squeeze", "foot.forefoot_squeeze", "pelvis.lumbar_look", "skin.bruises"}},
      // 3.5 4-step test, Ottawa points, proximal fibula, calf squeeze, AITFL, pulses (the recheck is a plan item)
      {"ankle_injury",
       {"history.steps_at_once", "gait.steps_now", "ankle.lateral_malleolus_tender", "ankle.medial_malleolus_tender", "foot.fifth_metatarsal_base_tender",
        "foot.navicular_tender", "leg.fibular_neck_tender", "ankle.calf_squeeze", "ankle.aitfl_tender", "vessel.pulse_dorsalis_pedis", "vessel.pulse_posterior_tibial"}},
      // 3.6 girth both sides, Wells items, calf squeeze, pulses, passive stretch pain, temperature
      {"calf_pain",
       {"leg.calf_girth_10cm", "history.cancer_active", "history.leg_paralysed_or_plaster", "history.immobile_or_surgery_recent", "leg.calf_tender_vein",
        "vessel.whole_leg_swollen", "vessel.oedema_more_this_side", "vessel.veins_collateral", "history.clot_before", "history.other_cause_as_likely",
        "ankle.calf_squeeze", "vessel.pulse_dorsalis_pedis", "vessel.pulse_posterior_tibial", "leg.stretch_pain_back", "general.temperature"}},
      // 3.7 past ulcer/amputation, skin, sensation, pulses, deformity, footwear
      {"diabetic_foot",
       {"history.foot_ulcer_before", "history.amputation_before", "skin.intact", "skin.between_toes", "skin.heel_and_sole", "nerve.monofilament_great_toe",
        "nerve.monofilament_metatarsal_head_1", "nerve.monofilament_metatarsal_head_5", "vessel.pulse_dorsalis_pedis", "vessel.pulse_posterior_tibial",
        "foot.deformity", "skin.shoes_inside", "skin.shoe_fit"}},
      // 3.8 heel: tubercle, squeeze, Tinel, dorsiflexion range
      {"heel_pain", {"foot.calcaneal_tubercle_tender", "foot.calcaneal_squeeze", "ankle.tinel_tarsal_tunnel", "ankle.dorsiflexion_passive_knee_straight"}},
      // 3.8 forefoot: bone by bone, web spaces, pulses, sensation
      {"forefoot_pain",
       {"foot.metatarsal_first_tender", "foot.metatarsal_second_tender", "foot.metatarsal_third_tender", "foot.metatarsal_fourth_tender",
        "foot.metatarsal_fifth_tender", "foot.web_space_second_tender", "foot.web_space_third_tender", "vessel.pulse_dorsalis_pedis",
        "vessel.pulse_posterior_tibial", "nerve.sensation_foot_reduced"}},
      // 3.8 back and leg: SLR, crossed, slump, femoral stretch, power L2-S1, reflexes, touch, saddle question, hip IR, pulses
      {"back_leg",
       {"nerve.straight_leg_raise", "nerve.crossed_straight_leg_raise", "nerve.slump", "nerve.femoral_stretch", "nerve.power_hip_flexion",
        "nerve.power_knee_extension", "nerve.power_ankle_dorsiflexion", "nerve.power_great_toe_extension", "nerve.power_ankle_eversion", "nerve.reflex_knee",
        "nerve.reflex_ankle", "nerve.touch_l4", "nerve.touch_l5", "nerve.touch_s1", "history.saddle_numbness", "hip.internal_rotation_passive_seated",
        "vessel.pulse_dorsalis_pedis", "vessel.pulse_posterior_tibial"}}};
  return sets;
}

std::size_t turns_of(const service::FormDescribeResult& form) { return form.positions.size(); }

std::size_t distinct_of(const service::FormDescribeResult& form) {
  std::set<std::string> names;
  for (const service::FormPosition& position : form.positions) {
    names.insert(position.position.text);
  }
  return names.size();
}

}  // namespace

TEST_CASE("every complaint of the contract has its one sequence, with a name in words, and three to five conditions not to miss in words") {
  const std::vector<std::string> complaints{
      "acute_knee",   "chronic_knee",  "hip_groin",          "hip_after_fall", "lateral_hip",   "posterior_hip", "infant_hip",   "limping_child",
      "child_alignment", "ankle_injury", "calf_pain",        "swollen_legs",   "diabetic_foot", "wound_or_numb_foot", "heel_pain", "forefoot_pain",
      "back_leg",     "after_plaster", "after_operation",    "after_amputation", "no_complaint", "review",       "whole_limb",   "free"};
  CHECK(edition().sequences().size() == complaints.size());
  for (const std::string& complaint : complaints) {
    const model::Sequence& sequence = sequence_of(complaint);
    CHECK_MESSAGE(report::built_in_words()->has("msg.complaint." + complaint), complaint);
    for (const model::MessageId& message : sequence.not_to_miss.value_or(std::vector<model::MessageId>{})) {
      CHECK_MESSAGE(report::built_in_words()->has(message.text), message.text);
    }
  }
}

TEST_CASE("the minimum set of each sequence holds that of the page") {
  for (const Minimum& set : minimum_sets()) {
    const model::Sequence& sequence = sequence_of(set.complaint);
    for (const std::string& item : set.items) {
      const bool there = std::any_of(sequence.steps.begin(), sequence.steps.end(),
                                     [&](const model::SequenceStep& step) { return step.item.text == item && step.minimum.value_or(false); });
      CHECK_MESSAGE(there, (set.complaint + ": " + item));
    }
  }
}

TEST_CASE("the whole examination goes from standing to walking, sitting, the back, the side and the front, and holds the steps of the page") {
  service::FormAsk ask;
  ask.sequence = &sequence_of("whole_limb");
  const service::FormDescribeResult form = service::lay_out_form(edition(), ask);
  std::vector<std::string> order;
  for (const service::FormPosition& position : form.positions) {
    order.push_back(position.position.text);
  }
  CHECK(order == std::vector<std::string>{"seated", "standing", "walking", "seated", "supine", "side_lying", "prone"});
  // A1 to F, one or two of each line.
  for (const char* item :
       {"pelvis.crest_level_standing", "pelvis.block_height_standing", "pelvis.lumbar_flexion", "function.squat_depth", "hip.trendelenburg", "hip.stance_pain_30s",
        "ankle.heel_rise_single", "ankle.dorsiflexion_lunge_distance", "foot.windlass_standing", "function.single_leg_squat", "gait.pattern", "gait.tandem_walk",
        "hip.internal_rotation_passive_seated", "nerve.power_great_toe_extension", "nerve.reflex_ankle", "nerve.touch_l2", "nerve.slump", "knee.patellar_tracking",
        "ankle.anterior_drawer", "foot.windlass_seated", "hip.fulcrum", "leg.length_true", "leg.calf_girth_10cm", "vessel.pulse_femoral", "skin.between_toes",
        "hip.log_roll", "hip.heel_push", "hip.extension_passive_thomas", "hip.fadir", "hip.faber_height", "hip.scour", "hip.resisted_straight_leg_raise",
        "hip.adductor_squeeze_45", "nerve.crossed_straight_leg_raise", "pelvis.distraction", "pelvis.thigh_thrust", "knee.effusion_stroke", "knee.lachman",
        "knee.valgus_0", "ankle.silfverskiold", "hip.trochanter_tender", "nerve.power_hip_abduction", "hip.ober", "hip.add_resisted", "pelvis.compression",
        "hip.ischial_tuberosity_tender", "hip.extension_passive_prone", "hip.femoral_version", "nerve.femoral_stretch", "pelvis.sacral_thrust",
        "knee.heel_to_buttock", "ankle.calf_squeeze", "ankle.matles", "skin.heel_and_sole"}) {
    const auto& steps = sequence_of("whole_limb").steps;
    CHECK_MESSAGE(std::any_of(steps.begin(), steps.end(), [&](const model::SequenceStep& step) { return step.item.text == item; }), item);
  }
}

TEST_CASE("what somebody cannot do turns nobody more than two times beyond once into each position") {
  using service::Cannot;
  for (const model::Sequence& sequence : edition().sequences()) {
    if (sequence.complaint.text == "free") {
      continue;
    }
    for (const Cannot cannot : {Cannot::lie_prone, Cannot::lie_supine, Cannot::lie_side, Cannot::stand, Cannot::walk, Cannot::sit, Cannot::reach_90, Cannot::one_limb,
                                Cannot::no_instrument}) {
      service::FormAsk ask;
      ask.sequence = &sequence;
      ask.cannot = {cannot};
      const service::FormDescribeResult form = service::lay_out_form(edition(), ask);
      CAPTURE(sequence.complaint.text);
      CAPTURE(static_cast<int>(cannot));
      CHECK(turns_of(form) <= distinct_of(form) + 2);
      // Nothing is lost without a word.
      std::size_t told = form.left_out.size();
      for (const service::FormPosition& position : form.positions) {
        told += position.steps.size();
      }
      CHECK(told == sequence.steps.size());
    }
  }
}

TEST_CASE("the page's order of what is dropped first is in the sequences, and girths are never dropped for a calf that hurts") {
  for (const model::Sequence& sequence : edition().sequences()) {
    for (const model::SequenceStep& step : sequence.steps) {
      CAPTURE(sequence.complaint.text);
      CAPTURE(step.item.text);
      const std::int64_t drop = step.drop ? step.drop->steps : 0;
      if (step.item.text == "hip.ober" && sequence.complaint.text != "free") {
        CHECK(drop == 1);
      } else if (step.item.text == "hip.femoral_version" && sequence.complaint.text != "free") {
        CHECK(drop == 2);
      } else if (step.item.text == "ankle.silfverskiold" && sequence.complaint.text != "free") {
        CHECK(drop == 3);
      }
      CHECK_FALSE((sequence.complaint.text == "calf_pain" && drop != 0));
    }
  }
}

TEST_CASE("after a fall of an older person nobody is stood up or turned, and the hip is not bent and twisted") {
  for (const model::SequenceStep& step : sequence_of("hip_after_fall").steps) {
    CHECK(step.position.text == "supine");
    for (const char* one : {"hip.fadir", "hip.faber_groin", "hip.faber_behind", "hip.extension_passive_thomas", "hip.scour", "function.squat_depth"}) {
      CHECK(step.item.text != one);
    }
  }
}

// Section 1 of the page: in trauma, look, then pulses and sensation, before bone is felt or anything is moved; and before long questions.
TEST_CASE("after an injury or an operation pulses and feeling stand before what can wait") {
  for (const char* complaint : {"acute_knee", "hip_after_fall", "ankle_injury", "calf_pain", "after_plaster", "after_operation"}) {
    const auto& steps = sequence_of(complaint).steps;
    const auto place = [&](const char* item) {
      return std::find_if(steps.begin(), steps.end(), [&](const model::SequenceStep& step) { return step.item.text == item; }) - steps.begin();
    };
    CAPTURE(complaint);
    CHECK(place("vessel.pulse_dorsalis_pedis") < place("history.pain_now"));
    CHECK(place("nerve.sensation_foot_reduced") < place("history.pain_now"));
    for (const char* later : {"knee.patella_tender", "ankle.lateral_malleolus_tender", "hip.log_roll", "ankle.calf_squeeze", "knee.flexion_passive"}) {
      CHECK(place("vessel.pulse_dorsalis_pedis") < place(later));
    }
  }
}

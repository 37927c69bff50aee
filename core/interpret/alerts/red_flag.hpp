// A danger that is asked after: its name, and a short function from recorded answers to what is raised. Facts about it (time to
// harm, meanwhile, what to stop, sources) stand in reference/data/alerts.json; the judgement stands here, one function a danger.
// A rule never lowers one. Source: red flags page; clinical safety, C2, C3 and C13.
#pragma once

#include "core/interpret/alerts/answers.hpp"
#include "core/reference/alert_row.hpp"

#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace limbledger::interpret {

using reference::AlertClass;

struct Raised {
  Clue clue;
  Tri applies = Tri::yes;      // no: not for this person, and not shown
  AlertClass urgency = AlertClass::same_day;
  bool interrupts = false;
  bool hides = true;           // false: what stands inside this danger on its side is shown beside it all the same
  std::string_view tells_of{};  // what its sentence tells of, where another danger's may tell of the same; it stands inside one that does and no other; `itself`: inside none
  bool ask_first = false;      // its question stands in first place
  std::optional<model::Side> lies{};  // of one side though the danger is one of the person: where what raises it was found
  bool of_no_side = false;   // nobody recorded of which side: one line, and both sides are held back
  std::string_view what = "raised";  // which message: msg.alert.<name>.<what>
  std::string_view refer = {};       // the same of a referral prompt: msg.referral.<name>.<refer>
  std::string_view asks = {};        // which question: msg.question.<name>.<asks>; empty: msg.question.<name>
  AskTrail would_settle{};           // open, and nobody is asked: named where a page tells what is missing
  std::optional<Clue> graver{};      // raised, and this is open: a yes would raise its class, so it is still asked
  std::vector<std::string_view> opens{};  // which of the concerns of its row; empty: all of them
};

// What waits for an answer: of one that is raised, what would make it graver.
[[nodiscard]] const Clue& waits_for(const Raised& raised);

struct RedFlag {
  std::string_view alert;  // alert.septic_adult
  bool sided = true;
  Raised (*judge)(const Answers& answers, model::Side side);
};

[[nodiscard]] std::span<const RedFlag> all_red_flags();

// By file: hip.cpp, limb.cpp, joint.cpp, extensor.cpp, child.cpp, body.cpp, foot.cpp, skin.cpp, stress.cpp, seen.cpp, ill.cpp, vessels/, told/.
[[nodiscard]] Raised open_fracture(const Answers& answers, model::Side side);
// A wound of hip or thigh, whose page has it apart from those of knee and foot, over a break after an injury; nothing is asked.
[[nodiscard]] Clue broken_under_hip_wound(const Answers& answers, model::Side side);
[[nodiscard]] Raised dislocated_kneecap(const Answers& answers, model::Side side);
[[nodiscard]] Raised dislocated_knee(const Answers& answers, model::Side side);
[[nodiscard]] Raised compartment(const Answers& answers, model::Side side);
// A limb that may swell inside its sheaths: by injury, by what else does it, by how it feels, and by what lies round it.
[[nodiscard]] Clue compartment_in_danger(const Answers& answers, model::Side side);
// Whether it would be open still with this item answered no: by an old plaster, or a no to the other that is not believed.
[[nodiscard]] bool danger_stays_open(const Answers& answers, model::Side side, std::string_view denied);
// No pulse is said of what was felt for alone, and it stands among the grounds. Another danger may say so too, and then one of them does.
inline constexpr std::string_view lost_pulse = "lost_pulse", itself = "itself";
void name_lost_pulse(Raised& raised, const Clue& dorsal, const Clue& tibial);
[[nodiscard]] Raised limb_ischaemia(const Answers& answers, model::Side side);
[[nodiscard]] Raised infected_joint_adult(const Answers& answers, model::Side side);
[[nodiscard]] Raised infected_joint_child(const Answers& answers, model::Side side);
[[nodiscard]] Raised infected_bone(const Answers& answers, model::Side side);
[[nodiscard]] Raised bleeding_joint(const Answers& answers, model::Side side);
[[nodiscard]] Raised joint_over_two_weeks(const Answers& answers, model::Side side);
[[nodiscard]] Raised extensor_rupture(const Answers& answers, model::Side side);
[[nodiscard]] Raised achilles_rupture(const Answers& answers, model::Side side);
[[nodiscard]] Raised locked_knee(const Answers& answers, model::Side side);
[[nodiscard]] Raised hip_fracture_old(const Answers& answers, model::Side side);
[[nodiscard]] Raised hip_slip(const Answers& answers, model::Side side);
[[nodiscard]] Raised limping_child(const Answers& answers, model::Side side);
[[nodiscard]] Raised perthes(const Answers& answers, model::Side side);
[[nodiscard]] Raised inflicted_injury(const Answers& answers, model::Side side);
[[nodiscard]] Raised leg_clot(const Answers& answers, model::Side side);
[[nodiscard]] Raised cauda_equina(const Answers& answers, model::Side side);
[[nodiscard]] Raised tumour(const Answers& answers, model::Side side);
[[nodiscard]] Raised dislocated_hip(const Answers& answers, model::Side side);
[[nodiscard]] Raised dislocated_ankle(const Answers& answers, model::Side side);
[[nodiscard]] Raised deep_infection(const Answers& answers, model::Side side);
[[nodiscard]] Raised deep_wound(const Answers& answers, model::Side side);
[[nodiscard]] Raised infected_foot(const Answers& answers, model::Side side);
[[nodiscard]] Raised collapsing_foot(const Answers& answers, model::Side side);
[[nodiscard]] Raised lasting_ischaemia(const Answers& answers, model::Side side);
[[nodiscard]] Raised new_foot_drop(const Answers& answers, model::Side side);
[[nodiscard]] Raised hip_bone_stress(const Answers& answers, model::Side side);
[[nodiscard]] Raised bone_stress(const Answers& answers, model::Side side);
[[nodiscard]] Raised late_dislocation(const Answers& answers, model::Side side);
[[nodiscard]] Raised bleeding_now(const Answers& answers, model::Side side);
[[nodiscard]] Raised broken_bone(const Answers& answers, model::Side side);
[[nodiscard]] Raised broken_pelvis(const Answers& answers, model::Side side);
[[nodiscard]] Raised joints_stiff(const Answers& answers, model::Side side);
[[nodiscard]] Raised acutely_ill(const Answers& answers, model::Side side);
// The same with what a child has of its own: a fever with a rash, an infant that nobody measured, one of which nobody knows the age.
[[nodiscard]] Raised acutely_ill_at_any_age(const Answers& answers, model::Side side);
[[nodiscard]] Raised not_put_back(const Answers& answers, model::Side side);

}  // namespace limbledger::interpret

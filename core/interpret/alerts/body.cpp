// Cauda equina and cord, a foot that drops, tumour, and a body that fails: as clinical safety C3 mends them, so that they do not fire on ordinary people.
#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/alerts/limits.hpp"
#include "core/interpret/alerts/red_flag.hpp"

#include <algorithm>
#include <array>

namespace limbledger::interpret {

using model::Side;

namespace {

constexpr ItemKey lifts_ankle = "nerve.power_ankle_dorsiflexion", lifts_toe = "nerve.power_great_toe_extension";
constexpr std::array<ItemKey, 7> groups_of_leg{"nerve.power_hip_flexion", "nerve.power_hip_extension", "nerve.power_knee_extension", "nerve.power_knee_flexion",
                                               lifts_ankle, "nerve.power_ankle_plantarflexion", lifts_toe};
constexpr std::array<ItemKey, 5> roots_of_leg{"nerve.touch_l2", "nerve.touch_l3", "nerve.touch_l4", "nerve.touch_l5", "nerve.touch_s1"};
constexpr std::array<ItemKey, 2> signs_of_cord{"nerve.plantar_response", "nerve.clonus_ankle"};

// Of most people nothing of it was examined.
template <std::size_t Size>
[[nodiscard]] bool any_examined(const Answers& answers, const std::array<ItemKey, Size>& items) {
  const View& view = answers.view();
  return std::any_of(items.begin(), items.end(), [&](const ItemKey& item) {
    const auto& known = view.edition().keyed(item);
    return known.known && view.has(known);
  });
}

// Examined on this leg, whatever was told: power that does not hold against the hand in any group.
[[nodiscard]] Clue leg_weak(const Answers& answers, Side side) {
  return led_by(unasked(answers.yes("nerve.foot_drop", side)), {answers.any_graded(groups_of_leg, side, {"0", "1", "2", "3"})});
}

[[nodiscard]] bool weak_for_long(const Answers& answers, Side side) {
  return answers.yes("body.paralysis", side).is_yes() || answers.yes("body.spastic_tone", side).is_yes() || foot_taken_off(answers, side).is_yes();
}

[[nodiscard]] bool numb_for_long(const Answers& answers, Side side) {
  return answers.yes("body.feeling_lost", side).is_yes() || answers.yes("body.paralysis", side).is_yes();
}

[[nodiscard]] bool drops_for_long(const Answers& answers, Side side) {
  return weak_for_long(answers, side) || answers.yes("history.foot_drop_new", side).is_no();
}

[[nodiscard]] bool tried_with_little_effort(const model::Finding& finding) {
  const auto little = [](model::Quality one) { return one == model::Quality::guarded || one == model::Quality::effort_limited; };
  return finding.quality && std::any_of(finding.quality->begin(), finding.quality->end(), little);
}

// The same, by what is not known to be old: a leg weak for long says nothing of now, nor does a drop that was told to be old of the groups that
// lift the foot. Power tried guarded or with little effort may be pain.
[[nodiscard]] Clue leg_newly_weak(const Answers& answers, Side side) {
  if (weak_for_long(answers, side)) {
    return {};
  }
  const bool old_drop = answers.yes("history.foot_drop_new", side).is_no();
  Clue weak;
  for (const ItemKey& group : groups_of_leg) {
    const bool lifts_foot = group.key() == lifts_ankle.key() || group.key() == lifts_toe.key();
    const Clue power = old_drop && lifts_foot ? Clue{} : answers.graded(group, side, {"0", "1", "2", "3"});
    if (power.is_yes() && power.because.any([](const model::Finding* one) { return !tried_with_little_effort(*one); })) {
      weak.value = Tri::yes;
      weak.because.add(power.because);
    }
  }
  return led_by(old_drop ? Clue{} : unasked(answers.yes("nerve.foot_drop", side)), {weak});
}

[[nodiscard]] Clue foot_newly_numb(const Answers& answers, Side side) {
  const Clue numb = answers.yes("nerve.sensation_foot_reduced", side);
  return numb.is_yes() && numb_for_long(answers, side) ? Clue{} : numb;
}

[[nodiscard]] Clue foot_newly_drops(const Answers& answers, Side side) {
  const Clue drops = answers.yes("nerve.foot_drop", side);
  return drops.is_yes() && drops_for_long(answers, side) ? Clue{} : drops;
}

// Touch lost over a root, tried against the rest of the skin.
[[nodiscard]] Clue root_numb(const Answers& answers, Side side) {
  return answers.any_chosen(roots_of_leg, side, {"felt_less", "not_felt"});
}

[[nodiscard]] Clue root_newly_numb(const Answers& answers, Side side) { return numb_for_long(answers, side) ? Clue{} : root_numb(answers, side); }

// What is pressed is the cord: the toe goes up, or the foot beats on, in a leg that is not known to be spastic. Below two years the toe goes
// up in anybody (our convention).
[[nodiscard]] Clue cord_sign(const Answers& answers, Side side) {
  if (answers.yes("body.spastic_tone", side).is_yes() || answers.yes("body.paralysis", side).is_yes()) {
    return {};
  }
  const Clue toe = answers.aged(0, toe_goes_up_to) == Tri::no ? answers.chosen("nerve.plantar_response", side, {"toe_up"}) : Clue{};
  return led_by(Clue{}, {toe, answers.chosen("nerve.clonus_ankle", side, {"clonus_goes_on"})});
}

// Found on both legs.
template <class Finds>
[[nodiscard]] Clue on_both(const Answers& answers, const Finds& finds) {
  return unasked(every({finds(answers, Side::left), finds(answers, Side::right)}));
}

[[nodiscard]] Clue on_either(const Answers& answers, const ItemKey& item) {
  return unasked(either({answers.yes(item, Side::left), answers.yes(item, Side::right)}));
}

// What both legs lack: all of it, and what of it counts as new.
struct BothLegs {
  Clue weak, newly_weak, cord, cord_of_one, numb_roots, newly_numb_roots;
};

[[nodiscard]] BothLegs both_legs_examined(const Answers& answers) {
  BothLegs legs;
  if (any_examined(answers, groups_of_leg)) {
    legs.weak = on_both(answers, &leg_weak);
    legs.newly_weak = legs.weak.is_yes() ? on_both(answers, &leg_newly_weak) : legs.weak;
  }
  if (any_examined(answers, signs_of_cord)) {
    legs.cord = on_both(answers, &cord_sign);
    legs.cord_of_one = led_by(Clue{}, {cord_sign(answers, Side::left), cord_sign(answers, Side::right)});
  }
  if (any_examined(answers, roots_of_leg)) {
    legs.numb_roots = on_both(answers, &root_numb);
    legs.newly_numb_roots = legs.numb_roots.is_yes() ? on_both(answers, &root_newly_numb) : legs.numb_roots;
  }
  return legs;
}

// Feet that are looked at because they may be numb: of diabetes they are so for years, whatever the weeks are of; else the weeks say since when.
[[nodiscard]] bool numb_of_old(const Answers& answers) {
  const std::string& why = answers.view().exam().complaint.text;
  return why == "diabetic_foot" || (why == "wound_or_numb_foot" && of_short_history(answers).value == Tri::undetermined);
}

// Open, by what was found, until these were answered.
void ask_of(Raised& raised, const Clue& found, std::initializer_list<Clue> asked) {
  raised.clue = left_open(raised.clue, found);
  raised.clue.because.add(found.because);
  raised.clue.open.add(found.because);
  for (const Clue& one : asked) {
    raised.clue.ask.add(one.ask);
  }
}

// Not sure of saddle or bladder, not willing or not able to say, is no no: what can be felt and measured there is asked for (page, section 0: unknown includes
// "refused").
void ask_of_unsure(const Answers& answers, const Clue& saddle, const Clue& changed, Raised& raised) {
  const auto left_so = [](const model::Finding* one) {
    const auto* answer = std::get_if<model::Answer>(&one->value);
    const auto* undone = std::get_if<model::NotDone>(&one->value);
    return (answer != nullptr && answer->answer == model::AnswerWord::unsure) || (undone != nullptr && (undone->reason == model::WhyNot::declined || undone->reason == model::WhyNot::cannot_answer || undone->reason == model::WhyNot::not_reliable));
  };
  const auto open = [&](const Clue& clue) { return clue.value == Tri::undetermined && clue.open.any(left_so); };
  if (raised.clue.is_yes() || (!open(saddle) && !open(changed))) {
    return;
  }
  raised.clue = left_open(raised.clue, open(saddle) ? saddle : changed);
  raised.clue.hinted = true;
  for (const Side side : {Side::left, Side::right}) {
    raised.clue.ask.add(answers.chosen("nerve.saddle_touch", side, {"felt_less", "not_felt"}).ask);
  }
  raised.clue.ask.add(answers.count_at_least("general.bladder_after_ml", bladder_left_ml).ask);
}

}  // namespace

// Both legs sore is no sign. Feeling or power lost on both sides counts with back pain; a bladder that changed counts with pain of the
// back, below the knee or of both legs, with cancer, a dropped foot or numbness. What changed in sex, and weakness of both legs or by the day, count where they were
// answered: they are not asked after here, and asked in private alone.
Raised cauda_equina(const Answers& answers, Side) {
  const Clue drop = on_either(answers, "nerve.foot_drop");
  const Clue back = answers.yes("history.back_pain");
  const Clue cancer = answers.yes("history.cancer_known");
  const auto felt_less = [&](Side side) { return answers.chosen("nerve.saddle_touch", side, {"felt_less", "not_felt"}); };
  const Clue saddle = led_by(answers.yes("history.saddle_numbness"), {felt_less(Side::left), felt_less(Side::right)});
  // What stays in the bladder after voiding tells of it as well.
  const Clue retained = answers.count_at_least("general.bladder_after_ml", bladder_left_ml);
  const Clue changed = led_by(answers.yes("history.bladder_bowel_change"), {retained});
  // From the back to below the knee on the left and on the right is both, by sides.
  const Clue down_both = every({answers.yes("history.pain_below_knee", Side::left), answers.yes("history.pain_below_knee", Side::right)});
  const Clue pain_both = led_by(answers.yes("history.leg_pain_both"), {down_both.is_yes() ? down_both : Clue{}});
  const Clue below_knee = on_either(answers, "history.pain_below_knee");
  const Clue leg_pain = unasked(either({below_knee, pain_both}));
  const Clue complained = answers.view().exam().complaint.text == "back_leg" ? fact(Tri::yes) : Clue{};  // who comes for back and leg has said that pain
  const Clue bladder = every({changed, either({complained, back, leg_pain, unasked(cancer), drop, saddle})});
  const Clue root_pain = led_by(back, {below_knee, cancer, saddle, drop});
  const Clue told_weak = answers.yes("history.both_legs_weak");
  const Clue worse = answers.yes("history.weakness_getting_worse");
  // The page's first words: new, under 14 days. What was found on both legs is new until it is known to be old: recorded of the body, or by
  // the weeks. Weeks date no cancer, whose backs hurt long before the legs fail. What is old is asked whether anything of it is new: saddle,
  // bladder, and what was told to be new or worse count whatever the legs are (our own rules).
  const bool of_weeks = over_two_weeks(answers).is_yes() && !of_short_history(answers).is_yes() && !cancer.is_yes();
  const auto unless_old = [&](const Clue& clue, bool old) { return clue.is_yes() && old ? Clue{} : clue; };
  const Clue numb_feet = unless_old(on_both(answers, &foot_newly_numb), of_weeks || numb_of_old(answers));
  // Two drops that were told to be new outrank the weeks of the back.
  const bool new_drops = answers.yes("history.foot_drop_new", Side::left).is_yes() && answers.yes("history.foot_drop_new", Side::right).is_yes();
  const Clue drops = unless_old(on_both(answers, &foot_newly_drops), of_weeks && !new_drops);
  const Clue two_sided = every({unasked(back), either({numb_feet, drops})});
  // Numbness of roots alone is asked since when, as narrow canals of old people have it for years. Signs of the cord are new in a leg that is not
  // known to be spastic (the page's summary of urgency).
  const BothLegs legs = both_legs_examined(answers);
  const Clue weak_legs = unless_old(legs.newly_weak, of_weeks);
  const Clue weak_from_back = every({weak_legs, led_by(root_pain, {pain_both})});
  const Clue told_more = every({root_pain, either({led_by(either({told_weak, worse}), {weak_legs, legs.cord}), answers.yes("history.sexual_function_change")})});
  const Clue numb_lately = legs.newly_numb_roots.is_yes() ? every({legs.newly_numb_roots, root_pain, of_short_history(answers)}) : Clue{};
  // Pain down both legs from the back, and new.
  const Clue both_legs = unasked(every({pain_both, root_pain, of_short_history(answers)}));
  // Weak by the day, and the jerks of both ankles gone: it climbs whether or not anything hurts (from memory: no page names it; our own rule).
  const Clue no_jerk = told_weak.is_yes() && worse.is_yes() ? unasked(every({answers.graded("nerve.reflex_ankle", Side::left, {"0"}), answers.graded("nerve.reflex_ankle", Side::right, {"0"})})) : Clue{};
  const Clue climbs = no_jerk.is_yes() && !of_weeks ? every({told_weak, worse, no_jerk}) : Clue{};
  Raised raised;
  raised.clue = led_by(either({saddle, bladder, two_sided}), {told_more, weak_legs.is_yes() ? weak_from_back : Clue{}, both_legs, numb_lately, climbs});
  const Clue weeks = answers.count_at_least("history.weeks_since_onset", short_history_weeks + 1);
  // Pain down both legs from the back, and nobody said since when: that is asked, and the rest is no no. The weeks may be those of the back:
  // it is no no until somebody said that neither leg is weak or gets weaker.
  const bool told_strong = told_weak.is_no() && worse.is_no();
  if (!raised.clue.is_yes() && pain_both.is_yes() && root_pain.is_yes()) {
    if (both_legs.value == Tri::undetermined) {
      ask_of(raised, pain_both, {weeks});
    }
    if (!told_strong) {
      ask_of(raised, pain_both, {told_weak, worse});
    }
  }
  // Found on both legs, and old, undated or tried with little effort; and a sign of the cord of one leg.
  const Clue numb_found = led_by(unasked(every({back, answers.yes("nerve.sensation_foot_reduced", Side::left), answers.yes("nerve.sensation_foot_reduced", Side::right)})),
                                 {unasked(every({back, answers.yes("nerve.foot_drop", Side::left), answers.yes("nerve.foot_drop", Side::right)}))});
  const Clue weak_found = every({legs.weak, led_by(root_pain, {pain_both})});
  const Clue found = led_by(Clue{}, {weak_found, numb_found, every({legs.numb_roots, root_pain}), every({legs.cord_of_one, root_pain})});
  if (!raised.clue.is_yes() && found.is_yes()) {
    ask_of(raised, found, {weeks, told_weak, worse});
    raised.ask_first = weak_found.is_yes() && !weak_for_long(answers, Side::left) && !weak_for_long(answers, Side::right);
  }
  const Clue weak = led_by(either({told_weak, worse}), {legs.weak, legs.cord});
  // Weakness of both legs without any pain is not on the page as a sign alone; what would make it one is asked.
  const bool told = changed.is_yes() || found.is_yes() || legs.numb_roots.is_yes() || (weak.is_yes() && !root_pain.is_yes());
  if (raised.clue.value == Tri::undetermined && !back.is_yes() && !told) {
    raised.clue.because.clear();
    // A foot of which two say that it feels, and that it does not, points to no back.
    raised.clue.hinted = saddle.hinted || changed.hinted || back.hinted || cancer.hinted || told_weak.hinted || worse.hinted || pain_both.hinted;
  } else if (raised.clue.value == Tri::undetermined && weak.is_yes()) {
    raised.clue.because.add(weak.because);
  } else if (raised.clue.is_no() && weak.is_yes()) {
    raised.clue = left_open(raised.clue, weak);
  }
  ask_of_unsure(answers, saddle, changed, raised);
  if (raised.clue.is_yes() && !saddle.is_yes() && !bladder.is_yes()) {
    const bool of_both = weak_legs.is_yes() || two_sided.is_yes() || both_legs.is_yes() || numb_lately.is_yes() || told_weak.is_yes();
    raised.what = legs.cord.is_yes() ? "cord" : (climbs.is_yes() && !root_pain.is_yes() ? "climbs" : (of_both ? "both_legs" : "told"));
  }
  raised.urgency = AlertClass::now;
  raised.interrupts = true;
  // The other half, saddle or bladder, tells how far it went, and is asked before any other danger.
  if (raised.clue.is_yes() && (saddle.value == Tri::undetermined || changed.value == Tri::undetermined)) {
    raised.graver = either({saddle.value == Tri::undetermined ? saddle : fact(Tri::no), changed.value == Tri::undetermined ? changed : fact(Tri::no)});
    raised.ask_first = true;
  }
  return raised;
}

// Cannot be lifted, and newly; an old one is known. The back and the front compartment are looked at.
Raised new_foot_drop(const Answers& answers, Side side) {
  const Clue drops = led_by(answers.yes("nerve.foot_drop", side), {answers.graded("nerve.power_ankle_dorsiflexion", side, {"0", "1", "2"}),
                                                                   answers.chosen("gait.foot_strike", side, {"strike_slap"})});
  const Clue recent = answers.yes("history.foot_drop_new", side);
  Raised raised;
  raised.clue = led_by(every({drops, recent}), {recent});
  return raised;
}

namespace {

// The bone that hurts stands among the grounds; the alert is of the side that was found or complained of, and of none where these are
// two: what was found on the other leg as well takes no side's alert away.
void name_where_it_lies(const Answers& answers, Raised& raised) {
  const bool of_bone = !raised.what.starts_with("lump");
  for (const Side side : {Side::left, Side::right}) {
    const Clue sore = of_bone ? led_by(answers.any_yes({"knee.bone_tender_elsewhere"}, side),
                                       {bone_tender_at_shaft(answers, side), bone_tender_at_ankle(answers, side), bone_tender_at_foot(answers, side)})
                              : answers.any_yes({"skin.lump"}, side);
    // A small lump of the other leg lends its side to none that is large or grows.
    const bool counts = raised.what != "lump" || raised.clue.because.any([&](const model::Finding* one) { return one->side == side; });
    raised.clue.because.add(counts ? sore.because : FindingTrail{});
  }
  const auto found = [&](Side side) { return raised.clue.because.any([&](const model::Finding* one) { return one->side == side; }); };
  const auto& complaint = answers.view().exam().side;
  // A lump rests on its own side alone; pain at night is of the side complained of as well.
  const bool by_complaint = of_bone || (!found(Side::left) && !found(Side::right));
  const bool left = found(Side::left) || (by_complaint && complaint == Side::left);
  const bool right = found(Side::right) || (by_complaint && complaint == Side::right);
  if (left != right) {
    raised.lies = left ? Side::left : Side::right;
  } else if (found(Side::left) && found(Side::right) && (raised.what == "raised" || raised.what == "lump")) {
    // Two legs are said, and not that no side is known.
    raised.refer = of_bone ? "both" : "lump_both";
    raised.what = of_bone ? "raised_both" : "lump_both";
  }
}

}  // namespace

// A bone that broke by almost nothing counts by itself. Pain at night counts when another position does not end it, or when it gets worse. Pain at night or weight lost alone is a question.
Raised tumour(const Answers& answers, Side) {
  const auto either_side = [&](auto&& of) { return either({of(Side::left), of(Side::right)}); };
  const Clue tender_bone = either_side([&](Side side) { return answers.yes("knee.bone_tender_elsewhere", side); });
  // Of the side complained of, and a yes of the other.
  const auto of_complaint = [&](auto&& of) {
    const auto& complaint = answers.view().exam().side;
    return complaint && *complaint != Side::midline ? led_by(of(*complaint), {of(other_side(*complaint))}) : either_side(of);
  };
  const Clue told = of_complaint([&](Side side) { return answers.yes("history.bone_pain_unexplained", side); });
  const Clue unexplained = unasked(told);
  // That it has an explanation is the examiner's answer, at whatever bone.
  const Clue bone = unasked(led_by(tender_bone.value == Tri::undetermined && told.is_no() ? told : tender_bone, {unexplained}));
  const Clue broke = unasked(either_side([&](Side side) { return answers.yes("history.fracture_minimal_force", side); }));
  const Clue at_knee = of_complaint([&](Side side) { return answers.chosen("knee.look_swelling_spread", side, {"local"}); });
  const Clue felt = of_complaint([&](Side side) { return answers.yes("skin.lump", side); });
  const Clue lump = unasked(at_knee.value == Tri::undetermined && felt.is_no() ? felt : at_knee);
  const Clue at_night = answers.yes("history.night_pain");
  const Clue night = every({at_night, either({answers.no("history.night_pain_relieved_by_turning"), answers.yes("history.night_pain_getting_worse")})});
  const Clue lost = answers.yes("history.weight_loss");
  const Clue cancer = answers.yes("history.cancer_known");
  const Clue known = unasked(cancer);
  const Clue weeks = answers.count_at_least("history.weeks_since_onset", lump_weeks);
  const Clue stays = bare_no(unasked(weeks));
  const Tri young = answers.aged(0, young_under - 1);
  // Larger than 5 cm, growing, deep, back again or with nodes; on the bone at this age.
  const Clue grows = unasked(either_side([&](Side side) {
    return led_by(answers.longer_than("skin.lump_size", side, lump_over_mm),
                  {answers.chosen("skin.lump_features", side, {"lump_grows", "lump_deep_or_fixed", "lump_came_back", "lump_with_nodes"}),
                   young == Tri::yes ? answers.chosen("skin.lump_features", side, {"lump_on_bone"}) : Clue{}});
  }));
  const Clue sweats = unasked(every({answers.yes("history.night_sweats"), bone}));
  const Clue unexplained_young = every({fact(young), unexplained});
  const Clue bone_stays = every({fact(young), stays, bone});
  Raised raised;
  raised.clue = led_by(either({night, every({lost, either({bone, night})}), every({known, either({bone, at_night})}),
                               every({fact(young), stays, either({bone, lump})})}),
                       {broke, unexplained_young, grows, sweats});
  if (raised.clue.value == Tri::undetermined && !at_night.is_yes() && !lost.is_yes() && !known.is_yes()) {
    raised.clue.because.clear();
  }
  // Pain at night is found, and nobody answered whether the pain of the bone is explained: that it eases by turning is no no.
  if (raised.clue.is_no() && !raised.clue.against.empty() && !at_night.is_no() && !told.is_no()) {
    raised.clue = left_open(raised.clue, at_night);
    raised.clue.ask = at_night.ask;
  }
  if (raised.clue.value == Tri::undetermined) {
    for (const Clue* open : {&told, &cancer}) {
      raised.would_settle.add(open->ask);
    }
    if (young != Tri::no) {
      raised.would_settle.add(weeks.ask);
      raised.would_settle.add(part_complained_of(answers) == "knee" ? at_knee.ask : felt.ask);
    }
  }
  raised.urgency = young == Tri::no ? AlertClass::two_weeks : AlertClass::same_day;
  if (broke.is_yes() && known.is_yes()) {
    raised.urgency = AlertClass::now;  // broken by almost nothing where a cancer is known
    raised.clue.because.add(broke.because);
    raised.clue.because.add(known.because);
    raised.what = "broke_cancer";
  } else if (const Clue worse = led_by(Clue{}, {cannot_walk(answers), lost, night, sweats}); broke.is_yes() && worse.is_yes() && !hurt_long_ago(answers)) {
    raised.urgency = AlertClass::now;  // it carries nobody any more, or an illness stands behind it: a bone that broke by itself
    raised.clue.because.add(broke.because);
    raised.clue.because.add(worse.because);
    raised.what = "broke_now";
  } else if (broke.is_yes()) {
    raised.what = "broke";
  } else if (raised.clue.is_yes() && !led_by(night, {unexplained_young, sweats, bone_stays, every({known, either({bone, at_night})}), every({lost, either({bone, night})})}).is_yes()) {
    raised.what = grows.is_yes() ? "lump" : "lump_stays";  // no bone hurts
    raised.refer = "lump";
  }
  if (raised.clue.is_yes()) {
    raised.clue.because.add(grows.because);
    name_where_it_lies(answers, raised);
  }
  return raised;
}

}  // namespace limbledger::interpret

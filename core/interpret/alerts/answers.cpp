#include "core/interpret/alerts/answers.hpp"

#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/alerts/limits.hpp"
#include "core/interpret/body.hpp"

#include <algorithm>
#include <array>

namespace limbledger::interpret {

using model::Side;

namespace {

using Keyed = reference::Edition::Keyed;

constexpr std::uint8_t says_no = 1;
constexpr std::uint8_t says_yes = 2;
constexpr std::uint8_t says_any = 3;

[[nodiscard]] Said said(bool yes) { return {yes ? says_yes : says_no, "known"}; }
[[nodiscard]] Said not_said() { return {std::nullopt, "unsure"}; }

// Of this side, and of the person as a whole.
class Recorded {
 public:
  Recorded(const View& view, const model::Item* item, std::string_view name, Side side) {
    const Findings of_item = item != nullptr ? view.of(*item) : Findings();
    const auto at = [&](Side one) { return item != nullptr ? of_side(of_item, one) : view.at(name, one); };
    found_ = at(side);
    const Findings midline = side == Side::midline ? Findings() : at(Side::midline);
    if (!midline.empty()) {
      both_.assign(found_.begin(), found_.end());
      both_.insert(both_.end(), midline.begin(), midline.end());
      found_ = both_;
    }
  }
  Recorded(const Recorded&) = delete;
  Recorded& operator=(const Recorded&) = delete;
  [[nodiscard]] Findings findings() const { return found_; }

 private:
  Findings found_;
  std::vector<const model::Finding*> both_;
};

// Nothing of the item was recorded, on whatever side: most of what is asked for.
[[nodiscard]] bool nothing_of(const View& view, const Keyed& item) { return item.known && !view.has(item); }

// Where a limb was taken off there is nothing to ask after and nothing to say no of; what was seen all the same counts.
[[nodiscard]] const OpenBody* taken_off(const View& view, const model::Item* item, Side side) {
  if (item == nullptr || !view.limb_missing()) {
    return nullptr;
  }
  const OpenBody* body = view.bodies().not_applicable(*item, side);
  return body != nullptr && body->row->why_not == model::WhyNot::no_limb ? body : nullptr;
}

// What is asked for of somebody who lacks a limb, or may: seldom, so it stands by itself.
[[nodiscard, gnu::noinline]] Clue to_be_asked_beside_stump(const View& view, const Keyed& item, Side asked) {
  Clue clue;
  const model::Item* known = view.edition().item_of(item);
  if (const OpenBody* body = taken_off(view, known, asked)) {
    clue.open.add({view.trails().findings, body->finding});
  } else {
    clue.ask = AskTrail(view.trails().asks, {known, item.has(asked) ? asked : Side::midline});
  }
  return clue;
}

// On this side, or of the person where the item has no sides. Nothing where the edition has no such item.
[[nodiscard]] inline Clue to_be_asked(const View& view, const Keyed& item, Side side) {
  if (!item.has(side) && !item.has(Side::midline)) {
    return {};
  }
  if (!view.has_every_limb()) {
    return to_be_asked_beside_stump(view, item, side);
  }
  Clue clue;
  clue.ask = AskTrail(view.trails().asks, {view.edition().item_of(item), item.has(side) ? side : Side::midline});
  return clue;
}

// Examined, and with a remark on how: guarded, with little effort, with poor contact, or perhaps beside the landmark. Whatever it is,
// what was not found may be there all the same (our own reading, for all dangers alike).
[[nodiscard]] bool any_held_back(Findings findings) {
  return std::any_of(findings.begin(), findings.end(), [](const model::Finding* one) { return one->quality && !one->quality->empty() && settles(*one); });
}

// A pulse that was written as not felt where the foot is gone says nothing of blood.
[[nodiscard]] bool is_pulse(const model::Item* item) { return item != nullptr && item->item.text.starts_with("vessel.pulse_"); }

// Left for another time, behind what can be taken off, or for want of a tool where there is another way to ask: the question stands. A plaster
// is not taken off to look.
[[nodiscard]] bool nobody_tried(const View& view, const model::Finding& finding, Side side) {
  const auto* undone = std::get_if<model::NotDone>(&finding.value);
  return undone != nullptr && (undone->reason == model::WhyNot::no_time || undone->reason == model::WhyNot::other || undone->reason == model::WhyNot::no_instrument ||
                               (undone->reason == model::WhyNot::covered && view.at("body.cast", side).empty()));
}

[[nodiscard]] Clue left_undecided(Clue clue, const FindingTrail& by) {
  clue.value = Tri::undetermined;
  clue.open = clue.because;
  clue.open.add(clue.against);
  clue.open.add(by);
  clue.because.clear();
  clue.against.clear();
  return clue;
}

[[nodiscard]] Clue hear_item(const View& view, const Keyed& known, std::string_view name, Side side, const Says& says) {
  const model::Item* item = view.edition().item_of(known);
  const Recorded recorded(view, item, name, side);
  Clue clue;
  bool still_asked = true;
  if (!recorded.findings().empty()) {
    clue.value = hear(recorded.findings(), says_any, says).as_tri();
    const auto all = FindingTrail::of(view.trails().findings, recorded.findings());
    (clue.is_yes() ? clue.because : (clue.is_no() ? clue.against : clue.open)) = all;
    if (const OpenBody* body = clue.is_no() || (clue.is_yes() && is_pulse(item)) ? taken_off(view, item, side) : nullptr) {
      return left_undecided(clue, {view.trails().findings, body->finding});
    }
    if (clue.is_no() && any_held_back(recorded.findings())) {
      return left_undecided(clue, {});
    }
    if (clue.value != Tri::undetermined) {
      return clue;
    }
    for (const model::Finding* finding : recorded.findings()) {
      still_asked = still_asked && (!unsettled_by(*finding).empty() || nobody_tried(view, *finding, side));
      const bool not_done = std::holds_alternative<model::NotDone>(finding->value);
      clue.hinted = clue.hinted || (!not_done && says(*finding).bits == says_yes);
    }
  }
  if (still_asked) {
    clue.ask = to_be_asked(view, known, side).ask;
  }
  return clue;
}

// The one finding of this side and of the person as a whole, where nothing about it needs more than to be read; most are such.
[[nodiscard]] const model::Finding* plain_finding(const View& view, const Keyed& item, Side side) {
  if (view.limb_missing()) {
    return nullptr;
  }
  const model::Finding* plain = nullptr;
  for (const model::Finding* one : view.of(item)) {
    if (one->side != side && one->side != Side::midline) {
      continue;
    }
    const bool read_as_it_is = plain == nullptr && settles(*one) && !std::holds_alternative<model::NotDone>(one->value) && (!one->quality || one->quality->empty()) &&
                               one->standing.value_or(model::Standing::current) != model::Standing::in_conflict;
    if (!read_as_it_is) {
      return nullptr;
    }
    plain = one;
  }
  return plain;
}

// Of most of what is asked for nothing was recorded, and else one plain finding; a function object is made of `says` only for the rest.
template <class Reads>
[[nodiscard, gnu::noinline]] Clue hear_recorded(const View& view, const Keyed& known, const ItemKey& item, Side side, const Reads& says) {
  if (const model::Finding* plain = known.known ? plain_finding(view, known, side) : nullptr) {
    const std::optional<std::uint8_t> bits = says(*plain).bits;
    if (bits == says_yes || bits == says_no) {
      Clue clue;
      clue.value = tri(bits == says_yes);
      (clue.is_yes() ? clue.because : clue.against) = FindingTrail(view.trails().findings, plain);
      return clue;
    }
  }
  return hear_item(view, known, item.name(), side, says);
}

template <class Reads>
[[nodiscard]] Clue hear_with(const View& view, const Keyed& known, const ItemKey& item, Side side, const Reads& says) {
  return nothing_of(view, known) ? to_be_asked(view, known, side) : hear_recorded(view, known, item, side, says);
}

template <class Reads>
[[nodiscard]] Clue hear_with(const View& view, const ItemKey& item, Side side, const Reads& says) {
  return hear_with(view, view.edition().keyed(item), item, side, says);
}

}  // namespace

namespace {

// Only who feels it knows of it. Of a leg; and of the back and the body.
constexpr std::array<ItemKey, 9> pains_of_leg{"history.pain_out_of_proportion", "knee.stretch_pain_calf", "leg.stretch_pain_back", "leg.stretch_pain_front",
                                              "leg.stretch_pain_outer", "leg.stretch_pain_deep", "history.rest_pain_foot", "history.rest_pain_over_2_weeks",
                                              "history.exertional_groin_pain"};
constexpr std::array<ItemKey, 7> felt_of_body{"history.back_pain", "history.pain_below_knee", "history.leg_pain_both", "history.both_legs_weak",
                                               "history.weakness_getting_worse", "history.breathless", "history.cold_pale_sudden"};
// What a person says of themselves alone, and not through a child (clinical safety, C17 and S06), and what nobody knows below a cord that is cut.
constexpr std::array<ItemKey, 3> private_matters{"history.saddle_numbness", "history.bladder_bowel_change", "history.sexual_function_change"};

template <std::size_t Size>
[[nodiscard]] bool is_among(const ItemKey& item, const std::array<ItemKey, Size>& items) {
  return std::any_of(items.begin(), items.end(), [&](const ItemKey& one) { return one.key() == item.key(); });
}

// The no of who cannot tell of pain is none.
[[nodiscard]] Clue unless_untold(const Answers& answers, const ItemKey& item, Side side, Clue clue) {
  if (!clue.is_no()) {
    return clue;
  }
  const bool of_leg = is_among(item, pains_of_leg);
  const bool of_private = is_among(item, private_matters);
  if (!of_leg && !of_private && !is_among(item, felt_of_body)) {
    return clue;
  }
  const Clue hidden = of_leg ? cannot_tell_of_pain(answers, side) : (of_private ? cannot_tell_of_bladder(answers) : cannot_speak_for_pain(answers));
  return hidden.is_yes() ? left_undecided(clue, hidden.because) : clue;
}

}  // namespace

std::vector<const model::Finding*> untold_noes(const Answers& answers) {
  std::vector<const model::Finding*> noes;
  if (pain_untold_by(answers) == UntoldBy::nothing) {
    return noes;
  }
  const auto add = [&](const auto& items) {
    for (const ItemKey& item : items) {
      for (const Side side : {Side::right, Side::left, Side::midline}) {
        for (const model::Finding* finding : answers.view().at(item.name(), side)) {
          const auto* answer = std::get_if<model::Answer>(&finding->value);
          const bool no = answer != nullptr && answer->answer == model::AnswerWord::no;
          if (no && std::find(noes.begin(), noes.end(), finding) == noes.end()) {
            noes.push_back(finding);
          }
        }
      }
    }
  };
  add(pains_of_leg);
  add(felt_of_body);
  add(private_matters);
  return noes;
}

const Reading* Answers::motion(const ItemKey& item, Side side) const {
  const model::Item* known = view_.edition().item_of(item);
  return known != nullptr ? motion(*known, side) : nullptr;
}

const Reading* Answers::motion(const model::Item& item, Side side) const {
  const Findings findings = view_.at(item, side);
  if (findings.empty()) {
    return nullptr;
  }
  auto kept = std::find_if(motions_.begin(), motions_.end(), [&](const Reading& one) { return one.item == &item && one.side == side; });
  if (kept == motions_.end()) {
    auto read = read_motion(item, side, findings);
    if (!read) {
      return nullptr;
    }
    kept = motions_.insert(kept, std::move(*read));
  }
  return kept->readable == Readable::number ? &*kept : nullptr;
}

Clue Answers::hear_as(const ItemKey& item, Side side, const Says& says) const { return hear_with(view_, item, side, says); }

Clue Answers::yes(const ItemKey& item, Side side) const {
  const Keyed& known = view_.edition().keyed(item);
  return nothing_of(view_, known) ? to_be_asked(view_, known, side) : yes_recorded(item, side);
}

[[gnu::noinline]] Clue Answers::yes_recorded(const ItemKey& item, Side side) const {
  return unless_untold(*this, item, side, hear_with(view_, item, side, &says_answer));
}

Clue Answers::no(const ItemKey& item, Side side) const {
  return hear_with(view_, item, side, [](const model::Finding& finding) {
    const auto* answer = std::get_if<model::Answer>(&finding.value);
    return answer == nullptr || answer->answer == model::AnswerWord::unsure ? not_said() : said(answer->answer == model::AnswerWord::no);
  });
}

Clue Answers::positive(const ItemKey& item, Side side) const {
  return hear_with(view_, item, side, [](const model::Finding& finding) {
    const auto* test = std::get_if<model::Test>(&finding.value);
    return test == nullptr || test->result == model::TestResult::equivocal ? not_said() : said(test->result == model::TestResult::positive);
  });
}

Clue Answers::chosen(const ItemKey& item, Side side, std::initializer_list<std::string_view> choices) const {
  return hear_with(view_, item, side, [choices](const model::Finding& finding) {
    const auto in = [&](const model::ChoiceId& id) { return std::find(choices.begin(), choices.end(), id.text) != choices.end(); };
    if (const auto* choice = std::get_if<model::Choice>(&finding.value)) {
      return choice->choice.text == "not_known" || choice->choice.text == "depth_not_seen" ? not_said() : said(in(choice->choice));
    }
    const auto* several = std::get_if<model::Choices>(&finding.value);
    return several == nullptr ? not_said() : said(std::any_of(several->choices.begin(), several->choices.end(), in));
  });
}

Clue Answers::several(const ItemKey& item, Side side, std::initializer_list<std::string_view> choices, std::ptrdiff_t least) const {
  return hear_with(view_, item, side, [choices, least](const model::Finding& finding) {
    const auto* found = std::get_if<model::Choices>(&finding.value);
    if (found == nullptr) {
      return not_said();
    }
    const auto in = [&](const model::ChoiceId& id) { return std::find(choices.begin(), choices.end(), id.text) != choices.end(); };
    return said(std::count_if(found->choices.begin(), found->choices.end(), in) >= least);
  });
}

Clue Answers::any_yes(std::initializer_list<ItemKey> items, Side side) const {
  Clue out;
  for (const ItemKey& item : items) {
    const Keyed& known = view_.edition().keyed(item);
    if (nothing_of(view_, known)) {
      continue;
    }
    if (const Clue one = hear_with(view_, known, item, side, &says_answer); one.is_yes()) {
      out.value = Tri::yes;
      out.because.add(one.because);
    }
  }
  return out;
}

namespace {

// Most of what is looked for is not recorded; of the rest a yes is named, and a hint kept while none says yes.
template <class Hear>
[[nodiscard]] Clue any_of_recorded(const View& view, std::span<const ItemKey> items, const Hear& hear_one) {
  Clue out;
  for (const ItemKey& item : items) {
    if (nothing_of(view, view.edition().keyed(item))) {
      continue;
    }
    const Clue one = hear_one(item);
    out.hinted = out.hinted || one.hinted;
    if (one.is_yes()) {
      out.value = Tri::yes;
      out.because.add(one.because);
      out.quiet.add(one.quiet);
    }
  }
  out.hinted = out.hinted && !out.is_yes();
  return out;
}

}  // namespace

Clue Answers::any_graded(std::span<const ItemKey> items, Side side, std::initializer_list<std::string_view> grades) const {
  return any_of_recorded(view_, items, [&](const ItemKey& item) { return graded(item, side, grades); });
}

Clue Answers::any_chosen(std::span<const ItemKey> items, Side side, std::initializer_list<std::string_view> choices) const {
  return any_of_recorded(view_, items, [&](const ItemKey& item) { return chosen(item, side, choices); });
}

Clue Answers::longer_than(const ItemKey& item, Side side, std::int64_t mm) const {
  return hear_with(view_, item, side, [mm](const model::Finding& finding) {
    const auto* length = std::get_if<model::Length>(&finding.value);
    return length == nullptr || !length->mm ? not_said() : said(length->mm->steps > mm * model::Millimetres::wire_rule.per_unit);
  });
}

Clue Answers::pressure_below(const ItemKey& item, std::int64_t mm_hg) const {
  return hear_with(view_, item, Side::midline, [mm_hg](const model::Finding& finding) {
    const auto* pressure = std::get_if<model::Pressure>(&finding.value);
    return pressure == nullptr || !pressure->mm_hg || pressure->signal ? not_said() : said(pressure->mm_hg->steps < mm_hg);
  });
}

Clue Answers::graded(const ItemKey& item, Side side, std::initializer_list<std::string_view> grades) const {
  return hear_with(view_, item, side, [grades](const model::Finding& finding) {
    const auto* grade = std::get_if<model::Grade>(&finding.value);
    return grade == nullptr ? not_said() : said(std::find(grades.begin(), grades.end(), grade->grade.text) != grades.end());
  });
}

Clue Answers::count_at_least(const ItemKey& item, std::int64_t least, Side side) const {
  return hear_with(view_, item, side, [least](const model::Finding& finding) {
    const auto* count = std::get_if<model::CountValue>(&finding.value);
    return count == nullptr ? not_said() : said(count->count.steps >= least);
  });
}

Clue Answers::count_below(const ItemKey& item, std::int64_t less_than, Side side) const {
  return hear_as(item, side, [less_than](const model::Finding& finding) {
    const auto* count = std::get_if<model::CountValue>(&finding.value);
    return count == nullptr ? not_said() : said(count->count.steps < less_than);
  });
}

Clue Answers::colder_than(std::int64_t tenths) const {
  return hear_as("general.temperature", Side::midline, [tenths](const model::Finding& finding) {
    const auto* temperature = std::get_if<model::Temperature>(&finding.value);
    return temperature == nullptr || !temperature->cel ? not_said() : said(temperature->cel->steps < tenths);
  });
}

Clue Answers::warm_at_least(std::int64_t tenths) const { return heat_at_least("general.temperature", tenths); }
Clue Answers::warmest_at_least(std::int64_t tenths) const { return heat_at_least("general.temperature_highest_7_days", tenths); }

Clue Answers::heat_at_least(const ItemKey& item, std::int64_t tenths) const {
  return hear_with(view_, item, Side::midline, [tenths](const model::Finding& finding) {
    const auto* temperature = std::get_if<model::Temperature>(&finding.value);
    return temperature == nullptr || !temperature->cel ? not_said() : said(temperature->cel->steps >= tenths);
  });
}

Clue Answers::stopped(const ItemKey& item, Side side, std::initializer_list<model::WhyNot> reasons) const {
  return tried(item, side, [reasons](const model::Finding& finding) {
    const auto* not_done = std::get_if<model::NotDone>(&finding.value);
    if (not_done == nullptr) {
      return Tri::no;
    }
    return std::find(reasons.begin(), reasons.end(), not_done->reason) != reasons.end() ? Tri::yes : Tri::undetermined;
  });
}

Clue Answers::tried(const ItemKey& item, Side side, const std::function<Tri(const model::Finding&)>& says) const {
  const Keyed& known = view_.edition().keyed(item);
  Clue clue;
  if (nothing_of(view_, known)) {
    return clue;
  }
  const Recorded recorded(view_, view_.edition().item_of(known), item.name(), side);
  for (const model::Finding* finding : recorded.findings()) {
    const Tri said = settles(*finding) ? says(*finding) : Tri::undetermined;
    if (said == Tri::yes) {
      clue.value = Tri::yes;
      clue.because.add({view_.trails().findings, finding});
    } else if (said == Tri::no && finding->quality && !finding->quality->empty()) {
      clue.open.add({view_.trails().findings, finding});
    } else if (said == Tri::no && !clue.is_yes()) {
      clue.value = Tri::no;
      clue.against.add({view_.trails().findings, finding});
    }
  }
  if (clue.is_yes()) {
    clue.against.clear();
  }
  return clue;
}

Tri Answers::aged(std::int64_t low, std::int64_t high) const {
  if (!age_) {
    return Tri::undetermined;
  }
  if (age_->low >= low && age_->high <= high) {
    return Tri::yes;
  }
  return age_->high < low || age_->low > high ? Tri::no : Tri::undetermined;
}

Tri Answers::child() const { return aged(0, child_under - 1); }

}  // namespace limbledger::interpret

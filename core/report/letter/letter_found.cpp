// What a letter tells of the findings: function, what was found and how, medicines, what was told.
#include "core/report/brief/brief.hpp"
#include "core/report/letter/letter_parts.hpp"
#include "core/report/ordinary.hpp"
#include "core/report/page_judged.hpp"

#include <algorithm>
#include <array>
#include <string_view>

namespace limbledger::report {

namespace {

using model::Finding;
using model::Side;

constexpr std::array<std::string_view, 8> of_function{"history.function_reduced", "history.weight_bearing", "history.refuses_weight", "history.walking_lost",
                                                      "history.walks_usually",    "history.can_reach_feet", "history.moves_about",    "history.steps_at_once"};
constexpr std::array<std::string_view, 5> of_medicines{"history.medicines", "history.blood_thinners", "history.steroids", "history.bone_drugs",
                                                       "history.quinolones"};
constexpr std::array<std::string_view, 2> of_allergies{"history.allergy_known", "history.allergies"};
constexpr std::array<std::string_view, 4> of_treatment{"history.given_so_far", "history.painkiller_last_6h", "history.painkiller_what",
                                                       "history.joint_put_back"};

template <std::size_t Count>
[[nodiscard]] bool one_of_items(const Finding& finding, const std::array<std::string_view, Count>& items) {
  return std::find(items.begin(), items.end(), finding.item.text) != items.end();
}

[[nodiscard]] bool speaks_of_function(const Finding& finding) {
  const std::string_view item = finding.item.text;
  return item.starts_with("function.") || item.starts_with("gait.") || one_of_items(finding, of_function);
}

[[nodiscard]] bool stands_elsewhere(const Finding& finding) {
  return speaks_of_function(finding) || one_of_items(finding, of_medicines) || one_of_items(finding, of_allergies) || one_of_items(finding, of_treatment);
}

[[nodiscard]] bool left_undone(const Finding& finding) { return std::holds_alternative<model::NotDone>(finding.value); }

[[nodiscard]] bool is_number(const Finding& finding) {
  return !left_undone(finding) && !std::holds_alternative<model::Answer>(finding.value) && !std::holds_alternative<model::Test>(finding.value) &&
         !std::holds_alternative<model::Choice>(finding.value) && !std::holds_alternative<model::Choices>(finding.value) &&
         !std::holds_alternative<model::Words>(finding.value);
}

// An activity's name is its text; how well it goes stands behind it.
[[nodiscard]] std::string activity_line(const PageView& view, const Finding& named) {
  const auto* words = std::get_if<model::Words>(&named.value);
  for (const Finding* finding : view.findings) {
    const auto* count = std::get_if<model::CountValue>(&finding->value);
    if (words != nullptr && count != nullptr && finding->item.text == named.item.text + "_ability") {
      return view.say("letter.activity", {{"activity", words->text.text}, {"ability", wire::write_number(count->count.steps, 1), true}});
    }
  }
  if (words == nullptr) {
    return view.value(named);
  }
  return view.say("letter.activity_alone", {{"activity", words->text.text}});
}

[[nodiscard]] std::string with_label(const PageView& view, const Finding& finding) {
  return view.label(finding.item) + view.side_after(finding.side) + ": " + value_or_undone(view, finding);
}

constexpr int without_method = 7;  // from this length on a look or a touch stands without how it was done

// Without its method, but never without where it came from.
[[nodiscard]] std::string bare_value(const PageView& view, const Finding& finding) {
  const std::string value = bare_value_text(view.words, view.edition, finding);
  const bool observed = !finding.origin || *finding.origin == model::Origin::observed;
  return observed ? value : joined({value, enum_word(view.words, "origin", *finding.origin)});
}

// Items of one side, without the side in each.
[[nodiscard]] std::string without_side(const PageView& view, const Finding& finding, int shortened) {
  const bool bare = shortened >= without_method && !is_number(finding) && !finding.pain && !finding.end_feel && !finding.remark && !finding.despite &&
                    finding.standing != model::Standing::in_conflict;
  return view.label(finding.item) + ": " + (bare ? bare_value(view, finding) : view.value(finding));
}

// What a person was told by others or tells of themselves; a no is told with the danger signs, what weighs in the head.
[[nodiscard]] bool is_told_of(const PageView& view, const Finding& finding) {
  if (stands_elsewhere(finding) || left_undone(finding) || is_weighty_fact(finding)) {
    return false;
  }
  if (is_lasting_fact(view, finding)) {
    const auto* answer = std::get_if<model::Answer>(&finding.value);
    return answer == nullptr || answer->answer != model::AnswerWord::no;
  }
  if ( ordinary(view.edition, finding) == Ordinary::ordinary || !finding.item.text.starts_with("history.")) {
    return false;
  }
  const auto* answer = std::get_if<model::Answer>(&finding.value);
  return answer == nullptr || answer->answer != model::AnswerWord::no || ordinary(view.edition, finding) == Ordinary::unusual;
}

// A list whose first `whole` are never left out.
struct FoundList {
  std::vector<std::string> parts;
  std::size_t whole = 0;

  // Of another list what is kept, as never left out; the rest to be counted.
  void take(const FoundList& other, std::size_t kept) {
    const std::size_t here = std::min(other.parts.size(), other.whole + kept);
    for (std::size_t i = 0; i < other.parts.size(); ++i) {
      add(other.parts[i], i < here);
    }
  }

  void add(std::string part, bool never_folded) {
    if (never_folded) {
      parts.insert(parts.begin() + static_cast<std::ptrdiff_t>(whole++), std::move(part));
    } else {
      parts.push_back(std::move(part));
    }
  }
};

struct FoundOnSide {
  FoundList unusual;
  FoundList measured;
  FoundList described;
  FoundList ordinary_labels;
};

// Of a side that is complained of alone: the same item on the other one, which stands behind the value that it is read against.
[[nodiscard]] const Finding* read_against(const PageView& view, const Finding& finding) {
  if (view.exam.side != finding.side || finding.side == Side::midline || left_undone(finding) || stands_elsewhere(finding) ||
      finding.item.text.starts_with("history.") || !is_number(finding) || ordinary(view.edition, finding) == Ordinary::ordinary) {
    return nullptr;  // a yes or a look is not read against the other side
  }
  const Finding* other = nullptr;
  for (const Finding* one : view.findings) {
    if (one->item == finding.item && one->side != finding.side && one->side != Side::midline) {
      // Two values that are both kept, or what is out of the ordinary there too, stand on their own side.
      if (other != nullptr || left_undone(*one) || one->origin == model::Origin::bulk_expected || ordinary(view.edition, *one) == Ordinary::unusual) {
        return nullptr;
      }
      other = one;
    }
  }
  return other;
}

[[nodiscard]] bool stands_behind_other(const PageView& view, const Finding& finding) {
  return std::any_of(view.findings.begin(), view.findings.end(),
                     [&](const Finding* one) { return one->item == finding.item && read_against(view, *one) == &finding; });
}

// With how it was taken only where that differs.
[[nodiscard]] std::string with_other_side(const PageView& view, const Finding& finding, int shortened) {
  const Finding* other = read_against(view, finding);
  std::string value = without_side(view, finding, shortened);
  if (other == nullptr) {
    return value;
  }
  const std::string own_bare = bare_value_text(view.words, view.edition, finding);
  const std::string other_bare = bare_value_text(view.words, view.edition, *other);
  const std::string own_whole = view.value(finding);
  const std::string other_whole = view.value(*other);
  const bool alike = own_whole.starts_with(own_bare) && other_whole == other_bare + own_whole.substr(own_bare.size());
  return view.say("letter.other_value", {{"value", value, false, true},
                                         {"side", side_of(view.words, other->side), false, true},
                                         {"other", alike ? other_bare : other_whole, false, true}});
}

[[nodiscard]] bool alert_rests_on(const PageView& view, const Finding& finding) {
  return finding.finding && std::any_of(view.assessment.alerts.begin(), view.assessment.alerts.end(), [&](const interpret::Alert& alert) {
           return alert_in_letter(view, alert, false) && std::find(alert.because.begin(), alert.because.end(), *finding.finding) != alert.because.end();
         });
}

// Beyond what it is compared with by more than its error.
[[nodiscard]] bool lies_beyond(const PageView& view, const Finding& finding) {
  return finding.finding && std::any_of(view.assessment.statements.begin(), view.assessment.statements.end(), [&](const interpret::Statement& one) {
           const bool beyond = one.verdict == interpret::Verdict::below || one.verdict == interpret::Verdict::above;
           return beyond && one.side == finding.side && one.statement.text.find(":" + finding.item.text + ":") != std::string::npos &&
                  std::find(one.findings.begin(), one.findings.end(), *finding.finding) != one.findings.end();
         });
}

// What is kept of a long list is of the joint that is complained of, measured before estimated, and there what lies beyond; else as the
// catalogue has it.
[[nodiscard]] std::vector<const Finding*> complained_part_first(const PageView& view) {
  std::vector<const Finding*> all(view.findings.begin(), view.findings.end());
  const model::Sequence* sequence = view.edition.sequence(view.exam.complaint);
  const auto rank = [&](const Finding* finding) {
    const model::Item* item = view.edition.item(finding->item);
    const bool of_part = sequence != nullptr && sequence->part && item != nullptr && item->region == *sequence->part;
    const bool estimated = is_number(*finding) && finding->instrument && finding->instrument->text == "by_eye";
    return (of_part ? 0 : 4) + (estimated ? 2 : 0) + (is_number(*finding) && !lies_beyond(view, *finding) ? 1 : 0);
  };
  std::stable_sort(all.begin(), all.end(), [&](const Finding* a, const Finding* b) { return rank(a) < rank(b); });
  return all;
}

[[nodiscard]] FoundOnSide gather_side(const PageView& view, Side side, bool complained_of, int shortened) {
  FoundOnSide here;
  for (const Finding* finding : complained_part_first(view)) {
    if (finding->side != side || stands_elsewhere(*finding) || finding->item.text.starts_with("history.") ||
        finding->item.text.starts_with("general.concern_") || finding->item.text.starts_with("examiner.") || left_undone(*finding) ||
        is_lasting_fact(view, *finding) || stands_behind_other(view, *finding)) {
      continue;
    }
    // What an alert rests on is a danger sign that was found: it is not left out either.
    const bool of_foot = complained_of && blood_feeling_or_movement(*finding);
    const bool whole = of_foot || alert_rests_on(view, *finding);
    // Entered for a group: nobody looked at this item alone, and nothing is said of it.
    if (finding->origin && *finding->origin == model::Origin::bulk_expected) {
      continue;
    }
    switch (ordinary(view.edition, *finding)) {
      case Ordinary::unusual:
        here.unusual.add(with_other_side(view, *finding, shortened), whole);
        break;
      case Ordinary::ordinary:
        // With its value: "kneecap tender" alone under what is ordinary reads both ways.
        if (finding->item.text.starts_with("knee.valgus_") || finding->item.text.starts_with("knee.varus_")) {
          // Whether the other ligaments hold is asked by whoever reads of one that does not: before what may be left out.
          here.ordinary_labels.parts.insert(here.ordinary_labels.parts.begin() + static_cast<std::ptrdiff_t>(here.ordinary_labels.whole),
                                            view.label(finding->item) + ": " + bare_value(view, *finding));
          break;
        }
        here.ordinary_labels.add(view.label(finding->item) + ": " + bare_value(view, *finding), of_foot);
        break;
      case Ordinary::described:
      case Ordinary::told:
        (is_number(*finding) ? here.measured : here.described).add(with_other_side(view, *finding, shortened), whole);
        break;
    }
  }
  return here;
}

[[nodiscard]] std::string shortened_found(const PageView& view, const FoundList& found, std::size_t kept) {
  return some_of(view, found.parts, found.whole + kept, "page.findings");
}

// The side that is complained of is read first.
[[nodiscard]] std::array<Side, 3> sides_in_order(const PageView& view) {
  if (view.exam.side == Side::left) {
    return {Side::left, Side::right, Side::midline};
  }
  return {Side::right, Side::left, Side::midline};
}

[[nodiscard]] std::string of_side_named(const PageView& view, Side side) {
  return side == Side::midline ? view.say("letter.whole_person") : side_of(view.words, side);
}

// Walking was lost at some time; what can be done now is told beside it.
[[nodiscard]] bool walking_was_lost(const PageView& view, const Finding& finding) {
  const std::string_view item = finding.item.text;
  return (item == "history.steps_at_once" || item == "history.walking_lost" || item == "history.weight_bearing" || item == "history.refuses_weight") &&
         !left_undone(finding) && ordinary(view.edition, finding) == Ordinary::unusual;
}

// What the error of measurement or an answer not yet given leaves open; of sides alone, because a letter compares with no figures.
void add_unsettled(const PageView& view, int shortened, SheetSection& section) {
  constexpr std::size_t all = 1000;
  const std::size_t kept = shortened < 4 ? all : (shortened < 6 ? 3 : (shortened < 8 ? 1 : 0));
  if (const std::vector<std::string> measured = within_error(view, true); !measured.empty()) {
    section.bullet(view.say("letter.within_error", {{"what", some_of(view, measured, kept, "page.unsettled"), false, true}}) + ".");
  }
  if (const std::vector<std::string> open = rules_still_open(view, shortened < 7); !open.empty()) {
    section.bullet(view.say("letter.rules_open", {{"what", some_of(view, open, kept, "page.unsettled"), false, true}}) + ".");
  }
}

}  // namespace

bool is_complained_of(const PageView& view, Side side) {
  const bool one_side = view.exam.side == Side::left || view.exam.side == Side::right;
  return one_side ? view.exam.side == side : side != Side::midline;
}

bool blood_feeling_or_movement(const Finding& finding) {
  constexpr std::array<std::string_view, 15> begins{"vessel.pulse_",      "vessel.foot_",        "vessel.capillary_refill_", "vessel.doppler_arterial_",
                                                    "nerve.sensation_",   "nerve.touch_",        "nerve.foot_drop",          "nerve.power_ankle_",
                                                    "nerve.power_great_", "nerve.power_toes_",   "ankle.movement",           "foot.toes_",
                                                    "nerve.toe_touch_",   "nerve.monofilament_", "nerve.tuning_fork_"};
  return std::any_of(begins.begin(), begins.end(), [&](std::string_view one) { return finding.item.text.starts_with(one); });
}

SheetSection letter_function(const PageView& view, int shortened) {
  SheetSection section = view.section("letter.function");
  std::vector<std::string> parts;
  std::vector<std::string> then;
  std::optional<std::string> now;
  std::vector<std::string> can;
  bool steps_lost = false;
  for (const Finding* finding : view.findings) {
    if (!speaks_of_function(*finding) || finding->item.text.ends_with("_ability")) {
      continue;
    }
    if (walking_was_lost(view, *finding)) {
      steps_lost = steps_lost || finding->item.text == "history.steps_at_once";
      then.push_back(with_label(view, *finding));
      continue;
    }
    if (finding->item.text == "gait.steps_now") {
      now = with_label(view, *finding);
      if (!left_undone(*finding) && ordinary(view.edition, *finding) == Ordinary::ordinary) {
        can.push_back(*now);
        continue;
      }
      parts.push_back(*now);
      continue;
    }
    if (finding->item.text.starts_with("function.activity_") && !left_undone(*finding)) {
      parts.push_back(activity_line(view, *finding));
    } else if (left_undone(*finding) || ordinary(view.edition, *finding) != Ordinary::ordinary) {
      parts.push_back(with_label(view, *finding));
    } else {
      can.push_back(with_label(view, *finding));
    }
  }
  if (!then.empty() && (now || steps_lost)) {
    // Then and now stand together and first, so that neither is read for the other.
    parts.erase(std::remove(parts.begin(), parts.end(), now.value_or(std::string())), parts.end());
    section.plain(view.say("letter.then", {{"what", joined(then, "; "), false, true}}) + ". " +
                  view.say("letter.now", {{"what", now.value_or(view.say("letter.now_not_recorded")), false, true}}) + ".");
    if (parts.empty()) {
      return section;
    }
  } else {
    parts.insert(parts.begin(), then.begin(), then.end());
  }
  constexpr std::size_t all = 1000;
  if (parts.empty() && !can.empty()) {
    // Asked, and nothing was lost: "not recorded" would be untrue.
    section.plain(view.say("letter.function_kept", {{"what", some_of(view, can, shortened < 4 ? all : (shortened < letter_shortest ? 3 : 1), "page.findings"), false, true}}));
    return section;
  }
  section.plain(parts.empty() ? view.say("letter.function_not_recorded") : some_of(view, parts, shortened < 4 ? all : (shortened < 6 ? 6 : 3), "page.findings") + ".");
  return section;
}

SheetSection letter_found(const PageView& view, int shortened) {
  constexpr std::size_t all = 1000;
  // What is told of the side that is complained of goes last.
  const std::size_t told_kept = shortened < 2 ? all : (shortened < 4 ? 6 : (shortened < 6 ? 3 : (shortened < 7 ? 1 : 0)));
  const std::size_t measured_of_side = shortened < 5 ? all : (shortened < 6 ? 4 : (shortened < 7 ? 3 : (shortened < 8 ? 1 : 0)));
  const std::size_t measured_beside = shortened < 3 ? all : (shortened < 5 ? 2 : (shortened < 7 ? 1 : 0));
  const std::size_t ordinary_of_side = shortened < 3 ? all : (shortened < 5 ? 10 : (shortened < 6 ? 3 : (shortened < 7 ? 2 : 0)));
  const std::size_t ordinary_beside = shortened < 1 ? all : (shortened < 2 ? 4 : (shortened < 4 ? 2 : (shortened < 6 ? 1 : 0)));
  const std::size_t unusual_of_side = shortened < 6 ? all : (shortened < 7 ? 8 : (shortened < 8 ? 4 : 2));
  const std::size_t unusual_beside = shortened < 5 ? all : (shortened < 6 ? 5 : (shortened < 7 ? 3 : (shortened < 8 ? 1 : 0)));
  SheetSection section = view.section("letter.found");
  // Where nothing of a list is kept, its count stands at the end with the others.
  std::vector<std::string> left_out;
  const auto put = [&](const FoundList& found, std::size_t kept, std::string_view message, std::string_view when_none, const std::string& of_side) {
    if (found.parts.empty()) {
      return;
    }
    if (found.whole + kept == 0) {
      left_out.push_back(view.say(when_none, {{"side", of_side, false, true}, {"count", wire::write_number(static_cast<std::int64_t>(found.parts.size()), 1), true}}));
      return;
    }
    section.bullet(view.say(message, {{"side", of_side, false, true}, {"what", shortened_found(view, found, kept), false, true}}));
  };
  for (const Side side : sides_in_order(view)) {
    const bool complained_of = is_complained_of(view, side);
    const bool beside = !complained_of && (view.exam.side == Side::left || view.exam.side == Side::right);
    const FoundOnSide here = gather_side(view, side, complained_of, shortened);
    const std::size_t measured_kept = beside ? measured_beside : measured_of_side;
    const std::size_t ordinary_kept = beside ? ordinary_beside : ordinary_of_side;
    const std::string of_side = of_side_named(view, side);
    const std::size_t unusual_kept = beside ? unusual_beside : unusual_of_side;
    FoundList told_first;
    told_first.take(here.unusual, unusual_kept);
    told_first.take(here.measured, measured_kept);
    told_first.take(here.described, measured_kept);
    put(told_first, 0, "letter.found_side", "letter.left_out_found", of_side);
    put(here.ordinary_labels, ordinary_kept, "letter.ordinary_side", "letter.left_out_ordinary", of_side);
  }
  add_unsettled(view, shortened, section);
  std::vector<std::string> told;
  for (const Finding* finding : view.findings) {
    if (is_told_of(view, *finding)) {
      told.push_back(with_label(view, *finding));
    }
  }
  if (!told.empty() && told_kept == 0) {
    left_out.push_back(view.say("letter.left_out_told", {{"count", wire::write_number(static_cast<std::int64_t>(told.size()), 1), true}}));
  } else if (!told.empty()) {
    section.bullet(view.say("letter.told", {{"what", some_of(view, told, told_kept, "page.findings"), false, true}}));
  }
  add_noes(view, shortened, section);
  if (!left_out.empty()) {
    section.bullet(view.say(record_stays(view) ? "letter.left_out_kept" : "letter.left_out", {{"where", view.say("page.findings"), false, true}, {"what", joined(left_out, "; "), false, true}}));
  }
  if (section.lines.empty()) {
    section.plain(view.say("page.nothing"));
  }
  return section;
}

SheetSection letter_treatment(const PageView& view) {
  SheetSection section = view.section("letter.treatment");
  std::vector<std::string> parts;
  std::vector<std::string> named;
  for (const model::PlanItem& item : view.exam.plan.value_or(std::vector<model::PlanItem>{})) {
    const bool given = item.became == model::Became::given || item.became == model::Became::done;
    const bool is_care = item.kind == model::PlanKind::splint || item.kind == model::PlanKind::limit || item.kind == model::PlanKind::exercise ||
                         item.kind == model::PlanKind::medicine;
    if (given && is_care) {
      named.push_back(item.plan_item ? item.plan_item->to_text() : std::string());
      parts.push_back(view.say("letter.given", {{"plan", enum_word(view.words, "plan", item.kind) + view.side_after(item.side), false, true},
                                                {"text", item.text.text}}));
    }
  }
  for (const Finding* finding : view.findings) {
    if (one_of_items(*finding, of_treatment)) {
      parts.push_back(with_label(view, *finding));
    }
  }
  section.plain((parts.empty() ? view.say("letter.nothing_given") : joined(parts, "; ") + ".") + " " + view.say("letter.response"));
  add_exchanged_line(view, named, section);
  return section;
}

SheetSection letter_medicines(const PageView& view) {
  SheetSection section = view.section("letter.medicines");
  std::vector<std::string> medicines;
  std::vector<std::string> allergies;
  for (const Finding* finding : view.findings) {
    if (one_of_items(*finding, of_medicines)) {
      medicines.push_back(with_label(view, *finding));
    } else if (one_of_items(*finding, of_allergies)) {
      allergies.push_back(with_label(view, *finding));
    }
  }
  const std::string taken = medicines.empty() ? view.say("letter.medicines_not_asked") : joined(medicines, "; ") + ".";
  section.plain(taken + " " + (allergies.empty() ? view.say("letter.allergies_not_asked") : joined(allergies, "; ") + "."));
  return section;
}

SheetSection letter_private(const PageView& view) {
  SheetSection section = view.section("letter.private");
  for (const interpret::Alert& alert : view.assessment.alerts) {
    if (alert.audience == interpret::Audience::protected_) {
      section.bullet(alert_text(alert, view.words) + ".");
    }
  }
  for (const Finding* finding : view.findings) {
    const model::Item* item = view.edition.item(finding->item);
    if (item != nullptr && item->protected_.value_or(false)) {
      section.bullet(with_label(view, *finding));
    }
  }
  if (section.lines.empty()) {
    section.plain(view.say("page.nothing"));
  }
  return section;
}

}  // namespace limbledger::report

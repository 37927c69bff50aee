// What was found, what was not done and why, and what was not examined.
#include "core/interpret/after/private_remarks.hpp"
#include "core/interpret/view.hpp"
#include "core/model/exam/day.hpp"
#include "core/report/brief/brief.hpp"
#include "core/report/ordinary.hpp"
#include "core/report/page_criteria.hpp"
#include "core/report/page_parts.hpp"

#include <algorithm>
#include <iterator>
#include <tuple>

namespace limbledger::report {

namespace {

using model::Side;

[[nodiscard]] std::string region_name(const model::ItemId& item) { return item.text.substr(0, item.text.find('.')); }

[[nodiscard]] std::size_t region_of(const reference::Edition& edition, const model::ItemId& item) {
  const auto regions = edition.regions();
  const std::string name = region_name(item);
  const auto at = std::find_if(regions.begin(), regions.end(), [&](const model::Word& region) { return region.text == name; });
  return static_cast<std::size_t>(at - regions.begin());
}

[[nodiscard]] bool is_protected(const reference::Edition& edition, const model::ItemId& item) {
  const model::Item* known = edition.item(item);
  return known != nullptr && known->protected_.value_or(false);
}

[[nodiscard]] std::size_t place_of(const reference::Edition& edition, const model::ItemId& item) {
  const auto items = edition.items();
  const auto at = std::find_if(items.begin(), items.end(), [&](const model::Item& one) { return one.item == item; });
  return static_cast<std::size_t>(at - items.begin());
}

// An input may rest on another item than the one that would settle it: passive flexion in conflict is not "not asked".
[[nodiscard]] bool was_not_asked(const interpret::RuleResult& rule, const interpret::Settle& settle) {
  return std::any_of(rule.inputs.begin(), rule.inputs.end(), [&](const interpret::RuleInput& input) {
    return input.input == settle.input && input.state.text == "not_asked";
  });
}

// What counts as positive, where the item is a test whose catalogue says so.
[[nodiscard]] std::string positive_meaning(const PageView& view, const model::Finding& finding) {
  const model::Item* item = view.edition.item(finding.item);
  const bool says = item != nullptr && item->value == model::ValueKind::test && item->text.positive && view.words.has(item->text.positive->text);
  return says ? view.words.say(item->text.positive->text) : std::string();
}

[[nodiscard]] bool holds_finding(const PageView& view, const model::ItemId& item, Side side) {
  return std::any_of(view.findings.begin(), view.findings.end(), [&](const model::Finding* finding) {
    return finding->item == item && (finding->side == side || finding->side == Side::midline);
  });
}

// A joint of the other side that nobody looked at is named with all that belongs to it; what is known of it from before is named by itself.
[[nodiscard]] bool said_with_its_joint(const PageView& view, const AdvisedAgainst& against, const interpret::MissingItem& missing) {
  const model::Item* item = view.edition.item(missing.item);
  return item != nullptr && is_not_examined(view, item->region.text, missing.side) && !against.holds(missing.item, missing.side) &&
         !holds_finding(view, missing.item, missing.side);
}

[[nodiscard]] std::vector<model::ItemId> remarks_apart(const model::Exam& exam, const std::optional<model::Person>& person, const reference::Edition& facts,
                                                       const model::PartialDate& as_of) {
  return interpret::items_of_private_remarks(interpret::View(exam, person, facts, as_of));
}

// The exam as this page tells it, where that differs from the record.
[[nodiscard]] std::optional<model::Exam> without_remarks(const model::Exam& exam, const std::vector<model::ItemId>& items, ProtectedNote note) {
  std::optional<model::Exam> told;
  if (note != ProtectedNote::shown && !items.empty()) {
    told = exam;
    if (!interpret::take_out_remarks(items, *told)) {
      told.reset();
    }
  }
  return told;
}

}  // namespace

PageView::PageView(const model::Exam& of_exam, const std::optional<model::Person>& of_person, const interpret::Assessment& judged,
                   const Words& said, const reference::Edition& facts, const PageNames& known)
    : remarks_apart_(remarks_apart(of_exam, of_person, facts, judged.as_of)), without_them_(without_remarks(of_exam, remarks_apart_, known.protected_note)),
      exam(without_them_ ? *without_them_ : of_exam), person(of_person), assessment(judged), words(said), edition(facts), names(known),
      holds_remarks_apart(without_them_.has_value()) {
  for (const model::Finding& finding : findings_of(exam)) {
    const model::Standing standing = finding.standing ? *finding.standing : model::Standing::current;
    if (standing != model::Standing::current && standing != model::Standing::in_conflict) {
      continue;
    }
    // Whatever was answered: if only a yes were left out, its being left out would tell it.
    if (known.protected_note != ProtectedNote::shown && is_protected(facts, finding.item)) {
      holds_protected = true;
    } else {
      findings.push_back(&finding);
    }
  }
  for (const model::Addendum& addendum : exam.addenda.value_or(std::vector<model::Addendum>{})) {
    for (const model::Observation& one : addendum.findings.value_or(std::vector<model::Observation>{})) {
      holds_protected = holds_protected || (known.protected_note != ProtectedNote::shown && is_protected(facts, one.item));
    }
  }
  // Two of one slot by who wrote first, then by their ids.
  const auto key = [&](const model::Finding& finding) {
    return std::tuple(region_of(edition, finding.item), place_of(edition, finding.item), finding.item.text,
                      finding.side == Side::right ? 0 : (finding.side == Side::left ? 1 : 2), finding.entered_at ? finding.entered_at->ms : 0,
                      finding.finding ? finding.finding->to_text() : std::string());
  };
  std::stable_sort(findings.begin(), findings.end(), [&](const auto* a, const auto* b) { return key(*a) < key(*b); });
}

std::string PageView::side_after(const std::optional<Side>& side) const {
  return side && *side != Side::midline ? ", " + side_of(words, *side) : std::string();
}

std::string PageView::side_before(const std::optional<Side>& side) const {
  return side && *side != Side::midline ? side_of(words, *side) + ": " : std::string();
}

std::string PageView::other_side_unseen(const model::Finding& finding) const {
  const bool described = std::holds_alternative<model::Grade>(finding.value) || std::holds_alternative<model::Answer>(finding.value);
  if (!described || finding.side == Side::midline || finding.origin == model::Origin::bulk_expected || holds_other_side(exam, finding.item, finding.side)) {
    return {};
  }
  // Pages are in English: its own words are what a reader takes for a comparison.
  const bool graded = std::holds_alternative<model::Grade>(finding.value) && grades_against_other(edition, finding.item);
  const bool says = bare_value_text(words, edition, finding).find("the other side") != std::string::npos;
  return graded || says ? say("value.other_side_not_recorded") : std::string();
}

std::string PageView::which_of_two(const model::Finding& finding) const {
  if (!finding.examined_at) {
    return {};
  }
  const auto text_of = [&](const model::Instant& at) { return local_time(at, exam.offset_min ? exam.offset_min->steps : 0); };
  constexpr std::size_t date_length = 10;
  constexpr std::size_t time_length = 5;
  for (const model::Finding* other : findings) {
    if (other == &finding || other->item != finding.item || other->side != finding.side || !other->examined_at || other->examined_at->ms == finding.examined_at->ms) {
      continue;
    }
    const std::string here = text_of(*finding.examined_at);
    const bool one_day = here.compare(0, date_length, text_of(*other->examined_at), 0, date_length) == 0;
    const std::string time = one_day ? here.substr(date_length + 1, time_length) : here.substr(0, date_length + 1 + time_length);
    return say("value.at_time", {{"time", time, false, true}});
  }
  return {};
}

bool PageView::has_remark_apart(const model::Finding& finding) const {
  return finding.remark && std::binary_search(remarks_apart_.begin(), remarks_apart_.end(), finding.item);
}

std::string PageView::value(const model::Finding& finding) const {
  if (has_remark_apart(finding) && names.protected_note != ProtectedNote::shown) {
    model::Finding told = finding;  // as an alert once rested on it, it lies outside the exam
    told.remark.reset();
    return value(told);
  }
  std::string text = joined({value_text(words, edition, finding), which_of_two(finding)});
  if (const std::string unseen = other_side_unseen(finding); !unseen.empty()) {
    text += ", " + unseen;
  }
  if (finding.examiner && exam.examiner && !(*finding.examiner == *exam.examiner)) {
    text += ", " + say("value.by_other", {{"examiner", examiner(*finding.examiner)}});
  }
  if (finding.settled) {
    text += ", " + say("settled.value_mark");
  }
  return joined({text, added_since(finding)});
}

std::string PageView::examiner(const model::ExaminerId& id) const {
  const auto at = names.examiners.find(id);
  if (at == names.examiners.end()) {
    return say("page.examiner_unknown", {{"id", id.to_text(), false, true}});
  }
  return at->second;
}

std::string PageView::local(model::Instant instant) const {
  std::string text = local_time(instant, exam.offset_min ? exam.offset_min->steps : 0);
  return model::can_be_right(instant) ? text : say("page.by_wrong_clock", {{"at", text, false, true}});
}

std::optional<model::PartialDate> PageView::day() const { return interpret::day_to_judge(exam, person, assessment.as_of); }

std::string PageView::day_text() const {
  const auto known = day();
  return known ? known->to_text() : say("page.day_doubtful");
}

std::string PageView::when_text() const {
  const model::When when = model::when_done(exam);
  const std::string time = when.at ? local_time(*when.at, exam.offset_min ? exam.offset_min->steps : 0) : when.day.value_or(assessment.as_of).to_text();
  if (when.doubtful) {
    return say("page.when_doubtful", {{"clock", exam.examined_at ? local_time(*exam.examined_at, exam.offset_min ? exam.offset_min->steps : 0) : "?", false, true}});
  }
  return day() ? time : say("page.when_and_birth", {{"when", time, false, true}});
}

bool PageView::has_passed(const std::string& day) const {
  return names.now && model::date_of(*names.now, exam.offset_min ? exam.offset_min->steps : 0).to_text() > day;
}

std::optional<model::AgeInterval> PageView::age() const {
  return interpret::ages_at(exam, person, assessment.as_of).years;
}

std::vector<interpret::MissingItem> minimum_missing(const PageView& view, Side side) {
  std::vector<interpret::MissingItem> missing;
  std::copy_if(view.assessment.missing.begin(), view.assessment.missing.end(), std::back_inserter(missing),
               [&](const interpret::MissingItem& one) { return one.side == side || one.side == Side::midline; });
  return missing;
}

SheetSection found_section(const PageView& view) {
  SheetSection section = view.section("page.findings");
  std::string region;
  const model::ItemId* item = nullptr;
  bool group_entries = false;
  std::vector<std::string> tests;
  for (const model::Finding* finding : view.findings) {
    if (left_undone(*finding)) {
      continue;
    }
    const std::string here = region_name(finding->item);
    if (here != region) {
      region = here;
      item = nullptr;
      section.lines.push_back({LineKind::region, word_of(view.words, "region", region), {}, {}, {}});
    }
    if (item == nullptr || !(*item == finding->item)) {
      section.lines.push_back({LineKind::item, view.label(finding->item), {}, {}, {}});
      const std::string meaning = positive_meaning(view, *finding);
      if (!meaning.empty()) {
        tests.push_back(view.label(finding->item) + ": " + meaning);
      }
    }
    item = &finding->item;
    SheetLine& line = section.lines.back();
    std::vector<std::string>& values = finding->side == Side::right ? line.right : (finding->side == Side::left ? line.left : line.midline);
    values.push_back(view.value(*finding));
    group_entries = group_entries || (finding->origin && *finding->origin == model::Origin::bulk_expected);
  }
  if (section.lines.empty()) {
    section.plain(view.say("page.nothing"));
  }
  const bool one_sided =
      std::any_of(section.lines.begin(), section.lines.end(), [](const SheetLine& line) { return line.right.empty() != line.left.empty(); });
  if (one_sided) {
    section.plain(view.say("page.one_side"));
  }
  if (group_entries) {
    section.plain(view.say("page.group_entries"));
  }
  // "Lifts the straight leg: negative" reads both ways without its meaning.
  if (!tests.empty()) {
    section.plain(view.say("page.what_positive"));
    for (const std::string& test : tests) {
      section.bullet(test);
    }
  }
  return section;
}

SheetSection not_done_section(const PageView& view) {
  SheetSection section = view.section("page.not_done");
  for (const model::Finding* finding : view.findings) {
    if (left_undone(*finding)) {
      section.bullet(view.label(finding->item) + view.side_after(finding->side) + ": " + (undone_without_reason(*finding) ? value_or_undone(view, *finding) : view.value(*finding)));
    }
  }
  if (section.lines.empty()) {
    section.plain(view.say("page.none_left_undone"));
  }
  return section;
}

// The other side, the joints above and below, the minimum set, and what a rule still asks for; the rest was no part of the visit.
SheetSection not_examined_section(const PageView& view) {
  SheetSection section = view.section("page.not_examined");
  add_transfer_line(view, section);
  const model::Sequence* sequence = view.edition.sequence(view.exam.complaint);
  const std::string part = sequence != nullptr && sequence->part ? sequence->part->text : std::string();
  std::vector<std::string> joints;
  if (!part.empty()) {
    joints.push_back(word_of(view.words, "joint", part));
  }
  for (const model::Word& joint : sequence != nullptr && sequence->joints_around ? *sequence->joints_around : std::vector<model::Word>{}) {
    joints.push_back(word_of(view.words, "joint", joint.text));
  }
  for (const std::string& place : places_not_examined(view)) {
    section.bullet(place);
  }
  for (const std::string& place : places_barely_examined(view)) {
    section.bullet(place);
  }
  const AdvisedAgainst against(view);
  std::vector<std::string> of_midline;
  std::vector<std::string> held_back;  // their reason is known
  for (const Side side : {Side::right, Side::left}) {
    const bool other = view.exam.side && *view.exam.side != Side::midline && *view.exam.side != side;
    std::vector<std::string> labels;
    for (const interpret::MissingItem& missing : minimum_missing(view, side)) {
      if (other && said_with_its_joint(view, against, missing)) {
        continue;
      }
      const bool midline = missing.side == Side::midline;
      const bool held = against.holds(missing.item, missing.side);
      const std::string label = gap_label(view, missing) + (held && !midline ? view.side_after(missing.side) : std::string());
      std::vector<std::string>& list = held ? held_back : (midline ? of_midline : labels);
      if (std::find(list.begin(), list.end(), label) == list.end()) {
        list.push_back(label);
      }
    }
    if (!labels.empty()) {
      section.bullet(reason_lacking(view, view.say(other ? "page.minimum_other" : "page.minimum_side",
                                                   {{"side", side_of(view.words, side), false, true}, {"items", joined(labels, "; "), false, true}})));
    }
  }
  if (!of_midline.empty()) {
    section.bullet(reason_lacking(view, view.say("page.minimum", {{"items", joined(of_midline, "; "), false, true}})));
  }
  if (!held_back.empty()) {
    section.bullet(view.say("page.minimum_held", {{"items", joined(held_back, "; "), false, true}}));
  }
  // What was found (also where it disagrees) and what was not done stand above already, with their words.
  std::vector<std::string> asked;
  for (const interpret::RuleResult& rule : view.assessment.rules) {
    for (const interpret::Settle& settle : rule.settle) {
      const bool there = settle.item && holds_finding(view, *settle.item, settle.side ? *settle.side : Side::midline);
      const std::string text = settle.item && !there && was_not_asked(rule, settle) ? input_text(view.words, rule, settle.input.text) + view.side_after(settle.side) : "";
      if (!text.empty() && std::find(asked.begin(), asked.end(), text) == asked.end()) {
        asked.push_back(text);
        section.bullet(view.say("page.for_a_rule", {{"what", text, false, true}}));
      }
    }
  }
  if (!joints.empty()) {
    section.plain(view.say("page.joints_rest", {{"joints", joined(joints), false, true}}));
  }
  section.plain(view.say("page.not_part"));
  return section;
}

}  // namespace limbledger::report

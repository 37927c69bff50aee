// What was found, what was not done and why, and what was not examined.
#include "core/report/page_parts.hpp"

#include <algorithm>
#include <array>
#include <tuple>

namespace limbledger::report {

namespace {

using model::Side;

constexpr std::array<std::string_view, 15> regions{"history", "general", "body", "pelvis",   "hip",   "knee",   "leg",
                                                   "ankle",   "foot",    "gait", "function", "nerve", "vessel", "skin",  "examiner"};
// The part that the complaints of this edition are about, and the joints above and below it.
constexpr std::string_view complained_part = "knee";
constexpr std::array<std::string_view, 2> joints_around{"hip", "ankle"};
// Asked for the protection of a person alone: never on a page that may be seen over a shoulder, whatever the answer was.
constexpr std::array<std::string_view, 1> protected_items{"history.unexplained_bruises"};

[[nodiscard]] std::size_t region_of(const model::ItemId& item) {
  const auto at = std::find(regions.begin(), regions.end(), item.text.substr(0, item.text.find('.')));
  return static_cast<std::size_t>(at - regions.begin());
}

[[nodiscard]] std::size_t place_of(const reference::Edition& edition, const model::ItemId& item) {
  const auto items = edition.items();
  const auto at = std::find_if(items.begin(), items.end(), [&](const model::Item& one) { return one.item == item; });
  return static_cast<std::size_t>(at - items.begin());
}

[[nodiscard]] bool was_not_done(const model::Finding& finding) { return std::holds_alternative<model::NotDone>(finding.value); }

// An input may rest on another item than the one that would settle it: passive flexion in conflict is not "not asked".
[[nodiscard]] bool was_not_asked(const interpret::RuleResult& rule, const interpret::Settle& settle) {
  return std::any_of(rule.inputs.begin(), rule.inputs.end(), [&](const interpret::RuleInput& input) {
    return input.input == settle.input && input.state.text == "not_asked";
  });
}

// What counts as positive, where the item is a test whose catalogue says so.
[[nodiscard]] std::string positive_meaning(const PageView& view, const model::Finding& finding) {
  const model::Item* item = view.edition.item(finding.item);
  if (item == nullptr || item->value != model::ValueKind::test || !item->text.short_.text.ends_with(".short")) {
    return {};
  }
  const std::string& label = item->text.short_.text;
  const std::string name = label.substr(0, label.size() - std::string_view("short").size()) + "positive";
  return view.words.has(name) ? view.words.say(name) : std::string();
}

[[nodiscard]] bool holds_finding(const PageView& view, const model::ItemId& item, Side side) {
  return std::any_of(view.findings.begin(), view.findings.end(), [&](const model::Finding* finding) {
    return finding->item == item && (finding->side == side || finding->side == Side::midline);
  });
}

}  // namespace

PageView::PageView(const model::Exam& of_exam, const std::optional<model::Person>& of_person, const interpret::Assessment& judged,
                   const Words& said, const reference::Edition& facts, const PageNames& known)
    : exam(of_exam), person(of_person), assessment(judged), words(said), edition(facts), names(known) {
  for (const model::Finding& finding : findings_of(exam)) {
    const model::Standing standing = finding.standing ? *finding.standing : model::Standing::current;
    if (standing != model::Standing::current && standing != model::Standing::in_conflict) {
      continue;
    }
    // Whatever was answered: if only a yes were left out, its being left out would tell it.
    if (known.protected_note != ProtectedNote::shown &&
        std::find(protected_items.begin(), protected_items.end(), finding.item.text) != protected_items.end()) {
      holds_protected = true;
    } else {
      findings.push_back(&finding);
    }
  }
  // Two of one slot by who wrote first, then by their ids.
  const auto key = [&](const model::Finding& finding) {
    return std::tuple(region_of(finding.item), place_of(edition, finding.item), finding.item.text,
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

std::string PageView::value(const model::Finding& finding) const {
  std::string text = value_text(words, edition, finding);
  if (finding.examiner && exam.examiner && !(*finding.examiner == *exam.examiner)) {
    text += ", " + say("value.by_other", {{"examiner", examiner(*finding.examiner)}});
  }
  return text;
}

std::string PageView::examiner(const model::ExaminerId& id) const {
  const auto at = names.examiners.find(id);
  return at == names.examiners.end() ? id.to_text() : at->second;
}

std::string PageView::local(model::Instant instant) const {
  const std::int64_t offset = exam.offset_min ? exam.offset_min->steps : 0;
  const std::string text = model::Instant{instant.ms + offset * 60'000}.to_text();
  return text.substr(0, 10) + " " + text.substr(11, 5) + (offset == 0 ? " UTC" : "");
}

model::PartialDate PageView::day() const {
  return exam.examined_at ? model::date_of(*exam.examined_at, exam.offset_min ? exam.offset_min->steps : 0) : assessment.as_of;
}

std::optional<model::AgeInterval> PageView::age() const {
  return person && person->birth ? model::age_on(*person->birth, day()) : std::nullopt;
}

bool PageView::examined(std::string_view region, Side side) const {
  return std::any_of(findings.begin(), findings.end(), [&](const model::Finding* finding) {
    return finding->side == side && finding->item.text.starts_with(std::string(region) + ".") && !was_not_done(*finding);
  });
}

std::vector<MissingOf> minimum_missing(const PageView& view, Side side) {
  std::vector<MissingOf> missing;
  const model::Sequence* sequence = view.edition.sequence(view.exam.complaint);
  if (sequence == nullptr) {
    return missing;
  }
  const auto age = view.age();
  for (const model::SequenceStep& step : sequence->steps) {
    // An age that is not known may be under the limit.
    const bool for_the_young = step.minimum_under && (!age || age->low < step.minimum_under->steps);
    const model::Item* item = view.edition.item(step.item);
    if (item == nullptr || !((step.minimum && *step.minimum) || for_the_young)) {
      continue;
    }
    const bool sided = std::find(item->sides.begin(), item->sides.end(), side) != item->sides.end();
    const Side at = sided ? side : Side::midline;
    const bool there = item->arc ? holds_finding(view, item->arc->low, at) && holds_finding(view, item->arc->high, at) : holds_finding(view, step.item, at);
    if (!there) {
      missing.push_back({step.item, at});
    }
  }
  return missing;
}

SheetSection found_section(const PageView& view) {
  SheetSection section = view.section("page.findings");
  std::string region;
  const model::ItemId* item = nullptr;
  bool group_entries = false;
  std::vector<std::string> tests;
  for (const model::Finding* finding : view.findings) {
    if (was_not_done(*finding)) {
      continue;
    }
    const std::string here = finding->item.text.substr(0, finding->item.text.find('.'));
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
    if (was_not_done(*finding)) {
      section.bullet(view.label(finding->item) + view.side_after(finding->side) + ": " + view.value(*finding));
    }
  }
  if (section.lines.empty()) {
    section.plain(view.say("page.nothing"));
  }
  return section;
}

// The other side, the joints above and below, the minimum set, and what a rule still asks for; the rest was no part of the visit.
SheetSection not_examined_section(const PageView& view) {
  SheetSection section = view.section("page.not_examined");
  for (const Side side : {Side::right, Side::left}) {
    if (!view.examined(complained_part, side)) {
      section.bullet(view.say("page.other_side", {{"side", side_of(view.words, side), false, true}}));
    }
  }
  for (const std::string_view joint : joints_around) {
    std::vector<std::string> sides;
    for (const Side side : {Side::right, Side::left}) {
      if (!view.examined(joint, side)) {
        sides.push_back(side_of(view.words, side));
      }
    }
    if (!sides.empty()) {
      section.bullet(view.say("page.joint", {{"joint", view.say("page.joint_" + std::string(joint)), false, true},
                                             {"sides", joined(sides, view.say("page.and")), false, true}}));
    }
  }
  std::vector<std::string> of_midline;
  for (const Side side : {Side::right, Side::left}) {
    const bool other = view.exam.side && *view.exam.side != Side::midline && *view.exam.side != side;
    // An other side that was not looked at is said above, in one line.
    if (other && !view.examined(complained_part, side)) {
      continue;
    }
    std::vector<std::string> labels;
    for (const MissingOf& missing : minimum_missing(view, side)) {
      const std::string label = view.label(missing.item);
      std::vector<std::string>& list = missing.side == Side::midline ? of_midline : labels;
      if (std::find(list.begin(), list.end(), label) == list.end()) {
        list.push_back(label);
      }
    }
    if (!labels.empty()) {
      section.bullet(view.say(other ? "page.minimum_other" : "page.minimum_side",
                              {{"side", side_of(view.words, side), false, true}, {"items", joined(labels, "; "), false, true}}));
    }
  }
  if (!of_midline.empty()) {
    section.bullet(view.say("page.minimum", {{"items", joined(of_midline, "; "), false, true}}));
  }
  // What was found (also where it disagrees) and what was not done stand above already, with their words.
  std::vector<std::string> asked;
  for (const interpret::RuleResult& rule : view.assessment.rules) {
    for (const interpret::Settle& settle : rule.settle) {
      const bool there = settle.item && holds_finding(view, *settle.item, settle.side ? *settle.side : Side::midline);
      const std::string text = settle.item && !there && was_not_asked(rule, settle) ? view.say("change." + settle.input.text) + view.side_after(settle.side) : "";
      if (!text.empty() && std::find(asked.begin(), asked.end(), text) == asked.end()) {
        asked.push_back(text);
        section.bullet(view.say("page.for_a_rule", {{"what", text, false, true}}));
      }
    }
  }
  section.plain(view.say("page.not_part"));
  return section;
}

}  // namespace limbledger::report

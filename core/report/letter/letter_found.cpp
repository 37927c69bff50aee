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

[[nodiscard]] bool is_number(const Finding& finding) {
  return !left_undone(finding) && !std::holds_alternative<model::Answer>(finding.value) && !std::holds_alternative<model::Test>(finding.value) &&
         !std::holds_alternative<model::Choice>(finding.value) && !std::holds_alternative<model::Choices>(finding.value) &&
         !std::holds_alternative<model::Words>(finding.value);
}

constexpr int beside_dropped_from = 6;  // that the other side of a comparison is not recorded
constexpr int without_method = 3;  // from this length on a look or a touch stands without how it was done

// Without its method, but never without where it came from.
[[nodiscard]] std::string bare_value(const PageView& view, const Finding& finding) {
  const std::string value = joined({bare_value_text(view.words, view.edition, finding), view.which_of_two(finding), view.other_side_unseen(finding), view.added_since(finding)});
  const bool observed = !finding.origin || *finding.origin == model::Origin::observed;
  return observed ? value : joined({value, enum_word(view.words, "origin", *finding.origin)});
}

constexpr int body_measured_from = 6;  // a line of its own is room
constexpr int without_grade_words = 5;  // "grade 2" for "grade 2 (6 to 10 mm more than the other side)"

[[nodiscard]] std::string without_meaning(const Finding& finding, std::string value, int shortened) {
  if (shortened < without_grade_words || !std::holds_alternative<model::Grade>(finding.value)) {
    return value;
  }
  const std::size_t from = value.find(" (");
  if (from == std::string::npos) {
    return value;
  }
  int depth = 0;
  for (std::size_t at = from + 1; at < value.size(); ++at) {
    depth += value[at] == '(' ? 1 : (value[at] == ')' ? -1 : 0);
    if (depth == 0) {
      return value.erase(from, at - from + 1);
    }
  }
  return value;
}

// Items of one side, without the side in each.
[[nodiscard]] std::string without_side(const PageView& view, const Finding& finding, int shortened) {
  const bool bare = shortened >= without_method && !is_number(finding) && !finding.pain && !finding.end_feel && !finding.remark && !finding.despite &&
                    finding.standing != model::Standing::in_conflict;
  return view.label(finding.item) + ": " + without_meaning(finding, bare ? bare_value(view, finding) : view.value(finding), shortened);
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
  // Beside "pain at night: yes" it is what takes the alarm out of it.
  if (finding.item.text == "history.night_pain_relieved_by_turning") {
    return true;
  }
  if (ordinary(view.edition, finding) == Ordinary::ordinary || !finding.item.text.starts_with("history.")) {
    return false;
  }
  const auto* answer = std::get_if<model::Answer>(&finding.value);
  return answer == nullptr || answer->answer != model::AnswerWord::no || ordinary(view.edition, finding) == Ordinary::unusual;
}

// One finding of a side: in full, by its label, and its value in full and in a word.
struct FoundHere {
  std::string label;
  std::string text;
  std::string value;
  std::string in_a_word;
  std::string region;
  bool whole = false;  // never left out: a danger sign, or blood, feeling and movement of the side complained of
  bool number = false;
};

struct FoundOnSide {
  std::vector<FoundHere> unusual;
  std::vector<FoundHere> measured;
  std::vector<FoundHere> described;
  std::vector<FoundHere> untold;  // done, and the note says that it tells nothing either way
  std::vector<FoundHere> ordinary_here;
};

// "Hot, red and swollen: no" beside a wound that is red or warm is not told alone.
[[nodiscard]] std::string beside_wound(const PageView& view, const Finding& finding) {
  const auto* answer = std::get_if<model::Answer>(&finding.value);
  const bool no_heat = answer != nullptr && answer->answer == model::AnswerWord::no && (finding.item.text == "foot.hot_red_swollen" || finding.item.text == "ankle.hot_red");
  for (const Finding* one : view.findings) {
    if (no_heat && one->item.text == "skin.infection_signs" && one->side == finding.side && !left_undone(*one) && ordinary(view.edition, *one) == Ordinary::unusual) {
      return view.label(one->item) + ": " + bare_value_text(view.words, view.edition, *one);
    }
  }
  return {};
}

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

// What the difference of two girths may mean by its error, as the note has it; with the other side's figure where that does not stand beside it.
[[nodiscard]] std::string girth_meaning(const PageView& view, const Finding& finding, bool beside) {
  for (const interpret::Statement& one : view.assessment.statements) {
    const std::string row = one.message.text + ".row";
    const std::string name = !beside && view.words.has(row) ? row : one.message.text + ".beside";
    if (one.side == finding.side && one.statement.text.starts_with("measure.girth:" + finding.item.text + ":") && view.words.has(name)) {
      return view.words.say(name, statement_words(one, view.exam, view.words, view.edition).args);
    }
  }
  return {};
}

// With how it was taken only where that differs.
[[nodiscard]] std::string with_other_side(const PageView& view, const Finding& finding, int shortened) {
  const Finding* other = read_against(view, finding);
  std::string value = without_side(view, finding, shortened);
  if (other == nullptr) {
    return joined({value, girth_meaning(view, finding, false)});
  }
  const std::string own_bare = bare_value_text(view.words, view.edition, finding);
  const std::string other_bare = bare_value_text(view.words, view.edition, *other);
  const std::string own_whole = view.value(finding);
  const std::string other_whole = view.value(*other);
  const bool alike = view.added_since(*other).empty() && own_whole.starts_with(own_bare) && other_whole == other_bare + own_whole.substr(own_bare.size());
  return joined({view.say("letter.other_value", {{"value", value, false, true},
                                                 {"side", side_of(view.words, other->side), false, true},
                                                 {"other", without_meaning(*other, alike ? other_bare : other_whole, shortened), false, true}}),
                 girth_meaning(view, finding, true)});
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
    // Entered for a group: nobody looked at this item alone, and nothing is said of it.
    if (finding->origin && *finding->origin == model::Origin::bulk_expected) {
      continue;
    }
    // What an alert rests on is a danger sign that was found: it is not left out either.
    const bool of_foot = complained_of && blood_feeling_or_movement(*finding);
    // Temperature and pulse are few, and asked back by whoever does not have them.
    const bool of_body = is_number(*finding) && (finding->item.text == "general.temperature" || finding->item.text == "general.pulse_rate");
    const model::Item* item = view.edition.item(finding->item);
    const std::string unseen = shortened < beside_dropped_from ? view.other_side_unseen(*finding) : std::string();
    FoundHere one{view.label(finding->item), with_other_side(view, *finding, shortened), bare_value(view, *finding), joined({value_in_a_word(view, *finding), unseen}),
                  item != nullptr ? item->region.text : std::string(), of_foot || of_body || alert_rests_on(view, *finding), is_number(*finding)};
    switch (stands_out(view.edition, *finding) ? Ordinary::unusual : ordinary(view.edition, *finding)) {
      case Ordinary::unusual:
        here.unusual.push_back(std::move(one));
        break;
      case Ordinary::ordinary:
        if (tells_nothing(view, *finding)) {
          here.untold.push_back(std::move(one));
          break;
        }
        if (const std::string beside = beside_wound(view, *finding); !beside.empty()) {
          one.text = view.say("letter.beside_wound", {{"value", one.text, false, true}, {"wound", beside, false, true}});
          here.described.push_back(std::move(one));
          break;
        }
        one.whole = of_foot || of_body || counts_in_points(view, *finding) || bears_on_raised(view, *finding);
        (of_body && shortened >= body_measured_from ? here.measured : here.ordinary_here).push_back(std::move(one));
        break;
      case Ordinary::described:
      case Ordinary::told: {
        const bool beyond = is_number(*finding) && lies_beyond(view, *finding);
        (beyond ? here.unusual : (is_number(*finding) ? here.measured : here.described)).push_back(std::move(one));
        break;
      }
    }
  }
  for (std::vector<FoundHere>* list : {&here.unusual, &here.measured, &here.described, &here.ordinary_here}) {
    std::stable_partition(list->begin(), list->end(), [](const FoundHere& one) { return one.whole; });
  }
  return here;
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

// Of what is out of the ordinary, and of what was measured, so many in full and the others by name.
struct FoundKept {
  std::size_t unusual;
  std::size_t measured;
  bool in_a_word;
  bool ordinary_named;
};

[[nodiscard]] FoundKept found_kept(int shortened, bool beside) {
  constexpr std::size_t all = 1000;
  const std::size_t unusual = beside ? (shortened < 7 ? all : (shortened < 9 ? 4 : 0)) : (shortened < 8 ? all : (shortened < 9 ? 10 : 0));
  const std::size_t measured = beside ? (shortened < 4 ? all : (shortened < 6 ? 2 : 0)) : (shortened < 6 ? all : (shortened < 8 ? 4 : (shortened < 9 ? 2 : 0)));
  return {unusual, measured, shortened >= (beside ? 1 : 2), shortened < (beside ? 6 : 8)};
}

// In the person's own words and as it was told, each with its value.
void add_told(const PageView& view, int shortened, SheetSection& section) {
  constexpr int in_a_word_from = 7;
  std::vector<std::string> words;
  std::vector<SaidAlike> alike;
  for (const Finding* finding : view.findings) {
    if (!is_told_of(view, *finding)) {
      continue;
    }
    const std::string label = view.label(finding->item) + view.side_after(finding->side);
    if (std::holds_alternative<model::Words>(finding->value)) {
      words.push_back(with_label(view, *finding));
    } else {
      // "Fever" by its name alone, unsure or yes, tells a reader without the note nothing.
      add_alike(alike, label, shortened < in_a_word_from ? value_or_undone(view, *finding) : value_in_a_word(view, *finding));
    }
  }
  if (!alike.empty()) {
    words.push_back(alike_text(alike));
  }
  if (!words.empty()) {
    section.bullet(view.say("letter.told", {{"what", joined(words, "; "), false, true}}));
  }
}

}  // namespace

std::string value_in_a_word(const PageView& view, const Finding& finding) {
  std::string word;
  if (const auto* answer = std::get_if<model::Answer>(&finding.value)) {
    word = enum_word(view.words, "value", answer->answer);
  } else if (const auto* test = std::get_if<model::Test>(&finding.value)) {
    word = enum_word(view.words, "value", test->result);
  } else if (const auto* grade = std::get_if<model::Grade>(&finding.value)) {
    word = view.say("value.grade", {{"grade", grade->grade.text, false, true}});
  } else {
    return bare_value(view, finding);
  }
  word = joined({word, view.which_of_two(finding), view.added_since(finding)});
  const bool observed = !finding.origin || *finding.origin == model::Origin::observed;
  return observed ? word : joined({word, enum_word(view.words, "origin", *finding.origin)});
}

// The note says of it that it cannot be told from this test, or its own words leave open what it was done for.
bool tells_nothing(const PageView& view, const Finding& finding) {
  const auto& all = view.assessment.statements;
  const bool judged_so = finding.finding && std::any_of(all.begin(), all.end(), [&](const interpret::Statement& one) {
    return one.verdict == interpret::Verdict::not_distinguishable && one.side == finding.side && one.statement.text.starts_with("laxity.test:" + finding.item.text + ":") &&
           std::find(one.findings.begin(), one.findings.end(), *finding.finding) != one.findings.end();
  });
  return judged_so || bare_value_text(view.words, view.edition, finding).find("not excluded") != std::string::npos;  // letters are in English
}

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

SheetSection letter_found(const PageView& view, int shortened) {
  SheetSection section = view.section("letter.found");
  std::vector<std::string> left_out;  // ordinary, and named by region alone
  for (const Side side : sides_in_order(view)) {
    const bool complained_of = is_complained_of(view, side);
    const bool beside = !complained_of && (view.exam.side == Side::left || view.exam.side == Side::right);
    const FoundOnSide here = gather_side(view, side, complained_of, shortened);
    const std::string of_side = of_side_named(view, side);
    const FoundKept kept = found_kept(shortened, beside);
    // What is out of the ordinary has its value on either side, however short the letter; how it was found is what goes.
    std::vector<std::string> unusual;
    std::vector<SaidAlike> unusual_in_a_word;
    std::size_t taken = 0;
    for (const FoundHere& one : here.unusual) {
      // A number stands with that of the other side to the end.
      const bool in_full = one.whole && (one.number || shortened < letter_shortest);
      if (in_full || taken < kept.unusual) {
        unusual.push_back(one.text);
        taken += one.whole ? 0 : 1;
      } else {
        add_alike(unusual_in_a_word, one.label, one.in_a_word);
      }
    }
    if (!unusual_in_a_word.empty()) {
      unusual.push_back(alike_text(unusual_in_a_word));
    }
    if (!unusual.empty()) {
      section.bullet(view.say("letter.found_side", {{"side", of_side, false, true}, {"what", joined(unusual, "; "), false, true}}));
    }
    std::vector<std::string> measured;
    std::vector<SaidAlike> in_a_word;  // how it was measured goes before its value
    taken = 0;
    for (const std::vector<FoundHere>* list : {&here.measured, &here.described}) {
      for (const FoundHere& one : *list) {
        const bool in_full = one.whole || taken < kept.measured;
        taken += in_full && !one.whole ? 1 : 0;
        if (in_full) {
          measured.push_back(one.text);
        } else {
          add_alike(in_a_word, one.label, one.in_a_word);
        }
      }
    }
    if (!in_a_word.empty()) {
      measured.push_back(alike_text(in_a_word));
    }
    if (!measured.empty()) {
      section.bullet(view.say("letter.measured_side", {{"side", of_side, false, true}, {"what", joined(measured, "; "), false, true}}));
    }
    std::vector<SaidAlike> untold;
    for (const FoundHere& one : here.untold) {
      add_alike(untold, one.label, one.value);
    }
    if (!untold.empty()) {
      section.bullet(view.say("letter.untold_side", {{"side", of_side, false, true}, {"what", alike_text(untold), false, true}}));
    }
    std::vector<SaidAlike> alike;
    std::vector<std::string> regions;
    for (const FoundHere& one : here.ordinary_here) {
      if (one.whole || kept.ordinary_named) {
        add_alike(alike, one.label, kept.in_a_word ? one.in_a_word : one.value);
      } else {
        regions.push_back(one.region);
      }
    }
    if (!alike.empty()) {
      section.bullet(view.say("letter.ordinary_side", {{"side", of_side, false, true}, {"what", alike_text(alike), false, true}}));
    }
    if (!regions.empty()) {
      left_out.push_back(of_side + ": " + parts_named(view, regions));
    }
  }
  add_unsettled(view, shortened, section);
  add_rules(view, shortened, section);
  add_told(view, shortened, section);
  add_noes(view, shortened, section);
  if (!left_out.empty()) {
    section.bullet(view.say("letter.left_out", {{"where", kept_where(view, "page.findings"), false, true}, {"what", joined(left_out, "; "), false, true}}));
  }
  if (section.lines.empty()) {
    section.plain(view.say("page.nothing"));
  }
  return section;
}

}  // namespace limbledger::report

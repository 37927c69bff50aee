#include "core/interpret/evidence/choose.hpp"

#include "core/interpret/body.hpp"
#include "core/interpret/rules/input.hpp"

#include <algorithm>
#include <set>

namespace limbledger::interpret {

namespace {

using reference::Confounder;
using reference::GroupMember;
using reference::TestPart;

constexpr std::uint8_t bit_against = 1;
constexpr std::uint8_t bit_for = 2;
constexpr std::int64_t acute_days = 14;

template <class T>
[[nodiscard]] bool holds(const std::vector<T>& list, std::string_view text) {
  return std::any_of(list.begin(), list.end(), [&](const T& one) { return one.text == text; });
}

[[nodiscard]] model::Side side_for(const View& view, const model::ItemId& item, model::Side side) {
  const model::Item* known = view.edition().item(item);
  const bool sided = known != nullptr && std::find(known->sides.begin(), known->sides.end(), side) != known->sides.end();
  return sided ? side : model::Side::midline;
}

[[nodiscard]] bool has_quality(const model::Finding& finding, std::initializer_list<model::Quality> any) {
  return finding.quality && std::any_of(finding.quality->begin(), finding.quality->end(),
                                        [&](model::Quality quality) { return std::find(any.begin(), any.end(), quality) != any.end(); });
}

// As the item's row says: the first rule whose grades and end feels both hold.
[[nodiscard]] std::string read_grade(const model::Item* item, const model::Finding& finding, const model::Grade& grade) {
  if (item == nullptr || !item->counts) {
    return "not_counted";
  }
  for (const model::Counts& rule : *item->counts) {
    const bool grade_fits = !rule.grades || holds(*rule.grades, grade.grade.text);
    const bool end_fits = !rule.end_feels || (finding.end_feel && holds(*rule.end_feels, finding.end_feel->text));
    if (grade_fits && end_fits) {
      return std::string(wire::type_of<model::TestResult>().words[static_cast<std::size_t>(rule.as)]);
    }
  }
  return "not_counted";
}

// The word that one finding says of one part: positive, negative, equivocal, a choice, or why it says nothing.
[[nodiscard]] std::string word_of_finding(const View& view, const TestPart& part, const model::Finding& finding) {
  if (part.of && *part.of == reference::PartOf::pain) {
    if (!finding.pain || !finding.pain->score) {
      return "pain_not_recorded";
    }
    return finding.pain->score->steps > 0 ? "positive" : "negative";
  }
  if (const auto* test = std::get_if<model::Test>(&finding.value)) {
    return std::string(wire::type_of<model::TestResult>().words[static_cast<std::size_t>(test->result)]);
  }
  if (const auto* answer = std::get_if<model::Answer>(&finding.value)) {
    if (answer->answer == model::AnswerWord::unsure) {
      return "unsure";
    }
    return answer->answer == model::AnswerWord::yes ? "positive" : "negative";
  }
  if (const auto* choice = std::get_if<model::Choice>(&finding.value)) {
    return choice->choice.text;
  }
  if (const auto* grade = std::get_if<model::Grade>(&finding.value)) {
    return read_grade(view.edition().item(part.item), finding, *grade);
  }
  return "not_counted";
}

[[nodiscard]] bool confounder_holds(const View& view, const Confounder& confounder, model::Side side, const Circumstances& circumstances) {
  const reference::ConfounderWhen& when = confounder.when;
  if (when.age_over) {
    return circumstances.age && circumstances.age->high > when.age_over->steps;
  }
  if (!when.item) {
    return false;
  }
  for (const model::Finding* finding : view.at(when.item->text, side_for(view, *when.item, side))) {
    const auto* grade = std::get_if<model::Grade>(&finding->value);
    if (when.grades && grade != nullptr && holds(*when.grades, grade->grade.text)) {
      return true;
    }
    if (when.words && holds(*when.words, word_of_finding(view, {*when.item, {}, {}, std::nullopt}, *finding))) {
      return true;
    }
  }
  return false;
}

[[nodiscard]] Heard hear_part(const View& view, const TestPart& part, model::Side side, const std::vector<const Confounder*>& spoiling) {
  const auto says = [&](const model::Finding& finding) -> Said {
    if (has_quality(finding, {model::Quality::poor_contact, model::Quality::unsure_landmark})) {
      return {std::nullopt, "not_adequate"};
    }
    const std::string word = word_of_finding(view, part, finding);
    const bool yes = holds(part.yes, word);
    if (!yes && !holds(part.no, word)) {
      return {std::nullopt, word == "equivocal" || word == "unsure" || word == "pain_not_recorded" ? word : "not_counted"};
    }
    // Neither firm nor soft is felt through a held muscle: what counts by how far it goes stands.
    const auto* grade = std::get_if<model::Grade>(&finding.value);
    const bool by_end_alone = yes && grade != nullptr && grade->grade.text == "0";
    if ((!yes || by_end_alone) && has_quality(finding, {model::Quality::guarded, model::Quality::effort_limited})) {
      return {std::nullopt, "guarded"};
    }
    for (const Confounder* confounder : spoiling) {
      if (holds(confounder->items, part.item.text) && holds(confounder->results, yes ? "positive" : "negative")) {
        return {std::nullopt, confounder->because.text};
      }
    }
    return {yes ? bit_for : bit_against, "known"};
  };
  return hear(view.at(part.item.text, side_for(view, part.item, side)), bit_for | bit_against, says);
}

[[nodiscard]] bool uses_any(const GroupMember& member, const std::set<std::string>& items) {
  return std::any_of(member.parts.begin(), member.parts.end(), [&](const TestPart& part) { return items.count(part.item.text) > 0; });
}

// Positive when enough parts are. One open part leaves a composite open, and so does it where any part would do and none did.
// The joint that the condition is examined at was fused or replaced: those studied had their own.
[[nodiscard]] bool silenced(const View& view, const reference::ConditionGroups& groups, model::Side side) {
  if (view.bodies().open().empty()) {
    return false;
  }
  return std::any_of(groups.groups.begin(), groups.groups.end(), [&](const reference::EvidenceGroup& group) {
    return std::any_of(group.members.begin(), group.members.end(), [&](const GroupMember& member) {
      return std::any_of(member.parts.begin(), member.parts.end(), [&](const TestPart& part) {
        const model::Item* item = view.edition().item(part.item);
        return item != nullptr && view.bodies().silent(*item, side) != nullptr;
      });
    });
  });
}

[[nodiscard]] TestHeard hear_member(const View& view, const GroupMember& member, model::Side side, const std::vector<const Confounder*>& spoiling) {
  TestHeard heard;
  heard.member = &member;
  heard.state = "known";
  std::int64_t yes = 0;
  std::int64_t open = 0;
  std::string why;
  for (const TestPart& part : member.parts) {
    const Heard one = hear_part(view, part, side, spoiling);
    heard.findings.insert(heard.findings.end(), one.findings.begin(), one.findings.end());
    if (!one.bits) {
      ++open;
      // What was found and does not count says more than what was not asked.
      why = why.empty() || why == "not_asked" ? one.state : why;
    } else if (*one.bits == bit_for) {
      ++yes;
    }
  }
  if (yes >= member.at_least.steps && (open == 0 || member.at_least.steps == 1)) {
    heard.positive = true;
  } else if (open == 0) {
    heard.positive = false;
  } else {
    heard.state = why == "not_asked" ? "incomplete" : why;
  }
  return heard;
}

}  // namespace

Circumstances circumstances_of(const View& view, model::Side side) {
  Circumstances here;
  here.age = view.age_on_exam();
  const model::Exam& exam = view.exam();
  if (exam.injured_on) {
    here.injured = true;
    here.days = std::max<std::int64_t>(0, view.examined_on().last_day() - exam.injured_on->first_day());
    // What could be fresh counts as fresh: those figures claim less.
    here.acute = view.examined_on().first_day() - exam.injured_on->last_day() <= acute_days;
  } else {
    here.acute = exam.complaint.text == "acute_knee";
  }
  const auto chosen = [&](const char* item, const std::function<bool(const std::string&)>& yes) {
    const Says says = [&](const model::Finding& finding) -> Said {
      const auto* choice = std::get_if<model::Choice>(&finding.value);
      if (choice == nullptr || choice->choice.text == "not_known") {
        return {std::nullopt, "unsure"};
      }
      return {yes(choice->choice.text) ? bit_for : bit_against, "known"};
    };
    return hear(view.at(item, side_for(view, {item}, side)), bit_for | bit_against, says).as_tri() == Tri::yes;
  };
  here.injured = here.injured || chosen("history.mechanism", [](const std::string& how) { return how != "no_injury"; });
  here.haemarthrosis = chosen("history.swelling_onset", [](const std::string& when) { return when == "within_2h"; });
  return here;
}

std::vector<TestHeard> hear_tests(const View& view, const reference::EvidenceCondition& condition, model::Side side,
                                  const Circumstances& circumstances) {
  std::vector<TestHeard> all;
  const reference::ConditionGroups* groups = view.edition().evidence().groups_of(condition.condition);
  if (groups == nullptr) {
    return all;
  }
  std::vector<const Confounder*> spoiling;
  for (const Confounder& confounder : groups->confounders) {
    if (confounder_holds(view, confounder, side, circumstances)) {
      spoiling.push_back(&confounder);
    }
  }
  std::set<std::string> swelling;
  for (const model::ItemId& item : groups->swelling_items) {
    swelling.insert(item.text);
  }
  const bool not_native_joint = silenced(view, *groups, side);
  for (const reference::EvidenceGroup& group : groups->groups) {
    for (const GroupMember& member : group.members) {
      TestHeard heard = hear_member(view, member, side, spoiling);
      if (heard.findings.empty()) {
        continue;
      }
      heard.group = &group;
      heard.row = view.edition().evidence().default_row(condition.condition, member.test, circumstances.acute);
      if (circumstances.haemarthrosis && uses_any(member, swelling)) {
        heard.positive.reset();
        heard.state = "in_prior";
      }
      if (not_native_joint) {
        heard.positive.reset();
        heard.state = "not_native";
      }
      if (heard.row == nullptr) {
        heard.admission.reasons.push_back({"no_figures"});
      } else {
        heard.admission = reference::admit(*heard.row, condition, {circumstances.age, circumstances.acute});
        if (heard.admission.row_class != reference::RowClass::none && heard.positive) {
          heard.ratio = ratio_of(*heard.row, *heard.positive);
        }
      }
      all.push_back(std::move(heard));
    }
  }
  return all;
}

Choice choose(const std::vector<TestHeard>& heard, const GroupMember* without) {
  Choice choice;
  std::set<std::string> consumed;
  std::set<const reference::EvidenceGroup*> settled;
  const auto keep = [&](std::size_t at) {
    choice.kept.push_back(at);
    settled.insert(heard[at].group);
  };
  // Composites first, where they stand before every single test of their group that may compute.
  std::set<const reference::EvidenceGroup*> passed;
  for (std::size_t i = 0; i < heard.size(); ++i) {
    const TestHeard& one = heard[i];
    if (!one.computes() || one.member == without || passed.count(one.group) > 0) {
      continue;
    }
    passed.insert(one.group);
    if (one.member->parts.size() > 1 && !uses_any(*one.member, consumed)) {
      keep(i);
      for (const TestPart& part : one.member->parts) {
        consumed.insert(part.item.text);
      }
    }
  }
  for (std::size_t i = 0; i < heard.size(); ++i) {
    const TestHeard& one = heard[i];
    if (one.computes() && one.member != without && settled.count(one.group) == 0 && !uses_any(*one.member, consumed)) {
      keep(i);
    }
  }
  std::set<const reference::EvidenceGroup*> pointed;
  std::sort(choice.kept.begin(), choice.kept.end());
  for (std::size_t i = 0; i < heard.size(); ++i) {
    const TestHeard& one = heard[i];
    if (std::find(choice.kept.begin(), choice.kept.end(), i) != choice.kept.end()) {
      continue;
    }
    if (!one.positive) {
      choice.left_out.emplace_back(i, one.state);
    } else if (uses_any(*one.member, consumed)) {
      choice.left_out.emplace_back(i, "in_composite");
    } else if (settled.count(one.group) > 0 || pointed.count(one.group) > 0) {
      choice.left_out.emplace_back(i, "same_group");
    } else {
      choice.direction.push_back(i);
      pointed.insert(one.group);
    }
  }
  return choice;
}

}  // namespace limbledger::interpret

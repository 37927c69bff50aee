#include "core/interpret/evidence/choose.hpp"

#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/body.hpp"
#include "core/interpret/knee/weaken.hpp"
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

// The leg that a part or a confounder is read on.
[[nodiscard]] model::Side leg_of(const std::optional<reference::OnSide>& on, model::Side side) {
  return on && *on == reference::OnSide::other ? other_side(side) : side;
}

[[nodiscard]] bool in_body(const View& view, const model::Word& state, model::Side side) {
  const std::vector<OpenBody>& open = view.bodies().open();
  return std::any_of(open.begin(), open.end(), [&](const OpenBody& one) {
    return one.row->body.text == state.text && (one.side == side || one.side == model::Side::midline);
  });
}

[[nodiscard]] bool has_quality(const model::Finding& finding, std::initializer_list<model::Quality> any) {
  return finding.quality && std::any_of(finding.quality->begin(), finding.quality->end(),
                                        [&](model::Quality quality) { return std::find(any.begin(), any.end(), quality) != any.end(); });
}

// As the item's row says: the first rule whose grades and end feels both hold.
[[nodiscard]] std::string_view read_grade(const model::Item* item, const model::Finding& finding, const model::Grade& grade) {
  if (item == nullptr || !item->counts) {
    return "not_counted";
  }
  for (const model::Counts& rule : *item->counts) {
    const bool grade_fits = !rule.grades || holds(*rule.grades, grade.grade.text);
    const bool end_fits = !rule.end_feels || (finding.end_feel && holds(*rule.end_feels, finding.end_feel->text));
    if (grade_fits && end_fits) {
      return wire::type_of<model::TestResult>().words[static_cast<std::size_t>(rule.as)];
    }
  }
  return "not_counted";
}

// The word that one finding says of one part: positive, negative, equivocal, a choice, or why it says nothing.
[[nodiscard]] std::string_view word_of_finding(const View& view, const TestPart& part, const model::Finding& finding) {
  if (part.of && *part.of == reference::PartOf::pain) {
    if (!finding.pain || !finding.pain->score) {
      return "pain_not_recorded";
    }
    return finding.pain->score->steps > 0 ? "positive" : "negative";
  }
  if (const auto* test = std::get_if<model::Test>(&finding.value)) {
    return wire::type_of<model::TestResult>().words[static_cast<std::size_t>(test->result)];
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
  if (when.body) {
    return in_body(view, *when.body, side);
  }
  if (when.days_over) {
    return circumstances.days_least && *circumstances.days_least > when.days_over->steps;
  }
  if (when.days_under) {
    return circumstances.days_least && *circumstances.days_least < when.days_under->steps;
  }
  if (when.side_open) {
    return !view.exam().side || *view.exam().side == model::Side::midline;
  }
  if (!when.item) {
    return false;
  }
  for (const model::Finding* finding : view.at(when.item->text, side_for(view, *when.item, leg_of(when.side, side)))) {
    const auto* grade = std::get_if<model::Grade>(&finding->value);
    if (when.grades && grade != nullptr && holds(*when.grades, grade->grade.text)) {
      return true;
    }
    TestPart asked;
    asked.item = *when.item;
    if (when.words && holds(*when.words, word_of_finding(view, asked, *finding))) {
      return true;
    }
  }
  return false;
}

[[nodiscard]] Heard hear_part(const View& view, const TestPart& part, model::Side judged_side, const std::vector<const Confounder*>& spoiling) {
  const model::Side side = leg_of(part.side, judged_side);
  const auto says = [&](const model::Finding& finding) -> Said {
    if (has_quality(finding, {model::Quality::poor_contact, model::Quality::unsure_landmark})) {
      return {std::nullopt, "not_adequate"};
    }
    const std::string_view word = word_of_finding(view, part, finding);
    const bool yes = holds(part.yes, word);
    if (!yes && !holds(part.no, word)) {
      return {std::nullopt, word == "equivocal" || word == "unsure" || word == "pain_not_recorded" ? word : std::string_view("not_counted")};
    }
    // Neither firm nor soft is felt through a held muscle: what counts by how far it goes stands.
    const auto* grade = std::get_if<model::Grade>(&finding.value);
    const bool by_end_alone = yes && grade != nullptr && grade->grade.text == "0";
    if ((!yes || by_end_alone) && has_quality(finding, {model::Quality::guarded, model::Quality::effort_limited})) {
      return {std::nullopt, "guarded"};
    }
    // Lost feeling, and what else this body settles no "no" by.
    if (!yes && view.bodies().not_reliable(part.item.text, side) != nullptr) {
      return {std::nullopt, "not_reliable"};
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

// What a single test was seen to give, whatever speaks against believing it; nothing where several that differ stand.
[[nodiscard]] std::optional<bool> seen_of(const View& view, const GroupMember& member, model::Side judged_side) {
  if (member.parts.size() != 1) {
    return std::nullopt;
  }
  const TestPart& part = member.parts.front();
  std::optional<bool> seen;
  for (const model::Finding* finding : view.at(part.item.text, side_for(view, part.item, leg_of(part.side, judged_side)))) {
    const std::string_view word = word_of_finding(view, part, *finding);
    const bool yes = holds(part.yes, word);
    if (!settles(*finding) || (!yes && !holds(part.no, word))) {
      continue;
    }
    if (seen && *seen != yes) {
      return std::nullopt;
    }
    seen = yes;
  }
  return seen;
}

[[nodiscard]] bool uses_any(const GroupMember& member, const std::set<std::string>& items) {
  return std::any_of(member.parts.begin(), member.parts.end(), [&](const TestPart& part) { return items.count(part.item.text) > 0; });
}

// The joint that the condition is examined at was fused or replaced: those studied had their own.
[[nodiscard]] bool silenced(const View& view, const reference::ConditionGroups& groups, model::Side side) {
  if (view.bodies().open().empty()) {
    return false;
  }
  return std::any_of(groups.groups.begin(), groups.groups.end(), [&](const reference::EvidenceGroup& group) {
    return std::any_of(group.members.begin(), group.members.end(), [&](const GroupMember& member) {
      return std::any_of(member.parts.begin(), member.parts.end(), [&](const TestPart& part) {
        const model::Item* item = view.edition().item(part.item);
        return item != nullptr && view.bodies().silent(*item, leg_of(part.side, side)) != nullptr;
      });
    });
  });
}

// Positive when enough parts are. One open part leaves a composite open, but where any of the open ones would do and one did, or
// where the part that must be is not.
[[nodiscard]] TestHeard hear_member(const View& view, const GroupMember& member, model::Side side, const std::vector<const Confounder*>& spoiling) {
  TestHeard heard;
  heard.member = &member;
  heard.state = "known";
  std::int64_t yes = 0;
  std::int64_t open = 0;
  std::int64_t musts = 0;
  std::int64_t musts_yes = 0;
  bool must_not = false;
  std::string_view why;
  for (const TestPart& part : member.parts) {
    const Heard one = hear_part(view, part, side, spoiling);
    heard.findings.insert(heard.findings.end(), one.findings.begin(), one.findings.end());
    if (!one.bits) {
      ++open;
      // What was found and does not count says more than what was not asked.
      why = why.empty() || why == "not_asked" ? one.state : why;
    } else if (*one.bits == bit_for) {
      ++yes;
      musts_yes += part.must.value_or(false) ? 1 : 0;
    } else {
      must_not = must_not || part.must.value_or(false);
    }
    musts += part.must.value_or(false) ? 1 : 0;
  }
  heard.part_positive = yes > 0;
  const bool any_would_do = member.at_least.steps - musts == 1 && musts_yes == musts;
  if (yes >= member.at_least.steps && !must_not && (open == 0 || any_would_do)) {
    heard.positive = true;
  } else if (must_not || (open == 0 && (!member.negative_at_most || yes <= member.negative_at_most->steps))) {
    heard.positive = false;
  } else if (open == 0) {
    heard.state = "parts_disagree";
  } else {
    heard.state = why == "not_asked" ? std::string_view("incomplete") : why;
  }
  return heard;
}

// The same as the sentence about the test says: not looser as far as it could be felt, which cannot be told from it now.
[[nodiscard]] bool is_weak_negative(const View& view, const TestHeard& heard, model::Side side) {
  if (!heard.positive || *heard.positive) {
    return false;
  }
  return std::any_of(heard.member->parts.begin(), heard.member->parts.end(), [&](const TestPart& part) {
    const model::Item* item = view.edition().item(part.item);
    if (item == nullptr || item->region.text != "knee" || item->value != model::ValueKind::grade) {
      return false;
    }
    const model::Side leg = leg_of(part.side, side);
    const Found found = found_at(view, item->item.text, leg);
    return found.is(model::TestResult::negative) && !weakened_by(view, *item, leg, found).empty();
  });
}

}  // namespace

Circumstances circumstances_of(const View& view, model::Side side) {
  Circumstances here;
  here.age = view.age_on_exam();
  const model::Exam& exam = view.exam();
  here.injured = exam.injured_on.has_value();
  if (const auto& day = view.examined_on(); exam.injured_on && day) {
    here.days = std::max<std::int64_t>(0, day->last_day() - exam.injured_on->first_day());
    // What could be fresh counts as fresh: those figures claim less.
    here.days_least = std::max<std::int64_t>(0, day->first_day() - exam.injured_on->last_day());
    here.acute = *here.days_least <= acute_days;
  } else {
    here.acute = complains_of_something_recent(view);
  }
  if (view.person()) {
    here.sex = view.person()->sex;
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
  reference::PersonAtHand person{circumstances.age, circumstances.acute, std::nullopt, circumstances.sex};
  if (circumstances.days && circumstances.days_least) {
    person.days = reference::DayInterval{*circumstances.days_least, *circumstances.days};
  }
  for (const reference::EvidenceGroup& group : groups->groups) {
    for (const GroupMember& member : group.members) {
      TestHeard heard = hear_member(view, member, side, spoiling);
      if (heard.findings.empty()) {
        continue;
      }
      heard.group = &group;
      heard.weak = is_weak_negative(view, heard, side);
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
        heard.admission = reference::admit(*heard.row, condition, person);
        if (heard.admission.row_class != reference::RowClass::none && heard.positive) {
          heard.ratio = ratio_of(*heard.row, *heard.positive);
        }
        const bool not_counted_twice = heard.state == "in_prior" || heard.state == "not_native";
        if (heard.admission.row_class != reference::RowClass::none && !heard.positive && !not_counted_twice) {
          heard.aside = seen_of(view, member, side);
          heard.if_counted = heard.aside ? ratio_of(*heard.row, *heard.aside) : std::nullopt;
        }
        const bool open_by_parts = !heard.positive && heard.state != "in_prior" && heard.state != "not_native";
        if (heard.admission.row_class != reference::RowClass::none && member.parts.size() > 1 && open_by_parts && heard.part_positive) {
          heard.if_negative = ratio_of(*heard.row, false);
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
    } else if (one.weak) {
      choice.left_out.emplace_back(i, "weak_negative");
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

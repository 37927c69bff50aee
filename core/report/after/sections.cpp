// What the page says of what came beside and after the findings: transfer, the call that goes first, disagreement, what became of
// the plan, what was found later, the countersignature.
#include "core/interpret/after/differences.hpp"
#include "core/interpret/after/urgent_way.hpp"
#include "core/report/page_judged.hpp"
#include "core/report/page_parts.hpp"

#include <algorithm>

namespace limbledger::report {

namespace {

[[nodiscard]] std::string who_says(const PageView& view, const std::optional<model::ExaminerId>& by) { return by ? view.examiner(*by) : std::string("?"); }

[[nodiscard]] std::string observed_value(const PageView& view, const model::ItemId& item, model::Side side, const model::Value& value) {
  model::Finding finding;
  finding.item = item;
  finding.side = side;
  finding.value = value;
  return view.value(finding);
}

// What of the page stands under a heading of its own already.
[[nodiscard]] bool said_beside(const std::string& name) {
  return name.starts_with("alert.") || name.starts_with("rule.") || name.starts_with("condition.");
}

[[nodiscard]] bool hidden_disagreement(const PageView& view, const model::Disagreed& one) {
  const std::string& name = one.statement.text;
  return name.starts_with("alert.") && is_protected_danger(view, name.substr(0, name.find(':')));
}

}  // namespace

void add_disagreed(const PageView& view, const std::string& name, SheetSection& section) {
  for (const model::Disagreed& one : view.assessment.disagreed.value_or(std::vector<model::Disagreed>{})) {
    if (one.statement.text == name && !hidden_disagreement(view, one)) {
      section.under(view.say("page.disagrees", {{"by", who_says(view, one.by)}, {"because", one.because.text}}));
    }
  }
}

SheetSection disagreed_section(const PageView& view) {
  SheetSection section = view.section("page.disagreed");
  for (const model::Disagreed& one : view.assessment.disagreed.value_or(std::vector<model::Disagreed>{})) {
    if (said_beside(one.statement.text)) {
      continue;
    }
    std::string said = one.statement.text;
    const auto& all = view.assessment.statements;
    const auto found = std::find_if(all.begin(), all.end(), [&](const interpret::Statement& statement) { return statement.statement == one.statement; });
    if (found != all.end()) {
      said = referral_prompt(said) ? prompt_text(*found, view.words) : statement_text(*found, view.exam, view.words, view.edition);
    }
    section.bullet(said);
    section.under(view.say("page.disagrees", {{"by", who_says(view, one.by)}, {"because", one.because.text}}));
  }
  return section;
}

void add_urgent(const PageView& view, SheetSection& section) {
  const auto& urgent = view.assessment.urgent;
  if (!urgent) {
    return;
  }
  if (urgent->call_first.value_or(false)) {
    // The farthest that is named: what is nearer may not be able to help.
    const auto far = std::max_element(urgent->travel.begin(), urgent->travel.end(),
                                      [](const model::Travel& a, const model::Travel& b) { return a.minutes.steps < b.minutes.steps; });
    section.bullet(view.say("page.call_first", {{"to", far->to.text},
                                                {"minutes", wire::write_number(far->minutes.steps, 1), true},
                                                {"window", wire::write_number(urgent->window_minutes.steps, 1), true}}));
  }
  std::vector<std::string> numbers;
  for (const model::Telephone& one : urgent->telephones) {
    numbers.push_back(view.say("page.telephone", {{"who", one.who.text}, {"number", one.number.text}}));
  }
  if (!numbers.empty()) {
    section.bullet(view.say("page.call_numbers", {{"numbers", joined(numbers, "; "), false, true}}));
  }
}

void add_exchanged_line(const PageView& view, const std::vector<std::string>& names, SheetSection& section) {
  for (const model::SidesExchanged& one : view.exam.sides_exchanged.value_or(std::vector<model::SidesExchanged>{})) {
    const bool before = std::any_of(one.written_before.begin(), one.written_before.end(), [&](const model::Word& word) {
      return std::find(names.begin(), names.end(), word.text) != names.end();
    });
    if (before) {
      section.plain(view.say("page.sides_exchanged", {{"at", view.local(one.at), false, true}}));
    }
  }
}

std::string decided_after_signature(const PageView& view, const model::PlanItem& item) {
  for (const model::Addendum& one : view.exam.addenda.value_or(std::vector<model::Addendum>{})) {
    const std::vector<model::PlanItem> items = one.plan_items.value_or(std::vector<model::PlanItem>{});
    if (std::any_of(items.begin(), items.end(), [&item](const model::PlanItem& other) { return other.plan_item && other.plan_item == item.plan_item; })) {
      return view.say("plan.after_signature", {{"by", view.examiner(one.by)}, {"at", view.local(one.at), false, true}});
    }
  }
  return {};
}

void add_transfer_line(const PageView& view, SheetSection& section) {
  for (const model::Transferred& one : view.exam.transfer.value_or(std::vector<model::Transferred>{})) {
    section.plain(view.say("page.stopped_for_transfer", {{"at", view.local(one.at), false, true}, {"by", who_says(view, one.by)}}));
  }
}

SheetSection after_section(const PageView& view) {
  SheetSection section = view.section("page.after");
  const std::vector<model::PlanItem> plan = view.exam.plan.value_or(std::vector<model::PlanItem>{});
  for (const model::Followed& one : view.exam.followed.value_or(std::vector<model::Followed>{})) {
    const auto item = std::find_if(plan.begin(), plan.end(), [&](const model::PlanItem& held) { return held.plan_item == std::optional(one.plan_item); });
    const std::string named = item == plan.end() ? view.say("page.became_unknown")
                                                 : enum_word(view.words, "plan", item->kind) + view.side_after(item->side) + " " + as_written(item->text.text);
    Args args{{"plan", named, false, true}, {"became", enum_word(view.words, "became", one.became), false, true}};
    if (one.on) {
      args.push_back({"on", one.on->to_text(), false, true});
    }
    section.bullet(view.say(one.on ? "page.became_on" : "page.became", args));
    if (one.text) {
      section.under(as_written(one.text->text));
    }
  }
  for (const model::OutcomeTold& one : view.exam.outcomes.value_or(std::vector<model::OutcomeTold>{})) {
    const std::string kind = enum_word(view.words, "later", one.found.kind) + view.side_after(one.found.side);
    Args args{{"kind", kind, false, true}, {"text", one.found.text.text}};
    if (one.found.on) {
      args.push_back({"on", one.found.on->to_text(), false, true});
    }
    section.bullet(view.say(one.found.on ? "page.outcome_on" : "page.outcome", args));
    if (one.found.source) {
      section.under(as_written(one.found.source->text));
    }
  }
  return section;
}

void add_countersigned(const PageView& view, SheetSection& section) {
  for (const model::Countersigned& one : view.exam.countersigned.value_or(std::vector<model::Countersigned>{})) {
    section.bullet(view.say("page.countersigned", {{"by", view.examiner(one.by)}, {"at", view.local(one.at), false, true}}));
    if (one.impression) {
      section.under(view.say("page.countersign_impression", {{"by", view.examiner(one.by)}, {"text", view.side_before(one.impression->side) + as_written(one.impression->text.text), false, true}}));
    }
    if (one.remark) {
      section.under(view.say("page.countersign_remark", {{"text", one.remark->text}}));
    }
    const std::vector<interpret::SupervisedDifference> all = interpret::differences(view.exam, one);
    for (const interpret::SupervisedDifference& differs : all) {
      if (!differs.item) {
        section.under(view.say("page.countersign_impressions"));
        continue;
      }
      const model::Item* item = view.edition.item(*differs.item);
      if (item != nullptr && item->protected_.value_or(false) && view.names.protected_note != ProtectedNote::shown) {
        continue;
      }
      Args args{{"item", view.label(*differs.item) + view.side_after(differs.side), false, true},
                {"other", observed_value(view, *differs.item, *differs.side, *differs.supervisor), false, true}};
      if (differs.signed_) {
        args.push_back({"signed", observed_value(view, *differs.item, *differs.side, *differs.signed_), false, true});
      }
      section.under(view.say(differs.signed_ ? "page.countersign_differs" : "page.countersign_added", args));
    }
    if (all.empty() && one.findings) {
      section.under(view.say("page.countersign_same"));
    }
  }
}

}  // namespace limbledger::report

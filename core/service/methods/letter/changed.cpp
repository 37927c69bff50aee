#include "core/service/methods/letter/changed.hpp"

#include "core/report/text.hpp"

#include <algorithm>
#include <optional>

namespace limbledger::service {

namespace {

using report::PageView;

[[nodiscard]] const model::Observation* observed_in(const ledger::Graph& graph, std::size_t index) {
  if (const auto* finding = std::get_if<model::FindingBody>(&graph.at(index).body())) {
    return &finding->observation;
  }
  const auto* settle = std::get_if<model::SettleBody>(&graph.at(index).body());
  return settle != nullptr ? &settle->observation : nullptr;
}

class Changes {
 public:
  Changes(const ledger::ExamRecord& record, const model::EntryId& letter, const PageView& view) : graph_(record.operations), view_(view) {
    if (const auto at = graph_.find(letter)) {
      for (std::size_t i = 0; i < graph_.size(); ++i) {
        if (i != *at && !graph_.saw(*at, i)) {
          add(i);
        }
      }
    }
  }
  [[nodiscard]] std::vector<std::string> lines() && { return std::move(lines_); }

 private:
  // What its correction replaced, as it had stood.
  [[nodiscard]] const model::Observation* before(std::size_t index) const {
    for (const model::EntryId& entry : graph_.at(index).operation().replaces) {
      if (const auto at = graph_.find(entry)) {
        // A decision replaces all values of a place, that which it took too.
        const model::Observation* old = observed_in(graph_, *at);
        const model::Observation* now = observed_in(graph_, index);
        if (old != nullptr && (now == nullptr || !(old->value == now->value) || graph_.at(index).operation().replaces.size() == 1)) {
          return old;
        }
      }
    }
    return nullptr;
  }
  [[nodiscard]] bool is_kept_from_letters(const model::ItemId& id) const {
    const model::Item* item = view_.edition.item(id);
    return item != nullptr && item->protected_.value_or(false);
  }
  [[nodiscard]] std::string named(const model::Observation& observation) const {
    return view_.label(observation.item) + view_.side_after(observation.side);
  }
  void because(std::string_view what, const wire::Remark& reason) {
    lines_.push_back(view_.say("letter.change_because", {{"what", report::word_of(view_.words, "letter_changed", what), false, true}, {"reason", reason.text}}));
  }
  // What who supervised found that the signer did not.
  void add_found_otherwise(const model::CountersignBody& countersign) {
    for (const model::Observation& observation : countersign.findings.value_or(std::vector<model::Observation>{})) {
      const bool same = std::any_of(view_.findings.begin(), view_.findings.end(), [&](const model::Finding* finding) {
        return finding->item == observation.item && finding->side == observation.side && finding->value == observation.value;
      });
      if (!same && !is_kept_from_letters(observation.item)) {
        lines_.push_back(view_.say("letter.change_supervisor", {{"what", named(observation), false, true}, {"now", view_.value(model::as_finding(observation)), false, true}}));
      }
    }
  }
  void add(std::size_t i) {
    const ledger::Body& body = graph_.at(i).body();
    const model::Observation* now = observed_in(graph_, i);
    const model::Observation* was = before(i);
    if (now != nullptr && !is_kept_from_letters(now->item)) {
      report::Args args{{"what", named(*now), false, true}, {"now", view_.value(model::as_finding(*now)), false, true}};
      if (was != nullptr) {
        args.push_back({"was", view_.value(model::as_finding(*was)), false, true});
        lines_.push_back(view_.say("letter.change_was", args));
      } else {
        lines_.push_back(view_.say("letter.change_new", args));
      }
    } else if (const auto* withdraw = std::get_if<model::WithdrawBody>(&body)) {
      if (was != nullptr && !is_kept_from_letters(was->item)) {
        lines_.push_back(view_.say("letter.change_gone", {{"what", named(*was), false, true}, {"was", view_.value(model::as_finding(*was)), false, true}}));
      } else if (!withdraw->finding) {
        because("withdraw", withdraw->reason);
      }
    } else if (const auto* addendum = std::get_if<model::AddendumBody>(&body)) {
      report::Args args{{"reason", addendum->reason.text}, {"text", {}}};
      if (addendum->text) {
        args.back().text = addendum->text->text;
      }
      lines_.push_back(view_.say("letter.change_addendum", args));
      if (addendum->examined_on) {
        lines_.push_back(view_.say("page.examined_on", {{"day", addendum->examined_on->to_text(), false, true}}));
      }
      for (const model::Observation& observation : addendum->findings.value_or(std::vector<model::Observation>{})) {
        if (!is_kept_from_letters(observation.item)) {
          lines_.push_back(view_.say("letter.change_new", {{"what", named(observation), false, true}, {"now", view_.value(model::as_finding(observation)), false, true}}));
        }
      }
    } else if (const auto* swap = std::get_if<model::SwapSidesBody>(&body)) {
      because("swap_sides", swap->reason);
    } else if (const auto* move = std::get_if<model::MoveBody>(&body)) {
      because("move", move->reason);
    } else if (const auto* impression = std::get_if<model::ImpressionBody>(&body)) {
      lines_.push_back(view_.say("letter.change_impression", {{"now", impression->impression.text.text}}));
    } else if (const auto* plan = std::get_if<model::PlanBody>(&body)) {
      lines_.push_back(view_.say("letter.change_new", {{"what", report::enum_word(view_.words, "plan", plan->plan_item.kind) + view_.side_after(plan->plan_item.side), false, true},
                                                       {"now", plan->plan_item.text.text}}));
    } else if (const auto* countersign = std::get_if<model::CountersignBody>(&body)) {
      add_found_otherwise(*countersign);
    } else if (std::holds_alternative<model::ExamBody>(body)) {
      lines_.push_back(report::word_of(view_.words, "letter_changed", "exam"));
    }
  }

  const ledger::Graph graph_;
  const PageView& view_;
  std::vector<std::string> lines_;
};

}  // namespace

std::vector<std::string> changed_since_letter(const ledger::ExamRecord& record, const model::EntryId& letter, const report::PageView& view) {
  std::vector<std::string> lines = Changes(record, letter, view).lines();
  if (lines.empty()) {
    lines.push_back(view.say("letter.change_none"));
  }
  return lines;
}

}  // namespace limbledger::service

// The steps that alerts and prompts to refer advise against. A row stops up to some hundred items; what a reader of this page would
// come to is what the sequence of its complaint holds; where it holds none of them, those of the part complained of and walking; where
// there are none of these either, all. Variants of one test go by one name.
#include "core/report/brief/brief.hpp"
#include "core/report/ordinary.hpp"
#include "core/report/page_judged.hpp"

#include <algorithm>
#include <cstdint>

namespace limbledger::report {

namespace {

using model::Side;

enum class StoppedScope : std::uint8_t { sequence, part, all };

class StoppedList {
 public:
  StoppedList(const PageView& view, StoppedScope scope) : view_(view), sequence_(view.edition.sequence(view.exam.complaint)), scope_(scope) {}
  StoppedList(const StoppedList&) = delete;
  StoppedList& operator=(const StoppedList&) = delete;

  void add(const std::optional<Side>& side, const std::vector<model::ItemId>& stop) {
    for (const model::ItemId& id : stop) {
      const model::Item* item = view_.edition.item(id);
      if (item == nullptr) {
        continue;
      }
      // Of walking and standing there is no side.
      const bool midline = std::find(item->sides.begin(), item->sides.end(), Side::midline) != item->sides.end();
      std::optional<Side> here = side;
      if (midline) {
        here.reset();
      }
      if (is_wanted(*item)) {
        name(*item, here);
      } else {
        of_side(here).others.push_back({item->family.text, item->region.text});
      }
    }
  }
  [[nodiscard]] bool names_any() const {
    return std::any_of(sides_.begin(), sides_.end(), [](const Of& of) { return !of.named.empty(); });
  }
  // Left out of the visit for it: two lists of what not to do, of which one is shorter, permit what stands in the other alone.
  void add_missing(const AdvisedAgainst& against) {
    for (const interpret::MissingItem& missing : view_.assessment.missing) {
      if (const model::Item* item = view_.edition.item(missing.item); item != nullptr && against.holds(missing.item, missing.side)) {
        name(*item, missing.side == Side::midline ? std::nullopt : std::optional(missing.side));
      }
    }
  }

  [[nodiscard]] std::vector<StoppedSteps> written() {
    std::vector<StoppedSteps> all;
    for (Of& of : sides_) {
      for (const Other& other : of.others) {
        const bool named = std::any_of(of.named.begin(), of.named.end(), [&](const Step& step) { return step.family == other.family; });
        if (!named && std::find(of.steps.others.begin(), of.steps.others.end(), other.region) == of.steps.others.end()) {
          of.steps.others.push_back(other.region);
        }
      }
      for (const Step& step : of.named) {
        const std::string label = is_recorded(step.item, of.steps.side) ? view_.say("page.step_again", {{"step", view_.label(step.item), false, true}}) : view_.label(step.item);
        of.steps.labels.push_back(step.variants ? view_.say("page.step_variants", {{"step", label, false, true}}) : label);
        of.steps.regions.push_back(step.region);
      }
      all.push_back(std::move(of.steps));
    }
    return all;
  }

 private:
  // "Not advised" alone, of what was done today, would be read as not done.
  [[nodiscard]] bool is_recorded(const model::ItemId& item, const std::optional<Side>& side) const {
    return std::any_of(view_.findings.begin(), view_.findings.end(), [&](const model::Finding* finding) {
      const bool today = !finding->origin || (*finding->origin != model::Origin::carried_over && *finding->origin != model::Origin::bulk_expected);
      return finding->item == item && today && !left_undone(*finding) && (!side || finding->side == *side);
    });
  }
  struct Other {
    std::string family;
    std::string region;
  };
  struct Step {
    model::ItemId item;
    std::string family;
    std::string region;
    bool variants = false;
  };
  struct Of {
    StoppedSteps steps;
    std::vector<Step> named;
    std::vector<Other> others;
  };
  void name(const model::Item& item, const std::optional<Side>& side) {
    Of& of = of_side(side);
    const auto at = std::find_if(of.named.begin(), of.named.end(), [&](const Step& step) { return step.family == item.family.text; });
    if (at == of.named.end()) {
      of.named.push_back({item.item, item.family.text, item.region.text, false});
    } else if (at->item != item.item) {
      at->variants = true;
    }
  }

  [[nodiscard]] bool in_sequence(const model::Item& item) const {
    return sequence_ != nullptr &&
           std::any_of(sequence_->steps.begin(), sequence_->steps.end(), [&](const model::SequenceStep& step) { return step.item == item.item; });
  }
  [[nodiscard]] bool is_wanted(const model::Item& item) const {
    return scope_ == StoppedScope::all || (scope_ == StoppedScope::sequence ? in_sequence(item) : of_part(item));
  }
  [[nodiscard]] bool of_part(const model::Item& item) const {
    const bool part = sequence_ != nullptr && sequence_->part && item.region == *sequence_->part;
    return part || item.item.text == "gait.steps_now";
  }
  [[nodiscard]] Of& of_side(const std::optional<Side>& side) {
    const auto at = std::find_if(sides_.begin(), sides_.end(), [&](const Of& of) { return of.steps.side == side; });
    if (at != sides_.end()) {
      return *at;
    }
    sides_.push_back(Of{{side, {}, {}, {}}, {}, {}});
    return sides_.back();
  }

  const PageView& view_;
  const model::Sequence* sequence_;
  StoppedScope scope_;
  std::vector<Of> sides_;
};

void gather(const PageView& view, StoppedList& list) {
  for (const interpret::Alert& alert : view.assessment.alerts) {
    // By a page's default nothing is told that would tell of a person's protection.
    if (!is_hidden(view, alert) && alert.state != interpret::AlertState::withdrawn_by_correction) {
      list.add(alert.side, alert.stop);
    }
  }
  for (const interpret::Statement& statement : view.assessment.statements) {
    const std::string danger = statement.statement.text.substr(0, statement.statement.text.find(':'));
    if (!referral_prompt(danger) || is_protected_danger(view, danger)) {
      continue;
    }
    if (const reference::AlertRow* row = view.edition.alert({"alert." + std::string(after_dot(danger))}); row != nullptr) {
      list.add(statement.side, row->stop);
    }
  }
}

}  // namespace

std::string parts_named(const PageView& view, const std::vector<std::string>& regions) {
  std::vector<std::string> names;
  for (const std::string& region : regions) {
    if (const std::string name = word_of(view.words, "letter_region", region); std::find(names.begin(), names.end(), name) == names.end()) {
      names.push_back(name);
    }
  }
  return joined(names);
}

AdvisedAgainst::AdvisedAgainst(const PageView& view)
    : view_(view), exam_(view.exam, view.person, view.edition, view.assessment.as_of), flags_(interpret::judge_flags(exam_)) {
  // By a page's default nothing is told that would tell of a person's protection.
  flags_.erase(std::remove_if(flags_.begin(), flags_.end(), [&](const interpret::JudgedFlag& one) { return is_protected_danger(view, one.row->alert.text); }), flags_.end());
  concerns_ = interpret::open_concerns(exam_, flags_, {});
}

bool AdvisedAgainst::holds(const model::ItemId& item, Side side) const {
  const PageView& view = view_;
  const model::Item* known = view.edition.item(item);
  if (known != nullptr && interpret::withheld(*known, side, concerns_, {})) {
    return true;
  }
  const auto holds = [&](const std::optional<Side>& of, const std::vector<model::ItemId>& stop) {
    const bool here = !of || *of == Side::midline || side == Side::midline || *of == side;
    return here && std::find(stop.begin(), stop.end(), item) != stop.end();
  };
  for (const interpret::Alert& alert : view.assessment.alerts) {
    if (!is_hidden(view, alert) && alert.state != interpret::AlertState::withdrawn_by_correction && holds(alert.side, alert.stop)) {
      return true;
    }
  }
  return std::any_of(view.assessment.statements.begin(), view.assessment.statements.end(), [&](const interpret::Statement& statement) {
    const std::string danger = statement.statement.text.substr(0, statement.statement.text.find(':'));
    const reference::AlertRow* row = referral_prompt(danger) && !is_protected_danger(view, danger) ? view.edition.alert({"alert." + std::string(after_dot(danger))}) : nullptr;
    return row != nullptr && holds(statement.side, row->stop);
  });
}

std::vector<StoppedSteps> stopped_steps(const PageView& view) {
  for (const StoppedScope scope : {StoppedScope::sequence, StoppedScope::part, StoppedScope::all}) {
    StoppedList list(view, scope);
    gather(view, list);
    if (list.names_any() || scope == StoppedScope::all) {
      list.add_missing(AdvisedAgainst(view));
      return list.written();
    }
  }
  return {};
}

}  // namespace limbledger::report

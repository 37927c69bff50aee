// What is added beside the findings: transfer, disagreement, what became of the plan, what was found later, countersignature. All
// that was written is kept and shown; where two had not seen each other, nothing is decided by a clock.
#include "core/ledger/fold/exam_folder.hpp"

#include <algorithm>

namespace limbledger::ledger {

namespace {

template <class T>
void keep_in(std::optional<std::vector<T>>& list, T one) {
  if (!list) {
    list.emplace();
  }
  list->push_back(std::move(one));
}

// What was told of earlier stands until somebody tells it anew; what was given and who was called only grow.
template <class T>
void keep_told(std::optional<T>& now, const std::optional<T>& before) {
  now = now ? now : before;
}
template <class T>
void keep_told(std::optional<std::vector<T>>& now, const std::optional<std::vector<T>>& before) {
  if (!before) {
    return;
  }
  std::vector<T> all = *before;
  for (const T& one : now.value_or(std::vector<T>{})) {
    if (std::find(all.begin(), all.end(), one) == all.end()) {
      all.push_back(one);
    }
  }
  now = std::move(all);
}

void keep_told(model::TransferSet& now, const model::TransferSet& before) {
  boost::mp11::mp_for_each<boost::describe::describe_members<model::TransferSet, boost::describe::mod_any_access>>(
      [&](auto member) { keep_told(now.*member.pointer, before.*member.pointer); });
}

// "rule.ottawa_knee:left" is said of the other leg once the sides were exchanged.
[[nodiscard]] std::string turned_statement(const std::string& statement) {
  for (const auto& [from, to] : {std::pair<std::string, std::string>{":left", ":right"}, std::pair<std::string, std::string>{":right", ":left"}}) {
    if (statement.ends_with(from)) {
      return statement.substr(0, statement.size() - from.size()) + to;
    }
  }
  return statement;
}

}  // namespace

// An odd number of exchanges by those who had seen it.
bool ExamFolder::swap_saw(std::size_t index) const {
  bool turned = false;
  for (std::size_t swap = 0; swap < graph_.size(); ++swap) {
    turned = turned != (!nodes_[swap].is_void && body<model::SwapSidesBody>(swap) != nullptr && graph_.saw(swap, index));
  }
  return turned;
}

// Findings were turned by an exchange of sides, and what people wrote was not: which of their words had not seen the last exchange that
// holds for them. An even number of exchanges leaves words as right as they were.
void ExamFolder::fill_exchanged() {
  std::vector<std::pair<std::size_t, model::SidesExchanged>> exchanges;
  for (std::size_t i = 0; i < graph_.size(); ++i) {
    const auto* swap = body<model::SwapSidesBody>(i);
    if (!nodes_[i].is_void && swap != nullptr) {
      const model::Operation& operation = graph_.at(i).operation();
      exchanges.emplace_back(i, model::SidesExchanged{graph_.at(i).entry(), operation.by, wall_of(operation), swap->reason, {}});
    }
  }
  // By two who did not know of each other: they take each other back, and neither meant that.
  for (std::size_t one = 0; one < exchanges.size(); ++one) {
    for (std::size_t other = one + 1; other < exchanges.size(); ++other) {
      if (unseen_by_each_other(exchanges[one].first, exchanges[other].first)) {
        const bool first = graph_.at(exchanges[one].first).entry() < graph_.at(exchanges[other].first).entry();
        mark(exchanges[first ? other : one].first, "exchanged_twice");
      }
    }
  }
  const auto written = [&](std::size_t words, const std::string& name) {
    model::SidesExchanged* last = nullptr;
    bool turned = false;
    for (auto& [swap, exchanged] : exchanges) {
      if (!graph_.saw(words, swap)) {
        turned = !turned;
        last = &exchanged;
      }
    }
    if (turned && std::find(last->written_before.begin(), last->written_before.end(), model::Word{name}) == last->written_before.end()) {
      last->written_before.push_back({name});
    }
  };
  if (exchanges.empty()) {
    return;
  }
  for (const std::size_t head : heads_of<model::ImpressionBody>()) {
    written(head, "impression");
  }
  for (const std::size_t head : heads_of<model::PlanBody>()) {
    if (const auto& item = body<model::PlanBody>(head)->plan_item.plan_item) {
      written(head, item->to_text());
    }
  }
  for (std::size_t i = 0; i < graph_.size(); ++i) {
    const bool words = body<model::AddendumBody>(i) != nullptr || body<model::TransferBody>(i) != nullptr || body<model::OutcomeBody>(i) != nullptr ||
                       body<model::CountersignBody>(i) != nullptr;
    if (nodes_[i].is_void || !words) {
      continue;
    }
    written(i, graph_.at(i).entry().to_text());
    const auto* addendum = body<model::AddendumBody>(i);
    for (const model::PlanItem& item : addendum != nullptr ? addendum->plan_items.value_or(std::vector<model::PlanItem>{}) : std::vector<model::PlanItem>{}) {
      if (item.plan_item) {
        written(i, item.plan_item->to_text());
      }
    }
  }
  std::vector<model::SidesExchanged> all;
  for (auto& [swap, exchanged] : exchanges) {
    all.push_back(std::move(exchanged));
  }
  out_.exam.sides_exchanged = std::move(all);
}

// Of two that did not know each other both travel: which allergy or which call holds, a person settles.
void ExamFolder::fill_transfer() {
  const std::vector<std::size_t> heads = heads_of<model::TransferBody>();
  const auto whole = [&](std::size_t head) {
    model::TransferSet set = body<model::TransferBody>(head)->set;
    for (std::size_t earlier = head; earlier-- > 0;) {
      const auto* told = body<model::TransferBody>(earlier);
      if (told != nullptr && !nodes_[earlier].is_void && graph_.saw(head, earlier)) {
        keep_told(set, told->set);
      }
    }
    return set;
  };
  std::vector<std::size_t> distinct;
  for (const std::size_t head : heads) {
    const model::TransferSet set = whole(head);
    out_.transfer_heads.push_back(graph_.at(head).entry());
    if (std::any_of(distinct.begin(), distinct.end(), [&](std::size_t other) { return whole(other) == set; })) {
      continue;
    }
    distinct.push_back(head);
    const model::Operation& operation = graph_.at(head).operation();
    keep_in(out_.exam.transfer, model::Transferred{graph_.at(head).entry(), operation.by, wall_of(operation), set});
  }
  if (distinct.size() > 1) {
    add_conflict("transfer", distinct);
  }
}

void ExamFolder::fill_disagreed() {
  for (std::size_t i = 0; i < graph_.size(); ++i) {
    const auto* said = body<model::DisagreeBody>(i);
    if (nodes_[i].is_void || said == nullptr) {
      continue;
    }
    const model::Operation& operation = graph_.at(i).operation();
    const std::string statement = swap_saw(i) ? turned_statement(said->statement.text) : said->statement.text;
    keep_in(out_.exam.disagreed,
            model::Disagreed{graph_.at(i).entry(), {statement}, said->because, operation.by, wall_of(operation), operation.edition});
  }
}

void ExamFolder::fill_followed() {
  std::map<model::PlanItemId, std::vector<std::size_t>> fates;
  for (std::size_t i = 0; i < graph_.size(); ++i) {
    const auto* fate = body<model::BecameBody>(i);
    if (nodes_[i].is_void || fate == nullptr) {
      continue;
    }
    const model::Operation& operation = graph_.at(i).operation();
    keep_in(out_.exam.followed,
            model::Followed{graph_.at(i).entry(), fate->plan_item, fate->became, fate->on, fate->text, operation.by, wall_of(operation)});
    if (nodes_[i].replaced_by.empty()) {
      fates[fate->plan_item].push_back(i);
    }
  }
  const std::vector<std::size_t> plans = heads_of<model::PlanBody>();
  for (const auto& [item, heads] : fates) {
    const model::BecameBody& first = *body<model::BecameBody>(heads.front());
    std::vector<std::size_t> differ;
    for (const std::size_t head : heads) {
      out_.plan_heads[item].push_back(graph_.at(head).entry());
      const model::BecameBody& fate = *body<model::BecameBody>(head);
      if (fate.became != first.became || fate.on != first.on) {
        differ.push_back(head);
      }
    }
    // A plan item written elsewhere at the same time may say otherwise.
    for (const std::size_t plan : plans) {
      const model::PlanItem& written = body<model::PlanBody>(plan)->plan_item;
      const bool unseen = unseen_by_each_other(plan, heads.front());
      if (written.plan_item == std::optional(item) && unseen && written.became && *written.became != first.became) {
        differ.push_back(plan);
      }
    }
    const bool settled = differ.empty();
    for (std::size_t i = 0; out_.exam.plan && i < out_.exam.plan->size(); ++i) {
      model::PlanItem& shown = (*out_.exam.plan)[i];
      if (shown.plan_item == std::optional(item)) {
        // Unsettled it counts as open: nobody stops asking after it.
        shown.became = settled ? std::optional(first.became) : std::nullopt;
        shown.became_on = settled ? first.on : std::nullopt;
      }
    }
    if (!settled) {
      differ.push_back(heads.front());
      add_conflict("became", differ);
    }
  }
}

void ExamFolder::fill_outcomes() {
  for (std::size_t i = 0; i < graph_.size(); ++i) {
    const auto* told = body<model::OutcomeBody>(i);
    if (nodes_[i].is_void || told == nullptr) {
      continue;
    }
    const model::Operation& operation = graph_.at(i).operation();
    keep_in(out_.exam.outcomes, model::OutcomeTold{graph_.at(i).entry(), told->found, operation.by, wall_of(operation)});
  }
}

void ExamFolder::fill_countersigned() {
  for (std::size_t i = 0; i < graph_.size(); ++i) {
    const auto* written = body<model::CountersignBody>(i);
    if (nodes_[i].is_void || written == nullptr) {
      continue;
    }
    const model::Operation& operation = graph_.at(i).operation();
    const bool own = std::any_of(signatures_.begin(), signatures_.end(), [&](std::size_t sign) { return graph_.at(sign).operation().by == operation.by; });
    const bool saw = std::any_of(signatures_.begin(), signatures_.end(), [&](std::size_t sign) { return graph_.saw(i, sign); });
    if (own || !saw) {
      // Nobody supervises themselves, nor what they did not see signed.
      mark(i, own ? "own_countersignature" : "signature_unseen");
      continue;
    }
    keep_in(out_.exam.countersigned, model::Countersigned{graph_.at(i).entry(), *operation.by, wall_of(operation), written->findings,
                                                          written->impression, written->remark});
  }
}

}  // namespace limbledger::ledger

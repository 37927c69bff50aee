// Whose a value is that somebody decided on, and between which it was. Who settles did not examine: the finding stays its examiner's.
#include "core/ledger/fold/exam_folder.hpp"

#include <algorithm>
#include <iterator>
#include <set>
#include <utility>

namespace limbledger::ledger {

void ExamFolder::weigh_findings() {
  const auto decided = [&](std::size_t i) { return !nodes_[i].is_void && observation(i) != nullptr && (body<model::SettleBody>(i) != nullptr || nodes_[i].targets.size() > 1); };
  bool any = false;
  for (std::size_t i = 0; i < graph_.size(); ++i) {
    any = any || decided(i);
  }
  if (!any) {
    return;
  }
  Values values;
  for (std::size_t i = 0; i < graph_.size(); ++i) {
    if (!nodes_[i].is_void && observation(i) != nullptr) {
      values.corrects[i] = nodes_[i].targets;
    }
  }
  values.same = [this](std::size_t a, std::size_t b) { return same_observation(*observation(a), *observation(b)); };
  values.names = [this](std::size_t a, std::size_t b) { return finding_id(a) == finding_id(b); };
  values.decides = [this](std::size_t i) { return body<model::SettleBody>(i) != nullptr; };
  values.own = [this](std::size_t i) { return body<model::FindingBody>(i) != nullptr; };
  values.earlier = [this](std::size_t i) { return taken_earlier(i); };
  settling_.emplace(graph_, std::move(values));
}

// Any value that was ever recorded there may be taken, also one that its writer has corrected: the newest of that finding that says it.
std::optional<std::size_t> ExamFolder::taken_earlier(std::size_t settle) const {
  std::optional<std::size_t> taken;
  for (std::size_t i = 0; i < graph_.size(); ++i) {
    const bool there = !nodes_[i].is_void && body<model::FindingBody>(i) != nullptr && graph_.saw(settle, i) && finding_id(i) == finding_id(settle) &&
                       side_now_[i] == side_now_[settle] && observation(i)->item == observation(settle)->item;
    if (there && same_observation(*observation(settle), *observation(i))) {
      taken = i;
    }
  }
  return taken;
}

void ExamFolder::tell_settled(std::size_t entry, model::Finding& finding) const {
  if (!settling_) {
    return;
  }
  const std::vector<Decision> decisions = settling_->of(entry);
  if (decisions.empty()) {
    return;
  }
  std::vector<model::Settled> all = told(graph_, decisions, "finding", [&](std::size_t i) { return as_raw(*observation(i)); });
  complete_settled(all, decisions);
  if (const auto& taken = decisions.front().taken) {
    const model::Finding was = as_told(graph_.at(*taken), *finding_id(*taken), *observation(*taken), out_.exam);
    finding.examiner = was.examiner;
    finding.examined_at = was.examined_at;
  }
  finding.settled = std::move(all);
}

// What the entries say of it beyond what every record has: who examined, why, what took a value back, and what was known of the signature.
void ExamFolder::complete_settled(std::vector<model::Settled>& all, const std::vector<Decision>& decisions) const {
  for (std::size_t at = 0; at < all.size(); ++at) {
    const std::size_t entry = decisions[at].entry;
    model::Settled& settled = all[at];
    const auto* settle = body<model::SettleBody>(entry);
    const auto* move = body<model::MoveBody>(entry);
    if (const auto* read = body<model::FindingBody>(entry); read != nullptr && read->examiner) {
      settled.by = read->examiner;  // read anew by whoever it was
    }
    if (settle != nullptr) {
      settled.reason = settle->reason;
    } else if (move != nullptr) {
      settled.reason = move->reason;
    } else if (const auto* opening = body<model::ExamBody>(entry)) {
      settled.reason = opening->reason;
    } else if (const auto* consent = body<model::ConsentBody>(entry)) {
      settled.reason = consent->reason;
    } else if (const auto* impression = body<model::ImpressionBody>(entry)) {
      settled.reason = impression->reason;
    }
    if (std::any_of(signatures_.begin(), signatures_.end(), [&](std::size_t sign) { return graph_.saw(entry, sign); })) {
      settled.after_signature = model::AfterSignature::seen;
    } else if (nodes_[entry].late) {
      settled.after_signature = model::AfterSignature::unseen;
    }
    for (std::size_t i = 0; i < decisions[at].among.size(); ++i) {
      const std::size_t one = decisions[at].among[i];
      const model::Operation& operation = graph_.at(one).operation();
      if (const auto* found = body<model::FindingBody>(one)) {
        settled.among[i].by = found->examiner ? found->examiner : operation.by;
        settled.among[i].at = operation.examined_at.value_or(wall_of(operation));
      }
    }
    for (std::size_t i = 0; settle != nullptr && i < graph_.size(); ++i) {
      const auto* swap = body<model::SwapSidesBody>(i);
      const auto& of = decisions[at].among;
      if (swap != nullptr && !nodes_[i].is_void && graph_.saw(entry, i) && std::any_of(of.begin(), of.end(), [&](std::size_t one) { return unseen_by_each_other(i, one); })) {
        const model::Operation& operation = graph_.at(i).operation();
        (settled.sides_exchanged ? *settled.sides_exchanged : settled.sides_exchanged.emplace()).push_back({graph_.at(i).entry(), operation.by, wall_of(operation), std::nullopt, swap->reason});
      }
    }
    for (std::size_t i = 0; settle != nullptr && i < graph_.size(); ++i) {
      const auto* withdraw = body<model::WithdrawBody>(i);
      const auto unseen_there = [&](std::size_t one) { return withdraw->finding == finding_id(one) && unseen_by_each_other(i, one); };
      const auto& among = decisions[at].among;
      if (!nodes_[i].is_void && withdraw != nullptr && graph_.saw(entry, i) && std::any_of(among.begin(), among.end(), unseen_there)) {
        const model::Operation& operation = graph_.at(i).operation();
        settled.among.push_back({graph_.at(i).entry(), operation.by, wall_of(operation), std::nullopt, withdraw->reason});
      }
    }
  }
}

// A value that was taken back by one and changed by another, neither knowing of it, and then taken back by who saw both; and one that
// was written without knowledge that left and right were exchanged, and taken back by who saw that.
void ExamFolder::fill_taken_back() {
  for (std::size_t i = 0; i < graph_.size(); ++i) {
    const auto* decides = body<model::WithdrawBody>(i);
    if (nodes_[i].is_void || decides == nullptr || !decides->finding) {
      continue;
    }
    for (const std::size_t changed : nodes_[i].targets) {
      for (std::size_t other = 0; other < graph_.size(); ++other) {
        const auto* before = body<model::WithdrawBody>(other);
        const bool against = other != i && !nodes_[other].is_void && before != nullptr && before->finding == decides->finding && graph_.saw(i, other) && unseen_by_each_other(other, changed);
        const bool exchanged = body<model::SwapSidesBody>(other) != nullptr && !nodes_[other].is_void && graph_.saw(i, other) && unseen_by_each_other(other, changed);
        if ((!against && !exchanged) || observation(changed) == nullptr || (kept_apart_ && kept_apart_(observation(changed)->item))) {
          continue;
        }
        const auto* found = body<model::FindingBody>(changed);
        const model::Operation& written = graph_.at(changed).operation();
        const std::size_t taken = against ? other : i;
        model::Settled settled;
        settled.about.text = "withdrawal";
        settled.entry = graph_.at(i).entry();
        settled.by = graph_.at(i).operation().by;
        settled.at = wall_of(graph_.at(i).operation());
        settled.reason = decides->reason;
        settled.taken = graph_.at(taken).entry();
        settled.among.push_back({graph_.at(changed).entry(), found != nullptr && found->examiner ? found->examiner : written.by, written.examined_at.value_or(wall_of(written)),
                                 as_raw(*observation(changed)), std::nullopt});
        settled.among.push_back({graph_.at(taken).entry(), graph_.at(taken).operation().by, wall_of(graph_.at(taken).operation()), std::nullopt, body<model::WithdrawBody>(taken)->reason});
        if (!out_.exam.settled) {
          out_.exam.settled.emplace();
        }
        out_.exam.settled->push_back(std::move(settled));
        if (exchanged) {
          break;
        }
      }
    }
  }
}

// A whole record of the opening or of consent is written with each change: an entry speaks of a member where it says otherwise than what it
// corrects, and where somebody then decided between it and another that says otherwise.
template <class Body, class Value>
void ExamFolder::fill_settled_of(Value Body::*member, std::string_view about) {
  std::map<std::size_t, std::vector<std::size_t>> corrects;
  bool any = false;
  for (std::size_t i = 0; i < graph_.size(); ++i) {
    if (!nodes_[i].is_void && body<Body>(i) != nullptr) {
      auto& targets = corrects[i];
      std::copy_if(nodes_[i].targets.begin(), nodes_[i].targets.end(), std::back_inserter(targets), [&](std::size_t one) { return body<Body>(one) != nullptr; });
      any = any || targets.size() > 1;
    }
  }
  if (!any) {
    return;
  }
  const auto same = [this, member](std::size_t a, std::size_t b) { return body<Body>(a)->*member == body<Body>(b)->*member; };
  std::set<std::size_t> decided_between;
  for (const auto& row : corrects) {
    const std::vector<std::size_t>& targets = row.second;
    if (std::any_of(targets.begin(), targets.end(), [&](std::size_t one) { return !same(one, targets.front()); })) {
      decided_between.insert(targets.begin(), targets.end());
    }
  }
  const auto speaks = [&](std::size_t i) {
    const auto& targets = corrects.at(i);
    return targets.empty() || decided_between.contains(i) || std::any_of(targets.begin(), targets.end(), [&](std::size_t one) { return !same(i, one); });
  };
  const auto speakers = [&](const std::vector<std::size_t>& from) {
    std::set<std::size_t> seen;
    std::vector<std::size_t> found;
    std::vector<std::size_t> waiting = from;
    while (!waiting.empty()) {
      const std::size_t one = waiting.back();
      waiting.pop_back();
      if (!seen.insert(one).second) {
        continue;
      }
      if (speaks(one)) {
        found.push_back(one);
      } else {
        waiting.insert(waiting.end(), corrects.at(one).begin(), corrects.at(one).end());
      }
    }
    std::sort(found.begin(), found.end());
    return found;
  };
  Values values;
  values.same = same;
  for (const auto& [i, targets] : corrects) {
    if (speaks(i)) {
      values.corrects[i] = speakers(targets);
    }
  }
  const Settling settling(graph_, std::move(values));
  std::set<std::size_t> shown;
  for (const auto& [i, targets] : corrects) {
    const auto& by = nodes_[i].replaced_by;
    if (std::any_of(by.begin(), by.end(), [&](std::size_t other) { return body<Body>(other) != nullptr; })) {
      continue;
    }
    for (const std::size_t speaker : speakers({i})) {
      const std::vector<Decision> decisions = settling.of(speaker);
      if (decisions.empty() || !shown.insert(speaker).second) {
        continue;
      }
      std::vector<model::Settled> all = told(graph_, decisions, about, [&](std::size_t one) { return as_raw(body<Body>(one)->*member); });
      complete_settled(all, decisions);
      if (!out_.exam.settled) {
        out_.exam.settled.emplace();
      }
      std::move(all.begin(), all.end(), std::back_inserter(*out_.exam.settled));
    }
  }
}

void ExamFolder::fill_settled() {
  fill_taken_back();
  fill_settled_of(&model::MoveBody::person, "person");
  fill_settled_of(&model::ExamBody::complaint, "complaint");
  fill_settled_of(&model::ExamBody::side, "side");
  fill_settled_of(&model::ExamBody::setting, "setting");
  fill_settled_of(&model::ExamBody::place, "place");
  fill_settled_of(&model::ExamBody::offset_min, "offset_min");
  fill_settled_of(&model::ExamBody::injured_on, "injured_on");
  fill_settled_of(&model::ExamBody::examined_on, "examined_on");
  fill_settled_of(&model::ExamBody::reviews, "reviews");
  fill_settled_of(&model::ExamBody::supervised, "supervised");
  fill_settled_of(&model::ConsentBody::consent, "consent");
  fill_settled_of(&model::ConsentBody::company, "company");
  fill_settled_of(&model::ConsentBody::who_spoke, "who_spoke");
  fill_settled_of(&model::ConsentBody::interpreter, "interpreter");
  fill_settled_of(&model::ImpressionBody::impression, "impression");
  fill_settled_of(&model::PlanBody::plan_item, "plan");
  fill_settled_of(&model::BecameBody::became, "became");
  fill_settled_of(&model::TransferBody::set, "transfer");
}

}  // namespace limbledger::ledger

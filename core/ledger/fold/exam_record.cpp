#include "core/ledger/fold/exam_folder.hpp"

#include "core/model/exam/day.hpp"

#include <algorithm>

namespace limbledger::ledger {

namespace {

[[nodiscard]] std::string hex_of(const Hash& hash) { return model::Hex<32>{hash}.to_text(); }

// A stamp of the ledger's own clock that runs this far ahead was carried on from a time that this device had seen before: one of the two is wrong.
constexpr std::int64_t behind_ms_max = std::int64_t{24} * 3600 * 1000;

// No day can be read from the time with which it was opened.
[[nodiscard]] bool tells_no_day(const Opened& opening) {
  const model::Operation& operation = opening.operation();
  if (!operation.examined_at || model::is_of_no_clock(operation.examined_at)) {
    return operation.examined_at.has_value();
  }
  const bool said_wrong = operation.at.clock == model::ClockWord::unset || operation.at.clock == model::ClockWord::suspect;
  const bool behind = operation.at.clock != model::ClockWord::network && opening.stamp().ms - operation.at.wall_ms.steps > behind_ms_max;
  return is_stamped(operation) && (said_wrong || behind);
}

// Of two unseen words about consent the one that allows less holds until a person settles it.
void allow_less(std::optional<model::ConsentWord>& held, const std::optional<model::ConsentWord>& other) {
  if (other && (!held || static_cast<int>(*other) > static_cast<int>(*held))) {
    held = other;
  }
}

}  // namespace

bool is_stamped(const model::Operation& opening) {
  const std::int64_t apart = opening.examined_at ? opening.at.wall_ms.steps - opening.examined_at->ms : 0;
  return apart > -60'000 && apart < 60'000;
}

void ExamFolder::fill_head(std::size_t root) {
  const auto& opening = *body<model::ExamBody>(root);
  const model::Operation& operation = graph_.at(root).operation();
  model::Exam& exam = out_.exam;
  exam.exam = exam_;
  exam.state = signatures_.empty() ? model::ExamState::open : model::ExamState::signed_;
  exam.complaint = opening.complaint;
  exam.setting = opening.setting;
  exam.examiner = operation.by;
  exam.examined_at = operation.examined_at;
  exam.edition = operation.edition;
  fill_opening(root);
}

// An opening that replaces another amends it; who the exam is of, and when it was, stay with the first.
bool ExamFolder::amends(std::size_t index) const {
  return body<model::ExamBody>(index) != nullptr && !graph_.at(index).operation().replaces.empty();
}

void ExamFolder::fill_opening(std::size_t root) {
  std::vector<std::size_t> heads;
  for (std::size_t i = 0; i < graph_.size(); ++i) {
    const auto& by = nodes_[i].replaced_by;
    const bool amended = std::any_of(by.begin(), by.end(), [&](std::size_t other) { return body<model::ExamBody>(other) != nullptr; });
    if (!nodes_[i].is_void && body<model::ExamBody>(i) != nullptr && !amended) {
      heads.push_back(i);
    }
  }
  if (heads.empty()) {
    heads.push_back(root);
  }
  for (const std::size_t head : heads) {
    out_.opening_heads.push_back(graph_.at(head).entry());
  }
  std::sort(out_.opening_heads.begin(), out_.opening_heads.end());
  const auto& first = *body<model::ExamBody>(heads.front());
  const auto agree = [&](auto member) {
    return std::all_of(heads.begin(), heads.end(), [&](std::size_t head) { return body<model::ExamBody>(head)->*member == first.*member; });
  };
  // What two unseen amendments say differently is shown as a conflict and stands as not known: a wrong side is worse than none.
  model::Exam& exam = out_.exam;
  bool same = true;
  const auto take = [&](auto& shown, auto member) {
    if (agree(member)) {
      shown = first.*member;
    } else {
      same = false;
    }
  };
  take(exam.complaint, &model::ExamBody::complaint);
  take(exam.side, &model::ExamBody::side);
  take(exam.setting, &model::ExamBody::setting);
  take(exam.place, &model::ExamBody::place);
  take(exam.offset_min, &model::ExamBody::offset_min);
  take(exam.injured_on, &model::ExamBody::injured_on);
  take(exam.reviews, &model::ExamBody::reviews);
  take(exam.supervised, &model::ExamBody::supervised);
  // Who said no day contradicts nobody; which one holds is for fill_day.
  const auto said_otherwise = [&](std::size_t a, std::size_t b) {
    const auto& one = body<model::ExamBody>(a)->examined_on;
    const auto& other = body<model::ExamBody>(b)->examined_on;
    return one && other && !(*one == *other);
  };
  for (const std::size_t head : heads) {
    same = same && std::none_of(heads.begin(), heads.end(), [&](std::size_t other) { return said_otherwise(head, other); });
  }
  // Whether bands may be given yet: one that says no is enough.
  if (std::any_of(heads.begin(), heads.end(), [&](std::size_t head) { return body<model::ExamBody>(head)->supervised.value_or(false); })) {
    exam.supervised = true;
  }
  if (!same) {
    add_conflict("exam", heads);
  }
}

void ExamFolder::fill_registers() {
  fill_assignment();
  fill_consent();
  fill_impression();
  fill_plan();
  fill_withdrawal();
  if (!signatures_.empty()) {
    const Opened& first = graph_.at(signatures_.front());
    const auto& sign = std::get<model::SignBody>(first.body());
    out_.exam.signed_ = model::Signed{*first.operation().by, wall_of(first.operation()), {hex_of(first.operation().sig->covers.bytes)}, sign.shown};
    out_.exam.incomplete = sign.incomplete;
  }
}

void ExamFolder::fill_assignment() {
  std::vector<std::size_t> heads = heads_of<model::MoveBody>();
  for (std::size_t i = 0; i < graph_.size(); ++i) {
    const auto& by = nodes_[i].replaced_by;
    const bool moved = std::any_of(by.begin(), by.end(), [&](std::size_t other) { return body<model::MoveBody>(other) != nullptr; });
    if (!nodes_[i].is_void && body<model::ExamBody>(i) != nullptr && !amends(i) && !moved) {
      heads.push_back(i);
    }
  }
  for (const std::size_t head : heads) {
    out_.assignment_heads.push_back(graph_.at(head).entry());
    const auto* move = body<model::MoveBody>(head);
    const auto person = move != nullptr ? std::optional(move->person) : body<model::ExamBody>(head)->person;
    if (person && std::find(out_.persons.begin(), out_.persons.end(), *person) == out_.persons.end()) {
      out_.persons.push_back(*person);
    }
  }
  std::sort(out_.assignment_heads.begin(), out_.assignment_heads.end());
  std::sort(out_.persons.begin(), out_.persons.end());
  if (out_.persons.size() == 1) {
    out_.exam.person = out_.persons.front();
  } else if (out_.persons.size() > 1) {
    add_conflict("person", heads);
  }
}

void ExamFolder::fill_consent() {
  const std::vector<std::size_t> heads = heads_of<model::ConsentBody>();
  for (const std::size_t head : heads) {
    out_.consent_heads.push_back(graph_.at(head).entry());
    const auto& given = *body<model::ConsentBody>(head);
    if (given.consent) {
      if (!out_.exam.consent) {
        out_.exam.consent = given.consent;
      }
      allow_less(out_.exam.consent->examine, given.consent->examine);
      allow_less(out_.exam.consent->record, given.consent->record);
      allow_less(out_.exam.consent->send, given.consent->send);
    }
    const auto take = [](auto& held, const auto& other) {
      if (!held) {
        held = other;
      }
    };
    take(out_.exam.company, given.company);
    take(out_.exam.who_spoke, given.who_spoke);
    take(out_.exam.interpreter, given.interpreter);
  }
  const bool differ = std::any_of(heads.begin(), heads.end(), [&](std::size_t head) {
    const auto& one = *body<model::ConsentBody>(head);
    const auto& other = *body<model::ConsentBody>(heads.front());
    return one.consent != other.consent || one.company != other.company || one.who_spoke != other.who_spoke || one.interpreter != other.interpreter;
  });
  if (differ) {
    add_conflict("consent", heads);
  }
}

void ExamFolder::fill_impression() {
  const std::vector<std::size_t> heads = heads_of<model::ImpressionBody>();
  for (const std::size_t head : heads) {
    out_.impression_heads.push_back(graph_.at(head).entry());
  }
  const bool differ = std::any_of(heads.begin(), heads.end(), [&](std::size_t head) {
    return !(body<model::ImpressionBody>(head)->impression == body<model::ImpressionBody>(heads.front())->impression);
  });
  if (differ) {
    add_conflict("impression", heads);  // none is shown as the examiner's; both stand in the conflict
  } else if (!heads.empty()) {
    out_.exam.impression = body<model::ImpressionBody>(heads.front())->impression;
  }
}

void ExamFolder::fill_plan() {
  std::map<model::PlanItemId, std::vector<std::size_t>> items;
  for (const std::size_t head : heads_of<model::PlanBody>()) {
    const auto& item = body<model::PlanBody>(head)->plan_item;
    if (item.plan_item) {
      items[*item.plan_item].push_back(head);
    }
  }
  if (items.empty()) {
    return;
  }
  out_.exam.plan.emplace();
  // In the order they were decided, which is the order of the display.
  std::vector<std::pair<std::size_t, model::PlanItemId>> order;
  for (const auto& [id, heads] : items) {
    order.emplace_back(heads.front(), id);
  }
  std::sort(order.begin(), order.end());
  for (const auto& [first, id] : order) {
    std::vector<std::size_t> distinct;
    for (const std::size_t head : items[id]) {
      out_.plan_heads[id].push_back(graph_.at(head).entry());
      if (std::none_of(distinct.begin(), distinct.end(),
                       [&](std::size_t other) { return body<model::PlanBody>(other)->plan_item == body<model::PlanBody>(head)->plan_item; })) {
        distinct.push_back(head);
        out_.exam.plan->push_back(body<model::PlanBody>(head)->plan_item);  // unseen versions are all shown: a referral must not vanish
      }
    }
    if (distinct.size() > 1) {
      add_conflict("plan", distinct);
    }
  }
}

// What was decided after the signature stands in the plan with the rest; an addendum is never replaced.
void ExamFolder::fill_plan_of_addenda() {
  for (std::size_t i = 0; i < graph_.size(); ++i) {
    const auto* addendum = body<model::AddendumBody>(i);
    if (nodes_[i].is_void || addendum == nullptr || !addendum->plan_items) {
      continue;
    }
    std::vector<model::PlanItem>& plan = out_.exam.plan ? *out_.exam.plan : out_.exam.plan.emplace();
    for (const model::PlanItem& item : *addendum->plan_items) {
      if (item.plan_item && std::none_of(plan.begin(), plan.end(), [&item](const model::PlanItem& other) { return other.plan_item == item.plan_item; })) {
        plan.push_back(item);
      }
    }
  }
}

void ExamFolder::fill_withdrawal() {
  for (std::size_t i = 0; i < graph_.size(); ++i) {
    const auto* withdraw = body<model::WithdrawBody>(i);
    if (nodes_[i].is_void || withdraw == nullptr || withdraw->finding) {
      continue;
    }
    if (!out_.exam.withdrawn) {
      const model::Operation& operation = graph_.at(i).operation();
      out_.exam.state = model::ExamState::withdrawn;
      out_.exam.withdrawn = model::Withdrawn{operation.by, wall_of(operation), withdraw->reason};
    }
    for (std::size_t other = 0; other < graph_.size(); ++other) {
      if (other != i && unseen_by_each_other(i, other) && !nodes_[other].is_void && !puts_off(other)) {
        mark(other, "withdrawal_unseen");
      }
    }
  }
}

void ExamFolder::fill_addenda() {
  std::vector<model::Addendum> addenda;
  for (std::size_t i = 0; i < graph_.size(); ++i) {
    const auto* written = body<model::AddendumBody>(i);
    if (nodes_[i].is_void || written == nullptr) {
      continue;
    }
    const model::Operation& operation = graph_.at(i).operation();
    model::Addendum addendum;
    addendum.entry = graph_.at(i).entry();
    addendum.by = *operation.by;
    addendum.at = wall_of(operation);
    addendum.kind = written->kind;
    addendum.reason = written->reason;
    addendum.text = written->text;
    addendum.findings = written->findings;
    addendum.examined_on = written->examined_on;
    addendum.plan_items = written->plan_items;
    const bool saw_signature = std::any_of(signatures_.begin(), signatures_.end(), [&](std::size_t sign) { return graph_.saw(i, sign); });
    const auto saw_withdrawn = [&] {
      for (std::size_t other = 0; other < graph_.size(); ++other) {
        const auto* withdraw = body<model::WithdrawBody>(other);
        if (!nodes_[other].is_void && withdraw != nullptr && !withdraw->finding && graph_.saw(i, other)) {
          return true;
        }
      }
      return false;
    };
    // Written by someone who had not seen the exam signed; of one that nobody signed and that was seen withdrawn there is no more to see.
    if (!saw_signature && !(signatures_.empty() && saw_withdrawn())) {
      mark(i, "signature_unseen");
    }
    if (!nodes_[i].marks.empty()) {
      addendum.marks = nodes_[i].marks;
    }
    addenda.push_back(std::move(addendum));
  }
  if (!addenda.empty()) {
    out_.exam.addenda = std::move(addenda);
  }
}

// The day that a person said, in an opening or in an addendum, stands before that of the clock; the word of who had seen another goes
// before it. Of two that differ and had not seen each other, neither is the day.
void ExamFolder::fill_day(std::size_t root) {
  const auto said = [&](std::size_t i) -> std::optional<model::PartialDate> {
    const auto* opening = body<model::ExamBody>(i);
    const auto* addendum = body<model::AddendumBody>(i);
    return nodes_[i].is_void ? std::nullopt : (opening != nullptr ? opening->examined_on : (addendum != nullptr ? addendum->examined_on : std::nullopt));
  };
  bool differ = false;
  for (std::size_t i = 0; i < graph_.size(); ++i) {
    const std::optional<model::PartialDate> day = said(i);
    bool gone = !day;
    for (std::size_t later = 0; later < graph_.size() && !gone; ++later) {
      gone = later != i && graph_.saw(later, i) && said(later).has_value();
    }
    if (!gone) {
      differ = differ || (out_.exam.examined_on && !(*out_.exam.examined_on == *day));
      out_.exam.examined_on = day;
    }
  }
  if (differ) {
    out_.exam.examined_on.reset();
  }
  if (differ || tells_no_day(graph_.at(root))) {
    out_.exam.day_doubtful = true;
  }
}

}  // namespace limbledger::ledger

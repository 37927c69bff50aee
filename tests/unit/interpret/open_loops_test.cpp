// What is left open of a person's visits: rules of our own, after clinical safety, requirements 12, 14 and 16. Everything is invented.
#include "core/interpret/after/open_loops.hpp"

#include <doctest/doctest.h>

namespace limbledger::interpret::open_loops_test {

namespace {

model::PartialDate day(const std::string& text) {
  model::PartialDate out;
  REQUIRE(model::PartialDate::from_text(text, out).empty());
  return out;
}

model::Exam visit(std::uint8_t number, bool impression = true) {
  model::Exam exam;
  exam.exam.emplace().bytes.fill(number);
  exam.state = model::ExamState::signed_;
  if (impression) {
    exam.impression = model::Impression{{"sprain"}, {}, {}, {}, {}};
  }
  return exam;
}

void plan(model::Exam& exam, model::PlanKind kind, const std::string& by, std::optional<model::Became> became = {}) {
  if (!exam.plan) {
    exam.plan.emplace();
  }
  model::PlanItem item;
  item.plan_item.emplace().bytes.fill(static_cast<std::uint8_t>(exam.plan->size() + 1));
  item.kind = kind;
  item.text = {"as agreed"};
  item.became = became;
  if (!by.empty()) {
    item.by = day(by);
  }
  exam.plan->push_back(item);
}

Alert alert(const std::string& name, AlertState state = AlertState::raised) {
  Alert out;
  out.alert = {name};
  out.state = state;
  return out;
}

// The kinds that are open, in order, by their words.
std::string open(std::span<const Visit> visits, const std::string& today) {
  std::string out;
  for (const OpenLoop& one : open_loops(visits, day(today))) {
    out += (out.empty() ? "" : " ") + std::string(wire::type_of<LoopKind>().words[static_cast<std::size_t>(one.loop)]);
  }
  return out;
}

std::string open_of(const model::Exam& exam, const std::string& today) {
  const Visit one{&exam, {}};
  return open({&one, 1}, today);
}

}  // namespace

TEST_CASE("C14: a referral is open once its day is over, until it is answered or declined; sent, received and seen do not close it, and lost is open at once") {
  for (const auto became : {std::optional<model::Became>{}, std::optional(model::Became::written), std::optional(model::Became::sent),
                            std::optional(model::Became::received), std::optional(model::Became::seen)}) {
    model::Exam exam = visit(1);
    plan(exam, model::PlanKind::referral, "2026-12-08", became);
    CHECK(open_of(exam, "2026-12-08").empty());
    CHECK(open_of(exam, "2026-12-09") == "referral_past_day");
  }
  for (const auto became : {model::Became::answered, model::Became::declined}) {
    model::Exam exam = visit(1);
    plan(exam, model::PlanKind::referral, "2026-12-08", became);
    CHECK(open_of(exam, "2027-12-09").empty());
  }
  model::Exam lost = visit(1);
  plan(lost, model::PlanKind::referral, "", model::Became::lost);
  CHECK(open_of(lost, "2026-11-24") == "referral_past_day");
  model::Exam month = visit(1);
  plan(month, model::PlanKind::referral, "2026-12");
  CHECK(open_of(month, "2026-12-31").empty());
  CHECK(open_of(month, "2027-01-01") == "referral_past_day");
  model::Exam undated = visit(1);
  plan(undated, model::PlanKind::referral, "");
  CHECK(open_of(undated, "2030-01-01").empty());
}

TEST_CASE("C14: a review is overdue once its day is over, unless it was done, or an exam reviews this one; a void one does not") {
  model::Exam first = visit(1);
  plan(first, model::PlanKind::review, "2026-12-08");
  CHECK(open_of(first, "2026-12-09") == "review_overdue");
  model::Exam review = visit(2);
  review.reviews = first.exam;
  const std::vector<Visit> both{{&first, {}}, {&review, {}}};
  CHECK(open(both, "2026-12-09").empty());
  review.state = model::ExamState::withdrawn;
  CHECK(open(both, "2026-12-09") == "review_overdue");
  model::Exam done = visit(1);
  plan(done, model::PlanKind::review, "2026-12-08", model::Became::done);
  CHECK(open_of(done, "2026-12-09").empty());
}

TEST_CASE("C2, C12, C16: alerts without an action, call-backs apart from them, and nothing of what protects a person") {
  model::Exam exam = visit(1);
  std::vector<Alert> alerts{alert("alert.scfe"), alert("alert.dvt", AlertState::handled), alert("alert.acs"), alert("alert.nai"),
                            alert("alert.ces", AlertState::withdrawn_by_correction)};
  alerts[3].audience = Audience::protected_;
  alerts[2].call_back = true;
  const Visit one{&exam, alerts};
  CHECK(open({&one, 1}, "2026-11-24") == "alert_without_action call_back");
  const auto loops = open_loops({&one, 1}, day("2026-11-24"));
  CHECK(loops[0].alert->text == "alert.scfe");
  CHECK(loops[1].alert->text == "alert.acs");
  exam.state = model::ExamState::withdrawn;
  CHECK(open({&one, 1}, "2026-11-24").empty());
}

TEST_CASE("C14: whoever was sent with an urgent sign is asked after until an outcome, an answered referral or a later visit tells what became of them") {
  model::Exam exam = visit(1);
  std::vector<Alert> alerts{alert("alert.ali", AlertState::handled)};
  alerts[0].urgency = Urgency::now;
  alerts[0].handled.emplace();
  const auto left = [&](const std::vector<Visit>& later = {}) {
    std::vector<Visit> all{{&exam, alerts}};
    all.insert(all.end(), later.begin(), later.end());
    return open(all, "2026-11-24");
  };
  CHECK(left().empty());  // nothing is recorded of it: that is another line
  alerts[0].handled->reason = wire::Remark{"no petrol"};
  CHECK(left() == "urgent_without_outcome");
  alerts[0].state = AlertState::withdrawn_by_correction;
  CHECK(left().empty());  // nobody was sent, and it is raised no more
  alerts[0].state = AlertState::handled;
  alerts[0].handled->reason.reset();
  alerts[0].handled->action = wire::Remark{"sent to the hospital by car"};
  CHECK(left() == "urgent_without_outcome");
  alerts[0].state = AlertState::withdrawn_by_correction;
  CHECK(left() == "urgent_without_outcome");  // whoever was sent is on the way all the same
  alerts[0].state = AlertState::handled;
  alerts[0].urgency = Urgency::same_day;
  CHECK(left().empty());
  alerts[0].urgency = Urgency::now;
  alerts[0].audience = Audience::protected_;
  CHECK(left().empty());
  alerts[0].audience = Audience::clinician;

  model::Exam again = visit(2);
  CHECK(left({{&again, {}}}).empty());
  CHECK(left({{&again, {}, true}}) == "urgent_without_outcome");  // opened alone
  again.state = model::ExamState::withdrawn;
  CHECK(left({{&again, {}}}) == "urgent_without_outcome");
  plan(exam, model::PlanKind::referral, "2026-12-08", model::Became::sent);
  CHECK(left() == "urgent_without_outcome");
  exam.plan->back().became = model::Became::answered;
  CHECK(left().empty());
  exam.plan.reset();
  exam.outcomes.emplace().emplace_back().found = {model::LaterKind::not_arrived, {"the car broke down"}, {}, {}, {}};
  CHECK(left() == "urgent_without_outcome");
  exam.outcomes->emplace_back().found = {model::LaterKind::arrived, {"seen by the surgeon at 19:00"}, {}, {}, {}};
  CHECK(left().empty());
}

TEST_CASE("C14: the third visit in a row without an impression is named; one in between begins the count anew") {
  const model::Exam with = visit(1);
  const model::Exam a = visit(2, false);
  const model::Exam b = visit(3, false);
  const model::Exam c = visit(4, false);
  CHECK(open(std::vector<Visit>{{&a, {}}, {&b, {}}}, "2026-11-24").empty());
  CHECK(open(std::vector<Visit>{{&a, {}}, {&b, {}}, {&c, {}}}, "2026-11-24") == "third_visit_without_impression");
  CHECK(open(std::vector<Visit>{{&a, {}}, {&b, {}}, {&with, {}}, {&c, {}}}, "2026-11-24").empty());
}

TEST_CASE("C20, C25: disagreement is counted by what it is about, over both sides and no person; a void exam and what protects a person count for nothing") {
  const auto disagrees = [](model::Exam& exam, const std::string& statement, const std::string& because) {
    if (!exam.disagreed) {
      exam.disagreed.emplace();
    }
    model::Disagreed one;
    one.statement = {statement};
    one.because = {because};
    exam.disagreed->push_back(one);
  };
  model::Exam a = visit(1);
  disagrees(a, "rule.ottawa_knee:left", "walked");
  disagrees(a, "alert.nai", "a fall that was seen");
  model::Exam b = visit(2);
  disagrees(b, "rule.ottawa_knee:right", "not tender");
  disagrees(b, "alert.ces", "an old complaint");
  model::Exam gone = visit(3);
  gone.state = model::ExamState::withdrawn;
  disagrees(gone, "alert.ces", "opened twice");
  const std::vector<const model::Exam*> all{&a, &b, &gone};
  const auto counts = count_disagreed(all, *reference::built_in_edition());
  REQUIRE(counts.size() == 2);
  CHECK(counts[0].statement.text == "alert.ces");
  CHECK(counts[0].count.steps == 1);
  CHECK(counts[1].statement.text == "rule.ottawa_knee");
  CHECK(counts[1].count.steps == 2);
  CHECK(counts[1].because[1].text == "not tender");
}

TEST_CASE("C12: what was there when the exam was signed is no call-back; what became more urgent, or came by a correction, is") {
  std::vector<Alert> then{alert("alert.dvt"), alert("alert.acs", AlertState::withdrawn_by_correction), alert("alert.ces", AlertState::handled)};
  then[0].urgency = Urgency::same_day;
  std::vector<Alert> now{alert("alert.dvt"), alert("alert.acs"), alert("alert.ces"), alert("alert.ali", AlertState::withdrawn_by_correction)};
  now[0].urgency = Urgency::now;
  mark_call_backs(then, now);
  CHECK(now[0].call_back == true);
  CHECK(now[1].call_back == true);
  CHECK_FALSE(now[2].call_back.has_value());
  CHECK_FALSE(now[3].call_back.has_value());
}

}  // namespace limbledger::interpret::open_loops_test

#include "core/service/methods/clinic/district.hpp"

#include "core/report/text.hpp"
#include "core/service/methods/clinic/loops.hpp"
#include "core/service/methods/exam/common.hpp"
#include "core/service/methods/people/dates.hpp"
#include "core/service/methods/say/texts.hpp"

#include <algorithm>
#include <array>
#include <set>

namespace limbledger::service {

namespace {

class Numbers {
 public:
  void add(std::string_view count, const model::ExamId& exam, std::string_view of = {}) {
    const auto found = std::find_if(counts_.begin(), counts_.end(), [&](const CountedNumber& one) { return one.count.text == count && (one.of ? one.of->text : "") == of; });
    CountedNumber& number = found != counts_.end() ? *found : counts_.emplace_back();
    number.count.text = std::string(count);
    if (!of.empty()) {
      number.of = model::Word{std::string(of)};
    }
    if (std::find(number.exams.begin(), number.exams.end(), exam) == number.exams.end()) {
      number.exams.push_back(exam);
      ++number.number.steps;
    }
  }
  // In one order, whatever came first.
  [[nodiscard]] std::vector<CountedNumber> in_order() {
    static constexpr std::array<std::string_view, 15> order{"exams", "people", "setting", "complaint", "unsigned", "alert", "call_back", "alert_without_action", "referral", "referral_unanswered",
                                                            "referral_past_day", "review", "review_overdue", "in_conflict", "third_visit_without_impression"};
    const auto place = [](const CountedNumber& one) { return std::pair(std::find(order.begin(), order.end(), one.count.text) - order.begin(), one.of ? one.of->text : std::string()); };
    std::sort(counts_.begin(), counts_.end(), [&](const CountedNumber& a, const CountedNumber& b) { return place(a) < place(b); });
    return std::move(counts_);
  }

 private:
  std::vector<CountedNumber> counts_;
};

template <class Enum>
[[nodiscard]] std::string_view word_for(Enum value) {
  return wire::type_of<Enum>().words[static_cast<std::size_t>(value)];
}

// An answer, or that the person did not want it: nobody waits for more.
[[nodiscard]] bool is_closed(const model::PlanItem& item) { return item.became == model::Became::answered || item.became == model::Became::declined; }

void count_exam(const JudgedVisit& visit, const model::ExamId& id, Numbers& numbers) {
  numbers.add("exams", id);
  numbers.add("complaint", id, visit.exam.complaint.text);
  numbers.add("setting", id, word_for(visit.exam.setting));
  if (visit.exam.state == model::ExamState::open) {
    numbers.add("unsigned", id);
  }
  std::optional<interpret::Urgency> gravest;
  for (const interpret::Alert& alert : visit.alerts) {
    if (alert.state != interpret::AlertState::withdrawn_by_correction) {
      gravest = gravest && *gravest < alert.urgency ? *gravest : alert.urgency;
    }
  }
  if (gravest) {
    numbers.add("alert", id, word_for(*gravest));
  }
  for (const model::PlanItem& item : visit.exam.plan.value_or(std::vector<model::PlanItem>{})) {
    if (item.kind == model::PlanKind::referral) {
      numbers.add("referral", id);
      if (!is_closed(item)) {
        numbers.add("referral_unanswered", id);
      }
    } else if (item.kind == model::PlanKind::review) {
      numbers.add("review", id);
    }
  }
}

[[nodiscard]] std::string label_of(const CountedNumber& one, const report::Words& words) {
  const std::string label = report::word_of(words, "clinic.count", one.count.text);
  if (!one.of) {
    return label;
  }
  const std::string of = one.count.text == "alert" ? report::word_of(words, "clinic.count_class", one.of->text) : report::word_of(words, one.count.text, one.of->text);
  return words.say("msg.clinic.count_of", {{"label", label, false, true}, {"of", of, false, true}});
}

[[nodiscard]] std::string count_page(const DistrictCountResult& result, const report::Words& words, const std::string& banner) {
  std::string text = banner.empty() ? "" : report::wrapped(banner);
  text += report::wrapped(words.say("msg.clinic.count_title", {{"from", result.from.to_text(), false, true}, {"to", result.to.to_text(), false, true}, {"day", result.as_of.to_text(), false, true}}));
  for (const CountedNumber& one : result.counts) {
    text += report::wrapped(words.say("msg.clinic.count_line", {{"label", label_of(one, words), false, true}, {"number", std::to_string(one.number.steps), true}}), "- ");
  }
  if (result.counts.empty()) {
    text += report::wrapped(words.say("msg.clinic.count_line", {{"label", report::word_of(words, "clinic.count", "exams"), false, true}, {"number", "0", true}}), "- ");
  }
  if (!result.undated.empty()) {
    text += report::wrapped(words.say("msg.clinic.count_undated", {{"exams", std::to_string(result.undated.size()), true}}));
  }
  if (!result.withdrawn.empty()) {
    text += report::wrapped(words.say("msg.clinic.count_withdrawn", {{"exams", std::to_string(result.withdrawn.size()), true}}));
  }
  return text + "\n" + report::wrapped(words.say("msg.clinic.count_end"));
}

}  // namespace

Result<DistrictCountResult> district_count(Context& context, const DistrictCountParams& params) {
  const auto words = words_in(params.language);
  const auto listed = context.desk->records().exams();
  if (!words || !listed) {
    return !words ? words.error() : listed.error();
  }
  DistrictCountResult result;
  result.from = params.from;
  result.to = params.to.value_or(params.from);
  result.as_of = params.as_of ? *params.as_of : today_at_hand(context);
  result.edition = context.desk->edition().id();
  if (result.to.last_day() < result.from.first_day()) {
    return wire::Fault{"value.date_order", "/to", "a day not before from"};
  }
  std::vector<ledger::ListedExam> rows;  // judging folds exams, and may move the list below it
  for (const auto& [id, row] : **listed) {
    const bool here = !params.place || row.place == params.place;
    const auto day = when_done(row).day;
    if (!here || !may_be_within(row, result.from, result.to)) {
      continue;
    }
    if (row.state == model::ExamState::withdrawn) {
      result.withdrawn.push_back(id);
    } else if (!day || day->first_day() < result.from.first_day() || day->last_day() > result.to.last_day()) {
      result.undated.push_back(id);
    } else {
      rows.push_back(row);
    }
  }
  Numbers numbers;
  std::set<std::string> people;
  for (const ledger::ListedExam& row : rows) {
    const auto visit = judge_visit(context, row.exam);
    const auto person = listed_person(context, row.persons);
    if (!visit || !person) {
      return !visit ? visit.error() : person.error();
    }
    count_exam(*visit, row.exam, numbers);
    numbers.add("people", row.exam);
    people.insert(person->persons.empty() ? row.exam.to_text() : person->persons.front().to_text());
  }
  const auto open = loop_list(context, {result.as_of, params.place, std::nullopt});
  if (!open) {
    return open.error();
  }
  for (const OpenPerson& one : open->people) {
    for (const ListedLoop& loop : one.loops) {
      const bool counted = std::any_of(rows.begin(), rows.end(), [&](const ledger::ListedExam& row) { return row.exam == loop.exam; });
      // What is unsigned was counted whenever it was; of withdrawn ones nothing is.
      if (counted && loop.loop != LoopWord::unsigned_exam && loop.loop != LoopWord::withdrawn_alone) {
        numbers.add(word_for(loop.loop), loop.exam);
      }
    }
  }
  result.counts = numbers.in_order();
  for (CountedNumber& one : result.counts) {
    if (one.count.text == "people") {
      one.number.steps = static_cast<std::int64_t>(people.size());
    }
  }
  if (*words != nullptr) {
    result.text = wire::LongText{count_page(result, **words, banner_of(*context.desk, **words))};
  }
  return result;
}

}  // namespace limbledger::service

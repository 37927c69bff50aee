#include "core/service/methods/clinic/district.hpp"

#include "core/ledger/log/log.hpp"
#include "core/report/text.hpp"
#include "core/service/methods/clinic/loops.hpp"
#include "core/service/methods/exam/common.hpp"
#include "core/service/methods/people/dates.hpp"
#include "core/service/methods/say/texts.hpp"
#include "core/wire/write.hpp"

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
    for (CountedNumber& one : counts_) {
      std::sort(one.exams.begin(), one.exams.end());
    }
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

constexpr std::string_view undated_word = "undated";
constexpr std::string_view withdrawn_word = "withdrawn";

// With what stands beside the numbers, for what is kept and compared.
[[nodiscard]] std::vector<CountedNumber> all_of(const DistrictCountResult& result) {
  std::vector<CountedNumber> out = result.counts;
  const auto add = [&](std::string_view word, const std::vector<model::ExamId>& exams) {
    if (!exams.empty()) {
      out.push_back({model::Word{std::string(word)}, std::nullopt, {static_cast<std::int64_t>(exams.size())}, exams});
    }
  };
  add(undated_word, result.undated);
  add(withdrawn_word, result.withdrawn);
  return out;
}

[[nodiscard]] DistrictCountResult as_reported(const ledger::ReportFold& report) {
  DistrictCountResult out;
  out.from = report.said.from;
  out.to = report.said.to;
  out.as_of = report.said.as_of;
  out.edition = report.edition;
  for (CountedNumber& one : numbers_of(report.said)) {
    if (one.count.text == undated_word) {
      out.undated = std::move(one.exams);
    } else if (one.count.text == withdrawn_word) {
      out.withdrawn = std::move(one.exams);
    } else {
      out.counts.push_back(std::move(one));
    }
  }
  return out;
}

[[nodiscard]] std::string report_in_words(const ToldReport& one, const report::Words& words, std::string_view message) {
  return words.say(message, {{"report", std::to_string(one.report.steps), true},
                             {"day", one.as_of.to_text(), false, true},
                             {"by", one.by_name ? one.by_name->text : words.say("msg.clinic.no_examiner")}});
}

[[nodiscard]] Result<std::string> count_page(Context& context, const DistrictCountResult& result, const report::Words& words, bool read_back, bool unchanged = false) {
  const std::string banner = banner_of(*context.desk, words);
  std::string text = banner.empty() ? "" : report::wrapped(banner);
  if (unchanged) {
    text += report::wrapped(words.say("msg.clinic.reported_unchanged", {{"report", std::to_string(result.report->report.steps), true}}));
  }
  text += report::wrapped(words.say("msg.clinic.count_title", {{"from", result.from.to_text(), false, true}, {"to", result.to.to_text(), false, true}, {"day", result.as_of.to_text(), false, true}}));
  if (result.report) {
    text += report::wrapped(report_in_words(*result.report, words, "msg.clinic.reported_as") + (read_back ? " " + words.say("msg.clinic.reported_then") : ""));
    for (const ToldReport& one : result.later.value_or(std::vector<ToldReport>{})) {
      text += report::wrapped(report_in_words(one, words, "msg.clinic.reported_later"));
    }
    if (result.report->incomplete) {
      text += report::wrapped(words.say("msg.clinic.reported_incomplete"));
    }
  }
  for (const CountedNumber& one : result.counts) {
    text += report::wrapped(words.say("msg.clinic.count_line", {{"label", label_of(one.count, one.of, words), false, true}, {"number", std::to_string(one.number.steps), true}}), "- ");
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
  if (result.reported) {
    const auto changes = changes_in_words(context, *result.reported, words);
    if (!changes) {
      return changes.error();
    }
    text += *changes;
  }
  return text + "\n" + report::wrapped(words.say(result.report ? "msg.clinic.reported_end" : "msg.clinic.count_end"));
}

[[nodiscard]] Result<DistrictCountResult> count_now(Context& context, const Period& period, const model::PartialDate& as_of) {
  const auto listed = context.desk->records().exams();
  if (!listed) {
    return listed.error();
  }
  DistrictCountResult result;
  result.from = period.from;
  result.to = period.to;
  result.as_of = as_of;
  result.edition = context.desk->edition().id();
  std::vector<ledger::ListedExam> rows;  // judging folds exams, and may move the list below it
  for (const auto& [id, row] : **listed) {
    const bool here = !period.place || row.place == period.place;
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
  const auto open = loop_list(context, {result.as_of, period.place, std::nullopt});
  if (!open) {
    return open.error();
  }
  for (const OpenPerson& one : open->people) {
    for (const ListedLoop& loop : one.loops) {
      const bool counted = std::any_of(rows.begin(), rows.end(), [&](const ledger::ListedExam& row) { return row.exam == loop.exam; });
      // What is unsigned was counted whenever it was; of withdrawn ones nothing is.
      if (counted && loop.loop != LoopWord::unsigned_exam && loop.loop != LoopWord::withdrawn_alone && loop.loop != LoopWord::planned_after_signature) {
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
  return result;
}

[[nodiscard]] Result<Period> period_of(const model::PartialDate& from, const std::optional<model::PartialDate>& to, const std::optional<model::PlaceId>& place) {
  Period period{from, to.value_or(from), place};
  if (period.to.last_day() < period.from.first_day()) {
    return wire::Fault{"value.date_order", "/to", "a day not before from"};
  }
  return period;
}

// The numbers of a report, what it came after and what came since.
[[nodiscard]] Result<DistrictCountResult> tell(Context& context, const Period& period, const std::vector<ledger::ReportFold>& all, const ledger::ReportFold& report) {
  DistrictCountResult out = as_reported(report);
  out.report = tell_report(context, report);
  for (const ledger::ReportFold& other : all) {
    if (other.is_among(report.said.after)) {
      auto changed = compare(context, period, other, {numbers_of(report.said), &report.said});
      if (!changed) {
        return changed.error();
      }
      if (!out.reported) {
        out.reported.emplace();
      }
      out.reported->push_back(std::move(*changed));
    } else if (other.entry != report.entry && other.said.report.steps >= report.said.report.steps) {
      if (!out.later) {
        out.later.emplace();
      }
      out.later->push_back(tell_report(context, other));
    }
  }
  return out;
}

// By its number, and where two have it by its entry.
[[nodiscard]] Result<const ledger::ReportFold*> chosen(const std::vector<ledger::ReportFold>& all, const DistrictCountParams& params) {
  const ledger::ReportFold* found = nullptr;
  for (const ledger::ReportFold& one : all) {
    if (one.said.report != *params.report || (params.entry && !one.is_among({&*params.entry, 1}))) {
      continue;
    }
    if (found != nullptr) {
      return wire::Fault{"report.several", "/entry", found->entry.to_text() + " or " + one.entry.to_text()};
    }
    found = &one;
  }
  if (found == nullptr) {
    return wire::Fault{"report.unknown", params.entry ? "/entry" : "/report", "a report of this period and place"};
  }
  return found;
}

[[nodiscard]] Result<void> check_shown(const std::vector<ledger::ReportFold>& all, const std::vector<model::EntryId>& seen) {
  for (std::size_t i = 0; i < seen.size(); ++i) {
    if (std::none_of(all.begin(), all.end(), [&](const ledger::ReportFold& one) { return one.is_among({&seen[i], 1}); })) {
      return wire::Fault{"revision.unknown", "/seen/" + std::to_string(i), "the entry of a report of this period and place"};
    }
  }
  for (const ledger::ReportFold* last : last_of(all)) {
    if (!last->is_among(seen)) {
      return wire::Fault{"revision.old", "/seen", "every report that district.count names in reported", last->entry.to_text()};
    }
  }
  return {};
}

[[nodiscard]] std::vector<model::Reached> reached_now(const ledger::Index& index) {
  std::vector<model::Reached> out;
  for (const auto& [replica, leaves] : index.leaves) {
    for (const ledger::Joint& leaf : leaves) {
      out.push_back({replica, {static_cast<std::int64_t>(leaf.seq)}, ledger::entry_id(leaf.hash)});
    }
  }
  return out;
}

// What this very request has reported, where it was made before.
[[nodiscard]] Result<std::optional<ledger::ReportFold>> made_before(Context& context, const DistrictReportParams& params, const Period& period) {
  const ledger::Index& index = context.desk->log().index();
  const auto known = index.requests.find(params.request);
  if (known == index.requests.end()) {
    return std::optional<ledger::ReportFold>();
  }
  auto held = context.desk->records().report(known->second);
  if (!held) {
    return held.error();
  }
  for (ledger::ReportFold& one : *held) {
    const bool same = one.said.from == period.from && one.said.to == period.to && one.said.place == period.place && one.said.after == params.seen && (!params.as_of || one.said.as_of == *params.as_of);
    if (same) {
      return std::optional(std::move(one));
    }
  }
  return wire::Fault{"request.reused", "/request", "a UUID that was not used before"};
}

}  // namespace

Result<DistrictCountResult> district_count(Context& context, const DistrictCountParams& params) {
  const auto words = words_in(params.language);
  const auto period = period_of(params.from, params.to, params.place);
  if (!words || !period) {
    return !words ? words.error() : period.error();
  }
  if (params.report ? params.as_of.has_value() : params.entry.has_value()) {
    return params.report ? wire::Fault{"value.all_or_one", "/as_of", "either report or as_of: a report has its own day"} : wire::Fault{"value.all_or_one", "/entry", "entry together with report"};
  }
  const auto reports = reports_of(context, *period);
  if (!reports) {
    return reports.error();
  }
  Result<DistrictCountResult> result = DistrictCountResult{};
  if (params.report) {
    const auto report = chosen(*reports, params);
    result = report ? tell(context, *period, *reports, **report) : report.error();
  } else {
    result = count_now(context, *period, params.as_of ? *params.as_of : today_at_hand(context));
    if (result) {
      result->revision.emplace();
    }
    for (const ledger::ReportFold* last : result ? last_of(*reports) : std::vector<const ledger::ReportFold*>{}) {
      auto changed = compare(context, *period, *last, {all_of(*result)});
      if (!changed) {
        return changed.error();
      }
      if (!result->reported) {
        result->reported.emplace();
      }
      result->reported->push_back(std::move(*changed));
      result->revision->push_back(last->entry);
    }
  }
  if (result && *words != nullptr) {
    auto page = count_page(context, *result, **words, true);
    if (!page) {
      return page.error();
    }
    result->text = wire::LongText{std::move(*page)};
  }
  return result;
}

Result<DistrictReportResult> district_report(Context& context, const DistrictReportParams& params) {
  const auto words = words_in(params.language);
  const auto period = period_of(params.from, params.to, params.place);
  if (!words || !period) {
    return !words ? words.error() : period.error();
  }
  auto repeated = made_before(context, params, *period);
  auto all = reports_of(context, *period);
  if (!repeated || !all) {
    return !repeated ? repeated.error() : all.error();
  }
  DistrictReportResult result;
  std::optional<model::EntryId> entry;
  if (*repeated) {
    entry = (*repeated)->entry;
    result.repeat = true;
  } else {
    if (auto shown = check_shown(*all, params.seen); !shown) {
      return shown.error();
    }
    const auto counted = count_now(context, *period, params.as_of ? *params.as_of : today_at_hand(context));
    if (!counted) {
      return counted.error();
    }
    const std::vector<CountedNumber> numbers = all_of(*counted);
    const std::vector<const ledger::ReportFold*> last = last_of(*all);
    if (!last.empty() && std::all_of(last.begin(), last.end(), [&](const ledger::ReportFold* one) { return one->whole && same_numbers(numbers_of(one->said), numbers); })) {
      entry = last.front()->entry;
      result.unchanged = true;
    } else {
      model::ReportBody said{period->from, period->to, period->place, {all->empty() ? 1 : all->back().said.report.steps + 1}, counted->as_of, params.seen, reached_now(context.desk->log().index()), {}, {}};
      const model::ObjectId object = context.desk->log().object_for(ledger::ObjectType::report, params.request, 0);
      std::vector<ledger::NewOperation> operations;
      for (const model::ReportBody& part : to_operations(std::move(said), numbers)) {
        operations.push_back(operation_for(context, object, ledger::ObjectType::report, "report", params.request, {}));
        operations.back().body_json = wire::write(part);
      }
      const auto written = write(context, std::move(operations), []() -> Result<void> { return {}; });
      if (!written) {
        return written.error();
      }
      entry = written->entries.back();
      all = reports_of(context, *period);
      if (!all) {
        return all.error();
      }
    }
  }
  for (const ledger::ReportFold* last : result.unchanged ? last_of(*all) : std::vector<const ledger::ReportFold*>{}) {
    result.revision.push_back(last->entry);
  }
  if (!result.unchanged) {
    result.revision = {*entry};
  }
  const auto report = std::find_if(all->begin(), all->end(), [&](const ledger::ReportFold& one) { return one.is_among({&*entry, 1}); });
  if (report == all->end()) {
    return wire::Fault{"report.unknown", "", "a report of this period and place"};
  }
  auto counted = tell(context, *period, *all, *report);
  if (!counted) {
    return counted.error();
  }
  result.report = *counted->report;
  if (*words != nullptr) {
    auto page = count_page(context, *counted, **words, result.repeat.value_or(false), result.unchanged.value_or(false));
    if (!page) {
      return page.error();
    }
    result.text = wire::LongText{std::move(*page)};
  }
  result.counted = std::move(*counted);
  return result;
}

}  // namespace limbledger::service

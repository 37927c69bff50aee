#include "core/service/methods/clinic/reported.hpp"

#include "core/ledger/fold/records.hpp"
#include "core/ledger/log/had.hpp"
#include "core/ledger/log/log.hpp"
#include "core/report/text.hpp"
#include "core/service/desk.hpp"
#include "core/service/methods/say/names.hpp"
#include "core/service/methods/say/texts.hpp"

#include <algorithm>
#include <iterator>
#include <map>
#include <set>

namespace limbledger::service {

namespace {

// Of exams in one operation; its other members and its envelope have the rest of 64 KiB (about 120 replicas, or 300 counts).
constexpr std::size_t exam_bytes_max = 40'000;
constexpr std::size_t bytes_of_an_exam = 29;   // the id, quotes and comma
constexpr std::size_t bytes_of_a_group = 25;
constexpr std::size_t bytes_of_a_place = 6;
// Of one report on a page; the reply names them all. Our convention.
constexpr std::size_t exam_lines_max = 50;

[[nodiscard]] ledger::Had had_at(Context& context, const model::ReportBody* said) {
  return said != nullptr ? ledger::Had(said->had, context.desk->log().index(), context.desk->store()) : ledger::Had();
}

[[nodiscard]] bool is_within(const ledger::ListedExam& row, const Period& period) {
  const auto day = when_done(row).day;
  return row.state != model::ExamState::withdrawn && (!period.place || row.place == period.place) && day && day->first_day() >= period.from.first_day() && day->last_day() <= period.to.last_day();
}

// Why exams came or went, by what the record held then and holds now.
class Reasons {
 public:
  Reasons(Context& context, const Period& period, const model::ReportBody& then, const model::ReportBody* now)
      : context_(context), period_(period), then_(had_at(context, &then)), now_(had_at(context, now)) {}

  [[nodiscard]] std::vector<ChangedExam> of(const std::vector<model::ExamId>& exams) {
    std::vector<ChangedExam> out;
    for (const model::ExamId& exam : exams) {
      const auto known = why_.find(exam);
      const std::string why = known != why_.end() ? known->second : why_.emplace(exam, found_for(exam)).first->second;
      out.push_back({exam, why.empty() ? std::nullopt : std::optional(model::Word{why})});
    }
    return out;
  }

  // Of exams counted both times, those whose person stands with others than then.
  [[nodiscard]] Result<std::vector<ChangedExam>> regrouped(const std::vector<model::ExamId>& both) {
    const auto links_then = context_.desk->records().links_by(then_);
    const auto links_now = context_.desk->records().links_by(now_);
    if (!links_then || !links_now) {
      return !links_then ? links_then.error() : links_now.error();
    }
    struct Stands {
      std::vector<model::PersonId> persons_then, persons_now;
      std::string then, now;
    };
    std::map<model::ExamId, Stands> all;
    std::map<std::string, std::set<model::ExamId>> with_then, with_now;
    const auto key = [](const model::ExamId& exam, const std::vector<model::PersonId>& persons, const ledger::LinkFold& links) {
      return persons.size() == 1 ? links.group_of(persons.front()).begin()->to_text() : exam.to_text();
    };
    for (const model::ExamId& exam : both) {
      const auto before = context_.desk->records().exam_by(exam, then_);
      const auto after = context_.desk->records().exam_by(exam, now_);
      if (!before || !after || !*before || !*after) {
        continue;
      }
      Stands& one = all[exam];
      one.persons_then = (*before)->persons;
      one.persons_now = (*after)->persons;
      one.then = key(exam, one.persons_then, *links_then);
      one.now = key(exam, one.persons_now, *links_now);
      with_then[one.then].insert(exam);
      with_now[one.now].insert(exam);
    }
    std::vector<ChangedExam> out;
    for (const auto& [exam, one] : all) {
      const std::set<model::ExamId>& before = with_then[one.then];
      const std::set<model::ExamId>& after = with_now[one.now];
      if (before == after) {
        continue;
      }
      std::optional<model::Word> why;
      if (one.persons_then != one.persons_now) {
        why = model::Word{"moved"};
      } else if (one.persons_now.size() == 1) {
        const auto group_then = links_then->group_of(one.persons_then.front());
        const auto group_now = links_now->group_of(one.persons_now.front());
        if (group_then == group_now) {
          continue;  // another exam was moved, and is named itself
        }
        why = model::Word{std::includes(group_now.begin(), group_now.end(), group_then.begin(), group_then.end()) ? "linked" : "separated"};
      }
      out.push_back({exam, why});
    }
    return out;
  }

 private:
  [[nodiscard]] std::string found_for(const model::ExamId& exam) {
    const auto operations = context_.desk->log().operations(model::as_object(exam));
    const auto before = context_.desk->records().exam_by(exam, then_);
    const auto after = context_.desk->records().exam_by(exam, now_);
    if (!operations || !before || !after || !*after) {
      return {};
    }
    if (std::any_of(operations->begin(), operations->end(), [&](const ledger::Opened& one) { return !then_.can_tell(one) || !now_.can_tell(one); })) {
      return {};
    }
    if (!*before) {
      return "arrived";
    }
    if ((*before)->state != (*after)->state && (*after)->state == model::ExamState::withdrawn) {
      return "withdrawn";
    }
    if (is_within(**before, period_) != is_within(**after, period_)) {
      return period_.place && (*before)->place != (*after)->place ? "place" : "dated";
    }
    const bool more = std::any_of(operations->begin(), operations->end(), [&](const ledger::Opened& one) { return now_(one) && !then_(one); });
    return more ? "recorded" : "judged";
  }

  Context& context_;
  const Period& period_;
  ledger::Had then_;
  ledger::Had now_;
  std::map<model::ExamId, std::string> why_;
};

[[nodiscard]] const CountedNumber* same_kind(const std::vector<CountedNumber>& numbers, const CountedNumber& wanted) {
  const auto found = std::find_if(numbers.begin(), numbers.end(), [&](const CountedNumber& one) { return one.count == wanted.count && one.of == wanted.of; });
  return found == numbers.end() ? nullptr : &*found;
}

[[nodiscard]] std::vector<model::ExamId> sorted_exams(const CountedNumber* one) {
  std::vector<model::ExamId> out = one != nullptr ? one->exams : std::vector<model::ExamId>{};
  std::sort(out.begin(), out.end());
  return out;
}

[[nodiscard]] std::string listed_day(Context& context, const model::ExamId& exam, const report::Words& words) {
  const auto listed = context.desk->records().exams();
  const auto row = listed ? (*listed)->find(exam) : std::map<model::ExamId, ledger::ListedExam>::const_iterator();
  const auto day = listed && row != (*listed)->end() ? when_done(row->second).day : std::nullopt;
  return day ? day->to_text() : words.say("msg.clinic.day_unknown");
}

}  // namespace

std::vector<CountedNumber> numbers_of(const model::ReportBody& said) {
  std::vector<CountedNumber> out;
  for (const model::ReportedNumber& one : said.counts) {
    out.push_back({one.count, one.of, one.number, {}});
  }
  for (const model::ReportedExams& group : said.exams) {
    for (const auto& place : group.in) {
      if (static_cast<std::size_t>(place.steps) < out.size()) {
        std::vector<model::ExamId>& exams = out[static_cast<std::size_t>(place.steps)].exams;
        exams.insert(exams.end(), group.exams.begin(), group.exams.end());
      }
    }
  }
  for (CountedNumber& one : out) {
    std::sort(one.exams.begin(), one.exams.end());
  }
  return out;
}

bool same_numbers(const std::vector<CountedNumber>& a, const std::vector<CountedNumber>& b) {
  return a.size() == b.size() && std::all_of(a.begin(), a.end(), [&](const CountedNumber& one) {
           const CountedNumber* other = same_kind(b, one);
           return other != nullptr && other->number == one.number && sorted_exams(other) == sorted_exams(&one);
         });
}

std::vector<model::ReportBody> to_operations(model::ReportBody said, const std::vector<CountedNumber>& numbers) {
  using Places = std::vector<std::size_t>;
  std::map<model::ExamId, Places> in;
  for (std::size_t i = 0; i < numbers.size(); ++i) {
    said.counts.push_back({numbers[i].count, numbers[i].of, numbers[i].number});
    for (const model::ExamId& exam : numbers[i].exams) {
      in[exam].push_back(i);
    }
  }
  std::map<Places, std::vector<model::ExamId>> groups;
  for (const auto& [exam, places] : in) {
    groups[places].push_back(exam);
  }
  std::vector<model::ReportBody> out{std::move(said)};
  std::size_t bytes = 0;
  for (const auto& [places, exams] : groups) {
    bool begun = false;
    for (const model::ExamId& exam : exams) {
      const std::size_t more = bytes_of_an_exam + (begun ? 0 : bytes_of_a_group + places.size() * bytes_of_a_place);
      if (bytes + more > exam_bytes_max) {
        const model::ReportBody& first = out.front();
        out.push_back({first.from, first.to, first.place, first.report, first.as_of, {}, {}, {}, {}});
        bytes = 0;
        begun = false;
      }
      if (!begun) {
        bytes += bytes_of_a_group + places.size() * bytes_of_a_place;
        model::ReportedExams& group = out.back().exams.emplace_back();
        for (const std::size_t place : places) {
          group.in.push_back({static_cast<std::int64_t>(place)});
        }
        begun = true;
      }
      bytes += bytes_of_an_exam;
      out.back().exams.back().exams.push_back(exam);
    }
  }
  return out;
}

Result<std::vector<ledger::ReportFold>> reports_of(Context& context, const Period& period) {
  const auto listed = context.desk->records().reports();
  if (!listed) {
    return listed.error();
  }
  std::set<model::ObjectId> objects;
  for (const ledger::ListedReport& one : *listed) {
    if (one.row.from.first_day() == period.from.first_day() && one.row.to.last_day() == period.to.last_day() && one.row.place == period.place) {
      objects.insert(one.object);
    }
  }
  std::vector<ledger::ReportFold> out;
  for (const model::ObjectId& object : objects) {
    auto folds = context.desk->records().report(object);
    if (!folds) {
      return folds.error();
    }
    std::move(folds->begin(), folds->end(), std::back_inserter(out));
  }
  std::sort(out.begin(), out.end(), [](const ledger::ReportFold& a, const ledger::ReportFold& b) {
    return std::pair(a.said.report.steps, a.entry) < std::pair(b.said.report.steps, b.entry);
  });
  return out;
}

std::vector<const ledger::ReportFold*> last_of(const std::vector<ledger::ReportFold>& reports) {
  std::vector<const ledger::ReportFold*> out;
  for (const ledger::ReportFold& one : reports) {
    const bool followed = std::any_of(reports.begin(), reports.end(), [&](const ledger::ReportFold& later) { return one.is_among(later.said.after); });
    if (!followed) {
      out.push_back(&one);
    }
  }
  return out;
}

ToldReport tell_report(Context& context, const ledger::ReportFold& report) {
  ToldReport out{report.said.report, report.entry, report.said.as_of, report.edition, report.at, report.by, std::nullopt, report.said.after};
  if (report.by) {
    out.by_name = wire::Remark{examiner_in_words(context, *report.by)};
  }
  if (!report.whole) {
    out.incomplete = true;
  }
  return out;
}

Result<Reported> compare(Context& context, const Period& period, const ledger::ReportFold& then, const NumbersAt& now) {
  Reported out{tell_report(context, then), {}};
  const std::vector<CountedNumber> before = numbers_of(then.said);
  std::vector<CountedNumber> kinds = now.numbers;
  for (const CountedNumber& one : before) {
    if (same_kind(kinds, one) == nullptr) {
      kinds.push_back({one.count, one.of, {}, {}});
    }
  }
  Reasons reasons(context, period, then.said, now.said);
  for (const CountedNumber& kind : kinds) {
    const CountedNumber* was = same_kind(before, kind);
    const std::vector<model::ExamId> exams_then = sorted_exams(was);
    const std::vector<model::ExamId> exams_now = sorted_exams(&kind);
    std::vector<model::ExamId> came, went, both;
    std::set_difference(exams_now.begin(), exams_now.end(), exams_then.begin(), exams_then.end(), std::back_inserter(came));
    if (then.whole) {
      std::set_difference(exams_then.begin(), exams_then.end(), exams_now.begin(), exams_now.end(), std::back_inserter(went));
    } else {
      came.clear();  // which of them had been there cannot be read
    }
    const wire::Count<0, 1000000> number_then = was != nullptr ? was->number : wire::Count<0, 1000000>{};
    if (number_then == kind.number && came.empty() && went.empty()) {
      continue;
    }
    ChangedNumber changed{kind.count, kind.of, number_then, kind.number, reasons.of(came), reasons.of(went)};
    if (kind.count.text == "people") {
      std::set_intersection(exams_now.begin(), exams_now.end(), exams_then.begin(), exams_then.end(), std::back_inserter(both));
      auto regrouped = reasons.regrouped(both);
      if (!regrouped) {
        return regrouped.error();
      }
      if (!regrouped->empty()) {
        changed.regrouped = std::move(*regrouped);
      }
    }
    out.changes.push_back(std::move(changed));
  }
  return out;
}

std::string label_of(const model::Word& count, const std::optional<model::Word>& of, const report::Words& words) {
  const std::string label = report::word_of(words, "clinic.count", count.text);
  if (!of) {
    return label;
  }
  const std::string which = count.text == "alert" ? report::word_of(words, "clinic.count_class", of->text) : report::word_of(words, count.text, of->text);
  return words.say("msg.clinic.count_of", {{"label", label, false, true}, {"of", which, false, true}});
}

Result<std::string> changes_in_words(Context& context, const std::vector<Reported>& reported, const report::Words& words) {
  std::string text;
  if (reported.size() > 1) {
    text += report::wrapped(words.say("msg.clinic.reported_several", {{"reports", std::to_string(reported.size()), true}}));
  }
  for (const Reported& one : reported) {
    const std::string by = one.report.by_name ? one.report.by_name->text : words.say("msg.clinic.no_examiner");
    text += "\n" + report::wrapped(words.say(one.changes.empty() ? "msg.clinic.reported_same" : "msg.clinic.reported_since",
                                             {{"report", std::to_string(one.report.report.steps), true}, {"day", one.report.as_of.to_text(), false, true}, {"by", by}}));
    if (one.report.incomplete) {
      text += report::wrapped(words.say("msg.clinic.reported_incomplete"));
    }
    std::set<std::pair<model::ExamId, std::string>> named;
    for (const ChangedNumber& changed : one.changes) {
      text += report::wrapped(words.say("msg.clinic.reported_change", {{"label", label_of(changed.count, changed.of, words), false, true},
                                                                       {"then", std::to_string(changed.then.steps), true},
                                                                       {"now", std::to_string(changed.now.steps), true},
                                                                       {"came", std::to_string(changed.came.size()), true},
                                                                       {"went", std::to_string(changed.went.size()), true}}),
                              "- ");
      for (const auto& list : {changed.came, changed.went, changed.regrouped.value_or(std::vector<ChangedExam>{})}) {
        for (const ChangedExam& exam : list) {
          named.emplace(exam.exam, exam.why ? exam.why->text : "untold");
        }
      }
    }
    std::size_t lines = 0;
    for (const auto& [exam, why] : named) {
      if (++lines > exam_lines_max) {
        text += report::wrapped(words.say("msg.clinic.reported_more", {{"exams", std::to_string(named.size() - exam_lines_max), true}}), "    ");
        break;
      }
      text += report::wrapped(words.say("msg.clinic.reported_exam", {{"exam", exam.to_text(), false, true},
                                                                     {"day", listed_day(context, exam, words), false, true},
                                                                     {"why", report::word_of(words, "clinic.reported_why", why), false, true}}),
                              "    ");
    }
  }
  return text;
}

}  // namespace limbledger::service

// A count as it was reported, in the ledger: one or several operations of one request under an object of its own. Rule 10 of the format.
// Everything here is invented.
#include "core/ledger/fold/records.hpp"
#include "core/ledger/log/had.hpp"
#include "core/service/methods/clinic/reported.hpp"
#include "tests/unit/ledger/kept_store.hpp"
#include "tests/unit/ledger/two_writers.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>

namespace limbledger::ledger::fold_test {

namespace {

model::PartialDate month() {
  model::PartialDate out;
  REQUIRE(model::PartialDate::from_text("2026-11", out).empty());
  return out;
}

model::ReportBody november(std::int64_t number, std::vector<model::EntryId> after = {}) { return {month(), month(), std::nullopt, {number}, month(), std::move(after), {}, {}, {}}; }

// Every exam is in the first number, every third in the second as well.
std::vector<service::CountedNumber> two_numbers(unsigned exams) {
  std::vector<service::CountedNumber> out{{{"exams"}, std::nullopt, {static_cast<std::int64_t>(exams)}, {}}, {{"complaint"}, model::Word{"acute_knee"}, {}, {}}};
  for (unsigned i = 0; i < exams; ++i) {
    out[0].exams.push_back(exam_of(10'000 + i));
    if (i % 3 == 0) {
      out[1].exams.push_back(out[0].exams.back());
    }
  }
  out[1].number.steps = static_cast<std::int64_t>(out[1].exams.size());
  return out;
}

std::vector<Opened> write_report(DeviceWriter& device, unsigned number, const std::vector<model::ReportBody>& parts) {
  std::vector<NewOperation> operations;
  for (const model::ReportBody& part : parts) {
    NewOperation operation;
    operation.request = DeviceWriter::request_of(number);
    operation.object = device.log().object_for(ObjectType::report, operation.request, 0);
    operation.type = ObjectType::report;
    operation.op = "report";
    operation.by = device.examiner();
    operation.body_json = wire::write(part);
    operations.push_back(operation);
  }
  auto written = device.log().append(operations, model::EditionId{"facts.test"}, nullptr);
  REQUIRE_MESSAGE(written.has_value(), (written ? std::string() : written.error().faults.front().code));
  return std::move(*written);
}

Identity of_first_device() {
  Identity identity{test_clinic(), SignKey(secret_of(11)), {}, BlobKey(secret_of(3))};
  identity.epochs.emplace(1, BoxPair(secret_of(2)));
  return identity;
}

Opened addendum(Log& log, const model::ExamId& exam, unsigned request, const model::EntryId& after) {
  NewOperation operation;
  operation.object = model::as_object(exam);
  operation.op = "addendum";
  operation.request = DeviceWriter::request_of(request);
  operation.after = {after};
  operation.body_json = R"({"kind":"text","reason":"r","text":"t"})";
  const auto written = log.append({&operation, 1}, model::EditionId{"facts.test"}, nullptr);
  REQUIRE(written.has_value());
  return written->front();
}

}  // namespace

TEST_CASE("of a device that was put back, what had been there is told by the branch: not by the place alone") {
  DeviceWriter device(1);
  const model::ExamId exam = exam_of(77);
  const Opened opening = device.act(exam, "exam", open_body, {});
  test::KeptStore copy(device.store());
  service::test::FixedWorld world(9);
  auto put_back = Log::open(copy, world, of_first_device());
  REQUIRE(put_back.has_value());
  const std::vector<Opened> lost{addendum(device.log(), exam, 801, opening.entry()), addendum(device.log(), exam, 802, opening.entry())};
  const std::vector<Opened> later{addendum(**put_back, exam, 811, opening.entry()), addendum(**put_back, exam, 812, opening.entry()), addendum(**put_back, exam, 813, opening.entry())};
  REQUIRE(lost[1].seq() == later[1].seq());
  test::KeptStore both(device.store());
  for (const Row& row : copy.rows) {
    if (std::none_of(both.rows.begin(), both.rows.end(), [&](const Row& known) { return known.hash == row.hash; })) {
      both.rows.push_back(row);
    }
  }
  both.all.newest.insert(both.all.newest.end(), copy.all.newest.begin(), copy.all.newest.end());
  both.all.kept = both.all.newest;
  const auto log = Log::open(both, world, of_first_device());
  REQUIRE(log.has_value());
  REQUIRE((*log)->index().leaves.at(opening.replica()).size() == 2);
  const auto had_at = [&](const Opened& end) {
    const model::Reached reached{opening.replica(), {static_cast<std::int64_t>(end.seq())}, end.entry()};
    return Had({&reached, 1}, (*log)->index(), both);
  };
  const Had by_lost = had_at(lost[1]);
  const Had by_later = had_at(later[1]);
  CHECK(by_lost.can_tell(opening));
  CHECK((by_lost(opening) && by_lost(lost[0]) && by_lost(lost[1])));
  CHECK_FALSE((by_lost(later[0]) || by_lost(later[1]) || by_lost(later[2])));
  CHECK((by_later(opening) && by_later(later[0]) && by_later(later[1])));
  CHECK_FALSE((by_later(later[2]) || by_later(lost[0]) || by_later(lost[1])));
  CHECK(had_at(opening)(opening));
  CHECK_FALSE((had_at(opening)(lost[0]) || had_at(opening)(later[0])));
  // Where that entry is not here any more nothing is told.
  const model::Reached gone{opening.replica(), {static_cast<std::int64_t>(later[1].seq())}, model::EntryId{}};
  CHECK_FALSE(Had({&gone, 1}, (*log)->index(), both).can_tell(opening));
  CHECK((Had()(later[2]) && Had().can_tell(later[2])));
}

TEST_CASE("a month of 2,000 exams goes on in a second operation of the same commit, each under 64 KiB, and reads back as it was, in whatever order it comes") {
  const auto numbers = two_numbers(2000);
  const auto parts = service::to_operations(november(1), numbers);
  REQUIRE(parts.size() == 2);
  std::size_t exams = 0;
  for (const model::ReportBody& part : parts) {
    for (const model::ReportedExams& group : part.exams) {
      exams += group.exams.size();
    }
  }
  CHECK(exams == 2000);  // each once, however many numbers it is in
  DeviceWriter device(1);
  const std::uint64_t before = device.log().index().entry_count;
  const auto written = write_report(device, 5, parts);
  CHECK(device.log().index().entry_count == before + 3);  // with the key
  const auto folds = fold_reports(written);
  REQUIRE(folds.size() == 1);
  CHECK(folds[0].whole);
  CHECK(folds[0].entry == written.back().entry());
  CHECK(service::same_numbers(service::numbers_of(folds[0].said), numbers));
  std::vector<Opened> turned(written.rbegin(), written.rend());
  turned.push_back(written.front());
  const auto again = fold_reports(turned);
  REQUIRE(again.size() == 1);
  CHECK(again[0].said == folds[0].said);
  // Without its second part the numbers still stand, and it says that its lists are not whole.
  const auto part = fold_reports({written.data(), 1});
  REQUIRE(part.size() == 1);
  CHECK_FALSE(part[0].whole);
  CHECK(service::numbers_of(part[0].said)[0].number.steps == 2000);
  CHECK_FALSE(service::same_numbers(service::numbers_of(part[0].said), numbers));
}

TEST_CASE("a year of 24,000 exams in 40 numbers fits into operations of one commit as well") {
  auto numbers = two_numbers(24'000);
  for (int more = 0; more < 38; ++more) {
    numbers.push_back({{"complaint"}, model::Word{"invented_" + std::to_string(more)}, {}, {}});
    for (std::size_t i = static_cast<std::size_t>(more); i < numbers[0].exams.size(); i += 2 + static_cast<std::size_t>(more)) {
      numbers.back().exams.push_back(numbers[0].exams[i]);
    }
    numbers.back().number.steps = static_cast<std::int64_t>(numbers.back().exams.size());
  }
  DeviceWriter device(1);
  const auto written = write_report(device, 5, service::to_operations(november(1), numbers));
  CHECK(written.size() > 18);
  const auto folds = fold_reports(written);
  REQUIRE(folds.size() == 1);
  CHECK(service::same_numbers(service::numbers_of(folds[0].said), numbers));
}

TEST_CASE("a report is of no list and no count of people, and what a device that was put back reports anew under the same request stands beside it") {
  DeviceWriter a(1);
  DeviceWriter b(2);
  Records records(a.log());
  const std::uint64_t people = records.people_changes();
  const std::uint64_t pairs = records.pair_changes();
  records.changed(write_report(a, 5, service::to_operations(november(1), two_numbers(3))));
  CHECK(records.people_changes() == people);
  CHECK(records.pair_changes() == pairs);
  CHECK((*records.exams())->empty());
  CHECK((*records.persons())->empty());
  REQUIRE(records.reports()->size() == 1);
  // The same request from elsewhere: with the same numbers it is the same report, with others it is another.
  write_report(b, 5, service::to_operations(november(1), two_numbers(4)));
  a.take_from(b);
  const model::ObjectId object = a.log().object_for(ObjectType::report, DeviceWriter::request_of(5), 0);
  records.forget({&object, 1});
  CHECK(records.reports()->size() == 2);
  const auto folds = records.report(object);
  REQUIRE(folds->size() == 2);
  CHECK(std::set<std::int64_t>{(*folds)[0].said.counts[0].number.steps, (*folds)[1].said.counts[0].number.steps} == std::set<std::int64_t>{3, 4});
}

TEST_CASE("what was written on one ledger with reports is listed by another that reads it anew, and by one that had kept its index") {
  DeviceWriter a(1);
  const auto first = write_report(a, 5, service::to_operations(november(1), two_numbers(2)));
  write_report(a, 6, service::to_operations(november(2, {first.back().entry()}), two_numbers(3)));
  const auto listed = [](Log& log) {
    Records records(log);
    std::vector<std::int64_t> out;
    const auto all = records.reports();
    REQUIRE(all.has_value());
    for (const ListedReport& one : *all) {
      out.push_back(one.row.report.steps);
      CHECK(one.row.after.size() == static_cast<std::size_t>(one.row.report.steps - 1));
    }
    std::sort(out.begin(), out.end());
    return out;
  };
  CHECK(listed(a.log()) == std::vector<std::int64_t>{1, 2});
  REQUIRE(a.log().save_index().has_value());
  // None is opened for the lists of exams and people, nor to tell which were made.
  test::KeptStore counted(a.store());
  const auto indexed = Log::open(counted, a.world(), of_first_device());
  REQUIRE(indexed.has_value());
  counted.read_count = 0;
  CHECK(listed(**indexed) == std::vector<std::int64_t>{1, 2});
  CHECK(Records(**indexed).exams().has_value());
  CHECK(counted.read_count == 0);
  for (int times = 0; times < 2; ++times) {
    const auto opened = Log::open(a.store(), a.world(), of_first_device());
    REQUIRE(opened.has_value());
    CHECK(listed(**opened) == std::vector<std::int64_t>{1, 2});
    // The second time nothing of the index is there.
    Meta none;
    none["index"] = {};
    REQUIRE(a.store().append({}, {}, none).has_value());
  }
}

}  // namespace limbledger::ledger::fold_test

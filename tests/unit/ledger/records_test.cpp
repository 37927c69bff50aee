// What is kept of folded records: so many, and never at the cost of the one at work.
#include "core/ledger/fold/records.hpp"
#include "core/wire/write.hpp"
#include "tests/unit/service/desk_fixture.hpp"

#include <algorithm>
#include <vector>

namespace limbledger::ledger {

namespace {

std::vector<model::ExamId> opened_exams(service::test::DeskFixture& desk, unsigned count) {
  std::vector<model::ExamId> out;
  for (unsigned i = 0; i < count; ++i) {
    const std::string answer = desk.ok("exam.open", R"({"complaint":"free","setting":"outreach","request":")" + service::test::request_id(i + 1) + "\"}");
    model::ExamId id;
    REQUIRE(model::ExamId::from_text(service::test::at(answer, "/exam/exam"), id).empty());
    out.push_back(id);
  }
  std::sort(out.begin(), out.end());
  return out;
}

}  // namespace

TEST_CASE("of the folded exams the one at work stays, and what was let go is folded again to the same") {
  service::test::DeskFixture desk;
  const std::vector<model::ExamId> ids = opened_exams(desk, 70);
  Records& records = desk.desk->records();
  const auto at_work = records.exam(ids.front());
  REQUIRE(at_work.has_value());
  const auto last = records.exam(ids.back());
  REQUIRE(last.has_value());
  const std::string last_said = wire::write((*last)->fold.exam);
  for (std::size_t i = 1; i + 1 < ids.size(); ++i) {
    REQUIRE(records.exam(ids[i]).has_value());
    const auto again = records.exam(ids.front());
    REQUIRE(again.has_value());
    REQUIRE(*again == *at_work);
  }
  const auto folded_again = records.exam(ids.back());
  REQUIRE(folded_again.has_value());
  CHECK(wire::write((*folded_again)->fold.exam) == last_said);
}

}  // namespace limbledger::ledger

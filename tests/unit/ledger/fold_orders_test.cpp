// The fold is a function of the set: every order, every repetition and every grouping of up to five operations by two and
// by three writers gives one state, and so does taking them in pieces. Exhaustive, not sampled.
#include "tests/unit/ledger/two_writers.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <functional>

namespace limbledger::ledger::fold_test {

namespace {

// What kinds of operation a writer may do next, with what it has seen by then.
using Act = std::function<void(DeviceWriter&, const model::ExamId&, unsigned number)>;

std::vector<model::EntryId> shown(DeviceWriter& writer, const model::ExamId& exam) {
  const auto fold = writer.fold(exam);
  return fold ? *fold->exam.revision : std::vector<model::EntryId>{};
}

std::vector<model::EntryId> standing(DeviceWriter& writer, const model::ExamId& exam) {
  std::vector<model::EntryId> out;
  const auto fold = writer.fold(exam);
  for (const auto& [finding, heads] : fold->finding_heads) {
    if (finding == finding_of(9000)) {
      out = heads;
    }
  }
  return out;
}

std::vector<model::EntryId> planned(DeviceWriter& writer, const model::ExamId& exam) {
  const auto fold = writer.fold(exam);
  return fold->plan_heads.empty() ? std::vector<model::EntryId>{} : fold->plan_heads.begin()->second;
}

const std::vector<Act>& acts() {
  static const std::vector<Act> all{
      [](DeviceWriter& w, const model::ExamId& e, unsigned n) {
        w.act(e, "finding", flexion(finding_of(9000), 90 + static_cast<int>(n)), shown(w, e), standing(w, e));
      },
      [](DeviceWriter& w, const model::ExamId& e, unsigned n) { w.act(e, "finding", flexion(finding_of(9100 + n), 80 + static_cast<int>(n)), shown(w, e)); },
      [](DeviceWriter& w, const model::ExamId& e, unsigned) { w.act(e, "swap_sides", R"({"reason":"other side"})", shown(w, e)); },
      [](DeviceWriter& w, const model::ExamId& e, unsigned) {
        w.act(e, "withdraw", R"({"finding":")" + finding_of(9000).to_text() + R"(","reason":"not this one"})", shown(w, e), standing(w, e));
      },
      [](DeviceWriter& w, const model::ExamId& e, unsigned) { w.act(e, "sign", R"({"read_aloud":"Invented"})", shown(w, e), {}, true); },
      [](DeviceWriter& w, const model::ExamId& e, unsigned n) {
        w.act(e, "addendum", R"({"kind":"text","reason":"later","text":"word )" + std::to_string(n) + "\"}", shown(w, e), {}, true);
      },
      [](DeviceWriter& w, const model::ExamId& e, unsigned n) {
        model::PersonId person;
        person.bytes.fill(static_cast<std::uint8_t>(n));
        w.act(e, "move", R"({"person":")" + person.to_text() + R"(","reason":"namesake"})", shown(w, e), w.fold(e)->assignment_heads, true);
      },
      [](DeviceWriter& w, const model::ExamId& e, unsigned) { w.act(e, "withdraw", R"({"reason":"void"})", shown(w, e)); },
      [](DeviceWriter& w, const model::ExamId& e, unsigned n) {
        w.act(e, "transfer", R"({"set":{"onset":"hour )" + std::to_string(n) + "\"}}", shown(w, e), w.fold(e)->transfer_heads, true);
      },
      [](DeviceWriter& w, const model::ExamId& e, unsigned n) {
        w.act(e, "disagree", R"({"statement":"rule.ottawa_knee:left","because":"reason )" + std::to_string(n) + "\"}", shown(w, e));
      },
      [](DeviceWriter& w, const model::ExamId& e, unsigned n) {
        w.act(e, "plan", R"({"plan_item":{"plan_item":")" + finding_of(9500).to_text() + R"(","kind":"referral","text":"clinic )" + std::to_string(n) + "\"}}",
              shown(w, e), planned(w, e));
      },
      [](DeviceWriter& w, const model::ExamId& e, unsigned n) {
        w.act(e, "became", R"({"plan_item":")" + finding_of(9500).to_text() + R"(","became":")" + (n == 1 ? "sent" : "lost") + "\"}", shown(w, e), planned(w, e));
      },
      [](DeviceWriter& w, const model::ExamId& e, unsigned n) {
        w.act(e, "countersign", R"({"remark":"seen )" + std::to_string(n) + "\"}", shown(w, e), {}, true);
      },
      [](DeviceWriter& w, const model::ExamId& e, unsigned n) {
        w.act(e, "put_off", R"({"about":"finding","entries":)" + wire::write(standing(w, e)) + R"(,"asked":"whoever examined, )" + std::to_string(n) + R"(","look_again":"2026-12-01"})", shown(w, e));
      },
  };
  return all;
}

// Every order of the operations, some repeated, folded at once; and every way of giving them in two groups.
void check_all_orders(DeviceWriter& any, const model::ExamId& exam, std::vector<Opened> operations, std::size_t& folds) {
  const std::string wanted = said(any.fold_of(exam, operations));
  const Hash digest = state_digest(model::as_object(exam), operations);
  std::vector<std::size_t> order(operations.size());
  for (std::size_t i = 0; i < order.size(); ++i) {
    order[i] = i;
  }
  bool same = true;
  do {
    std::vector<Opened> turned;
    for (const std::size_t i : order) {
      turned.push_back(operations[i]);
    }
    same = same && said(any.fold_of(exam, turned)) == wanted && state_digest(model::as_object(exam), turned) == digest;
    for (std::size_t twice = 0; twice < turned.size(); ++twice) {
      std::vector<Opened> repeated = turned;
      repeated.push_back(turned[twice]);
      same = same && said(any.fold_of(exam, repeated)) == wanted;
      ++folds;
    }
    ++folds;
  } while (same && std::next_permutation(order.begin(), order.end()));
  CHECK_MESSAGE(same, "an order or a repetition changed the state");
}

}  // namespace

TEST_CASE("every order and repetition of five operations by two writers who did not know each other gives one state") {
  std::size_t folds = 0;
  const std::size_t kinds = acts().size();
  unsigned exam_number = 40000;
  for (std::size_t first = 0; first < kinds; ++first) {
    for (std::size_t second = 0; second < kinds; ++second) {
      DeviceWriter a(1);
      DeviceWriter b(2);
      const model::ExamId exam = exam_of(++exam_number);
      const Opened opening = a.act(exam, "exam", open_body, {}, {}, false, exam_number);
      a.act(exam, "finding", flexion(finding_of(9000), 100), {opening.entry()});
      b.take_from(a);
      a.take_from(b);
      acts()[first](a, exam, 1);
      acts()[second](b, exam, 2);
      acts()[(first + second) % kinds](a, exam, 3);
      a.take_from(b);
      b.take_from(a);
      const auto operations = a.operations(exam);
      REQUIRE(operations.size() == 5);
      CHECK(said(a.fold(exam)) == said(b.fold(exam)));
      check_all_orders(a, exam, operations, folds);
    }
  }
  CHECK(folds == kinds * kinds * 120 * 6);
}

TEST_CASE("every order and repetition of operations by three writers gives one state") {
  std::size_t folds = 0;
  const std::size_t kinds = acts().size();
  unsigned exam_number = 50000;
  for (std::size_t first = 0; first < kinds; ++first) {
    DeviceWriter a(1);
    DeviceWriter b(2);
    DeviceWriter c(3);
    const model::ExamId exam = exam_of(++exam_number);
    const Opened opening = a.act(exam, "exam", open_body, {}, {}, false, exam_number);
    a.act(exam, "finding", flexion(finding_of(9000), 100), {opening.entry()});
    for (DeviceWriter* other : {&b, &c}) {
      other->take_from(a);
    }
    b.take_from(c);
    c.take_from(b);
    a.take_from(b);
    a.take_from(c);
    acts()[first](a, exam, 1);
    acts()[(first + 1) % kinds](b, exam, 2);
    acts()[(first + 2) % kinds](c, exam, 3);
    a.take_from(b);
    a.take_from(c);
    const auto operations = a.operations(exam);
    REQUIRE(operations.size() == 5);
    check_all_orders(a, exam, operations, folds);
  }
  CHECK(folds == kinds * 120 * 6);
}

TEST_CASE("taking the other writer's commits in any grouping gives the state of taking them at once") {
  for (unsigned cut = 0; cut < 32; ++cut) {
    DeviceWriter a(1);
    DeviceWriter b(2);
    DeviceWriter whole(3);
    const model::ExamId exam = exam_of(60000 + cut);
    a.act(exam, "exam", open_body, {}, {}, false, 60000 + cut);
    b.take_from(a);
    whole.take_from(a);
    for (unsigned i = 0; i < 5; ++i) {
      acts()[i](a, exam, i + 1);
      if ((cut >> i & 1U) != 0) {
        b.take_from(a);
        b.take_from(a);  // once more changes nothing
      }
    }
    b.take_from(a);
    whole.take_from(a);
    CHECK(said(b.fold(exam)) == said(whole.fold(exam)));
    CHECK(said(b.fold(exam)) == said(a.fold(exam)));
  }
}

namespace {

// Entries as they reach one reader, one by one: how often the fold grew. Whenever it does, it is what a fold of all so far says.
std::size_t grown_one_by_one(DeviceWriter& any, const model::ExamId& exam, const std::vector<Opened>& operations) {
  std::size_t grown = 0;
  std::optional<ExamFold> fold;
  for (std::size_t count = 1; count <= operations.size(); ++count) {
    const std::span<const Opened> so_far(operations.data(), count);
    const auto whole = any.fold_of(exam, so_far);
    if (fold && grow_exam(*fold, so_far)) {
      CHECK(*fold == *whole);
      ++grown;
    }
    fold = whole;
  }
  return grown;
}

// What else is in an exam, beside the acts of all: what was done about an alert, and what was written to others.
const std::vector<Act>& told_of_later_findings() {
  static const std::vector<Act> all{
      [](DeviceWriter& w, const model::ExamId& e, unsigned) {
        w.act(e, "alert_handled", R"({"alert":"alert.septic_adult","side":"left","urgent":true,"action":"called"})", shown(w, e));
      },
      [](DeviceWriter& w, const model::ExamId& e, unsigned) {
        w.act(e, "letter", R"({"letter":")" + finding_of(9600).to_text() + R"(","question":"Broken?","language":"en","page":{"title":"LETTER","who":"Invented","examined":"today","head":[],"sections":[]}})",
              shown(w, e));
      },
  };
  return all;
}

}  // namespace

TEST_CASE("an exam grown by a finding is the exam folded anew, whatever two writers did before it and in whatever order it came") {
  std::vector<Act> all = acts();
  all.insert(all.end(), told_of_later_findings().begin(), told_of_later_findings().end());
  std::size_t grown = 0;
  unsigned exam_number = 70000;
  for (const Act& first : all) {
    for (const Act& second : all) {
      DeviceWriter a(1);
      DeviceWriter b(2);
      const model::ExamId exam = exam_of(++exam_number);
      const Opened opening = a.act(exam, "exam", open_body, {}, {}, false, exam_number);
      a.act(exam, "finding", flexion(finding_of(9000), 100), {opening.entry()});
      b.take_from(a);
      first(a, exam, 1);
      second(b, exam, 2);
      acts()[1](a, exam, 3);  // has not seen what the other did
      a.take_from(b);
      acts()[1](a, exam, 4);
      a.act(exam, "finding", flexion(finding_of(9700), 95, "right"), shown(a, exam));
      std::vector<Opened> order = a.operations(exam);
      for (std::size_t turns = 0; turns < order.size(); ++turns) {
        grown += grown_one_by_one(a, exam, order);
        std::rotate(order.begin(), order.begin() + 1, order.end());
      }
      std::sort(order.begin(), order.end(), [](const Opened& one, const Opened& other) { return one.stamp() < other.stamp(); });
      grown += grown_one_by_one(a, exam, order);
    }
  }
  CHECK(grown > all.size() * all.size());
}

TEST_CASE("what hangs on a finding that came later makes the fold anew: what was handled, written, signed or set against another") {
  const auto grows = [](const std::vector<Act>& before, bool seen, unsigned request = 7) {
    DeviceWriter a(1);
    const model::ExamId exam = exam_of(80000);
    const Opened opening = a.act(exam, "exam", open_body, {}, {}, false, 80000);
    a.act(exam, "finding", flexion(finding_of(9000), 100), {opening.entry()});
    for (const Act& one : before) {
      one(a, exam, 1);
    }
    auto fold = a.fold(exam);
    a.act(exam, "finding", flexion(finding_of(9700), 95, "right"), seen ? shown(a, exam) : std::vector<model::EntryId>{opening.entry()}, {}, false, request);
    const bool grown = grow_exam(*fold, a.operations(exam));
    CHECK((!grown || *fold == *a.fold(exam)));
    return grown;
  };
  const Act beside_it = [](DeviceWriter& w, const model::ExamId& e, unsigned) {
    w.act(e, "finding", flexion(finding_of(9800), 60), {w.operations(e).front().entry()}, {}, false, 9);
  };
  CHECK(grows({}, true));
  CHECK(grows({acts()[0], acts()[2], acts()[10]}, true));  // corrected, sides exchanged, planned
  CHECK_FALSE(grows({}, false));
  CHECK_FALSE(grows({acts()[4]}, true));  // signed
  CHECK_FALSE(grows({acts()[7]}, true));  // withdrawn
  CHECK_FALSE(grows({told_of_later_findings()[0]}, true));
  CHECK_FALSE(grows({told_of_later_findings()[1]}, true));
  CHECK_FALSE(grows({beside_it}, true));     // a conflict that nobody has settled
  CHECK_FALSE(grows({acts()[1]}, true, 10003));  // one request, two contents
}

TEST_CASE("a finding by a clock behind that of what its writer had seen takes its place in the order of display") {
  DeviceWriter ahead(1);
  DeviceWriter behind(2);
  const model::ExamId exam = exam_of(81000);
  ahead.act(exam, "exam", open_body, {}, {}, false, 81000);
  behind.take_from(ahead);
  ahead.world().pass(72LL * 3600 * 1000);
  const Opened shown_first = ahead.act(exam, "finding", flexion(finding_of(9000), 100), shown(ahead, exam));
  const Opened answer = behind.act(exam, "finding", flexion(finding_of(9000), 90), {behind.operations(exam).front().entry()});
  REQUIRE(answer.stamp() < shown_first.stamp());
  // As if its writer had seen the other: a device whose clock went back writes so.
  std::vector<Opened> operations = ahead.operations(exam);
  auto fold = ahead.fold_of(exam, operations);
  fold->exam.revision->assign(answer.operation().after.begin(), answer.operation().after.end());
  operations.push_back(answer);
  CHECK_FALSE(grow_exam(*fold, operations));
}

}  // namespace limbledger::ledger::fold_test

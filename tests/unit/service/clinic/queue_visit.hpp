// One visit whose record another device writes into as well, knowing the opening and nothing since; and a line of the queue as it is read.
#pragma once

#include "core/ledger/fold/records.hpp"
#include "core/ledger/log/log.hpp"
#include "tests/unit/service/desk_fixture.hpp"

#include <doctest/doctest.h>

#include <cstdint>
#include <exception>
#include <string>
#include <utility>
#include <vector>

namespace limbledger::service::test::queue_lines {

struct Visit : DeskFixture {
  unsigned requests = 100;
  std::string person;
  std::string exam;
  std::string opened;

  Visit() {
    person = registered("Kofi Invented", "2001-04-02");
    const std::string reply = ok("exam.open", R"({"person":")" + person + R"(","complaint":"acute_knee","side":"left","setting":"outreach","offset_min":180,"injured_on":"2026-11-23",)" + request() + "}");
    exam = at(reply, "/exam/exam");
    opened = at(reply, "/revision/0");
  }
  // Whatever a case has written: the lists are the same after a restart, and after one without a goodbye.
  ~Visit() {
    if (std::uncaught_exceptions() == 0) {
      const std::string before = lists();
      for (const bool crashes : {false, true}) {
        reopen(crashes);
        unlock();
        CHECK(lists() == before);
      }
    }
  }
  Visit(const Visit&) = delete;
  Visit& operator=(const Visit&) = delete;

  [[nodiscard]] std::string lists() const {
    std::string all;
    for (const char* method : {"conflict.list", "loop.list", "person.find", "exam.find"}) {
      const auto said = call(method, "{}");
      all += said ? *said + "\n" : codes_of(said);
    }
    return all;
  }
  std::string request() { return R"("request":")" + request_id(++requests) + "\""; }
  std::string registered(const std::string& name, const std::string& born) {
    return at(ok("person.register", R"({"names":[{"text":")" + name + R"("}],"sex":"male","birth":{"date":")" + born + R"("},"home":"Upper Ford",)" + request() + "}"), "/person/person");
  }
  std::string seen() const { return at(ok("exam.read", R"({"exam":")" + exam + "\"}"), "/revision"); }
  std::string write(const std::string& method, const std::string& more) { return ok(method, R"({"exam":")" + exam + "\"," + more + R"(,"seen":)" + seen() + "," + request() + "}"); }
  std::string findings(const std::string& list) { return write("finding.record", R"("findings":[)" + list + "]"); }
  // As another device would have written it that had been shown the opening and nothing since.
  std::string elsewhere(const std::string& op, const std::string& body, const std::vector<std::string>& replaces = {}) {
    ledger::NewOperation operation;
    model::ExamId id;
    REQUIRE(model::ExamId::from_text(exam, id).empty());
    operation.object = model::as_object(id);
    operation.op = op;
    operation.body_json = body;
    return append(std::move(operation), opened, replaces);
  }
  // The same of the person, by one that had been shown this entry or nothing at all.
  std::string person_elsewhere(const std::string& body, const std::string& shown = {}, const std::vector<std::string>& replaces = {}) {
    ledger::NewOperation operation;
    model::PersonId id;
    REQUIRE(model::PersonId::from_text(person, id).empty());
    operation.object = model::as_object(id);
    operation.type = ledger::ObjectType::person;
    operation.op = "person_change";
    operation.body_json = body;
    return append(std::move(operation), shown, replaces);
  }
  std::string append(ledger::NewOperation operation, const std::string& shown, const std::vector<std::string>& replaces) {
    REQUIRE(model::RequestId::from_text(request_id(900 + ++requests), operation.request).empty());
    if (!shown.empty()) {
      operation.after.emplace_back();
      REQUIRE(model::EntryId::from_text(shown, operation.after.back()).empty());
    }
    for (const std::string& one : replaces) {
      operation.replaces.emplace_back();
      REQUIRE(model::EntryId::from_text(one, operation.replaces.back()).empty());
    }
    operation.by = desk->examiner();
    const auto appended = desk->log().append({&operation, 1}, desk->edition().id(), desk->examiner_key());
    REQUIRE(appended.has_value());
    desk->records().changed(*appended);
    return appended->front().entry().to_text();
  }
  // By the wall clock alone: nothing is locked meanwhile.
  void days_on(std::int64_t days) { world.reading.wall_ms += days * 86'400'000; }
  std::string queue() const { return ok("conflict.list", R"({"language":"en","look_alikes":false})"); }
  std::string line() const { return at(queue(), "/queue/0/text"); }
  std::string note() const { return at(ok("note.write", R"({"exam":")" + exam + "\"}"), "/text"); }
};

// As it is read: without the marks that turn no words, and on one line.
inline bool holds(std::string page, const std::string& words) {
  for (const std::string mark : {"\u2068", "\u2069"}) {
    for (std::size_t at = page.find(mark); at != std::string::npos; at = page.find(mark)) {
      page.erase(at, mark.size());
    }
  }
  std::string flat;
  for (const char c : page) {
    const char next = c == '\n' ? ' ' : c;
    if (next != ' ' || flat.empty() || flat.back() != ' ') {
      flat += next;
    }
  }
  return flat.find(words) != std::string::npos;
}

inline std::string flexion_elsewhere(const std::string& side, int deg) {
  model::FindingId finding;
  finding.bytes.fill(9);
  return R"({"finding":")" + finding.to_text() + R"(","observation":{"item":"knee.flexion_active","side":")" + side + R"(","value":{"kind":"angle","deg":)" + std::to_string(deg) +
         R"(,"toward":"flexion","toward_deg":)" + std::to_string(deg) + R"(},"instrument":"goniometer_long","position":"supine"}})";
}

}  // namespace limbledger::service::test::queue_lines

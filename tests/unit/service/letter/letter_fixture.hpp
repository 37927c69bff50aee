// One invented exam with an impression, a plan and a place, for the tests of the letter and of the take-home sheet.
#pragma once

#include "core/service/desk.hpp"
#include "tests/unit/service/desk_fixture.hpp"

#include <string>

namespace limbledger::service::test {

class LetterFixture {
 public:
  explicit LetterFixture(LedgerKind kind = LedgerKind::clinic, const std::string& send = "yes") : desk(kind) {
    const std::string made = desk.ok("place.amend", R"({"changes":{"name":"Invented Ford","telephones":[{"who":"clinic office","number":"000 111"}]},)" + request() + "}");
    place = at(made, "/places/0/place/place");
    place_entry = at(made, "/places/0/entries/0");
    place_seen = at(made, "/revision");
    person = at(desk.ok("person.register", R"({"names":[{"text":"Kofi Invented"}],"birth":{"date":"2001"},"sex":"male",)" + request() + "}"), "/person/person");
    reply = desk.ok("exam.open", R"({"person":")" + person + R"(","complaint":"acute_knee","side":"left","setting":"outreach","place":")" + place +
                                     R"(","examined_at":"2026-11-24T08:00:00.000Z","offset_min":180,"injured_on":"2026-11-23",)" + request() + "}");
    exam = at(reply, "/exam/exam");
    if (!send.empty()) {
      write("consent.record", R"("consent":{"examine":"yes","record":"yes","send":")" + send + "\"}");
    }
    found = write("finding.record",
                  R"("findings":[{"item":"knee.patella_tender","side":"left","value":{"kind":"answer","answer":"yes"}},)"
                  R"({"item":"history.unexplained_bruises","side":"midline","value":{"kind":"answer","answer":"yes"}},)"
                  R"({"item":"knee.flexion_active","side":"left","value":{"kind":"angle","toward_deg":80},"instrument":"goniometer_long","position":"supine"}])");
    impression_entry = at(write("impression.record", R"("impression":{"text":"broken kneecap","side":"left","certainty":"probable"})"), "/revision/0");
    const std::string planned = write("plan.record", R"("plan_items":[{"kind":"splint","text":"straight splint","side":"left","became":"given"},)"
                                                     R"({"kind":"referral","text":"bone clinic","side":"left","by":"2026-12-01"}])");
    referral = at(planned, "/exam/plan/1/plan_item");
  }

  std::string request() { return "\"request\":\"" + request_id(++number) + "\""; }
  // Writes to the exam as it now stands.
  std::string write(const std::string& method, const std::string& members, const std::string& more = "") {
    reply = desk.ok(method, call_text(members, more));
    return reply;
  }
  [[nodiscard]] Result<std::string> call(const std::string& method, const std::string& members, const std::string& more = "") {
    return desk.call(method, call_text(members, more));
  }
  [[nodiscard]] std::string revision() const { return at(desk.ok("exam.read", R"({"exam":")" + exam + "\"}"), "/exam/revision"); }
  [[nodiscard]] std::string read(const std::string& pointer) const { return at(desk.ok("exam.read", R"({"exam":")" + exam + "\"}"), pointer); }
  std::string letter(const std::string& more = "") { return write("letter.write", R"("question":"Is the kneecap broken?","to":"bone clinic")" + more); }
  [[nodiscard]] std::string letter_text(const std::string& id) const {
    return at(desk.ok("letter.read", R"({"exam":")" + exam + R"(","letter":")" + id + "\"}"), "/text");
  }
  void sign() { write("exam.sign", R"("read_aloud":"Kofi Invented, LEFT knee")"); }

  DeskFixture desk;
  unsigned number = 0;
  std::string person, exam, place, place_entry, place_seen, reply, found, impression_entry, referral;

 private:
  std::string call_text(const std::string& members, const std::string& more) {
    return R"({"exam":")" + exam + "\"," + members + ",\"seen\":" + revision() + "," + request() + more + "}";
  }
};

inline bool says(const std::string& text, const std::string& part) {
  std::string line;
  for (const char c : text) {
    if (c != '\n' && c != ' ') {
      line += c;
    } else if (line.empty() || line.back() != ' ') {
      line += ' ';
    }
  }
  return line.find(part) != std::string::npos;
}

}  // namespace limbledger::service::test

// An exam that is told, answered and corrected through the methods, for the tests of what becomes of an alert. One child and one mother,
// both invented; the day is 2026-11-24. Of the alerts each hangs on something else: a slip of the growth plate on the age (gate of the
// cohort, red flags page), a knee that was out of joint on the day of the injury, tense muscles on who gave the history and how reliably.
#pragma once

#include "tests/unit/service/desk_fixture.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <string>
#include <vector>

namespace limbledger::service::test::life {

class Told : public DeskFixture {
 public:
  Told() {
    child = person_of("Rumi Invented", "2013-05-01");
    mother = person_of("Ilse Madeup", "1986-05-01");
  }

  std::string next() { return R"("request":")" + request_id(++requests) + "\""; }
  std::string person_of(const std::string& name, const std::string& born) {
    const std::string reply = ok("person.register", R"({"names":[{"text":")" + name + R"("}],"sex":"female","birth":{"date":")" + born + R"("},)" + next() + "}");
    const std::string person = at(reply, "/person/person");
    entries[person] = "\"" + at(reply, "/revision/0") + "\"";
    return person;
  }
  void open(const std::string& members) {
    const std::string reply = ok("exam.open", R"({"setting":"outreach",)" + members + "," + next() + "}");
    exam = at(reply, "/exam/exam");
    seen = at(reply, "/revision");
  }
  std::string write(const std::string& method, const std::string& members) {
    std::string reply = ok(method, R"({"exam":")" + exam + R"(","seen":)" + seen + "," + next() + "," + members + "}");
    seen = at(reply, "/revision");
    return reply;
  }
  // `value` without its braces; whatever is withheld meanwhile is not what is looked at here.
  std::string tell(const std::string& item, const std::string& side, const std::string& value, const std::string& replaces = "", const std::string& more = "") {
    return write("finding.record", R"("findings":[{"item":")" + item + R"(","side":")" + side + R"(","value":{)" + value +
                                       "}" + more + R"(,"despite":{"how":"knowingly","because":"invented"},"confirmed":["value.unusual","finding.contradicts"],"replaces":[)" +
                                       (replaces.empty() ? "" : "\"" + replaces + "\"") + "]}]");
  }
  std::string answer(const std::string& item, const std::string& side, const std::string& word) { return tell(item, side, R"("kind":"answer","answer":")" + word + "\""); }
  std::string choose(const std::string& item, const std::string& side, const std::string& choice, const std::string& replaces = "") {
    return tell(item, side, R"("kind":"choice","choice":")" + choice + "\"", replaces);
  }
  std::string amend_person(const std::string& person, const std::string& changes) {
    std::string& held = entries[person];
    std::string reply = ok("person.amend", R"({"person":")" + person + R"(","changes":{)" + changes + R"(},"replaces":[)" + held + R"(],"seen":[)" + held + R"(],"confirmed":["value.unusual","alert.would_end"],)" +
                                               next() + "}");
    held += ",\"" + at(reply, "/revision/0") + "\"";
    return reply;
  }
  std::string move_to(const std::string& person) { return write("exam.move", R"("person":")" + person + R"(","reason":"invented","confirmed":["value.unusual","alert.would_end"])"); }
  std::string who_spoke(const std::string& reliable) { return write("consent.record", R"("who_spoke":{"who":"other","reliable":")" + reliable + R"("},"confirmed":["alert.would_end"])"); }
  std::string amend(const std::string& changes) { return write("exam.amend", R"("changes":{)" + changes + R"(},"confirmed":["value.unusual","alert.would_end"])"); }
  std::string handle(const std::string& alert, const std::string& side, const std::string& how) {
    return write("alert.handle", R"("alert":"alert.)" + alert + R"(","side":")" + side + "\"," + how);
  }
  [[nodiscard]] std::string assess(const std::string& more = "") const { return ok("exam.assess", R"({"exam":")" + exam + "\"" + more + "}"); }
  [[nodiscard]] std::string alerts() const { return assess(R"(,"only":["alert","flag"])"); }

  std::string child;
  std::string mother;
  std::map<std::string, std::string> entries;  // of a person, all that were written
  std::string exam;
  std::string seen;
  unsigned requests = 20;
};

// A member of an alert in a list of them; "absent" where it is not in it.
inline std::string of_alert(const std::string& reply, const std::string& alert, const std::string& member, const std::string& side = "", const std::string& list = "/alerts") {
  for (int i = 0; i < 40; ++i) {
    const std::string place = list + "/" + std::to_string(i);
    const std::string name = at(reply, place + "/alert");
    if (name.empty()) {
      break;
    }
    if (name == "alert." + alert && (side.empty() || at(reply, place + "/side") == side)) {
      return at(reply, place + member);
    }
  }
  return "absent";
}

}  // namespace limbledger::service::test::life

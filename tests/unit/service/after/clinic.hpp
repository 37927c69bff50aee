// A clinic with two invented examiners, one invented person and one open exam of the left knee, for the tests of what is added to an
// exam beside its findings. It sends back as `seen` what it was shown last.
#pragma once

#include "tests/unit/service/desk_fixture.hpp"

#include <string>

namespace limbledger::service::test::added {

constexpr std::string_view second_label = "Second Invented";
constexpr std::string_view second_passphrase = "four words quite apart";

class TwoExaminers : public DeskFixture {
 public:
  explicit TwoExaminers(LedgerKind kind = LedgerKind::clinic, const std::string& opening = "") : DeskFixture(kind) {
    desk->keeps_keyring([](const ledger::Bytes&) -> Result<void> { return {}; });
    second = at(ok("examiner.add", R"({"code":")" + made.recovery_code + R"(","examiner":")" + std::string(second_label) + R"(","passphrase":")" +
                                       std::string(second_passphrase) + "\"}"),
                "/examiner");
    const std::string registered = ok("person.register", R"({"names":[{"text":"Kofi Invented"}],"birth":{"date":"1985-03"},"sex":"male","norm_sex":"male",)" + request() + "}");
    person = at(registered, "/person/person");
    const std::string placed = ok("place.amend", R"({"changes":{"name":"Invented Ford","travel":[{"to":"invented district hospital","minutes":500},)"
                                                 R"({"to":"invented health post","minutes":20}],"telephones":[{"who":"invented surgeon on call","number":"000 111"}]},)" +
                                                     request() + "}");
    place = at(placed, "/places/0/place/place");
    open(opening);
  }

  std::string request() { return R"("request":")" + request_id(++requests) + "\""; }
  void open(const std::string& more = "") {
    const std::string reply = ok("exam.open", R"({"person":")" + person + R"(","complaint":"acute_knee","side":"left","setting":"outreach","place":")" + place +
                                                  R"(","injured_on":"2026-11-23","offset_min":180)" + more + "," + request() + "}");
    exam = at(reply, "/exam/exam");
    seen = at(reply, "/revision");
  }
  [[nodiscard]] std::string params(const std::string& members) {
    return R"({"exam":")" + exam + R"(","seen":)" + seen + "," + request() + (members.empty() ? "" : "," + members) + "}";
  }
  [[nodiscard]] Result<std::string> attempt(const std::string& method, const std::string& members) { return call(method, params(members)); }
  std::string write(const std::string& method, const std::string& members) {
    std::string reply = ok(method, params(members));
    seen = at(reply, "/revision");
    return reply;
  }
  std::string record(const std::string& findings) { return write("finding.record", R"("findings":[)" + findings + "]"); }
  std::string sign() { return write("exam.sign", R"("read_aloud":"Kofi Invented, LEFT knee")"); }
  void see() { seen = at(read(), "/revision"); }
  [[nodiscard]] std::string read() const { return ok("exam.read", R"({"exam":")" + exam + "\"}"); }
  [[nodiscard]] std::string assess(const std::string& more = "") const { return ok("exam.assess", R"({"exam":")" + exam + "\"" + more + "}"); }
  [[nodiscard]] std::string note(const std::string& more = "") const { return at(ok("note.write", R"({"exam":")" + exam + "\"" + more + "}"), "/text"); }
  // The other examiner takes the tablet, and back.
  void becomes(std::string_view label, std::string_view words) {
    desk->lock();
    ok("ledger.unlock", R"({"examiner":")" + std::string(label) + R"(","passphrase":")" + std::string(words) + "\"}");
  }
  void second_unlocks() { becomes(second_label, second_passphrase); }
  void first_unlocks() { becomes(examiner_label, passphrase); }

  static std::string answered(const std::string& item, const std::string& side, const std::string& word, const std::string& more = "") {
    return R"({"item":")" + item + R"(","side":")" + side + R"(","value":{"kind":"answer","answer":")" + word + "\"}" + more + "}";
  }
  // A knee that was out of joint: an alert of class now (red flags page, section 2).
  static std::string out_of_joint() { return answered("history.knee_dislocated", "left", "yes"); }

  std::string person;
  std::string place;
  std::string exam;
  std::string seen;
  std::string second;
  unsigned requests = 8000;
};

inline bool says(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }
// Lines of the page run on: what is looked for may be parted by its width.
inline std::string unwrapped(const std::string& text) {
  std::string out;
  for (const char c : text) {
    const char one = c == '\n' ? ' ' : c;
    if (one != ' ' || out.empty() || out.back() != ' ') {
      out += one;
    }
  }
  for (const std::string mark : {"\u2068", "\u2069"}) {
    for (auto at = out.find(mark); at != std::string::npos; at = out.find(mark)) {
      out.erase(at, mark.size());
    }
  }
  return out;
}

}  // namespace limbledger::service::test::added

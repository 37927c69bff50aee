// The laws about what was once raised, through the methods that record: exams of the whole limb (exams.hpp) written into a ledger a
// finding or a few at a time, with corrections of findings, person and opening, a withdrawal and an exchange of sides between. An alert that was on a reply is on every
// later one and in every later assessment, raised or handled or withdrawn, or stands inside a graver one: here the history of the exam is looked at. What is raised at
// the end is what the same findings raise told in another order: there history is not. Sources: clinical safety, C2; contract, section 7.
#include "core/wire/write.hpp"
#include "tests/simulation/knee_exams.hpp"
#include "tests/simulation/limb/exams.hpp"
#include "tests/unit/service/desk_fixture.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <set>
#include <string>
#include <vector>

using namespace limbledger;
using namespace limbledger::limb_exams;

namespace {

using Named = std::pair<std::string, std::string>;  // alert and side
using Listed = std::map<Named, std::string>;        // its state

Listed listed_on(const std::string& reply) {
  Listed listed;
  for (int i = 0;; ++i) {
    const std::string at = "/alerts/" + std::to_string(i);
    const std::string alert = service::test::at(reply, at + "/alert");
    if (alert.empty()) {
      return listed;
    }
    listed[{alert, service::test::at(reply, at + "/side")}] = service::test::at(reply, at + "/state");
  }
}

// All heads, as they are handed back.
std::string revision_of(const std::string& reply) {
  std::string heads;
  for (int i = 0;; ++i) {
    const std::string head = service::test::at(reply, "/revision/" + std::to_string(i));
    if (head.empty()) {
      return heads;
    }
    heads += (i == 0 ? "\"" : ",\"") + head + "\"";
  }
}

std::set<Named> raised_of(const Listed& listed) {
  std::set<Named> raised;
  for (const auto& [name, state] : listed) {
    if (state == "raised") {
      raised.insert(name);
    }
  }
  return raised;
}

// Told last: how it began, whether the limb is in danger, what is special about this body (completes_an_input in laws.cpp).
std::vector<model::Finding> told_last(Draw& draw) {
  Bench made(facts());
  const std::int64_t weeks = draw.one_in(2) ? 1 : 30;
  made.add("history.mechanism", model::Side::midline, model::Choice{{draw.one_in(2) ? "no_injury" : "twist"}});
  made.no("history.injury_severe_or_crush", model::Side::midline);
  made.count("history.weeks_since_onset", weeks);
  for (const auto side : {model::Side::left, model::Side::right}) {
    made.yes(draw.one_in(2) ? "body.knee_fused" : "body.hip_fused", side);
  }
  return *made.exam.findings;
}

struct Counted {
  std::uint64_t recorded = 0;
  std::uint64_t raised = 0;     // alerts on the last reply of an exam
  std::uint64_t withdrawn = 0;  // those of them that only were raised
  std::uint64_t inside = 0;     // looked for inside a graver one
};

class RecordedLimb : public service::test::DeskFixture {
 public:
  void open(const Bench& of) {
    const auto& birth = *of.person->birth;
    const std::string person = ok("person.register", R"({"names":[{"text":"Invented"}],"birth":{"date":")" + birth.date->to_text() + R"("},"sex":)" +
                                                         wire::write(of.person->sex) + R"(,"request":")" + next() + "\"}");
    whose = service::test::at(person, "/person/person");
    known = revision_of(person);
    std::string params = R"({"complaint":")" + of.exam.complaint.text + R"(","setting":"outreach","person":")" + whose + R"(","request":")" + next() + "\"";
    params += of.exam.side ? R"(,"side":)" + wire::write(*of.exam.side) : std::string();
    params += of.exam.injured_on ? R"(,"injured_on":")" + of.exam.injured_on->to_text() + "\"" : std::string();
    const std::string opened = ok("exam.open", params + "}");
    exam = service::test::at(opened, "/exam/exam");
    seen = revision_of(opened);
    entries.clear();
    findings.clear();
    listed.clear();
    last.clear();
  }

  // False where it was refused: what is impossible beside the rest is left out.
  bool record(const model::Finding& finding, const std::string& replaces = "") {
    const auto member = [](const char* name, const auto& value) { return value ? std::string(",\"") + name + "\":" + wire::write(*value) : std::string(); };
    const std::string slot = finding.item.text + " " + wire::write(finding.side);
    const bool beside = replaces.empty() && entries.count(slot) > 0;
    const auto result = call("finding.record", R"({"exam":")" + exam + R"(","seen":[)" + seen + R"(],"request":")" + next() + R"(","findings":[{"item":")" +
                                                   finding.item.text + R"(","side":)" + wire::write(finding.side) + R"(,"value":)" + wire::write(finding.value) +
                                                   member("instrument", finding.instrument) + member("position", finding.position) +
                                                   member("pain", finding.pain) + member("quality", finding.quality) + member("origin", finding.origin) +
                                                   R"(,"despite":{"how":"before","because":"invented"},"confirmed":["value.unusual","finding.contradicts"],"replaces":[)" +
                                                   (replaces.empty() ? "" : "\"" + replaces + "\"") + (beside ? R"(],"beside":true}]})" : "]}]}"));
    if (!result) {
      return false;
    }
    seen = revision_of(*result);
    entries[slot] = service::test::at(*result, "/recorded/0/entry");
    findings[slot] = service::test::at(*result, "/recorded/0/finding");
    stays_listed(*result);
    return true;
  }

  void take_back(const std::string& slot) {
    const auto result = call("finding.withdraw", R"({"exam":")" + exam + R"(","seen":[)" + seen + R"(],"request":")" + next() + R"(","finding":")" +
                                                     findings[slot] + R"(","reason":"invented","confirmed":["alert.would_end"]})");
    if (result) {
      seen = revision_of(*result);
      entries.erase(slot);
      stays_listed(*result);
    }
  }

  // Whose it is, how old they are, when and by whom it was told: each of them one more correction, and none may lose what was raised.
  void correct_all_but_findings(Draw& draw) {
    const auto of_exam = [&](const std::string& method, const std::string& members) {
      const auto result = call(method, R"({"exam":")" + exam + R"(","seen":[)" + seen + R"(],"request":")" + next() + R"(","confirmed":["value.unusual","alert.would_end"],)" + members + "}");
      seen = result ? revision_of(*result) : seen;
      stays_listed(assessed());
    };
    const std::string years[]{"1931", "1958", "1989", "2010", "2016", "2021"};
    const std::string born = years[draw.below(6)] + "-05-01";
    ok("person.amend", R"({"person":")" + whose + R"(","changes":{"birth":{"date":")" + born + R"("}},"replaces":[)" + known + R"(],"seen":[)" + known +
                           R"(],"confirmed":["value.unusual","alert.would_end"],"request":")" + next() + "\"}");
    stays_listed(assessed());
    of_exam("exam.amend", R"("changes":{"injured_on":")" + std::string(draw.one_in(2) ? "2026-01-01" : "2026-11-20") + "\"}");
    const std::string other = ok("person.register", R"({"names":[{"text":"Another"}],"birth":{"date":")" + years[draw.below(6)] + R"(-05-01"},"sex":"female","request":")" + next() + "\"}");
    of_exam("exam.move", R"("person":")" + service::test::at(other, "/person/person") + R"(","reason":"invented")");
    of_exam("exam.amend", R"("changes":{"side":")" + std::string(draw.one_in(2) ? "left" : "right") + "\"}");
  }

  // What was found LEFT is RIGHT from here on; of which side the complaint is stays, and with it what rests on no side.
  void exchange() {
    seen = revision_of(ok("exam.swap_sides", R"({"exam":")" + exam + R"(","seen":[)" + seen + R"(],"request":")" + next() + R"(","reason":"invented","confirmed":["alert.would_end"]})"));
    const Listed before = listed;
    listed = listed_on(assessed());
    for (const auto& held : before) {
      const Named& name = held.first;  // no structured binding: what CHECK makes of it keeps a reference
      const bool there = std::any_of(listed.begin(), listed.end(), [&](const auto& one) { return one.first.first == name.first; });
      CAPTURE(name.first);
      CHECK((there || is_raised(all_of_it(), {name.first, "left"}) || is_raised(all_of_it(), {name.first, "right"}) || is_raised(all_of_it(), {name.first, ""})));
    }
  }

  // What is kept of the history, judged as it was told, says what the whole history says.
  void same_after_unlocking() {
    const std::string kept = assessed();
    desk->lock();
    unlock();
    CHECK(assessed() == kept);
  }

  std::string assessed() { return ok("exam.assess", R"({"exam":")" + exam + R"(","only":["alert","flag"]})"); }

  void read() { seen = revision_of(ok("exam.read", R"({"exam":")" + exam + "\"}")); }

  std::string exam;
  std::string whose;
  std::string known;  // of the person, as it was sent
  std::string seen;
  std::map<std::string, std::string> entries;  // by item and side
  std::map<std::string, std::string> findings;
  Listed listed;
  Listed last;  // on the newest reply
  Counted met;

 private:
  std::string next() { return service::test::request_id(++requests_); }

  void stays_listed(const std::string& reply) {
    ++met.recorded;
    const Listed now = listed_on(reply);
    for (const auto& held : listed) {
      const Named& name = held.first;
      if (now.count(name) > 0) {
        continue;
      }
      const std::string whole = all_of_it();
      ++met.inside;
      CAPTURE(name.first);
      CAPTURE(name.second);
      CAPTURE(reply);
      CHECK(is_raised(whole, name));
    }
    for (const auto& [name, state] : now) {
      listed[name] = state;
    }
    last = now;
  }

  std::string all_of_it() { return ok("exam.assess", R"({"exam":")" + exam + R"(","only":["alert","flag"],"protected":true})"); }

  static bool is_raised(const std::string& whole, const Named& name) {
    for (int i = 0;; ++i) {
      const std::string at = "/flags/" + std::to_string(i);
      const std::string flag = service::test::at(whole, at + "/flag");
      if (flag.empty()) {
        return false;
      }
      if (flag == name.first && service::test::at(whole, at + "/side") == name.second) {
        return service::test::at(whole, at + "/answer") == "raised";
      }
    }
  }

  unsigned requests_ = 0;
};

}  // namespace

TEST_CASE("laws of a recorded exam: what was once raised stays on the list, and what is raised in the end follows from what stands, not from its order") {
  const knee_exams::Seeds seeds = knee_exams::seeds();
  RecordedLimb desk;
  const auto count = [&] {
    desk.met.raised += desk.last.size();
    desk.met.withdrawn += desk.last.size() - raised_of(desk.last).size();
  };
  for (std::uint64_t seed = seeds.first; seed < seeds.first + seeds.count / 10; ++seed) {
    CAPTURE(seed);
    Draw draw(seed + 5);
    const Bench made = random_limb(seed);
    desk.open(made);
    std::vector<model::Finding> taken;
    for (const model::Finding& finding : *made.exam.findings) {
      if (taken.size() < 40 && desk.record(finding)) {
        taken.push_back(finding);
      }
    }
    for (const model::Finding& finding : told_last(draw)) {
      const std::string slot = finding.item.text + " " + wire::write(finding.side);
      if (desk.entries.count(slot) == 0 && desk.record(finding)) {
        taken.push_back(finding);
      }
    }
    const Listed first = desk.last;
    count();
    // The same, last told first.
    desk.open(made);
    bool all = true;
    for (auto finding = taken.rbegin(); finding != taken.rend(); ++finding) {
      all = desk.record(*finding) && all;
    }
    if (all) {
      CHECK(raised_of(desk.last) == raised_of(first));
    }
    count();
    // Then corrections, some by a writer who was not shown the last few of them, one taken back, and the sides exchanged.
    std::string shown_before = desk.seen;
    for (std::size_t i = 0; i < taken.size(); i += 1 + draw.below(4)) {
      model::Finding corrected = taken[i];
      const std::string slot = corrected.item.text + " " + wire::write(corrected.side);
      auto value = any_value(*facts().item(corrected.item), draw, 6);
      if (value && desk.entries.count(slot) > 0) {
        corrected.value = std::move(*value);
        const std::string now = desk.seen;
        if (draw.one_in(6)) {
          desk.seen = shown_before;
        }
        if (!desk.record(corrected, desk.entries[slot])) {
          desk.seen = now;
        }
        shown_before = draw.one_in(3) ? now : shown_before;
        if (draw.one_in(8)) {
          desk.read();  // and joins what the others wrote
        }
      }
    }
    if (!desk.entries.empty()) {
      desk.take_back(desk.entries.begin()->first);
    }
    if (draw.one_in(2)) {
      desk.correct_all_but_findings(draw);
    }
    desk.same_after_unlocking();
    desk.exchange();
    desk.same_after_unlocking();
  }
  MESSAGE(desk.met.recorded << " replies; alerts on the last of an exam " << desk.met.raised << ", of them withdrawn " << desk.met.withdrawn << ", inside a graver one "
                            << desk.met.inside);
  CHECK(desk.met.raised > seeds.count / 40);
  CHECK(desk.met.withdrawn > seeds.count / 400);
}

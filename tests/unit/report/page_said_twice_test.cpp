// What one section of a page says must not be taken back by another: what a no may rest on, what was looked at on a side, and what
// comes next after an alert. Requirements 2, 9, 16 and 18 of clinical safety and its C3, C13 and C16; the exams are invented.
#include "tests/unit/report/forbidden.hpp"
#include "tests/unit/report/printed.hpp"

#include <algorithm>
#include <string>

using namespace limbledger;
using namespace limbledger::report_test;

namespace {

std::string signs_of(const std::string& name) { return section(page_of(document(name)), "Danger signs asked after"); }

// The sentence that begins so, up to the next one of the section.
std::string sentence_of(const std::string& signs, const std::string& begins) {
  const auto at = signs.find(begins);
  return at == std::string::npos ? std::string() : signs.substr(at, signs.find(". ", at) - at);
}

}  // namespace

TEST_CASE("a knee that the error of measurement keeps from being called straight is not answered no on the page") {
  for (const std::string name : {"football", "stiff"}) {
    CAPTURE(name);
    const std::string signs = signs_of(name);
    CHECK(has(sentence_of(signs, "Measured or asked, and still open"), "a locked knee"));
    CHECK(!has(sentence_of(signs, "Asked or looked at, answered no"), "a locked knee"));
  }
  CHECK(has(sentence_of(signs_of("child"), "Asked or looked at, answered no"), "a locked knee"));
}

TEST_CASE("a no does not rest on tenderness, minutes of stiffness or pulses alone") {
  CHECK(!has(sentence_of(signs_of("lock"), "Asked or looked at, answered no"), "an infected bone"));
  CHECK(!has(sentence_of(signs_of("stiff"), "Asked or looked at, answered no"), "several joints"));
  for (const std::string name : {"football", "fall", "lock"}) {
    CAPTURE(name);
    CHECK(!has(signs_of(name), "blood lacking in the foot for weeks"));
  }
}

TEST_CASE("what was found of a danger, or of one of its kind, keeps it out of the answered noes of the page: a leg turned out, a swollen knee, a weak pulse") {
  const auto not_no = [](const char* name, const char* danger) {
    CAPTURE(name);
    CAPTURE(danger);
    CHECK(!has(sentence_of(signs_of(name), "Asked or looked at, answered no"), danger));
  };
  not_no("hip", "a hip out of joint");
  not_no("infant", "a hip out of joint");
  not_no("stiff", "a joint swollen for weeks");
  not_no("stiff", "bone pain or a lump that asks for a picture");
  not_no("sole", "blood lacking in the foot for weeks");
  not_no("sole", "a hot foot");
  CHECK(has(sentence_of(signs_of("hip"), "Measured or asked, and still open"), "a hip out of joint LEFT (How the leg lies: Short and turned out"));
  CHECK(!has(signs_of("infant"), "a hot foot"));
  CHECK(!has(signs_of("infant"), "a limp of a child"));
}

TEST_CASE("a danger that was not asked after names what is missing, where no question above does") {
  const std::string child = sentence_of(signs_of("child"), "Not asked, or not all");
  CHECK(has(child, "an infected joint of a child LEFT (not recorded, and not to be tried now: Steps taken now"));
  CHECK(has(sentence_of(signs_of("stiff"), "Not asked, or not all"), "RIGHT (only circumstances, such as an injury or the time since it began, speak against it)"));
  // Skin, fever and feeling unwell were asked: they are named, and time alone does not settle it.
  const std::string open = sentence_of(signs_of("stiff"), "Measured or asked, and still open");
  const std::string joint = open.substr(std::min(open.size(), open.find("an infected joint RIGHT (")));
  for (const char* asked : {"Skin hot or red: no", "Fever, now or in the last seven days: no", "Feels or looks unwell: no"}) {
    CHECK_MESSAGE(has(joint.substr(0, joint.find(')')), asked), asked);
  }
  CHECK(has(sentence_of(signs_of("lock"), "Not asked, or not all"), "an infected bone RIGHT (not recorded: Fever"));
  CHECK(!has(sentence_of(signs_of("fall"), "Not asked, or not all"), "an infected joint RIGHT (not recorded: "));  // its question stands above
}

TEST_CASE("where only pulses were felt on a side, the summary says that the part was not examined, and names what was") {
  const std::string found = section(page_of(document("fall")), "Found out of the ordinary");
  CHECK(has(found, "LEFT: knee not examined; nothing out of the ordinary in: "));
  CHECK(has(found, "Pulse on the back of the foot"));
  CHECK(has(section(page_of(document("football")), "Found out of the ordinary"), "RIGHT: nothing out of the ordinary among what was examined"));
}

TEST_CASE("a rule that requires no film says in the same line that an alert asks for one") {
  const std::string page = page_of(document("lock"));
  const std::string rules = section(page, "Rules");
  const std::string said = "): What was raised above asks for a film (film for a loose body), whatever the rule says by itself. Film not required by the ";
  CHECK(has(rules, said));
  CHECK(rules.find(said) != rules.rfind(said));  // both rules
  CHECK(!has(section(page_of(document("football")), "Rules"), "asks for a film"));
}

TEST_CASE("a motion carried over fills no minimum set: no figures of studies before somebody measured it") {
  const std::string page = page_of(document("lock"));
  CHECK(has(section(page, "What the findings support"), "of the minimum set this is not recorded: "));
  CHECK(has(section(page, "Not examined"), "Hip inward rotation"));
}

TEST_CASE("that no alert stands for today does not come before a referral without naming it") {
  CHECK(has(section(page_of(document("lock")), "Alerts, and what was done"),
            "A REFERRAL is asked for, as said below with how soon (signs of): a locked knee RIGHT. No alert for now or today raised by what was recorded; danger signs"));
  CHECK(!has(section(page_of(document("football")), "Alerts, and what was done"), "a referral within two weeks"));
}

TEST_CASE("after an alert the next step is the alert; without one the program says that it names none") {
  for (const std::string name : {"child", "fall", "lock"}) {
    CAPTURE(name);
    const std::string next = section(page_of(document(name)), "Next step");
    CHECK((has(next, "Next: what the alerts above ask for") || has(next, "Next: what the alerts and the questions above ask for")));
    CHECK(!has(next, "names no further step"));
  }
  CHECK(has(section(page_of(document("stiff")), "Next step"), "The program names no further step."));
}

TEST_CASE("the paragraph of intended use speaks of the whole limb") {
  const std::string about = section(page_of(document("ankle")), "What this page is");
  CHECK(has(about, "danger signs of a painful or injured lower limb"));
  CHECK(!has(about, "knee"));
}

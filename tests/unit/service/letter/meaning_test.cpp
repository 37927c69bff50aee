// What a letter says of a finding is what the note of the same exam says of it: the meaning of two girths by their error, and what was looked
// for and could not be told. Each page is held against the other; everything is invented.
#include "tests/unit/service/clinic/queue_visit.hpp"

#include <string>
#include <utility>

namespace limbledger::service::test::letter_meaning {

using queue_lines::holds;
using queue_lines::Visit;

namespace {

struct Both : Visit {
  explicit Both(const std::string& list) { findings(list); }
  std::string letter() { return at(write("letter.write", R"("question":"What next?")"), "/text"); }
};

std::string girths(int left, int right) {
  std::string list;
  for (const auto& [side, mm] : {std::pair("left", left), std::pair("right", right)}) {
    list += std::string(list.empty() ? "" : ",") + R"({"item":"leg.thigh_girth_15cm","side":")" + side + R"(","value":{"kind":"length","mm":)" + std::to_string(mm) + R"(},"instrument":"tape","position":"supine"})";
  }
  return list;
}

// What stands behind these words up to the next bullet.
std::string after(const std::string& page, const std::string& words) {
  const std::size_t from = page.find(words);
  return from == std::string::npos ? std::string() : page.substr(from, page.find("\n  - ", from) - from);
}

}  // namespace

TEST_CASE("a difference of girth has its meaning by the error of the measure in the letter as in the note, beyond it and within it") {
  Both beyond(girths(500, 520));
  for (const std::string& page : {beyond.note(), beyond.letter()}) {
    CHECK_MESSAGE(holds(page, "20 mm less"), page);
    CHECK(holds(page, "over 10 mm is taught to be wasting, and was not read at its source"));
  }
  Both within(girths(515, 520));
  for (const std::string& page : {within.note(), within.letter()}) {
    CHECK_MESSAGE(holds(page, "cannot be told"), page);
    CHECK(holds(page, "over 10 mm is taught to be believed, and was not read at its source"));
    CHECK_FALSE(holds(page, "5 mm less"));
  }
}

TEST_CASE("a gap that could not be told stands with what is out of the ordinary in the letter as in the note") {
  Both made(R"({"item":"knee.patellar_tendon_gap","side":"left","value":{"kind":"answer","answer":"unsure"}})");
  CHECK(holds(after(made.letter(), "LEFT, OUT OF THE ORDINARY"), "Gap below the kneecap: unsure"));
  const std::string note = made.note();
  CHECK(holds(after(note.substr(note.find("Found out of the ordinary")), "LEFT: "), "Gap below the kneecap: unsure"));
}

}  // namespace limbledger::service::test::letter_meaning

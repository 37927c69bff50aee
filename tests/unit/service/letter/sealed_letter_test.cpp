// Open and sealed letters know nothing of each other, what is kept apart marks no open letter, and what who supervised found marks one.
// Source: clinical safety, requirements 16, 18 and 25. All is invented.
#include "tests/unit/service/after/clinic.hpp"

namespace limbledger::service::test::added {

namespace {

std::string letter_of(const std::string& reply) { return at(reply, "/letter/letter"); }

}  // namespace

TEST_CASE("C16: an open letter corrects no sealed one and a sealed one no open one, and neither names the other to anybody") {
  TwoExaminers clinic;
  clinic.record(TwoExaminers::answered("history.unexplained_bruises", "midline", "yes"));
  const std::string open = letter_of(clinic.write("letter.write", R"("question":"Broken?")"));
  const std::string sealed = letter_of(clinic.write("letter.write", R"("question":"Protection","protected":true)"));
  const auto first = clinic.attempt("letter.write", R"("question":"Broken?","corrects":")" + sealed + "\"");
  CHECK(codes_of(first) == "letter.other_kind");
  CHECK(path_of(first) == "/corrects");
  CHECK(codes_of(clinic.attempt("letter.write", R"("question":"Protection","protected":true,"corrects":")" + open + "\"")) == "letter.other_kind");
  clinic.write("letter.write", R"("question":"Broken still?","corrects":")" + open + "\"");
  clinic.write("letter.write", R"("question":"Protection","protected":true,"corrects":")" + sealed + "\"");
  clinic.caller.scope = Scope::viewer;
  CHECK(!says(clinic.read(), sealed));
  CHECK(at(clinic.read(), "/exam/letters/1/corrects") == open);
}

TEST_CASE("C16: what is kept apart marks the sealed letter and no open one, recorded, corrected, withdrawn or in an addendum; anything else still does") {
  TwoExaminers clinic;
  clinic.record(TwoExaminers::answered("knee.patella_tender", "left", "yes"));
  const std::string open = letter_of(clinic.write("letter.write", R"("question":"Broken?")"));
  clinic.write("letter.write", R"("question":"Protection","protected":true)");
  const std::string told = clinic.record(TwoExaminers::answered("history.unexplained_bruises", "midline", "yes"));
  CHECK(!says(at(told, "/stale_letters"), open));
  CHECK(at(clinic.read(), "/exam/letters/0/stale") == "");
  CHECK(at(clinic.read(), "/exam/letters/1/stale") == "true");
  clinic.record(TwoExaminers::answered("history.unexplained_bruises", "midline", "no", R"(,"replaces":[")" + at(told, "/recorded/0/entry") + "\"]"));
  clinic.write("finding.withdraw", R"("finding":")" + at(told, "/recorded/0/finding") + R"(","reason":"of another person")");
  CHECK(at(clinic.read(), "/exam/letters/0/stale") == "");
  clinic.sign();
  clinic.write("addendum.record", R"("kind":"findings","reason":"told alone","findings":[)" + TwoExaminers::answered("history.unexplained_bruises", "midline", "yes") + "]");
  CHECK(at(clinic.read(), "/exam/letters/0/stale") == "");
  clinic.caller.scope = Scope::viewer;
  CHECK(!says(clinic.ok("letter.read", R"({"exam":")" + clinic.exam + R"(","letter":")" + open + "\"}"), "NOT UP TO DATE"));
  clinic.caller.scope = Scope::examiner;
  clinic.write("addendum.record", R"("kind":"findings","reason":"felt again","findings":[)" + TwoExaminers::answered("knee.fibular_head_tender", "left", "yes") + "]");
  CHECK(at(clinic.read(), "/exam/letters/0/stale_because") == R"(["addendum"])");
}

TEST_CASE("C25: a letter is marked where who supervised found otherwise, and says what; the same findings, or protected ones alone, mark nothing") {
  TwoExaminers clinic;
  clinic.record(TwoExaminers::answered("knee.patella_tender", "left", "no"));
  clinic.sign();
  const std::string letter = letter_of(clinic.write("letter.write", R"("question":"Broken?")"));
  clinic.second_unlocks();
  clinic.write("exam.countersign", R"("findings":[)" + TwoExaminers::answered("knee.patella_tender", "left", "no") + "," +
                                       TwoExaminers::answered("history.unexplained_bruises", "midline", "yes") + "]");
  CHECK(at(clinic.read(), "/exam/letters/0/stale") == "");
  clinic.write("addendum.record", R"("kind":"text","reason":"told by telephone","text":"fell again")");
  clinic.write("exam.countersign", R"("findings":[)" + TwoExaminers::answered("knee.patella_tender", "left", "yes") + "]");
  CHECK(at(clinic.read(), "/exam/letters/0/stale_because") == R"(["addendum","countersigned"])");
  const std::string again = clinic.write("letter.write", R"("question":"Broken?","corrects":")" + letter + "\"");
  CHECK(says(unwrapped(at(again, "/text")), "Found otherwise by who supervised: Kneecap tender, LEFT: yes"));
}

}  // namespace limbledger::service::test::added

// letter.write and letter.read. Content and order: clinical safety, requirements 16 and 18; consent, corrections and moves: the hard
// cases HC-064, HC-065 and HC-066.
#include "tests/unit/service/letter/letter_fixture.hpp"

using namespace limbledger;
using namespace limbledger::service;
using namespace limbledger::service::test;

TEST_CASE("C18: a letter asks first, says the side in capitals, the examiner's impression, the method, and how to reply") {
  LetterFixture made;
  const std::string text = at(made.letter(R"(,"urgency":"same_day")"), "/text");
  CHECK(says(text, "Question"));
  CHECK(says(text, "Is the kneecap broken?"));
  CHECK(says(text, "By the examiner: THE SAME DAY, 2026-11-24."));
  CHECK(says(text, "LEFT: \u2068broken kneecap\u2069"));
  CHECK(says(text, "LEFT, OUT OF THE ORDINARY: Kneecap tender: yes"));
  CHECK(says(text, "LEFT, measured or described: Knee flexion, active: 80\u00b0, long goniometer, supine"));
  CHECK(says(text, "splint, LEFT: \u2068straight splint\u2069"));
  CHECK(says(text, "Medicines: not asked."));
  CHECK(text.find("Allergies: not asked.") < text.find("\nQuestion\n"));
  CHECK(says(text, "knee: RIGHT"));
  CHECK(says(text, "Please reply to \u2068Invented Examiner\u2069, \u2068Invented Ford\u2069, \u2068clinic office\u2069 \u2068000 111\u2069"));
  CHECK(says(text, "The record is not signed yet"));
  CHECK(says(text, "LETTER, written 2026-"));
  CHECK(text.find("\nQuestion\n") < text.find("Examiner's impression"));
  CHECK(text.find("Examiner's impression") < text.find("Found, and how"));
}

TEST_CASE("a letter is kept as it was printed: read again, and the same request sent again, it is the same") {
  LetterFixture made;
  const std::string seen = made.revision();
  const std::string call = R"({"exam":")" + made.exam + R"(","question":"Broken?","seen":)" + seen + "," + made.request() + "}";
  const std::string first = made.desk.ok("letter.write", call);
  const std::string id = at(first, "/letter/letter");
  CHECK(made.letter_text(id) == at(first, "/text"));
  made.write("impression.record", R"("impression":{"text":"bruised kneecap","side":"left"},"replaces":[")" + made.impression_entry + "\"]");
  const std::string again = made.desk.ok("letter.write", call);
  CHECK(at(again, "/repeat") == "true");
  CHECK(at(again, "/letter/letter") == id);
  CHECK(says(at(again, "/text"), "broken kneecap"));
  CHECK(!says(at(again, "/text"), "bruised kneecap"));
  CHECK(codes_of(made.desk.call("letter.write", R"({"exam":")" + made.exam + R"(","question":"Another?","seen":)" + seen + ",\"request\":\"" +
                                                   request_id(made.number - 1) + "\"}")) == "request.reused");
}

TEST_CASE("a letter outlives a crash, and verifies") {
  LetterFixture made;
  const std::string first = made.letter();
  made.desk.reopen(true);
  made.desk.unlock();
  CHECK(made.letter_text(at(first, "/letter/letter")) == at(first, "/text"));
  CHECK(at(made.desk.ok("ledger.verify", "{}"), "/damage") == "[]");
}

TEST_CASE("HC-066: what comes after a letter makes it stale, the letter says so, and its correction says in words what has changed") {
  LetterFixture made;
  const std::string id = at(made.letter(), "/letter/letter");
  CHECK(made.read("/exam/letters/0/stale").empty());
  const std::string corrected = made.write("finding.record", R"("findings":[{"item":"knee.flexion_active","side":"left","value":{"kind":"angle","toward_deg":95},)"
                                                             R"("instrument":"goniometer_long","position":"supine","replaces":[")" +
                                                                 at(made.found, "/recorded/2/entry") + "\"]}]");
  CHECK(at(corrected, "/stale_letters") == "[\"" + id + "\"]");
  CHECK(made.read("/exam/letters/0/stale") == "true");
  CHECK(made.read("/exam/letters/0/stale_because") == "[\"finding\"]");
  CHECK(says(made.letter_text(id), "NOT UP TO DATE: the record has changed since this letter was written (a finding)"));
  const std::string note = R"({"exam":")" + made.exam + "\"}";
  CHECK(says(at(made.desk.ok("note.write", note), "/text"), "addressed to \u2068bone clinic\u2069: \u2068Is the kneecap broken?\u2069; not recorded as sent or handed over; NOT UP TO DATE since (a finding); no letter corrects it yet"));
  const std::string second = made.letter(R"(,"corrects":")" + id + "\"");
  CHECK(says(at(made.desk.ok("note.write", note), "/text"), "NOT UP TO DATE since (a finding); a later letter stands in its place"));
  CHECK(says(at(second, "/text"), "CORRECTION: this letter stands in the place of the letter of 2026-11-24"));
  CHECK(says(at(second, "/text"), "Knee flexion, active, LEFT: now 95\u00b0, long goniometer, supine (was 80\u00b0, long goniometer, supine)"));
  CHECK(at(second, "/stale_letters").empty());
  CHECK(made.read("/exam/letters/0/corrected_by") == at(second, "/letter/letter"));
  CHECK(codes_of(made.call("letter.write", R"("question":"x","corrects":")" + made.exam + "\"")) == "letter.unknown");
}

TEST_CASE("HC-065, HC-066: an addendum, an exchange of sides, a move and a withdrawal each name the letters that no longer hold") {
  LetterFixture made;
  made.sign();
  const std::string id = at(made.letter(), "/letter/letter");
  const std::string list = "[\"" + id + "\"]";
  CHECK(at(made.write("addendum.record", R"("kind":"text","reason":"told by telephone","text":"fell again")"), "/stale_letters") == list);
  CHECK(at(made.write("exam.swap_sides", R"("reason":"taken the wrong way round")"), "/stale_letters") == list);
  const std::string other = at(made.desk.ok("person.register", R"({"names":[{"text":"Awa Invented"}],"sex":"female",)" + made.request() + "}"), "/person/person");
  CHECK(at(made.write("exam.move", R"("reason":"namesake","person":")" + other + "\""), "/stale_letters") == list);
  CHECK(made.read("/exam/letters/0/stale_because") == R"(["addendum","swap_sides","move"])");
  const std::string second = made.letter(R"(,"corrects":")" + id + "\"");
  CHECK(says(at(second, "/text"), "right and left were exchanged, because: \u2068taken the wrong way round\u2069"));
  CHECK(says(at(second, "/text"), "Addendum, because: \u2068told by telephone\u2069. \u2068fell again\u2069"));
  CHECK(at(made.write("exam.withdraw", R"("reason":"recorded twice")"), "/stale_letters") == "[\"" + at(second, "/letter/letter") + "\"]");
  CHECK(codes_of(made.call("letter.write", R"("question":"x")")) == "exam.withdrawn");
}

TEST_CASE("HC-066: a letter tells what holds until seen, so that advice or a reason to come back that comes later makes it stale") {
  for (const std::string kind : {"advice", "safety_net"}) {
    LetterFixture made;
    static_cast<void>(made.letter());
    CHECK(made.read("/exam/letters/0/stale").empty());
    made.write("plan.record", R"("plan_items":[{"kind":")" + kind + R"(","text":"no weight on it"}])");
    CHECK(made.read("/exam/letters/0/stale_because") == R"(["plan"])");
  }
}

TEST_CASE("how a referral fares, and a signature, leave a letter as it is") {
  LetterFixture made;
  static_cast<void>(made.letter());
  made.write("plan.record", R"("plan_items":[{"plan_item":")" + made.referral + R"(","kind":"referral","text":"bone clinic","side":"left","became":"sent"}])");
  made.sign();
  CHECK(made.read("/exam/letters/0/stale").empty());
}

TEST_CASE("C14: a referral counts as written once its letter is, also after the signature; what is recorded of it says more") {
  LetterFixture made;
  made.sign();
  CHECK(made.read("/exam/plan/1/became").empty());
  made.letter(R"(,"plan_item":")" + made.referral + "\"");
  CHECK(made.read("/exam/plan/1/became") == "written");
  CHECK(made.read("/exam/letters/0/plan_item") == made.referral);
  const auto splint = made.call("letter.write", R"("question":"x","plan_item":")" + made.read("/exam/plan/0/plan_item") + "\"");
  CHECK(codes_of(splint) == "plan.unknown");
}

TEST_CASE("HC-064: no to sending is asked back, and then printed for the person's own hand; not asked stands first of all") {
  LetterFixture refused(LedgerKind::clinic, "no");
  const auto asked = refused.call("letter.write", R"("question":"Broken?")");
  CHECK(codes_of(asked) == "consent.send");
  CHECK(refused.read("/exam/letters").empty());
  const std::string text = at(refused.write("letter.write", R"("question":"Broken?")", R"(,"confirmed":["consent.send"])"), "/text");
  CHECK(says(text.substr(0, 200), "FOR THE PERSON'S OWN HAND (consent to send: no)"));
  LetterFixture open(LedgerKind::clinic, "");
  CHECK(says(at(open.letter(), "/text").substr(0, 200), "NOT TO BE SENT until the person has been asked"));
  LetterFixture given;
  const std::string id = at(given.letter(), "/letter/letter");
  given.write("consent.record", R"("consent":{"send":"withdrawn"})");
  CHECK(given.read("/exam/letters/0/stale_because") == R"(["consent"])");
}

TEST_CASE("C16: a letter holds nothing of a person's protection; a sealed one holds that alone, and only an examiner opens it") {
  LetterFixture made;
  const std::string usual = at(made.letter(), "/text");
  CHECK(!says(usual, "ruises"));
  CHECK(!says(usual, "rotected"));
  const std::string sealed = made.letter(R"(,"protected":true)");
  CHECK(says(at(sealed, "/text"), "SEALED LETTER"));
  CHECK(says(at(sealed, "/text"), "Bruises that nothing explains: yes"));
  CHECK(!says(at(sealed, "/text"), "Kneecap tender"));
  const std::string id = at(sealed, "/letter/letter");
  CHECK(made.read("/exam/letters/1/protected") == "true");
  CHECK(made.read("/exam/letters/1/question").empty());
  const std::string ask = R"({"exam":")" + made.exam + R"(","letter":")" + id + "\"";
  CHECK(codes_of(made.desk.call("letter.read", ask + "}")) == "letter.protected");
  CHECK(says(at(made.desk.ok("letter.read", ask + R"(,"protected":true})"), "/text"), "Bruises that nothing explains"));
  CHECK(!says(at(made.desk.ok("note.write", R"({"exam":")" + made.exam + "\"}"), "/text"), "sealed letter"));
  made.desk.caller.scope = Scope::viewer;
  CHECK(codes_of(made.desk.call("letter.read", ask + R"(,"protected":true})")) == "letter.unknown");
  CHECK(made.read("/exam/letters/1").empty());
  CHECK(says(made.letter_text(made.read("/exam/letters/0/letter")), "Kneecap tender"));
}

TEST_CASE("a letter tells of what its writer was shown, and is the examiner's alone to write") {
  LetterFixture made;
  const std::string seen = made.revision();
  made.write("finding.record", R"("findings":[{"item":"history.fever","side":"midline","value":{"kind":"answer","answer":"no"}}])");
  const auto behind = made.desk.call("letter.write", R"({"exam":")" + made.exam + R"(","question":"x","seen":)" + seen + "," + made.request() + "}");
  CHECK(codes_of(behind) == "revision.old");
  CHECK(path_of(behind) == "/seen");
  for (const Scope scope : {Scope::viewer, Scope::kiosk, Scope::sync}) {
    made.desk.caller.scope = scope;
    CHECK(codes_of(made.desk.call("letter.write", R"({"exam":")" + made.exam + R"(","question":"x","seen":)" + seen + "," + made.request() + "}")) == "token.scope");
    CHECK(codes_of(made.desk.call("take_home.write", R"({"exam":")" + made.exam + "\"}")) == "token.scope");
  }
}

TEST_CASE("a letter is English, and another language is refused by name") {
  LetterFixture made;
  for (const std::string language : {"es", "fr"}) {
    const auto refused = made.call("letter.write", R"("question":"x","language":")" + language + "\"");
    CHECK(codes_of(refused) == "language.no_texts");
    CHECK(path_of(refused) == "/language");
  }
  CHECK(codes_of(made.call("letter.write", R"("question":"x","language":"xx")")) == "params.unknown_word");
}

TEST_CASE("what was written by hand is never cut: a letter that runs over one sheet says so") {
  LetterFixture made;
  const std::string much(3900, 'w');
  const std::string question = made.write("letter.write", R"("question":")" + much + "\"");
  CHECK(at(question, "/text").find(much) != std::string::npos);
  std::string words;
  for (int i = 0; i < 1200; ++i) {
    words += "gap ";
  }
  made.write("plan.record", R"("plan_items":[{"kind":"limit","text":")" + words.substr(0, 3999) + "x\"}]");
  CHECK(at(made.write("letter.write", R"("question":")" + words.substr(0, 3999) + "x\""), "/remarks") != "");
}

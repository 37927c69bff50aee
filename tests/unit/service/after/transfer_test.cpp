// A short way when it is urgent: stopping an exam for transfer, the note that travels, and the call that precedes every further
// question. Source: clinical safety, requirement 11 and the forms of words of part A; times to harm: the alerts' own rows.
#include "tests/unit/report/forbidden.hpp"
#include "tests/unit/service/after/clinic.hpp"

#include <algorithm>

namespace limbledger::service::test::added {

namespace {

const std::string whole_set =
    R"("set":{"to":"invented district hospital","onset":"about 07:30, twisted while carrying water","vessel_check":{"text":"LEFT foot: no pulse, cool","at":"2026-11-24T10:00:00.000Z"},)"
    R"("nerve_check":{"text":"LEFT great toe does not lift"},"allergies":"penicillin","last_meal":"06:00, bread","tetanus":"three, last 2024","blood_thinners":"none told",)"
    R"("pregnancy":"not applicable","given":[{"what":"splint, long leg","at":"2026-11-24T10:05:00.000Z"}],"called":[{"who":"surgeon on call","number":"000 111","at":"2026-11-24T10:06:00.000Z"}],)"
    R"("next_check":"2026-11-24T10:30:00.000Z"})";

// Words that are the examiner's own stand as they were typed; the page itself holds none of those that are not to be said.
std::string without_typed(std::string text) {
  for (auto open = text.find("\u2068"); open != std::string::npos; open = text.find("\u2068")) {
    const auto end = text.find("\u2069", open);
    text.erase(open, end == std::string::npos ? std::string::npos : end - open + 3);
  }
  return text;
}

}  // namespace

TEST_CASE("C11: one call stops the exam and answers with a note of one page: who, side, what cannot wait, last check, given, whom to call, what stopped") {
  TwoExaminers clinic;
  clinic.record(TwoExaminers::out_of_joint() + R"(,{"item":"vessel.pulse_dorsalis_pedis","side":"left","value":{"kind":"grade","scale":"pulse/0-3","grade":"0"}})");
  clinic.write("alert.handle", R"("alert":"alert.knee_disloc_vasc","side":"left","action":"splinted, surgeon called")");
  const std::string reply = clinic.write("exam.transfer", whole_set);
  CHECK(at(reply, "/exam/state") == "open");
  CHECK(at(reply, "/exam/transfer/0/by") == clinic.made.examiner.to_text());
  CHECK(at(reply, "/exam/transfer/0/set/allergies") == "penicillin");
  const std::string text = unwrapped(at(reply, "/text"));
  for (const std::string part :
       {"TRANSFER NOTE", "Kofi Invented", "Receive now at invented district hospital: knee, recent injury or recent pain, LEFT. Call now: ",
        "Numbers to call, from the place of the examination: invented surgeon on call 000 111", "Stopped for transfer 2026-11-24 13:15", ": splinted, surgeon called",
        "Vessels: LEFT foot: no pulse, cool (2026-11-24 13:00 UTC+03:00)", "Nerves: LEFT great toe does not lift (time not recorded)", "Allergies: penicillin",
        "Onset: about 07:30, twisted while carrying water", "Last meal or drink: 06:00, bread", "Tetanus: three, last 2024", "Blood thinners: none told",
        "Given so far: splint, long leg (2026-11-24 13:05 UTC+03:00)", "Called: surgeon on call, 000 111, 2026-11-24 13:06", "Next check of vessels and nerves: 2026-11-24 13:30", "TO DO until seen, asked for by the program",
        "Not to be done for now: ", "not tested on real people"}) {
    CAPTURE(part);
    CAPTURE(text);
    CHECK(says(text, part));
  }
  // What comes first is a verb and the side in capitals; at the size it is set in (9 pt, leading 1.25: 4 mm) 64 lines and six headings fill the 269 mm of A4 inside its margins.
  const std::string page = at(reply, "/text");
  CHECK(page.starts_with("TRANSFER NOTE  "));
  CHECK(std::count(page.begin(), page.end(), '\n') <= 64);
  CHECK(says(at(reply, "/html"), "<!DOCTYPE html>"));
  CHECK(!says(at(reply, "/html"), "<script"));
  CHECK(report_test::forbidden_in(without_typed(at(reply, "/text"))).empty());
  CHECK(!says(text, " in 100"));
}

TEST_CASE("C11: an empty set is enough, and what is not recorded says so and is never a no") {
  TwoExaminers clinic;
  const std::string text = unwrapped(at(clinic.write("exam.transfer", R"("set":{})"), "/text"));
  for (const std::string part : {"Allergies: not recorded", "Blood thinners: not recorded", "Pregnancy: not recorded", "Given so far: nothing recorded",
                                 "Vessels: no check written for the transfer", "Called: nobody recorded", "Recorded at the examination: no vessel and no nerve"}) {
    CAPTURE(part);
    CHECK(says(text, part));
  }
  CHECK(!says(text, ": no."));
}

TEST_CASE("C11: a second set keeps what the first one told: an allergy stands until it is told anew, and what was given only grows") {
  TwoExaminers clinic;
  clinic.write("exam.transfer", whole_set);
  const std::string text =
      unwrapped(at(clinic.write("exam.transfer", R"("set":{"to":"invented teaching hospital","blood_thinners":"one, name not known","given":[{"what":"invented fluid"}]})"), "/text"));
  for (const std::string part : {"Receive now at invented teaching hospital", "Allergies: penicillin", "Blood thinners: one, name not known", "splint, long leg (2026-11-24 13:05 UTC+03:00)",
                                 "invented fluid", "Called: surgeon on call, 000 111"}) {
    CAPTURE(part);
    CAPTURE(text);
    CHECK(says(text, part));
  }
  CHECK(!says(text, "none told"));
  CHECK(!says(text, "not recorded; "));
}

TEST_CASE("C11: after a transfer what was not done is no gap, in the assessment, at the signature and on the note; more may still be recorded") {
  TwoExaminers clinic;
  clinic.record(TwoExaminers::out_of_joint());
  CHECK(at(clinic.assess(R"(,"only":["missing"])"), "/missing/0/item") != "");
  CHECK(at(clinic.assess(), "/held_back") == "");
  clinic.write("exam.transfer", R"("set":{"onset":"this morning"})");
  CHECK(at(clinic.assess(R"(,"only":["missing"])"), "/missing") == "[]");
  CHECK(says(unwrapped(clinic.note()), "Stopped for transfer 2026-11-24 13:15 UTC+03:00 by Invented Examiner: what stands below was not examined by then; that is no omission."));
  clinic.record(R"({"item":"vessel.pulse_dorsalis_pedis","side":"left","value":{"kind":"grade","scale":"pulse/0-3","grade":"1"}})");
  const std::string incomplete = at(clinic.sign(), "/incomplete");
  CHECK(!says(incomplete, "minimum_set"));
  CHECK(says(incomplete, "alerts"));
  CHECK(says(incomplete, "consent"));
}

TEST_CASE("exam.transfer: the same request again writes nothing and gives the note; a set that was not seen, a time ahead and a void exam are refused by name") {
  TwoExaminers clinic;
  const std::string shown = clinic.seen;
  const std::string sent = clinic.params(whole_set);
  const std::string first = clinic.ok("exam.transfer", sent);
  const std::string again = clinic.ok("exam.transfer", sent);
  CHECK(at(again, "/repeat") == "true");
  CHECK(at(again, "/revision") == at(first, "/revision"));
  CHECK(at(again, "/text") == at(first, "/text"));
  // Whoever still has the form of before the first is shown that there is one.
  clinic.seen = shown;
  const auto stale = clinic.attempt("exam.transfer", R"("set":{"allergies":"none told"})");
  CHECK(codes_of(stale) == "revision.old");
  clinic.seen = at(first, "/revision");
  const auto ahead = clinic.attempt("exam.transfer", R"("set":{"given":[{"what":"splint","at":"2026-12-24T10:00:00.000Z"}]})");
  CHECK(codes_of(ahead) == "value.unusual");
  CHECK(path_of(ahead) == "/set/given/0/at");
  CHECK(codes_of(clinic.attempt("exam.transfer", R"("set":{"allergy":"x"})")) == "params.unknown_member");
  CHECK(at(clinic.write("exam.transfer", R"("set":{"allergies":"none told"})"), "/exam/transfer/1/set") == "");
  clinic.write("exam.withdraw", R"("reason":"opened twice")");
  CHECK(codes_of(clinic.attempt("exam.transfer", R"("set":{})")) == "exam.withdrawn");
}

TEST_CASE("transfer.write gives the note of an exam that was stopped, to a viewer too, and names what is missing of another") {
  TwoExaminers clinic;
  const std::string none = R"({"exam":")" + clinic.exam + "\"}";
  CHECK(codes_of(clinic.call("transfer.write", none)) == "exam.not_transferred");
  const std::string reply = clinic.write("exam.transfer", whole_set);
  CHECK(at(clinic.ok("transfer.write", none), "/text") == at(reply, "/text"));
  CHECK(at(clinic.ok("transfer.write", none), "/about") == at(reply, "/revision"));
  clinic.caller.scope = Scope::viewer;
  CHECK(codes_of(clinic.call("transfer.write", none)) == "answered");
  CHECK(codes_of(clinic.call("exam.transfer", clinic.params(whole_set))) == "token.scope");
  const auto language = clinic.call("transfer.write", R"({"exam":")" + clinic.exam + R"(","language":"xx"})");
  CHECK(codes_of(language) == "params.unknown_word");
  CHECK(path_of(language) == "/language");
}

TEST_CASE("C16: a transfer note, which is carried by hand, does not even tell that there is a protected note") {
  TwoExaminers clinic;
  clinic.record(TwoExaminers::answered("history.unexplained_bruises", "midline", "yes"));
  const std::string reply = clinic.write("exam.transfer", R"("set":{})");
  CHECK(!says(at(reply, "/text"), "rotected"));
  CHECK(!says(at(reply, "/text"), "ruise"));
  CHECK(!says(at(reply, "/text"), "safeguarding"));
  CHECK(!says(at(reply, "/html"), "rotected"));
}

TEST_CASE("C11: where travel takes longer than the harm, the call precedes every further question; an unknown place says nothing of time") {
  TwoExaminers clinic;
  CHECK(at(clinic.assess(), "/urgent") == "");
  clinic.record(TwoExaminers::out_of_joint());
  const std::string far = clinic.assess();
  CHECK(at(far, "/urgent/alerts/0") == "alert.knee_disloc_vasc:left");
  CHECK(at(far, "/urgent/call_first") == "true");
  CHECK(at(far, "/urgent/telephones/0/number") == "000 111");
  const std::string note = unwrapped(clinic.note());
  const auto call = note.find("Call first, before any further question: invented district hospital is 500 minutes away");
  REQUIRE(call != std::string::npos);
  CHECK(call < note.find("Still to be asked"));
  CHECK(says(note, "Numbers of this place: invented surgeon on call 000 111"));
  // Answered, it asks for nothing more.
  clinic.write("alert.handle", R"("alert":"alert.knee_disloc_vasc","side":"left","action":"surgeon called")");
  CHECK(at(clinic.assess(), "/urgent") == "");
  TwoExaminers nowhere;
  const std::string opened = nowhere.ok("exam.open", R"({"complaint":"acute_knee","side":"left","setting":"outreach",)" + nowhere.request() + "}");
  nowhere.exam = at(opened, "/exam/exam");
  nowhere.seen = at(opened, "/revision");
  nowhere.record(TwoExaminers::out_of_joint());
  CHECK(at(nowhere.assess(), "/urgent/alerts/0") == "alert.knee_disloc_vasc:left");
  CHECK(at(nowhere.assess(), "/urgent/call_first") == "");
}

TEST_CASE("a practice ledger says PRACTICE on the transfer note, the paper form and the note") {
  TwoExaminers clinic(LedgerKind::practice);
  CHECK(at(clinic.write("exam.transfer", R"("set":{})"), "/text").starts_with("PRACTICE: invented people only"));
  CHECK(says(at(clinic.ok("transfer.write", R"({"exam":")" + clinic.exam + "\"}"), "/html"), "PRACTICE: invented people only"));
  CHECK(clinic.note().starts_with("PRACTICE: invented people only"));
  CHECK(says(at(clinic.ok("form.write", R"({"complaint":"acute_knee"})"), "/html"), "PRACTICE: invented people only"));
  CHECK(at(clinic.ok("health.check", "{}"), "/ledger_kind") == "practice");
}

}  // namespace limbledger::service::test::added

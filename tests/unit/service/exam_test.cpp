// The methods of one exam as a form calls them: slots, revisions, signature, addendum, withdrawal, sides, kiosk, damage.
// All people and values are invented. Rules: contract, sections 4 and 9; clinical safety C9, C16; hard cases where named.
#include "tests/unit/ledger/kept_store.hpp"
#include "tests/unit/service/desk_fixture.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

namespace limbledger::service::test {

namespace {

// A form with one open exam: it sends back as `seen` what it was shown last.
struct Form : DeskFixture {
  unsigned requests = 7000;
  std::string exam;
  std::string seen;

  Form() {
    const std::string reply = ok("exam.open", R"({"complaint":"free","side":"left","setting":"outreach",)" + request() + "}");
    exam = at(reply, "/exam/exam");
    seen = at(reply, "/revision/0");
  }
  std::string request() { return R"("request":")" + request_id(++requests) + "\""; }
  std::string rest(const std::string& revision) { return R"("exam":")" + exam + R"(","seen":[")" + revision + R"("],)" + request(); }
  std::string rest() { return rest(seen); }

  static std::string flexion(int deg, const std::string& more = "", const std::string& side = "left") {
    return R"({"item":"knee.flexion_passive","side":")" + side + R"(","value":{"kind":"angle","toward_deg":)" + std::to_string(deg) +
           R"(},"instrument":"goniometer_long")" + more + "}";
  }
  Result<std::string> record(const std::string& finding, const std::string& revision) {
    return call("finding.record", R"({"findings":[)" + finding + "]," + rest(revision) + "}");
  }
  std::string recorded(const std::string& finding) {
    const std::string reply = ok("finding.record", R"({"findings":[)" + finding + "]," + rest() + "}");
    seen = at(reply, "/revision/0");
    return reply;
  }
  std::string sign() {
    const std::string reply = ok("exam.sign", R"({"read_aloud":"Invented, LEFT knee",)" + rest() + "}");
    seen = at(reply, "/revision/0");
    return reply;
  }
  std::string read() { return ok("exam.read", R"({"exam":")" + exam + "\"}"); }
  std::string tender(const std::string& answer, const std::string& more = "") {
    return R"({"item":"knee.fibular_head_tender","side":"left","value":{"kind":"answer","answer":")" + answer + "\"}" + more + "}";
  }
  std::string rule() {
    return ok("exam.assess", R"({"exam":")" + exam + R"(","only":["rule.ottawa_knee"]})");
  }
  // Everything the knee rule asks, answered no, but for what the test is about.
  void answer_the_rest() {
    for (const char* finding :
         {R"({"item":"knee.patella_tender","side":"left","value":{"kind":"answer","answer":"no"}})",
          R"({"item":"knee.bone_tender_elsewhere","side":"left","value":{"kind":"answer","answer":"no"}})",
          R"({"item":"history.steps_at_once","side":"midline","value":{"kind":"answer","answer":"yes"}})",
          R"({"item":"gait.steps_now","side":"midline","value":{"kind":"count","count":4}})",
          R"({"item":"history.knee_rule_exclusions","side":"midline","value":{"kind":"choices","choices":["none_of_these"]}})",
          R"({"item":"general.answers_reliable","side":"midline","value":{"kind":"answer","answer":"yes"}})"}) {
      recorded(finding);
    }
    // Active: a passive bend is not advised while the rule is open.
    recorded(R"({"item":"knee.flexion_active","side":"left","value":{"kind":"angle","toward_deg":120},"instrument":"goniometer_long"})");
  }
};

// A form whose person is a man of about 40, injured yesterday, so that age and day decide nothing.
struct RuleForm : Form {
  RuleForm() {
    const std::string person = at(ok("person.register", R"({"names":[{"text":"Tuma Invented"}],"birth":{"date":"1985-03"},"sex":"male","norm_sex":"male",)" +
                                                            request() + "}"),
                                  "/person/person");
    const std::string reply = ok("exam.open", R"({"complaint":"free","side":"left","setting":"outreach","injured_on":"2026-11-23","person":")" + person +
                                                  "\"," + request() + "}");
    exam = at(reply, "/exam/exam");
    seen = at(reply, "/revision/0");
    answer_the_rest();
  }
};

}  // namespace

TEST_CASE("HC-107, HC-116: a filled place is answered with both values, until the writer names what it replaces or writes beside it") {
  Form form;
  const std::string first = form.recorded(Form::flexion(110));
  const auto refused = form.record(Form::flexion(95), form.seen);
  REQUIRE_FALSE(refused.has_value());
  CHECK(codes_of(refused) == "finding.stale");
  CHECK(refused.error().held_json->find("\"toward_deg\":110") != std::string::npos);
  CHECK(refused.error().sent_json->find("\"toward_deg\":95") != std::string::npos);
  form.recorded(Form::flexion(112, R"(,"replaces":[")" + at(first, "/recorded/0/entry") + "\"]"));
  CHECK(at(form.read(), "/exam/findings/0/value/toward_deg") == "112");
  CHECK(at(form.read(), "/exam/findings/0/finding") == at(first, "/recorded/0/finding"));
  form.recorded(Form::flexion(95, R"(,"beside":true)"));
  CHECK(at(form.read(), "/exam/findings/1/value/toward_deg") == "95");
  CHECK(at(form.read(), "/exam/conflicts/0/about").empty());
}

TEST_CASE("where two stand beside each other each is corrected by its own entry, and nothing that was not shown is passed over") {
  Form form;
  const auto entry_of = [&](const std::string& reply) { return at(reply, "/recorded/0/entry"); };
  const auto values = [&] {
    const std::string read = form.read();
    std::vector<std::string> all;
    for (const char* place : {"0", "1", "2"}) {
      all.push_back(at(read, "/exam/findings/" + std::string(place) + "/value/toward_deg"));
    }
    std::sort(all.begin(), all.end());  // in the order of their entries, which says nothing
    return all[0] + " " + all[1] + " " + all[2];
  };
  const auto replacing = [](int deg, const std::string& entries, const std::string& more = "") { return Form::flexion(deg, R"(,"replaces":[)" + entries + "]" + more); };
  std::string first = entry_of(form.recorded(Form::flexion(100)));
  const std::string before_second = form.seen;
  const std::string second = entry_of(form.recorded(Form::flexion(110, R"(,"beside":true)")));
  // Named alone, and with beside; the other stays.
  first = entry_of(form.recorded(replacing(101, "\"" + first + "\"")));
  const std::string older = first;
  first = entry_of(form.recorded(replacing(102, "\"" + first + "\"", R"(,"beside":true)")));
  CHECK(values() == " 102 110");
  // What was corrected since is not corrected from the older value, also not beside.
  CHECK(codes_of(form.record(replacing(120, "\"" + older + "\"", R"(,"beside":true)"), form.seen)) == "finding.stale");
  // A form that was not shown the second is shown both first.
  const auto unseen = form.record(replacing(103, "\"" + first + "\""), before_second);
  REQUIRE(codes_of(unseen) == "finding.stale");
  CHECK(unseen.error().held_json->find("\"toward_deg\":110") != std::string::npos);
  REQUIRE(unseen.error().held_also_json.has_value());
  CHECK(unseen.error().held_also_json->find("\"toward_deg\":102") != std::string::npos);
  // With neither word all that stands is shown.
  const auto neither = form.record(Form::flexion(120), form.seen);
  REQUIRE(codes_of(neither) == "finding.stale");
  CHECK((*neither.error().held_json + *neither.error().held_also_json).find("\"toward_deg\":110") != std::string::npos);
  CHECK((*neither.error().held_json + *neither.error().held_also_json).find("\"toward_deg\":102") != std::string::npos);
  // One correction is of one finding, and says so.
  CHECK(codes_of(form.record(replacing(120, "\"" + first + "\",\"" + second + "\""), form.seen)) == "finding.several");
  // Both in one call.
  form.recorded(replacing(104, "\"" + first + "\"") + "," + replacing(111, "\"" + second + "\""));
  CHECK(values() == " 104 111");
}

// MEHTA2017: 9.5 degrees for the active bend with a long goniometer; HANCOCK2018: 10 and, with an inclinometer, 6 for what has no row of its own; 30 where no instrument is named, and twice the least of another quantity: our convention.
TEST_CASE("readings of one motion that lie further apart than measuring explains are asked back once") {
  Form form;
  const auto trials = [&](const std::string& item, const std::string& value, const std::string& more) {
    return form.call("finding.check", R"({"findings":[{"item":")" + item + R"(","side":"left","value":{)" + value + "}" + more + R"(}],"language":"en"})");
  };
  const auto asks = [&](const std::string& readings, const std::string& more) { return at(*trials("knee.flexion_active", R"("kind":"angle","trials":)" + readings, more), "/confirm/0/code"); };
  const std::string by_goniometer = R"(,"instrument":"goniometer_long")";
  CHECK(asks("[20,150]", by_goniometer) == "value.unusual");
  CHECK(asks("[95,140]", by_goniometer) == "value.unusual");
  CHECK(asks("[111,120.5]", by_goniometer).empty());
  CHECK(asks("[111,120.6]", by_goniometer) == "value.unusual");
  CHECK(asks("[111,121]", R"(,"instrument":"inclinometer")") == "value.unusual");
  CHECK(asks("[100,130]", "").empty());
  CHECK(asks("[100,131]", "") == "value.unusual");
  CHECK(asks("[20,150]", by_goniometer + R"(,"confirmed":["value.unusual"])").empty());
  CHECK(at(*trials("knee.flexion_active", R"("kind":"angle","trials":[95,140])", by_goniometer), "/confirm/0/text") ==
        "These readings are 45 apart; measuring itself explains 9.5. Look at each; confirm them, or change one.");
  CHECK(at(*trials("leg.thigh_girth_10cm", R"("kind":"length","trials":[180,474])", R"(,"instrument":"tape")"), "/confirm/0/code") == "value.unusual");
  CHECK(at(*trials("leg.thigh_girth_10cm", R"("kind":"length","trials":[470,478])", R"(,"instrument":"tape")"), "/confirm/0/code").empty());
}

TEST_CASE("a correction of a value that has been corrected since is stale, also when it moved to the other side") {
  Form form;
  const std::string before = form.seen;
  const std::string entry = at(form.recorded(Form::flexion(110)), "/recorded/0/entry");
  const std::string shown = form.seen;
  form.recorded(Form::flexion(120, R"(,"replaces":[")" + entry + "\"]", "right"));
  CHECK(codes_of(form.record(Form::flexion(99, R"(,"replaces":[")" + entry + "\"]"), shown)) == "finding.stale");
  CHECK(codes_of(form.record(Form::flexion(99), before)) == "answered");  // that place is empty now
}

TEST_CASE("a signature covers what its signer was shown: what came since is shown first, and nothing changes after it") {
  Form form;
  const std::string early = form.seen;
  form.recorded(Form::flexion(110));
  CHECK(codes_of(form.call("exam.sign", R"({"read_aloud":"Invented",)" + form.rest(early) + "}")) == "revision.old");
  const std::string reply = form.sign();
  CHECK(at(reply, "/signed/by") == form.made.examiner.to_text());
  CHECK(at(reply, "/incomplete/0") == "person");
  CHECK(codes_of(form.record(Form::flexion(120, "", "right"), form.seen)) == "exam.signed");
  CHECK(codes_of(form.call("exam.sign", R"({"read_aloud":"Invented",)" + form.rest() + "}")) == "exam.signed");
  const std::string addendum = form.ok("addendum.record", R"({"kind":"text","reason":"later","text":"an invented word",)" + form.rest() + "}");
  CHECK(at(addendum, "/addendum/text") == "an invented word");
  CHECK(at(form.read(), "/exam/state") == "signed");
}

TEST_CASE("an addendum belongs to a signed exam, and its findings pass the same check") {
  Form form;
  CHECK(codes_of(form.call("addendum.record", R"({"kind":"text","reason":"later","text":"x",)" + form.rest() + "}")) == "exam.not_signed");
  form.sign();
  const auto refused = form.call("addendum.record", R"({"kind":"findings","reason":"later","findings":[)" + Form::flexion(190) + "]," + form.rest() + "}");
  CHECK(codes_of(refused) == "value.out_of_range");
  CHECK(path_of(refused) == "/findings/0/value/toward_deg");
}

TEST_CASE("a correction holds words, values or both; words alone hold no values, and an addendum of values has some") {
  Form form;
  form.sign();
  const std::string both = form.ok("addendum.record", R"({"kind":"correction","reason":"misread","text":"120, not 90","findings":[)" + Form::flexion(120) + "]," + form.rest() + "}");
  CHECK(at(both, "/addendum/text") == "120, not 90");
  CHECK(at(both, "/addendum/findings/0/side") == "left");
  form.seen = at(both, "/revision/0");
  CHECK(codes_of(form.call("addendum.record", R"({"kind":"text","reason":"misread","text":"x","findings":[)" + Form::flexion(120) + "]," + form.rest() + "}")) == "addendum.kind");
  CHECK(codes_of(form.call("addendum.record", R"({"kind":"findings","reason":"misread","text":"x",)" + form.rest() + "}")) == "addendum.kind");
  CHECK(codes_of(form.call("addendum.record", R"({"kind":"correction","reason":"misread",)" + form.rest() + "}")) == "addendum.kind");
}

TEST_CASE("an empty reason is no reason") {
  Form form;
  const std::string finding = at(form.recorded(Form::flexion(110)), "/recorded/0/finding");
  for (const char* reason : {"", "  ", "\\u00a0\\u200b"}) {
    const auto refused = form.call("finding.withdraw", R"({"finding":")" + finding + R"(","reason":")" + reason + "\"," + form.rest() + "}");
    CHECK(codes_of(refused) == "value.empty");
    CHECK(path_of(refused) == "/reason");
  }
}

TEST_CASE("a withdrawn finding leaves its place empty and its history whole, and cannot be withdrawn twice") {
  Form form;
  const std::string finding = at(form.recorded(Form::flexion(110)), "/recorded/0/finding");
  const auto withdraw = [&] { return form.call("finding.withdraw", R"({"finding":")" + finding + R"(","reason":"wrong leg",)" + form.rest() + "}"); };
  const auto done = withdraw();
  REQUIRE(codes_of(done) == "answered");
  form.seen = at(*done, "/revision/0");
  CHECK(at(form.read(), "/exam/findings") == "[]");
  const std::string history = form.ok("finding.history", R"({"exam":")" + form.exam + R"(","item":"knee.flexion_passive"})");
  CHECK(at(history, "/findings/0/standing") == "withdrawn");
  CHECK(codes_of(withdraw()) == "finding.unknown");
}

TEST_CASE("HC-016: a side exchange turns the findings and lists every text and every side it did not turn") {
  Form form;
  form.recorded(Form::flexion(95, R"(,"remark":"the left one was worse")", "right"));
  const std::string told = form.ok("impression.record", R"({"impression":{"text":"stiff knee","side":"left"},)" + form.rest() + "}");
  form.seen = at(told, "/revision/0");
  const std::string planned = form.ok("plan.record", R"({"plan_items":[{"kind":"splint","text":"splint","side":"left"}],)" + form.rest() + "}");
  form.seen = at(planned, "/revision/0");
  CHECK(at(planned, "/open_loops/0/text") == "splint");
  const std::string swapped = form.ok("exam.swap_sides", R"({"reason":"the form was turned round",)" + form.rest() + "}");
  CHECK(at(swapped, "/exchanged/0/side") == "left");
  CHECK(at(swapped, "/exam/findings/0/side") == "left");
  CHECK(at(swapped, "/texts_to_read/0") == at(swapped, "/exam/findings/0/finding"));
  CHECK(at(swapped, "/texts_to_read/1") == "exam.side");
  CHECK(at(swapped, "/texts_to_read/2") == "impression");
  CHECK(at(swapped, "/texts_to_read/3") == at(swapped, "/exam/plan/0/plan_item"));
}

TEST_CASE("a kiosk opens an exam without a person, and neither takes over nor changes what an examiner found") {
  Form form;
  const auto told = [](const std::string& item, const std::string& more = "") {
    return R"({"item":")" + item + R"(","side":"left","value":{"kind":"answer","answer":"yes"})" + more + "}";
  };
  const std::string entry = at(form.recorded(told("history.pop")), "/recorded/0/entry");
  const std::string person = at(form.ok("person.register", R"({"names":[{"text":"Tuma Invented"}],"sex":"male",)" + form.request() + "}"), "/person/person");
  form.caller.scope = Scope::kiosk;
  CHECK(codes_of(form.call("exam.open", R"({"complaint":"free","setting":"outreach","person":")" + person + "\"," + form.request() + "}")) == "token.scope");
  CHECK(codes_of(form.call("exam.open", R"({"complaint":"free","side":"left","setting":"outreach","request":")" + request_id(7001) + "\"}")) ==
        "exam.not_yours");
  CHECK(codes_of(form.call("exam.read", R"({"exam":")" + form.exam + "\"}")) == "exam.not_yours");
  model::ExamId own;
  REQUIRE(model::ExamId::from_text(form.exam, own).empty());
  form.caller.exam = own;  // the token names this exam
  CHECK(codes_of(form.record(told("history.pop", R"(,"replaces":[")" + entry + "\"]"), form.seen)) == "exam.not_yours");
  // C16: what a hand finds is no kiosk's to say; what the person tells is.
  CHECK(codes_of(form.record(form.tender("yes"), form.seen)) == "item.hands_on");
  const std::string reported = form.recorded(told("history.giving_way"));
  CHECK(at(reported, "/recorded/0/finding").size() == 26);
  const std::string shown = form.ok("exam.read", R"({"exam":")" + form.exam + "\"}");
  CHECK(at(shown, "/exam/findings/0/origin") == "self_reported");
  CHECK(at(shown, "/exam/findings/0/entered_by").empty());
}

TEST_CASE("an examiner nobody knows cannot have examined") {
  Form form;
  CHECK(codes_of(form.record(Form::flexion(110, R"(,"examiner":"aaaaaaaaaaaaaaaaaaaaaaaaaa")"), form.seen)) == "examiner.unknown");
  const std::string known = form.made.examiner.to_text();
  CHECK(codes_of(form.record(Form::flexion(110, R"(,"examiner":")" + known + "\""), form.seen)) == "answered");
}

TEST_CASE("the knee rule is not negative while one of two examiners left the bone open, or felt it through guarding") {
  RuleForm form;
  form.recorded(form.tender("no"));
  CHECK(at(form.rule(), "/rules/0/outcome") == "negative");
  form.recorded(form.tender("unsure", R"(,"beside":true)"));
  CHECK(at(form.rule(), "/rules/0/outcome") == "undetermined");
  RuleForm guarded;
  guarded.recorded(guarded.tender("no", R"(,"quality":["guarded"])"));
  CHECK(at(guarded.rule(), "/rules/0/outcome") == "undetermined");
  RuleForm beside_the_bone;
  beside_the_bone.recorded(beside_the_bone.tender("yes", R"(,"quality":["unsure_landmark"])"));
  CHECK(at(beside_the_bone.rule(), "/rules/0/outcome") == "positive");
}

TEST_CASE("a damaged correction unsettles the rule, and closes the exam it belongs to") {
  RuleForm form;
  const std::string entry = at(form.recorded(form.tender("no")), "/recorded/0/entry");
  form.recorded(form.tender("yes", R"(,"replaces":[")" + entry + "\"]"));
  CHECK(at(form.rule(), "/rules/0/outcome") == "positive");
  form.desk->lock();
  // The correction is the newest entry; one bit of its sealed body turns over.
  ledger::test::KeptStore damaged(form.store);
  damaged.rows.back().body[60] ^= 1U;
  auto desk = Desk::open(damaged, form.world, *reference::built_in_edition(), form.made.keyring);
  REQUIRE(desk.has_value());
  REQUIRE((*desk)->unlock("", passphrase).has_value());
  const auto assessed = test::call(**desk, "exam.assess", R"({"exam":")" + form.exam + R"(","only":["rule.ottawa_knee"]})");
  REQUIRE(codes_of(assessed) == "answered");
  CHECK(at(*assessed, "/rules/0/outcome") == "undetermined");
  const auto read = test::call(**desk, "exam.read", R"({"exam":")" + form.exam + "\"}");
  REQUIRE(codes_of(read) == "answered");
  CHECK(at(*read, "/exam/incomplete/0") == "damaged_entries");
  const auto written = test::call(**desk, "finding.record",
                                  R"({"findings":[)" + Form::flexion(99, "", "right") + R"(],"exam":")" + form.exam + R"(","seen":[")" + entry +
                                      R"("],"request":")" + request_id(9999) + "\"}");
  CHECK(codes_of(written) == "entry.seal");
}

TEST_CASE("a move of a withdrawn exam, or by somebody who was not shown the last move, is refused") {
  Form form;
  const auto person = [&](const char* name) {
    return at(form.ok("person.register", R"({"names":[{"text":")" + std::string(name) + R"("}],"sex":"female",)" + form.request() + "}"), "/person/person");
  };
  const std::string one = person("Asha Invented");
  const std::string other = person("Wulan Invented");
  const auto move = [&](const std::string& to, const std::string& revision) {
    return form.call("exam.move", R"({"person":")" + to + R"(","reason":"namesakes",)" + form.rest(revision) + "}");
  };
  const std::string before = form.seen;
  const auto moved = move(one, before);
  REQUIRE(codes_of(moved) == "answered");
  CHECK(at(*moved, "/exam/person") == one);
  CHECK(codes_of(move(other, before)) == "revision.old");
  form.seen = at(*moved, "/revision/0");
  const auto withdrawn = form.call("exam.withdraw", R"({"reason":"entered twice",)" + form.rest() + "}");
  REQUIRE(codes_of(withdrawn) == "answered");
  CHECK(at(*withdrawn, "/exam/state") == "withdrawn");
  CHECK(codes_of(move(other, at(*withdrawn, "/revision/0"))) == "exam.withdrawn");
}

TEST_CASE("HC-065: an exam of a namesake moves to whom it belongs, is found there and no more with the other, and can be moved back") {
  Form form;
  const auto person = [&](const char* born) {
    return at(form.ok("person.register", R"({"names":[{"text":"Awa Invented"}],"sex":"female","birth":{"date":")" + std::string(born) + R"("},)" + form.request() + "}"),
              "/person/person");
  };
  const std::string wrong = person("1961");
  const std::string right = person("1984");
  const auto move = [&](const std::string& to) {
    const std::string moved = form.ok("exam.move", R"({"person":")" + to + R"(","reason":"two women of one name",)" + form.rest() + "}");
    form.seen = at(moved, "/revision/0");
    CHECK(at(moved, "/exam/person") == to);
  };
  const auto found = [&](const std::string& of) { return form.ok("exam.find", R"({"person":")" + of + "\"}").find(form.exam) != std::string::npos; };
  move(wrong);
  form.recorded(Form::flexion(110));
  CHECK(found(wrong));
  move(right);
  CHECK_FALSE(found(wrong));
  CHECK(found(right));
  CHECK(at(form.read(), "/exam/findings/0/value/toward_deg") == "110");
  move(wrong);
  CHECK(found(wrong));
  CHECK_FALSE(found(right));
}

TEST_CASE("HC-116: two forms of one exam, both shown the same revision: two places are two findings, one place is asked back, nothing is lost") {
  Form form;
  const std::string shown = form.seen;
  CHECK(codes_of(form.record(Form::flexion(110), shown)) == "answered");
  CHECK(codes_of(form.record(form.tender("no"), shown)) == "answered");  // another place, by a form that had not seen the first
  const auto later = form.record(Form::flexion(95), shown);
  CHECK(codes_of(later) == "finding.stale");
  REQUIRE_FALSE(later.has_value());
  CHECK(later.error().held_json->find("\"toward_deg\":110") != std::string::npos);
  CHECK(later.error().sent_json->find("\"toward_deg\":95") != std::string::npos);
  const std::string read = form.read();
  CHECK(read.find("\"toward_deg\":110") != std::string::npos);
  CHECK(read.find("knee.fibular_head_tender") != std::string::npos);
}

TEST_CASE("consent keeps what the form left out, and a refusal to be examined is listed at signing") {
  Form form;
  std::string reply = form.ok("consent.record", R"({"consent":{"examine":"yes","record":"yes","by":"self"},)" + form.rest() + "}");
  form.seen = at(reply, "/revision/0");
  const std::string sent = R"({"consent":{"examine":"withdrawn"},)" + form.rest() + "}";
  reply = form.ok("consent.record", sent);
  form.seen = at(reply, "/revision/0");
  CHECK(at(form.ok("consent.record", sent), "/repeat") == "true");
  CHECK(at(reply, "/exam/consent/examine") == "withdrawn");
  CHECK(at(reply, "/exam/consent/record") == "yes");
  CHECK(at(reply, "/exam/consent/by") == "self");
  CHECK(at(form.sign(), "/incomplete/1") == "consent");
}

TEST_CASE("text that would turn the writing direction on a page is refused, and other scripts are kept") {
  Form form;
  const auto told = [&](const std::string& text) {
    return form.call("impression.record", R"({"impression":{"text":")" + text + R"("},)" + form.rest() + "}");
  };
  CHECK(codes_of(told("knee \\u2069\\u202e TFEL")) == "value.control_character");
  CHECK(codes_of(told("\\u0631\\u0643\\u0628\\u0629")) == "answered");
}

}  // namespace limbledger::service::test

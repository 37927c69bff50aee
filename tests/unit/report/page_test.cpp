// The page that a clinician reads. Wording and order: clinical safety, parts A and C (requirements 1, 7, 8, 10, 17, 18, 24).
#include "core/report/page.hpp"
#include "core/report/text.hpp"

#include "tests/unit/interpret/support.hpp"
#include "tests/unit/report/has.hpp"

#include <doctest/doctest.h>

#include <sstream>

using namespace limbledger;
using report_test::has;
using namespace limbledger::interpret_test;

namespace {

Bench visit() {
  REQUIRE(reference::built_in_edition() != nullptr);
  Bench made(*reference::built_in_edition());
  made.nothing_found();
  made.person->names = std::vector<model::PersonName>{{{"Wulan Invented"}}};
  made.angle("knee.flexion_passive", Side::left, 1185).end_feel = model::Word{"springy_block"};
  made.angle("knee.flexion_passive", Side::right, 1400);
  made.not_done("knee.mcmurray", Side::left, model::WhyNot::pain);
  return made;
}

std::string page_of_bench(const Bench& made) {
  REQUIRE(report::built_in_words() != nullptr);
  return report::exam_page(made.exam, made.person, made.assess(), *report::built_in_words(), *made.edition);
}

void graded_lachman_of_before(Bench& made) {
  made.add("knee.lachman", Side::left, model::Grade{{"laxity/difference"}, {"0"}, std::nullopt, std::nullopt, std::nullopt}).origin = model::Origin::carried_over;
}

// Lines joined, so that a sentence can be looked for across its line breaks.
std::string unbroken(const std::string& page) {
  std::string out;
  for (const char c : page) {
    if (c != '\n' && c != ' ') {
      out += c;
    } else if (!out.empty() && out.back() != ' ') {
      out += ' ';
    }
  }
  return out;
}

}  // namespace

TEST_CASE("no line of the page is wider than 80 columns, and long words are not cut") {
  Bench made = visit();
  made.exam.impression = model::Impression{{std::string(300, 'x') + " torn ligament"}, Side::left, std::nullopt, std::nullopt, std::nullopt};
  std::istringstream lines(page_of_bench(made));
  for (std::string line; std::getline(lines, line);) {
    if (!has(line, "xxxx")) {
      CHECK(report::width_of(line) <= 80);
    }
  }
  CHECK(has(page_of_bench(made), std::string(300, 'x')));
}

TEST_CASE("every page says that it is decision support and what it is for, also an empty one") {
  Bench made(*reference::built_in_edition());
  made.exam.findings.reset();
  made.person.reset();
  const std::string page = unbroken(page_of_bench(made));
  CHECK(has(page, "Decision support for a licensed examiner."));
  CHECK(has(page, "Not tested on real people."));
  CHECK(has(page, "Intended use:"));
  CHECK(has(page, "No name recorded"));
  CHECK(has(page, "Consent. Examine: not asked. Record: not asked. Send: not asked."));
}

TEST_CASE("the examiner's impression stands before findings and before what they support, and is never filled in") {
  Bench made = visit();
  CHECK(has(page_of_bench(made), "Examiner's impression\n---------------------\nNone written."));
  made.exam.impression =
      model::Impression{{"torn ligament, front"}, Side::left, wire::Name{"probable"}, std::vector<wire::Remark>{{"torn meniscus"}}, std::nullopt};
  const std::string page = page_of_bench(made);
  CHECK(has(page, "LEFT: \u2068torn ligament, front\u2069\n"));
  CHECK(has(page, "Certainty, in the examiner's words: \u2068probable\u2069\n"));
  CHECK(has(page, "Alternatives: \u2068torn meniscus\u2069\n"));
  std::size_t last = 0;
  for (const std::string title : {"\nExaminer's impression\n", "\nFound out of the ordinary, as recorded\n", "\nPlan\n", "\nWhat the person was told, and when to come back\n", "\nWithin the error of measurement, and rules without a result\n",
                                  "\nNot done, with the reason\n", "\nNot examined\n", "\nWhat the findings support, in study clinics\n", "\nRules\n", "\nFindings\n",
                                  "\nCompared with published figures, the other side and last time\n", "\nDanger signs asked after\n", "\nCompany, and who spoke\n", "\nSignature\n", "\nWhat this page is\n"}) {
    CAPTURE(title);
    const std::size_t at = page.find(title);
    REQUIRE(at != std::string::npos);
    CHECK(at > last);
    last = at;
  }
}

TEST_CASE("the age of a child under two is said in months, from the second birthday in years") {
  Bench made = visit();
  const auto head = [&] { return unbroken(page_of_bench(made)); };
  made.born(2026, 6, 20);  // examined on 2026-11-24
  CHECK(has(head(), ", 5 months old,"));
  made.born(2024, 11, 25);
  CHECK(has(head(), ", 23 months old,"));
  made.born(2024, 11, 24);
  CHECK(has(head(), ", 2 years,"));
}

TEST_CASE("sides are words in capitals, RIGHT before LEFT, and never an initial alone") {
  const std::string page = page_of_bench(visit());
  const auto item = page.find("Knee flexion, passive\n");
  REQUIRE(item != std::string::npos);
  CHECK(page.find("    RIGHT  140°", item) < page.find("    LEFT   118.5°", item));
  CHECK(has(page, "end feel springy block"));
}

TEST_CASE("what was not done stands with its reason, apart from the findings") {
  const std::string page = page_of_bench(visit());
  CHECK(has(page, "McMurray test, LEFT: pain"));
  CHECK(page.find("McMurray test") > page.find("Not done, with the reason"));
}

TEST_CASE("a statement names interval, people, instrument and source; a rule names its edition") {
  const std::string page = unbroken(page_of_bench(visit()));
  CHECK(has(page,
            "LEFT passive 118.5°: cannot be told from the edge (111.4 to 125.6); less than the other side (140) by 21.5 (believed above 10)"));
  CHECK(has(page, "In brackets: the span of a reading with its error of measurement, where that decides; or the degrees that a difference has to exceed"));
  CHECK(has(page, "against passive: 124.7 to 150.7 in men 20 to 44 years (taught values); figures of SOUCIE2011, "));
  CHECK(has(page,
            "Ottawa knee rule, LEFT (okr/1995): Film not required by the Ottawa knee rule (all items checked today: age, date of the injury, "
            "tenderness of the head of the fibula, tenderness of the kneecap, tenderness of other bone of the knee, flexion, four steps at once after the "
            "injury, four steps now, what the rule was not made for). Not walking better in 5 to 7 days: examine again."));
}

TEST_CASE("an open rule says what it needs and what each answer gives, and never negative") {
  Bench made = visit();
  made.drop("knee.patella_tender");
  const std::string page = unbroken(page_of_bench(made));
  CHECK(has(page, "Cannot say yet: needs tenderness of the kneecap."));
  CHECK(has(page, "no gives film not required; yes gives film advised"));
  CHECK(!has(page, "negative"));
}

TEST_CASE("C7: a contradicted negative never prints film not required") {
  Bench made = visit();
  made.find("gait.steps_now").value = model::CountValue{{1}};
  const std::string page = unbroken(page_of_bench(made));
  CHECK(has(page, "contradicted by cannot walk four steps now"));
  CHECK(!has(page, "Film not required"));
}

TEST_CASE("a positive rule names the criteria that are met") {
  Bench made = visit();
  made.find("knee.fibular_head_tender").value = model::Answer{model::AnswerWord::yes};
  const std::string page = unbroken(page_of_bench(made));
  CHECK(has(page, "Film of the knee advised by the Ottawa knee rule."));
  CHECK(has(page, "Criteria met: head of the fibula tender."));
}

TEST_CASE("a group entry is printed as a group entry, whatever value it carries") {
  Bench made = visit();
  made.angle("knee.extension_active", Side::right, 0).origin = model::Origin::bulk_expected;
  CHECK(has(page_of_bench(made), "RIGHT  no abnormality noted (group entry)"));
}

TEST_CASE("what was not examined is named shortly") {
  Bench made = visit();
  const std::string page = page_of_bench(made);
  const auto at = page.find("\nNot examined\n");
  REQUIRE(at != std::string::npos);
  const std::string after = page.substr(at, page.find("\nWhat the findings support") - at);
  CHECK(has(after, "hip: RIGHT and LEFT"));
  CHECK(has(after, "ankle joint: RIGHT and LEFT"));
  CHECK(has(unbroken(after), "of the minimum set, LEFT: Pulse on the back of the foot;"));
  CHECK(has(after, "Other items were not part of this visit."));
  CHECK(!has(after, "the RIGHT knee"));
}

TEST_CASE("what was not done, and what two examiners found differently, is not listed again as not examined") {
  Bench made = visit();
  made.find("knee.patella_tender").value = model::NotDone{model::WhyNot::no_time, std::nullopt};
  made.yes("knee.fibular_head_tender", Side::left);
  made.drop("history.knee_rule_exclusions");
  const std::string page = page_of_bench(made);
  CHECK(has(page, "no time"));
  const std::size_t at = page.find("\nNot examined\n");
  const std::string after = page.substr(at, page.find("\nWhat the findings support") - at);
  CHECK(!has(after, "tenderness of the kneecap"));
  CHECK(!has(after, "tenderness of the head of the fibula"));
  CHECK(has(after, "what the rule was not made for"));
}

TEST_CASE("a place and an examiner are printed by their names where these are known, else by their ids") {
  Bench made = visit();
  made.exam.place = model::PlaceId{};
  made.exam.examiner = model::ExaminerId{};
  CHECK(has(page_of_bench(made), made.exam.place->to_text()));
  report::PageNames names;
  names.places[*made.exam.place] = "Upper Ford (invented)";
  names.examiners[*made.exam.examiner] = "Invented Examiner";
  const std::string page = unbroken(report::exam_page(made.exam, made.person, made.assess(), *report::built_in_words(), *made.edition, names));
  CHECK(has(page, "Upper Ford (invented)"));
  CHECK(has(page, "Invented Examiner"));
  CHECK(!has(page, made.exam.place->to_text()));
}

TEST_CASE("names written from right to left are isolated, and take no column for it") {
  Bench made = visit();
  made.person->names = std::vector<model::PersonName>{{{"\u0641\u0627\u0637\u0645\u0629"}}};
  CHECK(has(page_of_bench(made), "\u2068\u0641\u0627\u0637\u0645\u0629\u2069"));
  CHECK(report::width_of("\u2068\u0641\u0627\u0637\u0645\u0629\u2069") == 5);
}

TEST_CASE("an angle toward extension is said in words, because its sign is read in two ways") {
  Bench made = visit();
  made.angle("knee.extension_passive", Side::left, -200);
  made.angle("knee.extension_passive", Side::right, 50);
  CHECK(has(page_of_bench(made), "LEFT   20° short of straight"));
  CHECK(has(page_of_bench(made), "RIGHT  5° beyond straight"));
}

TEST_CASE("a negative with something unchecked does not say that all items were checked") {
  Bench made = visit();
  made.drop("knee.bone_tender_elsewhere");
  const std::string page = unbroken(page_of_bench(made));
  CHECK(has(page, "); not checked: tenderness of other bone of the knee. Not walking better"));
}

TEST_CASE("every message that the interpretation can name has words") {
  const report::Words& words = *report::built_in_words();
  for (const std::string name : {"within",
                                 "within_taught",
                                 "below",
                                 "below_taught",
                                 "above",
                                 "above_taught",
                                 "not_distinguishable",
                                 "not_distinguishable_taught",
                                 "norms_disagree",
                                 "norms_disagree_taught",
                                 "no_norm",
                                 "no_norm_fused",
                                 "no_norm_implant",
                                 "no_norm_body",
                                 "needs_age",
                                 "needs_instrument",
                                 "unresolved",
                                 "words_only",
                                 "side_below",
                                 "side_above",
                                 "side_not_distinguishable",
                                 "side_needs_instrument",
                                 "side_other_position",
                                 "past_below",
                                 "past_above",
                                 "past_not_distinguishable",
                                 "past_needs_instrument",
                                 "past_other_position"}) {
    CAPTURE(name);
    CHECK(words.has("msg.motion." + name));
  }
  for (const std::string name : {"repeat_reading", "age_or_sex", "birth", "instrument", "same_position", "same_instrument", "meaning", "number",
                                 "age", "days", "fib", "pat", "other", "flex", "imm", "steps", "excl", "pregnant"}) {
    CAPTURE(name);
    CHECK(words.has("msg.change." + name));
  }
  for (const std::string name : {"positive", "negative", "undetermined", "not_applicable"}) {
    CHECK(words.has("msg.rule.ottawa_knee." + name));
  }
  CHECK(words.has("msg.contradiction.active_beyond_passive"));
}

TEST_CASE("every label, technique and meaning that the catalogue names has words") {
  const report::Words& words = *report::built_in_words();
  for (const model::Item& item : reference::built_in_edition()->items()) {
    CAPTURE(item.item.text);
    CHECK(words.has(item.text.short_.text));
    CHECK(words.has(item.text.how.text));
    CHECK((!item.text.care || words.has(item.text.care->text)));
    for (const model::ChoiceId& choice : item.choices ? *item.choices : std::vector<model::ChoiceId>{}) {
      CHECK(words.has("msg.choice." + choice.text));
    }
  }
  for (const model::Scale& scale : reference::built_in_edition()->scales()) {
    CHECK(words.has(scale.title.text));
    for (const model::ScaleGrade& grade : scale.grades) {
      CHECK(words.has(grade.means.text));
    }
  }
}

TEST_CASE("what was found on an ankle, a foot or the skin, and feeling or flow that is not there, is named as out of the ordinary") {
  Bench made(*reference::built_in_edition());
  made.exam.complaint = {"ankle_injury"};
  made.exam.findings.emplace();
  made.yes("skin.intact", Side::right);
  made.add("nerve.reflex_ankle", Side::right, model::Grade{{"reflex/common-0-4plus"}, {"2+"}, std::nullopt, std::nullopt, std::nullopt});
  made.add("nerve.touch_sole", Side::right, model::Choice{{"felt_as_elsewhere"}});
  made.add("skin.infection_signs", Side::right, model::Choices{{{"none_of_these"}}});
  made.yes("vessel.doppler_arterial_audible", Side::right);
  CHECK(has(unbroken(page_of_bench(made)), "RIGHT: ankle not examined; nothing out of the ordinary in: "));
  CHECK(has(unbroken(page_of_bench(made)), "Skin of foot and ankle whole"));
  CHECK(has(unbroken(page_of_bench(made)), " - LEFT: not examined"));
  made.yes("history.pop", Side::left);
  made.find("history.pop").value = model::Answer{model::AnswerWord::no};
  made.no("body.prosthesis", Side::left);
  graded_lachman_of_before(made);
  CHECK(has(unbroken(page_of_bench(made)), "LEFT: not examined"));  // told or carried over, not looked at
  for (const char* sign : {"ankle.lateral_malleolus_tender", "foot.navicular_tender", "skin.bone_visible", "pelvis.crest_tender"}) {
    made.yes(sign, Side::left);
  }
  for (const char* lost : {"skin.intact", "foot.toes_extension_active", "nerve.toe_touch_great", "vessel.doppler_arterial_audible"}) {
    made.no(lost, Side::left);
  }
  made.add("nerve.reflex_ankle", Side::left, model::Grade{{"reflex/common-0-4plus"}, {"0"}, std::nullopt, std::nullopt, std::nullopt});
  made.add("nerve.touch_sole", Side::left, model::Choice{{"not_felt"}});
  made.add("skin.ulcer_depth", Side::left, model::Choice{{"depth_skin_only"}});
  made.add("skin.infection_signs", Side::left, model::Choices{{{"sign_pus"}}});
  made.add("nerve.monofilament_great_toe", Side::left, model::CountValue{{1}});
  const std::string page = page_of_bench(made);
  const std::size_t from = page.find("Found out of the ordinary");
  const std::string found = unbroken(page.substr(from, page.find("\nPlan\n") - from));
  for (const model::Finding& finding : *made.exam.findings) {
    const bool named = finding.side == Side::left && finding.item.text != "history.pop" && finding.item.text != "knee.lachman" && finding.item.text != "body.prosthesis";
    const std::string label = report::item_label(*report::built_in_words(), *made.edition, finding.item);
    if (named) {
      CHECK_MESSAGE(has(found, label), finding.item.text);
    }
  }
  CHECK(has(found, "RIGHT: ankle not examined; nothing out of the ordinary in: "));
}

TEST_CASE("where no alert stands on the page of another part than the knee, it says what was asked after") {
  Bench made(*reference::built_in_edition());
  made.exam.findings.emplace();
  made.yes("knee.bruising", Side::left);
  const std::string says = "of others, that nothing is raised says nothing";
  CHECK(!has(unbroken(page_of_bench(made)), says));
  made.exam.complaint = {"ankle_injury"};
  CHECK(has(unbroken(page_of_bench(made)), says));
}

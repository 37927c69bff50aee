// Loader checks of the evidence, each shown to fire on one planted row; and the admission of rows (requirement 6 of clinical safety).
#include "core/reference/evidence/admit.hpp"

#include "tests/unit/invented/evidence.hpp"

#include <doctest/doctest.h>

#include <algorithm>

using namespace limbledger;
using reference::AccuracyRow;
using reference::RowClass;

namespace {

struct PlantedEvidence {
  std::string InventedEvidence::*file;
  std::string from;
  std::string to;
  std::string code;
  std::string path;
};

// The fault of this code and path, or nothing.
std::string refused_with(const InventedEvidence& texts, const std::string& code, const std::string& path) {
  const auto edition = reference::Edition::load(texts.view());
  if (edition) {
    return "it loads";
  }
  std::string other;
  for (const wire::Fault& fault : edition.error().faults) {
    if (fault.code == code && fault.path == path) {
      return "refused: " + fault.expected;
    }
    other += fault.code + " " + fault.path + "; ";
  }
  return other;
}

bool has_reason(const reference::Admission& admission, const std::string& reason) {
  return std::any_of(admission.reasons.begin(), admission.reasons.end(), [&](const model::Word& one) { return one.text == reason; });
}

const reference::PersonAtHand adult{model::AgeInterval{30, 30}, false};

reference::Admission admitted(const AccuracyRow& row, const reference::PersonAtHand& knee = adult) {
  return reference::admit(row, invented_evidence_edition().evidence().conditions[0], knee);
}

}  // namespace

TEST_CASE("each check of the evidence fires on one planted bad row, by the row's name") {
  const auto accuracy = &InventedEvidence::accuracy;
  const auto pretest = &InventedEvidence::pretest;
  const auto conditions = &InventedEvidence::conditions;
  const auto settings = &InventedEvidence::settings;
  const auto groups = &InventedEvidence::groups;
  const PlantedEvidence planted[] = {
      {accuracy, "accuracy.invented.pull_b.INVENTED1", "accuracy.invented.pull.INVENTED1", "json.duplicate_member", "/accuracy/1/row"},
      {accuracy, "accuracy.invented.pull.INVENTED1", "accuracy.invented.pull.INVENTED2", "value.disagrees", "/accuracy/0/row"},
      {accuracy, R"("about":"invented tear","test":"pull")", R"("about":"unheard tear","test":"pull")", "params.unknown_word", "/accuracy/0/about"},
      {accuracy, R"("items":["knee.invented_pull"])", R"("items":["knee.no_such"])", "item.unknown", "/accuracy/0/items/0"},
      {accuracy, R"("sens_low":0.7,)", R"("sens_low":0.9,)", "value.out_of_range", "/accuracy/0/sens_low"},
      {accuracy, R"("sens_low":0.7,)", "", "params.missing", "/accuracy/0/sens_low"},
      {accuracy, R"("sens":0.8,)", "", "params.missing", "/accuracy/0/sens"},
      {accuracy, R"("sens":0.9,"spec":0.95)", R"("sens":1.9,"spec":0.95)", "value.out_of_range", "/accuracy/1/sens"},
      {accuracy, R"("lr_pos_low":2,)", R"("lr_pos_low":0,)", "value.out_of_range", "/accuracy/2/lr_pos_low"},
      {accuracy, R"("lr_pos":2,)", R"("lr_pos":2.4,)", "value.disagrees", "/accuracy/5/lr_pos"},
      {accuracy, R"("lr_pos":4,"lr_pos_low":3)", R"("lr_pos":0.4,"lr_pos_low":0.3)", "value.out_of_range", "/accuracy/6/lr_pos"},
      {accuracy, R"("tp":9,"fn":1)", R"("tp":5,"fn":5)", "value.disagrees", "/accuracy/7/counts"},
      {accuracy, R"("sens":0.9,"spec":0.95)", R"("sens":0.9,"spec":1)", "params.missing", "/accuracy/1/counts"},
      {accuracy, R"("age_low":16)", R"("age_low":66,"age_high":65)", "value.out_of_range", "/accuracy/0/age_low"},
      {accuracy, R"("confidence":"d")", R"("confidence":"b")", "value.disagrees", "/accuracy/7/confidence"},
      {accuracy, R"("source":"INVENTED1")", R"("source":"UNLISTED")", "params.unknown_word", "/accuracy/0/source"},
      {accuracy, R"("seen":"invented")", R"("seen":"")", "value.empty", "/accuracy/0/seen"},
      {accuracy, R"("test":"pull_b","items":["knee.invented_pull_b"])", R"("test":"pull","items":["knee.invented_pull"])", "value.disagrees",
       "/accuracy/1/default_for"},
      {accuracy, R"("test":"pull_b")", R"("test":"push")", "params.unknown_word", "/accuracy/1/test"},
      {accuracy, R"("items":["knee.invented_turn"])", R"("items":["knee.invented_pull"])", "value.disagrees", "/accuracy/3/items"},
      {pretest, "pretest.another.primary_care", "pretest.invented.primary_care", "json.duplicate_member", "/pretest/3/row"},
      {pretest, R"("about":"another tear")", R"("about":"unheard tear")", "params.unknown_word", "/pretest/3/about"},
      {pretest, R"("setting":"accidents")", R"("setting":"the moon")", "params.unknown_word", "/pretest/1/setting"},
      {pretest, R"("low":0.4)", R"("low":0.7)", "value.out_of_range", "/pretest/1/low"},
      {pretest, R"("positive":20)", R"("positive":30)", "value.disagrees", "/pretest/0/best"},
      {pretest, R"(,"people":100)", "", "params.missing", "/pretest/0/people"},
      {pretest, R"("queue":true,"default":false)", R"("queue":true,"default":true)", "value.disagrees", "/pretest/2/default"},
      {pretest, R"("because":"a queue",)", "", "params.missing", "/pretest/2/because"},
      {pretest, R"("source":"INVENTED1","status":"read")", R"("source":"INVENTED1","status":"memory")", "value.disagrees", "/pretest/0/default"},
      {pretest, R"("setting":"accidents")", R"("setting":"elsewhere")", "value.disagrees", "/pretest/1/default"},
      {pretest, R"("source":"INVENTED1")", R"("source":"UNLISTED")", "params.unknown_word", "/pretest/0/source"},
      {pretest, R"("seen":"invented")", R"("seen":"")", "value.empty", "/pretest/0/seen"},
      {conditions, "condition.zz_tear", "condition.invented_tear", "json.duplicate_member", "/conditions/1/condition"},
      {conditions, R"(["another tear"])", R"(["another tear","invented tear"])", "json.duplicate_member", "/conditions/1/texts"},
      {conditions, R"("danger":2,)", "", "params.missing", "/conditions/0/danger"},
      {conditions, R"("because":"a flag",)", "", "params.missing", "/conditions/2/because"},
      {conditions, R"("computes":false,"because":"a flag")", R"("parts":["knee"],"computes":true,"danger":3)", "params.missing", "/conditions/2/computes"},
      {settings, R"("text":"accidents")", R"("text":"operations")", "json.duplicate_member", "/settings/2/text"},
      {settings, R"("setting":"emergency")", R"("setting":"emergency","because":"both")", "params.missing", "/settings/1/setting"},
      {groups, "condition.zz_tear", "condition.described", "params.unknown_word", "/groups/1/condition"},
      {groups, R"("group":"turn")", R"("group":"pull")", "json.duplicate_member", "/groups/0/groups/1/group"},
      {groups, R"("test":"pop")", R"("test":"turn")", "json.duplicate_member", "/groups/0/groups/2/members/1/test"},
      {groups, R"("at_least":2)", R"("at_least":3)", "value.out_of_range", "/groups/0/groups/2/members/0/at_least"},
      {groups, R"("item":"knee.invented_turn",)", R"("item":"knee.no_such",)", "item.unknown", "/groups/0/groups/1/members/0/parts/0/item"},
      {groups, R"("item":"knee.invented_turn",)", R"("item":"knee.flexion_active",)", "item.not_applicable",
       "/groups/0/groups/1/members/0/parts/0/item"},
      {groups, R"("yes":["positive"])", R"("yes":["green"])", "params.unknown_word", "/groups/0/groups/0/members/0/parts/0/yes"},
      {groups, R"("no":["negative"])", R"("no":["positive"])", "value.disagrees", "/groups/0/groups/0/members/0/parts/0/no"},
      {groups, R"("yes":["positive"],"no":["negative"])", R"("yes":[],"no":[])", "params.missing", "/groups/0/groups/0/members/0/parts/0/yes"},
      {groups, R"("when":{"item":"knee.invented_sag","words":["positive"]})", R"("when":{"words":["positive"]})", "value.all_or_one",
       "/groups/0/confounders/0/when"},
      {groups, R"("when":{"item":"knee.invented_sag","words":["positive"]})", R"("when":{"item":"knee.invented_sag","words":["positive"],"days_over":3})",
       "value.all_or_one", "/groups/0/confounders/0/when"},
      {groups, R"("when":{"item":"knee.invented_sag","words":["positive"]})", R"("when":{"body":"body_state.no_such"})", "params.unknown_word",
       "/groups/0/confounders/0/when/body"},
      {groups, R"("when":{"item":"knee.invented_sag","words":["positive"]})", R"("when":{"age_over":40,"side":"other"})", "params.missing",
       "/groups/0/confounders/0/when/item"},
      {groups, R"("at_least":2)", R"("at_least":2,"negative_at_most":2)", "value.out_of_range", "/groups/0/groups/2/members/0/negative_at_most"},
      {groups, R"({"item":"knee.invented_pull","yes":["positive"])", R"({"item":"knee.invented_pull","must":true,"yes":["positive"])",
       "value.out_of_range", "/groups/0/groups/0/members/0/parts"},
      {conditions, R"("parts":["knee"],)", "", "params.missing", "/conditions/0/parts"},
      {conditions, R"("parts":["knee"])", R"("parts":["knee"],"not_beside":["no_such"])", "params.unknown_word", "/conditions/0/not_beside"},
      {pretest, R"("needs":["haemarthrosis"])", R"("needs":["haemarthrosis"],"without":["concern.no_such"])", "params.unknown_word", "/pretest/1/without"},
      {conditions, R"("parts":["knee"])", R"("parts":["moon"])", "params.unknown_word", "/conditions/0/parts"},
      {accuracy, R"("age_low":16)", R"("age_low":16,"days_low":4)", "params.missing", "/accuracy/0/days_low"},
      {accuracy, R"("age_low":16)", R"("age_low":16,"days_low":4,"days_high":3)", "value.out_of_range", "/accuracy/0/days_low"},
      {groups, R"("swelling_items":["history.invented_swelling"])", R"("swelling_items":["history.nothing"])", "item.unknown",
       "/groups/1/swelling_items"},
  };
  for (const PlantedEvidence& one : planted) {
    InventedEvidence texts = invented_evidence();
    std::string& text = texts.*(one.file);
    const std::size_t at = text.find(one.from);
    REQUIRE_MESSAGE(at != std::string::npos, one.from);
    text.replace(at, one.from.size(), one.to);
    const std::string said = refused_with(texts, one.code, one.path);
    CHECK_MESSAGE(said.starts_with("refused: "), one.code << " " << one.path << " but " << said);
  }
}

TEST_CASE("a ratio that does not follow from its shares is refused by its row's name, or carries the reason") {
  InventedEvidence texts = invented_evidence();
  const std::string from = R"("lr_pos":2,)";
  texts.accuracy.replace(texts.accuracy.find(from), from.size(), R"("lr_pos":2.4,)");
  CHECK(refused_with(texts, "value.disagrees", "/accuracy/5/lr_pos").find("accuracy.invented.pop.INVENTED1") != std::string::npos);
  const std::string with_note = R"("lr_pos":2.4,)";
  texts.accuracy.replace(texts.accuracy.find(with_note), with_note.size(), R"("lr_pos":2.4,"ratio_note":"pooled by itself",)");
  CHECK(reference::Edition::load(texts.view()).has_value());
}

TEST_CASE("C6: what may compute, how firmly, and every reason why not") {
  const auto& rows = invented_evidence_edition().evidence().accuracy;
  CHECK(admitted(rows[0]).row_class == RowClass::first);
  CHECK(admitted(rows[0]).reasons.empty());
  CHECK(admitted(rows[1]).row_class == RowClass::second);  // sensitivity and specificity, no interval
  CHECK(admitted(rows[2]).row_class == RowClass::first);   // both ratios with their intervals
  const auto refuses = [&](const std::string& reason, const auto& spoil, reference::PersonAtHand knee = adult) {
    AccuracyRow row = rows[0];
    spoil(row, knee);
    const auto admission = admitted(row, knee);
    CHECK_MESSAGE(admission.row_class == RowClass::none, reason);
    CHECK_MESSAGE(has_reason(admission, reason), reason);
    CHECK(admission.reasons.size() == 1);
  };
  using Knee = reference::PersonAtHand;
  refuses("not_read", [](AccuracyRow& row, Knee&) { row.status = model::Status::memory; });
  refuses("not_read", [](AccuracyRow& row, Knee&) { row.status = model::Status::derived; });
  refuses("one_ratio_or_none", [](AccuracyRow& row, Knee&) { row.spec.reset(); });
  refuses("one_ratio_or_none", [](AccuracyRow& row, Knee&) { row.spec->steps = 10000; });
  refuses("case_control", [](AccuracyRow& row, Knee&) { row.design = reference::Design::case_control; });
  refuses("range", [](AccuracyRow& row, Knee&) { row.range = true; });
  refuses("low_confidence", [](AccuracyRow& row, Knee&) { row.confidence = reference::Confidence::d; });
  refuses("low_confidence", [](AccuracyRow& row, Knee&) { row.confidence = reference::Confidence::low; });
  refuses("younger_than_studied", [](AccuracyRow&, Knee& knee) { knee.age = model::AgeInterval{15, 15}; });
  refuses("younger_than_studied", [](AccuracyRow&, Knee& knee) { knee.age = model::AgeInterval{15, 17}; });  // perhaps 15
  refuses("age_not_known", [](AccuracyRow&, Knee& knee) { knee.age.reset(); });
  refuses("older_than_studied", [](AccuracyRow& row, Knee& knee) {
    row.age_high = reference::AgeLimit{65};
    knee.age = model::AgeInterval{66, 66};
  });
  refuses("under_anaesthesia", [](AccuracyRow& row, Knee&) { row.setting = reference::StudyPhase::anaesthesia; });
  refuses("acute_only", [](AccuracyRow& row, Knee&) { row.setting = reference::StudyPhase::acute; });
  refuses("chronic_only", [](AccuracyRow& row, Knee& knee) {
    row.setting = reference::StudyPhase::chronic;
    knee.acute = true;
  });
  const auto of_days = [](AccuracyRow& row) {
    row.days_low = reference::DayLimit{4};
    row.days_high = reference::DayLimit{7};
  };
  refuses("other_days_studied", [&](AccuracyRow& row, Knee&) { of_days(row); });  // no day is known
  refuses("other_days_studied", [&](AccuracyRow& row, Knee& knee) {
    of_days(row);
    knee.days = reference::DayInterval{3, 5};  // perhaps three
  });
  refuses("other_sex_studied", [](AccuracyRow& row, Knee&) { row.sex = model::Sex::female; });
  refuses("other_sex_studied", [](AccuracyRow& row, Knee& knee) {
    row.sex = model::Sex::female;
    knee.sex = model::Sex::unknown;
  });
  AccuracyRow narrow = rows[0];
  of_days(narrow);
  narrow.sex = model::Sex::female;
  CHECK(admitted(narrow, {model::AgeInterval{30, 30}, true, reference::DayInterval{4, 7}, model::Sex::female}).row_class == RowClass::first);
  const auto described = reference::admit(rows[0], invented_evidence_edition().evidence().conditions[2], adult);
  CHECK(has_reason(described, "condition_described_only"));
  AccuracyRow counted = rows[0];
  counted.counts = reference::FourCells{{8}, {2}, {2}, {8}};
  counted.sens_low.reset();
  counted.sens_high.reset();
  CHECK(admitted(counted).row_class == RowClass::first);  // its interval is rebuilt from the counts
}

TEST_CASE("the built-in edition: counts of classes, and what stands behind the defaults") {
  const auto* edition = reference::built_in_edition();
  REQUIRE(edition != nullptr);
  std::size_t admitted_rows = 0;
  for (const AccuracyRow& row : edition->evidence().accuracy) {
    const auto* condition = edition->evidence().condition_of(row.about);
    REQUIRE(condition != nullptr);
    admitted_rows += reference::admit(row, *condition, adult).row_class != RowClass::none ? 1U : 0U;
    if (row.design == reference::Design::case_control) {
      CHECK(reference::admit(row, *condition, adult).row_class == RowClass::none);
    }
  }
  CHECK(admitted_rows > 40);
  // No default from a queue, an expert, or memory; the queue of GOOSSENS2015 (0.83) is there and is none.
  bool queue = false;
  for (const reference::PretestRow& row : edition->evidence().pretest) {
    queue = queue || (row.best.steps == 8310 && row.queue && !row.default_);
  }
  CHECK(queue);
  // One default for a test in a fresh knee and another in an old one.
  const auto& evidence = edition->evidence();
  CHECK(evidence.default_row({"condition.acl_tear"}, {"lachman"}, true)->row.text == "accuracy.acl.lachman_acute.VANECK2013");
  CHECK(evidence.default_row({"condition.acl_tear"}, {"lachman"}, false)->row.text == "accuracy.acl.lachman.SOKAL2022");
  CHECK(evidence.default_row({"condition.acl_tear"}, {"anterior_drawer"}, false)->row.text == "accuracy.acl.anterior_drawer_chronic.BENJAMINSE2006");
}

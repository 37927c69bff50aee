// Verdicts on motion at their boundaries, with the invented edition: norms 80 to 120 (men 20-44, flexion), 100 to 120 (women),
// 70 to 110 from memory (men 45-69), errors 20 (long goniometer), 5 (inclinometer), 30 (by eye). Error = change / 2.772.
#include "core/interpret/motion/norm.hpp"

#include "tests/unit/interpret/support.hpp"
#include "tests/unit/invented/edition.hpp"

#include <doctest/doctest.h>

using namespace limbledger;
using namespace limbledger::interpret_test;
using interpret::Comparator;
using interpret::StatementGrade;
using interpret::Verdict;

namespace {

const std::string norm_left = "motion.norm:knee.flexion_passive:left";
const std::string side_left = "motion.side:knee.flexion_passive:left";
const std::string past_left = "motion.past:knee.flexion_passive:left";

Bench with_flexion(std::int64_t tenths, const std::string& instrument = "inclinometer") {
  Bench made(invented_edition());
  made.angle("knee.flexion_passive", Side::left, tenths, instrument);
  return made;
}

Verdict norm_of(std::int64_t tenths, const std::string& instrument = "inclinometer") {
  return with_flexion(tenths, instrument).statement(norm_left).verdict.value_or(interpret::Verdict::norms_disagree);
}

}  // namespace

TEST_CASE("the four verdicts meet exactly where reading and error meet the interval") {
  // 1.96 x 5 / 2.772 = 3.535353...: below 80 - 3.53 is below, from there to 83.53 cannot be told, then within.
  CHECK(norm_of(764) == Verdict::below);
  CHECK(norm_of(765) == Verdict::not_distinguishable);
  CHECK(norm_of(835) == Verdict::not_distinguishable);
  CHECK(norm_of(836) == Verdict::within);
  CHECK(norm_of(1164) == Verdict::within);
  CHECK(norm_of(1165) == Verdict::not_distinguishable);
  CHECK(norm_of(1235) == Verdict::not_distinguishable);
  CHECK(norm_of(1236) == Verdict::above);
}

TEST_CASE("the comparison is exact: with a change of 99 thousandths the error is 70 thousandths, no more and no less") {
  const interpret::Limits limits{80'000, 120'000};
  CHECK(interpret::against_norm(79'930, 79'930, 99, limits) == Verdict::not_distinguishable);
  CHECK(interpret::against_norm(79'929, 79'929, 99, limits) == Verdict::below);
  CHECK(interpret::against_norm(80'070, 80'070, 99, limits) == Verdict::within);
  CHECK(interpret::against_norm(80'069, 80'069, 99, limits) == Verdict::not_distinguishable);
  CHECK(interpret::against_norm(120'070, 120'070, 99, limits) == Verdict::not_distinguishable);
  CHECK(interpret::against_norm(120'071, 120'071, 99, limits) == Verdict::above);
}

TEST_CASE("a coarser instrument makes the same reading undecided") {
  CHECK(norm_of(720) == Verdict::below);
  CHECK(norm_of(720, "goniometer_long") == Verdict::not_distinguishable);
  CHECK(norm_of(720, "by_eye") == Verdict::not_distinguishable);
}

TEST_CASE("without an instrument nothing is said, and the instrument is what is missing") {
  const auto statement = with_flexion(300, "").statement(norm_left);
  CHECK(statement.grade == StatementGrade::cannot_tell);
  CHECK(statement.verdict == Verdict::not_distinguishable);
  REQUIRE(statement.missing.size() == 1);
  CHECK(statement.missing[0].text == "instrument");
}

TEST_CASE("a figure from memory is compared and named, and raises nothing") {
  Bench made = with_flexion(400);
  made.born(1976, 1, 1);
  const auto statement = made.statement(norm_left);
  CHECK(statement.verdict == Verdict::below);
  CHECK(statement.grade == StatementGrade::unclear);
  CHECK(statement.message.text == "msg.motion.below_taught");
  bool named = false;
  for (const auto& line : made.explain(norm_left).lines) {
    named = named || line.text.starts_with("taught value");
  }
  CHECK(named);
}

TEST_CASE("a figure from memory says so also where the reading cannot be told from it, and where figures disagree") {
  Bench made = with_flexion(720);  // 2 above the edge, less than the error of 3.5
  made.born(1976, 1, 1);
  CHECK(made.statement(norm_left).verdict == Verdict::not_distinguishable);
  CHECK(made.statement(norm_left).message.text == "msg.motion.not_distinguishable_taught");
  made.born(1996, 1, 1);
  CHECK(made.statement(norm_left).verdict == Verdict::below);
  made.angle("knee.flexion_passive", Side::left, 765, "inclinometer");
  made.exam.findings->erase(made.exam.findings->begin());
  CHECK(made.statement(norm_left).message.text == "msg.motion.not_distinguishable");
  made.person->birth->date = model::PartialDate{1981, 0, 0};  // 44 or 45: one figure read, one from memory
  CHECK(made.statement(norm_left).message.text == "msg.motion.norms_disagree_taught");
}

TEST_CASE("ages are completed years and both ends of a band belong to it") {
  Bench made = with_flexion(1000);
  made.born(1981, 11, 25);  // 44, one day short of 45
  CHECK(made.statement(norm_left).rows[0].text == "norm.knee.flexion.passive.male.20-44.INVENTED1");
  made.born(1981, 11, 24);  // 45 today
  CHECK(made.statement(norm_left).rows[0].text == "norm.knee.flexion.passive.male.45-69.INVENTED2");
  made.born(1955, 1, 1);  // 71: no row, and a row that does not say how it was moved is no fall-back unless it is named as one
  CHECK(made.statement(norm_left).verdict == Verdict::no_norm);
  made.person->birth.reset();
  CHECK(made.statement(norm_left).missing[0].text == "birth");
}

TEST_CASE("an age that spans two bands asks both; agreement stands and disagreement is said") {
  Bench made = with_flexion(600);
  made.person->birth = model::Birth{std::nullopt, model::AgeYears{45}, model::AgeYears{3}, day(2026, 11, 24)};
  CHECK(made.statement(norm_left).verdict == Verdict::below);
  CHECK(made.statement(norm_left).rows.size() == 3);
  made = with_flexion(760);  // below 80 for the younger, undecided at 70 for the older
  made.person->birth = model::Birth{std::nullopt, model::AgeYears{45}, model::AgeYears{3}, day(2026, 11, 24)};
  CHECK(made.statement(norm_left).verdict == Verdict::norms_disagree);
}

TEST_CASE("with no sex to compare with, both are asked") {
  Bench made = with_flexion(1100);
  made.person->norm_sex = model::NormSex::unspecified;
  CHECK(made.statement(norm_left).verdict == Verdict::within);
  CHECK(made.statement(norm_left).rows.size() == 3);
  made = with_flexion(900);  // within for men, below for women
  made.person->norm_sex = model::NormSex::unspecified;
  CHECK(made.statement(norm_left).verdict == Verdict::norms_disagree);
  CHECK(made.statement(norm_left).grade == StatementGrade::unclear);
}

TEST_CASE("a reading in another position than the row's is not compared with it") {
  Bench made = with_flexion(1000);
  made.exam.findings->front().position = model::Word{"prone"};
  CHECK(made.statement(norm_left).verdict == Verdict::no_norm);
  made.exam.findings->front().position.reset();
  CHECK(made.statement(norm_left).verdict == Verdict::within);
  CHECK(made.statement(norm_left).missing[0].text == "position");
}

TEST_CASE("extension is judged in its own direction, and its number on the axis is not called deg") {
  Bench made(invented_edition());
  made.angle("knee.extension_passive", Side::left, -200, "inclinometer");  // stops 20 short
  const auto statement = made.statement("motion.norm:knee.extension_passive:left");
  CHECK(statement.verdict == Verdict::below);
  CHECK(statement.params.json == R"({"toward":"extension","toward_deg":-20,"low":-4,"high":8,"error_deg":1.8})");
  CHECK(made.explain("motion.norm:knee.extension_passive:left").inputs[0].deg->steps == 200);
}

TEST_CASE("HC-013: a bound is compared by its bound only") {
  Bench made = with_flexion(1200);
  auto& angle = std::get<model::Angle>(made.exam.findings->front().value);
  angle.bound = model::Bound::at_least;
  CHECK(made.statement(norm_left).verdict == Verdict::not_distinguishable);
  CHECK(made.statement(norm_left).params.json == R"({"deg_at_least":120,"low":80,"high":120,"error_deg":1.8})");
  angle.toward_deg = model::Degrees{1300};
  CHECK(made.statement(norm_left).verdict == Verdict::above);
  angle.bound = model::Bound::at_most;
  CHECK(made.statement(norm_left).verdict == Verdict::not_distinguishable);
  angle.toward_deg = model::Degrees{700};
  CHECK(made.statement(norm_left).verdict == Verdict::below);
}

TEST_CASE("HC-003: a bare sign with no meaning takes part in no comparison") {
  Bench made(invented_edition());
  auto& finding = made.angle("knee.extension_passive", Side::left, 0);
  made.angle("knee.extension_passive", Side::right, 0);
  model::Angle unresolved;
  unresolved.entered = wire::Name{"-10"};
  unresolved.reads = model::Reads::unresolved;
  made.exam.findings->front().value = unresolved;
  static_cast<void>(finding);
  const auto assessment = made.assess();
  REQUIRE(assessment.statements.size() == 2);
  const auto statement = made.statement("motion.norm:knee.extension_passive:left");
  CHECK(statement.grade == StatementGrade::cannot_tell);
  CHECK(statement.comparator == Comparator::none);
  CHECK(statement.missing[0].text == "meaning");
  CHECK(statement.params.json == "{}");
}

TEST_CASE("HC-005: a fused or replaced knee is compared with nobody, not even its other side") {
  for (const char* item : {"body.knee_fused", "body.knee_replaced"}) {
    Bench made = with_flexion(150);
    made.angle("knee.flexion_passive", Side::right, 1000, "inclinometer");
    made.yes(item, Side::left);
    CHECK(made.statement(norm_left).verdict == Verdict::no_norm);
    CHECK(made.statement(norm_left).grade == StatementGrade::cannot_tell);
    CHECK(made.statement(side_left).statement.text.empty());
    CHECK(made.statement("motion.norm:knee.flexion_passive:right").verdict == Verdict::within);
  }
}

TEST_CASE("a side difference is real when it exceeds the larger change and 10 degrees, and not when it equals it") {
  Bench made = with_flexion(1000);
  made.angle("knee.flexion_passive", Side::right, 1100, "inclinometer");
  CHECK(made.statement(side_left).verdict == Verdict::not_distinguishable);
  CHECK(made.statement(side_left).comparator == Comparator::other_side);
  std::get<model::Angle>(made.exam.findings->back().value).toward_deg = model::Degrees{1101};
  CHECK(made.statement(side_left).verdict == Verdict::below);
  CHECK(made.statement(side_left).grade == StatementGrade::notable);
  made.exam.findings->back().instrument = model::Word{"goniometer_long"};  // the larger change of the two methods, 20
  CHECK(made.statement(side_left).verdict == Verdict::not_distinguishable);
  CHECK(made.statement(side_left).params.json.find("\"methods_differ\":true") != std::string::npos);
}

TEST_CASE("HC-015: sides in unlike positions are not compared") {
  Bench made = with_flexion(400);
  made.angle("knee.flexion_passive", Side::right, 1000, "inclinometer").position = model::Word{"prone"};
  CHECK(made.statement(side_left).grade == StatementGrade::cannot_tell);
  CHECK(made.statement(side_left).message.text == "msg.motion.side_other_position");
}

TEST_CASE("HC-031: both knees alike says nothing about either, and both are below the norm") {
  Bench made = with_flexion(600);
  made.angle("knee.flexion_passive", Side::right, 600, "inclinometer");
  CHECK(made.statement(side_left).grade == StatementGrade::unclear);
  CHECK(made.statement(norm_left).verdict == Verdict::below);
  CHECK(made.statement("motion.norm:knee.flexion_passive:right").verdict == Verdict::below);
}

TEST_CASE("the last exam with the same motion is the own past; a withdrawn one, and a later one, are not") {
  Bench made = with_flexion(1000);
  const auto past = [&](int month, std::int64_t tenths) {
    Bench other(invented_edition());
    other.angle("knee.flexion_passive", Side::left, tenths, "inclinometer");
    other.exam.examined_at = at_noon(2026, static_cast<unsigned>(month), 1);
    return other.exam;
  };
  made.earlier = {past(3, 600), past(9, 960), past(1, 500)};
  CHECK(made.statement(past_left).verdict == Verdict::not_distinguishable);
  CHECK(made.statement(past_left).params.json == R"({"deg":100,"other_deg":96,"difference_deg":4,"needed_deg":5})");
  made.earlier[1].state = model::ExamState::withdrawn;
  CHECK(made.statement(past_left).verdict == Verdict::above);
  made.earlier = {past(12, 600)};
  CHECK(made.statement(past_left).statement.text.empty());
}

TEST_CASE("HC-006: active beyond passive by more than the error is asked about; a lag in extension is not") {
  Bench made(invented_edition());
  made.angle("knee.flexion_active", Side::right, 1250, "inclinometer");
  made.angle("knee.flexion_passive", Side::right, 1100, "inclinometer");
  made.angle("knee.extension_active", Side::right, -150, "inclinometer");
  made.angle("knee.extension_passive", Side::right, 0, "inclinometer");
  REQUIRE(made.assess().contradictions.size() == 1);
  CHECK(made.assess().contradictions[0].contradiction.text == "motion.active_beyond_passive:knee.flexion:right");
}

TEST_CASE("without an instrument, active beyond passive is asked about from 30 degrees on, which no hand or eye errs by") {
  for (const std::int64_t active : {1300, 1310}) {
    Bench made(*reference::built_in_edition());
    made.angle("knee.flexion_active", Side::right, active, "");
    made.angle("knee.flexion_passive", Side::right, 1000, "");
    CHECK(made.assess().contradictions.size() == (active > 1300 ? 1 : 0));
  }
}

TEST_CASE("active beyond passive is asked about in one position only: face down a hip may turn further than seated") {
  Bench made(*reference::built_in_edition());
  made.angle("hip.internal_rotation_passive_seated", Side::right, 200, "goniometer_long");
  made.angle("hip.internal_rotation_active_prone", Side::right, 500, "goniometer_long");
  CHECK(made.assess().contradictions.empty());
  made.angle("hip.internal_rotation_passive_prone", Side::right, 200, "goniometer_long");
  REQUIRE(made.assess().contradictions.size() == 1);
  CHECK(made.assess().contradictions[0].contradiction.text == "motion.active_beyond_passive:hip.internal_rotation_prone:right");
}

TEST_CASE("group entries, carried-over values and kiosk answers are not compared") {
  for (const auto origin : {model::Origin::bulk_expected, model::Origin::carried_over, model::Origin::self_reported}) {
    Bench made = with_flexion(600);
    made.exam.findings->front().origin = origin;
    CHECK(made.assess().statements.empty());
  }
}

TEST_CASE("readings held in conflict are judged only where they agree") {
  Bench made = with_flexion(900);
  made.angle("knee.flexion_passive", Side::left, 1000, "inclinometer").standing = model::Standing::in_conflict;
  CHECK(made.statement(norm_left).verdict == Verdict::within);
  std::get<model::Angle>(made.exam.findings->back().value).toward_deg = model::Degrees{600};
  CHECK(made.statement(norm_left).verdict == Verdict::not_distinguishable);
}

TEST_CASE("a norm is never asked of an item that is not done in its position") {
  const model::Item* item = invented_edition().item(model::ItemId{"hip.internal_rotation_passive_seated"});
  REQUIRE(item != nullptr);
  // The two invented norms are lying and face down; the item is done seated, whether or not a position was recorded.
  CHECK(interpret::norm_row(invented_edition(), {item, model::NormSex::male, 360, {}}) == nullptr);
  CHECK(interpret::choose_norm(invented_edition(), {item, model::NormSex::male, 360, {"seated"}}).why == interpret::WhyNone::motion);
  InventedTexts texts = invented_texts();
  const std::size_t at = texts.items.find(R"("item":"hip.internal_rotation_passive_seated")");
  const std::size_t seated = texts.items.find(R"(["seated"])", at);
  REQUIRE(seated != std::string::npos);
  texts.items.replace(seated, 10, R"(["supine"])");
  const auto lying = reference::Edition::load(texts.view());
  REQUIRE(lying.has_value());
  item = (*lying)->item(model::ItemId{"hip.internal_rotation_passive_seated"});
  const reference::NormRow* row = interpret::norm_row(**lying, {item, model::NormSex::male, 360, {}});
  REQUIRE(row != nullptr);
  CHECK(row->position == model::Word{"supine"});
}

namespace {

// The invented edition with one more norm of passive knee flexion, of men of 20 to 44 years as the first one is.
std::unique_ptr<const reference::Edition> with_norm(const std::string& row) {
  InventedTexts texts = invented_texts();
  texts.norms.replace(texts.norms.find('['), 1, "[" + row + ",");
  auto loaded = reference::Edition::load(texts.view());
  REQUIRE(loaded.has_value());
  return std::move(*loaded);
}

std::string other_norm(const std::string& figures, const std::string& rest) {
  return R"({"row":"norm.other","family":"knee.flexion","toward":"flexion","mode":"passive","sex":"male",)" + figures + "," + rest +
         R"(,"source":"INVENTED2","status":"read","seen":"invented"})";
}

}  // namespace

TEST_CASE("two sources of one standing that are in dispute are both asked: agreement stands, else their whole span is said") {
  const std::string disputed = R"("preferred":true,"disputed":true)";
  InventedTexts texts = invented_texts();
  texts.norms.replace(texts.norms.find(R"("preferred":true)"), 16, disputed);
  texts.norms.replace(texts.norms.find('['), 1, "[" + other_norm(R"("age_low":20,"age_high":44,"mean":120,"sd":10)", disputed) + ",");
  const auto both = reference::Edition::load(texts.view());
  REQUIRE(both.has_value());
  Bench made(**both);
  made.angle("knee.flexion_passive", Side::left, 1100, "inclinometer");  // within 80 to 120 and within 100 to 140
  CHECK(made.statement(norm_left).verdict == Verdict::within);
  made.drop("knee.flexion_passive");
  made.angle("knee.flexion_passive", Side::left, 900, "inclinometer");  // within the one, below the other
  CHECK(made.statement(norm_left).verdict == Verdict::norms_disagree);
  CHECK(made.statement(norm_left).message.text == "msg.motion.sources_disagree");
  CHECK(made.statement(norm_left).params.json == R"({"deg":90,"low":80,"high":140,"error_deg":1.8})");
}

TEST_CASE("months decide where a row gives them: the day a child reaches the month, and not the day before") {
  const auto edition = with_norm(other_norm(R"("age_low":0,"age_high":1,"age_months_low":3,"age_months_high":14,"mean":120,"sd":10)", R"("preferred":true)"));
  Bench made(*edition);  // examined on 2026-11-24
  made.angle("knee.flexion_passive", Side::left, 1200, "inclinometer");
  made.born(2026, 8, 25);
  CHECK(made.statement(norm_left).verdict == Verdict::no_norm);
  made.born(2026, 8, 24);
  CHECK(made.statement(norm_left).verdict == Verdict::within);
  made.born(2025, 8, 25);
  CHECK(made.statement(norm_left).verdict == Verdict::within);
  made.born(2025, 8, 24);
  CHECK(made.statement(norm_left).verdict == Verdict::no_norm);
  CHECK(made.statement(norm_left).params.json == R"({"deg":120,"why":"age"})");
}

TEST_CASE("a mean without a spread is shown beside the reading and judges nothing") {
  const auto edition = with_norm(other_norm(R"("age_low":5,"age_high":9,"mean":125)", R"("preferred":true)"));
  Bench made(*edition);
  made.angle("knee.flexion_passive", Side::left, 300, "inclinometer");
  made.born(2020, 1, 1);
  const auto statement = made.statement(norm_left);
  CHECK(statement.verdict == Verdict::no_norm);
  CHECK(statement.grade == StatementGrade::cannot_tell);
  CHECK(statement.message.text == "msg.motion.shown");
  CHECK(statement.params.json == R"({"deg":30,"mean":125,"why":"spread"})");
}

TEST_CASE("observed ends are no limits, a row of low confidence is never asked, and above 84 nobody was measured") {
  const auto observed = with_norm(other_norm(R"("age_low":70,"age_high":99,"mean":100,"sd":10,"typical_low":20,"typical_high":140,"limits":"observed")", R"("preferred":true)"));
  Bench made(*observed);
  made.angle("knee.flexion_passive", Side::left, 720, "inclinometer");
  made.born(1955, 1, 1);  // 71: below 80, though somebody had 20
  CHECK(made.statement(norm_left).verdict == Verdict::below);
  made.born(1945, 1, 1);  // 81: from 80 years the low limit is mean - 2.5 SD
  CHECK(made.statement(norm_left).verdict == Verdict::not_distinguishable);
  made.born(1941, 1, 1);  // 85
  CHECK(made.statement(norm_left).params.json == R"({"deg":72,"why":"over_84"})");
  const auto low = with_norm(other_norm(R"("age_low":70,"age_high":99,"mean":100,"sd":10,"confidence":"low")", R"("preferred":false)"));
  Bench again(*low);
  again.angle("knee.flexion_passive", Side::left, 700, "inclinometer");
  again.born(1955, 1, 1);
  CHECK(again.statement(norm_left).verdict == Verdict::no_norm);
}

TEST_CASE("the working names what a reading was compared with: source, sex, ages, mode, position, instrument") {
  Bench made = with_flexion(1000);
  const auto working = made.explain(norm_left);
  CHECK(std::any_of(working.lines.begin(), working.lines.end(), [](const auto& line) {
    return line.text == "compared with INVENTED1, male, 20 to 44 years, passive, supine, goniometer_long";
  }));
}

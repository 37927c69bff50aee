// Hypotheses on invented evidence: which findings speak, which are left out and why, where the prior comes from, and the
// coherence that requirement 5 of clinical safety asks for. Ratios of the invented rows stand in tests/unit/invented/evidence.hpp.
#include "core/report/page.hpp"
#include "core/report/page_evidence.hpp"
#include "core/wire/write.hpp"

#include "tests/unit/interpret/evidence/bench.hpp"

#include <doctest/doctest.h>

using namespace limbledger;
using namespace limbledger::interpret_test;
using interpret::Strength;
using interpret::Support;

TEST_CASE("hypotheses come once the minimum set is recorded, or when asked for, and only for what is asked") {
  EvidenceBench made;
  made.positive("knee.invented_pull");
  CHECK(made.assess().hypotheses.empty());
  CHECK(made.hypothesis().has_value());
  made.exam.complaint = {"invented_complaint"};
  CHECK(made.assess().hypotheses.empty());
  for (const model::SequenceStep& step : made.edition->sequence({"invented_complaint"})->steps) {
    if (step.minimum && *step.minimum && step.item.text != "knee.flexion_passive") {
      const auto& sides = made.edition->item(step.item)->sides;
      made.add(step.item.text, std::find(sides.begin(), sides.end(), Side::left) != sides.end() ? Side::left : Side::midline,
               model::Words{{"written"}});
    }
  }
  made.not_done("knee.flexion_passive", Side::left, model::WhyNot::declined);
  CHECK(made.assess().hypotheses.empty());  // refused is not recorded
  made.angle("knee.flexion_passive", Side::left, 1300);
  REQUIRE(made.assess().hypotheses.size() == 1);
  auto ask = made.ask();
  ask.only = {"rules"};
  CHECK(interpret::assess(made.exam, made.person, made.earlier, *made.edition, ask).hypotheses.empty());
  ask.only = {"condition.zz"};
  CHECK(interpret::assess(made.exam, made.person, made.earlier, *made.edition, ask).hypotheses.empty());
  ask.only = {"condition.invented"};
  CHECK(interpret::assess(made.exam, made.person, made.earlier, *made.edition, ask).hypotheses.size() == 1);
}

TEST_CASE("the acute knee of the built-in edition: no band before the last step of the minimum set, on the side complained of") {
  const auto* edition = reference::built_in_edition();
  REQUIRE(edition != nullptr);
  const auto* sequence = edition->sequence({"acute_knee"});
  REQUIRE(sequence != nullptr);
  Bench made(*edition);
  made.exam.setting = model::Setting::primary_care;
  made.yes("history.pop", Side::left);
  std::size_t steps = 0;
  for (const model::SequenceStep& step : sequence->steps) {
    if (step.minimum && *step.minimum) {
      CHECK(made.assess().hypotheses.empty());
      const auto& sides = edition->item(step.item)->sides;
      const bool sided = std::find(sides.begin(), sides.end(), Side::left) != sides.end();
      made.add(step.item.text, sided ? Side::left : Side::midline, model::Words{{"written"}});
      ++steps;
    }
  }
  CHECK(steps > 5);
  REQUIRE(made.assess().hypotheses.size() == 1);
  CHECK(made.assess().hypotheses[0].hypothesis.text == "condition.acl_tear");
}

TEST_CASE("one finding on the chosen prior: range over lowest and highest prior, and the working on paper") {
  EvidenceBench made;
  const auto id = made.positive("knee.invented_pull").finding->to_text();
  const auto hypothesis = made.hypothesis();
  REQUIRE(hypothesis.has_value());
  // 0.1 -> 4/9 x ... : 0.111 x 4 = 0.444, 0.308; 0.4 -> 0.667 x 4 = 2.667, 0.727.
  CHECK(range_text(*hypothesis) == "30-75");
  CHECK(bands_text(*hypothesis) == "leave_open,favour");
  CHECK(hypothesis->support == Support::for_);
  CHECK(
      wire::write(*hypothesis) ==
      R"({"hypothesis":"condition.invented_tear","side":"left","bands":["leave_open","favour"],"range":{"low":30,"high":75,"of":100},"support":"for",)"
      R"("strength":"weak","in":"study_clinics","used":[{"finding":")" +
          id + R"(","group":"pull","row":"accuracy.invented.pull.INVENTED1"}],"left_out":[],"message":"msg.hypothesis.leave_open_or_favour"})");
  CHECK(made.line_of("pull positive") == "pull: pull positive: 0.8 / (1 - 0.8) = 4");
  CHECK(made.line_of("ln ") == "ln 4 = 1.386");
  CHECK(made.line_of("point: ") == "point: 0.2 / (1 - 0.2) x 4 = 1; 1 / (1 + 1) = 0.5");
  CHECK(made.line_of("prior ") == "prior 0.2 (0.1 to 0.4): pretest.invented.primary_care.INVENTED1");
  CHECK(made.line_of(" in 100") == "0.308 to 0.727: 30 to 75 in 100, rounded to 5");
}

TEST_CASE("one finding a group: the first in order speaks, the other is left out, whatever it says") {
  EvidenceBench made;
  made.positive("knee.invented_pull");
  const model::FindingId second = *made.positive("knee.invented_pull_b").finding;
  const auto hypothesis = made.hypothesis();
  REQUIRE(hypothesis->used.size() == 1);
  CHECK(hypothesis->used[0].row.text == "accuracy.invented.pull.INVENTED1");
  REQUIRE(hypothesis->left_out.size() == 1);
  CHECK(hypothesis->left_out[0].finding == second);
  CHECK(hypothesis->left_out[0].because.text == "same_group");
}

TEST_CASE("C5: a less trusted test that agrees and said more keeps its figure as an end of the range, and the working names it") {
  EvidenceBench alone;
  alone.positive("knee.invented_pull_b");
  EvidenceBench both;
  both.positive("knee.invented_pull");
  both.positive("knee.invented_pull_b");
  EvidenceBench first;
  first.positive("knee.invented_pull");
  CHECK(both.hypothesis()->range->high == alone.hypothesis()->range->high);
  CHECK(both.hypothesis()->range->low == first.hypothesis()->range->low);
  // 0.25 x 18 = 4.5, 4.5 / 5.5 = 0.818.
  CHECK(both.line_of("replaced by") ==
        "pull_b positive gave 0.818, replaced by pull, which stands before it in the group: 0.5; its figure stays as an end of the range");
  // One that disagrees moves no end.
  EvidenceBench clash;
  clash.positive("knee.invented_pull");
  clash.negative("knee.invented_pull_b");
  CHECK(range_text(*clash.hypothesis()) == range_text(*first.hypothesis()));
  EvidenceBench low;
  low.negative("knee.invented_pull");
  low.negative("knee.invented_pull_b");
  EvidenceBench low_alone;
  low_alone.negative("knee.invented_pull_b");
  CHECK(low.hypothesis()->range->low == low_alone.hypothesis()->range->low);
}

TEST_CASE("C5: turning one result from negative to positive, all else equal, never lowers either end") {
  const char* items[] = {"knee.invented_pull", "knee.invented_pull_b", "knee.invented_turn", "knee.invented_turn_c", "history.invented_pop"};
  int turned = 0;
  for (int code = 0; code < 243; ++code) {
    for (int which = 0; which < 5; ++which) {
      EvidenceBench before;
      EvidenceBench after;
      int rest = code;
      bool negative_here = false;
      for (int i = 0; i < 5; ++i, rest /= 3) {
        const int state = rest % 3;  // not asked, negative, positive
        negative_here = negative_here || (i == which && state == 1);
        if (state == 0) {
          continue;
        }
        const bool is_answer = std::string(items[i]) == "history.invented_pop";
        const auto put = [&](EvidenceBench& bench, bool yes) {
          if (is_answer) {
            bench.answer(items[i], Side::left, yes ? model::AnswerWord::yes : model::AnswerWord::no);
          } else {
            bench.test(items[i], yes ? model::TestResult::positive : model::TestResult::negative);
          }
        };
        put(before, state == 2);
        put(after, state == 2 || i == which);
      }
      if (!negative_here) {
        continue;
      }
      const auto was = before.hypothesis();
      const auto now = after.hypothesis();
      // Half a composite alone is no hypothesis; a result that stands is one after it is turned too.
      CHECK((!was || now.has_value()));
      if (was && now && was->range && now->range) {
        ++turned;
        CHECK(now->range->low.steps >= was->range->low.steps);
        CHECK(now->range->high.steps >= was->range->high.steps);
      }
    }
  }
  CHECK(turned > 300);
}

TEST_CASE("a composite done as defined replaces its members; where a part is not known it does not speak") {
  EvidenceBench made;
  made.positive("knee.invented_turn_c");
  CHECK(!made.hypothesis().has_value());  // half a composite says nothing
  made.yes("history.invented_pop", Side::left);
  auto hypothesis = made.hypothesis();
  REQUIRE(hypothesis.has_value());
  REQUIRE(hypothesis->used.size() == 2);
  CHECK(hypothesis->used[0].row.text == "accuracy.invented.turn_pop.INVENTED1");
  CHECK(made.line_of("left out") == "pop positive: left out: in_composite");
  made.find("knee.invented_turn_c").value = model::NotDone{model::WhyNot::pain, std::nullopt};
  hypothesis = made.hypothesis();
  REQUIRE(hypothesis->used.size() == 1);
  CHECK(hypothesis->used[0].row.text == "accuracy.invented.pop.INVENTED1");
}

TEST_CASE("guarding, a landmark that is not sure, equivocal, group entries and disagreeing examiners tell nothing (ratio 1)") {
  EvidenceBench plain;
  plain.positive("knee.invented_turn");
  const std::string alone = range_text(*plain.hypothesis());
  const auto adds_nothing = [&](const std::string& because, const auto& spoil) {
    EvidenceBench made;
    made.positive("knee.invented_turn");
    spoil(made);
    const auto hypothesis = made.hypothesis();
    CHECK_MESSAGE(range_text(*hypothesis) == alone, because);
    CHECK_MESSAGE(why_left_out(*hypothesis, made.exam.findings->back()) == because, because);
  };
  adds_nothing("guarded", [](EvidenceBench& made) { made.negative("knee.invented_pull").quality = {model::Quality::guarded}; });
  adds_nothing("not_adequate", [](EvidenceBench& made) { made.positive("knee.invented_pull").quality = {model::Quality::unsure_landmark}; });
  adds_nothing("equivocal", [](EvidenceBench& made) { made.test("knee.invented_pull", model::TestResult::equivocal); });
  adds_nothing("group_entry", [](EvidenceBench& made) { made.negative("knee.invented_pull").origin = model::Origin::bulk_expected; });
  adds_nothing("self_reported", [](EvidenceBench& made) { made.negative("knee.invented_pull").origin = model::Origin::self_reported; });
  adds_nothing("unable_pain", [](EvidenceBench& made) { made.not_done("knee.invented_pull", Side::left, model::WhyNot::pain); });
  adds_nothing("examiners_disagree", [](EvidenceBench& made) {
    made.negative("knee.invented_pull");
    made.positive("knee.invented_pull");
  });
  // A guarded positive is a positive.
  EvidenceBench guarded;
  guarded.positive("knee.invented_pull").quality = {model::Quality::guarded};
  EvidenceBench free;
  free.positive("knee.invented_pull");
  CHECK(range_text(*guarded.hypothesis()) == range_text(*free.hypothesis()));
  // Where the preferred test is not adequate, the next of its group speaks.
  EvidenceBench next;
  next.negative("knee.invented_pull").quality = {model::Quality::guarded};
  next.positive("knee.invented_pull_b");
  CHECK(next.hypothesis()->used[0].row.text == "accuracy.invented.pull_b.INVENTED1");
}

TEST_CASE("posterior sag with anterior signs: the positive tells nothing, the negative still does") {
  EvidenceBench made;
  made.positive("knee.invented_sag");
  made.positive("knee.invented_pull");
  auto hypothesis = made.hypothesis();
  REQUIRE(hypothesis.has_value());
  CHECK(why_left_out(*hypothesis, made.exam.findings->back()) == "sag");
  CHECK(hypothesis->support == Support::neither);
  CHECK(bands_text(*hypothesis) == "none");
  made.find("knee.invented_pull").value = model::Test{model::TestResult::negative, std::nullopt};
  CHECK(made.hypothesis()->support == Support::against);
}

TEST_CASE("a graded test is read as its item in the facts says: end feel first, a firm slight opening tells nothing") {
  const auto support = [](const std::string& grade, const std::string& end_feel) {
    EvidenceBench made;
    made.positive("knee.invented_turn");
    model::Grade value;
    value.scale = {"invented/looseness"};
    value.grade = {grade};
    auto& finding = made.add("knee.lachman", Side::left, value);
    if (!end_feel.empty()) {
      finding.end_feel = model::Word{end_feel};
    }
    const auto hypothesis = made.hypothesis();
    if (hypothesis->used.size() == 1) {
      return why_left_out(*hypothesis, made.exam.findings->back());
    }
    return made.line_of("loose ").substr(6, 14);
  };
  CHECK(support("0", "firm") == "loose negative");
  CHECK(support("0", "soft") == "loose positive");
  CHECK(support("1", "firm") == "equivocal");
  CHECK(support("1", "soft") == "loose positive");
  CHECK(support("1", "") == "loose positive");
  CHECK(support("2", "firm") == "loose positive");
}

TEST_CASE("the prior: the exam's setting, outreach falling back, typed before all, a queue never, none leaves a direction") {
  EvidenceBench made;
  made.positive("knee.invented_pull");
  CHECK(made.line_of("prior ").find("primary_care") != std::string::npos);
  made.exam.setting = model::Setting::outreach;
  CHECK(made.line_of("prior ").find("primary_care") != std::string::npos);
  for (const auto setting : {model::Setting::orthopaedic, model::Setting::sports, model::Setting::emergency}) {
    made.exam.setting = setting;
    const auto hypothesis = made.hypothesis();
    CHECK(bands_text(*hypothesis) == "none");
    CHECK(range_text(*hypothesis) == "none");
    CHECK(hypothesis->support == Support::for_);
    CHECK(hypothesis->message.text == "msg.hypothesis.direction_for");
    CHECK(made.line_of("prior") == "no eligible prior: direction only");
  }
  made.priors = {{{invented_tear}, {50}}};
  CHECK(made.line_of("prior ") == "prior 0.5 as typed");
  CHECK(range_text(*made.hypothesis()) == "75-85");  // 80 exactly, and no lone figure
}

TEST_CASE("rapid swelling chooses the prior of knees full of blood, and swelling gives no ratio of its own") {
  EvidenceBench made;
  made.yes("history.invented_swelling", Side::left);
  made.yes("knee.patella_tender", Side::left);
  CHECK(made.line_of("swell positive", "condition.zz_tear") == "swell: swell positive: 4 as printed");
  made.choose_one("history.swelling_onset", Side::left, "within_24h");
  CHECK(made.hypothesis("condition.zz_tear")->used.size() == 1);
  made.find("history.swelling_onset").value = model::Choice{{"within_2h"}};
  const auto hypothesis = made.hypothesis("condition.zz_tear");
  REQUIRE(hypothesis.has_value());
  CHECK(hypothesis->used.empty());
  CHECK(why_left_out(*hypothesis, made.find("history.invented_swelling")) == "in_prior");
  EvidenceBench other;
  other.exam.setting = model::Setting::emergency;
  other.choose_one("history.swelling_onset", Side::left, "within_2h");
  other.positive("knee.invented_pull");
  CHECK(other.line_of("prior ").find("pretest.invented.emergency") != std::string::npos);
}

TEST_CASE("a row that may not compute gives a direction, and the working says why") {
  EvidenceBench made;
  made.yes("knee.patella_tender", Side::left);
  const auto hypothesis = made.hypothesis("condition.zz_tear");
  REQUIRE(hypothesis.has_value());
  CHECK(bands_text(*hypothesis) == "none");
  CHECK(hypothesis->support == Support::for_);
  CHECK(hypothesis->strength == Strength::weak);
  CHECK(why_left_out(*hypothesis, made.exam.findings->back()) == "direction_only");
  CHECK(made.line_of("press", "condition.zz_tear") == "press positive: direction only: not_read, case_control, low_confidence");
}

TEST_CASE("adult rows are never used under 16, nor for an unknown age, nor in a replaced knee") {
  EvidenceBench made;
  made.positive("knee.invented_pull");
  made.born(2011, 6, 1);
  CHECK(bands_text(*made.hypothesis()) == "none");
  CHECK(made.line_of("pull positive") == "pull positive: direction only: younger_than_studied");
  made.person.reset();
  CHECK(made.line_of("pull positive") == "pull positive: direction only: age_not_known");
  EvidenceBench replaced;
  replaced.positive("knee.invented_pull");
  replaced.yes("body.knee_replaced", Side::left);
  CHECK(replaced.hypothesis()->support == Support::neither);
  CHECK(replaced.line_of("left out") == "pull: left out: not_native");
}

TEST_CASE("second class: an error is stated, an interval that holds 1 cannot be told, and nothing stands above favour") {
  EvidenceBench made;
  made.priors = {{{invented_tear}, {80}}};
  made.positive("knee.invented_pull_b");
  CHECK(bands_text(*made.hypothesis()) == "favour");  // 0.986 in all; a first-class row would say strongly
  CHECK(made.line_of("second class").find("no band stands above favour") != std::string::npos);
  EvidenceBench open;
  open.negative("knee.invented_pull");
  open.positive("knee.invented_turn");
  CHECK(bands_text(*open.hypothesis()) == "cannot_tell");  // 0.25 x 6 = 1.5, whose interval holds 1
  CHECK(open.hypothesis()->support == Support::for_);
  CHECK(open.line_of("tells nothing").find("holds 1") != std::string::npos);
}

TEST_CASE("order: what is worst to miss first, then by name; sides by the complaint") {
  EvidenceBench made;
  made.positive("knee.invented_pull");
  made.yes("knee.patella_tender", Side::left);
  made.test("knee.invented_pull", model::TestResult::positive, Side::right);
  auto all = made.hypotheses();
  REQUIRE(all.size() == 2);
  CHECK(all[0].hypothesis.text == "condition.zz_tear");
  CHECK(all[1].hypothesis.text == "condition.invented_tear");
  made.exam.side.reset();
  all = made.hypotheses();
  REQUIRE(all.size() == 3);
  CHECK(all[1].side == Side::left);
  CHECK(all[2].side == Side::right);
}

TEST_CASE("text, numbers and bands of a hypothesis say the same: range in the sentence, never 0, 100 or a lone figure") {
  const auto* words = report::built_in_words();
  REQUIRE(words != nullptr);
  for (int per_cent = 1; per_cent <= 99; ++per_cent) {
    for (int findings = 0; findings < 4; ++findings) {
      EvidenceBench made;
      made.priors = {{{invented_tear}, {per_cent}}};
      made.test("knee.invented_pull", findings % 2 == 0 ? model::TestResult::positive : model::TestResult::negative);
      if (findings > 1) {
        made.test("knee.invented_turn", findings % 2 == 0 ? model::TestResult::positive : model::TestResult::negative);
      }
      const auto hypothesis = made.hypothesis();
      REQUIRE(hypothesis.has_value());
      REQUIRE(hypothesis->range.has_value());
      CHECK(hypothesis->range->low.steps >= 5);
      CHECK(hypothesis->range->high.steps <= 95);
      CHECK(hypothesis->range->low.steps % 5 == 0);
      const std::string text = report::hypothesis_text(*hypothesis, *words, *made.edition);
      CAPTURE(text);
      CHECK(text.find("in 100 such people in study clinics") != std::string::npos);
      const bool in_words = hypothesis->range->high.steps <= 5 || hypothesis->range->low.steps >= 95;  // fewer than, more than
      CHECK((in_words || hypothesis->range->low.steps < hypothesis->range->high.steps));
      CHECK(text.find("msg.") == std::string::npos);
      CHECK(text.find('%') == std::string::npos);
      const std::string bands = bands_text(*hypothesis);
      CHECK((bands == "speak_against") == (hypothesis->range->high.steps < 10));
      CHECK((bands == "strongly_favour") == (hypothesis->range->low.steps > 80));
      if (bands == "speak_against") {
        CHECK(text.find("speak against an ACL tear (fewer than 10 in 100") != std::string::npos);
        CHECK(text.find("not excluded") != std::string::npos);
      }
      if (bands == "favour") {
        CHECK(text.find("Findings favour an ACL tear (about ") != std::string::npos);
      }
    }
  }
}

TEST_CASE("the page says the same sentence as the hypothesis, says once that they do not add up, and why where none is given") {
  const auto* words = report::built_in_words();
  REQUIRE(words != nullptr);
  EvidenceBench made;
  const auto page = [&] {
    std::string text = report::exam_page(made.exam, made.person, interpret::assess(made.exam, made.person, made.earlier, *made.edition, made.asked()),
                                         *words, *made.edition);
    std::string flat;
    for (const char c : text) {
      const bool space = c == ' ' || c == '\n';
      if (!space || flat.empty() || flat.back() != ' ') {
        flat += space ? ' ' : c;
      }
    }
    return flat;
  };
  CHECK(page().find(words->say("msg.page.not_exclusive")) == std::string::npos);
  made.positive("knee.invented_pull");
  CHECK(page().find(report::hypothesis_text(*made.hypothesis(), *words, *made.edition)) != std::string::npos);
  CHECK(page().find(words->say("msg.page.not_exclusive")) != std::string::npos);
}

TEST_CASE("the order of findings changes no byte of a hypothesis, and exchanging left and right exchanges the side alone") {
  const char* items[] = {"knee.invented_pull", "knee.invented_pull_b", "knee.invented_turn", "knee.invented_turn_c", "knee.invented_sag"};
  for (int code = 0; code < 243; ++code) {
    EvidenceBench made;
    int rest = code;
    for (int i = 0; i < 5; ++i, rest /= 3) {
      if (rest % 3 != 0) {
        made.test(items[i], rest % 3 == 1 ? model::TestResult::negative : model::TestResult::positive);
      }
    }
    made.yes("history.invented_pop", Side::left);
    const auto before = made.hypothesis();
    REQUIRE(before.has_value());
    std::reverse(made.exam.findings->begin(), made.exam.findings->end());
    CHECK(wire::write(*made.hypothesis()) == wire::write(*before));
    for (model::Finding& finding : *made.exam.findings) {
      finding.side = Side::right;
    }
    made.exam.side = Side::right;
    auto mirrored = made.hypothesis();
    REQUIRE(mirrored.has_value());
    CHECK(mirrored->side == Side::right);
    mirrored->side = Side::left;
    CHECK(wire::write(*mirrored) == wire::write(*before));
  }
}

TEST_CASE("a negative Lachman of the first two weeks, which the page says cannot be told from the test now, gives no direction by itself") {
  const auto acl_of = [](int month) {
    Bench made(*reference::built_in_edition());
    made.exam.setting = model::Setting::orthopaedic;
    made.exam.injured_on = day(2026, month, 19);
    made.add("knee.lachman", Side::left, model::Grade{{"laxity/difference"}, {"0"}, std::nullopt, std::nullopt, std::nullopt}).end_feel = model::Word{"firm"};
    auto ask = made.ask();
    ask.only = {"condition.acl_tear"};
    return interpret::assess(made.exam, made.person, made.earlier, *made.edition, ask).hypotheses;
  };
  const auto fresh = acl_of(11);
  REQUIRE(fresh.size() == 1);
  CHECK(fresh[0].support == Support::neither);
  CHECK(fresh[0].message.text == "msg.hypothesis.direction_neither");
  const auto later = acl_of(9);
  REQUIRE(later.size() == 1);
  CHECK(later[0].support == Support::against);
}

// Laws over drawn exams of hip, pelvis, ankle and foot: one result turned from negative to positive never lowers its hypothesis
// (requirement 5 of clinical safety; a lower end may move where the sign said nothing before), exchanging the sides exchanges the answer
// alone, and no band is shown before the minimum set. Drawn by a fixed sequence of numbers; nobody is meant.
#include "core/interpret/evidence/judge.hpp"
#include "core/wire/write.hpp"

#include "tests/unit/interpret/support.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>

using namespace limbledger;
using namespace limbledger::interpret_test;
using interpret::Support;

namespace {

struct LimbDraw {
  std::uint64_t state;
  std::size_t below(std::size_t limit) {
    state = state * 6364136223846793005ULL + 1442695040888963407ULL;
    return static_cast<std::size_t>((state >> 33) % limit);
  }
};

const reference::Evidence& facts_of_limb() { return reference::built_in_edition()->evidence(); }

// The first grade of the scale that counts so, with the end feel that the item asks for.
model::Value limb_value(const model::Item& item, const reference::TestPart& part, bool positive, std::optional<model::Word>& end_feel) {
  using model::ValueKind;
  if (item.value == ValueKind::test) {
    return model::Test{positive ? model::TestResult::positive : model::TestResult::negative, std::nullopt};
  }
  if (item.value == ValueKind::choice) {
    return model::Choice{{(positive ? part.yes : part.no).front().text}};
  }
  if (item.value == ValueKind::grade) {
    for (const model::Counts& counts : *item.counts) {
      if (counts.grades && counts.as == (positive ? model::TestResult::positive : model::TestResult::negative)) {
        if (counts.end_feels) {
          end_feel = model::Word{counts.end_feels->front().text};
        }
        model::Grade grade;
        grade.scale = *item.scale;
        grade.grade = {counts.grades->back().text};
        return grade;
      }
    }
  }
  return model::Answer{positive ? model::AnswerWord::yes : model::AnswerWord::no};
}

void say_part(Bench& made, const reference::TestPart& part, Side judged, bool positive) {
  const model::Item& item = *made.edition->item(part.item);
  const bool sided = item.sides.size() > 1;
  const Side side = !sided ? Side::midline : (part.side && *part.side == reference::OnSide::other ? interpret::other_side(judged) : judged);
  std::optional<model::Word> end_feel;
  model::Value value = limb_value(item, part, positive, end_feel);
  model::Finding& finding = made.add(part.item.text, side, std::move(value));
  if (end_feel) {
    finding.end_feel = *end_feel;
  }
}

std::optional<interpret::Hypothesis> judged_one(const Bench& made, const model::Word& condition, const std::vector<interpret::TypedPrior>& priors,
                                                Side side) {
  const interpret::View view(made.exam, made.person, *made.edition, made.ask().as_of);
  for (auto& judged : interpret::judge_hypotheses(view, priors)) {
    if (judged.result.hypothesis == condition && judged.result.side == side) {
      return judged.result;
    }
  }
  return std::nullopt;
}

int limb_rank(const std::optional<interpret::Hypothesis>& one) {
  return !one || one->support == Support::neither ? 1 : (one->support == Support::for_ ? 2 : 0);
}

// Each item of a condition once, as the first part that names it reads it.
std::vector<reference::TestPart> parts_of(const reference::ConditionGroups& groups) {
  std::vector<reference::TestPart> parts;
  std::set<std::string> seen;
  for (const auto& group : groups.groups) {
    for (const auto& member : group.members) {
      for (const auto& part : member.parts) {
        if (seen.insert(part.item.text).second) {
          parts.push_back(part);
        }
      }
    }
  }
  return parts;
}

Bench limb_bench(LimbDraw& draw) {
  Bench made(*reference::built_in_edition());
  made.exam.complaint = {"free"};
  made.exam.setting = model::Setting::outreach;
  made.person->sex = draw.below(2) == 0 ? model::Sex::female : model::Sex::male;
  made.born(draw.below(6) == 0 ? 2014 : 1970, 3, 1);
  made.exam.injured_on.reset();
  if (draw.below(3) > 0) {
    made.exam.injured_on = day(2026, 11, 10 + static_cast<int>(draw.below(15)));
  }
  return made;
}

}  // namespace

TEST_CASE("law: a result of hip, pelvis, ankle or foot turned from negative to positive never lowers its own hypothesis") {
  LimbDraw draw{20261124};
  std::size_t turned = 0;
  std::size_t with_range = 0;
  for (const auto& groups : facts_of_limb().groups) {
    if (facts_of_limb().condition(groups.condition)->parts->front().text == "knee") {
      continue;
    }
    const std::vector<reference::TestPart> parts = parts_of(groups);
    for (int round = 0; round < 60; ++round) {
      const Bench empty = limb_bench(draw);
      std::vector<int> results;
      for (std::size_t i = 0; i < parts.size(); ++i) {
        results.push_back(static_cast<int>(draw.below(5)) / 2);  // negative, positive, not recorded
      }
      std::vector<interpret::TypedPrior> priors;
      if (draw.below(3) > 0) {
        priors.push_back({groups.condition, {static_cast<std::int64_t>(5 + 10 * draw.below(9))}});
      }
      const auto fill = [&](std::size_t turn) {
        Bench made = empty;
        for (std::size_t i = 0; i < parts.size(); ++i) {
          if (results[i] != 2) {
            say_part(made, parts[i], Side::left, results[i] == 1 || i == turn);
          }
        }
        return made;
      };
      const auto before = judged_one(fill(parts.size()), groups.condition, priors, Side::left);
      for (std::size_t i = 0; i < parts.size(); ++i) {
        if (results[i] != 0) {
          continue;
        }
        const auto after = judged_one(fill(i), groups.condition, priors, Side::left);
        CAPTURE(groups.condition.text);
        CAPTURE(parts[i].item.text);
        CAPTURE(before ? wire::write(*before) : std::string("nothing"));
        CAPTURE(after ? wire::write(*after) : std::string("nothing"));
        CHECK(limb_rank(after) >= limb_rank(before));
        if (before && after && before->range && after->range) {
          CHECK(after->range->high.steps >= before->range->high.steps);
          ++with_range;
        }
        ++turned;
      }
    }
  }
  CHECK(turned > 1200);
  CHECK(with_range > 200);
}

TEST_CASE("law: exchanging left and right exchanges the side of a hypothesis of hip or ankle, and nothing else") {
  LimbDraw draw{7};
  std::size_t compared = 0;
  for (const auto& groups : facts_of_limb().groups) {
    const std::vector<reference::TestPart> parts = parts_of(groups);
    for (int round = 0; round < 8; ++round) {
      Bench left = limb_bench(draw);
      Bench right = left;
      right.exam.side = Side::right;
      for (const auto& part : parts) {
        const bool positive = draw.below(2) == 0;
        if (draw.below(4) > 0 && !(positive ? part.yes : part.no).empty()) {
          say_part(left, part, Side::left, positive);
          say_part(right, part, Side::right, positive);
        }
      }
      const auto one = judged_one(left, groups.condition, {}, Side::left);
      auto two = judged_one(right, groups.condition, {}, Side::right);
      REQUIRE(one.has_value() == two.has_value());
      if (one) {
        two->side = Side::left;
        CHECK(wire::write(*one) == wire::write(*two));
        ++compared;
      }
    }
  }
  CHECK(compared > 60);
}

TEST_CASE("C20: at hip, back, ankle and heel no band comes before the last step of the complaint's own minimum set") {
  struct Told {
    const char* complaint;
    std::string item;
  };
  const Told rows[] = {{"lateral_hip", "hip.fader"},   {"posterior_hip", "hip.puranen_orava"}, {"back_leg", "nerve.touch_l5"},
                       {"ankle_injury", "ankle.syndesmosis_squeeze"}, {"calf_pain", "ankle.matles"}, {"heel_pain", "foot.windlass_standing"}};
  for (const Told& one : rows) {
    const std::string& item = one.item;
    const Side side = Side::left;
    CAPTURE(one.complaint);
    Bench made(*reference::built_in_edition());
    made.exam.complaint = {one.complaint};
    const auto* sequence = made.edition->sequence(made.exam.complaint);
    REQUIRE(sequence != nullptr);
    if (item == "nerve.touch_l5") {
      made.add(item, side, model::Choice{{"felt_less"}});
    } else {
      made.add(item, side, model::Test{model::TestResult::positive, std::nullopt});
    }
    std::size_t steps = 0;
    for (const model::SequenceStep& step : sequence->steps) {
      if (step.minimum && *step.minimum && step.item.text != item) {
        CHECK(made.assess().hypotheses.empty());
        const model::Item& known = *made.edition->item(step.item);
        const bool sided = std::find(known.sides.begin(), known.sides.end(), side) != known.sides.end();
        made.add(step.item.text, sided ? side : Side::midline, model::Words{{"written"}});
        ++steps;
      }
    }
    CHECK(steps > 3);
    CHECK_FALSE(made.assess().hypotheses.empty());
  }
}

// Logic tests of our own rules; the findings are those of drawn exams that a law of what is unrelated had taken for an error.
TEST_CASE("what is read on the other leg: a looseness there too takes its no away, and the sound leg raised speaks of the sore one") {
  const auto of = [](const Bench& made, const std::string& condition) {
    const interpret::View view(made.exam, made.person, *made.edition, made.ask().as_of);
    for (const auto& judged : interpret::judge_hypotheses(view, {})) {
      if (judged.result.hypothesis.text == condition && judged.result.side == Side::left) {
        return judged.result;
      }
    }
    return interpret::Hypothesis{};
  };
  const auto drawer = [](Bench& made, Side side, const std::string& grade) {
    made.add("ankle.anterior_drawer", side, model::Grade{{"laxity/ankle"}, {grade}, std::nullopt, std::nullopt, std::nullopt}).end_feel = model::Word{"soft"};
  };
  Bench ankle(*reference::built_in_edition());
  ankle.exam.complaint = {"free"};
  ankle.exam.injured_on.reset();
  drawer(ankle, Side::left, "0");
  CHECK(of(ankle, "condition.lateral_ankle_ligament_tear").support == Support::against);
  drawer(ankle, Side::right, "3+");
  const auto loose = of(ankle, "condition.lateral_ankle_ligament_tear");
  CHECK(loose.support == Support::neither);
  REQUIRE(loose.left_out.size() == 1);
  CHECK(loose.left_out.front().because.text == "other_side_loose");
  Bench back(*reference::built_in_edition());
  back.exam.complaint = {"free"};
  CHECK(of(back, "condition.lumbar_root_pain").hypothesis.text.empty());
  back.add("nerve.crossed_straight_leg_raise", Side::right, model::Test{model::TestResult::negative, std::nullopt});
  CHECK(of(back, "condition.lumbar_root_pain").support == Support::against);
}

// Logic tests of our own rules (requirement 5 of clinical safety); the findings are those of drawn exams 28714, 31908, 65049 and 75118.
TEST_CASE("a part that turns positive and leaves its composite open never makes the negative beside it weigh more") {
  const auto tear = [](bool tender) {
    Bench made(*reference::built_in_edition());
    made.exam.complaint = {"ankle_injury"};
    made.exam.injured_on = day(2026, 11, 24);
    made.add("ankle.atfl_tender", Side::left, model::Test{tender ? model::TestResult::positive : model::TestResult::negative, std::nullopt});
    made.add("ankle.haematoma", Side::left, model::Answer{model::AnswerWord::no});
    const auto said = judged_one(made, {"condition.lateral_ankle_ligament_tear"}, {{{"condition.lateral_ankle_ligament_tear"}, {50}}}, Side::left);
    REQUIRE(said.has_value());
    return *said;
  };
  // Not tender: the set answers, by its own weak figures (0.71 and 0.33 of VANDIJK1996). Tender and not bruised, with the drawer open: the
  // set is open, the bruise alone would weigh more (0.43 and 0.85 of BALTES2023), and the figure of the set stays as the upper end.
  const auto set = tear(false);
  const auto alone = tear(true);
  REQUIRE(set.range.has_value());
  REQUIRE(alone.range.has_value());
  REQUIRE(alone.used.size() == 1);
  CHECK(alone.used.front().row.text == "accuracy.lateral_ankle_ligament_tear.haematoma_early.BALTES2023");
  CHECK(alone.range->high.steps >= set.range->high.steps);
  CHECK(alone.range->low.steps >= set.range->low.steps);
}

// The finding is that of drawn exam 50521: beyond 430 mm a no of the ordinary grip cannot be told (DRAPER1995, as the item's row says).
// Of a child no figure of adults computes, and the bare direction goes with it.
TEST_CASE("the girth of a thigh too heavy to be held takes the direction of a Lachman's no away, on its own side alone") {
  const auto tear = [](std::optional<Side> heavy, std::int64_t mm) {
    Bench made(*reference::built_in_edition());
    made.exam.complaint = {"free"};
    made.exam.injured_on.reset();
    made.born(2012, 3, 1);
    made.add("knee.lachman", Side::left, model::Grade{{"laxity/difference"}, {"0"}, std::nullopt, std::nullopt, std::nullopt}).end_feel = model::Word{"firm"};
    if (heavy) {
      model::Length girth;
      girth.mm = model::Millimetres{mm};
      made.add("leg.thigh_girth_10cm", *heavy, girth);
    }
    const interpret::View view(made.exam, made.person, *made.edition, made.ask().as_of);
    for (const auto& judged : interpret::judge_hypotheses(view, {})) {
      if (judged.result.hypothesis.text == "condition.acl_tear" && judged.result.side == Side::left) {
        return judged.result.support;
      }
    }
    return Support::for_;
  };
  CHECK(tear(std::nullopt, 0) == Support::against);
  CHECK(tear(Side::left, 430) == Support::against);
  CHECK(tear(Side::left, 632) == Support::neither);
  CHECK(tear(Side::right, 632) == Support::against);
}

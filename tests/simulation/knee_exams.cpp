#include "tests/simulation/knee_exams.hpp"

#include <array>
#include <cstdlib>
#include <set>
#include <string>
#include <string_view>

namespace limbledger::knee_exams {

namespace {

using interpret_test::Bench;
using interpret_test::day;
using interpret_test::Draw;
using model::Side;

enum class Mood { anything, near_rules, near_evidence };

const reference::Edition& facts() { return *reference::built_in_edition(); }

// Tenths, where an item has printed limits, else a small number.
std::int64_t tenths_within(const std::optional<std::vector<model::LimitNumber>>& limits, Draw& draw) {
  if (!limits || limits->size() != 2) {
    return static_cast<std::int64_t>(draw.below(100)) * 10;
  }
  const auto span = static_cast<std::uint64_t>((*limits)[1].steps - (*limits)[0].steps) + 1;
  return (*limits)[0].steps + static_cast<std::int64_t>(draw.below(span));
}

model::Angle angle_toward(const model::Item& item, std::int64_t tenths) {
  model::Angle angle;
  angle.deg = model::Degrees{tenths};
  angle.toward = item.toward;
  angle.toward_deg = model::Degrees{item.end && *item.end == model::AxisEnd::low ? -tenths : tenths};
  return angle;
}

std::optional<model::Value> value_for(const model::Item& item, Draw& draw, std::uint64_t not_done_one_in) {
  if (draw.one_in(not_done_one_in)) {
    return model::NotDone{static_cast<model::WhyNot>(draw.below(16)), std::nullopt};
  }
  switch (item.value) {
    case model::ValueKind::test:
      return model::Test{static_cast<model::TestResult>(draw.below(3)), std::nullopt};
    case model::ValueKind::answer:
      return model::Answer{static_cast<model::AnswerWord>(draw.below(3))};
    case model::ValueKind::grade: {
      const auto& grades = facts().scale(*item.scale)->grades;
      return model::Grade{*item.scale, grades[draw.below(grades.size())].grade, std::nullopt, std::nullopt, std::nullopt};
    }
    case model::ValueKind::choice:
      return model::Choice{(*item.choices)[draw.below(item.choices->size())]};
    case model::ValueKind::choices: {
      const model::ChoiceId none{"none_of_these"};
      const bool has_none = std::find(item.choices->begin(), item.choices->end(), none) != item.choices->end();
      return model::Choices{{has_none && !draw.one_in(5) ? none : (*item.choices)[draw.below(item.choices->size())]}};
    }
    case model::ValueKind::count:
      return model::CountValue{{static_cast<std::int64_t>(draw.below(10))}};
    case model::ValueKind::temperature: {
      model::Temperature value;
      value.cel = model::Celsius{350 + static_cast<std::int64_t>(draw.below(60))};
      return value;
    }
    case model::ValueKind::angle:
      return angle_toward(item, tenths_within(item.confirm, draw));
    default:
      return std::nullopt;
  }
}

void give(Bench& made, const model::Item& item, Side side, model::Value value, Draw& draw, std::uint64_t weak_one_in) {
  model::Finding& finding = made.add(item.item.text, side, std::move(value));
  if (item.positions && !item.positions->empty()) {
    finding.position = item.positions->front();
  }
  if (item.instruments && !item.instruments->empty()) {
    finding.instrument = item.instruments->front();
  }
  if (item.end_feels && draw.one_in(2)) {
    finding.end_feel = (*item.end_feels)[draw.below(item.end_feels->size())];
  }
  if (draw.one_in(weak_one_in)) {
    finding.quality = std::vector<model::Quality>{static_cast<model::Quality>(draw.below(4))};
  }
  if (draw.one_in(weak_one_in)) {
    finding.origin = static_cast<model::Origin>(draw.below(5));
  }
}

// Mostly the first of these, at times the second, unsure, or nothing at all.
std::optional<model::Value> leaning(model::AnswerWord mostly, Draw& draw) {
  const auto other = mostly == model::AnswerWord::no ? model::AnswerWord::yes : model::AnswerWord::no;
  switch (draw.below(16)) {
    case 0:
      return std::nullopt;
    case 1:
      return model::Answer{model::AnswerWord::unsure};
    case 2:
      return model::Answer{other};
    default:
      return model::Answer{mostly};
  }
}

constexpr std::array<std::string_view, 3> tender{"knee.fibular_head_tender", "knee.patella_tender", "knee.bone_tender_elsewhere"};
constexpr std::array<std::string_view, 10> rule_items{"knee.fibular_head_tender", "knee.patella_tender",   "knee.bone_tender_elsewhere",
                                                      "knee.flexion_active",      "history.steps_at_once", "gait.steps_now",
                                                      "history.fall_or_blow",     "body.pregnancy",        "history.knee_rule_exclusions",
                                                      "history.mechanism"};
// What takes a knee out of what is looked at here: seldom, where a knee is to lie near a rule or a hypothesis.
constexpr std::array<std::string_view, 6> outsiders{"body.knee_replaced",   "body.knee_fused",         "general.answers_reliable",
                                                    "knee.look_open_wound", "history.knee_dislocated", "history.patella_dislocated"};

template <std::size_t Count>
bool among(const std::array<std::string_view, Count>& names, const model::ItemId& item) {
  return std::find(names.begin(), names.end(), item.text) != names.end();
}

// Answers that make the rules negative, but for one here and there.
void answer_rules(Bench& made, Draw& draw) {
  const auto say = [&](std::string_view name, Side side, const std::optional<model::Value>& value) {
    if (value) {
      give(made, *facts().item(model::ItemId{std::string(name)}), side, *value, draw, 60);
    }
  };
  for (const Side side : {Side::left, Side::right}) {
    if (side != *made.exam.side && draw.one_in(2)) {
      continue;
    }
    for (const std::string_view name : tender) {
      say(name, side, leaning(model::AnswerWord::no, draw));
    }
    if (!draw.one_in(10)) {
      const bool stiff = draw.one_in(8);
      const std::int64_t flexion = (stiff ? 300 : 900) + static_cast<std::int64_t>(draw.below(stiff ? 600 : 500));
      say("knee.flexion_active", side, angle_toward(*facts().item(model::ItemId{"knee.flexion_active"}), flexion));
    }
  }
  say("history.steps_at_once", Side::midline, leaning(draw.one_in(2) ? model::AnswerWord::yes : model::AnswerWord::no, draw));
  if (!draw.one_in(8)) {
    say("gait.steps_now", Side::midline, model::CountValue{{draw.one_in(4) ? static_cast<std::int64_t>(draw.below(4)) : 4}});
  }
  if (!draw.one_in(12)) {
    const bool none = !draw.one_in(15);
    say("history.knee_rule_exclusions", Side::midline, model::Choices{{{none ? "none_of_these" : "repeat_visit"}}});
  }
  if (draw.one_in(6)) {
    say("history.mechanism", Side::midline, model::Choice{{draw.one_in(2) ? "fall" : "twist"}});
  } else {
    say("history.fall_or_blow", Side::midline, leaning(draw.one_in(2) ? model::AnswerWord::yes : model::AnswerWord::no, draw));
  }
  say("body.pregnancy", Side::midline, leaning(model::AnswerWord::no, draw));
}

const std::set<std::string>& evidence_items() {
  static const std::set<std::string> items = [] {
    std::set<std::string> found;
    for (const auto& condition : facts().evidence().groups) {
      if (facts().evidence().condition(condition.condition)->parts->front().text != "knee") {
        continue;
      }
      for (const auto& group : condition.groups) {
        for (const auto& member : group.members) {
          for (const auto& part : member.parts) {
            found.insert(part.item.text);
          }
        }
      }
    }
    return found;
  }();
  return items;
}

void be_somebody(Bench& made, Mood mood, Draw& draw) {
  made.exam.setting = static_cast<model::Setting>(draw.below(5));
  made.exam.side = draw.one_in(2) ? Side::left : Side::right;
  made.person->sex = draw.one_in(2) ? model::Sex::male : model::Sex::female;
  made.person->norm_sex = draw.one_in(2) ? model::NormSex::male : model::NormSex::female;
  const auto year = [&](int from, std::uint64_t years) { return from + static_cast<int>(draw.below(years)); };
  const int month = 1 + static_cast<int>(draw.below(12));
  if (mood == Mood::near_rules && !draw.one_in(4)) {
    made.born(year(1972, 46), month, 1);
  } else if (mood == Mood::near_evidence && !draw.one_in(5)) {
    made.born(year(1962, 44), month, 1);
  } else {
    made.born(draw.one_in(4) ? year(2005, 20) : year(1940, 66), month, 1);
  }
  made.exam.complaint = {draw.one_in(3) ? "chronic_knee" : "acute_knee"};
  made.exam.injured_on = day(2026, 11, 5 + static_cast<int>(draw.below(20)));
  if (mood == Mood::near_rules && !draw.one_in(6)) {
    made.exam.injured_on = day(2026, 11, 17 + static_cast<int>(draw.below(8)));
  }
  if (draw.one_in(mood == Mood::near_rules ? 10 : 4)) {
    made.exam.injured_on.reset();
  }
}

}  // namespace

Seeds seeds() {
  const auto number = [](const char* name) -> std::optional<std::uint64_t> {
    const char* text = std::getenv(name);
    return text == nullptr ? std::nullopt : std::optional(std::strtoull(text, nullptr, 10));
  };
  const char* tier = std::getenv("LIMBLEDGER_TIER");
  const std::uint64_t otherwise = tier != nullptr && std::string_view(tier) == "full" ? 100'000 : 2'000;
  return {number("LIMBLEDGER_FIRST_EXAM").value_or(1), number("LIMBLEDGER_EXAMS").value_or(otherwise)};
}

Bench random_knee(std::uint64_t seed) {
  Draw draw(seed);
  Bench made(facts());
  const Mood mood = static_cast<Mood>(draw.below(3));
  be_somebody(made, mood, draw);
  if (mood == Mood::near_rules) {
    answer_rules(made, draw);
  }
  const std::uint64_t sparse = mood == Mood::anything ? 1 + draw.below(6) : 8 + draw.below(12);
  const std::uint64_t rare = mood == Mood::anything ? 12 : 40;
  for (const model::Item& item : facts().items()) {
    const bool told = mood == Mood::near_rules && among(rule_items, item.item);
    const bool wanted = mood == Mood::near_evidence && evidence_items().count(item.item.text) > 0;
    const bool outside = mood != Mood::anything && among(outsiders, item.item);
    for (const Side side : item.sides) {
      if (told || !draw.one_in(wanted ? 2 : (outside ? 60 : sparse))) {
        continue;
      }
      if (auto value = value_for(item, draw, rare)) {
        give(made, item, side, std::move(*value), draw, rare);
      }
    }
  }
  return made;
}

}  // namespace limbledger::knee_exams

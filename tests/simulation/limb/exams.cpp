#include "tests/simulation/limb/exams.hpp"

#include "tests/simulation/limb/asked.hpp"

#include <algorithm>
#include <array>
#include <string>

namespace limbledger::limb_exams {

namespace {

using interpret_test::day;
using model::Side;

enum class Mood { anything, as_listed, near_rules, near_evidence, near_dangers };

std::int64_t tenths_between(const std::optional<std::vector<model::LimitNumber>>& limits, Draw& draw) {
  if (!limits || limits->size() != 2) {
    return static_cast<std::int64_t>(draw.below(100)) * 10;
  }
  return (*limits)[0].steps + static_cast<std::int64_t>(draw.below(static_cast<std::uint64_t>((*limits)[1].steps - (*limits)[0].steps) + 1));
}

template <class Quantity>
Quantity quantity(std::int64_t tenths) {
  return Quantity{tenths * Quantity::wire_rule.per_unit / 10};
}

bool holds_word(const std::vector<model::Word>& words, std::string_view text) {
  return std::any_of(words.begin(), words.end(), [&](const model::Word& word) { return word.text == text; });
}

// A no, a negative, or what the catalogue calls ordinary.
std::optional<model::Value> ordinary_value(const model::Item& item, Draw& draw) {
  const auto says = [&](std::string_view word) { return item.ordinary && holds_word(*item.ordinary, word); };
  switch (item.value) {
    case model::ValueKind::test:
      return model::Test{says("positive") ? model::TestResult::positive : model::TestResult::negative, std::nullopt};
    case model::ValueKind::answer:
      return model::Answer{says("yes") ? model::AnswerWord::yes : model::AnswerWord::no};
    case model::ValueKind::grade: {
      const model::Scale& scale = *facts().scale(*item.scale);
      const wire::Name grade = scale.ordinary && !scale.ordinary->empty() ? scale.ordinary->front() : scale.grades.front().grade;
      return model::Grade{*item.scale, grade, std::nullopt, std::nullopt, std::nullopt};
    }
    case model::ValueKind::choice:
      return item.ordinary && !item.ordinary->empty() ? std::optional<model::Value>(model::Choice{{item.ordinary->front().text}})
                                                      : any_value(item, draw, 100);
    case model::ValueKind::choices: {
      const model::ChoiceId none{"none_of_these"};
      const bool has_none = std::find(item.choices->begin(), item.choices->end(), none) != item.choices->end();
      return has_none ? std::optional<model::Value>(model::Choices{{none}}) : any_value(item, draw, 100);
    }
    default:
      return any_value(item, draw, 100);
  }
}

// Mostly ordinary, or mostly not; at times unsure, or a reason why nothing was found.
std::optional<model::Value> leaning_value(const model::Item& item, bool ordinary, Draw& draw) {
  if (ordinary) {
    return draw.one_in(8) ? any_value(item, draw, 10) : ordinary_value(item, draw);
  }
  if (item.value == model::ValueKind::answer && !draw.one_in(6)) {
    const bool yes_is_ordinary = item.ordinary && holds_word(*item.ordinary, "yes");
    return model::Answer{yes_is_ordinary ? model::AnswerWord::no : model::AnswerWord::yes};
  }
  if (item.value == model::ValueKind::test && !draw.one_in(6)) {
    return model::Test{model::TestResult::positive, std::nullopt};
  }
  return any_value(item, draw, 20);
}

void say(Bench& made, const Place& place, std::optional<model::Value> value, Draw& draw, std::uint64_t weak_one_in) {
  const auto& all = *made.exam.findings;
  const bool there = std::any_of(all.begin(), all.end(), [&](const auto& one) { return one.item == place.item->item && one.side == place.side; });
  // Now and then two examiners, or two readings, of one thing.
  if (value && (!there || draw.one_in(12))) {
    give(made, place, std::move(*value), draw, weak_one_in);
  }
}

// One state of a body, opened as its row says.
void be_special(Bench& made, Draw& draw) {
  const auto rows = facts().bodies();
  const reference::BodyRow& row = rows[draw.below(rows.size())];
  const model::Item* item = row.item ? facts().item(*row.item) : nullptr;
  if (item == nullptr) {
    return;
  }
  const Place place{item, item->sides[draw.below(item->sides.size())]};
  if (row.choices) {
    say(made, place, model::Choice{(*row.choices)[draw.below(row.choices->size())]}, draw, 20);
  } else if (row.at_least) {
    say(made, place, model::CountValue{{row.at_least->steps}}, draw, 20);
  } else {
    say(made, place, model::Answer{model::AnswerWord::yes}, draw, 20);
  }
}

void be_of_an_age(Bench& made, Draw& draw) {
  const int month = 1 + static_cast<int>(draw.below(12));
  switch (draw.below(6)) {
    case 0:
      return made.born(2022 + static_cast<int>(draw.below(5)), month > 10 ? 10 : month, 1);
    case 1:
      return made.born(2009 + static_cast<int>(draw.below(14)), month, 1);
    case 2:
      return made.born(1930 + static_cast<int>(draw.below(32)), month, 1);
    default:
      return made.born(1960 + static_cast<int>(draw.below(48)), month, 1);
  }
}

void be_anybody(Bench& made, Draw& draw) {
  const auto sequences = facts().sequences();
  made.exam.complaint = sequences[draw.below(sequences.size())].complaint;
  made.exam.setting = static_cast<model::Setting>(draw.below(5));
  made.exam.side.reset();
  if (!draw.one_in(6)) {
    made.exam.side = draw.one_in(2) ? Side::left : Side::right;
  }
  made.person->sex = draw.one_in(2) ? model::Sex::male : model::Sex::female;
  made.person->norm_sex = draw.one_in(2) ? model::NormSex::male : model::NormSex::female;
  be_of_an_age(made, draw);
  made.exam.injured_on.reset();
  if (!draw.one_in(3)) {
    made.exam.injured_on = day(2026, 11, (draw.one_in(3) ? 1 : 16) + static_cast<int>(draw.below(9)));
  }
}

std::vector<Place> places_of_sequence(const model::Word& complaint) {
  std::vector<Place> places;
  for (const model::SequenceStep& step : facts().sequence(complaint)->steps) {
    const model::Item* item = facts().item(step.item);
    std::vector<const model::Item*> ends{item};
    if (item->arc) {
      ends = {facts().item(item->arc->low), facts().item(item->arc->high)};
    }
    for (const model::Item* end : ends) {
      for (const Side side : end->sides) {
        places.push_back({end, side});
      }
    }
  }
  return places;
}

}  // namespace

const reference::Edition& facts() { return *reference::built_in_edition(); }

std::optional<model::Value> any_value(const model::Item& item, Draw& draw, std::uint64_t not_done_one_in) {
  if (draw.one_in(not_done_one_in)) {
    return model::NotDone{static_cast<model::WhyNot>(draw.below(18)), std::nullopt};
  }
  const auto tenths = [&] { return tenths_between(item.confirm ? item.confirm : item.refuse, draw); };
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
    case model::ValueKind::choices:
      return model::Choices{{(*item.choices)[draw.below(item.choices->size())]}};
    case model::ValueKind::count:
      return model::CountValue{{static_cast<std::int64_t>(draw.below(10))}};
    case model::ValueKind::temperature: {
      model::Temperature value;
      value.cel = model::Celsius{350 + static_cast<std::int64_t>(draw.below(60))};
      return value;
    }
    case model::ValueKind::angle: {
      model::Angle angle;
      const std::int64_t along = tenths();
      angle.deg = model::Degrees{item.end && *item.end == model::AxisEnd::low ? -along : along};
      angle.toward = item.toward;
      angle.toward_deg = model::Degrees{along};
      return angle;
    }
    case model::ValueKind::length: {
      model::Length value;
      value.mm = quantity<model::Millimetres>(tenths());
      return value;
    }
    case model::ValueKind::time: {
      model::Duration value;
      value.s = quantity<model::Seconds>(tenths());
      return value;
    }
    case model::ValueKind::force: {
      model::Force value;
      value.n = quantity<model::Newtons>(tenths());
      return value;
    }
    case model::ValueKind::pressure: {
      model::Pressure value;
      value.mm_hg = quantity<model::MillimetresOfMercury>(tenths());
      return value;
    }
    case model::ValueKind::mass: {
      model::Mass value;
      value.kg = quantity<model::Kilograms>(tenths());
      return value;
    }
    default:
      return std::nullopt;
  }
}

model::Finding& give(Bench& made, const Place& place, model::Value value, Draw& draw, std::uint64_t weak_one_in) {
  const model::Item& item = *place.item;
  model::Finding& finding = made.add(item.item.text, place.side, std::move(value));
  if (item.positions && !item.positions->empty()) {
    finding.position = (*item.positions)[draw.one_in(6) ? draw.below(item.positions->size()) : 0];
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
  if (draw.one_in(10)) {
    finding.pain = model::Pain{wire::Count<0, 10>{static_cast<std::int64_t>(draw.below(11))}, std::nullopt, std::nullopt};
  }
  return finding;
}

Bench random_limb(std::uint64_t seed) {
  Draw draw(seed + 1'000'000);
  Bench made(facts());
  be_anybody(made, draw);
  const auto mood = static_cast<Mood>(draw.below(5));
  for (std::uint64_t n = draw.one_in(3) ? 1 + draw.below(2) : 0; n > 0; --n) {
    be_special(made, draw);
  }
  if (mood == Mood::near_rules) {
    for (const Place& place : asked_by_rules(made.exam.complaint)) {
      if (!draw.one_in(8)) {
        say(made, place, leaning_value(*place.item, !draw.one_in(6), draw), draw, 60);
      }
    }
  }
  if (mood == Mood::near_evidence) {
    for (const Place& place : asked_by_evidence()) {
      if (draw.one_in(3)) {
        say(made, place, any_value(*place.item, draw, 30), draw, 30);
      }
    }
  }
  if (mood == Mood::near_dangers) {
    const auto& dangers = asked_by_dangers();
    for (std::uint64_t n = 1 + draw.below(3); n > 0; --n) {
      const bool ordinary = draw.one_in(4);
      for (const Place& place : dangers[draw.below(dangers.size())]) {
        if (!draw.one_in(4)) {
          say(made, place, leaning_value(*place.item, ordinary, draw), draw, 40);
        }
      }
    }
  }
  const std::uint64_t sparse = 2 + draw.below(10);
  for (const Place& place : places_of_sequence(made.exam.complaint)) {
    if (mood != Mood::anything && draw.one_in(sparse)) {
      say(made, place, leaning_value(*place.item, true, draw), draw, 20);
    }
  }
  const std::uint64_t rare = mood == Mood::anything ? 10 + draw.below(60) : 150;
  for (const model::Item& item : facts().items()) {
    for (const Side side : item.sides) {
      if (draw.one_in(rare)) {
        say(made, {&item, side}, any_value(item, draw, 12), draw, 12);
      }
    }
  }
  return made;
}

}  // namespace limbledger::limb_exams

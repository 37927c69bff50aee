// Laws of what is said of motion, lengths, girths and grades of the whole limb, over seeded random exams with the built-in edition: the
// order of the findings does not matter, exchanging the sides exchanges the answer and nothing else, a repeated reading never makes a
// doubt of a reading notable. People and numbers are invented.
#include "core/wire/write.hpp"

#include "tests/unit/interpret/draw.hpp"
#include "tests/unit/interpret/support.hpp"

#include <doctest/doctest.h>

#include <algorithm>

using namespace limbledger;
using namespace limbledger::interpret_test;

namespace {

constexpr std::size_t limb_exams = 400;

[[nodiscard]] std::optional<model::Value> drawn_value(const reference::Edition& facts, const model::Item& item, Draw& draw) {
  if (draw.one_in(12)) {
    return model::NotDone{static_cast<model::WhyNot>(draw.below(16)), std::nullopt};
  }
  const auto& confirm = item.confirm ? item.confirm : item.refuse;
  const std::int64_t low = confirm && confirm->size() == 2 ? (*confirm)[0].steps : 0;
  const std::int64_t high = confirm && confirm->size() == 2 ? (*confirm)[1].steps : 100;
  const std::int64_t tenths = low + static_cast<std::int64_t>(draw.below(static_cast<std::uint64_t>(high - low) + 1));
  switch (item.value) {
    case model::ValueKind::angle: {
      model::Angle angle;
      angle.deg = model::Degrees{tenths};
      angle.toward = item.toward;
      angle.toward_deg = model::Degrees{item.end && *item.end == model::AxisEnd::low ? -tenths : tenths};
      return angle;
    }
    case model::ValueKind::length: {
      model::Length length;
      length.mm = model::Millimetres{tenths / 10};
      return length;
    }
    case model::ValueKind::time: {
      model::Duration time;
      time.s = model::Seconds{static_cast<std::int64_t>(draw.below(80))};
      return time;
    }
    case model::ValueKind::grade: {
      const auto& grades = facts.scale(*item.scale)->grades;
      return model::Grade{*item.scale, grades[draw.below(grades.size())].grade, std::nullopt, std::nullopt, std::nullopt};
    }
    case model::ValueKind::answer:
      return model::Answer{static_cast<model::AnswerWord>(draw.below(3))};
    case model::ValueKind::choice:
      return model::Choice{(*item.choices)[draw.below(item.choices->size())]};
    default:
      return std::nullopt;
  }
}

[[nodiscard]] bool of_the_limb(const model::Item& item) {
  const std::string& region = item.region.text;
  const bool measured = item.value == model::ValueKind::angle || item.value == model::ValueKind::length || item.value == model::ValueKind::time;
  const bool graded = item.item.text.starts_with("vessel.") || item.item.text.starts_with("nerve.power_") || region == "gait" || region == "pelvis";
  return item.item.text.starts_with("body.") || measured || graded;
}

[[nodiscard]] Bench drawn_exam(std::uint64_t seed) {
  const reference::Edition& facts = *reference::built_in_edition();
  Bench made(facts);
  Draw draw(seed);
  made.exam.complaint = {"free"};
  if (draw.one_in(3)) {
    made.exam.side.reset();
  }
  made.born(static_cast<int>(1935 + draw.below(91)), 1 + static_cast<int>(draw.below(12)), 1 + static_cast<int>(draw.below(28)));
  for (const model::Item& item : facts.items()) {
    if (!of_the_limb(item) || !draw.one_in(item.item.text.starts_with("body.") ? 25 : 3)) {
      continue;
    }
    for (const Side side : item.sides) {
      auto value = draw.one_in(4) ? std::nullopt : drawn_value(facts, item, draw);
      if (!value) {
        continue;
      }
      model::Finding& finding = made.add(item.item.text, side, std::move(*value));
      if (item.instruments && !draw.one_in(8)) {
        finding.instrument = (*item.instruments)[draw.below(item.instruments->size())];
      }
      if (item.positions && !draw.one_in(6)) {
        finding.position = item.positions->front();
      }
    }
  }
  return made;
}

// Statements, contradictions and gaps as written, sorted: which of two stands first may rest on the side's name.
[[nodiscard]] std::vector<std::string> said_of(const Bench& made, bool exchanged) {
  interpret::AssessAsk ask = made.ask();
  ask.only = {"statements", "contradictions", "missing"};
  const auto said = interpret::assess(made.exam, made.person, made.earlier, *made.edition, ask);
  std::vector<std::string> parts;
  const auto add = [&](const auto& list) {
    for (const auto& one : list) {
      parts.push_back(exchanged ? exchange_words(wire::write(one)) : wire::write(one));
    }
  };
  add(said.statements);
  add(said.contradictions);
  add(said.not_examined);
  std::sort(parts.begin(), parts.end());
  return parts;
}

[[nodiscard]] Bench other_way_round(Bench made) {
  for (model::Finding& finding : *made.exam.findings) {
    finding.side = finding.side == Side::left ? Side::right : (finding.side == Side::right ? Side::left : Side::midline);
  }
  if (made.exam.side) {
    made.exam.side = *made.exam.side == Side::left ? Side::right : Side::left;
  }
  return made;
}

}  // namespace

TEST_CASE("laws of the limb's measures: order does not matter, and exchanging the sides exchanges what is said and nothing else") {
  std::size_t measures = 0;
  for (std::uint64_t seed = 1; seed <= limb_exams; ++seed) {
    const Bench made = drawn_exam(seed);
    const auto said = said_of(made, false);
    measures += static_cast<std::size_t>(std::count_if(said.begin(), said.end(), [](const std::string& one) { return one.find("\"measure.") != std::string::npos; }));
    Bench turned = made;
    std::reverse(turned.exam.findings->begin(), turned.exam.findings->end());
    const bool same = said_of(turned, false) == said;
    CHECK_MESSAGE(same, seed);
    const auto mirrored = said_of(other_way_round(made), true);
    const bool exchanged = mirrored == said;
    CHECK_MESSAGE(exchanged, seed);
    for (std::size_t i = 0; !exchanged && i < std::min(said.size(), mirrored.size()); ++i) {
      if (said[i] != mirrored[i]) {
        MESSAGE(said[i] << " | " << mirrored[i]);
        break;
      }
    }
    if (!same || !exchanged) {
      break;
    }
  }
  CHECK(measures > 1000);
}

TEST_CASE("a hip measured last time by another examiner: the error held is that of one who measured twice (PUA2008), and the comparison says so") {
  const auto past_of = [](int now_by, int then_by, const std::string& item, const std::string& instrument) {
    Bench then(*reference::built_in_edition());
    then.exam.examined_at = at_noon(2026, 10, 1);
    model::ExaminerId by;
    by.bytes[15] = static_cast<std::uint8_t>(then_by);
    then.angle(item, Side::left, 1000, instrument).examiner = by;
    Bench now(*reference::built_in_edition());
    by.bytes[15] = static_cast<std::uint8_t>(now_by);
    now.angle(item, Side::left, 1150, instrument).examiner = by;
    now.earlier.push_back(then.exam);
    return now.statement("motion.past:" + item + ":left").params.json;
  };
  const std::string flag = R"("one_rater":true)";
  CHECK(past_of(1, 2, "hip.flexion_passive", "goniometer_long").find(flag) != std::string::npos);
  CHECK(past_of(1, 1, "hip.flexion_passive", "goniometer_long").find(flag) == std::string::npos);
  // HANCOCK2018 measured between examiners.
  CHECK(past_of(1, 2, "knee.flexion_passive", "goniometer_long").find(flag) == std::string::npos);
}

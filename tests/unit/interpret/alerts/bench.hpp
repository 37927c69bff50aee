// A knee of the built-in edition for tests of alerts, and what was raised, asked and flagged. People and findings are invented.
#pragma once

#include "core/interpret/judged.hpp"
#include "core/reference/edition.hpp"
#include "tests/unit/interpret/support.hpp"

#include <doctest/doctest.h>

#include <optional>
#include <string>

namespace limbledger::interpret_test {

// An adult with an injury of the left knee yesterday; or with a knee that nobody hurt.
inline Bench injured_knee() { return Bench(*reference::built_in_edition()); }
inline Bench sore_knee(int born = 1966) {
  Bench bench(*reference::built_in_edition());
  bench.born(born, 1, 1);
  bench.exam.complaint = {"chronic_knee"};
  bench.exam.injured_on.reset();
  bench.add("history.mechanism", Side::midline, model::Choice{{"no_injury"}});
  return bench;
}

inline void graded(Bench& bench, const std::string& item, Side side, const std::string& grade, const std::string& scale) {
  bench.add(item, side, model::Grade{{scale}, {grade}, std::nullopt, std::nullopt, std::nullopt});
}
inline void pulse(Bench& bench, const std::string& item, Side side, const std::string& grade) { graded(bench, item, side, grade, "pulse/0-3"); }
inline void pulses(Bench& bench, Side side, const std::string& grade) {
  pulse(bench, "vessel.pulse_dorsalis_pedis", side, grade);
  pulse(bench, "vessel.pulse_posterior_tibial", side, grade);
}
inline void choice(Bench& bench, const std::string& item, Side side, const std::string& word) { bench.add(item, side, model::Choice{{word}}); }
inline void test(Bench& bench, const std::string& item, Side side, bool positive) {
  bench.add(item, side, model::Test{positive ? model::TestResult::positive : model::TestResult::negative, std::nullopt});
}
inline void temperature(Bench& bench, std::int64_t tenths) {
  model::Temperature value;
  value.cel = model::Celsius{tenths};
  bench.add("general.temperature", Side::midline, value);
}
inline void pressure(Bench& bench, const std::string& item, Side side, std::int64_t mm_hg) {
  model::Pressure value;
  value.mm_hg = model::MillimetresOfMercury{mm_hg};
  bench.add(item, side, value);
}
// Inward rotation of the hip, in degrees.
inline void inward(Bench& bench, Side side, std::int64_t degrees) {
  bench.angle("hip.internal_rotation_passive_seated", side, degrees * 10);
  model::Finding& finding = bench.exam.findings->back();
  auto& angle = std::get<model::Angle>(finding.value);
  angle.deg = model::Degrees{-degrees * 10};
  angle.toward = model::Word{"internal_rotation"};
  finding.position = model::Word{"seated"};
}

inline std::optional<interpret::Alert> alert(const Bench& bench, const std::string& name) {
  for (const auto& one : bench.assess().alerts) {
    if (one.alert.text == "alert." + name) {
      return one;
    }
  }
  return std::nullopt;
}
inline bool raised(const Bench& bench, const std::string& name) {
  const auto found = alert(bench, name);
  return found && found->state == interpret::AlertState::raised;
}
inline bool is_now(const Bench& bench, const std::string& name) {
  const auto found = alert(bench, name);
  return found && found->urgency == interpret::Urgency::now && found->interrupts;
}
inline std::optional<interpret::Question> question(const Bench& bench, const std::string& name) {
  for (const auto& one : bench.assess().questions) {
    if (one.question.text == "alert." + name) {
      return one;
    }
  }
  return std::nullopt;
}
inline bool asks(const Bench& bench, const std::string& name, const std::string& item) {
  const auto found = question(bench, name);
  return found && std::any_of(found->ask.begin(), found->ask.end(), [&](const auto& ask) { return ask.item.text == item; });
}
// raised, asked_no, not_asked, cannot_answer, or "no flag".
inline std::string flag(const Bench& bench, const std::string& name) {
  for (const auto& one : bench.assess().flags) {
    if (one.flag.text == "alert." + name && (!one.side || *one.side == Side::left)) {
      return std::string(wire::type_of<interpret::FlagAnswer>().words[static_cast<std::size_t>(one.answer)]);
    }
  }
  return "no flag";
}
inline bool referred(const Bench& bench, const std::string& name) {
  for (const auto& one : bench.assess().statements) {
    if (one.statement.text.starts_with("referral." + name)) {
      return true;
    }
  }
  return false;
}

}  // namespace limbledger::interpret_test

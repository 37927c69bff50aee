// Exams for tests of hypotheses, on the invented evidence.
#pragma once

#include "core/interpret/evidence/judge.hpp"

#include "tests/unit/interpret/support.hpp"
#include "tests/unit/invented/evidence.hpp"

#include <optional>

namespace limbledger::interpret_test {

inline const std::string invented_tear = "condition.invented_tear";

struct EvidenceBench : Bench {
  std::vector<interpret::TypedPrior> priors;

  EvidenceBench() : Bench(invented_evidence_edition()) { exam.setting = model::Setting::primary_care; }

  model::Finding& test(const std::string& item, model::TestResult result, Side side = Side::left) {
    return add(item, side, model::Test{result, std::nullopt});
  }
  model::Finding& positive(const std::string& item) { return test(item, model::TestResult::positive); }
  model::Finding& negative(const std::string& item) { return test(item, model::TestResult::negative); }
  model::Finding& choose_one(const std::string& item, Side side, const std::string& choice) { return add(item, side, model::Choice{{choice}}); }

  [[nodiscard]] interpret::AssessAsk asked() const {
    interpret::AssessAsk one = ask();
    one.only = {"hypotheses"};
    one.priors = priors;
    return one;
  }
  [[nodiscard]] std::vector<interpret::Hypothesis> hypotheses() const {
    return interpret::assess(exam, person, earlier, *edition, asked()).hypotheses;
  }
  [[nodiscard]] std::optional<interpret::Hypothesis> hypothesis(const std::string& name = invented_tear) const {
    for (const auto& one : hypotheses()) {
      if (one.hypothesis.text == name) {
        return one;
      }
    }
    return std::nullopt;
  }
  [[nodiscard]] std::vector<std::string> lines(const std::string& name = invented_tear) const {
    std::vector<std::string> out;
    const auto working = interpret::explain(exam, person, earlier, *edition, asked(), {name});
    if (working) {
      for (const auto& line : working->lines) {
        out.push_back(line.text);
      }
    }
    return out;
  }
  [[nodiscard]] std::string line_of(const std::string& piece, const std::string& name = invented_tear) const {
    for (const std::string& line : lines(name)) {
      if (line.find(piece) != std::string::npos) {
        return line;
      }
    }
    return "no line with " + piece;
  }
};

inline std::string bands_text(const interpret::Hypothesis& hypothesis) {
  std::string out;
  for (const interpret::Band band : hypothesis.bands.value_or(std::vector<interpret::Band>{})) {
    out += (out.empty() ? "" : ",") + std::string(wire::type_of<interpret::Band>().words[static_cast<std::size_t>(band)]);
  }
  return out.empty() ? "none" : out;
}

inline std::string range_text(const interpret::Hypothesis& hypothesis) {
  return hypothesis.range ? std::to_string(hypothesis.range->low.steps) + "-" + std::to_string(hypothesis.range->high.steps) : "none";
}

inline std::string why_left_out(const interpret::Hypothesis& hypothesis, const model::Finding& finding) {
  for (const auto& one : hypothesis.left_out) {
    if (one.finding == *finding.finding) {
      return one.because.text;
    }
  }
  return "not left out";
}

}  // namespace limbledger::interpret_test

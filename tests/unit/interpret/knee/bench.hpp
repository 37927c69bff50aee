// Exams for tests of one knee's statements: tests and grades in a line. People and numbers are invented.
#pragma once

#include "tests/unit/interpret/support.hpp"
#include "tests/unit/invented/edition.hpp"

namespace limbledger::interpret_test {

struct KneeBench : Bench {
  explicit KneeBench(const reference::Edition& facts = invented_edition()) : Bench(facts) {
    exam.complaint = {"chronic_knee"};
    exam.injured_on = day(2026, 9, 1);
  }

  model::Finding& test(const std::string& item, model::TestResult result, Side side = Side::left) {
    return add(item, side, model::Test{result, std::nullopt});
  }
  // The scale is the item's own.
  model::Finding& grade(const std::string& item, const std::string& text, const std::string& end_feel = "", Side side = Side::left) {
    model::Grade value;
    const model::Item* row = edition->item(std::string_view(item));
    value.scale = row != nullptr && row->scale ? *row->scale : model::ScaleId{"none"};
    value.grade = {text};
    model::Finding& finding = add(item, side, value);
    if (!end_feel.empty()) {
      finding.end_feel = model::Word{end_feel};
    }
    return finding;
  }
  model::Finding& length(const std::string& item, Side side, std::int64_t mm) {
    model::Length value;
    value.mm = model::Millimetres{mm * model::Millimetres::wire_rule.per_unit};
    return add(item, side, value);
  }
  // Toward extension, in tenths; inclinometer: the smallest change is 5 in the invented edition.
  model::Finding& extends(const std::string& mode, std::int64_t tenths, Side side = Side::left) {
    return angle("knee.extension_" + mode, side, tenths, "inclinometer");
  }
  [[nodiscard]] std::string message(const std::string& id) const { return statement(id).message.text; }
  [[nodiscard]] bool says(const std::string& id, const std::string& piece) const {
    return statement(id).params.json.find(piece) != std::string::npos;
  }
  [[nodiscard]] bool has(const std::string& id) const { return !statement(id).statement.text.empty(); }
  [[nodiscard]] bool line(const std::string& id, const std::string& text) const {
    const auto lines = explain(id).lines;
    return std::any_of(lines.begin(), lines.end(), [&](const auto& one) { return one.text == text; });
  }
};

}  // namespace limbledger::interpret_test

// What brings a person back the same day, in clauses that can stand alone: a sign that is there already is no reason to come back "if" it
// comes, and an infant does not stand. What is there already is told once, as that it gets worse.
#pragma once

#include "core/report/page_parts.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace limbledger::report {

class ReturnSigns {
 public:
  explicit ReturnSigns(const PageView& view) : view_(view) {}
  ReturnSigns(const ReturnSigns&) = delete;
  ReturnSigns& operator=(const ReturnSigns&) = delete;

  // The signs of a danger by the name that the sequences have for it, without those that are there or cannot be; empty: none is left.
  [[nodiscard]] std::string of(std::string_view danger);
  // The signs of a foot that lacks blood, told of every injured or bound limb.
  [[nodiscard]] std::string of_blood();
  [[nodiscard]] static bool is_child(const PageView& view);
  // Something was left out because it is there already.
  [[nodiscard]] bool some_are_there() const { return some_are_there_; }

 private:
  // All of them in the one sentence that they have together, else clause by clause.
  [[nodiscard]] std::string said(const std::vector<std::string_view>& parts, std::string_view whole);

  const PageView& view_;
  bool some_are_there_ = false;
};

}  // namespace limbledger::report

// An observation in JSON against the built-in catalogue, for the tests of model.
#pragma once

#include "core/model/check.hpp"
#include "core/reference/edition.hpp"
#include "core/wire/read.hpp"
#include "core/wire/write.hpp"

#include <doctest/doctest.h>

#include <string>
#include <string_view>
#include <vector>

namespace limbledger::tests {

[[nodiscard]] inline model::Observation observation_of(std::string_view json) {
  auto read = wire::read_text<model::Observation>(json);
  REQUIRE_MESSAGE(read.has_value(), json);
  return *read;
}

[[nodiscard]] inline model::Checked check_json(std::string_view json, const std::vector<std::string>& confirmed = {}) {
  const reference::Edition* edition = reference::built_in_edition();
  REQUIRE(edition != nullptr);
  return model::check(observation_of(json), edition->catalogue(), confirmed, "/findings/0");
}

// The value as it would be recorded, or the codes and paths of the faults.
[[nodiscard]] inline std::string recorded(std::string_view json, const std::vector<std::string>& confirmed = {}) {
  const model::Checked checked = check_json(json, confirmed);
  std::string out;
  for (const wire::Fault& fault : checked.faults) {
    out += (out.empty() ? "" : " ") + fault.code + "@" + fault.path.substr(std::string_view("/findings/0").size());
  }
  if (!checked.faults.empty()) {
    CHECK(checked.observations.empty());
    return out;
  }
  for (const model::Observation& observation : checked.observations) {
    out += (out.empty() ? "" : " ") + wire::write(observation.value);
  }
  return out;
}

// A value for one item on one side, on its own.
[[nodiscard]] inline std::string value_for(std::string_view item, std::string_view value, std::string_view side = "left") {
  return R"({"item":")" + std::string(item) + R"(","side":")" + std::string(side) + R"(","value":)" + std::string(value) + "}";
}

}  // namespace limbledger::tests

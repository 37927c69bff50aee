// One file of the facts, read into its described type. Internal to reference; faults carry the path in that file.
#pragma once

#include "core/reference/facts.hpp"
#include "core/wire/read.hpp"

#include <string_view>
#include <utility>

namespace limbledger::reference {

template <class File>
[[nodiscard]] File read_file(std::string_view text, Faults& faults) {
  Result<File> file = wire::read_text<File>(text);
  if (!file) {
    const wire::Refusal refusal = file.error();
    faults.insert(faults.end(), refusal.faults.begin(), refusal.faults.end());
    return {};
  }
  return std::move(*file);
}

}  // namespace limbledger::reference

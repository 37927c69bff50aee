// Strict reading of a tree of nodes into a described type. All independent faults are found in one go, each with its path;
// the target is handed over only when there is none. `lenient` is for stored operations: members unknown here are counted
// and kept apart by the caller instead of refused, and a word unknown here is a fault like any other.
#pragma once

#include "core/wire/parse.hpp"
#include "core/wire/type.hpp"

namespace limbledger::wire {

enum class Unknown : std::uint8_t { refuse, ignore };

struct ReadReport {
  std::vector<Fault> faults;
  std::size_t unknown_members = 0;
};

// Paths in faults start with `path`.
void read_into(const Type& type, void* target, const Document& document, const Node& node, Unknown unknown, const std::string& path,
               ReadReport& report);

template <class T>
[[nodiscard]] Result<T> read(const Document& document, const Node& node, Unknown unknown = Unknown::refuse, const std::string& path = {}) {
  T target{};
  ReadReport report;
  read_into(type_of<T>(), &target, document, node, unknown, path, report);
  if (!report.faults.empty()) {
    return Refusal(std::move(report.faults));
  }
  return target;
}

template <class T>
[[nodiscard]] Result<T> read_text(std::string_view json, Unknown unknown = Unknown::refuse, std::size_t depth_max = depth_max_default) {
  const Result<Document> document = parse(json, depth_max);
  if (!document) {
    return document.error();
  }
  return read<T>(*document, document->root(), unknown);
}

// The known name nearest to a misspelt one, or empty when none is near.
[[nodiscard]] std::string_view nearest(std::string_view name, std::span<const std::string_view> known);

}  // namespace limbledger::wire

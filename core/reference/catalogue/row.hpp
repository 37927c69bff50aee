// One row of a fact file while it is checked: where it stands, its name, and the faults it adds to. Internal to catalogue/.
// A fault carries the path of the row in its file and says, after the row's name, what must hold. No figures of its own.
#pragma once

#include "core/reference/facts.hpp"
#include "core/wire/parse.hpp"

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace limbledger::reference {

struct CheckedRow {
  std::string path;
  std::string name;
  Faults& faults;

  void need(bool holds, std::string_view code, std::string_view member, std::string_view must) const {
    if (!holds) {
      faults.emplace_back(code, path + std::string(member), name + ": " + std::string(must));
    }
  }
};

[[nodiscard]] inline std::string row_path(std::string_view list, std::size_t index) { return "/" + std::string(list) + wire::pointer_step(index); }

// Names that stand more than once.
template <class T, class Get>
void check_once(const std::vector<T>& rows, std::string_view list, std::string_view member, Get get, Faults& faults) {
  std::map<std::string, std::size_t> seen;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const std::string& name = get(rows[i]);
    CheckedRow{row_path(list, i), name, faults}.need(seen.emplace(name, i).second, "json.duplicate_member", member, "a name stands once");
  }
}

void check_sources(const CheckedRow& row, const std::vector<model::SourceId>& sources, const Facts& facts);
// Positions of the contract, section 2.
[[nodiscard]] bool is_position(const model::Word& position);

}  // namespace limbledger::reference

#include "core/interpret/joint/printed.hpp"

namespace limbledger::interpret {

void printed_rows(const View& view, std::initializer_list<std::string_view> rows, Judged& judged) {
  for (const std::string_view name : rows) {
    for (const reference::PrintedRule& rule : view.edition().rules()) {
      if (rule.row.text == name && !rule.sources.empty()) {
        judged.statement.rows.push_back(rule.row);
        judged.working.rows.push_back({rule.row, rule.sources.front(), rule.status, {"{}"}});
      }
    }
    for (const reference::TableRow& line : view.edition().tables()) {
      if (line.row.text == name) {
        judged.statement.rows.push_back(line.row);
        judged.working.rows.push_back({line.row, line.source, line.status, {"{}"}});
      }
    }
  }
}

}  // namespace limbledger::interpret

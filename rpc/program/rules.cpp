// The decision rules of this edition as a list to read, or as JSON.
#include "core/reference/edition.hpp"
#include "core/wire/write.hpp"
#include "rpc/program/commands.hpp"

#include <algorithm>
#include <iostream>

namespace limbledger::rpc {

namespace {

[[nodiscard]] std::string asked_by(const reference::RuleAsks& asks) {
  std::string items;
  for (const model::ItemId& item : asks.items) {
    items += (items.empty() ? " (" : ", ") + item.text;
  }
  return asks.input.text + items + (items.empty() ? "" : ")");
}

void print_rule(const reference::RuleRow& row, const reference::Edition& edition) {
  std::cout << row.rule.text << "  " << row.edition.text << "\n  made for: " << row.made_for.text << "\n  inputs, " << row.asks.size() << ":\n";
  for (const reference::RuleAsks& asks : row.asks) {
    std::cout << "    " << asked_by(asks) << "\n";
  }
  for (const model::SourceId& id : row.sources) {
    const reference::Source* source = edition.source(id);
    std::cout << "  source: " << id.text << ", " << (source == nullptr ? std::string("not in the list") : source->citation.text) << "\n";
  }
  std::cout << "  status: " << wire::type_of<model::Status>().words[static_cast<std::size_t>(row.status)] << "\n";
  if (row.remark) {
    std::cout << "  remark: " << row.remark->text << "\n";
  }
  std::cout << "\n";
}

}  // namespace

ExitCode list_rules(const Options& options) {
  const reference::Edition* edition = reference::built_in_edition();
  if (edition == nullptr) {
    throw Problem(ExitCode::internal, "the facts built into this program do not load\n  what to do: build it again and run its tests");
  }
  const auto rows = edition->decision_rules();
  if (options.json) {
    std::cout << wire::write(std::vector<reference::RuleRow>(rows.begin(), rows.end())) << "\n";
    return ExitCode::done;
  }
  std::cout << rows.size() << " decision rules, edition " << edition->id().text << "\n\n";
  for (const reference::RuleRow& row : rows) {
    print_rule(row, *edition);
  }
  return ExitCode::done;
}

}  // namespace limbledger::rpc

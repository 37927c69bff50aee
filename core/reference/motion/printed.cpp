#include "core/reference/facts.hpp"
#include "core/wire/parse.hpp"

#include <algorithm>
#include <utility>

namespace limbledger::reference {

namespace {

void need_printed(bool holds, std::string_view code, const std::string& path, const std::string& must, Faults& faults) {
  if (!holds) {
    faults.emplace_back(code, path, must);
  }
}

[[nodiscard]] bool used_as_end_feel(const Facts& facts, const model::Word& feel) {
  return std::any_of(facts.items.begin(), facts.items.end(), [&](const model::Item& item) {
    return item.end_feels && std::find(item.end_feels->begin(), item.end_feels->end(), feel) != item.end_feels->end();
  });
}

template <class Row>
void check_names(const std::vector<Row>& rows, std::string_view list, Faults& faults) {
  std::vector<std::pair<model::RowId, std::size_t>> names;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    names.emplace_back(rows[i].row, i);
  }
  std::sort(names.begin(), names.end());
  for (std::size_t i = 1; i < names.size(); ++i) {
    need_printed(!(names[i].first == names[i - 1].first), "json.duplicate_member", "/" + std::string(list) + wire::pointer_step(names[i].second) + "/row",
                 names[i].first.text + ": a name stands once", faults);
  }
}

}  // namespace

void check_printed(const Facts& facts, Faults& faults) {
  check_names(facts.rules, "rules", faults);
  check_names(facts.tables, "tables", faults);
  for (std::size_t i = 0; i < facts.rules.size(); ++i) {
    const PrintedRule& rule = facts.rules[i];
    const std::string path = "/rules" + wire::pointer_step(i);
    need_printed(!rule.says.text.empty(), "value.empty", path + "/says", rule.row.text + ": what it says", faults);
    need_printed(!rule.seen.text.empty(), "value.empty", path + "/seen", rule.row.text + ": where it was seen", faults);
    need_printed(!rule.sources.empty(), "params.missing", path + "/sources", rule.row.text + ": a source", faults);
    for (const model::SourceId& source : rule.sources) {
      need_printed(facts.has_source(source), "params.unknown_word", path + "/sources", rule.row.text + ": sources of the list", faults);
    }
    need_printed(!rule.end_feel || used_as_end_feel(facts, *rule.end_feel), "params.unknown_word", path + "/end_feel",
                 rule.row.text + ": an end feel of some item", faults);
  }
  for (std::size_t i = 0; i < facts.tables.size(); ++i) {
    const TableRow& row = facts.tables[i];
    const std::string path = "/tables" + wire::pointer_step(i);
    need_printed(!row.value.text.empty(), "value.empty", path + "/value", row.row.text + ": what is printed", faults);
    need_printed(facts.has_source(row.source), "params.unknown_word", path + "/source", row.row.text + ": a source of the list", faults);
    need_printed(!row.age_low || !row.age_high || row.age_low->steps <= row.age_high->steps, "value.out_of_range", path + "/age_low",
                 row.row.text + ": the younger age first", faults);
  }
}

}  // namespace limbledger::reference

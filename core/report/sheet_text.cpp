#include "core/model/exam/finding.hpp"
#include "core/report/sheet.hpp"
#include "core/report/text.hpp"

#include <algorithm>

namespace limbledger::report {

namespace {

constexpr std::size_t side_columns = 11;  // "    RIGHT  " and "    LEFT   " end in one column

void put_side(const std::vector<std::string>& values, model::Side side, const Words& words, std::string& out) {
  for (const std::string& value : values) {
    std::string first = "    " + side_of(words, side);
    const std::size_t width = width_of(first);
    first.append(side_columns > width ? side_columns - width : 1, ' ');
    out += wrapped(value, first);
  }
}

void put(const SheetLine& line, const Words& words, std::string& out) {
  switch (line.kind) {
    case LineKind::plain:
      out += wrapped(line.text);
      break;
    case LineKind::bullet:
      out += wrapped(line.text, "  - ");
      break;
    case LineKind::under:
      out += wrapped(line.text, "      ");
      break;
    case LineKind::region:
      out += line.text + '\n';
      break;
    case LineKind::item:
      for (const std::string& value : line.midline) {
        out += wrapped(line.text + ": " + value, "  ");
      }
      if (!line.right.empty() || !line.left.empty()) {
        out += wrapped(line.text, "  ");
      }
      put_side(line.right, model::Side::right, words, out);
      put_side(line.left, model::Side::left, words, out);
      break;
    case LineKind::compared:
      out += wrapped(line.text, "  ");
      put_side(line.right, model::Side::right, words, out);
      put_side(line.left, model::Side::left, words, out);
      for (const std::string& against : line.midline) {
        out += wrapped(against, "    " + words.say("msg.page.against_text") + " ");
      }
      break;
  }
}

}  // namespace

std::string sheet_text(const Sheet& sheet, const Words& words) {
  std::string out = sheet.banner.empty() ? std::string() : wrapped(sheet.banner);
  out += wrapped(sheet.who, sheet.title + "  ");
  for (const std::string& line : sheet.head) {
    out += wrapped(line);
  }
  for (const SheetSection& section : sheet.sections) {
    out += '\n' + wrapped(section.title) + std::string(std::min(width_of(section.title), columns), '-') + '\n';
    for (const SheetLine& line : section.lines) {
      put(line, words, out);
    }
  }
  return out;
}

}  // namespace limbledger::report

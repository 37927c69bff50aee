// A printed sheet before it is text or HTML: a head, then titled sections of lines. Both are made from the same lines, so that
// they cannot say different things. Texts may hold U+2068 and U+2069 around what people wrote; nothing else in them is markup.
#pragma once

#include "core/report/words/words.hpp"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace limbledger::report {

enum class LineKind : std::uint8_t {
  plain,
  bullet,
  under,   // belongs to the bullet before it
  region,  // heads the items after it
  item,    // `text` is what was looked for; its values stand by side
  compared,  // `text` is a motion; what is said of it by side, and in `midline` against what
};

struct SheetLine {
  LineKind kind = LineKind::plain;
  std::string text;
  std::vector<std::string> right;
  std::vector<std::string> left;
  std::vector<std::string> midline;
};

struct SheetSection {
  std::string title;
  std::vector<SheetLine> lines;

  void plain(std::string text) { lines.push_back({LineKind::plain, std::move(text), {}, {}, {}}); }
  void bullet(std::string text) { lines.push_back({LineKind::bullet, std::move(text), {}, {}, {}}); }
  void under(std::string text) { lines.push_back({LineKind::under, std::move(text), {}, {}, {}}); }
};

// How it is laid out on paper: a page of many sheets, a letter on one, large print, a note set smaller so that it stays one sheet.
enum class SheetLook : std::uint8_t { page, letter, home, note };

struct Sheet {
  std::string banner;  // above everything, and on each sheet of paper
  std::string title;
  std::string who;                 // on each sheet of paper
  std::string examined;            // the day, on each sheet of paper
  std::vector<std::string> head;   // below the title
  std::vector<SheetSection> sections;
  SheetLook look = SheetLook::page;
};

// Plain text of 80 columns.
[[nodiscard]] std::string sheet_text(const Sheet& sheet, const Words& words);
// One HTML document that needs nothing else: no script, no address, black on white, laid out for A4.
[[nodiscard]] std::string sheet_html(const Sheet& sheet, const Words& words);
// A text inside HTML, of any page of the program: nothing of it is markup, what people wrote keeps its own writing direction.
[[nodiscard]] std::string html_text(std::string_view text);

}  // namespace limbledger::report

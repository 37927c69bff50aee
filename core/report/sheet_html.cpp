#include "core/model/exam/finding.hpp"
#include "core/report/sheet.hpp"
#include "core/report/text.hpp"
#include "core/wire/html.hpp"

#include <algorithm>

namespace limbledger::report {

namespace {

constexpr std::string_view isolate_mark = "\u2068";
constexpr std::string_view isolate_end_mark = "\u2069";

// The foot of the table stands again on every sheet of paper, so that no sheet is without its person.
constexpr std::string_view sheet_style =
    "@page{size:A4;margin:14mm 16mm}"
    "html{background:#fff;color:#000}"
    "body{margin:0 auto;max-width:178mm;padding:4mm;font:10.5pt/1.35 \"DejaVu Sans\",\"Noto Sans\",Arial,sans-serif}"
    "h1{font-size:15pt;margin:0 0 1mm}h2{font-size:11.5pt;margin:3.5mm 0 1mm;border-bottom:.3mm solid #000;break-after:avoid}"
    "p{margin:0 0 1mm;white-space:pre-line}ul{margin:0;padding-left:5mm}li{margin:0 0 .8mm;white-space:pre-line}"
    ".who{font-size:12.5pt;font-weight:bold}.banner{border:.5mm solid #000;padding:1mm 2mm;font-weight:bold}"
    ".sheet{width:100%;border-collapse:collapse}.sheet>tbody>tr>td,.sheet>tfoot>tr>td{padding:0}"
    ".sheet>tfoot>tr>td{border-top:.3mm solid #000;font-size:8.5pt;padding-top:1mm}"
    ".found{width:100%;border-collapse:collapse;table-layout:fixed}.found th,.found td{border:.2mm solid #000;padding:.6mm 1.5mm;text-align:left;"
    "vertical-align:top;overflow-wrap:break-word}.found tr{break-inside:avoid}.found thead th:first-child{width:30%}.found tbody th{font-weight:normal}"
    ".found .region{break-after:avoid}.found tbody .region th{font-weight:bold;padding-top:1.5mm}"
    ".found.compared thead th:first-child{width:11%}.found.compared thead th:last-child{width:25%}.found.compared td,.found.compared th{font-size:9pt}.found.compared tr{break-inside:auto}"
    "@media print{body{max-width:none;padding:0}}";

// A title runs into its first line, so that a letter has room on one sheet.
constexpr std::string_view letter_style =
    "@page{size:A4;margin:7mm 11mm 8mm}body{max-width:188mm;padding:0;font-size:8.5pt;line-height:1.21}h1{font-size:12pt;margin:0}"
    ".who{font-size:11pt}header p{margin:0 0 .2mm}.who+p{font-weight:bold}.sheet>tfoot>tr>td{font-size:7pt}"
    "section{border-top:.15mm solid #000;margin-top:.5mm;padding-top:.4mm}"
    "h2{float:left;border:0;margin:0 2mm 0 0;font-size:8.5pt;line-height:1.21}section>p,section>ul{margin:0 0 .2mm}ul{padding:0;list-style:disc inside}li{margin:0 0 .2mm}"
    "@media screen{body{padding:4mm}}";
constexpr std::string_view home_style =
    "@page{size:A4;margin:9mm 13mm 11mm}body{padding:0;font-size:15pt;line-height:1.2;overflow-wrap:anywhere}h1{font-size:17pt;display:inline}h2{font-size:15.5pt;margin:1.8mm 0 .5mm}p{margin:0 0 1mm}ul{padding-left:8mm}li{margin:0 0 .7mm}"
    ".who{font-size:17pt}.who+p{font-weight:bold}.sheet>tfoot>tr>td{font-size:9pt}section:last-child{font-size:9pt}section:last-child h2{display:none}";
constexpr std::string_view note_style = "body{font-size:9pt;line-height:1.25}h2{font-size:10pt;margin:1.8mm 0 .5mm}p,li{margin-bottom:.3mm}";

[[nodiscard]] std::string_view style_of(SheetLook look) {
  switch (look) {
    case SheetLook::page:
      return {};
    case SheetLook::letter:
      return letter_style;
    case SheetLook::home:
      return home_style;
    case SheetLook::note:
      return note_style;
  }
  return {};
}

[[nodiscard]] std::string escaped(std::string_view text) { return html_text(text); }

[[nodiscard]] std::string element(std::string_view name, std::string_view text, std::string_view attributes = {}) {
  return "<" + std::string(name) + std::string(attributes) + ">" + escaped(text) + "</" + std::string(name) + ">\n";
}

[[nodiscard]] std::string cell(const std::vector<std::string>& values, std::string_view attributes = {}) {
  std::string out = "<td" + std::string(attributes) + ">";
  for (std::size_t i = 0; i < values.size(); ++i) {
    out += (i == 0 ? "" : "<br>") + escaped(values[i]);
  }
  return out + "</td>";
}

class Body {
 public:
  explicit Body(const Words& words) : words_(words) {}

  void section(const SheetSection& section) {
    out_ += "<section>\n" + element("h2", section.title);
    for (const SheetLine& line : section.lines) {
      put(line);
    }
    close(Block::none);
    out_ += "</section>\n";
  }
  [[nodiscard]] std::string text() { return std::move(out_); }

 private:
  enum class Block : std::uint8_t { none, list, table, person, compared };

  void put(const SheetLine& line) {
    switch (line.kind) {
      case LineKind::plain:
        close(Block::none);
        out_ += element("p", line.text);
        break;
      case LineKind::region:
        region_ = line.text;
        headed_ = false;
        break;
      case LineKind::bullet:
        end_entry();
        open(Block::list);
        out_ += "<li>" + escaped(line.text);
        entry_ = true;
        break;
      case LineKind::under:
        out_ += entry_ ? "<br>" + escaped(line.text) : element("p", line.text);
        break;
      case LineKind::item:
        if (!line.right.empty() || !line.left.empty() || line.midline.empty()) {
          open_region(Block::table);
          out_ += "<tr><th scope=\"row\">" + escaped(line.text) + "</th>" + cell(line.right) + cell(line.left) + "</tr>\n";
        }
        if (!line.midline.empty()) {
          open_region(Block::person);
          out_ += "<tr><th scope=\"row\">" + escaped(line.text) + "</th>" + cell(line.midline) + "</tr>\n";
        }
        break;
      case LineKind::compared:
        open(Block::compared);
        out_ += "<tr><th scope=\"row\">" + escaped(line.text) + "</th>" + cell(line.right) + cell(line.left) + cell(line.midline) + "</tr>\n";
        break;
    }
  }
  void end_entry() {
    if (entry_) {
      out_ += "</li>\n";
      entry_ = false;
    }
  }
  // What was found of the person stands in a table of its own, so that nothing of it stands under a side.
  void open_region(Block block) {
    const bool again = block_ != block;
    open(block);
    if (again || !headed_) {
      out_ += "<tr class=\"region\"><th scope=\"rowgroup\" colspan=\"" + std::string(block == Block::person ? "2" : "3") + "\">" + escaped(region_) + "</th></tr>\n";
      headed_ = true;
    }
  }
  void open(Block block) {
    if (block_ == block) {
      return;
    }
    close(block);
    if (block == Block::list) {
      out_ += "<ul>\n";
    } else if (block == Block::person) {
      out_ += "<table class=\"found\">\n<thead><tr><th></th>" + element("th", words_.say("msg.page.person_whole"), " scope=\"col\"") +
              "</tr></thead>\n<tbody>\n";
    } else {
      const bool compared = block == Block::compared;
      out_ += std::string("<table class=\"found") + (compared ? " compared" : "") + "\">\n<thead><tr><th></th><th scope=\"col\">" +
              escaped(side_of(words_, model::Side::right)) + "</th><th scope=\"col\">" + escaped(side_of(words_, model::Side::left)) + "</th>" +
              (compared ? element("th", words_.say("msg.page.against"), " scope=\"col\"") : std::string()) + "</tr></thead>\n<tbody>\n";
    }
  }
  // Ends what is open; `next` is what stands open after that.
  void close(Block next) {
    end_entry();
    if (block_ == Block::list) {
      out_ += "</ul>\n";
    } else if (block_ == Block::table || block_ == Block::person || block_ == Block::compared) {
      out_ += "</tbody></table>\n";
    }
    block_ = next;
  }

  const Words& words_;
  std::string out_;
  Block block_ = Block::none;
  bool entry_ = false;
  std::string region_;
  bool headed_ = false;
};

}  // namespace

std::string html_text(std::string_view text) {
  std::string out;
  int open = 0;
  for (std::size_t at = 0; at < text.size();) {
    const std::string_view rest = text.substr(at);
    if (rest.starts_with(isolate_mark)) {
      out += "<bdi>";
      ++open;
      at += isolate_mark.size();
      continue;
    }
    if (rest.starts_with(isolate_end_mark)) {
      if (open > 0) {
        out += "</bdi>";
        --open;
      }
      at += isolate_end_mark.size();
      continue;
    }
    const std::size_t end = std::min({text.size(), text.find(isolate_mark, at), text.find(isolate_end_mark, at)});
    out += wire::html_escaped(text.substr(at, end - at));
    at = end;
  }
  for (; open > 0; --open) {
    out += "</bdi>";
  }
  return out;
}

std::string sheet_html(const Sheet& sheet, const Words& words) {
  Body body(words);
  for (const SheetSection& section : sheet.sections) {
    body.section(section);
  }
  std::string out = "<!DOCTYPE html>\n<html lang=\"en\" dir=\"ltr\">\n<head>\n<meta charset=\"utf-8\">\n"
                    "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'\">\n"
                    "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n" +
                    element("title", sheet.title) + "<style>" + std::string(sheet_style) + std::string(style_of(sheet.look)) + "@page{@bottom-right{font:8.5pt \"DejaVu Sans\",Arial,sans-serif;content:\"" +
                    words.say("msg.page.sheet_number") + " \" counter(page) \"/\" counter(pages)}}</style>\n</head>\n<body>\n<table class=\"sheet\">\n<tfoot><tr><td>";
  out += escaped(joined({sheet.banner, sheet.who, sheet.examined, words.say("msg.page.untested")}, " \u00b7 ")) + "</td></tr></tfoot>\n<tbody><tr><td>\n<header>\n";
  out += sheet.banner.empty() ? std::string() : element("p", sheet.banner, " class=\"banner\"");
  out += element("h1", sheet.title) + element("p", sheet.who, " class=\"who\"");
  for (const std::string& line : sheet.head) {
    out += element("p", line);
  }
  return out + "</header>\n<main>\n" + body.text() + "</main>\n</td></tr></tbody>\n</table>\n</body>\n</html>\n";
}

}  // namespace limbledger::report

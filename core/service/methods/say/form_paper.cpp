#include "core/service/methods/say/form_paper.hpp"

#include "core/reference/edition.hpp"
#include "core/report/sheet.hpp"
#include "core/report/text.hpp"
#include "core/service/methods/say/form_box.hpp"

#include <algorithm>
#include <optional>
#include <set>
#include <string_view>
#include <vector>

namespace limbledger::service {

namespace {

using model::Side;
using report::html_text;
using report::Words;

constexpr std::string_view paper_style =
    "@page{size:A4;margin:6mm 9mm 8mm 9mm}html{background:#fff;color:#000}"
    "body{margin:0 auto;max-width:192mm;font:7pt/1.18 \"DejaVu Sans Condensed\",\"DejaVu Sans\",\"Noto Sans\",Arial,sans-serif}"
    "h1{font-size:11pt;margin:0 0 .6mm;display:inline}.untested{float:right;font-weight:bold}.banner{border:.4mm solid #000;padding:.5mm 1.5mm;"
    "font-weight:bold;margin:0 0 1mm}"
    ".who{border:.35mm solid #000;padding:.8mm 1.5mm .2mm;margin:.8mm 0 .8mm}.who p{margin:0 0 .7mm}.who u,.end u{display:inline-block;text-decoration:none;border-bottom:"
    ".2mm solid #000;height:3.8mm}p{margin:0 0 .4mm}"
    ".steps{columns:2;column-gap:4mm}.steps table{width:100%;border-collapse:collapse;table-layout:fixed;margin:0 0 1mm}"
    ".steps caption{text-align:left;font-weight:bold;font-size:8pt;border-bottom:.35mm solid #000;padding:.3mm 0;break-after:avoid}"
    ".steps caption span{font-weight:normal;font-size:6.5pt}"
    ".steps tr{break-inside:avoid}.steps tr.over{break-after:avoid}.steps th,.steps td{border-bottom:.12mm solid #000;padding:.2mm .6mm;text-align:left;vertical-align:top;font-weight:normal;"
    "overflow-wrap:break-word}.steps td{border-left:.12mm solid #000}.steps th.min{font-weight:bold}.steps th.min span{font-weight:normal}.steps col.what{width:34%}.steps small{font-size:6pt;font-weight:normal}"
    ".steps td b{font-size:4.8pt;font-weight:bold;letter-spacing:.1mm;margin-right:.8mm}"
    ".steps td i,.wide i{font-style:normal;white-space:nowrap;margin-right:.6mm}.steps td u,.steps th u{display:inline-block;text-decoration:none;border-bottom:.2mm solid #000;height:2.4mm;width:7.5mm}.steps u.long{width:30mm}.steps u.tool{width:9mm}"
    ".steps td s,.wide s{float:right;text-decoration:none;border:.15mm solid #000;width:2.6mm;height:2.6mm;margin:0 0 0 .5mm}"
    ".steps .line{height:4.6mm}.steps .pair{display:flex}.steps .half{flex:1;font-weight:normal}.steps .side{display:flow-root;font-weight:normal}.steps .half+.half{border-left:.12mm solid #000;padding-left:.6mm;box-sizing:border-box}"
    ".steps .whole b{font-size:4.8pt;letter-spacing:.1mm;margin-right:.8mm}.steps .whole i{font-style:normal;white-space:nowrap;margin-right:1mm}.steps .whole s{float:right;text-decoration:none;border:.15mm solid #000;width:2.6mm;height:2.6mm}.steps .whole u{display:inline-block;border-bottom:.2mm solid #000;height:2.6mm}"
    ".steps i.told{white-space:normal!important;display:inline-block}.steps td i.told{max-width:26mm}.steps i.apart{border-left:.2mm solid #000;padding-left:1mm}.steps .wide s{float:right}.steps .wide i{margin-right:1.6mm}.end{border-top:.35mm solid #000;padding-top:.8mm;break-inside:avoid}.foot{font-size:6.2pt}"
    ".sheet{width:100%;border-collapse:collapse}.sheet>tbody>tr>td,.sheet>thead>tr>td{padding:0}.sheet>tfoot p{font-size:6pt;margin:0 0 .3mm}.sheet>tfoot>tr>td{border-top:.3mm solid #000;padding:1.4mm 0 0}"
    ".sheet>tfoot u{display:inline-block;text-decoration:none;border-bottom:.2mm solid #000;height:3.4mm}";

[[nodiscard]] std::string filled_blank(int mm) { return "<u style=\"width:" + std::to_string(mm) + "mm\"></u>"; }

class Paper {
 public:
  Paper(const reference::Edition& edition, const FormDescribeResult& form, const Words& words) : edition_(edition), form_(form), words_(words) {}

  [[nodiscard]] std::string make(const std::string& banner) {
    const std::string title = say("paper.title") + ": " + words_.say(form_.label.text);
    number_concerns();
    // Head and foot of this table stand again on every sheet: whose it is, what it is, and what its marks mean.
    std::string out = "<!DOCTYPE html>\n<html lang=\"" + words_.language() + "\" dir=\"ltr\">\n<head>\n<meta charset=\"utf-8\">\n"
                      "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'\">\n<title>" +
                      html_text(title) + "</title>\n<style>" + std::string(paper_style) + page_number() + "</style>\n</head>\n<body>\n<table class=\"sheet\">\n<thead><tr><td>";
    if (!banner.empty()) {
      out += paragraph(banner, " class=\"banner\"");
    }
    out += "<span class=\"untested\">" + html_text(say("page.untested")) + "</span><h1>" + html_text(title) + "</h1></td></tr></thead>\n<tfoot><tr><td>" + key() +
           blank("each_sheet", 50) + blank("second_identifier", 34) + blank("date", 18) + "</td></tr></tfoot>\n<tbody><tr><td>\n";
    out += who() + legend();
    out += "<div class=\"steps\">\n";
    for (const FormPosition& position : form_.positions) {
      out += table(position);
    }
    return out + "</div>\n" + end() + "</td></tr></tbody>\n</table>\n</body>\n</html>\n";
  }

 private:
  [[nodiscard]] std::string say(const std::string& name, const report::Args& args = {}) const { return words_.say("msg." + name, args); }
  [[nodiscard]] static std::string paragraph(const std::string& text, std::string_view attributes = {}) {
    return "<p" + std::string(attributes) + ">" + html_text(text) + "</p>\n";
  }
  [[nodiscard]] std::string page_number() const {
    return "@page{@bottom-right{font:6.5pt sans-serif;content:\"" + html_text(say("paper.sheet")) + " \" counter(page) \" / \" counter(pages)}}";
  }
  [[nodiscard]] std::string blank(const std::string& name, int mm) const { return html_text(say("paper." + name)) + " " + filled_blank(mm) + " "; }
  [[nodiscard]] std::string tick(const std::string& text) const { return "\u2610 " + html_text(text) + "\u2003"; }

  // Two identifiers, the side in words, and when: what a finding from paper cannot be entered without.
  [[nodiscard]] std::string who() const {
    const std::string right = report::side_of(words_, Side::right);
    const std::string left = report::side_of(words_, Side::left);
    std::string out = "<div class=\"who\">\n<p>" + blank("name", 58) + blank("born", 26) + blank("second_identifier", 40) + "</p>\n<p>";
    out += tick(say("paper.identified")) + " " + blank("date", 20) + blank("time", 12) + blank("examiner", 30) + blank("place", 22) + "</p>\n<p><b>" +
           html_text(say("paper.side")) + "</b> " + tick(right) + tick(left) + tick(say("paper.each_side")) + " " + blank("injured_on", 20) + "</p>\n<p>";
    out += html_text(say("paper.consent")) + " " + tick(say("paper.examine")) + tick(say("paper.record")) + tick(say("paper.send")) + blank("consent_by", 18) +
           html_text(say("paper.chaperone")) + " " + blank("chaperone_who", 22) + blank("spoke", 22) + "</p>\n</div>\n";
    std::vector<std::string> not_to_miss;
    for (const model::MessageId& message : form_.not_to_miss) {
      not_to_miss.push_back(words_.say(message.text));
    }
    if (!not_to_miss.empty()) {
      out += "<p><b>" + html_text(say("paper.not_to_miss")) + "</b> " + html_text(report::joined(not_to_miss, " \u00b7 ")) + "</p>\n";
    }
    return out;
  }
  // What letters, numbers and grades mean, for the foot of every sheet.
  [[nodiscard]] std::string key() const {
    std::string reasons;
    const auto all = wire::type_of<model::WhyNot>().words;
    for (std::size_t i = 0; i < all.size(); ++i) {
      reasons += (i == 0 ? "" : " \u00b7 ") + std::string(1, static_cast<char>('A' + i)) + " " + words_.say("msg.why." + std::string(all[i]));
    }
    std::string out = "<p><b>" + html_text(say("paper.why_not")) + "</b> " + html_text(reasons) + "</p>\n";
    std::string open;
    for (std::size_t i = 0; i < concerns_.size(); ++i) {
      const std::string on_paper = "msg.paper_" + concerns_[i]->concern.text + "_" + form_.complaint.text;
      open += (i == 0 ? "" : " \u00b7 ") + concern_mark(i) + " " + words_.say(words_.has(on_paper) ? on_paper : concerns_[i]->title.text);
    }
    if (!open.empty()) {
      out += "<p><b>" + html_text(say("paper.not_while")) + "</b> " + html_text(open) + "</p>\n";
    }
    std::set<std::string> seen;
    std::vector<std::string> scales;
    for_each_step([&](const FormStep& step) {
      const model::Scale* scale = step.scale ? edition_.scale(*step.scale) : nullptr;
      if (scale != nullptr && seen.insert(step.scale->text).second) {
        std::vector<std::string> grades;
        for (const model::ScaleGrade& grade : scale->grades) {
          grades.push_back(grade.grade.text + " = " + words_.say(grade.means.text));
        }
        scales.push_back(words_.say(scale->title.text) + ": " + report::joined(grades, ", "));
      }
    });
    return scales.empty() ? out : out + "<p><b>" + html_text(say("paper.grades")) + "</b> " + html_text(report::joined(scales, ". ")) + "</p>\n";
  }
  // How to fill it in, and what there is to measure with.
  [[nodiscard]] std::string legend() const {
    const std::string out = paragraph(say("paper.how_to_fill"));
    std::string tools;
    std::set<std::string> seen;
    for_each_step([&](const FormStep& step) {
      if (!is_measured(step)) {
        return;
      }
      for (const model::Word& one : step.instruments.value_or(std::vector<model::Word>{})) {
        if (seen.insert(one.text).second) {
          tools += (tools.empty() ? "" : " \u00b7 ") + report::word_of(words_, "instrument", one.text);
        }
      }
    });
    return tools.empty() ? out : out + "<p><b>" + html_text(say("paper.measured_with")) + "</b> " + html_text(tools) + "</p>\n";
  }
  template <class F>
  void for_each_step(F&& what) const {
    for (const FormPosition& position : form_.positions) {
      for (const FormStep& step : position.steps) {
        what(step);
      }
    }
  }

  void number_concerns() {
    for_each_step([&](const FormStep& step) {
      for (const model::ConcernId& id : edition_.item(step.item)->withheld_by.value_or(std::vector<model::ConcernId>{})) {
        const auto all = edition_.concerns();
        const auto found = std::find_if(all.begin(), all.end(), [&](const model::Concern& one) { return one.concern == id; });
        if (found != all.end() && std::find(concerns_.begin(), concerns_.end(), &*found) == concerns_.end()) {
          concerns_.push_back(&*found);
        }
      }
    });
  }
  [[nodiscard]] static std::string concern_mark(std::size_t i) { return std::to_string(i + 1); }

  [[nodiscard]] std::string table(const FormPosition& position) const {
    std::string out = "<table><caption>" + html_text(words_.say(position.label.text));
    if (position.advice) {
      out += " <span>" + html_text(words_.say(position.advice->text)) + "</span>";
    }
    const std::vector<std::string> shared = shared_marks(position);
    if (!shared.empty()) {
      out += " <span>" + html_text(say("paper.marks_here", {{"marks", report::joined(shared, " "), false, true}})) + "</span>";
    }
    out += "</caption>\n<colgroup><col class=\"what\"><col><col></colgroup>\n<tbody>\n";
    for (const FormStep& step : position.steps) {
      out += row(step, shared);
    }
    return out + "</tbody></table>\n";
  }
  // What withholds every marked step of a position, told once in its head.
  [[nodiscard]] std::vector<std::string> shared_marks(const FormPosition& position) const {
    std::optional<std::vector<std::string>> shared;
    std::size_t marked = 0;
    for (const FormStep& step : position.steps) {
      const std::vector<std::string> marks = marks_of(step);
      if (marks.empty()) {
        continue;
      }
      ++marked;
      std::vector<std::string> both;
      for (const std::string& mark : shared.value_or(marks)) {
        if (std::find(marks.begin(), marks.end(), mark) != marks.end()) {
          both.push_back(mark);
        }
      }
      shared = both;
    }
    return marked > 1 ? shared.value_or(std::vector<std::string>{}) : std::vector<std::string>{};
  }
  [[nodiscard]] std::string row(const FormStep& step, const std::vector<std::string>& shared) const {
    const bool minimum = step.minimum.value_or(false) || step.minimum_under;
    const bool sided = step.sides.size() > 1;
    const bool text = step.control == Control::text;
    // A question of the person as a whole takes a line: the choices behind it, or a box at its end.
    const bool wide = text || (!sided && (step.control == Control::choice || step.control == Control::choices));
    const bool whole = sided && takes_whole_row(step, *edition_.item(step.item));
    const std::string layout = text ? "line" : (wide ? "wide" : (whole ? "whole" : ""));
    const std::string of_class = std::string(minimum ? "min" : "") + (minimum && !layout.empty() ? " " : "") + layout;
    std::string out = "<tr><th scope=\"row\"" + (of_class.empty() ? std::string() : " class=\"" + of_class + "\"") +
                      (wide || whole ? " colspan=\"3\"" : (sided ? "" : " colspan=\"2\"")) + ">" + (wide && !text ? why_not_box() : "");
    out += (minimum ? "\u25cf " : "") + html_text(words_.say(step.label.text));
    std::vector<std::string> notes;
    if (step.minimum_under) {
      notes.push_back(say("paper.under", {{"age", std::to_string(step.minimum_under->steps), true}}));
    }
    if (step.late.value_or(false)) {
      notes.push_back(say("paper.late"));
    }
    if (step.instead_of) {
      notes.push_back(say("paper.instead_of", {{"item", report::item_label(words_, edition_, *step.instead_of), false, true}}));
    }
    const std::vector<std::string> marks = marks_of(step);
    if (!marks.empty()) {
      std::vector<std::string> more{"\u25b2"};
      for (const std::string& mark : marks) {
        if (std::find(shared.begin(), shared.end(), mark) == shared.end()) {
          more.push_back(mark);
        }
      }
      notes.push_back(report::joined(more, " "));
    }
    if (!notes.empty()) {
      out += " <small>" + html_text(report::joined(notes)) + "</small>";
    }
    out += test_meaning(step, words_) + (whole ? listed_choices(step, words_) : std::string());
    if (is_measured(step) && step.instruments && step.instruments->size() > 1) {
      out += " <small>" + html_text(say("paper.with")) + "</small> <u class=\"tool\"></u>";
    }
    if (whole) {
      // Short lists take a line for each side; what is written or ringed stands side by side.
      const bool by_line = (step.control == Control::choice || step.control == Control::choices) && !writes_words(step, words_);
      out += by_line ? "" : "<div class=\"pair\">";
      for (const Side side : {Side::right, Side::left}) {
        out += std::string("<div class=\"") + (by_line ? "side" : "half") + "\">" + why_not_box() + "<b>" + html_text(report::side_of(words_, side)) + "</b>" +
               form_box(step, *edition_.item(step.item), words_, true) + "</div>";
      }
      return out + (by_line ? "" : "</div>") + "</th></tr>\n";
    }
    if (wide) {
      return out + (text ? std::string() : ": <span>" + form_box(step, *edition_.item(step.item), words_, false) + "</span>") + "</th></tr>\n";
    }
    out += "</th>";
    if (!sided) {
      return out + "<td>" + why_not_box() + form_box(step, *edition_.item(step.item), words_, false) + "</td></tr>\n";
    }
    for (const Side side : {Side::right, Side::left}) {
      out += "<td>" + why_not_box() + "<b>" + html_text(report::side_of(words_, side)) + "</b>" + form_box(step, *edition_.item(step.item), words_, true) + "</td>";
    }
    return out + "</tr>\n";
  }
  [[nodiscard]] std::vector<std::string> marks_of(const FormStep& step) const {
    std::vector<std::string> marks;
    const auto by = edition_.item(step.item)->withheld_by.value_or(std::vector<model::ConcernId>{});
    for (std::size_t i = 0; i < concerns_.size(); ++i) {
      if (std::find(by.begin(), by.end(), concerns_[i]->concern) != by.end()) {
        marks.push_back(concern_mark(i));
      }
    }
    return marks;
  }
  [[nodiscard]] static std::string why_not_box() { return "<s></s>"; }

  [[nodiscard]] std::string end() const {
    std::string out = "<div class=\"end\">\n";
    std::vector<std::string> left;
    for (const LeftStep& one : form_.left_out) {
      left.push_back(report::item_label(words_, edition_, one.item) + " (" + report::enum_word(words_, "why_left", one.why) + ")");
    }
    if (!left.empty()) {
      out += "<p class=\"foot\"><b>" + html_text(say("paper.left_out")) + "</b> " + html_text(report::joined(left)) + "</p>\n";
    }
    out += "<p>" + blank("impression", 130) + "</p>\n<p>" + blank("plan", 150) + "</p>\n<p>" + blank("pain_after", 12) + blank("signature", 60) + blank("said_back", 20) +
           "</p>\n";
    out += "<p class=\"foot\">" + html_text(say("paper.entered_later")) + " " + blank("entered_by", 24) + blank("entered_at", 18) + "</p>\n";
    return out + paragraph(say("paper.about", {{"edition", form_.edition.text, false, true}}), " class=\"foot\"") + "</div>\n";
  }

  const reference::Edition& edition_;
  const FormDescribeResult& form_;
  const Words& words_;
  std::vector<const model::Concern*> concerns_;
};

}  // namespace

std::string form_paper(const reference::Edition& edition, const FormDescribeResult& form, const report::Words& words, const std::string& banner) {
  return Paper(edition, form, words).make(banner);
}

}  // namespace limbledger::service

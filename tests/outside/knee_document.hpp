// One visit as a document for document.assess and statement.explain, its findings in short lines: "item side value instrument", the
// value a number of degrees toward the item's direction, triple:0-20-110, grade:1/firm, test:positive, answer:yes, choice:twist,
// choices:none_of_these, count:4, cel:37.9, mm:431, twice:850/852, s:2.1, pit:2+/4, not:pain; "then" before it puts the finding into an exam of 2026-10-01. All is invented; the day
// is 2026-11-24.
#pragma once

#include "core/service/methods/say/document.hpp"
#include "core/service/methods/say/explain.hpp"
#include "core/wire/read.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <sstream>
#include <string>
#include <vector>

namespace limbledger::tests {

[[nodiscard]] inline std::string unquoted(std::string text) {
  text.erase(std::remove(text.begin(), text.end(), '"'), text.end());
  return text;
}

[[nodiscard]] inline bool line(const interpret::Working& working, const std::string& text) {
  return std::any_of(working.lines.begin(), working.lines.end(), [&](const wire::Name& one) { return one.text == text; });
}

struct KneeVisit {
  std::string born = "1996-01-01";
  std::string sex = "male";
  std::string injured_on = "2026-09-01";
  std::string complaint = "chronic_knee";
  std::string complained_of = "left";  // a side; empty: not said
  std::string setting = "primary_care";
  std::string priors;  // a JSON list
  std::string exam_more;  // members of the exam: ,"who_spoke":{...}
  std::vector<std::string> now;
  std::vector<std::string> then;

  void add_all(const std::string& lines) {
    std::istringstream all(lines);
    for (std::string one; std::getline(all, one, ';');) {
      add(one);
    }
  }
  // `more` are members of the finding, such as ,"quality":["guarded"].
  void add(const std::string& text, const std::string& more = "") {
    std::istringstream words(text);
    std::string item;
    std::string side;
    std::string value;
    std::string instrument;
    words >> item;
    const bool before = item == "then";
    if (before) {
      words >> item;
    }
    words >> side >> value >> instrument;
    std::string end_feel;
    const std::string json = value_of(item, value, end_feel);
    std::string finding = R"({"item":")" + item + R"(","side":")" + side + R"(","value":)" + json;
    const bool measured = json.find("\"angle\"") != std::string::npos;
    finding += instrument.empty() ? "" : R"(,"instrument":")" + instrument + "\"";
    finding += measured && more.find("\"position\"") == std::string::npos ? R"(,"position":")" + position_of(item) + "\"" : "";
    finding += end_feel.empty() ? "" : R"(,"end_feel":")" + end_feel + "\"";
    (before ? then : now).push_back(finding + more + "}");
  }
  [[nodiscard]] std::string json(const std::string& rest) const {
    const std::string earlier = then.empty() ? ""
                                             : R"(,"earlier":[{"complaint":"chronic_knee","side":"left","setting":"primary_care",)"
                                               R"("examined_at":"2026-10-01T10:00:00.000Z","findings":[)" +
                                                   joined(then) + "]}]";
    return R"({"document":{"format":"limbledger-exam/1","as_of":"2026-11-24","person":{"birth":{"date":")" + born + R"("},"sex":")" + sex +
           R"(","norm_sex":")" + sex + R"("},"exam":{"complaint":")" + complaint + "\"" + member("side", complained_of) + member("setting", setting) +
           member("injured_on", injured_on) + exam_more + R"(},"findings":[)" + joined(now) + "]" + earlier + "}" +
           (priors.empty() ? "" : R"(,"priors":)" + priors) + rest + "}";
  }
  [[nodiscard]] interpret::Assessment assess() const {
    service::Context context;
    context.edition = reference::built_in_edition();
    const auto params =
        wire::read_text<service::DocumentAssessParams>(json(R"(,"confirmed":["value.unusual","finding.contradicts","item.withheld"])"));
    REQUIRE_MESSAGE(params.has_value(), json(""));
    const auto assessment = service::document_assess(context, *params);
    REQUIRE_MESSAGE(assessment.has_value(), json(""));
    return *assessment;
  }
  // The codes and paths of a refusal, or "taken".
  [[nodiscard]] std::string refusal() const {
    service::Context context;
    context.edition = reference::built_in_edition();
    const auto params = wire::read_text<service::DocumentAssessParams>(json(""));
    if (!params) {
      return faults_of(params.error());
    }
    const auto assessment = service::document_assess(context, *params);
    return assessment ? "taken" : faults_of(assessment.error());
  }
  [[nodiscard]] interpret::RuleResult rule(const std::string& name, model::Side of = model::Side::left) const {
    for (const interpret::RuleResult& one : assess().rules) {
      if (one.rule.text == "rule." + name && one.side == of) {
        return one;
      }
    }
    FAIL_CHECK("no rule " << name);
    return {};
  }
  // Asked for by name, so that it comes before the minimum set.
  [[nodiscard]] interpret::Hypothesis hypothesis(const std::string& condition) const {
    service::Context context;
    context.edition = reference::built_in_edition();
    const auto params = wire::read_text<service::DocumentAssessParams>(json(R"(,"only":["hypotheses"])"));
    REQUIRE_MESSAGE(params.has_value(), json(""));
    const auto assessment = service::document_assess(context, *params);
    REQUIRE_MESSAGE(assessment.has_value(), json(""));
    for (const interpret::Hypothesis& one : assessment->hypotheses) {
      if (one.hypothesis.text == condition) {
        return one;
      }
    }
    FAIL_CHECK("no hypothesis " << condition);
    return {};
  }
  [[nodiscard]] interpret::Statement statement(const std::string& id) const {
    for (const interpret::Statement& one : assess().statements) {
      if (one.statement.text == id) {
        return one;
      }
    }
    FAIL_CHECK("no statement " << id);
    return {};
  }
  [[nodiscard]] bool has(const std::string& id) const {
    const auto all = assess().statements;
    return std::any_of(all.begin(), all.end(), [&](const interpret::Statement& one) { return one.statement.text == id; });
  }
  [[nodiscard]] std::string message(const std::string& id) const { return statement(id).message.text; }
  [[nodiscard]] interpret::Working working(const std::string& id) const {
    service::Context context;
    context.edition = reference::built_in_edition();
    const auto params = wire::read_text<service::StatementExplainParams>(json(R"(,"statement":")" + id + "\""));
    REQUIRE(params.has_value());
    const auto working = service::explain_document(context, *params);
    REQUIRE_MESSAGE(working.has_value(), id);
    return *working;
  }

 private:
  [[nodiscard]] static std::string member(const std::string& name, const std::string& text) {
    return text.empty() ? "" : ",\"" + name + "\":\"" + text + "\"";
  }
  [[nodiscard]] static std::string faults_of(const wire::Refusal& refusal) {
    std::string all;
    for (const wire::Fault& fault : refusal.faults) {
      all += (all.empty() ? "" : " ") + fault.code + "@" + fault.path;
    }
    return all;
  }
  [[nodiscard]] static std::string joined(const std::vector<std::string>& parts) {
    std::string all;
    for (const std::string& part : parts) {
      all += (all.empty() ? "" : ",") + part;
    }
    return all;
  }
  // Lying on the back, where the item can be done so.
  [[nodiscard]] static std::string position_of(const std::string& item) {
    const model::Item* row = reference::built_in_edition()->item(std::string_view(item));
    const bool other = row != nullptr && row->positions && std::find(row->positions->begin(), row->positions->end(), model::Word{"supine"}) == row->positions->end();
    return other ? row->positions->front().text : "supine";
  }
  [[nodiscard]] static std::string value_of(const std::string& item, const std::string& value, std::string& end_feel) {
    const auto colon = value.find(':');
    const std::string kind = colon == std::string::npos ? "" : value.substr(0, colon);
    std::string rest = colon == std::string::npos ? value : value.substr(colon + 1);
    if (kind == "triple") {
      return R"({"kind":"angle","entered":")" + rest + R"(","order":"extension_zero_flexion"})";
    }
    if (kind == "ankle_triple") {
      return R"({"kind":"angle","entered":")" + rest + R"(","order":"dorsiflexion_zero_plantarflexion"})";
    }
    if (kind == "twice") {  // twice:850/852
      const auto slash = rest.find('/');
      return R"({"kind":"length","trials":[)" + rest.substr(0, slash) + "," + rest.substr(slash + 1) + R"(],"of_trials":"mean"})";
    }
    if (kind == "pit") {  // pit:2+/4
      const auto slash = rest.find('/');
      return R"({"kind":"grade","scale":"edema/ebm","grade":")" + rest.substr(0, slash) + R"(","mm":)" + rest.substr(slash + 1) + "}";
    }
    if (kind == "s") {
      return R"({"kind":"time","s":)" + rest + "}";
    }
    if (kind == "entered_length") {
      return R"({"kind":"length","entered":")" + rest + R"("})";
    }
    if (kind == "entered") {  // entered:+5/extension
      const auto slash = rest.find('/');
      const std::string order = slash == std::string::npos ? "" : R"(,"order":")" + rest.substr(slash + 1) + "\"";
      return R"({"kind":"angle","entered":")" + rest.substr(0, slash) + "\"" + order + "}";
    }
    if (kind == "grade") {
      const auto slash = rest.find('/');
      end_feel = slash == std::string::npos ? "" : rest.substr(slash + 1);
      const model::Item* row = reference::built_in_edition()->item(std::string_view(item));
      REQUIRE_MESSAGE((row != nullptr && row->scale), item);
      return R"({"kind":"grade","scale":")" + row->scale->text + R"(","grade":")" + rest.substr(0, slash) + R"("})";
    }
    if (kind == "test") {
      return R"({"kind":"test","result":")" + rest + R"("})";
    }
    if (kind == "answer") {
      return R"({"kind":"answer","answer":")" + rest + R"("})";
    }
    if (kind == "choice") {
      return R"({"kind":"choice","choice":")" + rest + R"("})";
    }
    if (kind == "choices") {
      return R"({"kind":"choices","choices":[")" + rest + R"("]})";
    }
    if (kind == "count") {
      return R"({"kind":"count","count":)" + rest + "}";
    }
    if (kind == "mm_hg") {
      return R"({"kind":"pressure","mm_hg":)" + rest + "}";
    }
    if (kind == "cel") {
      return R"({"kind":"temperature","cel":)" + rest + "}";
    }
    if (kind == "mm") {
      return R"({"kind":"length","mm":)" + rest + "}";
    }
    if (kind == "not") {
      return R"({"kind":"not_done","reason":")" + rest + R"("})";
    }
    return R"({"kind":"angle","toward_deg":)" + value + "}";
  }
};

// A visit by its complaint, birth and lines; injured on no day unless one is given.
inline KneeVisit visit_with(const std::string& complaint, const std::string& born, const std::string& lines, const std::string& injured_on = "") {
  KneeVisit visit;
  visit.complaint = complaint;
  visit.born = born;
  visit.injured_on = injured_on;
  visit.add_all(lines);
  return visit;
}

// A knee hurt the day before, with all that the knee rule looks at answered no.
[[nodiscard]] inline KneeVisit walked_in(const std::string& born) {
  KneeVisit visit;
  visit.born = born;
  visit.complaint = "acute_knee";
  visit.injured_on = "2026-11-23";
  visit.add_all(
      "knee.fibular_head_tender left answer:no;knee.patella_tender left answer:no;knee.bone_tender_elsewhere left answer:no;"
      "knee.flexion_active left 120 goniometer_long;history.steps_at_once midline answer:yes;gait.steps_now midline count:4;"
      "history.knee_rule_exclusions midline choices:none_of_these");
  return visit;
}

}  // namespace limbledger::tests

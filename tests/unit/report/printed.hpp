// Invented exams as documents (exams/*.json), assessed and printed; and how a page is read in a test.
#pragma once

#include "core/report/page.hpp"
#include "core/report/text.hpp"
#include "core/service/methods/say/document.hpp"
#include "core/wire/parse.hpp"
#include "core/wire/read.hpp"
#include "tests/unit/report/has.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <fstream>
#include <iterator>
#include <string>
#include <utility>

namespace limbledger::report_test {

inline service::ExamDocument document_of(const std::string& text) {
  const auto parsed = wire::parse(text);
  REQUIRE(parsed.has_value());
  auto read = wire::read<service::ExamDocument>(*parsed, parsed->root(), wire::Unknown::refuse, "/document");
  REQUIRE(read.has_value());
  return std::move(*read);
}

inline service::ExamDocument document(const std::string& name) {
  std::ifstream file(std::string(LIMBLEDGER_SOURCE_DIR) + "/tests/unit/report/exams/" + name + ".json");
  return document_of({std::istreambuf_iterator<char>(file), {}});
}

inline std::string page_of(const service::ExamDocument& document) {
  service::DocumentAssessParams params;
  params.document = document;
  service::Context context;
  context.edition = reference::built_in_edition();
  const auto assessment = service::document_assess(context, params);
  REQUIRE(assessment.has_value());
  const auto checked = service::check_document(*context.edition, document, std::nullopt);
  REQUIRE(checked.has_value());
  return report::exam_page(checked->exam, checked->person, *assessment, *report::built_in_words(), *context.edition);
}


// Lines joined.
inline std::string on_one_line(const std::string& text) {
  std::string out;
  for (const char c : text) {
    const char put = c == '\n' ? ' ' : c;
    if (put != ' ' || out.empty() || out.back() != ' ') {
      out += put;
    }
  }
  return out;
}

inline std::string section(const std::string& page, const std::string& title) {
  const auto at = page.find("\n" + title);
  REQUIRE(at != std::string::npos);
  return on_one_line(page.substr(at, page.find("\n\n", at + 1) - at));
}
inline std::string head(const std::string& page) { return on_one_line(page.substr(0, page.find("\n\n"))); }

inline void drop(service::ExamDocument& document, const std::string& item) {
  auto& all = document.findings;
  all.erase(std::remove_if(all.begin(), all.end(), [&](const model::Finding& one) { return one.item.text == item; }), all.end());
}
inline void add(service::ExamDocument& document, const std::string& item, model::Side side, model::Value value) {
  model::Finding finding;
  finding.item = {item};
  finding.side = side;
  finding.value = std::move(value);
  document.findings.push_back(std::move(finding));
}

}  // namespace limbledger::report_test

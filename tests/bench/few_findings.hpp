// The params of document.assess for an exam with 12 findings, as a client writes them: without white space.
#pragma once

#include "core/reference/edition.hpp"
#include "core/service/call.hpp"
#include "tests/bench/bench.hpp"

#include <simdjson.h>

#include <fstream>
#include <iterator>
#include <string>

namespace limbledger::bench {

constexpr std::size_t findings_assessed = 12;

// The fullest of the invented exams, cut to its first findings.
inline std::string assess_params() {
  std::ifstream file(std::string(LIMBLEDGER_SOURCE_DIR) + "/tests/unit/report/exams/football.json");
  const std::string text{std::istreambuf_iterator<char>(file), {}};
  const auto document = need(wire::parse(text), "the exam");
  std::string out;
  for (std::uint32_t index = document.root().first; index != 0; index = document.at(index).next) {
    const wire::Node& member = document.at(index);
    std::string value(member.raw);
    if (member.key == "findings") {
      value.clear();
      std::uint32_t at = member.first;
      for (std::size_t i = 0; i < findings_assessed && at != 0; ++i, at = document.at(at).next) {
        value += (value.empty() ? "" : ",") + std::string(document.at(at).raw);
      }
      value = "[" + value + "]";
    }
    out += (out.empty() ? "" : ",") + wire::quoted(member.key) + ":" + value;
  }
  out = R"({"document":{)" + out + "}}";
  std::string compact(out.size(), ' ');
  std::size_t size = 0;
  if (simdjson::minify(out.data(), out.size(), compact.data(), size) != simdjson::SUCCESS) {
    std::exit(1);
  }
  return compact.substr(0, size);
}

// Of what it is answered with the first dangers that were asked after, as many as `bytes` hold.
inline std::string first_flags(std::size_t bytes) {
  service::Context context;
  context.edition = reference::built_in_edition();
  context.caller.scope = service::Scope::examiner;
  const auto params = need(wire::parse(assess_params()), "params");
  const std::string result = need(service::call(service::methods(), context, "document.assess", params, &params.root()), "document.assess");
  const auto answer = need(wire::parse(result, 64), "the answer");
  std::string out;
  const wire::Node* flags = answer.child(answer.root(), "flags");
  for (std::uint32_t at = flags == nullptr ? 0 : flags->first; at != 0 && out.size() + answer.at(at).raw.size() < bytes; at = answer.at(at).next) {
    out += (out.empty() ? "" : ",") + std::string(answer.at(at).raw);
  }
  return R"({"flags":[)" + out + "]}";
}

}  // namespace limbledger::bench

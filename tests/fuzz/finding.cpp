#include "core/service/call.hpp"
#include "core/wire/parse.hpp"
#include "tests/fuzz/invented_ledger.hpp"
#include "tests/fuzz/targets.hpp"

#include <memory>
#include <string>

namespace limbledger::fuzz {

namespace {

constexpr std::string_view document_before =
    R"({"document":{"format":"limbledger-exam/1","as_of":"2026-11-24","person":{"birth":{"date":"1971"},"sex":"female","norm_sex":"female"},"exam":{"complaint":"free","setting":"primary_care","injured_on":"2026-11-23"},"findings":[)";
constexpr std::string_view exam_before = R"({"exam":"@exam","seen":"@revision","request":"6a0c5b9e-0000-4000-8000-000000000099","findings":[)";

void judged(Desktop& at, std::string_view method, const std::string& params) {
  const auto sent = wire::parse(params);
  if (!sent) {
    return;
  }
  const auto result = service::call(service::methods(), at.context, method, *sent, &sent->root());
  if (result) {
    must(wire::parse(*result, 64).has_value(), "an answer is JSON");
    return;
  }
  must(!result.error().faults.empty(), "a refusal names a fault");
  for (const wire::Fault& fault : result.error().faults) {
    must(fault.code.rfind("internal.", 0) != 0, "no finding makes a method fail inside");
    must(!fault.code.empty(), "a fault has its code");
  }
}

}  // namespace

void finding(std::string_view bytes) {
  static auto& at = *new std::unique_ptr<Desktop>;  // never taken down, as in request.cpp
  static std::size_t used = 0;
  // A confirmation list would let anything unlikely pass; findings that need one are refused here, which is a path too.
  const std::string list = filled(bytes);
  if (!wire::parse("[" + list + "]")) {
    return;
  }
  if (!at || ++used % 64 == 0) {
    at = new_desktop();
  }
  judged(*at, "document.assess", std::string(document_before) + list + R"(]},"language":"en"})");
  const auto before = at->store.heads();
  judged(*at, "finding.record", filled(exam_before) + list + "]}");
  const auto after = at->store.heads();
  if (!before || !after || before->newest != after->newest) {
    at.reset();
  }
}

}  // namespace limbledger::fuzz

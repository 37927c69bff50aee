#include "rpc/program/problem.hpp"

namespace limbledger::rpc {

namespace {

[[nodiscard]] ExitCode exit_code_of(const wire::Refusal& refusal) {
  switch (refusal.number()) {
    case wire::FaultClass::locked:
      return ExitCode::locked;
    case wire::FaultClass::read_only:
    case wire::FaultClass::limit:
      return ExitCode::unavailable;
    case wire::FaultClass::internal:
      return ExitCode::internal;
    case wire::FaultClass::unknown_id:
      return ExitCode::usage;
    default:
      return ExitCode::bad_answer;
  }
}

}  // namespace

Problem problem_of(const wire::Refusal& refusal, std::string_view where) {
  std::string text;
  for (const wire::Fault& fault : refusal.faults) {
    const wire::FaultCode* row = wire::find_fault_code(fault.code);
    text += text.empty() ? "" : "\n";
    text += std::string(where) + (where.empty() || fault.path.empty() ? "" : " ") + fault.path + (where.empty() && fault.path.empty() ? "" : ": ");
    text += row != nullptr ? std::string(row->meaning) : fault.code;
    if (!fault.expected.empty()) {
      text += "; expected: " + fault.expected;
    }
    if (!fault.got.empty()) {
      text += "; got: " + fault.got;
    }
    // Of a parcel: chunk and entry.
    for (const wire::FaultParam& param : fault.code.starts_with("parcel.") ? fault.params : std::vector<wire::FaultParam>()) {
      text += "; " + param.name + " " + param.json;
    }
    text += " (" + fault.code + ")";
    if (row != nullptr && !row->hint.empty()) {
      text += "\n  what to do: " + std::string(row->hint);
    }
  }
  return {exit_code_of(refusal), std::move(text)};
}

}  // namespace limbledger::rpc

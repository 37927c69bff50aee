// Which codes of the fault table a method may answer with, for its description: those of its own, beside those that follow from what
// it takes and those of every call. A test holds the lists against the codes that the sources of the methods name.
#pragma once

#include "core/service/method.hpp"

#include <span>
#include <string_view>
#include <vector>

namespace limbledger::rpc {

// Of every call: the text, the params, the token and the rates.
[[nodiscard]] std::span<const std::string_view> faults_of_every_call();
// Of this method, without those; in the order of the fault table.
[[nodiscard]] std::vector<std::string_view> faults_of(const service::Method& method);

}  // namespace limbledger::rpc

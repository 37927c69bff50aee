// An answer as the page prints it: laid out and shortened in the middle, so that each kind of thing in it is seen once. Of a form's
// steps one of each control stands, and one that is recorded; of its texts one of each kind of name; of any other list the first few.
// What is left out is counted where it stood: it is for people, and no JSON.
#pragma once

#include <string>
#include <string_view>

namespace limbledger::rpc {

[[nodiscard]] std::string shortened(std::string_view json);

}  // namespace limbledger::rpc

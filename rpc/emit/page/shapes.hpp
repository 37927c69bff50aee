// The types of the table as a person reads them: what a member may hold, and the tables of the named shapes, linked to one another.
#pragma once

#include "core/service/method.hpp"

#include <span>
#include <string>
#include <string_view>

namespace limbledger::rpc {

[[nodiscard]] std::string shape_link(std::string_view name);
// What a value of this type is, as HTML.
[[nodiscard]] std::string kind_text(const wire::Type& type);
// Members with whether they are needed, what they hold and the remark; `tag` is the `kind` of an alternative.
[[nodiscard]] std::string members_table(const wire::Type& type, std::string_view tag);
[[nodiscard]] std::string shapes_section(std::span<const service::Method> table);

}  // namespace limbledger::rpc

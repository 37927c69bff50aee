#include "rpc/emit/page/shapes.hpp"

#include "core/service/methods/ledger/changes.hpp"
#include "core/wire/html.hpp"
#include "core/wire/number.hpp"
#include "core/wire/schema.hpp"
#include "rpc/emit/page/page.hpp"
#include "rpc/protocol/error.hpp"

#include <map>
#include <utility>

namespace limbledger::rpc {

namespace {

constexpr std::size_t words_in_place = 12;  // of a word without a name of its own

struct ShapeFound {
  const wire::Type* type = nullptr;
  std::string_view tag;
};
using ShapesFound = std::map<std::string, ShapeFound, std::less<>>;

void gather_shapes(const wire::Type& type, std::string_view tag, ShapesFound& found) {
  if (type.kind == wire::Kind::optional || type.kind == wire::Kind::list) {
    return gather_shapes(type.inner(), {}, found);
  }
  if (type.kind == wire::Kind::choice) {
    for (const wire::Alternative& alternative : type.alternatives) {
      gather_shapes(alternative.type(), alternative.tag, found);
    }
    return;
  }
  const bool named = type.kind == wire::Kind::object || type.kind == wire::Kind::word;
  if (!named || (!type.name.empty() && !found.try_emplace(std::string(type.name), ShapeFound{&type, tag}).second)) {
    return;
  }
  for (const wire::Field& field : type.fields) {
    gather_shapes(field.type(), {}, found);
  }
}

[[nodiscard]] std::string words_list(const wire::Type& type) {
  std::string list;
  for (const std::string_view word : type.words) {
    list += (list.empty() ? "" : ", ") + ("<code>" + wire::html_escaped(word) + "</code>");
  }
  return list;
}

[[nodiscard]] std::string range_text(const wire::NumberRule& rule) {
  std::string text = rule.per_unit == 1 ? "a whole number, " : "a number in steps of " + wire::write_number(1, rule.per_unit) + ", ";
  text += wire::write_number(rule.low, rule.per_unit) + " to " + wire::write_number(rule.high, rule.per_unit);
  return text + (rule.unit.empty() ? "" : " " + std::string(rule.unit));
}

}  // namespace

std::string shape_link(std::string_view name) { return "<a href=\"#shape-" + wire::html_escaped(name) + "\">" + wire::html_escaped(name) + "</a>"; }

std::string kind_text(const wire::Type& type) {
  switch (type.kind) {
    case wire::Kind::object:
      return shape_link(type.name);
    case wire::Kind::word:
      return type.words.size() <= words_in_place ? "one of " + words_list(type) : "a word of " + shape_link(type.name);
    case wire::Kind::optional:
      return kind_text(type.inner());
    case wire::Kind::list:
      return "a list of: " + kind_text(type.inner());
    case wire::Kind::choice: {
      std::string list;
      for (const wire::Alternative& alternative : type.alternatives) {
        list += (list.empty() ? "" : ", ") + shape_link(alternative.type().name) + " (<code>kind</code> <code>" + wire::html_escaped(alternative.tag) + "</code>)";
      }
      return "one of " + list;
    }
    case wire::Kind::text: {
      // What is written out as a pattern says its own length.
      const wire::TextRule& rule = type.text_rule;
      const std::string text = rule.expected.empty() ? std::string("text") : wire::html_escaped(rule.expected);
      return text + (rule.length_max != 0 && rule.pattern.empty() ? " (" + std::to_string(rule.length_max) + " characters at most)" : "");
    }
    case wire::Kind::boolean:
      return "<code>true</code> or <code>false</code>";
    case wire::Kind::number:
      return wire::html_escaped(range_text(type.number_rule));
    case wire::Kind::raw:
      return "any JSON value";
  }
  return {};
}

std::string members_table(const wire::Type& type, std::string_view tag) {
  std::string rows;
  if (!tag.empty()) {
    rows = "<tr><th scope=\"row\"><code>kind</code></th><td>needed</td><td><code>" + wire::html_escaped(tag) + "</code></td><td></td></tr>";
  }
  for (const wire::Field& field : type.fields) {
    rows += "<tr><th scope=\"row\"><code>" + wire::html_escaped(field.name) + "</code></th><td>" + (wire::member_required(field) ? "needed" : "") + "</td><td>" + kind_text(field.type()) + "</td><td>" +
            wire::html_escaped(field.note.starts_with(wire::needed_note) ? field.note.substr(wire::needed_note.size()) : field.note) + "</td></tr>";
  }
  return "<div class=\"wide\" tabindex=\"0\"><table><thead><tr><th scope=\"col\">Member</th><th scope=\"col\">Needed</th><th scope=\"col\">Holds</th><th scope=\"col\">Remark</th></tr></thead><tbody>" + rows +
         "</tbody></table></div>";
}

std::string shapes_section(std::span<const service::Method> table) {
  ShapesFound found;
  gather_shapes(wire::type_of<ErrorData>(), {}, found);
  gather_shapes(wire::type_of<service::StaffCalled>(), {}, found);
  for (const service::Method& method : table) {
    gather_shapes(method.params(), {}, found);
    gather_shapes(method.result(), {}, found);
  }
  std::string text;
  for (const auto& [name, shape] : found) {
    text += "<article id=\"shape-" + wire::html_escaped(name) + "\"><h3>" + wire::html_escaped(name) + "</h3>" + (shape.type->note.empty() ? std::string() : "<p>" + wire::html_escaped(shape.type->note) + "</p>");
    text += shape.type->kind == wire::Kind::word ? "<p>One of " + words_list(*shape.type) + "</p>" : (shape.type->fields.empty() ? std::string("<p>No members.</p>") : members_table(*shape.type, shape.tag));
    text += "</article>";
  }
  return "<section id=\"shapes\"><h2>Shapes</h2><p>A member that is not needed may be left out; <code>null</code> reads as left out. In an answer an empty list may stand where nothing is.</p>" + text + "</section>";
}

}  // namespace limbledger::rpc

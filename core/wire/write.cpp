#include "core/wire/write.hpp"

#include "core/wire/number.hpp"

namespace limbledger::wire {

namespace {

// The table has one accessor for reading and writing, and nothing here writes through it.
[[nodiscard]] void* loose(const void* value) { return const_cast<void*>(value); }

void write_members(const Type& type, const void* value, std::string& out, bool first) {
  for (const Field& field : type.fields) {
    const Type& inner = field.type();
    const void* member = field.at(loose(value));
    if (inner.kind == Kind::optional && !inner.has(member)) {
      continue;
    }
    if (!first) {
      out += ',';
    }
    first = false;
    out += '"';
    out += field.name;
    out += "\":";
    write_onto(inner, member, out);
  }
}

}  // namespace

void write_quoted(std::string_view text, std::string& out) {
  static constexpr char hex[] = "0123456789abcdef";
  out += '"';
  for (const char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    if (c == '"' || c == '\\') {
      out += '\\';
      out += c;
    } else if (byte >= 0x20) {
      out += c;
    } else if (c == '\n') {
      out += "\\n";
    } else if (c == '\t') {
      out += "\\t";
    } else if (c == '\r') {
      out += "\\r";
    } else {
      out += "\\u00";
      out += hex[byte >> 4U];
      out += hex[byte & 0xFU];
    }
  }
  out += '"';
}

std::string quoted(std::string_view text) {
  std::string out;
  write_quoted(text, out);
  return out;
}

void write_onto(const Type& type, const void* value, std::string& out) {
  switch (type.kind) {
    case Kind::object:
      out += '{';
      write_members(type, value, out, true);
      out += '}';
      return;
    case Kind::list: {
      out += '[';
      const std::size_t size = type.size(value);
      for (std::size_t i = 0; i < size; ++i) {
        if (i != 0) {
          out += ',';
        }
        write_onto(type.inner(), type.element(loose(value), i), out);
      }
      out += ']';
      return;
    }
    case Kind::optional:
      if (type.has(value)) {
        write_onto(type.inner(), type.held(loose(value)), out);
      } else {
        out += "null";
      }
      return;
    case Kind::choice: {
      const Alternative& alternative = type.alternatives[type.index(value)];
      out += "{\"kind\":\"";
      out += alternative.tag;
      out += '"';
      write_members(alternative.type(), type.held(loose(value)), out, false);
      out += '}';
      return;
    }
    case Kind::text:
      return write_quoted(type.to_text(value), out);
    case Kind::raw:
      out += type.to_text(value);
      return;
    case Kind::number:
      out += write_number(type.get(value), type.number_rule.per_unit);
      return;
    case Kind::boolean:
      out += type.get(value) != 0 ? "true" : "false";
      return;
    case Kind::word:
      out += '"';
      out += type.words[static_cast<std::size_t>(type.get(value))];
      out += '"';
      return;
  }
}

}  // namespace limbledger::wire

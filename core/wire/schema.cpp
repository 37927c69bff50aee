#include "core/wire/schema.hpp"

#include "core/wire/number.hpp"
#include "core/wire/write.hpp"

#include <algorithm>

namespace limbledger::wire {

namespace {

// Names that may stand in a JSON Pointer and as a key of OpenRPC's components.
[[nodiscard]] bool can_be_named(std::string_view name) {
  return !name.empty() && std::all_of(name.begin(), name.end(), [](char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_';
  });
}

[[nodiscard]] std::string joined(std::string_view note, std::string_view more) {
  if (note.empty() || more.empty()) {
    return std::string(note.empty() ? more : note);
  }
  return std::string(note) + " (" + std::string(more) + ")";
}

[[nodiscard]] std::string described(std::string_view note, bool first = false) {
  return note.empty() ? std::string{} : (first ? "" : ",") + ("\"description\":" + quoted(note));
}

[[nodiscard]] std::string text_schema(const TextRule& rule, std::string_view note) {
  std::string schema = "{\"type\":\"string\"";
  if (!rule.pattern.empty()) {
    schema += ",\"pattern\":" + quoted(rule.pattern);
  }
  if (rule.length_max != 0) {
    schema += ",\"maxLength\":" + std::to_string(rule.length_max);
  }
  return schema + described(joined(note, rule.pattern.empty() ? std::string_view{} : rule.expected)) + "}";
}

[[nodiscard]] std::string number_schema(const NumberRule& rule, std::string_view note) {
  std::string more(rule.unit);
  if (rule.per_unit != 1) {
    more += (more.empty() ? "" : ", ") + ("in steps of " + write_number(1, rule.per_unit));
  }
  return std::string("{\"type\":") + (rule.per_unit == 1 ? "\"integer\"" : "\"number\"") + ",\"minimum\":" + write_number(rule.low, rule.per_unit) +
         ",\"maximum\":" + write_number(rule.high, rule.per_unit) + described(joined(note, more)) + "}";
}

}  // namespace

bool member_required(const Field& field) {
  const Kind kind = field.type().kind;
  return kind == Kind::list ? field.note.starts_with(needed_note) : kind != Kind::optional;
}

std::string SchemaSet::of(const Type& type, std::string_view note) {
  switch (type.kind) {
    case Kind::object:
    case Kind::word:
      return reference(type, {}, note);
    case Kind::optional:
      return of(type.inner(), note);
    case Kind::list:
      return "{\"type\":\"array\",\"items\":" + of(type.inner(), {}) + ",\"maxItems\":" + std::to_string(type.items_max) + described(note) + "}";
    case Kind::choice: {
      std::string branches;
      for (const Alternative& alternative : type.alternatives) {
        branches += (branches.empty() ? "" : ",") + reference(alternative.type(), alternative.tag, {});
      }
      return "{\"oneOf\":[" + branches + "]" + described(note) + "}";
    }
    case Kind::text:
      return text_schema(type.text_rule, note);
    case Kind::boolean:
      return "{\"type\":\"boolean\"" + described(note) + "}";
    case Kind::number:
      return number_schema(type.number_rule, note);
    case Kind::raw:
      return "{" + described(note, true) + "}";
  }
  return "{}";
}

std::string SchemaSet::in_place(const Type& type) {
  switch (type.kind) {
    case Kind::object:
      return object(type, {}, type.note);
    case Kind::word:
      return words(type, type.note);
    default:
      return of(type);
  }
}

std::string SchemaSet::reference(const Type& type, std::string_view tag, std::string_view note) {
  const auto whole = [&](std::string_view remark) { return type.kind == Kind::word ? words(type, remark) : object(type, tag, remark); };
  if (!can_be_named(type.name)) {
    return whole(note.empty() ? type.note : note);
  }
  const std::string name(type.name);
  const auto [owner, is_new] = owners_.try_emplace(name, Owner{&type, tag});
  if (!is_new && (owner->second.type != &type || owner->second.tag != tag)) {
    if (std::find(clashes_.begin(), clashes_.end(), name) == clashes_.end()) {
      clashes_.push_back(name);
    }
    return whole(note.empty() ? type.note : note);
  }
  if (is_new) {
    named_[name] = whole(type.note);  // a type that contains itself finds its owner above
  }
  // Draft 7 ignores what stands beside a reference, so a remark goes around it.
  const std::string pointer = "{\"$ref\":" + quoted(pointer_ + name) + "}";
  return note.empty() ? pointer : "{\"allOf\":[" + pointer + "]" + described(note) + "}";
}

std::string SchemaSet::object(const Type& type, std::string_view tag, std::string_view note) {
  std::string properties;
  std::string required;
  if (!tag.empty()) {
    properties = "\"kind\":{\"const\":" + quoted(tag) + "}";
    required = "\"kind\"";
  }
  for (const Field& field : type.fields) {
    properties += (properties.empty() ? "" : ",") + quoted(field.name) + ":" + of(field.type(), field.note);
    if (member_required(field)) {
      required += (required.empty() ? "" : ",") + quoted(field.name);
    }
  }
  std::string schema = "{\"type\":\"object\"" + described(note) + ",\"properties\":{" + properties + "}";
  if (!required.empty()) {
    schema += ",\"required\":[" + required + "]";
  }
  return schema + ",\"additionalProperties\":false}";
}

std::string SchemaSet::words(const Type& type, std::string_view note) const {
  std::string list;
  for (const auto word : type.words) {
    list += (list.empty() ? "" : ",") + quoted(word);
  }
  return "{\"type\":\"string\",\"enum\":[" + list + "]" + described(note) + "}";
}

std::string schema_document(const Type& type) {
  SchemaSet set("#/$defs/");
  // A type that contains itself stands here and once more among the definitions.
  const std::string body = set.in_place(type);
  std::string defs;
  for (const auto& [key, schema] : set.named()) {
    defs += (defs.empty() ? "" : ",") + quoted(key) + ":" + schema;
  }
  std::string document = "{\"$schema\":\"https://json-schema.org/draft/2020-12/schema\"";
  if (!type.name.empty()) {
    document += ",\"title\":" + quoted(type.name);
  }
  if (body.size() > 2) {
    document += "," + body.substr(1, body.size() - 2);
  }
  if (!defs.empty()) {
    document += ",\"$defs\":{" + defs + "}";
  }
  return document + "}";
}

}  // namespace limbledger::wire

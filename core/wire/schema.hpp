// Type table -> JSON Schema, in the subset that means the same in draft 7 and 2020-12: closed objects, `required`, enums,
// `oneOf` over a constant `kind`, patterns, limits. Whole counts are integers; other numbers name their step and unit in the
// description. A list may be left out (it reads as empty). A JSON value kept as it is has the schema {}.
#pragma once

#include "core/wire/type.hpp"

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace limbledger::wire {

// Schemas that point at each other by name. The same calls in the same order give the same bytes.
class SchemaSet {
 public:
  // `pointer` stands before every name in a reference: "#/$defs/" or "#/components/schemas/".
  explicit SchemaSet(std::string pointer) : pointer_(std::move(pointer)) {}

  // A reference for a named type, which is added to the set with all it needs; else the schema itself.
  [[nodiscard]] std::string of(const Type& type) { return of(type, {}); }
  // The same with a remark of its own.
  [[nodiscard]] std::string of(const Type& type, std::string_view note);
  // The members of an object or the branches of a choice, not as a reference.
  [[nodiscard]] std::string in_place(const Type& type);

  [[nodiscard]] const std::map<std::string, std::string>& named() const { return named_; }
  // Names that two different types claim; the second one was written in place. To be empty in a released table.
  [[nodiscard]] const std::vector<std::string>& clashes() const { return clashes_; }

 private:
  struct Owner {
    const Type* type = nullptr;
    std::string_view tag;
  };
  [[nodiscard]] std::string reference(const Type& type, std::string_view tag, std::string_view note);
  [[nodiscard]] std::string object(const Type& type, std::string_view tag, std::string_view note);
  [[nodiscard]] std::string words(const Type& type, std::string_view note) const;

  std::string pointer_;
  std::map<std::string, std::string> named_;
  std::map<std::string, Owner> owners_;
  std::vector<std::string> clashes_;
};

// Whether an object that lacks this member is refused. A list that is absent reads as an empty one; where a method refuses an empty
// one, the remark on the member begins with this word, and the member is described as required.
inline constexpr std::string_view needed_note = "needed: ";
[[nodiscard]] bool member_required(const Field& field);
// A schema that stands alone: "$schema" of 2020-12, "title", "$defs" for what it names.
[[nodiscard]] std::string schema_document(const Type& type);

}  // namespace limbledger::wire

// Names of things. An id is 16 bytes shown as 26 characters of lower-case base32 (RFC 4648 alphabet, no padding); the
// two spare bits of the last character must be zero. Ids of different things are different types. Catalogue names
// (items, rules, conditions ...) are dotted lower-case text and are never renamed or reused.
#pragma once

#include "core/wire/text.hpp"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace limbledger::model {

using Bytes16 = std::array<std::uint8_t, 16>;

[[nodiscard]] std::string to_base32(const Bytes16& bytes);
[[nodiscard]] std::optional<Bytes16> from_base32(std::string_view text);

template <class Tag>
struct Id {
  Bytes16 bytes{};

  static constexpr wire::TextRule wire_rule{"26 characters of lower-case base32", "^[a-z2-7]{25}[aeimquy4]$", 26};
  [[nodiscard]] std::string to_text() const { return to_base32(bytes); }
  [[nodiscard]] static wire::TextProblem from_text(std::string_view text, Id& out) {
    const auto read = from_base32(text);
    if (!read) {
      return "params.wrong_type";
    }
    out.bytes = *read;
    return {};
  }
  friend bool operator==(const Id&, const Id&) = default;
  friend bool operator<(const Id& a, const Id& b) { return a.bytes < b.bytes; }
};

using PersonId = Id<struct PersonTag>;
using ExamId = Id<struct ExamTag>;
using FindingId = Id<struct FindingTag>;
using LinkId = Id<struct LinkTag>;
using ExaminerId = Id<struct ExaminerTag>;
using PlaceId = Id<struct PlaceTag>;
using PlanItemId = Id<struct PlanItemTag>;
using LetterId = Id<struct LetterTag>;
using ReplicaId = Id<struct ReplicaTag>;
using DeviceId = Id<struct DeviceTag>;
using ClinicId = Id<struct ClinicTag>;
using KeyId = Id<struct KeyTag>;
using EntryId = Id<struct EntryTag>;    // first 16 bytes of the entry's hash
using ObjectId = Id<struct ObjectTag>;  // any of the above, where the kind does not matter

template <class Tag>
[[nodiscard]] ObjectId as_object(const Id<Tag>& id) {
  return ObjectId{id.bytes};
}

// A client-made UUID; 16 bytes in the entry, 36 characters in JSON, any case read, lower case written.
struct RequestId {
  Bytes16 bytes{};

  static constexpr wire::TextRule wire_rule{
      "a UUID made by the client", "^[0-9a-fA-F]{8}-[0-9a-fA-F]{4}-[0-9a-fA-F]{4}-[0-9a-fA-F]{4}-[0-9a-fA-F]{12}$", 36};
  [[nodiscard]] std::string to_text() const;
  [[nodiscard]] static wire::TextProblem from_text(std::string_view text, RequestId& out);
  friend bool operator==(const RequestId&, const RequestId&) = default;
  friend bool operator<(const RequestId& a, const RequestId& b) { return a.bytes < b.bytes; }
};

// Dotted lower-case text from the catalogue: "knee.flexion_active", "rule.ottawa_knee", "mrc/1976".
template <class Tag>
struct CatalogueName {
  std::string text;

  static constexpr wire::TextRule wire_rule{"a name from the catalogue", "^[a-zA-Z0-9][a-zA-Z0-9_./:-]*$", 120};
  [[nodiscard]] std::string to_text() const { return text; }
  [[nodiscard]] static wire::TextProblem from_text(std::string_view from, CatalogueName& out) {
    if (!is_catalogue_text(from)) {
      return "params.wrong_type";
    }
    out.text = std::string(from);
    return {};
  }
  friend bool operator==(const CatalogueName&, const CatalogueName&) = default;
  friend bool operator<(const CatalogueName& a, const CatalogueName& b) { return a.text < b.text; }

 private:
  static bool is_catalogue_text(std::string_view from) {
    if (from.empty() || from.size() > wire_rule.length_max) {
      return false;
    }
    for (const char c : from) {
      const bool letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
      if (!letter && c != '_' && c != '.' && c != '/' && c != ':' && c != '-') {
        return false;
      }
    }
    return from.front() != '.' && from.front() != '/' && from.front() != ':' && from.front() != '-' && from.front() != '_';
  }
};

using ItemId = CatalogueName<struct ItemName>;
using FamilyId = CatalogueName<struct FamilyName>;
using ScaleId = CatalogueName<struct ScaleName>;
using ChoiceId = CatalogueName<struct ChoiceName>;
using RowId = CatalogueName<struct RowName>;
using SourceId = CatalogueName<struct SourceName>;
using RuleId = CatalogueName<struct RuleName>;
using MessageId = CatalogueName<struct MessageName>;
using StatementId = CatalogueName<struct StatementName>;
using ConcernId = CatalogueName<struct ConcernName>;
using Word = CatalogueName<struct WordName>;  // positions, instruments, complaints, end feels
using EditionId = CatalogueName<struct EditionName>;

}  // namespace limbledger::model

// A person as the ledger knows them: may be only one name and a year. Identifiers are texts within their issuer.
// `norm_sex` says which norms to compare with; unspecified shows both.
#pragma once

#include "core/model/ids.hpp"
#include "core/model/time.hpp"

#include <optional>
#include <vector>

namespace limbledger::model {

enum class Sex { male, female, other, unknown };
BOOST_DESCRIBE_ENUM(Sex, male, female, other, unknown)

enum class NormSex { male, female, unspecified };
BOOST_DESCRIBE_ENUM(NormSex, male, female, unspecified)

struct PersonName {
  wire::Name text;
  friend bool operator==(const PersonName&, const PersonName&) = default;
};
BOOST_DESCRIBE_STRUCT(PersonName, (), (text))

struct Identifier {
  wire::Name issuer;
  wire::Name text;
  friend bool operator==(const Identifier&, const Identifier&) = default;
};
BOOST_DESCRIBE_STRUCT(Identifier, (), (issuer, text))

struct Person {
  std::optional<PersonId> person;  // absent in a document that needs no ledger
  std::optional<std::vector<PersonName>> names;
  std::optional<Birth> birth;
  Sex sex = Sex::unknown;
  NormSex norm_sex = NormSex::unspecified;
  std::optional<wire::Name> home;
  std::optional<std::vector<Identifier>> identifiers;
  std::optional<std::vector<EntryId>> revision;
  friend bool operator==(const Person&, const Person&) = default;
};
BOOST_DESCRIBE_STRUCT(Person, (), (person, names, birth, sex, norm_sex, home, identifiers, revision))

}  // namespace limbledger::model

// One table a type for the whole program, made in core/model/types.cpp: it is costly to make in every file.
namespace limbledger::wire {
extern template const Type& type_of<model::Person>();
}  // namespace limbledger::wire

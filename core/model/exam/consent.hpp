// Consent to examine, to record and to send, who was in the room, who spoke, who interpreted. Absent is "not asked", never no.
// Source: clinical safety, requirement 17.
#pragma once

#include "core/model/ids.hpp"
#include "core/wire/type.hpp"

#include <optional>
#include <vector>

namespace limbledger::model {

enum class ConsentWord { yes, no, withdrawn };
BOOST_DESCRIBE_ENUM(ConsentWord, yes, no, withdrawn)

enum class Capacity { yes, no, assent, unsure };
BOOST_DESCRIBE_ENUM(Capacity, yes, no, assent, unsure)

enum class Chaperone { offered, present, declined, not_available };
BOOST_DESCRIBE_ENUM(Chaperone, offered, present, declined, not_available)

enum class Reliable { yes, no, unsure };
BOOST_DESCRIBE_ENUM(Reliable, yes, no, unsure)

enum class InterpreterKind { none, trained, relative, child };
BOOST_DESCRIBE_ENUM(InterpreterKind, none, trained, relative, child)

struct Consent {
  std::optional<ConsentWord> examine;
  std::optional<ConsentWord> record;
  std::optional<ConsentWord> send;
  std::optional<wire::Name> by;
  std::optional<Capacity> capacity;
  friend bool operator==(const Consent&, const Consent&) = default;
};
BOOST_DESCRIBE_STRUCT(Consent, (), (examine, record, send, by, capacity))

struct Company {
  std::optional<Chaperone> chaperone;
  std::optional<wire::Name> chaperone_name;
  std::optional<std::vector<wire::Name>> others;
  friend bool operator==(const Company&, const Company&) = default;
};
BOOST_DESCRIBE_STRUCT(Company, (), (chaperone, chaperone_name, others))

struct WhoSpoke {
  wire::Name who;
  std::optional<Reliable> reliable;
  friend bool operator==(const WhoSpoke&, const WhoSpoke&) = default;
};
BOOST_DESCRIBE_STRUCT(WhoSpoke, (), (who, reliable))

struct Interpreter {
  InterpreterKind kind{};
  std::optional<wire::Name> name;
  friend bool operator==(const Interpreter&, const Interpreter&) = default;
};
BOOST_DESCRIBE_STRUCT(Interpreter, (), (kind, name))

}  // namespace limbledger::model

// One table a type for the whole program, made in core/model/types.cpp: it is costly to make in every file.
namespace limbledger::wire {
extern template const Type& type_of<model::Consent>();
extern template const Type& type_of<model::Company>();
extern template const Type& type_of<model::WhoSpoke>();
extern template const Type& type_of<model::Interpreter>();
}  // namespace limbledger::wire

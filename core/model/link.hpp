// What a person decided of two records: that they are of one person, that they are not, or that nothing is decided after all. Names
// and values stay out of it: it lives under the clinic's key, which outlives the key of an erased person. So the reason is a word.
// Source: ledger, items 13, 18 and 31.
#pragma once

#include "core/model/ids.hpp"
#include "core/wire/number.hpp"
#include "core/wire/type.hpp"

#include <optional>
#include <vector>

namespace limbledger::model {

enum class SamePerson { yes, no, undo };
BOOST_DESCRIBE_ENUM(SamePerson, yes, no, undo)

// How who decided knows it.
enum class PairReason { asked_person, asked_family, same_paper, known_here, seen_together, decided_wrongly, other };
BOOST_DESCRIBE_ENUM(PairReason, asked_person, asked_family, same_paper, known_here, seen_together, decided_wrongly, other)

struct LinkBody {  // link
  LinkId link;
  std::vector<PersonId> persons;         // two
  SamePerson same{};
  PairReason reason{};
  std::optional<PersonId> shown_under;   // of two that are one: whose name and birth are shown for both
};
BOOST_DESCRIBE_STRUCT(LinkBody, (), (link, persons, same, reason, shown_under))

}  // namespace limbledger::model

// One table a type for the whole program, made in core/model/types.cpp: it is costly to make in every file.
namespace limbledger::wire {
extern template const Type& type_of<model::LinkBody>();
}  // namespace limbledger::wire

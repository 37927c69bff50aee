// A member that the description forgets would be lost without a word in every reply and in every stored entry.
// refused with: a member is missing from the description
#include "core/wire/type.hpp"

namespace limbledger::model {

struct Reading {
  bool active = false;
  bool loaded = false;
};
#ifdef WRONG
BOOST_DESCRIBE_STRUCT(Reading, (), (active))
#else
BOOST_DESCRIBE_STRUCT(Reading, (), (active, loaded))
#endif

const wire::Type& described() { return wire::type_of<Reading>(); }

}  // namespace limbledger::model

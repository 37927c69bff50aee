// What folds was opened with its key, which binds clinic, replica, sequence and header; an entry as received does not fold.
// refused with: could not convert
#include "core/ledger/fold/fold.hpp"

namespace limbledger::ledger {

model::ObjectId object();

#ifdef WRONG
Hash fold_it(const std::vector<Row>& entries) { return state_digest(object(), entries); }
#else
Hash fold_it(const std::vector<Opened>& entries) { return state_digest(object(), entries); }
#endif

}  // namespace limbledger::ledger

// A checked entry comes from checking alone; nobody makes one.
// refused with: is private within this context
#include "core/ledger/fold/opened.hpp"

namespace limbledger::ledger {

#ifdef WRONG
Opened any() { return Opened(); }
#else
Result<Opened> any(const model::ClinicId& clinic, const ObjectKey& key, const Row& row) { return open_operation(clinic, key, row); }
#endif

}  // namespace limbledger::ledger

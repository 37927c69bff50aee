// The id of a person never passes for the id of an exam.
// refused with: could not convert
#include "core/model/ids.hpp"

namespace limbledger::model {

bool same_exam(ExamId one, ExamId other) { return one == other; }

#ifdef WRONG
bool ask(ExamId exam, PersonId person) { return same_exam(exam, person); }
#else
bool ask(ExamId exam, PersonId) { return same_exam(exam, exam); }
#endif

}  // namespace limbledger::model

// form.describe: the form of a complaint, for one exam or for none. With an exam the age and the open concerns come from its
// record, so the ledger has to be unlocked; a kiosk gets its own exam's form without what a person is not to read alone.
#pragma once

#include "core/service/methods/say/form.hpp"

namespace limbledger::service {

[[nodiscard]] Result<FormDescribeResult> form_describe(Context& context, const FormDescribeParams& params);

}  // namespace limbledger::service

// form.describe: the form of a complaint, for one exam or for none. With an exam the age and the open concerns come from its
// record, so the ledger has to be unlocked; a kiosk gets its own exam's form without what a person is not to read alone.
#pragma once

#include "core/service/method.hpp"
#include "core/service/methods/say/form.hpp"

namespace limbledger::service {

[[nodiscard]] Result<FormDescribeResult> form_describe(Context& context, const FormDescribeParams& params);
// The same as it is sent: a form for nobody in particular is written once and kept by the desk.
[[nodiscard]] Result<ToldBefore<FormDescribeResult>> form_told(Context& context, const FormDescribeParams& params);
// form.write: the same on paper, for no exam: it is printed before anybody is seen.
[[nodiscard]] Result<FormWriteResult> form_write(Context& context, const FormWriteParams& params);

}  // namespace limbledger::service

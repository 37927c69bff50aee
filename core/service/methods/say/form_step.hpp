// One step of a form, drawn from its item alone: control, options, limits, and why it may not have been done. Units as the item.
#pragma once

#include "core/service/methods/say/form.hpp"

namespace limbledger::service {

[[nodiscard]] FormStep form_step(const reference::Edition& edition, const model::Item& item);

}  // namespace limbledger::service

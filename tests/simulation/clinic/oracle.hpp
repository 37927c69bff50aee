// Judges a clinic that has come home by what people did and what they had on their screens. It asks the devices only which requests
// they hold and what their pages show; what a page has to show of these it works out for itself. Throws a Complaint.
#pragma once

#include "tests/simulation/clinic/device.hpp"

namespace limbledger::ledger::clinic_sim {

struct Judged {
  std::size_t exams = 0;
  std::size_t conflicts = 0;  // of every kind, that stand open
};

// What was acknowledged on a device is on its own screen.
void judge_screen(Device& device, const Doings& doings);

// All devices hold and show the same, all that was promised is there, nothing twice, nothing in part, and of the values of one
// slot those stand that nobody replaced who had them on the screen.
[[nodiscard]] Judged judge_home(const std::vector<Device*>& devices, const Doings& doings);

// Each report stands once as it was written, and the last are those that nobody had on the screen who reported after.
void judge_reports(Device& hub, const Doings& doings);

}  // namespace limbledger::ledger::clinic_sim

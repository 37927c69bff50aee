// What making a ledger shares, whether a clinic begins with it or a device joins one. All throw Problem.
#pragma once

#include "core/store/memory.hpp"
#include "rpc/program/folder.hpp"
#include "rpc/program/options.hpp"
#include "rpc/program/world.hpp"

#include <string>

namespace limbledger::rpc {

// The name of the first examiner on this device.
[[nodiscard]] std::string examiner_label(const Options& options);
// From the descriptor or the terminal; of a demonstration it is drawn.
[[nodiscard]] std::string new_passphrase(const Options& options, ledger::World& world);
// The ledger is made in memory, where its clinic's name comes to be, and goes to the disk in one transaction.
void write_store(const Folder& folder, store::MemoryStore& made_in, const model::ClinicId& clinic);

}  // namespace limbledger::rpc

// What the commands do. Each returns the exit code, or throws Problem before it has done anything that lasts.
#pragma once

#include "rpc/program/options.hpp"
#include "rpc/program/problem.hpp"

namespace limbledger::rpc {

// Makes the folder, the first examiner and the keyring, and prints the recovery code: it is shown this once.
[[nodiscard]] ExitCode make_new_ledger(const Options& options);
// Answers requests until the input ends or a signal comes.
[[nodiscard]] ExitCode serve(const Options& options);
// Makes, lists or ends tokens of the program that serves this ledger.
[[nodiscard]] ExitCode manage_tokens(const Options& options);
// Prints what holds and what is damaged; 1 for damage.
[[nodiscard]] ExitCode verify(const Options& options);
// Prints the assessment of a document; 1 for a document that cannot be read.
[[nodiscard]] ExitCode assess(const Options& options);
// Prints the day, what is left open, or what disagrees.
[[nodiscard]] ExitCode print_list(const Options& options);
// The clinic's replica, which the others exchange with; answers until a signal comes.
[[nodiscard]] ExitCode run_hub(const Options& options);
// Makes a ledger of this device in a new folder, as one of the clinic whose hub lets it in.
[[nodiscard]] ExitCode join_clinic(const Options& options);
// Gives the hub what it lacks and takes what is new there; 1 where they do not hold the same at the end.
[[nodiscard]] ExitCode exchange_with_hub(const Options& options);
[[nodiscard]] ExitCode write_parcel_file(const Options& options);
// 1 where the file is no whole parcel of this clinic, and nothing was taken.
[[nodiscard]] ExitCode read_parcel_file(const Options& options);
[[nodiscard]] ExitCode write_schemas(const Options& options);
[[nodiscard]] ExitCode list_rules(const Options& options);

}  // namespace limbledger::rpc

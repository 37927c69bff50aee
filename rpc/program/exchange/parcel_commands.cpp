// limbledger parcel write and read.
#include "rpc/program/commands.hpp"
#include "rpc/program/exchange/carried.hpp"
#include "rpc/program/exchange/parcel_file.hpp"

#include <iostream>

namespace limbledger::rpc {

namespace {

constexpr const char* ask_who_serves = "stop it first, or ask it: parcel.write, parcel.take";

[[nodiscard]] ByFile at_once() {
  ByFile how;
  how.turn = [](const std::function<void()>& deed) {
    deed();
    return true;
  };
  return how;
}

}  // namespace

ExitCode write_parcel_file(const Options& options) {
  std::optional<model::ReplicaId> holder;
  if (!options.holder.empty() && !model::ReplicaId::from_text(options.holder, holder.emplace()).empty()) {
    throw Problem(ExitCode::usage, "--for: not a replica\n  what to do: give the 26 letters that limbledger exchange shows");
  }
  OpenedLedger opened(folder_or_default(options), ask_who_serves);
  unlock_for_exchange(opened, options);
  const auto door = open_door(opened);
  const auto written = write_parcel_to(at_once(), *door, options.file, holder);
  if (!written) {
    throw problem_of(written.error(), options.file);
  }
  std::cout << options.file << ": " << written->entries << " entries, " << written->size << " bytes, written and read back.\n"
            << "Only devices of this clinic can open it. It may be read again, and by any of them.\n";
  return ExitCode::done;
}

ExitCode read_parcel_file(const Options& options) {
  OpenedLedger opened(folder_or_default(options), ask_who_serves);
  unlock_for_exchange(opened, options);
  const auto door = open_door(opened);
  std::int64_t told_ms = opened.world().now().up_ms;
  ByFile how = at_once();
  how.told = [&](const service::ParcelIn& parcel) {
    if (const std::int64_t now_ms = opened.world().now().up_ms; now_ms - told_ms >= 1000) {
      told_ms = now_ms;
      std::cerr << "limbledger: " << parcel.looked_at() << " entries looked at" << std::endl;
    }
  };
  const auto taken = take_parcel_from(how, *door, options.file, options.cut_too);
  if (!taken) {
    throw problem_of(taken.error(), options.file);
  }
  std::cout << options.file << ": " << taken->entries << " entries, " << taken->taken << " of them new here.\n";
  if (!taken->is_whole) {
    std::cout << "The parcel was cut short: what comes after is missing. Have it written again.\n";
  }
  if (taken->after_end != 0) {
    std::cout << taken->after_end << " bytes stand after the parcel's end. They are no part of it and were not read: something was added to the file.\n";
  }
  if (taken->turned_away != 0) {
    std::cout << taken->turned_away << " entries were not kept: too many wait for earlier ones already. Bring those first.\n";
  }
  if (taken->was_restored) {
    std::cout << "Entries of this device came back that it no longer had: it was put back to an older copy, and writes nothing more under this\n"
                 "replica (replica.forked). Nothing is lost. What to do: keep this folder, and let the device join again in a new one:\n"
                 "  limbledger join NEW_FOLDER --with https://HOST:PORT     (with limbledger hub --enrol at the clinic)\n";
  }
  tell_held(*door);
  return taken->is_whole && taken->turned_away == 0 ? ExitCode::done : ExitCode::bad_answer;
}

}  // namespace limbledger::rpc

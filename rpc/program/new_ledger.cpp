#include "core/service/desk.hpp"
#include "core/store/memory.hpp"
#include "core/store/sqlite.hpp"
#include "rpc/access/calibrate.hpp"
#include "rpc/program/commands.hpp"
#include "rpc/program/exchange/new_folder.hpp"
#include "rpc/program/folder.hpp"
#include "rpc/program/lock_file.hpp"
#include "rpc/program/passphrase.hpp"
#include "rpc/program/practice/people.hpp"
#include "rpc/program/world.hpp"

#include <iostream>

namespace limbledger::rpc {

namespace {

constexpr std::uint32_t demo_argon_passes = 2;  // opens at once; there is nothing to guess, the passphrase lies beside it
constexpr std::uint32_t demo_argon_kib = 19 * 1024;

[[nodiscard]] service::LedgerKind kind_of(const Options& options) {
  if (options.demonstration) {
    return service::LedgerKind::demonstration;
  }
  return options.practice ? service::LedgerKind::practice : service::LedgerKind::clinic;
}

[[nodiscard]] std::string milliseconds(std::int64_t us) {
  const std::int64_t tenths = (us + 50) / 100;
  return std::to_string(tenths / 10) + "." + std::to_string(tenths % 10);
}

void print_made(const Options& options, const Folder& folder, const service::MadeLedger& made, std::int64_t flush) {
  std::cout << "A ledger was made in " << folder.path << "\n";
  if (options.demonstration) {
    std::cout << "It is a DEMONSTRATION: for invented people only. Its passphrase lies beside it and protects nothing.\n";
  } else if (options.practice) {
    std::cout << "It is for PRACTICE: for invented people only; some are registered to begin with. It is never exchanged with another ledger.\n";
  }
  std::cout << "First examiner: " << examiner_label(options) << " (" << made.examiner.to_text() << ")\n"
            << "One flush of this disk takes " << milliseconds(flush) << " ms; a recorded finding waits for one.\n";
  if (flush != 0 && flush < 50) {
    std::cout << "That is faster than disks are: this one may say that it has written before it has.\n";
  }
  std::cout << "\nRecovery code, shown this once:\n\n    " << made.recovery_code << "\n\n"
            << "Write it on paper and keep it away from this machine, where you keep what must not be lost. Whoever holds it can\n"
               "read this ledger. With it the ledger opens when every passphrase is forgotten, a new examiner can be added\n"
               "(examiner.add), and the clinic can build its ledger up again. Nobody can make it a second time. An old copy of\n"
               "the file keyring still opens with the passphrase of its day, also after a change.\n\n"
            << "Next: limbledger serve --ledger " << folder.path << " --stdio lines\n";
}

}  // namespace

std::string examiner_label(const Options& options) {
  const std::string label = options.examiner.empty() ? "examiner" : options.examiner;
  if (label.size() > service::examiner_label_bytes_max || !wire::check_text(label, service::examiner_label_bytes_max, false).empty()) {
    throw Problem(ExitCode::usage, "--examiner: longer than 24 bytes, or not on one line\n  what to do: give a short name");
  }
  return label;
}

std::string new_passphrase(const Options& options, ledger::World& world) {
  if (options.demonstration) {
    return "demonstration " + new_incident(world);
  }
  if (!options.passphrase_fd) {
    return ask_new_passphrase();
  }
  std::string passphrase = read_passphrase(*options.passphrase_fd);
  check_new_passphrase(passphrase);
  return passphrase;
}

void write_store(const Folder& folder, store::MemoryStore& made_in, const model::ClinicId& clinic) {
  store::SqliteOptions how;
  how.clinic = clinic;
  const auto store = store::SqliteStore::open(folder.ledger(), how);
  if (!store) {
    throw problem_of(store.error(), folder.ledger());
  }
  const auto heads = made_in.heads();
  if (!heads) {
    throw problem_of(heads.error(), folder.ledger());
  }
  std::vector<ledger::Row> rows;
  for (const ledger::Head& head : heads->newest) {
    const auto chain = made_in.read(head.replica, 1, head.seq, head.seq);
    if (!chain) {
      throw problem_of(chain.error(), folder.ledger());
    }
    rows.insert(rows.end(), chain->begin(), chain->end());
  }
  if (const auto written = (*store)->append(rows, heads->newest, heads->meta); !written) {
    throw problem_of(written.error(), folder.ledger());
  }
}

ExitCode make_new_ledger(const Options& options) {
  MachineWorld world;
  service::NewLedger wanted;
  wanted.examiner_label = examiner_label(options);
  wanted.kind = kind_of(options);
  wanted.durability = ledger::Durability::disk;
  if (options.demonstration) {
    wanted.argon_passes = demo_argon_passes;
    wanted.argon_kib = demo_argon_kib;
  }
  const Folder folder = make_folder(options.folder);
  wanted.passphrase = new_passphrase(options, world);
  const LockFile lock(folder.lock());
  const std::int64_t flush = flush_us(folder);
  if (!options.demonstration) {
    const ArgonCost cost = calibrate(measure_cost);
    wanted.argon_passes = cost.passes;
    wanted.argon_kib = cost.kib;
  }
  store::MemoryStore made_in;
  auto made = service::make_ledger(made_in, world, wanted);
  if (!made) {
    throw problem_of(made.error(), folder.path);
  }
  if (options.practice) {
    if (const auto people = register_invented_people(made_in, world, *made, wanted.passphrase); !people) {
      throw problem_of(people.error(), folder.path);
    }
  }
  // The keys first: a store without them would be sealed for ever.
  write_file(folder.keyring(), {reinterpret_cast<const char*>(made->keyring.data()), made->keyring.size()});
  write_store(folder, made_in, made->clinic);
  if (options.demonstration) {
    write_file(folder.demo_passphrase(), wanted.passphrase + "\n");
  }
  wipe(wanted.passphrase);
  print_made(options, folder, *made, flush);
  wipe(made->recovery_code);
  return ExitCode::done;
}

}  // namespace limbledger::rpc

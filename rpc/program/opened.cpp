#include "rpc/program/opened.hpp"

#include "core/reference/edition.hpp"
#include "core/store/memory.hpp"
#include "rpc/program/passphrase.hpp"
#include "rpc/program/practice/people.hpp"
#include "rpc/program/problem.hpp"

#include <stdlib.h>

#include <filesystem>
#include <system_error>

namespace limbledger::rpc {

namespace {

constexpr std::size_t keyring_bytes_max = std::size_t{1} << 20U;
constexpr std::size_t passphrase_bytes_max = 1024;

[[nodiscard]] Folder folder_to_go() {
  std::error_code failed;
  const std::filesystem::path place = std::filesystem::temp_directory_path(failed);
  std::string path = (failed ? std::filesystem::path("/tmp") : place) / "limbledger-demo-XXXXXX";
  if (::mkdtemp(path.data()) == nullptr) {
    throw Problem(ExitCode::unavailable, path + ": cannot be made\n  what to do: see that the folder for temporary files can be written, or set TMPDIR");
  }
  return {path};
}

}  // namespace

OpenedLedger::OpenedLedger(const std::string& path, const std::string& instead) : folder_(find_folder(path)), lock_(folder_.lock(), instead) {
  store::SqliteOptions options;
  options.begin_writing = writing_begins(folder_.ledger());
  auto store = store::SqliteStore::open(folder_.ledger(), options);
  if (!store && store.error().faults.front().code == "ledger.read_only") {
    store::SqliteOptions frozen;
    frozen.frozen = true;
    store = store::SqliteStore::open(folder_.ledger(), frozen);
    read_only_ = store.has_value();
  }
  if (!store) {
    throw problem_of(store.error(), folder_.ledger());
  }
  store_ = std::move(*store);
  const auto keyring = read_file(folder_.keyring(), keyring_bytes_max);
  if (!keyring) {
    throw Problem(ExitCode::unavailable, folder_.keyring() + ": cannot be read\n  what to do: see who owns it; without it the ledger stays sealed");
  }
  gate_ = std::make_unique<GatedStore>(*store_);
  auto desk = service::Desk::open(*gate_, world_, reference::EditionRef::built_in(), ledger::Bytes(keyring->begin(), keyring->end()));
  if (!desk) {
    throw problem_of(desk.error(), folder_.path);
  }
  desk_ = std::move(*desk);
  if (!read_only_) {
    desk_->keeps_keyring([path = folder_.keyring()](const ledger::Bytes& file) -> Result<void> {
      try {
        write_file(path, {reinterpret_cast<const char*>(file.data()), file.size()});
        return {};
      } catch (const Problem&) {
        return wire::Fault{"ledger.read_only", "", "a keyring that can be written"};
      }
    });
  }
}

OpenedLedger::OpenedLedger(InMemory) : folder_(folder_to_go()), lock_(folder_.lock()) {
  service::NewLedger wanted;
  wanted.examiner_label = shown_examiner;
  wanted.passphrase = shown_passphrase;
  wanted.kind = service::LedgerKind::demonstration;
  wanted.argon_passes = 1;
  wanted.argon_kib = 8;
  auto store = std::make_unique<store::MemoryStore>();
  const reference::Edition* edition = reference::built_in_edition();
  const auto made = edition == nullptr ? Result<service::MadeLedger>(wire::Fault{"internal.failure", ""}) : service::make_ledger(*store, still_world_, wanted);
  if (!made) {
    throw problem_of(made.error(), "the demonstration in memory");
  }
  if (const auto people = register_invented_people(*store, still_world_, *made, wanted.passphrase); !people) {
    throw problem_of(people.error(), "the demonstration in memory");
  }
  shown_code_ = made->recovery_code;
  store_ = std::move(store);
  gate_ = std::make_unique<GatedStore>(*store_);
  auto desk = service::Desk::open(*gate_, still_world_, *edition, made->keyring);
  if (!desk) {
    throw problem_of(desk.error(), "the demonstration in memory");
  }
  desk_ = std::move(*desk);
  desk_->keeps_keyring([](const ledger::Bytes&) { return Result<void>(); });
  write_file(folder_.demo_passphrase(), std::string(shown_passphrase) + "\n");
}

OpenedLedger::~OpenedLedger() {
  if (!shown_code_.empty()) {
    std::error_code failed;
    std::filesystem::remove_all(folder_.path, failed);
  }
}

bool OpenedLedger::unlock_if_told(std::optional<int> passphrase_fd) {
  std::string passphrase;
  if (passphrase_fd) {
    passphrase = read_passphrase(*passphrase_fd);
  } else if (auto kept = read_file(folder_.demo_passphrase(), passphrase_bytes_max)) {
    passphrase = kept->substr(0, kept->find('\n'));
    wipe(*kept);
  } else {
    return false;
  }
  const auto unlocked = desk_->unlock({}, passphrase);
  wipe(passphrase);
  if (unlocked) {
    return true;
  }
  // A passphrase that somebody gave is answered; the file beside a demonstration is a convenience and stops nothing.
  const Problem problem = problem_of(unlocked.error(), passphrase_fd ? folder_.path : folder_.demo_passphrase());
  if (passphrase_fd || problem.code() != ExitCode::locked) {
    throw problem;
  }
  why_locked_ = problem.what();
  return false;
}

}  // namespace limbledger::rpc

// limbledger parcel: a parcel as a file. Written beside its name, flushed, read back from the medium and compared, and only then
// renamed: a file with its own name is whole. A stick that is pulled leaves FILE.part, which is refused as cut short.
#include "rpc/program/commands.hpp"
#include "rpc/program/exchange/carried.hpp"

#include <fcntl.h>
#include <string.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <iostream>
#include <utility>

namespace limbledger::rpc {

namespace {

constexpr std::size_t parcel_piece_bytes = std::size_t{256} * 1024;

[[nodiscard]] Problem medium_failed(const std::string& path, const char* what) {
  return {ExitCode::unavailable, path + ": " + what + " (" + ::strerror(errno) +
                                     ")\n  what to do: free some space on the stick, or take another one, and write the parcel again; the ledger is as it was"};
}

class OpenFile {
 public:
  OpenFile(const std::string& path, int how) : file_(::open(path.c_str(), how | O_CLOEXEC | O_NOFOLLOW, 0600)) {}
  ~OpenFile() { close(); }
  OpenFile(const OpenFile&) = delete;
  OpenFile& operator=(const OpenFile&) = delete;

  [[nodiscard]] bool is_open() const { return file_ >= 0; }
  [[nodiscard]] int get() const { return file_; }
  bool close() {
    const int file = std::exchange(file_, -1);
    return file < 0 || ::close(file) == 0;
  }
  [[nodiscard]] bool write(std::span<const std::uint8_t> bytes) const {
    while (!bytes.empty()) {
      const ssize_t written = ::write(file_, bytes.data(), bytes.size());
      if (written < 0 && errno != EINTR) {
        return false;
      }
      bytes = bytes.subspan(written > 0 ? static_cast<std::size_t>(written) : 0);
    }
    return true;
  }

 private:
  int file_;
};

// Gives the file piece by piece, from its start where that is asked for.
[[nodiscard]] service::ReadPiece pieces_of(const OpenFile& file) {
  return [&file](bool from_start) -> Result<ledger::Bytes> {
    ledger::Bytes out(parcel_piece_bytes);
    ssize_t got = from_start && ::lseek(file.get(), 0, SEEK_SET) != 0 ? -1 : 0;
    if (got == 0) {
      do {
        got = ::read(file.get(), out.data(), out.size());
      } while (got < 0 && errno == EINTR);
    }
    if (got < 0) {
      return wire::Fault("parcel.unreadable", "");
    }
    out.resize(static_cast<std::size_t>(got));
    return out;
  };
}

[[nodiscard]] std::string folder_of_file(const std::string& path) {
  const auto slash = path.rfind('/');
  return slash == std::string::npos ? "." : slash == 0 ? "/" : path.substr(0, slash);
}

}  // namespace

ExitCode write_parcel_file(const Options& options) {
  std::optional<model::ReplicaId> holder;
  if (!options.holder.empty() && !model::ReplicaId::from_text(options.holder, holder.emplace()).empty()) {
    throw Problem(ExitCode::usage, "--for: not a replica\n  what to do: give the 26 letters that limbledger exchange shows");
  }
  OpenedLedger opened(folder_or_default(options), "stop it first: one program at a time has a ledger");
  unlock_for_exchange(opened, options);
  const auto door = open_door(opened);
  const std::string part = options.file + ".part";
  OpenFile file(part, O_WRONLY | O_CREAT | O_TRUNC);
  if (!file.is_open()) {
    throw medium_failed(part, "cannot be written");
  }
  const auto written = door->write_parcel(holder, [&](std::span<const std::uint8_t> bytes) -> Result<void> {
    return file.write(bytes) ? Result<void>() : Result<void>(wire::Fault("parcel.unreadable", ""));
  });
  const int failed = errno;
  if (!written || ::fsync(file.get()) != 0 || !file.close()) {
    errno = written ? errno : failed;
    const Problem problem = !written && written.error().faults.front().code != "parcel.unreadable" ? problem_of(written.error(), opened.folder().path) : medium_failed(part, "cannot be written");
    ::unlink(part.c_str());
    throw problem;
  }
  {
    // Read from the medium, not from memory, as far as the system lets one.
    const OpenFile again(part, O_RDONLY);
    static_cast<void>(::posix_fadvise(again.get(), 0, 0, POSIX_FADV_DONTNEED));
    const auto read = again.is_open() ? door->check_parcel(pieces_of(again)) : Result<service::WrittenParcel>(wire::Fault("parcel.unreadable", ""));
    if (!read || read->entries != written->entries || read->runs != written->runs) {
      const Problem problem = read ? Problem(ExitCode::unavailable, part + ": what was read back is not what was written\n  what to do: take another stick") : problem_of(read.error(), part);
      ::unlink(part.c_str());
      throw Problem(ExitCode::unavailable, problem.what());
    }
  }
  if (::rename(part.c_str(), options.file.c_str()) != 0) {
    throw medium_failed(options.file, "cannot be given its name");
  }
  const OpenFile folder(folder_of_file(options.file), O_RDONLY | O_DIRECTORY);
  if (folder.is_open()) {
    ::fsync(folder.get());
  }
  std::cout << options.file << ": " << written->entries << " entries, " << written->size << " bytes, written and read back.\n"
            << "Only devices of this clinic can open it. It may be read again, and by any of them.\n";
  return ExitCode::done;
}

ExitCode read_parcel_file(const Options& options) {
  OpenedLedger opened(folder_or_default(options), "stop it first: one program at a time has a ledger");
  unlock_for_exchange(opened, options);
  const auto door = open_door(opened);
  const OpenFile file(options.file, O_RDONLY);
  if (!file.is_open()) {
    throw Problem(ExitCode::usage, options.file + ": cannot be read (" + ::strerror(errno) + ")\n  what to do: name the file that parcel write made");
  }
  std::int64_t told_ms = opened.world().now().up_ms;
  const auto taken = door->take_parcel(pieces_of(file), options.cut_too, [&](std::uint64_t entries) {
    if (const std::int64_t now_ms = opened.world().now().up_ms; now_ms - told_ms >= 1000) {
      told_ms = now_ms;
      std::cerr << "limbledger: " << entries << " entries looked at" << std::endl;
    }
  });
  if (!taken) {
    throw problem_of(taken.error(), options.file);
  }
  std::cout << options.file << ": " << taken->entries << " entries, " << taken->taken << " of them new here.\n";
  if (!taken->is_whole) {
    std::cout << "The parcel was cut short: what comes after is missing. Have it written again.\n";
  }
  if (taken->turned_away != 0) {
    std::cout << taken->turned_away << " entries were not kept: too many wait for earlier ones already. Bring those first.\n";
  }
  if (taken->was_restored) {
    std::cout << "Entries of this device came back that it no longer had: it was put back to an older copy, and writes nothing more under this\n"
                 "replica (replica.forked). Nothing is lost. What to do: keep this folder, and let the device join again in a new one.\n";
  }
  tell_held(*door);
  return taken->is_whole && taken->turned_away == 0 ? ExitCode::done : ExitCode::bad_answer;
}

}  // namespace limbledger::rpc

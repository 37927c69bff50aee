#include "rpc/program/folder.hpp"

#include "rpc/program/problem.hpp"

#include <dirent.h>
#include <fcntl.h>
#include <sys/stat.h>
#include <sys/vfs.h>
#include <time.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstdlib>
#include <cstring>
#include <memory>
#include <vector>

namespace limbledger::rpc {

namespace {

struct BadSystem {
  std::uint32_t magic;
  std::string_view name;
};

// Numbers of statfs(2).
constexpr std::array bad_systems{
    BadSystem{0x4d44, "FAT"},        BadSystem{0x2011BAB0, "exFAT"},  BadSystem{0x6969, "NFS, over the network"},
    BadSystem{0x517B, "SMB, over the network"}, BadSystem{0xFE534D42, "SMB, over the network"},
    BadSystem{0xFF534D42, "CIFS, over the network"}, BadSystem{0x564C, "NCP, over the network"}, BadSystem{0x00C36400, "Ceph, over the network"},
    BadSystem{0x5346414F, "AFS, over the network"},  BadSystem{0x73757245, "Coda, over the network"},
};

[[nodiscard]] std::string reason() { return std::string(" (") + std::strerror(errno) + ")"; }

void refuse_bad_system(const std::string& path) {
  struct statfs state {};
  if (::statfs(path.c_str(), &state) != 0) {
    throw Problem(ExitCode::unavailable, path + ": cannot be looked at" + reason() + "\n  what to do: name a folder on this machine's own disk");
  }
  const auto found = std::find_if(bad_systems.begin(), bad_systems.end(),
                                  [&](const BadSystem& bad) { return bad.magic == static_cast<std::uint32_t>(state.f_type); });
  if (found != bad_systems.end()) {
    throw Problem(ExitCode::unavailable, path + ": this file system (" + std::string(found->name) +
                                             ") does not keep what it says it has written, nor its locks\n"
                                             "  what to do: choose a folder on this machine's own disk (ext4, xfs, btrfs); carry copies on a stick as parcels");
  }
}

[[nodiscard]] bool is_folder(const std::string& path) {
  struct stat state {};
  return ::stat(path.c_str(), &state) == 0 && S_ISDIR(state.st_mode);
}

[[nodiscard]] bool exists(const std::string& path) {
  struct stat state {};
  return ::stat(path.c_str(), &state) == 0;
}

[[nodiscard]] bool is_empty_file(const std::string& path) {
  struct stat state {};
  return ::stat(path.c_str(), &state) == 0 && S_ISREG(state.st_mode) && state.st_size == 0;
}

[[nodiscard]] bool is_empty(const std::string& path) {
  DIR* folder = ::opendir(path.c_str());
  if (folder == nullptr) {
    throw Problem(ExitCode::unavailable, path + ": cannot be read" + reason() + "\n  what to do: see who owns the folder");
  }
  bool empty = true;
  while (const dirent* entry = ::readdir(folder)) {
    const std::string_view name = entry->d_name;
    // A lock alone is what is left of a making that was killed.
    empty = empty && (name == "." || name == ".." || name == "lock");
  }
  ::closedir(folder);
  return empty;
}

void make_with_parents(const std::string& path) {
  for (std::size_t at = path.find('/', 1); at != std::string::npos; at = path.find('/', at + 1)) {
    ::mkdir(path.substr(0, at).c_str(), 0700);  // what is there already stays as it is
  }
  if (::mkdir(path.c_str(), 0700) != 0 && errno != EEXIST) {
    throw Problem(ExitCode::unavailable, path + ": the folder cannot be made" + reason() + "\n  what to do: name a folder that you may write to");
  }
}

}  // namespace

std::string default_folder() {
  const char* data = std::getenv("XDG_DATA_HOME");
  // A path that is not absolute is to be ignored, says the convention on base folders.
  if (data != nullptr && data[0] == '/') {
    return std::string(data) + "/limbledger";
  }
  const char* home = std::getenv("HOME");
  if (home == nullptr || home[0] == '\0') {
    throw Problem(ExitCode::usage, "no folder is named and HOME is not set\n  what to do: name the ledger's folder");
  }
  return std::string(home) + "/.local/share/limbledger";
}

Folder make_folder(const std::string& path) {
  if (exists(path) && !is_folder(path)) {
    throw Problem(ExitCode::usage, path + ": is not a folder\n  what to do: name a new folder");
  }
  if (is_folder(path) && !is_empty(path)) {
    throw Problem(ExitCode::usage, path + ": is not empty, and nothing in it is touched\n  what to do: name a new folder; a ledger that is there is opened with: limbledger serve --ledger " + path);
  }
  make_with_parents(path);
  if (::chmod(path.c_str(), 0700) != 0) {
    throw Problem(ExitCode::unavailable, path + ": cannot be kept from others" + reason() + "\n  what to do: name a folder of your own");
  }
  refuse_bad_system(path);
  return {path};
}

Folder find_folder(const std::string& path) {
  const Folder folder{path};
  const bool has_ledger = exists(folder.ledger());
  const bool has_keyring = exists(folder.keyring());
  const bool has_log = exists(folder.ledger() + "-wal");
  if (!has_ledger && !has_keyring && !has_log) {
    throw Problem(ExitCode::usage, path + ": there is no ledger here (ledger.none)\n  what to do: name the folder of the ledger, with --ledger DIR; a new one is made with: limbledger new " + path);
  }
  // What is left of a ledger is never called none: somebody would make a new one and throw the old keys away.
  if (!has_ledger || is_empty_file(folder.ledger())) {
    throw Problem(ExitCode::bad_answer,
                  folder.ledger() + ": the ledger's file is " + (has_ledger ? "empty" : "missing") +
                      ", and other parts of a ledger are here (ledger.missing)\n"
                      "  what to do: bring ledger.sqlite back from a copy" + (has_log ? "; keep ledger.sqlite-wal, it may hold the newest entries" : "") +
                      ". Make no new ledger over it.\n"
                      "  If limbledger new was broken off here, nothing was recorded yet: make the ledger in another folder");
  }
  if (!has_keyring) {
    throw problem_of(wire::Fault("keyring.missing", "", "the file keyring"), folder.keyring());
  }
  refuse_bad_system(path);
  return folder;
}

std::optional<std::string> read_descriptor(int file, std::size_t bytes_max) {
  std::string bytes;
  std::array<char, 65536> piece{};
  for (;;) {
    const ssize_t got = ::read(file, piece.data(), piece.size());
    if (got == 0) {
      return bytes;
    }
    if (got < 0 && errno != EINTR) {
      return std::nullopt;
    }
    bytes.append(piece.data(), got > 0 ? static_cast<std::size_t>(got) : 0);
    if (bytes.size() > bytes_max) {
      return std::nullopt;
    }
  }
}

std::optional<std::string> read_file(const std::string& path, std::size_t bytes_max) {
  const int file = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
  if (file < 0) {
    return std::nullopt;
  }
  auto bytes = read_descriptor(file, bytes_max);
  ::close(file);
  return bytes;
}

void write_file(const std::string& path, std::string_view bytes) {
  const std::string beside = path + ".new";
  const int file = ::open(beside.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC | O_NOFOLLOW, 0600);
  const bool written = file >= 0 && write_all(file, bytes) && ::fsync(file) == 0;
  const int failed = errno;
  if (file >= 0) {
    ::close(file);
  }
  errno = failed;
  if (!written || ::rename(beside.c_str(), path.c_str()) != 0 || !flush_folder_of(path)) {
    throw Problem(ExitCode::unavailable, path + ": cannot be written" + reason() + "\n  what to do: free some space, or see who owns the folder");
  }
}

bool write_all(int file, std::string_view bytes) {
  while (!bytes.empty()) {
    const ssize_t written = ::write(file, bytes.data(), bytes.size());
    if (written < 0 && errno != EINTR) {
      return false;
    }
    bytes.remove_prefix(written > 0 ? static_cast<std::size_t>(written) : 0);
  }
  return true;
}

bool flush_folder_of(const std::string& path) {
  const auto slash = path.rfind('/');
  const std::string folder = slash == std::string::npos ? "." : path.substr(0, slash + 1);
  const int file = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  if (file < 0) {
    return false;
  }
  const bool flushed = ::fsync(file) == 0 || errno == EINVAL || errno == ENOTSUP;
  const int failed = errno;
  ::close(file);
  errno = failed;
  return flushed;
}

namespace {

class LogFile {
 public:
  explicit LogFile(std::string path) : path_(std::move(path)) {}
  ~LogFile() {
    if (file_ >= 0) {
      ::close(file_);
    }
  }
  LogFile(const LogFile&) = delete;
  LogFile& operator=(const LogFile&) = delete;
  void begin() {
    if (file_ < 0) {
      file_ = ::open(path_.c_str(), O_RDONLY | O_CLOEXEC);
    }
    if (file_ >= 0) {
      static_cast<void>(::sync_file_range(file_, 0, 0, SYNC_FILE_RANGE_WRITE));
    }
  }

 private:
  std::string path_;
  int file_ = -1;
};

}  // namespace

std::function<void()> writing_begins(const std::string& store_path) {
  return [log = std::make_shared<LogFile>(store_path + "-wal")] { log->begin(); };
}

std::int64_t flush_us(const Folder& folder) {
  const std::string path = folder.file("flush.measure");
  const int file = ::open(path.c_str(), O_RDWR | O_CREAT | O_TRUNC | O_CLOEXEC | O_NOFOLLOW, 0600);
  if (file < 0) {
    throw Problem(ExitCode::unavailable, folder.path + ": cannot be written" + reason() + "\n  what to do: see who owns the folder");
  }
  const std::string page(4096, 'x');
  std::vector<std::int64_t> times;
  for (int i = 0; i < 9; ++i) {
    timespec before{};
    timespec after{};
    ::clock_gettime(CLOCK_MONOTONIC, &before);
    if (::pwrite(file, page.data(), page.size(), 0) < 0 || ::fdatasync(file) != 0) {
      break;
    }
    ::clock_gettime(CLOCK_MONOTONIC, &after);
    times.push_back((after.tv_sec - before.tv_sec) * 1'000'000 + (after.tv_nsec - before.tv_nsec) / 1000);
  }
  ::close(file);
  ::unlink(path.c_str());
  std::sort(times.begin(), times.end());
  return times.empty() ? 0 : times[times.size() / 2];
}

}  // namespace limbledger::rpc

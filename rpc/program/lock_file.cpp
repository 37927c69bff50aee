#include "rpc/program/lock_file.hpp"

#include "rpc/program/problem.hpp"

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <cstring>

namespace limbledger::rpc {

namespace {

// The number that the holder wrote, or empty: digits only, because the file may hold anything.
[[nodiscard]] std::string holder(int file) {
  std::array<char, 24> text{};
  const ssize_t got = ::pread(file, text.data(), text.size(), 0);
  std::string digits;
  for (ssize_t i = 0; i < got && text[static_cast<std::size_t>(i)] >= '0' && text[static_cast<std::size_t>(i)] <= '9'; ++i) {
    digits += text[static_cast<std::size_t>(i)];
  }
  return digits;
}

}  // namespace

LockFile::LockFile(const std::string& path, const std::string& instead) : file_(::open(path.c_str(), O_RDWR | O_CREAT | O_CLOEXEC | O_NOFOLLOW, 0600)) {
  if (file_ < 0 && (errno == EROFS || errno == EACCES || errno == EPERM)) {
    written_ = false;
    file_ = ::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NOFOLLOW);
    if (file_ < 0 && errno == ENOENT) {
      return;  // none can be made here, so nobody holds one
    }
  }
  if (file_ < 0) {
    throw Problem(ExitCode::unavailable, path + ": the lock cannot be opened (" + std::strerror(errno) + ")\n  what to do: see who owns the folder and whether the disk can be written");
  }
  if (::flock(file_, LOCK_EX | LOCK_NB) != 0) {
    const std::string pid = holder(file_);
    ::close(file_);
    throw Problem(ExitCode::unavailable, path + ": this ledger is in use" + (pid.empty() ? "" : " by process " + pid) +
                                             " (ledger.in_use)\n  what to do: " +
                                             (!instead.empty() ? instead : "stop that program first" + (pid.empty() ? "" : ", for example with: kill " + pid)));
  }
  if (!written_) {
    return;
  }
  const std::string mine = std::to_string(::getpid()) + "\n";
  if (::ftruncate(file_, 0) != 0 || ::pwrite(file_, mine.data(), mine.size(), 0) < 0) {
    // The name of the holder is a courtesy; the lock itself stands.
  }
}

LockFile::~LockFile() {
  if (file_ < 0) {
    return;
  }
  if (written_ && ::ftruncate(file_, 0) != 0) {
    // What stays behind names a process that is gone, and blocks nobody.
  }
  ::close(file_);
}

}  // namespace limbledger::rpc

// One program a ledger: the kernel's lock on the file `lock`, which also names its holder. The kernel drops the lock with
// the process however it ends, so a file left behind by a crash blocks nobody. Where nothing can be written, the lock is
// taken on the file as it is; where there is none, nobody can have made one.
#pragma once

#include <string>

namespace limbledger::rpc {

class LockFile {
 public:
  // Throws Problem (unavailable) that names the process holding it.
  // `instead`: what can be done without stopping it.
  explicit LockFile(const std::string& path, const std::string& instead = {});
  ~LockFile();
  LockFile(const LockFile&) = delete;
  LockFile& operator=(const LockFile&) = delete;

 private:
  int file_ = -1;
  bool written_ = true;  // false: the file could be opened for reading only
};

}  // namespace limbledger::rpc

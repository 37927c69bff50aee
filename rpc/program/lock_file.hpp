// One program a ledger: the kernel's lock on the file `lock`, which also names its holder. The kernel drops the lock with
// the process however it ends, so a file left behind by a crash blocks nobody.
#pragma once

#include <string>

namespace limbledger::rpc {

class LockFile {
 public:
  // Throws Problem (unavailable) that names the process holding it.
  explicit LockFile(const std::string& path);
  ~LockFile();
  LockFile(const LockFile&) = delete;
  LockFile& operator=(const LockFile&) = delete;

 private:
  int file_ = -1;
};

}  // namespace limbledger::rpc

// The log of the program: DIR/log/limbledger.log, three files of 1 MiB that take turns, for the owner alone. It holds codes,
// names of methods and numbers of incidents; nothing that was sent, and so nothing of a person. May be told of from two threads.
#pragma once

#include <memory>
#include <string>
#include <string_view>

namespace spdlog {
class logger;
}

namespace limbledger::rpc {

class Log {
 public:
  // Throws Problem when the file cannot be opened. Where nothing can be written (`read_only`) nothing is logged.
  explicit Log(const std::string& path, bool read_only = false);
  ~Log();
  Log(const Log&) = delete;
  Log& operator=(const Log&) = delete;

  void started(std::string_view how);
  void stopped(std::string_view why);
  // `method` is a name of the method table, or empty for one that is not; `incident` is empty unless it failed inside.
  void call_failed(std::string_view method, std::string_view code, std::string_view incident);

 private:
  std::shared_ptr<spdlog::logger> logger_;
};

}  // namespace limbledger::rpc

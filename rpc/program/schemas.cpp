#include "core/model/operation.hpp"
#include "core/service/call.hpp"
#include "rpc/emit/files.hpp"
#include "rpc/program/commands.hpp"
#include "rpc/program/examples/examples.hpp"
#include "rpc/program/folder.hpp"

#include <sys/stat.h>

#include <iostream>

namespace limbledger::rpc {

ExitCode write_schemas(const Options& options) {
  ::umask(022);  // nothing of a person is in them
  std::vector<StoredShape> stored;
  for (const model::StoredType& type : model::stored_types()) {
    stored.push_back({type.op.empty() ? "operation" : std::string(type.op), type.type});
  }
  const auto files = schema_files(service::methods(), stored, held_talk().examples);
  for (const char* part : {"", "/ledger", "/ledger/v1"}) {
    ::mkdir((options.folder + part).c_str(), 0755);  // what is missing shows when the first file is written
  }
  for (const auto& [name, text] : files) {
    const std::string path = options.folder + "/" + name;
    write_file(path, text);
    ::chmod(path.c_str(), 0644);
  }
  std::cout << files.size() << " files written to " << options.folder << "\n";
  return ExitCode::done;
}

}  // namespace limbledger::rpc

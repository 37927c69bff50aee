#include "core/reference/edition.hpp"
#include "core/service/call.hpp"
#include "rpc/program/commands.hpp"
#include "rpc/program/folder.hpp"

#include <unistd.h>

#include <iostream>

namespace limbledger::rpc {

namespace {

[[nodiscard]] std::string document_text(const std::string& file) {
  auto text = file == "-" ? read_descriptor(STDIN_FILENO, wire::message_bytes_max) : read_file(file, wire::message_bytes_max);
  if (!text) {
    throw Problem(ExitCode::bad_answer, file + ": cannot be read, or is larger than 1 MiB\n  what to do: name a document of the format limbledger-exam/1");
  }
  // A file may begin with a byte order mark; on the wire it is refused.
  return text->starts_with("\xEF\xBB\xBF") ? text->substr(3) : std::move(*text);
}

}  // namespace

ExitCode assess(const Options& options) {
  const std::string text = document_text(options.file);
  if (const auto whole = wire::parse(text, wire::depth_max_default); !whole) {
    throw Problem(ExitCode::bad_answer, problem_of(whole.error(), options.file).what());
  }
  const auto params = wire::parse("{\"document\":" + text + "}", wire::depth_max_default + 1);
  service::Context context;
  context.edition = reference::built_in_edition();
  const auto result = service::call(service::methods(), context, "document.assess", *params, &params->root());
  if (!result) {
    const Problem problem = problem_of(result.error(), options.file);
    throw Problem(problem.code() == ExitCode::internal ? ExitCode::internal : ExitCode::bad_answer, problem.what());
  }
  std::cout << *result << "\n";
  return ExitCode::done;
}

}  // namespace limbledger::rpc

#include "core/service/methods/ledger/token.hpp"

#include "core/wire/read.hpp"
#include "core/wire/write.hpp"
#include "rpc/access/scope.hpp"
#include "rpc/program/commands.hpp"
#include "rpc/program/folder.hpp"
#include "rpc/program/network/ask.hpp"

#include <sys/stat.h>

#include <algorithm>
#include <iostream>

namespace limbledger::rpc {

namespace {

[[nodiscard]] std::string_view word_of_token(service::GivenScope scope) { return scope_words[static_cast<std::size_t>(scope)].word; }
static_assert(scope_words[static_cast<std::size_t>(service::GivenScope::kiosk)].scope == service::Scope::kiosk);
static_assert(scope_words[static_cast<std::size_t>(service::GivenScope::sync)].scope == service::Scope::sync);

// A word or an instant as it is read, without the quotes of JSON.
template <class T>
[[nodiscard]] std::string bare(const T& value) {
  const std::string json = wire::write(value);
  return json.substr(1, json.size() - 2);
}

template <class T>
[[nodiscard]] T asked(const Folder& folder, std::string_view method, const std::string& params) {
  auto result = wire::read_text<T>(ask_sidecar(folder, method, params));
  if (!result) {
    throw problem_of(result.error(), "the answer of the program that serves");
  }
  return std::move(*result);
}

void make_token(const Folder& folder, const Options& options) {
  struct stat state {};
  if (!options.to.empty() && ::lstat(options.to.c_str(), &state) == 0) {
    throw Problem(ExitCode::usage, options.to + ": lies there already\n  what to do: name a file that is not there");
  }
  const auto* scope = std::find_if(scope_words.begin(), scope_words.end(), [&](const ScopeWord& one) { return one.scope == options.scope; });
  std::string params = R"({"scope":)" + wire::quoted(scope->word);
  params += options.exam.empty() ? "" : R"(,"exam":)" + wire::quoted(options.exam);
  params += options.minutes ? R"(,"minutes":)" + std::to_string(*options.minutes) : "";
  params += options.label.empty() ? "" : R"(,"label":)" + wire::quoted(options.label);
  params += options.once ? R"(,"once":true})" : "}";
  const auto made = asked<service::TokenMakeResult>(folder, "token.make", params);
  const std::string number = std::to_string(made.number.steps);
  if (made.once) {
    std::cout << "token " << number << ", opens one session, within two minutes: " << sidecar_origin(folder) << "/#once=" << made.once->text << "\n";
    return;
  }
  if (made.token) {
    write_file(options.to, made.token->text + "\n");
  }
  std::cout << "token " << number << ", " << word_of_token(made.scope) << ", good until " << bare(made.expires_at) << ": " << options.to << "\n";
}

void list_tokens(const Folder& folder) {
  for (const service::ListedToken& one : asked<service::TokenListResult>(folder, "token.list", "{}").tokens) {
    std::cout << one.number.steps << "  " << word_of_token(one.scope) << "  " << bare(one.state) << "  until " << bare(one.expires_at)
              << (one.exam ? "  exam " + one.exam->to_text() : "") << (one.label ? "  " + one.label->text : "") << "\n";
  }
}

// Of a demonstration in memory there is nothing but sidecar.json.
[[nodiscard]] Folder served_folder(const std::string& path) {
  Folder folder{path};
  struct stat state {};
  return ::stat(folder.file("sidecar.json").c_str(), &state) == 0 ? folder : find_folder(path);
}

}  // namespace

ExitCode manage_tokens(const Options& options) {
  const Folder folder = served_folder(options.folder.empty() ? default_folder() : options.folder);
  switch (options.deed) {
    case TokenDeed::make:
      make_token(folder, options);
      break;
    case TokenDeed::list:
      list_tokens(folder);
      break;
    case TokenDeed::end:
      static_cast<void>(asked<service::TokenEndResult>(folder, "token.end", R"({"number":)" + std::to_string(options.number) + "}"));
      std::cout << "token " << options.number << " is ended\n";
      break;
  }
  return ExitCode::done;
}

}  // namespace limbledger::rpc

#include "core/service/call.hpp"
#include "rpc/program/commands.hpp"
#include "rpc/program/opened.hpp"
#include "rpc/program/passphrase.hpp"

#include <iostream>

namespace limbledger::rpc {

namespace {

[[nodiscard]] std::string raw_member(const wire::Document& document, const wire::Node& parent, std::string_view name) {
  const wire::Node* member = document.child(parent, name);
  return member == nullptr ? std::string{} : std::string(member->kind == wire::NodeKind::text ? member->text : member->raw);
}

void print_damage(const wire::Document& document, const wire::Node& damage) {
  for (std::uint32_t at = damage.first; at != 0; at = document.at(at).next) {
    const wire::Node& one = document.at(at);
    const std::string code = raw_member(document, one, "code");
    const wire::FaultCode* row = wire::find_fault_code(code);
    std::cout << "  DAMAGE " << code << (row != nullptr ? ": " + std::string(row->meaning) : std::string{}) << "\n        ";
    for (std::uint32_t inside = one.first; inside != 0; inside = document.at(inside).next) {
      const wire::Node& member = document.at(inside);
      if (member.key != "code") {
        std::cout << " " << member.key << " " << (member.kind == wire::NodeKind::text ? member.text : member.raw);
      }
    }
    std::cout << "\n";
  }
}

// True where one of them is damaged still.
[[nodiscard]] bool print_lists(const wire::Document& document, const wire::Node& lists) {
  bool damaged = false;
  for (std::uint32_t at = lists.first; at != 0; at = document.at(at).next) {
    const wire::Node& one = document.at(at);
    const bool mended = !raw_member(document, one, "mended").empty();
    const std::string left_out = raw_member(document, one, "left_out");
    const wire::FaultCode* row = wire::find_fault_code(raw_member(document, one, "code"));
    std::cout << (mended ? "  MENDED " : "  DAMAGE ") << "list " << raw_member(document, one, "list")
              << (left_out.empty() ? std::string(": its pages do not agree") : ": it left out " + left_out + " of the entries") << "\n";
    if (!mended && row != nullptr) {
      std::cout << "         " << row->meaning << "; " << row->hint << "\n";
    }
    damaged = damaged || !mended;
  }
  return damaged;
}

[[nodiscard]] ExitCode print(const std::string& path, bool unlocked, const wire::Document& document) {
  const wire::Node& root = document.root();
  const wire::Node* damage = document.child(root, "damage");
  const wire::Node* replicas = document.child(root, "replicas");
  const bool bad = damage != nullptr && damage->count != 0;
  std::cout << path << "\n"
            << "entries   " << raw_member(document, root, "entries") << "\n";
  if (replicas != nullptr) {
    std::cout << "replicas  " << (replicas->kind == wire::NodeKind::list ? std::to_string(replicas->count) : std::string(replicas->raw)) << "\n";
  }
  if (const std::string unread = raw_member(document, root, "unread"); !unread.empty()) {
    std::cout << "unread    " << unread << ", of kinds that only a newer edition knows: checked, kept and passed on\n";
  }
  const wire::Node* lists = document.child(root, "lists");
  const bool lists_bad = lists != nullptr && print_lists(document, *lists);
  if (bad) {
    print_damage(document, *damage);
    if (const std::string more = raw_member(document, root, "unlisted"); !more.empty()) {
      std::cout << "  and " << more << " more\n";
    }
    std::cout << "What to do: keep this folder and a copy of it as they are; bring the entries back from another copy.\n";
    return ExitCode::bad_answer;
  }
  if (lists_bad) {
    return ExitCode::bad_answer;
  }
  std::cout << "Every hash, chain and signature holds" << (unlocked ? ", and what is sealed opens.\n" : "; what is sealed was not opened.\n");
  return ExitCode::done;
}

}  // namespace

ExitCode verify(const Options& options) {
  OpenedLedger opened(options.folder, "let the running program do it: the method ledger.verify, at the address in sidecar.json; it goes on serving");
  bool unlocked = opened.unlock_if_told(options.passphrase_fd);
  if (!opened.why_locked().empty()) {
    std::cerr << "limbledger: " << opened.why_locked() << "\n";
  }
  if (!unlocked && has_terminal()) {
    std::string passphrase = ask_passphrase("Passphrase (empty: check hashes and signatures only): ");
    if (!passphrase.empty()) {
      const auto result = opened.desk().unlock({}, passphrase);
      wipe(passphrase);
      if (!result) {
        throw problem_of(result.error(), options.folder);
      }
      unlocked = true;
    }
  }
  service::Context context;
  context.desk = &opened.desk();
  context.edition = &opened.desk().edition();
  const auto params = wire::parse(options.mend ? R"({"mend":true})" : "{}");
  const auto result = service::call(service::methods(), context, "ledger.verify", *params, &params->root());
  if (!result) {
    throw problem_of(result.error(), options.folder);
  }
  const auto document = wire::parse(*result);
  if (!document) {
    throw problem_of(document.error(), options.folder);
  }
  return print(options.folder, unlocked, *document);
}

}  // namespace limbledger::rpc

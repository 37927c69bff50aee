#include "rpc/program/examples/examples.hpp"

#include "core/reference/edition.hpp"
#include "core/service/admission.hpp"
#include "core/service/call.hpp"
#include "core/service/desk.hpp"
#include "core/store/memory.hpp"
#include "core/wire/parse.hpp"
#include "rpc/access/token.hpp"
#include "rpc/program/demo/still_world.hpp"
#include "rpc/program/examples/shown_exchange.hpp"
#include "rpc/program/examples/talk.hpp"

#include <map>
#include <memory>

namespace limbledger::rpc {

namespace {

// As written; empty where there is none.
[[nodiscard]] std::string picked(const wire::Document& document, std::string_view pointer) {
  const wire::Node* node = document.at_pointer(pointer);
  return node == nullptr ? std::string{} : std::string(node->raw);
}

[[nodiscard]] std::string filled(std::string_view params, const std::map<std::string, std::string>& kept) {
  std::string out(params);
  for (const auto& [name, json] : kept) {
    const std::string place = "\"@" + name + "\"";
    for (std::size_t at = out.find(place); at != std::string::npos; at = out.find(place, at + json.size())) {
      out.replace(at, place.size(), json);
    }
  }
  return out;
}

// As a page is let in that was opened by its link.
class ByLink final : public service::Admission {
 public:
  explicit ByLink(Tokens& tokens) : tokens_(tokens) {}
  [[nodiscard]] Result<service::Admitted> enter(const std::optional<std::string_view>& token, const std::optional<std::string_view>& once) override {
    const auto traded = tokens_.trade(once.value_or(token.value_or(std::string_view())));
    if (!traded) {
      return traded.error();
    }
    return service::Admitted{traded->grant.caller, traded->grant.expires_at, traded->text};
  }
  void leave() override {}
  void bind(const model::ExamId& /*exam*/) override {}

 private:
  Tokens& tokens_;
};

[[nodiscard]] HeldTalk hold(std::span<const Line> lines, bool by_link) {
  HeldTalk held;
  StillWorld world;
  store::MemoryStore store;
  service::NewLedger wanted;
  wanted.examiner_label = "Amina Invented";
  wanted.passphrase = "four invented words here";
  wanted.kind = service::LedgerKind::demonstration;
  wanted.argon_passes = 1;
  wanted.argon_kib = 8;
  const auto made = service::make_ledger(store, world, wanted);
  const reference::Edition* edition = reference::built_in_edition();
  if (!made || edition == nullptr) {
    held.refused.emplace_back("the invented ledger cannot be made");
    return held;
  }
  const auto desk = service::Desk::open(store, world, *edition, made->keyring);
  if (!desk) {
    held.refused.emplace_back("the invented ledger cannot be opened");
    return held;
  }
  (*desk)->keeps_keyring([](const ledger::Bytes&) { return Result<void>(); });
  service::Context context;
  context.desk = desk->get();
  context.edition = edition;
  Tokens tokens(world);
  context.tokens = &tokens;
  ShownExchange exchanges(**desk);
  context.exchanges = &exchanges;
  std::map<std::string, std::string> kept{{"passphrase", wire::quoted(wanted.passphrase)}, {"code", wire::quoted(made->recovery_code)}};
  ByLink link(tokens);
  if (by_link) {
    static_cast<void>((*desk)->unlock("", wanted.passphrase));
    context.admission = &link;
    kept.emplace("once", wire::quoted(tokens.make_once({service::Scope::examiner, std::nullopt}).text));
  }
  for (const Line& line : lines) {
    const std::string params = filled(line.params, kept);
    const auto sent = wire::parse(params);
    const auto result = sent ? service::call(service::methods(), context, line.method, *sent, &sent->root()) : Result<std::string>(sent.error());
    if (!result) {
      const wire::Fault fault = result.error().faults.front();
      held.refused.push_back(std::string(line.method) + " " + fault.code + " " + fault.path);
      continue;
    }
    const auto answer = wire::parse(*result);
    for (const Kept& part : line.keep) {
      kept[std::string(part.name)] = answer ? picked(*answer, part.pointer) : std::string{};
    }
    held.examples.push_back({std::string(line.method), std::string(line.title), params, *result});
  }
  return held;
}

}  // namespace

const HeldTalk& held_talk() {
  static const HeldTalk held = hold(example_talk(), false);
  return held;
}

const HeldTalk& held_walk() {
  static const HeldTalk held = hold(example_walk(), true);
  return held;
}

}  // namespace limbledger::rpc

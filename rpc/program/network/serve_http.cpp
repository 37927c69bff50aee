#include "rpc/program/network/serve_http.hpp"

#include "rpc/access/scope.hpp"
#include "rpc/access/visit.hpp"
#include "rpc/program/network/description.hpp"
#include "rpc/program/network/discovery.hpp"
#include "rpc/program/network/given_files.hpp"
#include "rpc/program/network/pages.hpp"
#include "rpc/transport/listener.hpp"

#include <algorithm>
#include <filesystem>
#include <iostream>

namespace limbledger::rpc {

namespace {

constexpr int tick_ms = 30'000;
// A front end that reads the file gets a token for at least the other half.
constexpr std::int64_t renew_ms = token_ms / 2;

[[nodiscard]] std::string word_of(service::Scope scope) {
  const auto* found = std::find_if(scope_words.begin(), scope_words.end(), [&](const ScopeWord& one) { return one.scope == scope; });
  return found == scope_words.end() ? std::string("none") : std::string(found->word);
}

// For as long as tokens live, the desk asks them which kiosks go on while it is locked.
class KiosksOf {
 public:
  KiosksOf(service::Desk& desk, const Tokens& tokens) : desk_(desk) {
    desk.kiosks_by([&tokens] { return tokens.kiosks(); });
  }
  ~KiosksOf() { desk_.kiosks_by({}); }
  KiosksOf(const KiosksOf&) = delete;
  KiosksOf& operator=(const KiosksOf&) = delete;

 private:
  service::Desk& desk_;
};

}  // namespace

ExitCode serve_http(const Options& options, OpenedLedger& opened, Service& service, Log& log, const HttpHooks& hooks) {
  std::string why;
  std::vector<std::string> not_served;
  std::vector<std::string> remarks;
  Pages pages = options.pages.empty() ? Pages{} : read_pages(options.pages, not_served, remarks);
  for (const std::string& line : not_served) {
    std::cerr << "limbledger: not served: " << line << "\n";
  }
  for (const std::string& line : remarks) {
    std::cerr << "limbledger: " << line << "\n";
  }
  add_description(options.demonstration ? &opened : nullptr, service, pages);
  const auto listener = Listener::open(*options.http_port, {}, why);
  if (!listener) {
    throw Problem(ExitCode::unavailable, "port " + std::to_string(*options.http_port) + " of 127.0.0.1 cannot be had (" + why +
                                             ")\n  what to do: choose another port, or --http 0 for any that is free");
  }
  const service::Caller caller = service.context.caller;
  Tokens tokens(opened.world());
  Visits visits(service, tokens, listener->port(), std::move(pages));
  const KiosksOf kiosks(opened.desk(), tokens);
  service.context.tokens = &tokens;
  const SidecarFile file(opened.folder());
  Sidecar sidecar = sidecar_at(listener->port());
  std::int64_t published_up_ms = 0;
  std::uint64_t published = 0;
  const auto publish = [&] {
    const MadeToken made = tokens.make(caller);
    sidecar.tokens = {{{word_of(caller.scope)}, {made.text}, made.expires_at}};
    file.write(sidecar);
    sidecar.tokens.clear();  // only the hash is kept
    published_up_ms = opened.world().now().up_ms;
    published = made.number;
  };
  publish();
  const auto publish_again = [&] {
    try {
      publish();
    } catch (const Problem&) {
      log.call_failed({}, "ledger.read_only", {});  // a full disk: tried again at the next tick
    }
  };
  GivenFiles given(options.give, tokens, opened.world());
  // The file never names a token that was ended.
  tokens.tells_end([&](std::uint64_t number) {
    given.ended(number);
    if (number == published) {
      published_up_ms -= renew_ms + 1;
      publish_again();
    }
  });
  std::cerr << "limbledger: serving on " << sidecar.http.text << "\n";
  // Only here, to whoever has started it: no reply tells where the ledger lies.
  std::cerr << "limbledger: another link: limbledger token make --ledger \"" << std::filesystem::absolute(opened.folder().path).string() << "\" --scope examiner --once\n";
  if (options.once) {
    std::cerr << "limbledger: opens one session, within two minutes: http://127.0.0.1:" << listener->port() << "/#once=" << tokens.make_once(caller).text << "\n";
  }
  log.started(hooks.beside == nullptr ? "http" : "http and stdio");
  service::Caller beside_caller = caller;
  if (hooks.beside != nullptr) {
    hooks.beside->start([&](std::string_view text) {
      service.context.caller = beside_caller;
      service.context.wait_ms.reset();
      auto reply = answer(text, service);
      beside_caller = service.context.caller;  // a kiosk's exam stays its own
      service.context.caller = {service::Scope::none, std::nullopt};
      return reply;
    });
  }
  const Beside beside{hooks.handover.descriptor(), [&] {
                        hooks.handover.work();
                        visits.tell_changes();
                        return hooks.beside == nullptr || !hooks.beside->has_left();
                      }};
  listener->run([&] { return visits.begin(); }, hooks.stop,
                [&] {
                  hooks.while_waiting();
                  if (opened.world().now().up_ms - published_up_ms > renew_ms) {
                    publish_again();
                  }
                  if (!given.renew()) {
                    log.call_failed({}, "ledger.read_only", {});
                  }
                },
                tick_ms, beside);
  service.context.tokens = nullptr;
  return ExitCode::done;
}

}  // namespace limbledger::rpc

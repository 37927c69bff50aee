#include "core/reference/edition.hpp"
#include "core/service/call.hpp"
#include "core/service/desk.hpp"
#include "rpc/access/visit.hpp"
#include "rpc/emit/openrpc.hpp"
#include "rpc/program/commands.hpp"
#include "rpc/program/examples/examples.hpp"
#include "rpc/program/examples/shown_exchange.hpp"
#include "rpc/program/exchange/served.hpp"
#include "rpc/program/exchange/stop_signals.hpp"
#include "rpc/program/logging.hpp"
#include "rpc/program/opened.hpp"
#include "rpc/program/network/serve_http.hpp"
#include "rpc/protocol/envelope.hpp"
#include "rpc/transport/stdio.hpp"

#include <chrono>
#include <condition_variable>
#include <iostream>
#include <mutex>
#include <thread>

namespace limbledger::rpc {

namespace {

constexpr int read_ahead_after_ms = 100;

[[nodiscard]] std::string_view name_of(StdioEnd end) {
  switch (end) {
    case StdioEnd::input_ended:
      return "input ended";
    case StdioEnd::stopped:
      return "by a signal";
    case StdioEnd::nobody_reads:
      return "nobody reads the output";
    case StdioEnd::broken_frame:
      return "broken frame";
    case StdioEnd::failed:
      return "input or output failed";
  }
  return "";
}

[[nodiscard]] ExitCode exit_code_of(StdioEnd end) {
  switch (end) {
    case StdioEnd::broken_frame:
      return ExitCode::bad_answer;
    case StdioEnd::failed:
      return ExitCode::unavailable;
    default:
      return ExitCode::done;
  }
}

[[nodiscard]] ExitCode ended(const StdioOutcome& outcome, Log& log) {
  log.stopped(name_of(outcome.end));
  if (!outcome.why.empty()) {
    std::cerr << "limbledger: " << outcome.why << "; the connection is closed\n";
  }
  return exit_code_of(outcome.end);
}

// The facts are read beside the first answers, which need none of them, and a little later, so as not to take the processor from
// those; whoever needs the facts before that reads them at once.
class ReadsAhead {
 public:
  ReadsAhead()
      : thread_([this] {
          std::unique_lock lock(mutex_);
          if (!left_.wait_for(lock, std::chrono::milliseconds(read_ahead_after_ms), [this] { return leaving_; })) {
            lock.unlock();
            static_cast<void>(reference::built_in_edition());
          }
        }) {}
  ~ReadsAhead() {
    {
      const std::lock_guard lock(mutex_);
      leaving_ = true;
    }
    left_.notify_one();
    thread_.join();
  }
  ReadsAhead(const ReadsAhead&) = delete;
  ReadsAhead& operator=(const ReadsAhead&) = delete;

 private:
  std::mutex mutex_;
  std::condition_variable left_;
  bool leaving_ = false;
  std::thread thread_;
};

void say_kind(service::LedgerKind kind) {
  if (kind == service::LedgerKind::demonstration) {
    std::cerr << "limbledger: DEMONSTRATION ledger, for invented people only\n";
  } else if (kind == service::LedgerKind::practice) {
    std::cerr << "limbledger: PRACTICE ledger, for invented people only\n";
  }
}

}  // namespace

ExitCode serve(const Options& options) {
  const StopSignals stop;
  OpenedLedger opened = options.demonstration ? OpenedLedger(InMemory{}) : OpenedLedger(options.folder.empty() ? default_folder() : options.folder);
  if (options.trouble.any() && opened.desk().kind() != service::LedgerKind::demonstration) {
    throw Problem(ExitCode::usage, "--trouble: " + opened.folder().path + " is no demonstration\n  what to do: limbledger serve --demo, or a ledger of limbledger new DIR --demo");
  }
  Log log(opened.folder().log(), opened.read_only());
  if (opened.read_only()) {
    std::cerr << "limbledger: nothing can be written in " << opened.folder().path << "; the ledger is read and nothing is recorded or logged\n";
  }
  say_kind(opened.desk().kind());
  if (!opened.unlock_if_told(options.passphrase_fd)) {
    if (!opened.why_locked().empty()) {
      std::cerr << "limbledger: " << opened.why_locked() << "\n";
    }
    std::cerr << "limbledger: locked; waiting for ledger.unlock\n";
  }
  service::Context context;
  context.desk = &opened.desk();
  context.edition = opened.desk().edition_ref();
  const ReadsAhead reads_ahead;
  context.caller.scope = options.scope;
  const service::NetworkLimits network = published({}, {});
  context.network = &network;
  Handover handover;
  std::optional<HubAt> hub;
  if (options.hub_port) {
    hub = HubAt{options.address, *options.hub_port};
  }
  std::optional<ServedExchange> exchanges;
  std::optional<ShownExchange> shown_exchange;
  if (options.demonstration) {
    context.exchanges = &shown_exchange.emplace(opened.desk());
  } else {
    context.exchanges = &exchanges.emplace(opened.desk(), handover, hub);
  }
  Service service{service::methods(), context, {}, {}, {}};
  service.discover = [] {
    static const std::string text = openrpc_text(service::methods(), held_talk().examples);
    return text;
  };
  service.failed = [&](std::string_view method, std::string_view code) {
    const wire::FaultCode* row = wire::find_fault_code(code);
    const bool internal = row == nullptr || row->number == wire::FaultClass::internal;
    std::string incident = internal ? new_incident(opened.world()) : std::string{};
    log.call_failed(method, code, incident);
    return incident;
  };
  TroublePlay play(options.trouble, opened.desk(), opened.gate());
  if (options.trouble.any()) {
    std::cerr << "limbledger: plays trouble, as --trouble says\n";
    if (options.trouble.clock_ms) {
      opened.set_clock(*options.trouble.clock_ms);
    }
    service.asked = [&play] { play.asked(); };
    service.called = [&play](std::string_view method) { play.called(method); };
    service.worked_out = [&play] { play.worked_out(); };
  }
  if (options.demonstration) {
    std::cerr << "limbledger: in memory; gone when this program ends. sidecar.json lies in " << opened.folder().path << "\n";
  }
  if (opened.desk().kind() == service::LedgerKind::demonstration) {
    opened.desk().wakes_by([&] {
      try {
        static_cast<void>(opened.unlock_if_told(std::nullopt));
      } catch (const Problem&) {
        // It stays locked, and the call says so.
      }
    });
  }
  // The clock of one in memory goes on with its calls alone.
  const auto lock_if_idle = [&] {
    if (!options.demonstration) {
      opened.desk().lock_if_idle();
    }
  };
  Stdio stdio;
  stdio.framing = options.framing;
  const auto too_large = [&] { return answer_too_large(service); };
  if (options.http_port) {
    std::optional<StdioBeside> beside;
    if (options.stdio) {
      beside.emplace(stdio, handover, too_large);
    }
    const HttpHooks hooks{lock_if_idle, stop.descriptor(), handover, beside ? &*beside : nullptr};
    const ExitCode code = serve_http(options, opened, service, log, hooks);
    if (beside) {
      return ended(beside->end(), log);
    }
    log.stopped("by a signal");
    return code;
  }
  if (options.scope == service::Scope::kiosk) {
    opened.desk().kiosks_by([&] { return std::vector{context.caller.exam}; });
  }
  stdio.idle = lock_if_idle;
  stdio.beside = handover.descriptor();
  stdio.ready = [&] { handover.work(); };
  stdio.stop = stop.descriptor();
  log.started(options.framing == Framing::lines ? "stdio lines" : "stdio headers");
  const StdioOutcome outcome = serve_stdio(stdio, [&](std::string_view text) { return answer(text, service); }, too_large);
  opened.desk().kiosks_by({});
  return ended(outcome, log);
}

}  // namespace limbledger::rpc

#include "rpc/program/demo/trouble.hpp"

#include "core/service/call.hpp"

#include <signal.h>

#include <algorithm>
#include <charconv>
#include <chrono>
#include <thread>

namespace limbledger::rpc {

namespace {

constexpr std::int64_t slow_ms_max = 60'000;
constexpr std::int64_t answered_max = 1'000'000;

[[nodiscard]] std::optional<std::int64_t> count_in(std::string_view text, std::int64_t most) {
  std::int64_t value = 0;
  const auto [end, problem] = std::from_chars(text.data(), text.data() + text.size(), value);
  const bool good = problem == std::errc() && end == text.data() + text.size() && value >= 0 && value <= most;
  return good ? std::optional(value) : std::nullopt;
}

[[nodiscard]] bool is_method(std::string_view name) {
  const auto table = service::methods();
  return std::any_of(table.begin(), table.end(), [&](const service::Method& one) { return one.name == name; });
}

}  // namespace

bool take_trouble(std::string_view word, TroubleAsk& ask) {
  const std::size_t at = word.find('=');
  const std::string_view name = word.substr(0, at);
  if (name == "clock") {
    model::Instant claimed;
    if (!model::Instant::from_text(word.substr(at == std::string_view::npos ? word.size() : at + 1), claimed).empty()) {
      return false;
    }
    ask.clock_ms = claimed.ms;
    return true;
  }
  const bool counted = at != std::string_view::npos;
  if (name == "kill" && counted && is_method(word.substr(at + 1))) {
    ask.kill_method = word.substr(at + 1);
    return true;
  }
  const auto count = counted ? count_in(word.substr(at + 1), name == "slow" ? slow_ms_max : answered_max) : std::optional<std::int64_t>(0);
  if (!count) {
    return false;
  }
  if (name == "slow" && counted) {
    ask.slow_ms = count;
  } else if (name == "full") {
    ask.full_after = count;
  } else if (name == "locked") {
    ask.locked_after = count;
  } else if (name == "kill" && counted) {
    ask.kill_after = count;
  } else {
    return false;
  }
  return true;
}

Result<void> GatedStore::append(std::span<const ledger::Row> rows, std::span<const ledger::Head> heads, const ledger::Meta& meta) {
  if (shut_) {
    return wire::Fault{"ledger.read_only", "", "a disk with room"};
  }
  return store_.append(rows, heads, meta);
}

void TroublePlay::asked() {
  if (ask_.slow_ms) {
    std::this_thread::sleep_for(std::chrono::milliseconds(*ask_.slow_ms));
  }
  store_.shut(ask_.full_after && answered_ >= *ask_.full_after);
  if (ask_.locked_after && answered_ >= *ask_.locked_after && !has_locked_) {
    has_locked_ = true;
    desk_.lock();
  }
}

void TroublePlay::called(std::string_view method) { kills_ = kills_ || (!method.empty() && method == ask_.kill_method); }

void TroublePlay::worked_out() {
  if (kills_ || (ask_.kill_after && answered_ >= *ask_.kill_after)) {
    ::raise(SIGKILL);
  }
  ++answered_;
}

}  // namespace limbledger::rpc

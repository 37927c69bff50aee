// The messages of an exchange, as bytes: one calls, the other answers, and every call stands for itself. HELLO and SAME are signed
// over the connection's own value X, so that neither can be said again on another connection. Nothing here keeps a state.
// Source: ledger, items 21 and 24; the format's section 12.
#pragma once

#include "core/ledger/exchange/run.hpp"
#include "core/ledger/keys/sign.hpp"

#include <optional>
#include <vector>

namespace limbledger::ledger {

// The value both ends of a connection share and nobody else: 32 bytes of the TLS exporter.
using Exporter = std::array<std::uint8_t, 32>;

enum class MessageKind : std::uint8_t { hello = 1, same = 2, ask = 3, runs = 4, take = 5, receipt = 6 };

constexpr std::uint8_t exchange_protocol = 1;
constexpr std::size_t hello_size = 122;
constexpr std::size_t same_size = 97;

[[nodiscard]] std::array<std::uint8_t, 8> hint_of(const model::ClinicId& clinic, View salt);

struct Hello {
  std::uint8_t flags = 0;  // none yet; a newer caller's are read past, and signed
  model::ReplicaId replica;
  Hash digest{};
  Signature signature{};
  std::optional<Run> introduction;  // where the other may never have seen this replica
  std::vector<Row> before;          // with it: the introductions of the chains whose place it took, the nearest first

  [[nodiscard]] Bytes to_bytes(const model::ClinicId& clinic, const Exporter& exporter) const;
  // Faults: exchange.message, exchange.foreign (of another clinic), protocol.version.
  [[nodiscard]] static Result<Hello> from_bytes(View message, const model::ClinicId& clinic, const Exporter& exporter);
};
[[nodiscard]] Hello sign_hello(const SignKey& key, const model::ClinicId& clinic, const Exporter& exporter, const Hash& digest);
[[nodiscard]] bool verify_hello(const PublicKey& pub, const model::ClinicId& clinic, const Exporter& exporter, const Hello& hello);

struct Same {
  bool is_same = true;
  Hash digest{};  // the answerer's own
  Signature signature{};
  std::vector<HaveRow> have;  // where it is not the same

  [[nodiscard]] Bytes to_bytes() const;
  [[nodiscard]] static Result<Same> from_bytes(View message);
};
[[nodiscard]] Same sign_same(const SignKey& key, const Exporter& exporter, bool is_same, const Hash& digest);
[[nodiscard]] bool verify_same(const PublicKey& pub, const Exporter& exporter, const Same& same);

struct Want {
  model::ReplicaId replica;
  std::uint64_t from = 1;
  std::uint64_t to = 0;
  std::uint8_t flags = 0;  // 1: bodies only
};

struct Ask {
  static constexpr std::size_t wants_max = 0xffff;
  std::vector<Want> wants;
  std::vector<HaveRow> held;  // points of these chains that the asker holds

  [[nodiscard]] Bytes to_bytes() const;
  [[nodiscard]] static Result<Ask> from_bytes(View message);
};

// RUNS: what was asked for; `mark` says that more is left. TAKE: to be taken; `mark` says that it is the last of this exchange.
struct Runs {
  MessageKind kind = MessageKind::runs;
  bool mark = false;
  std::vector<Run> runs;

  [[nodiscard]] Bytes to_bytes() const;
  [[nodiscard]] static Result<Runs> from_bytes(View message, MessageKind kind);
};

[[nodiscard]] std::optional<MessageKind> message_kind(View message);

}  // namespace limbledger::ledger

// HTTPS between the devices of a clinic: TLS 1.3 alone, and each side known by its key, never by a name, a date or somebody's
// word. The certificate is made anew at each start and says nothing; its Ed25519 key is the device's own, which was part of the
// six digits that people compared at enrolment, so a tablet whose clock stands in 1970 connects too. Both ends of a connection share
// a value nobody else has (RFC 9266), which an exchange signs. No session is resumed. Sources: RFC 8446, 8410, 9266, 9112.
#pragma once

#include "core/ledger/port.hpp"
#include "rpc/transport/listener.hpp"

#include <array>
#include <atomic>
#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace limbledger::rpc {

using TlsKey = std::array<std::uint8_t, 32>;    // public
using TlsShared = std::array<std::uint8_t, 32>;
using TlsSeed = std::span<const std::uint8_t, 32>;

struct TlsLimits {
  std::size_t connections = 64;
  std::size_t connections_unknown = 16;                     // of callers that have not proved who they are
  std::size_t head_bytes = std::size_t{8} * 1024;
  std::size_t unknown_bytes = std::size_t{8} * 1024;        // of a message of such a caller
  std::size_t message_bytes = std::size_t{128} * 1024 * 1024;  // a run of a thousand large entries
  int handshake_ms = 10'000;
  int message_ms = 120'000;                                 // to come, or to go
  int idle_ms = 60'000;                                     // of a caller that has not proved who it is, all its messages together
  int person_ms = 600'000;                                  // while somebody compares what two screens show
};

struct TlsReply {
  unsigned status = 200;
  ledger::Bytes body;
  std::string_view type = "application/octet-stream";
};

// One a connection.
class TlsConversation {
 public:
  TlsConversation() = default;
  TlsConversation(const TlsConversation&) = delete;
  TlsConversation& operator=(const TlsConversation&) = delete;
  virtual ~TlsConversation() = default;

  [[nodiscard]] virtual TlsReply post(std::string_view target, std::span<const std::uint8_t> body) = 0;
  // Whether the caller has proved who it is.
  [[nodiscard]] virtual bool knows_caller() const = 0;
  // Whether a person is being waited for, who may take minutes.
  [[nodiscard]] virtual bool waits_for_person() const { return false; }
};
using NewTlsConversation = std::function<std::unique_ptr<TlsConversation>(const TlsShared&)>;

class TlsListener {
 public:
  // `address`: one of this machine's, in numbers. Port 0: any that is free. Absent with `why` where it cannot be had.
  [[nodiscard]] static std::unique_ptr<TlsListener> open(const std::string& address, std::uint16_t port, TlsSeed seed, const TlsLimits& limits, std::string& why);
  ~TlsListener();
  TlsListener(const TlsListener&) = delete;
  TlsListener& operator=(const TlsListener&) = delete;

  [[nodiscard]] std::uint16_t port() const;
  // Serves on this thread until `stop` becomes readable.
  void run(const NewTlsConversation& begin, int stop, const Beside& beside = {});

 private:
  struct Inside;
  explicit TlsListener(std::unique_ptr<Inside> inside);
  std::unique_ptr<Inside> inside_;
};

// One connection to a clinic's device.
class TlsCaller {
 public:
  // Without `pinned` any Ed25519 key is taken, and `key` says which: for enrolment alone, where it is compared.
  // Absent with `why`; `is_other_key` where somebody answered with another key than the pinned one. `given_up`: set on any thread,
  // it ends what is waited for, here and in `post`; it must outlive the connection.
  [[nodiscard]] static std::unique_ptr<TlsCaller> connect(const std::string& host, std::uint16_t port, const std::optional<TlsKey>& pinned, const TlsLimits& limits,
                                                          std::string& why, bool& is_other_key, const std::atomic<bool>* given_up = nullptr);
  ~TlsCaller();
  TlsCaller(const TlsCaller&) = delete;
  TlsCaller& operator=(const TlsCaller&) = delete;

  [[nodiscard]] const TlsKey& key() const;
  [[nodiscard]] const TlsShared& shared() const;
  // Absent with `why` where no whole answer came; the connection is of no use then. `meanwhile` is done once the call is on its way,
  // before its answer is waited for; false, and nobody waits.
  [[nodiscard]] std::optional<TlsReply> post(std::string_view target, std::span<const std::uint8_t> body, std::string& why, const std::function<bool()>& meanwhile = {});

 private:
  struct Inside;
  explicit TlsCaller(std::unique_ptr<Inside> inside);
  std::unique_ptr<Inside> inside_;
};

}  // namespace limbledger::rpc

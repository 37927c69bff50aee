// Who carries exchanges beside the calls: it has the network, the files and threads of its own, and comes to the records only in turns
// between two calls. The methods ask it; a program that serves nobody has none. Times are ms.
#pragma once

#include "core/model/time.hpp"
#include "core/service/exchange/door.hpp"
#include "core/service/exchange/letting_in.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace limbledger::service {

// One exchange with the hub, or one parcel: begun by a method, and then on its way.
struct Errand {
  enum class Kind : std::uint8_t { with_hub, parcel_write, parcel_take };
  enum class Stage : std::uint8_t { running, done, failed, ended };  // ended: before it was over, because somebody wanted it

  Kind kind{};
  Stage stage = Stage::running;
  std::string with;             // the hub's address, or the parcel's path
  std::string cursor;           // of changes.read, where the ledger stood before
  model::Instant began_at;
  std::optional<model::Instant> ended_at;
  ExchangeState exchanged;      // with the hub
  WrittenParcel written;        // into a parcel
  TakenParcel taken;            // from one
  std::uint64_t looked_at = 0;  // entries of it, the second time through as well
  std::optional<wire::Fault> fault;
};

struct WantedErrand {
  Errand::Kind kind{};
  std::string with;
  std::optional<model::ReplicaId> holder;  // of a parcel to be written: whose receipt says what can be left out
  bool cut_too = false;                    // of a parcel that was cut short, what is whole
};

// How this program answers the clinic's other devices.
struct AnsweringHere {
  bool is_open = false;                // false: until the ledger is unlocked for the first time
  std::vector<std::string> addresses;  // where another device can call
  std::optional<wire::Fault> fault;    // why it is not open
};

class ExchangeCarrier {
 public:
  ExchangeCarrier() = default;
  ExchangeCarrier(const ExchangeCarrier&) = delete;
  ExchangeCarrier& operator=(const ExchangeCarrier&) = delete;
  virtual ~ExchangeCarrier() = default;

  // Faults: exchange.busy, exchange.address and parcel.path at /with or /path, exchange.no_hub, and those of the door.
  [[nodiscard]] virtual Result<void> begin(const WantedErrand& wanted) = 0;
  [[nodiscard]] virtual const std::optional<Errand>& newest() const = 0;
  // False where nothing runs. What was taken stays.
  virtual bool end() = 0;

  // Null: the program was started without.
  [[nodiscard]] virtual const AnsweringHere* answering() const = 0;
  // Faults: enrol.no_hub, enrol.closed, and those of LettingIn.
  [[nodiscard]] virtual Result<void> let_one_in(std::string_view code) = 0;
  // The newest; null: none since the ledger was unlocked.
  [[nodiscard]] virtual LettingIn* letting_in() = 0;
};

}  // namespace limbledger::service

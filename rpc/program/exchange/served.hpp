// Exchanges of a program that serves: an errand (one exchange with the hub, or one parcel) on a thread of its own, and with --hub the
// door by which the clinic's other devices exchange with this one. Both wait for network and medium on their own threads and come to
// the records in turns, a message or a piece at a time, so that no call waits for more than one of these. What the errand has come to
// is touched in turns alone.
#pragma once

#include "core/service/exchange/carrier.hpp"
#include "rpc/program/exchange/carried.hpp"
#include "rpc/program/exchange/hub_talk.hpp"
#include "rpc/program/exchange/parcel_file.hpp"
#include "rpc/program/opened.hpp"

#include <atomic>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <thread>

namespace limbledger::rpc {

struct HubAt {
  std::string address;  // one of this machine's own, in numbers
  std::uint16_t port = 0;
};

// The door for other devices, once the device's key was there.
class ServedHub {
 public:
  // Fault exchange.port.
  [[nodiscard]] static Result<std::unique_ptr<ServedHub>> open(service::Desk& desk, const Turn& turn, const HubAt& at, std::function<service::LettingIn*()> letting_in);
  // Nothing is answered any more by then.
  ~ServedHub();
  ServedHub(const ServedHub&) = delete;
  ServedHub& operator=(const ServedHub&) = delete;

  [[nodiscard]] service::ExchangeDoor& door() { return *door_; }
  [[nodiscard]] std::uint16_t port() const { return listener_->port(); }

 private:
  ServedHub(std::unique_ptr<service::ExchangeDoor> door, const Turn& turn, std::function<service::LettingIn*()> letting_in);

  std::unique_ptr<service::ExchangeDoor> door_;
  HubTalks talks_;
  std::unique_ptr<TlsListener> listener_;
  int stop_ = -1;
  std::thread thread_;
};

class ServedExchange final : public service::ExchangeCarrier {
 public:
  // Throws Problem where the hub's port cannot be had. All that is given must outlive it; it closes the handover when it goes.
  ServedExchange(service::Desk& desk, Handover& handover, const std::optional<HubAt>& hub);
  ~ServedExchange() override;

  [[nodiscard]] Result<void> begin(const service::WantedErrand& wanted) override;
  [[nodiscard]] const std::optional<service::Errand>& newest() const override { return errand_; }
  bool end() override;
  [[nodiscard]] const service::AnsweringHere* answering() const override { return hub_at_ ? &here_ : nullptr; }
  [[nodiscard]] Result<void> let_one_in(std::string_view code) override;
  [[nodiscard]] service::LettingIn* letting_in() override { return letting_in_.get(); }

 private:
  [[nodiscard]] bool is_running() const { return errand_ && errand_->stage == service::Errand::Stage::running; }
  void run_with_hub(const HubAddress& at, const service::DeviceKey& key);
  void run_parcel(const service::WantedErrand& wanted);
  // As the errand's last turn.
  void finish(service::Errand::Stage stage, std::optional<wire::Fault> fault);
  void finish_refused(const wire::Refusal& refusal);
  void look_at_lock();

  service::Desk& desk_;
  Handover& handover_;
  std::optional<HubAt> hub_at_;
  service::AnsweringHere here_;
  std::unique_ptr<service::LettingIn> letting_in_;
  std::unique_ptr<ServedHub> hub_;

  std::optional<service::Errand> errand_;
  std::unique_ptr<service::ExchangeDoor> door_;  // of the errand
  std::atomic<bool> given_up_ = false;
  std::thread thread_;
};

}  // namespace limbledger::rpc

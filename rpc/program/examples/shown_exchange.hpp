// What carries exchanges in the invented talk and in a demonstration in memory: no network and no files. A new device does join, in
// memory, and waits for its digits at once; an exchange or a parcel is under way for a few readings, with invented counts, and then done.
#pragma once

#include "core/service/exchange/carrier.hpp"

#include <memory>
#include <optional>
#include <string>
#include <string_view>

namespace limbledger::rpc {

class ShownExchange final : public service::ExchangeCarrier {
 public:
  explicit ShownExchange(service::Desk& desk) : desk_(desk) {}

  [[nodiscard]] Result<void> begin(const service::WantedErrand& wanted) override;
  [[nodiscard]] const std::optional<service::Errand>& newest() const override;
  bool end() override;
  [[nodiscard]] const service::AnsweringHere* answering() const override { return &here_; }
  [[nodiscard]] Result<void> let_one_in(std::string_view code) override;
  [[nodiscard]] service::LettingIn* letting_in() override { return letting_in_.get(); }

 private:
  void finish(service::Errand::Stage stage) const;

  service::Desk& desk_;
  service::AnsweringHere here_{true, {"https://192.0.2.20:7443"}, std::nullopt};
  std::unique_ptr<service::ExchangeDoor> door_;
  std::unique_ptr<service::LettingIn> letting_in_;
  mutable std::optional<service::Errand> errand_;  // goes on by being read
  mutable int read_ = 0;  // since it was begun
};

}  // namespace limbledger::rpc

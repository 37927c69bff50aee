#include "rpc/program/examples/shown_exchange.hpp"

#include "core/ledger/world.hpp"
#include "core/service/methods/ledger/changes.hpp"

namespace limbledger::rpc {

namespace {

constexpr int readings = 3;

}  // namespace

Result<void> ShownExchange::begin(const service::WantedErrand& wanted) {
  service::Errand errand;
  errand.kind = wanted.kind;
  errand.with = wanted.with;
  errand.cursor = service::change_cursor(desk_).text;
  errand.began_at.ms = desk_.world().now().wall_ms;
  errand.exchanged.taken = 14;
  errand.exchanged.given = 112;
  errand.exchanged.bytes_sent = 48'120;
  errand.exchanged.bytes_got = 6'310;
  errand.written = {126, 3, 54'502};
  errand.taken.entries = 126;
  errand.taken.taken = 14;
  errand.looked_at = 126;
  errand_ = std::move(errand);
  read_ = 0;
  return {};
}

const std::optional<service::Errand>& ShownExchange::newest() const {
  if (errand_ && errand_->stage == service::Errand::Stage::running && ++read_ > readings) {
    errand_->exchanged.is_same = true;
    finish(service::Errand::Stage::done);
  }
  return errand_;
}

void ShownExchange::finish(service::Errand::Stage stage) const {
  errand_->stage = stage;
  errand_->ended_at = model::Instant{desk_.world().now().wall_ms};
}

bool ShownExchange::end() {
  const bool was_running = errand_ && errand_->stage == service::Errand::Stage::running;
  if (was_running) {
    finish(service::Errand::Stage::ended);
  }
  return was_running;
}

Result<void> ShownExchange::let_one_in(std::string_view code) {
  if (!door_) {
    auto door = service::ExchangeDoor::open(desk_);
    if (!door) {
      return door.error();
    }
    door_ = std::move(*door);
  }
  auto begun = service::LettingIn::begin(*door_, code);
  auto joining = service::Joining::begin(desk_.world());
  if (!begun || !joining) {
    return begun ? joining.error() : begun.error();
  }
  letting_in_ = std::move(*begun);
  const auto card = letting_in_->post(this, (*joining)->commit());
  const auto shown = card && *card ? (*joining)->show(**card) : Result<ledger::Bytes>(wire::Fault("exchange.message", ""));
  const auto compared = shown ? letting_in_->post(this, *shown) : Result<std::optional<ledger::Bytes>>(shown.error());
  return compared ? Result<void>() : Result<void>(compared.error());
}

}  // namespace limbledger::rpc

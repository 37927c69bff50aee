#include "rpc/program/exchange/served.hpp"

#include "core/ledger/world.hpp"
#include "core/service/methods/ledger/changes.hpp"
#include "rpc/program/exchange/by_network.hpp"
#include "rpc/program/problem.hpp"

#include <sys/eventfd.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <exception>
#include <iostream>
#include <utility>

namespace limbledger::rpc {

namespace {

using service::Errand;

constexpr std::string_view parcel_ending = ".parcel";

[[nodiscard]] bool is_path(std::string_view path, bool to_write) {
  const auto slash = path.rfind('/');
  const bool is_plain = std::none_of(path.begin(), path.end(), [](char one) { return static_cast<unsigned char>(one) < 0x20 || one == 0x7f; });
  return is_plain && path.starts_with('/') && slash + 1 < path.size() && (!to_write || (path.ends_with(parcel_ending) && path.size() - slash - 1 > parcel_ending.size()));
}

[[nodiscard]] wire::Fault port_fault(const std::string& why) { return {"exchange.port", "", "a free port and an address of this machine", why}; }

}  // namespace

ServedHub::ServedHub(std::unique_ptr<service::ExchangeDoor> door, const Turn& turn, std::function<service::LettingIn*()> letting_in)
    : door_(std::move(door)), talks_{turn, *door_, std::move(letting_in), [](const service::ExchangeState& state) {
                                       std::cerr << "limbledger: " << line_of_brought(state) << std::endl;
                                     }} {}

Result<std::unique_ptr<ServedHub>> ServedHub::open(service::Desk& desk, const Turn& turn, const HubAt& at, std::function<service::LettingIn*()> letting_in) {
  auto door = service::ExchangeDoor::open(desk);
  if (!door) {
    return door.error();
  }
  std::unique_ptr<ServedHub> made(new ServedHub(std::move(*door), turn, std::move(letting_in)));
  std::string why;
  made->door_->with_seed([&](TlsSeed seed) { made->listener_ = TlsListener::open(at.address, at.port, seed, {}, why); });
  made->stop_ = ::eventfd(0, EFD_CLOEXEC | EFD_NONBLOCK);
  if (!made->listener_ || made->stop_ < 0) {
    return port_fault(why);
  }
  made->thread_ = std::thread([hub = made.get()] {
    hub->listener_->run([hub](const TlsShared& shared) { return hub_talk(hub->talks_, shared); }, hub->stop_);
  });
  return made;
}

ServedHub::~ServedHub() {
  if (thread_.joinable()) {
    const std::uint64_t one = 1;
    static_cast<void>(!::write(stop_, &one, sizeof one));
    thread_.join();
  }
  listener_.reset();  // before what its visits talk to
  if (stop_ >= 0) {
    ::close(stop_);
  }
}

ServedExchange::ServedExchange(service::Desk& desk, Handover& handover, const std::optional<HubAt>& hub) : desk_(desk), handover_(handover), hub_at_(hub) {
  if (hub_at_ && desk_.locked()) {
    // Whether the port can be had is said now, and not when somebody unlocks; the device's own key is not there yet.
    std::array<std::uint8_t, 32> nobody{};
    desk_.world().random(nobody);
    std::string why;
    if (!TlsListener::open(hub_at_->address, hub_at_->port, nobody, {}, why)) {
      here_.fault = port_fault(why);
    }
  }
  look_at_lock();
  if (here_.fault) {
    throw problem_of(*here_.fault, hub_at_->address + " " + std::to_string(hub_at_->port));
  }
  desk_.lock_tells([this] { look_at_lock(); });
}

ServedExchange::~ServedExchange() {
  desk_.lock_tells({});
  handover_.close();
  given_up_ = true;
  if (thread_.joinable()) {
    thread_.join();
  }
  hub_.reset();
}

// Opens the door for other devices when the key is first there, and ends what needs more than that key once it is gone.
void ServedExchange::look_at_lock() {
  if (desk_.locked()) {
    if (letting_in_) {
      letting_in_->interrupt();
    }
    return;
  }
  if (!hub_at_ || hub_) {
    return;
  }
  auto opened = ServedHub::open(desk_, handover_.turn(), *hub_at_, [this] { return letting_in_.get(); });
  here_.fault.reset();
  if (!opened) {
    here_.fault = opened.error().faults.front();
    std::cerr << "limbledger: other devices are not answered: " << problem_of(*here_.fault, hub_at_->address).what() << std::endl;
    return;
  }
  hub_ = std::move(*opened);
  here_.is_open = true;
  here_.addresses = addresses_to_call(hub_at_->address, hub_->port());
  for (const std::string& address : here_.addresses) {
    std::cerr << "limbledger: answering the clinic's other devices at " << address << std::endl;
  }
}

Result<void> ServedExchange::let_one_in(std::string_view code) {
  if (!hub_) {
    return wire::Fault("enrol.no_hub", "");
  }
  using State = service::LettingIn::State;
  if (letting_in_ && (letting_in_->state() == State::waits || letting_in_->state() == State::compares)) {
    return wire::Fault("enrol.closed", "", "no other enrolment under way");
  }
  auto begun = service::LettingIn::begin(hub_->door(), code);
  if (!begun) {
    return begun.error();
  }
  letting_in_ = std::move(*begun);
  return {};
}

Result<void> ServedExchange::begin(const service::WantedErrand& wanted) {
  if (is_running()) {
    return wire::Fault("exchange.busy", "");
  }
  std::optional<HubAddress> at;
  if (wanted.kind == Errand::Kind::with_hub) {
    at = address_in(wanted.with);
    if (!at) {
      return wire::Fault("exchange.address", "/with", "https://HOST:PORT");
    }
  } else if (const bool to_write = wanted.kind == Errand::Kind::parcel_write; !is_path(wanted.with, to_write)) {
    return wire::Fault("parcel.path", "/path", to_write ? "a path from / on that ends in .parcel" : "a path from / on");
  } else if (to_write && is_there(wanted.with)) {
    return wire::Fault("parcel.there", "/path", "no file there");
  }
  auto door = service::ExchangeDoor::open(desk_);
  if (!door) {
    return door.error();
  }
  const auto key = (*door)->hub_key();
  if (!key) {
    return key.error();
  }
  if (at && !*key) {
    return wire::Fault("exchange.no_hub", "");
  }
  if (thread_.joinable()) {
    thread_.join();  // of the last errand, which is over
  }
  door_ = std::move(*door);
  given_up_ = false;
  Errand errand;
  errand.kind = wanted.kind;
  errand.with = wanted.with;
  errand.cursor = service::change_cursor(desk_).text;
  errand.began_at.ms = desk_.world().now().wall_ms;
  errand_ = std::move(errand);
  thread_ = std::thread([this, wanted, at, key = *key] {
    try {
      at ? run_with_hub(*at, *key) : run_parcel(wanted);
    } catch (const std::exception&) {  // no memory, or none for a thread's own needs
      finish(Errand::Stage::failed, wire::Fault("internal.failure", ""));
    }
  });
  return {};
}

bool ServedExchange::end() {
  const bool was_running = is_running();
  given_up_ = given_up_ || was_running;
  return was_running;
}

void ServedExchange::finish(Errand::Stage stage, std::optional<wire::Fault> fault) {
  static_cast<void>(handover_.run([&] {
    errand_->stage = stage;
    errand_->fault = std::move(fault);
    errand_->ended_at = model::Instant{desk_.world().now().wall_ms};
    door_.reset();  // with the device's key: the ledger may be locked
  }));
}

void ServedExchange::finish_refused(const wire::Refusal& refusal) {
  const wire::Fault& fault = refusal.faults.front();
  fault.code == "exchange.ended" ? finish(Errand::Stage::ended, std::nullopt) : finish(Errand::Stage::failed, fault);
}

void ServedExchange::run_with_hub(const HubAddress& at, const service::DeviceKey& key) {
  ByNetwork how;
  how.turn = handover_.turn();
  how.told = [this](const service::ExchangeState& state) { errand_->exchanged = state; };
  how.given_up = &given_up_;
  const NetworkOutcome done = exchange_by_network(how, *door_, at, key);
  if (done.refused) {
    finish_refused(*done.refused);
  } else if (done.is_over) {
    finish(Errand::Stage::done, std::nullopt);
  } else if (given_up_) {
    finish(Errand::Stage::ended, std::nullopt);
  } else {
    finish(Errand::Stage::failed, wire::Fault("exchange.no_answer", "", "a hub at this address", done.why));
  }
}

void ServedExchange::run_parcel(const service::WantedErrand& wanted) {
  ByFile how;
  how.turn = handover_.turn();
  how.told = [this](const service::ParcelIn& parcel) {
    errand_->looked_at = parcel.looked_at();
    errand_->taken = parcel.taken();
  };
  how.given_up = &given_up_;
  std::optional<wire::Refusal> refused;
  if (wanted.kind == Errand::Kind::parcel_write) {
    const auto written = write_parcel_to(how, *door_, wanted.with, wanted.holder);
    if (!written) {
      refused = written.error();
    } else {
      static_cast<void>(handover_.run([&] { errand_->written = *written; }));
    }
  } else {
    const auto taken = take_parcel_from(how, *door_, wanted.with, wanted.cut_too);
    if (!taken) {
      refused = taken.error();
    }
  }
  refused ? finish_refused(*refused) : finish(Errand::Stage::done, std::nullopt);
}

}  // namespace limbledger::rpc

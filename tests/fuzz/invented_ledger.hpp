// A demonstration ledger in memory that holds what the example talk records, made once and copied for whoever changes it: the
// same bytes give the same answer whatever came before them.
#pragma once

#include "core/ledger/world.hpp"
#include "core/service/context.hpp"
#include "core/service/desk.hpp"
#include "core/store/memory.hpp"
#include "rpc/access/token.hpp"

#include <map>
#include <memory>
#include <string>
#include <string_view>

namespace limbledger::fuzz {

// A clock that stands still and counted randomness (splitmix64, a published generator).
class StillWorld final : public ledger::World {
 public:
  ledger::Reading now() override;
  void random(std::span<std::uint8_t> bytes) override;
  std::uint64_t count = 0;
};

struct Desktop {
  StillWorld world;
  store::MemoryStore store;
  std::unique_ptr<service::Desk> desk;
  rpc::Tokens tokens{world};
  service::Context context;
};

// Open and unlocked, as the talk left it.
[[nodiscard]] std::unique_ptr<Desktop> new_desktop();
// "@exam" and the like, with their quotes, as the talk's answers filled them.
[[nodiscard]] std::string filled(std::string_view text);
// What stands for one name, as JSON; empty where nothing does.
[[nodiscard]] std::string kept(std::string_view name);
// The file of its keyring.
[[nodiscard]] const ledger::Bytes& keyring_file();

}  // namespace limbledger::fuzz

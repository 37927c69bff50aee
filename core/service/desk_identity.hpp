// Who a desk writes as, once its keyring is open.
#pragma once

#include "core/ledger/keys/keyring.hpp"
#include "core/ledger/log/log.hpp"

namespace limbledger::service {

// As the introduction of a chain names the program that began it.
inline constexpr std::string_view ledger_program = "limbledger 1";

[[nodiscard]] inline ledger::Identity identity_of(const model::ClinicId& clinic, const ledger::Vault& vault) {
  ledger::Identity identity{clinic, ledger::SignKey(vault.sign_seed), {}, ledger::BlobKey(vault.shelf_key)};
  for (const auto& [epoch, secret] : vault.epoch_secrets) {
    identity.epochs.emplace(epoch, ledger::BoxPair(secret));
  }
  return identity;
}

}  // namespace limbledger::service

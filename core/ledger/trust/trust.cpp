#include "core/ledger/trust/trust.hpp"

namespace limbledger::ledger {

namespace {

constexpr std::uint16_t every_role = 0xffff;

// The role that an order of this kind needs; nothing where the kind is unknown.
std::optional<std::uint16_t> role_for(OrderKind sub) {
  switch (sub) {
    case OrderKind::grant:
      return every_role;
    case OrderKind::enrol:
    case OrderKind::revoke:
    case OrderKind::admit:
    case OrderKind::gap:
    case OrderKind::hubcert:
      return roles::enrol;
    case OrderKind::epoch:
      return roles::epoch;
    case OrderKind::erase:
    case OrderKind::erase_done:
    case OrderKind::erase_cancel:
      return roles::erase;
    case OrderKind::auditor:
      return roles::audit;
  }
  return std::nullopt;
}

}  // namespace

Trust::Trust(const model::ClinicId& clinic, std::span<const Row> orders, CheckedOrders& checked) : clinic_(clinic) {
  std::map<Hash, OrderBody> read;
  std::set<Hash> newer;
  for (const Row& row : orders) {
    if (row.state != RowState::whole || read.contains(row.hash) || newer.contains(row.hash)) {
      continue;
    }
    auto order = OrderBody::from_bytes(row.body);
    if (!order || order->version != order_version || !role_for(order->sub)) {
      newer.insert(row.hash);
    } else if (verify_order({clinic, row.replica, row.seq}, *order, checked)) {
      read.emplace(row.hash, std::move(*order));
    } else {
      ++void_count_;
    }
  }
  unread_ = newer.size();
  for (const auto& [hash, order] : read) {
    if (order.sub != OrderKind::grant) {
      continue;
    }
    const auto grant = Grant::from_fields(order.fields);
    if (grant && clinic_of(order.admin_pub) == clinic_) {
      granted_[grant->pub] |= grant->roles;
    } else {
      ++void_count_;
    }
  }
  for (const auto& [hash, order] : read) {
    if (order.sub != OrderKind::grant) {
      settle(order);
    }
  }
}

void Trust::settle(const OrderBody& order) {
  if ((roles_of(order.admin_pub) & *role_for(order.sub)) == 0) {
    ++void_count_;
    return;
  }
  if (order.sub == OrderKind::enrol) {
    const auto enrol = Enrol::from_fields(order.fields);
    if (!enrol) {
      ++void_count_;
      return;
    }
    const auto [known, is_new] = enrolled_.try_emplace(enrol->replica, *enrol);
    if (!is_new) {
      known->second.roles |= enrol->roles;
      known->second.device = std::min(known->second.device, enrol->device);
    }
  } else if (order.sub == OrderKind::revoke) {
    if (const auto revoke = Revoke::from_fields(order.fields)) {
      revoked_.insert(revoke->device);
    }
  } else if (order.sub == OrderKind::epoch) {
    auto epoch = Epoch::from_fields(order.fields);
    if (!epoch) {
      ++void_count_;
      return;
    }
    const auto [known, is_new] = epochs_.try_emplace(epoch->epoch, *epoch);
    if (!is_new && epoch->pub == known->second.pub) {
      // The same pair handed to more replicas later.
      known->second.boxes.insert(known->second.boxes.end(), epoch->boxes.begin(), epoch->boxes.end());
    } else if (!is_new && epoch->pub < known->second.pub) {
      known->second = *epoch;
    }
  }
}

std::uint16_t Trust::roles_of(const PublicKey& key) const {
  if (clinic_of(key) == clinic_) {
    return every_role;
  }
  const auto granted = granted_.find(key);
  return granted == granted_.end() ? std::uint16_t{0} : granted->second;
}

const Enrol* Trust::enrolment(const model::ReplicaId& replica) const {
  const auto found = enrolled_.find(replica);
  return found == enrolled_.end() ? nullptr : &found->second;
}

const Enrol* enrolment_of(const Trust& trust, const model::ClinicId& clinic, const model::ReplicaId& replica, const FindIntro& find_intro) {
  model::ReplicaId at = replica;
  for (std::size_t i = 0; i < heirs_max; ++i) {
    if (const Enrol* enrolled = trust.enrolment(at)) {
      return enrolled;
    }
    const auto intro = find_intro(at);
    if (!intro || intro->clinic != clinic || replica_of(clinic, intro->sign_pub) != at || !intro->has_predecessor()) {
      return nullptr;
    }
    const auto before = find_intro(intro->predecessor.replica);
    if (!before || replica_of(clinic, before->sign_pub) != intro->predecessor.replica || before->device != intro->device ||
        !verify_heir(before->sign_pub, *intro)) {
      return nullptr;
    }
    at = intro->predecessor.replica;
  }
  return nullptr;
}

std::uint16_t roles_of_replica(const Trust& trust, const model::ClinicId& clinic, const model::ReplicaId& replica, const FindIntro& find_intro) {
  const Enrol* enrolled = enrolment_of(trust, clinic, replica, find_intro);
  return enrolled == nullptr ? std::uint16_t{0} : enrolled->roles;
}

}  // namespace limbledger::ledger

#include "core/ledger/chain.hpp"

#include "core/ledger/keys/sign.hpp"

namespace limbledger::ledger {

namespace {

// Empty, or the code of what is wrong with the shape of a row.
std::string_view shape_problem(const Row& row, const Header& header) {
  if (header.body_length > body_size_max) {
    return "entry.size";
  }
  const bool known_state = static_cast<std::uint8_t>(row.state) <= static_cast<std::uint8_t>(RowState::withheld);
  const std::size_t size = row.state == RowState::whole ? header.body_length : stub_size;
  return known_state && row.body.size() == size ? std::string_view{} : std::string_view{"entry.format"};
}

}  // namespace

Joint start_of(const Origin& origin) { return {0, genesis(origin.clinic, origin.replica, origin.sign_pub)}; }

Result<VerifiedEntry> verify_next(Joint& joint, Row row) {
  if (row.seq != joint.seq + 1) {
    return entry_fault("entry.gap", row.replica, row.seq, row.hash, "entry " + std::to_string(joint.seq + 1));
  }
  auto header = Header::from_bytes(row.header);
  if (!header) {
    return entry_fault("entry.format", row.replica, row.seq, row.hash, "frame 1");
  }
  if (const std::string_view problem = shape_problem(row, *header); !problem.empty()) {
    return entry_fault(problem, row.replica, row.seq, row.hash, "a body of the length its header gives, at most 1 MiB");
  }
  const Hash hash = entry_hash(joint.hash, row.seq, row.header, body_hash(row));
  if (hash != row.hash) {
    return entry_fault("entry.hash", row.replica, row.seq, row.hash, "the hash of what is stored");
  }
  joint = {row.seq, hash};
  return VerifiedEntry(std::move(row), *header);
}

Result<std::vector<VerifiedEntry>> verify_run(const Origin& origin, const Joint& from, std::vector<Row> rows,
                                              const Head& head) {
  std::vector<VerifiedEntry> out;
  out.reserve(rows.size());
  Joint joint = from;
  for (Row& row : rows) {
    if (row.replica != origin.replica) {
      return entry_fault("entry.gap", row.replica, row.seq, row.hash, "an entry of replica " + origin.replica.to_text());
    }
    auto entry = verify_next(joint, std::move(row));
    if (!entry) {
      return entry.error();
    }
    out.push_back(std::move(*entry));
  }
  if (head.seq != joint.seq || head.hash != joint.hash) {
    return entry_fault("entry.head", head.replica, head.seq, head.hash, "the head of entry " + std::to_string(joint.seq));
  }
  if (auto signed_head = verify_head(origin.clinic, origin.sign_pub, head); !signed_head) {
    return signed_head.error();
  }
  if (head.replica != origin.replica) {
    return entry_fault("entry.head", head.replica, head.seq, head.hash, "the head of this replica");
  }
  return out;
}

Result<Intro> intro_of(const Row& first) {
  const auto header = Header::from_bytes(first.header);
  if (!header || header->kind != Kind::intro || first.seq != 1 || first.state != RowState::whole) {
    return entry_fault("entry.format", first.replica, first.seq, first.hash, "an introduction as the first entry");
  }
  auto intro = Intro::from_bytes(first.body);
  if (!intro) {
    return entry_fault("entry.format", first.replica, first.seq, first.hash, intro.error().faults.front().expected);
  }
  return intro;
}

Result<Origin> origin_of(const model::ClinicId& clinic, const Row& first) {
  const auto intro = intro_of(first);
  if (!intro) {
    return intro.error();
  }
  if (intro->clinic != clinic || replica_of(clinic, intro->sign_pub) != first.replica) {
    return entry_fault("entry.format", first.replica, first.seq, first.hash, "a replica of this clinic, named by its own key");
  }
  return Origin{clinic, first.replica, intro->sign_pub};
}

void link(const model::ReplicaId& replica, Joint& joint, Row& row) {
  row.replica = replica;
  row.seq = joint.seq + 1;
  row.hash = entry_hash(joint.hash, row.seq, row.header, body_hash(row));
  joint = {row.seq, row.hash};
}

}  // namespace limbledger::ledger

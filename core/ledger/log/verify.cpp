#include "core/ledger/log/log.hpp"

#include <algorithm>

namespace limbledger::ledger {

namespace {

bool is_other_kind(const Row& row) {
  return row.header[1] < static_cast<std::uint8_t>(Kind::op) || row.header[1] > static_cast<std::uint8_t>(Kind::examiner);
}

class Verifier {
 public:
  Verifier(LogStore& store, const model::ClinicId& clinic, const Log* log) : store_(store), clinic_(clinic), log_(log) {}

  [[nodiscard]] Result<Verification> run() {
    const auto heads = store_.heads();
    if (!heads) {
      return heads.error();
    }
    std::map<model::ReplicaId, std::vector<Head>> replicas;
    for (const Head& head : heads->newest) {
      replicas[head.replica].push_back(head);
    }
    for (const Head& head : heads->kept) {
      kept_[head.replica].push_back(head);
    }
    out_.replicas = replicas.size();
    for (const auto& [replica, newest] : replicas) {
      if (auto walked = walk(replica, newest); !walked) {
        return walked.error();
      }
    }
    return std::move(out_);
  }

 private:
  void damage(const model::ReplicaId& replica, std::uint64_t seq, const Hash* hash, std::string code) {
    std::optional<model::EntryId> entry;
    if (hash != nullptr) {
      entry = entry_id(*hash);
    }
    out_.damage.push_back({replica, seq, entry, std::move(code)});
  }

  // Every row is checked over the hash its predecessor is stored under, so that one changed row is one finding.
  [[nodiscard]] Result<void> walk(const model::ReplicaId& replica, const std::vector<Head>& newest) {
    std::optional<Origin> origin;
    std::map<std::uint64_t, std::vector<Hash>> hashes;  // of the last two sequences
    std::vector<Joint> reached;
    std::uint64_t from = 1;
    std::uint64_t last = 0;
    for (const Head& head : newest) {
      last = std::max(last, head.seq);
    }
    while (true) {
      auto rows = store_.read(replica, from, UINT64_MAX >> 1U, page_rows);
      if (!rows) {
        return rows.error();
      }
      if (rows->empty()) {
        break;
      }
      for (const Row& row : *rows) {
        ++out_.entries;
        out_.other_kinds += is_other_kind(row) ? 1U : 0U;
        if (row.seq == 1 && !origin) {
          const auto stated = origin_of(clinic_, row);
          if (stated) {
            origin = *stated;
            hashes[0] = {start_of(*origin).hash};
          } else {
            damage(replica, row.seq, &row.hash, stated.error().faults.front().code);
          }
        }
        const auto before = hashes.find(row.seq - 1);
        if (before == hashes.end()) {
          damage(replica, row.seq, &row.hash, row.seq == 1 ? "entry.format" : "entry.gap");
        } else {
          check_row(row, before->second);
        }
        hashes[row.seq].push_back(row.hash);
        hashes.erase(hashes.begin(), hashes.lower_bound(row.seq < 2 ? 0 : row.seq - 1));
        for (const Head& head : newest) {
          if (head.seq == row.seq && head.hash == row.hash) {
            reached.push_back({row.seq, row.hash});
          }
        }
        check_kept(replica, row, origin);
      }
      from = rows->back().seq + (rows->size() < page_rows ? 1 : 0);
      if (rows->size() == page_rows && rows->front().seq == rows->back().seq) {
        ++from;
      } else if (rows->size() == page_rows) {
        // The last sequence is read again with the next page, whole.
        const auto again = static_cast<std::uint64_t>(
            std::count_if(rows->begin(), rows->end(), [&](const Row& row) { return row.seq == rows->back().seq; }));
        out_.entries -= again;
        out_.other_kinds -= static_cast<std::uint64_t>(
            std::count_if(rows->begin(), rows->end(), [&](const Row& row) { return row.seq == rows->back().seq && is_other_kind(row); }));
        hashes.erase(rows->back().seq);
        forget_damage_at(replica, rows->back().seq);
      }
    }
    for (const Head& head : newest) {
      const bool here = std::any_of(reached.begin(), reached.end(), [&](const Joint& joint) { return joint.hash == head.hash; });
      if (!here) {
        damage(replica, head.seq, &head.hash, "entry.gap");
      } else if (!origin || !verify_head(clinic_, origin->sign_pub, head)) {
        damage_of_head(head);
      } else {
        out_.vouched_to.push_back(head);
      }
    }
    return {};
  }

  void forget_damage_at(const model::ReplicaId& replica, std::uint64_t seq) {
    std::erase_if(out_.damage, [&](const Verification::Damage& one) { return one.replica == replica && one.seq == seq; });
  }

  void check_row(const Row& row, const std::vector<Hash>& before) {
    std::string code;
    std::optional<VerifiedEntry> good;
    for (const Hash& hash : before) {
      Joint joint{row.seq - 1, hash};
      auto entry = verify_next(joint, row);
      if (entry) {
        good = std::move(*entry);
        break;
      }
      code = entry.error().faults.front().code;
    }
    if (!good) {
      return damage(row.replica, row.seq, &row.hash, code);
    }
    if (log_ != nullptr && good->is_whole()) {
      check_seal(*good);
    }
  }

  void check_seal(const VerifiedEntry& entry) {
    const Index& index = log_->index();
    if (entry.header().kind == Kind::key && !index.object_of.contains(entry.header().kid)) {
      return damage(entry.replica(), entry.seq(), &entry.hash(), "entry.key");
    }
    if (entry.header().kind == Kind::examiner) {
      const auto body = ExaminerBody::from_bytes(entry.body());
      if (!body || !verify_examiner(clinic_, entry.replica(), *body)) {
        damage(entry.replica(), entry.seq(), &entry.hash(), "entry.format");
      }
      return;
    }
    if (entry.header().kind != Kind::op) {
      return;
    }
    const auto object = index.object_of.find(entry.header().kid);
    if (object == index.object_of.end()) {
      return damage(entry.replica(), entry.seq(), &entry.hash(), "entry.key");
    }
    for (const ObjectKey& key : index.objects.at(object->second).keys) {
      if (key.kid() != entry.header().kid) {
        continue;
      }
      if (const auto opened = open_operation(clinic_, key, entry); !opened) {
        damage(entry.replica(), entry.seq(), &entry.hash(), opened.error().faults.front().code);
      } else {
        ++out_.opened;
      }
    }
  }

  void check_kept(const model::ReplicaId& replica, const Row& row, const std::optional<Origin>& origin) {
    for (const Head& head : kept_[replica]) {
      if (head.seq != row.seq || head.hash != row.hash) {
        continue;
      }
      if (!origin || !verify_head(clinic_, origin->sign_pub, head)) {
        damage_of_head(head);
      }
    }
  }

  // The newest head may be one of those kept as well, and is one damage all the same.
  void damage_of_head(const Head& head) {
    const model::EntryId entry = entry_id(head.hash);
    const bool named = std::any_of(out_.damage.begin(), out_.damage.end(), [&](const Verification::Damage& one) {
      return one.code == "entry.head" && one.replica == head.replica && one.seq == head.seq && one.entry == entry;
    });
    if (!named) {
      damage(head.replica, head.seq, &head.hash, "entry.head");
    }
  }

  LogStore& store_;
  model::ClinicId clinic_;
  const Log* log_;
  std::map<model::ReplicaId, std::vector<Head>> kept_;
  Verification out_;
};

}  // namespace

Result<Verification> verify_store(LogStore& store, const model::ClinicId& clinic, const Log* log, bool mend) {
  auto lists = store.check_lists(mend);
  if (!lists) {
    return lists.error();
  }
  auto verified = Verifier(store, clinic, log).run();
  if (verified) {
    verified->lists = std::move(*lists);
  }
  return verified;
}

}  // namespace limbledger::ledger

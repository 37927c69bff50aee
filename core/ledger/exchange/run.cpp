#include "core/ledger/exchange/run.hpp"

#include <algorithm>

namespace limbledger::ledger {

namespace {

constexpr std::size_t run_frame_size = 180;  // replica, first, before, count, head
constexpr std::size_t run_row_size_min = 1 + 32;
constexpr std::size_t sending_page = 4096;

std::size_t size_of(const Run& run) {
  std::size_t out = run_frame_size;
  for (const Row& row : run.rows) {
    out += run_row_size_min + row.body.size();
  }
  return out;
}

// One branch of a chain from its first entry on; without a fork it is the chain and need not be read as a whole.
struct Branch {
  Place leaf;
  std::vector<Hash> hashes;  // by sequence, from 1; empty where the chain has no fork
};

// Followed back from the leaf, over the rows that give its hashes.
Result<std::vector<Hash>> branch_hashes(LogStore& store, const Place& leaf, const Hash& start) {
  std::vector<std::vector<Row>> levels(leaf.seq + 1);
  for (std::uint64_t from = 1; from <= leaf.seq;) {
    auto rows = store.read(leaf.replica, from, std::min(leaf.seq, from + sending_page - 1), SIZE_MAX >> 1U);
    if (!rows) {
      return rows.error();
    }
    for (Row& row : *rows) {
      levels[row.seq].push_back(std::move(row));
    }
    from += sending_page;
  }
  std::vector<Hash> out(leaf.seq);
  Hash at = leaf.hash;
  for (std::uint64_t seq = leaf.seq; seq >= 1; --seq) {
    out[seq - 1] = at;
    bool found = false;
    for (const Row& row : levels[seq]) {
      if (row.hash != at || found) {
        continue;
      }
      const Hash body = body_hash(row);
      if (seq == 1) {
        found = entry_hash(start, seq, row.header, body) == at;
        continue;
      }
      for (const Row& before : levels[seq - 1]) {
        if (entry_hash(before.hash, seq, row.header, body) == row.hash) {
          at = before.hash;
          found = true;
          break;
        }
      }
    }
    if (!found) {
      return entry_fault("entry.gap", leaf.replica, seq, out[seq - 1], "the entry before it");
    }
  }
  return out;
}

std::uint64_t common_length(const Branch& a, const Branch& b) {
  std::uint64_t out = 0;
  while (out < a.hashes.size() && out < b.hashes.size() && a.hashes[out] == b.hashes[out]) {
    ++out;
  }
  return out;
}

// How far down its branch what is held reaches: a point on another branch reaches as far as the two are one.
Result<std::uint64_t> reach(LogStore& store, const std::vector<Branch>& branches, const Branch& of, std::span<const HaveRow> held) {
  std::uint64_t out = 0;
  for (const HaveRow& point : held) {
    if (point.replica != of.leaf.replica || point.seq == 0) {
      continue;
    }
    if (of.hashes.empty()) {
      if (point.seq <= out || point.seq > of.leaf.seq) {
        continue;
      }
      const auto here = holds(store, point);
      if (!here) {
        return here.error();
      }
      out = *here ? point.seq : out;
      continue;
    }
    for (const Branch& branch : branches) {
      if (point.seq <= branch.hashes.size() && point.is(point.seq, branch.hashes[point.seq - 1])) {
        out = std::max(out, std::min(point.seq, common_length(branch, of)));
      }
    }
  }
  return out;
}

// Rows of a branch in a range.
Result<std::vector<Row>> branch_rows(LogStore& store, const Branch& branch, std::uint64_t from, std::uint64_t to) {
  auto rows = store.read(branch.leaf.replica, from, to, SIZE_MAX >> 1U);
  if (rows && !branch.hashes.empty()) {
    std::erase_if(*rows, [&branch](const Row& row) { return row.hash != branch.hashes[row.seq - 1]; });
  }
  if (rows && rows->size() != to - from + 1) {
    return entry_fault("entry.gap", branch.leaf.replica, from, branch.leaf.hash, "every entry up to " + std::to_string(to));
  }
  return rows;
}

}  // namespace

void put_run(ByteWriter& out, const Run& run) {
  out.raw(run.replica.bytes).u64(run.first).raw(run.before).u32(static_cast<std::uint32_t>(run.rows.size()));
  for (const Row& row : run.rows) {
    out.u8(static_cast<std::uint8_t>(row.state)).raw(row.header).raw(row.body);
  }
  out.raw(run.head.replica.bytes).u64(run.head.seq).raw(run.head.hash).raw(run.head.signature);
}

Result<Run> read_run(ByteReader& in) {
  Run out;
  out.replica.bytes = in.array<16>();
  out.first = in.u64();
  out.before = in.array<32>();
  const std::uint32_t count = in.u32();
  out.rows.reserve(std::min<std::size_t>(count, in.left() / run_row_size_min));
  Joint joint{out.first - 1, out.before};
  if (in.ran_short() || count == 0 || out.first == 0 || out.first > (UINT64_MAX >> 1U)) {
    return entry_fault("entry.gap", out.replica, out.first, out.before, "a run of at least one entry");
  }
  for (std::uint32_t i = 0; i < count; ++i) {
    const std::uint64_t seq = out.first + i;
    Row row;
    const std::uint8_t state = in.u8();
    row.state = static_cast<RowState>(state);
    row.header = in.array<32>();
    const auto header = Header::from_bytes(row.header);
    if (in.ran_short() || !header || state > static_cast<std::uint8_t>(RowState::withheld)) {
      return entry_fault("entry.format", out.replica, seq, joint.hash, "an entry of frame 1, whole or as its hash");
    }
    if (header->body_length > body_size_max) {
      return entry_fault("entry.size", out.replica, seq, joint.hash, "a body of at most 1 MiB");
    }
    const View body = in.raw(row.state == RowState::whole ? header->body_length : stub_size);
    if (in.ran_short()) {
      return entry_fault("entry.format", out.replica, seq, joint.hash, "all bytes of the entry");
    }
    row.body.assign(body.begin(), body.end());
    link(out.replica, joint, row);
    out.rows.push_back(std::move(row));
  }
  out.head.replica.bytes = in.array<16>();
  out.head.seq = in.u64();
  out.head.hash = in.array<32>();
  out.head.signature = in.array<64>();
  const auto last = Header::from_bytes(out.rows.back().header);
  if (in.ran_short() || out.head.replica != out.replica || Joint{out.head.seq, out.head.hash} != joint || !last->last_of_commit()) {
    return entry_fault("entry.head", out.replica, joint.seq, joint.hash, "the signed head of the last entry of a commit");
  }
  return out;
}

Result<void> add_lacking(LogStore& store, const model::ReplicaId& replica, std::span<const HaveRow> held, std::uint64_t from, std::uint64_t to,
                         std::size_t budget, Sending& sending) {
  if (auto flushed = store.flush_chain(replica); !flushed) {
    return flushed;
  }
  const auto heads = store.heads();
  const auto first = store.read(replica, 1, 1, 1);
  if (!heads || !first) {
    return heads ? first.error() : heads.error();
  }
  std::vector<Branch> branches;
  for (const Head& head : heads->newest) {
    if (head.replica == replica) {
      branches.push_back({{head.replica, head.seq, head.hash}, {}});
    }
  }
  Hash start{};
  if (const auto intro = first->empty() ? Result<Intro>(wire::Fault("entry.gap", "")) : intro_of(first->front())) {
    start = genesis(intro->clinic, replica, intro->sign_pub);
  }
  for (Branch& branch : branches) {
    if (branches.size() > 1) {
      auto hashes = branch_hashes(store, branch.leaf, start);
      if (!hashes) {
        return hashes.error();
      }
      branch.hashes = std::move(*hashes);
    }
  }
  std::vector<HaveRow> sent(held.begin(), held.end());
  for (const Branch& branch : branches) {
    const auto reached = reach(store, branches, branch, sent);
    if (!reached) {
      return reached.error();
    }
    for (std::uint64_t next = std::max(*reached + 1, from); next <= std::min(to, branch.leaf.seq);) {
      // The nearest head of this branch; at the latest its leaf.
      const Head* end = nullptr;
      for (const Head& head : heads->kept) {
        const bool on_branch = branch.hashes.empty() || (head.seq <= branch.hashes.size() && branch.hashes[head.seq - 1] == head.hash);
        if (head.replica == replica && head.seq >= next && on_branch && (end == nullptr || head.seq < end->seq)) {
          end = &head;
        }
      }
      if (end == nullptr) {
        break;
      }
      if (!sending.runs.empty() && sending.size >= budget) {
        sending.more = true;
        return {};
      }
      auto rows = branch_rows(store, branch, next > 1 ? next - 1 : next, end->seq);
      if (!rows) {
        return rows.error();
      }
      Run run;
      run.replica = replica;
      run.first = next;
      run.before = next > 1 ? rows->front().hash : start;
      run.rows.assign(std::make_move_iterator(rows->begin() + (next > 1 ? 1 : 0)), std::make_move_iterator(rows->end()));
      run.head = *end;
      sending.size += size_of(run);
      next = end->seq + 1;
      sending.runs.push_back(std::move(run));
    }
    sent.push_back(have_row(branch.leaf));
  }
  return {};
}

}  // namespace limbledger::ledger

// Opening a ledger of 100,000 entries (exams of 60 findings) until the list of exams is there, against reading every row
// and checking its chain alone, in turns. Two openings are shown: the usual one with the local index, which the bound is
// for, and one that must fold everything anew because the index is gone.
#include "core/ledger/fold/records.hpp"
#include "core/model/operation.hpp"
#include "tests/bench/bench.hpp"

namespace limbledger::bench {

namespace {

constexpr std::size_t entries_wanted = 100'000;
constexpr std::size_t findings_an_exam = 60;
constexpr int rounds = 5;

model::RequestId request_of(std::uint64_t number) {
  model::RequestId request;
  ledger::put_integer(request.bytes.data() + 8, number, 8);
  return request;
}

void fill(OnDisk& disk, const ledger::Identity& identity) {
  const auto log = need(ledger::Log::open(*disk.store, disk.world, identity), "log");
  std::uint64_t requests = 0;
  while (log->index().entry_count < entries_wanted) {
    ledger::NewOperation opening;
    opening.request = request_of(++requests);
    opening.object = log->object_for(ledger::ObjectType::exam, opening.request, 0);
    opening.op = "exam";
    opening.examined_at = model::Instant{1795515300000 + static_cast<std::int64_t>(requests) * 1000};
    opening.body_json = R"({"complaint":"free","setting":"outreach","offset_min":180})";
    const auto opened = need(log->append({&opening, 1}, model::EditionId{"facts.1"}, nullptr), "exam");
    std::vector<ledger::NewOperation> findings;
    const model::RequestId request = request_of(++requests);
    for (std::size_t i = 0; i < findings_an_exam; ++i) {
      ledger::NewOperation finding;
      finding.object = opening.object;
      finding.op = "finding";
      finding.request = request;
      finding.after = {opened.front().entry()};
      const auto id = log->object_for(ledger::ObjectType::finding, request, static_cast<std::uint16_t>(i));
      finding.body_json = R"({"finding":")" + id.to_text() + R"(","observation":{"item":"knee.flexion_passive","side":"left","value":{"kind":"angle","deg":)" +
                          std::to_string(60 + i) + R"(,"toward":"flexion","toward_deg":)" + std::to_string(60 + i) +
                          R"(},"instrument":"goniometer_long","position":"supine","remark":"an invented remark"}})";
      findings.push_back(std::move(finding));
    }
    static_cast<void>(need(log->append(findings, model::EditionId{"facts.1"}, nullptr), "findings"));
  }
}

std::size_t walk_chain(OnDisk& disk, const ledger::Identity& identity) {
  ledger::Joint joint = ledger::start_of({identity.clinic, identity.replica(), identity.device_key.pub()});
  while (true) {
    auto rows = need(disk.store->read(identity.replica(), joint.seq + 1, UINT64_MAX >> 1U, 4096), "rows");
    if (rows.empty()) {
      return joint.seq;
    }
    for (const ledger::Row& row : rows) {
      const ledger::Hash hash = ledger::entry_hash(joint.hash, row.seq, row.header, ledger::body_hash(row));
      if (hash != row.hash) {
        std::exit(1);
      }
      joint = {row.seq, hash};
    }
  }
}

std::size_t open_all(OnDisk& disk, const ledger::Identity& identity, bool save) {
  const auto log = need(ledger::Log::open(*disk.store, disk.world, identity, &ledger::list_row), "log");
  ledger::Records records(*log);
  const std::size_t exams = need(records.exams(), "list")->size();
  if (save) {
    need(records.save(), "index");
  }
  return exams;
}

int run() {
  const Folder folder;
  OnDisk disk(folder.path + "/ledger.sqlite", store::Flush::off);
  const ledger::Identity identity = disk.identity();  // Argon2id is not what is measured
  fill(disk, identity);
  const std::size_t entries = walk_chain(disk, identity);
  static_cast<void>(open_all(disk, identity, true));
  std::vector<double> floors;
  std::vector<double> usual;
  std::size_t exams = 0;
  for (int round = 0; round < rounds; ++round) {
    floors.push_back(seconds([&] { static_cast<void>(walk_chain(disk, identity)); }));
    usual.push_back(seconds([&] { exams = open_all(disk, identity, false); }));
  }
  need(disk.store->append({}, {}, {{"index", {}}}), "drop the index");
  std::vector<double> anew;
  for (int round = 0; round < rounds; ++round) {
    anew.push_back(seconds([&] { static_cast<void>(open_all(disk, identity, false)); }));
  }
  std::printf("%zu entries, %zu exams; read and chain %.3f s; open with the index %.3f s (%.2f x); open without it %.3f s (%.2f x)\n", entries, exams,
              median(floors), median(usual), median(usual) / median(floors), median(anew), median(anew) / median(floors));
  return judge("opening against read and chain", median(usual) / median(floors), 3.2, 2.5);
}

}  // namespace

}  // namespace limbledger::bench

int main() { return limbledger::bench::run(); }

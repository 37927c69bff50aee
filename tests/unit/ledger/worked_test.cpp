// The worked bytes of the format page, made from that page alone by a program in another language with other
// libraries (tests/outside/node/ledger_bytes.mjs), read and made again here.
#include "core/ledger/keys/keyring.hpp"
#include "tests/unit/ledger/support.hpp"

#include <doctest/doctest.h>

using namespace limbledger::ledger;
using namespace limbledger::ledger::test;
namespace model = limbledger::model;

namespace {

const std::string& cases() {
  static const std::string json = outside_data("ledger_bytes.json");
  return json;
}

// One case of the file: its members are looked up among the inputs or the outputs.
class Case {
 public:
  explicit Case(std::size_t about) {
    const std::size_t next = cases().find("\"about\"", about + 1);
    text_ = cases().substr(about, next == std::string::npos ? next : next - about);
    outputs_ = text_.find("\"outputs\"");
  }
  static Case named(const std::string& name) {
    const std::size_t at = cases().find("\"name\": \"" + name + "\"");
    REQUIRE(at != std::string::npos);
    return Case(cases().find("\"about\"", at));
  }
  [[nodiscard]] std::string in(std::string_view name) const { return text_member(text_.substr(0, outputs_), name); }
  [[nodiscard]] std::string out(std::string_view name) const { return text_member(text_, name, outputs_); }
  template <std::size_t Size>
  [[nodiscard]] std::array<std::uint8_t, Size> bytes(const std::string& hex) const {
    const Bytes from = from_hex(hex);
    REQUIRE(from.size() == Size);
    std::array<std::uint8_t, Size> to{};
    std::copy(from.begin(), from.end(), to.begin());
    return to;
  }
  [[nodiscard]] Secret32 secret(std::string_view name) const { return Secret32(from_hex(in(name))); }

 private:
  std::string text_;
  std::size_t outputs_ = 0;
};

struct Run {
  Joint from;
  std::vector<Row> rows;
  Head head;
};

// A RUN as the page lays it out.
Run read_run(const Bytes& bytes) {
  ByteReader in(bytes);
  Run out;
  const model::ReplicaId replica{in.array<16>()};
  const std::uint64_t first = in.u64();
  out.from = {first - 1, in.array<32>()};
  Joint joint = out.from;
  const std::uint32_t count = in.u32();
  for (std::uint32_t i = 0; i < count; ++i) {
    Row row;
    row.state = static_cast<RowState>(in.u8());
    row.header = in.array<32>();
    const std::size_t size = row.state == RowState::whole ? Header::from_bytes(row.header)->body_length : stub_size;
    const View body = in.raw(size);
    row.body.assign(body.begin(), body.end());
    link(replica, joint, row);
    out.rows.push_back(std::move(row));
  }
  out.head.replica.bytes = in.array<16>();
  out.head.seq = in.u64();
  out.head.hash = in.array<32>();
  out.head.signature = in.array<64>();
  CHECK(in.done());
  return out;
}

}  // namespace

TEST_CASE("every worked entry has the hashes that this program computes") {
  int entry_count = 0;
  for (std::size_t at = cases().find("\"about\""); at != std::string::npos; at = cases().find("\"about\"", at + 1)) {
    const Case worked(at);
    if (worked.out("header").empty() || worked.out("previous").empty()) {
      continue;
    }
    Row row;
    row.header = worked.bytes<32>(worked.out("header"));
    row.body = from_hex(worked.out("body"));
    const auto header = Header::from_bytes(row.header);
    REQUIRE(header.has_value());
    CHECK(header->to_bytes() == row.header);
    CHECK(to_hex(body_hash(row)) == worked.out("body_hash"));
    const std::size_t seq_at = cases().find("\"seq\":", cases().find("\"outputs\"", at));
    const std::uint64_t seq = std::stoull(cases().substr(seq_at + 6));
    const Hash hash = entry_hash(worked.bytes<32>(worked.out("previous")), seq, row.header, body_hash(row));
    CHECK(to_hex(hash) == worked.out("entry_hash"));
    CHECK(entry_id(hash).to_text() == worked.out("name"));
    ++entry_count;
  }
  CHECK(entry_count >= 25);
}

TEST_CASE("every worked run verifies up to its head: forks, dropped bodies, unknown kinds and later editions among them") {
  int run_count = 0;
  for (const auto& named : std::vector<std::pair<std::string, std::string>>{
           {"op", "run"},
           {"put_off", "run"},
           {"report", "run"},
           {"run", "run"},
           {"run_part", "run"},
           {"fork", "left"},
           {"fork", "right"},
           {"fork", "right_branch_alone"},
           {"dropped_bodies", "whole"},
           {"dropped_bodies", "erased"},
           {"dropped_bodies", "pruned"},
           {"dropped_bodies", "withheld"},
           {"op_v99_min99", "run"},
           {"op_v99_min1", "run"},
           {"unknown_kind", "run"},
           {"kid_of_another_object", "run"},
           {"op_of_another_object", "run"},
           {"epoch_change", "run"}}) {
    const Case worked = Case::named(named.first);
    Run run = read_run(from_hex(worked.out(named.second)));
    const SignKey root(secret_of(1));
    const std::string seed = worked.in("device_seed");
    const SignKey device(seed.empty() ? secret_of(2) : Secret32(from_hex(seed)));
    Origin origin{clinic_of(root.pub()), {}, device.pub()};
    origin.replica = replica_of(origin.clinic, device.pub());
    INFO(named.first << " " << named.second);
    if (run.from.seq == 0) {
      CHECK(run.from == start_of(origin));
    }
    const std::size_t size = run.rows.size();
    const auto verified = verify_run(origin, run.from, std::move(run.rows), run.head);
    REQUIRE_MESSAGE(verified.has_value(), (verified ? "" : code_of(verified.error())));
    CHECK(verified->size() == size);
    ++run_count;
  }
  CHECK(run_count == 18);
}

TEST_CASE("the worked operation and read are sealed to the same bytes") {
  for (const char* name : {"worked", "op", "put_off", "report", "access"}) {
    const Case worked = Case::named(name);
    const Position at{{worked.bytes<16>(worked.out("clinic"))}, {worked.bytes<16>(worked.out("replica"))},
                      get_integer(from_hex(worked.out("aad")).data() + 48, 8)};
    const HeaderBytes header = worked.bytes<32>(worked.out("header"));
    // The object does not enter the sealing; the key id in the header does.
    const ObjectKey key(worked.secret("key"), model::ObjectId{});
    const auto opened = open(key, at, header, from_hex(worked.out("body")));
    INFO(name);
    REQUIRE(opened.has_value());
    const auto sealed = seal(key, at, header, *opened);
    REQUIRE(sealed.has_value());
    CHECK(to_hex(*sealed) == worked.out("body"));
  }
}

TEST_CASE("the worked introductions, key and examiner's key are read, checked and written again") {
  for (const char* name : {"intro", "intro_heir"}) {
    const Case worked = Case::named(name);
    const Bytes body = from_hex(worked.out("body"));
    const auto intro = Intro::from_bytes(body);
    INFO(name);
    REQUIRE(intro.has_value());
    CHECK(intro->to_bytes() == body);
    CHECK(to_hex(intro->clinic.bytes) == worked.out("clinic"));
    CHECK(to_hex(replica_of(intro->clinic, intro->sign_pub).bytes) == worked.out("replica"));
    CHECK(intro->program == worked.in("program"));
    CHECK(intro->box_pub == BoxPair(worked.secret("box_secret")).pub());
    if (intro->has_predecessor()) {
      CHECK(verify_heir(SignKey(worked.secret("predecessor_seed")).pub(), *intro));
    }
  }
  const Case key = Case::named("key");
  const auto body = KeyBody::from_bytes(from_hex(key.out("body")));
  REQUIRE(body.has_value());
  const BoxPair epoch(key.secret("epoch_secret"));
  CHECK(to_hex(epoch.pub()) == key.in("epoch_pub"));
  const ObjectKey object_key(key.secret("key"), model::ObjectId{key.bytes<16>(key.in("object"))});
  CHECK(to_hex(wrap(object_key, body->epoch, epoch.pub(), key.secret("seal_seed")).to_bytes()) == key.out("body"));
  CHECK(unwrap(*body, epoch, object_key.kid()).has_value());

  const Case examiner = Case::named("examiner");
  const model::ClinicId clinic{examiner.bytes<16>(examiner.out("clinic"))};
  const model::ReplicaId replica{examiner.bytes<16>(examiner.out("replica"))};
  const ExaminerBody proof = prove_examiner(SignKey(examiner.secret("examiner_seed")), clinic, replica,
                                            model::ExaminerId{examiner.bytes<16>(examiner.out("examiner"))});
  CHECK(to_hex(proof.to_bytes()) == examiner.out("body"));
  CHECK(verify_examiner(clinic, replica, proof));
}

TEST_CASE("a key wrapped for another object than its id was made of is refused") {
  const Case worked = Case::named("kid_of_another_object");
  const Run run = read_run(from_hex(worked.out("run")));
  const BoxPair epoch(worked.secret("epoch_secret"));
  int key_count = 0;
  for (const Row& row : run.rows) {
    const auto header = Header::from_bytes(row.header);
    if (header->kind == Kind::key) {
      CHECK(code_of(unwrap(*KeyBody::from_bytes(row.body), epoch, header->kid).error()) == "entry.key");
      ++key_count;
    }
  }
  CHECK(key_count == 1);
}

TEST_CASE("the worked examiner's signature is made and accepted") {
  const Case worked = Case::named("sign");
  const SignKey key(worked.secret("examiner_seed"));
  SignedMatter matter;
  matter.clinic.bytes = worked.bytes<16>(worked.out("clinic"));
  REQUIRE(model::ObjectId::from_text("abll3d73e6ewldfqyb3v5oml64", matter.object).empty());
  REQUIRE(model::ExaminerId::from_text("ccujlec7xfptmg2ssecrv6us6e", matter.examiner).empty());
  matter.covered.push_back(worked.bytes<32>(worked.in("covered")));
  const std::string body = R"({"saw":[")" + entry_id(matter.covered.front()).to_text() +
                           R"("],"shown":{"statements":[],"alerts":[],"edition":"facts.1"}})";
  matter.body = as_bytes(body);
  CHECK(to_hex(sign_matter(key, matter)) == worked.out("signature"));
  CHECK(verify_matter(key.pub(), matter, worked.bytes<64>(worked.out("signature"))));
}

TEST_CASE("the worked keyrings open and give what was put in") {
  for (const char* name : {"keyring", "keyring_three_slots"}) {
    const Case worked = Case::named(name);
    const auto keyring = Keyring::from_bytes(from_hex(worked.out("keyring")));
    INFO(name);
    REQUIRE(keyring.has_value());
    const auto opened = keyring->open_passphrase(worked.in("passphrase"));
    REQUIRE(opened.has_value());
    CHECK(opened->master == worked.secret("master"));
    CHECK(opened->seed == worked.secret("examiner_seed"));
    CHECK(to_hex(opened->examiner.bytes) == worked.in("examiner"));
    CHECK(opened->vault.sign_seed == worked.secret("sign_seed"));
    CHECK(opened->vault.box_secret == worked.secret("box_secret"));
    CHECK(opened->vault.shelf_key == worked.secret("shelf_key"));
    CHECK(keyring->slots().front().label == worked.in("label"));
  }
  const Case three = Case::named("keyring_three_slots");
  const auto keyring = Keyring::from_bytes(from_hex(three.out("keyring")));
  const RecoveryCode code(Secret<20>(from_hex(three.in("code"))));
  CHECK(to_hex(code.root_seed().view()) == three.out("root_seed_of_code"));
  CHECK(keyring->open_code(code)->master == three.secret("master"));
  CHECK(keyring->open_admin(three.in("admin_passphrase"))->seed == three.secret("admin_seed"));
  CHECK(keyring->open_code(code)->vault.epoch_secrets.size() == 2);
}

// The bytes of what is exchanged, against two programs in other languages that were written from the format page alone:
// tests/outside/node/ledger_bytes.mjs (orders, witness, have-map, hello, same, receipt, runs) and
// tests/outside/python/exchange_bytes.py (the messages, and enrolment). Read here, checked, and written again.
#include "tests/unit/exchange/clinic.hpp"

namespace limbledger::ledger::exchange_test {

using test::filled;
using test::from_hex;
using test::outside_data;
using test::text_member;
using test::to_hex;

namespace {

const std::string& node_cases() {
  static const std::string json = outside_data("ledger_bytes.json");
  return json;
}
const std::string& python_cases() {
  static const std::string json = outside_data("exchange_bytes.json");
  return json;
}

// A member of one case of ledger_bytes.json, among its inputs or its outputs.
Bytes node_case(const std::string& name, std::string_view member, bool of_outputs = true) {
  std::size_t at = node_cases().find("\"name\": \"" + name + "\"");
  REQUIRE(at != std::string::npos);
  at = node_cases().find(of_outputs ? "\"outputs\"" : "\"inputs\"", at);
  return from_hex(text_member(node_cases(), member, at));
}
std::uint64_t seq_of_case(const std::string& name) {
  std::size_t at = node_cases().find("\"outputs\"", node_cases().find("\"name\": \"" + name + "\""));
  at = node_cases().find("\"seq\":", at);
  return std::stoull(node_cases().substr(at + 6));
}
Bytes python_case(std::string_view name) { return from_hex(text_member(python_cases(), name)); }

template <std::size_t Size>
std::array<std::uint8_t, Size> sized(const Bytes& bytes) {
  REQUIRE(bytes.size() == Size);
  std::array<std::uint8_t, Size> out{};
  std::copy(bytes.begin(), bytes.end(), out.begin());
  return out;
}

const Exporter x = filled<32>(0x2a);

}  // namespace

TEST_CASE("the worked orders are read, hold where they stand and nowhere else, and are signed to the same bytes") {
  for (const char* name : {"order_grant", "order_enrol", "order_revoke", "order_admit", "order_epoch", "order_erase", "order_erase_done", "order_erase_cancel",
                           "order_gap", "order_hubcert", "order_auditor"}) {
    INFO(name);
    const Bytes body = node_case(name, "body");
    const auto order = OrderBody::from_bytes(body);
    REQUIRE(order.has_value());
    CHECK(order->to_bytes() == body);
    const Position at{{sized<16>(node_case(name, "clinic"))}, {sized<16>(node_case(name, "replica"))}, seq_of_case(name)};
    CHECK(verify_order(at, *order));
    CHECK_FALSE(verify_order({at.clinic, at.replica, at.seq + 1}, *order));
    const SignKey admin(Secret32(node_case(name, "admin_seed", false)));
    CHECK(sign_order(admin, at, order->sub, node_case(name, "fields", false)).to_bytes() == body);
    for (std::size_t i = 0; i < body.size(); ++i) {
      Bytes changed = body;
      changed[i] ^= 1U;
      const auto read = OrderBody::from_bytes(changed);
      CHECK_FALSE((read.has_value() && verify_order(at, *read)));
    }
  }
}

TEST_CASE("the fields of the worked orders are read and written again") {
  const auto fields = [](const char* name) { return node_case(name, "fields", false); };
  CHECK(Grant::from_fields(fields("order_grant"))->to_fields() == fields("order_grant"));
  CHECK(Grant::from_fields(fields("order_grant"))->roles == (roles::enrol | roles::erase | roles::epoch));
  CHECK(Enrol::from_fields(fields("order_enrol"))->to_fields() == fields("order_enrol"));
  CHECK(Revoke::from_fields(fields("order_revoke"))->to_fields() == fields("order_revoke"));
  const auto epoch = Epoch::from_fields(fields("order_epoch"));
  REQUIRE(epoch.has_value());
  CHECK(epoch->to_fields() == fields("order_epoch"));
  CHECK(epoch->epoch == 2);
  // The page's own seeds: box secret 32 x 07, epoch secrets 32 x 08 and 32 x 09.
  REQUIRE(epoch->boxes.size() == 1);
  const auto secret = epoch->open_box_of(epoch->boxes.front().replica, BoxPair(secret_of(7)));
  REQUIRE(secret.has_value());
  CHECK(*secret == secret_of(9));
  const limbledger::model::ClinicId clinic{sized<16>(node_case("order_epoch", "clinic"))};
  const auto older = epoch->open_older(clinic, *secret);
  REQUIRE(older.has_value());
  CHECK(*older == secret_of(8));
  CHECK(seal_older(clinic, 2, secret_of(9), secret_of(8)) == epoch->older);
  CHECK(code_of(epoch->open_older(clinic, secret_of(8)).error()) == "entry.seal");
  CHECK(code_of(epoch->open_box_of({}, BoxPair(secret_of(7))).error()) == "entry.key");
}

TEST_CASE("the worked witness, have-map, receipt and runs are read and written again") {
  const Bytes witness = node_case("witness", "body");
  const auto body = WitnessBody::from_bytes(witness);
  REQUIRE(body.has_value());
  CHECK(body->to_bytes() == witness);
  // Two leaves of the witness are those of the have-map; there one has holes, which no replica of this version has.
  const Bytes receipt_bytes = node_case("receipt", "receipt");
  auto receipt = Receipt::from_bytes(receipt_bytes);
  REQUIRE(receipt.has_value());
  CHECK(receipt->to_bytes() == receipt_bytes);
  const SignKey hub(Secret32(node_case("receipt", "hub_seed", false)));
  const limbledger::model::ClinicId clinic{sized<16>(node_case("worked", "clinic"))};
  CHECK(verify_receipt(clinic, hub.pub(), *receipt).has_value());
  const Signature before = receipt->signature;
  sign_receipt(hub, clinic, *receipt);
  CHECK(receipt->signature == before);
  receipt->lines.front().level = ReceiptLevel::witnessed;
  CHECK(code_of(verify_receipt(clinic, hub.pub(), *receipt).error()) == "exchange.receipt");
  for (const char* name : {"run", "run_part"}) {
    const Bytes run_bytes = node_case(name, "run");
    ByteReader in(run_bytes);
    const auto run = read_run(in);
    REQUIRE(run.has_value());
    CHECK(in.done());
    ByteWriter out;
    put_run(out, *run);
    CHECK(out.take() == run_bytes);
  }
}

TEST_CASE("the worked hello and same are signed to the same bytes") {
  const limbledger::model::ClinicId clinic{sized<16>(node_case("worked", "clinic"))};
  const Exporter exporter = sized<32>(node_case("hello", "exporter", false));
  const Hash digest = sized<32>(node_case("hello", "digest", false));
  const SignKey device(Secret32(node_case("hello", "device_seed", false)));
  Bytes expected{1};
  const Bytes hello = node_case("hello", "hello");
  expected.insert(expected.end(), hello.begin(), hello.end());
  CHECK(to_hex(sign_hello(device, clinic, exporter, digest).to_bytes(clinic, exporter)) == to_hex(expected));
  const auto read = Hello::from_bytes(expected, clinic, exporter);
  REQUIRE(read.has_value());
  CHECK(verify_hello(device.pub(), clinic, exporter, *read));
  expected = {2};
  const Bytes same = node_case("same", "same");
  expected.insert(expected.end(), same.begin(), same.end());
  const SignKey hub(Secret32(node_case("same", "hub_seed", false)));
  CHECK(to_hex(sign_same(hub, exporter, true, digest).to_bytes()) == to_hex(expected));
}

TEST_CASE("the worked messages of an exchange are read, hold, and are written again") {
  const SignKey hub(secret_of(0x0b));
  const SignKey tablet(secret_of(0x0c));
  const auto hello = Hello::from_bytes(python_case("hello"), the_clinic(), x);
  REQUIRE(hello.has_value());
  CHECK(verify_hello(tablet.pub(), the_clinic(), x, *hello));
  CHECK(sign_hello(tablet, the_clinic(), x, hello->digest).to_bytes(the_clinic(), x) == python_case("hello"));
  const auto introduced = Hello::from_bytes(python_case("hello_introduced"), the_clinic(), x);
  REQUIRE(introduced.has_value());
  REQUIRE(introduced->introduction.has_value());
  CHECK(introduced->to_bytes(the_clinic(), x) == python_case("hello_introduced"));
  const auto origin = origin_of(the_clinic(), introduced->introduction->rows.front());
  REQUIRE(origin.has_value());
  CHECK(origin->sign_pub == tablet.pub());
  CHECK(verify_head(the_clinic(), tablet.pub(), introduced->introduction->head).has_value());

  const auto same = Same::from_bytes(python_case("same_different"));
  REQUIRE(same.has_value());
  CHECK_FALSE(same->is_same);
  CHECK(verify_same(hub.pub(), x, *same));
  CHECK(same->to_bytes() == python_case("same_different"));
  REQUIRE(same->have.size() == 1);

  const auto ask = Ask::from_bytes(python_case("ask"));
  REQUIRE(ask.has_value());
  CHECK(ask->to_bytes() == python_case("ask"));
  CHECK(ask->wants.front().to == 9);

  const auto runs = Runs::from_bytes(python_case("runs"), MessageKind::runs);
  REQUIRE(runs.has_value());
  CHECK(runs->mark);
  CHECK(runs->to_bytes() == python_case("runs"));
  const auto take = Runs::from_bytes(python_case("take"), MessageKind::take);
  REQUIRE(take.has_value());
  CHECK(take->to_bytes() == python_case("take"));
  REQUIRE(take->runs.size() == 2);
  // The points asked with are those of a chain of six entries.
  limbledger::store::MemoryStore store;
  std::vector<Row> rows = introduced->introduction->rows;
  for (const Run& run : take->runs) {
    rows.insert(rows.end(), run.rows.begin(), run.rows.end());
  }
  REQUIRE(store.append(rows, {&take->runs.back().head, 1}, {}).has_value());
  CHECK(*points_of(store, take->runs.back().replica) == ask->held);
  const Place leaf{take->runs.back().replica, 6, take->runs.back().head.hash};
  const auto receipt_message = python_case("receipt");
  const auto receipt = Receipt::from_bytes(View(receipt_message).subspan(17));
  REQUIRE(receipt.has_value());
  CHECK(verify_receipt(the_clinic(), hub.pub(), *receipt).has_value());
  REQUIRE(receipt->lines.size() == 2);
  CHECK(to_hex(have_digest({receipt->lines[1].place, receipt->lines[0].place})) == text_member(python_cases(), "digest"));
  CHECK(((receipt->lines[0].place == leaf) != (receipt->lines[1].place == leaf)));
}

TEST_CASE("no worked message is read with a byte missing, and none with one too many that would have to mean something") {
  const std::vector<std::string> names{"hello_introduced", "same_different", "ask", "runs", "take"};
  for (const std::string& name : names) {
    const Bytes whole = python_case(name);
    for (std::size_t size = 0; size < whole.size(); ++size) {
      const View cut = View(whole).first(size);
      INFO(name << " " << size);
      if (name == "hello_introduced") {
        CHECK(Hello::from_bytes(cut, the_clinic(), x).has_value() == (size == 1 + hello_size));
      } else if (name == "same_different") {
        CHECK(Same::from_bytes(cut).has_value() == (size == 1 + same_size));
      } else if (name == "ask") {
        CHECK(Ask::from_bytes(cut).has_value() == (size >= 36 && (size - 3) % have_row_size == 0));
      } else {
        const auto runs = Runs::from_bytes(cut, name == "runs" ? MessageKind::runs : MessageKind::take);
        CHECK((!runs.has_value() || runs->runs.size() < 2));
      }
    }
  }
}

}  // namespace limbledger::ledger::exchange_test

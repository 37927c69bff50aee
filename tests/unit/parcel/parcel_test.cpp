// Parcels. The bytes against a program in another language that was written from the format page alone
// (tests/outside/node/ledger_bytes.mjs); what is refused and what a cut gives: logic tests of our own rules, and of the page of
// what must be shown (any changed byte is refused with chunk and entry named; a cut one gives nothing, or on request all whole
// commits up to the last head; a replay is accepted with nothing new).
#include "core/ledger/parcel/carry.hpp"
#include "tests/unit/exchange/clinic.hpp"

namespace limbledger::ledger::exchange_test {

using test::filled;
using test::from_hex;
using test::outside_data;
using test::text_member;
using test::to_hex;

namespace {

std::size_t parcel_case(const std::string& json, const std::string& name) {
  const std::size_t at = json.find("\"name\": \"" + name + "\"");
  REQUIRE(at != std::string::npos);
  return at;
}

ParcelDraw worked_draw(const std::string& json, std::size_t at) {
  ParcelDraw out;
  const auto into = [&](const char* member, std::span<std::uint8_t> to) {
    const Bytes bytes = from_hex(text_member(json, member, at));
    REQUIRE(bytes.size() == to.size());
    std::copy(bytes.begin(), bytes.end(), to.begin());
  };
  into("salt", out.salt);
  into("parcel_key", out.key.room());
  into("seal_seed", out.box_seed.room());
  into("stream_header", out.stream);
  return out;
}

std::map<std::uint32_t, BoxPair> epochs_of(std::uint8_t secret = 2) {
  std::map<std::uint32_t, BoxPair> out;
  out.emplace(1, BoxPair(secret_of(secret)));
  return out;
}

Bytes parcel_from(Device& device, const std::optional<model::ReplicaId>& holder = std::nullopt) {
  Bytes out;
  Member own = device.member();
  auto writing = ParcelWriting::begin(own, 1, BoxPair(secret_of(2)).pub(), holder);
  REQUIRE_MESSAGE(writing.has_value(), (writing ? "" : code_of(writing.error())));
  while (true) {
    const auto piece = writing->next();
    REQUIRE(piece.has_value());
    if (piece->empty()) {
      break;
    }
    out.insert(out.end(), piece->begin(), piece->end());
  }
  CHECK(writing->written().size == out.size());
  return out;
}

Result<ParcelTaken> take_from(Device& device, const Bytes& parcel, bool cut_too = false, std::size_t piece = 4096) {
  Member own = device.member();
  const auto epochs = epochs_of();
  ParcelTaking taking(own, epochs, cut_too);
  std::size_t at = 0;
  Result<ParcelTaking::Wants> wants = ParcelTaking::Wants::more;
  while (wants && *wants != ParcelTaking::Wants::nothing) {
    at = *wants == ParcelTaking::Wants::from_start ? 0 : at;
    const std::size_t size = std::min(piece, parcel.size() - at);
    wants = taking.feed(View(parcel).subspan(at, size));
    at += size;
  }
  device.catch_up();
  return wants ? Result<ParcelTaken>(taking.taken()) : Result<ParcelTaken>(wants.error());
}

// Only reads: for what is asked thousands of times.
Result<ParcelReader> read_all(const Bytes& bytes, const model::ClinicId& clinic, const std::map<std::uint32_t, BoxPair>& epochs) {
  ParcelReader reader(clinic, epochs);
  if (auto fed = reader.feed(bytes); !fed) {
    return fed.error();
  }
  if (auto ended = reader.finish(); !ended) {
    return ended.error();
  }
  return reader;
}

std::string param_of(const wire::Refusal& refusal, std::string_view name) {
  for (const wire::FaultParam& param : refusal.faults.front().params) {
    if (param.name == name) {
      return param.json;
    }
  }
  return {};
}

}  // namespace

TEST_CASE("the worked parcels are written to the same bytes and read again") {
  const std::string json = outside_data("ledger_bytes.json");
  const model::ClinicId clinic = the_clinic();  // root seed 32 x 01, as the page's
  const std::size_t at = parcel_case(json, "parcel");
  const Bytes expected = from_hex(text_member(json, "parcel", json.find("\"outputs\"", at)));
  const std::map<std::uint32_t, BoxPair> epochs = [&] {
    std::map<std::uint32_t, BoxPair> out;
    out.emplace(1, BoxPair(Secret32(from_hex(text_member(json, "epoch_secret", at)))));
    return out;
  }();
  const Bytes run_bytes = from_hex(text_member(json, "run", json.find("\"outputs\"", parcel_case(json, "run"))));
  ByteReader in(run_bytes);
  const auto run = read_run(in);
  REQUIRE(run.has_value());
  ParcelSealer sealer(clinic, 1, epochs.at(1).pub(), worked_draw(json, at));
  sealer.add(*run);
  sealer.finish();
  CHECK(to_hex(sealer.take()) == to_hex(expected));
  CHECK(sealer.entries() == 2);
  for (const std::size_t piece : {std::size_t{1}, std::size_t{7}, expected.size()}) {
    ParcelReader reader(clinic, epochs);
    for (std::size_t from = 0; from < expected.size(); from += piece) {
      REQUIRE(reader.feed(View(expected).subspan(from, std::min(piece, expected.size() - from))).has_value());
    }
    CHECK(reader.finish().has_value());
    CHECK(reader.entries() == 2);
    const auto runs = reader.take_runs();
    REQUIRE(runs.size() == 1);
    ByteWriter again;
    put_run(again, runs.front());
    CHECK(again.take() == run_bytes);
  }
}

TEST_CASE("a run over two chunks is written as the other program writes it") {
  const std::string json = outside_data("ledger_bytes.json");
  const std::size_t at = parcel_case(json, "parcel_two_chunks");
  const SignKey device(secret_of(2));
  Run run;
  run.replica = replica_of(the_clinic(), device.pub());
  Joint joint = start_of({the_clinic(), run.replica, device.pub()});
  run.before = joint.hash;
  Row row;
  row.body = Bytes(70000, 0x2a);
  Header header;
  header.kind = static_cast<Kind>(200);
  header.flags = flag_last_of_commit;
  header.body_length = 70000;
  header.stamp.ms = 1764000000000;
  row.header = header.to_bytes();
  link(run.replica, joint, row);
  run.head = sign_head(device, the_clinic(), run.replica, 1, row.hash);
  run.rows.push_back(row);
  ParcelSealer sealer(the_clinic(), 1, BoxPair(Secret32(from_hex(text_member(json, "epoch_secret", at)))).pub(), worked_draw(json, at));
  sealer.add(run);
  sealer.finish();
  const Bytes parcel = sealer.take();
  CHECK(to_hex(View(parcel).first(160)) == text_member(json, "first_160", at));
  CHECK(to_hex(View(parcel).last(105)) == text_member(json, "last_105", at));
  CHECK(to_hex(hash256(parcel)) == text_member(json, "blake2b_256", at));
}

TEST_CASE("a parcel brings home what was written, whatever the pieces, and again with nothing new") {
  Device hub(1);
  Device tablet(2);
  hub.enrol({&tablet});
  tablet.write_some(51, 30);
  hub.write_some(52, 5);
  const Bytes parcel = parcel_from(tablet);
  const auto taken = take_from(hub, parcel, false, 13);
  REQUIRE_MESSAGE(taken.has_value(), (taken ? "" : code_of(taken.error())));
  CHECK(taken->is_whole);
  CHECK(taken->taken.entries == tablet.own_seq());
  CHECK(hub.seq_of(tablet.replica()) == tablet.own_seq());
  const Hash held = hub.have();
  const auto again = take_from(hub, parcel);
  REQUIRE(again.has_value());
  CHECK(again->taken.entries == 0);
  CHECK(again->taken.parked == 0);
  CHECK(hub.have() == held);
  // The way back, with the hub's word that it has seen them.
  const auto back = take_from(tablet, parcel_from(hub));
  REQUIRE(back.has_value());
  CHECK(tablet.have() == hub.have());
  CHECK(tablet.said() == hub.said());
  CHECK(tablet.held_at(hub) == tablet.own_seq());
  tablet.write_some(51, 1);
  CHECK(tablet.held_at(hub) == tablet.own_seq() - 1);
}

TEST_CASE("a hub that took a parcel and was broken off before its witness writes it when the parcel is read again, once") {
  Device hub(1);
  Device tablet(2);
  hub.enrol({&tablet});
  tablet.write_some(51, 3);
  Sending sending;
  REQUIRE(add_lacking(tablet.store(), tablet.replica(), {}, 1, UINT64_MAX >> 1U, SIZE_MAX, sending).has_value());
  Member own = hub.member();
  REQUIRE(take(own, std::move(sending.runs)).has_value());
  hub.catch_up();
  const std::uint64_t before = hub.own_seq();
  const Bytes parcel = parcel_from(tablet);
  for (int i = 0; i < 2; ++i) {
    const auto again = take_from(hub, parcel);
    REQUIRE(again.has_value());
    CHECK(again->taken.entries == 0);
    CHECK(hub.own_seq() == before + 1);
  }
}

TEST_CASE("parcels come in any order; what a holder's receipt names is left out where that is wanted") {
  Device hub(1);
  Device tablet(2);
  hub.enrol({&tablet});
  tablet.write_some(51, 4);
  REQUIRE(exchange(tablet, hub).has_value());
  tablet.write_some(51, 6);
  const Bytes newer = parcel_from(tablet, hub.replica());
  CHECK(newer.size() < parcel_from(tablet).size());
  Device other(3);  // holds neither the earlier entries nor the order that enrols the tablet
  const auto early = take_from(other, newer);
  REQUIRE_MESSAGE(early.has_value(), (early ? "" : code_of(early.error())));
  CHECK(early->taken.entries == 0);
  CHECK(early->taken.parked == 6);
  const auto rest = take_from(other, parcel_from(hub));
  REQUIRE(rest.has_value());
  CHECK(other.seq_of(tablet.replica()) == tablet.own_seq());
  CHECK(waiting(other.store())->empty());
}

TEST_CASE("every changed byte of a parcel is refused, with its chunk and entry, and nothing of it is taken") {
  Device hub(1);
  Device tablet(2);
  hub.enrol({&tablet});
  tablet.write_some(51, 4);
  const Bytes parcel = parcel_from(tablet);
  const auto epochs = epochs_of();
  REQUIRE(read_all(parcel, the_clinic(), epochs).has_value());
  std::map<std::string, int> codes;
  for (std::size_t i = 0; i < parcel.size(); ++i) {
    Bytes changed = parcel;
    changed[i] ^= static_cast<std::uint8_t>(1U << (i % 8));
    const auto read = read_all(changed, the_clinic(), epochs);
    REQUIRE_MESSAGE(!read.has_value(), "byte " << i);
    const std::string code = code_of(read.error());
    ++codes[code];
    if (i >= parcel_front_size) {
      CHECK_MESSAGE((code == "parcel.changed" || code == "parcel.cut_short"), "byte " << i << ": " << code);
      CHECK_FALSE(param_of(read.error(), "chunk").empty());
      CHECK_FALSE(param_of(read.error(), "entry").empty());
    }
  }
  // A length that now reaches past the end looks like a cut.
  CHECK(codes["parcel.changed"] > 50 * codes["parcel.cut_short"]);
  CHECK(codes["parcel.format"] == 8 + 4);          // mark, flags
  CHECK(codes["parcel.foreign"] == 16 + 8);        // salt, hint
  CHECK(codes["parcel.key"] == 4 + 80);            // epoch, box
  Bytes changed = parcel;
  changed[parcel_front_size + 100] ^= 1U;
  const Hash before = hub.have();
  for (const bool cut_too : {false, true}) {
    const auto taken = take_from(hub, changed, cut_too);
    REQUIRE_FALSE(taken.has_value());
    CHECK(code_of(taken.error()) == "parcel.changed");
    CHECK(param_of(taken.error(), "chunk") == "1");
    CHECK(param_of(taken.error(), "entry") == "1");
  }
  CHECK(hub.have() == before);
}

TEST_CASE("a change in a later chunk names the chunk, and the entry by its place in the parcel and in its chain") {
  Device hub(1);
  Device tablet(2);
  hub.enrol({&tablet});
  tablet.write_some(51, 400);
  Bytes parcel = parcel_from(tablet);
  REQUIRE(parcel.size() > parcel_front_size + 2 * parcel_chunk_max);
  parcel[parcel_front_size + parcel_chunk_max + 4 + 1000] ^= 1U;
  const auto taken = take_from(hub, parcel);
  REQUIRE_FALSE(taken.has_value());
  CHECK(code_of(taken.error()) == "parcel.changed");
  CHECK(param_of(taken.error(), "chunk") == "2");
  // The tablet's own chain is all there is: the place in the parcel is that in the chain.
  const std::string entry = param_of(taken.error(), "entry");
  CHECK(std::stoul(entry) > 50);
  CHECK(param_of(taken.error(), "seq") == entry);
  CHECK(param_of(taken.error(), "replica") == '"' + tablet.replica().to_text() + '"');
}

TEST_CASE("a parcel cut anywhere gives nothing, or on request the whole commits before the cut") {
  Device hub(1);
  Device tablet(2);
  hub.enrol({&tablet});
  for (int i = 0; i < 3; ++i) {
    tablet.write_some(51, 2);
    REQUIRE(exchange(tablet, hub).has_value());  // a head handed over: the parcel has runs of its own up to it
  }
  tablet.write_some(51, 3);
  const Bytes parcel = parcel_from(tablet);
  const auto epochs = epochs_of();
  for (std::size_t size = 0; size < parcel.size(); ++size) {
    const auto read = read_all(Bytes(parcel.begin(), parcel.begin() + static_cast<std::ptrdiff_t>(size)), the_clinic(), epochs);
    REQUIRE_MESSAGE(!read.has_value(), "cut at " << size);
    CHECK(code_of(read.error()) == "parcel.cut_short");
  }
  const Hash before = hub.have();
  Bytes cut(parcel.begin(), parcel.end() - 1);
  const auto refused = take_from(hub, cut);
  REQUIRE_FALSE(refused.has_value());
  CHECK(code_of(refused.error()) == "parcel.cut_short");
  CHECK(hub.have() == before);
  const auto wanted = take_from(hub, cut, true);
  REQUIRE(wanted.has_value());
  CHECK_FALSE(wanted->is_whole);
  CHECK(hub.seq_of(tablet.replica()) == tablet.own_seq());
}

TEST_CASE("of a long parcel that was cut, what is taken on request ends at a head, and grows with what is there") {
  Device hub(1);
  Device tablet(2);
  hub.enrol({&tablet});
  tablet.write_some(51, 2300);  // a head is kept each thousand entries
  const Bytes parcel = parcel_from(tablet);
  std::uint64_t last = 0;
  for (std::size_t part = 1; part <= 8; ++part) {
    Device other(1);
    other.enrol({&tablet});
    const auto taken = take_from(other, Bytes(parcel.begin(), parcel.begin() + static_cast<std::ptrdiff_t>(parcel.size() * part / 8 - 1)), true, 100000);
    REQUIRE_MESSAGE(taken.has_value(), (taken ? "" : code_of(taken.error())));
    const std::uint64_t held = other.seq_of(tablet.replica());
    CHECK(held >= last);
    CHECK(taken->taken.entries == held);
    const auto verified = verify_store(other.store(), the_clinic(), &other.log());
    CHECK(verified->damage.empty());
    last = held;
  }
  CHECK(last >= 2000);
}

TEST_CASE("a parcel of another clinic, one sealed to another key and a file that is none are told apart") {
  Device hub(1);
  Device tablet(2);
  hub.enrol({&tablet});
  tablet.write_some(51, 2);
  const Bytes parcel = parcel_from(tablet);
  const auto code = [](const Result<ParcelReader>& read) { return read ? std::string() : code_of(read.error()); };
  CHECK(code(read_all(parcel, clinic_of(SignKey(secret_of(9)).pub()), epochs_of())) == "parcel.foreign");
  CHECK(code(read_all(parcel, the_clinic(), epochs_of(8))) == "parcel.key");
  CHECK(code(read_all(parcel, the_clinic(), {})) == "parcel.key");
  CHECK(code(read_all(Bytes(500, 0x20), the_clinic(), epochs_of())) == "parcel.format");
  // What stands behind the end was not written by who sealed it, and is not read.
  Bytes longer = parcel;
  longer.insert(longer.end(), 100, 0x55);
  CHECK(read_all(longer, the_clinic(), epochs_of()).has_value());
}

TEST_CASE("a practice ledger writes no parcel, and none is taken by a ledger of another purpose") {
  Device practice(2, Purpose::practice);
  Member own = practice.member();
  const auto writing = ParcelWriting::begin(own, 1, BoxPair(secret_of(2)).pub(), std::nullopt);
  REQUIRE_FALSE(writing.has_value());
  CHECK(code_of(writing.error()) == "exchange.purpose");
  Device shown(3, Purpose::demonstration);
  Device hub(1);
  const auto taken = take_from(hub, parcel_from(shown));
  REQUIRE_FALSE(taken.has_value());
  CHECK(code_of(taken.error()) == "exchange.purpose");
}

}  // namespace limbledger::ledger::exchange_test

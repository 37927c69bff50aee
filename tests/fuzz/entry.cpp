#include "core/ledger/body.hpp"
#include "core/ledger/chain.hpp"
#include "core/ledger/fold/fold.hpp"
#include "core/ledger/keys/keyring.hpp"
#include "core/ledger/log/log.hpp"
#include "core/wire/write.hpp"
#include "tests/fuzz/invented_ledger.hpp"
#include "tests/fuzz/targets.hpp"
#include "tests/unit/ledger/support.hpp"

#include <algorithm>
#include <memory>

namespace limbledger::fuzz {

namespace {

using ledger::Bytes;
using ledger::View;

constexpr std::size_t operations_max = 8;

template <class Body>
void read_back(View bytes) {
  const auto body = Body::from_bytes(bytes);
  if (body) {
    const Bytes again = body->to_bytes();
    must(std::equal(again.begin(), again.end(), bytes.begin(), bytes.end()), "what is read strictly is written back byte for byte");
  }
}

void header(View bytes) {
  if (bytes.size() < 32) {
    return;
  }
  ledger::HeaderBytes raw{};
  std::copy_n(bytes.begin(), raw.size(), raw.begin());
  const auto read = ledger::Header::from_bytes(raw);
  if (read) {
    must(read->to_bytes() == raw, "a header is written back byte for byte");
  }
}

// As the first entry of a chain, and as its second after a good first one.
void row(View bytes) {
  if (bytes.size() < 32) {
    return;
  }
  ledger::Row given;
  std::copy_n(bytes.begin(), given.header.size(), given.header.begin());
  given.body.assign(bytes.begin() + 32, bytes.end());
  ledger::test::Writer writer;
  ledger::Row first = given;
  ledger::Joint joint = ledger::start_of(writer.origin);
  ledger::link(writer.origin.replica, joint, first);
  static_cast<void>(ledger::origin_of(writer.origin.clinic, first));
  static_cast<void>(ledger::intro_of(first));
  joint = ledger::start_of(writer.origin);
  const auto verified = ledger::verify_next(joint, first);
  must(!verified || (verified->header().to_bytes() == first.header && joint.seq == 1), "a checked entry is the row");
  writer.introduce();
  ledger::Row second = given;
  ledger::link(writer.origin.replica, writer.joint, second);
  writer.rows.push_back(second);
  const auto run = ledger::verify_run(writer.origin, ledger::start_of(writer.origin), writer.rows, writer.head());
  if (run) {
    static_cast<void>(ledger::open_operation(writer.origin.clinic, writer.key, run->back()));
  }
}

// "@object" is the key's own object, "@1" the first entry.
std::string pointed(std::string_view line, const ledger::test::Writer& writer, const std::vector<ledger::Opened>& opened) {
  std::string text(line);
  const auto put = [&](const std::string& place, const std::string& id) {
    for (std::size_t at = text.find(place); at != std::string::npos; at = text.find(place, at + id.size())) {
      text.replace(at, place.size(), id);
    }
  };
  put("@object", writer.key.object().to_text());
  for (std::size_t i = 0; i < opened.size() && i < 9; ++i) {
    put("@" + std::to_string(i + 1), opened[i].entry().to_text());
  }
  return text;
}

std::string told(const std::vector<ledger::Opened>& opened, const ledger::test::Writer& writer) {
  model::ExamId exam;
  model::PersonId person;
  exam.bytes = writer.key.object().bytes;
  person.bytes = writer.key.object().bytes;
  const ledger::ExaminerKeys nobody = [](const model::ExaminerId&, const ledger::PublicKey&) { return false; };
  std::string out;
  if (const auto fold = ledger::fold_exam(exam, opened, nobody, writer.origin.clinic)) {
    out += wire::write(fold->exam) + wire::write(fold->history) + ledger::test::to_hex(fold->digest);
  }
  if (const auto fold = ledger::fold_person(person, opened)) {
    out += wire::write(fold->person) + wire::write(fold->conflicts);
  }
  for (const ledger::PlaceFold& place : ledger::fold_places(opened)) {
    out += wire::write(place.place) + wire::write(place.conflicts);
  }
  return out + ledger::test::to_hex(ledger::state_digest(writer.key.object(), opened));
}

void operations(std::string_view bytes) {
  ledger::test::Writer writer;
  writer.introduce();
  std::vector<ledger::Opened> opened;
  for (std::size_t count = 0; count < operations_max && !bytes.empty(); ++count) {
    const std::size_t end = bytes.find('\n');
    const std::string text = pointed(bytes.substr(0, end), writer, opened);
    bytes = end == std::string_view::npos ? std::string_view() : bytes.substr(end + 1);
    if (text.size() > ledger::plaintext_size_max) {
      return;
    }
    const ledger::Row sealed = writer.write(text, {1764000000000 + static_cast<std::int64_t>(count % 3), 0});
    auto operation = ledger::open_operation(writer.origin.clinic, writer.key, sealed);
    if (operation) {
      opened.push_back(std::move(*operation));
    }
  }
  must(ledger::verify_run(writer.origin, ledger::start_of(writer.origin), writer.rows, writer.head()).has_value(), "what was written verifies");
  if (opened.empty()) {
    return;
  }
  const std::string once = told(opened, writer);
  std::vector<ledger::Opened> turned(opened.rbegin(), opened.rend());
  must(told(turned, writer) == once, "the other way round the same is folded");
  turned.insert(turned.end(), opened.begin(), opened.end());
  must(told(turned, writer) == once, "what comes twice changes nothing");
}

// Four bytes each: a row, a place in its header and body, and what is put there.
void changed(View bytes) {
  const auto source = new_desktop();
  const auto heads = source->store.heads();
  must(heads.has_value() && heads->newest.size() == 1, "one chain");
  auto rows = source->store.read(heads->newest.front().replica, 1, heads->newest.front().seq, SIZE_MAX);
  must(rows.has_value(), "rows");
  bool differs = false;
  for (; bytes.size() >= 4; bytes = bytes.subspan(4)) {
    ledger::Row& at = (*rows)[bytes[0] % rows->size()];
    const std::size_t place = (bytes[1] * 256U + bytes[2]) % (at.header.size() + at.body.size());
    std::uint8_t& byte = place < at.header.size() ? at.header[place] : at.body[place - at.header.size()];
    byte ^= bytes[3];
  }
  const auto whole = source->store.read(heads->newest.front().replica, 1, heads->newest.front().seq, SIZE_MAX);
  for (std::size_t i = 0; i < rows->size(); ++i) {
    differs = differs || (*rows)[i].header != (*whole)[i].header || (*rows)[i].body != (*whole)[i].body;
  }
  store::MemoryStore damaged;
  if (!damaged.append(*rows, heads->newest, {})) {
    return;
  }
  const auto verified = ledger::verify_store(damaged, source->desk->clinic(), nullptr);
  must(verified.has_value() && verified->damage.empty() != differs, "a changed byte is named as damage, and nothing else is");
  StillWorld world;
  ledger::Identity identity = source->desk->log().identity();
  const auto log = ledger::Log::open(damaged, world, std::move(identity));
  must(!log || (*log)->damage().empty() != differs, "a log over changed bytes says so");
}

}  // namespace

void entry(std::string_view bytes) {
  if (bytes.empty()) {
    return;
  }
  const char kind = bytes.front();
  bytes.remove_prefix(1);
  const View view(reinterpret_cast<const std::uint8_t*>(bytes.data()), bytes.size());
  switch (kind) {
    case 'h':
      return header(view);
    case 'i':
      return read_back<ledger::Intro>(view);
    case 'k':
      return read_back<ledger::KeyBody>(view);
    case 'e':
      return read_back<ledger::ExaminerBody>(view);
    case 'r':
      return row(view);
    case 'g': {
      const auto keyring = ledger::Keyring::from_bytes(view);
      must(!keyring || keyring->slots().size() <= ledger::slot_count_max, "a keyring holds so many slots at most");
      return;
    }
    case 'o':
      return operations(bytes);
    case 'c':
      return changed(view);
    default:
      return;
  }
}

}  // namespace limbledger::fuzz

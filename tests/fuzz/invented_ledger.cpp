#include "tests/fuzz/invented_ledger.hpp"

#include "core/reference/edition.hpp"
#include "core/service/call.hpp"
#include "core/wire/parse.hpp"
#include "core/wire/write.hpp"
#include "rpc/program/examples/talk.hpp"
#include "tests/fuzz/targets.hpp"

#include <algorithm>
#include <array>

namespace limbledger::fuzz {

namespace {

constexpr std::string_view fuzz_passphrase = "four invented words here";

// What ends the exam or the session, or rests on that, is left to the bytes.
constexpr std::array left_out{"exam.sign", "addendum.record", "plan.follow",  "outcome.record",   "letter.write",    "exam.move",       "exam.swap_sides",
                              "exam.transfer", "exam.withdraw", "finding.withdraw", "ledger.lock", "ledger.verify", "examiner.add", "exam.countersign",
                              "token.make", "token.list", "token.end", "session.end", "form.write", "form.describe", "note.write", "take_home.write", "document.assess"};

struct Made {
  ledger::Bytes keyring;
  std::vector<ledger::Row> rows;
  std::vector<ledger::Head> heads;
  ledger::Meta meta;
  std::uint64_t drawn = 0;
  std::map<std::string, std::string, std::less<>> kept;
};

// As written; empty where there is none.
std::string value_at(const wire::Document& document, std::string_view pointer) {
  const wire::Node* node = document.at_pointer(pointer);
  return node == nullptr ? std::string{} : std::string(node->raw);
}

std::string filled_from(std::string_view text, const std::map<std::string, std::string, std::less<>>& kept) {
  std::string out;
  while (!text.empty()) {
    const std::size_t start = text.find("\"@");
    out += text.substr(0, start);
    if (start == std::string_view::npos) {
      break;
    }
    text.remove_prefix(start);
    const std::size_t end = text.find('"', 2);
    const auto found = end == std::string_view::npos ? kept.end() : kept.find(text.substr(2, end - 2));
    out += found == kept.end() ? text.substr(0, 2) : std::string_view(found->second);
    text.remove_prefix(found == kept.end() ? 2 : end + 1);
  }
  return out;
}

void open_desk(Desktop& into, const ledger::Bytes& keyring) {
  auto desk = service::Desk::open(into.store, into.world, *reference::built_in_edition(), keyring);
  must(desk.has_value(), "the invented ledger opens");
  into.desk = std::move(*desk);
  into.desk->keeps_keyring([](const ledger::Bytes&) { return Result<void>(); });
  must(into.desk->unlock("", fuzz_passphrase).has_value(), "the invented ledger unlocks");
  into.context.desk = into.desk.get();
  into.context.edition = reference::built_in_edition();
  into.context.tokens = &into.tokens;
}

Made make_once() {
  Made out;
  Desktop at;
  service::NewLedger wanted;
  wanted.examiner_label = "Amina Invented";
  wanted.passphrase = fuzz_passphrase;
  wanted.kind = service::LedgerKind::demonstration;
  wanted.argon_passes = 1;
  wanted.argon_kib = 8;
  const auto made = service::make_ledger(at.store, at.world, wanted);
  must(made.has_value() && reference::built_in_edition() != nullptr, "the invented ledger is made");
  out.keyring = made->keyring;
  open_desk(at, out.keyring);
  out.kept = {{"passphrase", wire::quoted(fuzz_passphrase)}, {"code", wire::quoted(made->recovery_code)}};
  for (const rpc::Line& line : rpc::example_talk()) {
    if (std::find(left_out.begin(), left_out.end(), line.method) != left_out.end()) {
      continue;
    }
    const std::string params = filled_from(line.params, out.kept);
    const auto sent = wire::parse(params);
    const auto result = service::call(service::methods(), at.context, line.method, *sent, &sent->root());
    const auto answer = result ? wire::parse(*result) : Result<wire::Document>(result.error());
    for (const rpc::Kept& part : line.keep) {
      if (answer) {
        out.kept[std::string(part.name)] = value_at(*answer, part.pointer);
      }
    }
  }
  must(out.kept.contains("exam") && out.kept.contains("second"), "the talk opened two exams");
  // What later lines of the talk read anew.
  out.kept["heads"] = out.kept["revision"];
  out.kept["referral"] = out.kept["plan_item"];
  at.desk.reset();
  const auto heads = at.store.heads();
  must(heads.has_value(), "a store in memory has its heads");
  out.heads = heads->newest;
  out.meta = heads->meta;
  for (const ledger::Head& head : out.heads) {
    const auto rows = at.store.read(head.replica, 1, head.seq, SIZE_MAX);
    must(rows.has_value(), "a store in memory has its rows");
    out.rows.insert(out.rows.end(), rows->begin(), rows->end());
  }
  out.drawn = at.world.count;
  return out;
}

const Made& made() {
  static const Made once = make_once();
  return once;
}

}  // namespace

ledger::Reading StillWorld::now() { return {1795515300000, 0, {1, 2, 3, 4, 5, 6, 7, 8}, ledger::ClockQuality::person}; }  // 2026-11-24T10:15:00Z

void StillWorld::random(std::span<std::uint8_t> bytes) {
  for (std::uint8_t& byte : bytes) {
    std::uint64_t mixed = (++count * 0x9E3779B97F4A7C15U);
    mixed = (mixed ^ (mixed >> 30U)) * 0xBF58476D1CE4E5B9U;
    mixed = (mixed ^ (mixed >> 27U)) * 0x94D049BB133111EBU;
    byte = static_cast<std::uint8_t>(mixed >> 56U);
  }
}

std::unique_ptr<Desktop> new_desktop() {
  auto out = std::make_unique<Desktop>();
  out->world.count = made().drawn;
  must(out->store.append(made().rows, made().heads, made().meta).has_value(), "a store in memory takes rows");
  open_desk(*out, made().keyring);
  return out;
}

std::string filled(std::string_view text) { return filled_from(text, made().kept); }

std::string kept(std::string_view name) {
  const auto found = made().kept.find(name);
  return found == made().kept.end() ? std::string{} : found->second;
}

const ledger::Bytes& keyring_file() { return made().keyring; }

}  // namespace limbledger::fuzz

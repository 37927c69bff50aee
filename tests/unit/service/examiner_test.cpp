// examiner.add: the printed code, and it alone, makes a slot for one more examiner. Rules of our own ledger: who signs is told
// apart by key and id, no slot is taken away, a passphrase appears nowhere, and a guess at the code waits as any other does.
#include "core/ledger/keys/keyring.hpp"
#include "core/ledger/log/log.hpp"
#include "tests/unit/service/desk_fixture.hpp"

namespace limbledger::service::test {

namespace {

constexpr std::string_view new_passphrase = "four words quite apart";

struct Kept {
  DeskFixture fixture;
  ledger::Bytes file;
  bool full = false;

  Kept() { listen(); }
  void listen() {
    fixture.desk->keeps_keyring([this](const ledger::Bytes& bytes) -> Result<void> {
      if (full) {
        return wire::Fault{"ledger.read_only", ""};
      }
      file.assign(bytes.begin(), bytes.end());
      return {};
    });
  }
  [[nodiscard]] Result<std::string> add(std::string_view code, std::string_view label, std::string_view words = new_passphrase) const {
    return fixture.call("examiner.add", R"({"code":")" + std::string(code) + R"(","examiner":")" + std::string(label) + R"(","passphrase":")" +
                                            std::string(words) + "\"}");
  }
  [[nodiscard]] Result<std::string> unlock(std::string_view label, std::string_view words) const {
    return fixture.call("ledger.unlock", R"({"examiner":")" + std::string(label) + R"(","passphrase":")" + std::string(words) + "\"}");
  }
};

}  // namespace

TEST_CASE("with the printed code a device whose passphrases are lost gets an examiner who records and signs under an own id") {
  Kept kept;
  DeskFixture& fixture = kept.fixture;
  fixture.desk->lock();
  const auto added = kept.add(fixture.made.recovery_code, "Second Invented");
  REQUIRE(codes_of(added) == "answered");
  CHECK(fixture.desk->locked());
  const std::string id = at(*added, "/examiner");
  CHECK(id != fixture.made.examiner.to_text());
  CHECK(at(*added, "/repeat").empty());
  // What was written is what a start reads.
  fixture.made.keyring = kept.file;
  fixture.reopen();
  CHECK(at(fixture.ok("health.check", "{}"), "/examiners") == R"(["Invented Examiner","Second Invented"])");
  const auto opened = kept.unlock("Second Invented", new_passphrase);
  REQUIRE(codes_of(opened) == "answered");
  CHECK(at(*opened, "/examiner") == id);
  CHECK(at(*opened, "/opened_by") == "passphrase");
  const std::string exam = fixture.ok("exam.open", R"({"complaint":"free","setting":"outreach","request":")" + request_id(1) + "\"}");
  CHECK(at(exam, "/exam/examiner") == id);
  CHECK(fixture.desk->log().index().examiners.size() == 2);
  const std::string verified = fixture.ok("ledger.verify", "{}");
  CHECK(at(verified, "/damage") == "[]");
  // The one before opens as before, with the old id.
  fixture.desk->lock();
  CHECK(at(*kept.unlock("Invented Examiner", passphrase), "/examiner") == fixture.made.examiner.to_text());
}

TEST_CASE("HC-060: called away in the middle, a colleague goes on: what is recorded from then on is the colleague's, what stood before keeps its author") {
  Kept kept;
  DeskFixture& fixture = kept.fixture;
  const std::string first = fixture.made.examiner.to_text();
  const std::string second = at(*kept.add(fixture.made.recovery_code, "Second Invented"), "/examiner");
  const std::string opened = fixture.ok("exam.open", R"({"complaint":"free","setting":"outreach","request":")" + request_id(1) + "\"}");
  const std::string exam = at(opened, "/exam/exam");
  const auto record = [&](unsigned number, std::string_view item, const std::string& seen) {
    return fixture.ok("finding.record", R"({"exam":")" + exam + R"(","findings":[{"item":")" + std::string(item) +
                                            R"(","side":"left","value":{"kind":"answer","answer":"no"}}],"seen":)" + seen + R"(,"request":")" +
                                            request_id(number) + "\"}");
  };
  const std::string before = record(2, "knee.patella_tender", at(opened, "/revision"));
  fixture.world.pass(Desk::idle_ms);
  CHECK(codes_of(fixture.call("exam.read", R"({"exam":")" + exam + "\"}")) == "ledger.locked");
  REQUIRE(codes_of(kept.unlock("Second Invented", new_passphrase)) == "answered");
  record(3, "knee.fibular_head_tender", at(before, "/revision"));
  const std::string read = fixture.ok("exam.read", R"({"exam":")" + exam + "\"}");
  CHECK(at(read, "/exam/examiner") == first);
  for (const std::string place : {"0", "1"}) {
    const bool old = at(read, "/exam/findings/" + place + "/item") == "knee.patella_tender";
    CHECK(at(read, "/exam/findings/" + place + "/entered_by") == (old ? first : second));
  }
}

TEST_CASE("the same call again names the same examiner, and another passphrase under a name that is there is refused") {
  Kept kept;
  const std::string& code = kept.fixture.made.recovery_code;
  const std::string first = at(*kept.add(code, "Second Invented"), "/examiner");
  const ledger::Bytes file = kept.file;
  const auto again = kept.add(code, "Second Invented");
  REQUIRE(codes_of(again) == "answered");
  CHECK(at(*again, "/examiner") == first);
  CHECK(at(*again, "/repeat") == "true");
  const auto taken = kept.add(code, "Second Invented", "another passphrase");
  CHECK(codes_of(taken) == "examiner.taken");
  CHECK(path_of(taken) == "/examiner");
  CHECK(codes_of(kept.add(code, "Invented Examiner")) == "examiner.taken");
  CHECK(kept.file == file);
}

TEST_CASE("neither a passphrase nor a wrong code adds anybody, and wrong codes wait") {
  Kept kept;
  const auto with_passphrase = kept.add(passphrase, "Second Invented");
  CHECK(codes_of(with_passphrase) == "ledger.passphrase");
  CHECK(path_of(with_passphrase) == "/code");
  const auto waits = kept.add(kept.fixture.made.recovery_code, "Second Invented");
  CHECK(codes_of(waits) == "ledger.wait");
  CHECK(path_of(waits) == "/code");
  CHECK(codes_of(kept.unlock("Invented Examiner", passphrase)) == "ledger.wait");
  kept.fixture.world.pass(1000);
  DeskFixture other(LedgerKind::clinic, 7);
  CHECK(codes_of(kept.add(other.made.recovery_code, "Second Invented")) == "ledger.passphrase");
  kept.fixture.world.pass(2000);
  CHECK(kept.file.empty());
  CHECK(codes_of(kept.add(kept.fixture.made.recovery_code, "Second Invented")) == "answered");
  for (const Scope scope : {Scope::kiosk, Scope::viewer, Scope::sync}) {
    kept.fixture.caller.scope = scope;
    CHECK(codes_of(kept.add(kept.fixture.made.recovery_code, "Third Invented")) == "token.scope");
  }
}

TEST_CASE("a short passphrase and a long name are refused together, and where the keyring cannot be written nobody is added") {
  Kept kept;
  const std::string& code = kept.fixture.made.recovery_code;
  CHECK(codes_of(kept.add(code, "A name of over 24 bytes..", "eleven char")) == "limit.text passphrase.short");
  kept.full = true;
  CHECK(codes_of(kept.add(code, "Second Invented")) == "ledger.read_only");
  CHECK(at(kept.fixture.ok("health.check", "{}"), "/examiners") == R"(["Invented Examiner"])");
  kept.fixture.reopen();  // nothing keeps a keyring here
  CHECK(codes_of(kept.add(code, "Second Invented")) == "ledger.read_only");
}

TEST_CASE("the new slot costs a guesser what the dearest slot of the device does") {
  Kept kept;
  REQUIRE(codes_of(kept.add(kept.fixture.made.recovery_code, "Second Invented")) == "answered");
  const auto keyring = ledger::Keyring::from_bytes(kept.file);
  REQUIRE(keyring.has_value());
  const auto slots = keyring->slots();
  REQUIRE(slots.size() == 3);
  CHECK(slots.back().cost == slots.front().cost);
  CHECK(keyring->generation() == 2);
}

}  // namespace limbledger::service::test

// Parcels of a program that serves: written to and taken from a medium while calls go on, with every refusal. Logic tests of our own
// rules.
#include "tests/unit/rpc/exchange/served_house.hpp"

#include <sys/stat.h>

#include <fstream>
#include <iterator>

namespace limbledger::rpc::exchange_test {

namespace {

[[nodiscard]] std::string content_of(const std::string& path) {
  std::ifstream in(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

void put_content(const std::string& path, const std::string& content) { std::ofstream(path, std::ios::binary) << content; }

// What the errand came to, after its end.
[[nodiscard]] std::string run_errand(ServedHouse& house, std::string_view method, const std::string& params) {
  const auto begun = house.call(method, params);
  REQUIRE_MESSAGE(begun.has_value(), codes_of(begun));
  until({&house}, [&] { return house.state() != "running"; });
  return *house.call("exchange.read");
}

[[nodiscard]] std::string path_param(const std::string& path) { return R"({"path":")" + path + R"("})"; }

}  // namespace

TEST_CASE("a parcel goes from one program that serves to another, and what it brings shows at once") {
  service::test::DeskFixture clinic;
  ServedHouse hub(*clinic.desk, true);
  const auto newcomer = let_in(hub, clinic.made.recovery_code);
  ServedHouse tablet(*newcomer->desk, false);
  const std::string here = register_one(tablet, 12, "Invented Tabletward");
  CHECK(at(*hub.call("person.find"), "/people/0").empty());
  const Scratch stick;
  const std::string path = stick.path("friday.parcel");

  const std::string written = run_errand(tablet, "parcel.write", path_param(path));
  CHECK(at(written, "/errand/state") == "done");
  CHECK(at(written, "/errand/bytes") == std::to_string(std::filesystem::file_size(path)));
  CHECK_FALSE(std::filesystem::exists(path + ".part"));
  const std::string whole = content_of(path);
  const std::string entries = at(*hub.call("ledger.verify"), "/entries");
  put_content(stick.path("changed.parcel"), whole.substr(0, whole.size() / 2) + static_cast<char>(whole[whole.size() / 2] ^ 1) + whole.substr(whole.size() / 2 + 1));
  const std::string changed = run_errand(hub, "parcel.take", path_param(stick.path("changed.parcel")));
  CHECK(at(changed, "/errand/state") == "failed");
  CHECK(at(changed, "/errand/fault/code") == "parcel.changed");
  CHECK(at(changed, "/errand/fault/expected").find("chunk ") != std::string::npos);
  put_content(stick.path("cut.parcel"), whole.substr(0, whole.size() - 10));
  CHECK(at(run_errand(hub, "parcel.take", path_param(stick.path("cut.parcel"))), "/errand/fault/code") == "parcel.cut_short");
  put_content(stick.path("none.parcel"), "something else, long enough to have a front of a hundred and forty-four bytes" + std::string(100, ' '));
  CHECK(at(run_errand(hub, "parcel.take", path_param(stick.path("none.parcel"))), "/errand/fault/code") == "parcel.format");
  CHECK(at(run_errand(hub, "parcel.take", path_param(stick.path("missing.parcel"))), "/errand/fault/code") == "parcel.unreadable");
  CHECK(at(*hub.call("ledger.verify"), "/entries") == entries);
  service::test::DeskFixture other(service::LedgerKind::clinic, 2);
  ServedHouse foreign(*other.desk, false);
  CHECK(at(run_errand(foreign, "parcel.take", path_param(path)), "/errand/fault/code") == "parcel.foreign");

  const std::string taken = run_errand(hub, "parcel.take", path_param(path));
  CHECK(at(taken, "/errand/state") == "done");
  CHECK(at(taken, "/errand/whole") == "true");
  CHECK(at(taken, "/errand/entries") == at(written, "/errand/entries"));
  CHECK(std::stoi(at(taken, "/errand/taken")) > 0);
  CHECK_FALSE(at(*hub.call("person.find"), "/people/0").empty());
  CHECK(hub.call("person.read", R"({"person":")" + here + R"("})").has_value());
  CHECK(hub.call("changes.read", R"({"cursor":")" + at(taken, "/errand/cursor") + R"("})")->find(here) != std::string::npos);
  const std::string again = run_errand(hub, "parcel.take", path_param(path));
  CHECK(at(again, "/errand/state") == "done");
  CHECK(at(again, "/errand/taken") == "0");
  const std::string part = run_errand(hub, "parcel.take", R"({"path":")" + stick.path("cut.parcel") + R"(","cut":true})");
  CHECK(at(part, "/errand/state") == "done");
  CHECK(at(part, "/errand/whole") == "false");
}

TEST_CASE("a parcel is written to no path that is none, over no other file, and to no medium that does not take it") {
  service::test::DeskFixture clinic;
  ServedHouse house(*clinic.desk, false);
  const Scratch stick;
  for (const std::string path : {"friday.parcel", "/", "/tmp/", "/tmp/.parcel", "/tmp/friday", "/tmp/friday.parcel/", "/tmp/fri\\nday.parcel"}) {
    CAPTURE(path);
    const auto refused = house.call("parcel.write", path_param(path));
    CHECK(codes_of(refused) == "parcel.path");
    CHECK(path_of(refused) == "/path");
  }
  CHECK(codes_of(house.call("parcel.take", path_param("friday.parcel"))) == "parcel.path");
  const std::string other = stick.path("notes.parcel");
  put_content(other, "somebody's notes");
  const auto over = house.call("parcel.write", path_param(other));
  CHECK(codes_of(over) == "parcel.there");
  CHECK(path_of(over) == "/path");
  CHECK(content_of(other) == "somebody's notes");
  // Nor over a parcel: it may be the only copy of a day.
  const std::string friday = stick.path("friday.parcel");
  CHECK(at(run_errand(house, "parcel.write", path_param(friday)), "/errand/state") == "done");
  const std::string first = content_of(friday);
  CHECK(codes_of(house.call("parcel.write", path_param(friday))) == "parcel.there");
  CHECK(content_of(friday) == first);
  // What was added behind its end is no part of it, and is told.
  put_content(stick.path("longer.parcel"), first + "seven b");
  const std::string longer = run_errand(house, "parcel.take", path_param(stick.path("longer.parcel")));
  CHECK(at(longer, "/errand/state") == "done");
  CHECK(at(longer, "/errand/whole") == "true");
  CHECK(at(longer, "/errand/after_end") == "7");
  CHECK(at(run_errand(house, "parcel.take", path_param(friday)), "/errand/after_end").empty());
  const std::string nowhere = run_errand(house, "parcel.write", path_param(stick.path("missing/friday.parcel")));
  CHECK(at(nowhere, "/errand/state") == "failed");
  CHECK(at(nowhere, "/errand/fault/code") == "parcel.unreadable");
  CHECK(at(nowhere, "/errand/fault/got") == "No such file or directory");
  // A pipe is waited for by nobody.
  REQUIRE(::mkfifo(stick.path("pipe.parcel").c_str(), 0600) == 0);
  CHECK(at(run_errand(house, "parcel.take", path_param(stick.path("pipe.parcel"))), "/errand/fault/code") == "parcel.unreadable");
  CHECK(codes_of(service::test::call(*clinic.desk, "parcel.write", path_param("/tmp/friday.parcel"))) == "exchange.not_served");
}

TEST_CASE("a parcel that is locked in the middle or ended leaves no file, and is written whole the next time") {
  service::test::DeskFixture clinic;
  ServedHouse house(*clinic.desk, false);
  register_one(house, 11, "Invented Person");
  const Scratch stick;
  const std::string path = stick.path("friday.parcel");
  REQUIRE(house.call("parcel.write", path_param(path)).has_value());
  REQUIRE(house.call("ledger.lock").has_value());
  CHECK(codes_of(house.call("parcel.write", path_param(path))) == "ledger.locked");
  until({&house}, [&] { return house.state() != "running"; });
  CHECK(at(*house.call("exchange.read"), "/errand/fault/code") == "ledger.locked");
  CHECK(std::filesystem::is_empty(stick.path()));
  clinic.unlock();
  REQUIRE(house.call("parcel.write", path_param(path)).has_value());
  CHECK(at(*house.call("exchange.end"), "/ended") == "true");
  until({&house}, [&] { return house.state() != "running"; });
  CHECK(house.state() == "ended");
  CHECK(std::filesystem::is_empty(stick.path()));
  CHECK(at(run_errand(house, "parcel.write", path_param(path)), "/errand/state") == "done");
}

TEST_CASE("a program that ends in the middle of an errand lets go of it, and a folder whose names cannot be kept is said") {
  service::test::DeskFixture clinic;
  const Scratch stick;
  {
    ServedHouse house(*clinic.desk, true);
    REQUIRE(house.call("parcel.write", path_param(stick.path("friday.parcel"))).has_value());
  }
  CHECK(std::filesystem::is_empty(stick.path()));
  CHECK(flush_folder_of(stick.path("anything")));
  CHECK(flush_folder_of("a name in this folder"));
  CHECK_FALSE(flush_folder_of(stick.path("missing/anything")));
}

}  // namespace limbledger::rpc::exchange_test

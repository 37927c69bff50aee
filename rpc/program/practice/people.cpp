#include "rpc/program/practice/people.hpp"

#include "core/reference/edition.hpp"
#include "core/service/call.hpp"
#include "core/wire/parse.hpp"

#include <array>
#include <string>

namespace limbledger::rpc {

namespace {

// Of each age and sex that the rules and norms tell apart, and one whose age is known only roughly.
constexpr std::array<std::string_view, 7> invented_people{
    R"({"names":[{"text":"Abla Invented"}],"birth":{"date":"2020-02"},"sex":"female","norm_sex":"female","home":"Practice Ford")",
    R"({"names":[{"text":"Bamba Invented"}],"birth":{"date":"2013-05"},"sex":"male","norm_sex":"male","home":"Practice Ford")",
    R"({"names":[{"text":"Chipo Invented"}],"birth":{"date":"1998"},"sex":"female","norm_sex":"female","home":"Practice Hill")",
    R"({"names":[{"text":"Dele Invented"}],"birth":{"date":"1984-11"},"sex":"male","norm_sex":"male","home":"Practice Hill")",
    R"({"names":[{"text":"Efua Invented"}],"birth":{"date":"1962"},"sex":"female","norm_sex":"female","home":"Practice Ford")",
    R"({"names":[{"text":"Farai Invented"}],"birth":{"age_years":75,"plus_minus":5,"on":"2026-11-24"},"sex":"male","norm_sex":"male","home":"Practice Hill")",
    R"({"names":[{"text":"Gyasi Invented"}],"sex":"unknown","norm_sex":"unspecified","home":"Practice Ford")",
};

}  // namespace

Result<std::size_t> register_invented_people(ledger::LogStore& store, ledger::World& world, const service::MadeLedger& made, std::string_view passphrase) {
  const reference::Edition* edition = reference::built_in_edition();
  if (edition == nullptr) {
    return wire::Fault{"internal.failure", "", "facts that load"};
  }
  const auto desk = service::Desk::open(store, world, *edition, made.keyring);
  if (!desk) {
    return desk.error();
  }
  if (auto unlocked = (*desk)->unlock("", passphrase); !unlocked) {
    return unlocked.error();
  }
  service::Context context;
  context.desk = desk->get();
  context.edition = edition;
  for (const std::string_view person : invented_people) {
    model::RequestId request;
    world.random(request.bytes);
    const std::string params = std::string(person) + R"(,"request":")" + request.to_text() + R"(","confirmed":["value.unusual"]})";
    const auto parsed = wire::parse(params);
    if (!parsed) {
      return parsed.error();
    }
    if (auto registered = service::call(service::methods(), context, "person.register", *parsed, &parsed->root()); !registered) {
      return registered.error();
    }
  }
  return invented_people.size();
}

}  // namespace limbledger::rpc

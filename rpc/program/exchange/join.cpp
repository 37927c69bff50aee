// limbledger join: this device becomes one of a clinic's. Nothing is written before a person has said that both screens show the same.
#include "core/service/exchange/enrolment.hpp"
#include "rpc/access/calibrate.hpp"
#include "rpc/program/commands.hpp"
#include "rpc/program/exchange/carried.hpp"
#include "rpc/program/exchange/new_folder.hpp"
#include "rpc/program/lock_file.hpp"
#include "rpc/program/passphrase.hpp"
#include "rpc/transport/tls.hpp"

#include <unistd.h>

#include <iostream>

namespace limbledger::rpc {

namespace {

constexpr unsigned ask_again_us = 500'000;
constexpr int asked_max = 1200;  // ten minutes for a person to answer at the hub

[[nodiscard]] TlsReply post_or_end(TlsCaller& caller, const HubAddress& at, const ledger::Bytes& body) {
  std::string why;
  auto reply = caller.post(enrol_target, body, why);
  if (!reply) {
    throw Problem(ExitCode::unavailable, at.host + ": the hub does not answer (" + why + ")\n  what to do: start it with --enrol, and join again");
  }
  if (reply->status >= 400) {
    throw problem_of(refusal_in(reply->body, reply->status), at.host);
  }
  return std::move(*reply);
}

}  // namespace

ExitCode join_clinic(const Options& options) {
  const HubAddress at = read_address(options.with);
  MachineWorld world;
  service::NewLedger wanted;
  wanted.examiner_label = examiner_label(options);
  wanted.durability = ledger::Durability::disk;
  const Folder folder = make_folder(options.folder);
  const LockFile lock(folder.lock());
  wanted.passphrase = new_passphrase(options, world);
  auto joining = service::Joining::begin(world);
  if (!joining) {
    throw problem_of(joining.error(), folder.path);
  }
  std::string why;
  bool is_other_key = false;
  const auto caller = TlsCaller::connect(at.host, at.port, std::nullopt, {}, why, is_other_key);
  if (!caller) {
    throw Problem(ExitCode::unavailable, at.host + ": the hub does not answer (" + why + ")\n  what to do: start it with: limbledger hub --enrol; or unlock the program that serves there with --hub, and begin an enrolment in it");
  }
  const TlsReply card = post_or_end(*caller, at, (*joining)->commit());
  const auto shown = (*joining)->show(card.body);
  if (!shown) {
    throw problem_of(shown.error(), at.host);
  }
  // The digits are made of the card: whoever holds this end of the connection has its key, or stands between.
  if ((*joining)->clinic_device_key() != caller->key()) {
    throw problem_of(wire::Fault("enrol.code", ""), at.host);
  }
  if ((*joining)->is_demonstration() != options.demonstration) {
    throw problem_of(wire::Fault("exchange.purpose", ""), at.host);
  }
  static_cast<void>(post_or_end(*caller, at, *shown));
  std::cout << "The hub shows six digits; this device has:\n\n    " << (*joining)->digits() << "\n\nAre they the same on both screens? Answer yes or no:" << std::endl;
  std::string word;
  if (!std::getline(std::cin, word) || word != "yes") {
    std::cout << "Nothing was made.\n";
    return ExitCode::bad_answer;
  }
  TlsReply answer = post_or_end(*caller, at, {});
  for (int i = 0; answer.status == 202; ++i) {
    if (i == asked_max) {
      throw Problem(ExitCode::unavailable, at.host + ": nobody has answered at the hub\n  what to do: join again, with somebody at both screens");
    }
    ::usleep(ask_again_us);
    answer = post_or_end(*caller, at, {});
  }
  if (options.demonstration) {
    wanted.argon_passes = 2;
    wanted.argon_kib = 19 * 1024;
  } else {
    const ArgonCost cost = calibrate(measure_cost);
    wanted.argon_passes = cost.passes;
    wanted.argon_kib = cost.kib;
  }
  store::MemoryStore made_in;
  const auto made = (*joining)->finish(made_in, answer.body, wanted);
  if (!made) {
    throw problem_of(made.error(), folder.path);
  }
  // The keys first: a store without them would be sealed for ever.
  write_file(folder.keyring(), {reinterpret_cast<const char*>(made->keyring.data()), made->keyring.size()});
  write_store(folder, made_in, made->clinic);
  if (options.demonstration) {
    write_file(folder.demo_passphrase(), wanted.passphrase + "\n");
  }
  wipe(wanted.passphrase);
  std::cout << "This device belongs to the clinic. Its ledger is in " << folder.path << "\nNext: limbledger exchange --ledger " << folder.path << " --with " << options.with << "\n";
  return ExitCode::done;
}

}  // namespace limbledger::rpc

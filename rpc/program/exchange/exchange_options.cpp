#include "rpc/program/exchange/exchange_options.hpp"

#include <CLI/CLI.hpp>

namespace limbledger::rpc {

namespace {

constexpr const char* ledger_help = "folder of the ledger (default: as for serve)";
constexpr const char* passphrase_help = "read the passphrase, one line, from this file descriptor; without it the terminal is asked";

void add_hub(CLI::App& app, Options& options) {
  CLI::App* command = app.add_subcommand("hub", "Answer the other devices of the clinic: take what is new on them, give what they lack.");
  command->add_option("--ledger", options.folder, ledger_help);
  command->add_option("--address", options.address, "this machine's own address to answer at, in numbers (default: all of them)");
  command->add_option("--port", options.hub_port, "port to answer at; 0: any that is free")->required();
  auto* enrols = command->add_flag("--enrol", options.enrols, "let one new device in, after somebody has compared six digits on both screens");
  command->add_option("--passphrase-fd", options.passphrase_fd, passphrase_help)->check(CLI::Range(3, 1'000'000));
  command->add_option("--code-fd", options.code_fd, "read the recovery code, one line, from this file descriptor; without it the terminal is asked")
      ->needs(enrols)
      ->check(CLI::Range(3, 1'000'000));
  command->footer(
      "Examples:\n"
      "  limbledger hub --ledger /srv/clinic --port 7443\n"
      "  limbledger hub --ledger /srv/clinic --port 7443 --enrol\n\n"
      "The passphrase opens the ledger once, for this device's own key; after that the hub is locked and reads nobody's record.\n"
      "With --enrol it is kept open, and asks for the printed recovery code, until the new device was let in or turned away;\n"
      "the answer, the six digits that the new device shows or no, is read from the standard input.\n\n"
      "The connection is TLS 1.3. No certificate is bought or installed: each device knows the hub by the key that was part of\n"
      "the six digits. Any number of tablets may come at one time; SIGTERM and SIGINT stop it, and an exchange that is broken\n"
      "off goes on at the next one.\n\n"
      "What disagrees once the day has come home: limbledger conflicts, when the hub has stopped.");
  command->callback([&options] { options.command = Command::hub; });
}

void add_join(CLI::App& app, Options& options) {
  CLI::App* command = app.add_subcommand("join", "Make this device one of a clinic's, with a ledger in a new folder.");
  command->add_option("DIR", options.folder, "a new or empty folder on this machine's own disk")->required();
  command->add_option("--with", options.with, "where the hub answers: https://HOST:PORT")->required();
  command->add_option("--examiner", options.examiner, "name of the examiner of this device, 24 bytes at most (default: examiner)");
  auto* demonstration = command->add_flag("--demo", options.demonstration, "for a demonstration clinic: unlocks by itself, so it protects nothing");
  command->add_option("--passphrase-fd", options.passphrase_fd, passphrase_help)->excludes(demonstration)->check(CLI::Range(3, 1'000'000));
  command->footer(
      "Example:\n"
      "  limbledger join ~/.local/share/limbledger --with https://192.168.1.20:7443 --examiner Amina\n\n"
      "The hub is started with --enrol. Both screens show six digits; somebody who sees both says yes here and types them at\n"
      "the hub. Where the digits differ, somebody stands between the two: say no. This device gets no recovery code of its own: the clinic has one.");
  command->callback([&options] { options.command = Command::join; });
}

void add_with_hub(CLI::App& app, Options& options) {
  CLI::App* command = app.add_subcommand("exchange", "Give the hub what it lacks and take what is new there.");
  command->add_option("--ledger", options.folder, ledger_help);
  command->add_option("--with", options.with, "where the hub answers: https://HOST:PORT")->required();
  command->add_option("--passphrase-fd", options.passphrase_fd, passphrase_help)->check(CLI::Range(3, 1'000'000));
  command->footer(
      "Example:\n"
      "  limbledger exchange --ledger ~/.local/share/limbledger --with https://192.168.1.20:7443\n\n"
      "It may be broken off and begun again at any time: what was taken stays taken, and nothing is taken twice. It ends by\n"
      "saying how many entries of this device the hub holds on its disk.\n\n"
      "Exit code 0: both hold the same. 1: not yet; what is missing is said. 4: the hub does not answer.");
  command->callback([&options] { options.command = Command::exchange; });
}

void add_parcel(CLI::App& app, Options& options) {
  CLI::App* command = app.add_subcommand("parcel", "Carry entries between the devices of a clinic in a file, on a stick.");
  command->require_subcommand(1);
  command->footer(
      "Examples:\n"
      "  limbledger parcel write /media/stick/friday.parcel --ledger ~/.local/share/limbledger\n"
      "  limbledger parcel read /media/stick/friday.parcel --ledger /srv/clinic\n\n"
      "A parcel is sealed whole: who finds the stick reads nothing. It may be read again, in any order with others, by any device of\n"
      "the clinic. Writing it ends by reading it back from the stick; until then the file is named FILE.part.");
  const auto deed = [&](const char* name, const char* what, Command kind) {
    CLI::App* one = command->add_subcommand(name, what);
    one->add_option("FILE", options.file, "the parcel's file")->required();
    one->add_option("--ledger", options.folder, ledger_help);
    one->add_option("--passphrase-fd", options.passphrase_fd, passphrase_help)->check(CLI::Range(3, 1'000'000));
    one->callback([&options, kind] { options.command = kind; });
    return one;
  };
  deed("write", "Write all that this device holds.", Command::parcel_write)
      ->add_option("--for", options.holder, "a replica (26 letters, as exchange shows it): leave out what its last receipt says that it holds");
  CLI::App* read = deed("read", "Take what is new in a parcel. Of one with a changed byte, or cut short, nothing is taken.", Command::parcel_read);
  read->add_flag("--cut", options.cut_too, "of one that was cut short take what is whole, up to its last signed commit");
}

}  // namespace

void add_exchange(CLI::App& app, Options& options) {
  add_hub(app, options);
  add_join(app, options);
  add_with_hub(app, options);
  add_parcel(app, options);
}

}  // namespace limbledger::rpc

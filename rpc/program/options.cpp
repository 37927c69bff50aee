#include "rpc/program/options.hpp"

#include "core/report/text.hpp"
#include "core/service/call.hpp"
#include "core/service/methods/ledger/session.hpp"
#include "core/wire/read.hpp"
#include "rpc/access/scope.hpp"
#include "rpc/program/exchange/exchange_options.hpp"
#include "rpc/program/problem.hpp"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <iostream>
#include <map>
#include <sstream>

namespace limbledger::rpc {

namespace {

const std::map<std::string, Framing> framings{{"lines", Framing::lines}, {"headers", Framing::headers}};

// All but sync, which speaks to another ledger and never over the standard input.
[[nodiscard]] std::map<std::string, service::Scope> scopes_on_stdio() {
  std::map<std::string, service::Scope> words;
  for (const ScopeWord& one : scope_words) {
    if (one.scope != service::Scope::sync) {
      words.emplace(one.word, one.scope);
    }
  }
  return words;
}

constexpr std::string_view fd_help =
    "read the passphrase, one line, from this file descriptor; with --passphrase-fd 3 3<FILE it comes from FILE";

void add_new(CLI::App& app, Options& options) {
  CLI::App* command = app.add_subcommand("new", "Make a ledger in a new folder and print its recovery code once.");
  command->add_option("DIR", options.folder, "a new or empty folder on this machine's own disk")->required();
  auto* demonstration = command->add_flag("--demo", options.demonstration, "for showing the program: invented people only; unlocks by itself, so it protects nothing");
  command->add_flag("--practice", options.practice, "for teaching: invented people only; never exchanged with another ledger")->excludes(demonstration);
  command->add_option("--examiner", options.examiner, "name of the first examiner, 24 bytes at most (default: examiner)");
  command->add_option("--passphrase-fd", options.passphrase_fd, std::string(fd_help) + ". Without it the terminal is asked")->excludes(demonstration)->check(CLI::NonNegativeNumber);
  command->footer(
      "Examples:\n"
      "  limbledger new ~/.local/share/limbledger --examiner Amina\n"
      "  limbledger new /tmp/show --demo\n\n"
      "A ledger is a folder that holds every examination, sealed. The first examiner chooses a passphrase of 12 characters\n"
      "or more; half a second to a second is spent on each try at it.\n\n"
      "Keep the recovery code on paper, away from this machine. It opens the ledger for reading when every passphrase is\n"
      "forgotten, adds an examiner with a new one (method examiner.add), and with it the clinic can build up its ledger\n"
      "again. Nobody can make it a second time.");
  command->callback([&options] { options.command = Command::new_ledger; });
}

void add_serve(CLI::App& app, Options& options) {
  CLI::App* command = app.add_subcommand("serve", "Answer JSON-RPC 2.0 requests for one ledger, on the standard input and output or over HTTP and WebSocket.");
  CLI::Option* folder = command->add_option("--ledger", options.folder, "folder of the ledger (default: $XDG_DATA_HOME/limbledger, else ~/.local/share/limbledger)");
  CLI::Option* demonstration =
      command->add_flag("--demo", options.demonstration, "a demonstration in memory, with invented people and a clock that stands; gone when the program ends")->excludes(folder);
  command
      ->add_option_function<std::vector<std::string>>(
          "--trouble",
          [&options](const std::vector<std::string>& words) {
            for (const std::string& word : words) {
              if (!take_trouble(word, options.trouble)) {
                throw CLI::ValidationError("--trouble", "takes slow=MS, full, full=N, locked, locked=N, kill=N, kill=METHOD or clock=2001-01-01T00:00:00.000Z");
              }
            }
          },
          "for testing a front end, on a demonstration alone: slow=MS, full[=N], locked[=N], kill=N, kill=METHOD, clock=INSTANT; may be given several times")
      ->allow_extra_args(false);
  CLI::Option_group* carrier = command->add_option_group("carrier");
  carrier
      ->add_option_function<std::string>(
          "--stdio",
          [&options](const std::string& word) {
            options.stdio = true;
            options.framing = framings.at(word);
          },
          "lines: one JSON text a line; headers: Content-Length before each message")
      ->check(CLI::IsMember(framings));
  CLI::Option* http = carrier->add_option("--http", options.http_port, "port of this machine's own addresses for HTTP and WebSocket; 0: any that is free")
                          ->check(CLI::Range(0, 65535));
  carrier->require_option(1, 2);
  command->add_option("--pages", options.pages, "folder of a front end (index.html and what it loads) to be served under the same address")->needs(http);
  command->add_flag("--once", options.once, "print a link that opens one session, within two minutes")->needs(http);
  CLI::Option* hub = command->add_option("--hub", options.hub_port, "also answer the other devices of the clinic, over TLS at this port, once the ledger is unlocked; 0: any that is free")
                         ->check(CLI::Range(0, 65535))
                         ->excludes(demonstration);
  command->add_option("--hub-address", options.address, "this machine's own address to answer them at, in numbers (default: all of them)")->needs(hub);
  const auto scopes = scopes_on_stdio();
  command
      ->add_option_function<std::string>(
          "--scope", [&options, scopes](const std::string& word) { options.scope = scopes.at(word); }, "what the caller may do (default: examiner)")
      ->check(CLI::IsMember(scopes));
  command
      ->add_option_function<std::vector<std::string>>(
          "--give",
          [&options](const std::vector<std::string>& words) {
            for (const std::string& word : words) {
              const auto at = word.find('=');
              const auto* row = std::find_if(scope_words.begin(), scope_words.end(), [&](const ScopeWord& one) { return one.word == word.substr(0, at); });
              if (at == std::string::npos || at + 1 == word.size() || row == scope_words.end()) {
                throw CLI::ValidationError("--give", "takes SCOPE=FILE, with examiner, kiosk, viewer or sync before the sign");
              }
              options.give.push_back({row->scope, word.substr(at + 1)});
            }
          },
          "SCOPE=FILE: a token of its own, written to FILE for the owner alone; may be given several times")
      ->needs(http)
      ->allow_extra_args(false);
  command->add_option("--passphrase-fd", options.passphrase_fd, std::string(fd_help) + ". Without it: ledger.unlock")
      ->check(CLI::Range(3, 1'000'000));  // 0 to 2 carry messages and errors
  command->footer(
      "Example:\n"
      "  echo '{\"jsonrpc\":\"2.0\",\"method\":\"health.check\",\"id\":1}' | limbledger serve --ledger /tmp/show --stdio lines\n\n"
      "With --stdio no token is taken: --scope says what the caller may do. With --http, sidecar.json in the ledger's folder\n"
      "names the addresses and the token to send; the file is gone after a clean stop. With both, the program stops when the\n"
      "standard input ends. Others who may call get tokens of their own: --give, or limbledger token.\n\n"
      "A page in a browser may call only where this program serves it: --pages DIR. The link of --once opens it and its first\n"
      "session. The files are read at the start; scripts stand in files of their own. Under /description stands what can be\n"
      "called, for people; with --demo every method can be tried there:\n"
      "  limbledger serve --demo --http 0 --once\n\n"
      "With --hub the clinic's tablets exchange with this ledger while it is served: limbledger exchange there, or the method\n"
      "exchange.begin. A new one is let in by replica.enrol, and joins with limbledger join:\n"
      "  limbledger serve --ledger /srv/clinic --http 40211 --hub 7443\n\n"
      "--trouble shows a front end what else can happen, and is refused on a ledger for people. slow=MS: each reply comes so\n"
      "much later. full: nothing can be written. locked: the ledger locks itself, once. With =N both begin after N messages\n"
      "were answered, of whatever method. kill=METHOD, such as kill=finding.record: the first such call is carried out, and the\n"
      "program killed before it replies; kill=N: the message after N. clock=INSTANT: the program takes it for the time at its\n"
      "start: clock=2001-01-01T00:00:00.000Z is a tablet whose clock nobody set.\n\n"
      "health.check and rpc.discover are answered at once; records are read and written once the ledger is unlocked, by\n"
      "ledger.unlock or --passphrase-fd. Where nothing can be written, the ledger is read only. A reply to a writing method\n"
      "means that it is on disk. End of input, SIGTERM and SIGINT stop it.");
  command->callback([&options] { options.command = Command::serve; });
}

void add_token(CLI::App& app, Options& options) {
  CLI::App* command = app.add_subcommand("token", "Make, list and end the tokens of a program that serves a ledger over HTTP.");
  command->require_subcommand(1);
  command->footer(
      "Examples:\n"
      "  limbledger token make --ledger /tmp/show --scope viewer --minutes 60 --to /tmp/viewer\n"
      "  limbledger token make --ledger /tmp/show --scope kiosk --exam EXAM --once\n"
      "  limbledger token list --ledger /tmp/show\n"
      "  limbledger token end 3 --ledger /tmp/show\n\n"
      "It asks the program that serves, as the owner of its folder: sidecar.json names the address. A token is written to a\n"
      "file for the owner alone and printed nowhere; a link opens one session, within two minutes. A kiosk fills one exam, the\n"
      "one that is named or the first that it opens, also while the ledger is locked.");
  const auto deed = [&](const char* name, const char* what, TokenDeed kind) {
    CLI::App* one = command->add_subcommand(name, what);
    one->add_option("--ledger", options.folder, "folder of the ledger (default: as for serve)");
    one->callback([&options, kind] {
      options.command = Command::token;
      options.deed = kind;
    });
    return one;
  };
  CLI::App* make = deed("make", "Make a token.", TokenDeed::make);
  std::map<std::string, service::Scope> scopes;
  for (const ScopeWord& one : scope_words) {
    scopes.emplace(one.word, one.scope);
  }
  make->add_option_function<std::string>(
          "--scope", [&options, scopes](const std::string& word) { options.scope = scopes.at(word); }, "what its caller may do")
      ->required()
      ->check(CLI::IsMember(scopes));
  make->add_option("--exam", options.exam, "of a kiosk: the open exam that it fills");
  make->add_option("--minutes", options.minutes, "how long it is good (default: 60 of a kiosk, else a day)")->check(CLI::Range(1, 1440));
  make->add_option("--label", options.label, "where it is used, for the list; no name of a person");
  CLI::Option_group* how = make->add_option_group("how");
  how->add_option("--to", options.to, "a new file for the token");
  how->add_flag("--once", options.once, "print a link that opens one session instead");
  how->require_option(1);
  deed("list", "List the tokens of this launch, without their texts.", TokenDeed::list);
  deed("end", "End a token before its time.", TokenDeed::end)->add_option("NUMBER", options.number, "as list shows it")->required()->check(CLI::PositiveNumber);
}

void add_lists(CLI::App& app, Options& options) {
  const auto list = [&](const char* name, const char* what, ClinicList which, const char* footer) {
    CLI::App* command = app.add_subcommand(name, what);
    command->add_option("--ledger", options.folder, "folder of the ledger (default: as for serve)");
    command->add_option("--passphrase-fd", options.passphrase_fd, std::string(fd_help) + ". Without it the terminal is asked")->check(CLI::NonNegativeNumber);
    command->footer(footer);
    command->callback([&options, which] {
      options.command = Command::clinic_list;
      options.list = which;
    });
    return command;
  };
  const char* served = "While the ledger is served, ask the program that serves it (exit code 4 says so).";
  list("day", "Print who came on a day, and what is left of it.", ClinicList::day,
       (std::string("Example:\n  limbledger day 2026-11-24 --ledger /tmp/show\n\nIt holds what has reached this ledger. ") + served).c_str())
      ->add_option("DATE", options.day, "a calendar day (default: today)");
  list("loops", "Print what is left open, by name, those who cannot wait first.", ClinicList::loops,
       (std::string("Example:\n  limbledger loops --ledger /tmp/show\n\nFor whoever goes out next. ") + served).c_str())
      ->add_option("DATE", options.day, "the day by which something is past (default: today)");
  CLI::App* count = list("count", "Print what a clinic reports of a day, a month or a year, and what has changed since it was last reported.", ClinicList::count,
                         (std::string("Example:\n  limbledger count 2026-11 --report --ledger /tmp/show\n\nThe method district.count names the exams behind each number. ") + served).c_str());
  count->add_option("DATE", options.day, "a day, a month or a year: 2026-11")->required();
  CLI::Option* report = count->add_flag("--report", options.report, "keep it as a report, numbered; where no number has changed since the last one, nothing is written");
  count->add_option("--reported", options.reported, "print the report of this number, as it was reported")->check(CLI::PositiveNumber)->excludes(report);
  list("conflicts", "Print what disagrees and who looks alike, in the order of possible harm.", ClinicList::conflicts,
       (std::string("Example:\n  limbledger conflicts --ledger /tmp/show\n\nNothing is settled by printing it; what is left waits and loses nothing. Each line names the method\nthat settles it and the ids it takes: serve the ledger (limbledger serve), and call it there. ") + served).c_str());
}

void add_others(CLI::App& app, Options& options) {
  CLI::App* verify = app.add_subcommand("verify", "Check every entry, head and signature of a ledger and name what is damaged.");
  CLI::Option_group* which = verify->add_option_group("which");
  which->add_option("DIR", options.folder, "folder of the ledger");
  which->add_option("--ledger", options.folder, "the same, as the other commands name it");
  which->require_option(1);
  verify->add_option("--passphrase-fd", options.passphrase_fd, std::string(fd_help) + ". Without it the terminal is asked")->check(CLI::NonNegativeNumber);
  verify->add_flag("--mend", options.mend, "make a list by which entries are found anew from the entries, where it leaves some out");
  verify->footer("Example:\n  limbledger verify /tmp/show\n\nNo entry is changed, and a copy on a medium that cannot be written is checked as it lies. Without a passphrase hashes,\n"
      "chains and signatures are checked; with one, also that what is sealed opens.\n\n"
      "Exit code 0: every entry holds. 1: damage, listed, or a part of the ledger is missing. 4: another program holds\n"
      "the ledger; ask that one with the method ledger.verify.");
  verify->callback([&options] { options.command = Command::verify; });

  CLI::App* assess = app.add_subcommand("assess", "Set the findings of one examination beside the published figures; needs no ledger.");
  assess->add_option("FILE", options.file, "a document of the format limbledger-exam/1, or - for the standard input")->required();
  CLI::Option* json = assess->add_flag("--json", options.json, "print the assessment, or the working, as JSON instead of text");
  CLI::Option* explain = assess->add_option("--explain", options.explain, "print how this one was reached, such as alert.acs:left or rule.ottawa_knee:left: findings, figures with their sources, what would change it")
                              ->check([](const std::string& name) { return name.empty() ? std::string("takes a name; --names lists them") : std::string(); });
  assess->add_flag("--names", options.names, "print the names that --explain takes, each with its sentence")->excludes(explain)->excludes(json);
  assess->add_option("--confirmed", options.confirmed, "the code of a question that the program asked back, after you checked the value; for example value.unusual");
  assess->footer("Examples:\n  limbledger assess exam.json\n  limbledger assess exam.json --names\n  limbledger assess exam.json --explain rule.ottawa_knee:left\n\nThe answer says what the findings support, and with which figures. It supports your judgement and does not replace it.\n\n"
      "Exit code 1: the document cannot be read; each fault is listed with its place and what to do.");
  assess->callback([&options] { options.command = Command::assess; });

  CLI::App* schemas = app.add_subcommand("schemas", "Write the JSON Schemas, the OpenRPC document and the table of faults.");
  schemas->add_option("DIR", options.folder, "folder to write to; files of the same names are replaced")->required();
  schemas->footer("Example:\n  limbledger schemas schemas/");
  schemas->callback([&options] { options.command = Command::schemas; });

  CLI::App* rules = app.add_subcommand("rules", "List the decision rules: version, inputs, in whom each was made, source.");
  rules->add_flag("--json", options.json, "print the list as JSON instead of text");
  rules->footer("Example:\n  limbledger rules\n\nA rule supports your judgement; local protocol stands above it.");
  rules->callback([&options] { options.command = Command::rules; });
}

}  // namespace

namespace {

// What is said where the first word is none of the commands; the library only says that one is missing.
[[nodiscard]] std::string unknown_command(const CLI::App& app, int count, const char* const* words) {
  const std::string_view first = count > 1 ? words[1] : "-";
  std::vector<std::string_view> names;
  for (const CLI::App* one : app.get_subcommands({})) {
    names.push_back(one->get_name());
  }
  if (first.starts_with("-") || std::find(names.begin(), names.end(), first) != names.end()) {
    return {};
  }
  const std::string_view near = wire::nearest(first, names);
  return std::string(first) + " is no command" + (near.empty() ? std::string() : "; perhaps " + std::string(near)) + "\n  what to do: limbledger --help lists them\n";
}

}  // namespace

std::string intended_use() {
  const report::Words* words = report::built_in_words();
  return words == nullptr ? std::string{} : report::wrapped(words->say("msg.page.decision_support")) + report::wrapped(words->say("msg.page.intended_use"));
}

std::optional<Options> read_options(int count, const char* const* words, int& exit_code) {
  Options options;
  CLI::App app("", "limbledger");
  app.require_subcommand(1);
  app.set_version_flag("--version", "limbledger " + std::string(service::program_version) + ", protocol " + std::to_string(service::protocol_newest));
  app.footer(
      "Start here:\n"
      "  limbledger new /tmp/show --demo\n"
      "  limbledger serve --ledger /tmp/show --stdio lines\n"
      "Help on one command: limbledger COMMAND --help\n\n"
      "Exit codes: 0 done; 1 done, and the answer is bad (damage, a faulty file); 2 wrong use; 3 locked or a wrong\n"
      "passphrase; 4 in use, read only, or the disk; 5 failed inside.");
  add_new(app, options);
  add_serve(app, options);
  add_token(app, options);
  add_lists(app, options);
  add_exchange(app, options);
  add_others(app, options);
  try {
    app.parse(count, words);
  } catch (const CLI::Success& asked) {
    // Only now: the words of a page take longer to read than all else that a start does.
    app.description("limbledger: examinations of the hip, knee, ankle and foot, recorded and read\n\n" + intended_use());
    exit_code = app.exit(asked, std::cout, std::cerr);
    return std::nullopt;
  } catch (const CLI::ParseError& wrong) {
    std::ostringstream text;
    const std::string unknown = unknown_command(app, count, words);
    if (unknown.empty()) {
      app.exit(wrong, text, text);
    }
    std::cerr << "limbledger: " << unknown << text.str();
    exit_code = static_cast<int>(ExitCode::usage);
    return std::nullopt;
  }
  return options;
}

}  // namespace limbledger::rpc

// The command line: what each command takes, and help that teaches it. Source of the commands: contract, section 10.
#pragma once

#include "core/service/context.hpp"
#include "rpc/program/demo/trouble.hpp"
#include "rpc/transport/framing.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace limbledger::rpc {

enum class Command : std::uint8_t { new_ledger, serve, token, verify, schemas, rules, assess, clinic_list, hub, join, exchange, parcel_write, parcel_read };
enum class ClinicList : std::uint8_t { day, loops, count, conflicts };
enum class TokenDeed : std::uint8_t { make, list, end };

struct GivenAtStart {
  service::Scope scope{};
  std::string file;
};

struct Options {
  Command command{};
  std::string folder;  // empty: the default folder
  bool demonstration = false;
  bool practice = false;
  TroubleAsk trouble;      // of serve, on a demonstration alone
  std::string examiner;  // empty: not named
  std::optional<int> passphrase_fd;
  bool stdio = false;
  Framing framing = Framing::lines;
  std::optional<std::uint16_t> http_port;  // 0: any that is free
  std::string pages;                       // folder of a front end to be served beside; empty: none
  bool once = false;                       // print a link that opens one session
  service::Scope scope = service::Scope::examiner;
  std::vector<GivenAtStart> give;          // tokens of their own, each into a file
  TokenDeed deed{};
  std::string exam;                        // of a kiosk's token; empty: the first that it opens
  std::optional<int> minutes;
  bool mend = false;                       // of verify: a list that leaves entries out is made anew
  std::string label;
  std::string to;                          // the file a token is written to
  int number = 0;                          // of the token to be ended
  std::string file;  // "-": the standard input
  bool json = false;
  std::string explain;                     // of assess: the name whose working is printed; empty: the whole page
  bool names = false;                      // of assess: the names that can be explained
  ClinicList list{};
  std::string day;                         // of a list; empty: today
  bool report = false;                     // of count: kept as a report
  int reported = 0;                        // of count: the report that is read back; 0: none
  std::string with;                    // of exchange and join: where the hub answers, as https://HOST:PORT
  std::string address = "0.0.0.0";     // of the hub, also beside serve: its own address that it answers at
  std::optional<std::uint16_t> hub_port;  // 0: any that is free
  bool enrols = false;                 // the hub lets one new device in
  std::optional<int> code_fd;          // where the recovery code comes from
  bool cut_too = false;                // of a parcel that was cut short, what is whole
  std::string holder;                  // whose receipt says what a parcel can leave out; empty: all
  std::vector<std::string> confirmed;  // codes of questions that were asked back and answered
};

// Absent when the program has nothing more to do (help, version, a wrong command line, already answered);
// `exit_code` then says how it ended.
[[nodiscard]] std::optional<Options> read_options(int count, const char* const* words, int& exit_code);

// What the program is for and what it is not, in the words of every printed page.
[[nodiscard]] std::string intended_use();

}  // namespace limbledger::rpc

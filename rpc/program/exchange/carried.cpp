#include "rpc/program/exchange/carried.hpp"

#include "core/wire/parse.hpp"
#include "core/wire/text.hpp"
#include "rpc/program/passphrase.hpp"
#include "rpc/program/problem.hpp"

#include <algorithm>
#include <charconv>
#include <iostream>

namespace limbledger::rpc {

ledger::Bytes refusal_bytes(const wire::Refusal& refusal) {
  const wire::Fault& fault = refusal.faults.front();
  std::string expected = fault.expected;  // this program's own words
  std::replace_if(expected.begin(), expected.end(), [](char c) { return c == '"' || c == '\\' || static_cast<unsigned char>(c) < 0x20; }, '\'');
  const std::string text = R"({"code":")" + fault.code + R"(","expected":")" + expected + R"("})";
  return {text.begin(), text.end()};
}

wire::Fault refusal_in(std::span<const std::uint8_t> bytes, unsigned status) {
  const auto document = wire::parse({reinterpret_cast<const char*>(bytes.data()), bytes.size()});
  if (document) {
    const wire::Node* code = document->child(document->root(), "code");
    const wire::Node* expected = document->child(document->root(), "expected");
    if (code != nullptr && wire::find_fault_code(code->text) != nullptr) {
      // Who sent it may be unknown yet, and this goes to a terminal: no control characters.
      std::string words(expected == nullptr ? std::string_view() : expected->text);
      std::replace_if(words.begin(), words.end(), [](char one) { return static_cast<unsigned char>(one) < 0x20 || one == 0x7f; }, ' ');
      return wire::Fault(code->text, "", words);
    }
  }
  return wire::Fault("exchange.carrier", "", "an answer of a limbledger hub", std::to_string(status));
}

std::optional<HubAddress> address_in(const std::string& text) {
  static constexpr std::string_view scheme = "https://";
  std::string_view rest = text;
  HubAddress out;
  const auto colon = text.rfind(':');
  bool good = rest.starts_with(scheme) && colon != std::string::npos && colon >= scheme.size();
  if (good) {
    std::string_view digits = rest.substr(colon + 1);
    digits = digits.ends_with('/') ? digits.substr(0, digits.size() - 1) : digits;
    const auto read = std::from_chars(digits.data(), digits.data() + digits.size(), out.port);
    std::string_view host = rest.substr(scheme.size(), colon - scheme.size());
    if (host.starts_with('[') && host.ends_with(']')) {
      host = host.substr(1, host.size() - 2);
    }
    out.host = std::string(host);
    good = read.ec == std::errc() && read.ptr == digits.data() + digits.size() && out.port != 0 && !host.empty() && host.find_first_of("/@?#") == std::string_view::npos;
  }
  return good ? std::optional(std::move(out)) : std::nullopt;
}

HubAddress read_address(const std::string& text) {
  auto out = address_in(text);
  if (!out) {
    throw Problem(ExitCode::usage, "--with: not an address of a hub\n  what to do: give it as the hub prints it: https://HOST:PORT");
  }
  return std::move(*out);
}

std::string folder_or_default(const Options& options) { return options.folder.empty() ? default_folder() : options.folder; }

void unlock_for_exchange(OpenedLedger& opened, const Options& options) {
  if (opened.read_only()) {
    throw Problem(ExitCode::unavailable, opened.folder().path + ": nothing can be written here\n  what to do: free some space, or see who owns the folder");
  }
  bool unlocked = opened.unlock_if_told(options.passphrase_fd);
  if (!opened.why_locked().empty()) {
    std::cerr << "limbledger: " << opened.why_locked() << "\n";
  }
  if (!unlocked) {
    std::string passphrase = ask_passphrase("Passphrase: ");
    const auto result = opened.desk().unlock({}, passphrase);
    wipe(passphrase);
    if (!result) {
      throw problem_of(result.error(), opened.folder().path);
    }
  }
}

std::unique_ptr<service::ExchangeDoor> open_door(OpenedLedger& opened) {
  auto door = service::ExchangeDoor::open(opened.desk());
  if (!door) {
    throw problem_of(door.error(), opened.folder().path);
  }
  return std::move(*door);
}

void tell_held(service::ExchangeDoor& door) {
  const auto held = door.held_elsewhere();
  const auto waiting = door.waiting();
  if (!held || !waiting) {
    throw problem_of(held ? waiting.error() : held.error(), "");
  }
  for (const service::HeldBy& one : *held) {
    std::cout << "Replica " << one.holder.to_text() << " has said that it holds " << one.held << " entries of this device on its disk";
    if (one.not_held != 0) {
      std::cout << "; " << one.not_held << " it has not got yet";
    }
    std::cout << ".\n";
  }
  for (const service::WaitingRun& one : *waiting) {
    std::cout << one.entries << " entries of replica " << one.replica.to_text() << " wait for its entries " << one.held_to + 1 << " to " << one.first - 1
              << ": bring its earlier parcel, or exchange with a device that has them.\n";
  }
}

}  // namespace limbledger::rpc

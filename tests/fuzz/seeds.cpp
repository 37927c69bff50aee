// Writes what a target starts from, one file an input: fuzz_seeds TARGET FOLDER. The lines of the example talk, the cases of
// tests/outside/data, and the bytes of the invented ledger.
#include "core/ledger/log/log.hpp"
#include "core/reference/edition.hpp"
#include "core/wire/parse.hpp"
#include "core/wire/write.hpp"
#include "rpc/program/examples/talk.hpp"
#include "rpc/transport/framing.hpp"
#include "tests/fuzz/invented_ledger.hpp"
#include "tests/fuzz/targets.hpp"
#include "tests/unit/ledger/support.hpp"

#include <filesystem>
#include <fstream>
#include <iostream>
#include <utility>

namespace {

using namespace limbledger;
using Texts = std::vector<std::string>;

// That member of each case of a file.
Texts members(const std::string& file, std::string_view name) {
  const std::string text = ledger::test::outside_data(file);
  const auto read = wire::parse(text);
  Texts out;
  const wire::Node* cases = read ? read->child(read->root(), "cases") : nullptr;
  for (std::uint32_t at = cases != nullptr ? cases->first : 0; at != 0; at = read->at(at).next) {
    if (const wire::Node* text_of = read->child(read->at(at), name)) {
      out.emplace_back(text_of->text);
    }
  }
  return out;
}

std::string bytes_of(std::string_view hex) {
  const ledger::Bytes bytes = ledger::test::from_hex(hex);
  return {bytes.begin(), bytes.end()};
}

std::string called(const rpc::Line& line) {
  return R"({"jsonrpc":"2.0","id":1,"method":")" + std::string(line.method) + R"(","params":)" + std::string(line.params) + "}";
}

Texts requests() {
  Texts out = members("jsonrpc_edge_cases.json", "send");
  for (std::string& text : members("jsonrpc_spec_examples.json", "send")) {
    out.push_back(std::move(text));
  }
  std::string before;
  for (const rpc::Line& line : rpc::example_talk()) {
    out.push_back(called(line));
    out.push_back("#kiosk\n" + called(line));
    out.push_back("#viewer\n" + called(line));
    out.push_back(before + called(line));
    before = called(line) + "\n";
  }
  return out;
}

Texts findings() {
  Texts out;
  for (const rpc::Line& line : rpc::example_talk()) {
    const auto read = wire::parse(line.params);
    const wire::Node* list = read ? read->child(read->root(), "findings") : nullptr;
    if (list != nullptr) {
      out.emplace_back(list->raw.substr(1, list->raw.size() - 2));
    }
  }
  // Every item by its name, many at once: each judging takes its time under the sanitizers.
  std::string many;
  std::size_t count = 0;
  for (const model::Item& item : reference::built_in_edition()->items()) {
    many += (many.empty() ? "" : ",") + (R"({"item":")" + std::string(item.item.text)) + R"(","side":"left","value":{"kind":"not_done","reason":"pain"}})";
    if (++count % 30 == 0) {
      out.push_back(std::exchange(many, {}));
    }
  }
  return out;
}

Texts streams() {
  Texts out;
  const std::string cases = ledger::test::outside_data("framing_cases.json");
  const auto read = wire::parse(cases);
  for (const auto& [list, choice] : {std::pair("content_length", '\x01'), std::pair("newline", '\x00')}) {
    const wire::Node* rows = read->child(read->root(), list);
    for (std::uint32_t at = rows->first; at != 0; at = read->at(at).next) {
      const std::string bytes = bytes_of(read->child(read->at(at), "hex")->text);
      out.push_back(std::string(1, choice) + bytes);
      out.push_back(std::string(1, static_cast<char>(choice | 0x16)) + bytes);
    }
  }
  return out;
}

std::string posted(std::string_view body, std::string_view fields = {}) {
  return "POST /rpc HTTP/1.1\r\nHost: 127.0.0.1:40211\r\nContent-Type: application/json\r\n" + std::string(fields) +
         "Content-Length: " + std::to_string(body.size()) + "\r\n\r\n" + std::string(body);
}

std::string socket_frame(char first, std::string_view payload) {
  std::string out(1, first);
  if (payload.size() < 126) {
    out += static_cast<char>(0x80U | payload.size());
  } else {
    out += '\xFE';
    out += static_cast<char>(payload.size() / 256);
    out += static_cast<char>(payload.size() % 256);
  }
  return out + std::string(4, '\0') + std::string(payload);
}

Texts conversations() {
  const std::string upgrade =
      "GET /rpc HTTP/1.1\r\nHost: 127.0.0.1:40211\r\nUpgrade: websocket\r\nConnection: Upgrade\r\nSec-WebSocket-Version: 13\r\nSec-WebSocket-Key: dGhlIHNhbXBsZSBub25jZQ==\r\n\r\n\xFF|";
  const std::string bearer = "Authorization: Bearer " + std::string(43, '@') + "\r\n";
  const std::string call = R"({"jsonrpc":"2.0","id":1,"method":"subtract","params":[42,23]})";
  const std::string open = R"({"jsonrpc":"2.0","id":1,"method":"session.open","params":{"token":")" + std::string(43, '@') + R"(","client":"invented"}})";
  Texts out{posted(call), posted(call, bearer), posted(call, bearer) + posted("[" + call + "]", bearer + "Connection: close\r\n"),
            posted(call, bearer).substr(0, 60) + "\xFF|" + posted(call, bearer).substr(60), posted(open),
            posted(call, bearer + "Expect: 100-continue\r\n"),
            "POST /rpc HTTP/1.1\r\nHost: localhost:40211\r\nContent-Type: application/json\r\n" + bearer +
                "Transfer-Encoding: chunked\r\n\r\n5\r\n{\"jso\r\n\xFF|38;a=b\r\nnrpc\":\"2.0\",\"id\":1,\"method\":\"get_data\",\"params\":[1,2,34]}\r\n0\r\nX: y\r\n\r\n",
            "GET / HTTP/1.1\r\nHost: 127.0.0.1:40211\r\n\r\n", "HEAD / HTTP/1.0\r\n\r\n",
            "OPTIONS /rpc HTTP/1.1\r\nHost: 127.0.0.1:40211\r\nOrigin: http://127.0.0.1:40211\r\nAccess-Control-Request-Method: POST\r\n\r\n",
            posted("[" + call + "," + call + "]", bearer + "Origin: http://[::1]:40211\r\nSec-Fetch-Site: same-origin\r\n"),
            upgrade + socket_frame('\x81', call), upgrade + socket_frame('\x81', open) + "\xFF|" + socket_frame('\x81', call) + socket_frame('\x88', "\x03\xE8"),
            upgrade + socket_frame('\x01', call.substr(0, 20)) + "\xFF|" + socket_frame('\x89', "ping") + socket_frame('\x80', call.substr(20)),
            upgrade + socket_frame('\x82', "bytes") + socket_frame('\x8A', ""), upgrade + socket_frame('\x81', std::string(5000, '[')),
            upgrade.substr(0, upgrade.size() - 2) + socket_frame('\x81', call)};
  for (const std::string& text : members("jsonrpc_edge_cases.json", "send")) {
    out.push_back(upgrade + socket_frame('\x81', open) + "\xFF|" + socket_frame('\x81', text));
    out.push_back(posted(text, bearer));
  }
  return out;
}

std::string replaced(std::string text, const std::string& what, const std::string& by) {
  for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what, at + by.size())) {
    text.replace(at, what.size(), by);
  }
  return text;
}

// The operations of one object, in windows of four behind the first, named as entry.cpp names them.
void add_operations(const std::vector<ledger::Opened>& all, Texts& out) {
  for (std::size_t from = 0; from < all.size(); ++from) {
    std::vector<const ledger::Opened*> window;
    if (from > 0) {
      window.push_back(&all.front());
    }
    for (std::size_t i = from; i < std::min(from + 4, all.size()); ++i) {
      window.push_back(&all[i]);
    }
    std::string text = "o";
    for (const ledger::Opened* one : window) {
      text += wire::write(one->operation()) + "\n";
    }
    text = replaced(std::move(text), all.front().operation().object.to_text(), "@object");
    for (std::size_t i = 0; i < window.size(); ++i) {
      text = replaced(std::move(text), window[i]->entry().to_text(), "@" + std::to_string(i + 1));
    }
    out.push_back(std::move(text));
  }
}

Texts entries() {
  Texts out;
  const auto at = fuzz::new_desktop();
  const auto heads = at->store.heads();
  const auto rows = at->store.read(heads->newest.front().replica, 1, UINT64_MAX >> 1U, SIZE_MAX);
  for (std::size_t i = 0; i < rows->size() && i < 12; ++i) {
    const std::string header((*rows)[i].header.begin(), (*rows)[i].header.end());
    const std::string body((*rows)[i].body.begin(), (*rows)[i].body.end());
    out.insert(out.end(), {"h" + header, "r" + header + body, "i" + body, "k" + body, "e" + body});
  }
  out.push_back("g" + std::string(fuzz::keyring_file().begin(), fuzz::keyring_file().end()));
  out.insert(out.end(), {std::string("c\x01\x00\x05\x01", 5), std::string("c\x00\x00\x40\x80\x07\x00\x10\x00", 9), "c"});
  for (const auto name : {"exam", "second", "person", "place"}) {
    const std::string id = fuzz::kept(name);
    model::ObjectId object;
    static_cast<void>(model::ObjectId::from_text(std::string_view(id).substr(1, id.size() - 2), object));
    const auto all = at->desk->log().operations(std::string_view(name) == "place" ? at->desk->log().clinic_object() : object);
    if (all && !all->empty()) {
      add_operations(*all, out);
    }
  }
  return out;
}

}  // namespace

int main(int count, char** words) {
  if (count != 3) {
    std::cerr << "usage: fuzz_seeds TARGET FOLDER\n";
    return 2;
  }
  const std::string_view target = words[1];
  const Texts all = target == "request" ? requests() : target == "finding" ? findings() : target == "entry" ? entries() : target == "frames" ? streams() : conversations();
  std::filesystem::create_directories(words[2]);
  for (std::size_t i = 0; i < all.size(); ++i) {
    std::ofstream(std::string(words[2]) + "/seed_" + std::to_string(i), std::ios::binary) << all[i];
  }
  std::cout << target << ": " << all.size() << " seeds\n";
}

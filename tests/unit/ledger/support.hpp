// What the ledger's tests share: hexadecimal text, a world without a clock, the keys of the worked example and chains
// built from them. Randomness is a counter hashed, so that every run is the same.
#pragma once

#include "core/ledger/chain.hpp"
#include "core/ledger/keys/seal.hpp"
#include "core/ledger/keys/sign.hpp"
#include "core/ledger/keys/wrap.hpp"
#include "core/ledger/world.hpp"

#include <fstream>
#include <iterator>
#include <string>
#include <string_view>
#include <vector>

namespace limbledger::ledger::test {

inline Bytes from_hex(std::string_view text) {
  const auto digit = [](char c) { return c <= '9' ? c - '0' : c - 'a' + 10; };
  Bytes out;
  for (std::size_t i = 0; i + 1 < text.size(); i += 2) {
    out.push_back(static_cast<std::uint8_t>(digit(text[i]) * 16 + digit(text[i + 1])));
  }
  return out;
}

inline std::string to_hex(View bytes) {
  std::string out;
  for (const std::uint8_t byte : bytes) {
    out += "0123456789abcdef"[byte >> 4];
    out += "0123456789abcdef"[byte & 15];
  }
  return out;
}

template <std::size_t Size>
std::array<std::uint8_t, Size> filled(std::uint8_t byte) {
  std::array<std::uint8_t, Size> out{};
  out.fill(byte);
  return out;
}

inline Secret32 secret_of(std::uint8_t byte) { return Secret32(filled<32>(byte)); }

// A file of tests/outside/data, which names its own source.
inline std::string outside_data(const std::string& name) {
  std::ifstream file(std::string(LIMBLEDGER_SOURCE_DIR) + "/tests/outside/data/" + name, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

// The text between the quotes after `"name":`, searched from `from` on: enough for the flat vector files.
inline std::string text_member(std::string_view json, std::string_view name, std::size_t from = 0) {
  const std::string key = '"' + std::string(name) + '"';
  const std::size_t at = json.find(key, from);
  if (at == std::string_view::npos) {
    return {};
  }
  const std::size_t open = json.find('"', at + key.size());
  return std::string(json.substr(open + 1, json.find('"', open + 1) - open - 1));
}

class CountedWorld final : public World {
 public:
  explicit CountedWorld(std::uint8_t seed = 0) : seed_(seed) {}
  Reading now() override { return {}; }
  void random(std::span<std::uint8_t> bytes) override {
    for (std::uint8_t& byte : bytes) {
      if (used_ == block_.size()) {
        std::array<std::uint8_t, 9> input{seed_};
        put_integer(input.data() + 1, ++count_, 8);
        block_ = hash256(input);
        used_ = 0;
      }
      byte = block_[used_++];
    }
  }

 private:
  std::uint8_t seed_;
  std::uint64_t count_ = 0;
  Hash block_{};
  std::size_t used_ = 32;
};

// One replica that writes sealed texts under one exam's key.
struct Writer {
  SignKey root{secret_of(1)};
  SignKey device;
  Origin origin;
  ObjectKey key;
  Joint joint;
  std::vector<Row> rows;

  explicit Writer(std::uint8_t device_seed = 2)
      : device(secret_of(device_seed)),
        origin{clinic_of(root.pub()), replica_of(clinic_of(root.pub()), device.pub()), device.pub()},
        key(secret_of(4), object_of(origin.clinic, ObjectType::exam, model::RequestId{filled<16>(3)}, 0)),
        joint(start_of(origin)) {}

  [[nodiscard]] Position next_position() const { return {origin.clinic, origin.replica, joint.seq + 1}; }

  Row& add(const Header& header, Bytes body) {
    Row row;
    row.header = header.to_bytes();
    row.body = std::move(body);
    link(origin.replica, joint, row);
    rows.push_back(std::move(row));
    return rows.back();
  }

  Row& introduce() {
    Intro intro;
    intro.clinic = origin.clinic;
    intro.sign_pub = origin.sign_pub;
    intro.box_pub = BoxPair::from_seed(secret_of(5)).pub();
    intro.device.bytes = filled<16>(6);
    intro.program = "limbledger test";
    Header header;
    header.kind = Kind::intro;
    header.flags = flag_last_of_commit;
    Bytes body = intro.to_bytes();
    header.body_length = static_cast<std::uint32_t>(body.size());
    return add(header, std::move(body));
  }

  Row& write(std::string_view text, const Stamp& stamp = {1764000000000, 0}) {
    Header header = sealed_header(Kind::op, stamp, key, text.size());
    header.flags = flag_last_of_commit;
    auto body = seal(key, next_position(), header.to_bytes(), as_bytes(text));
    return add(header, std::move(*body));
  }

  Row& give_key(std::uint32_t epoch, const PublicKey& epoch_pub, std::uint8_t random) {
    Header header;
    header.kind = Kind::key;
    header.kid = key.kid();
    Bytes body = wrap(key, epoch, epoch_pub, secret_of(random)).to_bytes();
    header.body_length = static_cast<std::uint32_t>(body.size());
    return add(header, std::move(body));
  }

  [[nodiscard]] Head head() const { return sign_head(device, origin.clinic, origin.replica, joint.seq, joint.hash); }
};

inline std::string code_of(const wire::Refusal& refusal) { return refusal.faults.front().code; }

inline std::string param_of(const wire::Refusal& refusal, std::string_view name) {
  for (const auto& param : refusal.faults.front().params) {
    if (param.name == name) {
      return param.json;
    }
  }
  return {};
}

inline void make_stub(Row& row, RowState state = RowState::erased) {
  const Hash hash = body_hash(View(row.body));
  row.body.assign(hash.begin(), hash.end());
  row.state = state;
}

}  // namespace limbledger::ledger::test

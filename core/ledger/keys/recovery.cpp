#include "core/ledger/keys/keyring.hpp"

namespace limbledger::ledger {

namespace {

constexpr Tag tag_code = tag("limb.code.1");
constexpr Tag tag_root = tag("limb.root.1");
constexpr Tag tag_check = tag("limb.check.1");

constexpr std::string_view alphabet = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";
constexpr std::size_t code_letters = 32;
constexpr std::size_t check_letters = 4;

// 5 bits a letter; 0 to 31, or 32 for what is no letter of the code.
std::uint8_t letter_value(char c) {
  if (c >= 'a' && c <= 'z') {
    c = static_cast<char>(c - 'a' + 'A');
  }
  c = c == '0' ? 'O' : c == '1' ? 'L' : c == '8' ? 'B' : c;
  const std::size_t found = alphabet.find(c);
  return found == std::string_view::npos ? std::uint8_t{32} : static_cast<std::uint8_t>(found);
}

std::string to_letters(View bytes, std::size_t count) {
  std::string out;
  for (std::size_t i = 0; i < count; ++i) {
    std::uint8_t value = 0;
    for (std::size_t bit = i * 5; bit < i * 5 + 5; ++bit) {
      value = static_cast<std::uint8_t>((value * 2U) | ((bytes[bit / 8] >> (7 - bit % 8)) & 1U));
    }
    out += alphabet[value];
  }
  return out;
}

std::string check_of(const Secret<20>& bits) { return to_letters(hash256(tag_check, bits.view()), check_letters); }

}  // namespace

RecoveryCode RecoveryCode::draw(World& world) {
  Secret<20> bits;
  world.random(bits.room());
  return RecoveryCode(bits);
}

std::string RecoveryCode::to_text() const {
  const std::string letters = to_letters(bits_.view(), code_letters) + check_of(bits_);
  std::string out;
  for (std::size_t i = 0; i < letters.size(); ++i) {
    if (i != 0 && i % 4 == 0) {
      out += '-';
    }
    out += letters[i];
  }
  return out;
}

Result<RecoveryCode> RecoveryCode::from_text(std::string_view text) {
  Secret<20> bits;
  std::string check;
  std::size_t count = 0;
  bool known = true;
  for (const char c : text) {
    if (c == ' ' || c == '-' || c == '\n' || c == '\r' || c == '\t') {
      continue;
    }
    const std::uint8_t value = letter_value(c);
    known = known && value < 32 && count < code_letters + check_letters;
    if (!known) {
      break;
    }
    if (count < code_letters) {
      for (std::size_t i = 0; i < 5; ++i) {
        const std::size_t bit = count * 5 + i;
        bits.data()[bit / 8] =
            static_cast<std::uint8_t>(bits.data()[bit / 8] | (((value >> (4 - i)) & 1U) << (7 - bit % 8)));
      }
    } else {
      check += alphabet[value];
    }
    ++count;
  }
  if (!known || count != code_letters + check_letters) {
    return wire::Fault("ledger.passphrase", "", "nine groups of four letters and digits, as printed", std::to_string(count));
  }
  if (check != check_of(bits)) {
    return wire::Fault("ledger.passphrase", "", "the code as printed: its last group does not fit the others");
  }
  return RecoveryCode(bits);
}

Secret32 RecoveryCode::root_seed() const { return Secret32(hash256(tag_root, bits_.view())); }

Secret32 RecoveryCode::slot_key(View salt) const { return Secret32(hash256(tag_code, salt, bits_.view())); }

}  // namespace limbledger::ledger

#include "core/match/blocks.hpp"

#include <algorithm>

namespace limbledger::match {

namespace {

constexpr std::size_t sounds = 3;

class Key {
 public:
  explicit Key(std::uint64_t kind) { add(kind); }
  Key& add(std::uint64_t value) {
    for (int byte = 0; byte < 8; ++byte) {
      hash_ = (hash_ ^ ((value >> (8 * byte)) & 0xFFU)) * 0x100000001B3U;  // FNV-1a
    }
    return *this;
  }
  Key& add(const Letters& letters) {
    for (const char32_t c : letters) {
      add(static_cast<std::uint64_t>(c));
    }
    return add(std::uint64_t{0});
  }
  [[nodiscard]] std::uint64_t hash() const { return hash_; }

 private:
  std::uint64_t hash_ = 0xCBF29CE484222325U;
};

[[nodiscard]] char32_t heard(char32_t c) {
  switch (c) {
    case U'r':
      return U'l';
    case U'v':
    case U'p':
    case U'w':
    case U'f':
      return U'b';
    case U'c':
    case U'q':
    case U'g':
    case U'j':
      return U'k';
    case U'z':
    case U'x':
      return U's';
    case U'd':
      return U't';
    case U'm':
      return U'n';
    case U'y':
      return U'i';
    default:
      return c;
  }
}

[[nodiscard]] bool is_vowel(char32_t c) { return c == U'a' || c == U'e' || c == U'i' || c == U'o' || c == U'u'; }

void add_date_keys(const model::PartialDate& date, std::vector<std::uint64_t>& keys) {
  if (date.month == 0 || date.day == 0 || (date.month == 1 && date.day == 1)) {
    return;
  }
  const auto [low, high] = std::minmax(date.month, date.day);
  keys.push_back(Key(1).add(static_cast<std::uint64_t>(date.year)).add(low).add(high).hash());
}

}  // namespace

Letters sound_of(const Letters& word) {
  Letters out;
  char32_t last = 0;
  for (const char32_t c : word) {
    const char32_t now = heard(c);
    if (c == U'h' || now == last || (is_vowel(now) && !out.empty())) {
      last = c == U'h' ? last : now;
      continue;
    }
    out.push_back(is_vowel(now) ? U'a' : now);
    last = now;
    if (out.size() == sounds) {
      break;
    }
  }
  return out;
}

std::vector<std::uint64_t> block_keys(const Looked& person) {
  std::vector<std::uint64_t> keys;
  std::vector<Letters> heard_words;
  for (const Looked::Name& name : person.names) {
    keys.push_back(Key(2).add(name.skeleton).hash());
    keys.push_back(Key(2).add(name.joined).hash());
    // Of the letters as they look, so that one letter of another script changes no key.
    for (const Letters& word : name.words) {
      const Letters sound = sound_of(look_alike_skeleton(word));
      if (std::find(heard_words.begin(), heard_words.end(), sound) == heard_words.end()) {
        heard_words.push_back(sound);
      }
    }
  }
  std::sort(heard_words.begin(), heard_words.end());
  for (std::size_t i = 0; i < heard_words.size(); ++i) {
    for (std::size_t j = i + 1; j < heard_words.size(); ++j) {
      keys.push_back(Key(3).add(heard_words[i]).add(heard_words[j]).hash());
    }
    if (!person.home.empty()) {
      keys.push_back(Key(4).add(heard_words[i]).add(person.home).hash());
    }
    if (person.birth && person.birth->date) {
      keys.push_back(Key(5).add(heard_words[i]).add(static_cast<std::uint64_t>(person.birth->date->year)).hash());
    }
    if (heard_words.size() == 1) {
      keys.push_back(Key(6).add(heard_words[i]).hash());
    }
  }
  if (person.birth && person.birth->date) {
    add_date_keys(*person.birth->date, keys);
  }
  for (const Looked::Number& one : person.numbers) {
    keys.push_back(Key(7).add(one.issuer).add(to_letters(one.text)).hash());
  }
  std::sort(keys.begin(), keys.end());
  keys.erase(std::unique(keys.begin(), keys.end()), keys.end());
  return keys;
}

}  // namespace limbledger::match

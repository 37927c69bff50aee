#include "core/match/folded.hpp"

#include <algorithm>
#include <array>

namespace limbledger::match {

namespace {

// Base letters from the first code point on; a hyphen where there is none.
struct Block {
  char32_t first;
  std::string_view letters;
};
constexpr Block latin[] = {
    {0xC0, "aaaaaa-ceeeeiiiidnooooo-ouuuuy--aaaaaa-ceeeeiiiidnooooo-ouuuuy-y"},
    {0x100,
     "aaaaaaccccccccddddeeeeeeeeeegggggggghhhhiiiiiiiiii--jjkkklllllll"
     "lllnnnnnnnnnoooooo--rrrrrrssssssssttttttuuuuuuuuuuuuwwyyyzzzzzzs"},
    {0x180,
     "--------------------------------oo-------------uu---------------"
     "-------------aaiioouuuuuuuuuu-aaaa----ggkkoooo--j---gg--nnaa----"
     "aaaaeeeeiiiioooorrrruuuusstt--hh------aaeeooooooooyy------------"
     "----------------"},
    {0x1E00,
     "aabbbbbbccddddddddddeeeeeeeeeeffgghhhhhhhhhhiiiikkkkkkllllllllmm"
     "mmmmnnnnnnnnoooooooopppprrrrrrrrssssssssssttttttttuuuuuuuuuuvvvv"
     "wwwwwwwwwwxxxxyyzzzzzzhtwy------aaaaaaaaaaaaaaaaaaaaaaaaeeeeeeee"
     "eeeeeeeeiiiioooooooooooooooooooooooouuuuuuuuuuuuuuyyyyyyyy------"},
};

struct Pair {
  char32_t from;
  std::u32string_view to;
};
constexpr Pair spelt_out[] = {
    {0xC6, U"ae"}, {0xE6, U"ae"}, {0xDE, U"th"}, {0xFE, U"th"}, {0xDF, U"ss"}, {0x1E9E, U"ss"},
    {0x132, U"ij"}, {0x133, U"ij"}, {0x152, U"oe"}, {0x153, U"oe"},
};
// Greek with accent, Cyrillic with breve or diaeresis, Arabic letters written with or without hamza.
constexpr Pair by_use[] = {
    {0x386, U"\u03B1"}, {0x3AC, U"\u03B1"}, {0x388, U"\u03B5"}, {0x3AD, U"\u03B5"}, {0x389, U"\u03B7"}, {0x3AE, U"\u03B7"}, {0x38A, U"\u03B9"},
    {0x3AF, U"\u03B9"}, {0x390, U"\u03B9"}, {0x3AA, U"\u03B9"}, {0x3CA, U"\u03B9"}, {0x38C, U"\u03BF"}, {0x3CC, U"\u03BF"}, {0x38E, U"\u03C5"},
    {0x3CD, U"\u03C5"}, {0x3B0, U"\u03C5"}, {0x3AB, U"\u03C5"}, {0x3CB, U"\u03C5"}, {0x38F, U"\u03C9"}, {0x3CE, U"\u03C9"}, {0x3C2, U"\u03C3"},
    {0x401, U"\u0435"}, {0x451, U"\u0435"}, {0x419, U"\u0438"}, {0x439, U"\u0438"}, {0x622, U"\u0627"}, {0x623, U"\u0627"}, {0x625, U"\u0627"},
    {0x671, U"\u0627"}, {0x649, U"\u064A"},
};

struct Range {
  char32_t first;
  char32_t last;
};
// Marks over letters, vowel signs, joiners, signs of direction, variation selectors.
constexpr Range unheard[] = {
    {0x300, 0x36F},   {0x483, 0x489},   {0x591, 0x5BD},   {0x5BF, 0x5BF},   {0x5C1, 0x5C2},   {0x5C4, 0x5C5},
    {0x5C7, 0x5C7},   {0x610, 0x61A},   {0x61C, 0x61C},   {0x640, 0x640},   {0x64B, 0x65F},   {0x670, 0x670},
    {0x6D6, 0x6DC},   {0x1AB0, 0x1AFF}, {0x1DC0, 0x1DFF}, {0x200B, 0x200F}, {0x202A, 0x202E}, {0x2060, 0x2069},
    {0x20D0, 0x20FF}, {0xFE00, 0xFE0F}, {0xFE20, 0xFE2F}, {0xFEFF, 0xFEFF},
};

[[nodiscard]] bool is_unheard(char32_t c) {
  return c == U'\'' || c == U'`' || c == 0xB4 || c == 0x2BC || c == 0x2018 || c == 0x2019 ||
         std::any_of(std::begin(unheard), std::end(unheard), [&](const Range& range) { return c >= range.first && c <= range.last; });
}

[[nodiscard]] bool parts_words(char32_t c) {
  return c == U' ' || c == U'-' || c == U'.' || c == U',' || c == 0xA0 || (c >= 0x2000 && c <= 0x200A) || (c >= 0x2010 && c <= 0x2015) ||
         c == 0x202F || c == 0x3000 || c == 0x60C;
}

void fold_onto(char32_t c, Letters& out) {
  if (c < 0x80) {
    out.push_back(c >= U'A' && c <= U'Z' ? c + 32 : c);
    return;
  }
  for (const auto* pairs : {std::begin(spelt_out), std::begin(by_use)}) {
    const auto* end = pairs == std::begin(spelt_out) ? std::end(spelt_out) : std::end(by_use);
    const auto* found = std::find_if(pairs, end, [&](const Pair& pair) { return pair.from == c; });
    if (found != end) {
      out.append(found->to);
      return;
    }
  }
  for (const Block& block : latin) {
    if (c >= block.first && c - block.first < block.letters.size() && block.letters[c - block.first] != '-') {
      out.push_back(static_cast<char32_t>(block.letters[c - block.first]));
      return;
    }
  }
  if ((c >= 0x391 && c <= 0x3A9) || (c >= 0x410 && c <= 0x42F)) {
    c += 0x20;
  } else if (c >= 0x400 && c <= 0x40F) {
    c += 0x50;
  } else if (c >= 0x531 && c <= 0x556) {
    c += 0x30;  // Armenian
  }
  out.push_back(c);
}

// In pairs: the letter, and the Latin one that looks like it.
constexpr std::u32string_view look_alikes =
    U"\u0430a\u0435e\u043Eo\u0440p\u0441c\u0443y\u0445x\u0456i\u0455s\u0458j\u04BBh\u0501d\u051Bq\u051Dw\u03BFo\u03B1a\u03BDv\u03C1p\u03B9i\u03C5u"
    U"\u043Ck\u043Dh\u0442t\u0432b";

[[nodiscard]] Letters joined(std::vector<Letters> words) {
  std::sort(words.begin(), words.end());
  Letters name;
  for (const Letters& word : words) {
    name += name.empty() ? word : U' ' + word;
  }
  return name;
}

}  // namespace

Letters to_letters(std::string_view utf8) {
  Letters out;
  for (std::size_t i = 0; i < utf8.size();) {
    const auto lead = static_cast<unsigned char>(utf8[i]);
    const std::size_t length = lead < 0x80 ? 1 : (lead < 0xE0 ? 2 : (lead < 0xF0 ? 3 : 4));
    char32_t c = length == 1 ? lead : lead & (0xFFU >> (length + 1));
    for (std::size_t k = 1; k < length && i + k < utf8.size(); ++k) {
      c = (c << 6U) | (static_cast<unsigned char>(utf8[i + k]) & 0x3FU);
    }
    out.push_back(c);
    i += length;
  }
  return out;
}

std::vector<Letters> folded_words(std::string_view utf8) {
  std::vector<Letters> words;
  Letters word;
  for (const char32_t c : to_letters(utf8)) {
    if (is_unheard(c)) {
      continue;
    }
    if (!parts_words(c)) {
      fold_onto(c, word);
    } else if (!word.empty()) {
      words.push_back(std::move(word));
      word.clear();
    }
  }
  if (!word.empty()) {
    words.push_back(std::move(word));
  }
  return words;
}

Letters folded_name(std::string_view utf8) { return joined(folded_words(utf8)); }

Letters look_alike_skeleton(const Letters& name) {
  std::vector<Letters> words(1);
  for (char32_t c : name) {
    if (c == U' ') {
      words.emplace_back();
      continue;
    }
    for (std::size_t i = 0; i + 1 < look_alikes.size(); i += 2) {
      if (look_alikes[i] == c) {
        c = look_alikes[i + 1];
        break;
      }
    }
    words.back().push_back(c);
  }
  return joined(std::move(words));
}

std::size_t slips_between(const Letters& a, const Letters& b, std::size_t most) {
  const std::size_t longer = std::max(a.size(), b.size());
  if (longer - std::min(a.size(), b.size()) > most) {
    return most + 1;
  }
  std::vector<std::size_t> before(b.size() + 1);
  std::vector<std::size_t> last(b.size() + 1);
  std::vector<std::size_t> row(b.size() + 1);
  for (std::size_t j = 0; j <= b.size(); ++j) {
    last[j] = j;
  }
  for (std::size_t i = 1; i <= a.size(); ++i) {
    row[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      row[j] = std::min({last[j] + 1, row[j - 1] + 1, last[j - 1] + (a[i - 1] == b[j - 1] ? 0U : 1U)});
      if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) {
        row[j] = std::min(row[j], before[j - 2] + 1);
      }
    }
    std::swap(before, last);
    std::swap(last, row);
  }
  return std::min(last[b.size()], most + 1);
}

std::string trimmed(std::string_view text) {
  // White space of the Unicode Character Database on one line, and the marks that show nothing and join nothing.
  constexpr std::array<std::string_view, 20> spaces{" ",            "\t",           "\u00a0",       "\u1680",       "\u2000",
                                                    "\u2001",       "\u2002",       "\u2003",       "\u2004",       "\u2005",
                                                    "\u2006",       "\u2007",       "\u2008",       "\u2009",       "\u200a",
                                                    "\u200b",       "\u202f",       "\u205f",       "\u3000",       "\ufeff"};
  for (bool more = true; more;) {
    more = false;
    for (const std::string_view space : spaces) {
      while (text.starts_with(space)) {
        text.remove_prefix(space.size());
        more = true;
      }
      while (text.ends_with(space)) {
        text.remove_suffix(space.size());
        more = true;
      }
    }
  }
  return std::string(text);
}

}  // namespace limbledger::match

// Two people side by side, field by field: how well each agrees, in levels. What is compared is made ready once a person.
// A field that one of the two does not have says nothing. Names are compared as words in any order, so that given and family
// name exchanged, joined or left out are seen; letters that look alike in another script are a level of their own.
#pragma once

#include "core/match/birth.hpp"
#include "core/match/folded.hpp"
#include "core/model/person.hpp"

#include <array>
#include <string>
#include <vector>

namespace limbledger::match {

enum class NameLevel { missing, same, look_alike_letters, near, part, close, shares_word, other };
BOOST_DESCRIBE_ENUM(NameLevel, missing, same, look_alike_letters, near, part, close, shares_word, other)
enum class SexLevel { missing, same, other };
BOOST_DESCRIBE_ENUM(SexLevel, missing, same, other)
enum class TextLevel { missing, same, near, other };  // of a home, and of a number within its issuer
BOOST_DESCRIBE_ENUM(TextLevel, missing, same, near, other)

enum class Field { name, birth, sex, home, identifier };
BOOST_DESCRIBE_ENUM(Field, name, birth, sex, home, identifier)
inline constexpr std::size_t fields = 5;
inline constexpr std::array<std::size_t, fields> levels_of_field{8, 8, 3, 4, 4};  // with missing
inline constexpr std::size_t levels_max = 8;

// The level of each field; 0 is missing.
using Pattern = std::array<std::uint8_t, fields>;

struct Looked {
  struct Name {
    std::vector<Letters> words;  // as written
    Letters sorted;
    Letters joined;              // without spaces
    Letters skeleton;
  };
  struct Number {
    Letters issuer;
    std::string text;
  };
  std::vector<Name> names;
  std::optional<model::Birth> birth;
  std::optional<Days> born;
  model::Sex sex = model::Sex::unknown;
  Letters home;
  std::vector<Number> numbers;
};

[[nodiscard]] Looked look_at(const model::Person& person);

struct Compared {
  Pattern pattern{};
  Letters same_name;          // the name they share, where they share one
  bool perhaps_twins = false;  // born on one day with a word of the name in common, and the rest of the name another
  bool perhaps_kin = false;    // one name in one house, a generation apart
};
[[nodiscard]] Compared compare(const Looked& a, const Looked& b);

[[nodiscard]] std::string_view level_word(Field field, std::uint8_t level);

}  // namespace limbledger::match

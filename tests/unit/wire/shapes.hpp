// Invented shapes with every kind of member, for the tests of reader, writer and schema.
#pragma once

#include "core/wire/type.hpp"

namespace limbledger::wire::shapes {

enum class Colour { red, green };
BOOST_DESCRIBE_ENUM(Colour, red, green)

struct Tenths {
  std::int64_t steps = 0;
  static constexpr NumberRule wire_rule{-300, 1700, 10, "deg"};
};

struct Round {
  static constexpr std::string_view kind = "round";
  Tenths size;
};
BOOST_DESCRIBE_STRUCT(Round, (), (size))

struct Square {
  static constexpr std::string_view kind = "square";
  Count<0, 9> edges;
  std::optional<Name> label;
};
BOOST_DESCRIBE_STRUCT(Square, (), (edges, label))

using Shape = std::variant<Round, Square>;

struct Leaf {
  Name name;
  std::vector<Leaf> leaves;  // a type that contains itself
};
BOOST_DESCRIBE_STRUCT(Leaf, (), (name, leaves))

struct Everything {
  Colour colour{};
  Tenths tilt;
  bool open = false;
  Name name;
  Shape shape;
  std::optional<Count<1, 5>> stars;
  std::vector<Colour> colours;
  std::optional<Raw> anything;
  std::optional<Leaf> leaf;
};
BOOST_DESCRIBE_STRUCT(Everything, (), (colour, tilt, open, name, shape, stars, colours, anything, leaf))

constexpr auto notes(const Everything*) { return std::array{Note{"", "one of each"}, Note{"tilt", "forwards is positive"}, Note{"colour", "as seen"}}; }

inline constexpr std::string_view good =
    R"({"colour":"green","tilt":-1.5,"open":true,"name":"A","shape":{"kind":"square","edges":4},"stars":3,"colours":["red","green"],)"
    R"("anything":{"x": [1]},"leaf":{"name":"B","leaves":[{"name":"C","leaves":[]}]}})";

}  // namespace limbledger::wire::shapes

#include "core/model/notation.hpp"

#include "core/model/entered.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace limbledger;

TEST_CASE("a triple that is none is refused") {
  for (const char* text : {"", "0", "0-20", "5-10-140", "10-0", "0-20-110-5", "a-0-140", "0-20.5-110", "--20-110", "-5-0-140", "0-20-10", "5-20-0",
                           "0-30-0", "0-999-999", "0 20 110", "5-0-1400"}) {
    const auto read = model::read_neutral_zero(text);
    CHECK_MESSAGE(read.has_error(), text);
    if (!read) {
      const wire::Refusal refusal = read.error();
      CHECK(refusal.faults.front().code == "value.neutral_zero");
    }
  }
}

TEST_CASE("spaces and typographic dashes in a triple change nothing") {
  for (const char* text : {"0-20-110", " 0 - 20 - 110 ", "0\u201320\u2013110", "0\u221220\u2212110", "0\u201220\u2012110"}) {
    const auto read = model::read_neutral_zero(text);
    REQUIRE_MESSAGE(read.has_value(), text);
    CHECK(read->first.steps == -200);
    CHECK(read->second.steps == 1100);
  }
}

TEST_CASE("every triple of whole degrees that can be written is read back as it was") {
  for (std::int64_t first = -60; first <= 60; first += 5) {
    for (std::int64_t second = -60; second <= 160; second += 5) {
      if (first + second < 0) {
        continue;
      }
      const model::NeutralZero ends{{first * 10}, {second * 10}};
      const auto read = model::read_neutral_zero(model::write_neutral_zero(ends));
      REQUIRE(read.has_value());
      CHECK(read->first == ends.first);
      CHECK(read->second == ends.second);
    }
  }
}

TEST_CASE("an order names two directions around a zero") {
  const auto order = model::read_order(model::Word{"extension_zero_flexion"});
  REQUIRE(order);
  CHECK(order->first.text == "extension");
  CHECK(order->second.text == "flexion");
  const auto rotation = model::read_order(model::Word{"external_rotation_zero_internal_rotation"});
  REQUIRE(rotation);
  CHECK(rotation->second.text == "internal_rotation");
  for (const char* text : {"extension", "extension_zero_", "_zero_flexion", "zero"}) {
    CHECK(!model::read_order(model::Word{text}));
  }
}

TEST_CASE("a written number keeps its digits, its sign, its bound and its unit") {
  const auto plain = model::read_entered_number(" 87.5 cm ");
  REQUIRE(plain);
  CHECK(plain->token == "87.5");
  CHECK(plain->unit == "cm");
  CHECK(!plain->signed_);
  const auto above = model::read_entered_number(">120");
  REQUIRE(above);
  CHECK(above->bound == model::Bound::at_least);
  CHECK(above->token == "120");
  CHECK(model::read_entered_number("\u2264 15")->bound == model::Bound::at_most);
  CHECK(model::read_entered_number("\u221210")->token == "-10");
  CHECK(model::read_entered_number("+5")->signed_);
  // A decimal comma is no number here: 33,3 must never become 333.
  for (const char* text : {"33,3", "1.2.3", "0-20-110", "full", "", ">", "-", "1 2"}) {
    CHECK_MESSAGE(!model::read_entered_number(text), text);
  }
}

TEST_CASE("words are read only where they have one meaning") {
  CHECK(model::read_entered_words("full") == model::Reads::full);
  CHECK(model::read_entered_words(" Full ") == model::Reads::full);
  CHECK(model::read_entered_words("equal to other side") == model::Reads::same_as_other_side);
  CHECK(model::read_entered_words("good") == std::nullopt);
  CHECK(model::read_entered_words("normal") == std::nullopt);
}

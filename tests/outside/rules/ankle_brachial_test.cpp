// The ankle-brachial index at the edges of its bands and with pressures missing, against a digest made by exact fractions and brute
// force in another language (tests/outside/node/ankle_brachial.mjs), and against its ten worked examples (AHA_ACC2016, abi/aha2016).
#include "core/interpret/rules/vessel/ankle_brachial.hpp"
#include "tests/outside/truth_table.hpp"

#include <doctest/doctest.h>

#include <array>
#include <string>
#include <vector>

using namespace limbledger;
using namespace limbledger::interpret;
using namespace limbledger::outside_test;

namespace {

using Pressures = std::array<std::string, 4>;

std::string judged_line(const Pressures& words) {
  const std::array<std::string, 4> names{"dp", "pt", "ra", "la"};
  const std::array<std::string, 4> bands{"low", "borderline", "expected", "noncompressible"};
  AnklePressures in;
  std::string line;
  for (std::size_t i = 0; i < 4; ++i) {
    in[i] = to_between(words[i]);
    line += (i == 0 ? "" : "|") + words[i];
  }
  const AnkleIndex index = ankle_brachial(in);
  line += " -> " + (index.band ? bands[static_cast<std::size_t>(*index.band)] : std::string("undetermined")) + "; settle=";
  bool first = true;
  for (std::size_t i = 0; i < 4; ++i) {
    if (index.settles[i]) {
      line += (first ? "" : ",") + names[i];
      first = false;
    }
  }
  return line + "\n";
}

}  // namespace

TEST_CASE("the ankle-arm index gives the band and what settles it that exact fractions give, at every edge and with pressures missing") {
  const std::vector<std::string> ankle{"0", "100", "126", "127", "138", "140", "196", "197", "unknown"};
  const std::vector<std::string> arm{"119", "132", "140", "unknown"};
  std::string all;
  std::size_t lines = 0;
  for (const auto& dp : ankle) {
    for (const auto& pt : ankle) {
      for (const auto& ra : arm) {
        for (const auto& la : arm) {
          all += judged_line({dp, pt, ra, la});
          ++lines;
        }
      }
    }
  }
  CHECK(lines == 1'296);
  const std::string text = slurp("ankle_brachial_digest.json");
  const auto document = wire::parse(text);
  REQUIRE(document.has_value());
  const wire::Node* digest = document->child(document->root(), "digest");
  REQUIRE(digest != nullptr);
  CHECK(blake2b_256(all) == digest->text);
}

TEST_CASE("the ankle-arm index gives the band and what settles it of its ten worked examples") {
  const std::array<std::pair<Pressures, std::string>, 10> examples{{
      {{"126", "110", "140", "132"}, "low; settle="},
      {{"127", "110", "140", "132"}, "borderline; settle="},
      {{"140", "120", "140", "138"}, "expected; settle="},
      {{"196", "150", "140", "140"}, "expected; settle="},
      {{"197", "150", "140", "140"}, "noncompressible; settle="},
      {{"100", "unknown", "140", "132"}, "undetermined; settle=pt"},
      {{"150", "unknown", "140", "132"}, "undetermined; settle=pt"},
      {{"110", "100", "140", "unknown"}, "low; settle="},
      {{"150", "130", "140", "unknown"}, "undetermined; settle=la"},
      {{"0", "0", "140", "138"}, "low; settle="},
  }};
  for (const auto& [words, expected] : examples) {
    const std::string line = judged_line(words);
    CHECK(line.substr(line.find(" -> ") + 4) == expected + "\n");
  }
}

TEST_CASE("the ankle-arm index in hundredths is the printed one of each worked example, and a bound where a pressure is missing") {
  const auto whole = [](std::int64_t dp, std::int64_t pt, std::int64_t ra, std::int64_t la) {
    return ankle_brachial({Between{dp, dp}, Between{pt, pt}, Between{ra, ra}, Between{la, la}}).low;
  };
  CHECK(whole(126, 110, 140, 132) == 90);
  CHECK(whole(127, 110, 140, 132) == 91);
  CHECK(whole(140, 120, 140, 138) == 100);
  CHECK(whole(196, 150, 140, 140) == 140);
  CHECK(whole(197, 150, 140, 140) == 141);
  CHECK(whole(0, 0, 140, 138) == 0);
  const AnkleIndex one_artery = ankle_brachial({Between{100, 100}, std::nullopt, Between{140, 140}, Between{132, 132}});
  CHECK(one_artery.low == 71);
  CHECK_FALSE(one_artery.high.has_value());
  const AnkleIndex one_arm = ankle_brachial({Between{110, 110}, Between{100, 100}, Between{140, 140}, std::nullopt});
  CHECK(one_arm.high == 79);
  CHECK_FALSE(one_arm.low.has_value());
}

// Assessing a whole knee exam that stands in no ledger, as a client asks for it (the text of the params in, the text of the
// assessment out, nothing carried), against the fastest look at the same text that there is: simdjson's On-Demand walk that
// touches every name and value. In turns; each turn is the middle of many calls. The exam is the fullest of the invented ones.
#include "core/reference/edition.hpp"
#include "core/service/call.hpp"
#include "tests/bench/bench.hpp"

#include <simdjson.h>

#include <fstream>
#include <iterator>

namespace limbledger::bench {

namespace {

constexpr int rounds = 25;
constexpr int calls_a_round = 40;
constexpr int walks_a_round = 400;
// Measured 55 to 58 times, and about a third more.
constexpr double at_most = 50;
constexpr double aim = 40;

std::string params_text() {
  std::ifstream file(std::string(LIMBLEDGER_SOURCE_DIR) + "/tests/unit/report/exams/football.json");
  const std::string document{std::istreambuf_iterator<char>(file), {}};
  if (document.empty()) {
    std::fprintf(stderr, "the exam cannot be read\n");
    std::exit(1);
  }
  return "{\"document\":" + document + "}";
}

// What was touched, so that nothing is left out: bytes of names and texts, numbers and the like one each.
class Walk {
 public:
  [[nodiscard]] std::size_t over(const simdjson::padded_string& text) {
    simdjson::ondemand::document document;
    simdjson::ondemand::value root;
    if (parser_.iterate(text).get(document) != simdjson::SUCCESS || document.get_value().get(root) != simdjson::SUCCESS) {
      return 0;
    }
    touched_ = 0;
    return touch(root) ? touched_ : 0;
  }

 private:
  [[nodiscard]] bool touch(simdjson::ondemand::value value) {
    simdjson::ondemand::json_type type{};
    if (value.type().get(type) != simdjson::SUCCESS) {
      return false;
    }
    switch (type) {
      case simdjson::ondemand::json_type::object:
        return touch_object(value);
      case simdjson::ondemand::json_type::array:
        return touch_list(value);
      case simdjson::ondemand::json_type::string: {
        std::string_view text;
        const bool good = value.get_string().get(text) == simdjson::SUCCESS;
        touched_ += text.size();
        return good;
      }
      case simdjson::ondemand::json_type::number: {
        double number = 0;
        const bool good = value.get_double().get(number) == simdjson::SUCCESS;
        touched_ += number != 0 ? 2 : 1;
        return good;
      }
      case simdjson::ondemand::json_type::boolean: {
        bool yes = false;
        const bool good = value.get_bool().get(yes) == simdjson::SUCCESS;
        touched_ += yes ? 2 : 1;
        return good;
      }
      default: {
        bool null = false;
        const bool good = value.is_null().get(null) == simdjson::SUCCESS;
        touched_ += null ? 1 : 0;
        return good;
      }
    }
  }
  [[nodiscard]] bool touch_object(simdjson::ondemand::value value) {
    simdjson::ondemand::object object;
    if (value.get_object().get(object) != simdjson::SUCCESS) {
      return false;
    }
    for (auto field : object) {
      std::string_view name;
      simdjson::ondemand::value inner;
      if (field.unescaped_key().get(name) != simdjson::SUCCESS || field.value().get(inner) != simdjson::SUCCESS || !touch(inner)) {
        return false;
      }
      touched_ += name.size();
    }
    return true;
  }
  [[nodiscard]] bool touch_list(simdjson::ondemand::value value) {
    simdjson::ondemand::array list;
    if (value.get_array().get(list) != simdjson::SUCCESS) {
      return false;
    }
    for (auto element : list) {
      simdjson::ondemand::value inner;
      if (element.get(inner) != simdjson::SUCCESS || !touch(inner)) {
        return false;
      }
    }
    return true;
  }

  simdjson::ondemand::parser parser_;
  std::size_t touched_ = 0;
};

int run() {
  const std::string text = params_text();
  const simdjson::padded_string padded(text);
  service::Context context;
  context.edition = reference::built_in_edition();
  context.caller.scope = service::Scope::examiner;
  std::size_t touched = 0;
  std::size_t said = 0;
  Walk walk;
  std::vector<double> ours;
  std::vector<double> floors;
  for (int round = 0; round < rounds; ++round) {
    std::vector<double> times;
    for (int i = 0; i < calls_a_round; ++i) {
      times.push_back(seconds([&] {
        const auto document = need(wire::parse(text), "params");
        said = need(service::call(service::methods(), context, "document.assess", document, &document.root()), "document.assess").size();
      }));
    }
    ours.push_back(median(times));
    times.clear();
    for (int i = 0; i < walks_a_round; ++i) {
      times.push_back(seconds([&] { touched = walk.over(padded); }));
    }
    floors.push_back(median(times));
  }
  if (touched == 0 || said == 0) {
    std::fprintf(stderr, "nothing was walked or said\n");
    return 1;
  }
  std::printf("%zu bytes in, %zu out: assessment %.1f us, walk %.2f us (medians of %d rounds, in turns)\n", text.size(), said, median(ours) * 1e6,
              median(floors) * 1e6, rounds);
  return judge("assessing a whole knee exam against walking its text", median(ours) / median(floors), at_most, aim);
}

}  // namespace

}  // namespace limbledger::bench

int main() { return limbledger::bench::run(); }

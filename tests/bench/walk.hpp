// The fastest look at a JSON text that there is: simdjson's On-Demand walk that touches every name and value.
#pragma once

#include <simdjson.h>

#include <string_view>

namespace limbledger::bench {

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

}  // namespace limbledger::bench

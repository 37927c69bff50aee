#include "core/model/check.hpp"

#include "core/model/check_run.hpp"

#include <algorithm>

namespace limbledger::model {

namespace {

constexpr std::int32_t tenths_per_unit = LimitNumber::wire_rule.per_unit;

template <class T>
[[nodiscard]] bool holds(const std::vector<T>& list, const T& what) {
  return std::find(list.begin(), list.end(), what) != list.end();
}

[[nodiscard]] std::string_view kind_wanted(const Item& item) {
  if (item.value == ValueKind::arc) {
    return Angle::kind;
  }
  return wire::type_of<ValueKind>().words[static_cast<std::size_t>(item.value)];
}

void check_word(const CheckRun& run, const std::optional<Word>& word, const std::optional<std::vector<Word>>& known, std::string_view code,
                std::string_view member) {
  if (word && !(known && holds(*known, *word))) {
    run.fault(code, member, known ? list_of_words(*known) : "none for this item");
  }
}

// Each kind of value by itself; an arc is split elsewhere.
struct CheckValue {
  const CheckRun& run;
  const CatalogueView& catalogue;
  const std::optional<Pain>& pain;

  void operator()(Angle& value) const { check_angle(run, value); }
  void operator()(Length& value) const { check_length(run, value); }
  void operator()(Duration& value) const { check_time(run, value); }
  void operator()(Force& value) const { check_force(run, value); }
  void operator()(Pressure& value) const { check_pressure(run, value); }
  void operator()(Temperature& value) const { check_temperature(run, value); }
  void operator()(Mass& value) const { check_mass(run, value); }
  void operator()(CountValue& value) const { run.within_limits(value.count.steps * tenths_per_unit, "/value/count"); }
  void operator()(Grade& value) const { check_grade(run, value, catalogue); }
  void operator()(Test& value) const { check_test(run, value, pain); }
  void operator()(Answer&) const {}
  void operator()(Choice& value) const { check_choice(run, value); }
  void operator()(Choices& value) const { check_choices(run, value); }
  void operator()(Words& value) const {
    if (value.text.text.empty()) {
      run.fault("value.empty", "/value/text", "some text, or nothing recorded");
    }
  }
  void operator()(NotDone& value) const {
    if (value.reason == WhyNot::other && (!value.detail || value.detail->text.empty())) {
      run.fault("value.why", "/value/detail", "the reason in words");
    }
  }
};

}  // namespace

bool takes_position(const Item& item, const Word& position) {
  if (!item.positions) {
    return true;
  }
  const auto listed = [&](const char* word) { return holds(*item.positions, Word{word}); };
  return holds(*item.positions, position) || (position.text == "left_tilt" && listed("supine")) ||
         (position.text == "on_lap" && (listed("supine") || listed("seated") || listed("half_sitting")));
}

std::string list_of_words(const std::vector<Word>& words) {
  std::string out;
  for (const Word& word : words) {
    out += (out.empty() ? "" : ", ") + word.text;
  }
  return out;
}

bool CheckRun::is_confirmed(std::string_view code) const {
  return std::any_of(confirmed.begin(), confirmed.end(), [code](const std::string& one) { return one == code; });
}

bool CheckRun::possible(std::int64_t tenths) const {
  return !item.refuse || (tenths >= item.refuse->front().steps && tenths <= item.refuse->back().steps);
}

bool CheckRun::within_limits(std::int64_t tenths, std::string_view member, bool turned, std::string_view mind) const {
  const auto report = [&](std::string_view code, std::int64_t low, std::int64_t high) {
    const std::string low_text = wire::write_number(turned ? -high : low, tenths_per_unit);
    const std::string high_text = wire::write_number(turned ? -low : high, tenths_per_unit);
    wire::Fault fault(code, path + std::string(member), low_text + " to " + high_text + std::string(mind), wire::write_number(tenths, tenths_per_unit));
    faults.push_back(std::move(fault).with("low", low_text).with("high", high_text));
  };
  const std::int64_t on_axis = turned ? -tenths : tenths;
  if (!possible(on_axis)) {
    report("value.out_of_range", item.refuse->front().steps, item.refuse->back().steps);
    return false;
  }
  if (item.confirm && (on_axis < item.confirm->front().steps || on_axis > item.confirm->back().steps) && !is_confirmed("value.unusual")) {
    report("value.unusual", item.confirm->front().steps, item.confirm->back().steps);
  }
  return true;
}

Checked check(const Observation& observation, const CatalogueView& catalogue, std::span<const std::string> confirmed, const std::string& path) {
  Checked checked;
  const Item* item = catalogue.item(observation.item);
  if (item == nullptr) {
    const std::string near = catalogue.nearest_item(observation.item);
    checked.faults.emplace_back("item.unknown", path + "/item", near.empty() ? "an item of the catalogue (nothing is near)" : "nearest: " + near);
    return checked;
  }
  const CheckRun run{*item, confirmed, path, checked.faults};
  if (!holds(item->sides, observation.side)) {
    std::string sides;
    for (const Side side : item->sides) {
      sides += (sides.empty() ? "" : ", ") + std::string(wire::type_of<Side>().words[static_cast<std::size_t>(side)]);
    }
    run.fault("item.side", "/side", sides);
  }
  check_word(run, observation.instrument, item->instruments, "value.instrument", "/instrument");
  if (!(observation.position && item->positions && takes_position(*item, *observation.position))) {
    check_word(run, observation.position, item->positions, "value.position", "/position");
  }
  check_word(run, observation.end_feel, item->end_feels, item->end_feels ? "params.unknown_word" : "item.not_applicable", "/end_feel");
  if (observation.origin == Origin::bulk_expected && item->safety) {
    run.fault("item.not_applicable", "/origin", "an answer of its own: this item is never part of a group entry");
  }
  Observation recorded = observation;
  if (kind_of(recorded.value) != kind_wanted(*item) && !std::holds_alternative<NotDone>(recorded.value)) {
    run.fault("value.kind", "/value/kind", std::string(kind_wanted(*item)), std::string(kind_of(recorded.value)));
  } else {
    if (item->value == ValueKind::arc) {
      if (std::holds_alternative<NotDone>(recorded.value)) {
        std::visit(CheckValue{run, catalogue, recorded.pain}, recorded.value);
      }
      checked.observations = check_arc(run, recorded, catalogue);
    } else {
      std::visit(CheckValue{run, catalogue, recorded.pain}, recorded.value);
      checked.observations.push_back(std::move(recorded));
    }
  }
  if (!checked.faults.empty()) {
    checked.observations.clear();
  }
  return checked;
}

}  // namespace limbledger::model

#include "core/interpret/motion/reading.hpp"

#include "core/interpret/body.hpp"

#include <algorithm>
#include <array>

namespace limbledger::interpret {

namespace {

constexpr std::int64_t tenths_to_thousandths = 100;

void take_how(Reading& reading, const model::Finding& finding) {
  if (finding.instrument) {
    reading.instruments.insert(finding.instrument->text);
  } else {
    reading.instrument_missing = true;
  }
  if (finding.position) {
    reading.positions.insert(finding.position->text);
  }
}

// Widens the reading by one finding's value.
void take(Reading& reading, const model::Finding& finding, const model::Angle& angle) {
  reading.findings.push_back(&finding);
  if (angle.reads || !(angle.deg || angle.toward_deg)) {
    const bool words = angle.reads && *angle.reads != model::Reads::unresolved;
    reading.readable = words && reading.readable != Readable::unresolved ? Readable::words_only : Readable::unresolved;
    return;
  }
  const std::int64_t toward = angle.toward_deg ? angle.toward_deg->steps : direction_of(*reading.item) * angle.deg->steps;
  std::int64_t low = toward * tenths_to_thousandths;
  std::int64_t high = low;
  if (angle.bound) {
    (*angle.bound == model::Bound::at_least ? high : low) = *angle.bound == model::Bound::at_least ? open_end : -open_end;
  }
  const bool first = reading.low == -open_end && reading.high == open_end;
  reading.low = first ? low : std::min(reading.low, low);
  reading.high = first ? high : std::max(reading.high, high);
  take_how(reading, finding);
}

// Exact item first, then region, then the instrument alone: the edition holds them in that order.
[[nodiscard]] const reference::ErrorRow* error_row(const reference::Edition& edition, const model::Item& item, const std::string& instrument) {
  const auto rows = edition.errors_of(item);
  const auto found = std::find_if(rows.begin(), rows.end(), [&](const reference::ErrorRow* row) { return row->instrument.text == instrument; });
  return found == rows.end() ? nullptr : *found;
}

// Thousandths of the item's unit; nothing where no number was recorded.
[[nodiscard]] std::optional<std::int64_t> measure_of(const model::Value& value) {
  if (const auto* length = std::get_if<model::Length>(&value)) {
    return length->mm ? std::optional(length->mm->steps * 1000) : std::nullopt;
  }
  if (const auto* time = std::get_if<model::Duration>(&value)) {
    return time->s ? std::optional(time->s->steps * 100) : std::nullopt;
  }
  const auto* count = std::get_if<model::CountValue>(&value);
  return count != nullptr ? std::optional(count->count.steps * 1000) : std::nullopt;
}

}  // namespace

std::int64_t direction_of(const model::Item& item) { return item.end && *item.end == model::AxisEnd::low ? -1 : 1; }

std::optional<Reading> read_motion(const model::Item& item, model::Side side, Findings findings) {
  std::optional<Reading> reading;
  for (const model::Finding* finding : findings) {
    const auto* angle = std::get_if<model::Angle>(&finding->value);
    if (angle == nullptr || !settles(*finding)) {
      continue;
    }
    if (!reading) {
      reading.emplace();
      reading->item = &item;
      reading->side = side;
    }
    take(*reading, *finding, *angle);
  }
  return reading;
}

std::vector<Reading> read_motions(const View& view) {
  std::vector<Reading> readings;
  for (const model::Finding* finding : view.findings()) {
    const auto* angle = std::get_if<model::Angle>(&finding->value);
    const model::Item* item = angle != nullptr ? view.edition().item(finding->item) : nullptr;
    if (item == nullptr || finding->side == model::Side::midline || !settles(*finding)) {
      continue;
    }
    // Findings come by item and side.
    if (readings.empty() || readings.back().item != item || readings.back().side != finding->side) {
      Reading& added = readings.emplace_back();
      added.item = item;
      added.side = finding->side;
    }
    take(readings.back(), *finding, *angle);
  }
  return readings;
}

std::vector<Reading> read_amounts(const View& view) {
  std::vector<Reading> readings;
  for (const model::Finding* finding : view.findings()) {
    const auto measure = measure_of(finding->value);
    const model::Item* item = measure ? view.edition().item(finding->item) : nullptr;
    if (item == nullptr || item->value == model::ValueKind::angle || !settles(*finding)) {
      continue;
    }
    if (readings.empty() || readings.back().item != item || readings.back().side != finding->side) {
      Reading& added = readings.emplace_back();
      added.item = item;
      added.side = finding->side;
      added.low = *measure;
      added.high = *measure;
    }
    Reading& reading = readings.back();
    reading.findings.push_back(finding);
    reading.low = std::min(reading.low, *measure);
    reading.high = std::max(reading.high, *measure);
    take_how(reading, *finding);
  }
  return readings;
}

std::vector<Reading> read_measures(const View& view) {
  std::vector<Reading> readings = read_amounts(view);
  readings.erase(std::remove_if(readings.begin(), readings.end(), [&](const Reading& one) { return view.edition().norms_of(*one.item).empty(); }),
                 readings.end());
  return readings;
}

std::string_view not_native(const View& view, const model::Item& item, model::Side side) {
  const OpenBody* body = view.bodies().silent(item, side);
  return body == nullptr ? std::string_view() : short_word(*body->row);
}

std::string_view not_compared(const View& view, const model::Item& item, model::Side side, std::string_view comparator) {
  const std::string_view joint = not_native(view, item, side);
  if (!joint.empty()) {
    return joint;
  }
  const OpenBody* body = view.bodies().uncompared(item, side, comparator);
  return body == nullptr ? std::string_view() : short_word(*body->row);
}

std::optional<std::int64_t> widest_error(const reference::Edition& edition, const std::vector<const Reading*>& readings) {
  std::int64_t widest = 0;
  for (const Reading* reading : readings) {
    for (const model::Word& instrument : reading->item->instruments.value_or(std::vector<model::Word>{})) {
      const reference::ErrorRow* row = error_row(edition, *reading->item, instrument.text);
      widest = row != nullptr && row->mdc95 ? std::max(widest, row->mdc95->steps) : widest;
    }
  }
  return widest > 0 ? std::optional(widest) : std::nullopt;
}

std::optional<Precision> precision_of(const reference::Edition& edition, const std::vector<const Reading*>& readings) {
  Precision precision;
  for (const Reading* reading : readings) {
    if (reading->instrument_missing || reading->instruments.empty()) {
      return std::nullopt;
    }
    for (const std::string& instrument : reading->instruments) {
      const reference::ErrorRow* row = error_row(edition, *reading->item, instrument);
      if (row == nullptr) {
        return std::nullopt;
      }
      precision.mdc95 = std::max(precision.mdc95, row->mdc95->steps);
      if (std::find(precision.rows.begin(), precision.rows.end(), row) == precision.rows.end()) {
        precision.rows.push_back(row);
      }
    }
  }
  std::sort(precision.rows.begin(), precision.rows.end(), [](const auto* a, const auto* b) { return a->row < b->row; });
  return precision;
}

}  // namespace limbledger::interpret

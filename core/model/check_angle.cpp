#include "core/model/check_run.hpp"
#include "core/model/entered.hpp"
#include "core/model/notation.hpp"

#include <algorithm>

namespace limbledger::model {

namespace {

// What a written text says of one end of the axis.
struct Read {
  std::optional<Degrees> toward_deg;
  std::optional<Bound> bound;  // on toward_deg
  std::optional<Reads> reads;
  bool triple = false;
};

[[nodiscard]] bool is_low(const Item& item) { return item.end == AxisEnd::low; }

[[nodiscard]] Degrees turn(const Item& item, Degrees degrees) { return is_low(item) ? -degrees : degrees; }

[[nodiscard]] std::optional<Bound> turn_bound(std::optional<Bound> bound) {
  if (!bound) {
    return bound;
  }
  return *bound == Bound::at_least ? Bound::at_most : Bound::at_least;
}

// One number. Its sign has a meaning when a direction is declared, or where only one meaning is in use: a plain number on the
// end that the axis is named for. Everything else on the other end is written both ways in daily practice, except zero.
[[nodiscard]] std::optional<Read> read_number_text(const CheckRun& run, const EnteredNumber& number, const std::optional<Word>& declared) {
  if (!number.unit.empty() && number.unit != "deg" && number.unit != "\u00b0") {
    run.fault("params.wrong_type", "/value/entered", "degrees");
    return std::nullopt;
  }
  Degrees degrees;
  const wire::TextProblem problem = wire::read_number(number.token, Degrees::wire_rule.per_unit, degrees.steps);
  if (!problem.empty()) {
    run.fault(problem, "/value/entered", problem == "value.step" ? "steps of 0.1" : "degrees");
    return std::nullopt;
  }
  Read read;
  read.bound = number.bound;
  const bool low = is_low(run.item);
  if (declared) {
    const bool named = run.item.toward && *declared == *run.item.toward;
    if (!named && !(run.item.axis && *declared == *run.item.axis)) {
      run.fault("params.unknown_word", "/value/order", run.item.toward->text + (low ? " or " + run.item.axis->text : ""));
      return std::nullopt;
    }
    read.toward_deg = named ? degrees : -degrees;
    read.bound = named ? read.bound : turn_bound(read.bound);
    return read;
  }
  const bool negative = number.token.front() == '-';
  if (degrees.steps != 0 && (low || negative)) {
    read.bound.reset();
    read.reads = Reads::unresolved;
    return read;
  }
  read.toward_deg = degrees;
  return read;
}

[[nodiscard]] std::optional<Read> read_text(const CheckRun& run, const Angle& angle) {
  const std::string& text = angle.entered->text;
  if (angle.order && read_order(*angle.order)) {
    const auto order = *read_order(*angle.order);
    const auto ends = read_neutral_zero(text);
    if (!ends) {
      run.fault("value.neutral_zero", "/value/entered", ends.error().faults.front().expected);
      return std::nullopt;
    }
    Read read;
    read.triple = true;
    if (run.item.toward && order.first == *run.item.toward) {
      read.toward_deg = ends->first;
    } else if (run.item.toward && order.second == *run.item.toward) {
      read.toward_deg = ends->second;
    } else {
      run.fault("value.neutral_zero", "/value/order", "an order that names " + run.item.toward->text);
      return std::nullopt;
    }
    return read;
  }
  if (const auto number = read_entered_number(text)) {
    // A direction may be declared in `order`, or with `toward` when nothing else was sent.
    std::optional<Word> declared = angle.order;
    if (!declared && !angle.deg) {
      declared = angle.toward;
    }
    return read_number_text(run, *number, declared);
  }
  Read read;
  read.reads = read_entered_words(text).value_or(Reads::unresolved);
  return read;
}

// A value in the form it is given out: all members at once, agreeing with each other.
[[nodiscard]] bool in_given_out_form(const Angle& angle) { return angle.deg && angle.toward && angle.toward_deg; }

void disagrees(const CheckRun& run, std::string_view member, Degrees expected, Degrees got) {
  run.fault("value.disagrees", member, expected.to_text(), got.to_text());
}

// Said in the direction in which it was sent, for a sign is easily taken for the other one.
void disagrees_with_readings(const CheckRun& run, std::string_view member, Degrees summed, const Angle& angle) {
  std::string expected = summed.to_text() + " deg on the axis";
  Degrees got = *angle.deg;
  if (run.item.axis && run.item.toward && angle.toward_deg && member != "/value/deg") {
    expected = "toward_deg " + turn(run.item, summed).to_text() + ": the readings are " + summed.to_text() + " along the axis, on which the way toward " + run.item.axis->text + " is more than zero" +
               (is_low(run.item) ? " and that toward " + run.item.toward->text + " less" : "");
    got = *angle.toward_deg;
  }
  run.fault("value.disagrees", member, expected, got.to_text());
}

void check_given_out(const CheckRun& run, const Angle& angle) {
  if (!run.item.toward || *angle.toward != *run.item.toward) {
    run.fault("value.disagrees", "/value/toward", run.item.toward ? run.item.toward->text : "");
    return;
  }
  if (!(turn(run.item, *angle.deg) == *angle.toward_deg)) {
    disagrees(run, "/value/toward_deg", turn(run.item, *angle.deg), *angle.toward_deg);
    return;
  }
  if (!angle.entered) {
    return;
  }
  const auto read = read_text(run, angle);
  if (read && (!read->toward_deg || !(*read->toward_deg == *angle.toward_deg))) {
    run.fault("value.disagrees", "/value/entered", angle.deg->to_text() + " deg");
  }
}

void take_entered(const CheckRun& run, Angle& angle) {
  const auto read = read_text(run, angle);
  if (!read) {
    return;
  }
  if (read->triple) {
    run.fault("value.neutral_zero", "/value/entered", "a triple goes in through the item for the whole arc");
    return;
  }
  const bool insists = angle.reads == Reads::unresolved;
  if (angle.reads && !insists && read->reads != Reads::unresolved && read->reads != angle.reads) {
    run.fault("value.disagrees", "/value/reads", "what was entered");
    return;
  }
  if (angle.bound && read->bound != angle.bound) {
    run.fault("value.disagrees", "/value/bound", "what was entered");
    return;
  }
  if (!angle.reads) {
    angle.reads = read->reads;
  }
  if (angle.reads) {
    angle.toward.reset();
    angle.order.reset();
    return;
  }
  // What was declared stays with the text, so that the next reader knows which convention it was written in.
  if (!angle.order) {
    angle.order = angle.toward;
  }
  angle.toward_deg = read->toward_deg;
  angle.bound = read->bound;
}

// Readings are on the axis, where the way to its low end is less than zero; who counts them in the direction of the motion means the opposite.
// So where both are usual, nobody else has said which, and somebody is asked.
void ask_sign(const CheckRun& run, Degrees deg) {
  const auto usual = [&](Degrees one) {
    const auto& range = run.item.confirm ? run.item.confirm : run.item.refuse;
    return !range || (one.steps >= range->front().steps && one.steps <= range->back().steps);
  };
  if (deg.steps == 0 || !usual(-deg) || run.is_confirmed("value.sign")) {
    return;
  }
  const std::string toward_deg = turn(run.item, deg).to_text();
  wire::Fault fault("value.sign", run.path + "/value/trials", "toward_deg with the readings, or confirmed; as they stand they say toward_deg " + toward_deg, deg.to_text());
  run.faults.push_back(std::move(fault).with("toward_deg", toward_deg));
}

}  // namespace

void check_angle(const CheckRun& run, Angle& angle) {
  const std::size_t before = run.faults.size();
  const bool given_out = in_given_out_form(angle);
  const int ways = (angle.deg ? 1 : 0) + (angle.toward_deg ? 1 : 0) + (angle.entered ? 1 : 0);
  if (!given_out && ways != 1 && !(ways == 0 && angle.trials)) {
    run.fault("value.all_or_one", "/value", "exactly one of deg, toward_deg, entered");
    return;
  }
  if (angle.order && !angle.entered) {
    run.fault("value.disagrees", "/value/order", "an entered text");
  }
  if (angle.reads && !(angle.entered && !angle.deg)) {
    run.fault("value.disagrees", "/value/reads", "an entered text and no number");
  }
  if (!given_out && !angle.entered && angle.toward && !(run.item.toward && *angle.toward == *run.item.toward)) {
    run.fault("value.disagrees", "/value/toward", run.item.toward ? run.item.toward->text : "");
  }
  // Readings are on the axis, as `deg` is; the best one is the furthest toward the named direction.
  const auto summed = check_trials(run, angle.trials, angle.of_trials, is_low(run.item));
  if (run.faults.size() != before) {
    return;
  }
  std::string_view member = "/value/deg";
  if (given_out) {
    check_given_out(run, angle);
  } else if (angle.entered) {
    member = "/value/entered";
    take_entered(run, angle);
    if (angle.toward_deg) {
      angle.deg = turn(run.item, *angle.toward_deg);
    }
  } else if (angle.toward_deg) {
    member = "/value/toward_deg";
    angle.deg = turn(run.item, *angle.toward_deg);
  } else if (!angle.deg) {
    member = "/value/trials";
    angle.deg = summed;
  }
  if (run.faults.size() != before || !angle.deg) {
    if (angle.bound && !angle.deg && run.faults.size() == before) {
      run.fault("value.disagrees", "/value/bound", "a number");
    }
    return;
  }
  if (summed && !(*summed == *angle.deg)) {
    disagrees_with_readings(run, member, *summed, angle);
    return;
  }
  angle.toward = run.item.toward;
  angle.toward_deg = turn(run.item, *angle.deg);
  const bool turned = is_low(run.item) && member == "/value/toward_deg";
  const bool possible = run.within_limits(turned ? angle.toward_deg->steps : angle.deg->steps, member, turned);
  if (possible && member == "/value/trials" && is_low(run.item)) {
    ask_sign(run, *angle.deg);
  }
}

std::vector<Observation> check_arc(const CheckRun& run, const Observation& observation, const CatalogueView& catalogue) {
  std::vector<Observation> ends(2, observation);
  if (!run.item.arc) {
    run.fault("item.unknown", "/item", "an arc with two ends");
    return {};
  }
  ends[0].item = run.item.arc->low;
  ends[1].item = run.item.arc->high;
  if (std::holds_alternative<NotDone>(observation.value)) {
    return ends;
  }
  const Item* low = catalogue.item(run.item.arc->low);
  const Item* high = catalogue.item(run.item.arc->high);
  if (low == nullptr || high == nullptr || !low->toward || !high->toward) {
    run.fault("item.unknown", "/item", "both ends of the arc");
    return {};
  }
  const Angle& sent = std::get<Angle>(observation.value);
  if (!sent.entered || sent.deg || sent.toward_deg || sent.toward || sent.trials || sent.of_trials || sent.bound) {
    run.fault("value.all_or_one", "/value", "entered, and its order");
    return {};
  }
  Angle angle;
  angle.entered = sent.entered;
  if (!sent.order || sent.reads == Reads::unresolved) {
    // Written in either order in daily practice: kept as it is, and nothing computes with it until a person says which.
    angle.reads = Reads::unresolved;
    ends[0].value = angle;
    ends[1].value = angle;
    return ends;
  }
  const std::string orders = low->toward->text + "_zero_" + high->toward->text + " or " + high->toward->text + "_zero_" + low->toward->text;
  const auto order = read_order(*sent.order);
  const bool low_first = order && order->first == *low->toward && order->second == *high->toward;
  const bool high_first = order && order->first == *high->toward && order->second == *low->toward;
  if (!low_first && !high_first) {
    run.fault("value.neutral_zero", "/value/order", orders);
    return {};
  }
  const auto triple = read_neutral_zero(sent.entered->text);
  if (!triple) {
    run.fault("value.neutral_zero", "/value/entered", triple.error().faults.front().expected);
    return {};
  }
  angle.order = sent.order;
  const std::size_t before = run.faults.size();
  for (std::size_t i = 0; i < ends.size(); ++i) {
    const Item& item = i == 0 ? *low : *high;
    angle.toward = item.toward;
    angle.toward_deg = (i == 0) == low_first ? triple->first : triple->second;
    angle.deg = turn(item, *angle.toward_deg);
    const CheckRun end{item, run.confirmed, run.path, run.faults};
    end.within_limits(angle.deg->steps, "/value/entered");
    ends[i].value = angle;
  }
  return run.faults.size() == before ? ends : std::vector<Observation>{};
}

}  // namespace limbledger::model

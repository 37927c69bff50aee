#include "core/interpret/motion/difference.hpp"

#include "core/interpret/motion/compare.hpp"
#include "core/interpret/motion/lines.hpp"

#include <algorithm>
#include <string>
#include <utility>

namespace limbledger::interpret {

namespace {

struct Names {
  std::string_view kind;
  Comparator comparator;
  std::string prefix;  // of the message
  std::int64_t least;
};

[[nodiscard]] const Reading* find(const std::vector<Reading>& readings, const model::ItemId& item, model::Side side) {
  for (const Reading& reading : readings) {
    if (reading.item->item == item && reading.side == side) {
      return &reading;
    }
  }
  return nullptr;
}

// The one word that a reading was declared in (+5 toward extension, or toward flexion), or empty.
[[nodiscard]] std::string order_of(const Reading& reading) {
  std::string order;
  for (const model::Finding* finding : reading.findings) {
    const auto* angle = std::get_if<model::Angle>(&finding->value);
    if (angle == nullptr || !angle->order || !angle->entered || (!order.empty() && order != angle->order->text)) {
      return {};
    }
    order = angle->order->text;
  }
  return order;
}

[[nodiscard]] std::string entered_of(const Reading& reading) {
  return std::get<model::Angle>(reading.findings.front()->value).entered->text;
}

// The same text can mean two things: both are shown as they were written.
void convention_params(const Reading& reading, const Reading& other, Params& params) {
  const std::string order = order_of(reading);
  const std::string before = order_of(other);
  if (!order.empty() && !before.empty() && order != before) {
    params.yes("conventions_differ").word("entered", entered_of(reading)).word("other_entered", entered_of(other));
  }
}

[[nodiscard]] std::string one_of(const std::set<std::string>& words) { return words.size() == 1 ? *words.begin() : std::string(); }

// Measured by two people, while the error held is that of one who measured twice.
[[nodiscard]] bool one_rater_alone(const Reading& reading, const Reading& other, const Precision& precision) {
  const auto* now = reading.findings.front();
  const auto* then = other.findings.front();
  const bool two = now->examiner && then->examiner && !(*now->examiner == *then->examiner);
  return two && std::any_of(precision.rows.begin(), precision.rows.end(), [](const reference::ErrorRow* row) { return row->rater == reference::Rater::same; });
}

[[nodiscard]] Judged judge_pair(const View& view, const Reading& reading, const Reading& other, const Names& names) {
  Judged judged = begin_motion(names.kind, names.comparator, reading);
  Statement& statement = judged.statement;
  const std::vector<model::FindingId> others = ids_of(other.findings);
  if (names.comparator == Comparator::other_side) {
    statement.findings.insert(statement.findings.end(), others.begin(), others.end());
  }
  for (const WorkingInput& input : begin_motion(names.kind, names.comparator, other).working.inputs) {
    judged.working.inputs.push_back(input);
  }
  judged.working.formula = {names.least > 0 ? "real if the difference exceeds the larger minimal detectable change and 10 between sides"
                                            : "real if the difference exceeds the larger minimal detectable change"};
  Params params;
  reading_params(reading, params);
  if (other.exact()) {
    params.figure("other_deg", other.low);
  }
  const Difference difference = difference_of(view.edition(), reading, other, names.least);
  if (difference.comparable == Comparable::needs_instrument) {
    statement.params = params.raw();
    statement.missing.push_back({"instrument"});
    name_message(judged, names.prefix + "needs_instrument");
    judged.working.changes_if.push_back({"msg.change.instrument"});
    return judged;
  }
  if (difference.comparable == Comparable::other_position) {
    const std::string position = one_of(reading.positions);
    const std::string before = one_of(other.positions);
    if (!position.empty() && !before.empty()) {
      params.word("position", position).word("other_position", before);
    }
    statement.params = params.raw();
    name_message(judged, names.prefix + "other_position");
    judged.working.changes_if.push_back({"msg.change.same_position"});
    return judged;
  }
  error_rows(difference.precision, judged);
  const std::int64_t low = difference.low;
  const std::int64_t high = difference.high;
  const std::int64_t needed = difference.needed;
  if (low == high) {
    params.figure("difference_deg", low);
  }
  params.figure("needed_deg", needed);
  if (difference.methods_differ) {
    params.yes("methods_differ");
    judged.working.changes_if.push_back({"msg.change.same_instrument"});
  }
  if (one_rater_alone(reading, other, difference.precision)) {
    params.yes("one_rater");
  }
  convention_params(reading, other, params);
  statement.params = params.raw();
  const bool below = high < -needed;
  const bool above = low > needed;
  statement.verdict = below ? Verdict::below : (above ? Verdict::above : Verdict::not_distinguishable);
  statement.grade = below || above ? StatementGrade::notable : StatementGrade::unclear;
  name_message(judged, names.prefix + (below ? "below" : (above ? "above" : "not_distinguishable")));
  if (reading.exact() && other.exact()) {
    judged.working.lines.push_back(
        {in_tenths(reading.low) + " - " + (other.low < 0 ? "(" + in_tenths(other.low) + ")" : in_tenths(other.low)) + " = " + in_tenths(low)});
  } else {
    judged.working.lines.push_back({reading_text(reading.low, reading.high) + " against " + reading_text(other.low, other.high)});
  }
  const std::string size = low == high ? in_tenths(low < 0 ? -low : low) : "the difference";
  judged.working.lines.push_back({size + (below || above ? " exceeds " : " does not exceed ") + in_tenths(needed)});
  judged.working.changes_if.push_back({"msg.change.repeat_reading"});
  return judged;
}

[[nodiscard]] bool comparable(const View& view, const Reading& reading) {
  return reading.readable == Readable::number && not_compared(view, *reading.item, reading.side, "other_side").empty();
}

}  // namespace

std::vector<Judged> judge_sides(const View& view, const std::vector<Reading>& readings) {
  const Names names{"motion.side", Comparator::other_side, "side_", side_difference_least};
  std::vector<Judged> judged;
  const auto& complaint = view.exam().side;
  for (const Reading& reading : readings) {
    if (complaint && *complaint != model::Side::midline && *complaint != reading.side) {
      continue;
    }
    const Reading* other = find(readings, reading.item->item, other_side(reading.side));
    if (other != nullptr && comparable(view, reading) && comparable(view, *other)) {
      judged.push_back(judge_pair(view, reading, *other, names));
    }
  }
  return judged;
}

std::vector<const model::Exam*> exams_before(const View& view, std::span<const model::Exam> earlier) {
  std::vector<const model::Exam*> past;
  const model::When now = model::when_done(view.exam());
  for (const model::Exam& exam : earlier) {
    // One whose day nobody knows is neither earlier nor later; beside a document without a time each that has one is earlier.
    const model::When then = model::when_done(exam);
    const bool before = model::is_before(then, now) || (then.day && !now.day && !now.doubtful);
    if (before && !(exam.state && *exam.state == model::ExamState::withdrawn)) {
      past.push_back(&exam);
    }
  }
  // Latest first; two of one moment by their ids.
  std::sort(past.begin(), past.end(), [](const model::Exam* a, const model::Exam* b) {
    const std::int64_t a_ms = model::when_done(*a).in_order_ms;
    const std::int64_t b_ms = model::when_done(*b).in_order_ms;
    if (a_ms != b_ms) {
      return b_ms < a_ms;
    }
    return a->exam && b->exam ? *a->exam < *b->exam : wire::write(*a) < wire::write(*b);
  });
  return past;
}

std::vector<Judged> judge_past(const View& view, const std::vector<Reading>& readings, std::span<const model::Exam> earlier) {
  const Names names{"motion.past", Comparator::own_past, "past_", 0};
  const std::vector<const model::Exam*> past = exams_before(view, earlier);
  std::vector<Judged> judged;
  for (const Reading& reading : readings) {
    if (reading.readable != Readable::number) {
      continue;
    }
    for (const model::Exam* exam : past) {
      const View then(*exam, view.person(), view.edition(), view.as_of());
      const std::vector<Reading> readings_then = read_motions(then);
      const Reading* other = find(readings_then, reading.item->item, reading.side);
      if (other == nullptr || other->readable != Readable::number) {
        continue;
      }
      // A joint fused or replaced in between has another past.
      if (not_native(view, *reading.item, reading.side) == not_native(then, *reading.item, reading.side)) {
        judged.push_back(judge_pair(view, reading, *other, names));
      }
      break;
    }
  }
  return judged;
}

std::vector<Contradiction> motion_contradictions(const View& view, const std::vector<Reading>& readings) {
  std::vector<Contradiction> contradictions;
  std::vector<std::pair<const Reading*, std::string>> passives;  // with their motions
  for (const Reading& reading : readings) {
    if (mode_of(*reading.item) == reference::Mode::passive && reading.readable == Readable::number) {
      passives.emplace_back(&reading, motion_without_mode(*reading.item));
    }
  }
  for (const Reading& active : readings) {
    if (mode_of(*active.item) != reference::Mode::active || active.readable != Readable::number) {
      continue;
    }
    const std::string motion = motion_without_mode(*active.item);
    for (const auto& [other, other_motion] : passives) {
      const Reading& passive = *other;
      if (passive.side != active.side || other_motion != motion || passive.item->toward != active.item->toward) {
        continue;
      }
      const auto precision = precision_of(view.edition(), {&active, &passive});
      if (active.low - passive.high <= (precision ? precision->mdc95 : contradicts_without_error * 100)) {
        continue;
      }
      Contradiction found;
      found.contradiction = {"motion.active_beyond_passive:" + motion + ":" + std::string(side_word(active.side))};
      found.side = active.side;
      found.message = {"msg.contradiction.active_beyond_passive"};
      found.params = Params().figure("active_deg", active.low).figure("passive_deg", passive.high).raw();
      std::vector<const model::Finding*> both = active.findings;
      both.insert(both.end(), passive.findings.begin(), passive.findings.end());
      found.findings = ids_of(both);
      contradictions.push_back(std::move(found));
    }
  }
  return contradictions;
}

}  // namespace limbledger::interpret

#include "core/report/text.hpp"

#include "core/wire/number.hpp"
#include "core/wire/text.hpp"

#include <algorithm>

namespace limbledger::report {

namespace {

constexpr std::string_view marks[] = {"\u2068", "\u2069"};

[[nodiscard]] std::string spaced(std::string_view word) {
  std::string out(word);
  std::replace(out.begin(), out.end(), '_', ' ');
  return out;
}

// A measured value: number with unit, its readings, what was written.
template <class Q>
[[nodiscard]] std::string measured(const Words& words, const std::optional<Q>& value, const std::optional<std::vector<Q>>& trials,
                                   const std::optional<model::OfTrials>& of_trials, const std::optional<wire::Name>& entered, std::string_view unit) {
  std::vector<std::string> parts;
  if (value) {
    parts.push_back(words.say("msg.value.unit", {{"value", value->to_text(), true}, {"unit", word_of(words, "unit", unit), false, true}}));
  }
  if (trials && trials->size() > 1) {
    std::vector<std::string> readings;
    for (const Q& reading : *trials) {
      readings.push_back(reading.to_text());
    }
    const std::string how = of_trials ? enum_word(words, "trials", *of_trials) : std::string();
    parts.push_back(words.say("msg.value.trials", {{"trials", joined(readings), true}, {"how", how, false, true}}));
  }
  if (entered) {
    parts.push_back(words.say("msg.value.written", {{"text", entered->text}}));
  }
  return joined(parts);
}

struct Say {
  const Words& words;
  const reference::Edition& edition;
  const model::Finding& finding;

  [[nodiscard]] std::string operator()(const model::Angle& v) const {
    std::vector<std::string> parts{angle_text(words, v)};
    if (v.trials && v.trials->size() > 1) {
      std::vector<std::string> readings;
      for (const model::Degrees& reading : *v.trials) {
        readings.push_back(reading.to_text());
      }
      const std::string how = v.of_trials ? enum_word(words, "trials", *v.of_trials) : std::string();
      parts.push_back(words.say("msg.value.trials", {{"trials", joined(readings), true}, {"how", how, false, true}}));
    }
    if (v.entered && !(v.reads && *v.reads == model::Reads::unresolved)) {
      parts.push_back(words.say("msg.value.written", {{"text", v.entered->text}}));
    }
    return joined(parts);
  }
  [[nodiscard]] std::string operator()(const model::Length& v) const { return measured(words, v.mm, v.trials, v.of_trials, v.entered, "mm"); }
  [[nodiscard]] std::string operator()(const model::Duration& v) const { return measured(words, v.s, v.trials, v.of_trials, v.entered, "s"); }
  [[nodiscard]] std::string operator()(const model::Force& v) const { return measured(words, v.n, v.trials, v.of_trials, v.entered, "n"); }
  [[nodiscard]] std::string operator()(const model::Pressure& v) const {
    std::string text = measured(words, v.mm_hg, v.trials, v.of_trials, v.entered, "mm_hg");
    return v.signal ? joined({words.say("msg.value.signal_absent"), text}) : text;
  }
  [[nodiscard]] std::string operator()(const model::Temperature& v) const { return measured(words, v.cel, v.trials, v.of_trials, v.entered, "cel"); }
  [[nodiscard]] std::string operator()(const model::Mass& v) const { return measured(words, v.kg, v.trials, v.of_trials, v.entered, "kg"); }
  [[nodiscard]] std::string operator()(const model::CountValue& v) const {
    // "1" beside a rule that calls it not felt: out of how many, where a sense is counted.
    const std::string count = wire::write_number(v.count.steps, 1);
    const model::Item* item = edition.item(finding.item);
    constexpr std::int64_t year_weeks = 52;
    if (finding.item.text == "history.weeks_since_onset" && v.count.steps >= year_weeks) {
      return words.say("msg.value.weeks_and_years", {{"weeks", count, true}, {"years", wire::write_number((v.count.steps + year_weeks / 2) / year_weeks, 1), true}});
    }
    const std::string of = item == nullptr ? std::string() : "msg.count_of." + item->family.text;
    return words.has(of) ? words.say(of, {{"count", count, true}}) : count;
  }
  [[nodiscard]] std::string operator()(const model::Grade& v) const {
    const std::string grade = v.grade.text + (v.shade ? (*v.shade == model::Shade::minus ? "-" : "+") : "");
    std::string text;
    const model::Scale* scale = edition.scale(v.scale);
    if (scale != nullptr) {
      for (const model::ScaleGrade& known : scale->grades) {
        if (known.grade == v.grade && words.has(known.means.text)) {
          text = words.say("msg.value.grade_means", {{"grade", grade, false, true}, {"means", words.say(known.means.text), false, true}});
        }
      }
    }
    if (text.empty()) {
      text = words.say("msg.value.grade", {{"grade", grade, false, true}});
    }
    std::vector<std::string> parts{text};
    if (v.mm) {
      parts.push_back(words.say("msg.value.unit", {{"value", v.mm->to_text(), true}, {"unit", word_of(words, "unit", "mm"), false, true}}));
    }
    if (v.word) {
      parts.push_back(words.say("msg.value.written", {{"text", v.word->text}}));
    }
    return joined(parts);
  }
  // "Positive" and "no" read both ways by a label alone: what they say stands beside them where the catalogue has it in words.
  [[nodiscard]] std::string in_words(std::string value, bool yes) const {
    const model::Item* item = edition.item(finding.item);
    const std::optional<model::MessageId> says = item == nullptr ? std::nullopt : (yes ? item->text.yes : item->text.no);
    return says && words.has(says->text) ? words.say("msg.value.in_words", {{"value", value, false, true}, {"says", words.say(says->text), false, true}})
                                         : value;
  }
  [[nodiscard]] std::string operator()(const model::Test& v) const {
    const std::string result = enum_word(words, "value", v.result);
    std::vector<std::string> parts{v.result == model::TestResult::equivocal ? result : in_words(result, v.result == model::TestResult::positive)};
    if (v.reproduces) {
      parts.push_back(words.say("msg.value.reproduces", {{"reproduces", *v.reproduces == model::Reproduces::familiar ? "familiar" : "other"}}));
    }
    return joined(parts);
  }
  [[nodiscard]] std::string operator()(const model::Answer& v) const {
    const std::string answer = enum_word(words, "value", v.answer);
    return v.answer == model::AnswerWord::yes || v.answer == model::AnswerWord::no ? in_words(answer, v.answer == model::AnswerWord::yes) : answer;
  }
  [[nodiscard]] std::string operator()(const model::Choice& v) const { return word_of(words, "choice", v.choice.text); }
  [[nodiscard]] std::string operator()(const model::Choices& v) const {
    std::vector<std::string> parts;
    for (const model::ChoiceId& choice : v.choices) {
      parts.push_back(word_of(words, "choice", choice.text));
    }
    return joined(parts);
  }
  [[nodiscard]] std::string operator()(const model::Words& v) const { return words.say("msg.value.quote", {{"text", v.text.text}}); }
  [[nodiscard]] std::string operator()(const model::NotDone& v) const {
    const std::string why = enum_word(words, "why", v.reason);
    return v.detail ? why + " (" + std::string(marks[0]) + v.detail->text + std::string(marks[1]) + ")" : why;
  }
};

}  // namespace

std::string as_written(std::string_view text) { return std::string(marks[0]) + std::string(text) + std::string(marks[1]); }

std::size_t width_of(std::string_view utf8) {
  std::size_t width = wire::code_points(utf8);
  for (const std::string_view mark : marks) {
    for (std::size_t at = utf8.find(mark); at != std::string_view::npos; at = utf8.find(mark, at + mark.size())) {
      --width;
    }
  }
  return width;
}

std::string wrapped(std::string_view text, std::string_view first) {
  const std::string indent(width_of(first), ' ');
  std::string out;
  std::string line(first);
  bool begun = false;
  const auto end_line = [&] {
    out += line + '\n';
    line = indent;
    begun = false;
  };
  for (std::size_t at = 0; at < text.size();) {
    if (text[at] == '\n') {
      end_line();
      ++at;
      continue;
    }
    if (text[at] == ' ') {
      ++at;
      continue;
    }
    const std::size_t end = std::min(text.find_first_of(" \n", at), text.size());
    const std::string_view word = text.substr(at, end - at);
    if (begun && width_of(line) + 1 + width_of(word) > columns) {
      end_line();
    }
    line += (begun ? " " : "") + std::string(word);
    begun = true;
    at = end;
  }
  out += line + '\n';
  return out;
}

std::string word_of(const Words& words, std::string_view kind, std::string_view word) {
  const std::string name = "msg." + std::string(kind) + "." + std::string(word);
  return words.has(name) ? words.say(name) : spaced(word);
}

const std::vector<model::Finding>& findings_of(const model::Exam& exam) {
  static const std::vector<model::Finding> none;
  return exam.findings ? *exam.findings : none;
}

std::string side_of(const Words& words, model::Side side) { return enum_word(words, "side", side); }

std::string item_label(const Words& words, const reference::Edition& edition, const model::ItemId& item) {
  const model::Item* known = edition.item(item);
  return known != nullptr && words.has(known->text.short_.text) ? words.say(known->text.short_.text) : item.text;
}

bool grades_against_other(const reference::Edition& edition, const model::ItemId& item) {
  const model::Item* known = edition.item(item);
  const model::Scale* scale = known != nullptr && known->scale ? edition.scale(*known->scale) : nullptr;
  return scale != nullptr && scale->against_other_side.value_or(false);
}

bool holds_other_side(const model::Exam& exam, const model::ItemId& item, model::Side side) {
  const std::vector<model::Finding>& all = findings_of(exam);
  return std::any_of(all.begin(), all.end(), [&](const model::Finding& finding) {
    const bool stands = !finding.standing || *finding.standing == model::Standing::current || *finding.standing == model::Standing::in_conflict;
    return stands && finding.item == item && finding.side != side && finding.side != model::Side::midline &&
           !std::holds_alternative<model::NotDone>(finding.value);
  });
}

std::string angle_text(const Words& words, const model::Angle& angle) {
  if (angle.reads) {
    const std::string written = angle.entered ? angle.entered->text : std::string();
    switch (*angle.reads) {
      case model::Reads::unresolved:
        return words.say("msg.value.unresolved", {{"text", written}});
      case model::Reads::full:
        return words.say("msg.value.full");
      case model::Reads::same_as_other_side:
        return words.say("msg.value.same_as_other_side");
    }
  }
  std::string text;
  // A bare sign is read in two ways, so the end toward extension is said in words.
  const bool named = angle.toward && angle.toward_deg && angle.deg && angle.toward_deg->steps == -angle.deg->steps;
  if (named && angle.toward->text == "extension") {
    const std::int64_t steps = angle.toward_deg->steps;
    const std::string size = model::Degrees{steps < 0 ? -steps : steps}.to_text();
    const std::string_view name = steps == 0 ? "msg.value.straight" : (steps < 0 ? "msg.value.short_of_straight" : "msg.value.beyond_straight");
    text = words.say(name, {{"value", size, true}});
  } else if (named && angle.toward_deg->steps != 0) {
    text = words.say("msg.value.toward",
                     {{"value", angle.toward_deg->to_text(), true}, {"toward", word_of(words, "toward", angle.toward->text), false, true}});
  } else if (angle.deg || angle.toward_deg) {
    text = words.say("msg.value.deg", {{"value", (angle.deg ? *angle.deg : *angle.toward_deg).to_text(), true}});
  }
  if (angle.bound) {
    return words.say(*angle.bound == model::Bound::at_least ? "msg.value.at_least" : "msg.value.at_most", {{"value", text, false, true}});
  }
  return text;
}

std::string local_time(model::Instant instant, std::int64_t offset_min) {
  constexpr std::int64_t minute_ms = 60'000;
  constexpr std::int64_t hour = 60;
  const std::string text = model::Instant{instant.ms + offset_min * minute_ms}.to_text();
  std::string zone = "UTC";
  if (offset_min != 0) {
    const std::int64_t minutes = offset_min < 0 ? -offset_min : offset_min;
    const auto two_digits = [](std::int64_t number) { return std::string(number < 10 ? "0" : "") + wire::write_number(number, 1); };
    zone += (offset_min < 0 ? "-" : "+") + two_digits(minutes / hour) + ":" + two_digits(minutes % hour);
  }
  return text.substr(0, 10) + " " + text.substr(11, 5) + " " + zone;
}

std::string joined(const std::vector<std::string>& parts, std::string_view between) {
  std::string out;
  for (const std::string& part : parts) {
    if (!part.empty()) {
      out += (out.empty() ? "" : std::string(between)) + part;
    }
  }
  return out;
}

std::string bare_value_text(const Words& words, const reference::Edition& edition, const model::Finding& finding) {
  return std::visit(Say{words, edition, finding}, finding.value);
}

std::string value_text(const Words& words, const reference::Edition& edition, const model::Finding& finding) {
  std::vector<std::string> parts;
  // What was filled in for a whole group is printed as that and as nothing else.
  if (finding.origin && *finding.origin == model::Origin::bulk_expected) {
    return words.say("msg.origin.bulk_expected");
  }
  parts.push_back(std::visit(Say{words, edition, finding}, finding.value));
  if (finding.end_feel) {
    parts.push_back(words.say("msg.value.end_feel", {{"feel", word_of(words, "end_feel", finding.end_feel->text), false, true}}));
  }
  if (finding.pain) {
    std::vector<std::string> pain;
    pain.push_back(finding.pain->score ? words.say("msg.value.pain", {{"score", wire::write_number(finding.pain->score->steps, 1), true}})
                                       : words.say("msg.value.pain_there"));
    if (finding.pain->familiar && *finding.pain->familiar) {
      pain.push_back(words.say("msg.value.pain_familiar"));
    }
    parts.push_back(joined(pain));
  }
  for (const model::Quality quality : finding.quality ? *finding.quality : std::vector<model::Quality>{}) {
    parts.push_back(enum_word(words, "quality", quality));
  }
  if (finding.instrument) {
    parts.push_back(word_of(words, "instrument", finding.instrument->text));
  }
  if (finding.position) {
    parts.push_back(word_of(words, "position", finding.position->text));
  }
  if (finding.origin && *finding.origin != model::Origin::observed) {
    parts.push_back(enum_word(words, "origin", *finding.origin));
  }
  if (finding.despite) {
    parts.push_back(words.say("msg.value.despite",
                              {{"how", enum_word(words, "despite", finding.despite->how), false, true}, {"because", finding.despite->because.text}}));
  }
  if (finding.remark) {
    parts.push_back(words.say("msg.value.remark", {{"text", finding.remark->text}}));
  }
  if (finding.standing && *finding.standing == model::Standing::in_conflict) {
    parts.push_back(words.say("msg.page.conflict"));
  }
  return joined(parts);
}

}  // namespace limbledger::report

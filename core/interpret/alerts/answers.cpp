#include "core/interpret/alerts/answers.hpp"

#include "core/interpret/alerts/limits.hpp"

#include <algorithm>
#include <string>

namespace limbledger::interpret {

using model::Side;

namespace {

constexpr std::uint8_t says_no = 1;
constexpr std::uint8_t says_yes = 2;
constexpr std::uint8_t says_any = 3;

[[nodiscard]] Said said(bool yes) { return {yes ? says_yes : says_no, "known"}; }
[[nodiscard]] Said not_said() { return {std::nullopt, "unsure"}; }

// The side an item is asked on: this one, or the midline where the item has no sides. None where the edition has no such item.
[[nodiscard]] std::optional<Side> side_asked(const View& view, std::string_view item, Side side) {
  const model::Item* known = view.edition().item({std::string(item)});
  if (known == nullptr) {
    return std::nullopt;
  }
  const auto has = [&](Side one) { return std::find(known->sides.begin(), known->sides.end(), one) != known->sides.end(); };
  if (has(side)) {
    return side;
  }
  return has(Side::midline) ? std::optional(Side::midline) : std::nullopt;
}

}  // namespace

std::vector<const model::Finding*> Answers::recorded(std::string_view item, Side side) const {
  std::vector<const model::Finding*> found = view_.at(item, side);
  if (side != Side::midline) {
    const auto midline = view_.at(item, Side::midline);
    found.insert(found.end(), midline.begin(), midline.end());
  }
  return found;
}

Clue Answers::hear_as(std::string_view item, Side side, const Says& says) const {
  const Heard heard = hear(recorded(item, side), says_any, says);
  Clue clue;
  clue.value = heard.as_tri();
  if (clue.is_yes()) {
    clue.because = heard.findings;
    return clue;
  }
  if (clue.is_no()) {
    clue.against = heard.findings;
    return clue;
  }
  bool only_reported = true;
  for (const model::Finding* finding : heard.findings) {
    const bool reported = !unsettled_by(*finding).empty();
    only_reported = only_reported && reported;
    const bool not_done = std::holds_alternative<model::NotDone>(finding->value);
    clue.hinted = clue.hinted || (!not_done && says(*finding).bits == says_yes);
  }
  clue.open = heard.findings;
  const auto asked_on = side_asked(view_, item, side);
  if (only_reported && asked_on) {
    clue.ask.push_back({{std::string(item)}, *asked_on});
  }
  return clue;
}

Clue Answers::yes(std::string_view item, Side side) const { return hear_as(item, side, &says_answer); }

Clue Answers::positive(std::string_view item, Side side) const {
  return hear_as(item, side, [](const model::Finding& finding) {
    const auto* test = std::get_if<model::Test>(&finding.value);
    return test == nullptr || test->result == model::TestResult::equivocal ? not_said() : said(test->result == model::TestResult::positive);
  });
}

Clue Answers::chosen(std::string_view item, Side side, std::initializer_list<std::string_view> choices) const {
  return hear_as(item, side, [choices](const model::Finding& finding) {
    const auto in = [&](const model::ChoiceId& id) { return std::find(choices.begin(), choices.end(), id.text) != choices.end(); };
    if (const auto* choice = std::get_if<model::Choice>(&finding.value)) {
      return choice->choice.text == "not_known" ? not_said() : said(in(choice->choice));
    }
    const auto* several = std::get_if<model::Choices>(&finding.value);
    return several == nullptr ? not_said() : said(std::any_of(several->choices.begin(), several->choices.end(), in));
  });
}

Clue Answers::graded(std::string_view item, Side side, std::initializer_list<std::string_view> grades) const {
  return hear_as(item, side, [grades](const model::Finding& finding) {
    const auto* grade = std::get_if<model::Grade>(&finding.value);
    return grade == nullptr ? not_said() : said(std::find(grades.begin(), grades.end(), grade->grade.text) != grades.end());
  });
}

Clue Answers::count_at_least(std::string_view item, std::int64_t least) const {
  return hear_as(item, Side::midline, [least](const model::Finding& finding) {
    const auto* count = std::get_if<model::CountValue>(&finding.value);
    return count == nullptr ? not_said() : said(count->count.steps >= least);
  });
}

Clue Answers::warm_at_least(std::int64_t tenths) const {
  return hear_as("general.temperature", Side::midline, [tenths](const model::Finding& finding) {
    const auto* temperature = std::get_if<model::Temperature>(&finding.value);
    return temperature == nullptr || !temperature->cel ? not_said() : said(temperature->cel->steps >= tenths);
  });
}

Clue Answers::stopped(std::string_view item, Side side, std::initializer_list<model::WhyNot> reasons) const {
  Clue clue;
  for (const model::Finding* finding : recorded(item, side)) {
    if (!settles(*finding)) {
      continue;
    }
    const auto* not_done = std::get_if<model::NotDone>(&finding->value);
    if (not_done != nullptr && std::find(reasons.begin(), reasons.end(), not_done->reason) != reasons.end()) {
      clue.value = Tri::yes;
      clue.because.push_back(finding);
    } else if (not_done == nullptr && !clue.is_yes()) {
      clue.value = Tri::no;
      clue.against.push_back(finding);
    }
  }
  if (clue.is_yes()) {
    clue.against.clear();
  }
  return clue;
}

Tri Answers::aged(std::int64_t low, std::int64_t high) const {
  const auto age = view_.age_on_exam();
  if (!age) {
    return Tri::undetermined;
  }
  if (age->low >= low && age->high <= high) {
    return Tri::yes;
  }
  return age->high < low || age->low > high ? Tri::no : Tri::undetermined;
}

Tri Answers::child() const { return aged(0, child_under - 1); }

}  // namespace limbledger::interpret

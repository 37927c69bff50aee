#include "core/interpret/concerns.hpp"

#include <algorithm>

namespace limbledger::interpret {

namespace {

[[nodiscard]] bool film_shows(const View& view, const std::optional<model::ChoiceId>& choice, model::Side side) {
  if (!choice) {
    return false;
  }
  const auto films = view.at("history.film_result", side);
  return std::any_of(films.begin(), films.end(), [&](const model::Finding* finding) {
    const auto* seen = std::get_if<model::Choices>(&finding->value);
    return seen != nullptr && std::find(seen->choices.begin(), seen->choices.end(), *choice) != seen->choices.end();
  });
}

// Only an answer that may settle something lifts a concern; any yes opens it.
[[nodiscard]] bool answered_no(const View& view, const model::Concern& concern, model::Side side) {
  const auto answers = view.at(concern.answered_by.text, side);
  return !answers.empty() && std::all_of(answers.begin(), answers.end(), [](const model::Finding* finding) {
    const auto* answer = std::get_if<model::Answer>(&finding->value);
    return answer != nullptr && answer->answer == model::AnswerWord::no && settles(*finding);
  });
}

[[nodiscard]] bool is_open(const View& view, const model::Concern& concern, model::Side side) {
  if (answered_no(view, concern, side)) {
    return false;
  }
  if (film_shows(view, concern.film_opens, side)) {
    return true;
  }
  return view.says_yes(concern.answered_by.text, side) && !film_shows(view, concern.film_lifts, side);
}

}  // namespace

bool lifted(const View& view, const model::Concern& concern, model::Side side) {
  const auto on = [&](model::Side one) { return answered_no(view, concern, one) || film_shows(view, concern.film_lifts, one); };
  return on(side) || on(model::Side::midline);
}

std::vector<OpenConcern> recorded_concerns(const View& view) {
  std::vector<OpenConcern> open;
  for (const model::Concern& concern : view.edition().concerns()) {
    for (const model::Side side : {model::Side::left, model::Side::right, model::Side::midline}) {
      if (is_open(view, concern, side)) {
        open.push_back({&concern, side});
      }
    }
  }
  return open;
}

}  // namespace limbledger::interpret

#include "core/interpret/measure/apart.hpp"

#include "core/interpret/knee/lines.hpp"

#include <array>

namespace limbledger::interpret {

namespace {

using model::Side;

// Completed months, both ends inclusive; figures of these names speak of them.
struct ApartAge {
  std::string_view about;
  std::int64_t from;
  std::int64_t to;
};
constexpr std::array apart_ages{
    ApartAge{"apart_at_9_months", 9, 9},
    ApartAge{"apart_at_15_months", 15, 15},
    ApartAge{"apart_at_29_months", 29, 29},
    ApartAge{"apart_at_8_to_11_years", 96, 143},
};
constexpr std::array<std::string_view, 4> apart_items{"knee.intercondylar_distance_standing", "knee.intercondylar_distance_supine",
                                                      "knee.intermalleolar_distance_standing", "knee.intermalleolar_distance_supine"};

void judge_one_apart(const View& view, const Reading& reading, std::vector<Judged>& all) {
  const std::string& item = reading.item->item.text;
  Judged judged = begin_measure("apart", Comparator::none, reading.item->item, Side::midline, reading.findings);
  judged.statement.verdict = Verdict::no_norm;
  judged.working.formula = {"no comparison"};
  Params params;
  params.figure("mm", reading.low);
  const auto months = view.age_months_on_exam();
  const reference::FigureRow* figure = nullptr;
  for (const ApartAge& age : apart_ages) {
    const bool of_age = months && months->low >= age.from && months->high <= age.to;
    if (const auto* held = of_age ? figure_of(view, age.about, item) : nullptr; held != nullptr && figure == nullptr) {
      figure = held;
      figure_rows(view, age.about, item, judged);
      params.word("at", age.about.substr(std::string_view("apart_at_").size()));
    }
  }
  if (!months) {
    judged.statement.missing.push_back({std::string(view.age_lacks())});
  }
  if (figure != nullptr && figure->value) {
    judged.statement.comparator = Comparator::norm;
    params.figure("mean_mm", figure->value->steps);
    if (figure->high) {
      params.figure("to_mm", figure->high->steps);
    }
    name_measure(judged, "apart_shown");
  } else {
    name_measure(judged, months ? "apart_no_row" : "apart_needs_age");
  }
  judged.working.changes_if.push_back({"msg.change.repeat_reading"});
  judged.statement.params = params.raw();
  all.push_back(std::move(judged));
}

}  // namespace

std::vector<Judged> judge_apart(const View& view, const std::vector<Reading>& amounts) {
  std::vector<Judged> all;
  for (const std::string_view item : apart_items) {
    if (const Reading* reading = amount_at(amounts, item, Side::midline)) {
      judge_one_apart(view, *reading, all);
    }
  }
  return all;
}

std::vector<Contradiction> apart_contradictions(const std::vector<Reading>& amounts) {
  std::vector<Contradiction> all;
  for (std::size_t at = 0; at < 2; ++at) {
    const Reading* knees = amount_at(amounts, apart_items[at], Side::midline);
    const Reading* ankles = amount_at(amounts, apart_items[at + 2], Side::midline);
    if (knees == nullptr || ankles == nullptr || knees->low <= 0 || ankles->low <= 0) {
      continue;
    }
    Contradiction one;
    one.contradiction = {"contradiction.knees_and_ankles_apart:" + knees->item->item.text + ":midline"};
    one.side = Side::midline;
    one.message = {"msg.contradiction.knees_and_ankles_apart"};
    one.params = Params().figure("knees_mm", knees->low).figure("ankles_mm", ankles->low).raw();
    std::vector<const model::Finding*> used = knees->findings;
    used.insert(used.end(), ankles->findings.begin(), ankles->findings.end());
    one.findings = ids_of(used);
    all.push_back(std::move(one));
  }
  return all;
}

}  // namespace limbledger::interpret

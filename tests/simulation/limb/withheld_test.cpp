// At a finding only what may withhold its item is judged (`withholders_of`), and it says of the item what judging the whole exam says:
// which concern or alert withholds it, and until when. Over random exams of the limb (exams.hpp): recorded concerns, raised dangers,
// rules of an acute injury, contradicted rules, answers that differ. Source: examination sequence page, section 4. Findings are invented.
#include "core/interpret/judged.hpp"
#include "tests/simulation/knee_exams.hpp"
#include "tests/simulation/limb/exams.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>
#include <string>

using namespace limbledger;
using namespace limbledger::limb_exams;
using model::Side;

namespace {

[[nodiscard]] std::vector<const model::Item*> items_that_may_be_withheld() {
  std::vector<const model::Item*> items;
  const auto rows = facts().alerts();
  for (const model::Item& item : facts().items()) {
    const bool stopped = std::any_of(rows.begin(), rows.end(), [&](const auto& row) { return std::find(row.stop.begin(), row.stop.end(), item.item) != row.stop.end(); });
    if (stopped || item.withheld_by) {
      items.push_back(&item);
    }
  }
  return items;
}

[[nodiscard]] std::string said_of(const std::optional<interpret::Withholding>& withholding) {
  return withholding ? withholding->by.text + " " + withholding->until.text : std::string("not withheld");
}

struct MetWithheld {
  std::set<std::string> by;
  std::size_t withheld = 0;
  std::size_t not_withheld = 0;
  std::size_t held_by_rule = 0;
};

void hold_withheld_law(const Bench& made, std::uint64_t seed, const std::vector<const model::Item*>& items, MetWithheld& met) {
  Draw draw(seed + 21);
  const interpret::View view(made.exam, made.person, *made.edition, made.ask().as_of);
  const interpret::Watched whole = interpret::watch(view);
  for (const interpret::OpenConcern& open : whole.concerns) {
    met.held_by_rule += static_cast<std::size_t>(std::count_if(open.held_by.begin(), open.held_by.end(), [](const model::Word& by) { return by.text.starts_with("rule."); }));
  }
  const auto same = [&](const model::Item& item, const interpret::Withholders& only) {
    for (const Side side : item.sides) {
      CAPTURE(item.item.text);
      CAPTURE(static_cast<int>(side));
      const auto by_whole = interpret::withheld(item, side, whole.concerns, whole.flags);
      CHECK(said_of(interpret::withheld(item, side, only.concerns, only.flags)) == said_of(by_whole));
      ++(by_whole ? met.withheld : met.not_withheld);
      if (by_whole) {
        met.by.insert(by_whole->by.text);
      }
    }
  };
  for (int n = 0; n < 8; ++n) {
    const std::vector<const model::Item*> one{items[draw.below(items.size())]};
    same(*one.front(), interpret::withholders_of(view, one));
  }
  std::vector<const model::Item*> several;  // as one call may hold
  for (std::uint64_t n = 2 + draw.below(12); n > 0; --n) {
    several.push_back(items[draw.below(items.size())]);
  }
  const interpret::Withholders only = interpret::withholders_of(view, several);
  for (const model::Item* item : several) {
    same(*item, only);
  }
}

}  // namespace

TEST_CASE("laws of what is withheld: judged for its items alone, a finding is asked back for the same reason as when the whole exam is judged") {
  const knee_exams::Seeds seeds = knee_exams::seeds();
  const std::vector<const model::Item*> items = items_that_may_be_withheld();
  MetWithheld met;
  for (std::uint64_t seed = seeds.first; seed < seeds.first + seeds.count; ++seed) {
    CAPTURE(seed);
    Bench made = random_limb(seed);
    hold_withheld_law(made, seed, items, met);
    // The same where somebody fell: then rules hold concerns as well.
    made.exam.complaint = {seed % 2 == 0 ? "acute_knee" : "ankle_injury"};
    hold_withheld_law(made, seed + 1, items, met);
  }
  MESSAGE(met.withheld << " withheld by " << met.by.size() << ", " << met.not_withheld << " not, " << met.held_by_rule << " concerns held by rules");
  const bool few = seeds.count < 1'000;
  CHECK((few || met.not_withheld > 1'000));
  CHECK((few || met.withheld > 1'000));
  CHECK((few || met.held_by_rule > 100));
  CHECK((few || std::count_if(met.by.begin(), met.by.end(), [](const std::string& by) { return by.starts_with("alert."); }) > 0));
  CHECK((few || met.by.count("concern.knee_fracture") == 1));
}

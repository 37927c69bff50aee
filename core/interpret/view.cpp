#include "core/interpret/view.hpp"

#include "core/interpret/body.hpp"
#include "core/wire/write.hpp"

#include <algorithm>
#include <tuple>

namespace limbledger::interpret {

namespace {

// Two of one place and id differ by their entries; only what has none is told apart by all it says.
[[nodiscard]] bool stands_before(const model::Finding& a, const model::Finding& b) {
  const auto place = [](const model::Finding& one) { return std::tuple(std::string_view(one.item.text), side_word(one.side), one.finding); };
  if (place(a) != place(b)) {
    return place(a) < place(b);
  }
  if (a.entry || b.entry) {
    return a.entry < b.entry;
  }
  return wire::write(a) < wire::write(b);
}

// A finding with its place in the order of stands_before, as a number, so that few names are compared letter by letter: the rank of
// its item, then its side (by their words: left, midline, right). Of an item that the edition does not have, the gap where it would stand.
struct Placed {
  std::size_t place = 0;
  const model::Item* item = nullptr;
  const model::Finding* finding = nullptr;
};

[[nodiscard]] bool stands(const model::Finding& finding) {
  const model::Standing standing = finding.standing.value_or(model::Standing::current);
  return standing == model::Standing::current || standing == model::Standing::in_conflict;
}

// `near` is the item of the finding before it, which mostly is its own as well (left and right lie together).
[[nodiscard, gnu::always_inline]] inline Placed placed(const reference::Edition& edition, const model::Finding& finding, const model::Item* near) {
  constexpr std::size_t sides = 3;
  const model::Item* item = near != nullptr && near->item == finding.item ? near : edition.item(finding.item);
  if (item == nullptr) {
    return {2 * edition.rank_of(finding.item.text) * sides, nullptr, &finding};
  }
  const std::size_t side = finding.side == model::Side::left ? 0 : (finding.side == model::Side::midline ? 1 : 2);
  return {(2 * edition.rank(*item) + 1) * sides + side, item, &finding};
}

}  // namespace

Findings of_side(Findings of_item, model::Side side) {
  std::size_t first = 0;
  while (first < of_item.size() && of_item[first]->side != side) {
    ++first;
  }
  std::size_t after = first;
  while (after < of_item.size() && of_item[after]->side == side) {
    ++after;
  }
  return of_item.subspan(first, after - first);
}

View::View(const model::Exam& exam, const std::optional<model::Person>& person, const reference::Edition& edition, const model::PartialDate& as_of)
    : exam_(exam), person_(person), edition_(edition), examined_on_(day_to_judge(exam, person, as_of)), as_of_(examined_on_.value_or(as_of)), ages_(ages_at(exam, person, as_of)) {
  runs_.resize(edition.items().size());
  if (!exam.findings) {
    return;
  }
  findings_.resize(exam.findings->size());
  std::uint32_t count = 0;
  std::size_t last = 0;
  const model::Item* near = nullptr;
  for (const model::Finding& finding : *exam.findings) {
    if (!stands(finding)) {
      continue;
    }
    const Placed one = placed(edition, finding, near);
    if (count > 0 && one.place <= last) {  // a folded exam brings them in order, each place once
      put_in_order();
      return;
    }
    if (one.item != nullptr) {
      Run& run = runs_[edition.index(*one.item)];
      run.first = run.count == 0 ? count : run.first;
      ++run.count;
    }
    findings_[count++] = &finding;
    last = one.place;
    near = one.item;
  }
  findings_.resize(count);
}

// What of a finding is looked at by item: where those of the item begin, and how many they are.
void View::add(const model::Item* item, const model::Finding* finding) {
  if (item != nullptr) {
    Run& run = runs_[edition_.index(*item)];
    run.first = run.count == 0 ? static_cast<std::uint32_t>(findings_.size()) : run.first;
    ++run.count;
  }
  findings_.push_back(finding);
}

void View::put_in_order() {
  std::vector<Placed> all;
  all.reserve(exam_.findings->size());
  for (const model::Finding& finding : *exam_.findings) {
    if (stands(finding)) {
      all.push_back(placed(edition_, finding, all.empty() ? nullptr : all.back().item));
    }
  }
  std::sort(all.begin(), all.end(), [](const Placed& a, const Placed& b) { return a.place != b.place ? a.place < b.place : stands_before(*a.finding, *b.finding); });
  may_hold_two_ = std::adjacent_find(all.begin(), all.end(), [](const Placed& a, const Placed& b) { return a.place == b.place; }) != all.end();
  std::fill(runs_.begin(), runs_.end(), Run{0, 0});
  findings_.clear();
  for (const Placed& one : all) {
    add(one.item, one.finding);
  }
}

View::View(const View& base, const model::Finding& instead)
    : exam_(base.exam_), person_(base.person_), edition_(base.edition_), examined_on_(base.examined_on_), as_of_(base.as_of_), ages_(base.ages_), findings_(base.findings_), runs_(base.runs_), may_hold_two_(base.may_hold_two_) {
  const model::Item* item = edition_.item(instead.item);
  const auto same_slot = [&](const model::Finding* held) { return held->item == instead.item && held->side == instead.side; };
  const auto first_of_slot = std::find_if(findings_.begin(), findings_.end(), same_slot);
  const auto after_slot = std::find_if_not(first_of_slot, findings_.end(), same_slot);
  const auto taken = static_cast<std::uint32_t>(after_slot - first_of_slot);
  const auto rest = findings_.erase(first_of_slot, after_slot);
  const auto at = taken > 0 ? rest : std::lower_bound(findings_.begin(), findings_.end(), &instead, [](const model::Finding* a, const model::Finding* b) { return stands_before(*a, *b); });
  const auto place = static_cast<std::uint32_t>(at - findings_.begin());
  findings_.insert(at, &instead);
  instead_at_ = place;
  if (item == nullptr) {
    return;
  }
  Run& own = runs_[edition_.index(*item)];
  for (Run& run : runs_) {
    if (&run != &own && run.count > 0 && run.first >= place) {
      run.first = run.first + 1 - taken;
    }
  }
  own.first = own.count == 0 ? place : std::min(own.first, place);
  own.count = own.count + 1 - taken;
}

void View::answer_instead(const model::Finding& instead) {
  findings_[instead_at_] = &instead;
  bodies_.reset();
  limb_missing_.reset();
  heard_.clear();
  trails_.findings.forget();
  trails_.asks.forget();
}

View::View(const View& base, Listens listens)
    : exam_(base.exam_), person_(base.person_), edition_(base.edition_), examined_on_(base.examined_on_), as_of_(base.as_of_), ages_(base.ages_), findings_(base.findings_), runs_(base.runs_),
      may_hold_two_(base.may_hold_two_), heard_from_(listens.from) {}

View::View(const View& base, const std::vector<model::EntryId>& without)
    : exam_(base.exam_), person_(base.person_), edition_(base.edition_), examined_on_(base.examined_on_), as_of_(base.as_of_), ages_(base.ages_), may_hold_two_(base.may_hold_two_) {
  runs_.resize(base.runs_.size());
  findings_.reserve(base.findings_.size());
  for (const model::Finding* finding : base.findings_) {
    if (finding->entry && std::binary_search(without.begin(), without.end(), *finding->entry)) {
      continue;
    }
    add(edition_.item(finding->item), finding);
  }
}

View::~View() = default;

void View::hear(std::size_t item) const { heard_.push_back(&edition_.items()[item]); }

const Bodies& View::make_bodies() const {
  bodies_ = std::make_unique<const Bodies>(*this);
  return *bodies_;
}

bool View::find_limb_missing() const {
  const auto rows = edition_.bodies();
  const bool told = std::any_of(rows.begin(), rows.end(), [&](const reference::BodyRow& row) {
    const model::Item* item = row.why_not == model::WhyNot::no_limb && row.item ? edition_.item(*row.item) : nullptr;
    return item != nullptr && has(*item);
  });
  limb_missing_ = told && bodies().any_limb_missing();
  return *limb_missing_;
}

std::optional<model::AgeInterval> View::age_on_day(const model::PartialDate& day) const {
  return person_ && person_->birth ? model::age_on(*person_->birth, day) : std::nullopt;
}

Findings View::at(std::string_view item, model::Side side) const {
  if (const model::Item* known = edition_.item(item)) {
    return at(*known, side);
  }
  const auto first = std::find_if(findings_.begin(), findings_.end(), [&](const model::Finding* one) { return one->item.text == item; });
  const auto last = std::find_if(first, findings_.end(), [&](const model::Finding* one) { return one->item.text != item; });
  return of_side({first, last}, side);
}

Findings View::at(const model::Item& item, model::Side side) const {
  return of_side(of(item), side);
}

Findings View::named(const reference::ItemKey& item, model::Side side) const {
  const reference::Edition::Keyed& known = edition_.keyed(item);
  return known.known ? of_side(of(known), side) : at(item.name(), side);
}

bool View::has_side(model::Side side) const {
  return std::any_of(findings_.begin(), findings_.end(), [&](const model::Finding* finding) { return finding->side == side; });
}

bool View::says_yes(std::string_view item, model::Side side) const {
  const auto found = at(item, side);
  return std::any_of(found.begin(), found.end(), [](const model::Finding* finding) {
    const auto* answer = std::get_if<model::Answer>(&finding->value);
    return answer != nullptr && answer->answer == model::AnswerWord::yes;
  });
}

std::optional<model::PartialDate> day_to_judge(const model::Exam& exam, const std::optional<model::Person>& person, const model::PartialDate& as_of) {
  const model::When when = model::when_done(exam);
  if (when.doubtful) {
    return std::nullopt;
  }
  const model::PartialDate day = when.day.value_or(as_of);
  const model::Birth* birth = person && person->birth ? &*person->birth : nullptr;
  const bool dated = birth != nullptr && (birth->date || (birth->age_years && birth->on));
  return dated && !model::age_on(*birth, day) ? std::nullopt : std::optional(day);
}

namespace {

using AgeOn = std::optional<model::AgeInterval> (*)(const model::Birth&, const model::PartialDate&);

// Where nobody can say the day, it is not after the one asked for. A clock that was not set runs behind, so it is not before what that says. Of a
// clock from before the birth, or one that is ahead, the day is that of a device that has this program, but for who may have been a child when it
// was written up from paper; and who has long been grown was grown (the years are our own convention). An age that was told counts from its own
// day. Where people said different days the birth alone bounds it.
[[nodiscard]] std::optional<model::AgeInterval> age_between(const model::Exam& exam, const model::Birth& birth, const model::PartialDate& as_of, AgeOn age_on, std::int64_t in_a_year) {
  constexpr std::int64_t grown_years = 18, long_grown_years = 30;
  std::optional<model::AgeInterval> age = age_on(birth, as_of);
  if (!age) {
    return age;
  }
  // The least age on a day, which is not after the day asked for; below 0 before the birth.
  const auto least_on = [&](const model::PartialDate& day) -> std::int64_t {
    const auto then = age_on(birth, day.last_day() < as_of.last_day() ? day : as_of);
    return then ? then->low : -1;
  };
  std::int64_t low = 0;
  if (exam.examined_at) {
    const model::PartialDate clock = model::date_of(*exam.examined_at, exam.offset_min ? exam.offset_min->steps : 0);
    const bool ahead = clock.first_day() > as_of.last_day();
    const bool behind = !ahead && model::is_of_no_clock(exam.examined_at);
    const std::int64_t by_clock = behind ? least_on(clock) : -1;
    const std::int64_t by_device = ahead || behind ? least_on(model::date_of({model::first_release_ms}, 0)) : -1;
    if (by_clock < 0 && by_device >= grown_years * in_a_year) {
      low = by_device;
    } else {
      low = std::max(by_clock, by_device >= long_grown_years * in_a_year ? grown_years * in_a_year : 0);
    }
  }
  if (!birth.date && birth.on) {
    low = std::max(low, least_on(*birth.on));
  }
  age->low = std::min(low, age->low);
  return age;
}

}  // namespace

Ages ages_at(const model::Exam& exam, const std::optional<model::Person>& person, const model::PartialDate& as_of) {
  if (!person || !person->birth) {
    return {};
  }
  const model::Birth& birth = *person->birth;
  if (const auto day = day_to_judge(exam, person, as_of)) {
    return {model::age_on(birth, *day), model::age_months_on(birth, *day)};
  }
  constexpr std::int64_t day_ms = std::int64_t{24} * 3600 * 1000;
  if (!model::when_done(exam).doubtful || !model::can_be_right({as_of.last_day() * day_ms})) {
    return {};
  }
  return {age_between(exam, birth, as_of, &model::age_on, 1), age_between(exam, birth, as_of, &model::age_months_on, 12)};
}

bool of_damaged_record(const model::Finding& finding) {
  return finding.marks && std::any_of(finding.marks->begin(), finding.marks->end(),
                                      [](const model::Word& mark) { return mark.text == mark_record_damaged; });
}

bool settles(const model::Finding& finding) {
  if (of_damaged_record(finding)) {
    return false;
  }
  return !finding.origin || *finding.origin == model::Origin::observed || *finding.origin == model::Origin::from_paper;
}

std::string_view side_word(model::Side side) {
  switch (side) {
    case model::Side::left:
      return "left";
    case model::Side::right:
      return "right";
    case model::Side::midline:
      return "midline";
  }
  return "midline";
}

model::Side other_side(model::Side side) {
  if (side == model::Side::midline) {
    return side;
  }
  return side == model::Side::left ? model::Side::right : model::Side::left;
}

std::vector<model::FindingId> ids_of(const std::vector<const model::Finding*>& findings) {
  std::vector<model::FindingId> ids;
  for (const model::Finding* finding : findings) {
    if (finding->finding) {
      ids.push_back(*finding->finding);
    }
  }
  std::sort(ids.begin(), ids.end());
  ids.erase(std::unique(ids.begin(), ids.end()), ids.end());
  return ids;
}

}  // namespace limbledger::interpret

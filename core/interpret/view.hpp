// One exam as the interpretation reads it: what still stands, in an order that does not depend on how it was entered, and
// the day and the age to judge by. Withdrawn and replaced findings are not seen. What was filled in as a group, carried
// over or reported by the person alone is seen, but settles nothing.
#pragma once

#include "core/model/exam/day.hpp"
#include "core/model/person.hpp"
#include "core/interpret/trail.hpp"
#include "core/reference/edition.hpp"

#include <cstdint>
#include <limits>
#include <memory>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace limbledger::interpret {

class Bodies;  // body.hpp

// Some of the findings of a View, in its order.
using Findings = std::span<const model::Finding* const>;

// Completed years and months at an exam, lowest and highest possible.
struct Ages {
  std::optional<model::AgeInterval> years, months;
};
// On the day to judge by. Where nobody can say the day, between the days that it can have been; nothing where the birth does not fit it.
[[nodiscard]] Ages ages_at(const model::Exam& exam, const std::optional<model::Person>& person, const model::PartialDate& as_of);

class View {
 public:
  View(const View&) = delete;
  View& operator=(const View&) = delete;
  ~View();
  View(const model::Exam& exam, const std::optional<model::Person>& person, const reference::Edition& edition, const model::PartialDate& as_of);

  // The same exam with this finding in its slot, whatever stood there: to see what an answer would change. `base` and `instead` live longer.
  View(const View& base, const model::Finding& instead);
  // Another value in that slot, of a view made so: all that was worked out of the one before is forgotten, and what points into it ends.
  void answer_instead(const model::Finding& instead);
  // The same exam, which keeps of what was asked, as far as so many of it stand (heard()). `base` lives longer.
  struct Listens {
    std::uint32_t from = 2;
  };
  View(const View& base, Listens listens);
  // The same exam without what these entries say (in order). `base` lives longer.
  View(const View& base, const std::vector<model::EntryId>& without);

  [[nodiscard]] const model::Exam& exam() const { return exam_; }
  [[nodiscard]] const std::optional<model::Person>& person() const { return person_; }
  [[nodiscard]] const reference::Edition& edition() const { return edition_; }
  // The day to judge by (day_to_judge): nothing where it is doubtful, and then no time since anything is known, and of the age what the birth settles.
  [[nodiscard]] const std::optional<model::PartialDate>& examined_on() const { return examined_on_; }
  // The same, or else the day asked for.
  [[nodiscard]] const model::PartialDate& as_of() const { return as_of_; }
  [[nodiscard]] const std::optional<model::AgeInterval>& age_on_exam() const { return ages_.years; }
  [[nodiscard]] const std::optional<model::AgeInterval>& age_months_on_exam() const { return ages_.months; }
  // What is missing where no age is known: the day, or the birth.
  [[nodiscard]] std::string_view age_lacks() const { return !examined_on_ && person_ && person_->birth ? "day" : "birth"; }
  [[nodiscard]] std::optional<model::AgeInterval> age_on_day(const model::PartialDate& day) const;

  // All that stand, by item, side and id.
  [[nodiscard]] const std::vector<const model::Finding*>& findings() const { return findings_; }
  [[nodiscard]] bool has_side(model::Side side) const;
  // Whether two of one item and side may stand: false says that none do.
  [[nodiscard]] bool may_hold_two() const { return may_hold_two_; }
  // By a name that is known at run time, by an item of this edition, and by a name that the compiler read.
  [[nodiscard]] Findings at(std::string_view item, model::Side side) const;
  [[nodiscard]] Findings at(const model::Item& item, model::Side side) const;
  [[nodiscard]] Findings named(const reference::ItemKey& item, model::Side side) const;
  // Of every side.
  [[nodiscard]] Findings of(const model::Item& item) const { return run(edition_.index(item)); }
  [[nodiscard]] Findings of(const reference::Edition::Keyed& known) const { return run(known.index); }
  [[nodiscard]] bool has(const model::Item& item) const { return runs_[edition_.index(item)].count != 0; }
  [[nodiscard]] bool has(const reference::Edition::Keyed& known) const { return runs_[known.index].count != 0; }
  // In the order in which they were asked for, perhaps more than once.
  [[nodiscard]] const std::vector<const model::Item*>& heard() const { return heard_; }
  [[nodiscard]] bool says_yes(std::string_view item, model::Side side) const;
  // What is special about this body; worked out when first asked for.
  [[nodiscard]] const Bodies& bodies() const { return bodies_ != nullptr ? *bodies_ : make_bodies(); }
  // A limb was taken off; known without working out the rest where nothing that tells of one is recorded, as in most exams.
  [[nodiscard]] bool limb_missing() const { return limb_missing_ ? *limb_missing_ : find_limb_missing(); }
  // No limb is missing, and that was worked out before: false says nothing.
  [[nodiscard]] bool has_every_limb() const { return limb_missing_ && !*limb_missing_; }
  // Where what is concluded from this exam keeps what it points at.
  [[nodiscard]] Trails& trails() const { return trails_; }

 private:
  [[nodiscard]] Findings run(std::size_t item) const {
    const Run& run = runs_[item];
    if (run.count >= heard_from_) {
      hear(item);
    }
    return {findings_.data() + run.first, run.count};
  }
  void add(const model::Item* item, const model::Finding* finding);
  void put_in_order();
  void hear(std::size_t item) const;
  [[nodiscard]] const Bodies& make_bodies() const;
  [[nodiscard]] bool find_limb_missing() const;

  const model::Exam& exam_;
  const std::optional<model::Person>& person_;
  const reference::Edition& edition_;
  std::optional<model::PartialDate> examined_on_;
  model::PartialDate as_of_;
  Ages ages_;
  std::vector<const model::Finding*> findings_;
  struct Run {
    std::uint32_t first, count;  // as a list makes them: 0
  };
  std::vector<Run> runs_;  // of each item of the edition, in findings_
  bool may_hold_two_ = false;
  std::uint32_t instead_at_ = 0;  // in findings_
  std::uint32_t heard_from_ = std::numeric_limits<std::uint32_t>::max();
  mutable std::vector<const model::Item*> heard_;
  mutable Trails trails_;
  mutable std::unique_ptr<const Bodies> bodies_;
  mutable std::optional<bool> limb_missing_;
};

// Of the findings of one item, which lie together by side.
[[nodiscard]] Findings of_side(Findings of_item, model::Side side);
// The day of the exam (when_done), or the day asked for where it has no time. Nothing where nobody can say it, or where the birth does not
// fit it: one of the two is wrong, and nobody knows which.
[[nodiscard]] std::optional<model::PartialDate> day_to_judge(const model::Exam& exam, const std::optional<model::Person>& person, const model::PartialDate& as_of);
// Observed at this exam (or copied from the paper it was written on), so that it may settle a rule or meet a norm.
[[nodiscard]] bool settles(const model::Finding& finding);
// In a record that misses an entry any value may be one that was corrected; whoever hands the exam over marks them so.
inline constexpr std::string_view mark_record_damaged = "record_damaged";
[[nodiscard]] bool of_damaged_record(const model::Finding& finding);
[[nodiscard]] std::string_view side_word(model::Side side);
[[nodiscard]] model::Side other_side(model::Side side);
// Ids of findings, sorted and each once; findings of a document without ids are left out.
[[nodiscard]] std::vector<model::FindingId> ids_of(const std::vector<const model::Finding*>& findings);

}  // namespace limbledger::interpret

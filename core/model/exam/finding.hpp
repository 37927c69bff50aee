// One finding: what was observed for one item on one side. `Observation` is what a person says was found (also the stored
// part); `Finding` adds who entered it, when, and where it stands now.
#pragma once

#include "core/model/exam/settled.hpp"
#include "core/model/ids.hpp"
#include "core/model/time.hpp"
#include "core/model/value.hpp"

#include <optional>
#include <vector>

namespace limbledger::model {

enum class Side { left, right, midline };
BOOST_DESCRIBE_ENUM(Side, left, right, midline)

enum class Quality { guarded, effort_limited, poor_contact, unsure_landmark };
BOOST_DESCRIBE_ENUM(Quality, guarded, effort_limited, poor_contact, unsure_landmark)

enum class Origin { observed, bulk_expected, carried_over, from_paper, self_reported };
BOOST_DESCRIBE_ENUM(Origin, observed, bulk_expected, carried_over, from_paper, self_reported)

enum class Standing { current, replaced, withdrawn, in_conflict };
BOOST_DESCRIBE_ENUM(Standing, current, replaced, withdrawn, in_conflict)

enum class DespiteHow { before, elsewhere, knowingly };
BOOST_DESCRIBE_ENUM(DespiteHow, before, elsewhere, knowingly)

struct Pain {
  std::optional<wire::Count<0, 10>> score;
  std::optional<Word> site;
  std::optional<bool> familiar;
  friend bool operator==(const Pain&, const Pain&) = default;
};
BOOST_DESCRIBE_STRUCT(Pain, (), (score, site, familiar))

// A step that was not advised and was done all the same.
struct Despite {
  DespiteHow how{};
  wire::Remark because;
  friend bool operator==(const Despite&, const Despite&) = default;
};
BOOST_DESCRIBE_STRUCT(Despite, (), (how, because))

struct Observation {
  ItemId item;
  Side side{};
  Value value;
  std::optional<Word> instrument;
  std::optional<Word> position;
  std::optional<Word> end_feel;
  std::optional<Pain> pain;
  std::optional<std::vector<Quality>> quality;
  std::optional<Origin> origin;  // absent: observed
  std::optional<Despite> despite;
  std::optional<wire::Remark> remark;
  friend bool operator==(const Observation&, const Observation&) = default;
};
BOOST_DESCRIBE_STRUCT(Observation, (), (item, side, value, instrument, position, end_feel, pain, quality, origin, despite, remark))

struct Finding {
  std::optional<FindingId> finding;  // absent in a document
  std::optional<ExamId> exam;
  ItemId item;
  Side side{};
  Value value;
  std::optional<Word> instrument;
  std::optional<Word> position;
  std::optional<Word> end_feel;
  std::optional<Pain> pain;
  std::optional<std::vector<Quality>> quality;
  std::optional<Origin> origin;
  std::optional<Despite> despite;
  std::optional<wire::Remark> remark;
  std::optional<ExaminerId> examiner;
  std::optional<Instant> examined_at;
  std::optional<EntryId> entry;
  std::optional<Instant> entered_at;  // as the device's clock claimed
  std::optional<ExaminerId> entered_by;
  std::optional<Standing> standing;
  std::optional<std::vector<Word>> marks;  // late, side_exchanged_unseen, newer_parts, same_value ...
  std::optional<std::vector<Settled>> settled = std::nullopt;
  friend bool operator==(const Finding&, const Finding&) = default;
};
BOOST_DESCRIBE_STRUCT(Finding, (), (finding, exam, item, side, value, instrument, position, end_feel, pain, quality, origin, despite, remark, examiner,
                                    examined_at, entry, entered_at, entered_by, standing, marks, settled))
constexpr auto notes(const Finding*) {
  return std::array{wire::Note{"settled", "decided between values: what holds, then what it undid; `examiner` and `examined_at` are then of the entry whose value was taken, "
                                          "`entered_by` and `entered_at` of who decided"}};
}

// All that was observed, by nobody yet and of no exam.
[[nodiscard]] inline Finding as_finding(const Observation& observed) {
  Finding finding;
  finding.item = observed.item;
  finding.side = observed.side;
  finding.value = observed.value;
  finding.instrument = observed.instrument;
  finding.position = observed.position;
  finding.end_feel = observed.end_feel;
  finding.pain = observed.pain;
  finding.quality = observed.quality;
  finding.origin = observed.origin;
  finding.despite = observed.despite;
  finding.remark = observed.remark;
  return finding;
}

}  // namespace limbledger::model

// One table a type for the whole program, made in core/model/types.cpp: it is costly to make in every file.
namespace limbledger::wire {
extern template const Type& type_of<model::Observation>();
extern template const Type& type_of<model::Finding>();
}  // namespace limbledger::wire

// The facts behind a hypothesis: published accuracy of single tests, how common a condition is in whom, which findings count
// as one mechanism. Shares and ratios are as printed, in steps of 0.0001; ages in completed years. What is not to be computed
// with is loaded all the same, so that the working can say why. Each row has its source.
#pragma once

#include "core/model/exam/exam.hpp"
#include "core/model/item.hpp"
#include "core/model/person.hpp"

#include <optional>
#include <string_view>
#include <vector>

namespace limbledger::reference {

// A share of one, or a ratio, as printed.
struct Measure {
  std::int64_t steps = 0;
  static constexpr wire::NumberRule wire_rule{0, 100000000, 10000, ""};
  [[nodiscard]] double real() const { return static_cast<double>(steps) / 10000.0; }
  friend bool operator==(const Measure&, const Measure&) = default;
};

// b: pooled or large and blinded, figure read. c: one study read, or pooled and uneven. d: memory or rebuilt. low: not to be used.
enum class Confidence { b, c, d, low };
BOOST_DESCRIBE_ENUM(Confidence, b, c, d, low)

enum class Design { meta_analysis, single_study, case_control };
BOOST_DESCRIBE_ENUM(Design, meta_analysis, single_study, case_control)

enum class StudyPhase { mixed, acute, chronic, anaesthesia };
BOOST_DESCRIBE_ENUM(StudyPhase, mixed, acute, chronic, anaesthesia)

enum class DefaultFor { any, acute, chronic };
BOOST_DESCRIBE_ENUM(DefaultFor, any, acute, chronic)

enum class PriorSetting { outreach, community, primary_care, emergency, orthopaedic, sports };
BOOST_DESCRIBE_ENUM(PriorSetting, outreach, community, primary_care, emergency, orthopaedic, sports)

enum class PriorNeed { injury, haemarthrosis };
BOOST_DESCRIBE_ENUM(PriorNeed, injury, haemarthrosis)

enum class PartOf { value, pain };
BOOST_DESCRIBE_ENUM(PartOf, value, pain)

// The side judged, or the one beside it: raising the sound leg speaks of the sore one.
enum class OnSide { same, other };
BOOST_DESCRIBE_ENUM(OnSide, same, other)

using PeopleCount = wire::Count<0, 10000000>;
using AgeLimit = wire::Count<0, 130>;
using DayLimit = wire::Count<0, 36500>;  // since the injury

// Condition present and test positive, present and negative, absent and positive, absent and negative.
struct FourCells {
  PeopleCount tp;
  PeopleCount fn;
  PeopleCount fp;
  PeopleCount tn;
};
BOOST_DESCRIBE_STRUCT(FourCells, (), (tp, fn, fp, tn))

struct AccuracyRow {
  model::RowId row;  // accuracy.acl.lachman.SOKAL2022
  wire::Name about;  // the condition as the source names it; conditions.json says which of ours it is
  model::Word test;
  std::vector<model::ItemId> items;  // empty: an overall judgement that no item records
  wire::Remark positive;             // what counted as a positive result
  std::optional<Measure> sens, sens_low, sens_high;
  std::optional<Measure> spec, spec_low, spec_high;
  std::optional<Measure> lr_pos, lr_pos_low, lr_pos_high;
  std::optional<Measure> lr_neg, lr_neg_low, lr_neg_high;
  std::optional<FourCells> counts;
  std::optional<Measure> lr_pos_cap;       // held to the ratio of a better known test
  std::optional<wire::Remark> ratio_note;  // why a printed ratio does not follow from the printed shares
  std::optional<bool> range;               // a range over studies, not an estimate
  Design design{};
  StudyPhase setting{};
  std::optional<wire::Count<1, 1000>> n_studies;
  std::optional<PeopleCount> n_people;
  std::optional<wire::Remark> standard;
  AgeLimit age_low;
  std::optional<AgeLimit> age_high;
  std::optional<model::Sex> sex;  // people of one sex alone were studied
  std::optional<DayLimit> days_low, days_high;
  Confidence confidence{};
  std::optional<DefaultFor> default_for;  // the row used for this test, in which knees
  model::SourceId source;
  model::Status status{};
  wire::Remark seen;
};
BOOST_DESCRIBE_STRUCT(AccuracyRow, (),
                      (row, about, test, items, positive, sens, sens_low, sens_high, spec, spec_low, spec_high, lr_pos, lr_pos_low, lr_pos_high,
                       lr_neg, lr_neg_low, lr_neg_high, counts, lr_pos_cap, ratio_note, range, design, setting, n_studies, n_people, standard,
                       age_low, age_high, sex, days_low, days_high, confidence, default_for, source, status, seen))

struct PretestRow {
  model::RowId row;  // pretest.acl_tear.primary_care.WAGEMAKERS2010
  wire::Name about;
  wire::Name setting;  // as the source names it; settings.json says which of ours it is
  wire::Remark population;
  Measure low;
  Measure best;
  Measure high;
  std::optional<PeopleCount> positive;  // of `people`, where the source counts
  std::optional<PeopleCount> people;
  std::optional<std::vector<PriorNeed>> needs;
  std::optional<std::vector<model::ConcernId>> without;  // its people had none of these: no prior while one is open
  std::optional<PeopleCount> days_max;                   // since the injury
  std::optional<AgeLimit> age_low;
  std::optional<AgeLimit> age_high;
  std::optional<model::Sex> sex;
  std::optional<bool> queue;   // people chosen for an operation or a referral
  std::optional<bool> expert;  // an expert's opinion
  bool default_ = false;
  std::optional<wire::Remark> because;  // why it is no default
  model::SourceId source;
  model::Status status{};
  wire::Remark seen;
};
BOOST_DESCRIBE_STRUCT(PretestRow, (),
                      (row, about, setting, population, low, best, high, positive, people, needs, without, days_max, age_low, age_high, sex, queue, expert,
                       default_, because, source, status, seen))

struct EvidenceCondition {
  model::Word condition;  // condition.acl_tear
  model::MessageId label;
  std::vector<wire::Name> texts;  // as the accuracy and pre-test rows name it
  std::optional<std::vector<model::Word>> parts;       // the parts complained of where it is judged
  std::optional<std::vector<model::Word>> not_beside;  // complaints of such a part where it is not
  std::optional<AgeLimit> age_from;                    // not judged in anyone who may be younger
  bool computes = false;
  std::optional<wire::Count<1, 9>> danger;  // 1 is worst to miss: the order of the list
  std::optional<wire::Remark> because;      // why it is described only
  model::Status status{};
};
BOOST_DESCRIBE_STRUCT(EvidenceCondition, (), (condition, label, texts, parts, not_beside, age_from, computes, danger, because, status))

struct SettingRow {
  wire::Name text;
  std::optional<PriorSetting> setting;
  std::optional<wire::Remark> because;  // why it gives no default
};
BOOST_DESCRIBE_STRUCT(SettingRow, (), (text, setting, because))

// One item of a test and which of its results count for and against; any other result leaves it open. Where a result was never
// measured, or tells nothing, its list is empty.
struct TestPart {
  model::ItemId item;
  std::vector<model::Word> yes;
  std::vector<model::Word> no;
  std::optional<PartOf> of;  // absent: the value; pain: whether it hurt
  std::optional<OnSide> side;
  std::optional<bool> must;  // without it the composite is negative, whatever the others are
};
BOOST_DESCRIBE_STRUCT(TestPart, (), (item, yes, no, of, side, must))

// Positive when at least so many parts are; with several items it is a composite and replaces its members. Negative when fewer
// are, or where the composite was judged so when no more than `negative_at_most` are: between the two it tells nothing.
struct GroupMember {
  model::Word test;
  std::vector<TestPart> parts;
  wire::Count<1, 20> at_least;
  std::optional<wire::Count<0, 19>> negative_at_most;
};
BOOST_DESCRIBE_STRUCT(GroupMember, (), (test, parts, at_least, negative_at_most))

struct EvidenceGroup {
  model::Word group;
  wire::Name structure;  // the one structure, loaded the one way
  std::vector<GroupMember> members;
};
BOOST_DESCRIBE_STRUCT(EvidenceGroup, (), (group, structure, members))

// One of: an item, an age, a state of the body on this side or of the person, the days since the injury, no one side complained of.
struct ConfounderWhen {
  std::optional<model::ItemId> item;
  std::optional<OnSide> side;  // of the item
  std::optional<std::vector<model::Word>> words;
  std::optional<std::vector<wire::Name>> grades;
  std::optional<AgeLimit> age_over;
  std::optional<model::Word> body;
  std::optional<DayLimit> days_over;   // certainly more days than these
  std::optional<DayLimit> days_under;  // perhaps fewer days than these
  std::optional<bool> side_open;
};
BOOST_DESCRIBE_STRUCT(ConfounderWhen, (), (item, side, words, grades, age_over, body, days_over, days_under, side_open))

// Under `when`, these results of these items tell nothing (ratio 1).
struct Confounder {
  std::vector<model::ItemId> items;
  std::vector<model::Word> results;
  ConfounderWhen when;
  model::Word because;
  model::Status status{};
  wire::Remark seen;
};
BOOST_DESCRIBE_STRUCT(Confounder, (), (items, results, when, because, status, seen))

struct ConditionGroups {
  model::Word condition;
  std::vector<EvidenceGroup> groups;
  std::vector<Confounder> confounders;
  std::vector<model::ItemId> swelling_items;  // give no ratio of their own once rapid swelling has chosen the prior
  model::Status status{};
  wire::Remark seen;
};
BOOST_DESCRIBE_STRUCT(ConditionGroups, (), (condition, groups, confounders, swelling_items, status, seen))

// The texts of the evidence of one edition.
struct EvidenceTexts {
  std::string_view accuracy;    // {"accuracy":[...]}
  std::string_view pretest;     // {"pretest":[...]}
  std::string_view conditions;  // {"conditions":[...]}
  std::string_view settings;    // {"settings":[...]}
  std::string_view groups;      // {"groups":[...]}
};

struct Evidence {
  std::vector<AccuracyRow> accuracy;
  std::vector<PretestRow> pretest;
  std::vector<EvidenceCondition> conditions;
  std::vector<SettingRow> settings;
  std::vector<ConditionGroups> groups;

  [[nodiscard]] const EvidenceCondition* condition(const model::Word& name) const;
  // What a source's own name for a condition means here; null where no row of conditions.json says so.
  [[nodiscard]] const EvidenceCondition* condition_of(const wire::Name& about) const;
  [[nodiscard]] const ConditionGroups* groups_of(const model::Word& condition) const;
  [[nodiscard]] std::optional<PriorSetting> setting_of(const wire::Name& text) const;
  // The default row of a test in a knee that is acutely injured or not.
  [[nodiscard]] const AccuracyRow* default_row(const model::Word& condition, const model::Word& test, bool acute) const;
};

}  // namespace limbledger::reference

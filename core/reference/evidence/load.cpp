#include "core/reference/evidence/load.hpp"

#include "core/reference/read_file.hpp"

namespace limbledger::reference {

namespace {

struct AccuracyFile {
  std::vector<AccuracyRow> accuracy;
};
BOOST_DESCRIBE_STRUCT(AccuracyFile, (), (accuracy))
struct PretestFile {
  std::vector<PretestRow> pretest;
};
BOOST_DESCRIBE_STRUCT(PretestFile, (), (pretest))
struct ConditionFile {
  std::vector<EvidenceCondition> conditions;
};
BOOST_DESCRIBE_STRUCT(ConditionFile, (), (conditions))
struct SettingFile {
  std::vector<SettingRow> settings;
};
BOOST_DESCRIBE_STRUCT(SettingFile, (), (settings))
struct GroupFile {
  std::vector<ConditionGroups> groups;
};
BOOST_DESCRIBE_STRUCT(GroupFile, (), (groups))

}  // namespace

Evidence read_evidence(const EvidenceTexts& texts, Faults& faults) {
  Evidence evidence;
  const std::size_t written = texts.accuracy.size() + texts.pretest.size() + texts.conditions.size() + texts.settings.size() + texts.groups.size();
  if (written == 0) {
    return evidence;
  }
  evidence.accuracy = read_file<AccuracyFile>(texts.accuracy, faults).accuracy;
  evidence.pretest = read_file<PretestFile>(texts.pretest, faults).pretest;
  evidence.conditions = read_file<ConditionFile>(texts.conditions, faults).conditions;
  evidence.settings = read_file<SettingFile>(texts.settings, faults).settings;
  evidence.groups = read_file<GroupFile>(texts.groups, faults).groups;
  return evidence;
}

}  // namespace limbledger::reference

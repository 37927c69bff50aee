#include "core/interpret/evidence/prior.hpp"

#include <algorithm>

namespace limbledger::interpret {

namespace {

using reference::PretestRow;
using reference::PriorNeed;
using reference::PriorSetting;

[[nodiscard]] std::vector<PriorSetting> settings_from(model::Setting setting) {
  switch (setting) {
    case model::Setting::outreach:
      return {PriorSetting::outreach, PriorSetting::community, PriorSetting::primary_care};
    case model::Setting::primary_care:
      return {PriorSetting::primary_care};
    case model::Setting::emergency:
      return {PriorSetting::emergency};
    case model::Setting::orthopaedic:
      return {PriorSetting::orthopaedic};
    case model::Setting::sports:
      return {PriorSetting::sports};
  }
  return {};
}

[[nodiscard]] bool needs(const PretestRow& row, PriorNeed need) {
  return row.needs && std::find(row.needs->begin(), row.needs->end(), need) != row.needs->end();
}

// The people that the row counted include this one.
[[nodiscard]] bool covers(const PretestRow& row, const Circumstances& here) {
  if (needs(row, PriorNeed::injury) && !here.injured) {
    return false;
  }
  if (needs(row, PriorNeed::haemarthrosis) && !here.haemarthrosis) {
    return false;
  }
  if (row.days_max && (!here.days || *here.days > row.days_max->steps)) {
    return false;
  }
  const auto stands_open = [&](const model::ConcernId& concern) { return std::find(here.open.begin(), here.open.end(), concern) != here.open.end(); };
  if (row.without && std::any_of(row.without->begin(), row.without->end(), stands_open)) {
    return false;
  }
  if (row.sex && row.sex != here.sex) {
    return false;
  }
  if ((row.age_low || row.age_high) && !here.age) {
    return false;
  }
  return !(row.age_low && here.age->low < row.age_low->steps) && !(row.age_high && here.age->high > row.age_high->steps);
}

}  // namespace

std::optional<Prior> prior_of(const View& view, const model::Word& condition, const Circumstances& circumstances,
                              const std::vector<TypedPrior>& typed) {
  for (const TypedPrior& one : typed) {
    if (one.condition == condition) {
      const double share = static_cast<double>(one.per_cent.steps) / 100;
      return Prior{{share, share, share}, nullptr};
    }
  }
  const reference::Evidence& evidence = view.edition().evidence();
  const auto first = [&](bool haemarthrosis, std::optional<PriorSetting> setting) -> const PretestRow* {
    for (const PretestRow& row : evidence.pretest) {
      const reference::EvidenceCondition* about = evidence.condition_of(row.about);
      if (row.default_ && about != nullptr && about->condition == condition && needs(row, PriorNeed::haemarthrosis) == haemarthrosis &&
          covers(row, circumstances) && (!setting || evidence.setting_of(row.setting) == setting)) {
        return &row;
      }
    }
    return nullptr;
  };
  const PretestRow* row = circumstances.haemarthrosis ? first(true, std::nullopt) : nullptr;
  for (const PriorSetting setting : settings_from(view.exam().setting)) {
    row = row != nullptr ? row : first(false, setting);
  }
  if (row == nullptr) {
    return std::nullopt;
  }
  return Prior{{row->low.real(), row->best.real(), row->high.real()}, row};
}

}  // namespace limbledger::interpret

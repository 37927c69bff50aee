#include "core/service/once_raised.hpp"

#include <algorithm>

namespace limbledger::service {

namespace {

[[nodiscard]] bool is_same(const OnceRaised::Alert& one, const OnceRaised::Alert& other) { return one.row == other.row && one.side == other.side; }

template <class T>
[[nodiscard]] bool add_new(std::vector<T>& all, const T& one) {
  const bool is_new = std::find(all.begin(), all.end(), one) == all.end();
  if (is_new) {
    all.push_back(one);
  }
  return is_new;
}

}  // namespace

void TimesRaised::add(const std::vector<OnceRaised::Alert>& state, const Knew& knew) {
  for (Told& told : told_) {
    const auto stands = [&](const OnceRaised::Alert& one) { return one.listed && is_same(one, told.newest); };
    if (told.stands && std::none_of(state.begin(), state.end(), stands) && knew(told.last)) {
      told.stands = false;
    }
  }
  for (const OnceRaised::Alert& alert : state) {
    if (!alert.listed) {
      continue;
    }
    auto told = std::find_if(told_.begin(), told_.end(), [&](const Told& one) { return is_same(one.newest, alert); });
    if (told == told_.end()) {
      told = told_.insert(told_.end(), Told{alert, {}, 0, 0, false});
    }
    if (!told->stands) {
      *told = Told{alert, {alert.what}, told->times + 1, states_, true};
      continue;
    }
    bool again = alert.urgency < told->newest.urgency;
    again = add_new(told->said, alert.what) || again;
    for (const model::FindingId& ground : alert.grounds) {
      again = add_new(told->newest.grounds, ground) || again;
    }
    told->newest.urgency = std::min(told->newest.urgency, alert.urgency);
    told->times += again ? 1U : 0U;
    told->last = states_;
  }
  ++states_;
}

void TimesRaised::mark(std::vector<interpret::Alert>& alerts) const {
  for (interpret::Alert& alert : alerts) {
    const auto told = std::find_if(told_.begin(), told_.end(), [&](const Told& one) { return one.newest.row->alert == alert.alert && one.newest.side == alert.side; });
    if (told == told_.end()) {
      continue;
    }
    std::size_t times = told->times + (alert.handled_before ? 1U : 0U);
    for (const model::AlertHandled& one : alert.handled_also ? *alert.handled_also : std::vector<model::AlertHandled>{}) {
      times += one.alert == alert.alert ? 1U : 0U;
    }
    alert.times_raised.emplace().steps = static_cast<std::int64_t>(times);
  }
}

}  // namespace limbledger::service

#include "core/report/ordinary.hpp"

#include "core/interpret/alerts/limits.hpp"

#include <algorithm>
#include <array>
#include <string_view>

namespace limbledger::report {

namespace {

constexpr std::int64_t steps_asked = 4;
constexpr std::int64_t touches_felt = 2;  // of three; fewer is feeling lost at that place, by the items' own words

[[nodiscard]] Ordinary either_way(bool is_ordinary) { return is_ordinary ? Ordinary::ordinary : Ordinary::unusual; }

// Nobody knows, or nobody saw: neither ordinary nor a finding.
[[nodiscard]] bool says_nothing(std::string_view choice) { return choice == "not_known" || choice.ends_with("_not_seen") || choice.ends_with("_not_readable"); }

[[nodiscard]] bool says_not_done(const model::ChoiceId& choice) { return choice.text.ends_with("_not_done"); }

// What was offered and not done, hidden, or not there to be looked at; each word is its own reason.
constexpr std::array<std::string_view, 6> reasons_not_done{"saddle_declined", "saddle_left_to_receiver", "saddle_not_private", "depth_not_seen", "wear_not_seen", "no_shoes_here"};

[[nodiscard]] bool is_why_not(const model::ChoiceId& choice) {
  return says_not_done(choice) || std::find(reasons_not_done.begin(), reasons_not_done.end(), choice.text) != reasons_not_done.end();
}

struct OrdinaryOf {
  const model::Item& item;
  const model::Scale* scale;

  [[nodiscard]] bool stands_as(std::string_view word, std::string_view otherwise) const {
    if (!item.ordinary) {
      return word == otherwise;
    }
    return std::any_of(item.ordinary->begin(), item.ordinary->end(), [&](const model::Word& one) { return one.text == word; });
  }
  [[nodiscard]] Ordinary operator()(const model::Test& v) const {
    if (v.result == model::TestResult::equivocal) {
      return Ordinary::unusual;
    }
    return either_way(stands_as(v.result == model::TestResult::positive ? "positive" : "negative", "negative"));
  }
  [[nodiscard]] Ordinary operator()(const model::Answer& v) const {
    // Where yes and no are both ordinary, it is a fact or a kind of pain, and neither of them says that all is as it was.
    if (v.answer == model::AnswerWord::unsure || (item.ordinary && item.ordinary->size() > 1)) {
      return Ordinary::described;
    }
    return either_way(stands_as(v.answer == model::AnswerWord::yes ? "yes" : "no", "no"));
  }
  [[nodiscard]] Ordinary operator()(const model::Grade& v) const {
    if (scale == nullptr || !scale->ordinary) {
      return Ordinary::described;
    }
    return either_way(!v.shade && std::find(scale->ordinary->begin(), scale->ordinary->end(), v.grade) != scale->ordinary->end());
  }
  [[nodiscard]] Ordinary of_choice(const model::ChoiceId& choice) const {
    if (!item.ordinary) {
      return Ordinary::described;
    }
    const bool is_ordinary = stands_as(choice.text, {});
    return !is_ordinary && says_nothing(choice.text) ? Ordinary::described : either_way(is_ordinary);
  }
  [[nodiscard]] Ordinary operator()(const model::Choice& v) const { return of_choice(v.choice); }
  [[nodiscard]] Ordinary operator()(const model::Choices& v) const {
    Ordinary all = v.choices.empty() ? Ordinary::described : Ordinary::ordinary;
    for (const model::ChoiceId& one : v.choices) {
      const Ordinary here = of_choice(one);
      all = here == Ordinary::unusual || all == Ordinary::ordinary ? here : all;
      if (all == Ordinary::unusual) {
        break;
      }
    }
    return all;
  }
  [[nodiscard]] Ordinary operator()(const model::CountValue& v) const {
    const std::string_view name = item.item.text;
    if (name.starts_with("nerve.monofilament_") || name.starts_with("nerve.tuning_fork_")) {
      return either_way(v.count.steps >= touches_felt);
    }
    return name == "gait.steps_now" ? either_way(v.count.steps >= steps_asked) : Ordinary::described;
  }
  [[nodiscard]] Ordinary operator()(const model::Temperature& v) const {
    const bool body = item.region.text == "general" && v.cel;
    return body ? either_way(v.cel->steps < interpret::fever_tenths) : Ordinary::described;
  }
  template <class Other>
  [[nodiscard]] Ordinary operator()(const Other&) const {
    return Ordinary::described;
  }
};

}  // namespace

bool left_undone(const model::Finding& finding) {
  const auto* one = std::get_if<model::Choice>(&finding.value);
  const auto* more = std::get_if<model::Choices>(&finding.value);
  return std::holds_alternative<model::NotDone>(finding.value) || (one != nullptr && is_why_not(one->choice)) ||
         (more != nullptr && !more->choices.empty() && std::all_of(more->choices.begin(), more->choices.end(), is_why_not));
}

bool undone_without_reason(const model::Finding& finding) {
  const auto* one = std::get_if<model::Choice>(&finding.value);
  return one != nullptr && says_not_done(one->choice) && !finding.remark;
}

bool is_look(const model::Finding& finding) {
  const std::string& item = finding.item.text;
  const bool of_today = !finding.origin || (*finding.origin != model::Origin::carried_over && *finding.origin != model::Origin::self_reported);
  return of_today && !item.starts_with("history.") && !item.starts_with("body.") && !item.starts_with("general.concern_");
}

bool stands_out(const reference::Edition& edition, const model::Finding& finding) {
  const auto* answer = std::get_if<model::Answer>(&finding.value);
  const bool unsure = answer != nullptr && answer->answer == model::AnswerWord::unsure;
  return (unsure && is_look(finding)) || ordinary(edition, finding) == Ordinary::unusual;
}

Ordinary ordinary(const reference::Edition& edition, const model::Finding& finding) {
  const model::Item* item = edition.item(finding.item);
  if (item == nullptr) {
    return Ordinary::described;
  }
  if (item->region.text == "history" && !item->ordinary) {
    return Ordinary::told;
  }
  if (left_undone(finding)) {
    return Ordinary::described;  // what was not done is ordinary in nobody
  }
  // Entered for a group: nobody looked at this item alone.
  if (finding.origin && *finding.origin == model::Origin::bulk_expected) {
    return Ordinary::ordinary;
  }
  return std::visit(OrdinaryOf{*item, item->scale ? edition.scale(*item->scale) : nullptr}, finding.value);
}

}  // namespace limbledger::report

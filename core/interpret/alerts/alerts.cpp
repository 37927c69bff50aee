#include "core/interpret/alerts/alerts.hpp"

#include "core/interpret/after/handling.hpp"
#include "core/interpret/after/meanwhile.hpp"
#include "core/interpret/after/told_apart.hpp"
#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/alerts/limits.hpp"
#include "core/interpret/body.hpp"
#include "core/interpret/params.hpp"
#include "core/interpret/step/spared.hpp"

#include <algorithm>
#include <array>
#include <iterator>
#include <string>
#include <tuple>
#include <utility>

namespace limbledger::interpret {

using model::Side;

namespace {

constexpr std::size_t questions_shown = 3;
constexpr std::array<std::string_view, 9> takes_the_limb{"alert.open_fx",      "alert.knee_disloc_vasc", "alert.dislocation", "alert.hip_disloc", "alert.ankle_disloc",
                                                         "alert.fracture", "alert.ali",              "alert.acs",         "alert.bleeding"};
constexpr std::string_view masked_alert = "alert.protected";
constexpr std::array left_then_right{Side::left, Side::right};

// Something found on this side, not only what was said of the person as a whole.
[[nodiscard]] bool points_here(const Clue& clue, Side side) {
  return clue.because.any([&](const model::Finding* finding) { return finding->side == side; });
}

[[nodiscard]] bool is_protected(const JudgedFlag& judged) { return judged.row->protected_.value_or(false); }
[[nodiscard]] bool is_prompt(const JudgedFlag& judged) { return judged.raised.urgency == AlertClass::two_weeks; }
[[nodiscard]] bool is_raised(const JudgedFlag& judged) { return judged.raised.clue.is_yes(); }

// msg.alert.septic_adult.raised, msg.question.septic_adult
[[nodiscard]] std::string short_name(const JudgedFlag& judged) { return judged.row->alert.text.substr(std::string_view("alert.").size()); }

[[nodiscard]] FlagAnswer answer_of(const Clue& clue) {
  if (clue.is_no() && clue.against.empty()) {
    return FlagAnswer::not_asked;  // no injury, too long ago: that settles it, and nobody was asked after the sign itself
  }
  if (clue.value != Tri::undetermined) {
    return clue.is_yes() ? FlagAnswer::raised : FlagAnswer::asked_no;
  }
  return clue.ask.empty() && !clue.open.empty() ? FlagAnswer::cannot_answer : FlagAnswer::not_asked;
}

// Looked at, and found out of the ordinary by what the catalogue says of the item: it speaks for another trouble, and is no proof of a no.
// So does a grade: a weak pulse is not a pulse that was lost, and no answer that the foot has blood.
[[nodiscard]] bool speaks_for_another(const View& view, const model::Finding& finding) {
  if (const auto* grade = std::get_if<model::Grade>(&finding.value)) {
    const model::Scale* scale = view.edition().scale(grade->scale);
    return scale != nullptr && scale->ordinary && std::find(scale->ordinary->begin(), scale->ordinary->end(), grade->grade) == scale->ordinary->end();
  }
  const auto* choice = std::get_if<model::Choice>(&finding.value);
  const model::Item* item = choice != nullptr && finding.side != Side::midline ? view.edition().item(finding.item) : nullptr;
  return item != nullptr && item->region.text != "history" && item->ordinary &&
         std::none_of(item->ordinary->begin(), item->ordinary->end(), [&](const model::Word& one) { return one.text == choice->choice.text; });
}

// A no holds by the answers that are one; where none is left it is open, and what was found is named. What counted for a yes without
// pointing to it is named once it stands.
void keep_only_true_noes(const View& view, Clue& clue) {
  clue.because.add(clue.is_yes() ? clue.quiet : FindingTrail{});
  const auto other = [&](const model::Finding* finding) { return speaks_for_another(view, *finding); };
  if (!clue.is_no() || !clue.against.any(other)) {
    return;
  }
  std::vector<const model::Finding*> noes = clue.against.written();
  noes.erase(std::remove_if(noes.begin(), noes.end(), other), noes.end());
  if (noes.empty()) {
    clue = left_open(clue, Clue{});
  } else {
    clue.against = FindingTrail::of(view.trails().findings, noes);
  }
}

[[nodiscard]] Alert to_alert(const View& view, const JudgedFlag& judged, const model::Place* place) {
  Alert alert;
  alert.alert = judged.row->alert;
  alert.side = judged.side;
  alert.state = AlertState::raised;
  alert.urgency = judged.raised.urgency == AlertClass::now ? Urgency::now : Urgency::same_day;
  alert.interrupts = judged.raised.interrupts;
  alert.because = ids_of(judged.raised.clue.because.written());
  alert.message = {"msg.alert." + short_name(judged) + "." + std::string(judged.raised.what)};
  alert.meanwhile = meanwhile_of(view, judged, place);
  alert.stop = judged.row->stop;
  alert.audience = is_protected(judged) ? Audience::protected_ : Audience::clinician;
  alert.sources = judged.row->sources;
  return alert;
}

// The note is named, and nothing of what it says.
[[nodiscard]] Alert masked(Alert alert) {
  alert.alert = {std::string(masked_alert)};
  alert.side.reset();
  alert.because.clear();
  alert.message = {"msg.alert.see_protected_note"};
  alert.meanwhile.clear();
  alert.stop.clear();
  alert.sources.clear();
  alert.handled.reset();
  alert.handled_before.reset();
  alert.corrected.reset();
  alert.handled_also.reset();
  alert.rested_on.reset();
  return alert;
}

// Shown inside a graver one that is raised on that side, or for the person as a whole.
[[nodiscard]] bool shown_inside(const JudgedFlag& judged, const std::vector<JudgedFlag>& all) {
  return std::any_of(all.begin(), all.end(), [&](const JudgedFlag& other) { return is_inside(judged, other); });
}

[[nodiscard]] Judged to_prompt(const JudgedFlag& judged) {
  Judged prompt;
  Statement& statement = prompt.statement;
  statement.statement = {"referral." + short_name(judged) + (judged.side ? ":" + std::string(side_word(*judged.side)) : std::string())};
  statement.side = judged.side;
  statement.grade = StatementGrade::notable;
  statement.comparator = Comparator::none;
  const std::string which = judged.raised.refer.empty() ? std::string() : "." + std::string(judged.raised.refer);
  statement.message = {"msg.referral." + short_name(judged) + which};
  statement.params = Params().raw();
  statement.findings = ids_of(judged.raised.clue.because.written());
  prompt.working.statement = statement.statement;
  prompt.working.message = statement.message;
  prompt.working.formula = {"raised by recorded answers; within two weeks"};
  for (const model::Finding* finding : judged.raised.clue.because.written()) {
    prompt.working.inputs.push_back({finding->finding, model::Word{finding->item.text}, model::Word{"known"}, std::nullopt});
  }
  return prompt;
}

// Nobody is asked for the pulse of a foot that was taken off, or to look under a plaster.
[[nodiscard]] bool is_there(const View& view, const ToAsk& ask) { return view.bodies().not_applicable(*ask.item, ask.side) == nullptr; }

// A person alone at a kiosk said yes to it and was asked to call the staff: whoever examines is asked about that before anything else.
[[nodiscard]] bool staff_was_called(const View& view, const JudgedFlag& judged) {
  const auto called = [&](const model::Finding* finding) {
    return finding->origin == model::Origin::self_reported && calls_staff(view.edition(), finding->item, finding->value);
  };
  const auto& tells = judged.row->tell_staff;
  return judged.raised.clue.open.any(called) || std::any_of(view.findings().begin(), view.findings().end(), [&](const model::Finding* finding) {
           const bool here = !judged.side || finding->side == *judged.side || finding->side == Side::midline;
           return here && std::find(tells.begin(), tells.end(), finding->item) != tells.end() && called(finding);
         });
}

[[nodiscard]] bool is_asked(const View& view, const Spared& spared, const JudgedFlag& judged) {
  const Clue& clue = waits_for(judged.raised);
  if (clue.value != Tri::undetermined || is_protected(judged)) {
    return false;
  }
  const auto& complaints = judged.row->asked_in;
  const bool for_complaint = std::find(complaints.begin(), complaints.end(), view.exam().complaint) != complaints.end();
  const bool here = !judged.side || of_interest(view, *judged.side);
  return (is_raised(judged) || clue.warm() || (for_complaint && here)) &&
         clue.ask.any([&](const ToAsk& ask) { return is_there(view, ask) && !spared.holds(ask, judged); });
}

void fill_questions(const View& view, const std::vector<JudgedFlag>& flags, AlertsJudged& out) {
  const Spared spared(view, flags);
  const std::vector<const JudgedFlag*> asked = asked_flags(view, flags, spared);
  for (std::size_t i = 0; i < asked.size() && i < questions_shown; ++i) {
    Question question;
    question.question = asked[i]->row->alert;
    question.side = asked[i]->side;
    question.rank.steps = static_cast<std::int64_t>(i + 1);
    question.ask = asks_now(view, spared, *asked[i], waits_for(asked[i]->raised));
    const std::string_view which = is_raised(*asked[i]) ? "graver" : asked[i]->raised.asks;
    question.message = {"msg.question." + short_name(*asked[i]) + (which.empty() ? "" : "." + std::string(which))};
    out.questions.push_back(std::move(question));
  }
  out.questions_more = asked.size() - out.questions.size();
}

// What was raised once and is no more. One that is now shown inside a graver one is not gone.
void add_withdrawn(const View& view, const std::vector<JudgedFlag>& now, const AlertsAsk& ask, std::vector<Alert>& alerts) {
  const auto add = [&](const model::Exam& before, const std::optional<model::Person>& person, const std::vector<model::Word>& corrected,
                       const std::vector<model::EntryId>& turned) {
    const View then(before, person, view.edition(), view.as_of());
    const std::vector<JudgedFlag> flags = judge_flags(then);
    for (const JudgedFlag* judged : listed_alerts(flags)) {
      const std::optional<Side> at = side_since(*judged, turned);
      const auto same = [&](const auto& name, const std::optional<Side>& side) { return name == judged->row->alert && side == at; };
      const bool stands = std::any_of(now.begin(), now.end(), [&](const JudgedFlag& one) { return stands_as_alert(one) && same(one.row->alert, one.side); });
      const bool named = std::any_of(alerts.begin(), alerts.end(), [&](const Alert& one) { return same(one.alert, one.side); });
      if (stands || named) {
        continue;
      }
      Alert alert = to_alert(then, *judged, ask.place);
      alert.side = at;
      alert.rested_on.emplace();
      for (const model::Finding* finding : judged->raised.clue.because.written()) {
        const model::Item* item = view.edition().item(finding->item);
        if (!is_protected(*judged) && item != nullptr && item->protected_.value_or(false)) {
          continue;
        }
        alert.rested_on->push_back(*finding);
        model::Finding& kept = alert.rested_on->back();
        const bool other = kept.entry && std::binary_search(turned.begin(), turned.end(), *kept.entry);
        kept.side = other ? other_side(kept.side) : kept.side;
      }
      take_handling(view, *judged, true, alert);
      alert.state = AlertState::withdrawn_by_correction;
      alert.interrupts = false;
      if (!corrected.empty()) {
        alert.corrected = corrected;
      }
      alerts.push_back(std::move(alert));
    }
  };
  for (const model::Exam& before : ask.before_corrections) {
    add(before, view.person(), {}, {});
  }
  for (const KnownOtherwise& before : ask.known_otherwise) {
    add(before.exam, before.person, before.corrected, before.turned);
  }
}

// Where nobody named a side and nothing that was found points to one, the danger is one of the person: one line of no side, asked of both.
void add_of_no_side(const View& view, const Answers& answers, const RedFlag& flag, const reference::AlertRow& row, std::vector<JudgedFlag>& judged) {
  Raised raised = flag.judge(answers, Side::left);
  Raised other = flag.judge(answers, Side::right);
  if (other.applies != Tri::no && (raised.applies == Tri::no || (other.clue.is_yes() && !raised.clue.is_yes()))) {
    std::swap(raised, other);  // the one that raises it
  }
  if (raised.applies == Tri::no) {
    return;
  }
  raised.clue.ask.add(other.clue.ask);
  raised.would_settle.add(other.would_settle);
  if (raised.graver && other.graver) {
    raised.graver->ask.add(other.graver->ask);
  }
  raised.of_no_side = true;
  keep_only_true_noes(view, raised.clue);
  judged.push_back({&flag, &row, std::nullopt, std::move(raised)});
}

[[nodiscard]] std::vector<JudgedFlag> judge_as_told(const View& view, const WantedRows& wanted) {
  const Answers answers(view);
  std::vector<JudgedFlag> judged;
  judged.reserve(2 * all_red_flags().size());
  const std::array interest{of_interest(view, Side::left), of_interest(view, Side::right)};  // asked after, and something was found there
  const std::array found{view.has_side(Side::left), view.has_side(Side::right)};
  const auto& complaint = view.exam().side;
  const bool no_side = !complaint || *complaint == Side::midline;
  const auto rows = view.edition().alerts();  // in the order of the functions, as far as that goes
  std::size_t next_row = 0;
  for (const RedFlag& flag : all_red_flags()) {
    const bool in_turn = next_row < rows.size() && rows[next_row].alert.text == flag.alert;
    const reference::AlertRow* row = in_turn ? &rows[next_row] : view.edition().alert(flag.alert);
    next_row += in_turn ? 1 : 0;
    if (row == nullptr || (wanted && !wanted(*row))) {
      continue;
    }
    if (!flag.sided) {
      judged.push_back({&flag, row, std::nullopt, flag.judge(answers, Side::midline)});
      keep_only_true_noes(view, judged.back().raised.clue);
      judged.back().side = judged.back().raised.lies;
      if (judged.back().raised.applies == Tri::no) {
        judged.pop_back();
      }
      continue;
    }
    bool of_person = no_side && !interest[0] && !interest[1];
    bool points = false;
    JudgedFlag* film_line = nullptr;
    for (const Side side : left_then_right) {
      const std::size_t at = side == Side::left ? 0 : 1;
      if (!interest[at] && !found[at]) {
        continue;  // nothing found there could point to it
      }
      JudgedFlag& one = judged.emplace_back();
      one.raised = flag.judge(answers, side);
      keep_only_true_noes(view, one.raised.clue);
      const bool yes = one.raised.clue.is_yes();
      const bool here = points_here(one.raised.clue, side);
      const bool film = yes && one.raised.of_no_side;
      const bool anywhere = yes && no_side && !here && !film && one.raised.applies != Tri::no;
      const bool told = film ? film_line == nullptr : !anywhere && (interest[at] || (!one.raised.clue.is_no() && here));
      of_person = of_person || anywhere;
      points = points || (yes && (here || film));
      if (one.raised.applies != Tri::no && told) {
        one.flag = &flag;
        one.row = row;
        one.side = film ? std::nullopt : std::optional(side);
        film_line = film ? &one : film_line;
      } else {
        if (film && film_line != nullptr && one.raised.applies != Tri::no) {  // one line of both sides: the more urgent of the two, with the grounds of both
          if (one.raised.urgency < film_line->raised.urgency) {
            std::swap(one.raised, film_line->raised);
          }
          film_line->raised.clue.because.add(one.raised.clue.because);
        }
        judged.pop_back();
      }
    }
    if (of_person && !points) {
      add_of_no_side(view, answers, flag, *row, judged);
    }
  }
  return judged;
}

}  // namespace

std::vector<JudgedFlag> judge_flags(const View& view) { return judge_flags(view, WantedRows()); }

std::vector<JudgedFlag> judge_flags(const View& view, const WantedRows& wanted) {
  std::vector<JudgedFlag> judged = judge_as_told(view, wanted);
  if (view.may_hold_two()) {
    add_more_alarming(view, &judge_as_told, wanted, judged);
  }
  return judged;
}

std::optional<Side> side_since(const JudgedFlag& judged, const std::vector<model::EntryId>& turned) {
  const auto stayed = [&](const model::Finding* finding) {
    return finding->side != Side::midline && !(finding->entry && std::binary_search(turned.begin(), turned.end(), *finding->entry));
  };
  const bool of_a_leg = judged.side && judged.raised.clue.because.any([](const model::Finding* finding) { return finding->side != Side::midline; });
  return of_a_leg && !judged.raised.clue.because.any(stayed) ? std::optional(other_side(*judged.side)) : judged.side;
}

bool of_interest(const View& view, Side side) {
  const auto& complaint = view.exam().side;
  if (complaint && *complaint != Side::midline) {
    return *complaint == side;
  }
  return view.has_side(side);
}

bool stands_as_alert(const JudgedFlag& judged) { return is_raised(judged) && !is_prompt(judged); }

bool is_inside(const JudgedFlag& judged, const JudgedFlag& other) {
  const auto& inside = judged.row->inside;
  return inside && std::find(inside->begin(), inside->end(), other.row->alert) != inside->end() && stands_as_alert(other) && (other.raised.hides || !judged.side) &&
         other.raised.urgency <= judged.raised.urgency &&  // nothing is hidden by what leaves more time
         (judged.raised.tells_of.empty() || judged.raised.tells_of == other.raised.tells_of) &&
         (!judged.side || !other.side || judged.side == other.side);
}

std::vector<const JudgedFlag*> listed_alerts(const std::vector<JudgedFlag>& flags) {
  std::vector<const JudgedFlag*> listed;
  for (const JudgedFlag& judged : flags) {
    if (stands_as_alert(judged) && !shown_inside(judged, flags)) {
      listed.push_back(&judged);
    }
  }
  return listed;
}

std::vector<Ask> asks_now(const View& view, const Spared& spared, const JudgedFlag& judged, const Clue& clue) {
  std::vector<Ask> asks;
  for (const ToAsk& ask : clue.ask.written()) {
    if (is_there(view, ask) && !spared.holds(ask, judged)) {
      asks.push_back({ask.item->item, ask.side});
    }
  }
  // The painless before the painful (C21).
  std::stable_partition(asks.begin(), asks.end(), [&](const Ask& ask) {
    const model::Item* item = view.edition().item(ask.item);
    const bool hurts = item != nullptr && (item->discomfort == model::Discomfort::some || item->discomfort == model::Discomfort::high);
    return !hurts && (item == nullptr || !moves_or_squeezes(*item));
  });
  return asks;
}

std::vector<const JudgedFlag*> asked_flags(const View& view, const std::vector<JudgedFlag>& flags) { return asked_flags(view, flags, Spared(view, flags)); }

std::vector<const JudgedFlag*> asked_flags(const View& view, const std::vector<JudgedFlag>& flags, const Spared& spared) {
  const auto& complaint = view.exam().side;
  const auto is_now = [](const JudgedFlag& one) { return stands_as_alert(one) && one.raised.urgency == AlertClass::now; };
  // A limb that is broken, out of joint, without blood or under pressure itself points to what takes it within hours (C2: class, then time to harm).
  const auto in_alarm = [&](const JudgedFlag& judged) {
    return judged.row->urgency == AlertClass::now && judged.side && std::any_of(flags.begin(), flags.end(), [&](const JudgedFlag& one) {
             return stands_as_alert(one) && one.side == judged.side && std::find(takes_the_limb.begin(), takes_the_limb.end(), one.row->alert.text) != takes_the_limb.end();
           });
  };
  // What leaves days in the other leg waits until the leg that has hours was asked after.
  const auto waits = [&](const JudgedFlag& judged) {
    const auto stands_on = [&](Side side) { return std::any_of(flags.begin(), flags.end(), [&](const JudgedFlag& one) { return is_now(one) && one.side == side; }); };
    return judged.side && judged.row->urgency != AlertClass::now && stands_on(other_side(*judged.side)) && !stands_on(*judged.side);
  };
  const auto rank_of = [&](const JudgedFlag& judged) {
    const bool warm = is_raised(judged) || judged.raised.clue.warm();
    const bool elsewhere = judged.side && complaint && *judged.side != *complaint;
    return std::tuple(!staff_was_called(view, judged), !judged.raised.ask_first, waits(judged), !(warm || in_alarm(judged)), judged.row->urgency, !warm, judged.row->harm_minutes.steps,
                      std::string_view(judged.row->alert.text), elsewhere, judged.side ? static_cast<int>(*judged.side) : -1);
  };
  // Ranked once: sorting asks many times.
  std::vector<std::pair<decltype(rank_of(flags.front())), const JudgedFlag*>> ranked;
  for (const JudgedFlag& judged : flags) {
    if (is_asked(view, spared, judged) && !shown_inside(judged, flags)) {
      ranked.emplace_back(rank_of(judged), &judged);
    }
  }
  std::sort(ranked.begin(), ranked.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
  std::vector<const JudgedFlag*> asked;
  for (const auto& [rank, judged] : ranked) {
    asked.push_back(judged);
  }
  return asked;
}

std::vector<Alert> raised_alerts(const View& view, const std::vector<JudgedFlag>& flags, const AlertsAsk& ask) {
  std::vector<Alert> alerts;
  for (const JudgedFlag* judged : listed_alerts(flags)) {
    Alert alert = to_alert(view, *judged, ask.place);
    take_handling(view, *judged, false, alert);
    // What was done about one that stands inside it now is not lost with its line.
    for (const JudgedFlag& inner : flags) {
      const auto between = [&](const JudgedFlag& one) { return is_inside(inner, one) && is_inside(one, *judged); };
      if (stands_as_alert(inner) && inner.row->inside && (is_inside(inner, *judged) || std::any_of(flags.begin(), flags.end(), between))) {
        take_handling_inside(view, inner, alert);
      }
    }
    alerts.push_back(std::move(alert));
  }
  add_withdrawn(view, flags, ask, alerts);
  const auto harm = [&](const Alert& alert) { return view.edition().alert(alert.alert.text)->harm_minutes.steps; };
  const auto key = [&](const Alert& alert) {
    return std::tuple(alert.state, alert.urgency, harm(alert), alert.alert.text, alert.side ? static_cast<int>(*alert.side) : -1);
  };
  std::sort(alerts.begin(), alerts.end(), [&](const Alert& a, const Alert& b) { return key(a) < key(b); });
  for (Alert& alert : alerts) {
    if (alert.audience == Audience::protected_ && !ask.protected_) {
      alert = masked(std::move(alert));
    }
  }
  return alerts;
}

AlertsJudged judge_alerts(const View& view, const std::vector<JudgedFlag>& flags, const AlertsAsk& ask) {
  AlertsJudged out;
  out.alerts = raised_alerts(view, flags, ask);
  out.flags.reserve(flags.size());
  for (const JudgedFlag& judged : flags) {
    const bool hidden = is_protected(judged) && !ask.protected_;
    if (!hidden) {
      const Clue& clue = judged.raised.clue;
      const FindingTrail& findings = clue.is_yes() ? clue.because : (clue.is_no() ? clue.against : clue.open);
      out.flags.push_back({judged.row->alert, judged.side, answer_of(clue), ids_of(findings.written())});
    }
    if (is_raised(judged) && is_prompt(judged)) {
      out.prompts.push_back(to_prompt(judged));
    }
  }
  fill_questions(view, flags, out);
  return out;
}

}  // namespace limbledger::interpret

#include "core/report/after/transfer_note.hpp"

#include "core/report/after/by_transfer.hpp"
#include "core/report/brief/added.hpp"
#include "core/report/brief/brief.hpp"
#include "core/report/page_judged.hpp"
#include "core/report/page_parts.hpp"

#include <algorithm>
#include <iterator>
#include <utility>

namespace limbledger::report {

namespace {

constexpr std::size_t held_items_max = 5;  // one page
constexpr std::size_t alerts_in_head_max = 2;

// Urgent first, as the assessment has them; none that a correction took back.
[[nodiscard]] std::vector<const interpret::Alert*> standing_alerts(const PageView& view) {
  std::vector<const interpret::Alert*> out;
  for (const interpret::Alert& alert : view.assessment.alerts) {
    if (!is_hidden(view, alert) && alert.state != interpret::AlertState::withdrawn_by_correction) {
      out.push_back(&alert);
    }
  }
  return out;
}

// Of a value that was decided on, when it was written down by whose it is.
[[nodiscard]] std::optional<model::Instant> written_down(const model::Finding& finding) {
  for (const model::Settled& settled : finding.settled.value_or(std::vector<model::Settled>{})) {
    for (const model::Weighed& one : settled.among) {
      if (settled.taken && one.entry == *settled.taken) {
        return one.at;
      }
    }
    break;  // what it undid holds no more
  }
  return finding.entered_at;
}

// When it was found: a pulse that was felt yesterday and written down today is yesterday's. When it was written down stands beside it
// where that was not at once.
[[nodiscard]] std::string when_found(const PageView& view, const model::Finding& finding) {
  constexpr std::int64_t at_once_ms = 15 * 60'000;
  const auto found = finding.examined_at ? finding.examined_at : view.exam.examined_at;
  const auto written = written_down(finding);
  if (!found) {
    return written ? view.say("transfer.written_at", {{"written", view.local(*written), false, true}}) : std::string();
  }
  if (!written || (written->ms >= found->ms - at_once_ms && written->ms <= found->ms + at_once_ms)) {
    return view.local(*found);
  }
  return view.say("transfer.found_and_written", {{"at", view.local(*found), false, true}, {"written", view.local(*written), false, true}});
}

struct FoundAtOnce {
  std::string when;
  std::vector<std::string> what;
};

// One line for what was found and written at the same time.
void add_by_time(const PageView& view, const std::vector<const model::Finding*>& findings, std::string_view message, bool bullet, SheetSection& section) {
  std::vector<FoundAtOnce> times;
  for (const model::Finding* finding : findings) {
    const std::string when = when_found(view, *finding);
    auto at = std::find_if(times.begin(), times.end(), [&](const FoundAtOnce& one) { return one.when == when; });
    if (at == times.end()) {
      at = times.insert(times.end(), FoundAtOnce{when, {}});
    }
    at->what.push_back(view.label(finding->item) + view.side_after(finding->side) + ": " + value_or_undone(view, *finding));
  }
  for (const FoundAtOnce& one : times) {
    const std::string name = std::string(message) + (one.when.empty() ? "_untimed" : "");
    const std::string line = view.say(name, {{"at", one.when, false, true}, {"findings", joined(one.what, "; "), false, true}}) + ".";
    if (bullet) {
      section.bullet(line);
    } else {
      section.under(line);
    }
  }
}

void add_why(const PageView& view, Sheet& sheet) {
  SheetSection section = view.section("transfer.why");
  std::size_t in_head = 0;
  for (const interpret::Alert* alert : standing_alerts(view)) {
    // In full once: those that the head says are named here.
    const bool named = ++in_head <= alerts_in_head_max;
    section.bullet((named ? flag_label(view, alert->alert.text) + view.side_after(alert->side) : alert_text(*alert, view.words)) + ".");
    std::vector<const model::Finding*> because;
    std::copy_if(view.findings.begin(), view.findings.end(), std::back_inserter(because), [&](const model::Finding* finding) {
      return finding->finding && std::find(alert->because.begin(), alert->because.end(), *finding->finding) != alert->because.end();
    });
    add_by_time(view, because, "transfer.found", false, section);
    if (const std::string done = alert->handled ? handled_words(view, *alert->handled) : std::string(); !done.empty()) {
      section.under(done);
    }
    add_handled_also(view, *alert, section);
    const UntilSeen asked = until_seen(view, alert->meanwhile, alert->side);
    if (!asked.left.empty()) {
      section.under(view.say("page.until_then", {{"what", joined(asked.left, "; "), false, true}}) + ".");
    }
    if (!asked.done.empty()) {
      section.under(view.say("page.until_recorded", {{"what", joined(asked.done, "; "), false, true}}));
    }
  }
  if (section.lines.empty()) {
    section.plain(view.say("transfer.no_alert"));
  }
  sheet.sections.push_back(std::move(section));
}

void add_check(const PageView& view, std::string_view what, const std::optional<model::LastCheck>& check, SheetSection& section) {
  if (check) {
    section.bullet(last_check_line(view, what, *check));
  } else {
    section.bullet(view.say("transfer.check_none", {{"what", view.say("transfer." + std::string(what)), false, true}}));
  }
}

void add_checks(const PageView& view, const std::vector<model::Transferred>& all, Sheet& sheet) {
  SheetSection section = view.section("transfer.checks");
  for (const model::Transferred& one : all) {
    add_check(view, "vessel", one.set.vessel_check, section);
    add_check(view, "nerve", one.set.nerve_check, section);
  }
  std::vector<const model::Finding*> recorded;
  std::copy_if(view.findings.begin(), view.findings.end(), std::back_inserter(recorded), [](const model::Finding* finding) {
    return finding->item.text.starts_with("vessel.") || finding->item.text.starts_with("nerve.");
  });
  if (recorded.empty()) {
    section.bullet(view.say("transfer.recorded_none"));
  }
  add_by_time(view, recorded, "transfer.recorded", true, section);
  sheet.sections.push_back(std::move(section));
}

// What was told of it at the examination, where nobody wrote it for the transfer: "not recorded" would be untrue.
[[nodiscard]] std::string told_before(const PageView& view, std::initializer_list<std::string_view> items) {
  std::vector<std::string> parts;
  for (const model::Finding* finding : view.findings) {
    if (std::find(items.begin(), items.end(), finding->item.text) != items.end()) {
      const std::string told = view.label(finding->item) + ": " + value_or_undone(view, *finding);
      const std::string when = when_found(view, *finding);
      parts.push_back(when.empty() ? told : view.say("transfer.found_at", {{"what", told, false, true}, {"at", when, false, true}}));
    }
  }
  return joined(parts, "; ");
}

void add_told(const PageView& view, std::string_view what, const std::optional<wire::Remark>& text, std::initializer_list<std::string_view> items,
              SheetSection& section, const std::string& days = {}) {
  const Arg named{"what", view.say("transfer." + std::string(what)), false, true};
  const std::string told = told_before(view, items);
  if (text && !days.empty()) {
    section.bullet(view.say("transfer.line", {named, {"text", text->text}}) + " " + days);
  } else if (text) {
    section.bullet(view.say("transfer.line", {named, {"text", text->text}}));
  } else if (!told.empty()) {
    section.bullet(view.say("transfer.line_told", {named, {"text", told, false, true}}));
  } else {
    section.bullet(view.say("transfer.line_none", {named}));
  }
}

struct OfPlan {
  std::vector<std::string> given;
  std::vector<std::string> open;  // nobody recorded that it was given
  std::vector<std::string> told;
  std::vector<std::string> untold;  // nobody recorded that it was told
  std::vector<std::string> named;
};

// Whoever receives the person doses by what was given, and plans by whether anything was eaten.
[[nodiscard]] OfPlan of_plan(const PageView& view) {
  OfPlan out;
  for (const model::PlanItem& item : view.exam.plan.value_or(std::vector<model::PlanItem>{})) {
    const bool handed = item.kind == model::PlanKind::medicine || item.kind == model::PlanKind::splint;
    const bool said = item.kind == model::PlanKind::advice || item.kind == model::PlanKind::limit;
    if (item.became == model::Became::declined || (!handed && !said)) {
      continue;
    }
    const bool given = item.became == model::Became::given || item.became == model::Became::done;
    std::string text = view.say("letter.given", {{"plan", enum_word(view.words, "plan", item.kind) + view.side_after(item.side), false, true},
                                                 {"text", plan_words(view, item), false, true}});
    if (given && item.became_on) {
      text += " (" + item.became_on->to_text() + ")";
    }
    if (said && !given && item.became) {
      text += ", " + enum_word(view.words, "became", *item.became);
    }
    (said ? (given ? out.told : out.untold) : (given ? out.given : out.open)).push_back(text);
    out.named.push_back(item.plan_item ? item.plan_item->to_text() : std::string());
  }
  return out;
}

// The plan holds days at most: of which examination it is, is the day that it has.
[[nodiscard]] std::string with_plan_time(const PageView& view, const std::vector<std::string>& parts) {
  return view.say("transfer.plan_untimed", {{"what", joined(parts, "; "), false, true}, {"day", view.day_text(), false, true}});
}

void add_given(const PageView& view, const model::TransferSet& set, SheetSection& section) {
  std::vector<std::string> given;
  for (const model::GivenSoFar& one : set.given.value_or(std::vector<model::GivenSoFar>{})) {
    given.push_back(given_words(view, one));
  }
  const OfPlan plan = of_plan(view);
  const std::string told = told_before(view, {"history.given_so_far", "history.painkiller_last_6h", "history.painkiller_what"});
  if (!given.empty()) {
    section.bullet(view.say("transfer.line", {{"what", view.say("transfer.given"), false, true}, {"text", joined(given, "; "), false, true}}));
  } else if (plan.given.empty() && told.empty()) {
    section.bullet(view.say("transfer.given_none"));
  }
  // Read as a second dose, or as none, it would do harm.
  if (!plan.given.empty()) {
    section.bullet(view.say(given.empty() ? "transfer.given_plan" : "transfer.given_plan_beside", {{"what", with_plan_time(view, plan.given), false, true}}));
  }
  if (!told.empty()) {
    section.bullet(view.say("transfer.given_told", {{"what", told, false, true}}));
  }
  if (!plan.open.empty()) {
    section.bullet(view.say("transfer.given_open", {{"what", joined(plan.open, "; "), false, true}}));
  }
  if (!plan.told.empty()) {
    section.bullet(view.say("transfer.told_plan", {{"what", with_plan_time(view, plan.told), false, true}}));
  }
  if (!plan.untold.empty()) {
    section.bullet(view.say("transfer.untold_plan", {{"what", joined(plan.untold, "; "), false, true}}));
  }
  add_exchanged_line(view, plan.named, section);
  bool nobody = true;
  for (const model::WasCalled& one : set.called.value_or(std::vector<model::WasCalled>{})) {
    section.bullet(called_line(view, one));
    nobody = false;
  }
  if (nobody) {
    section.bullet(view.say("transfer.called_none"));
  }
  if (set.next_check) {
    section.bullet(view.say("transfer.next_check", {{"at", view.local(*set.next_check), false, true}}));
  } else {
    section.bullet(view.say("transfer.next_check_none"));
  }
}

void add_set(const PageView& view, const model::Transferred& one, bool alone, Sheet& sheet) {
  SheetSection section = view.section("transfer.set");
  // "Today" in somebody's own words has a day only with when it was written.
  Args written{{"by", one.by ? view.examiner(*one.by) : std::string("?")}, {"at", view.local(one.at), false, true}};
  if (view.exam.injured_on) {
    written.push_back({"injured", view.exam.injured_on->to_text(), false, true});
  }
  section.plain(view.say(view.exam.injured_on ? "transfer.set_of_injured" : "transfer.set_of", written));
  if (!alone) {
    section.plain(view.say("transfer.set_unsettled"));
  }
  // Written on a later day, an hour or a "yesterday" is read of the wrong one.
  const std::string written_on = model::date_of(one.at, view.exam.offset_min ? view.exam.offset_min->steps : 0).to_text();
  const std::string days = written_on == view.day_text() ? std::string() : view.say("transfer.which_day", {{"day", view.day_text(), false, true}, {"written", written_on, false, true}});
  add_told(view, "onset", one.set.onset, {}, section, days);
  add_told(view, "allergies", one.set.allergies, {"history.allergy_known", "history.allergies"}, section);
  add_told(view, "last_meal", one.set.last_meal, {}, section, days);
  add_told(view, "tetanus", one.set.tetanus, {}, section);
  add_told(view, "blood_thinners", one.set.blood_thinners, {"history.blood_thinners"}, section);
  add_told(view, "pregnancy", one.set.pregnancy, {"body.pregnancy", "body.pregnancy_weeks"}, section);
  add_given(view, one.set, section);
  sheet.sections.push_back(std::move(section));
}

void add_held(const PageView& view, Sheet& sheet) {
  SheetSection section = view.section("transfer.held");
  std::vector<std::string> labels;
  std::vector<std::string> further;  // parts of the body whose other steps are stopped too
  for (const interpret::Alert* alert : standing_alerts(view)) {
    for (const model::ItemId& id : alert->stop) {
      const std::string label = view.label(id);
      if (std::find(labels.begin(), labels.end(), label) != labels.end()) {
        continue;
      }
      if (labels.size() < held_items_max) {
        labels.push_back(label);
      } else if (const model::Item* item = view.edition.item(id); item != nullptr) {
        further.push_back(item->region.text);
      }
    }
  }
  if (!further.empty()) {
    labels.push_back(view.say("transfer.held_further", {{"parts", parts_named(view, further), false, true}}));
  }
  if (!labels.empty()) {
    section.plain(view.say("transfer.held_items", {{"items", joined(labels, "; "), false, true}}) + ".");
  }
  section.plain(view.say("transfer.held_end"));
  section.plain(view.say("transfer.untested"));
  sheet.sections.push_back(std::move(section));
}

[[nodiscard]] std::vector<std::string> receive_lines(const PageView& view, const model::Transferred& first, const std::optional<model::Place>& place) {
  std::vector<std::string> lines;
  std::vector<std::string> alerts;
  for (const interpret::Alert* alert : standing_alerts(view)) {
    if (alerts.size() < alerts_in_head_max) {
      alerts.push_back(alert_text(*alert, view.words) + ".");
    }
  }
  const std::string complaint = word_of(view.words, "complaint", view.exam.complaint.text) + view.side_after(view.exam.side);
  if (alerts.empty()) {
    alerts.push_back(view.say("transfer.no_alert"));
  }
  if (const model::LetterUrgency found = urgency_found(view, false); found != model::LetterUrgency::routine) {
    const std::string passed = passed_text(view, found);
    alerts.push_back(passed.empty() ? urgency_with_day(view, found) + "." : passed);
  }
  Args args{{"complaint", complaint, false, true}, {"alerts", joined(alerts, " "), false, true}};
  if (first.set.to) {
    args.push_back({"to", first.set.to->text});
  }
  lines.push_back(view.say(first.set.to ? "transfer.receive_at" : "transfer.receive", args));
  std::vector<std::string> numbers;
  for (const model::Telephone& one : place ? place->telephones.value_or(std::vector<model::Telephone>{}) : std::vector<model::Telephone>{}) {
    numbers.push_back(view.say("page.telephone", {{"who", one.who.text}, {"number", one.number.text}}));
  }
  if (numbers.empty()) {
    lines.push_back(view.say("transfer.call_unknown"));
  } else {
    lines.push_back(view.say("transfer.call", {{"numbers", joined(numbers, "; "), false, true}}));
  }
  const std::vector<std::string> head = head_lines(view);  // consent to send, identity, when, where, by whom
  lines.insert(lines.end(), head.begin(), head.end() - 1);  // its last speaks of the end of the other page
  lines.push_back(view.say("transfer.stopped", {{"at", view.local(first.at), false, true}, {"by", first.by ? view.examiner(*first.by) : std::string("?")}}));
  return lines;
}

}  // namespace

Sheet transfer_sheet(const model::Exam& exam, const std::optional<model::Person>& person, const interpret::Assessment& assessment, const Words& words,
                     const reference::Edition& edition, const PageNames& names, const std::optional<model::Place>& place) {
  PageNames carried = names;
  carried.protected_note = ProtectedNote::absent;  // a page that is carried by hand
  const PageView view(exam, person, assessment, words, edition, carried);
  const std::vector<model::Transferred> all = exam.transfer.value_or(std::vector<model::Transferred>{});
  Sheet sheet;
  sheet.look = SheetLook::note;
  sheet.banner = names.banner;
  sheet.title = view.say("transfer.title");
  sheet.who = person_line(view);
  sheet.examined = view.say("page.examined_day", {{"day", view.day_text(), false, true}});
  sheet.head = receive_lines(view, all.empty() ? model::Transferred{} : all.front(), place);
  if (SheetSection added = added_section(view); !added.lines.empty()) {
    sheet.sections.push_back(std::move(added));
  }
  add_why(view, sheet);
  add_checks(view, all, sheet);
  for (const model::Transferred& one : all) {
    add_set(view, one, all.size() == 1, sheet);
  }
  sheet.sections.push_back(impression_section(view));  // the examiner's own words
  add_held(view, sheet);
  return sheet;
}

}  // namespace limbledger::report

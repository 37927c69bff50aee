#include "core/report/after/by_transfer.hpp"

#include <algorithm>
#include <utility>

namespace limbledger::report {

namespace {

// The same words stand on the page as they were told at the examination.
[[nodiscard]] bool stands_in_findings(const PageView& view, const std::string& text) {
  return std::any_of(view.findings.begin(), view.findings.end(), [&](const model::Finding* finding) {
    const auto* words = std::get_if<model::Words>(&finding->value);
    return words != nullptr && words->text.text == text;
  });
}

// What the set holds and no more: what it does not hold stands as not recorded on the page that travels.
[[nodiscard]] std::vector<std::string> set_words(const PageView& view, const model::TransferSet& set) {
  std::vector<std::string> parts;
  const auto add = [&](std::string_view what, const std::optional<wire::Remark>& text) {
    if (text && !stands_in_findings(view, text->text)) {
      parts.push_back(view.say("transfer.line", {{"what", view.say("transfer." + std::string(what)), false, true}, {"text", text->text}}));
    }
  };
  add("blood_thinners", set.blood_thinners);
  add("allergies", set.allergies);
  add("last_meal", set.last_meal);
  add("tetanus", set.tetanus);
  add("pregnancy", set.pregnancy);
  add("onset", set.onset);
  if (set.vessel_check) {
    parts.push_back(last_check_line(view, "vessel", *set.vessel_check));
  }
  if (set.nerve_check) {
    parts.push_back(last_check_line(view, "nerve", *set.nerve_check));
  }
  std::vector<std::string> given;
  for (const model::GivenSoFar& one : set.given.value_or(std::vector<model::GivenSoFar>{})) {
    given.push_back(given_words(view, one));
  }
  if (!given.empty()) {
    parts.push_back(view.say("transfer.line", {{"what", view.say("transfer.given"), false, true}, {"text", joined(given, ", "), false, true}}));
  }
  for (const model::WasCalled& one : set.called.value_or(std::vector<model::WasCalled>{})) {
    parts.push_back(called_line(view, one));
  }
  if (set.next_check) {
    parts.push_back(view.say("transfer.next_check", {{"at", view.local(*set.next_check), false, true}}));
  }
  return parts;
}

}  // namespace

std::string last_check_line(const PageView& view, std::string_view what, const model::LastCheck& check) {
  const Arg named{"what", view.say("transfer." + std::string(what)), false, true};
  if (check.at) {
    return view.say("transfer.checked", {named, {"text", check.text.text}, {"at", view.local(*check.at), false, true}});
  }
  return view.say("transfer.check_untimed", {named, {"text", check.text.text}});
}

std::string given_words(const PageView& view, const model::GivenSoFar& given) {
  const Arg what{"what", as_written(given.what.text), false, true};
  if (given.at) {
    return view.say("transfer.found_at", {what, {"at", view.local(*given.at), false, true}});
  }
  return view.say("transfer.untimed", {what});
}

std::string called_line(const PageView& view, const model::WasCalled& called) {
  std::vector<std::string> who{as_written(called.who.text)};
  if (called.number) {
    who.push_back(as_written(called.number->text));
  }
  if (called.at) {
    who.push_back(view.local(*called.at));
  } else {
    who.push_back(view.say("transfer.time_unknown"));
  }
  if (called.said) {
    who.push_back(as_written(called.said->text));
  }
  return view.say("transfer.called", {{"who", joined(who), false, true}});
}

SheetSection by_transfer_section(const PageView& view) {
  SheetSection section = view.section("page.by_transfer");
  const std::vector<model::Transferred> all = view.exam.transfer.value_or(std::vector<model::Transferred>{});
  for (const model::Transferred& one : all) {
    Args args{{"by", one.by ? view.examiner(*one.by) : std::string("?")}, {"at", view.local(one.at), false, true}};
    if (one.set.to) {
      args.push_back({"to", one.set.to->text});
    }
    const std::string written = view.say(one.set.to ? "page.by_transfer_to" : "page.by_transfer_of", args);
    const std::vector<std::string> words = set_words(view, one.set);
    section.plain(written + " " + (words.empty() ? view.say("page.by_transfer_nothing") : view.say("page.by_transfer_says", {{"what", joined(words, "; "), false, true}})));
  }
  if (all.size() > 1) {
    section.plain(view.say("transfer.set_unsettled"));
  }
  return section;
}

}  // namespace limbledger::report

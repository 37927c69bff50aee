// Which danger signs were asked after and with what answer; and what the sections about dangers share.
#include "core/report/page_parts.hpp"

#include <algorithm>

namespace limbledger::report {

namespace {

using interpret::FlagAnswer;
using model::Side;

// Three at most, which is what is read.
[[nodiscard]] std::string no_rests_on(const PageView& view, const interpret::Flag& flag) {
  std::vector<std::string> named = findings_named(view, flag.findings, flag.side);
  named.resize(std::min<std::size_t>(named.size(), 3));
  return joined(named, "; ");
}

}  // namespace

std::string_view after_dot(std::string_view name) {
  const auto dot = name.rfind('.');
  return dot == std::string_view::npos ? name : name.substr(dot + 1);
}

bool is_protected_danger(const PageView& view, std::string_view name) {
  const reference::AlertRow* row = view.edition.alert({"alert." + std::string(after_dot(name))});
  return row != nullptr && row->protected_.value_or(false) && view.names.protected_note != ProtectedNote::shown;
}

bool is_hidden(const PageView& view, const interpret::Alert& alert) {
  return alert.audience == interpret::Audience::protected_ && view.names.protected_note != ProtectedNote::shown;
}

std::string flag_label(const PageView& view, std::string_view flag) { return word_of(view.words, "flag", after_dot(flag)); }

std::vector<std::string> findings_named(const PageView& view, const std::vector<model::FindingId>& ids, const std::optional<Side>& said) {
  std::vector<std::string> parts;
  for (const model::FindingId& id : ids) {
    for (const model::Finding* finding : view.findings) {
      if (finding->finding && *finding->finding == id) {
        parts.push_back(view.label(finding->item) + (said == finding->side ? std::string() : view.side_after(finding->side)) + ": " + view.value(*finding));
      }
    }
  }
  return parts;
}

bool is_hidden_flag(const PageView& view, const interpret::Flag& flag) {
  return is_protected_danger(view, flag.flag.text) ||
         std::any_of(view.assessment.alerts.begin(), view.assessment.alerts.end(), [&](const interpret::Alert& alert) {
           return is_hidden(view, alert) && after_dot(alert.alert.text) == after_dot(flag.flag.text);
         });
}

// A no that rests on nothing recorded, or on how long ago it began alone, is nobody's answer about the sign.
interpret::FlagAnswer printed_answer(const PageView& view, const interpret::Flag& flag) {
  const auto tells_nothing = [&](const model::FindingId& id) {
    return std::any_of(view.findings.begin(), view.findings.end(), [&](const model::Finding* finding) {
      return finding->finding && *finding->finding == id && finding->item.text == "history.weeks_since_onset";
    });
  };
  const bool of_nothing = std::all_of(flag.findings.begin(), flag.findings.end(), tells_nothing);
  return flag.answer == FlagAnswer::asked_no && of_nothing ? FlagAnswer::not_asked : flag.answer;
}

SheetSection flags_section(const PageView& view) {
  SheetSection section = view.section("page.danger_signs");
  if (view.assessment.flags.empty()) {
    section.plain(view.say("page.no_flags"));
    return section;
  }
  for (const FlagAnswer answer : {FlagAnswer::raised, FlagAnswer::asked_no, FlagAnswer::not_asked, FlagAnswer::cannot_answer}) {
    // In the order of the assessment; the sides of one flag together where they rest on the same.
    struct Named {
      std::string label;
      std::string findings;
      std::vector<Side> sides;
    };
    std::vector<Named> named;
    for (const interpret::Flag& flag : view.assessment.flags) {
      if (printed_answer(view, flag) != answer || is_hidden_flag(view, flag)) {
        continue;
      }
      const std::string label = flag_label(view, flag.flag.text);
      const std::string findings = answer == FlagAnswer::asked_no ? no_rests_on(view, flag) : std::string();
      auto at = std::find_if(named.begin(), named.end(), [&](const Named& one) { return one.label == label && one.findings == findings; });
      if (at == named.end()) {
        at = named.insert(named.end(), Named{label, findings, {}});
      }
      if (flag.side && *flag.side != Side::midline) {
        at->sides.push_back(*flag.side);
      }
    }
    std::vector<std::string> parts;
    for (const Named& one : named) {
      std::vector<std::string> sides;
      for (const Side side : {Side::right, Side::left}) {
        if (std::find(one.sides.begin(), one.sides.end(), side) != one.sides.end()) {
          sides.push_back(side_of(view.words, side));
        }
      }
      const std::string flag = joined({one.label, joined(sides, view.say("page.and"))}, " ");
      parts.push_back(one.findings.empty() ? flag : view.say("page.flag_rests", {{"flag", flag, false, true}, {"findings", one.findings, false, true}}));
    }
    if (!parts.empty()) {
      section.plain(view.say("page.flags_" + std::string(wire::type_of<FlagAnswer>().words[static_cast<std::size_t>(answer)]),
                             {{"flags", joined(parts, "; "), false, true}}));
    }
  }
  section.plain(view.say("page.flags_end"));
  return section;
}

}  // namespace limbledger::report

// The part complained of and the joints around it, by side, where nobody looked or hardly anybody: for note and letter.
#include "core/report/brief/brief.hpp"
#include "core/report/ordinary.hpp"

#include <algorithm>

namespace limbledger::report {

namespace {

using model::Side;

[[nodiscard]] std::vector<std::string> joints_of_visit(const PageView& view) {
  const model::Sequence* sequence = view.edition.sequence(view.exam.complaint);
  std::vector<std::string> joints;
  if (sequence != nullptr && sequence->part) {
    joints.push_back(sequence->part->text);
  }
  for (const model::Word& joint : sequence != nullptr && sequence->joints_around ? *sequence->joints_around : std::vector<model::Word>{}) {
    joints.push_back(joint.text);
  }
  return joints;
}

// Something of it was entered as not done: the first reason; none where nothing was entered.
[[nodiscard]] std::string reason_of(const PageView& view, std::string_view joint, Side side) {
  for (const model::Finding* finding : view.findings) {
    const model::Item* item = view.edition.item(finding->item);
    if (item != nullptr && item->region.text == joint && finding->side == side && std::holds_alternative<model::NotDone>(finding->value)) {
      return value_or_undone(view, *finding);
    }
  }
  return {};
}

[[nodiscard]] std::string sides_named(const PageView& view, const std::vector<Side>& sides) {
  std::vector<std::string> names;
  for (const Side side : sides) {
    names.push_back(side_of(view.words, side));
  }
  return joined(names, view.say("page.and"));
}

// What lies on a part and is recorded by its organ: a sore, a pulse and a filament are of the foot.
[[nodiscard]] bool lies_on(std::string_view item, std::string_view part) {
  if (item.starts_with(std::string(part) + ".")) {
    return true;
  }
  const bool skin = item.starts_with("skin.");
  const bool organ = skin || item.starts_with("vessel.") || item.starts_with("nerve.") || item.starts_with("body.");
  return part == "ankle" ? skin : (part == "foot" || part == "leg") && organ;
}

// By name, where one or two items of a region were examined on a side; none where there were more.
[[nodiscard]] std::vector<std::string> only_items(const PageView& view, const std::string& region, Side side) {
  std::vector<std::string> labels;
  if (is_not_examined(view, region, side)) {
    return labels;  // said so; what is known from before was not examined
  }
  for (const model::Finding* finding : view.findings) {
    if (finding->origin == model::Origin::carried_over) {
      continue;
    }
    const bool group = finding->origin == model::Origin::bulk_expected;
    const std::string label = group ? view.say("page.joint_only_group", {{"item", view.label(finding->item), false, true}}) : view.label(finding->item);
    if (finding->side == side && lies_on(finding->item.text, region) && !left_undone(*finding) &&
        std::find(labels.begin(), labels.end(), label) == labels.end()) {
      labels.push_back(label);
    }
  }
  return labels.size() > 2 ? std::vector<std::string>{} : labels;
}

}  // namespace

std::string gap_label(const PageView& view, const interpret::MissingItem& missing) {
  const std::string since = view.added_for(missing.item, missing.side);  // an addendum may hold what the signature left open
  const std::string label = view.label(missing.item) + (since.empty() ? std::string() : " (" + since + ")");
  for (const model::Finding* finding : view.findings) {
    const bool waits = finding->origin == model::Origin::carried_over || finding->origin == model::Origin::self_reported;
    if (waits && finding->item == missing.item && finding->side == missing.side) {
      return view.say("page.gap_carried", {{"item", label, false, true}, {"origin", enum_word(view.words, "origin", *finding->origin), false, true}});
    }
  }
  return label;
}

bool is_not_examined(const PageView& view, std::string_view joint, Side side) {
  const auto& open = view.assessment.not_examined;
  return std::any_of(open.begin(), open.end(), [&](const interpret::NotExamined& one) { return one.joint.text == joint && one.side == side; });
}

std::string reason_lacking(const PageView& view, const std::string& what) {
  if (view.exam.transfer && !view.exam.transfer->empty()) {
    return what;
  }
  return view.say("page.reason_lacking", {{"what", what, false, true}});
}

namespace {

[[nodiscard]] std::string place_with_reason(const PageView& view, std::string_view joint, Side side, const std::string& place) {
  const std::string reason = reason_of(view, joint, side);
  if (reason.empty()) {
    return reason_lacking(view, place);
  }
  return view.say("page.place_reason", {{"place", place, false, true}, {"reason", reason, false, true}});
}

// Of one joint: those with a reason; `without` gets the sides that have none.
[[nodiscard]] std::vector<std::string> places_of_joint(const PageView& view, const std::string& joint, std::vector<std::string>& without) {
  std::vector<std::string> with;
  std::vector<Side> bare;
  const auto place = [&](const std::vector<Side>& sides) {
    // Pulses and pressures at an ankle are no look at the joint.
    const bool own = view.words.has("msg.joint_place." + joint);
    return view.say("page.joint", {{"joint", word_of(view.words, own ? "joint_place" : "joint", joint), false, true}, {"sides", sides_named(view, sides), false, true}});
  };
  for (const Side side : {Side::right, Side::left}) {
    if (!is_not_examined(view, joint, side)) {
      continue;
    }
    if (reason_of(view, joint, side).empty()) {
      bare.push_back(side);
    } else {
      with.push_back(place_with_reason(view, joint, side, place({side})));
    }
  }
  if (!bare.empty()) {
    without.push_back(place(bare));
  }
  return with;
}

}  // namespace

std::vector<std::string> places_not_examined(const PageView& view) {
  // All that lack a reason say so once, at their end.
  std::vector<std::string> without;
  std::vector<std::string> with;
  for (const std::string& joint : joints_of_visit(view)) {
    const std::vector<std::string> here = places_of_joint(view, joint, without);
    with.insert(with.end(), here.begin(), here.end());
  }
  std::vector<std::string> places;
  if (!without.empty()) {
    places.push_back(reason_lacking(view, joined(without, "; ")));
  }
  places.insert(places.end(), with.begin(), with.end());
  return places;
}

std::vector<std::string> places_barely_examined(const PageView& view) {
  std::vector<std::string> places;
  for (const std::string& joint : joints_of_visit(view)) {
    const std::vector<std::string> right = only_items(view, joint, Side::right);
    const std::vector<std::string> left = only_items(view, joint, Side::left);
    const auto add = [&](const std::vector<Side>& sides, const std::vector<std::string>& only) {
      if (!only.empty()) {
        places.push_back(view.say("page.joint_only", {{"joint", word_of(view.words, "joint", joint), false, true},
                                                      {"side", sides_named(view, sides), false, true},
                                                      {"items", joined(only, "; "), false, true}}));
      }
    };
    if (right == left) {
      add({Side::right, Side::left}, right);
    } else {
      add({Side::right}, right);
      add({Side::left}, left);
    }
  }
  return places;
}

namespace {

// Of the minimum set nothing is missing but on the side that is not complained of.
[[nodiscard]] bool other_side_alone(const PageView& view) {
  const auto& missing = view.assessment.missing;
  const bool one_side = view.exam.side == model::Side::left || view.exam.side == model::Side::right;
  return one_side && !missing.empty() && std::all_of(missing.begin(), missing.end(), [&](const interpret::MissingItem& one) { return one.side == interpret::other_side(*view.exam.side); });
}

}  // namespace

std::string signed_words(const PageView& view) {
  const model::Exam& exam = view.exam;
  const bool before = exam.examined_at && !exam.examined_on && exam.signed_->at < *exam.examined_at;
  return view.say(before ? "page.signed_before" : "page.signed", {{"by", view.examiner(exam.signed_->by)}, {"at", view.local(exam.signed_->at), false, true}});
}

std::string handled_words(const PageView& view, const model::AlertHandled& handled) {
  if (!handled.action && !handled.reason) {
    return {};
  }
  // On the day of the examination the time alone: a letter has one page.
  std::string at = view.local(handled.at);
  if (const std::string day = view.day_text() + " "; model::can_be_right(handled.at) && at.starts_with(day)) {
    at = at.substr(day.size(), 5);
  }
  return view.say(handled.action ? "page.alert_action" : "page.alert_reason",
                  {{"text", handled.action ? handled.action->text : handled.reason->text}, {"at", at, false, true}});
}

std::string left_incomplete(const PageView& view) {
  // Alerts without an action, on a page that shows none of them, would tell of the one that it hides.
  const auto& alerts = view.assessment.alerts;
  const bool shows_one = std::any_of(alerts.begin(), alerts.end(), [&](const interpret::Alert& alert) {
    return !is_hidden(view, alert) && !(alert.handled && (alert.handled->action || alert.handled->reason));
  });
  std::vector<std::string> what;
  for (const model::Word& word : view.exam.incomplete.value_or(std::vector<model::Word>{})) {
    if (word.text != "alerts" || shows_one) {
      const bool beside = word.text == "minimum_set" && other_side_alone(view);
      what.push_back(word_of(view.words, "incomplete", beside ? "minimum_set_beside" : word.text));
    }
  }
  return joined(what);
}

}  // namespace limbledger::report

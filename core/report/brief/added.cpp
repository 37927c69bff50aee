#include "core/report/brief/added.hpp"

#include "core/report/text.hpp"

#include <algorithm>

namespace limbledger::report {

namespace {

[[nodiscard]] const std::vector<model::Addendum>& all_addenda(const PageView& view) {
  static const std::vector<model::Addendum> none;
  return view.exam.addenda ? *view.exam.addenda : none;
}

[[nodiscard]] const std::vector<model::Observation>& observed_in(const model::Addendum& addendum) {
  static const std::vector<model::Observation> none;
  return addendum.findings ? *addendum.findings : none;
}

[[nodiscard]] bool is_kept_apart(const PageView& view, const model::ItemId& id) {
  const model::Item* item = view.edition.item(id);
  return item != nullptr && item->protected_.value_or(false);
}

[[nodiscard]] bool is_told_here(const PageView& view, const model::Observation& one) {
  return view.names.protected_note == ProtectedNote::shown || !is_kept_apart(view, one.item);
}

[[nodiscard]] bool is_correction(const model::Addendum& addendum) { return addendum.kind == model::AddendumKind::correction; }

[[nodiscard]] std::string day_added(const PageView& view, const model::Addendum& addendum) {
  return model::can_be_right(addendum.at) ? model::date_of(addendum.at, view.exam.offset_min ? view.exam.offset_min->steps : 0).to_text() : view.local(addendum.at);
}

// As it was written: beside the value of another addendum it bears no mark.
[[nodiscard]] std::string observed_line(const PageView& view, const model::Observation& one) {
  model::Finding finding = model::as_finding(one);
  if (view.has_remark_apart(finding) && view.names.protected_note != ProtectedNote::shown) {
    finding.remark.reset();
  }
  return view.label(one.item) + view.side_after(one.side) + ": " + value_text(view.words, view.edition, finding);
}

[[nodiscard]] std::string judged_line(const PageView& view, const std::vector<std::string>& what) {
  return what.empty() ? std::string() : view.say("page.judged_as_signed", {{"what", joined(what, "; "), false, true}});
}

[[nodiscard]] std::string named_otherwise(const PageView& view, const model::Finding& finding) {
  const std::string since = view.added_since(finding);
  return since.empty() ? since : view.label(finding.item) + view.side_after(finding.side) + " " + bare_value_text(view.words, view.edition, finding) + ", " + since;
}

void add_named_once(std::vector<std::string>& list, const std::string& text) {
  if (!text.empty() && std::find(list.begin(), list.end(), text) == list.end()) {
    list.push_back(text);
  }
}

// To an exam that was withdrawn before anybody signed it an addendum says where it went.
[[nodiscard]] std::string_view added_title(const PageView& view) {
  const bool unsigned_one = view.exam.state == model::ExamState::withdrawn && !view.exam.signed_;
  return unsigned_one ? "page.added_unsigned" : "page.added";
}

}  // namespace

std::string PageView::added_since(const model::Finding& finding) const {
  const std::string own = finding.origin == model::Origin::bulk_expected ? std::string() : bare_value_text(words, edition, finding);
  std::vector<std::string> parts;
  std::string before = own;
  for (const model::Addendum& addendum : all_addenda(*this)) {
    for (const model::Observation& one : observed_in(addendum)) {
      if (!(one.item == finding.item) || one.side != finding.side || !is_told_here(*this, one)) {
        continue;
      }
      // Of several all that were written: the last may say again what was signed.
      std::string value = bare_value_text(words, edition, model::as_finding(one));
      if (value != before) {
        parts.push_back(say(is_correction(addendum) ? "value.corrected_since" : "value.added_since",
                            {{"day", day_added(*this, addendum), false, true}, {"value", value, false, true}}));
      }
      before = std::move(value);
    }
  }
  return joined(parts);
}

std::string PageView::added_for(const model::ItemId& item, model::Side side) const {
  model::Finding none;
  none.item = item;
  none.side = side;
  none.origin = model::Origin::bulk_expected;  // no value of its own
  return added_since(none);
}

std::vector<const model::Addendum*> addenda_told(const PageView& view) {
  std::vector<const model::Addendum*> told;
  for (const model::Addendum& addendum : all_addenda(view)) {
    const std::vector<model::Observation>& all = observed_in(addendum);
    const bool tells = std::any_of(all.begin(), all.end(), [&](const model::Observation& one) { return is_told_here(view, one); });
    if (addendum.text || addendum.examined_on || tells) {
      told.push_back(&addendum);
    }
  }
  return told;
}

std::string added_head(const PageView& view) {
  const std::vector<const model::Addendum*> told = addenda_told(view);
  if (told.empty()) {
    return {};
  }
  const auto corrections = std::count_if(told.begin(), told.end(), [](const model::Addendum* one) { return is_correction(*one); });
  return view.say(added_title(view) == "page.added" ? "page.added_head" : "page.added_head_unsigned", {{"count", std::to_string(told.size()), true},
                                      {"corrections", std::to_string(corrections), true},
                                      {"day", day_added(view, *told.back()), false, true},
                                      {"where", view.say(added_title(view)), false, true}});
}

std::string exchanged_head(const PageView& view) {
  std::vector<std::string> lines;
  for (const model::SidesExchanged& one : view.exam.sides_exchanged.value_or(std::vector<model::SidesExchanged>{})) {
    if (view.exam.signed_ && view.exam.signed_->at < one.at) {
      const std::string by = one.by ? view.examiner(*one.by) : view.say("settled.nobody");
      lines.push_back(view.say("page.exchanged_head", {{"by", by}, {"at", view.local(one.at), false, true}, {"reason", one.reason.text}}));
    }
  }
  return joined(lines, " ");
}

SheetSection added_section(const PageView& view) {
  SheetSection section = view.section(added_title(view));
  for (const model::Addendum* addendum : addenda_told(view)) {
    section.bullet(view.say(is_correction(*addendum) ? "page.correction" : "page.addendum",
                            {{"at", view.local(addendum->at), false, true}, {"by", view.examiner(addendum->by)}, {"reason", addendum->reason.text}}));
    if (addendum->text) {
      section.under(as_written(addendum->text->text));
    }
    if (addendum->examined_on) {
      section.under(view.say("page.examined_on", {{"day", addendum->examined_on->to_text(), false, true}}));
    }
    for (const model::Observation& one : observed_in(*addendum)) {
      if (!is_told_here(view, one)) {
        continue;
      }
      // What it was beside: whoever reads the addendum first finds the value that was signed.
      std::vector<std::string> signed_values;
      for (const model::Finding* finding : view.findings) {
        if (finding->item == one.item && finding->side == one.side && !view.added_since(*finding).empty()) {
          signed_values.push_back(bare_value_text(view.words, view.edition, *finding));
        }
      }
      const std::string line = observed_line(view, one);
      section.under(signed_values.empty() ? line : view.say("page.added_beside", {{"what", line, false, true}, {"signed", joined(signed_values, " / "), false, true}}));
    }
  }
  return section;
}

std::string judged_as_signed(const PageView& view) {
  std::vector<std::string> what;
  for (const model::Finding* finding : view.findings) {
    add_named_once(what, named_otherwise(view, *finding));
  }
  return judged_line(view, what);
}

std::string judged_as_signed(const PageView& view, const std::vector<model::FindingId>& of) {
  std::vector<std::string> what;
  for (const model::Finding* finding : view.findings) {
    if (finding->finding && std::find(of.begin(), of.end(), *finding->finding) != of.end()) {
      add_named_once(what, named_otherwise(view, *finding));
    }
  }
  return judged_line(view, what);
}

std::vector<std::string> added_apart(const PageView& view) {
  std::vector<std::string> lines;
  for (const model::Addendum& addendum : all_addenda(view)) {
    for (const model::Observation& one : observed_in(addendum)) {
      if (is_kept_apart(view, one.item)) {
        lines.push_back(view.say("page.added_of", {{"day", day_added(view, addendum), false, true}, {"what", observed_line(view, one), false, true}}));
      }
    }
  }
  return lines;
}

}  // namespace limbledger::report

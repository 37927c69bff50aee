// The sections of the page, each by itself; page.cpp puts them in order. A view holds what all of them read.
#pragma once

#include "core/interpret/statement.hpp"
#include "core/reference/alert_row.hpp"
#include "core/report/page.hpp"
#include "core/report/sheet.hpp"
#include "core/report/text.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace limbledger::report {

class PageView {
  std::vector<model::ItemId> remarks_apart_;  // of these the remarks are kept in the protected note
  std::optional<model::Exam> without_them_;

 public:
  PageView(const model::Exam& exam, const std::optional<model::Person>& person, const interpret::Assessment& assessment, const Words& words,
           const reference::Edition& edition, const PageNames& names);
  PageView(const PageView&) = delete;
  PageView& operator=(const PageView&) = delete;
  ~PageView() = default;

  const model::Exam& exam;
  const std::optional<model::Person>& person;
  const interpret::Assessment& assessment;
  const Words& words;
  const reference::Edition& edition;
  const PageNames& names;
  bool holds_protected = false;  // left out of the findings below
  bool holds_remarks_apart = false;
  // Those that stand and may be told: by region, then in the catalogue's order; the RIGHT before the LEFT.
  std::vector<const model::Finding*> findings;

  [[nodiscard]] std::string say(std::string_view name, const Args& args = {}) const { return words.say("msg." + std::string(name), args); }
  [[nodiscard]] SheetSection section(std::string_view title) const { return {say(title), {}}; }
  // ", LEFT", or nothing for the midline.
  [[nodiscard]] std::string side_after(const std::optional<model::Side>& side) const;
  // "LEFT: ", or nothing for the midline.
  [[nodiscard]] std::string side_before(const std::optional<model::Side>& side) const;
  [[nodiscard]] std::string label(const model::ItemId& item) const { return item_label(words, edition, item); }
  // That a value which is told by the other side stands beside none of it; empty for the others.
  [[nodiscard]] std::string other_side_unseen(const model::Finding& finding) const;
  // Of two looks at one thing at two times, when this one was: what was lost between them is the finding. Empty for the others.
  [[nodiscard]] std::string which_of_two(const model::Finding& finding) const;
  // Another value of its item and side that an addendum has, and of which day; empty where none differs. And what one has where nothing
  // was recorded.
  [[nodiscard]] std::string added_since(const model::Finding& finding) const;
  [[nodiscard]] std::string added_for(const model::ItemId& item, model::Side side) const;
  // Its remark is told in the protected note alone.
  [[nodiscard]] bool has_remark_apart(const model::Finding& finding) const;
  // The value as it is printed.
  [[nodiscard]] std::string value(const model::Finding& finding) const;
  [[nodiscard]] std::string examiner(const model::ExaminerId& id) const;
  // Date and time where the exam was done; of a clock that cannot have been right with these words.
  [[nodiscard]] std::string local(model::Instant instant) const;
  // The day that was judged by; nothing where it is doubtful.
  [[nodiscard]] std::optional<model::PartialDate> day() const;
  // The same in words; and with the time of day, or with why the day is doubtful and that it is asked for.
  [[nodiscard]] std::string day_text() const;
  [[nodiscard]] std::string when_text() const;
  // Before the day of printing, where the exam was done.
  [[nodiscard]] bool has_passed(const std::string& day) const;
  [[nodiscard]] std::optional<model::AgeInterval> age() const;
};

// Of the complaint's minimum set, what was not recorded on this side or of the person as a whole.
[[nodiscard]] std::vector<interpret::MissingItem> minimum_missing(const PageView& view, model::Side side);

[[nodiscard]] std::string person_line(const PageView& view);
[[nodiscard]] std::vector<std::string> head_lines(const PageView& view);
[[nodiscard]] SheetSection impression_section(const PageView& view);
[[nodiscard]] std::string raised_beside(const PageView& view);  // empty where nothing was raised
[[nodiscard]] SheetSection plan_section(const PageView& view);
[[nodiscard]] SheetSection letters_section(const PageView& view);  // no lines: none was written
[[nodiscard]] SheetSection consent_section(const PageView& view);
[[nodiscard]] SheetSection signature_section(const PageView& view);
[[nodiscard]] SheetSection about_section(const PageView& view);

// "septic_adult" of "alert.septic_adult" and of "flag.septic_adult".
[[nodiscard]] std::string_view after_dot(std::string_view name);
// For a person's protection by the row of its danger, raised or not: "flag.nai", "alert.nai".
[[nodiscard]] bool is_protected_danger(const PageView& view, std::string_view name);
[[nodiscard]] bool is_hidden(const PageView& view, const interpret::Alert& alert);
// One stands that is not told here.
[[nodiscard]] bool hides_an_alert(const PageView& view);
// What else was done or said of it, and of one that stands inside it.
void add_handled_also(const PageView& view, const interpret::Alert& alert, SheetSection& section);
[[nodiscard]] bool is_hidden_flag(const PageView& view, const interpret::Flag& flag);
// Where nothing was raised whoever reads no further than the plan knows of a sign of the whole body that is out, or that is asked after. The
// warmth is named where it is all that was measured.
[[nodiscard]] std::string illness_open(const PageView& view);
[[nodiscard]] std::string flag_label(const PageView& view, std::string_view flag);
// Within a sentence: "pain" alone would read as what was found by a test that was not done.
[[nodiscard]] std::string value_or_undone(const PageView& view, const model::Finding& finding);
// Short label and value; the side where it is not the one that is spoken of.
[[nodiscard]] std::vector<std::string> findings_named(const PageView& view, const std::vector<model::FindingId>& ids, const std::optional<model::Side>& said = {});
// A no that rests on nothing recorded, or on how long ago it began alone, is nobody's answer about the sign.
[[nodiscard]] interpret::FlagAnswer printed_answer(const PageView& view, const interpret::Flag& flag);

// Of each flag of the assessment, in its order: what is not recorded of one that was asked after in part; empty for the others.
[[nodiscard]] std::vector<std::string> left_of_asked(const PageView& view, bool of_questions);

// The no rests on nothing but what speaks for the danger.
[[nodiscard]] bool speaks_for_alone(const PageView& view, const interpret::Flag& flag);

// Of what a no rests on, what is out of the ordinary: beside it the no is not plain. And such a no in words, with both.
[[nodiscard]] std::vector<model::FindingId> speaking_for(const PageView& view, const interpret::Flag& flag);
[[nodiscard]] std::string for_and_against(const PageView& view, const interpret::Flag& flag, const std::string& named);

// Not asked after though it belongs to this complaint, or it cannot be answered.
[[nodiscard]] bool is_open_flag(const PageView& view, const interpret::Flag& flag);
// "the ankle", or "this complaint"; and what no rule and no list of dangers of this edition speaks of, in words.
[[nodiscard]] std::string part_named(const PageView& view);
[[nodiscard]] std::optional<std::string> not_covered(const PageView& view);

[[nodiscard]] bool referral_prompt(std::string_view statement);  // a prompt to refer, which compares no reading
[[nodiscard]] SheetSection alerts_section(const PageView& view);  // no lines: nothing to say
[[nodiscard]] SheetSection next_section(const PageView& view);    // none once the exam is closed
// What to examine next, by the message that begins it; without a full stop.
[[nodiscard]] std::string step_text(const PageView& view, const interpret::Step& step, std::string_view message);
[[nodiscard]] SheetSection flags_section(const PageView& view);
// Through whom the person is spoken to, and who consents where the person does not alone; empty where neither is recorded.
[[nodiscard]] std::string who_answers(const PageView& view);
// Birth, numbers and home, and which of them are not recorded.
[[nodiscard]] std::string identity_line(const PageView& view);
[[nodiscard]] SheetSection told_section(const PageView& view);     // what the person was told, by the plan
[[nodiscard]] SheetSection summary_section(const PageView& view);  // what is out of the ordinary, by side
// Extension against the other side is one comparison: a lack of it, or going beyond straight, says it with its meaning.
[[nodiscard]] bool said_by_another(const PageView& view, const interpret::Statement& statement);
[[nodiscard]] SheetSection compared_section(const PageView& view);
[[nodiscard]] SheetSection found_section(const PageView& view);
// The films that an alert or a prompt of that side asks for, where the rule asks for none: of what the rule looks at, and of another part.
struct FilmsAsked {
  std::vector<std::string> of_part, elsewhere;
};
[[nodiscard]] FilmsAsked film_by_alert(const PageView& view, const interpret::RuleResult& rule);
// What is done meanwhile about a prompt to refer: no crutches for what lies in the soft parts.
[[nodiscard]] std::vector<model::MessageId> meanwhile_of_prompt(const PageView& view, const interpret::Statement& prompt, const reference::AlertRow& row);
// The rule's published version; where its name holds a word that a page does not use of a person, in words.
[[nodiscard]] std::string rule_edition_named(const PageView& view, const interpret::RuleResult& rule);
[[nodiscard]] SheetSection not_done_section(const PageView& view);
[[nodiscard]] SheetSection not_examined_section(const PageView& view);

// after/sections.cpp. Who disagrees with the statement of that name stands under it; with a sentence of a table, in a section.
void add_disagreed(const PageView& view, const std::string& name, SheetSection& section);
[[nodiscard]] SheetSection disagreed_section(const PageView& view);  // no lines: nobody does
void add_urgent(const PageView& view, SheetSection& section);       // whom to call, and that the call goes first
// Left and right were exchanged after these words were written: said below them. `name` as in Exam::sides_exchanged.
void add_exchanged_line(const PageView& view, const std::vector<std::string>& names, SheetSection& section);
// By whom and when, of what an addendum put into the plan: whoever signed had not decided it. Else nothing.
[[nodiscard]] std::string decided_after_signature(const PageView& view, const model::PlanItem& item);
void add_transfer_line(const PageView& view, SheetSection& section);
[[nodiscard]] SheetSection by_transfer_section(const PageView& view);  // what was written for a transfer; no lines: none
[[nodiscard]] SheetSection after_section(const PageView& view);  // what became of the plan, what was found later; no lines: nothing
void add_countersigned(const PageView& view, SheetSection& section);

}  // namespace limbledger::report

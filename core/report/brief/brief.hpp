// What note and letter both say in a line: facts of the person that weigh whatever is complained of, what measurement left open, and
// what is not advised until somebody has seen the person. A fact is neither a finding nor ordinary.
#pragma once

#include "core/interpret/held.hpp"
#include "core/model/exam/letter.hpp"
#include "core/report/page_parts.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace limbledger::report {

// Told of the person or lasting, and no look at a side: pregnant, in a chair.
[[nodiscard]] bool is_lasting_fact(const PageView& view, const model::Finding& finding);
// One of those that a reader has to know whatever the complaint is: pregnant, on blood thinners, diabetes. A no is none.
[[nodiscard]] bool is_weighty_fact(const model::Finding& finding);
[[nodiscard]] std::vector<std::string> weighty_facts(const PageView& view);

// Differences that are within their error, each with both values; one for each item. Of sides alone, or also from last time; what lies at the edge of published
// figures has its span beside the figures.
[[nodiscard]] std::vector<std::string> within_error(const PageView& view, bool sides_alone);
// The same of sides alone, by name.
[[nodiscard]] std::vector<std::string> within_error_named(const PageView& view);
// The page says of it that it cannot be told from this test, or its own words leave open what it was done for.
[[nodiscard]] bool tells_nothing(const PageView& view, const model::Finding& finding);
// Rules that say nothing yet, by name, or with what they need.
[[nodiscard]] std::vector<std::string> rules_still_open(const PageView& view, bool with_needs);
[[nodiscard]] SheetSection unsettled_section(const PageView& view);  // no lines: nothing

// "hip: RIGHT and LEFT (reason not recorded)": the part complained of and the joints around it, where nobody looked, with the reason.
[[nodiscard]] std::vector<std::string> places_not_examined(const PageView& view);
// "hip RIGHT: only inward rotation": where two items at most were examined, which reads as a joint that was.
[[nodiscard]] std::vector<std::string> places_barely_examined(const PageView& view);
[[nodiscard]] bool is_not_examined(const PageView& view, std::string_view joint, model::Side side);
// What nobody gave a reason for; after a transfer nothing lacks one.
[[nodiscard]] std::string reason_lacking(const PageView& view, const std::string& what);

// What the signature names as open: "minimum set"; empty where nothing is.
[[nodiscard]] std::string left_incomplete(const PageView& view);

// The items that a no rests on where all of them were only looked at; none where it rests on more.
[[nodiscard]] std::vector<std::string> looks_alone(const PageView& view, const interpret::Flag& flag);
// The noes about pain that are no answer, and why, where who spoke or the age is the reason; empty where there are none.
[[nodiscard]] std::string untold_pain(const PageView& view);

// Whether a letter, or a protected one, tells of this alert.
[[nodiscard]] bool alert_in_letter(const PageView& view, const interpret::Alert& alert, bool private_letter);
// The most urgent of what is raised; routine where nothing is.
[[nodiscard]] model::LetterUrgency urgency_found(const PageView& view, bool private_letter);
// The most urgent of that and of what the examiner wrote in letters that stand; none where neither says anything.
struct HowSoon {
  std::optional<model::LetterUrgency> urgency;
  bool found = false;    // by what was raised
  bool written = false;  // by a letter of the examiner
};
[[nodiscard]] HowSoon how_soon(const PageView& view);
// A plan item that sends the person somewhere: a referral or a film that was not declined.
[[nodiscard]] bool sends_on(const model::PlanItem& item);
// The plan holds a referral that was not declined, or the examination was stopped for transfer.
[[nodiscard]] bool refers(const PageView& view);
// What goes on though nothing may be sent, by what is planned and no more: "care and transfer", "care and referral", "care, and the film", "care".
[[nodiscard]] std::string care_goes_on(const PageView& view);
// Nobody is sent and nothing was raised: a reader is asked in writing.
[[nodiscard]] bool asks_answer_alone(const PageView& view);
// Done as planned, by the record: a day that has passed then calls for nobody.
[[nodiscard]] bool was_sent_on(const PageView& view);
// The last day of it, counted from the examination; none for what can wait.
[[nodiscard]] std::optional<std::string> due_day(const PageView& view, model::LetterUrgency urgency);
// Of referral, film and review that are not over the first that has a day, and what is due by it; no day where none has one.
struct FirstDue {
  std::string day;
  std::vector<std::string> what;
  std::string ends;  // the last day that it can mean: a month ends with its last
};
[[nodiscard]] FirstDue first_due(const PageView& view);
// That it has passed, and nothing says what became of it; empty where it has not.
[[nodiscard]] std::string planned_day_passed(const PageView& view, const FirstDue& first);
// By whom and when, of an exam that is signed; with a doubt where the signature's clock stands before that of the examination.
[[nodiscard]] std::string signed_words(const PageView& view);
// What was done about an alert, or why nothing was, and when that was written; empty where neither is told.
[[nodiscard]] std::string handled_words(const PageView& view, const model::AlertHandled& handled);
// Danger signs by name, once each: those not asked after, or not all of it, and those that an answer leaves open.
struct OpenSigns {
  std::vector<std::string> not_asked;
  std::vector<std::string> unsettled;
};
[[nodiscard]] OpenSigns open_danger_signs(const PageView& view);
// That a day was set without them, with their number; empty where none is open.
[[nodiscard]] std::string beside_open_signs(const PageView& view);
// A day of the plan that is later than what was found asks for: the second urgency of one page.
// A month ends with its last day, which may be after the day that is named.
[[nodiscard]] bool ends_after(const model::PartialDate& date, const std::string& day);
[[nodiscard]] bool is_too_late(const PageView& view, const model::PlanItem& item, std::optional<model::LetterUrgency> written = {});  // `written`: by the letter itself
// The day that holds where the plan names a later one.
[[nodiscard]] std::string sooner_day(const PageView& view, std::optional<model::LetterUrgency> written = {});
// That this item is later, than what: what was found, a letter of the examiner, or both; empty where it is not.
[[nodiscard]] std::string later_than(const PageView& view, const model::PlanItem& item, std::optional<model::LetterUrgency> written = {});
// The later days by name, for the line that says how soon; empty where there are none.
[[nodiscard]] std::string planned_later(const PageView& view, std::optional<model::LetterUrgency> written = {});
// The record says that whom the plan refers was received or seen: what holds until then holds no more.
[[nodiscard]] bool was_handed_over(const PageView& view);
// "THE SAME DAY, 2026-11-24": one phrase with one day.
[[nodiscard]] std::string urgency_with_day(const PageView& view, model::LetterUrgency urgency);
// That its day has passed; empty where it has not.
[[nodiscard]] std::string passed_text(const PageView& view, model::LetterUrgency urgency);

// "ALLERGIES: penicillin", or that nobody asked; the same in brackets behind a text that names a drug.
[[nodiscard]] std::string allergies_told(const PageView& view);
[[nodiscard]] bool medicines_asked(const PageView& view);
[[nodiscard]] bool is_of_medicines(const model::Finding& finding);
[[nodiscard]] std::string beside_drug(const PageView& view, const std::string& text);
[[nodiscard]] std::string plan_words(const PageView& view, const model::PlanItem& item);
// A reason to come back reads as one: "you cannot stand on it tomorrow" alone reads as what is to come.
[[nodiscard]] bool says_come_back(std::string_view text);
[[nodiscard]] std::string come_back_words(const PageView& view, const model::PlanItem& item);
// Declined, or done: it asks for nobody and for no day any more.
[[nodiscard]] bool is_over(const model::PlanItem& item);
// By whom and by which day a step is taken that sends the person on or calls them back; what the record does not say is said.
[[nodiscard]] std::vector<std::string> whom_and_when(const PageView& view, const model::PlanItem& item);
// "Not recorded as planned: referral, review here.": what is not recorded was not decided against; empty where both are.
[[nodiscard]] std::string not_planned(const PageView& view);
// The reasons to come back that stand; a page without one says so.
[[nodiscard]] bool names_come_back(const PageView& view);
[[nodiscard]] std::string come_back_none(const PageView& view);
// What is asked for until the person is seen, with what of it is on record beside it unless `by_name_alone`; and what of it was done, by the record.
struct UntilSeen {
  std::vector<std::string> left;
  std::vector<std::string> done;
};
[[nodiscard]] UntilSeen until_seen(const PageView& view, const std::vector<model::MessageId>& messages, const std::optional<model::Side>& side,
                                   bool by_name_alone = false);
// A limit or a splint of the plan may ask for less than what is raised: who says which holds; empty where the plan has none.
[[nodiscard]] std::string beside_limits(const PageView& view);
[[nodiscard]] std::string meanwhile_text(const PageView& view, const model::MessageId& message, const std::optional<model::Side>& side);

// What alerts and prompts to refer advise against, of the steps of this complaint; one label for the variants of one test.
struct StoppedSteps {
  std::optional<model::Side> side;
  std::vector<std::string> labels;
  std::vector<std::string> regions;  // of the labels, one each
  std::vector<std::string> others;   // parts of the body whose further steps, outside this complaint, are stopped too
};
[[nodiscard]] std::vector<StoppedSteps> stopped_steps(const PageView& view);
// This very item, on this side: why it was left out is known. By what an alert or a prompt stops, and by what a raised danger withholds.
class AdvisedAgainst {
 public:
  explicit AdvisedAgainst(const PageView& view);
  AdvisedAgainst(const AdvisedAgainst&) = delete;
  AdvisedAgainst& operator=(const AdvisedAgainst&) = delete;
  [[nodiscard]] bool holds(const model::ItemId& item, model::Side side) const;

 private:
  const PageView& view_;
  interpret::View exam_;
  std::vector<interpret::JudgedFlag> flags_;
  std::vector<interpret::OpenConcern> concerns_;
};
// "Hip inward rotation (carried over ...: fills no gap here)": what is missing though a value of it stands.
[[nodiscard]] std::string gap_label(const PageView& view, const interpret::MissingItem& missing);
// "knee, walking": parts of the body by name, each once.
[[nodiscard]] std::string parts_named(const PageView& view, const std::vector<std::string>& regions);

}  // namespace limbledger::report

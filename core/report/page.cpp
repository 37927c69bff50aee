#include "core/report/page.hpp"

#include "core/report/page_evidence.hpp"
#include "core/report/page_alerts.hpp"
#include "core/report/page_judged.hpp"
#include "core/report/text.hpp"

#include <algorithm>
#include <array>
#include <tuple>
#include <utility>
#include <vector>

namespace limbledger::report {

namespace {

using model::Side;

constexpr std::string_view bullet = "  - ";
constexpr std::array<std::string_view, 15> regions{"history", "general", "body", "pelvis",   "hip",   "knee",   "leg",
                                                   "ankle",   "foot",    "gait", "function", "nerve", "vessel", "skin",  "examiner"};

// Plain name of an id, or the id.
template <class Id>
[[nodiscard]] std::string named(const std::map<Id, std::string>& names, const Id& id) {
  const auto at = names.find(id);
  return at == names.end() ? id.to_text() : at->second;
}

class Page {
 public:
  Page(const model::Exam& exam, const std::optional<model::Person>& person, const interpret::Assessment& assessment, const Words& words,
       const reference::Edition& edition, const PageNames& names)
      : exam_(exam), person_(person), assessment_(assessment), words_(words), edition_(edition), names_(names) {
    for (const model::Finding& finding : findings_of(exam)) {
      const model::Standing standing = finding.standing ? *finding.standing : model::Standing::current;
      if (standing == model::Standing::current || standing == model::Standing::in_conflict) {
        findings_.push_back(&finding);
      }
    }
    // By region, then in the catalogue's order; the RIGHT before the LEFT; two of one slot by who wrote first, then by their ids.
    const auto key = [&](const model::Finding& finding) {
      return std::tuple(region_of(finding.item), place_of(finding.item), finding.item.text,
                        finding.side == Side::right ? 0 : (finding.side == Side::left ? 1 : 2), finding.entered_at ? finding.entered_at->ms : 0,
                        finding.finding ? finding.finding->to_text() : std::string());
    };
    std::stable_sort(findings_.begin(), findings_.end(), [&](const auto* a, const auto* b) { return key(*a) < key(*b); });
  }

  [[nodiscard]] std::string text() {
    head();
    caution();
    alerts();
    consent();
    impression();
    plan();
    found();
    not_done();
    support();
    rules();
    hypotheses();
    not_examined();
    signature();
    return out_;
  }

 private:
  [[nodiscard]] static std::size_t region_of(const model::ItemId& item) {
    const auto at = std::find(regions.begin(), regions.end(), item.text.substr(0, item.text.find('.')));
    return static_cast<std::size_t>(at - regions.begin());
  }
  [[nodiscard]] std::size_t place_of(const model::ItemId& item) const {
    const auto items = edition_.items();
    for (std::size_t i = 0; i < items.size(); ++i) {
      if (items[i].item == item) {
        return i;
      }
    }
    return items.size();
  }
  [[nodiscard]] std::string say(std::string_view name, const Args& args = {}) const { return words_.say("msg." + std::string(name), args); }
  void line(std::string_view text, std::string_view first = {}) { out_ += wrapped(text, first); }
  void title(std::string_view name) {
    const std::string text = say(name);
    out_ += '\n' + text + '\n' + std::string(width_of(text), '-') + '\n';
  }
  [[nodiscard]] std::string local(model::Instant instant) const {
    const std::int64_t offset = exam_.offset_min ? exam_.offset_min->steps : 0;
    const std::string text = model::Instant{instant.ms + offset * 60'000}.to_text();
    return text.substr(0, 10) + " " + text.substr(11, 5) + (offset == 0 ? " UTC" : "");
  }
  [[nodiscard]] std::string side_after(const std::optional<Side>& side) const {
    return side && *side != Side::midline ? ", " + side_of(words_, *side) : std::string();
  }

  void head() {
    if (!names_.banner.empty()) {
      line(names_.banner);
    }
    std::vector<std::string> who;
    std::vector<std::string> names;
    if (person_ && person_->names) {
      for (const model::PersonName& name : *person_->names) {
        names.push_back("\u2068" + name.text.text + "\u2069");
      }
    }
    who.push_back(names.empty() ? say("page.no_name") : joined(names, " / "));
    const model::PartialDate day =
        exam_.examined_at ? model::date_of(*exam_.examined_at, exam_.offset_min ? exam_.offset_min->steps : 0) : assessment_.as_of;
    const auto age = person_ && person_->birth ? model::age_on(*person_->birth, day) : std::nullopt;
    if (age) {
      const std::string low = wire::write_number(age->low, 1);
      const std::string years = age->low == age->high ? low : low + "-" + wire::write_number(age->high, 1);
      who.push_back(say("page.years", {{"years", years, true}}));
    } else {
      who.push_back(say("page.age_unknown"));
    }
    if (person_) {
      who.push_back(enum_word(words_, "sex", person_->sex));
    }
    line(joined(who), say("page.title") + "  ");
    std::vector<std::string> when{exam_.examined_at ? local(*exam_.examined_at) : day.to_text()};
    if (exam_.place) {
      when.push_back(say("page.place", {{"place", named(names_.places, *exam_.place)}}));
    }
    if (exam_.examiner) {
      when.push_back(say("page.examiner", {{"examiner", named(names_.examiners, *exam_.examiner)}}));
    }
    line(joined(when, ". "));
    std::vector<std::string> why{
        say("page.complaint", {{"complaint", word_of(words_, "complaint", exam_.complaint.text) + side_after(exam_.side), false, true}})};
    why.push_back(say("page.setting", {{"setting", enum_word(words_, "setting", exam_.setting), false, true}}));
    if (exam_.injured_on) {
      why.push_back(say("page.injured", {{"date", exam_.injured_on->to_text(), false, true}}));
    }
    line(joined(why, ". "));
    if (exam_.exam) {
      line(say("page.exam_id", {{"exam", exam_.exam->to_text(), false, true}}));
    }
    if (exam_.withdrawn) {
      line(say("page.withdrawn", {{"reason", exam_.withdrawn->reason.text}}));
    }
  }

  void caution() {
    out_ += '\n';
    line(say("page.decision_support"));
    line(say("page.intended_use"));
  }

  void consent() {
    title("page.consent");
    const model::Consent none;
    const model::Consent& consent = exam_.consent ? *exam_.consent : none;
    const auto answer = [&](const std::optional<model::ConsentWord>& word) {
      return word ? enum_word(words_, "value", *word) : say("consent.not_asked");
    };
    std::vector<std::string> parts{say("consent.line", {{"examine", answer(consent.examine), false, true},
                                                        {"record", answer(consent.record), false, true},
                                                        {"send", answer(consent.send), false, true}})};
    if (consent.by) {
      parts.push_back(say("consent.by", {{"by", consent.by->text}}));
    }
    if (consent.capacity) {
      parts.push_back(say("consent.capacity", {{"capacity", enum_word(words_, "value", *consent.capacity), false, true}}));
    }
    if (exam_.company && exam_.company->chaperone) {
      std::string chaperone = enum_word(words_, "chaperone", *exam_.company->chaperone);
      if (exam_.company->chaperone_name) {
        chaperone += " (\u2068" + exam_.company->chaperone_name->text + "\u2069)";
      }
      parts.push_back(say("consent.chaperone", {{"chaperone", chaperone, false, true}}));
    } else {
      parts.push_back(say("consent.chaperone", {{"chaperone", say("consent.not_asked"), false, true}}));
    }
    if (exam_.company && exam_.company->others) {
      std::vector<std::string> others;
      for (const wire::Name& other : *exam_.company->others) {
        others.push_back("\u2068" + other.text + "\u2069");
      }
      parts.push_back(say("consent.others", {{"others", joined(others), false, true}}));
    }
    if (exam_.who_spoke) {
      const auto& reliable = exam_.who_spoke->reliable;
      parts.push_back(say("consent.spoke", {{"who", exam_.who_spoke->who.text},
                                            {"reliable", reliable ? enum_word(words_, "value", *reliable) : say("consent.not_asked"), false, true}}));
    }
    if (exam_.interpreter) {
      parts.push_back(say("consent.interpreter", {{"interpreter", enum_word(words_, "interpreter", exam_.interpreter->kind), false, true}}));
    }
    line(joined(parts, " "));
  }

  void impression() {
    title("page.impression");
    if (!exam_.impression) {
      return line(say("page.none_written"));
    }
    const model::Impression& impression = *exam_.impression;
    line("\u2068" + impression.text.text + "\u2069" + side_after(impression.side) +
         (impression.certainty ? " (\u2068" + impression.certainty->text + "\u2069)" : ""));
    if (impression.alternatives && !impression.alternatives->empty()) {
      std::vector<std::string> alternatives;
      for (const wire::Remark& alternative : *impression.alternatives) {
        alternatives.push_back("\u2068" + alternative.text + "\u2069");
      }
      line(say("page.alternatives", {{"alternatives", joined(alternatives, "; "), false, true}}));
    }
    if (impression.code) {
      line(say("page.code", {{"code", impression.code->text}}));
    }
  }

  void plan() {
    title("page.plan");
    if (!exam_.plan || exam_.plan->empty()) {
      return line(say("page.none_written"));
    }
    for (const model::PlanItem& item : *exam_.plan) {
      std::vector<std::string> parts{enum_word(words_, "plan", item.kind) + ": \u2068" + item.text.text + "\u2069" + side_after(item.side)};
      if (item.who) {
        parts.push_back("\u2068" + item.who->text + "\u2069");
      }
      if (item.by) {
        parts.push_back(say("plan.by", {{"date", item.by->to_text(), false, true}}));
      }
      parts.push_back(item.became ? enum_word(words_, "became", *item.became) : say("plan.open"));
      line(joined(parts, "; "), bullet);
    }
  }

  void found() {
    title("page.findings");
    std::string region;
    const model::ItemId* item = nullptr;
    bool any = false;
    for (const model::Finding* finding : findings_) {
      if (std::holds_alternative<model::NotDone>(finding->value)) {
        continue;
      }
      any = true;
      const std::string here = finding->item.text.substr(0, finding->item.text.find('.'));
      if (here != region) {
        region = here;
        item = nullptr;
        out_ += word_of(words_, "region", region) + '\n';
      }
      const std::string label = item_label(words_, edition_, finding->item);
      std::string value = value_text(words_, edition_, *finding);
      if (finding->examiner && exam_.examiner && !(*finding->examiner == *exam_.examiner)) {
        value += ", " + say("value.by_other", {{"examiner", named(names_.examiners, *finding->examiner)}});
      }
      if (finding->side == Side::midline) {
        line(label + ": " + value, "  ");
      } else {
        if (item == nullptr || !(*item == finding->item)) {
          line(label, "  ");
        }
        std::string side = "    " + side_of(words_, finding->side);
        side.append(11 > side.size() ? 11 - side.size() : 1, ' ');
        line(value, side);
      }
      item = &finding->item;
    }
    if (!any) {
      line(say("page.nothing"));
    }
  }

  void not_done() {
    title("page.not_done");
    bool any = false;
    for (const model::Finding* finding : findings_) {
      if (std::holds_alternative<model::NotDone>(finding->value)) {
        any = true;
        line(item_label(words_, edition_, finding->item) + side_after(finding->side) + ": " + value_text(words_, edition_, *finding), bullet);
      }
    }
    if (!any) {
      line(say("page.nothing"));
    }
  }

  void alerts() {
    title("page.alerts");
    const std::vector<std::string> lines = alert_lines(assessment_, words_);
    for (const std::string& text : lines) {
      line(text, bullet);
    }
    if (lines.empty()) {
      line(say("page.no_alert"));
    }
    if (!assessment_.flags.empty()) {
      line(flags_line(assessment_, words_, edition_));
    }
  }

  void support() {
    title("page.support");
    for (const interpret::Statement& statement : assessment_.statements) {
      line(is_referral(statement) ? referral_text(statement, words_) : statement_text(statement, exam_, words_, edition_), bullet);
    }
    if (assessment_.statements.empty()) {
      line(say("page.nothing_compared"));
    }
    if (!assessment_.contradictions.empty()) {
      title("page.not_fitting");
      for (const interpret::Contradiction& contradiction : assessment_.contradictions) {
        line(contradiction_text(contradiction, words_), bullet);
      }
    }
  }

  void rules() {
    title("page.rules");
    for (const interpret::RuleResult& rule : assessment_.rules) {
      const std::string head = say(rule.rule.text + ".name") + ", " + side_of(words_, rule.side) + " (" + rule.edition.text + ")";
      const std::vector<std::string> lines = rule_lines(rule, exam_, person_, assessment_.as_of, words_, edition_);
      line(head + ": " + lines.front(), bullet);
      for (std::size_t i = 1; i < lines.size(); ++i) {
        line(lines[i], "      ");
      }
    }
    if (assessment_.rules.empty()) {
      line(say("page.no_rule"));
    }
  }

  // An input may rest on another item than the one that would settle it: passive flexion in conflict is not "not asked".
  [[nodiscard]] static bool was_not_asked(const interpret::RuleResult& rule, const interpret::Settle& settle) {
    return std::any_of(rule.inputs.begin(), rule.inputs.end(), [&](const interpret::RuleInput& input) {
      return input.input == settle.input && input.state.text == "not_asked";
    });
  }

  void hypotheses() {
    if (assessment_.hypotheses.empty()) {
      return;
    }
    title("page.hypotheses");
    for (const interpret::Hypothesis& hypothesis : assessment_.hypotheses) {
      line(hypothesis_text(hypothesis, words_, edition_), bullet);
    }
    line(say("page.not_exclusive"));
  }

  // The other side, the joints around, and what a rule still asks for; the rest was no part of the visit.
  void not_examined() {
    title("page.not_examined");
    const auto examined = [&](std::string_view region, Side side) {
      return std::any_of(findings_.begin(), findings_.end(), [&](const model::Finding* finding) {
        return finding->side == side && finding->item.text.starts_with(std::string(region) + ".") &&
               !std::holds_alternative<model::NotDone>(finding->value);
      });
    };
    for (const Side side : {Side::right, Side::left}) {
      if (!examined("knee", side)) {
        line(say("page.other_side", {{"side", side_of(words_, side), false, true}}), bullet);
      }
    }
    if (!examined("hip", Side::right) && !examined("hip", Side::left) && !examined("ankle", Side::right) && !examined("ankle", Side::left)) {
      line(say("page.joints_around"), bullet);
    }
    // What was found (also where it disagrees) and what was not done stand above already, with their words.
    std::vector<std::string> asked;
    for (const interpret::RuleResult& rule : assessment_.rules) {
      for (const interpret::Settle& settle : rule.settle) {
        const bool recorded = std::any_of(findings_.begin(), findings_.end(), [&](const model::Finding* finding) {
          return settle.item && finding->item == *settle.item && (!settle.side || finding->side == *settle.side || finding->side == Side::midline);
        });
        const std::string text = settle.item && !recorded && was_not_asked(rule, settle) ? say("change." + settle.input.text) + side_after(settle.side) : "";
        if (!text.empty() && std::find(asked.begin(), asked.end(), text) == asked.end()) {
          asked.push_back(text);
          line(text, bullet);
        }
      }
    }
    line(say("page.not_part"));
  }

  void signature() {
    title("page.signature");
    if (exam_.signed_) {
      line(say("page.signed", {{"by", named(names_.examiners, exam_.signed_->by)}, {"at", local(exam_.signed_->at), false, true}}));
    } else {
      line(say("page.not_signed"));
    }
    if (exam_.incomplete && !exam_.incomplete->empty()) {
      std::vector<std::string> what;
      for (const model::Word& word : *exam_.incomplete) {
        what.push_back(word_of(words_, "incomplete", word.text));
      }
      line(say("page.incomplete", {{"what", joined(what), false, true}}));
    }
    for (const model::Addendum& addendum : exam_.addenda ? *exam_.addenda : std::vector<model::Addendum>{}) {
      line(say("page.addendum",
               {{"at", local(addendum.at), false, true}, {"by", named(names_.examiners, addendum.by)}, {"reason", addendum.reason.text}}),
           bullet);
      if (addendum.text) {
        line("\u2068" + addendum.text->text + "\u2069", "    ");
      }
      for (const model::Observation& observation : addendum.findings ? *addendum.findings : std::vector<model::Observation>{}) {
        model::Finding finding;
        finding.item = observation.item;
        finding.side = observation.side;
        finding.value = observation.value;
        finding.instrument = observation.instrument;
        finding.position = observation.position;
        line(item_label(words_, edition_, finding.item) + side_after(finding.side) + ": " + value_text(words_, edition_, finding), "    ");
      }
    }
    line(say("page.facts", {{"edition", assessment_.edition.text, false, true}, {"as_of", assessment_.as_of.to_text(), false, true}}));
  }

  const model::Exam& exam_;
  const std::optional<model::Person>& person_;
  const interpret::Assessment& assessment_;
  const Words& words_;
  const reference::Edition& edition_;
  const PageNames& names_;
  std::vector<const model::Finding*> findings_;
  std::string out_;
};

}  // namespace

std::string exam_page(const model::Exam& exam, const std::optional<model::Person>& person, const interpret::Assessment& assessment,
                      const Words& words, const reference::Edition& edition, const PageNames& names) {
  return Page(exam, person, assessment, words, edition, names).text();
}

}  // namespace limbledger::report

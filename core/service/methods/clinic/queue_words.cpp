#include "core/service/methods/clinic/queue_words.hpp"

#include "core/report/text.hpp"

#include <variant>
#include <vector>

namespace limbledger::service {

namespace {

class InWords {
 public:
  InWords(Context& context, const report::Words& words, const ledger::Opened& entry) : context_(context), words_(words), entry_(entry) {}

  std::string operator()(const model::MoveBody& body) const {
    return words_.say("msg.clinic.wrote_move", {{"person", named(body.person), false, true}}) + because(body.reason);
  }
  std::string operator()(const model::ExamBody& body) const {
    std::vector<std::string> parts{report::word_of(words_, "complaint", body.complaint.text)};
    add_side(body.side, parts);
    if (body.injured_on) {
      parts.push_back(words_.say("msg.clinic.injured", {{"date", body.injured_on->to_text(), false, true}}));
    }
    if (body.examined_on) {
      parts.push_back(words_.say("msg.clinic.examined_on", {{"date", body.examined_on->to_text(), false, true}}));
    }
    if (body.person) {
      parts.push_back(named(*body.person));
    }
    return words_.say("msg.clinic.wrote_exam", {{"what", report::joined(parts), false, true}});
  }
  std::string operator()(const model::WithdrawBody& body) const { return words_.say(body.finding ? "msg.clinic.wrote_withdraw" : "msg.clinic.wrote_withdraw_exam") + because(body.reason); }
  std::string operator()(const model::SwapSidesBody& body) const { return done() + because(body.reason); }
  std::string operator()(const model::ImpressionBody& body) const {
    std::vector<std::string> parts{words_.say("msg.clinic.wrote_impression", {{"text", body.impression.text.text}})};
    add_side(body.impression.side, parts);
    if (body.impression.certainty) {
      parts.push_back(words_.say("msg.clinic.certainty", {{"certainty", body.impression.certainty->text}}));
    }
    return report::joined(parts);
  }
  std::string operator()(const model::PlanBody& body) const {
    const model::PlanItem& item = body.plan_item;
    std::vector<std::string> parts{words_.say("msg.clinic.wrote_plan", {{"kind", report::enum_word(words_, "plan", item.kind), false, true}, {"text", item.text.text}})};
    add_side(item.side, parts);
    if (item.who) {
      parts.push_back(words_.say("msg.clinic.named", {{"names", item.who->text}}));
    }
    if (item.by) {
      parts.push_back(words_.say("msg.plan.by", {{"date", item.by->to_text(), false, true}}));
    }
    return report::joined(parts);
  }
  std::string operator()(const model::ConsentBody& body) const {
    const model::Consent consent = body.consent.value_or(model::Consent{});
    const auto answer = [&](const std::optional<model::ConsentWord>& word) {
      return word ? report::enum_word(words_, "value", *word) : words_.say("msg.consent.not_asked");
    };
    std::vector<std::string> parts{words_.say(
        "msg.clinic.wrote_consent", {{"examine", answer(consent.examine), false, true}, {"record", answer(consent.record), false, true}, {"send", answer(consent.send), false, true}})};
    if (consent.by) {
      parts.push_back(words_.say("msg.clinic.consent_by", {{"by", consent.by->text}}));
    }
    return report::joined(parts);
  }
  std::string operator()(const model::PersonBody& body) const {
    std::vector<std::string> parts;
    for (const model::PersonName& name : body.names.value_or(std::vector<model::PersonName>{})) {
      parts.push_back(words_.say("msg.clinic.named", {{"names", name.text.text}}));
    }
    if (body.birth) {
      parts.push_back(birth_in_words(*body.birth, words_));
    }
    if (body.home) {
      parts.push_back(words_.say("msg.clinic.home", {{"home", body.home->text}}));
    }
    if (body.sex) {
      parts.push_back(report::enum_word(words_, "sex", *body.sex));
    }
    for (const model::Identifier& one : body.identifiers.value_or(std::vector<model::Identifier>{})) {
      parts.push_back(words_.say("msg.clinic.number", {{"issuer", one.issuer.text}, {"number", one.text.text}}));
    }
    return parts.empty() ? done() : report::joined(parts);
  }
  std::string operator()(const model::AddendumBody& body) const {
    const std::string wrote = body.text ? words_.say("msg.clinic.wrote_addendum", {{"text", body.text->text}}) : done();
    const std::string day = body.examined_on ? words_.say("msg.clinic.examined_on", {{"date", body.examined_on->to_text(), false, true}}) : std::string();
    std::vector<std::string> parts{wrote};
    if (!day.empty()) {
      parts.push_back(day);
    }
    for (const model::PlanItem& item : body.plan_items.value_or(std::vector<model::PlanItem>{})) {
      parts.push_back((*this)(model::PlanBody{item}));
    }
    return report::joined(parts) + because(body.reason);
  }
  // Its value stands beside it.
  std::string operator()(const model::SettleBody& body) const { return done() + because(body.reason); }
  template <class Other>
  std::string operator()(const Other&) const {
    return done();
  }

 private:
  [[nodiscard]] std::string done() const { return report::word_of(words_, "clinic.did", entry_.operation().op.text); }
  [[nodiscard]] std::string because(const wire::Remark& reason) const {
    return reason.text.empty() ? std::string() : words_.say("msg.clinic.because", {{"reason", reason.text}});
  }
  [[nodiscard]] std::string named(const model::PersonId& id) const {
    const auto person = listed_person(context_, {id});
    return person ? person_in_words(*person, words_) : id.to_text();
  }
  void add_side(const std::optional<model::Side>& side, std::vector<std::string>& parts) const {
    if (side && *side != model::Side::midline) {
      parts.push_back(report::side_of(words_, *side));
    }
  }

  Context& context_;
  const report::Words& words_;
  const ledger::Opened& entry_;
};

}  // namespace

std::string entry_in_words(Context& context, const ledger::Opened& entry, const report::Words& words) { return std::visit(InWords(context, words, entry), entry.body()); }

}  // namespace limbledger::service

#include "core/service/methods/say/texts.hpp"

#include "core/interpret/after/urgent_way.hpp"
#include "core/report/brief/brief.hpp"
#include "core/report/page_evidence.hpp"
#include "core/report/page_judged.hpp"
#include "core/report/text.hpp"

namespace limbledger::service {

namespace {

constexpr std::string_view only_language = "en";

// What a sentence looks at beside what it tells of: the findings, as the page of note.write shows them.
class AsOnPage {
 public:
  AsOnPage(const model::Exam& exam, const report::Words& words, const reference::Edition& edition) : view_(exam, nobody_, nothing_, words, edition, names_) {}
  [[nodiscard]] const report::PageView& view() const { return view_; }

 private:
  std::optional<model::Person> nobody_;
  interpret::Assessment nothing_;
  report::PageNames names_;
  report::PageView view_;
};

}  // namespace

Result<const report::Words*> language_known(const std::optional<model::Word>& language) {
  const std::string_view code = language ? std::string_view(language->text) : report::english;
  const auto known = report::languages();
  if (std::none_of(known.begin(), known.end(), [&](const report::Language& one) { return one.code == code; })) {
    std::string codes;
    for (const report::Language& one : known) {
      codes += (codes.empty() ? "" : ", ") + std::string(one.code);
    }
    return wire::Fault{"params.unknown_word", "/language", codes};
  }
  const report::Words* words = report::words_in_language(code);
  if (words == nullptr) {
    return wire::Fault{"internal.failure", "", "words that load"};
  }
  return words;
}

Result<const report::Words*> words_if_asked(const std::optional<model::Word>& language) {
  return language ? language_known(language) : Result<const report::Words*>(static_cast<const report::Words*>(nullptr));
}

Result<Sentences> Sentences::in(const std::optional<model::Word>& language) {
  Sentences sentences;
  if (!language) {
    return sentences;
  }
  if (const auto known = language_known(language); !known) {
    return known.error();
  }
  sentences.words_ = report::built_in_words();
  sentences.marked_ = language->text != report::english;
  return sentences;
}

wire::LongText Sentences::whole(std::string sentence) const { return {std::move(sentence) + (marked_ ? std::string(report::english_mark) : std::string())}; }

Result<const report::Words*> words_in(const std::optional<model::Word>& language) {
  if (!language) {
    return static_cast<const report::Words*>(nullptr);
  }
  if (language->text != only_language) {
    return wire::Fault{"params.unknown_word", "/language", std::string(only_language)};
  }
  const report::Words* words = report::built_in_words();
  if (words == nullptr) {
    return wire::Fault{"internal.failure", "", "words that load"};
  }
  return words;
}

std::string item_of_side(const report::Words& words, const reference::Edition& edition, const model::ItemId& item, model::Side side) {
  const std::string label = report::item_label(words, edition, item);
  return side == model::Side::midline ? label : label + ", " + report::side_of(words, side);
}

std::string withheld_text(const report::Words& words, const reference::Edition& edition, const model::Word& by) {
  for (const model::Concern& concern : edition.concerns()) {
    if (concern.concern.text == by.text) {
      return words.say(concern.title.text) + ", " + words.say(concern.until.text);
    }
  }
  return report::word_of(words, "flag", report::after_dot(by.text)) + ", " + words.say("msg.until.alert_answered");
}

void add_alert_texts(const model::Exam& exam, const Sentences& sentences, const reference::Edition& edition, std::vector<interpret::Alert>& alerts) {
  if (!sentences.wanted() || alerts.empty()) {
    return;
  }
  const AsOnPage page(exam, sentences.words(), edition);
  for (interpret::Alert& alert : alerts) {
    const std::string said = report::alert_text(alert, sentences.words());
    const bool gone = alert.state == interpret::AlertState::withdrawn_by_correction;  // "call now" alone would be read as what to do
    alert.text = sentences.whole((gone ? sentences.words().say("msg.alert_gone", {{"alert", said, false, true}}) : said) + ".");
    alert.meanwhile_text.emplace();
    for (const model::MessageId& message : alert.meanwhile) {
      alert.meanwhile_text->push_back(sentences.whole(report::meanwhile_text(page.view(), message, alert.side)));
    }
  }
}

void add_step_texts(const model::Exam& exam, const Sentences& sentences, const reference::Edition& edition, std::vector<interpret::Step>& steps) {
  if (!sentences.wanted() || steps.empty()) {
    return;
  }
  const AsOnPage page(exam, sentences.words(), edition);
  for (interpret::Step& step : steps) {
    step.text = sentences.whole(report::step_text(page.view(), step, step.message.text) + ".");
  }
}

void add_texts(const model::Exam& exam, const Sentences& sentences, const reference::Edition& edition, interpret::Assessment& assessment) {
  if (!sentences.wanted()) {
    return;
  }
  const report::Words& words = sentences.words();
  add_alert_texts(exam, sentences, edition, assessment.alerts);
  add_step_texts(exam, sentences, edition, assessment.steps);
  for (interpret::Question& question : assessment.questions) {
    question.text = sentences.whole(report::question_text(question, words, edition) + ".");
  }
  for (interpret::RuleResult& rule : assessment.rules) {
    rule.text = sentences.whole(report::rule_short(rule, exam, words));
  }
  for (interpret::Flag& flag : assessment.flags) {
    const std::string what = report::word_of(words, "flag", report::after_dot(flag.flag.text)) + (flag.side ? ", " + report::side_of(words, *flag.side) : std::string());
    flag.text = sentences.whole(what + ": " + words.say("msg.flag_answer." + std::string(wire::type_of<interpret::FlagAnswer>().words[static_cast<std::size_t>(flag.answer)])));
  }
  for (interpret::Statement& statement : assessment.statements) {
    const bool prompt = statement.statement.text.starts_with("referral.");
    statement.text = sentences.whole(prompt ? report::prompt_text(statement, words) + "." : report::statement_text(statement, exam, words, edition));
  }
  for (interpret::Hypothesis& hypothesis : assessment.hypotheses) {
    hypothesis.text = sentences.whole(report::hypothesis_text(hypothesis, words, edition));
  }
  for (interpret::MissingItem& missing : assessment.missing) {
    const std::string where = item_of_side(words, edition, missing.item, missing.side);
    missing.text = sentences.whole(missing.why ? where + ": " + words.say("msg.missing_why." + missing.why->text) : where);
  }
  for (interpret::NotExamined& one : assessment.not_examined) {
    one.text = sentences.whole(report::word_of(words, "joint", one.joint.text) + ", " + report::side_of(words, one.side) + ": " +
                               words.say("msg.not_examined_why." + one.why.text));
  }
  for (interpret::Contradiction& contradiction : assessment.contradictions) {
    contradiction.text = sentences.whole(report::contradiction_text(contradiction, words));
  }
}

void add_working_texts(const model::Exam& exam, const Sentences& sentences, const interpret::Assessment& assessment, interpret::Working& working) {
  if (!sentences.wanted()) {
    return;
  }
  for (const interpret::Statement& one : assessment.statements) {
    if (one.statement == working.statement) {
      working.text = one.text;
    }
  }
  for (const interpret::Hypothesis& one : assessment.hypotheses) {
    if (interpret::statement_name(one) == working.statement.text) {
      working.text = one.text;
    }
  }
  for (const interpret::RuleResult& one : assessment.rules) {
    if (interpret::statement_name(one) == working.statement.text) {
      working.text = sentences.whole(report::rule_short(one, exam, sentences.words()));
    }
  }
  for (const interpret::Flag& one : assessment.flags) {
    if (interpret::statement_name(one) == working.statement.text) {
      working.text = one.text;
    }
  }
  for (const interpret::Alert& one : assessment.alerts) {
    if (interpret::statement_name(one) == working.statement.text) {
      working.text = one.text;
    }
  }
  working.changes_if_text.emplace();
  for (const model::MessageId& message : working.changes_if) {
    working.changes_if_text->push_back(sentences.whole(sentences.words().say(message.text)));
  }
}

std::string banner_of(LedgerKind kind, const report::Words& words) {
  switch (kind) {
    case LedgerKind::clinic:
      return {};
    case LedgerKind::demonstration:
      return words.say("msg.page.demonstration");
    case LedgerKind::practice:
      return words.say("msg.page.practice");
  }
  return {};
}

}  // namespace limbledger::service

#include "core/report/page_judged.hpp"

#include "core/interpret/assess.hpp"
#include "core/interpret/rules/ankle/series.hpp"
#include "core/interpret/rules/knee/inputs.hpp"
#include "core/interpret/rules/rule.hpp"
#include "core/report/page_criteria.hpp"
#include "core/report/page_motion.hpp"
#include "core/report/text.hpp"
#include "core/wire/parse.hpp"

#include <algorithm>
#include <utility>

namespace limbledger::report {

Args args_of(const wire::Raw& params) {
  Args args;
  const auto document = wire::parse(params.json);
  if (!document) {
    return args;
  }
  for (std::uint32_t at = document->root().first; at != 0; at = document->at(at).next) {
    const wire::Node& node = document->at(at);
    const bool number = node.kind == wire::NodeKind::number;
    args.push_back({std::string(node.key), std::string(number ? node.raw : node.text), number, !number});
  }
  return args;
}

namespace {

using interpret::RuleResult;
using interpret::Statement;

// Params as arguments: numbers choose and are not isolated, words are ours.
[[nodiscard]] std::string text_of(const Args& args, std::string_view name) {
  for (const Arg& arg : args) {
    if (arg.name == name) {
      return arg.text;
    }
  }
  return {};
}

// "motion.norm:knee.flexion_passive:left" -> the item.
[[nodiscard]] model::ItemId item_of(const Statement& statement) {
  const std::string& id = statement.statement.text;
  const auto first = id.find(':');
  const auto last = id.rfind(':');
  return {first == std::string::npos || last <= first ? std::string() : id.substr(first + 1, last - first - 1)};
}

void add_once(std::vector<std::string>& list, const std::string& text) {
  if (std::find(list.begin(), list.end(), text) == list.end()) {
    list.push_back(text);
  }
}

[[nodiscard]] std::string reading_of(const model::Exam& exam, const model::ItemId& item, const std::optional<model::Side>& side, const Words& words,
                                     const reference::Edition& edition) {
  std::vector<std::string> readings;
  for (const model::Finding& finding : findings_of(exam)) {
    const bool stands = !finding.standing || *finding.standing == model::Standing::current || *finding.standing == model::Standing::in_conflict;
    const auto* angle = std::get_if<model::Angle>(&finding.value);
    if (stands && finding.item == item && side && finding.side == *side) {
      readings.push_back(angle != nullptr ? angle_text(words, *angle) : value_text(words, edition, finding));
    }
  }
  return joined(readings, " / ");
}

[[nodiscard]] std::string instruments_of(const model::Exam& exam, const model::ItemId& item, const std::optional<model::Side>& side,
                                         const Words& words) {
  std::vector<std::string> names;
  for (const model::Finding& finding : findings_of(exam)) {
    if (finding.item == item && side && finding.side == *side && finding.instrument) {
      const std::string name = word_of(words, "instrument", finding.instrument->text);
      if (std::find(names.begin(), names.end(), name) == names.end()) {
        names.push_back(name);
      }
    }
  }
  return joined(names, " / ");
}

[[nodiscard]] std::string reason_of_gate(const RuleResult& rule, const Words& words) {
  return rule.gate ? rule_word(words, rule, "gate", rule.gate->text) : std::string();
}

[[nodiscard]] bool has_flag(const RuleResult& rule, std::string_view flag) {
  return std::any_of(rule.flags.begin(), rule.flags.end(), [&](const model::Word& word) { return word.text == flag; });
}

// Tender bone that the rule does not count: the Ottawa rules some of it, the Pittsburgh rule all of it.
[[nodiscard]] bool looks_past(const RuleResult& rule, std::string_view item) {
  if (const interpret::Series* series = interpret::series_of(rule.rule.text)) {
    return std::find(series->elsewhere.begin(), series->elsewhere.end(), item) != series->elsewhere.end();
  }
  const bool any_bone = rule.rule.text == "rule.pittsburgh_knee" && (item == "knee.fibular_head_tender" || item == "knee.patella_tender");
  const auto& beside = interpret::beside_the_knee;
  return any_bone || item.ends_with(".bone_tender_elsewhere") || std::find(beside.begin(), beside.end(), item) != beside.end();
}

// Tender where the rule looks, and no pain in its zone: negative by its letter.
[[nodiscard]] bool tender_without_pain(const RuleResult& rule, std::string_view item) {
  const interpret::Series* series = interpret::series_of(rule.rule.text);
  return series != nullptr && (item == series->item(interpret::FootInput::first) || item == series->item(interpret::FootInput::second));
}

// "foot_piano_key" of "foot.piano_key".
[[nodiscard]] std::string in_a_name(const model::ItemId& item) {
  std::string name = item.text;
  std::replace(name.begin(), name.end(), '.', '_');
  return name;
}

// What was found beside the rule may ask for another film than its own, or say how the foot is kept until then.
[[nodiscard]] std::string with_what_follows(std::string outcome, const RuleResult& rule, const model::Exam& exam, const Words& words) {
  std::vector<std::string> follows;
  for (const model::Finding& finding : findings_of(exam)) {
    const std::string name = "msg." + rule.rule.text + ".then_" + in_a_name(finding.item);
    if (finding.side == rule.side && interpret::settles(finding) && interpret::says_tender(finding) && looks_past(rule, finding.item.text) && words.has(name)) {
      add_once(follows, words.say(name));
    }
  }
  return follows.empty() ? outcome : outcome + ". " + joined(follows, ". ");
}

// What outside the rule speaks against its negative.
[[nodiscard]] std::string contradicted_by(const RuleResult& rule, const model::Exam& exam, const Words& words) {
  const interpret::Series* series = interpret::series_of(rule.rule.text);
  const std::string seen(series != nullptr ? series->film : "knee_fracture_seen");
  std::vector<std::string> because;
  for (const model::Finding& finding : findings_of(exam)) {
    const bool yes = finding.side == rule.side && interpret::says_tender(finding);
    const bool bone = yes && looks_past(rule, finding.item.text);
    const bool zone = yes && tender_without_pain(rule, finding.item.text);
    const bool walk = interpret::says_no_walking(finding);
    const auto* choices = std::get_if<model::Choices>(&finding.value);
    const bool film = choices != nullptr && (finding.side == rule.side || finding.side == model::Side::midline) &&
                      std::find(choices->choices.begin(), choices->choices.end(), model::ChoiceId{seen}) != choices->choices.end();
    const std::string own = "msg." + rule.rule.text + ".contradicted_by_" + in_a_name(finding.item);
    if (bone && words.has(own)) {
      because.push_back(words.say(own));
    } else if (bone || zone || walk || film) {
      because.push_back(words.say("msg." + rule.rule.text + (bone ? ".contradicted_bone" : zone ? ".contradicted_zone" : walk ? ".contradicted_walk" : ".contradicted_film")));
    }
  }
  std::sort(because.begin(), because.end());
  because.erase(std::unique(because.begin(), because.end()), because.end());
  return joined(because);
}

// 0.91; at most 0.79.
[[nodiscard]] std::string value_words(const RuleResult& rule, const Words& words) {
  if (!rule.value) {
    return {};
  }
  const auto digits = [](const interpret::RuleNumber& number) {
    const std::string text = std::to_string(number.steps % 100);
    return std::to_string(number.steps / 100) + "." + (text.size() < 2 ? "0" : "") + text;
  };
  if (rule.value->low && rule.value->high) {
    return digits(*rule.value->low);
  }
  const bool least = rule.value->low.has_value();
  return words.say(least ? "msg.value.at_least" : "msg.value.at_most", {{"value", digits(least ? *rule.value->low : *rule.value->high), false, true}});
}

// 2; 1 to 3.
[[nodiscard]] std::string points_words(const RuleResult& rule, const Words& words) {
  if (!rule.points) {
    return {};
  }
  const std::string low = std::to_string(rule.points->low.steps);
  if (rule.points->low == rule.points->high) {
    return low;
  }
  return words.say("msg.value.points_between", {{"low", low, false, true}, {"high", std::to_string(rule.points->high.steps), false, true}});
}

// What an outcome is called: most rules advise a film; one that does not has words of its own.
[[nodiscard]] std::string outcome_word(const RuleResult& rule, const interpret::SettleAnswer& answer, const model::Exam& exam, const Words& words) {
  // An answer that would make it negative beside what contradicts that does not say that no film is needed.
  const std::string doubted = "msg." + rule.rule.text + ".gives_contradicted";
  if (answer.gives == interpret::Outcome::negative && words.has(doubted) && !contradicted_by(rule, exam, words).empty()) {
    return words.say(doubted);
  }
  const std::string_view outcome = wire::type_of<interpret::Outcome>().words[static_cast<std::size_t>(answer.gives)];
  const std::string own = "msg." + rule.rule.text + ".gives_" + (answer.band ? answer.band->text : std::string(outcome));
  return words.has(own) ? words.say(own) : enum_word(words, "outcome", answer.gives);
}

// A question that somebody asked, and that nobody could answer, is not said to be one that nobody asked.
[[nodiscard]] std::string flag_said(const std::string& flag, const model::Exam& exam) {
  if (flag != "drawing_in_not_asked") {
    return flag;
  }
  const std::vector<model::Finding>& all = findings_of(exam);
  const bool recorded = std::any_of(all.begin(), all.end(), [](const model::Finding& finding) {
    const bool stands = !finding.standing || *finding.standing == model::Standing::current || *finding.standing == model::Standing::in_conflict;
    return stands && finding.item.text == "pelvis.lumbar_pain_centralises";
  });
  return recorded ? "drawing_in_not_known" : flag;
}

// "All items" is said of what the rule holds as known, and names it.
[[nodiscard]] std::pair<std::vector<std::string>, std::vector<std::string>> checked_and_open(const RuleResult& rule, const Words& words) {
  std::vector<std::string> checked;
  std::vector<std::string> open;
  for (const interpret::RuleInput& input : rule.inputs) {
    const bool known = input.state.text.starts_with("known");
    if (known || input.input.text != "pregnant") {
      (known ? checked : open).push_back(input_text(words, rule, input.input.text));
    }
  }
  if (has_flag(rule, "earlier_operation_not_asked")) {
    open.push_back(words.say("msg.change.earlier_operation"));
  }
  return {checked, open};
}

[[nodiscard]] std::string outcome_line(const RuleResult& rule, const model::Exam& exam, const Words& words) {
  const std::string name = "msg." + rule.rule.text + ".";
  if (rule.band) {
    const std::string band = name + "band_" + rule.band->text;
    const bool doubted = has_flag(rule, "contradicted") && words.has(band + "_contradicted");
    return words.say(doubted ? band + "_contradicted" : band, {{"value", value_words(rule, words), false, true}, {"points", points_words(rule, words), false, true}});
  }
  switch (rule.outcome) {
    case interpret::Outcome::positive:
      return with_what_follows(words.say(name + "positive"), rule, exam, words);
    case interpret::Outcome::negative: {
      if (has_flag(rule, "contradicted")) {
        return with_what_follows(words.say(name + "negative_contradicted", {{"because", contradicted_by(rule, exam, words), false, true}}), rule, exam, words);
      }
      if (has_flag(rule, "beside_contradicted")) {
        return words.say(name + "negative_beside");
      }
      if (has_flag(rule, "rules_disagree")) {
        return words.say(name + "negative_disagrees");
      }
      const auto [checked, open] = checked_and_open(rule, words);
      const Args args{{"checked", joined(checked), false, true}, {"open", joined(open), false, true}};
      return words.say(name + (open.empty() ? "negative" : "negative_with_gaps"), args);
    }
    case interpret::Outcome::undetermined: {
      std::vector<std::string> needs;
      for (const interpret::Settle& settle : rule.settle) {
        add_once(needs, input_text(words, rule, settle.input.text));
      }
      if (needs.empty() && words.has(name + "undetermined_here")) {
        return words.say(name + "undetermined_here");
      }
      const std::string open = words.say(name + (rule.value ? "undetermined_value" : "undetermined"),
                                         {{"needs", joined(needs), false, true}, {"value", value_words(rule, words), false, true}, {"points", points_words(rule, words), false, true}});
      return with_what_follows(open, rule, exam, words);
    }
    case interpret::Outcome::not_applicable:
      return words.say(name + "not_applicable", {{"gate", reason_of_gate(rule, words), false, true}});
  }
  return {};
}

[[nodiscard]] bool holds(const Args& args, std::string_view name) {
  return std::any_of(args.begin(), args.end(), [&](const Arg& arg) { return arg.name == name; });
}

// What must be known beside the sentence: other methods, why a test tells less, which test would tell more.
void add_remarks(const Args& args, const Words& words, const reference::Edition& edition, std::vector<std::string>& parts) {
  if (holds(args, "methods_differ")) {
    parts.push_back(words.say("msg.motion.methods_differ"));
  }
  if (holds(args, "conventions_differ")) {
    parts.push_back(words.say("msg.motion.conventions_differ", args));
  }
  if (holds(args, "position") && holds(args, "other_position")) {
    parts.push_back(words.say("msg.motion.positions_named", {{"position", word_of(words, "position", text_of(args, "position")), false, true},
                                                             {"other_position", word_of(words, "position", text_of(args, "other_position")), false, true}}));
  }
  for (const std::string_view because : {"heavy_thigh", "small_hands", "first_weeks", "no_reference", "one_rater"}) {
    if (holds(args, because)) {
      parts.push_back(words.say("msg.because." + std::string(because)));
    }
  }
  if (holds(args, "by_depth")) {
    parts.push_back(words.say("msg.because.by_depth", args));
  }
  const std::string instead = text_of(args, "instead");
  if (!instead.empty()) {
    parts.push_back(words.say("msg.laxity.instead", {{"item", item_label(words, edition, {instead}), false, true}}));
  }
}

}  // namespace

StatementWords statement_words(const Statement& statement, const model::Exam& exam, const Words& words, const reference::Edition& edition) {
  const model::ItemId item = item_of(statement);
  StatementWords out;
  out.item = item;
  Args args = args_of(statement.params);
  const std::string difference = text_of(args, "difference_deg");
  for (const model::RowId& row : statement.rows) {
    if (const reference::NormRow* norm = edition.norm(row)) {
      add_once(out.people, people_of(*norm, words));
      add_once(out.compared, compared_with(*norm, words));
      add_once(out.figures, figures_of(*norm, words));
      out.taught = out.taught || norm->taught();
    }
    for (const reference::FigureRow& figure : edition.figures()) {
      if (figure.row == row) {
        add_once(out.sources, figure.source.text);
      }
    }
    for (const reference::PrintedRule& rule : edition.rules()) {
      if (rule.row == row) {
        add_once(out.sources, rule.sources.front().text);
      }
    }
    for (const reference::TableRow& line : edition.tables()) {
      if (line.row == row) {
        add_once(out.sources, line.source.text);
      }
    }
  }
  // That a fresh knee feels otherwise later is said of the knee complained of, not of the well one.
  if (statement.side && exam.side && *exam.side != model::Side::midline && *statement.side != *exam.side) {
    args.erase(std::remove_if(args.begin(), args.end(), [](const Arg& arg) { return arg.name == "first_weeks"; }), args.end());
  }
  for (Arg& arg : args) {
    if (arg.name == "state") {
      arg.text = word_of(words, "body.state", arg.text);
    }
    if (arg.name == "other_item" || arg.name == "because_item") {
      arg.text = item_label(words, edition, {arg.text});
    }
    if (arg.name == "reason") {
      arg.text = word_of(words, "why", arg.text);
    }
  }
  out.interval = interval_of(args, words);
  out.reading = reading_of(exam, item, statement.side, words, edition);
  args.push_back({"what", item_label(words, edition, item), false, true});
  args.push_back({"mean", toward_words(text_of(args, "mean"), args, words), false, true});
  args.push_back({"side", statement.side && *statement.side != model::Side::midline ? ", " + side_of(words, *statement.side) + "," : "", false, true});
  args.push_back({"who", joined(out.people), false, true});
  out.how = instruments_of(exam, item, statement.side, words);
  args.push_back({"how", out.how, false, true});
  args.push_back({"interval", out.interval, false, true});
  const std::string span = span_of(statement, args, words, edition);
  const Args both{{"reading", out.reading, false, true}, {"span", span, false, true}};
  args.push_back({"reading", out.reading, false, true});
  args.push_back({"span", span, false, true});
  args.push_back({"in_span", span.empty() ? span : " (" + span + ")", false, true});
  args.push_back({"measured", span.empty() ? out.reading : words.say("msg.motion.with_error", both), false, true});
  args.push_back({"other", toward_words(text_of(args, "other_deg"), args, words), false, true});
  args.push_back({"needed", text_of(args, "needed_deg"), true});
  args.push_back({"difference", !difference.empty() && difference.front() == '-' ? difference.substr(1) : difference, true});
  add_remarks(args, words, edition, out.remarks);
  out.args = std::move(args);
  return out;
}

std::string statement_text(const Statement& statement, const model::Exam& exam, const Words& words, const reference::Edition& edition) {
  const StatementWords said = statement_words(statement, exam, words, edition);
  // A grade is the examiner's comparison with the other knee; where nothing of that knee stands, the sentence says so.
  const bool by_end = statement.message.text == "msg.laxity.loose" && text_of(said.args, "grade") == "0";
  const std::string name = statement.message.text + (by_end ? "_end" : "");
  const std::string alone = name + "_alone";
  const bool compared = !statement.side || !grades_against_other(edition, said.item) || holds_other_side(exam, said.item, *statement.side);
  std::vector<std::string> parts{words.say(!compared && words.has(alone) ? alone : name, said.args)};
  parts.insert(parts.end(), said.remarks.begin(), said.remarks.end());
  if (said.taught && !statement.message.text.ends_with("_taught")) {
    parts.push_back(words.say("msg.motion.taught"));
  }
  if (!said.compared.empty()) {
    parts.push_back(words.say("msg.motion.compared_with", {{"rows", joined(said.compared, "; "), false, true}}));
  }
  if (!said.sources.empty()) {
    parts.push_back(words.say("msg.motion.source", {{"source", joined(said.sources), false, true}}));
  }
  return joined(parts, "; ") + ".";
}

namespace {

[[nodiscard]] Result<interpret::Working> working_of(const RuleResult& rule, const model::Exam& exam, const std::optional<model::Person>& person,
                                                           const model::PartialDate& as_of, const reference::Edition& edition) {
  const model::StatementId id{rule.rule.text + ":" + std::string(wire::type_of<model::Side>().words[static_cast<std::size_t>(rule.side)])};
  return interpret::explain(exam, person, {}, edition, {as_of, {}, std::nullopt, {}}, id);
}

}  // namespace

std::string rule_counted(const RuleResult& rule, const model::Exam& exam, const std::optional<model::Person>& person, const model::PartialDate& as_of,
                         const Words& words, const reference::Edition& edition) {
  if (!rule.points || !words.has("msg." + rule.rule.text + ".counted")) {
    return {};
  }
  const auto working = working_of(rule, exam, person, as_of, edition);
  return working ? points_counted(rule, *working, words) : std::string();
}

std::string rule_met(const RuleResult& rule, const model::Exam& exam, const std::optional<model::Person>& person, const model::PartialDate& as_of,
                     const Words& words, const reference::Edition& edition) {
  if (rule.outcome != interpret::Outcome::positive) {
    return {};
  }
  const auto working = working_of(rule, exam, person, as_of, edition);
  return working ? joined(criteria_met(rule, *working, words), "; ") : std::string();
}

std::vector<std::string> rule_lines(const RuleResult& rule, const model::Exam& exam, const std::optional<model::Person>& person,
                                    const model::PartialDate& as_of, const Words& words, const reference::Edition& edition) {
  std::vector<std::string> lines{outcome_line(rule, exam, words) + "."};
  if (const std::string met = rule_met(rule, exam, person, as_of, words, edition); !met.empty()) {
    lines.push_back(words.say("msg.rule.criteria", {{"criteria", met, false, true}}) + ".");
  }
  if (const std::string counted = rule_counted(rule, exam, person, as_of, words, edition); !counted.empty()) {
    lines.push_back(words.say("msg.rule.counted", {{"what", counted, false, true}}) + ".");
  }
  for (const interpret::Settle& settle : rule.settle) {
    const bool decides = std::any_of(settle.answers.begin(), settle.answers.end(),
                                     [](const interpret::SettleAnswer& answer) { return answer.gives != interpret::Outcome::undetermined; });
    if (!decides) {
      continue;  // named among what is needed; alone it gives nothing
    }
    std::vector<std::string> answers;
    for (const interpret::SettleAnswer& answer : settle.answers) {
      const bool open = answer.gives == interpret::Outcome::undetermined;
      answers.push_back(
          words.say(open ? "msg.rule.answer_open" : "msg.rule.answer", {{"if", if_text(words, answer.if_.text), false, true}, {"gives", outcome_word(rule, answer, exam, words), false, true}}));
    }
    lines.push_back(words.say("msg.rule.settle", {{"input", input_text(words, rule, settle.input.text), false, true},
                                                  {"answers", joined(answers, "; "), false, true}}) +
                    ".");
  }
  for (const model::Word& flag : rule.flags) {
    const bool said_already = flag.text == "contradicted" || flag.text == "beside_contradicted" || (flag.text == "rules_disagree" && rule.outcome == interpret::Outcome::negative && !rule.band);
    if (!said_already) {
      lines.push_back(rule_word(words, rule, "flag", flag_said(flag.text, exam)) + ".");
    }
  }
  return lines;
}

std::string rule_short(const RuleResult& rule, const model::Exam& exam, const Words& words) {
  const bool plain = !rule.band && !has_flag(rule, "contradicted") && !has_flag(rule, "beside_contradicted") && !has_flag(rule, "rules_disagree");
  if (rule.outcome != interpret::Outcome::negative || !plain || interpret::film_for(rule.rule).empty()) {
    return outcome_line(rule, exam, words);
  }
  const std::vector<std::string> open = checked_and_open(rule, words).second;
  return words.say(open.empty() ? "msg.letter.rule_no_film" : "msg.letter.rule_no_film_gaps", {{"open", joined(open), false, true}});
}

std::string contradiction_text(const interpret::Contradiction& contradiction, const Words& words) {
  const std::string side = contradiction.side ? side_of(words, *contradiction.side) + ": " : std::string();
  return side + words.say(contradiction.message.text, args_of(contradiction.params));
}

}  // namespace limbledger::report

#include "core/report/page_evidence.hpp"

#include "core/report/text.hpp"

namespace limbledger::report {

namespace {

[[nodiscard]] std::string range_words(const interpret::OutOf& range, const Words& words) {
  const std::string low = wire::write_number(range.low.steps, 1);
  const std::string high = wire::write_number(range.high.steps, 1);
  // 5 and 95 are the ends of what is ever said: up to 5 in 100, rounded, is fewer than 10; 95 is more than 90.
  if (range.high.steps <= 5) {
    return words.say("msg.hypothesis.fewer", {{"high", "10", true}});
  }
  if (range.low.steps >= 95) {
    return words.say("msg.hypothesis.more", {{"low", "90", true}});
  }
  if (range.low == range.high) {
    return words.say("msg.hypothesis.about_one", {{"low", low, true}});
  }
  return words.say("msg.hypothesis.about", {{"low", low, true}, {"high", high, true}});
}

}  // namespace

std::string hypothesis_text(const interpret::Hypothesis& hypothesis, const Words& words, const reference::Edition& edition) {
  const reference::EvidenceCondition* condition = edition.evidence().condition(hypothesis.hypothesis);
  const std::string what = condition != nullptr ? words.say(condition->label.text) : hypothesis.hypothesis.text;
  Args args{{"what", what, false, true}, {"strength", enum_word(words, "strength", hypothesis.strength), false, true}};
  if (hypothesis.range) {
    args.push_back({"range", range_words(*hypothesis.range, words), false, true});
  }
  const std::string side = hypothesis.side ? side_of(words, *hypothesis.side) + ": " : std::string();
  return side + words.say(hypothesis.message.text, args) + ".";
}

}  // namespace limbledger::report

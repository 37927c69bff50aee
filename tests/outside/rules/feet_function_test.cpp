// The rules of feet, of timed and counted tests and of joints that move far over every combination of their inputs, against digests
// made from independent definitions and brute force in another language (tests/outside/node/rules_feet_function.mjs), and against the
// worked examples of the decision rules page, sections 17a to 23. Sources: NG19_TRAINING, MALFAIT2017, FPI_BANDS, CDC_TUG, CDC_CHAIR,
// CDC_4STAGE, BOHANNON2006, KLUKOWSKA2021, HEBERT2017.
#include "core/interpret/rules/body/hypermobility.hpp"
#include "core/interpret/rules/foot/foot_posture.hpp"
#include "core/interpret/rules/foot/nice_ng19.hpp"
#include "core/interpret/rules/function/chair_stand.hpp"
#include "core/interpret/rules/function/five_stands.hpp"
#include "core/interpret/rules/function/four_stances.hpp"
#include "core/interpret/rules/function/heel_rise_sides.hpp"
#include "core/interpret/rules/function/up_and_go.hpp"
#include "core/interpret/rules/grouped.hpp"

#include "tests/outside/truth_table.hpp"
#include "tests/unit/interpret/support.hpp"

#include <doctest/doctest.h>

#include <functional>

using namespace limbledger;
using namespace limbledger::interpret;
using namespace limbledger::outside_test;

namespace limbledger::feet_function_tests {

using interpret_test::Bench;
using model::Side;
using Line = std::vector<std::string>;

[[nodiscard]] std::string answer_word(Outcome outcome, std::string_view band, std::string_view gate) {
  const std::string more(band.empty() ? gate : band);
  return outcome_word(outcome) + (more.empty() ? "" : ":" + more);
}

// What one line says after the arrow.
[[nodiscard]] std::string said_of(const SheetCompleted& completed, const std::vector<std::string>& names) {
  std::string settle;
  for (std::size_t i = 0; i < names.size(); ++i) {
    const bool said_already = i > 0 && names[i] == names[i - 1] && settle.ends_with(names[i]);
    settle += completed.settles[i] && !said_already ? (settle.empty() ? "" : ",") + names[i] : "";
  }
  return answer_word(completed.answer.outcome, completed.answer.band, completed.answer.gate) + "; settle=" + settle;
}
[[nodiscard]] std::string said_of(const std::vector<JudgedRule>& judged, Side side) {
  for (const JudgedRule& one : judged) {
    if (one.result.side != side) {
      continue;
    }
    std::string settle;
    for (const Settle& by : one.result.settle) {
      settle += (settle.empty() ? "" : ",") + by.input.text;
    }
    return answer_word(one.result.outcome, one.result.band ? one.result.band->text : "", one.result.gate ? one.result.gate->text : "") + "; settle=" + settle;
  }
  return "no result";
}

void check_table(const std::string& rule, const std::vector<Line>& domain, const std::function<std::string(const Line&)>& judge,
                 const std::function<bool(const Line&)>& skip = [](const Line&) { return false; }) {
  const std::string text = slurp("rules_feet_function_digest.json");
  const auto document = wire::parse(text);
  REQUIRE(document.has_value());
  const wire::Node* expected = document->child(*document->child(document->root(), "rules"), rule);
  REQUIRE(expected != nullptr);
  std::size_t total = 1;
  for (const Line& values : domain) {
    total *= values.size();
  }
  std::string all;
  std::size_t lines = 0;
  Line words(domain.size());
  for (std::size_t n = 0; n < total; ++n) {
    std::size_t rest = n;
    for (std::size_t i = domain.size(); i-- > 0;) {
      words[i] = domain[i][rest % domain[i].size()];
      rest /= domain[i].size();
    }
    if (skip(words)) {
      continue;
    }
    for (std::size_t i = 0; i < words.size(); ++i) {
      all += (i == 0 ? "" : "|") + words[i];
    }
    all += " -> " + judge(words) + "\n";
    ++lines;
  }
  CHECK(std::to_string(lines) == document->child(*expected, "lines")->raw);
  CHECK(blake2b_256(all) == document->child(*expected, "digest")->text);
}

const Line yes_no{"no", "yes", "?"};

[[nodiscard]] Classes tri_of(const std::string& word) { return word == "?" ? Classes{3} : (word == "yes" ? Classes{2} : Classes{1}); }

// "3+2": three known, two not.
struct CountWord {
  int yes = 0;
  int open = 0;
};
[[nodiscard]] CountWord count_of(const std::string& word) {
  const auto plus = word.find('+');
  return {std::stoi(word.substr(0, plus)), std::stoi(word.substr(plus + 1))};
}
[[nodiscard]] Line counts_to(int most) {
  Line words;
  for (int yes = 0; yes <= most; ++yes) {
    for (int open = 0; open <= most - yes; ++open) {
      words.push_back(std::to_string(yes) + "+" + std::to_string(open));
    }
  }
  return words;
}
[[nodiscard]] Line numbers(int low, int high) {
  Line words;
  for (int n = low; n <= high; ++n) {
    words.push_back(std::to_string(n));
  }
  words.push_back("?");
  return words;
}

[[nodiscard]] Bench person_of(const std::string& age, model::NormSex sex = model::NormSex::male) {
  Bench made(*reference::built_in_edition());
  made.person->norm_sex = sex;
  if (age == "?") {
    made.person->birth.reset();
  } else {
    made.born(2026 - std::stoi(age), 11, 24);  // on the birthday
  }
  return made;
}
[[nodiscard]] View view_of(const Bench& made) { return {made.exam, made.person, *made.edition, interpret_test::day(2026, 11, 24)}; }

// A time in words, "unable", or a value that settles nothing.
void add_time(Bench& made, const std::string& item, const std::string& word) {
  if (word == "unable" || word == "?") {
    made.not_done(item, Side::midline, model::WhyNot::unable);
    if (word == "?") {
      made.exam.findings->back().origin = model::Origin::carried_over;
    }
    return;
  }
  model::Duration time;
  const auto dot = word.find('.');
  time.s = model::Seconds{std::stoi(word.substr(0, dot)) * 10 + std::stoi(word.substr(dot + 1))};
  made.add(item, Side::midline, time);
}
void add_count(Bench& made, const std::string& item, Side side, const std::string& word) {
  auto& finding = made.add(item, side, model::CountValue{{word == "?" ? 0 : std::stoi(word)}});
  if (word == "?") {
    finding.origin = model::Origin::carried_over;
  }
}

[[nodiscard]] std::string nice_line(const Line& words) {
  std::vector<Classes> may_be;
  std::transform(words.begin(), words.end(), std::back_inserter(may_be), &tri_of);
  SheetGroups groups;
  for (std::size_t i = 0; i < words.size(); ++i) {
    groups.add(std::min<std::size_t>(i, 6), {0, 1}, 1);
  }
  return said_of(complete_groups(may_be, groups, &decide_nice_feet), {"active", "rest_pain", "neuro", "isch", "deform", "callus", "hx_ulcer", "hx_amp", "rrt"});
}

// Signs and questions as the count says, the known first or last.
[[nodiscard]] std::string hypermobility_line(const Line& words, bool known_last = false) {
  std::vector<Classes> may_be;
  std::vector<std::string> names;
  SheetGroups groups;
  groups.most = {SheetGroups::no_most, 2, SheetGroups::no_most, SheetGroups::no_most};
  const auto add = [&](std::size_t group, const std::string& name, Classes one) {
    may_be.push_back(one);
    names.push_back(name);
    groups.of_input.push_back(group);
    groups.points.push_back({0, 1});
  };
  for (std::size_t g = 0; g < 2; ++g) {
    const CountWord count = count_of(words[g]);
    const int most = g == 0 ? 9 : 5;
    for (int n = 0; n < most; ++n) {
      const int place = known_last ? most - 1 - n : n;
      add(g, g == 0 ? "signs" : "questions", place < count.yes ? Classes{2} : (place < count.yes + count.open ? Classes{3} : Classes{1}));
    }
  }
  add(2, "prepub", tri_of(words[2]));
  add(3, "age", words[3] == "?" ? Classes{3} : (words[3] == "51" ? Classes{2} : Classes{1}));
  return said_of(complete_groups(may_be, groups, &decide_hypermobility), names);
}

[[nodiscard]] std::string posture_line(const Line& words) {
  std::vector<Classes> may_be;
  SheetGroups groups;
  for (const std::string& word : words) {
    may_be.push_back(word == "?" ? Classes{31} : static_cast<Classes>(1U << static_cast<unsigned>(std::stoi(word) + 2)));
    groups.add(0, {-2, -1, 0, 1, 2});
  }
  return said_of(complete_groups(may_be, groups, &decide_foot_posture), {"talar_head", "malleolar_curves", "heel", "talonavicular", "arch", "forefoot"});
}

[[nodiscard]] std::string up_and_go_line(const Line& words) {
  Bench made = person_of(words[0]);
  add_time(made, "function.timed_up_and_go", words[1]);
  return said_of(run_up_and_go(view_of(made)), Side::midline);
}

[[nodiscard]] std::string chair_line(const Line& words) {
  Bench made = person_of(words[1], words[0] == "?" ? model::NormSex::unspecified : (words[0] == "male" ? model::NormSex::male : model::NormSex::female));
  add_count(made, "function.chair_stand_30s", Side::midline, words[2]);
  if (words[3] != "?") {
    made.answer("function.chair_stand_arms_used", Side::midline, words[3] == "yes" ? model::AnswerWord::yes : model::AnswerWord::no);
  }
  return said_of(run_chair_stand(view_of(made)), Side::midline);
}

[[nodiscard]] std::string stances_line(const std::string& age, const std::string& first, const std::string& second, const std::string& third) {
  Bench made = person_of(age);
  const auto add = [&](const char* item, const std::string& word) {
    if (!word.empty()) {
      add_time(made, item, word);
    }
  };
  add("function.stance_side_by_side", first);
  add("function.stance_semi_tandem", second);
  add("function.stance_tandem", third);
  return said_of(run_four_stances(view_of(made)), Side::midline);
}

[[nodiscard]] std::string five_stands_line(const std::string& age, const std::string& time) {
  Bench made = person_of(age);
  add_time(made, "function.five_times_sit_to_stand", time);
  return said_of(run_five_stands(view_of(made)), Side::midline);
}

[[nodiscard]] std::string heel_rises_line(const std::string& left, const std::string& right, Side side) {
  Bench made = person_of("45");
  add_count(made, "function.heel_rise_count_incline", Side::left, left);
  add_count(made, "function.heel_rise_count_incline", Side::right, right);
  return said_of(run_heel_rises(view_of(made)), side);
}

// The rows of an example file: what is given, by its name there, the outcome and what settles.
void check_examples(const std::string& file, const std::string& prefix, int expected, const std::function<std::string(const std::function<std::string(const char*)>&)>& judge) {
  std::istringstream rows(slurp(file));
  int examples = 0;
  for (std::string row; std::getline(rows, row);) {
    if (!row.starts_with(prefix)) {
      continue;
    }
    const std::vector<std::string> cells = cells_of(row);
    const auto given = wire::parse(cells[2]);
    REQUIRE(given.has_value());
    const auto word = [&](const char* name) -> std::string {
      const wire::Node* value = given->child(given->root(), name);
      REQUIRE(value != nullptr);
      const std::string raw(value->kind == wire::NodeKind::text ? value->text : value->raw);
      return value->kind == wire::NodeKind::null ? "?" : (raw == "true" ? "yes" : (raw == "false" ? "no" : raw));
    };
    CAPTURE(cells[0]);
    CHECK(judge(word) == cells[3] + "; settle=" + cells[4]);
    ++examples;
  }
  CHECK(examples == expected);
}

[[nodiscard]] std::string renamed(std::string text, const std::vector<std::pair<std::string, std::string>>& names) {
  for (const auto& [from, to] : names) {
    const auto at = text.find(from);
    if (at != std::string::npos) {
      text.replace(at, from.size(), to);
    }
  }
  return text;
}

TEST_CASE("nice_ng19: every combination of its inputs, and its seven worked examples") {
  check_table("nice_feet", std::vector<Line>(9, yes_no), &nice_line);
  check_examples("rule_examples_ng19.csv", "ng19-", 7, [](const auto& word) {
    const std::string said = nice_line({word("active"), "no", word("neuro"), word("isch"), word("deform"), word("callus"), word("hx_ulcer"), word("hx_amp"), word("rrt")});
    return renamed(said, {{"positive:class_", ""}, {"negative:class_", ""}, {"not_applicable:active_foot", "active"}});
  });
}

TEST_CASE("beighton/2017-cutoffs: every number of signs and answers known and unknown, and its nine worked examples") {
  const std::vector<Line> domain{counts_to(9), counts_to(5), yes_no, {"50", "51", "?"}};
  check_table("hypermobility", domain, [](const Line& words) { return hypermobility_line(words); });
  check_table("hypermobility", domain, [](const Line& words) { return hypermobility_line(words, true); });  // which signs they are makes no difference
  check_examples("rule_examples_hypermobility.csv", "bei-", 9, [](const auto& word) {
    const std::string q = word("q") == "?" ? "0+5" : word("q") + "+0";
    return renamed(hypermobility_line({word("score") + "+0", q, word("prepub"), std::stoi(word("age")) > 50 ? "51" : "50"}),
                   {{"positive:", ""}, {"negative:", ""}, {"questions", "q"}});
  });
}

TEST_CASE("fpi6/2005: every combination of six items of five classes, and its ten worked examples") {
  check_table("foot_posture", std::vector<Line>(6, {"-2", "-1", "0", "1", "2", "?"}), &posture_line);
  const auto sum = [](int total) {
    Line words;
    for (int n = 0; n < 6; ++n) {
      const int one = std::max(-2, std::min(2, total));
      words.push_back(std::to_string(one));
      total -= one;
    }
    return posture_line(words);
  };
  const std::vector<std::pair<int, std::string>> printed{{5, "neutral"}, {6, "pronated"}, {9, "pronated"}, {10, "highly_pronated"}, {-1, "supinated"}, {-4, "supinated"},
                                                         {-5, "highly_supinated"}, {0, "neutral"}};
  for (const auto& [total, band] : printed) {
    CHECK(sum(total) == "negative:" + band + "; settle=");
  }
  CHECK(posture_line({"1", "1", "1", "0", "0", "?"}) == "negative:neutral; settle=");
  CHECK(posture_line({"1", "1", "1", "1", "0", "?"}) == "undetermined; settle=forefoot");
}

TEST_CASE("steadi_tug/2017: every age and time, and its worked examples") {
  check_table("up_and_go", {{"17", "18", "64", "65", "94", "?"}, {"3", "11.9", "12", "13.4", "13.5", "60", "unable", "?"}}, [](Line words) {
    words[1] += words[1].size() <= 2 && words[1] != "?" ? ".0" : "";
    return up_and_go_line(words);
  });
  CHECK(up_and_go_line({"70", "11.9"}) == "negative; settle=");
  CHECK(up_and_go_line({"70", "12.0"}) == "positive; settle=");
  CHECK(up_and_go_line({"70", "13.4"}) == "positive; settle=");
  CHECK(up_and_go_line({"70", "?"}) == "undetermined; settle=up_and_go");
  CHECK(up_and_go_line({"70", "unable"}) == "positive; settle=");
  Bench knee = person_of("70");
  knee.not_done("function.timed_up_and_go", Side::midline, model::WhyNot::withheld);
  CHECK(said_of(run_up_and_go(view_of(knee)), Side::midline) == "not_applicable:not_done; settle=");
  Bench slow = person_of("70");
  add_time(slow, "function.timed_up_and_go", "13.4");
  CHECK(interpret_test::flagged(run_up_and_go(view_of(slow))[0].result, "below_other_cut"));
  Bench slower = person_of("70");
  add_time(slower, "function.timed_up_and_go", "13.5");
  CHECK_FALSE(interpret_test::flagged(run_up_and_go(view_of(slower))[0].result, "below_other_cut"));
}

TEST_CASE("steadi_chair30/2017: every sex, age, count and arms, and its eleven worked examples") {
  check_table("chair_stand", {{"male", "female", "?"}, {"59", "60", "64", "65", "69", "70", "74", "75", "79", "80", "84", "85", "89", "90", "94", "95", "?"}, numbers(0, 20), yes_no}, &chair_line);
  check_examples("rule_examples_chair.csv", "chair-", 11, [](const auto& word) {
    const std::string sex = word("sex") == "M" ? "male" : (word("sex") == "F" ? "female" : "?");
    return renamed(chair_line({sex, word("age"), word("count"), word("arms")}),
                   {{"positive", "below_average"}, {"negative", "not_below"}, {":no_row_for_age", ""}, {"chair_count", "count"}, {"arms_used", "arms"}});
  });
}

TEST_CASE("steadi_4stage/2017: every age and third stance, and its worked examples") {
  check_table("four_stances", {{"17", "18", "64", "65", "94", "?"}, {"0", "9.9", "10", "unable", "?"}}, [](const Line& words) {
    return stances_line(words[0], "", "", words[1].size() <= 2 && words[1] != "?" ? words[1] + ".0" : words[1]);
  });
  CHECK(stances_line("70", "10.0", "10.0", "10.0") == "negative; settle=");
  CHECK(stances_line("70", "10.0", "10.0", "9.9") == "positive; settle=");
  CHECK(stances_line("70", "10.0", "6.0", "") == "positive; settle=");
  CHECK(stances_line("70", "10.0", "10.0", "") == "undetermined; settle=heel_to_toe");
  CHECK(stances_line("70", "10.0", "", "10.0") == "negative; settle=");
  Bench poor = person_of("70");
  add_time(poor, "function.stance_tandem", "10.0");
  model::Duration short_time;
  short_time.s = model::Seconds{30};
  poor.add("function.single_leg_stance_eyes_open", Side::left, short_time);
  const auto noted = run_four_stances(view_of(poor));
  CHECK(said_of(noted, Side::midline) == "negative; settle=");
  CHECK(interpret_test::flagged(noted[0].result, "one_leg_short"));
}

TEST_CASE("sts5/bohannon2006: every age and time, and its worked examples") {
  check_table("five_stands", {{"17", "18", "59", "60", "69", "70", "79", "80", "89", "90", "?"}, {"5", "11.4", "11.5", "12.3", "12.4", "12.6", "12.7", "14.8", "14.9", "40", "unable", "?"}},
              [](const Line& words) { return five_stands_line(words[0], words[1].size() <= 2 && words[1] != "?" ? words[1] + ".0" : words[1]); });
  CHECK(five_stands_line("69", "11.4") == "negative; settle=");
  CHECK(five_stands_line("69", "11.5") == "positive; settle=");
  CHECK(five_stands_line("70", "12.6") == "negative; settle=");
  CHECK(five_stands_line("89", "14.9") == "positive; settle=");
  CHECK(five_stands_line("90", "20.0") == "not_applicable:no_row_for_age; settle=");
  CHECK(five_stands_line("35", "12.4") == "positive; settle=");
  CHECK(five_stands_line("?", "13.0") == "undetermined; settle=age");
}

TEST_CASE("heelrise/2017: every pair of counts, left and right exchanged, and its worked examples of sides") {
  check_table("heel_rise_sides", {numbers(0, 40), numbers(0, 40)},
              [](const Line& words) {
                const std::string here = heel_rises_line(words[0], words[1], Side::left);
                CHECK(heel_rises_line(words[1], words[0], Side::right) == here);
                return here;
              },
              [](const Line& words) { return words[0] == "?" && words[1] == "?"; });
  CHECK(heel_rises_line("28", "27", Side::left) == "negative:within_error; settle=");
  CHECK(heel_rises_line("28", "21", Side::right) == "positive:fewer_here; settle=");
  CHECK(heel_rises_line("28", "22", Side::right) == "negative:within_error; settle=");
  CHECK(heel_rises_line("20", "0", Side::right) == "positive:none_here; settle=");
  CHECK(heel_rises_line("20", "?", Side::left) == "undetermined; settle=rises_other");
  CHECK(heel_rises_line("20", "?", Side::right) == "undetermined; settle=rises_here");
}

}  // namespace limbledger::feet_function_tests

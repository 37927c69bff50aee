#include "core/interpret/after/agreement.hpp"

#include <algorithm>
#include <map>

namespace limbledger::interpret {

namespace {

[[nodiscard]] std::int64_t rounded_ratio(std::int64_t above, std::int64_t below, std::int64_t times) {
  const std::int64_t twice = 2 * above * times;
  return twice >= 0 ? (twice + below) / (2 * below) : -((-twice + below) / (2 * below));
}

// A word of the catalogue; nothing for a number, a text or several choices.
[[nodiscard]] std::optional<std::string> category_of(const model::Value& value) {
  if (const auto* answer = std::get_if<model::Answer>(&value)) {
    return std::string(wire::type_of<model::AnswerWord>().words[static_cast<std::size_t>(answer->answer)]);
  }
  if (const auto* test = std::get_if<model::Test>(&value)) {
    return std::string(wire::type_of<model::TestResult>().words[static_cast<std::size_t>(test->result)]);
  }
  if (const auto* choice = std::get_if<model::Choice>(&value)) {
    return choice->choice.text;
  }
  const auto* grade = std::get_if<model::Grade>(&value);
  if (grade == nullptr) {
    return std::nullopt;
  }
  const std::string shade = !grade->shade ? "" : (*grade->shade == model::Shade::minus ? " minus" : " plus");
  return grade->grade.text + shade;
}

[[nodiscard]] bool looked_at(const std::optional<model::Origin>& origin) {
  return !origin || *origin == model::Origin::observed || *origin == model::Origin::from_paper;
}

struct OneLook {
  model::ExaminerId by;
  std::string category;
};

// Each examiner's first of one place, in the order of the record.
[[nodiscard]] std::map<std::pair<model::ItemId, model::Side>, std::vector<OneLook>> looks_of(const model::Exam& exam) {
  std::map<std::pair<model::ItemId, model::Side>, std::vector<OneLook>> looks;
  const auto add = [&](const model::ItemId& item, model::Side side, const model::Value& value, const std::optional<model::Origin>& origin,
                       const std::optional<model::ExaminerId>& by) {
    const auto category = category_of(value);
    if (!category || !by || !looked_at(origin)) {
      return;
    }
    auto& here = looks[{item, side}];
    if (std::none_of(here.begin(), here.end(), [&](const OneLook& one) { return one.by == *by; })) {
      here.push_back({*by, *category});
    }
  };
  for (const model::Finding& finding : exam.findings.value_or(std::vector<model::Finding>{})) {
    const bool stands = !finding.standing || *finding.standing == model::Standing::current || *finding.standing == model::Standing::in_conflict;
    if (stands) {
      add(finding.item, finding.side, finding.value, finding.origin, finding.examiner);
    }
  }
  for (const model::Countersigned& signed_too : exam.countersigned.value_or(std::vector<model::Countersigned>{})) {
    for (const model::Observation& seen : signed_too.findings.value_or(std::vector<model::Observation>{})) {
      add(seen.item, seen.side, seen.value, seen.origin, signed_too.by);
    }
  }
  return looks;
}

}  // namespace

Agreement agreement_of(std::span<const DoubleFinding> pairs) {
  Agreement out;
  std::map<std::pair<std::string, std::string>, std::int64_t> table;
  std::map<std::string, std::int64_t> firsts;
  std::map<std::string, std::int64_t> seconds;
  std::map<std::string, std::int64_t> both;
  std::int64_t same = 0;
  for (const DoubleFinding& pair : pairs) {
    ++table[{pair.first, pair.second}];
    ++firsts[pair.first];
    ++seconds[pair.second];
    ++both[pair.first];
    ++both[pair.second];
    same += pair.first == pair.second ? 1 : 0;
  }
  const auto count = static_cast<std::int64_t>(pairs.size());
  out.pairs.steps = count;
  for (const auto& [cell, many] : table) {
    out.table.push_back({{cell.first}, {cell.second}, {many}});
  }
  if (count == 0) {
    out.no_kappa = model::Word{"no_pairs"};
    return out;
  }
  out.agree = OfHundred{rounded_ratio(same, count, 1000)};
  const auto most = std::max_element(both.begin(), both.end(), [](const auto& a, const auto& b) { return a.second < b.second; });
  out.commonest = wire::Name{most->first};
  out.commonest_of = OfHundred{rounded_ratio(most->second, 2 * count, 1000)};
  std::int64_t by_chance = 0;  // times count squared
  for (const auto& [word, many] : firsts) {
    const auto other = seconds.find(word);
    by_chance += other == seconds.end() ? 0 : many * other->second;
  }
  const std::int64_t below = count * count - by_chance;
  if (below == 0) {
    out.no_kappa = model::Word{"one_answer_only"};
  } else {
    out.kappa = AgreementNumber{rounded_ratio(count * same - by_chance, below, 100)};
  }
  return out;
}

std::vector<DoubledItem> doubled_findings(std::span<const model::Exam* const> exams) {
  std::map<model::ItemId, std::vector<DoubleFinding>> items;
  for (const model::Exam* exam : exams) {
    for (const auto& [place, looks] : looks_of(*exam)) {
      for (std::size_t first = 0; first < looks.size(); ++first) {
        for (std::size_t second = first + 1; second < looks.size(); ++second) {
          items[place.first].push_back({looks[first].category, looks[second].category});
        }
      }
    }
  }
  std::vector<DoubledItem> out;
  for (auto& [item, pairs] : items) {
    out.push_back({item, std::move(pairs)});
  }
  return out;
}

}  // namespace limbledger::interpret

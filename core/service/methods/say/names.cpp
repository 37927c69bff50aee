#include "core/service/methods/say/names.hpp"

#include "core/report/text.hpp"
#include "core/service/desk.hpp"
#include "core/ledger/fold/records.hpp"

#include <algorithm>

namespace limbledger::service {

namespace {

[[nodiscard]] std::string with_role(const wire::Name& name, const std::optional<wire::Name>& role, const report::Words& words) {
  if (!role) {
    return name.text;
  }
  return words.say("msg.page.examiner_role", {{"name", name.text}, {"role", role->text}});
}

[[nodiscard]] std::string in_words(const NamedExaminer& one, const report::Words& words) {
  const std::string first = with_role(one.name, one.role, words);
  if (!one.also) {
    return first;
  }
  std::vector<std::string> all{first};
  for (const AlsoNamed& other : *one.also) {
    all.push_back(with_role(other.name, other.role, words));
  }
  return words.say("msg.page.examiner_names", {{"names", report::joined(all, " / "), false, true}});
}

}  // namespace

std::optional<NamedExaminer> name_of(Context& context, const model::ExaminerId& examiner) {
  const auto known = context.desk->records().examiners();
  const auto found = known ? (*known)->find(examiner) : ledger::ExaminerNames::const_iterator{};
  if (!known || found == (*known)->end()) {
    const std::string label = context.desk->label_of(examiner);
    if (label.empty()) {
      return std::nullopt;
    }
    return NamedExaminer{examiner, {label}, std::nullopt, std::nullopt};
  }
  NamedExaminer out;
  out.examiner = examiner;
  std::vector<AlsoNamed> names;
  for (const ledger::SaidName& one : found->second) {
    const bool again = std::any_of(names.begin(), names.end(), [&](const AlsoNamed& other) { return other.name == one.said.name && other.role == one.said.role; });
    if (!again) {
      names.push_back({one.said.name, one.said.role});
    }
  }
  out.name = names.front().name;
  out.role = names.front().role;
  if (names.size() > 1) {
    out.also.emplace(names.begin() + 1, names.end());
  }
  return out;
}

std::string examiner_in_words(Context& context, const model::ExaminerId& examiner) {
  const report::Words* words = report::built_in_words();
  const auto named = name_of(context, examiner);
  if (words == nullptr) {
    return examiner.to_text();
  }
  if (named) {
    return in_words(*named, *words);
  }
  return words->say("msg.page.examiner_unknown", {{"id", examiner.to_text(), false, true}});
}

void take_names(const ExamNames& names, const report::Words& words, report::PageNames& out) {
  for (const NamedPlace& one : names.places.value_or(std::vector<NamedPlace>{})) {
    out.places[one.place] = one.name.text;
  }
  for (const NamedExaminer& one : names.examiners.value_or(std::vector<NamedExaminer>{})) {
    out.examiners[one.examiner] = in_words(one, words);
  }
}

}  // namespace limbledger::service

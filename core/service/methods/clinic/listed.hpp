// What the clinic's lists share: a person by name as they are shown, one visit as it is judged now, and the words of a printed list.
// What protects a person stands in no list (clinical safety, C16).
#pragma once

#include "core/interpret/statement.hpp"
#include "core/ledger/fold/records.hpp"
#include "core/report/words/words.hpp"
#include "core/service/context.hpp"
#include "core/service/desk.hpp"
#include "core/service/methods/say/names.hpp"

#include <optional>
#include <string>
#include <vector>

namespace limbledger::service {

// Everybody whom an exam is of: one, or those whom unseen moves name; with all records of each, where several are one person.
struct ListedPerson {
  std::vector<model::PersonId> persons;
  std::vector<model::PersonName> names;
  std::optional<model::Birth> birth;
  std::optional<wire::Name> home;
};
BOOST_DESCRIBE_STRUCT(ListedPerson, (), (persons, names, birth, home))
constexpr auto notes(const ListedPerson*) {
  return std::array{wire::Note{"persons", "all records of this person, the one that is shown first; empty where the exam is of nobody yet"}};
}

struct ListedAlert {
  model::Word alert;
  std::optional<model::Side> side;
  interpret::Urgency urgency{};
  std::optional<bool> call_back;          // it came after the signature
  std::optional<wire::LongText> text;
};
BOOST_DESCRIBE_STRUCT(ListedAlert, (), (alert, side, urgency, call_back, text))

struct JudgedVisit {
  model::Exam exam;
  std::vector<interpret::Alert> alerts;   // none that protects a person
  bool told_apart = false;                // what disagrees is of nothing that may be told of in a list
};
[[nodiscard]] Result<JudgedVisit> judge_visit(Context& context, const model::ExamId& exam);
// Whether an alert for a person's protection stands there, or came since the signature, with neither an action nor a reason.
[[nodiscard]] Result<bool> has_protected_unanswered(Context& context, const model::ExamId& exam);
// Raised, and nothing was done about them.
[[nodiscard]] std::vector<ListedAlert> alerts_without_action(const JudgedVisit& visit, const report::Words* words);

[[nodiscard]] Result<ListedPerson> listed_person(Context& context, const std::vector<model::PersonId>& persons);
[[nodiscard]] model::PartialDate today_at_hand(Context& context);

// "Kofi Invented, born 2001, Upper Ford" and "knee, after an injury, LEFT".
[[nodiscard]] std::string birth_in_words(const model::Birth& birth, const report::Words& words);
[[nodiscard]] std::string person_in_words(const ListedPerson& person, const report::Words& words);
[[nodiscard]] std::string visit_in_words(const ledger::ListedExam& row, const report::Words& words);

}  // namespace limbledger::service

// Names for the ids of places and examiners in one exam, so far as they have reached this ledger: exam.read gives them, a document may
// carry them, and a page prints them. An examiner is called as they say it themselves, with the role; by all of their names where two
// devices differ; and before a word of theirs has come, by the label of this device, or in words beside the id.
#pragma once

#include "core/model/exam/exam.hpp"
#include "core/report/page.hpp"
#include "core/service/context.hpp"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace limbledger::service {

struct NamedPlace {
  model::PlaceId place;
  wire::Name name;
};
BOOST_DESCRIBE_STRUCT(NamedPlace, (), (place, name))
struct AlsoNamed {
  wire::Name name;
  std::optional<wire::Name> role;
};
BOOST_DESCRIBE_STRUCT(AlsoNamed, (), (name, role))
struct NamedExaminer {
  model::ExaminerId examiner;
  wire::Name name;
  std::optional<wire::Name> role;
  std::optional<std::vector<AlsoNamed>> also;
};
BOOST_DESCRIBE_STRUCT(NamedExaminer, (), (examiner, name, role, also))
constexpr auto notes(const NamedExaminer*) {
  return std::array{wire::Note{"name", "as the examiner wrote it; before that has come, the label that the examiner unlocks with on this device"},
                    wire::Note{"also", "what else the examiner is called: said on another device, neither knowing of the other; to be shown beside it"}};
}
struct ExamNames {
  std::optional<std::vector<NamedPlace>> places;
  std::optional<std::vector<NamedExaminer>> examiners;
};
BOOST_DESCRIBE_STRUCT(ExamNames, (), (places, examiners))

// Nothing where no name is known here.
[[nodiscard]] std::optional<NamedExaminer> name_of(Context& context, const model::ExaminerId& examiner);
// The same in words, of whoever it is.
[[nodiscard]] std::string examiner_in_words(Context& context, const model::ExaminerId& examiner);
// For a page.
void take_names(const ExamNames& names, const report::Words& words, report::PageNames& out);

}  // namespace limbledger::service

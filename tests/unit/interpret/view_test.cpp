// The view of an exam with one answer more is the view of an exam that holds it: same findings, same places, whatever stood there.
#include "core/interpret/view.hpp"
#include "tests/unit/interpret/support.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <tuple>

using namespace limbledger;

namespace {

model::Finding answer_of(const std::string& item, model::Side side, model::AnswerWord word) {
  model::Finding finding;
  finding.item = {item};
  finding.side = side;
  finding.value = model::Answer{word};
  return finding;
}

}  // namespace

TEST_CASE("a view with one finding put in its slot reads as an exam that holds it") {
  const reference::Edition* edition = reference::built_in_edition();
  REQUIRE(edition != nullptr);
  const std::optional<model::Person> person;
  model::PartialDate day;
  for (const std::size_t held : {0U, 1U, 3U, 40U, 700U}) {
    model::Exam exam;
    exam.findings.emplace();
    for (const model::Item& item : edition->items()) {
      for (const model::Side side : item.sides) {
        if (exam.findings->size() < held) {
          exam.findings->push_back(answer_of(item.item.text, side, model::AnswerWord::no));
        }
      }
    }
    const interpret::View base(exam, person, *edition, day);
    for (const std::size_t nth : {std::size_t{0}, std::size_t{5}, std::size_t{200}, std::size_t{500}, edition->items().size() - 1}) {
      const model::Item& item = edition->items()[nth];
      for (const model::Side side : item.sides) {
        const model::Finding one = answer_of(item.item.text, side, model::AnswerWord::yes);
        const interpret::View then(base, one);
        model::Exam whole = exam;
        std::erase_if(*whole.findings, [&](const model::Finding& finding) { return finding.item == one.item && finding.side == one.side; });
        whole.findings->push_back(one);
        const interpret::View same(whole, person, *edition, day);
        REQUIRE(then.findings().size() == same.findings().size());
        for (std::size_t i = 0; i < same.findings().size(); ++i) {
          REQUIRE(*then.findings()[i] == *same.findings()[i]);
        }
        for (const model::Item& every : edition->items()) {
          for (const model::Side at : every.sides) {
            const auto got = then.at(every, at);
            const auto wanted = same.at(every, at);
            REQUIRE(got.size() == wanted.size());
            REQUIRE((got.empty() || *got.front() == *wanted.front()));
          }
        }
      }
    }
  }
}

TEST_CASE("findings of a view stand by the name of the item, the side's word and the id, also of items that the edition does not have") {
  const reference::Edition* edition = reference::built_in_edition();
  REQUIRE(edition != nullptr);
  const std::optional<model::Person> person;
  model::Exam exam;
  exam.findings.emplace();
  // Names that nobody has: before all, after all, and two in one gap whose sides stand the other way round.
  const std::vector<std::pair<std::string, model::Side>> unknown{{"zz.beyond", model::Side::left},        {"aa.before", model::Side::right},   {"knee.zz_b", model::Side::left},
                                                                 {"knee.zz_a", model::Side::right},       {"knee.zz_a", model::Side::midline}, {"knee.zz_a", model::Side::left},
                                                                 {"hip.not_of_this_edition", model::Side::left}};
  std::uint8_t id = 0;
  for (std::size_t nth = edition->items().size() - 1; nth > 9; nth -= 9) {
    for (const model::Side side : {model::Side::right, model::Side::midline, model::Side::left}) {
      for (int twice = 0; twice < 2; ++twice) {
        exam.findings->push_back(answer_of(edition->items()[nth].item.text, side, model::AnswerWord::no));
        exam.findings->back().finding.emplace().bytes[0] = --id;
      }
    }
  }
  for (const auto& [name, side] : unknown) {
    exam.findings->push_back(answer_of(name, side, model::AnswerWord::no));
  }
  const interpret::View view(exam, person, *edition, model::PartialDate{});
  REQUIRE(view.findings().size() == exam.findings->size());
  const auto place = [](const model::Finding* one) { return std::tuple(std::string_view(one->item.text), interpret::side_word(one->side), one->finding); };
  CHECK(std::is_sorted(view.findings().begin(), view.findings().end(), [&](const auto* a, const auto* b) { return place(a) < place(b); }));
  for (const auto& [name, side] : unknown) {
    CHECK(view.at(name, side).size() == 1);
  }
}

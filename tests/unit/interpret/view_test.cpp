// The view of an exam with one answer more is the view of an exam that holds it: same findings, same places, whatever stood there.
#include "core/interpret/view.hpp"
#include "tests/unit/interpret/support.hpp"

#include <doctest/doctest.h>

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

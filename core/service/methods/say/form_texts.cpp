#include "core/service/methods/say/form_texts.hpp"

#include "core/interpret/statement.hpp"
#include "core/wire/type.hpp"

#include <algorithm>
#include <set>
#include <string>
#include <string_view>

namespace limbledger::service {

namespace {

class FormWords {
 public:
  explicit FormWords(const report::Words& words) : words_(words) {}

  void add(std::string_view name) {
    if (!words_.has(name) || !seen_.insert(std::string(name)).second) {
      return;
    }
    FormText text{{std::string(name)}, {words_.say(name)}, std::nullopt};
    if (!words_.says_itself(name)) {
      text.english = true;
    }
    texts_.push_back(std::move(text));
  }
  template <class E>
  void add_all(std::string_view kind) {
    for (const std::string_view word : wire::type_of<E>().words) {
      add("msg." + std::string(kind) + "." + std::string(word));
    }
  }
  // Every message that is named anywhere in it.
  void add_named(const wire::Type& type, const void* object) {
    void* at = const_cast<void*>(object);  // the table gives one way in, for reading and writing alike
    if (&type == &wire::type_of<model::MessageId>()) {
      return add(type.to_text(at));
    }
    switch (type.kind) {
      case wire::Kind::object:
        for (const wire::Field& field : type.fields) {
          add_named(field.type(), field.at(at));
        }
        return;
      case wire::Kind::list:
        for (std::size_t i = 0; i < type.size(at); ++i) {
          add_named(type.inner(), type.element(at, i));
        }
        return;
      case wire::Kind::optional:
        return type.has(at) ? add_named(type.inner(), type.held(at)) : void();
      default:
        return;
    }
  }
  void add_listed(std::string_view kind, const std::optional<std::vector<model::Word>>& list) {
    for (const model::Word& word : list.value_or(std::vector<model::Word>{})) {
      add("msg." + std::string(kind) + "." + word.text);
    }
  }
  void step(const FormStep& step) {
    if (step.unit) {
      add("msg.unit." + step.unit->text);
    }
    if (step.toward) {
      add("msg.toward." + step.toward->text);
    }
    add_listed("position", step.positions);
    add_listed("instrument", step.instruments);
    add_listed("end_feel", step.end_feels);
  }
  [[nodiscard]] std::vector<FormText> texts() && { return std::move(texts_); }

 private:
  const report::Words& words_;
  std::set<std::string> seen_;
  std::vector<FormText> texts_;
};

}  // namespace

std::vector<FormText> texts_named_in(const report::Words& words, const wire::Type& type, const void* reply) {
  FormWords all(words);
  all.add_named(type, reply);
  return std::move(all).texts();
}

void add_form_texts(const report::Words& words, FormDescribeResult& form) {
  FormWords all(words);
  all.add_all<model::Side>("side");
  all.add_all<model::WhyNot>("why");
  all.add_all<model::DespiteHow>("despite");
  all.add_all<model::AnswerWord>("answer");
  all.add_all<model::TestResult>("result");
  all.add_all<WhyLeft>("why_left");
  all.add_all<interpret::Urgency>("urgency");
  for (const FormPosition& position : form.positions) {
    for (const FormStep& step : position.steps) {
      all.step(step);
    }
  }
  for (const WithheldStep& step : form.withheld) {
    all.step(step.step);
  }
  all.add_named(wire::type_of<FormDescribeResult>(), &form);
  form.language = model::Word{words.language()};
  if (words.language() != report::english) {
    form.for_review = true;
  }
  form.texts = std::move(all).texts();
}

}  // namespace limbledger::service

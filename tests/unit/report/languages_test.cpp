// The labels of forms in Spanish and French: what they may not say, that each stands for an English one with the same variables, and
// that the five complaints with the most visits have all their labels. Source: clinical safety, wording A and requirement 19.
#include "core/reference/edition.hpp"
#include "core/report/words/words.hpp"

#include "tests/unit/report/forbidden.hpp"

#include <doctest/doctest.h>

#include <filesystem>
#include <fstream>
#include <map>
#include <set>
#include <string>
#include <vector>

using namespace limbledger;
using report_test::lower;

namespace {

// The words of part A as these languages have them; accents as they are written.
const std::map<std::string, std::vector<std::string>>& words_not_earned() {
  static const std::map<std::string, std::vector<std::string>> words{
      {"es",
       {"excluido", "excluida", "descartado", "descartada", "seguro", "segura", "normal", "anormal", "normales", "diagnóstico", "confirmado", "confirmada",
        "riesgo", "riesgos", "puntuación", "improbable", "probable", "probablemente", "probabilidad", "por ciento", "sin fractura", "mejorado", "mejorada",
        "raro", "rara", "debe", "prohibido", "obligatorio", "recomendado", "todo bien"}},
      {"fr",
       {"exclu", "exclue", "écarté", "écartée", "éliminé", "éliminée", "sûr", "sûre", "sans danger", "normal", "normale", "anormal", "anormale", "diagnostic",
        "confirmé", "confirmée", "risque", "risques", "score", "improbable", "probable", "probablement", "probabilité", "pour cent", "pas de fracture",
        "amélioré", "améliorée", "rare", "doit", "interdit", "obligatoire", "recommandé", "tout va bien"}}};
  return words;
}

std::vector<std::string> not_earned_in(const std::string& language, const std::string& message) {
  std::vector<std::string> found;
  const std::string text = lower(message);
  for (const std::string& word : words_not_earned().at(language)) {
    for (const std::size_t at : report_test::places_of(text, word)) {
      // A byte of an accented letter is no end of a word.
      const bool joined = (at > 0 && (static_cast<unsigned char>(text[at - 1]) & 0x80U) != 0) ||
                          (at + word.size() < text.size() && (static_cast<unsigned char>(text[at + word.size()]) & 0x80U) != 0 &&
                           text.compare(at + word.size(), 2, "\u00bb") != 0);
      if (!joined) {
        found.push_back(word);
      }
    }
  }
  if (text.find('%') != std::string::npos) {
    found.emplace_back("%");
  }
  return found;
}

std::map<std::string, std::string> messages_of(const std::string& language) {
  std::map<std::string, std::string> messages;
  const std::filesystem::path folder = std::filesystem::path(LIMBLEDGER_SOURCE_DIR) / "core/report/words";
  for (const auto& file : std::filesystem::recursive_directory_iterator(folder)) {
    const std::string name = std::filesystem::relative(file.path(), folder).generic_string();
    if (file.path().extension() == ".ftl" && (name.starts_with(language + ".") || name.starts_with(language + "_"))) {
      std::ifstream in(file.path());
      for (std::string line; std::getline(in, line);) {
        if (const auto equals = line.find(" = "); line.starts_with("msg-") && equals != std::string::npos) {
          messages[line.substr(0, equals)] = line.substr(equals + 3);
        }
      }
    }
  }
  return messages;
}

std::set<std::string> variables_of(const std::string& text) {
  std::set<std::string> names;
  for (auto at = text.find("{ $"); at != std::string::npos; at = text.find("{ $", at + 1)) {
    names.insert(text.substr(at, text.find('}', at) - at));
  }
  return names;
}

}  // namespace

TEST_CASE("no label in Spanish or French says what a finding does not earn") {
  for (const std::string language : {"es", "fr"}) {
    const auto messages = messages_of(language);
    CHECK(messages.size() > 400);
    for (const auto& message : messages) {
      for (const std::string& word : not_earned_in(language, message.second)) {
        FAIL_CHECK(message.first << ": " << word);
      }
    }
  }
  CHECK(not_earned_in("es", "Rodilla normal, fractura descartada").size() == 2);
  CHECK(not_earned_in("fr", "Genou normal, fracture écartée, 30 %").size() == 3);
  CHECK(not_earned_in("fr", "Ce qui écarte la règle").empty());
}

TEST_CASE("each label in Spanish or French stands for an English message with the same variables") {
  const auto english = messages_of("en");
  for (const std::string language : {"es", "fr"}) {
    for (const auto& message : messages_of(language)) {
      // No structured binding: clang 14 captures none in the lambda of a check.
      const std::string& name = message.first;
      const std::string& text = message.second;
      if (name == "msg-language-code") {
        continue;
      }
      const auto at = english.find(name);
      CHECK_MESSAGE(at != english.end(), name);
      if (at != english.end()) {
        CHECK_MESSAGE(variables_of(text) == variables_of(at->second), name);
      }
    }
  }
}

TEST_CASE("the forms of the five first complaints are in Spanish and French but for a few new labels, which fall back; sides and reasons all are") {
  REQUIRE(reference::built_in_edition() != nullptr);
  const reference::Edition& edition = *reference::built_in_edition();
  for (const std::string language : {"es", "fr"}) {
    const report::Words* words = report::words_in_language(language);
    REQUIRE(words != nullptr);
    std::set<std::string> names;
    for (const char* complaint : {"acute_knee", "ankle_injury", "hip_after_fall", "chronic_knee", "limping_child"}) {
      names.insert("msg.complaint." + std::string(complaint));
      for (const model::SequenceStep& step : edition.sequence({complaint})->steps) {
        const model::Item& item = *edition.item(step.item);
        names.insert(item.text.short_.text);
        names.insert("msg.position_heading." + step.position.text);
        for (const model::ChoiceId& choice : item.choices.value_or(std::vector<model::ChoiceId>{})) {
          names.insert("msg.choice." + choice.text);
        }
        if (item.scale) {
          for (const model::ScaleGrade& grade : edition.scale(*item.scale)->grades) {
            names.insert(grade.means.text);
          }
        }
      }
    }
    std::string missing;
    std::size_t said = 0;
    for (const std::string& name : names) {
      const bool here = words->says_itself(name);
      said += here ? 1U : 0U;
      missing += here ? "" : " " + name;
    }
    CAPTURE(language);
    CAPTURE(missing);
    constexpr std::size_t of_twenty = 19;  // ours: an edition gains items faster than translators
    CHECK(said * 20 >= names.size() * of_twenty);
    const auto needs = [&](const std::string& name) { CHECK_MESSAGE(words->says_itself(name), name); };
    for (const char* side : {"left", "right", "midline"}) {
      needs("msg.side." + std::string(side));
    }
    for (const std::string_view why : wire::type_of<model::WhyNot>().words) {
      needs("msg.why." + std::string(why));
    }
    CHECK(words->say("msg.side.left") != report::built_in_words()->say("msg.side.left"));
    CHECK(lower(words->say("msg.side.left")) != words->say("msg.side.left"));
  }
}

TEST_CASE("a free visit holds any item: labels, choices and grades of the whole catalogue are in Spanish and French, marked as reviewed by nobody") {
  REQUIRE(reference::built_in_edition() != nullptr);
  const reference::Edition& edition = *reference::built_in_edition();
  for (const std::string language : {"es", "fr"}) {
    const report::Words* words = report::words_in_language(language);
    REQUIRE(words != nullptr);
    std::set<std::string> names;
    for (const model::Item& item : edition.items()) {
      names.insert(item.text.short_.text);
      for (const model::ChoiceId& choice : item.choices.value_or(std::vector<model::ChoiceId>{})) {
        names.insert("msg.choice." + choice.text);
      }
      if (item.scale) {
        for (const model::ScaleGrade& grade : edition.scale(*item.scale)->grades) {
          names.insert(grade.means.text);
        }
      }
    }
    std::string missing;
    std::size_t said = 0;
    for (const std::string& name : names) {
      const bool here = words->says_itself(name);
      said += here ? 1U : 0U;
      missing += here ? "" : " " + name;
    }
    CAPTURE(language);
    CAPTURE(missing);
    CHECK(names.size() > 1000);
    constexpr std::size_t of_fifty = 49;  // ours: an edition gains items faster than translators
    CHECK(said * 50 >= names.size() * of_fifty);
    std::size_t files = 0;
    const std::filesystem::path folder = std::filesystem::path(LIMBLEDGER_SOURCE_DIR) / "core/report/words" / (language + "_items");
    for (const auto& file : std::filesystem::directory_iterator(folder)) {
      std::ifstream in(file.path());
      std::string first;
      std::getline(in, first);
      CHECK_MESSAGE(first.find("Reviewed by: nobody yet.") != std::string::npos, file.path().filename().string());
      ++files;
    }
    CHECK(files > 5);
  }
}

TEST_CASE("what is not translated is said in English with its mark, and an unknown language is none") {
  const report::Words* spanish = report::words_in_language("es");
  REQUIRE(spanish != nullptr);
  CHECK(!spanish->says_itself("msg.page.decision_support"));
  CHECK(spanish->say("msg.page.decision_support").ends_with(" (en)"));
  CHECK(spanish->language() == "es");
  CHECK(report::words_in_language("en") == report::built_in_words());
  CHECK(report::words_in_language("xx") == nullptr);
}

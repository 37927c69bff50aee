// The loader's checks of techniques, alternatives, how a grade counts, bands, sequences and concerns: each fires on one planted
// bad row of the invented edition. What the words of the built-in edition hold is checked against the catalogue itself.
#include "tests/unit/reference/planted.hpp"

#include "core/report/words/words.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace limbledger;

TEST_CASE("each check of techniques, alternatives and counting fires on one planted bad row") {
  const auto items = &InventedTexts::items;
  const auto scales = &InventedTexts::scales;
  const Planted planted[] = {
      {items, R"("positive":"msg.item.knee_mcmurray.positive",)", "", "params.missing", "/items/14/text/positive"},
      {items, R"(,"errors":"msg.item.knee_mcmurray.errors")", "", "params.missing", "/items/14/text/errors"},
      {items, R"("positive":"msg.item.knee_lachman.positive",)", "", "params.missing", "/items/12/text/positive"},
      {items, R"(,"care":"msg.item.knee_flexion_passive.care")", "", "params.missing", "/items/1/text/care"},
      {items, R"("concern.invented")", R"("concern.unlisted")", "params.unknown_word", "/items/1/withheld_by"},
      {items, R"("positions":["supine","prone"])", R"("positions":["supine","floating"])", "value.position", "/items/0/positions"},
      {items, R"("item":"knee.lachman_prone","measured")", R"("item":"knee.lachman","measured")", "item.unknown", "/items/12/instead/0/item"},
      {items, R"("item":"knee.lachman_prone","measured")", R"("item":"history.own_words","measured")", "item.side", "/items/12/instead/0/item"},
      {items, R"("when":"heavy_thigh")", R"("when":"heavy_mood")", "params.unknown_word", "/items/12/instead/0/when"},
      {items, R"("over":500,)", "", "value.all_or_one", "/items/12/instead/0/measured"},
      {items, R"("over":500,)", R"("over":500,"under":400,)", "value.all_or_one", "/items/12/instead/0/measured"},
      {items, R"("over":500,)", R"("over":5000,)", "value.out_of_range", "/items/12/instead/0/measured"},
      {items, R"("measured":"leg.invented_girth")", R"("measured":"history.own_words")", "item.unknown", "/items/12/instead/0/measured"},
      {items, R"(,"source":"INVENTED2"})", "}", "params.missing", "/items/12/instead/0/source"},
      {items, R"(,"source":"INVENTED2"})", R"(,"source":"UNLISTED"})", "params.unknown_word", "/items/12/instead/0/source"},
      {items, R"({"as":"positive","end_feels":["soft"]})", R"({"as":"positive"})", "params.missing", "/items/12/counts/0"},
      {items, R"({"as":"positive","end_feels":["soft"]})", R"({"as":"positive","end_feels":["empty"]})", "params.unknown_word",
       "/items/12/counts/0/end_feels"},
      {items, R"({"as":"negative","grades":["0"]})", R"({"as":"negative","grades":["9"]})", "params.unknown_word", "/items/12/counts/3/grades"},
      {items, R"(,{"as":"negative","grades":["0"]})", "", "params.missing", "/items/12/counts"},
      {items, R"("value":"answer",)", R"("value":"answer","counts":[{"as":"positive","grades":["1"]}],)", "item.not_applicable", "/items/15/counts"},
      {scales, R"("takes_mm":true,)", "", "item.not_applicable", "/scales/0/grades"},
      {scales, R"("mm_low":5,)", R"("mm_low":6,)", "value.disagrees", "/scales/0/grades/1/mm_low"},
      {scales, R"("mm_low":5,)", R"("mm_low":30,)", "value.out_of_range", "/scales/0/grades/1/mm_low"},
      {scales, R"("mm_low":5,)", "", "params.missing", "/scales/0/grades/1/mm_low"},
      {scales, R"(,"mm_high":20)", "", "params.missing", "/scales/0/grades/1/mm_high"},
  };
  for (const Planted& one : planted) {
    check_planted(one);
  }
}

TEST_CASE("each check of sequences and concerns fires on one planted bad row") {
  const auto sequences = &InventedTexts::sequences;
  const auto concerns = &InventedTexts::concerns;
  const Planted planted[] = {
      {sequences, R"("knee.mcmurray")", R"("knee.mcmurry")", "item.unknown", "/sequences/0/steps/1/item"},
      {sequences, R"("knee.flexion_passive","position":"supine")", R"("knee.flexion_passive","position":"walking")", "value.position",
       "/sequences/0/steps/0/position"},
      {sequences, R"("history.fever","position":"supine")", R"("history.fever","position":"floating")", "value.position",
       "/sequences/0/steps/2/position"},
      {sequences, R"("knee.mcmurray")", R"("knee.flexion_passive")", "json.duplicate_member", "/sequences/0/steps/1/item"},
      {sequences, R"("minimum_under":16)", R"("minimum":true,"minimum_under":16)", "value.all_or_one", "/sequences/0/steps/5/minimum_under"},
      {sequences, R"("minimum_under":16)", R"("minimum_under":16,"until_months":3)", "value.disagrees", "/sequences/0/steps/5/until_months"},
      {sequences, R"("late":true)", R"("minimum":true,"late":true)", "value.disagrees", "/sequences/0/steps/6/late"},
      {sequences, R"(,"msg.not_to_miss.invented_3")", "", "value.out_of_range", "/sequences/0/not_to_miss"},
      {sequences, R"("history.fever","position":"supine")", R"("history.fever","position":"standing")", "value.disagrees", "/sequences/0/steps"},
      {sequences, "invented_complaint", "free", "value.disagrees", "/sequences/0/steps"},
      {sequences, R"(["INVENTED1"])", R"(["UNLISTED"])", "params.unknown_word", "/sequences/0/sources/0"},
      {concerns, "concern.invented", "worry.invented", "value.disagrees", "/concerns/0/concern"},
      {concerns, "concern.invented", "concern.other", "params.missing", "/concerns/0/concern"},
      {concerns, "general.concern_invented", "general.concern_unlisted", "item.unknown", "/concerns/0/answered_by"},
      {concerns, "general.concern_invented", "history.own_words", "item.unknown", "/concerns/0/answered_by"},
      {concerns, R"("film_opens":"invented_seen")", R"("film_opens":"green")", "params.unknown_word", "/concerns/0/film_opens"},
      {concerns, R"("film_lifts":"invented_not_seen")", R"("film_lifts":"blue")", "params.unknown_word", "/concerns/0/film_lifts"},
      {concerns, R"("film_opens":"invented_seen",)", "", "params.missing", "/concerns/0/film_opens"},
      {concerns, R"(["INVENTED1"])", R"([])", "params.missing", "/concerns/0/sources"},
  };
  for (const Planted& one : planted) {
    check_planted(one);
  }
  // A sequence for a complaint without a minimum set.
  InventedTexts texts = invented_texts();
  for (std::size_t at = texts.sequences.find(R"(,"minimum":true)"); at != std::string::npos; at = texts.sequences.find(R"(,"minimum":true)")) {
    texts.sequences.erase(at, std::string(R"(,"minimum":true)").size());
  }
  CHECK(fires(texts, "params.missing", "/sequences/0/steps"));
}

TEST_CASE("every message that the catalogue names has words, and every word of an item has an item") {
  const reference::Edition* edition = reference::built_in_edition();
  const report::Words* words = report::built_in_words();
  REQUIRE(edition != nullptr);
  REQUIRE(words != nullptr);
  std::size_t said = 0;
  const auto check = [&](const model::MessageId& message) { CHECK_MESSAGE(words->has(message.text), message.text); };
  for (const model::Item& item : edition->items()) {
    check(item.text.short_);
    check(item.text.how);
    said += 2;
    const auto& text = item.text;
    for (const auto& message : {text.purpose, text.positive, text.care, text.errors, text.otherwise, text.yes, text.no}) {
      if (message) {
        check(*message);
        ++said;
      }
    }
    for (const model::ChoiceId& choice : item.choices.value_or(std::vector<model::ChoiceId>{})) {
      check(model::MessageId{"msg.choice." + choice.text});
    }
  }
  for (const model::Scale& scale : edition->scales()) {
    check(scale.title);
    for (const model::ScaleGrade& grade : scale.grades) {
      check(grade.means);
    }
  }
  for (const model::Sequence& sequence : edition->sequences()) {
    for (const model::MessageId& message : sequence.not_to_miss.value_or(std::vector<model::MessageId>{})) {
      check(message);
    }
  }
  for (const model::Concern& concern : edition->concerns()) {
    check(concern.title);
    check(concern.until);
  }
  const auto names = words->names();
  const auto of_items = std::count_if(names.begin(), names.end(), [](const std::string& name) { return name.starts_with("msg-item-"); });
  CHECK(static_cast<std::size_t>(of_items) == said);
}

TEST_CASE("a label is short and a technique says more than the label") {
  const report::Words* words = report::built_in_words();
  REQUIRE(words != nullptr);
  for (const model::Item& item : reference::built_in_edition()->items()) {
    const std::string label = words->say(item.text.short_.text);
    CHECK_MESSAGE(label.size() <= 60, label);
    CHECK_MESSAGE(words->say(item.text.how.text) != label, item.item.text);
  }
}

TEST_CASE("each check of alerts fires on one planted bad row") {
  const auto alerts = &InventedTexts::alerts;
  const Planted planted[] = {
      {alerts, R"("alert.invented")", R"("invented")", "value.disagrees", "/alerts/0/alert"},
      {alerts, R"(["msg.meanwhile.invented"])", R"([])", "value.out_of_range", "/alerts/0/meanwhile"},
      {alerts, R"(["msg.meanwhile.invented"])", R"(["msg.a","msg.b","msg.c","msg.d"])", "value.out_of_range", "/alerts/0/meanwhile"},
      {alerts, R"("knee.squat")", R"("knee.squatt")", "item.unknown", "/alerts/0/stop/0"},
      {alerts, R"("history.fever")", R"("knee.squat")", "item.unknown", "/alerts/0/tell_staff/0"},
      {alerts, R"("concern.invented")", R"("concern.unlisted")", "params.unknown_word", "/alerts/0/opens/0"},
      {alerts, R"("invented_complaint")", R"("no_complaint")", "params.unknown_word", "/alerts/0/asked_in/0"},
      {alerts, R"("INVENTED1")", R"("UNLISTED")", "params.unknown_word", "/alerts/0/sources/0"},
  };
  for (const Planted& one : planted) {
    check_planted(one);
  }
}

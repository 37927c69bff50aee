#include "core/reference/evidence/load.hpp"

#include "core/wire/parse.hpp"

#include <algorithm>
#include <array>
#include <set>
#include <string>

namespace limbledger::reference {

namespace {

struct EvidenceLine {
  std::string path;
  std::string name;
  Faults& faults;

  void need(bool holds, std::string_view code, std::string_view member, std::string_view must) const {
    if (!holds) {
      faults.emplace_back(code, path + std::string(member), name + ": " + std::string(must));
    }
  }
};

[[nodiscard]] EvidenceLine line_at(std::string_view list, std::size_t at, std::string name, Faults& faults) {
  return {"/" + std::string(list) + wire::pointer_step(at), std::move(name), faults};
}

void named_once(std::set<std::string>& seen, const EvidenceLine& line, std::string_view member, const std::string& name) {
  line.need(seen.insert(name).second, "json.duplicate_member", member, "a name stands once: " + name);
}

struct Band {
  double low = 0;
  double high = 0;
};

// What a printed figure may have been before it was rounded: two decimals at least, one for ratios.
[[nodiscard]] Band before_rounding(const Measure& figure, int decimals_least) {
  int decimals = 4;
  for (std::int64_t rest = figure.steps; decimals > decimals_least && rest % 10 == 0; rest /= 10) {
    --decimals;
  }
  double half = 0.5;
  for (int i = 0; i < decimals; ++i) {
    half /= 10;
  }
  return {figure.real() - half, figure.real() + half};
}

[[nodiscard]] bool follows(const Measure& ratio, double low, double high) {
  const Band printed = before_rounding(ratio, 1);
  return printed.high >= low - 1e-9 && printed.low <= high + 1e-9;
}

// True where a printed ratio can come from the printed sensitivity and specificity, each rounded as it was.
[[nodiscard]] bool ratios_follow(const AccuracyRow& row) {
  if (!row.sens || !row.spec) {
    return true;
  }
  const Band sens = before_rounding(*row.sens, 2);
  const Band spec = before_rounding(*row.spec, 2);
  const double least = 1e-9;
  const bool positive = !row.lr_pos || follows(*row.lr_pos, sens.low / (1 - spec.low), sens.high / std::max(1 - spec.high, least));
  const bool negative = !row.lr_neg || follows(*row.lr_neg, (1 - sens.high) / spec.high, (1 - sens.low) / std::max(spec.low, least));
  return positive && negative;
}

void check_interval(const EvidenceLine& line, std::string_view member, const std::optional<Measure>& value, const std::optional<Measure>& low,
                    const std::optional<Measure>& high, bool share) {
  line.need(low.has_value() == high.has_value(), "params.missing", std::string(member) + "_low", "both ends of an interval, or none");
  line.need(!low || value, "params.missing", member, "the figure that the interval is of");
  line.need(!(value && low && high) || (low->steps <= value->steps && value->steps <= high->steps), "value.out_of_range",
            std::string(member) + "_low", "low, figure, high in this order");
  line.need(!share || !value || value->steps <= 10000, "value.out_of_range", member, "a share of one");
  line.need(!share || !high || high->steps <= 10000, "value.out_of_range", std::string(member) + "_high", "a share of one");
  line.need(share || !value || value->steps > 0, "value.out_of_range", member, "more than 0");
  line.need(share || !low || low->steps > 0, "value.out_of_range", std::string(member) + "_low", "more than 0: a printed 0.0 is a rounding");
}

// Rounded, or cut off: 23 of 26 is printed as 88.4 per cent.
[[nodiscard]] bool rounds_to(std::int64_t part, std::int64_t whole, const Measure& printed) {
  if (whole <= 0) {
    return false;
  }
  const Band band = before_rounding(printed, 2);
  const double share = static_cast<double>(part) / static_cast<double>(whole);
  const double cut = band.high - band.low;
  return band.low - 1e-9 <= share && share <= band.low + 1.5 * cut + 1e-9;
}

void check_accuracy(const Evidence& evidence, const Facts& facts, Faults& faults) {
  std::set<std::string> names;
  std::set<std::string> defaults;
  for (std::size_t i = 0; i < evidence.accuracy.size(); ++i) {
    const AccuracyRow& row = evidence.accuracy[i];
    const EvidenceLine line = line_at("accuracy", i, row.row.text, faults);
    named_once(names, line, "/row", row.row.text);
    line.need(row.row.text.starts_with("accuracy.") && row.row.text.ends_with("." + row.source.text), "value.disagrees", "/row",
              "accuracy, condition, test and source");
    const EvidenceCondition* condition = evidence.condition_of(row.about);
    line.need(condition != nullptr, "params.unknown_word", "/about", "a text that conditions.json maps");
    for (std::size_t at = 0; at < row.items.size(); ++at) {
      line.need(facts.item(row.items[at]) != nullptr, "item.unknown", "/items" + wire::pointer_step(at), "an item of the catalogue");
    }
    check_interval(line, "/sens", row.sens, row.sens_low, row.sens_high, true);
    check_interval(line, "/spec", row.spec, row.spec_low, row.spec_high, true);
    check_interval(line, "/lr_pos", row.lr_pos, row.lr_pos_low, row.lr_pos_high, false);
    check_interval(line, "/lr_neg", row.lr_neg, row.lr_neg_low, row.lr_neg_high, false);
    line.need(ratios_follow(row) || row.ratio_note, "value.disagrees", "/lr_pos",
              "a ratio that follows from sensitivity and specificity, or ratio_note with the reason");
    line.need(!row.lr_pos || row.lr_pos->steps >= 9000 || row.ratio_note, "value.out_of_range", "/lr_pos",
              "a ratio for a positive result; is it the negative one?");
    if (row.counts) {
      const std::int64_t present = row.counts->tp.steps + row.counts->fn.steps;
      const std::int64_t absent = row.counts->fp.steps + row.counts->tn.steps;
      line.need(!row.sens || rounds_to(row.counts->tp.steps, present, *row.sens), "value.disagrees", "/counts", "counts that give the sensitivity");
      line.need(!row.spec || rounds_to(row.counts->tn.steps, absent, *row.spec), "value.disagrees", "/counts", "counts that give the specificity");
    }
    const bool at_the_end =
        (row.sens && (row.sens->steps == 0 || row.sens->steps == 10000)) || (row.spec && (row.spec->steps == 0 || row.spec->steps == 10000));
    // What can never compute points a direction without them.
    const bool points_only = row.design == Design::case_control || row.confidence == Confidence::d || row.confidence == Confidence::low ||
                             !row.sens || !row.spec;
    line.need(!(row.default_for && at_the_end && !points_only) || row.counts, "params.missing", "/counts",
              "the four counts, where sensitivity or specificity is 0 or 1");
    line.need(row.days_low.has_value() == row.days_high.has_value(), "params.missing", "/days_low", "both ends of the days, or none");
    line.need(!row.days_low || !row.days_high || row.days_low->steps <= row.days_high->steps, "value.out_of_range", "/days_low", "low, then high");
    line.need(!row.age_high || row.age_low.steps <= row.age_high->steps, "value.out_of_range", "/age_low", "low, then high");
    line.need(row.status == model::Status::read || row.confidence == Confidence::d || row.confidence == Confidence::low, "value.disagrees",
              "/confidence", "d or low for what was not read");
    line.need(facts.has_source(row.source), "params.unknown_word", "/source", "a source of the list");
    line.need(!row.seen.text.empty(), "value.empty", "/seen", "where each figure was seen");
    if (!row.default_for || condition == nullptr) {
      continue;
    }
    const GroupMember* member = nullptr;
    const ConditionGroups* groups = evidence.groups_of(condition->condition);
    for (const EvidenceGroup& group : groups != nullptr ? groups->groups : std::vector<EvidenceGroup>{}) {
      for (const GroupMember& one : group.members) {
        if (one.test == row.test) {
          member = &one;
          std::vector<model::ItemId> parts;
          for (const TestPart& part : one.parts) {
            parts.push_back(part.item);
          }
          line.need(parts == row.items, "value.disagrees", "/items", "the items of the test's parts in groups.json");
        }
      }
    }
    line.need(member != nullptr, "params.unknown_word", "/test", "a default belongs to a test of the condition's groups");
    const bool both = *row.default_for == DefaultFor::any;
    for (const char* phase : {"acute", "chronic"}) {
      if (both || (*row.default_for == DefaultFor::acute) == (std::string_view(phase) == "acute")) {
        line.need(defaults.insert(condition->condition.text + " " + row.test.text + " " + phase).second, "value.disagrees", "/default_for",
                  "one default for a condition, a test and a phase");
      }
    }
  }
}

void check_pretest(const Evidence& evidence, const Facts& facts, Faults& faults) {
  std::set<std::string> names;
  for (std::size_t i = 0; i < evidence.pretest.size(); ++i) {
    const PretestRow& row = evidence.pretest[i];
    const EvidenceLine line = line_at("pretest", i, row.row.text, faults);
    named_once(names, line, "/row", row.row.text);
    line.need(row.row.text.starts_with("pretest.") && row.row.text.ends_with("." + row.source.text), "value.disagrees", "/row",
              "pretest, condition, setting and source");
    line.need(evidence.condition_of(row.about) != nullptr, "params.unknown_word", "/about", "a text that conditions.json maps");
    const bool known =
        std::any_of(evidence.settings.begin(), evidence.settings.end(), [&](const SettingRow& one) { return one.text == row.setting; });
    line.need(known, "params.unknown_word", "/setting", "a setting that settings.json maps or names");
    line.need(0 < row.low.steps && row.low.steps <= row.best.steps && row.best.steps <= row.high.steps && row.high.steps < 10000,
              "value.out_of_range", "/low", "low, best, high in this order, inside 0 and 1");
    for (const model::ConcernId& concern : row.without.value_or(std::vector<model::ConcernId>{})) {
      line.need(facts.has_concern(concern), "params.unknown_word", "/without", "a concern of the edition");
    }
    line.need(row.positive.has_value() == row.people.has_value(), "params.missing", "/people", "how many of how many, or neither");
    line.need(!(row.positive && row.people) || rounds_to(row.positive->steps, row.people->steps, row.best), "value.disagrees", "/best",
              "the share that the counts give");
    line.need(!row.age_low || !row.age_high || row.age_low->steps <= row.age_high->steps, "value.out_of_range", "/age_low", "low, then high");
    line.need(row.default_ || row.because, "params.missing", "/because", "why it is no default");
    line.need(!row.default_ || row.status == model::Status::read, "value.disagrees", "/default", "no default that was not read");
    line.need(!row.default_ || !((row.queue && *row.queue) || (row.expert && *row.expert)), "value.disagrees", "/default",
              "no default from a queue for operations or an expert's opinion");
    line.need(!row.default_ || evidence.setting_of(row.setting).has_value(), "value.disagrees", "/default",
              "no default from a setting that no exam has");
    line.need(facts.has_source(row.source), "params.unknown_word", "/source", "a source of the list");
    line.need(!row.seen.text.empty(), "value.empty", "/seen", "where the figure was seen");
  }
}

void check_conditions(const Evidence& evidence, const Facts& facts, Faults& faults) {
  std::set<std::string> names;
  std::set<std::string> texts;
  for (std::size_t i = 0; i < evidence.conditions.size(); ++i) {
    const EvidenceCondition& one = evidence.conditions[i];
    const EvidenceLine line = line_at("conditions", i, one.condition.text, faults);
    named_once(names, line, "/condition", one.condition.text);
    line.need(one.condition.text.starts_with("condition."), "params.unknown_word", "/condition", "condition. and a name");
    for (const wire::Name& text : one.texts) {
      named_once(texts, line, "/texts", text.text);
    }
    line.need(one.computes == one.danger.has_value(), "params.missing", "/danger", "its place in the order of danger, where it computes");
    line.need(one.computes != one.because.has_value(), "params.missing", "/because", "why it is described only, where it does not compute");
    line.need(!one.computes || evidence.groups_of(one.condition) != nullptr, "params.missing", "/computes", "its groups in groups.json");
    line.need(one.computes == (one.parts && !one.parts->empty()), "params.missing", "/parts", "the parts where it is judged, where it computes");
    for (const model::Word& part : one.parts.value_or(std::vector<model::Word>{})) {
      const bool region = std::any_of(facts.items.begin(), facts.items.end(), [&](const model::Item& item) { return item.region.text == part.text; });
      line.need(region, "params.unknown_word", "/parts", "a region of the catalogue");
    }
    for (const model::Word& why : one.not_beside.value_or(std::vector<model::Word>{})) {
      const bool complaint =
          std::any_of(facts.sequences.begin(), facts.sequences.end(), [&](const model::Sequence& known) { return known.complaint == why; });
      line.need(complaint, "params.unknown_word", "/not_beside", "a complaint that has a sequence");
    }
  }
  std::set<std::string> settings;
  for (std::size_t i = 0; i < evidence.settings.size(); ++i) {
    const SettingRow& one = evidence.settings[i];
    const EvidenceLine line = line_at("settings", i, one.text.text, faults);
    named_once(settings, line, "/text", one.text.text);
    line.need(one.setting.has_value() != one.because.has_value(), "params.missing", "/setting", "a setting, or why there is none");
  }
}

[[nodiscard]] bool word_fits(const model::Item& item, const TestPart& part, const model::Word& word) {
  if (item.choices && !part.of) {
    return std::any_of(item.choices->begin(), item.choices->end(), [&](const model::ChoiceId& choice) { return choice.text == word.text; });
  }
  return word.text == "positive" || word.text == "negative";
}

void check_part(const EvidenceLine& line, const TestPart& part, const Facts& facts, const std::string& member) {
  const model::Item* item = facts.item(part.item);
  line.need(item != nullptr, "item.unknown", member + "/item", "an item of the catalogue");
  if (item == nullptr) {
    return;
  }
  using model::ValueKind;
  const bool readable = item->value == ValueKind::test || item->value == ValueKind::answer || item->value == ValueKind::choice ||
                        (item->value == ValueKind::grade && item->counts);
  line.need(readable || part.of, "item.not_applicable", member + "/item", "a test, an answer, a choice, or a grade whose item says what counts");
  line.need(!part.yes.empty() || !part.no.empty(), "params.missing", member + "/yes", "what counts for, or what counts against");
  line.need(!part.side || item->sides.size() > 1, "item.side", member + "/side", "an item of either side");
  for (const model::Word& word : part.yes) {
    line.need(word_fits(*item, part, word), "params.unknown_word", member + "/yes", "positive or negative, or a choice of the item");
    line.need(std::find(part.no.begin(), part.no.end(), word) == part.no.end(), "value.disagrees", member + "/no", "for or against, not both");
  }
  for (const model::Word& word : part.no) {
    line.need(word_fits(*item, part, word), "params.unknown_word", member + "/no", "positive or negative, or a choice of the item");
  }
}

void check_groups(const Evidence& evidence, const Facts& facts, Faults& faults) {
  std::set<std::string> names;
  for (std::size_t i = 0; i < evidence.groups.size(); ++i) {
    const ConditionGroups& one = evidence.groups[i];
    const EvidenceLine line = line_at("groups", i, one.condition.text, faults);
    named_once(names, line, "/condition", one.condition.text);
    const EvidenceCondition* condition = evidence.condition(one.condition);
    line.need(condition != nullptr && condition->computes, "params.unknown_word", "/condition", "a condition that computes");
    std::set<std::string> groups;
    std::set<std::string> tests;
    for (std::size_t g = 0; g < one.groups.size(); ++g) {
      const std::string at = "/groups" + wire::pointer_step(g);
      named_once(groups, line, at + "/group", one.groups[g].group.text);
      for (std::size_t m = 0; m < one.groups[g].members.size(); ++m) {
        const GroupMember& member = one.groups[g].members[m];
        const std::string where = at + "/members" + wire::pointer_step(m);
        named_once(tests, line, where + "/test", member.test.text);
        line.need(member.at_least.steps <= static_cast<std::int64_t>(member.parts.size()), "value.out_of_range", where + "/at_least",
                  "no more than there are parts");
        line.need(!member.negative_at_most || member.negative_at_most->steps < member.at_least.steps, "value.out_of_range",
                  where + "/negative_at_most", "less than at_least");
        const auto musts = std::count_if(member.parts.begin(), member.parts.end(), [](const TestPart& part) { return part.must.value_or(false); });
        line.need(musts == 0 || musts < member.at_least.steps, "value.out_of_range", where + "/parts", "fewer that must be than at_least");
        for (std::size_t p = 0; p < member.parts.size(); ++p) {
          check_part(line, member.parts[p], facts, where + "/parts" + wire::pointer_step(p));
        }
      }
    }
    for (std::size_t c = 0; c < one.confounders.size(); ++c) {
      const Confounder& confounder = one.confounders[c];
      const std::string at = "/confounders" + wire::pointer_step(c);
      for (const model::ItemId& item : confounder.items) {
        line.need(facts.item(item) != nullptr, "item.unknown", at + "/items", "an item of the catalogue");
      }
      const ConfounderWhen& when = confounder.when;
      const int ways = int{when.item.has_value()} + int{when.age_over.has_value()} + int{when.body.has_value()} + int{when.days_over.has_value()} +
                       int{when.days_under.has_value()} + int{when.side_open.has_value()};
      line.need(ways == 1, "value.all_or_one", at + "/when", "an item, an age, a body, days, or an open side");
      line.need(!when.item || facts.item(*when.item) != nullptr, "item.unknown", at + "/when/item", "an item of the catalogue");
      line.need(!when.item || when.words.has_value() != when.grades.has_value(), "value.all_or_one", at + "/when/words", "words, or grades");
      line.need(!when.side || when.item, "params.missing", at + "/when/item", "the item whose other side is meant");
      const bool state = when.body && std::any_of(facts.bodies.begin(), facts.bodies.end(), [&](const BodyRow& row) { return row.body == *when.body; });
      line.need(!when.body || state, "params.unknown_word", at + "/when/body", "a state of bodies.json");
    }
    for (const model::ItemId& item : one.swelling_items) {
      line.need(facts.item(item) != nullptr, "item.unknown", "/swelling_items", "an item of the catalogue");
    }
  }
}

}  // namespace

void check_evidence(const Evidence& evidence, const Facts& facts, Faults& faults) {
  check_conditions(evidence, facts, faults);
  check_groups(evidence, facts, faults);
  check_accuracy(evidence, facts, faults);
  check_pretest(evidence, facts, faults);
}

}  // namespace limbledger::reference

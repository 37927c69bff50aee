#include "core/interpret/contradict/named_side.hpp"

#include "core/interpret/knee/lines.hpp"
#include "core/interpret/params.hpp"

#include <algorithm>
#include <cstdlib>

namespace limbledger::interpret {

namespace {

using model::Side;

constexpr std::size_t signs_of_a_complaint = 2;       // as for the signs of the other knee (our convention)
constexpr std::int64_t angles_alike_tenths = 100;     // CONVENTION: a reading of two sides further apart speaks for either

enum class Speaks : std::uint8_t { nothing, ordinary, of_it, sign };

[[nodiscard]] bool is_ordinary(const model::Item& item, std::string_view word) {
  return item.ordinary && std::any_of(item.ordinary->begin(), item.ordinary->end(), [&](const auto& one) { return one.text == word; });
}

[[nodiscard]] bool hurts_here(const model::Finding& finding) { return finding.pain && finding.pain->score && finding.pain->score->steps > 0; }

// A grade that the catalogue counts as neither, or an angle, is read against the same of the other side.
[[nodiscard]] Speaks against_other(const View& view, const model::Item& item, const model::Finding& finding) {
  const Findings others = view.at(item, other_side(finding.side));
  const auto* angle = std::get_if<model::Angle>(&finding.value);
  const bool alike = std::all_of(others.begin(), others.end(), [&](const model::Finding* other) {
    const auto* there = std::get_if<model::Angle>(&other->value);
    if (angle != nullptr && there != nullptr && angle->deg && there->deg) {
      return std::abs(angle->deg->steps - there->deg->steps) <= angles_alike_tenths;
    }
    return other->value == finding.value;
  });
  return alike && !others.empty() ? Speaks::ordinary : (others.empty() ? Speaks::nothing : Speaks::of_it);
}

// What one finding says of its side: out of the ordinary, as usual, or something that speaks of it without being seen.
[[nodiscard]] Speaks speaks(const View& view, const model::Item& item, const model::Finding& finding) {
  if (std::holds_alternative<model::NotDone>(finding.value)) {
    const model::WhyNot why = std::get<model::NotDone>(finding.value).reason;
    const bool of_it = why == model::WhyNot::pain || why == model::WhyNot::blocked || why == model::WhyNot::unable || why == model::WhyNot::not_palpable;
    return of_it ? Speaks::of_it : Speaks::nothing;
  }
  if (hurts_here(finding)) {
    return Speaks::sign;
  }
  if (const auto* answer = std::get_if<model::Answer>(&finding.value)) {
    const bool yes = answer->answer == model::AnswerWord::yes;
    const bool both = is_ordinary(item, "yes") && is_ordinary(item, "no");
    if (answer->answer == model::AnswerWord::unsure || both) {
      return Speaks::nothing;
    }
    return yes != is_ordinary(item, "yes") ? Speaks::sign : Speaks::ordinary;
  }
  if (const auto* choice = std::get_if<model::Choice>(&finding.value)) {
    return !item.ordinary ? Speaks::nothing : (is_ordinary(item, choice->choice.text) ? Speaks::ordinary : Speaks::sign);
  }
  if (const auto* choices = std::get_if<model::Choices>(&finding.value)) {
    const bool usual = std::all_of(choices->choices.begin(), choices->choices.end(), [&](const model::ChoiceId& one) { return is_ordinary(item, one.text); });
    return !item.ordinary ? Speaks::nothing : (usual ? Speaks::ordinary : Speaks::sign);
  }
  const auto* grade = std::get_if<model::Grade>(&finding.value);
  if (const model::Scale* scale = grade != nullptr ? view.edition().scale(grade->scale) : nullptr; scale != nullptr && scale->ordinary) {
    const bool usual = std::find(scale->ordinary->begin(), scale->ordinary->end(), grade->grade) != scale->ordinary->end();
    return usual ? Speaks::ordinary : Speaks::sign;
  }
  const Found found = found_at(view, item.item.text, finding.side);
  if (found.result) {
    return found.is(model::TestResult::positive) ? Speaks::sign : (found.is(model::TestResult::negative) ? Speaks::ordinary : Speaks::nothing);
  }
  return against_other(view, item, finding);
}

struct OfSide {
  std::vector<const model::Finding*> signs;
  bool spoken_of = false;  // told of, or stopped by pain: nobody can say that nothing is there
  bool looked_at = false;
};

[[nodiscard]] OfSide of_side(const View& view, Side side) {
  OfSide out;
  for (const model::Finding* finding : view.findings()) {
    const model::Item* item = finding->side == side && settles(*finding) ? view.edition().item(finding->item) : nullptr;
    // What a body is like, and what was put on the skin, is of no complaint.
    if (item == nullptr || item->region.text == "body" || item->protected_.value_or(false)) {
      continue;
    }
    const Speaks says = speaks(view, *item, *finding);
    const bool told = item->region.text == "history";
    if (says == Speaks::sign && !told) {
      out.signs.push_back(finding);
    }
    out.spoken_of = out.spoken_of || says == Speaks::of_it || (says == Speaks::sign && told);
    out.looked_at = out.looked_at || (!told && says != Speaks::nothing && says != Speaks::of_it);
  }
  return out;
}

// A danger that stands on this side and not on the other.
[[nodiscard]] std::vector<const JudgedFlag*> dangers_of(const std::vector<JudgedFlag>& flags, Side side) {
  std::vector<const JudgedFlag*> here;
  for (const JudgedFlag& one : flags) {
    const bool protects = one.row->protected_.value_or(false);
    if (!protects && one.side && stands_as_alert(one)) {
      if (*one.side == other_side(side)) {
        return {};
      }
      here.push_back(&one);
    }
  }
  return here;
}

// Found at this visit: not told, nor done before or elsewhere.
[[nodiscard]] bool found_today(const View& view, const model::Finding& finding) {
  const bool before = finding.despite && finding.despite->how != model::DespiteHow::knowingly;
  const model::Exam& exam = view.exam();
  const std::int64_t offset = exam.offset_min ? exam.offset_min->steps : 0;
  // By one clock, whether it is right or not.
  const bool another_day = finding.examined_at && exam.examined_at && !(model::date_of(*finding.examined_at, offset) == model::date_of(*exam.examined_at, offset));
  return !before && !another_day;
}

// Beside a danger of the other leg an impression or a plan of this one is explained by a sign that was found on it today, of the part
// that was complained of or of what the danger rests on; by no unequal angle, nor by what was told, nor by what is there for long.
[[nodiscard]] bool sign_explains(const View& view, const std::vector<const JudgedFlag*>& dangers, Side side) {
  const model::Sequence* sequence = view.edition().sequence(view.exam().complaint);
  const auto is_near = [&](const model::Item& item) {
    return (sequence != nullptr && sequence->part && *sequence->part == item.region) || std::any_of(dangers.begin(), dangers.end(), [&](const JudgedFlag* danger) {
             return danger->raised.clue.because.any([&](const model::Finding* one) {
               const model::Item* other = view.edition().item(one->item);
               return other != nullptr && other->region == item.region;
             });
           });
  };
  return std::any_of(view.findings().begin(), view.findings().end(), [&](const model::Finding* finding) {
    const model::Item* item = finding->side == side && settles(*finding) ? view.edition().item(finding->item) : nullptr;
    return item != nullptr && item->region.text != "history" && item->region.text != "body" && is_near(*item) && found_today(view, *finding) &&
           speaks(view, *item, *finding) == Speaks::sign;
  });
}

[[nodiscard]] Contradiction named(std::string_view name, Side side, const std::vector<const model::Finding*>& signs, std::string_view says = "") {
  Contradiction one;
  one.contradiction = {"contradiction." + std::string(name) + ":" + std::string(side_word(side))};
  one.side = side;
  one.message = {"msg.contradiction." + std::string(says.empty() ? name : says)};
  one.params = Params().raw();
  one.findings = ids_of(signs);
  return one;
}

}  // namespace

std::vector<Contradiction> named_side_contradictions(const View& view, const std::vector<JudgedFlag>& flags, bool complaint_asked) {
  std::vector<Contradiction> all;
  const model::Exam& exam = view.exam();
  const bool exchanged = exam.sides_exchanged && exam.sides_exchanged->size() % 2 == 1;
  for (const Side side : {Side::left, Side::right}) {
    const auto names = [&](const std::optional<Side>& one) { return one && *one == side; };
    const bool planned = exam.plan && std::any_of(exam.plan->begin(), exam.plan->end(), [&](const model::PlanItem& item) {
                           return names(item.side) && item.became != model::Became::declined;
                         });
    const bool thought = exam.impression && names(exam.impression->side);
    if (!names(exam.side) && !planned && !thought) {
      continue;
    }
    const OfSide there = of_side(view, other_side(side));
    const std::vector<const JudgedFlag*> dangers = thought || planned ? dangers_of(flags, other_side(side)) : std::vector<const JudgedFlag*>{};
    if (!dangers.empty() && !sign_explains(view, dangers, side)) {
      std::vector<const model::Finding*> rests_on;
      for (const JudgedFlag* danger : dangers) {
        const std::vector<const model::Finding*> because = danger->raised.clue.because.written();
        rests_on.insert(rests_on.end(), because.begin(), because.end());
      }
      if (thought) {
        all.push_back(named("impression_side", side, rests_on, "impression_beside_danger"));
      }
      if (planned) {
        all.push_back(named("plan_side", side, rests_on, "plan_beside_danger"));
      }
    }
    const OfSide here = there.signs.empty() ? OfSide{} : of_side(view, side);
    if (there.signs.empty() || !here.signs.empty() || here.spoken_of) {
      continue;
    }
    const bool asked = std::any_of(all.begin(), all.end(), [&](const Contradiction& one) { return one.side == side; });
    if (thought && !asked) {
      all.push_back(named("impression_side", side, there.signs));
    }
    if (planned && !asked) {
      all.push_back(named("plan_side", side, there.signs));
    }
    // Before anybody looked at the side complained of, the other one is only the one that was looked at first; unless left and right were
    // exchanged, which leaves the complaint as it was said.
    const bool thought_there = exam.impression && exam.impression->side && *exam.impression->side == other_side(side);
    const bool looked_at = here.looked_at && there.signs.size() >= signs_of_a_complaint;
    if (names(exam.side) && (exchanged || (!complaint_asked && (looked_at || thought_there)))) {
      all.push_back(named(exchanged ? "complaint_not_turned" : "complaint_and_findings", side, there.signs));
    }
  }
  return all;
}

}  // namespace limbledger::interpret

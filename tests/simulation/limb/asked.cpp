#include "tests/simulation/limb/asked.hpp"

#include "core/interpret/judged.hpp"

#include <algorithm>
#include <map>
#include <string>

namespace limbledger::limb_exams {

namespace {

using model::Side;

void add_once(std::vector<Place>& places, const Place& place) {
  if (place.item != nullptr && std::find(places.begin(), places.end(), place) == places.end()) {
    places.push_back(place);
  }
}

// A rule names what it lacks; answered, it may name more. Led so for some rounds, at ages that rules tell apart.
std::vector<Place> lead_rules(const model::Word& complaint) {
  std::vector<Place> places;
  for (const int born : {2018, 1996, 1955}) {
    Draw draw(static_cast<std::uint64_t>(born));
    Bench made(facts());
    made.exam.complaint = complaint;
    made.born(born, 3, 1);
    for (int round = 0; round < 6; ++round) {
      std::vector<Place> asked;
      {
        const interpret::View view(made.exam, made.person, *made.edition, made.ask().as_of);
        for (const auto& rule : interpret::run_rules(view)) {
          for (const auto& settle : rule.result.settle) {
            if (settle.item && settle.side) {
              add_once(asked, {facts().item(*settle.item), *settle.side});
            }
          }
        }
      }
      for (const Place& place : asked) {
        add_once(places, place);
        if (auto value = any_value(*place.item, draw, 1000)) {
          give(made, place, std::move(*value), draw, 1000);
        }
      }
    }
  }
  return places;
}

}  // namespace

const std::vector<Place>& asked_by_rules(const model::Word& complaint) {
  static std::map<std::string, std::vector<Place>> known;
  const auto at = known.find(complaint.text);
  return at != known.end() ? at->second : known.emplace(complaint.text, lead_rules(complaint)).first->second;
}

const std::vector<Place>& asked_by_evidence() {
  static const std::vector<Place> places = [] {
    std::vector<Place> found;
    for (const auto& condition : facts().evidence().groups) {
      for (const auto& group : condition.groups) {
        for (const auto& member : group.members) {
          for (const auto& part : member.parts) {
            const model::Item* item = facts().item(part.item);
            for (const Side side : item->sides) {
              add_once(found, {item, side});
            }
          }
        }
      }
    }
    return found;
  }();
  return places;
}

const std::vector<std::vector<Place>>& asked_by_dangers() {
  static const std::vector<std::vector<Place>> dangers = [] {
    std::map<std::string, std::vector<Place>> by_name;
    for (const model::Sequence& sequence : facts().sequences()) {
      for (const int born : {2026, 2016, 1990, 1945}) {
        Bench made(facts());
        made.exam.complaint = sequence.complaint;
        made.exam.side.reset();
        made.exam.findings->clear();
        made.born(born, 2, 1);
        // A reason of each side, so that both are looked at.
        const Place sided =
            *std::find_if(asked_by_evidence().begin(), asked_by_evidence().end(), [](const Place& one) { return one.side == Side::left; });
        made.not_done(sided.item->item.text, Side::left, model::WhyNot::no_time);
        made.not_done(sided.item->item.text, Side::right, model::WhyNot::no_time);
        const interpret::View view(made.exam, made.person, *made.edition, made.ask().as_of);
        for (const auto& judged : interpret::judge_flags(view)) {
          for (const auto& ask : judged.raised.clue.ask.written()) {
            add_once(by_name[std::string(judged.flag->alert)], {ask.item, ask.side});
          }
        }
      }
    }
    std::vector<std::vector<Place>> found;
    for (auto& [name, places] : by_name) {
      found.push_back(std::move(places));
    }
    return found;
  }();
  return dangers;
}

}  // namespace limbledger::limb_exams

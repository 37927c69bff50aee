#include "core/interpret/rules/input.hpp"

#include "core/wire/type.hpp"

#include <algorithm>
#include <array>
#include <optional>

namespace limbledger::interpret {

namespace {

constexpr std::uint8_t bit_no = 1;
constexpr std::uint8_t bit_yes = 2;

}  // namespace

bool badly_examined(const model::Finding& finding) {
  return finding.quality && std::any_of(finding.quality->begin(), finding.quality->end(), [](model::Quality quality) {
           return quality == model::Quality::guarded || quality == model::Quality::unsure_landmark || quality == model::Quality::poor_contact;
         });
}

Tri Heard::as_tri() const {
  if (!bits || *bits == (bit_no | bit_yes)) {
    return Tri::undetermined;
  }
  return tri(*bits == bit_yes);
}

std::string_view state_of(model::WhyNot reason) {
  switch (reason) {
    case model::WhyNot::declined:
      return "refused";
    case model::WhyNot::pain:
      return "unable_pain";
    case model::WhyNot::no_limb:
      return "unable_limb_absent";
    case model::WhyNot::baseline_unable:
    case model::WhyNot::not_reliable:
      return "not_reliable";
    default:
      return wire::type_of<model::WhyNot>().words[static_cast<std::size_t>(reason)];
  }
}

std::string_view unsettled_by(const model::Finding& finding) {
  if (settles(finding)) {
    return {};
  }
  if (of_damaged_record(finding)) {
    return mark_record_damaged;
  }
  switch (*finding.origin) {
    case model::Origin::bulk_expected:
      return "group_entry";
    case model::Origin::carried_over:
      return "carried_over";
    default:
      return "self_reported";
  }
}

namespace {

// A pulse "not done" because it could not be felt was felt for: every alert and rule hears grade 0.
[[nodiscard]] std::optional<model::Finding> as_absent_pulse(const model::Finding& finding) {
  constexpr std::array<std::string_view, 4> pulses{"vessel.pulse_dorsalis_pedis", "vessel.pulse_posterior_tibial", "vessel.pulse_popliteal", "vessel.pulse_femoral"};
  const auto* not_done = std::get_if<model::NotDone>(&finding.value);
  if (not_done == nullptr || not_done->reason != model::WhyNot::not_palpable || std::find(pulses.begin(), pulses.end(), finding.item.text) == pulses.end()) {
    return std::nullopt;
  }
  std::optional<model::Finding> graded(finding);
  graded->value = model::Grade{{"pulse/0-3"}, {"0"}, std::nullopt, std::nullopt, std::nullopt};
  return graded;
}

}  // namespace

Said says_answer(const model::Finding& finding) {
  const auto* answer = std::get_if<model::Answer>(&finding.value);
  if (answer == nullptr || answer->answer == model::AnswerWord::unsure) {
    return {std::nullopt, "unsure"};
  }
  if (answer->answer == model::AnswerWord::no && badly_examined(finding)) {
    return {std::nullopt, "not_reliable"};  // felt through guarding, or perhaps beside the bone: it does not count as a no
  }
  return {answer->answer == model::AnswerWord::yes ? bit_yes : bit_no, "known"};
}

Heard hear(Findings findings, std::uint8_t all_bits, const Says& says) {
  Heard heard;
  heard.findings = findings;
  std::optional<std::uint8_t> first;
  std::string_view reason;
  bool differ = false;
  bool conflict = false;
  bool open = false;
  for (const model::Finding* finding : findings) {
    Said said;
    const std::string_view why = unsettled_by(*finding);
    if (!why.empty()) {
      said.state = why;
    } else if (const auto graded = as_absent_pulse(*finding)) {
      said = says(*graded);
    } else if (const auto* not_done = std::get_if<model::NotDone>(&finding->value)) {
      said.state = state_of(not_done->reason);
    } else {
      said = says(*finding);
    }
    const bool in_conflict = finding->standing && *finding->standing == model::Standing::in_conflict;
    conflict = conflict || in_conflict;
    // What was examined and left open stays open beside another's answer; what was never examined opens nothing.
    open = open || (!said.bits && (in_conflict || why.empty()));
    if (!said.bits) {
      reason = reason.empty() ? said.state : reason;
    } else if (!first) {
      first = said.bits;
    } else {
      differ = differ || *first != *said.bits;
    }
  }
  if (first && !differ && !open) {
    heard.bits = first;
    heard.state = (*first & (*first - 1U)) == 0 ? "known" : "known_in_part";
  } else if (first) {
    // The values held apart: every class that any of them allows, and all where one of them is open.
    heard.state = conflict ? "in_conflict" : "examiners_disagree";
    heard.bits.reset();
  } else if (!reason.empty()) {
    heard.state = reason;
  }
  if (heard.bits && *heard.bits == all_bits && heard.state == "known_in_part") {
    heard.bits.reset();
    heard.state = "not_precise_enough";
  }
  return heard;
}

}  // namespace limbledger::interpret

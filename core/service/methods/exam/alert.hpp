// alert.handle: what was done about an alert, or why nothing was. There is no closing without either. step.suggest: at most one
// thing to examine next, and what is withheld now with its reason.
#pragma once

#include "core/service/methods/exam/common.hpp"
#include "core/interpret/statement.hpp"

namespace limbledger::service {

struct AlertHandleParams {
  model::ExamId exam;
  model::Word alert;
  std::optional<model::Side> side;
  std::optional<wire::Remark> action;
  std::optional<wire::Remark> reason;
  std::vector<model::EntryId> seen;
  model::RequestId request;
  std::optional<model::Word> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(AlertHandleParams, (), (exam, alert, side, action, reason, seen, request, language))
constexpr auto notes(const AlertHandleParams*) {
  return std::array{wire::Note{"seen", seen_note}, wire::Note{"action", "what was done; exactly one of action and reason"}, wire::Note{"reason", "why nothing was done"},
                    wire::Note{"language", sentences_note}};
}
struct AlertHandleResult {
  interpret::Alert alert;
  std::vector<model::EntryId> revision;
  std::optional<bool> repeat;
};
BOOST_DESCRIBE_STRUCT(AlertHandleResult, (), (alert, revision, repeat))
// Faults: alert.unknown (not raised in this exam), value.all_or_one, exam.withdrawn.
[[nodiscard]] Result<AlertHandleResult> alert_handle(Context& context, const AlertHandleParams& params);

struct StepSuggestParams {
  model::ExamId exam;
  std::optional<wire::Count<1, 240>> minutes;  // that are left
  std::optional<model::Word> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(StepSuggestParams, (), (exam, minutes, language))
constexpr auto notes(const StepSuggestParams*) { return std::array{wire::Note{"language", "en, es or fr: each step, what is withheld and message also in words, whole sentences in English"}}; }
struct WithheldNow {
  model::ItemId item;
  model::Side side{};
  model::Word by;          // concern.* or alert.*
  model::MessageId until;
  std::optional<wire::LongText> text = std::nullopt;  // which step, why not now and until when
};
BOOST_DESCRIBE_STRUCT(WithheldNow, (), (item, side, by, until, text))
struct StepSuggestResult {
  std::vector<interpret::Step> steps;            // one at most
  std::optional<model::MessageId> message;       // where there is none: further tests would not change what to do
  std::vector<WithheldNow> withheld;             // of the complaint's sequence
  std::optional<wire::LongText> text = std::nullopt;  // message in words
};
BOOST_DESCRIBE_STRUCT(StepSuggestResult, (), (steps, message, withheld, text))
[[nodiscard]] Result<StepSuggestResult> step_suggest(Context& context, const StepSuggestParams& params);

}  // namespace limbledger::service

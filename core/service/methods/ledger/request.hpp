// request.read: whether a request was recorded, for a client whose answer was lost. It says the same entries and revision
// as the first answer did. A kiosk learns of nothing but its own exam.
#pragma once

#include "core/service/context.hpp"
#include "core/wire/fault.hpp"
#include "core/wire/type.hpp"

#include <array>
#include <optional>
#include <vector>

namespace limbledger::service {

struct RequestReadParams {
  model::RequestId request;
  std::optional<FaultLanguage> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(RequestReadParams, (), (request, language))
constexpr auto notes(const RequestReadParams*) { return std::array{wire::Note{"language", fault_words_note}}; }
enum class RequestState { recorded, unknown };
BOOST_DESCRIBE_ENUM(RequestState, recorded, unknown)
struct RequestReadResult {
  RequestState state{};
  std::optional<model::ObjectId> object;  // the exam, the person, or the clinic for a place
  std::optional<std::vector<model::EntryId>> entries;
  std::optional<std::vector<model::EntryId>> revision;
};
BOOST_DESCRIBE_STRUCT(RequestReadResult, (), (state, object, entries, revision))
// Scope E K.
[[nodiscard]] Result<RequestReadResult> request_read(Context& context, const RequestReadParams& params);

}  // namespace limbledger::service

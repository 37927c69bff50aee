// What a method gets to work with. Everything but the caller lives as long as the program; a method that needs the ledger
// finds it in `desk`, and a table that needs none (the protocol's own examples) leaves it null.
#pragma once

#include "core/model/ids.hpp"
#include "core/reference/edition_ref.hpp"
#include "core/wire/type.hpp"

#include <cstdint>
#include <optional>
#include <string_view>

namespace limbledger::ledger {
class World;
}

namespace limbledger::service {

class Admission;
class Desk;
class ExchangeCarrier;
class TokenKeeper;
struct NetworkLimits;

// Of a call whose reply has no words: the language in which its faults say what to do. Those that report::languages() has.
enum class FaultLanguage { en, es, fr };
BOOST_DESCRIBE_ENUM(FaultLanguage, en, es, fr)
inline constexpr std::string_view fault_words_note = "a fault then carries `text`, a sentence for whoever is at the form; what nobody has translated is English and ends in (en)";

// Who may call what. A set of scopes is a sum of these bits.
enum class Scope : std::uint8_t { none = 0, examiner = 1, kiosk = 2, viewer = 4, sync = 8 };

struct Caller {
  Scope scope = Scope::examiner;
  std::optional<model::ExamId> exam;  // a kiosk's own exam
};

struct Context {
  Desk* desk = nullptr;
  reference::EditionRef edition;
  Caller caller;
  Admission* admission = nullptr;  // none where the carrier is itself the proof
  TokenKeeper* tokens = nullptr;   // none where nothing is served over the network
  ExchangeCarrier* exchanges = nullptr;  // none where the program serves nobody
  const NetworkLimits* network = nullptr;  // what the program holds every connection to, for health.check
  // Set by a method whose caller would rather wait until there is something to say, at most so long (ms). A carrier that can
  // wait asks again with the same text once something changed, and sends what comes then; another sends what it has.
  std::optional<std::int64_t> wait_ms;
  // Set by an answer at a kiosk that calls the staff; a carrier that can tells the examiners' sessions at once, also while locked.
  std::optional<model::ExamId> staff_called;
};

}  // namespace limbledger::service

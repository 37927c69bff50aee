// How a person decided between values that were written without knowledge of each other: who, when and why, among which values and
// whose they were. Worked out from what is stored, never stored. Source: ledger, items 28 to 30; clinical safety, part D.
#pragma once

#include "core/model/ids.hpp"
#include "core/model/time.hpp"

#include <array>
#include <optional>
#include <vector>

namespace limbledger::model {

// By somebody who had seen the signature, or where neither had seen the other.
enum class AfterSignature { seen, unseen };
BOOST_DESCRIBE_ENUM(AfterSignature, seen, unseen)

// One of the values that were decided between.
struct Weighed {
  EntryId entry;
  std::optional<ExaminerId> by;
  Instant at;
  std::optional<wire::Raw> value;
  std::optional<wire::Remark> reason;
  friend bool operator==(const Weighed&, const Weighed&) = default;
};
BOOST_DESCRIBE_STRUCT(Weighed, (), (entry, by, at, value, reason))
constexpr auto notes(const Weighed*) {
  return std::array{wire::Note{"by", "of a finding who examined, else who wrote it"},
                    wire::Note{"at", "of a finding when it was examined where its entry says so, else when it was written, as that device's clock claimed"},
                    wire::Note{"value", "as it was written, with the side as it then was; absent: a finding was taken back for this reason, anything else was not said"}};
}

struct Settled {
  Word about;
  EntryId entry;
  std::optional<ExaminerId> by;
  Instant at;
  std::optional<wire::Remark> reason;
  std::optional<wire::Raw> value;
  std::optional<EntryId> taken;
  std::vector<Weighed> among;
  std::optional<AfterSignature> after_signature;
  std::optional<bool> undone;
  std::optional<wire::LongText> text;
  std::optional<std::vector<Weighed>> sides_exchanged = std::nullopt;
  friend bool operator==(const Settled&, const Settled&) = default;
};
BOOST_DESCRIBE_STRUCT(Settled, (), (about, entry, by, at, reason, value, taken, among, after_signature, undone, text, sides_exchanged))
constexpr auto notes(const Settled*) {
  return std::array{wire::Note{"about", "finding, impression, plan, became, transfer, person (whose exam), a member of the opening, of consent or of a person"},
                    wire::Note{"by", "who decided; whose value it is stands in among"},
                    wire::Note{"reason", "absent where the operation that decided keeps none"},
                    wire::Note{"value", "what holds by it"},
                    wire::Note{"taken", "the entry in among whose value was taken; absent: a new value, of who decided"},
                    wire::Note{"after_signature", "seen: decided by who had seen the signature; unseen: decided elsewhere, neither knowing of the other; absent: not after it"},
                    wire::Note{"undone", "true: decided anew since, by the entry before it in the list"},
                    wire::Note{"text", "the same in words, where a language was named"},
                    wire::Note{"sides_exchanged", "of a finding: exchanges of left and right that the writer of one of the values had not seen, nor the other way round; the side was decided with the value"}};
}

}  // namespace limbledger::model

// One table a type for the whole program, made in core/model/types.cpp: it is costly to make in every file.
namespace limbledger::wire {
extern template const Type& type_of<model::Settled>();
}  // namespace limbledger::wire

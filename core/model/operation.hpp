// What one ledger entry says was done. These shapes are a file format: once released a body may gain optional members and
// nothing else (schemas/ledger/v1 is compared by a test). A new member that changes meaning must raise `min`.
// `after` is what the writer had seen of the object, `replaces` what this corrects. Source: ledger, items 26 to 34.
#pragma once

#include "core/model/exam/exam.hpp"
#include "core/model/link.hpp"
#include "core/model/person.hpp"
#include "core/model/place.hpp"
#include "core/model/report.hpp"

#include <optional>
#include <span>
#include <vector>

namespace limbledger::model {

inline constexpr int operation_version = 1;
inline constexpr std::size_t pointers_max = 64;

// Bytes as hexadecimal text of a fixed length.
template <std::size_t Count>
struct Hex {
  std::array<std::uint8_t, Count> bytes{};
  static constexpr wire::TextRule wire_rule{"lower-case hexadecimal", "^([0-9a-f]{2})*$", Count * 2};
  [[nodiscard]] std::string to_text() const {
    static constexpr char digits[] = "0123456789abcdef";
    std::string text;
    for (const std::uint8_t byte : bytes) {
      text += digits[byte >> 4U];
      text += digits[byte & 15U];
    }
    return text;
  }
  [[nodiscard]] static wire::TextProblem from_text(std::string_view text, Hex& out) {
    if (text.size() != Count * 2) {
      return "params.wrong_type";
    }
    for (std::size_t i = 0; i < text.size(); ++i) {
      const char c = text[i];
      const int value = c >= '0' && c <= '9' ? c - '0' : (c >= 'a' && c <= 'f' ? c - 'a' + 10 : -1);
      if (value < 0) {
        return "params.wrong_type";
      }
      out.bytes[i / 2] = static_cast<std::uint8_t>(i % 2 == 0 ? value * 16 : out.bytes[i / 2] + value);
    }
    return {};
  }
  friend bool operator==(const Hex&, const Hex&) = default;
};

enum class ClockWord { unset, suspect, person, network };
BOOST_DESCRIBE_ENUM(ClockWord, unset, suspect, person, network)

// Two clocks: the wall as claimed, and a monotonic one with the start it counts from, so that one answer mends a session.
struct Clocks {
  wire::Count<-62135596800000, 253402300799999> wall_ms;
  wire::Count<0, 9007199254740991> up_ms;
  Hex<8> boot;
  ClockWord clock{};
  friend bool operator==(const Clocks&, const Clocks&) = default;
};
BOOST_DESCRIBE_STRUCT(Clocks, (), (wall_ms, up_ms, boot, clock))

// The examiner's signature over everything seen and the body as written (ledger, section 2).
struct ExaminerSignature {
  Hex<32> key;     // the examiner's public key on this device
  wire::Count<0, 4294967295> count;
  Hex<32> covers;  // digest of the sorted hashes of all entries seen
  Hex<64> signature;
  friend bool operator==(const ExaminerSignature&, const ExaminerSignature&) = default;
};
BOOST_DESCRIBE_STRUCT(ExaminerSignature, (), (key, count, covers, signature))

struct Operation {
  wire::Count<1, 9999> v;
  wire::Count<1, 9999> min;
  Word op;
  RequestId request;
  wire::Count<1, 1000> part;  // this entry's place among the `of` entries of one request
  wire::Count<1, 1000> of;
  ObjectId object;
  std::vector<EntryId> after;
  std::vector<EntryId> replaces;
  std::optional<ExaminerId> by;
  std::optional<Instant> examined_at;
  Clocks at;
  EditionId edition;
  wire::Raw body;
  std::optional<ExaminerSignature> sig;
};
BOOST_DESCRIBE_STRUCT(Operation, (), (v, min, op, request, part, of, object, after, replaces, by, examined_at, at, edition, body, sig))

// ---- bodies, by the word in `op` ----

struct PersonBody {  // person, and with only what changes: person_change
  std::optional<std::vector<PersonName>> names;
  std::optional<Birth> birth;
  std::optional<Sex> sex;
  std::optional<NormSex> norm_sex;
  std::optional<wire::Name> home;
  std::optional<std::vector<Identifier>> identifiers;
  std::optional<wire::Remark> reason = std::nullopt;  // why it is changed
};
BOOST_DESCRIBE_STRUCT(PersonBody, (), (names, birth, sex, norm_sex, home, identifiers, reason))

struct ExamBody {  // exam
  std::optional<PersonId> person;
  Word complaint;
  std::optional<Side> side;
  Setting setting{};
  std::optional<PlaceId> place;
  std::optional<OffsetMinutes> offset_min;
  std::optional<PartialDate> injured_on;
  std::optional<std::vector<wire::Name>> identified;
  std::optional<ExamId> reviews;
  std::optional<bool> supervised;
  std::optional<PartialDate> examined_on = std::nullopt;  // as a person says it
  std::optional<wire::Remark> reason = std::nullopt;      // of an amendment: why
};
BOOST_DESCRIBE_STRUCT(ExamBody, (), (person, complaint, side, setting, place, offset_min, injured_on, identified, reviews, supervised, examined_on, reason))

struct ConsentBody {  // consent
  std::optional<Consent> consent;
  std::optional<Company> company;
  std::optional<WhoSpoke> who_spoke;
  std::optional<Interpreter> interpreter;
  std::optional<wire::Remark> reason = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(ConsentBody, (), (consent, company, who_spoke, interpreter, reason))

struct FindingBody {  // finding
  FindingId finding;
  Observation observation;
  std::optional<ExaminerId> examiner;  // who examined, where another entered it
};
BOOST_DESCRIBE_STRUCT(FindingBody, (), (finding, observation, examiner))

struct WithdrawBody {  // withdraw: one finding, or without one the whole exam
  std::optional<FindingId> finding;
  wire::Remark reason;
};
BOOST_DESCRIBE_STRUCT(WithdrawBody, (), (finding, reason))

struct ImpressionBody {  // impression
  Impression impression;
  std::optional<wire::Remark> reason = std::nullopt;  // why this one, where others stood
};
BOOST_DESCRIBE_STRUCT(ImpressionBody, (), (impression, reason))

struct PlanBody {  // plan: one plan item, new or as it now is
  PlanItem plan_item;
};
BOOST_DESCRIBE_STRUCT(PlanBody, (), (plan_item))

struct SignBody {  // sign
  wire::Remark read_aloud;
  std::optional<std::vector<wire::Name>> identified;
  std::optional<std::vector<Shown>> shown;
  std::optional<std::vector<Word>> incomplete;
};
BOOST_DESCRIBE_STRUCT(SignBody, (), (read_aloud, identified, shown, incomplete))

struct AddendumBody {  // addendum
  AddendumKind kind{};
  wire::Remark reason;
  std::optional<wire::LongText> text;
  std::optional<std::vector<Observation>> findings;
  std::optional<PartialDate> examined_on = std::nullopt;  // the day of the exam, said after its signature
  std::optional<std::vector<PlanItem>> plan_items = std::nullopt;  // new ones, decided after the signature
};
BOOST_DESCRIBE_STRUCT(AddendumBody, (), (kind, reason, text, findings, examined_on, plan_items))

struct MoveBody {  // move
  PersonId person;
  wire::Remark reason;
};
BOOST_DESCRIBE_STRUCT(MoveBody, (), (person, reason))

struct SwapSidesBody {  // swap_sides
  wire::Remark reason;
};
BOOST_DESCRIBE_STRUCT(SwapSidesBody, (), (reason))

struct SettleBody {  // settle: replaces all heads of one slot by this observation
  FindingId finding;
  Observation observation;
  wire::Remark reason;
};
BOOST_DESCRIBE_STRUCT(SettleBody, (), (finding, observation, reason))

struct AlertHandledBody {  // alert_handled: what was done about an alert, or why nothing was
  Word alert;
  std::optional<Side> side;
  bool urgent = false;  // it was of class now
  std::optional<wire::Remark> action;
  std::optional<wire::Remark> reason;
};
BOOST_DESCRIBE_STRUCT(AlertHandledBody, (), (alert, side, urgent, action, reason))

struct TransferBody {  // transfer: the exam is stopped, and what travels with the person
  TransferSet set;
};
BOOST_DESCRIBE_STRUCT(TransferBody, (), (set))

struct DisagreeBody {  // disagree: by the edition that the envelope names
  StatementId statement;
  wire::Remark because;
};
BOOST_DESCRIBE_STRUCT(DisagreeBody, (), (statement, because))

struct BecameBody {  // became: what became of a plan item, also after the signature
  PlanItemId plan_item;
  Became became{};
  std::optional<PartialDate> on;
  std::optional<wire::Remark> text;
};
BOOST_DESCRIBE_STRUCT(BecameBody, (), (plan_item, became, on, text))

struct OutcomeBody {  // outcome: what was found out later
  FoundLater found;
};
BOOST_DESCRIBE_STRUCT(OutcomeBody, (), (found))

struct CountersignBody {  // countersign: what who supervised found, beside what was signed
  std::optional<std::vector<Observation>> findings;
  std::optional<Impression> impression;
  std::optional<wire::Remark> remark;
};
BOOST_DESCRIBE_STRUCT(CountersignBody, (), (findings, impression, remark))

struct PlaceBody {  // place: a new one, or with only what changes
  PlaceId place;
  std::optional<wire::Name> name;
  std::optional<std::vector<Travel>> travel;
  std::optional<std::vector<Telephone>> telephones;
  std::optional<std::vector<Here>> here;
  std::optional<std::vector<Protocol>> protocols;
  std::optional<std::vector<wire::Name>> endemic;
  std::optional<std::vector<ReviewedLanguage>> reviewed;
};
BOOST_DESCRIBE_STRUCT(PlaceBody, (), (place, name, travel, telephones, here, protocols, endemic, reviewed))

struct ExaminerNameBody {  // examiner: how whoever signs it is called; nobody names another
  wire::Name name;
  std::optional<wire::Name> role;  // as they say it themselves
};
BOOST_DESCRIBE_STRUCT(ExaminerNameBody, (), (name, role))

struct LetterBody {  // letter: what was handed over, as it was printed
  LetterId letter;
  std::optional<wire::Name> to;
  wire::Remark question;
  std::optional<LetterUrgency> urgency;
  std::optional<PlanItemId> plan_item;
  std::optional<LetterId> corrects;
  std::optional<bool> protected_;
  Word language;
  LetterPage page;
};
BOOST_DESCRIBE_STRUCT(LetterBody, (), (letter, to, question, urgency, plan_item, corrects, protected_, language, page))

// put_off: one line of what disagrees is not decided yet, and somebody was asked. It settles nothing. It lives in the record that the line
// is of, so that the words go when that record is erased; of a pair, in that of the person with the lower id.
struct PutOffBody {
  Word about;
  std::vector<EntryId> entries;                  // what stood there: the values, the marked entry, of a pair the decisions
  std::optional<std::vector<PersonId>> persons;  // of a pair: both
  wire::Remark asked;                            // whom, and what
  PartialDate look_again;
};
BOOST_DESCRIBE_STRUCT(PutOffBody, (), (about, entries, persons, asked, look_again))

struct StoredType {
  std::string_view op;  // empty for the envelope
  wire::TypeRef type;
};

// Every shape that is stored, for the frozen schemas.
[[nodiscard]] std::span<const StoredType> stored_types();

}  // namespace limbledger::model

// One table a type for the whole program, made in core/model/types.cpp: it is costly to make in every file.
namespace limbledger::wire {
extern template const Type& type_of<model::Operation>();
extern template const Type& type_of<model::PersonBody>();
extern template const Type& type_of<model::ExamBody>();
extern template const Type& type_of<model::ConsentBody>();
extern template const Type& type_of<model::FindingBody>();
extern template const Type& type_of<model::WithdrawBody>();
extern template const Type& type_of<model::ImpressionBody>();
extern template const Type& type_of<model::PlanBody>();
extern template const Type& type_of<model::SignBody>();
extern template const Type& type_of<model::AddendumBody>();
extern template const Type& type_of<model::MoveBody>();
extern template const Type& type_of<model::SwapSidesBody>();
extern template const Type& type_of<model::SettleBody>();
extern template const Type& type_of<model::AlertHandledBody>();
extern template const Type& type_of<model::PlaceBody>();
extern template const Type& type_of<model::TransferBody>();
extern template const Type& type_of<model::DisagreeBody>();
extern template const Type& type_of<model::BecameBody>();
extern template const Type& type_of<model::OutcomeBody>();
extern template const Type& type_of<model::CountersignBody>();
extern template const Type& type_of<model::LetterBody>();
extern template const Type& type_of<model::ExaminerNameBody>();
extern template const Type& type_of<model::PutOffBody>();
}  // namespace limbledger::wire

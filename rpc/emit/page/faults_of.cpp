#include "rpc/emit/page/faults_of.hpp"

#include "core/wire/fault.hpp"

#include <algorithm>
#include <array>

namespace limbledger::rpc {

namespace {

struct OwnFaults {
  std::string_view methods;  // one or several, with a space between
  std::string_view codes;
};

// A value of a finding may be wrong in so many ways.
constexpr std::string_view of_a_finding =
    "item.unknown item.side item.not_applicable value.kind value.grade value.out_of_range value.step value.unit_missing value.trials value.disagrees "
    "value.neutral_zero value.instrument value.position value.why value.sign value.unusual value.all_or_one finding.contradicts side.needed examiner.unknown";

constexpr std::array own_faults{
    OwnFaults{"session.open", "token.unwanted token.unknown token.used value.all_or_one protocol.version examiner.unknown"},
    OwnFaults{"token.make", "token.not_served token.exam examiner.needed ledger.locked exam.unknown limit.tokens"},
    OwnFaults{"token.list token.end", "token.not_served"},
    OwnFaults{"token.end", "token.unknown"},
    OwnFaults{"ledger.unlock", "ledger.passphrase ledger.wait examiner.unknown value.empty"},
    OwnFaults{"examiner.add", "ledger.passphrase ledger.wait examiner.taken passphrase.short limit.text ledger.read_only"},
    OwnFaults{"examiner.read", "examiner.unknown"},
    OwnFaults{"examiner.amend", "revision.old"},
    OwnFaults{"ledger.verify", "entry.gap token.scope"},
    OwnFaults{"replica.list", "entry.gap"},
    OwnFaults{"replica.enrol replica.enrolling replica.let_in replica.turn_away exchange.begin exchange.read exchange.end parcel.write parcel.take", "exchange.not_served"},
    OwnFaults{"replica.enrol", "enrol.no_hub enrol.closed ledger.passphrase exchange.purpose"},
    OwnFaults{"replica.let_in", "enrol.nobody enrol.digits"},
    OwnFaults{"replica.turn_away", "enrol.nobody"},
    OwnFaults{"exchange.begin parcel.write parcel.take", "exchange.busy"},
    OwnFaults{"exchange.begin", "exchange.address exchange.no_hub"},
    OwnFaults{"parcel.write parcel.take", "parcel.path"},
    OwnFaults{"parcel.write", "parcel.there"},
    OwnFaults{"form.describe", "exam.unknown language.not_reviewed ledger.locked"},
    OwnFaults{"exam.open exam.amend", "place.unknown person.unknown person.mismatch exam.not_reviewed value.empty value.date_order value.unusual token.scope"},
    OwnFaults{"exam.amend exam.move exam.sign exam.transfer exam.countersign statement.disagree outcome.record plan.follow letter.write finding.withdraw", "revision.old"},
    OwnFaults{"exam.amend", "value.all_or_one"},
    OwnFaults{"person.register person.amend", "value.all_or_one value.unusual value.date_order"},
    OwnFaults{"person.amend place.amend impression.record plan.record exam.swap_sides", "finding.stale"},
    OwnFaults{"pair.decide", "person.unknown value.empty pair.contradicts pair.undecided finding.stale value.unusual"},
    OwnFaults{"place.amend", "place.unknown value.empty value.unusual"},
    OwnFaults{"exam.move", "person.mismatch"},
    OwnFaults{"impression.record plan.record finding.withdraw", "exam.not_closed"},
    OwnFaults{"plan.record", "plan.unknown value.date_order value.unusual"},
    OwnFaults{"alert.handle", "alert.unknown value.all_or_one"},
    OwnFaults{"exam.sign", "person.mismatch note.protected examiner.own"},
    OwnFaults{"exam.transfer", "value.unusual value.date_order"},
    OwnFaults{"transfer.write", "exam.not_transferred"},
    OwnFaults{"exam.countersign", "exam.not_signed exam.countersigned examiner.own"},
    OwnFaults{"exam.countersign addendum.record finding.check finding.record", of_a_finding},
    OwnFaults{"exam.countersign addendum.record", "finding.not_kept"},
    OwnFaults{"statement.disagree", "statement.unknown"},
    OwnFaults{"plan.follow", "plan.unknown value.date_order value.unusual"},
    OwnFaults{"outcome.record", "value.date_order value.unusual"},
    OwnFaults{"addendum.record", "addendum.kind exam.not_signed plan.unknown value.date_order value.unusual"},
    OwnFaults{"finding.check finding.record", "item.hands_on item.withheld"},
    OwnFaults{"finding.record", "finding.stale finding.unknown finding.several exam.not_closed"},
    OwnFaults{"finding.withdraw", "finding.unknown"},
    OwnFaults{"finding.record finding.withdraw exam.amend exam.move exam.swap_sides exam.withdraw consent.record person.amend", "alert.would_end"},
    OwnFaults{"consent.record", "consent.turned"},
    OwnFaults{"finding.history catalogue.read agreement.read", "item.unknown"},
    OwnFaults{"exam.assess document.assess statement.explain", "value.out_of_range"},
    OwnFaults{"document.assess", of_a_finding},
    OwnFaults{"statement.explain", "value.all_or_one statement.unknown ledger.locked exam.unknown"},
    OwnFaults{"letter.write", "letter.unknown letter.other_kind letter.protected plan.unknown consent.send"},
    OwnFaults{"district.count district.report", "value.date_order"},
    OwnFaults{"district.count", "value.all_or_one report.unknown report.several"},
    OwnFaults{"district.report", "revision.old"},
    OwnFaults{"conflict.list", "exam.unknown"},
    OwnFaults{"conflict.settle", "finding.unknown finding.stale value.empty exam.not_closed alert.would_end"},
    OwnFaults{"conflict.put_off", "conflict.unknown person.unknown finding.stale value.all_or_one value.empty value.date_order value.unusual"},
    OwnFaults{"letter.read", "letter.unknown letter.protected"},
    OwnFaults{"take_home.write letter.write", "language.no_texts"},
    OwnFaults{"take_home.write", "language.not_reviewed exam.withdrawn"},
    OwnFaults{"loop.list note.write", "token.scope"},
};

constexpr std::array<std::string_view, 25> every_call{
    "json.syntax",    "json.duplicate_member", "request.envelope", "method.unknown", "params.missing", "params.unknown_member", "params.unknown_word",
    "params.wrong_type", "value.empty",        "value.control_character", "value.date",  "value.step",     "limit.size",         "limit.depth",      "limit.batch",    "limit.items",    "limit.text",            "limit.rate",
    "limit.time",     "token.missing",         "token.unknown",    "token.expired",  "token.scope",    "internal.failure",      "internal.memory"};

[[nodiscard]] bool has_word(std::string_view words, std::string_view word) {
  for (std::size_t at = words.find(word); at != std::string_view::npos; at = words.find(word, at + 1)) {
    const std::size_t end = at + word.size();
    if ((at == 0 || words[at - 1] == ' ') && (end == words.size() || words[end] == ' ')) {
      return true;
    }
  }
  return false;
}

[[nodiscard]] bool takes(const service::Method& method, std::string_view member) {
  const auto fields = method.params().fields;
  return std::any_of(fields.begin(), fields.end(), [&](const wire::Field& field) { return field.name == member; });
}

[[nodiscard]] bool follows(const service::Method& method, std::string_view code) {
  const bool of_exam = takes(method, "exam");
  const bool kiosk = method.scopes.allows(service::Scope::kiosk) && !method.scopes.open;
  if (code == "ledger.locked") {
    return !method.while_locked;
  }
  if (code == "exam.unknown") {
    return of_exam && !method.while_locked;
  }
  if (code == "exam.not_yours") {
    return kiosk && !method.while_locked && method.name != "changes.read";
  }
  if (code == "person.unknown") {
    return takes(method, "person") && method.name != "exam.find";
  }
  if (code == "entry.seal") {
    return method.writes && of_exam;
  }
  if (code == "exam.signed" || code == "exam.withdrawn") {
    if (method.name == "conflict.put_off") {
      return false;
    }
    const bool later = method.name == "exam.countersign" || method.name == "addendum.record" || method.name == "plan.follow" || method.name == "outcome.record" ||
                       method.name == "alert.handle" || method.name == "letter.write" || method.name == "statement.disagree" || method.name == "conflict.settle";
    return method.writes && of_exam && (code == "exam.withdrawn" || !later);
  }
  if (code == "revision.unknown") {
    return takes(method, "seen");
  }
  if (code == "request.reused" || code == "ledger.read_only" || code == "examiner.needed" || code == "format.newer") {
    return method.writes;
  }
  return false;
}

}  // namespace

std::span<const std::string_view> faults_of_every_call() { return every_call; }

std::vector<std::string_view> faults_of(const service::Method& method) {
  std::vector<std::string_view> codes;
  for (const wire::FaultCode& row : wire::fault_codes()) {
    const bool own = std::any_of(own_faults.begin(), own_faults.end(),
                                 [&](const OwnFaults& one) { return has_word(one.methods, method.name) && has_word(one.codes, row.code); });
    if (own || follows(method, row.code)) {
      codes.push_back(row.code);
    }
  }
  return codes;
}

}  // namespace limbledger::rpc

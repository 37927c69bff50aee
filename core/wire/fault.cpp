#include "core/wire/fault.hpp"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <utility>

namespace limbledger::wire {

namespace {

using enum FaultClass;

// Alphabetical; a retired code stays here with its meaning.
constexpr std::array codes{
    FaultCode{"addendum.kind", refused, false, "this addendum cannot hold what was sent", "send findings with the kind findings or correction, a text with any kind"},
    FaultCode{"alert.unknown", unknown_id, false, "this exam has no such alert", "use an alert and side of exam.assess"},
    FaultCode{"alert.would_end", asked_back, false, "by this an alert that stands now would be no more, or less urgent", "see to the person first (alert.handle says what was done); where it holds, send it again with confirmed"},
    FaultCode{"conflict.unknown", unknown_id, false, "the queue has no such line", "read it anew with conflict.list: the line was settled, or something else stands there now"},
    FaultCode{"consent.send", asked_back, false, "the person said no to sending this on", "print it for the person's own hand, after asking: send it again with confirmed"},
    FaultCode{"consent.turned", asked_back, false, "the person said no to this before", "ask the person themselves; where they allow it now, send it again with confirmed"},
    FaultCode{"enrol.closed", refused, true, "the hub lets no new device in now, or another one is being let in", "begin an enrolment at the hub (limbledger hub --enrol, or replica.enrol), and then join again"},
    FaultCode{"enrol.code", trust, false, "what this device shows is not what it promised, or the clinic is another", "start the enrolment anew, with both screens side by side"},
    FaultCode{"enrol.digits", refused, true, "what was typed is not the six digits of this screen: nobody was let in",
              "compare digit by digit and type them again: a slip changes nothing; only where the two screens themselves show other digits turn the device away, and use another network, such as a cable"},
    FaultCode{"enrol.interrupted", refused, true, "the clinic's program was locked or ended before anybody had decided; nobody has said no",
              "unlock it there, begin the enrolment there once more, and join again"},
    FaultCode{"enrol.no_hub", refused, false, "this program answers no other devices", "start it with --hub PORT"},
    FaultCode{"enrol.nobody", refused, true, "no new device waits to be let in", "begin with replica.enrol, and let the device join"},
    FaultCode{"enrol.refused", denied, false, "somebody at the hub has said no", "ask there what for: begin again where another device was meant; use another network, such as a cable, only where the two screens showed other digits"},
    FaultCode{"entry.format", trust, false, "an entry is not of the ledger's format", "run verify; keep the file and a copy of it"},
    FaultCode{"entry.gap", trust, false, "entries are missing before this one", "bring the earlier entries of this replica"},
    FaultCode{"entry.hash", trust, false, "an entry does not have the hash its chain says", "run verify; use the copy held elsewhere"},
    FaultCode{"entry.head", trust, false, "the signature over a head does not hold", "run verify; use the copy held elsewhere"},
    FaultCode{"entry.key", trust, false, "a key does not belong to its object, or is missing", "run verify; use the copy held elsewhere"},
    FaultCode{"entry.list", trust, false, "a list of the store leaves out entries that are there: what it leaves out is not shown",
              "the entries are whole; stop the program and run limbledger verify DIR --mend, which makes the list anew from them"},
    FaultCode{"entry.seal", trust, false, "a sealed entry does not open", "run verify; use the copy held elsewhere"},
    FaultCode{"entry.size", trust, false, "an entry's body is over 1 MiB", "it cannot have been made by this program"},
    FaultCode{"entry.store", trust, false, "the store's file is damaged", "stop writing; keep this file as it is, and take up the newest whole copy of the folder"},
    FaultCode{"exam.countersigned", refused, false, "you have countersigned this exam, and nothing was added since",
              "read what stands; a countersignature is added anew after an addendum"},
    FaultCode{"exam.not_closed", refused, false, "this exam is supervised, and its examiner has not closed it yet",
              "let its examiner sign it; then exam.countersign takes what you found; or end that with exam.amend, supervised false"},
    FaultCode{"exam.not_reviewed", refused, false, "this exam cannot be reviewed by that one", "name an earlier exam of the same person, and the complaint review"},
    FaultCode{"exam.not_signed", refused, false, "the exam is still open", "record the finding itself, or sign the exam first"},
    FaultCode{"exam.not_transferred", refused, false, "this exam was not stopped for transfer", "stop it with exam.transfer; the set may be empty"},
    FaultCode{"exam.not_yours", denied, false, "this token may use its own exam only", "use the exam that the token names"},
    FaultCode{"exam.signed", refused, false, "the exam is signed; its record does not change", "write an addendum (addendum.record)"},
    FaultCode{"exam.unknown", unknown_id, false, "no exam has this id here", "look the exam up with exam.find"},
    FaultCode{"exam.withdrawn", refused, false, "the exam is withdrawn", "open a new exam"},
    FaultCode{"examiner.needed", denied, false, "the printed code opened the ledger for reading; nobody records without a name",
              "lock it, and unlock it with an examiner's passphrase; where all are lost, examiner.add makes a new one with the code"},
    FaultCode{"examiner.own", refused, false, "whoever signed an exam does not countersign it", "let another examiner unlock and countersign"},
    FaultCode{"examiner.taken", refused, false, "an examiner of this device has this name, with another passphrase", "choose another name, such as the same with the year"},
    FaultCode{"examiner.unknown", unknown_id, false, "no examiner has this id or label here", "use the id that health.check or the program shows"},
    FaultCode{"exchange.address", refused, false, "this is no address of a hub", "give it as the hub says it: https://HOST:PORT"},
    FaultCode{"exchange.busy", limit, true, "an exchange or a parcel is under way", "wait until exchange.read says that it is over, or end it with exchange.end"},
    FaultCode{"exchange.carrier", trust, true, "what answered is no hub, or could not take the message", "give the address that the hub prints, and try again"},
    FaultCode{"exchange.ended", refused, true, "it was ended before it was over", "begin it again: what was taken stays, and nothing is taken twice"},
    FaultCode{"exchange.foreign", trust, false, "this message is of another clinic, or of another connection", "call a replica of this clinic"},
    FaultCode{"exchange.key", trust, false, "another device answers at this address than the hub that this one was enrolled by", "give the hub's own address; nothing was sent to the other one"},
    FaultCode{"exchange.message", envelope, false, "this is not the message of an exchange that comes now", "start the exchange anew, from its first message"},
    FaultCode{"exchange.no_answer", limit, true, "the hub does not answer",
              "see at the clinic that its program runs and that an examiner has unlocked it once since it started, then that the network is up; then exchange again, what was taken stays"},
    FaultCode{"exchange.no_hub", refused, false, "this device knows no hub: it was not enrolled by one", "let the other devices join this clinic and call this one; or join theirs in a new folder"},
    FaultCode{"exchange.not_served", refused, false, "this program carries no exchange", "call the program that serves the ledger"},
    FaultCode{"exchange.port", limit, true, "other devices cannot be answered at this address and port", "choose another port, or an address of this machine"},
    FaultCode{"exchange.purpose", refused, false, "a practice ledger exchanges with none, and a demonstration only with its like", "use a ledger of the same purpose"},
    FaultCode{"exchange.receipt", trust, false, "a receipt does not hold", "start the exchange anew; count nothing as held elsewhere by this receipt"},
    FaultCode{"finding.contradicts", asked_back, false, "two things recorded here do not go together", "check both; send it again with confirmed, or change one"},
    FaultCode{"finding.not_kept", refused, false, "a signed addition keeps nothing of this member", "leave it out; what was found is of who signs, and corrects nothing; say the rest in the reason or the remark"},
    FaultCode{"finding.several", refused, false, "replaces names entries of several findings, and one correction is of one",
              "correct each finding by itself, naming its own entry; what is to stand no more is taken away with finding.withdraw"},
    FaultCode{"finding.stale", stale, false, "the place is filled by a value that the writer had not named, or not been shown",
              "show what stands (held, held_also, or the record read again) and let a person choose: replaces with the entry of the one that was wrong, where the method takes it beside true for a value of its own, "
              "and both where one is corrected and another stays beside it"},
    FaultCode{"finding.unknown", unknown_id, false, "no finding with this id, or no entry of this item, is in this exam", "read the exam again, and name what stands there"},
    FaultCode{"format.newer", refused, false, "this part was written by a newer edition and cannot be replaced here", "update this program"},
    FaultCode{"host.refused", denied, false, "the Host header is not this machine's", "call the address that sidecar.json names"},
    FaultCode{"http.content_type", envelope, false, "the Content-Type is not application/json", "send Content-Type: application/json, in UTF-8"},
    FaultCode{"http.method", envelope, false, "only POST is answered here", "send the message with POST, or open a WebSocket"},
    FaultCode{"http.path", envelope, false, "nothing is served under this address", "call the address that sidecar.json names, without a query; files of a page are read when the program starts: one that came later is served after the next start"},
    FaultCode{"http.request", envelope, false, "this is not a request of HTTP 1.1, or no WebSocket handshake", "send one whole request with one Host, and its length"},
    FaultCode{"internal.failure", internal, true, "something went wrong inside; the log has the incident", "try again; report the incident's number"},
    FaultCode{"internal.memory", internal, true, "not enough memory", "close other programs and try again"},
    FaultCode{"item.hands_on", denied, false, "a kiosk takes what somebody can say, and this is examined, or asked in private", "leave this item to the examiner"},
    FaultCode{"item.not_applicable", refused, false, "this item does not fit what was sent", "look the item up in catalogue.read"},
    FaultCode{"item.side", refused, false, "this item has no such side", "use one of the item's sides"},
    FaultCode{"item.unknown", refused, false, "no such item in this edition", "use a name that expected shows as near, or one that form.describe or catalogue.read lists"},
    FaultCode{"item.withheld", asked_back, false, "this step is not advised now; got names the concern or alert", "already done? send it again with despite {how, because}, as form.describe says why and until when (withheld)"},
    FaultCode{"json.duplicate_member", envelope, false, "a member is named twice", "send each member once"},
    FaultCode{"json.syntax", syntax, false, "the text is not JSON", "send one JSON text in UTF-8"},
    FaultCode{"keyring.damaged", trust, false, "the keyring file is damaged", "use a copy of it, or the recovery code"},
    FaultCode{"keyring.missing", trust, false, "the keyring is missing, and the ledger's file is there",
              "bring the file keyring back from a copy; without it what is sealed stays shut"},
    FaultCode{"language.no_texts", refused, false, "there are no texts of this kind in this language", "use en, or write by hand"},
    FaultCode{"language.not_reviewed", refused, false, "no named clinician has read the texts for people in this language", "name who read them, and when, in a place (place.amend, reviewed); until then write by hand"},
    FaultCode{"ledger.in_use", read_only, true, "another program holds this ledger", "stop the other program first"},
    FaultCode{"ledger.locked", locked, true, "the ledger is locked", "unlock it with ledger.unlock"},
    FaultCode{"ledger.missing", trust, false, "the ledger's file is missing or empty",
              "bring ledger.sqlite back from a copy, with ledger.sqlite-wal if there is one; make no new ledger over it"},
    FaultCode{"ledger.none", unknown_id, false, "there is no ledger here", "name the folder of the ledger (--ledger DIR); a new one is made with: limbledger new DIR"},
    FaultCode{"ledger.passphrase", locked, true, "the passphrase or code does not open it", "check capitals and the examiner's name; try again"},
    FaultCode{"ledger.read_only", read_only, true, "nothing can be written now (disk full or read only)", "free some space; after an error of the disk start the program again"},
    FaultCode{"ledger.wait", locked, true, "too many wrong passphrases; wait", "try again after the wait shown"},
    FaultCode{"letter.other_kind", refused, false, "an open letter and a protected one do not correct each other",
              "write an open letter for what is open, and a protected one of its own for what is kept apart"},
    FaultCode{"letter.protected", refused, false, "this letter is kept apart", "open it on purpose, with protected"},
    FaultCode{"letter.unknown", unknown_id, false, "no letter has this id in this exam", "use a letter that exam.read names"},
    FaultCode{"limit.batch", envelope, false, "too many calls in one batch", "send fewer calls a batch"},
    FaultCode{"limit.depth", envelope, false, "lists and objects are nested too deep", "send a flatter message"},
    FaultCode{"limit.head", envelope, false, "the head of the request is too long", "send fewer or shorter header fields"},
    FaultCode{"limit.items", shape, false, "a list is too long", "send fewer items a call"},
    FaultCode{"limit.pointers", refused, false, "an operation names too many others", "send fewer pointers"},
    FaultCode{"limit.rate", limit, true, "too many calls or connections", "wait and send again"},
    FaultCode{"limit.size", envelope, false, "the message is too large", "send a smaller message"},
    FaultCode{"limit.text", shape, false, "a text is too long", "shorten it; nothing was cut"},
    FaultCode{"limit.time", limit, true, "the request did not come to its end in time", "send it again, whole"},
    FaultCode{"limit.tokens", limit, true, "too many tokens are good at one time", "end those that nobody uses: token.list, token.end"},
    FaultCode{"method.unknown", unknown_method, false, "there is no such method", "rpc.discover lists the methods"},
    FaultCode{"note.protected", asked_back, false, "there is a protected note to see before signing",
              "open it (exam.assess, protected true) and answer what stands there with alert.handle; or send this again with confirmed"},
    FaultCode{"origin.refused", denied, false, "this page may not call the sidecar: another program served it, or it was opened as a file",
              "let the sidecar serve it: limbledger serve --http PORT --pages DIR --once, with the folder of the page; then open the link that is printed"},
    FaultCode{"pair.contradicts", refused, false, "this would make one of two people who were decided not to be the same, or the other way round",
              "look at all of them again, and undo the decision that was wrong first"},
    FaultCode{"pair.undecided", refused, false, "nothing was decided of these two, so there is nothing to undo", "read the pairs anew with pair.list"},
    FaultCode{"params.missing", shape, false, "a member is missing", "send it"},
    FaultCode{"params.unknown_member", shape, false, "there is no such member", "leave it out, or use a name that is shown"},
    FaultCode{"params.unknown_word", shape, false, "there is no such word here", "use one of the words listed"},
    FaultCode{"params.wrong_type", shape, false, "the value has the wrong type or form", "send what was expected"},
    FaultCode{"parcel.changed", trust, false, "bytes of the parcel were changed after it was written", "copy it again from where it came, or have it written again; nothing of it was taken"},
    FaultCode{"parcel.cut_short", trust, true, "the parcel ends too early", "copy it again from where it came"},
    FaultCode{"parcel.foreign", trust, false, "the parcel belongs to another clinic", "use a parcel of this clinic"},
    FaultCode{"parcel.format", trust, false, "this is no parcel, or one of a newer edition", "choose the file that parcel write made; or update this program"},
    FaultCode{"parcel.key", trust, false, "the parcel is sealed to a key that this device does not hold, or its beginning was changed", "exchange with the clinic first, or have the parcel written again"},
    FaultCode{"parcel.path", refused, false, "this is no path that a parcel can have", "name a file from / on; one to be written ends in .parcel"},
    FaultCode{"parcel.there", refused, false, "a file of this name is there already, and was left as it is", "choose another name; or look at that file and take it away first"},
    FaultCode{"parcel.unreadable", read_only, true, "the parcel's medium cannot be read or written", "put the stick in again, or take another one"},
    FaultCode{"passphrase.short", refused, false, "the passphrase is too short", "choose a longer one, such as four words that do not belong together"},
    FaultCode{"person.mismatch", asked_back, false, "this does not name the person of the exam", "ask for both identifiers again; take the other person, or send it again with confirmed"},
    FaultCode{"person.unknown", unknown_id, false, "no person has this id here", "look the person up with person.find"},
    FaultCode{"place.unknown", unknown_id, false, "no place has this id here", "read the places with place.read"},
    FaultCode{"plan.unknown", unknown_id, false, "no plan item has this id in this exam", "leave plan_item out for a new one"},
    FaultCode{"protocol.version", refused, false, "this protocol version is not spoken", "use one in the range shown"},
    FaultCode{"replica.forked", trust, false, "this device was put back to an older copy, or copied: its chain has two branches and takes nothing more",
              "nothing is lost: keep this folder, and join the clinic again in a new one: limbledger join NEW_FOLDER --with https://HOST:PORT, with limbledger hub --enrol at the clinic"},
    FaultCode{"replica.revoked", trust, false, "this device was revoked", "a person decides at the hub"},
    FaultCode{"replica.unknown", trust, false, "this replica is not enrolled in the clinic", "enrol the device, with both screens side by side; where the other was put back to a copy from before that was done, bring it a parcel first"},
    FaultCode{"report.several", refused, false, "two reports of this period have this number: they were made without knowledge of each other", "name one by its entry; expected names both"},
    FaultCode{"report.unknown", unknown_id, false, "no report of this period and place has this number here", "use a number that district.count tells in reported, or a lower one"},
    FaultCode{"request.envelope", envelope, false, "this is not a JSON-RPC 2.0 request", "send jsonrpc, method, params and id as the specification says"},
    FaultCode{"request.reused", refused, false, "this request id was used for something else", "make a new UUID for a new request"},
    FaultCode{"revision.old", stale, false, "something was recorded since the revision that was shown", "read the record again, show what is new, and send it once more with that revision as seen"},
    FaultCode{"revision.unknown", shape, false, "seen names entries that are not of this record", "send back the revision that was shown"},
    FaultCode{"side.needed", refused, false, "the side is missing", "name left, right or midline"},
    FaultCode{"statement.unknown", unknown_id, false, "the assessment has no such statement", "use an id from exam.assess"},
    FaultCode{"token.exam", refused, false, "only the token of a kiosk names an exam", "leave exam out, or make a kiosk's token"},
    FaultCode{"token.expired", denied, false, "the token or code has expired", "open a new session; a page needs a new link for that: limbledger token make --ledger DIR --scope examiner --once, with the folder that is served"},
    FaultCode{"token.missing", denied, false, "a token is needed", "open a session first"},
    FaultCode{"token.not_served", refused, false, "tokens are taken over HTTP and WebSocket alone, and nothing is served there", "start the program with --http; on the standard input --scope says who calls"},
    FaultCode{"token.scope", denied, false, "the token does not allow this method", "use a token with the scope shown"},
    FaultCode{"token.unknown", denied, false, "this token or code is not one of this launch: it is of an earlier one, or not written as it was given",
              "see that it is whole, and over HTTP behind the word Bearer; where the program was started again a program reads sidecar.json again; the code of a link is traded by a session.open without an Authorization field; a page needs a new link: limbledger token make --ledger DIR --scope examiner --once, with the folder that is served"},
    FaultCode{"token.unwanted", refused, false, "no token is taken here, and the one sent was not looked at",
              "leave token and once out; on the standard input the program's option --scope says who calls"},
    FaultCode{"token.used", denied, false, "the code of this link was used before, and one opens one session",
              "go on in the tab that it opened; another needs a link of its own: limbledger token make --ledger DIR --scope examiner --once, with the folder that is served"},
    FaultCode{"value.all_or_one", refused, false, "exactly one way of giving the value is needed", "send one of the members listed"},
    FaultCode{"value.control_character", shape, false, "a text holds a control character", "remove it"},
    FaultCode{"value.date", shape, false, "not a calendar date", "send a day, month or year that the calendar has: 1971, 1971-05 or 1971-05-12"},
    FaultCode{"value.date_order", refused, false, "these dates cannot both be right", "correct the one that is wrong"},
    FaultCode{"value.disagrees", refused, false, "two things that this value says do not go together",
              "change one of the two: expected says what goes with the other; of an angle turn the sign of the readings, or of toward_deg"},
    FaultCode{"value.empty", shape, false, "a text is empty", "write something that shows; where expected says so, the member may be left out instead"},
    FaultCode{"value.grade", refused, false, "this grade is not on the item's scale", "use a grade of the scale listed"},
    FaultCode{"value.instrument", refused, false, "this item is not measured so", "use one of the instruments listed"},
    FaultCode{"value.kind", shape, false, "this item does not take a value of this kind", "send the kind that was expected"},
    FaultCode{"value.neutral_zero", refused, false, "the three numbers cannot be read as a neutral-zero triple", "send three whole numbers with a zero, and their order"},
    FaultCode{"value.out_of_range", refused, false, "impossible value", "measure again"},
    FaultCode{"value.position", refused, false, "this item is not examined so", "use one of the positions listed"},
    FaultCode{"value.sign", asked_back, false, "readings alone, of a motion toward the low end of its axis, can be meant either way",
              "send toward_deg (their mean, best or last, in the direction of the motion) with them, and where the two do not agree turn the sign of the readings, or of toward_deg; or, where they are right as they stand, send it again with confirmed"},
    FaultCode{"value.step", shape, false, "more decimals than the unit has", "round to the step"},
    FaultCode{"value.trials", refused, false, "too many or too few readings", "send the number of readings the item takes"},
    FaultCode{"value.unit_missing", refused, false, "a number without its unit", "send the number with its unit"},
    FaultCode{"value.unusual", asked_back, false, "possible, but unlikely", "check it; send it again with confirmed, or change it"},
    FaultCode{"value.why", refused, false, "this reason needs a detail", "say why in detail"},
    FaultCode{"websocket.binary", envelope, false, "a binary message", "send JSON as a text message"},
};
static_assert(std::is_sorted(codes.begin(), codes.end(), [](const FaultCode& a, const FaultCode& b) { return a.code < b.code; }), "codes are found by halving");

}  // namespace

std::span<const FaultCode> fault_codes() { return codes; }

const FaultCode* find_fault_code(std::string_view code) {
  const auto found = std::lower_bound(codes.begin(), codes.end(), code, [](const FaultCode& a, std::string_view b) { return a.code < b; });
  return found != codes.end() && found->code == code ? &*found : nullptr;
}

FaultParam::FaultParam(std::string_view name_, std::string_view json_) : name(name_), json(json_) {}

Fault::Fault(std::string_view code_, std::string_view path_, std::string_view expected_, std::string_view got_)
    : code(code_), path(path_), expected(expected_), got(got_) {}
Fault::Fault(const Fault&) = default;
Fault::Fault(Fault&&) noexcept = default;
Fault& Fault::operator=(const Fault&) = default;
Fault& Fault::operator=(Fault&&) noexcept = default;
Fault::~Fault() = default;

Fault Fault::with(std::string_view name, std::string_view json) && {
  params.emplace_back(name, json);
  return std::move(*this);
}

Refusal::Refusal() = default;
Refusal::Refusal(std::vector<Fault> faults_) : faults(std::move(faults_)) {}
Refusal::Refusal(Fault fault) { faults.push_back(std::move(fault)); }
Refusal::Refusal(const Refusal&) = default;
Refusal::Refusal(Refusal&&) noexcept = default;
Refusal& Refusal::operator=(const Refusal&) = default;
Refusal& Refusal::operator=(Refusal&&) noexcept = default;
Refusal::~Refusal() = default;

FaultClass Refusal::number() const {
  FaultClass gravest = asked_back;
  bool first = true;
  for (const Fault& fault : faults) {
    const FaultCode* row = find_fault_code(fault.code);
    const FaultClass one = row != nullptr ? row->number : internal;
    if (first || gravest == asked_back) {
      gravest = one;
    }
    first = false;
  }
  return gravest;
}

bool Refusal::retry() const {
  return !faults.empty() && std::all_of(faults.begin(), faults.end(), [](const Fault& fault) {
    const FaultCode* row = find_fault_code(fault.code);
    return row != nullptr && row->retry;
  });
}

// Never reached: house rules ban `.value()` on results. Ending the program is the honest answer to a programmer's mistake.
void throw_exception_from_error(const Refusal&, const boost::source_location&) { std::abort(); }

}  // namespace limbledger::wire

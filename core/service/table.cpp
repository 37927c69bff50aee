// The whole interface, one line a method; nothing else names one. The order is that of the documentation.
#include "core/service/call.hpp"
#include "core/service/methods/after/follow.hpp"
#include "core/service/methods/after/supervise.hpp"
#include "core/service/methods/clinic/day.hpp"
#include "core/service/methods/clinic/district.hpp"
#include "core/service/methods/clinic/loops.hpp"
#include "core/service/methods/clinic/pair.hpp"
#include "core/service/methods/clinic/put_off.hpp"
#include "core/service/methods/clinic/queue.hpp"
#include "core/service/methods/exam/alert.hpp"
#include "core/service/methods/exam/care.hpp"
#include "core/service/methods/exam/exam.hpp"
#include "core/service/methods/exam/finding.hpp"
#include "core/service/methods/exam/form.hpp"
#include "core/service/methods/exam/judge.hpp"
#include "core/service/methods/exam/note.hpp"
#include "core/service/methods/exchange/enrol.hpp"
#include "core/service/methods/exchange/exchange.hpp"
#include "core/service/methods/ledger/changes.hpp"
#include "core/service/methods/ledger/examiner.hpp"
#include "core/service/methods/ledger/ledger.hpp"
#include "core/service/methods/ledger/replica.hpp"
#include "core/service/methods/ledger/request.hpp"
#include "core/service/methods/ledger/session.hpp"
#include "core/service/methods/ledger/token.hpp"
#include "core/service/methods/letter/letter.hpp"
#include "core/service/methods/letter/take_home.hpp"
#include "core/service/methods/people/person.hpp"
#include "core/service/methods/people/place.hpp"
#include "core/service/methods/say/catalogue.hpp"
#include "core/service/methods/say/document.hpp"
#include "core/service/methods/urgent/transfer.hpp"

#include <array>

namespace limbledger::service {

namespace {

constexpr Traits writes{true, false};
constexpr Traits while_locked{false, true};
constexpr Traits unattended_while_locked{false, true, true};
constexpr Traits unattended_own_exam{false, false, true, true};
constexpr Traits own_exam{false, false, false, true};
constexpr Traits writes_own_exam{true, false, false, true};
constexpr Traits while_locked_own_exam{false, true, false, true};

// clang-format off
constexpr std::array table{
    bind<&health_check>("health.check", to_anybody, "whether the sidecar and its store answer, and within which limits", while_locked),
    bind<&session_open>("session.open", to_anybody, "begins a session and says what it may do", while_locked),
    bind<&session_end>("session.end", to_any_token, "ends the session", while_locked),
    bind<&token_make>("token.make", to_examiner, "a token for another caller: with its scope, its end and, of a kiosk, its one exam", while_locked),
    bind<&token_list>("token.list", to_examiner, "the tokens of this launch, without their texts", while_locked),
    bind<&token_end>("token.end", to_examiner, "ends a token before its time", while_locked),
    bind<&ledger_unlock>("ledger.unlock", to_all_but_kiosk, "opens the ledger with an examiner's passphrase", while_locked),
    bind<&ledger_lock>("ledger.lock", to_examiner, "locks the ledger", while_locked),
    bind<&examiner_add>("examiner.add", to_examiner, "one more examiner of this device, by the printed code; for when every passphrase is lost", while_locked),
    bind<&examiner_read>("examiner.read", to_examiner_viewer, "how the examiners of all devices are called, as far as it has come here"),
    bind<&examiner_amend>("examiner.amend", to_examiner, "the whole name and the role of the examiner who is unlocked here; on every device after an exchange", writes),
    bind<&ledger_verify>("ledger.verify", to_examiner_viewer, "checks every entry and head, and unlocked every seal; names what is damaged", while_locked),
    bind<&replica_list>("replica.list", to_all_but_kiosk, "who else holds the entries of this device, by their receipts, and what waits for earlier entries"),
    bind<&replica_enrol>("replica.enrol", to_examiner, "lets one new device begin to join the clinic, by the printed code"),
    bind<&replica_enrolling>("replica.enrolling", to_examiner, "how that stands, with the six digits to compare", unattended_while_locked),
    bind<&replica_let_in>("replica.let_in", to_examiner, "lets the new device in, by the digits read from its screen and typed"),
    bind<&replica_turn_away>("replica.turn_away", to_examiner, "lets nobody in: the digits differ, or nobody is meant to come", while_locked),
    bind<&exchange_begin>("exchange.begin", to_examiner_sync, "begins to give the hub what it lacks and to take what is new there; other calls go on"),
    bind<&exchange_read>("exchange.read", to_examiner_sync, "how the newest exchange or parcel goes or went, and where this program answers other devices", unattended_while_locked),
    bind<&exchange_end>("exchange.end", to_examiner_sync, "ends the exchange or parcel that is under way; what was taken stays", while_locked),
    bind<&parcel_write>("parcel.write", to_examiner_sync, "begins to write all that this device holds into a sealed file, for a stick"),
    bind<&parcel_take>("parcel.take", to_examiner_sync, "begins to take what is new in such a file; nothing of one with a changed byte"),
    bind<&request_read>("request.read", to_examiner_kiosk, "what the ledger has from one request", own_exam),
    bind<&form_told>("form.describe", to_examiner_kiosk_viewer, "what to draw for a complaint, position by position, with what is withheld", while_locked_own_exam),
    bind<&form_write>("form.write", to_examiner_viewer, "the same form on paper, as one HTML document for A4", while_locked),
    bind<&changes_read>("changes.read", to_examiner_kiosk_viewer, "which records changed since a cursor; waits for it where that is asked for", unattended_own_exam),
    bind<&catalogue_read>("catalogue.read", to_any_token, "items, scales and complaints of the edition at hand", while_locked),
    bind<&person_register>("person.register", to_examiner, "registers a person; look-alikes are listed, never a bar", writes),
    bind<&person_amend>("person.amend", to_examiner, "changes what is known of a person, member by member", writes),
    bind<&person_find>("person.find", to_examiner_viewer, "people by name, birth or home, page by page, with reasons"),
    bind<&person_read>("person.read", to_examiner_viewer, "one person with their exams and look-alikes"),
    bind<&pair_list>("pair.list", to_examiner_viewer, "who may be registered twice, with each field's agreement and weight; nothing is joined by it"),
    bind<&pair_decide>("pair.decide", to_examiner, "that two records are of one person, or are not, or neither after all; the records stay as they are", writes),
    bind<&place_read>("place.read", to_examiner_viewer, "places: travel, telephones, what is there, local protocol"),
    bind<&place_amend>("place.amend", to_examiner, "adds or changes a place", writes),
    bind<&exam_open>("exam.open", to_examiner_kiosk, "begins an exam", writes_own_exam),
    bind<&exam_amend>("exam.amend", to_examiner, "corrects what an exam was opened with: complaint, side, setting, place, injury", writes),
    bind<&exam_read>("exam.read", to_examiner_kiosk_viewer, "one exam as it stands, with conflicts and marks", own_exam),
    bind<&exam_find>("exam.find", to_examiner_viewer, "exams, newest first, page by page, with what called the staff at a kiosk"),
    bind<&consent_record>("consent.record", to_examiner, "consent, company, who spoke, interpreter", writes),
    bind<&impression_record>("impression.record", to_examiner, "the examiner's own impression", writes),
    bind<&plan_record>("plan.record", to_examiner, "what was decided, and what became of it", writes),
    bind<&alert_handle>("alert.handle", to_examiner, "what was done about an alert, or why nothing was", writes),
    bind<&exam_sign>("exam.sign", to_examiner, "signs the exam as it was shown; what is missing is listed, never a bar", writes),
    bind<&exam_transfer>("exam.transfer", to_examiner, "stops the exam for transfer, with what travels along; answers with the note", writes),
    bind<&exam_countersign>("exam.countersign", to_examiner, "the supervisor's own findings and impression beside a signed exam, and what differs", writes),
    bind<&statement_disagree>("statement.disagree", to_examiner, "stands beside a statement, with the reason; takes nothing away", writes),
    bind<&plan_follow>("plan.follow", to_examiner, "what became of a plan item, with the day; also after the signature", writes),
    bind<&outcome_record>("outcome.record", to_examiner, "what was found out later about what the exam asked", writes),
    bind<&exam_withdraw>("exam.withdraw", to_examiner, "marks an exam as void, with the reason", writes),
    bind<&exam_move>("exam.move", to_examiner, "gives an exam to another person, with the reason", writes),
    bind<&exam_swap_sides>("exam.swap_sides", to_examiner, "exchanges left and right of every sided finding, with the reason", writes),
    bind<&addendum_record>("addendum.record", to_examiner, "adds to a signed exam", writes),
    bind<&finding_check>("finding.check", to_examiner_kiosk, "what would be refused or asked back; writes nothing", own_exam),
    bind<&finding_record>("finding.record", to_examiner_kiosk, "records findings, all or none", writes_own_exam),
    bind<&finding_withdraw>("finding.withdraw", to_examiner_kiosk, "takes a finding back, with the reason", writes_own_exam),
    bind<&finding_history>("finding.history", to_examiner_viewer, "every entry of one item, oldest first"),
    bind<&exam_assess>("exam.assess", to_examiner_viewer, "what the findings of an exam support"),
    bind<&step_suggest>("step.suggest", to_examiner, "at most one thing to examine next, and what is withheld now"),
    bind<&document_assess>("document.assess", to_all_but_kiosk, "the same of a document that stands in no ledger", while_locked),
    bind<&statement_explain>("statement.explain", to_examiner_viewer, "how one statement was reached", while_locked),
    bind<&transfer_write>("transfer.write", to_examiner_viewer, "the note of a transfer again, on one page"),
    bind<&day_list>("day.list", to_examiner_viewer, "who came on a day, and what is left of it"),
    bind<&loop_list>("loop.list", to_examiner_viewer, "what is left open, by name, who cannot wait first"),
    bind<&district_count>("district.count", to_examiner_viewer, "what a clinic reports of a period; every number names its exams"),
    bind<&district_report>("district.report", to_examiner, "keeps a count as it is reported, numbered, with the exams behind each number; what changes later is told against it", writes),
    bind<&conflict_list>("conflict.list", to_examiner_viewer, "what disagrees and who looks alike, in the order of possible harm; leaving it loses nothing"),
    bind<&conflict_settle>("conflict.settle", to_examiner, "takes one of the values of a finding as it was written, with the reason; undone by taking another", writes),
    bind<&conflict_put_off>("conflict.put_off", to_examiner, "that a line cannot be decided yet, who was asked, and when to look again; settles nothing", writes),
    bind<&agreement_read>("agreement.read", to_examiner_viewer, "how far two examiners agree, item by item; never of persons"),
    bind<&note_write>("note.write", to_examiner_viewer, "one exam as a page to read and to print: impression and plan first"),
    bind<&letter_write>("letter.write", to_examiner, "a letter about the exam on one sheet, kept as it was printed", writes),
    bind<&letter_read>("letter.read", to_examiner_viewer, "a letter as it was written, with what has changed since"),
    bind<&take_home_write>("take_home.write", to_examiner, "the sheet that the person carries home, in large print"),
};
// clang-format on

}  // namespace

std::span<const Method> methods() { return table; }

}  // namespace limbledger::service

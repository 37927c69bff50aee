#include "core/service/methods/say/document.hpp"

#include "core/service/methods/say/texts.hpp"

#include "core/model/check.hpp"
#include "core/model/exam/day.hpp"
#include "core/service/methods/exam/spread.hpp"
#include "core/service/methods/people/dates.hpp"
#include "core/service/methods/say/assess.hpp"
#include "core/wire/parse.hpp"

#include <utility>

namespace limbledger::service {

namespace {

[[nodiscard]] model::Observation observation_of(const model::Finding& finding) {
  model::Observation observation;
  observation.item = finding.item;
  observation.side = finding.side;
  observation.value = finding.value;
  observation.instrument = finding.instrument;
  observation.position = finding.position;
  observation.end_feel = finding.end_feel;
  observation.pain = finding.pain;
  observation.quality = finding.quality;
  observation.origin = finding.origin;
  observation.despite = finding.despite;
  observation.remark = finding.remark;
  return observation;
}

[[nodiscard]] model::FindingId id_by_place(std::size_t index, std::size_t part) {
  model::FindingId id;
  const std::size_t place = index + 1;
  id.bytes[13] = static_cast<std::uint8_t>(part);
  id.bytes[14] = static_cast<std::uint8_t>(place >> 8U);
  id.bytes[15] = static_cast<std::uint8_t>(place & 255U);
  return id;
}

// The findings as they would be recorded; faults are added where there are any.
[[nodiscard]] std::vector<model::Finding> check_findings(const reference::Edition& edition, const std::vector<model::Finding>& findings,
                                                         const std::vector<std::string>& confirmed, const std::string& path,
                                                         std::vector<wire::Fault>& faults) {
  const model::CatalogueView catalogue = edition.catalogue();
  std::vector<model::Finding> checked;
  for (std::size_t i = 0; i < findings.size(); ++i) {
    model::Checked one = model::check(observation_of(findings[i]), catalogue, confirmed, path + wire::pointer_step(i));
    for (wire::Fault& fault : one.faults) {
      faults.push_back(std::move(fault));
    }
    if (auto apart = spread_fault(edition, observation_of(findings[i]), confirmed, path + wire::pointer_step(i))) {
      faults.push_back(std::move(*apart));
    }
    for (std::size_t part = 0; part < one.observations.size(); ++part) {
      const model::Observation& observation = one.observations[part];
      model::Finding finding = findings[i];
      finding.item = observation.item;
      finding.side = observation.side;
      finding.value = observation.value;
      if (!finding.finding || part > 0) {
        finding.finding = id_by_place(i, part);
      }
      checked.push_back(std::move(finding));
    }
  }
  return checked;
}

// A word that the edition does not have would be read as nothing: a complaint without its dangers, an answer to no alert.
void check_codes(const reference::Edition& edition, const model::Exam& exam, const std::string& path, const std::vector<std::string>& confirmed,
                 std::vector<wire::Fault>& faults) {
  if (edition.sequence(exam.complaint) == nullptr) {
    std::string known;
    for (const model::Sequence& one : edition.sequences()) {
      known += (known.empty() ? "one of: " : ", ") + one.complaint.text;
    }
    faults.emplace_back("params.unknown_word", path + "/complaint", known);
  }
  const auto handled = exam.alerts_handled.value_or(std::vector<model::AlertHandled>{});
  for (std::size_t i = 0; i < handled.size(); ++i) {
    if (edition.alert(std::string_view(handled[i].alert.text)) == nullptr) {
      std::string known;
      for (const reference::AlertRow& row : edition.alerts()) {
        known += (known.empty() ? "one of: " : ", ") + row.alert.text;
      }
      faults.emplace_back("params.unknown_word", path + "/alerts_handled" + wire::pointer_step(i) + "/alert", known);
    }
  }
  const auto addenda = exam.addenda.value_or(std::vector<model::Addendum>{});
  for (std::size_t i = 0; i < addenda.size(); ++i) {
    const auto observed = addenda[i].findings.value_or(std::vector<model::Observation>{});
    for (std::size_t at = 0; at < observed.size(); ++at) {
      const std::string place = path + "/addenda" + wire::pointer_step(i) + "/findings" + wire::pointer_step(at);
      for (wire::Fault& fault : model::check(observed[at], edition.catalogue(), confirmed, place).faults) {
        faults.push_back(std::move(fault));
      }
    }
  }
}

// A document may tell of a time before this program's first release, which a recorded exam cannot; one from more than a year before the day
// to judge by is rather that of a clock that was not set (the year is our own convention).
void doubt_day(const model::PartialDate& as_of, model::Exam& exam) {
  constexpr std::int64_t day_ms = std::int64_t{24} * 3600 * 1000;
  constexpr std::int64_t days_believed = 366;
  if (model::is_of_no_clock(exam.examined_at) && model::can_be_right({as_of.last_day() * day_ms}) &&
      exam.examined_at->ms < (as_of.first_day() - days_believed) * day_ms) {
    exam.day_doubtful = true;
  }
}

// One of a later day than the one to judge by is of a clock that is ahead; a day more than the two may differ by is left to time zones and drift (our
// own convention). Whoever wrote it was asked back before.
void doubt_clock_ahead(const model::PartialDate& as_of, model::Exam& exam) {
  if (exam.examined_at && days_of(*exam.examined_at, exam.offset_min).first > as_of.last_day() + 1) {
    exam.day_doubtful = true;
  }
}

// A document states its own days, so what cannot be is refused; only what lies after `as_of` is asked back.
void check_dates(const ExamDocument& document, const CheckedDocument& checked, const std::optional<std::vector<wire::Name>>& confirmed, std::vector<wire::Fault>& faults) {
  const std::optional<model::Birth> birth = document.person ? document.person->birth : std::nullopt;
  DateCheck dates(Today{document.as_of.last_day(), document.as_of.last_day()}, confirmed);
  if (birth) {
    dates.birth(*birth, "/document/person/birth");
  }
  const auto one_exam = [&](const model::Exam& exam, const std::string& path, const std::vector<model::Finding>& findings,
                            const std::string& findings_path) {
    const Days examined = days_examined(exam).value_or(Days{document.as_of.first_day(), document.as_of.last_day()});
    if (exam.examined_on) {
      dates.said_on(*exam.examined_on, birth, std::nullopt, path + "/examined_on");
    }
    if (exam.examined_at && !exam.day_doubtful.value_or(false)) {
      dates.performed(*exam.examined_at, exam.offset_min, path + "/examined_at");
    }
    dates.born_by(birth, examined, true, "/document/person/birth");
    if (exam.injured_on) {
      dates.injured(*exam.injured_on, examined, true, path + "/injured_on");
      dates.injured_after_birth(*exam.injured_on, birth, true, path + "/injured_on");
    }
    for (std::size_t i = 0; i < findings.size(); ++i) {
      if (findings[i].examined_at && !model::is_of_no_clock(findings[i].examined_at)) {
        dates.performed(*findings[i].examined_at, exam.offset_min, findings_path + wire::pointer_step(i) + "/examined_at");
      }
    }
  };
  one_exam(checked.exam, "/document/exam", document.findings, "/document/findings");
  for (std::size_t i = 0; i < checked.earlier.size(); ++i) {
    const std::string path = "/document/earlier" + wire::pointer_step(i);
    one_exam(checked.earlier[i], path, document.earlier[i].findings.value_or(std::vector<model::Finding>{}), path + "/findings");
  }
  faults.insert(faults.end(), dates.faults().begin(), dates.faults().end());
}

}  // namespace

Result<CheckedDocument> check_document(const reference::Edition& edition, const ExamDocument& document,
                                       const std::optional<std::vector<wire::Name>>& confirmed) {
  std::vector<wire::Fault> faults;
  if (document.format.text != "limbledger-exam/1") {
    faults.emplace_back("params.wrong_type", "/document/format", "limbledger-exam/1");
  }
  if (document.exam.findings) {
    faults.emplace_back("params.unknown_member", "/document/exam/findings", "findings beside the exam, in /document/findings");
  }
  if (document.place && document.exam.place != document.place->place) {
    faults.emplace_back("place.unknown", "/document/place/place", "the place of the exam");
  }
  CheckedDocument checked{document.person, document.exam, document.earlier};
  doubt_day(document.as_of, checked.exam);  // not of an earlier one, which may have been written by hand or elsewhere before this program was there
  check_dates(document, checked, confirmed, faults);
  doubt_clock_ahead(document.as_of, checked.exam);
  std::vector<std::string> codes;
  for (const wire::Name& code : confirmed ? *confirmed : std::vector<wire::Name>{}) {
    codes.push_back(code.text);
  }
  check_codes(edition, document.exam, "/document/exam", codes, faults);
  for (std::size_t i = 0; i < document.earlier.size(); ++i) {
    check_codes(edition, document.earlier[i], "/document/earlier" + wire::pointer_step(i), codes, faults);
  }
  checked.exam.findings = check_findings(edition, document.findings, codes, "/document/findings", faults);
  for (std::size_t i = 0; i < checked.earlier.size(); ++i) {
    if (checked.earlier[i].findings) {
      const std::string path = "/document/earlier" + wire::pointer_step(i) + "/findings";
      checked.earlier[i].findings = check_findings(edition, *document.earlier[i].findings, codes, path, faults);
    }
  }
  if (!faults.empty()) {
    return wire::Refusal(std::move(faults));
  }
  return checked;
}

Result<interpret::Assessment> document_assess(Context& context, const DocumentAssessParams& params) {
  const auto checked = check_document(*context.edition, params.document, params.confirmed);
  std::vector<wire::Fault> faults = check_priors(*context.edition, params.priors);
  for (wire::Fault& fault : check_only(*context.edition, params.only)) {
    faults.push_back(std::move(fault));
  }
  if (!checked) {
    wire::Refusal refusal = checked.error();
    refusal.faults.insert(refusal.faults.end(), faults.begin(), faults.end());
    return refusal;
  }
  if (!faults.empty()) {
    return wire::Refusal(std::move(faults));
  }
  const auto sentences = Sentences::in(params.language);
  if (!sentences) {
    return sentences.error();
  }
  interpret::AssessAsk ask = make_ask(params.document.as_of, params.only, params.priors);
  ask.place = params.document.place;
  interpret::Assessment assessment = interpret::assess(checked->exam, checked->person, checked->earlier, *context.edition, ask);
  add_texts(checked->exam, *sentences, *context.edition, assessment);
  return assessment;
}

}  // namespace limbledger::service

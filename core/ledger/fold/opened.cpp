#include "core/ledger/fold/opened.hpp"

#include "core/wire/read.hpp"

namespace limbledger::ledger {

namespace {

template <class T>
void read_body(const wire::Document& document, const wire::Node& node, Body& body, wire::ReadReport& report) {
  T target{};
  wire::read_into(wire::type_of<T>(), &target, document, node, wire::Unknown::ignore, "", report);
  if (report.faults.empty()) {
    body = std::move(target);
  }
}

using BodyReader = void (*)(const wire::Document&, const wire::Node&, Body&, wire::ReadReport&);

struct BodyRow {
  std::string_view op;
  BodyReader read;
};

constexpr BodyRow body_rows[] = {
    {"person", &read_body<model::PersonBody>},         {"person_change", &read_body<model::PersonBody>},
    {"exam", &read_body<model::ExamBody>},             {"consent", &read_body<model::ConsentBody>},
    {"finding", &read_body<model::FindingBody>},       {"withdraw", &read_body<model::WithdrawBody>},
    {"impression", &read_body<model::ImpressionBody>}, {"plan", &read_body<model::PlanBody>},
    {"sign", &read_body<model::SignBody>},             {"addendum", &read_body<model::AddendumBody>},
    {"move", &read_body<model::MoveBody>},             {"swap_sides", &read_body<model::SwapSidesBody>},
    {"settle", &read_body<model::SettleBody>},         {"place", &read_body<model::PlaceBody>},
    {"alert_handled", &read_body<model::AlertHandledBody>}, {"transfer", &read_body<model::TransferBody>},
    {"disagree", &read_body<model::DisagreeBody>},     {"became", &read_body<model::BecameBody>},
    {"outcome", &read_body<model::OutcomeBody>},       {"countersign", &read_body<model::CountersignBody>},
    {"letter", &read_body<model::LetterBody>},         {"link", &read_body<model::LinkBody>},
    {"examiner", &read_body<model::ExaminerNameBody>}, {"put_off", &read_body<model::PutOffBody>},
    {"report", &read_body<model::ReportBody>},
};

}  // namespace

Result<void> check_body(std::string_view op, std::string_view body_json) {
  const auto document = wire::parse(body_json);
  if (!document) {
    return document.error();
  }
  Body body;
  wire::ReadReport report;
  for (const BodyRow& known : body_rows) {
    if (known.op == op) {
      known.read(*document, document->root(), body, report);
    }
  }
  return report.faults.empty() ? Result<void>() : wire::Fault{report.faults.front().code, "", report.faults.front().expected};
}

Result<Opened> open_operation(const model::ClinicId& clinic, const ObjectKey& key, const Row& row) {
  const Result<Bytes> plain = open(key, {clinic, row.replica, row.seq}, row.header, row.body);
  if (!plain) {
    return plain.error();
  }
  const Result<Header> header = Header::from_bytes(row.header);
  const auto document = wire::parse({reinterpret_cast<const char*>(plain->data()), plain->size()});
  if (!header || !document) {
    return entry_fault("entry.format", row.replica, row.seq, row.hash);
  }
  Opened opened;
  opened.entry_ = entry_id(row.hash);
  opened.hash_ = row.hash;
  opened.replica_ = row.replica;
  opened.seq_ = row.seq;
  opened.stamp_ = header->stamp;
  wire::ReadReport report;
  wire::read_into(wire::type_of<model::Operation>(), &opened.operation_, *document, document->root(), wire::Unknown::ignore, "", report);
  // Which object it is about must be known, and must be the key's: else erasing one exam would miss or take another's.
  if (opened.operation_.object != key.object()) {
    return entry_fault("entry.key", row.replica, row.seq, row.hash);
  }
  opened.newer_parts_ = report.unknown_members != 0 || opened.operation_.v.steps > model::operation_version;
  if (!report.faults.empty() || opened.operation_.min.steps > model::operation_version) {
    opened.newer_parts_ = true;
    return opened;
  }
  const wire::Node* body = document->child(document->root(), "body");
  for (const BodyRow& known : body_rows) {
    if (body != nullptr && known.op == opened.operation_.op.text) {
      wire::ReadReport of_body;
      known.read(*document, *body, opened.body_, of_body);
      opened.newer_parts_ = opened.newer_parts_ || (of_body.faults.empty() && of_body.unknown_members != 0);
    }
  }
  opened.newer_parts_ = opened.newer_parts_ || !opened.readable();
  return opened;
}

}  // namespace limbledger::ledger

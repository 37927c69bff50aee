#include "core/reference/edition.hpp"
#include "core/report/page.hpp"
#include "core/report/working/working_page.hpp"
#include "core/service/methods/people/dates.hpp"
#include "core/service/methods/say/document.hpp"
#include "core/service/methods/say/explain.hpp"
#include "core/service/methods/say/texts.hpp"
#include "core/wire/read.hpp"
#include "core/wire/write.hpp"
#include "rpc/program/commands.hpp"
#include "rpc/program/folder.hpp"
#include "rpc/program/world.hpp"

#include <unistd.h>

#include <iostream>

namespace limbledger::rpc {

namespace {

constexpr std::string_view document_path = "/document";

// A faulty document is an answer, whatever the class of the fault; only a failure inside is not. Paths point into the file.
[[nodiscard]] Problem faulty(wire::Refusal refusal, const std::string& file) {
  for (wire::Fault& fault : refusal.faults) {
    if (fault.path.starts_with(document_path)) {
      fault.path.erase(0, document_path.size());
    }
  }
  const Problem problem = problem_of(refusal, file);
  return {problem.code() == ExitCode::internal ? ExitCode::internal : ExitCode::bad_answer, problem.what()};
}

[[nodiscard]] std::string document_text(const std::string& file) {
  auto text = file == "-" ? read_descriptor(STDIN_FILENO, wire::message_bytes_max) : read_file(file, wire::message_bytes_max);
  if (!text) {
    throw Problem(ExitCode::bad_answer, file + ": cannot be read, or is larger than 1 MiB\n  what to do: name a document of the format limbledger-exam/1");
  }
  // A file may begin with a byte order mark; on the wire it is refused.
  return text->starts_with("\xEF\xBB\xBF") ? text->substr(3) : std::move(*text);
}

[[nodiscard]] service::DocumentAssessParams read_document(const Options& options) {
  const std::string text = document_text(options.file);
  const auto json = wire::parse(text);
  if (!json) {
    throw faulty(json.error(), options.file);
  }
  auto document = wire::read<service::ExamDocument>(*json, json->root(), wire::Unknown::refuse, std::string(document_path));
  if (!document) {
    throw faulty(document.error(), options.file);
  }
  service::DocumentAssessParams params;
  params.document = std::move(*document);
  for (const std::string& code : options.confirmed) {
    if (!params.confirmed) {
      params.confirmed.emplace();
    }
    params.confirmed->push_back({code});
  }
  return params;
}

}  // namespace

namespace {

[[nodiscard]] report::PageNames names_of(const service::ExamDocument& document, const report::Words& words) {
  report::PageNames names;
  MachineWorld world;
  names.now = service::now_if_right(world.now());  // as a note: a day that was named may have passed
  if (document.ledger_kind) {
    names.banner = service::banner_of(static_cast<service::LedgerKind>(*document.ledger_kind), words);
  }
  if (document.names) {
    service::take_names(*document.names, words, names);
  }
  return names;
}

[[nodiscard]] interpret::Working working_of(service::Context& context, const service::DocumentAssessParams& params, const Options& options) {
  service::StatementExplainParams asked;
  asked.document = params.document;
  asked.statement = {options.explain};
  asked.language = params.language;
  auto working = service::explain_document(context, asked);
  if (!working) {
    wire::Refusal refusal = working.error();
    if (refusal.faults.front().code == "statement.unknown") {
      throw Problem(ExitCode::bad_answer, options.explain + ": not of this assessment, or of both sides\n  what to do: limbledger assess " + options.file + " --names lists what can be explained");
    }
    throw faulty(std::move(refusal), options.file);
  }
  return std::move(*working);
}

}  // namespace

ExitCode assess(const Options& options) {
  service::DocumentAssessParams params = read_document(options);
  service::Context context;
  context.edition = reference::built_in_edition();
  const report::Words* words = report::built_in_words();
  if (context.edition == nullptr || words == nullptr) {
    throw Problem(ExitCode::internal, "the facts or words built into this program do not load\n  what to do: build it again and run its tests");
  }
  const bool in_words = !options.explain.empty() || options.names;
  if (in_words) {
    params.language = model::Word{"en"};
  }
  const auto assessment = service::document_assess(context, params);
  if (!assessment) {
    throw faulty(assessment.error(), options.file);
  }
  if (options.json && !in_words) {
    std::cout << wire::write(*assessment) << "\n";
    return ExitCode::done;
  }
  const auto checked = service::check_document(*context.edition, params.document, params.confirmed);
  if (!checked) {
    throw faulty(checked.error(), options.file);
  }
  const report::PageNames names = names_of(params.document, *words);
  if (!in_words) {
    std::cout << report::exam_page(checked->exam, checked->person, *assessment, *words, *context.edition, names);
    return ExitCode::done;
  }
  const report::PageView view(checked->exam, checked->person, *assessment, *words, *context.edition, names);
  if (options.names) {
    std::cout << report::sheet_text(report::names_sheet(view), *words);
    return ExitCode::done;
  }
  const interpret::Working working = working_of(context, params, options);
  std::cout << (options.json ? wire::write(working) + "\n" : report::sheet_text(report::working_sheet(view, working), *words));
  return ExitCode::done;
}

}  // namespace limbledger::rpc

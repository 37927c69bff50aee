#include "rpc/program/network/description.hpp"

#include "core/wire/write.hpp"
#include "rpc/emit/page/page.hpp"
#include "rpc/program/examples/examples.hpp"
#include "rpc/program/examples/talk.hpp"

#include <memory>

namespace limbledger::rpc {

namespace {

// Stricter than a front end's: what it shows is all in the page.
constexpr std::string_view description_fields =
    "Content-Security-Policy: default-src 'none'; script-src 'self'; style-src 'self'; connect-src 'self'; img-src data:; base-uri 'none'; form-action 'none'; "
    "frame-ancestors 'none'\r\nReferrer-Policy: no-referrer\r\n";

[[nodiscard]] std::vector<TryLine> lines_to_try() {
  std::vector<TryLine> lines;
  for (const Line& line : example_talk()) {
    std::string keep;
    for (const Kept& part : line.keep) {
      keep += (keep.empty() ? "" : ",") + wire::quoted(part.name) + ":" + wire::quoted(part.pointer);
    }
    lines.push_back({line.method, line.title, line.params, "{" + keep + "}"});
  }
  return lines;
}

}  // namespace

void add_description(const OpenedLedger* in_memory, const Service& service, Pages& pages) {
  const std::string code = in_memory == nullptr ? std::string() : in_memory->shown_code();
  const auto kept = std::make_shared<std::optional<Page>>();
  const auto page = [kept, code, table = service.table, limits = service.limits, network = *service.context.network]() -> const Page* {
    if (!*kept) {
      const std::vector<TryLine> lines = code.empty() ? std::vector<TryLine>{} : lines_to_try();
      PageAsk ask;
      ask.table = table;
      ask.examples = held_talk().examples;
      ask.walk = held_walk().examples;
      ask.limits = limits;
      ask.network = network;
      ask.try_out = lines;
      if (!code.empty()) {
        ask.examiner = shown_examiner;
        ask.passphrase = shown_passphrase;
        ask.kept = "{\"passphrase\":" + wire::quoted(shown_passphrase) + ",\"code\":" + wire::quoted(code) + "}";
      }
      kept->emplace(Page{"text/html; charset=utf-8", description_page(ask), std::string(description_fields)});
    }
    return &**kept;
  };
  const std::string fields(description_fields);
  pages.insert_or_assign("/description", Page{"text/html; charset=utf-8", {}, fields, page});
  pages.insert_or_assign("/description.js", Page{"text/javascript; charset=utf-8", std::string(description_script()), fields});
  pages.insert_or_assign("/description.css", Page{"text/css; charset=utf-8", std::string(description_style()), fields});
  if (in_memory != nullptr) {
    pages.try_emplace("/", Page{"text/html; charset=utf-8", {}, fields, page});
  }
}

}  // namespace limbledger::rpc

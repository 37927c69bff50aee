#include "rpc/emit/openrpc.hpp"

#include "core/service/call.hpp"
#include "core/service/methods/ledger/changes.hpp"
#include "core/wire/parse.hpp"
#include "core/wire/fault.hpp"
#include "core/wire/schema.hpp"
#include "rpc/access/scope.hpp"
#include "rpc/emit/page/faults_of.hpp"
#include "rpc/protocol/envelope.hpp"
#include "rpc/protocol/error.hpp"

#include <algorithm>

namespace limbledger::rpc {

namespace {

using wire::quoted;

struct Params {
  std::string list;
  bool either = true;  // also by position
};

// OpenRPC wants required params before the others. Where the struct has them mixed, only names can be used.
[[nodiscard]] Params params_of(const wire::Type& type, wire::SchemaSet& schemas) {
  Params params;
  if (type.kind != wire::Kind::object) {
    return params;
  }
  std::vector<const wire::Field*> fields;
  for (const wire::Field& field : type.fields) {
    fields.push_back(&field);
  }
  const auto required = [](const wire::Field* field) { return wire::member_required(*field); };
  params.either = std::is_partitioned(fields.begin(), fields.end(), required);
  std::stable_partition(fields.begin(), fields.end(), required);
  for (const wire::Field* field : fields) {
    params.list += (params.list.empty() ? "" : ",") + ("{\"name\":" + quoted(field->name));
    if (!field->note.empty()) {
      params.list += ",\"description\":" + quoted(field->note);
    }
    params.list += std::string(",\"required\":") + (required(field) ? "true" : "false") + ",\"schema\":" + schemas.of(field->type()) + "}";
  }
  return params;
}

// Example pairings: params by name, in the order in which they were sent.
[[nodiscard]] std::string examples_text(std::string_view method, std::span<const Example> examples) {
  std::string pairings;
  for (const Example& example : examples) {
    const auto sent = example.method == method ? wire::parse(example.params) : Result<wire::Document>(wire::Fault{"params.missing", ""});
    if (!sent) {
      continue;
    }
    std::string params;
    for (std::uint32_t at = sent->root().first; at != 0; at = sent->at(at).next) {
      params += (params.empty() ? "" : ",") + ("{\"name\":" + quoted(sent->at(at).key)) + ",\"value\":" + std::string(sent->at(at).raw) + "}";
    }
    pairings += (pairings.empty() ? "" : ",") + ("{\"name\":" + quoted(example.title)) + ",\"params\":[" + params +
                "],\"result\":{\"name\":\"result\",\"value\":" + example.result + "}}";
  }
  return pairings.empty() ? std::string{} : ",\"examples\":[" + pairings + "]";
}

[[nodiscard]] std::string words_text(std::uint8_t bits) {
  std::string text;
  for (const ScopeWord& one : scope_words) {
    if ((bits & static_cast<std::uint8_t>(one.scope)) != 0) {
      text += (text.empty() ? "" : ",") + quoted(one.word);
    }
  }
  return "[" + text + "]";
}

// The same as the description says, for programs. A kiosk goes on with its own exam where nobody else may while it is locked.
[[nodiscard]] std::string traits_text(const service::Method& method) {
  const std::uint8_t scopes = method.scopes.open ? service::to_any_token.bits : method.scopes.bits;
  const auto kiosk = static_cast<std::uint8_t>(method.of_own_exam ? static_cast<std::uint8_t>(service::Scope::kiosk) & scopes : 0);
  return std::string(",\"x-writes\":") + (method.writes ? "true" : "false") + ",\"x-needs-token\":" + (method.scopes.open ? "false" : "true") +
         ",\"x-scopes\":" + words_text(scopes) + ",\"x-while-locked\":" + words_text(method.while_locked ? scopes : kiosk);
}

[[nodiscard]] std::string code_list(std::span<const std::string_view> codes) {
  std::string text;
  for (const std::string_view code : codes) {
    text += (text.empty() ? "" : ",") + quoted(code);
  }
  return "[" + text + "]";
}

// Its errors by number, and its own codes by name: those of the page, from the same table.
[[nodiscard]] std::string faults_text(const service::Method& method) {
  const std::vector<std::string_view> own = faults_of(method);
  const auto has_one = [](std::span<const std::string_view> codes, const ErrorNumber& number) {
    return std::any_of(codes.begin(), codes.end(), [&](std::string_view code) { return wire::find_fault_code(code)->number == number.number; });
  };
  std::string errors;
  for (const ErrorNumber& number : error_numbers()) {
    if (has_one(own, number) || has_one(faults_of_every_call(), number)) {
      errors += (errors.empty() ? "" : ",") + ("{\"$ref\":" + quoted("#/components/errors/" + std::string(number.name))) + "}";
    }
  }
  return ",\"errors\":[" + errors + "],\"x-faults\":" + code_list(own);
}

[[nodiscard]] std::string method_text(const service::Method& method, std::span<const Example> examples, wire::SchemaSet& schemas) {
  const Params params = params_of(method.params(), schemas);
  return "{\"name\":" + quoted(method.name) + ",\"summary\":" + quoted(method.summary) + ",\"description\":" +
         quoted("May be called by: " + scopes_text(method.scopes) + "." + (method.writes ? " Writes; the same request again writes nothing new." : "") +
                (method.while_locked ? " Answers also while the ledger is locked." : "")) +
         ",\"paramStructure\":" + (params.either ? "\"either\"" : "\"by-name\"") + ",\"params\":[" + params.list +
         "],\"result\":{\"name\":\"result\",\"schema\":" + schemas.of(method.result()) + "}" + faults_text(method) + traits_text(method) + examples_text(method.name, examples) + "}";
}

[[nodiscard]] std::string errors_text() {
  std::string text;
  for (const ErrorNumber& number : error_numbers()) {
    std::string codes;
    for (const wire::FaultCode& row : wire::fault_codes()) {
      if (row.number == number.number) {
        codes += (codes.empty() ? "" : ",") + quoted(row.code);
      }
    }
    text += (text.empty() ? "" : ",") + quoted(number.name) + ":{\"code\":" + std::to_string(static_cast<int>(number.number)) +
            ",\"message\":" + quoted(number.message) + ",\"data\":{\"faults\":[" + codes + "]}}";
  }
  return text;
}

// What comes unasked over WebSocket: what changes.read would say.
[[nodiscard]] std::string notifications_text(std::span<const service::Method> table, wire::SchemaSet& schemas) {
  const auto row = std::find_if(table.begin(), table.end(), [](const service::Method& method) { return method.name == "changes.read"; });
  return row == table.end() ? std::string()
                            : "{\"name\":" + quoted(changed_name) +
                                  ",\"summary\":\"which records changed; sent over WebSocket once a session is open\",\"schema\":" + schemas.of(row->result()) + "},{\"name\":" + quoted(staff_called_name) +
                                  ",\"summary\":\"an answer at a kiosk asks its person to call the staff; sent over WebSocket to the sessions of examiners, also while the "
                                  "ledger is locked. Once it is unlocked changes.read says which answers, as staff_called\",\"schema\":" +
                                  schemas.of(wire::type_of<service::StaffCalled>()) + "}";
}

}  // namespace

std::string openrpc_text(std::span<const service::Method> table, std::span<const Example> examples) {
  wire::SchemaSet schemas("#/components/schemas/");
  std::string methods = "{\"name\":" + quoted(discover_name) +
                        ",\"summary\":\"This document\",\"description\":\"May be called by anybody who may call anything. Answers also while the "
                        "ledger is locked.\",\"x-writes\":false,\"x-needs-token\":true,\"x-scopes\":" + words_text(service::to_any_token.bits) +
                        ",\"x-while-locked\":" + words_text(service::to_any_token.bits) + ",\"paramStructure\":\"either\",\"params\":[],\"result\":{\"name\":\"result\",\"schema\":{\"type\":\"object\"}},\"examples\":[{\"name\":\"how it begins\",\"params\":[],\"result\":{\"name\":"
                        "\"result\",\"value\":{\"openrpc\":\"1.3.2\"}}}]}";
  for (const service::Method& method : table) {
    methods += "," + method_text(method, examples, schemas);
  }
  static_cast<void>(schemas.of(wire::type_of<ErrorData>()));
  const std::string notifications = notifications_text(table, schemas);
  std::string named;
  for (const auto& [name, schema] : schemas.named()) {
    named += (named.empty() ? "" : ",") + quoted(name) + ":" + schema;
  }
  return "{\"openrpc\":\"1.3.2\",\"info\":{\"title\":\"limbledger\",\"description\":\"Examinations of the leg, recorded and read. The data of "
         "every error is of the schema ErrorData.\",\"version\":\"" +
         std::to_string(service::protocol_newest) + ".0.0\"},\"methods\":[" + methods + "],\"components\":{\"schemas\":{" + named +
         "},\"errors\":{" + errors_text() + "}},\"x-faults-of-every-call\":" + code_list(faults_of_every_call()) + ",\"x-notifications\":[" + notifications + "]}";
}

std::vector<std::string> name_clashes(std::span<const service::Method> table) {
  wire::SchemaSet schemas("#/");
  for (const service::Method& method : table) {
    static_cast<void>(schemas.of(method.params()));
    static_cast<void>(schemas.of(method.result()));
  }
  return schemas.clashes();
}

}  // namespace limbledger::rpc

#include "rpc/emit/files.hpp"

#include "core/wire/schema.hpp"
#include "rpc/emit/openrpc.hpp"
#include "rpc/protocol/error.hpp"

namespace limbledger::rpc {

namespace {

using wire::quoted;

// Every named type that `type` leads to, itself included. Alternatives of a choice are left to the type that holds
// the choice, because their `kind` belongs to it.
void collect(const wire::Type& type, std::map<std::string, const wire::Type*>& found) {
  switch (type.kind) {
    case wire::Kind::optional:
    case wire::Kind::list:
      return collect(type.inner(), found);
    case wire::Kind::choice:
      for (const wire::Alternative& alternative : type.alternatives) {
        for (const wire::Field& field : alternative.type().fields) {
          collect(field.type(), found);
        }
      }
      return;
    case wire::Kind::object:
    case wire::Kind::word:
      break;
    default:
      return;
  }
  if (!type.name.empty() && !found.try_emplace(std::string(type.name), &type).second) {
    return;
  }
  for (const wire::Field& field : type.fields) {
    collect(field.type(), found);
  }
}

[[nodiscard]] std::string faults_text() {
  std::string rows;
  for (const wire::FaultCode& row : wire::fault_codes()) {
    rows += (rows.empty() ? "" : ",") + ("{\"code\":" + quoted(row.code)) + ",\"number\":" + std::to_string(static_cast<int>(row.number)) +
            ",\"retry\":" + (row.retry ? "true" : "false") + ",\"meaning\":" + quoted(row.meaning) + ",\"hint\":" + quoted(row.hint) + "}";
  }
  return "{\"faults\":[" + rows + "]}";
}

[[nodiscard]] std::size_t end_of_quotes(std::string_view json, std::size_t at) {
  for (++at; at < json.size() && json[at] != '"'; ++at) {
    at += json[at] == '\\' ? 1U : 0U;
  }
  return at;
}

}  // namespace

std::string laid_out(std::string_view json) {
  std::string out;
  std::size_t depth = 0;
  const auto new_line = [&] { out += "\n" + std::string(2 * depth, ' '); };
  for (std::size_t at = 0; at < json.size(); ++at) {
    const char c = json[at];
    const bool opens = c == '{' || c == '[';
    if (c == '"') {
      const std::size_t end = end_of_quotes(json, at);
      out += json.substr(at, end + 1 - at);
      at = end;
    } else if (opens && at + 1 < json.size() && (json[at + 1] == '}' || json[at + 1] == ']')) {
      out += json.substr(at, 2);
      ++at;
    } else if (opens) {
      out += c;
      ++depth;
      new_line();
    } else if (c == '}' || c == ']') {
      --depth;
      new_line();
      out += c;
    } else if (c == ',') {
      out += c;
      new_line();
    } else {
      out += c;
      out += c == ':' ? " " : "";
    }
  }
  return out + "\n";
}

std::map<std::string, std::string> schema_files(std::span<const service::Method> table, std::span<const StoredShape> stored,
                                                std::span<const Example> examples) {
  std::map<std::string, const wire::Type*> types;
  for (const service::Method& method : table) {
    collect(method.params(), types);
    collect(method.result(), types);
  }
  collect(wire::type_of<ErrorObject>(), types);
  std::map<std::string, std::string> files;
  for (const auto& [name, type] : types) {
    files[name + ".schema.json"] = laid_out(wire::schema_document(*type));
  }
  for (const StoredShape& shape : stored) {
    files["ledger/v1/" + shape.name + ".schema.json"] = laid_out(wire::schema_document(shape.type()));
  }
  files["openrpc.json"] = laid_out(openrpc_text(table, examples));
  files["faults.json"] = laid_out(faults_text());
  return files;
}

}  // namespace limbledger::rpc

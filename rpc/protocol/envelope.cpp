#include "rpc/protocol/envelope.hpp"

#include "core/wire/parse.hpp"
#include "core/wire/write.hpp"
#include "rpc/protocol/error.hpp"

#include <algorithm>
#include <exception>
#include <new>

namespace limbledger::rpc {

namespace {

using wire::Document;
using wire::Fault;
using wire::Node;
using wire::NodeKind;
using wire::Refusal;

[[nodiscard]] bool known_here(std::span<const service::Method> table, std::string_view name) {
  return name == discover_name || std::any_of(table.begin(), table.end(), [&](const service::Method& m) { return m.name == name; });
}

// Copied JSON may hold line ends between its tokens; a reply is one line in every framing.
[[nodiscard]] std::string on_one_line(std::string reply) {
  for (const char end : {'\n', '\r'}) {
    // Nearly always there is none, which `find` knows many times sooner than a walk over every letter.
    if (const auto first = reply.find(end); first != std::string::npos) {
      std::replace(reply.begin() + static_cast<std::ptrdiff_t>(first), reply.end(), end, ' ');
    }
  }
  return reply;
}

// `method` is text that was sent: it is told on only where it is a name of the table.
[[nodiscard]] std::string error_reply(const Service& service, std::string_view method, const Refusal& refusal, std::string_view id) {
  std::string incident;
  if (service.failed && !refusal.faults.empty()) {
    incident = service.failed(known_here(service.table, method) ? method : std::string_view{}, refusal.faults.front().code);
  }
  const bool internal = refusal.number() == wire::FaultClass::internal;
  return "{\"jsonrpc\":\"2.0\",\"error\":" + wire::write(error_of(refusal, internal ? std::optional(incident) : std::nullopt)) +
         ",\"id\":" + std::string(id) + "}";
}

[[nodiscard]] Result<std::string> discover(const Service& service, const Node* params) {
  if (!service.discover) {
    return Fault{"method.unknown", "", "a method of this table"};
  }
  if (!service::to_any_token.allows(service.context.caller.scope)) {
    return service.context.caller.scope == service::Scope::none ? Fault{"token.missing", "", "a token, or session.open first"}
                                                                : Fault{"token.scope", "", "a token"};
  }
  if (params != nullptr && params->count != 0) {
    return Fault{"limit.items", "", "no params", std::to_string(params->count)};
  }
  return service.discover();
}

// Core reports by Result; what is caught here is the library's own, such as lack of memory.
[[nodiscard]] Result<std::string> run(const Service& service, std::string_view method, const Document& document, const Node* params) {
  try {
    return method == discover_name ? discover(service, params) : service::call(service.table, service.context, method, document, params);
  } catch (const std::bad_alloc&) {
    return Fault{"internal.memory", ""};
  } catch (const std::exception&) {
    return Fault{"internal.failure", ""};
  }
}

[[nodiscard]] bool is_response(const Document& document, const Node& call) {
  return document.child(call, "method") == nullptr && (document.child(call, "result") != nullptr || document.child(call, "error") != nullptr);
}

// What is wrong with one member of the envelope, or nothing.
[[nodiscard]] std::optional<Fault> envelope_fault(const Node* id, const Node* version, const Node* method, const Node* params,
                                                  const std::string& path) {
  if (id != nullptr && id->kind != NodeKind::text && id->kind != NodeKind::number && id->kind != NodeKind::null) {
    return Fault{"request.envelope", path + "/id", "a string, a number or null"};
  }
  if (id != nullptr && id->beyond_double) {
    return Fault{"request.envelope", path + "/id", "a number within the range of a double"};
  }
  if (version == nullptr || version->kind != NodeKind::text || version->text != "2.0") {
    return Fault{"request.envelope", path + "/jsonrpc", "the string 2.0"};
  }
  if (method == nullptr || method->kind != NodeKind::text) {
    return Fault{"request.envelope", path + "/method", "a string"};
  }
  if (params != nullptr && params->kind != NodeKind::object && params->kind != NodeKind::list) {
    return Fault{"request.envelope", path + "/params", "an object or an array; leave it out for none"};
  }
  return std::nullopt;
}

// `instead`: the fault that every call gets without being run.
[[nodiscard]] std::optional<std::string> answer_one(const Service& service, const Document& document, const Node& call, const std::string& path,
                                                    const Fault* instead) {
  if (call.kind != NodeKind::object) {
    return error_reply(service, {}, Fault{"request.envelope", path, "an object"}, "null");
  }
  if (is_response(document, call)) {
    return std::nullopt;
  }
  const Node* id = document.child(call, "id");
  const Node* method = document.child(call, "method");
  const Node* params = document.child(call, "params");
  if (const auto fault = envelope_fault(id, document.child(call, "jsonrpc"), method, params, path)) {
    const bool id_legal = id != nullptr && id->kind != NodeKind::object && id->kind != NodeKind::list && id->kind != NodeKind::boolean && !id->beyond_double;
    return error_reply(service, {}, *fault, id_legal ? id->raw : std::string_view("null"));
  }
  if (service.called && instead == nullptr) {
    service.called(method->text);
  }
  const Result<std::string> result = instead != nullptr ? Result<std::string>(*instead) : run(service, method->text, document, params);
  if (!result) {
    // Told to the log in either case; sent only to one who asked.
    std::string reply = error_reply(service, method->text, result.error(), id != nullptr ? id->raw : std::string_view("null"));
    return id != nullptr ? std::optional(std::move(reply)) : std::nullopt;
  }
  if (id == nullptr) {
    service.context.wait_ms.reset();
    return std::nullopt;
  }
  return "{\"jsonrpc\":\"2.0\",\"result\":" + *result + ",\"id\":" + std::string(id->raw) + "}";
}

[[nodiscard]] std::optional<std::string> answer_batch(const Service& service, const Document& document, const Node& batch, const Fault* instead) {
  if (batch.count == 0) {
    return error_reply(service, {}, Fault{"request.envelope", "", "at least one call in a batch"}, "null");
  }
  if (batch.count > service.limits.batch_calls) {
    return error_reply(service, {},
                       Fault{"limit.batch", "", "at most " + std::to_string(service.limits.batch_calls), std::to_string(batch.count)}.with(
                           "batch", std::to_string(service.limits.batch_calls)),
                       "null");
  }
  std::string replies;
  std::size_t position = 0;
  for (std::uint32_t index = batch.first; index != 0; index = document.at(index).next, ++position) {
    if (auto reply = answer_one(service, document, document.at(index), wire::pointer_step(position), instead)) {
      replies += (replies.empty() ? "" : ",") + std::move(*reply);
    }
  }
  service.context.wait_ms.reset();  // asked again, what the others wrote would be written again
  return replies.empty() ? std::nullopt : std::optional("[" + replies + "]");
}

[[nodiscard]] Refusal named_limit(Refusal refusal, const Limits& limits) {
  for (Fault& fault : refusal.faults) {
    if (fault.code == "limit.depth") {
      fault.params.emplace_back("depth", std::to_string(limits.depth));
    }
  }
  return refusal;
}

[[nodiscard]] std::optional<std::string> answer_as(std::string_view text, const Service& service, const Fault* instead) {
  if (text.size() > service.limits.message_bytes) {
    return answer_too_large(service);
  }
  const Result<Document> document = wire::parse(text, service.limits.depth);
  if (!document) {
    return error_reply(service, {}, named_limit(document.error(), service.limits), "null");
  }
  const Node& root = document->root();
  auto reply = root.kind == NodeKind::list ? answer_batch(service, *document, root, instead) : answer_one(service, *document, root, "", instead);
  return reply ? std::optional(on_one_line(std::move(*reply))) : std::nullopt;
}

}  // namespace

std::string answer_too_large(const Service& service) {
  const std::string most = std::to_string(service.limits.message_bytes);
  return error_reply(service, {}, Fault{"limit.size", "", "at most " + most + " bytes"}.with("bytes", most), "null");
}

std::string refusal_text(const Service& service, const wire::Fault& fault) { return error_reply(service, {}, fault, "null"); }

std::optional<std::string> answer(std::string_view text, const Service& service) {
  if (service.asked) {
    service.asked();
  }
  auto reply = answer_as(text, service, nullptr);
  if (service.worked_out) {
    service.worked_out();
  }
  return reply;
}

std::optional<std::string> answer_refused(std::string_view text, const Service& service, const wire::Fault& fault) {
  return answer_as(text, service, &fault);
}

}  // namespace limbledger::rpc

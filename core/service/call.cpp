#include "core/service/call.hpp"

#include "core/service/desk.hpp"
#include "core/service/fault_texts.hpp"

#include <algorithm>

namespace limbledger::service {

namespace detail {

void read_params(const wire::Type& type, void* target, const wire::Document& document, const wire::Node* params, wire::ReadReport& report) {
  if (type.kind == wire::Kind::raw) {
    static_cast<void>(type.from_text(target, params != nullptr ? params->raw : std::string_view("{}")));
    return;
  }
  if (params == nullptr) {
    static const Result<wire::Document> nothing = wire::parse("{}");
    return wire::read_into(type, target, *nothing, nothing->root(), wire::Unknown::refuse, "", report);
  }
  if (params->kind != wire::NodeKind::list) {
    return wire::read_into(type, target, document, *params, wire::Unknown::refuse, "", report);
  }
  std::size_t position = 0;
  for (std::uint32_t index = params->first; index != 0; index = document.at(index).next, ++position) {
    if (position == type.fields.size()) {
      report.faults.emplace_back("limit.items", wire::pointer_step(position), "at most " + std::to_string(position) + " params",
                                 std::to_string(params->count));
      return;
    }
    const wire::Field& field = type.fields[position];
    wire::read_into(field.type(), field.at(target), document, document.at(index), wire::Unknown::refuse, wire::pointer_step(position), report);
  }
  for (; position < type.fields.size(); ++position) {
    const wire::Field& field = type.fields[position];
    if (field.type().kind != wire::Kind::optional && field.type().kind != wire::Kind::list) {
      report.faults.emplace_back("params.missing", wire::pointer_step(position), "the member " + std::string(field.name));
    }
  }
}

}  // namespace detail

namespace {

// A code that nothing asks back with is a slip, and what it was to answer for would go on being asked.
void refuse_unasked(const wire::Document& document, const wire::Node& of, const std::string& path, std::vector<wire::Fault>& faults) {
  const wire::Node* confirmed = document.child(of, "confirmed");
  if (confirmed == nullptr || confirmed->kind != wire::NodeKind::list) {
    return;
  }
  std::size_t position = 0;
  for (std::uint32_t index = confirmed->first; index != 0; index = document.at(index).next, ++position) {
    const wire::Node& one = document.at(index);
    const wire::FaultCode* code = wire::find_fault_code(one.text);
    if (one.kind == wire::NodeKind::text && (code == nullptr || code->number != wire::FaultClass::asked_back)) {
      faults.emplace_back("params.unknown_word", path + "/confirmed" + wire::pointer_step(position), "the code of a fault that was asked back (the number 2), such as value.unusual");
    }
  }
}

[[nodiscard]] std::vector<wire::Fault> unasked(const wire::Document& document, const wire::Node* params) {
  std::vector<wire::Fault> faults;
  if (params == nullptr || params->kind != wire::NodeKind::object) {
    return faults;
  }
  refuse_unasked(document, *params, "", faults);
  const wire::Node* findings = document.child(*params, "findings");
  if (findings == nullptr || findings->kind != wire::NodeKind::list) {
    return faults;
  }
  std::size_t position = 0;
  for (std::uint32_t index = findings->first; index != 0; index = document.at(index).next, ++position) {
    if (document.at(index).kind == wire::NodeKind::object) {
      refuse_unasked(document, document.at(index), "/findings" + wire::pointer_step(position), faults);
    }
  }
  return faults;
}

class LateFlush {
 public:
  explicit LateFlush(ledger::LogStore& store) : store_(store) { store_.put_off_flush(true); }
  ~LateFlush() {
    if (!finished_) {
      static_cast<void>(store_.flush());
    }
  }
  LateFlush(const LateFlush&) = delete;
  LateFlush& operator=(const LateFlush&) = delete;
  [[nodiscard]] Result<void> finish() {
    finished_ = true;
    return store_.flush();
  }

 private:
  ledger::LogStore& store_;
  bool finished_ = false;
};

[[nodiscard]] Result<std::string> answer(std::span<const Method> table, const Method* row, Context& context, std::string_view method, const wire::Document& document,
                                         const wire::Node* params) {
  if (row == nullptr) {
    std::vector<std::string_view> names;
    for (const Method& known : table) {
      names.push_back(known.name);
    }
    const std::string_view near = wire::nearest(method, names);
    return wire::Fault{"method.unknown", "", near.empty() ? "a method that rpc.discover lists" : "perhaps " + std::string(near)};
  }
  if (!row->scopes.allows(context.caller.scope)) {
    return context.caller.scope == Scope::none ? wire::Fault{"token.missing", "", "a token, or session.open first"}
                                               : wire::Fault{"token.scope", "", "a token that may call this method"};
  }
  if (context.desk != nullptr) {
    context.desk->lock_if_idle();
  }
  const bool kiosk = context.caller.scope == Scope::kiosk;
  std::optional<Desk::KioskTurn> turn;
  // Only what reads or writes records needs it unlocked, and only that keeps it open.
  if (context.desk != nullptr && (!row->while_locked || (kiosk && row->of_own_exam))) {
    if (!row->while_locked) {
      context.desk->wake_if_asleep();
    }
    if (kiosk && row->of_own_exam && context.desk->keeps_kiosks()) {
      turn.emplace(*context.desk);
    }
  }
  if (context.desk != nullptr && !row->while_locked) {
    if (context.desk->locked()) {
      return wire::Fault{"ledger.locked", "", "an unlocked ledger"};
    }
    // A person alone at a kiosk does not keep everybody's records open.
    if (!row->unattended && !kiosk) {
      context.desk->touch();
    }
    // The printed code is nobody: whoever found the paper must not write into somebody's record.
    if (row->writes && context.desk->examiner_key() == nullptr && !turn) {
      return wire::Fault{"examiner.needed", "", "a ledger unlocked with an examiner's passphrase"};
    }
  }
  if (auto faults = unasked(document, params); !faults.empty()) {
    return wire::Refusal(std::move(faults));
  }
  if (context.desk == nullptr) {
    return row->invoke(context, document, params);
  }
  if (!row->writes) {
    // An exchange beside it may have stored what is not on the disk yet.
    const auto flushed = context.desk->is_shut() ? Result<void>() : context.desk->flush();
    return flushed ? row->invoke(context, document, params) : Result<std::string>(flushed.error());
  }
  // The reply is worked out while the disk writes, and is given only when it has.
  LateFlush late(context.desk->store());
  auto reply = row->invoke(context, document, params);
  if (auto flushed = late.finish(); !flushed) {
    context.staff_called.reset();
    context.desk->shut();  // what was refused must not be read or told of as recorded
    return flushed.error();
  }
  return reply;
}

}  // namespace

Result<std::string> call(std::span<const Method> table, Context& context, std::string_view method, const wire::Document& document,
                         const wire::Node* params) {
  const auto found = std::find_if(table.begin(), table.end(), [&](const Method& m) { return m.name == method; });
  const Method* row = found == table.end() ? nullptr : &*found;
  auto reply = answer(table, row, context, method, document, params);
  if (!reply && row != nullptr && context.edition != nullptr) {
    if (const report::Words* words = words_asked_for(row->params(), document, params)) {
      wire::Refusal refusal = reply.error();
      add_fault_texts(words, *context.edition, refusal.faults, row->writes);
      return refusal;
    }
  }
  return reply;
}

}  // namespace limbledger::service

#include "core/service/methods/exchange/exchange.hpp"

#include "core/service/exchange/carrier.hpp"

#include <algorithm>

namespace limbledger::service {

namespace {

[[nodiscard]] wire::Fault no_carrier() { return {"exchange.not_served", "", "a program that serves"}; }

[[nodiscard]] ErrandFault told_fault(const wire::Fault& fault) {
  const wire::FaultCode* row = wire::find_fault_code(fault.code);
  ErrandFault out;
  out.code = model::Word{fault.code};
  std::string expected = fault.expected;
  for (const wire::FaultParam& param : fault.params) {
    expected += (expected.empty() ? "" : "; ") + param.name + " " + param.json;
  }
  if (row != nullptr) {
    out.meaning.text = row->meaning;
    out.hint.text = row->hint;
  }
  if (!expected.empty()) {
    out.expected = wire::Remark{std::move(expected)};
  }
  if (!fault.got.empty()) {
    out.got = wire::Remark{fault.got};
  }
  return out;
}

[[nodiscard]] AnyCount entry_count(std::uint64_t value) { return {static_cast<std::int64_t>(value)}; }

[[nodiscard]] ExchangeErrand told_errand(const Errand& errand) {
  ExchangeErrand out;
  out.kind = static_cast<ErrandKind>(errand.kind);
  out.state = static_cast<ErrandState>(errand.stage);
  out.with.text = errand.with;
  out.began_at = errand.began_at;
  out.ended_at = errand.ended_at;
  out.cursor.text = errand.cursor;
  const bool is_done = errand.stage == Errand::Stage::done;
  switch (errand.kind) {
    case Errand::Kind::with_hub: {
      const ExchangeState& state = errand.exchanged;
      out.taken = entry_count(state.taken);
      out.given = entry_count(state.given);
      out.waiting = entry_count(state.waiting);
      out.turned_away = entry_count(state.turned_away);
      out.waiting_there = entry_count(state.waiting_there);
      out.bytes = entry_count(state.bytes_sent + state.bytes_got);
      out.restored = state.was_restored;
      if (is_done) {
        out.same = state.is_same;
      }
      break;
    }
    case Errand::Kind::parcel_write:
      out.entries = entry_count(errand.written.entries);
      out.bytes = entry_count(errand.written.size);
      break;
    case Errand::Kind::parcel_take:
      out.taken = entry_count(errand.taken.taken);
      out.waiting = entry_count(errand.taken.waiting);
      out.turned_away = entry_count(errand.taken.turned_away);
      out.entries = entry_count(is_done ? errand.taken.entries : errand.looked_at);
      out.restored = errand.taken.was_restored;
      if (is_done) {
        out.whole = errand.taken.is_whole;
        if (errand.taken.after_end != 0) {
          out.after_end.emplace().steps = static_cast<std::int64_t>(errand.taken.after_end);
        }
      }
      break;
  }
  if (errand.fault) {
    out.fault = told_fault(*errand.fault);
  }
  return out;
}

// What the hub has said to hold of this device, where the ledger is open to be asked.
[[nodiscard]] Result<std::optional<HolderReplica>> held_there(Context& context, const Errand& errand) {
  std::optional<HolderReplica> out;
  if (errand.kind != Errand::Kind::with_hub || errand.stage == Errand::Stage::running || context.desk->locked()) {
    return out;
  }
  auto list = replica_list(context, {});
  if (!list) {
    return list.error();
  }
  const auto found = std::find_if(list->holders.begin(), list->holders.end(), [&](const HolderReplica& one) { return one.replica == errand.exchanged.peer; });
  if (found != list->holders.end()) {
    out = *found;
  }
  return out;
}

[[nodiscard]] Result<ExchangeReadResult> begun(Context& context, const WantedErrand& wanted) {
  if (context.exchanges == nullptr) {
    return no_carrier();
  }
  if (auto done = context.exchanges->begin(wanted); !done) {
    return done.error();
  }
  return exchange_read(context, {});
}

}  // namespace

Result<ExchangeReadResult> exchange_begin(Context& context, const ExchangeBeginParams& params) {
  WantedErrand wanted;
  wanted.kind = Errand::Kind::with_hub;
  wanted.with = params.with.text;
  return begun(context, wanted);
}

Result<ExchangeReadResult> parcel_write(Context& context, const ParcelWriteParams& params) {
  WantedErrand wanted;
  wanted.kind = Errand::Kind::parcel_write;
  wanted.with = params.path.text;
  wanted.holder = params.holder;
  return begun(context, wanted);
}

Result<ExchangeReadResult> parcel_take(Context& context, const ParcelTakeParams& params) {
  WantedErrand wanted;
  wanted.kind = Errand::Kind::parcel_take;
  wanted.with = params.path.text;
  wanted.cut_too = params.cut.value_or(false);
  return begun(context, wanted);
}

Result<ExchangeReadResult> exchange_read(Context& context, const NoParams& /*params*/) {
  if (context.exchanges == nullptr) {
    return no_carrier();
  }
  ExchangeReadResult result;
  if (const auto& errand = context.exchanges->newest()) {
    result.errand = told_errand(*errand);
    auto held = held_there(context, *errand);
    if (!held) {
      return held.error();
    }
    result.errand->held = *held;
  }
  if (const AnsweringHere* here = context.exchanges->answering()) {
    AnsweringState& state = result.answering.emplace();
    state.open = here->is_open;
    for (const std::string& address : here->addresses) {
      state.addresses.push_back(wire::Remark{address});
    }
    if (here->fault) {
      state.fault = told_fault(*here->fault);
    }
  }
  return result;
}

Result<ExchangeEndResult> exchange_end(Context& context, const NoParams& /*params*/) {
  if (context.exchanges == nullptr) {
    return no_carrier();
  }
  return ExchangeEndResult{context.exchanges->end()};
}

}  // namespace limbledger::service

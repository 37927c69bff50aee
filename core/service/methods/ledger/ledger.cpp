#include "core/service/methods/ledger/ledger.hpp"

#include "core/ledger/fold/records.hpp"
#include "core/ledger/log/log.hpp"
#include "core/service/desk.hpp"

namespace limbledger::service {

namespace {

constexpr std::size_t listed_max = 1000;

[[nodiscard]] wire::Count<0, 9007199254740991> counted(std::uint64_t value) { return {static_cast<std::int64_t>(value)}; }

}  // namespace

Result<VerifyResult> ledger_verify(Context& context, const VerifyParams& params) {
  Desk& desk = *context.desk;
  const bool mend = params.mend.value_or(false);
  if (mend && context.caller.scope != Scope::examiner) {
    return wire::Fault{"token.scope", "/mend", "a token of the scope examiner"};
  }
  const auto verification = ledger::verify_store(desk.store(), desk.clinic(), desk.locked() ? nullptr : &desk.log(), mend);
  if (!verification) {
    return verification.error();
  }
  std::vector<DamagedList> lists;
  std::size_t unmended = 0;
  for (const ledger::ListDamage& one : verification->lists) {
    lists.push_back({model::Word{one.list}, model::Word{one.left_out != 0 ? "entry.list" : "entry.store"}, std::nullopt, std::nullopt});
    if (one.left_out != 0) {
      lists.back().left_out = counted(one.left_out);
    }
    if (one.mended) {
      lists.back().mended = true;
    }
    unmended += one.mended ? 0 : 1;
  }
  const std::string_view first = !verification->damage.empty() ? std::string_view(verification->damage.front().code)
                                 : unmended != 0               ? std::string_view(lists.front().code.text)
                                                               : std::string_view();
  desk.note_verified(verification->damage.size() + unmended, first);
  // What was left out is read from now on.
  if (unmended != lists.size() && !desk.locked()) {
    std::vector<model::ObjectId> all;
    for (const auto& [object, known] : desk.log().index().objects) {
      all.push_back(object);
    }
    desk.records().forget(all);
  }
  const std::uint64_t from = params.from ? static_cast<std::uint64_t>(params.from->steps) : 0;
  VerifyResult result;
  result.entries = counted(verification->entries);
  result.opened = counted(verification->opened);
  result.replicas = counted(verification->replicas);
  for (const auto& one : verification->damage) {
    if (one.seq >= from && result.damage.size() < listed_max) {
      result.damage.push_back({one.replica, counted(one.seq), one.entry, model::Word{one.code}});
    }
  }
  if (const std::size_t unlisted = verification->damage.size() - result.damage.size(); unlisted != 0) {
    result.unlisted = counted(unlisted);
  }
  if (!lists.empty()) {
    result.lists = std::move(lists);
  }
  if (verification->other_kinds != 0) {
    result.unread = counted(verification->other_kinds);
  }
  for (const ledger::Head& head : verification->vouched_to) {
    result.vouched_to.push_back({head.replica, counted(head.seq), ledger::entry_id(head.hash)});
  }
  return result;
}

}  // namespace limbledger::service

#include "core/ledger/trust/witness.hpp"

namespace limbledger::ledger {

Bytes WitnessBody::to_bytes() const {
  require(heads.size() <= heads_max);
  std::vector<Place> sorted = heads;
  std::sort(sorted.begin(), sorted.end());
  ByteWriter out(2 + 56 * sorted.size());
  out.u16(static_cast<std::uint16_t>(sorted.size()));
  for (const Place& head : sorted) {
    out.raw(ledger::to_bytes(head));
  }
  return out.take();
}

Result<WitnessBody> WitnessBody::from_bytes(View body) {
  ByteReader in(body);
  WitnessBody out;
  const std::size_t count = in.u16();
  for (std::size_t i = 0; i < count && !in.ran_short(); ++i) {
    out.heads.push_back(read_place(in));
  }
  if (!in.done() || !std::is_sorted(out.heads.begin(), out.heads.end())) {
    return wire::Fault("entry.format", "", "a witness: its heads in order, 56 bytes each", std::to_string(body.size()));
  }
  return out;
}

}  // namespace limbledger::ledger

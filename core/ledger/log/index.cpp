#include "core/ledger/log/index.hpp"

namespace limbledger::ledger {

namespace {

void put_text(ByteWriter& out, const std::string& text) {
  out.u32(static_cast<std::uint32_t>(text.size()));
  out.raw(as_bytes(text));
}

[[nodiscard]] std::string get_text(ByteReader& in) {
  const View bytes = in.raw(in.u32());
  return {bytes.begin(), bytes.end()};
}

template <class Id>
[[nodiscard]] Id get_id(ByteReader& in) {
  Id id;
  id.bytes = in.array<16>();
  return id;
}

}  // namespace

Bytes Index::to_bytes() const {
  ByteWriter out(requests.size() * 32 + objects.size() * 300 + 1024);
  out.u16(fold_version);
  out.u64(entry_count);
  out.u64(static_cast<std::uint64_t>(newest.ms));
  out.u16(newest.counter);
  out.u32(static_cast<std::uint32_t>(origins.size()));
  for (const auto& [replica, origin] : origins) {
    out.raw(replica.bytes).raw(origin.clinic.bytes).raw(origin.sign_pub);
    const auto found = leaves.find(replica);
    const std::vector<Joint> none;
    const std::vector<Joint>& covered = found == leaves.end() ? none : found->second;
    out.u32(static_cast<std::uint32_t>(covered.size()));
    for (const Joint& leaf : covered) {
      out.u64(leaf.seq).raw(leaf.hash);
    }
  }
  out.u32(static_cast<std::uint32_t>(examiners.size()));
  for (const Examiner& examiner : examiners) {
    out.raw(examiner.examiner.bytes).raw(examiner.pub);
  }
  out.u32(static_cast<std::uint32_t>(objects.size()));
  for (const auto& [id, object] : objects) {
    out.raw(id.bytes).u8(static_cast<std::uint8_t>(object.type));
    out.u32(static_cast<std::uint32_t>(object.keys.size()));
    for (const ObjectKey& key : object.keys) {
      out.raw(key.key().view());
    }
    put_text(out, object.row);
  }
  out.u32(static_cast<std::uint32_t>(requests.size()));
  for (const auto& [request, object] : requests) {
    out.raw(request.bytes).raw(object.bytes);
  }
  return out.take();
}

std::optional<Index> Index::from_bytes(View bytes) {
  ByteReader in(bytes);
  Index index;
  if (in.u16() != fold_version) {
    return std::nullopt;
  }
  index.entry_count = in.u64();
  index.newest.ms = static_cast<std::int64_t>(in.u64());
  index.newest.counter = in.u16();
  for (std::uint32_t left = in.u32(); left > 0 && !in.ran_short(); --left) {
    const auto replica = get_id<model::ReplicaId>(in);
    Origin origin;
    origin.replica = replica;
    origin.clinic = get_id<model::ClinicId>(in);
    origin.sign_pub = in.array<32>();
    index.origins[replica] = origin;
    for (std::uint32_t count = in.u32(); count > 0 && !in.ran_short(); --count) {
      const std::uint64_t seq = in.u64();
      index.leaves[replica].push_back({seq, in.array<32>()});
    }
  }
  for (std::uint32_t left = in.u32(); left > 0 && !in.ran_short(); --left) {
    Examiner examiner;
    examiner.examiner = get_id<model::ExaminerId>(in);
    examiner.pub = in.array<32>();
    index.examiners.push_back(examiner);
  }
  for (std::uint32_t left = in.u32(); left > 0 && !in.ran_short(); --left) {
    const auto id = get_id<model::ObjectId>(in);
    Object object;
    object.type = static_cast<ObjectType>(in.u8());
    for (std::uint32_t count = in.u32(); count > 0 && !in.ran_short(); --count) {
      const View key = in.raw(32);
      if (!in.ran_short()) {
        object.keys.emplace_back(Secret32(key), id);
        index.object_of[object.keys.back().kid()] = id;
      }
    }
    object.row = get_text(in);
    index.objects.emplace_hint(index.objects.end(), id, std::move(object));
  }
  for (std::uint32_t left = in.u32(); left > 0 && !in.ran_short(); --left) {
    const auto request = get_id<model::RequestId>(in);
    index.requests.emplace_hint(index.requests.end(), request, get_id<model::ObjectId>(in));
  }
  if (!in.done()) {
    return std::nullopt;
  }
  return index;
}

}  // namespace limbledger::ledger

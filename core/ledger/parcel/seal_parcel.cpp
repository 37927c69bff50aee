#include "core/ledger/parcel/parcel.hpp"

#include "core/ledger/exchange/message.hpp"

#include <utility>

namespace limbledger::ledger {

namespace {

constexpr std::size_t chunk_plain_max = parcel_chunk_max - crypto_secretstream_xchacha20poly1305_ABYTES;

}  // namespace

ParcelDraw ParcelDraw::from(World& world) {
  ParcelDraw out;
  world.random(out.salt);
  world.random(out.key.room());
  world.random(out.box_seed.room());
  world.random(out.stream);
  return out;
}

ParcelSealer::ParcelSealer(const model::ClinicId& clinic, std::uint32_t epoch, const PublicKey& epoch_pub, const ParcelDraw& draw) {
  aad_ = ByteWriter(parcel_front_size)
             .raw(as_bytes("LIMBPCL1"))
             .raw(draw.salt)
             .raw(hint_of(clinic, draw.salt))
             .u32(epoch)
             .u32(0)
             .raw(seal_box(epoch_pub, draw.box_seed, draw.key.view()))
             .raw(draw.stream)
             .take();
  require(aad_.size() == parcel_front_size);
  sealed_ = aad_;
  // Begun as a reader begins: the library would draw the stream's header by itself, and the state is the same.
  require(crypto_secretstream_xchacha20poly1305_init_pull(&stream_, draw.stream.data(), draw.key.data()) == 0);
  require(crypto_generichash_init(&hash_, nullptr, 0, Hash().size()) == 0);
}

void ParcelSealer::push(View plain, std::uint8_t stream_tag) {
  Bytes out(4 + plain.size() + crypto_secretstream_xchacha20poly1305_ABYTES);
  put_integer(out.data(), out.size() - 4, 4);
  require(crypto_secretstream_xchacha20poly1305_push(&stream_, out.data() + 4, nullptr, plain.data(), plain.size(), aad_.data(), aad_.size(), stream_tag) == 0);
  aad_.clear();
  sealed_.insert(sealed_.end(), out.begin(), out.end());
}

void ParcelSealer::add(const Run& run) {
  ByteWriter bytes;
  put_run(bytes, run);
  require(crypto_generichash_update(&hash_, bytes.view().data(), bytes.view().size()) == 0);
  plain_.insert(plain_.end(), bytes.view().begin(), bytes.view().end());
  entries_ += run.rows.size();
  ++runs_;
  std::size_t at = 0;
  for (; plain_.size() - at >= chunk_plain_max; at += chunk_plain_max) {
    push(View(plain_).subspan(at, chunk_plain_max), crypto_secretstream_xchacha20poly1305_TAG_MESSAGE);
  }
  plain_.erase(plain_.begin(), plain_.begin() + static_cast<std::ptrdiff_t>(at));
}

void ParcelSealer::finish() {
  if (!plain_.empty()) {
    push(plain_, crypto_secretstream_xchacha20poly1305_TAG_MESSAGE);
    plain_.clear();
  }
  Hash all{};
  require(crypto_generichash_final(&hash_, all.data(), all.size()) == 0);
  push(ByteWriter(44).u64(entries_).u32(runs_).raw(all).view(), crypto_secretstream_xchacha20poly1305_TAG_FINAL);
}

Bytes ParcelSealer::take() { return std::exchange(sealed_, {}); }

}  // namespace limbledger::ledger

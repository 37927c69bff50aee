#include "core/ledger/parcel/parcel.hpp"

#include "core/ledger/exchange/message.hpp"

#include <algorithm>
#include <utility>

namespace limbledger::ledger {

namespace {

constexpr std::size_t run_front_size = 60;  // replica, first, before, count
constexpr std::size_t run_head_size = 120;
constexpr std::size_t row_front_size = 33;  // state, header
constexpr std::size_t trailer_size = 44;
constexpr std::size_t chunk_size_min = crypto_secretstream_xchacha20poly1305_ABYTES;

// The bytes of a row of a run, once its front is there.
std::size_t run_row_size(View row) {
  return row_front_size + (row[0] == static_cast<std::uint8_t>(RowState::whole) ? get_integer(row.data() + 5, 4) : stub_size);
}

}  // namespace

// Says where: the chunk, how many entries of the parcel came before, and whose entry it is where its run had begun.
wire::Fault ParcelReader::fault(std::string_view code, std::string_view expected) const {
  wire::Fault out = wire::Fault(code, "", expected).with("chunk", std::to_string(chunk_ + 1)).with("entry", std::to_string(entries_ + had_ + 1));
  if (in_run_) {
    ByteReader in(plain_);
    model::ReplicaId replica;
    replica.bytes = in.array<16>();
    out = std::move(out).with("replica", '"' + replica.to_text() + '"').with("seq", std::to_string(in.u64() + had_));
  }
  return out;
}

Result<void> ParcelReader::feed(View bytes) {
  if (is_whole_) {
    after_end_ += bytes.size();
    return {};
  }
  sealed_.insert(sealed_.end(), bytes.begin(), bytes.end());
  if (!has_front_) {
    if (sealed_.size() < parcel_front_size) {
      return {};
    }
    if (auto read = read_front(); !read) {
      return read;
    }
  }
  std::size_t at = 0;
  while (!is_whole_ && sealed_.size() - at >= 4) {
    const auto size = static_cast<std::size_t>(get_integer(sealed_.data() + at, 4));
    if (size < chunk_size_min || size > parcel_chunk_max) {
      return fault("parcel.changed", "a chunk of 17 to 65536 bytes");
    }
    if (sealed_.size() - at - 4 < size) {
      break;
    }
    if (auto opened = open_chunk(View(sealed_).subspan(at + 4, size)); !opened) {
      return opened;
    }
    at += 4 + size;
  }
  after_end_ = is_whole_ ? sealed_.size() - at : 0;
  sealed_.erase(sealed_.begin(), is_whole_ ? sealed_.end() : sealed_.begin() + static_cast<std::ptrdiff_t>(at));
  return {};
}

Result<void> ParcelReader::read_front() {
  ByteReader in(sealed_);
  const auto mark = in.array<8>();
  const auto salt = in.array<16>();
  const auto hint = in.array<8>();
  const std::uint32_t epoch = in.u32();
  const std::uint32_t flags = in.u32();
  const auto box = in.array<80>();
  const auto stream = in.array<crypto_secretstream_xchacha20poly1305_HEADERBYTES>();
  if (!std::equal(mark.begin(), mark.end(), as_bytes("LIMBPCL1").begin())) {
    return wire::Fault("parcel.format", "", "a file that begins with LIMBPCL1");
  }
  if (hint != hint_of(clinic_, salt)) {
    return wire::Fault("parcel.foreign", "", "a parcel of this clinic, whose first 144 bytes are whole");
  }
  if (flags != 0) {
    return wire::Fault("parcel.format", "", "a parcel of this edition");
  }
  const auto pair = epochs_.find(epoch);
  if (pair == epochs_.end()) {
    return wire::Fault("parcel.key", "", "a parcel sealed to an epoch that this device can open", std::to_string(epoch));
  }
  auto key = open_box(pair->second, box);
  if (!key || key->size() != Secret32::size()) {
    return wire::Fault("parcel.key", "", "a parcel whose first 144 bytes are whole, sealed to the epoch it names", std::to_string(epoch));
  }
  const int begun = crypto_secretstream_xchacha20poly1305_init_pull(&stream_, stream.data(), key->data());
  sodium_memzero(key->data(), key->size());
  require(begun == 0 && crypto_generichash_init(&hash_, nullptr, 0, Hash().size()) == 0);
  aad_.assign(sealed_.begin(), sealed_.begin() + parcel_front_size);
  sealed_.erase(sealed_.begin(), sealed_.begin() + parcel_front_size);
  has_front_ = true;
  return {};
}

Result<void> ParcelReader::open_chunk(View sealed) {
  Bytes plain(sealed.size() - chunk_size_min);
  std::uint8_t stream_tag = 0;
  if (crypto_secretstream_xchacha20poly1305_pull(&stream_, plain.data(), nullptr, &stream_tag, sealed.data(), sealed.size(), aad_.data(), aad_.size()) != 0) {
    return fault("parcel.changed", "the bytes that were sealed");
  }
  aad_.clear();
  if (stream_tag == crypto_secretstream_xchacha20poly1305_TAG_FINAL) {
    return read_trailer(plain);
  }
  if (stream_tag != crypto_secretstream_xchacha20poly1305_TAG_MESSAGE) {
    return wire::Fault("parcel.format", "", "chunks of runs, then the trailer");
  }
  require(crypto_generichash_update(&hash_, plain.data(), plain.size()) == 0);
  plain_.insert(plain_.end(), plain.begin(), plain.end());
  if (auto read = read_runs(); !read) {
    return read;
  }
  ++chunk_;
  return {};
}

// Walks over what came, entry by entry, and reads a run once its head is there.
Result<void> ParcelReader::read_runs() {
  while (true) {
    if (!in_run_) {
      if (plain_.size() < run_front_size) {
        return {};
      }
      in_run_ = true;
      left_ = static_cast<std::uint32_t>(get_integer(plain_.data() + run_front_size - 4, 4));
      had_ = 0;
      walked_ = run_front_size;
    }
    for (; left_ != 0; --left_, ++had_) {
      const View rest = View(plain_).subspan(walked_);
      if (rest.size() < row_front_size) {
        return {};
      }
      const std::size_t size = run_row_size(rest);
      if (size > row_front_size + body_size_max) {
        return fault("entry.size", "a body of at most 1 MiB");
      }
      if (rest.size() < size) {
        return {};
      }
      walked_ += size;
    }
    if (plain_.size() - walked_ < run_head_size) {
      return {};
    }
    const std::size_t size = walked_ + run_head_size;
    ByteReader in(View(plain_).first(size));
    auto run = read_run(in);
    if (!run) {
      return run.error();
    }
    entries_ += run->rows.size();
    ++run_count_;
    runs_.push_back(std::move(*run));
    plain_.erase(plain_.begin(), plain_.begin() + static_cast<std::ptrdiff_t>(size));
    in_run_ = false;
    had_ = 0;
  }
}

Result<void> ParcelReader::read_trailer(View plain) {
  ByteReader in(plain);
  const std::uint64_t entries = in.u64();
  const std::uint32_t runs = in.u32();
  const auto said = in.array<32>();
  Hash all{};
  require(crypto_generichash_final(&hash_, all.data(), all.size()) == 0);
  if (plain.size() != trailer_size || !plain_.empty() || entries != entries_ || runs != run_count_ || said != all) {
    return wire::Fault("parcel.format", "", "a trailer that counts what came before it");
  }
  is_whole_ = true;
  return {};
}

std::vector<Run> ParcelReader::take_runs() { return std::exchange(runs_, {}); }

Result<void> ParcelReader::finish() const {
  return is_whole_ ? Result<void>() : Result<void>(fault("parcel.cut_short", "the end that its writer gave it"));
}

}  // namespace limbledger::ledger

#include "core/ledger/trust/enrol.hpp"

namespace limbledger::ledger {

namespace {

constexpr Tag tag_commit = tag("limb.commit.1");
constexpr Tag tag_compare = tag("limb.compare.1");
constexpr Tag tag_welcome = tag("limb.welcome.1");
constexpr std::size_t digit_count = 6;
enum class EnrolMessage : std::uint8_t { commit = 1, clinic = 2, newcomer = 3, welcome = 4 };

wire::Fault no_enrol_message(std::string_view expected) { return wire::Fault("exchange.message", "", expected); }

// Six digits of all that was said. 2^64 is not a multiple of a million; what that favours is less than a part in 10^13.
std::string digits_of(View said) {
  const Hash hash = hash256(tag_compare, said);
  const std::string number = std::to_string(get_integer(hash.data(), 8) % 1000000);
  return std::string(digit_count - number.size(), '0') + number;
}

Bytes clinic_message(const ClinicCard& card) {
  return ByteWriter(82)
      .u8(static_cast<std::uint8_t>(EnrolMessage::clinic))
      .raw(card.root_pub)
      .raw(card.sign_pub)
      .u8(static_cast<std::uint8_t>(card.purpose))
      .raw(card.fresh)
      .take();
}

Bytes newcomer_message(const NewcomerCard& card) {
  return ByteWriter(97).u8(static_cast<std::uint8_t>(EnrolMessage::newcomer)).raw(card.sign_pub).raw(card.box_pub).raw(card.device.bytes).raw(card.fresh).take();
}

Bytes welcome_front(const Welcome& welcome) {
  return ByteWriter(119).u8(static_cast<std::uint8_t>(EnrolMessage::welcome)).u16(welcome.roles).u32(welcome.epoch).raw(welcome.epoch_pub).raw(welcome.sealed).take();
}

Bytes welcome_message(View said, View front) { return ByteWriter().raw(tag_welcome).raw(hash256(said)).raw(front).take(); }

}  // namespace

Newcomer::Newcomer(const Vault& vault, World& world) : box_secret_(vault.box_secret) {
  card_.sign_pub = SignKey(vault.sign_seed).pub();
  card_.box_pub = BoxPair(vault.box_secret).pub();
  world.random(card_.device.bytes);
  world.random(card_.fresh);
  said_ = commit();
}

Bytes Newcomer::commit() const {
  return ByteWriter(33).u8(static_cast<std::uint8_t>(EnrolMessage::commit)).raw(hash256(tag_commit, newcomer_message(card_))).take();
}

Result<Bytes> Newcomer::show(View clinic_card) {
  if (!digits_.empty()) {
    return no_enrol_message("one clinic's card");
  }
  ByteReader in(clinic_card);
  const std::uint8_t kind = in.u8();
  clinic_.root_pub = in.array<32>();
  clinic_.sign_pub = in.array<32>();
  const std::uint8_t purpose = in.u8();
  clinic_.fresh = in.array<16>();
  if (!in.done() || kind != static_cast<std::uint8_t>(EnrolMessage::clinic) || purpose > static_cast<std::uint8_t>(Purpose::demonstration)) {
    return no_enrol_message("a clinic's card of 82 bytes, of a clinic or a demonstration");
  }
  clinic_.purpose = static_cast<Purpose>(purpose);
  Bytes card = newcomer_message(card_);
  said_.insert(said_.end(), clinic_card.begin(), clinic_card.end());
  said_.insert(said_.end(), card.begin(), card.end());
  digits_ = digits_of(said_);
  return card;
}

Result<Secret32> Newcomer::accept(View welcome) {
  ByteReader in(welcome);
  const std::uint8_t kind = in.u8();
  welcome_.roles = in.u16();
  welcome_.epoch = in.u32();
  welcome_.epoch_pub = in.array<32>();
  welcome_.sealed = in.array<Epoch::box_size>();
  const Signature signature = in.array<64>();
  if (!in.done() || kind != static_cast<std::uint8_t>(EnrolMessage::welcome) || digits_.empty()) {
    return no_enrol_message("a welcome of 183 bytes, after both cards");
  }
  if (!verify(clinic_.sign_pub, welcome_message(said_, welcome_front(welcome_)), signature)) {
    return wire::Fault("enrol.code", "", "a welcome signed by the device whose card was shown");
  }
  auto plain = open_box(BoxPair(box_secret_), welcome_.sealed);
  if (!plain) {
    return plain.error();
  }
  if (plain->size() != Secret32::size()) {
    return wire::Fault("entry.key", "", "a secret of 32 bytes");
  }
  const Secret32 secret{View(*plain)};
  sodium_memzero(plain->data(), plain->size());
  if (BoxPair(secret).pub() != welcome_.epoch_pub) {
    return wire::Fault("entry.key", "", "the secret half of the epoch that is named");
  }
  return secret;
}

Enroller::Enroller(Member member, const PublicKey& root_pub, Purpose purpose) : member_(member) {
  clinic_.root_pub = root_pub;
  clinic_.sign_pub = member_.device_key.pub();
  clinic_.purpose = purpose;
  member_.world.random(clinic_.fresh);
}

Result<Bytes> Enroller::answer(View commitment) {
  ByteReader in(commitment);
  const std::uint8_t kind = in.u8();
  commitment_ = in.array<32>();
  if (!in.done() || kind != static_cast<std::uint8_t>(EnrolMessage::commit) || !said_.empty()) {
    return no_enrol_message("one promise of 33 bytes");
  }
  if (clinic_of(clinic_.root_pub) != member_.clinic || clinic_.purpose == Purpose::practice) {
    return wire::Fault(clinic_.purpose == Purpose::practice ? "exchange.purpose" : "enrol.code", "", "this clinic's own root key");
  }
  Bytes card = clinic_message(clinic_);
  said_.assign(commitment.begin(), commitment.end());
  said_.insert(said_.end(), card.begin(), card.end());
  return card;
}

Result<void> Enroller::look(View newcomer_card) {
  if (said_.empty() || !digits_.empty()) {
    return no_enrol_message("one newcomer's card, after its promise");
  }
  ByteReader in(newcomer_card);
  const std::uint8_t kind = in.u8();
  card_.sign_pub = in.array<32>();
  card_.box_pub = in.array<32>();
  card_.device.bytes = in.array<16>();
  card_.fresh = in.array<16>();
  if (!in.done() || kind != static_cast<std::uint8_t>(EnrolMessage::newcomer)) {
    return no_enrol_message("a newcomer's card of 97 bytes");
  }
  if (hash256(tag_commit, newcomer_card) != commitment_) {
    return wire::Fault("enrol.code", "", "the card that was promised");
  }
  said_.insert(said_.end(), newcomer_card.begin(), newcomer_card.end());
  digits_ = digits_of(said_);
  return {};
}

Result<Bytes> Enroller::welcome(const SignKey& admin, std::uint16_t roles, std::uint32_t epoch, const Secret32& epoch_secret) {
  if (digits_.empty()) {
    return no_enrol_message("both cards first");
  }
  const auto orders = stored_orders(member_.store);
  const auto first = member_.store.read(member_.replica(), 1, 1, 1);
  if (!orders || !first) {
    return orders ? first.error() : orders.error();
  }
  const auto own = first->empty() ? Result<Intro>(wire::Fault("ledger.none", "")) : intro_of(first->front());
  if (!own) {
    return own.error();
  }
  const Trust trust(member_.clinic, *orders);
  if ((trust.roles_of(admin.pub()) & roles::enrol) == 0) {
    return wire::Fault("replica.unknown", "", "a key that may enrol: the printed code's, or one it granted that to");
  }
  std::vector<NewOrder> say;
  if (trust.enrolment(member_.replica()) == nullptr) {
    // The clinic's first device was made before there was anyone to tell.
    say.push_back({OrderKind::enrol, Enrol{member_.replica(), own->device, static_cast<std::uint16_t>(roles::write | roles::hub)}.to_fields()});
  }
  say.push_back({OrderKind::enrol, Enrol{replica_of(member_.clinic, card_.sign_pub), card_.device, roles}.to_fields()});
  if (auto written = append_orders(member_, admin, say); !written) {
    return written.error();
  }
  Welcome out;
  out.roles = roles;
  out.epoch = epoch;
  out.epoch_pub = BoxPair(epoch_secret).pub();
  Secret32 ephemeral;
  member_.world.random(ephemeral.room());
  const Bytes sealed = seal_box(card_.box_pub, ephemeral, epoch_secret.view());
  std::copy(sealed.begin(), sealed.end(), out.sealed.begin());
  const Bytes front = welcome_front(out);
  return ByteWriter(183).raw(front).raw(member_.device_key.sign(welcome_message(said_, front))).take();
}

Result<void> join(LogStore& store, World& world, const Newcomer& newcomer, const SignKey& device_key, const PublicKey& box_pub, std::string_view program) {
  const auto heads = store.heads();
  if (!heads) {
    return heads.error();
  }
  if (!heads->newest.empty()) {
    return wire::Fault("ledger.in_use", "", "an empty store");
  }
  Member member{store, world, newcomer.clinic(), device_key};
  Intro intro;
  intro.storage = storage_of(store.durability());
  intro.purpose = newcomer.clinic_card().purpose;
  intro.box_pub = box_pub;
  intro.device = newcomer.device();
  intro.program = std::string(program);
  Meta meta;
  meta[std::string(hub_key_name)] = Bytes(newcomer.clinic_card().sign_pub.begin(), newcomer.clinic_card().sign_pub.end());
  return begin_chain(member, std::move(intro), std::move(meta));
}

}  // namespace limbledger::ledger

#include "rpc/transport/framing.hpp"
#include "tests/fuzz/targets.hpp"

#include <vector>

namespace limbledger::fuzz {

namespace {

struct Taken {
  std::vector<rpc::FrameKind> kinds;
  std::vector<std::string> texts;
  friend bool operator==(const Taken&, const Taken&) = default;
};

Taken taken(rpc::Framing framing, const rpc::Limits& limits, std::string_view bytes, std::size_t step) {
  rpc::Decoder decoder(framing, limits);
  Taken out;
  const auto drain = [&] {
    while (auto frame = decoder.next()) {
      const bool message = frame->kind == rpc::FrameKind::message || frame->kind == rpc::FrameKind::unended;
      must(!message || frame->text.size() <= limits.message_bytes, "no message is over the limit");
      out.kinds.push_back(frame->kind);
      out.texts.push_back(std::move(frame->text));
    }
  };
  while (!bytes.empty()) {
    decoder.feed(bytes.substr(0, step));
    bytes.remove_prefix(std::min(step, bytes.size()));
    drain();
  }
  decoder.end();
  drain();
  return out;
}

}  // namespace

void frames(std::string_view bytes) {
  if (bytes.empty()) {
    return;
  }
  const auto choice = static_cast<unsigned char>(bytes.front());
  bytes.remove_prefix(1);
  const auto framing = (choice & 1U) != 0 ? rpc::Framing::headers : rpc::Framing::lines;
  rpc::Limits limits;
  if ((choice & 2U) != 0) {
    limits.message_bytes = 12;
    limits.header_bytes = 60;
    limits.skipped_bytes = 100;
  }
  const Taken whole = taken(framing, limits, bytes, bytes.size());
  must(taken(framing, limits, bytes, 1U + choice / 4U) == whole, "however the bytes are cut, the same comes out");
  must(taken(framing, limits, bytes, 1) == whole, "byte by byte the same comes out");
  for (std::size_t i = 0; i < whole.kinds.size(); ++i) {
    must(whole.kinds[i] != rpc::FrameKind::broken || i + 1 == whole.kinds.size(), "nothing follows a broken frame");
    // What we frame is a reply, which has no line end in it.
    if (whole.kinds[i] == rpc::FrameKind::message && whole.texts[i].find_first_of("\r\n") == std::string::npos) {
      const Taken again = taken(framing, limits, rpc::framed(framing, whole.texts[i]), 7);
      must(again.texts == std::vector<std::string>{whole.texts[i]} && again.kinds.front() == rpc::FrameKind::message, "what is framed is read back");
    }
  }
}

}  // namespace limbledger::fuzz

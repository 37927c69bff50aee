// Whole JSON text -> a tree of nodes over the text. The text is checked as a whole first (strict UTF-8, no byte order mark,
// depth, size), repeated member names are refused by name, and numbers keep their digits. parse.cpp alone includes simdjson.
#pragma once

#include "core/wire/fault.hpp"

#include <cstdint>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace limbledger::wire {

enum class NodeKind : std::uint8_t { object, list, text, number, boolean, null };

struct Node {
  NodeKind kind{};
  std::string_view key;   // unescaped; empty outside an object
  std::string_view raw;   // as written, without outer white space
  std::string_view text;  // unescaped, for texts
  std::uint32_t first = 0;  // first child, 0 for none
  std::uint32_t next = 0;   // next of the same parent, 0 for none
  std::uint32_t count = 0;  // children
  bool beyond_double = false;  // a number that other readers cannot hold: read by its digits, never passed on as it is
};

// Node 0 is the whole text. Views point into the document, which cannot be copied.
class Document {
 public:
  Document();
  Document(Document&&) noexcept;
  Document& operator=(Document&&) noexcept;
  ~Document();

  [[nodiscard]] const Node& root() const { return nodes_.front(); }
  [[nodiscard]] const Node& at(std::uint32_t index) const { return nodes_[index]; }
  [[nodiscard]] const Node* child(const Node& parent, std::string_view key) const;
  // The value at a JSON Pointer without escapes, or null.
  [[nodiscard]] const Node* at_pointer(std::string_view pointer) const;

 private:
  friend Result<Document> parse(std::string_view text, std::size_t depth_max);
  struct Keep;
  std::unique_ptr<Keep> keep_;
  std::vector<Node> nodes_;
};

inline constexpr std::size_t message_bytes_max = 1024 * 1024;
inline constexpr std::size_t depth_max_default = 32;

// Faults: json.syntax (with the byte where it stopped making sense), json.duplicate_member (path and name), limit.depth.
[[nodiscard]] Result<Document> parse(std::string_view text, std::size_t depth_max = depth_max_default);

// Strict UTF-8 (RFC 3629), whatever it says.
[[nodiscard]] bool is_utf8(std::string_view text);

// One step of a JSON Pointer, escaped.
[[nodiscard]] std::string pointer_step(std::string_view member);
[[nodiscard]] std::string pointer_step(std::size_t index);

}  // namespace limbledger::wire

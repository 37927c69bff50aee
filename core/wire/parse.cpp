#include "core/wire/parse.hpp"

// Without its exceptions a result that nobody looked at does not compile.
#define SIMDJSON_EXCEPTIONS 0
#include <simdjson.h>

#include <algorithm>
#include <optional>
#include <string>

namespace limbledger::wire {

namespace {

using simdjson::ondemand::json_type;

// On-Demand checks only what it visits, so a pass of the DOM parser over the whole text comes before it.
class Builder {
 public:
  // Lists and objects deeper than `depth_max` are not entered: broken text is walked too, and has no other limit.
  Builder(std::vector<Node>& nodes, simdjson::ondemand::document& document, std::string_view text, std::size_t depth_max)
      : nodes_(nodes), document_(document), text_(text), levels_left_(depth_max) {}

  [[nodiscard]] bool build() {
    nodes_.emplace_back();
    json_type type{};
    if (document_.type().get(type) != simdjson::SUCCESS) {
      return false;
    }
    if (type == json_type::object || type == json_type::array) {
      simdjson::ondemand::value root;
      return document_.get_value().get(root) == simdjson::SUCCESS && fill(root, 0);
    }
    return fill_scalar_root(type);
  }

  // The pointer to a member named twice, or empty.
  [[nodiscard]] std::string repeated() const {
    std::string path;
    return repeated_.empty() || !find_path(0, repeated_at_, path) ? std::string{} : path + repeated_;
  }

 private:
  [[nodiscard]] bool fill_scalar_root(json_type type) {
    Node& node = nodes_.front();
    node.raw = trimmed(text_);
    switch (type) {
      case json_type::string:
        node.kind = NodeKind::text;
        return document_.get_string().get(node.text) == simdjson::SUCCESS;
      case json_type::number:
        node.kind = NodeKind::number;
        return true;
      case json_type::boolean:
        node.kind = NodeKind::boolean;
        return true;
      default:
        node.kind = NodeKind::null;
        return true;
    }
  }

  [[nodiscard]] static std::string_view trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t\r\n");
    const auto last = text.find_last_not_of(" \t\r\n");
    return first == std::string_view::npos ? std::string_view{} : text.substr(first, last - first + 1);
  }

  // The text from `start` to where the document now stands.
  [[nodiscard]] std::string_view slice_from(const char* start) {
    const char* here = nullptr;
    if (document_.current_location().get(here) != simdjson::SUCCESS) {
      here = text_.data() + text_.size();
    }
    return trimmed({start, static_cast<std::size_t>(here - start)});
  }

  [[nodiscard]] bool fill(simdjson::ondemand::value value, std::uint32_t self) {
    json_type type{};
    if (value.type().get(type) != simdjson::SUCCESS) {
      return false;
    }
    const std::string_view token = value.raw_json_token();
    nodes_[self].raw = trimmed(token);
    if (type == json_type::object || type == json_type::array) {
      if (levels_left_ == 0) {
        return false;
      }
      --levels_left_;
      const bool filled = type == json_type::object ? fill_object(value, self, token.data()) : fill_list(value, self, token.data());
      ++levels_left_;
      return filled;
    }
    switch (type) {
      case json_type::string: {
        nodes_[self].kind = NodeKind::text;
        std::string_view text;
        if (value.get_string().get(text) != simdjson::SUCCESS) {
          return false;
        }
        nodes_[self].text = text;
        return true;
      }
      case json_type::number:
        nodes_[self].kind = NodeKind::number;
        return true;
      case json_type::boolean:
        nodes_[self].kind = NodeKind::boolean;
        return true;
      case json_type::null:
        nodes_[self].kind = NodeKind::null;
        return is_null(value);
      default:
        return false;
    }
  }

  [[nodiscard]] static bool is_null(simdjson::ondemand::value value) {
    bool null = false;
    return value.is_null().get(null) == simdjson::SUCCESS && null;
  }

  [[nodiscard]] std::uint32_t add(std::uint32_t self, std::uint32_t& last) {
    const auto index = static_cast<std::uint32_t>(nodes_.size());
    nodes_.emplace_back();
    (last == 0 ? nodes_[self].first : nodes_[last].next) = index;
    last = index;
    ++nodes_[self].count;
    return index;
  }

  [[nodiscard]] bool fill_object(simdjson::ondemand::value value, std::uint32_t self, const char* start) {
    nodes_[self].kind = NodeKind::object;
    simdjson::ondemand::object object;
    if (value.get_object().get(object) != simdjson::SUCCESS) {
      return false;
    }
    std::uint32_t last = 0;
    for (auto field : object) {
      std::string_view key;
      simdjson::ondemand::value inner;
      if (field.unescaped_key().get(key) != simdjson::SUCCESS || field.value().get(inner) != simdjson::SUCCESS) {
        return false;
      }
      const std::uint32_t index = add(self, last);
      nodes_[index].key = key;
      if (!fill(inner, index)) {
        return false;
      }
    }
    nodes_[self].raw = slice_from(start);
    note_repeated(self);
    return true;
  }

  [[nodiscard]] bool fill_list(simdjson::ondemand::value value, std::uint32_t self, const char* start) {
    nodes_[self].kind = NodeKind::list;
    simdjson::ondemand::array list;
    if (value.get_array().get(list) != simdjson::SUCCESS) {
      return false;
    }
    std::uint32_t last = 0;
    for (auto element : list) {
      simdjson::ondemand::value inner;
      if (element.get(inner) != simdjson::SUCCESS) {
        return false;
      }
      const std::uint32_t index = add(self, last);
      if (!fill(inner, index)) {
        return false;
      }
    }
    nodes_[self].raw = slice_from(start);
    return true;
  }

  void note_repeated(std::uint32_t self) {
    if (!repeated_.empty() || nodes_[self].count < 2) {
      return;
    }
    keys_.clear();
    for (std::uint32_t at = nodes_[self].first; at != 0; at = nodes_[at].next) {
      keys_.push_back(nodes_[at].key);
    }
    std::sort(keys_.begin(), keys_.end());
    const auto twice = std::adjacent_find(keys_.begin(), keys_.end());
    if (twice != keys_.end()) {
      repeated_at_ = self;
      repeated_ = pointer_step(*twice);
    }
  }

  // The pointer from the root to the wanted node; only looked for when there is a fault to name.
  [[nodiscard]] bool find_path(std::uint32_t from, std::uint32_t wanted, std::string& path) const {
    if (from == wanted) {
      return true;
    }
    std::size_t position = 0;
    for (std::uint32_t at = nodes_[from].first; at != 0; at = nodes_[at].next, ++position) {
      const std::size_t length = path.size();
      path += nodes_[from].kind == NodeKind::object ? pointer_step(nodes_[at].key) : pointer_step(position);
      if (find_path(at, wanted, path)) {
        return true;
      }
      path.resize(length);
    }
    return false;
  }

  std::vector<Node>& nodes_;
  simdjson::ondemand::document& document_;
  std::string_view text_;
  std::size_t levels_left_;
  std::string repeated_;
  std::uint32_t repeated_at_ = 0;
  std::vector<std::string_view> keys_;
};

[[nodiscard]] bool is_digit(char c) { return c >= '0' && c <= '9'; }

// Where the JSON number at `at` ends, or `at` where there is none (RFC 8259, section 6).
[[nodiscard]] std::size_t number_end(std::string_view text, std::size_t at) {
  const auto digits = [&](std::size_t from) {
    while (from < text.size() && is_digit(text[from])) {
      ++from;
    }
    return from;
  };
  const std::size_t begin = at;
  std::size_t from = at + (at < text.size() && text[at] == '-' ? 1 : 0);
  std::size_t end = digits(from);
  if (end == from || (text[from] == '0' && end > from + 1)) {
    return begin;
  }
  if (end < text.size() && text[end] == '.') {
    from = end + 1;
    end = digits(from);
    if (end == from) {
      return begin;
    }
  }
  if (end < text.size() && (text[end] == 'e' || text[end] == 'E')) {
    from = end + 1 + (end + 1 < text.size() && (text[end + 1] == '+' || text[end + 1] == '-') ? 1 : 0);
    end = digits(from);
    if (end == from) {
      return begin;
    }
  }
  const bool ends = end == text.size() || std::string_view(" \t\r\n,]}:").find(text[end]) != std::string_view::npos;
  return ends ? end : begin;
}

// Numbers are read from their digits, so one that no double holds is JSON all the same and is judged by its type. Each is
// put as 0 with spaces behind it, in a text of the same length. `broken`: the first that is no number at all.
[[nodiscard]] std::string plain_numbers(std::string_view text, std::optional<std::size_t>& broken) {
  std::string out(text);
  bool in_text = false;
  for (std::size_t i = 0; i < out.size(); ++i) {
    if (in_text && out[i] == '\\') {
      ++i;  // whatever is escaped ends no text
    } else if (in_text) {
      in_text = out[i] != '"';
    } else if (out[i] == '"') {
      in_text = true;
    } else if (out[i] == '-' || is_digit(out[i])) {
      const std::size_t end = number_end(text, i);
      if (end == i) {
        broken = broken ? broken : i;
        continue;
      }
      std::fill(out.begin() + static_cast<std::ptrdiff_t>(i), out.begin() + static_cast<std::ptrdiff_t>(end), ' ');
      out[i] = '0';
      i = end - 1;
    }
  }
  return out;
}

[[nodiscard]] Fault syntax_fault(simdjson::error_code error) {
  switch (error) {
    case simdjson::DEPTH_ERROR:
      return {"limit.depth", "", "fewer levels of lists and objects"};
    case simdjson::UTF8_ERROR:
      return {"json.syntax", "", "strict UTF-8"};
    case simdjson::NUMBER_ERROR:
      return {"json.syntax", "", "a number as JSON writes it"};
    case simdjson::UNESCAPED_CHARS:
    case simdjson::STRING_ERROR:
      return {"json.syntax", "", "texts in double quotes with control characters escaped and surrogates in pairs"};
    case simdjson::EMPTY:
      return {"json.syntax", "", "one JSON value"};
    default:
      return {"json.syntax", "", "one JSON value, no comments, no trailing commas"};
  }
}

// How long the character at `at` is, or 0 where no well-formed one stands (RFC 3629, section 4: no overlong form, no
// surrogate, nothing over U+10FFFF).
[[nodiscard]] std::size_t utf8_length(std::string_view text, std::size_t at) {
  const auto byte = [&](std::size_t i) { return i < text.size() ? static_cast<unsigned char>(text[i]) : 0U; };
  const unsigned lead = byte(at);
  if (lead < 0x80) {
    return 1;
  }
  if (lead < 0xC2 || lead > 0xF4) {
    return 0;
  }
  const std::size_t length = lead < 0xE0 ? 2 : lead < 0xF0 ? 3 : 4;
  const unsigned lowest = lead == 0xE0 ? 0xA0U : lead == 0xF0 ? 0x90U : 0x80U;
  const unsigned highest = lead == 0xED ? 0x9FU : lead == 0xF4 ? 0x8FU : 0xBFU;
  if (byte(at + 1) < lowest || byte(at + 1) > highest) {
    return 0;
  }
  for (std::size_t i = at + 2; i < at + length; ++i) {
    if (byte(i) < 0x80 || byte(i) > 0xBF) {
      return 0;
    }
  }
  return length;
}

// The byte at which the first character begins that is none; nothing where all are.
[[nodiscard]] std::optional<std::size_t> byte_of_broken_utf8(std::string_view text) {
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t length = utf8_length(text, at);
    if (length == 0) {
      return at;
    }
    at += length;
  }
  return std::nullopt;
}

// The byte, counted from 0, where walking the text stops making sense; nothing where the walk does not tell.
[[nodiscard]] std::optional<std::size_t> byte_of_fault(const simdjson::padded_string& text, std::size_t depth_max) {
  simdjson::ondemand::parser parser;
  simdjson::ondemand::document walked;
  if (parser.iterate(text).get(walked) != simdjson::SUCCESS) {
    return std::nullopt;
  }
  std::vector<Node> nodes;
  Builder builder(nodes, walked, {text.data(), text.size()}, depth_max);
  const char* here = nullptr;
  if (builder.build() || walked.current_location().get(here) != simdjson::SUCCESS || here < text.data() || here > text.data() + text.size()) {
    return std::nullopt;
  }
  return static_cast<std::size_t>(here - text.data());
}

}  // namespace

struct Document::Keep {
  simdjson::padded_string text;
  simdjson::ondemand::parser parser;
};

Document::Document() = default;
Document::Document(Document&&) noexcept = default;
Document& Document::operator=(Document&&) noexcept = default;
Document::~Document() = default;

const Node* Document::child(const Node& parent, std::string_view key) const {
  if (parent.kind != NodeKind::object) {
    return nullptr;
  }
  for (std::uint32_t index = parent.first; index != 0; index = nodes_[index].next) {
    if (nodes_[index].key == key) {
      return &nodes_[index];
    }
  }
  return nullptr;
}

bool is_utf8(std::string_view text) { return text.empty() || simdjson::validate_utf8(text.data(), text.size()); }

const Node* Document::at_pointer(std::string_view pointer) const {
  const Node* node = &root();
  while (node != nullptr && !pointer.empty()) {
    const std::size_t end = std::min(pointer.find('/', 1), pointer.size());
    const std::string_view step = pointer.substr(1, end - 1);
    pointer.remove_prefix(end);
    if (node->kind != NodeKind::list) {
      node = child(*node, step);
      continue;
    }
    std::size_t left = 0;
    for (const char digit : step) {
      left = left * 10 + static_cast<std::size_t>(digit - '0');
    }
    std::uint32_t index = node->first;
    for (; left > 0 && index != 0; --left) {
      index = at(index).next;
    }
    node = index == 0 || step.empty() || !std::all_of(step.begin(), step.end(), is_digit) ? nullptr : &at(index);
  }
  return node;
}

Result<Document> parse(std::string_view text, std::size_t depth_max) {
  Document document;
  document.keep_ = std::make_unique<Document::Keep>();
  document.keep_->text = simdjson::padded_string(text);
  // The parser counts the outermost value as a level of its own.
  simdjson::dom::parser whole;
  if (whole.allocate(std::max<std::size_t>(text.size(), 64), depth_max + 1) != simdjson::SUCCESS) {
    return Fault{"internal.memory", ""};
  }
  simdjson::dom::element ignored;
  auto error = whole.parse(document.keep_->text).get(ignored);
  std::optional<std::size_t> broken;
  const bool masked = error == simdjson::NUMBER_ERROR;
  if (masked) {
    const std::string plain = plain_numbers(text, broken);
    error = broken ? error : whole.parse(plain).get(ignored);
  }
  if (error != simdjson::SUCCESS) {
    // Looked at first: a text that also ends too early is called unclosed by the parser.
    const auto no_utf8 = byte_of_broken_utf8(text);
    Fault fault = syntax_fault(no_utf8 ? simdjson::UTF8_ERROR : error);
    if (no_utf8) {
      broken = no_utf8;
    } else if (error == simdjson::UNCLOSED_STRING) {
      broken = text.size();
    } else if (!broken && error != simdjson::NUMBER_ERROR && error != simdjson::DEPTH_ERROR) {
      broken = byte_of_fault(document.keep_->text, depth_max);
    }
    if (broken) {
      fault.got = "byte " + std::to_string(*broken);
    }
    return fault;
  }
  simdjson::ondemand::document walked;
  if (document.keep_->parser.iterate(document.keep_->text).get(walked) != simdjson::SUCCESS) {
    return Fault{"json.syntax", "", "one JSON value"};
  }
  document.nodes_.reserve(text.size() / 12 + 4);
  Builder builder(document.nodes_, walked, {document.keep_->text.data(), document.keep_->text.size()}, depth_max);
  if (!builder.build()) {
    return Fault{"json.syntax", "", "one JSON value"};
  }
  if (masked) {
    simdjson::dom::parser one;
    for (Node& node : document.nodes_) {
      node.beyond_double = node.kind == NodeKind::number && one.parse(simdjson::padded_string(node.raw)).get(ignored) == simdjson::NUMBER_ERROR;
    }
  }
  if (!builder.repeated().empty()) {
    return Fault{"json.duplicate_member", builder.repeated(), "each member once"};
  }
  return document;
}

std::string pointer_step(std::string_view member) {
  std::string step = "/";
  for (const char c : member.substr(0, 200)) {
    if (c == '~') {
      step += "~0";
    } else if (c == '/') {
      step += "~1";
    } else {
      step += c;
    }
  }
  return step;
}

std::string pointer_step(std::size_t index) { return "/" + std::to_string(index); }

}  // namespace limbledger::wire

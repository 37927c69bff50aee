#include "core/wire/parse.hpp"

#include "core/wire/json_text.hpp"

// Without its exceptions a result that nobody looked at does not compile.
#define SIMDJSON_EXCEPTIONS 0
#include <simdjson.h>

#include <algorithm>
#include <optional>
#include <string>

namespace limbledger::wire {

namespace {

using simdjson::ondemand::json_type;

// Walks the whole text On-Demand and makes its nodes. On-Demand checks structure, UTF-8, escapes and control characters of what it
// visits, which is everything; names and numbers are checked here.
class Builder {
 public:
  // Lists and objects deeper than `depth_max` are not entered: broken text is walked too, and has no other limit. `checks`: a value that
  // On-Demand alone would let pass (a name, a number, what stands after the value) ends it; otherwise the DOM parser has looked.
  Builder(std::vector<Node>& nodes, simdjson::ondemand::document& document, std::string_view text, std::size_t depth_max, bool checks)
      : nodes_(nodes), document_(document), text_(text), levels_left_(depth_max), checks_(checks) {}

  [[nodiscard]] bool build() {
    nodes_.emplace_back();
    json_type type{};
    if (document_.type().get(type) != simdjson::SUCCESS) {
      return false;
    }
    if (type == json_type::object || type == json_type::array) {
      simdjson::ondemand::value root;
      return document_.get_value().get(root) == simdjson::SUCCESS && fill(root, 0) && (!checks_ || is_over());
    }
    return !checks_ && fill_scalar_root(type);
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

  // Nothing stands behind what was walked.
  [[nodiscard]] bool is_over() { return document_.current_location().error() == simdjson::OUT_OF_BOUNDS; }

  [[nodiscard]] static std::string_view trimmed(std::string_view text) {
    std::size_t first = 0;
    std::size_t end = text.size();
    while (first < end && is_space(text[first])) {
      ++first;
    }
    while (end > first && is_space(text[end - 1])) {
      --end;
    }
    return text.substr(first, end - first);
  }

  // The text from `start` to where the document now stands.
  [[nodiscard]] std::string_view slice_from(const char* start) {
    const char* here = nullptr;
    if (document_.current_location().get(here) != simdjson::SUCCESS) {
      here = text_.data() + text_.size();
    }
    return trimmed({start, static_cast<std::size_t>(here - start)});
  }

  // By reference throughout: a copy of On-Demand's value waits for what has just been written of it.
  [[nodiscard]] bool fill(simdjson::ondemand::value& value, std::uint32_t self) {
    json_type type{};
    if (value.type().get(type) != simdjson::SUCCESS) {
      return false;
    }
    const std::string_view token = value.raw_json_token();
    const std::string_view raw = trimmed(token);
    nodes_[self].raw = raw;
    if (type == json_type::object || type == json_type::array) {
      if (levels_left_ == 0) {
        return false;
      }
      --levels_left_;
      const bool filled = type == json_type::object ? fill_object(value, self, token.data()) : fill_list(value, self, token.data());
      ++levels_left_;
      return filled;
    }
    // What is not read out of it On-Demand passes over, and is lenient then: the next that stands there is looked at here.
    const char behind = token.data()[token.size()];
    if (checks_ && behind != ',' && behind != ']' && behind != '}') {
      return false;
    }
    switch (type) {
      case json_type::string: {
        nodes_[self].kind = NodeKind::text;
        if (checks_ && raw.size() >= 2 && raw.back() == '"' && raw.find('\\') == std::string_view::npos) {
          nodes_[self].text = raw.substr(1, raw.size() - 2);
          return true;
        }
        std::string_view text;
        if (value.get_string().get(text) != simdjson::SUCCESS) {
          return false;
        }
        nodes_[self].text = text;
        return true;
      }
      case json_type::number:
        nodes_[self].kind = NodeKind::number;
        return !checks_ || is_plain_number(raw);
      case json_type::boolean:
        nodes_[self].kind = NodeKind::boolean;
        return raw == "true" || raw == "false";
      case json_type::null:
        nodes_[self].kind = NodeKind::null;
        return raw == "null";
      default:
        return false;
    }
  }

  [[nodiscard]] std::uint32_t add(std::uint32_t self, std::uint32_t& last) {
    const auto index = static_cast<std::uint32_t>(nodes_.size());
    nodes_.emplace_back();
    (last == 0 ? nodes_[self].first : nodes_[last].next) = index;
    last = index;
    ++nodes_[self].count;
    return index;
  }

  // As written where nothing in it is escaped: On-Demand unescapes into a buffer, a letter at a time.
  [[nodiscard]] static bool read_key(simdjson::ondemand::field& field, std::string_view& key) {
    const char* const start = field.key().raw();
    const char* end = start;
    while (*end != '"' && *end != '\\') {
      ++end;  // the first pass of On-Demand has refused a text that is not closed
    }
    key = {start, static_cast<std::size_t>(end - start)};
    return *end == '"' || field.unescaped_key().get(key) == simdjson::SUCCESS;
  }

  [[nodiscard]] bool fill_object(simdjson::ondemand::value& value, std::uint32_t self, const char* start) {
    nodes_[self].kind = NodeKind::object;
    simdjson::ondemand::object object;
    if (value.get_object().get(object) != simdjson::SUCCESS) {
      return false;
    }
    std::uint32_t last = 0;
    for (auto field : object) {
      if (field.error() != simdjson::SUCCESS) {
        return false;
      }
      simdjson::ondemand::field&& member = std::move(field).value_unsafe();
      std::string_view key;
      if (!read_key(member, key)) {
        return false;
      }
      const std::uint32_t index = add(self, last);
      nodes_[index].key = key;
      if (!fill(member.value(), index)) {
        return false;
      }
    }
    nodes_[self].raw = slice_from(start);
    note_repeated(self);
    return true;
  }

  [[nodiscard]] bool fill_list(simdjson::ondemand::value& value, std::uint32_t self, const char* start) {
    nodes_[self].kind = NodeKind::list;
    simdjson::ondemand::array list;
    if (value.get_array().get(list) != simdjson::SUCCESS) {
      return false;
    }
    std::uint32_t last = 0;
    for (auto element : list) {
      if (element.error() != simdjson::SUCCESS) {
        return false;
      }
      const std::uint32_t index = add(self, last);
      simdjson::ondemand::value&& inner = std::move(element).value_unsafe();
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
    const auto twice = nodes_[self].count <= few_members ? twice_of_few(self) : twice_of_many(self);
    if (twice) {
      repeated_at_ = self;
      repeated_ = pointer_step(*twice);
    }
  }

  // The smallest of those, as of many. Each with those behind it: most differ in length.
  [[nodiscard]] std::optional<std::string_view> twice_of_few(std::uint32_t self) const {
    std::optional<std::string_view> smallest;
    for (std::uint32_t at = nodes_[self].first; at != 0; at = nodes_[at].next) {
      const std::string_view& key = nodes_[at].key;
      for (std::uint32_t behind = nodes_[at].next; behind != 0; behind = nodes_[behind].next) {
        const std::string_view& other = nodes_[behind].key;
        if (key.size() == other.size() && key == other) {
          smallest = smallest ? std::min(*smallest, key) : key;
        }
      }
    }
    return smallest;
  }

  [[nodiscard]] std::optional<std::string_view> twice_of_many(std::uint32_t self) {
    keys_.clear();
    for (std::uint32_t at = nodes_[self].first; at != 0; at = nodes_[at].next) {
      keys_.push_back(nodes_[at].key);
    }
    std::sort(keys_.begin(), keys_.end());
    const auto twice = std::adjacent_find(keys_.begin(), keys_.end());
    return twice == keys_.end() ? std::nullopt : std::optional(*twice);
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

  static constexpr std::uint32_t few_members = 12;

  std::vector<Node>& nodes_;
  simdjson::ondemand::document& document_;
  std::string_view text_;
  std::size_t levels_left_;
  bool checks_;
  std::string repeated_;
  std::uint32_t repeated_at_ = 0;
  std::vector<std::string_view> keys_;
};

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

struct Walk {
  bool is_whole = false;
  std::string repeated;  // the pointer to a member named twice, or empty
};

[[nodiscard]] Walk walk_text(simdjson::ondemand::parser& parser, const simdjson::padded_string& text, std::size_t depth_max, bool checks, std::vector<Node>& nodes) {
  nodes.clear();
  simdjson::ondemand::document walked;
  if (parser.iterate(text).get(walked) != simdjson::SUCCESS) {
    return {};
  }
  Builder builder(nodes, walked, {text.data(), text.size()}, depth_max, checks);
  return builder.build() ? Walk{true, builder.repeated()} : Walk{};
}

// The byte, counted from 0, where walking the text stops making sense; nothing where the walk does not tell.
[[nodiscard]] std::optional<std::size_t> byte_of_fault(const simdjson::padded_string& text, std::size_t depth_max) {
  simdjson::ondemand::parser parser;
  simdjson::ondemand::document walked;
  if (parser.iterate(text).get(walked) != simdjson::SUCCESS) {
    return std::nullopt;
  }
  std::vector<Node> nodes;
  Builder builder(nodes, walked, {text.data(), text.size()}, depth_max, false);
  const char* here = nullptr;
  if (builder.build() || walked.current_location().get(here) != simdjson::SUCCESS || here < text.data() || here > text.data() + text.size()) {
    return std::nullopt;
  }
  return static_cast<std::size_t>(here - text.data());
}

// What the DOM parser has against the text. `masked`: nothing, but for numbers that it cannot hold.
[[nodiscard]] std::optional<Fault> find_fault(const simdjson::padded_string& text, std::size_t depth_max, bool& masked) {
  // The parser counts the outermost value as a level of its own.
  simdjson::dom::parser whole;
  if (whole.allocate(std::max<std::size_t>(text.size(), 64), depth_max + 1) != simdjson::SUCCESS) {
    return Fault{"internal.memory", ""};
  }
  const std::string_view words(text.data(), text.size());
  simdjson::dom::element ignored;
  auto error = whole.parse(text).get(ignored);
  std::optional<std::size_t> broken;
  masked = error == simdjson::NUMBER_ERROR;
  if (masked) {
    const std::string plain = plain_numbers(words, broken);
    error = broken ? error : whole.parse(plain).get(ignored);
  }
  if (error == simdjson::SUCCESS) {
    return std::nullopt;
  }
  // Looked at first: a text that also ends too early is called unclosed by the parser.
  const auto no_utf8 = byte_of_broken_utf8(words);
  Fault fault = syntax_fault(no_utf8 ? simdjson::UTF8_ERROR : error);
  if (no_utf8) {
    broken = no_utf8;
  } else if (error == simdjson::UNCLOSED_STRING) {
    broken = words.size();
  } else if (!broken && error != simdjson::NUMBER_ERROR && error != simdjson::DEPTH_ERROR) {
    broken = byte_of_fault(text, depth_max);
  }
  if (broken) {
    fault.got = "byte " + std::to_string(*broken);
  }
  return fault;
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
  Document::Keep& keep = *document.keep_;
  keep.text = simdjson::padded_string(text);
  document.nodes_.reserve(text.size() / 12 + 4);
  Walk walk = walk_text(keep.parser, keep.text, depth_max, true, document.nodes_);
  if (!walk.is_whole) {
    bool masked = false;
    if (auto fault = find_fault(keep.text, depth_max, masked)) {
      return *fault;
    }
    walk = walk_text(keep.parser, keep.text, depth_max, false, document.nodes_);
    if (!walk.is_whole) {
      return Fault{"json.syntax", "", "one JSON value"};
    }
    simdjson::dom::parser one;
    simdjson::dom::element ignored;
    for (Node& node : document.nodes_) {
      node.beyond_double = masked && node.kind == NodeKind::number && one.parse(simdjson::padded_string(node.raw)).get(ignored) == simdjson::NUMBER_ERROR;
    }
  }
  if (!walk.repeated.empty()) {
    return Fault{"json.duplicate_member", walk.repeated, "each member once"};
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

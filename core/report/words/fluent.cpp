#include "core/report/words/fluent.hpp"

#include <algorithm>
#include <optional>
#include <utility>

namespace limbledger::report {

namespace {

[[nodiscard]] bool is_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }
[[nodiscard]] bool is_name_char(char c) { return is_letter(c) || (c >= '0' && c <= '9') || c == '_' || c == '-'; }

class Reader {
 public:
  Reader(std::string_view text, Messages& messages) : text_(text), messages_(messages) {}

  [[nodiscard]] std::optional<std::string> read() {
    while (at_ < text_.size()) {
      if (text_[at_] == '#') {
        skip_line();
      } else if (text_[at_] == '\n' || text_[at_] == ' ') {
        const std::size_t start = at_;
        skip_blank();
        if (at_ < text_.size() && text_[at_] != '\n') {
          at_ = start;
          return "text before any message";
        }
        ++at_;
      } else if (!entry()) {
        return problem_;
      }
    }
    return std::nullopt;
  }

  [[nodiscard]] std::size_t line() const {
    return 1 + static_cast<std::size_t>(std::count(text_.begin(), text_.begin() + static_cast<std::ptrdiff_t>(std::min(at_, text_.size())), '\n'));
  }

 private:
  [[nodiscard]] char peek() const { return at_ < text_.size() ? text_[at_] : '\0'; }
  void skip_line() {
    while (at_ < text_.size() && text_[at_++] != '\n') {
    }
  }
  void skip_blank() {
    while (peek() == ' ') {
      ++at_;
    }
  }
  void skip_space() {
    while (peek() == ' ' || peek() == '\n') {
      ++at_;
    }
  }
  bool fail(std::string problem) {
    problem_ = std::move(problem);
    return false;
  }
  bool take(char c) {
    if (peek() != c) {
      return fail(std::string("expected ") + c);
    }
    ++at_;
    return true;
  }
  bool name(std::string& out) {
    if (!is_letter(peek())) {
      return fail("expected a name");
    }
    while (is_name_char(peek())) {
      out += text_[at_++];
    }
    return true;
  }

  bool entry() {
    std::string id;
    if (peek() == '-') {
      id = "-";
      ++at_;
    }
    if (!name(id)) {
      return false;
    }
    skip_blank();
    Message message;
    if (!take('=') || !pattern(message.pattern)) {
      return false;
    }
    while (next_line_starts_with('.')) {
      skip_space();
      ++at_;
      std::string attribute;
      if (!name(attribute)) {
        return false;
      }
      skip_blank();
      if (!take('=') || !pattern(message.attributes[attribute])) {
        return false;
      }
    }
    if (peek() == '\n') {
      ++at_;
    }
    if (!messages_.emplace(id, std::move(message)).second) {
      return fail("twice: " + id);
    }
    return true;
  }

  // Looks over blank lines to the first sign of an indented line.
  [[nodiscard]] bool next_line_starts_with(char sign) const {
    std::size_t look = at_;
    bool indented = false;
    while (look < text_.size() && (text_[look] == '\n' || text_[look] == ' ')) {
      indented = text_[look] == ' ';
      ++look;
    }
    return indented && look < text_.size() && text_[look] == sign;
  }

  // A text goes on over a line that is indented and does not begin with . [ * or }
  [[nodiscard]] bool goes_on(std::size_t& to, std::size_t& breaks) const {
    to = at_;
    breaks = 0;
    bool indented = false;
    while (to < text_.size() && (text_[to] == '\n' || text_[to] == ' ')) {
      breaks += text_[to] == '\n' ? 1U : 0U;
      indented = text_[to] == ' ';
      ++to;
    }
    return indented && to < text_.size() && std::string_view(".[*}").find(text_[to]) == std::string_view::npos;
  }

  bool pattern(Pattern& out) {
    skip_blank();
    std::string text;
    const auto flush = [&] {
      if (!text.empty()) {
        out.push_back({PieceKind::text, text, "", {}});
        text.clear();
      }
    };
    while (at_ < text_.size()) {
      const char c = peek();
      if (c == '\n') {
        std::size_t to = 0;
        std::size_t breaks = 0;
        if (!goes_on(to, breaks)) {
          break;
        }
        if (!(out.empty() && text.empty())) {
          text.append(breaks, '\n');
        }
        at_ = to;
      } else if (c == '{') {
        flush();
        if (!placeable(out)) {
          return false;
        }
      } else if (c == '}') {
        break;
      } else {
        text += c;
        ++at_;
      }
    }
    while (!text.empty() && text.back() == ' ') {
      text.pop_back();
    }
    flush();
    return true;
  }

  bool quoted(std::string& out) {
    ++at_;
    while (at_ < text_.size() && peek() != '"') {
      if (peek() == '\\') {
        ++at_;
        if (peek() != '"' && peek() != '\\') {
          return fail("only \\\" and \\\\ are read in a quoted text");
        }
      }
      if (peek() == '\n') {
        return fail("a quoted text ends on its line");
      }
      out += text_[at_++];
    }
    return take('"');
  }

  bool placeable(Pattern& out) {
    ++at_;
    skip_space();
    Piece piece;
    if (peek() == '"') {
      if (!quoted(piece.text)) {
        return false;
      }
    } else if (peek() == '$') {
      ++at_;
      piece.kind = PieceKind::variable;
      if (!name(piece.text)) {
        return false;
      }
    } else {
      piece.kind = peek() == '-' ? PieceKind::term : PieceKind::message;
      if (piece.kind == PieceKind::term) {
        piece.text = "-";
        ++at_;
      }
      if (!name(piece.text)) {
        return false;
      }
      if (peek() == '.') {
        ++at_;
        if (!name(piece.attribute)) {
          return false;
        }
      }
    }
    skip_space();
    if (text_.substr(at_, 2) == "->") {
      at_ += 2;
      if (piece.kind != PieceKind::variable) {
        return fail("only a variable can be selected by");
      }
      piece.kind = PieceKind::select;
      if (!variants(piece.variants)) {
        return false;
      }
    }
    skip_space();
    out.push_back(std::move(piece));
    return take('}');
  }

  bool variants(std::vector<Variant>& out) {
    std::size_t defaults = 0;
    for (skip_space(); peek() == '[' || peek() == '*'; skip_space()) {
      Variant variant;
      if (peek() == '*') {
        variant.is_default = true;
        ++defaults;
        ++at_;
      }
      if (!take('[')) {
        return false;
      }
      skip_blank();
      while (is_name_char(peek()) || peek() == '.') {
        variant.key += text_[at_++];
      }
      skip_blank();
      if (!take(']') || !pattern(variant.pattern)) {
        return false;
      }
      out.push_back(std::move(variant));
    }
    return defaults == 1 ? true : fail("exactly one variant is the default");
  }

  std::string_view text_;
  std::size_t at_ = 0;
  std::string problem_;
  Messages& messages_;
};

}  // namespace

Result<bool> read_fluent(std::string_view text, Messages& messages) {
  Reader reader(text, messages);
  if (auto problem = reader.read()) {
    return wire::Fault{"internal.failure", "/" + std::to_string(reader.line()), *problem};
  }
  return true;
}

}  // namespace limbledger::report

#include "core/report/words/words.hpp"

#include "core/reference/embedded.hpp"
#include "core/report/words/fluent.hpp"

#include <algorithm>
#include <map>
#include <utility>

namespace limbledger::report {

namespace {

constexpr int depth_max = 16;  // a message that refers to itself ends here
constexpr std::string_view isolate = "\u2068";
constexpr std::string_view isolate_end = "\u2069";

[[nodiscard]] const Arg* find(const Args& args, std::string_view name) {
  const auto at = std::find_if(args.begin(), args.end(), [&](const Arg& arg) { return arg.name == name; });
  return at == args.end() ? nullptr : &*at;
}

// English: one thing, or any other number of things.
[[nodiscard]] std::string_view plural(std::string_view number) { return number == "1" ? "one" : "other"; }

[[nodiscard]] const Variant& choose(const Piece& piece, const Arg* arg) {
  const Variant* otherwise = &piece.variants.front();
  const Variant* by_plural = nullptr;
  for (const Variant& variant : piece.variants) {
    if (arg != nullptr && variant.key == arg->text) {
      return variant;
    }
    if (arg != nullptr && arg->number && variant.key == plural(arg->text)) {
      by_plural = &variant;
    }
    otherwise = variant.is_default ? &variant : otherwise;
  }
  return by_plural != nullptr ? *by_plural : *otherwise;
}

class Speaker {
 public:
  Speaker(const Messages& messages, const Args& args) : messages_(messages), args_(args) {}

  void say(const Pattern& pattern, int depth, std::string& out) const {
    for (const Piece& piece : pattern) {
      switch (piece.kind) {
        case PieceKind::text:
          out += piece.text;
          break;
        case PieceKind::variable:
          variable(piece, out);
          break;
        case PieceKind::message:
        case PieceKind::term:
          reference(piece, depth, out);
          break;
        case PieceKind::select:
          if (depth < depth_max) {
            say(choose(piece, find(args_, piece.text)).pattern, depth + 1, out);
          }
          break;
      }
    }
  }

 private:
  void variable(const Piece& piece, std::string& out) const {
    const Arg* arg = find(args_, piece.text);
    if (arg == nullptr) {
      out += "{$" + piece.text + "}";
    } else if (arg->number || arg->our_own) {
      out += arg->text;
    } else {
      out += std::string(isolate) + arg->text + std::string(isolate_end);
    }
  }
  void reference(const Piece& piece, int depth, std::string& out) const {
    const auto message = messages_.find(piece.text);
    if (message == messages_.end() || depth >= depth_max) {
      out += "{" + piece.text + "}";
      return;
    }
    const auto attribute = message->second.attributes.find(piece.attribute);
    say(attribute == message->second.attributes.end() ? message->second.pattern : attribute->second, depth + 1, out);
  }

  const Messages& messages_;
  const Args& args_;
};

[[nodiscard]] std::string dashed(std::string_view name) {
  std::string out(name);
  std::replace(out.begin(), out.end(), '.', '-');
  return out;
}

[[nodiscard]] const Pattern* look_up(const Messages& messages, std::string_view name) {
  const auto whole = messages.find(dashed(name));
  if (whole != messages.end()) {
    return &whole->second.pattern;
  }
  const auto dot = name.rfind('.');
  if (dot == std::string_view::npos) {
    return nullptr;
  }
  const auto message = messages.find(dashed(name.substr(0, dot)));
  if (message == messages.end()) {
    return nullptr;
  }
  const auto attribute = message->second.attributes.find(std::string(name.substr(dot + 1)));
  return attribute == message->second.attributes.end() ? nullptr : &attribute->second;
}

}  // namespace

struct Words::Inside {
  Messages messages;
  const Words* behind = nullptr;
};

Words::Words(std::unique_ptr<Inside> inside) : inside_(std::move(inside)) {}
Words::Words(Words&&) noexcept = default;
Words& Words::operator=(Words&&) noexcept = default;
Words::~Words() = default;

Result<Words> Words::read(std::span<const std::string_view> files) { return read(files, nullptr); }

Result<Words> Words::read(std::span<const std::string_view> files, const Words* behind) {
  auto inside = std::make_unique<Inside>();
  inside->behind = behind;
  for (std::size_t i = 0; i < files.size(); ++i) {
    const auto good = read_fluent(files[i], inside->messages);
    if (!good) {
      wire::Fault fault = good.error().faults.front();
      fault.path = "/" + std::to_string(i) + fault.path;
      return fault;
    }
  }
  return Words(std::move(inside));
}

std::string Words::say(std::string_view name, const Args& args) const {
  const Pattern* pattern = look_up(inside_->messages, name);
  if (pattern == nullptr && inside_->behind != nullptr && inside_->behind->has(name)) {
    // Said in another language than the page's: the reader must see that nobody translated it.
    return inside_->behind->say(name, args) + std::string(english_mark);
  }
  if (pattern == nullptr) {
    return std::string(name);
  }
  std::string out;
  Speaker(inside_->messages, args).say(*pattern, 0, out);
  return out;
}

bool Words::has(std::string_view name) const {
  return says_itself(name) || (inside_->behind != nullptr && inside_->behind->has(name));
}

bool Words::says_itself(std::string_view name) const { return look_up(inside_->messages, name) != nullptr; }

std::string Words::language() const { return says_itself("msg.language.code") ? say("msg.language.code") : std::string(english); }

std::vector<std::string> Words::names() const {
  std::vector<std::string> names;
  for (const auto& [name, message] : inside_->messages) {
    names.push_back(name);
    for (const auto& [attribute, pattern] : message.attributes) {
      names.push_back(name + "." + attribute);
    }
  }
  return names;
}

namespace {

[[nodiscard]] Result<Words> read_language(std::string_view code, const Words* behind) {
  const std::string whole = std::string(code) + ".ftl";
  const std::string part = std::string(code) + "_";
  std::vector<std::string_view> files;
  for (const std::string_view name : reference::embedded_names()) {
    // Names of en_items/ too.
    if (name == whole || (name.starts_with(part) && name.ends_with(".ftl"))) {
      files.push_back(reference::embedded(name));
    }
  }
  return Words::read(files, behind);
}

}  // namespace

const Words* built_in_words() {
  static const auto words = read_language(english, nullptr);
  return words ? &*words : nullptr;
}

std::span<const Language> languages() {
  static constexpr Language all[] = {{english, false}, {"es", true}, {"fr", true}};
  return all;
}

const Words* words_in_language(std::string_view code) {
  static const std::map<std::string_view, Result<Words>> others = [] {
    std::map<std::string_view, Result<Words>> read;
    for (const Language& one : languages()) {
      if (one.code != english) {
        auto words = read_language(one.code, built_in_words());
        read.emplace(one.code, std::move(words));
      }
    }
    return read;
  }();
  if (code == english) {
    return built_in_words();
  }
  const auto at = others.find(code);
  return at == others.end() || !at->second ? nullptr : &*at->second;
}

}  // namespace limbledger::report

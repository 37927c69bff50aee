#include "rpc/emit/page/shortened.hpp"

#include "core/wire/parse.hpp"
#include "core/wire/write.hpp"

#include <cstddef>
#include <cstdint>
#include <set>
#include <utility>

namespace limbledger::rpc {

namespace {

constexpr std::size_t shown_of_a_list = 4;

class Shortened {
 public:
  explicit Shortened(const wire::Document& document) : document_(document) {}

  void write(const wire::Node& node, std::size_t depth) {
    const bool list = node.kind == wire::NodeKind::list;
    if ((!list && node.kind != wire::NodeKind::object) || node.count == 0) {
      out_ += node.raw;
      return;
    }
    out_ += list ? "[" : "{";
    std::size_t shown = 0;
    for (std::uint32_t index = node.first; index != 0; index = document_.at(index).next) {
      const wire::Node& one = document_.at(index);
      if (list && !is_shown(node.key, one, shown)) {
        continue;
      }
      out_ += shown == 0 ? "" : ",";
      begin_line(depth + 1);
      out_ += list ? std::string() : wire::quoted(one.key) + ": ";
      write(one, depth + 1);
      ++shown;
    }
    if (shown < node.count) {
      begin_line(depth + 1);
      out_ += "... and " + std::to_string(node.count - shown) + " more";
    }
    begin_line(depth);
    out_ += list ? "]" : "}";
  }
  [[nodiscard]] std::string text() && { return std::move(out_); }

 private:
  void begin_line(std::size_t depth) { out_ += "\n" + std::string(2 * depth, ' '); }

  [[nodiscard]] bool is_shown(std::string_view list, const wire::Node& one, std::size_t shown) {
    if (list == "steps") {
      const bool of_its_control = controls_.insert(text_of(one, "control")).second;
      const bool recorded = document_.child(one, "recorded") != nullptr && !recorded_;
      recorded_ = recorded_ || recorded;
      return of_its_control || recorded;
    }
    if (list == "texts") {
      const std::string name = text_of(one, "message");
      return names_.insert(name.substr(0, name.find('.', std::string_view("msg.").size()))).second;
    }
    return list == "positions" || shown < shown_of_a_list;
  }
  [[nodiscard]] std::string text_of(const wire::Node& object, std::string_view member) const {
    const wire::Node* found = document_.child(object, member);
    return found == nullptr ? std::string() : std::string(found->text);
  }

  const wire::Document& document_;
  std::string out_;
  std::set<std::string> controls_;
  std::set<std::string> names_;
  bool recorded_ = false;
};

}  // namespace

std::string shortened(std::string_view json) {
  const auto document = wire::parse(json);
  if (!document) {
    return std::string(json);
  }
  Shortened all(*document);
  all.write(document->root(), 0);
  return std::move(all).text();
}

}  // namespace limbledger::rpc

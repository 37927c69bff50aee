#include "core/wire/read.hpp"

#include "core/wire/number.hpp"
#include "core/wire/write.hpp"

#include <algorithm>

namespace limbledger::wire {

namespace {

constexpr std::size_t faults_max = 50;  // beyond this a reply would only repeat itself

[[nodiscard]] std::string_view kind_name(NodeKind kind) {
  switch (kind) {
    case NodeKind::object:
      return "object";
    case NodeKind::list:
      return "array";
    case NodeKind::text:
      return "string";
    case NodeKind::number:
      return "number";
    case NodeKind::boolean:
      return "boolean";
    case NodeKind::null:
      return "null";
  }
  return "";
}

[[nodiscard]] std::string joined(std::span<const std::string_view> words) {
  std::string text;
  for (const auto word : words) {
    text += (text.empty() ? "" : ", ") + std::string(word);
  }
  return text;
}

[[nodiscard]] std::size_t edit_distance(std::string_view a, std::string_view b) {
  std::vector<std::size_t> row(b.size() + 1);
  for (std::size_t j = 0; j <= b.size(); ++j) {
    row[j] = j;
  }
  for (std::size_t i = 1; i <= a.size(); ++i) {
    std::size_t diagonal = row[0];
    row[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t above = row[j];
      row[j] = std::min({row[j] + 1, row[j - 1] + 1, diagonal + (a[i - 1] == b[j - 1] ? 0U : 1U)});
      diagonal = above;
    }
  }
  return row[b.size()];
}

class Reader {
 public:
  Reader(const Document& document, Unknown unknown, ReadReport& report) : document_(document), unknown_(unknown), report_(report) {}

  void into(const Type& type, void* target, const Node& node, const std::string& path) {
    if (report_.faults.size() >= faults_max) {
      return;
    }
    switch (type.kind) {
      case Kind::object:
        return object(type, target, node, path, "");
      case Kind::list:
        return list(type, target, node, path);
      case Kind::optional:
        return node.kind == NodeKind::null ? void() : may_be_absent(type, target, node, path);
      case Kind::choice:
        return choice(type, target, node, path);
      case Kind::text:
        return text(type, target, node, path);
      case Kind::number:
        return number(type, target, node, path);
      case Kind::word:
        return word(type, target, node, path);
      case Kind::boolean:
        return node.kind == NodeKind::boolean ? type.set(target, node.raw == "true" ? 1 : 0) : wrong(path, "true or false", node);
      case Kind::raw:
        if (holds_beyond_double(node)) {
          return fault(Fault{"value.out_of_range", path, "numbers within the range of a double"});
        }
        static_cast<void>(type.from_text(target, node.raw));
        return;
    }
  }

 private:
  [[nodiscard]] bool holds_beyond_double(const Node& node) const {
    bool found = node.beyond_double;
    for (std::uint32_t index = node.first; index != 0; index = document_.at(index).next) {
      found = found || holds_beyond_double(document_.at(index));
    }
    return found;
  }
  void may_be_absent(const Type& type, void* target, const Node& node, const std::string& path) {
    const std::size_t before = report_.faults.size();
    into(type.inner(), type.emplace(target), node, path);
    if (report_.faults.size() == before + 1 && report_.faults.back().code == "value.empty" && report_.faults.back().path == path) {
      report_.faults.back().expected += ", or no such member";
    }
  }
  void fault(Fault fault) {
    if (report_.faults.size() < faults_max) {
      report_.faults.push_back(std::move(fault));
    }
  }

  void wrong(const std::string& path, std::string expected, const Node& node) {
    fault({"params.wrong_type", path, std::move(expected), std::string(kind_name(node.kind))});
  }

  void object(const Type& type, void* target, const Node& node, const std::string& path, std::string_view passed_over) {
    if (node.kind != NodeKind::object) {
      return wrong(path, "an object", node);
    }
    std::vector<bool> seen(type.fields.size());
    for (std::uint32_t index = node.first; index != 0; index = document_.at(index).next) {
      const Node& member = document_.at(index);
      if (!passed_over.empty() && member.key == passed_over) {
        continue;
      }
      const auto field = std::find_if(type.fields.begin(), type.fields.end(), [&](const Field& f) { return f.name == member.key; });
      if (field == type.fields.end()) {
        unknown_member(type, member, path);
        continue;
      }
      if (member.kind == NodeKind::null && field->type().kind != Kind::optional) {
        continue;  // null reads as absent
      }
      seen[static_cast<std::size_t>(field - type.fields.begin())] = true;
      into(field->type(), field->at(target), member, path + pointer_step(member.key));
    }
    for (std::size_t i = 0; i < seen.size(); ++i) {
      if (!seen[i] && field_required(type.fields[i].type())) {
        fault({"params.missing", path + pointer_step(type.fields[i].name), describe(type.fields[i].type())});
      }
    }
  }

  void unknown_member(const Type& type, const Node& member, const std::string& path) {
    if (unknown_ == Unknown::ignore) {
      ++report_.unknown_members;
      return;
    }
    if (report_.faults.size() >= faults_max) {
      return;
    }
    std::vector<std::string_view> names;
    for (const Field& field : type.fields) {
      names.push_back(field.name);
    }
    const std::string_view near = nearest(member.key, names);
    const std::string known = names.empty() ? "no member: nothing is taken here" : "one of: " + joined(names);
    fault(Fault{"params.unknown_member", path + pointer_step(member.key), near.empty() ? known : "perhaps " + std::string(near)});
  }

  void list(const Type& type, void* target, const Node& node, const std::string& path) {
    if (node.kind != NodeKind::list) {
      return wrong(path, "an array", node);
    }
    if (node.count > type.items_max) {
      const std::string most = std::to_string(type.items_max);
      return fault(Fault("limit.items", path, "at most " + most, std::to_string(node.count)).with("items", most));
    }
    std::size_t position = 0;
    for (std::uint32_t index = node.first; index != 0; index = document_.at(index).next, ++position) {
      into(type.inner(), type.grow(target), document_.at(index), path + pointer_step(position));
    }
  }

  void choice(const Type& type, void* target, const Node& node, const std::string& path) {
    if (node.kind != NodeKind::object) {
      return wrong(path, "an object with the member kind", node);
    }
    std::vector<std::string_view> tags;
    for (const Alternative& alternative : type.alternatives) {
      tags.push_back(alternative.tag);
    }
    const Node* tag = document_.child(node, "kind");
    if (tag == nullptr || tag->kind != NodeKind::text) {
      return fault({"params.missing", path + "/kind", "one of: " + joined(tags)});
    }
    const auto found = std::find(tags.begin(), tags.end(), tag->text);
    if (found == tags.end()) {
      return fault({"value.kind", path + "/kind", "one of: " + joined(tags)});
    }
    const auto index = static_cast<std::size_t>(found - tags.begin());
    object(type.alternatives[index].type(), type.hold(target, index), node, path, "kind");
  }

  void text(const Type& type, void* target, const Node& node, const std::string& path) {
    if (node.kind != NodeKind::text) {
      // An identifier sent as a number would lose digits past 2^53, so it is refused, not converted.
      return wrong(path, std::string(type.text_rule.expected), node);
    }
    const TextProblem problem = type.from_text(target, node.text);
    if (problem.empty()) {
      return;
    }
    if (problem == "value.date") {
      return fault({problem, path, "a day that the calendar has, in the years 1850 to 2200"});  // its form is right, or it were of the wrong type
    }
    if (problem == "limit.text") {
      const std::string most = std::to_string(type.text_rule.length_max);
      return fault(Fault(problem, path, "at most " + most + " characters", std::to_string(code_points(node.text))).with("characters", most));
    }
    fault({problem, path, std::string(type.text_rule.expected)});
  }

  void number(const Type& type, void* target, const Node& node, const std::string& path) {
    if (node.kind != NodeKind::number) {
      return wrong(path, describe_number(type.number_rule, type.number_rule.unit.empty()), node);
    }
    std::int64_t steps = 0;
    TextProblem problem = read_number(node.raw, type.number_rule.per_unit, steps);
    if (problem.empty() && (steps < type.number_rule.low || steps > type.number_rule.high)) {
      problem = "value.out_of_range";
    }
    if (problem.empty()) {
      return type.set(target, steps);
    }
    const NumberRule& rule = type.number_rule;
    fault(Fault{problem, path, describe_number(rule, rule.unit.empty() || problem == "value.out_of_range"), node.raw.size() <= 40 ? std::string(node.raw) : "a number of many digits"}
              .with("low", write_number(rule.low, rule.per_unit))
              .with("high", write_number(rule.high, rule.per_unit))
              .with("step", write_number(1, rule.per_unit)));
  }

  void word(const Type& type, void* target, const Node& node, const std::string& path) {
    if (node.kind != NodeKind::text) {
      return wrong(path, "one of: " + joined(type.words), node);
    }
    const auto found = std::find(type.words.begin(), type.words.end(), node.text);
    if (found == type.words.end()) {
      return fault({"params.unknown_word", path, "one of: " + joined(type.words)});
    }
    type.set(target, found - type.words.begin());
  }

  [[nodiscard]] static bool field_required(const Type& type) { return type.kind != Kind::optional && type.kind != Kind::list; }

  // What no number is has no limits yet: those of a quantity are wider than those of any item that is measured in it.
  [[nodiscard]] static std::string describe_number(const NumberRule& rule, bool with_limits) {
    std::string text = with_limits ? write_number(rule.low, rule.per_unit) + " to " + write_number(rule.high, rule.per_unit) : std::string("a number");
    if (!rule.unit.empty()) {
      text += (with_limits ? " " : " of ") + std::string(rule.unit);
    }
    return rule.per_unit == 1 ? text + ", whole" : text + " in steps of " + write_number(1, rule.per_unit);
  }
  [[nodiscard]] static std::string describe(const Type& type) {
    switch (type.kind) {
      case Kind::number:
        return describe_number(type.number_rule, true);
      case Kind::text:
        return std::string(type.text_rule.expected);
      case Kind::word:
        return "one of: " + joined(type.words);
      case Kind::boolean:
        return "true or false";
      case Kind::list:
        return "an array";
      case Kind::raw:
        return "a JSON value";
      default:
        return "an object";
    }
  }

  const Document& document_;
  Unknown unknown_;
  ReadReport& report_;
};

}  // namespace

void read_into(const Type& type, void* target, const Document& document, const Node& node, Unknown unknown, const std::string& path,
               ReadReport& report) {
  Reader(document, unknown, report).into(type, target, node, path);
}

std::string_view nearest(std::string_view name, std::span<const std::string_view> known) {
  std::string_view best;
  // Half of a short name is another name.
  std::size_t best_distance = std::min<std::size_t>(name.size(), 12) / 3;
  if (name.size() > 60) {
    return best;
  }
  for (const auto candidate : known) {
    const std::size_t distance = edit_distance(name, candidate);
    if (distance <= best_distance && (best.empty() || distance < best_distance)) {
      best = candidate;
      best_distance = distance;
    }
  }
  return best;
}

}  // namespace limbledger::wire

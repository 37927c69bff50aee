#include "core/service/fault_texts.hpp"

#include "core/model/time.hpp"
#include "core/report/page_parts.hpp"
#include "core/report/text.hpp"
#include "core/service/methods/say/texts.hpp"

#include <algorithm>
#include <array>
#include <string>

namespace limbledger::service {

namespace {

// Where a fault carries these numbers its sentence says them.
struct WithNumbers {
  std::string_view attribute;
  std::array<std::string_view, 2> params;
};
constexpr std::array with_numbers{WithNumbers{".future", {"today", "today"}}, WithNumbers{".future_utc", {"today_utc", "today_utc"}}, WithNumbers{".ahead", {"now_utc", "now_utc"}}, WithNumbers{".taken", {"toward_deg", "toward_deg"}}, WithNumbers{".apart", {"apart", "believed"}}, WithNumbers{".long_ago", {"years", "years"}}, WithNumbers{".wait", {"wait_s", "wait_s"}}, WithNumbers{".range", {"low", "high"}}, WithNumbers{".most", {"items", "items"}}, WithNumbers{".most", {"characters", "characters"}},
                                  WithNumbers{".to", {"step", "step"}}};

[[nodiscard]] bool has(const report::Args& args, std::string_view name) {
  return std::any_of(args.begin(), args.end(), [&](const report::Arg& one) { return one.name == name; });
}

// "alert.ali, alert.acs" in words.
[[nodiscard]] std::string dangers_named(const report::Words& words, const std::string& alerts) {
  std::vector<std::string> named;
  for (std::size_t at = 0; at < alerts.size();) {
    const std::size_t end = std::min(alerts.find(", ", at), alerts.size());
    named.push_back(report::word_of(words, "flag", report::after_dot(std::string_view(alerts).substr(at, end - at))));
    at = end + 2;
  }
  return report::joined(named, "; ");
}

[[nodiscard]] std::string sentence_in(const report::Words& words, const reference::Edition& edition, const wire::Fault& fault, const std::string& name, bool writes) {
  report::Args args;
  for (const wire::FaultParam& param : fault.params) {
    const bool word = param.json.starts_with('"');
    args.push_back({param.name, word ? param.json.substr(1, param.json.size() - 2) : param.json, !word, word});
  }
  if (!writes && words.has(name + ".reading")) {
    return words.say(name + ".reading", args);
  }
  if (fault.expected == model::PartialDate::wire_rule.expected && words.has(name + ".date")) {
    return words.say(name + ".date", args);
  }
  // Which of two days cannot come after which; where somebody is only asked, both may be right.
  if (const auto order = std::find_if(args.begin(), args.end(), [](const report::Arg& one) { return one.name == "order"; }); order != args.end()) {
    const std::string said = name + "." + order->text;
    return words.say(words.has(said) ? said : name + ".order", args);
  }
  if (fault.code == "limit.items" && fault.got == "0" && words.has(name + ".none")) {
    return words.say(name + ".none");
  }
  if (fault.code == "alert.would_end") {
    return words.say(has(args, "what") ? name + ".leaves" : name, {{"alerts", dangers_named(words, fault.got), false, true}});
  }
  if (fault.code == "item.withheld") {
    if (fault.got.empty()) {
      return words.say(name + ".plain");
    }
    return words.say(name, {{"because", withheld_text(words, edition, {fault.got}), false, true}});
  }
  for (const WithNumbers& one : with_numbers) {
    if (has(args, one.params[0]) && has(args, one.params[1]) && words.has(name + std::string(one.attribute))) {
      return words.say(name + std::string(one.attribute), args);
    }
  }
  return words.say(name, args);
}

// A sentence that nobody has translated is English as a whole, and marked.
[[nodiscard]] std::string sentence(const report::Words& words, const reference::Edition& edition, const wire::Fault& fault, bool writes) {
  std::string name = "msg.fault." + fault.code;
  std::replace(name.begin() + static_cast<std::ptrdiff_t>(std::string_view("msg.fault.").size()), name.end(), '.', '_');
  if (!words.has(name)) {
    return {};
  }
  const report::Words* own = words.says_itself(name) ? &words : report::built_in_words();
  return sentence_in(*own, edition, fault, name, writes) + (own == &words ? std::string() : std::string(report::english_mark));
}

}  // namespace

void add_fault_texts(const report::Words* words, const reference::Edition& edition, std::vector<wire::Fault>& faults, bool writes) {
  for (wire::Fault& fault : faults) {
    if (words != nullptr) {
      fault.text = sentence(*words, edition, fault, writes);
    }
  }
}

const report::Words* words_asked_for(const wire::Type& type, const wire::Document& document, const wire::Node* params) {
  const auto field = std::find_if(type.fields.begin(), type.fields.end(), [](const wire::Field& one) { return one.name == "language"; });
  if (params == nullptr || field == type.fields.end()) {
    return nullptr;
  }
  const wire::Node* language = document.child(*params, "language");
  if (params->kind == wire::NodeKind::list) {
    std::ptrdiff_t place = field - type.fields.begin();
    std::uint32_t index = params->first;
    for (; index != 0 && place > 0; --place) {
      index = document.at(index).next;
    }
    language = index != 0 ? &document.at(index) : nullptr;
  }
  return language != nullptr && language->kind == wire::NodeKind::text ? report::words_in_language(language->text) : nullptr;
}

}  // namespace limbledger::service

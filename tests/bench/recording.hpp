// A form that records an exam of an ordinary length, one finding a call, whichever way its calls travel.
#pragma once

#include "core/service/call.hpp"
#include "tests/bench/bench.hpp"

#include <array>
#include <functional>
#include <string_view>
#include <utility>

namespace limbledger::bench {

// Both knees, one finding a place.
inline constexpr std::array<std::pair<std::string_view, std::string_view>, 12> recorded_items{{
    {"knee.flexion_active", R"({"kind":"angle","toward_deg":112,"trials":[111,113]})"},
    {"knee.flexion_passive", R"({"kind":"angle","toward_deg":118.5})"},
    {"knee.extension_active", R"({"kind":"angle","toward_deg":0})"},
    {"knee.extension_passive", R"({"kind":"angle","toward_deg":2})"},
    {"knee.effusion_stroke", R"({"kind":"grade","scale":"effusion/stroke","grade":"1+"})"},
    {"knee.lachman", R"({"kind":"grade","scale":"laxity/difference","grade":"1"})"},
    {"knee.mcmurray", R"({"kind":"not_done","reason":"pain"})"},
    {"knee.joint_line_medial_tender", R"({"kind":"answer","answer":"yes"})"},
    {"knee.fibular_head_tender", R"({"kind":"answer","answer":"no"})"},
    {"knee.patella_tender", R"({"kind":"answer","answer":"no"})"},
    {"nerve.power_knee_extension", R"({"kind":"grade","scale":"mrc/1976","grade":"5"})"},
    {"vessel.pulse_dorsalis_pedis", R"({"kind":"grade","scale":"pulse/0-3","grade":"2"})"},
}};
inline constexpr std::size_t findings_an_exam_recorded = recorded_items.size() * 2;

class RecordingForm {
 public:
  // Takes a method and its params, gives the text that holds the result.
  using Ask = std::function<std::string(const std::string& method, const std::string& params)>;
  explicit RecordingForm(Ask ask) : ask_(std::move(ask)) {}

  void open_exam() {
    const std::string reply = ask_("exam.open", R"({"complaint":"free","setting":"outreach","request":")" + request_id(++requests_) + "\"}");
    exam_ = between(reply, R"("exam":{"exam":")", "\"");
    shown(reply);
  }
  void record(std::size_t number) {
    const auto& [item, value] = recorded_items[number / 2];
    shown(ask_("finding.record", R"({"exam":")" + exam_ + R"(","findings":[{"item":")" + std::string(item) + R"(","side":")" + (number % 2 == 0 ? "left" : "right") +
                                     R"(","value":)" + std::string(value) + R"(,"remark":"invented"}],"seen":[")" + seen_ + R"("],"request":")" +
                                     request_id(++requests_) + "\"}"));
  }

 private:
  void shown(const std::string& reply) { seen_ = between(reply.substr(reply.rfind("\"revision\":[\"")), "[\"", "\""); }

  Ask ask_;
  std::string exam_;
  std::string seen_;
  unsigned requests_ = 0;
};

// The form that calls the core as the program does.
[[nodiscard]] inline RecordingForm::Ask in_process(service::Context& context, service::Desk& desk) {
  context.desk = &desk;
  context.edition = &desk.edition();
  return [&context](const std::string& method, const std::string& params) {
    const auto document = need(wire::parse(params), "params");
    return need(service::call(service::methods(), context, method, document, &document.root()), method.c_str());
  };
}

}  // namespace limbledger::bench

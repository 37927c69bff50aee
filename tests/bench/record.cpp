// Recording one finding so that it is on disk, through the method a form calls (check, slot, seal, chain, sign, one
// transaction, fold, reply), against overwriting 4 KB in place and fdatasync in the same run, in turns.
#include "core/reference/edition.hpp"
#include "core/service/call.hpp"
#include "tests/bench/bench.hpp"

#include <fcntl.h>
#include <unistd.h>

#include <array>

namespace limbledger::bench {

namespace {

constexpr int rounds = 25;

// An exam of an ordinary length: both knees, one finding a place.
constexpr std::array<std::pair<std::string_view, std::string_view>, 12> items{{
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
constexpr std::size_t findings_a_round = items.size() * 2;

class Form {
 public:
  explicit Form(service::Desk& desk) {
    context_.desk = &desk;
    context_.edition = &desk.edition();
  }

  std::string ask(const std::string& method, const std::string& params) {
    const auto document = need(wire::parse(params), "params");
    return need(service::call(service::methods(), context_, method, document, &document.root()), method.c_str());
  }
  void open_exam() {
    const std::string reply = ask("exam.open", R"({"complaint":"free","setting":"outreach","request":")" + request_id(++requests_) + "\"}");
    exam_ = between(reply, R"("exam":{"exam":")", "\"");
    seen_ = between(reply.substr(reply.rfind("\"revision\":[\"")), "[\"", "\"");
  }
  void record(std::size_t number) {
    const auto& [item, value] = items[number / 2];
    const std::string reply = ask("finding.record", R"({"exam":")" + exam_ + R"(","findings":[{"item":")" + std::string(item) + R"(","side":")" +
                                                        (number % 2 == 0 ? "left" : "right") + R"(","value":)" + std::string(value) +
                                                        R"(,"remark":"invented"}],"seen":[")" + seen_ + R"("],"request":")" +
                                                        request_id(++requests_) + "\"}");
    seen_ = between(reply.substr(reply.rfind("\"revision\":[\"")), "[\"", "\"");
  }

 private:
  service::Context context_;
  std::string exam_;
  std::string seen_;
  unsigned requests_ = 0;
};

int run() {
  const Folder folder;
  OnDisk disk(folder.path + "/ledger.sqlite", store::Flush::full);
  const auto desk = need(service::Desk::open(*disk.store, disk.world, *reference::built_in_edition(), disk.keyring), "desk");
  static_cast<void>(need(desk->unlock("", disk.wanted.passphrase), "unlock"));

  const int file = ::open((folder.path + "/floor").c_str(), O_RDWR | O_CREAT, 0600);
  std::vector<char> page(4096, 'x');
  for (int i = 0; i < 16; ++i) {
    if (::pwrite(file, page.data(), page.size(), i * 4096) != 4096) {
      return 1;
    }
  }
  ::fsync(file);

  Form form(*desk);
  std::vector<double> ours;
  std::vector<double> floors;
  for (int round = 0; round < rounds; ++round) {
    form.open_exam();
    for (std::size_t i = 0; i < findings_a_round; ++i) {
      ours.push_back(seconds([&] { form.record(i); }));
      floors.push_back(seconds([&] {
        static_cast<void>(::pwrite(file, page.data(), page.size(), 4096L * static_cast<long>(i % 16)) + ::fdatasync(file));
      }));
    }
  }
  ::close(file);
  std::printf("one finding %.0f us, one overwrite with fdatasync %.0f us (medians of %zu, in turns)\n", median(ours) * 1e6, median(floors) * 1e6, ours.size());
  return judge("recording one finding against the bare flush", median(ours) / median(floors), 1.6, 1.4);
}

}  // namespace

}  // namespace limbledger::bench

int main() { return limbledger::bench::run(); }

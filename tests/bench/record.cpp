// Recording one finding so that it is on disk, through the method a form calls (check, slot, seal, chain, sign, one
// transaction, fold, reply), against overwriting 4 KB in place and fdatasync in the same run, in turns.
#include "core/reference/edition.hpp"
#include "core/service/call.hpp"
#include "tests/bench/bench.hpp"

#include <fcntl.h>
#include <unistd.h>

namespace limbledger::bench {

namespace {

constexpr int rounds = 15;
constexpr int findings_a_round = 40;  // an exam of an ordinary length

std::string request_id(unsigned number) {
  char text[37];
  std::snprintf(text, sizeof text, "00000000-0000-4000-8000-%012x", number);
  return text;
}

// The text between two marks, for the few members this needs.
std::string between(const std::string& text, const std::string& before, const std::string& after) {
  const auto from = text.find(before) + before.size();
  return text.substr(from, text.find(after, from) - from);
}

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
  void record(int deg) {
    const std::string reply = ask(
        "finding.record", R"({"exam":")" + exam_ + R"(","findings":[{"item":"knee.flexion_passive","side":"left","value":{"kind":"angle","toward_deg":)" +
                              std::to_string(deg) + R"(},"instrument":"goniometer_long","beside":true}],"seen":[")" + seen_ + R"("],"request":")" +
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
    for (int i = 0; i < findings_a_round; ++i) {
      ours.push_back(seconds([&] { form.record(60 + i); }));
      floors.push_back(seconds([&] {
        static_cast<void>(::pwrite(file, page.data(), page.size(), 4096L * (i % 16)) + ::fdatasync(file));
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

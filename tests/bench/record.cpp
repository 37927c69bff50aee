// Recording one finding so that it is on disk, through the method a form calls (check, slot, seal, chain, sign, one
// transaction, fold, alerts, reply), against overwriting 4 KB in place and fdatasync in the same run, in turns. Beside it, in the
// same turns and unjudged, what of this must come before the disk: check, seal, chain, sign and the transaction alone.
#include "core/model/check.hpp"
#include "core/model/operation.hpp"
#include "core/reference/edition.hpp"
#include "core/wire/read.hpp"
#include "core/wire/write.hpp"
#include "tests/bench/recording.hpp"

#include <fcntl.h>
#include <unistd.h>

namespace limbledger::bench {

namespace {

constexpr int rounds = 25;

// 4 KB at a time, always in places that are there.
class InPlace {
 public:
  explicit InPlace(const std::string& path) : file_(::open(path.c_str(), O_RDWR | O_CREAT, 0600)) {
    for (std::size_t i = 0; i < pages; ++i) {
      write(i);
    }
    ::fsync(file_);
  }
  ~InPlace() { ::close(file_); }
  InPlace(const InPlace&) = delete;
  InPlace& operator=(const InPlace&) = delete;
  void flush(std::size_t number) {
    write(number);
    static_cast<void>(::fdatasync(file_));
  }

 private:
  static constexpr std::size_t pages = 16;
  void write(std::size_t number) {
    if (::pwrite(file_, page_.data(), page_.size(), static_cast<off_t>(number % pages * page_.size())) != static_cast<ssize_t>(page_.size())) {
      std::exit(1);
    }
  }
  int file_;
  std::vector<char> page_ = std::vector<char>(4096, 'x');
};

// The same findings, appended to a log of their own without whatever follows from them.
class ListAlone {
 public:
  explicit ListAlone(const std::string& path)
      : disk_(path, store::Flush::full), log_(need(ledger::Log::open(*disk_.store, disk_.world, disk_.identity()), "log")) {
    for (std::size_t number = 0; number < findings_an_exam_recorded; ++number) {
      const auto& [item, value] = recorded_items[number / 2];
      observations_.push_back(need(wire::read_text<model::Observation>(R"({"item":")" + std::string(item) + R"(","side":")" + (number % 2 == 0 ? "left" : "right") +
                                                                       R"(","value":)" + std::string(value) + R"(,"remark":"invented"})"),
                                   "observation"));
    }
  }
  void open_exam() {
    operation_ = {};
    operation_.request = next_request();
    operation_.object = log_->object_for(ledger::ObjectType::exam, operation_.request, 0);
    operation_.op = "exam";
    operation_.body_json = R"({"complaint":"free","setting":"outreach"})";
    append();
    operation_.op = "finding";
  }
  void record(std::size_t number) {
    const model::Checked checked = model::check(observations_[number], edition_.catalogue(), {}, "");
    operation_.request = next_request();
    const model::ObjectId id = log_->object_for(ledger::ObjectType::finding, operation_.request, 0);
    operation_.body_json = wire::write(model::FindingBody{model::FindingId{id.bytes}, checked.observations.at(0), std::nullopt});
    append();
  }

 private:
  void append() { operation_.after = {need(log_->append({&operation_, 1}, edition_.id(), nullptr), "append").front().entry()}; }
  model::RequestId next_request() {
    model::RequestId request;
    ledger::put_integer(request.bytes.data() + 8, ++requests_, 8);
    return request;
  }

  OnDisk disk_;
  std::unique_ptr<ledger::Log> log_;
  const reference::Edition& edition_ = *reference::built_in_edition();
  std::vector<model::Observation> observations_;
  ledger::NewOperation operation_;
  std::uint64_t requests_ = 0;
};

int run() {
  const Folder folder;
  OnDisk disk(folder.path + "/ledger.sqlite", store::Flush::full);
  const auto desk = need(service::Desk::open(*disk.store, disk.world, *reference::built_in_edition(), disk.keyring), "desk");
  static_cast<void>(need(desk->unlock("", disk.wanted.passphrase), "unlock"));
  InPlace floor(folder.path + "/floor");
  ListAlone list(folder.path + "/list.sqlite");

  service::Context context;
  RecordingForm form(in_process(context, *desk));
  std::vector<double> ours;
  std::vector<double> lists;
  std::vector<double> floors;
  for (int round = 0; round < rounds; ++round) {
    form.open_exam();
    list.open_exam();
    for (std::size_t i = 0; i < findings_an_exam_recorded; ++i) {
      ours.push_back(seconds([&] { form.record(i); }));
      lists.push_back(seconds([&] { list.record(i); }));
      floors.push_back(seconds([&] { floor.flush(i); }));
    }
  }
  const double flush = median(floors);
  std::printf("one finding %.0f us, check, seal, chain, sign and commit alone %.0f us, one overwrite with fdatasync %.0f us (medians of %zu, in turns)\n",
              median(ours) * 1e6, median(lists) * 1e6, flush * 1e6, ours.size());
  std::printf("check, seal, chain, sign and commit against the bare flush: %.2f x (not judged; aim 1.60 x)\n", median(lists) / flush);
  return judge("recording one finding against the bare flush", median(ours) / flush, 1.6, 1.4);
}

}  // namespace

}  // namespace limbledger::bench

int main() { return limbledger::bench::run(); }

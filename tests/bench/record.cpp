// Recording one finding so that it is on disk, through the method a form calls (check, slot, seal, chain, sign, one
// transaction, fold, reply), against overwriting 4 KB in place and fdatasync in the same run, in turns.
#include "core/reference/edition.hpp"
#include "tests/bench/recording.hpp"

#include <fcntl.h>
#include <unistd.h>

namespace limbledger::bench {

namespace {

constexpr int rounds = 25;

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

  service::Context context;
  RecordingForm form(in_process(context, *desk));
  std::vector<double> ours;
  std::vector<double> floors;
  for (int round = 0; round < rounds; ++round) {
    form.open_exam();
    for (std::size_t i = 0; i < findings_an_exam_recorded; ++i) {
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

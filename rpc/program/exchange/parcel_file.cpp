#include "rpc/program/exchange/parcel_file.hpp"

#include "rpc/program/folder.hpp"

#include <fcntl.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <cstdio>
#include <string_view>
#include <utility>

namespace limbledger::rpc {

namespace {

constexpr std::size_t parcel_piece_bytes = std::size_t{256} * 1024;

[[nodiscard]] wire::Fault medium_fault(const char* expected) { return {"parcel.unreadable", "", expected, ::strerror(errno)}; }

class OpenFile {
 public:
  // Never waits for what is no file, such as a pipe.
  OpenFile(const std::string& path, int how) : file_(::open(path.c_str(), how | O_CLOEXEC | O_NOFOLLOW | O_NONBLOCK, 0600)) {
    struct stat state {};
    if (file_ >= 0 && (::fstat(file_, &state) != 0 || !S_ISREG(state.st_mode))) {
      static_cast<void>(close());
      errno = ENOTSUP;
    }
  }
  ~OpenFile() { static_cast<void>(close()); }
  OpenFile(const OpenFile&) = delete;
  OpenFile& operator=(const OpenFile&) = delete;

  [[nodiscard]] bool is_open() const { return file_ >= 0; }
  [[nodiscard]] int get() const { return file_; }
  [[nodiscard]] bool close() {
    const int file = std::exchange(file_, -1);
    return file < 0 || ::close(file) == 0;
  }
  [[nodiscard]] bool from_start() const { return ::lseek(file_, 0, SEEK_SET) == 0; }
  // Empty at the end; false with errno.
  [[nodiscard]] bool read(ledger::Bytes& out) const {
    out.resize(parcel_piece_bytes);
    ssize_t got = 0;
    do {
      got = ::read(file_, out.data(), out.size());
    } while (got < 0 && errno == EINTR);
    out.resize(got < 0 ? 0 : static_cast<std::size_t>(got));
    return got >= 0;
  }

 private:
  int file_;
};

// A file that was not there or was not finished, unless it is given its name.
class Part {
 public:
  explicit Part(std::string path) : path_(std::move(path)) {}
  ~Part() {
    if (!path_.empty()) {
      ::unlink(path_.c_str());
    }
  }
  Part(const Part&) = delete;
  Part& operator=(const Part&) = delete;
  void keep() { path_.clear(); }

 private:
  std::string path_;
};

// Nothing where nobody wants it any more or nothing is answered.
template <class Deed>
[[nodiscard]] auto in_turn(const ByFile& how, const Deed& deed) -> decltype(deed()) {
  std::optional<decltype(deed())> out;
  const bool given_up = how.given_up != nullptr && *how.given_up;
  if (given_up || !how.turn([&] { out.emplace(deed()); })) {
    return wire::Fault("exchange.ended", "");
  }
  return std::move(*out);
}

// Gives it the file, as often as it wants; what it wants is looked at in turns.
[[nodiscard]] Result<void> feed_file(const ByFile& how, service::ParcelIn& parcel, const OpenFile& file) {
  ledger::Bytes piece;
  for (auto wants = service::ParcelWants::more; wants != service::ParcelWants::nothing;) {
    if ((wants == service::ParcelWants::from_start && !file.from_start()) || !file.read(piece)) {
      return medium_fault("a file that can be read");
    }
    const auto fed = in_turn(how, [&] {
      auto next = parcel.feed(piece);
      if (how.told) {
        how.told(parcel);
      }
      return next;
    });
    if (!fed) {
      return fed.error();
    }
    wants = *fed;
  }
  return {};
}

}  // namespace

bool is_there(const std::string& path) {
  struct stat state {};
  return ::lstat(path.c_str(), &state) == 0;
}

Result<service::WrittenParcel> write_parcel_to(const ByFile& how, service::ExchangeDoor& door, const std::string& path, const std::optional<model::ReplicaId>& holder) {
  if (is_there(path)) {
    return wire::Fault("parcel.there", "", "no file there");
  }
  auto parcel = in_turn(how, [&] { return door.parcel_out(holder); });
  if (!parcel) {
    return parcel.error();
  }
  const std::string part = path + ".part";
  OpenFile file(part, O_WRONLY | O_CREAT | O_TRUNC);
  if (!file.is_open()) {
    return medium_fault("a file that can be written");
  }
  Part unfinished(part);
  while (true) {
    const auto piece = in_turn(how, [&] { return (*parcel)->next(); });
    if (!piece) {
      return piece.error();
    }
    if (piece->empty()) {
      break;
    }
    if (!write_all(file.get(), {reinterpret_cast<const char*>(piece->data()), piece->size()})) {
      return medium_fault("a file that can be written");
    }
  }
  if (::fsync(file.get()) != 0 || !file.close()) {
    return medium_fault("a file that can be written");
  }
  const service::WrittenParcel written = (*parcel)->written();
  {
    // Read from the medium, not from memory, as far as the system lets one.
    const OpenFile again(part, O_RDONLY);
    if (!again.is_open()) {
      return medium_fault("a file that can be read back");
    }
    static_cast<void>(::posix_fadvise(again.get(), 0, 0, POSIX_FADV_DONTNEED));
    const auto looking = in_turn(how, [&] { return door.parcel_in(false, false); });
    if (!looking) {
      return looking.error();
    }
    if (auto read = feed_file(how, **looking, again); !read) {
      const std::string& code = read.error().faults.front().code;
      // What was just written is no parcel of this clinic any more: it is the medium that changed it.
      return code.starts_with("parcel.") && code != "parcel.unreadable" ? wire::Refusal(wire::Fault("parcel.unreadable", "", "what was written, read back")) : read.error();
    }
    const service::WrittenParcel back = (*looking)->seen();
    if (back.entries != written.entries || back.runs != written.runs) {
      return wire::Fault("parcel.unreadable", "", "what was written, read back");
    }
  }
  if (is_there(path)) {  // it came meanwhile
    return wire::Fault("parcel.there", "", "no file there");
  }
  if (::rename(part.c_str(), path.c_str()) != 0) {
    return medium_fault("a file that can be given its name");
  }
  unfinished.keep();
  if (!flush_folder_of(path)) {
    return medium_fault("a folder that keeps the file's name");
  }
  return written;
}

Result<service::TakenParcel> take_parcel_from(const ByFile& how, service::ExchangeDoor& door, const std::string& path, bool cut_too) {
  const OpenFile file(path, O_RDONLY);
  if (!file.is_open()) {
    return medium_fault("a file that can be read");
  }
  const auto parcel = in_turn(how, [&] { return door.parcel_in(cut_too); });
  if (!parcel) {
    return parcel.error();
  }
  auto fed = feed_file(how, **parcel, file);
  // What was taken stays, also where it broke off.
  static_cast<void>(how.turn([&] {
    if (auto finished = door.finish(); !finished) {
      fed = std::move(finished);
    }
  }));
  return fed ? Result<service::TakenParcel>((*parcel)->taken()) : Result<service::TakenParcel>(fed.error());
}

}  // namespace limbledger::rpc

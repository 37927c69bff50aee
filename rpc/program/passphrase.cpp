#include "rpc/program/passphrase.hpp"

#include "core/service/desk.hpp"
#include "core/wire/text.hpp"
#include "rpc/program/problem.hpp"

#include <fcntl.h>
#include <string.h>
#include <termios.h>
#include <unistd.h>

#include <cerrno>

namespace limbledger::rpc {

namespace {

constexpr std::size_t line_bytes_max = 1024;

[[nodiscard]] std::string read_line(int file) {
  std::string line;
  char c = 0;
  for (;;) {
    const ssize_t got = ::read(file, &c, 1);
    if (got < 0 && errno == EINTR) {
      continue;
    }
    if (got < 0) {
      throw Problem(ExitCode::usage, "the passphrase cannot be read\n  what to do: give a descriptor that is open for reading: --passphrase-fd 3 3<FILE");
    }
    if (got == 0 || c == '\n') {
      break;
    }
    line += c;
    if (line.size() > line_bytes_max) {
      throw Problem(ExitCode::usage, "the passphrase is longer than 1024 bytes\n  what to do: give one line");
    }
  }
  if (!line.empty() && line.back() == '\r') {
    line.pop_back();
  }
  return line;
}

class Terminal {
 public:
  Terminal() : file_(::open("/dev/tty", O_RDWR | O_CLOEXEC)) {
    if (file_ < 0) {
      throw Problem(ExitCode::usage, "a passphrase is needed and there is no terminal to ask on\n  what to do: give it by a descriptor: --passphrase-fd 3 3<FILE");
    }
    if (::tcgetattr(file_, &before_) == 0) {
      termios silent = before_;
      silent.c_lflag &= ~static_cast<tcflag_t>(ECHO);
      silent.c_lflag |= ECHONL;
      changed_ = ::tcsetattr(file_, TCSAFLUSH, &silent) == 0;
    }
  }
  ~Terminal() {
    if (changed_) {
      ::tcsetattr(file_, TCSAFLUSH, &before_);
    }
    ::close(file_);
  }
  Terminal(const Terminal&) = delete;
  Terminal& operator=(const Terminal&) = delete;

  [[nodiscard]] std::string ask(const std::string& question) const {
    if (::write(file_, question.data(), question.size()) < 0) {
      throw Problem(ExitCode::usage, "the terminal cannot be written\n  what to do: give the passphrase by a descriptor: --passphrase-fd 3 3<FILE");
    }
    return read_line(file_);
  }

 private:
  int file_;
  termios before_{};
  bool changed_ = false;
};

}  // namespace

std::string read_passphrase(int descriptor) {
  std::string line = read_line(descriptor);
  if (line.empty()) {
    throw Problem(ExitCode::usage, "no passphrase came from descriptor " + std::to_string(descriptor) + "\n  what to do: write it there as one line");
  }
  return line;
}

std::string ask_passphrase(const std::string& question) { return Terminal().ask(question); }

std::string ask_new_passphrase() {
  std::string first = ask_passphrase("New passphrase (a few words that only you put together, 12 characters or more): ");
  check_new_passphrase(first);
  std::string second = ask_passphrase("The same again: ");
  const bool same = first == second;
  wipe(second);
  if (!same) {
    wipe(first);
    throw Problem(ExitCode::usage, "the two are not the same\n  what to do: start again; nothing was made");
  }
  return first;
}

void check_new_passphrase(const std::string& passphrase) {
  if (wire::code_points(passphrase) < service::passphrase_characters_min) {
    throw Problem(ExitCode::usage, "the passphrase has fewer than 12 characters\n  what to do: choose a longer one, such as four words that do not belong together");
  }
}

bool has_terminal() {
  const int file = ::open("/dev/tty", O_RDWR | O_CLOEXEC);
  if (file >= 0) {
    ::close(file);
  }
  return file >= 0;
}

void wipe(std::string& text) {
  ::explicit_bzero(text.data(), text.size());
  text.clear();
}

}  // namespace limbledger::rpc

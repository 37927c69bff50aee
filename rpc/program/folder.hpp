// The folder of a ledger: where it lies, whether a ledger may lie there (not on FAT or a network file system, whose
// flushes and locks do not hold), and its small files. Folders are made 0700 and files 0600.
#pragma once

#include "core/ledger/port.hpp"

#include <functional>
#include <optional>
#include <string>
#include <string_view>

namespace limbledger::rpc {

struct Folder {
  std::string path;

  [[nodiscard]] std::string file(std::string_view name) const { return path + "/" + std::string(name); }
  [[nodiscard]] std::string ledger() const { return file("ledger.sqlite"); }
  [[nodiscard]] std::string keyring() const { return file("keyring"); }
  [[nodiscard]] std::string lock() const { return file("lock"); }
  [[nodiscard]] std::string demo_passphrase() const { return file("demo-passphrase"); }
  [[nodiscard]] std::string log() const { return file("log/limbledger.log"); }
};

// $XDG_DATA_HOME/limbledger, else ~/.local/share/limbledger.
[[nodiscard]] std::string default_folder();

// All below throw Problem.
// A new or empty folder, with its parents.
[[nodiscard]] Folder make_folder(const std::string& path);
// A folder that holds a ledger; one that holds only part of it is told apart from one that holds none.
[[nodiscard]] Folder find_folder(const std::string& path);

// Absent when it cannot be read or is longer.
[[nodiscard]] std::optional<std::string> read_file(const std::string& path, std::size_t bytes_max);
[[nodiscard]] std::optional<std::string> read_descriptor(int file, std::size_t bytes_max);
// Whole or not at all, also when the power fails: beside it, flushed, renamed, folder flushed.
void write_file(const std::string& path, std::string_view bytes);

// All of it, or false with errno.
[[nodiscard]] bool write_all(int file, std::string_view bytes);
// That the names in the folder of this path are on the disk; false with errno. A file system that knows no such flush has it done.
[[nodiscard]] bool flush_folder_of(const std::string& path);

// Lets the disk begin with what was written to the store's log, so that the flush that follows waits less. Nothing is promised;
// where the file is not there yet, nothing happens.
[[nodiscard]] std::function<void()> writing_begins(const std::string& store_path);

// What one flush of 4 KB takes here, in microseconds: the median of a few.
[[nodiscard]] std::int64_t flush_us(const Folder& folder);

}  // namespace limbledger::rpc

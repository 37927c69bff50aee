// A disk in memory, for SQLite, whose power can be cut. What was written since a file's last sync is kept apart; when
// the power comes back each piece of 512 bytes of it is there, or is not, in any order. A new file's name lasts once a
// log or journal beside it was synced, a removal without sync may be undone. All choices come from the seed. A sync can be refused
// as Linux refuses it: what it was to write counts as written from then on, and the next sync says yes without it.
#pragma once

#include <cstdint>
#include <map>
#include <memory>
#include <string>
#include <vector>

namespace limbledger::simulation {

class PowerCutDisk {
 public:
  using Bytes = std::vector<std::uint8_t>;

  explicit PowerCutDisk(std::uint64_t seed);
  PowerCutDisk(const PowerCutDisk&) = delete;
  PowerCutDisk& operator=(const PowerCutDisk&) = delete;
  ~PowerCutDisk();

  // The name under which SQLite finds this disk.
  [[nodiscard]] const std::string& vfs_name() const { return vfs_name_; }

  // The power goes at the n-th change from now (write, truncation, sync, removal); every call from then on fails.
  void cut_at(std::uint64_t changes) { left_ = changes; }
  [[nodiscard]] bool is_cut() const { return cut_; }
  // The power comes back. All files must be closed.
  void restart();
  // After `cut_at`: only the process ended, and what it wrote goes on being read. All files must be closed.
  void resume();
  // The next syncs are refused.
  void refuse_syncs(std::uint64_t count) { refused_ = count; }

  [[nodiscard]] std::uint64_t change_count() const { return change_count_; }
  [[nodiscard]] std::uint64_t sync_count() const { return sync_count_; }
  // Pieces that the cuts took away.
  [[nodiscard]] std::uint64_t lost_piece_count() const { return lost_piece_count_; }

  [[nodiscard]] Bytes content(const std::string& name) const;
  void set_content(const std::string& name, Bytes content);

  // From here on for the calls of SQLite.
  struct Change {
    bool is_truncation = false;
    std::uint64_t offset = 0;  // of a truncation: the new size
    Bytes bytes;
  };
  struct File {
    Bytes current;
    Bytes durable;
    std::vector<Change> unsynced;
    bool is_named = false;  // the name lasts
  };
  std::shared_ptr<File> open(const std::string& name, bool create);
  [[nodiscard]] bool has(const std::string& name) const { return files_.contains(name); }
  [[nodiscard]] bool write(File& file, std::uint64_t offset, const std::uint8_t* bytes, std::size_t size);
  [[nodiscard]] bool truncate(File& file, std::uint64_t size);
  [[nodiscard]] bool sync(File& file, bool names_too);
  [[nodiscard]] bool remove(const std::string& name, bool lasting);
  std::uint64_t random();

 private:
  [[nodiscard]] bool change();
  static void write_through(Bytes& to, const Change& change);
  void settle(File& file);
  void settle_pieces(File& file, const Change& change, std::uint64_t mode, bool is_last);

  std::string vfs_name_;
  std::uint64_t state_;
  std::map<std::string, std::shared_ptr<File>> files_;
  std::map<std::string, std::shared_ptr<File>> removed_;  // not for certain
  std::uint64_t left_ = UINT64_MAX;
  std::uint64_t refused_ = 0;
  bool cut_ = false;
  std::uint64_t change_count_ = 0;
  std::uint64_t sync_count_ = 0;
  std::uint64_t lost_piece_count_ = 0;
  struct Registration;
  std::unique_ptr<Registration> registration_;
};

}  // namespace limbledger::simulation

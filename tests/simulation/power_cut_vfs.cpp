#include "tests/simulation/power_cut_vfs.hpp"

#include <sqlite3.h>

#include <algorithm>
#include <cstring>
#include <new>

namespace limbledger::simulation {

namespace {

constexpr std::size_t piece_size = 512;

struct Handle {
  sqlite3_file base;
  PowerCutDisk* disk;
  std::shared_ptr<PowerCutDisk::File>* file;
  bool names_too;
};

Handle& handle_of(sqlite3_file* file) { return *reinterpret_cast<Handle*>(file); }
PowerCutDisk& disk_of(sqlite3_vfs* vfs) { return *static_cast<PowerCutDisk*>(vfs->pAppData); }

int close_file(sqlite3_file* file) {
  delete handle_of(file).file;
  handle_of(file).file = nullptr;
  return SQLITE_OK;
}

int read_file(sqlite3_file* file, void* to, int amount, sqlite3_int64 offset) {
  const Handle& handle = handle_of(file);
  if (handle.disk->is_cut()) {
    return SQLITE_IOERR_READ;
  }
  const auto& from = (*handle.file)->current;
  const auto start = std::min(static_cast<std::size_t>(offset), from.size());
  const auto size = std::min(static_cast<std::size_t>(amount), from.size() - start);
  std::copy_n(from.begin() + static_cast<std::ptrdiff_t>(start), size, static_cast<std::uint8_t*>(to));
  std::memset(static_cast<std::uint8_t*>(to) + size, 0, static_cast<std::size_t>(amount) - size);
  return size == static_cast<std::size_t>(amount) ? SQLITE_OK : SQLITE_IOERR_SHORT_READ;
}

int write_file(sqlite3_file* file, const void* from, int amount, sqlite3_int64 offset) {
  const Handle& handle = handle_of(file);
  const bool done = handle.disk->write(**handle.file, static_cast<std::uint64_t>(offset),
                                       static_cast<const std::uint8_t*>(from), static_cast<std::size_t>(amount));
  return done ? SQLITE_OK : SQLITE_IOERR_WRITE;
}

int truncate_file(sqlite3_file* file, sqlite3_int64 size) {
  const Handle& handle = handle_of(file);
  return handle.disk->truncate(**handle.file, static_cast<std::uint64_t>(size)) ? SQLITE_OK : SQLITE_IOERR_TRUNCATE;
}

int sync_file(sqlite3_file* file, int) {
  const Handle& handle = handle_of(file);
  return handle.disk->sync(**handle.file, handle.names_too) ? SQLITE_OK : SQLITE_IOERR_FSYNC;
}

int size_of_file(sqlite3_file* file, sqlite3_int64* size) {
  *size = static_cast<sqlite3_int64>((*handle_of(file).file)->current.size());
  return handle_of(file).disk->is_cut() ? SQLITE_IOERR_FSTAT : SQLITE_OK;
}

int lock_file(sqlite3_file*, int) { return SQLITE_OK; }
int check_lock(sqlite3_file*, int* held) {
  *held = 0;
  return SQLITE_OK;
}
int control_file(sqlite3_file*, int, void*) { return SQLITE_NOTFOUND; }
int sector_size(sqlite3_file*) { return static_cast<int>(piece_size); }
// As the platform's own VFS claims: a write harms no byte beside it.
int characteristics(sqlite3_file*) { return SQLITE_IOCAP_POWERSAFE_OVERWRITE; }

// Version 1: no shared memory, so only a connection that holds the file alone can use a write-ahead log.
const sqlite3_io_methods methods = [] {
  sqlite3_io_methods out{};
  out.iVersion = 1;
  out.xClose = close_file;
  out.xRead = read_file;
  out.xWrite = write_file;
  out.xTruncate = truncate_file;
  out.xSync = sync_file;
  out.xFileSize = size_of_file;
  out.xLock = lock_file;
  out.xUnlock = lock_file;
  out.xCheckReservedLock = check_lock;
  out.xFileControl = control_file;
  out.xSectorSize = sector_size;
  out.xDeviceCharacteristics = characteristics;
  return out;
}();

int open_file(sqlite3_vfs* vfs, const char* name, sqlite3_file* file, int flags, int* flags_out) {
  PowerCutDisk& disk = disk_of(vfs);
  file->pMethods = nullptr;
  auto opened = name == nullptr ? std::make_shared<PowerCutDisk::File>() : disk.open(name, (flags & SQLITE_OPEN_CREATE) != 0);
  if (!opened || disk.is_cut()) {
    return SQLITE_CANTOPEN;
  }
  Handle& handle = handle_of(file);
  handle.disk = &disk;
  handle.file = new std::shared_ptr<PowerCutDisk::File>(std::move(opened));
  handle.names_too = (flags & (SQLITE_OPEN_WAL | SQLITE_OPEN_MAIN_JOURNAL)) != 0;
  file->pMethods = &methods;
  if (flags_out != nullptr) {
    *flags_out = flags;
  }
  return SQLITE_OK;
}

int delete_file(sqlite3_vfs* vfs, const char* name, int lasting) {
  PowerCutDisk& disk = disk_of(vfs);
  if (!disk.has(name)) {
    return SQLITE_IOERR_DELETE_NOENT;
  }
  return disk.remove(name, lasting != 0) ? SQLITE_OK : SQLITE_IOERR_DELETE;
}

int access_file(sqlite3_vfs* vfs, const char* name, int flags, int* out) {
  const PowerCutDisk& disk = disk_of(vfs);
  const bool there = disk.has(name);
  // A log of no bytes counts as absent, as the platform's own VFS has it.
  *out = there && (flags != SQLITE_ACCESS_EXISTS || !disk.content(name).empty()) ? 1 : 0;
  return SQLITE_OK;
}

int full_path(sqlite3_vfs*, const char* name, int size, char* out) {
  sqlite3_snprintf(size, out, "%s", name);
  return SQLITE_OK;
}

int random_bytes(sqlite3_vfs* vfs, int size, char* out) {
  for (int i = 0; i < size; ++i) {
    out[i] = static_cast<char>(disk_of(vfs).random() & 0xff);
  }
  return size;
}

int no_sleep(sqlite3_vfs*, int microseconds) { return microseconds; }
int no_time(sqlite3_vfs*, double* day) {
  *day = 2460000.5;
  return SQLITE_OK;
}
int no_error(sqlite3_vfs*, int, char*) { return 0; }

}  // namespace

struct PowerCutDisk::Registration {
  sqlite3_vfs vfs{};
  ~Registration() { sqlite3_vfs_unregister(&vfs); }
};

PowerCutDisk::PowerCutDisk(std::uint64_t seed)
    : vfs_name_("power_cut_" + std::to_string(seed)),
      state_(seed * 0x9e3779b97f4a7c15U + 1),
      registration_(std::make_unique<Registration>()) {
  sqlite3_vfs& vfs = registration_->vfs;
  vfs.iVersion = 1;
  vfs.szOsFile = sizeof(Handle);
  vfs.mxPathname = 200;
  vfs.zName = vfs_name_.c_str();
  vfs.pAppData = this;
  vfs.xOpen = open_file;
  vfs.xDelete = delete_file;
  vfs.xAccess = access_file;
  vfs.xFullPathname = full_path;
  vfs.xRandomness = random_bytes;
  vfs.xSleep = no_sleep;
  vfs.xCurrentTime = no_time;
  vfs.xGetLastError = no_error;
  sqlite3_vfs_register(&vfs, 0);
}

PowerCutDisk::~PowerCutDisk() = default;

// splitmix64 (Steele, Lea and Flood, 2014): enough to choose by.
std::uint64_t PowerCutDisk::random() {
  state_ += 0x9e3779b97f4a7c15U;
  std::uint64_t z = state_;
  z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9U;
  z = (z ^ (z >> 27)) * 0x94d049bb133111ebU;
  return z ^ (z >> 31);
}

bool PowerCutDisk::change() {
  if (!cut_ && left_-- == 0) {
    cut_ = true;
  }
  ++change_count_;
  return !cut_;
}

std::shared_ptr<PowerCutDisk::File> PowerCutDisk::open(const std::string& name, bool create) {
  const auto found = files_.find(name);
  if (found != files_.end()) {
    return found->second;
  }
  if (!create || cut_) {
    return nullptr;
  }
  return files_[name] = std::make_shared<File>();
}

bool PowerCutDisk::write(File& file, std::uint64_t offset, const std::uint8_t* bytes, std::size_t size) {
  const bool was_cut = cut_;
  const bool goes_on = change();
  if (was_cut) {
    return false;
  }
  // The write during which the power goes may be there in part.
  file.unsynced.push_back({false, offset, Bytes(bytes, bytes + size)});
  file.current.resize(std::max<std::size_t>(file.current.size(), offset + size));
  std::copy(bytes, bytes + size, file.current.begin() + static_cast<std::ptrdiff_t>(offset));
  return goes_on;
}

bool PowerCutDisk::truncate(File& file, std::uint64_t size) {
  const bool was_cut = cut_;
  const bool goes_on = change();
  if (was_cut) {
    return false;
  }
  file.unsynced.push_back({true, size, {}});
  file.current.resize(size);
  return goes_on;
}

void PowerCutDisk::write_through(Bytes& to, const Change& change) {
  if (change.is_truncation) {
    to.resize(change.offset);
    return;
  }
  to.resize(std::max<std::size_t>(to.size(), change.offset + change.bytes.size()));
  std::copy(change.bytes.begin(), change.bytes.end(), to.begin() + static_cast<std::ptrdiff_t>(change.offset));
}

bool PowerCutDisk::sync(File& file, bool names_too) {
  if (!change()) {
    return false;
  }
  if (refused_ > 0) {
    --refused_;
    file.unsynced.clear();
    return false;
  }
  ++sync_count_;
  for (const Change& one : file.unsynced) {
    write_through(file.durable, one);
  }
  file.unsynced.clear();
  if (names_too) {
    for (auto& [name, other] : files_) {
      other->is_named = true;
    }
    removed_.clear();
  }
  return true;
}

bool PowerCutDisk::remove(const std::string& name, bool lasting) {
  if (!change()) {
    return false;
  }
  if (!lasting) {
    removed_[name] = files_[name];
  }
  files_.erase(name);
  return true;
}

PowerCutDisk::Bytes PowerCutDisk::content(const std::string& name) const {
  const auto found = files_.find(name);
  return found == files_.end() ? Bytes{} : found->second->current;
}

void PowerCutDisk::set_content(const std::string& name, Bytes content) {
  auto file = std::make_shared<File>();
  file->current = content;
  file->durable = std::move(content);
  file->is_named = true;
  files_[name] = std::move(file);
}

void PowerCutDisk::settle_pieces(File& file, const Change& change, std::uint64_t mode, bool is_last) {
  for (std::size_t at = 0; at < change.bytes.size();) {
    const std::uint64_t offset = change.offset + at;
    const std::size_t size = std::min<std::size_t>(piece_size - offset % piece_size, change.bytes.size() - at);
    // Mode 1: all in order up to the cut, the last write torn. Mode 2: any piece, in any order. Mode 3: all.
    const bool there = mode == 3 || (mode == 1 && (!is_last || random() % 2 == 0)) || (mode == 2 && random() % 2 == 0);
    if (there) {
      if (file.durable.size() < offset + size) {
        file.durable.resize(offset + size);
      }
      std::copy_n(change.bytes.begin() + static_cast<std::ptrdiff_t>(at), size,
                  file.durable.begin() + static_cast<std::ptrdiff_t>(offset));
    } else {
      ++lost_piece_count_;
    }
    at += size;
  }
}

void PowerCutDisk::settle(File& file) {
  const std::uint64_t mode = random() % 4;
  const std::size_t reached = mode == 1 && !file.unsynced.empty() ? random() % file.unsynced.size() + 1 : file.unsynced.size();
  for (std::size_t i = 0; i < file.unsynced.size(); ++i) {
    const Change& change = file.unsynced[i];
    if (mode == 0 || i >= reached) {
      lost_piece_count_ += change.bytes.size() / piece_size + 1;
    } else if (change.is_truncation) {
      if (mode != 2 || random() % 2 == 0) {
        file.durable.resize(change.offset);
      }
    } else {
      settle_pieces(file, change, mode, i + 1 == reached);
    }
  }
  file.unsynced.clear();
  file.current = file.durable;
}

void PowerCutDisk::resume() {
  cut_ = false;
  left_ = UINT64_MAX;
}

void PowerCutDisk::restart() {
  for (auto& [name, file] : removed_) {
    if (!files_.contains(name) && random() % 2 == 0) {
      files_[name] = file;
    }
  }
  removed_.clear();
  for (auto it = files_.begin(); it != files_.end();) {
    settle(*it->second);
    const bool vanishes = !it->second->is_named && random() % 2 == 0;
    it->second->is_named = true;
    it = vanishes ? files_.erase(it) : std::next(it);
  }
  resume();
}

}  // namespace limbledger::simulation

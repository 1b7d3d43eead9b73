#include "tests/support/memory_vfs.hpp"

#include <algorithm>
#include <array>
#include <cstring>
#include <map>
#include <new>
#include <sqlite3.h>
#include <vector>

namespace spile::support {

namespace {

struct Connection;

// Who holds one lock: several to read, or one alone.
struct Lock {
    int sharing = 0;
    const Connection* alone = nullptr;
};

struct File {
    std::shared_ptr<Bytes> bytes = std::make_shared<Bytes>();
    // The index of a log, which all connections share. It stays where it is.
    std::vector<std::unique_ptr<Bytes>> shared;
    std::array<Lock, SQLITE_SHM_NLOCK> sharedLocks;
    int readers = 0;
    const Connection* writer = nullptr;

    // Before it is written: an image may look at the same bytes.
    Bytes& own()
    {
        if (bytes.use_count() > 1) {
            bytes = std::make_shared<Bytes>(*bytes);
        }
        return *bytes;
    }
};

std::map<std::string, std::shared_ptr<File>>& disk()
{
    static std::map<std::string, std::shared_ptr<File>> files;
    return files;
}

std::shared_ptr<File>& fileAt(const std::string& path)
{
    std::shared_ptr<File>& file = disk()[path];
    if (!file) {
        file = std::make_shared<File>();
    }
    return file;
}

struct Connection {
    sqlite3_file asSqlite;
    std::shared_ptr<File> file;
    int level = SQLITE_LOCK_NONE;
};

Connection& connection(sqlite3_file* file) { return *reinterpret_cast<Connection*>(file); }
File& fileOf(sqlite3_file* file) { return *connection(file).file; }

int closeFile(sqlite3_file* file)
{
    connection(file).~Connection();
    return SQLITE_OK;
}

int readFile(sqlite3_file* file, void* into, int count, sqlite3_int64 offset)
{
    const Bytes& bytes = *fileOf(file).bytes;
    const auto from = std::min(bytes.size(), static_cast<std::size_t>(offset));
    const auto there = std::min(bytes.size() - from, static_cast<std::size_t>(count));
    if (there > 0) {  // an empty file has no bytes to point at
        std::memcpy(into, bytes.data() + from, there);
    }
    std::memset(static_cast<std::uint8_t*>(into) + there, 0,
                static_cast<std::size_t>(count) - there);
    return there == static_cast<std::size_t>(count) ? SQLITE_OK : SQLITE_IOERR_SHORT_READ;
}

int writeFile(sqlite3_file* file, const void* from, int count, sqlite3_int64 offset)
{
    Bytes& bytes = fileOf(file).own();
    const auto end = static_cast<std::size_t>(offset) + static_cast<std::size_t>(count);
    if (bytes.size() < end) {
        bytes.resize(end);
    }
    std::memcpy(bytes.data() + offset, from, static_cast<std::size_t>(count));
    return SQLITE_OK;
}

int truncateFile(sqlite3_file* file, sqlite3_int64 size)
{
    fileOf(file).own().resize(static_cast<std::size_t>(size));
    return SQLITE_OK;
}

int fileSize(sqlite3_file* file, sqlite3_int64* size)
{
    *size = static_cast<sqlite3_int64>(fileOf(file).bytes->size());
    return SQLITE_OK;
}

int lockFile(sqlite3_file* file, int level)
{
    Connection& self = connection(file);
    File& held = *self.file;
    if (held.writer != nullptr && held.writer != &self) {
        return SQLITE_BUSY;
    }
    const bool others = held.readers > (self.level >= SQLITE_LOCK_SHARED ? 1 : 0);
    if (level == SQLITE_LOCK_EXCLUSIVE && others) {
        return SQLITE_BUSY;
    }
    if (self.level == SQLITE_LOCK_NONE) {
        ++held.readers;
    }
    if (level > SQLITE_LOCK_SHARED) {
        held.writer = &self;
    }
    self.level = std::max(self.level, level);
    return SQLITE_OK;
}

int unlockFile(sqlite3_file* file, int level)
{
    Connection& self = connection(file);
    if (self.file->writer == &self) {
        self.file->writer = nullptr;
    }
    if (level == SQLITE_LOCK_NONE && self.level != SQLITE_LOCK_NONE) {
        --self.file->readers;
    }
    self.level = std::min(self.level, level);
    return SQLITE_OK;
}

int isReserved(sqlite3_file* file, int* answer)
{
    *answer = static_cast<int>(fileOf(file).writer != nullptr);
    return SQLITE_OK;
}

int mapShared(sqlite3_file* file, int region, int size, int extend, void volatile** into)
{
    auto& shared = fileOf(file).shared;
    while (extend != 0 && shared.size() <= static_cast<std::size_t>(region)) {
        shared.push_back(std::make_unique<Bytes>(static_cast<std::size_t>(size)));
    }
    *into = static_cast<std::size_t>(region) < shared.size()
                ? shared[static_cast<std::size_t>(region)]->data()
                : nullptr;
    return SQLITE_OK;
}

int lockShared(sqlite3_file* file, int first, int count, int flags)
{
    const Connection& self = connection(file);
    const bool alone = (flags & SQLITE_SHM_EXCLUSIVE) != 0;
    const auto locks =
        std::span(self.file->sharedLocks)
            .subspan(static_cast<std::size_t>(first), static_cast<std::size_t>(count));
    if ((flags & SQLITE_SHM_UNLOCK) != 0) {
        for (Lock& lock : locks) {
            lock.sharing -= alone ? 0 : 1;
            lock.alone = alone && lock.alone == &self ? nullptr : lock.alone;
        }
        return SQLITE_OK;
    }
    for (const Lock& lock : locks) {
        if ((lock.alone != nullptr && lock.alone != &self) || (alone && lock.sharing > 0)) {
            return SQLITE_BUSY;
        }
    }
    for (Lock& lock : locks) {
        lock.sharing += alone ? 0 : 1;
        lock.alone = alone ? &self : lock.alone;
    }
    return SQLITE_OK;
}

const sqlite3_io_methods& methods()
{
    static const sqlite3_io_methods all = [] {
        sqlite3_io_methods made{};
        made.iVersion = 2;
        made.xClose = closeFile;
        made.xRead = readFile;
        made.xWrite = writeFile;
        made.xTruncate = truncateFile;
        made.xSync = [](sqlite3_file*, int) { return SQLITE_OK; };
        made.xFileSize = fileSize;
        made.xLock = lockFile;
        made.xUnlock = unlockFile;
        made.xCheckReservedLock = isReserved;
        made.xFileControl = [](sqlite3_file*, int, void*) { return SQLITE_NOTFOUND; };
        made.xSectorSize = [](sqlite3_file*) { return 4096; };
        made.xDeviceCharacteristics = [](sqlite3_file*) { return 0; };
        made.xShmMap = mapShared;
        made.xShmLock = lockShared;
        made.xShmBarrier = [](sqlite3_file*) {};
        made.xShmUnmap = [](sqlite3_file*, int) { return SQLITE_OK; };
        return made;
    }();
    return all;
}

int openFile(sqlite3_vfs*, const char* name, sqlite3_file* file, int flags, int* outFlags)
{
    auto* made = new (file) Connection{};
    made->file = name == nullptr ? std::make_shared<File>() : fileAt(name);
    made->asSqlite.pMethods = &methods();
    if (outFlags != nullptr) {
        *outFlags = flags;
    }
    return SQLITE_OK;
}

int deleteFile(sqlite3_vfs*, const char* name, int)
{
    disk().erase(name);
    return SQLITE_OK;
}

int isThere(sqlite3_vfs*, const char* name, int, int* answer)
{
    *answer = static_cast<int>(disk().contains(name));
    return SQLITE_OK;
}

int fullName(sqlite3_vfs*, const char* name, int room, char* into)
{
    sqlite3_snprintf(room, into, "%s", name);
    return SQLITE_OK;
}

}  // namespace

std::string memoryVfs()
{
    static sqlite3_vfs vfs = [] {
        // Time and randomness are the system's.
        sqlite3_vfs made = *sqlite3_vfs_find(nullptr);
        made.pNext = nullptr;
        made.zName = "memory";
        made.szOsFile = sizeof(Connection);
        made.xOpen = openFile;
        made.xDelete = deleteFile;
        made.xAccess = isThere;
        made.xFullPathname = fullName;
        return made;
    }();
    static const int registered = sqlite3_vfs_register(&vfs, 0);
    static_cast<void>(registered);
    return vfs.zName;
}

DatabaseImage imageOf(const std::string& path)
{
    return {fileAt(path)->bytes, fileAt(path + "-wal")->bytes};
}

void putBack(const std::string& path, const DatabaseImage& image)
{
    fileAt(path)->bytes = image.file;
    fileAt(path + "-wal")->bytes = image.log;
    for (const auto& region : fileAt(path)->shared) {
        std::fill(region->begin(), region->end(), std::uint8_t{0});  // SQLite reads the log anew
    }
}

}  // namespace spile::support

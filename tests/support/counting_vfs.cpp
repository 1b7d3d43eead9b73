#include "tests/support/counting_vfs.hpp"

#include <new>
#include <sqlite3.h>

namespace spile::support {

void VfsCounter::reset()
{
    const std::lock_guard guard(mutex_);
    files_.clear();
}

void VfsCounter::count(const std::string& name, std::uint64_t Counts::*member)
{
    const std::lock_guard guard(mutex_);
    Counts& counts = files_[name];
    ++(counts.*member);
    if (member == &Counts::writes) {
        ++counts.unsynced;
    } else if (member == &Counts::syncs) {
        counts.unsynced = 0;
    }
}

std::uint64_t VfsCounter::sum(std::string_view suffix, std::uint64_t Counts::*member) const
{
    const std::lock_guard guard(mutex_);
    std::uint64_t total = 0;
    for (const auto& [name, counts] : files_) {
        total += name.ends_with(suffix) ? counts.*member : 0;
    }
    return total;
}

std::uint64_t VfsCounter::opens(std::string_view suffix) const
{
    return sum(suffix, &Counts::opens);
}

std::uint64_t VfsCounter::writes(std::string_view suffix) const
{
    return sum(suffix, &Counts::writes);
}

std::uint64_t VfsCounter::syncs(std::string_view suffix) const
{
    return sum(suffix, &Counts::syncs);
}

std::uint64_t VfsCounter::unsynced(std::string_view suffix) const
{
    return sum(suffix, &Counts::unsynced);
}

namespace {

// SQLite gives us memory for one of these; the file of the VFS below follows it.
struct CountingFile {
    sqlite3_file asSqlite;  // first, since SQLite sees only this
    sqlite3_io_methods methods;
    std::string name;
};

struct Layer {
    VfsCounter counter;
    sqlite3_vfs* below = nullptr;
    sqlite3_vfs vfs{};
};

}  // namespace

static Layer& layer()
{
    static Layer one;
    return one;
}

static CountingFile* ours(sqlite3_file* file) { return reinterpret_cast<CountingFile*>(file); }

static sqlite3_file* below(sqlite3_file* file)
{
    return reinterpret_cast<sqlite3_file*>(ours(file) + 1);
}

static sqlite3_vfs* below(sqlite3_vfs* vfs) { return static_cast<sqlite3_vfs*>(vfs->pAppData); }

// Makes the call on the file below; for the methods that are only passed through.
template <auto method, class... Args>
static auto passFile(sqlite3_file* file, Args... args)
{
    return (below(file)->pMethods->*method)(below(file), args...);
}

template <auto method, class... Args>
static auto passVfs(sqlite3_vfs* vfs, Args... args)
{
    return (below(vfs)->*method)(below(vfs), args...);
}

static int closeFile(sqlite3_file* file)
{
    const int result = below(file)->pMethods->xClose(below(file));
    ours(file)->~CountingFile();
    return result;
}

static int writeFile(sqlite3_file* file, const void* bytes, int count, sqlite3_int64 offset)
{
    layer().counter.count(ours(file)->name, &VfsCounter::Counts::writes);
    return below(file)->pMethods->xWrite(below(file), bytes, count, offset);
}

static int syncFile(sqlite3_file* file, int flags)
{
    layer().counter.count(ours(file)->name, &VfsCounter::Counts::syncs);
    return layer().counter.passesSyncsOn() ? below(file)->pMethods->xSync(below(file), flags)
                                           : SQLITE_OK;
}

static sqlite3_io_methods methodsFor(const sqlite3_io_methods& real)
{
    using Io = sqlite3_io_methods;
    Io methods{};
    methods.iVersion = real.iVersion;  // SQLite uses no method that is newer than this
    methods.xClose = closeFile;
    methods.xRead = passFile<&Io::xRead>;
    methods.xWrite = writeFile;
    methods.xTruncate = passFile<&Io::xTruncate>;
    methods.xSync = syncFile;
    methods.xFileSize = passFile<&Io::xFileSize>;
    methods.xLock = passFile<&Io::xLock>;
    methods.xUnlock = passFile<&Io::xUnlock>;
    methods.xCheckReservedLock = passFile<&Io::xCheckReservedLock>;
    methods.xFileControl = passFile<&Io::xFileControl>;
    methods.xSectorSize = passFile<&Io::xSectorSize>;
    methods.xDeviceCharacteristics = passFile<&Io::xDeviceCharacteristics>;
    methods.xShmMap = passFile<&Io::xShmMap>;
    methods.xShmLock = passFile<&Io::xShmLock>;
    methods.xShmBarrier = passFile<&Io::xShmBarrier>;
    methods.xShmUnmap = passFile<&Io::xShmUnmap>;
    methods.xFetch = passFile<&Io::xFetch>;
    methods.xUnfetch = passFile<&Io::xUnfetch>;
    return methods;
}

static int openFile(sqlite3_vfs* vfs, const char* name, sqlite3_file* file, int flags,
                    int* outFlags)
{
    auto* counting = new (file) CountingFile{};
    const int result = below(vfs)->xOpen(below(vfs), name, below(file), flags, outFlags);
    if (below(file)->pMethods == nullptr) {  // then SQLite will not close it
        counting->~CountingFile();
        file->pMethods = nullptr;
        return result;
    }
    counting->name = name == nullptr ? "" : name;
    counting->methods = methodsFor(*below(file)->pMethods);
    counting->asSqlite.pMethods = &counting->methods;
    layer().counter.count(counting->name, &VfsCounter::Counts::opens);
    return result;
}

static sqlite3_vfs vfsOver(sqlite3_vfs& real)
{
    using Vfs = sqlite3_vfs;
    Vfs vfs{};
    vfs.iVersion = real.iVersion;
    vfs.szOsFile = static_cast<int>(sizeof(CountingFile)) + real.szOsFile;
    vfs.mxPathname = real.mxPathname;
    vfs.zName = "counting";
    vfs.pAppData = &real;
    vfs.xOpen = openFile;
    vfs.xDelete = passVfs<&Vfs::xDelete>;
    vfs.xAccess = passVfs<&Vfs::xAccess>;
    vfs.xFullPathname = passVfs<&Vfs::xFullPathname>;
    vfs.xDlOpen = passVfs<&Vfs::xDlOpen>;
    vfs.xDlError = passVfs<&Vfs::xDlError>;
    vfs.xDlSym = [](sqlite3_vfs* self, void* library, const char* symbol) {
        return below(self)->xDlSym(below(self), library, symbol);
    };
    vfs.xDlClose = passVfs<&Vfs::xDlClose>;
    vfs.xRandomness = passVfs<&Vfs::xRandomness>;
    vfs.xSleep = passVfs<&Vfs::xSleep>;
    vfs.xCurrentTime = passVfs<&Vfs::xCurrentTime>;
    vfs.xGetLastError = passVfs<&Vfs::xGetLastError>;
    vfs.xCurrentTimeInt64 = passVfs<&Vfs::xCurrentTimeInt64>;
    vfs.xSetSystemCall = passVfs<&Vfs::xSetSystemCall>;
    vfs.xGetSystemCall = passVfs<&Vfs::xGetSystemCall>;
    vfs.xNextSystemCall = passVfs<&Vfs::xNextSystemCall>;
    return vfs;
}

VfsCounter& registerCountingVfs()
{
    static const bool registered = [] {
        layer().vfs = vfsOver(*sqlite3_vfs_find(nullptr));
        return sqlite3_vfs_register(&layer().vfs, 1) == SQLITE_OK;
    }();
    static_cast<void>(registered);
    return layer().counter;
}

}  // namespace spile::support

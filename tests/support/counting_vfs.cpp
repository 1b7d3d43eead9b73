#include "tests/support/counting_vfs.hpp"

#include "tests/support/passing_vfs.hpp"

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

std::uint64_t VfsCounter::reads(std::string_view suffix) const
{
    return sum(suffix, &Counts::reads);
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

struct CountingFile {
    sqlite3_file asSqlite;
    sqlite3_io_methods methods;
    std::string name;
};

struct Layer {
    VfsCounter counter;
    VfsBelow below;
    sqlite3_vfs vfs{};
};

Layer& layer()
{
    static Layer one;
    return one;
}

int readFile(sqlite3_file* file, void* bytes, int count, sqlite3_int64 offset)
{
    layer().counter.count(layerOf<CountingFile>(file)->name, &VfsCounter::Counts::reads);
    return passFile<CountingFile, &sqlite3_io_methods::xRead>(file, bytes, count, offset);
}

int writeFile(sqlite3_file* file, const void* bytes, int count, sqlite3_int64 offset)
{
    layer().counter.count(layerOf<CountingFile>(file)->name, &VfsCounter::Counts::writes);
    if (layer().counter.isFull()) {
        return SQLITE_FULL;
    }
    return passFile<CountingFile, &sqlite3_io_methods::xWrite>(file, bytes, count, offset);
}

int syncFile(sqlite3_file* file, int flags)
{
    layer().counter.count(layerOf<CountingFile>(file)->name, &VfsCounter::Counts::syncs);
    return layer().counter.passesSyncsOn()
               ? passFile<CountingFile, &sqlite3_io_methods::xSync>(file, flags)
               : SQLITE_OK;
}

int openFile(sqlite3_vfs* vfs, const char* name, sqlite3_file* file, int flags, int* outFlags)
{
    int result = SQLITE_OK;
    auto* counting = openBelow<CountingFile>(vfs, name, file, flags, outFlags, result);
    if (counting == nullptr) {
        return result;
    }
    counting->name = name == nullptr ? "" : name;
    sqlite3_io_methods methods =
        passingMethods<CountingFile>(*fileBelow<CountingFile>(file)->pMethods);
    methods.xRead = readFile;
    methods.xWrite = writeFile;
    methods.xSync = syncFile;
    useMethods(*counting, methods);
    layer().counter.count(counting->name, &VfsCounter::Counts::opens);
    return result;
}

}  // namespace

VfsCounter& registerCountingVfs()
{
    static const bool registered = [] {
        layer().below.vfs = sqlite3_vfs_find(nullptr);
        layer().vfs = passingVfs<CountingFile>(layer().below, "counting", openFile);
        return sqlite3_vfs_register(&layer().vfs, 1) == SQLITE_OK;
    }();
    static_cast<void>(registered);
    return layer().counter;
}

}  // namespace spile::support

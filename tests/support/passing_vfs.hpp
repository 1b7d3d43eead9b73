#pragma once

#include <new>
#include <sqlite3.h>

/// A layer over a VFS of SQLite's that passes every call on; what it is for replaces some of them.
///
/// `File` begins with `sqlite3_file asSqlite; sqlite3_io_methods methods;`. SQLite gives memory for
/// one, behind which the file of the VFS below follows.
namespace spile::support {

/// What the layer's pAppData points to; it may be the beginning of more.
struct VfsBelow {
    sqlite3_vfs* vfs = nullptr;
};
inline sqlite3_vfs* vfsBelow(sqlite3_vfs* layer)
{
    return static_cast<VfsBelow*>(layer->pAppData)->vfs;
}

template <class File>
File* layerOf(sqlite3_file* file)
{
    return reinterpret_cast<File*>(file);
}
template <class File>
sqlite3_file* fileBelow(sqlite3_file* file)
{
    return reinterpret_cast<sqlite3_file*>(layerOf<File>(file) + 1);
}

template <auto method, class... Args>
auto passVfs(sqlite3_vfs* layer, Args... args)
{
    return (vfsBelow(layer)->*method)(vfsBelow(layer), args...);
}
template <class File, auto method, class... Args>
auto passFile(sqlite3_file* file, Args... args)
{
    sqlite3_file* below = fileBelow<File>(file);
    return (below->pMethods->*method)(below, args...);
}
template <class File>
int closeFile(sqlite3_file* file)
{
    const int result = passFile<File, &sqlite3_io_methods::xClose>(file);
    layerOf<File>(file)->~File();
    return result;
}

/// Methods that all pass on, of the version of those below: SQLite uses none that is newer.
template <class File>
sqlite3_io_methods passingMethods(const sqlite3_io_methods& real)
{
    using Io = sqlite3_io_methods;
    Io methods{};
    methods.iVersion = real.iVersion;
    methods.xClose = closeFile<File>;
    methods.xRead = passFile<File, &Io::xRead>;
    methods.xWrite = passFile<File, &Io::xWrite>;
    methods.xTruncate = passFile<File, &Io::xTruncate>;
    methods.xSync = passFile<File, &Io::xSync>;
    methods.xFileSize = passFile<File, &Io::xFileSize>;
    methods.xLock = passFile<File, &Io::xLock>;
    methods.xUnlock = passFile<File, &Io::xUnlock>;
    methods.xCheckReservedLock = passFile<File, &Io::xCheckReservedLock>;
    methods.xFileControl = passFile<File, &Io::xFileControl>;
    methods.xSectorSize = passFile<File, &Io::xSectorSize>;
    methods.xDeviceCharacteristics = passFile<File, &Io::xDeviceCharacteristics>;
    methods.xShmMap = passFile<File, &Io::xShmMap>;
    methods.xShmLock = passFile<File, &Io::xShmLock>;
    methods.xShmBarrier = passFile<File, &Io::xShmBarrier>;
    methods.xShmUnmap = passFile<File, &Io::xShmUnmap>;
    methods.xFetch = passFile<File, &Io::xFetch>;
    methods.xUnfetch = passFile<File, &Io::xUnfetch>;
    return methods;
}

/// Open the file below and make the layer's own in front of it; null if it cannot be opened, then
/// SQLite will not close it. The methods still have to be given to it: useMethods().
template <class File>
File* openBelow(sqlite3_vfs* layer, const char* name, sqlite3_file* file, int flags, int* outFlags,
                int& result)
{
    auto* made = new (file) File{};
    sqlite3_file* below = fileBelow<File>(file);
    result = passVfs<&sqlite3_vfs::xOpen>(layer, name, below, flags, outFlags);
    if (below->pMethods == nullptr) {
        made->~File();
        file->pMethods = nullptr;
        return nullptr;
    }
    return made;
}
template <class File>
void useMethods(File& file, const sqlite3_io_methods& methods)
{
    file.methods = methods;
    file.asSqlite.pMethods = &file.methods;
}

/// A VFS that passes all on but for opening, which is the layer's.
template <class File>
sqlite3_vfs passingVfs(VfsBelow& below, const char* name, decltype(sqlite3_vfs::xOpen) open)
{
    using Vfs = sqlite3_vfs;
    Vfs vfs{};
    vfs.iVersion = below.vfs->iVersion;
    vfs.szOsFile = static_cast<int>(sizeof(File)) + below.vfs->szOsFile;
    vfs.mxPathname = below.vfs->mxPathname;
    vfs.zName = name;
    vfs.pAppData = &below;
    vfs.xOpen = open;
    vfs.xDelete = passVfs<&Vfs::xDelete>;
    vfs.xAccess = passVfs<&Vfs::xAccess>;
    vfs.xFullPathname = passVfs<&Vfs::xFullPathname>;
    vfs.xDlOpen = passVfs<&Vfs::xDlOpen>;
    vfs.xDlError = passVfs<&Vfs::xDlError>;
    vfs.xDlSym = [](sqlite3_vfs* self, void* library, const char* symbol) {
        return vfsBelow(self)->xDlSym(vfsBelow(self), library, symbol);
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

}  // namespace spile::support

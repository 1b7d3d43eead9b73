#include "tests/support/recorded_disk.hpp"

#include "tests/support/passing_vfs.hpp"

#include <atomic>

namespace spile::support {

namespace {

struct Below : VfsBelow {
    RecordedDisk* disk = nullptr;
};

RecordedDisk& diskOf(sqlite3_vfs* vfs)
{
    return *static_cast<Below*>(static_cast<VfsBelow*>(vfs->pAppData))->disk;
}

struct RecordedFile {
    sqlite3_file asSqlite;
    sqlite3_io_methods methods;
    RecordedDisk* disk = nullptr;
    const Path* path = nullptr;
};

RecordedFile* ours(sqlite3_file* file) { return layerOf<RecordedFile>(file); }

DiskCall sqliteCall(DiskCall::Kind kind)
{
    DiskCall call;
    call.kind = kind;
    call.bySqlite = true;
    return call;
}

int writeFile(sqlite3_file* file, const void* bytes, int count, sqlite3_int64 offset)
{
    if (const auto refused = ours(file)->disk->refusal(RecordedDisk::Refuse::Write)) {
        return *refused;
    }
    DiskCall call = sqliteCall(DiskCall::Kind::Write);
    call.offset = static_cast<std::uint64_t>(offset);
    const auto* first = static_cast<const std::uint8_t*>(bytes);
    call.bytes.assign(first, first + count);
    ours(file)->disk->note(std::move(call), *ours(file)->path);
    return passFile<RecordedFile, &sqlite3_io_methods::xWrite>(file, bytes, count, offset);
}

int truncateFile(sqlite3_file* file, sqlite3_int64 size)
{
    DiskCall call = sqliteCall(DiskCall::Kind::Truncate);
    call.offset = static_cast<std::uint64_t>(size);
    ours(file)->disk->note(std::move(call), *ours(file)->path);
    return passFile<RecordedFile, &sqlite3_io_methods::xTruncate>(file, size);
}

int syncFile(sqlite3_file* file, int)
{
    if (const auto refused = ours(file)->disk->refusal(RecordedDisk::Refuse::Sync)) {
        return *refused;
    }
    ours(file)->disk->note(sqliteCall(DiskCall::Kind::Sync), *ours(file)->path);
    return SQLITE_OK;
}

int openFile(sqlite3_vfs* vfs, const char* name, sqlite3_file* file, int flags, int* outFlags)
{
    const bool there = name != nullptr && std::filesystem::exists(name);
    int result = SQLITE_OK;
    auto* recorded = openBelow<RecordedFile>(vfs, name, file, flags, outFlags, result);
    if (recorded == nullptr) {
        return result;
    }
    recorded->disk = &diskOf(vfs);
    recorded->path = &recorded->disk->kept(name == nullptr ? "" : name);
    if (!there && name != nullptr) {
        recorded->disk->note(sqliteCall(DiskCall::Kind::Create), *recorded->path);
    }
    sqlite3_io_methods methods =
        passingMethods<RecordedFile>(*fileBelow<RecordedFile>(file)->pMethods);
    methods.xWrite = writeFile;
    methods.xTruncate = truncateFile;
    methods.xSync = syncFile;
    methods.xDeviceCharacteristics = [](sqlite3_file*) { return 0; };  // no promises of the disk
    useMethods(*recorded, methods);
    return result;
}

int deleteFile(sqlite3_vfs* vfs, const char* name, int syncsFolder)
{
    diskOf(vfs).note(sqliteCall(DiskCall::Kind::Remove), name);
    if (syncsFolder != 0) {
        diskOf(vfs).note(sqliteCall(DiskCall::Kind::SyncFolder), folderOf(name));
    }
    return passVfs<&sqlite3_vfs::xDelete>(vfs, name, 0);
}

// Passes all on but syncs.
class RecordedFiles final : public FileSystem {
public:
    RecordedFiles(RecordedDisk& disk, FileSystem& below) : disk_(disk), below_(below) {}

    Result<std::unique_ptr<InputFile>> open(const Path& path) override { return below_.open(path); }
    Result<std::unique_ptr<OutputFile>> create(const Path& path) override
    {
        return written(path, below_.create(path));
    }
    Result<std::unique_ptr<OutputFile>> createPrivate(const Path& path) override
    {
        return written(path, below_.createPrivate(path));
    }
    Result<void> rename(const Path& from, const Path& to) override
    {
        SPILE_TRY(below_.rename(from, to));
        DiskCall call;
        call.kind = DiskCall::Kind::Rename;
        call.to = std::filesystem::path(to).lexically_relative(disk_.folder()).generic_string();
        disk_.note(std::move(call), from);
        return {};
    }
    Result<void> remove(const Path& path) override
    {
        SPILE_TRY(below_.remove(path));
        return noted(DiskCall::Kind::Remove, path);
    }
    Result<void> makeFolder(const Path& path) override { return below_.makeFolder(path); }
    Result<void> syncFolder(const Path& path) override
    {
        return noted(DiskCall::Kind::SyncFolder, path);
    }
    bool exists(const Path& path) override { return below_.exists(path); }
    Result<std::vector<std::string>> list(const Path& folder) override
    {
        return below_.list(folder);
    }
    Result<std::unique_ptr<FileLock>> lock(const Path& path, const std::string& holder) override
    {
        return below_.lock(path, holder);
    }

private:
    class File final : public OutputFile {
    public:
        File(RecordedDisk& disk, Path path, std::unique_ptr<OutputFile> below)
            : disk_(disk), path_(std::move(path)), below_(std::move(below))
        {
        }
        Result<void> append(ByteView bytes) override
        {
            SPILE_TRY(below_->append(bytes));
            DiskCall call;
            call.kind = DiskCall::Kind::Write;
            call.offset = at_;
            call.bytes.assign(bytes.begin(), bytes.end());
            at_ += bytes.size();
            disk_.note(std::move(call), path_);
            return {};
        }
        Result<void> sync() override
        {
            DiskCall call;
            call.kind = DiskCall::Kind::Sync;
            disk_.note(std::move(call), path_);
            return {};
        }

    private:
        RecordedDisk& disk_;
        Path path_;
        std::unique_ptr<OutputFile> below_;
        std::uint64_t at_ = 0;
    };

    Result<std::unique_ptr<OutputFile>> written(const Path& path,
                                                Result<std::unique_ptr<OutputFile>> file)
    {
        if (!file) {
            return file;
        }
        SPILE_TRY(noted(DiskCall::Kind::Create, path));
        return std::make_unique<File>(disk_, path, std::move(*file));
    }
    Result<void> noted(DiskCall::Kind kind, const Path& path)
    {
        DiskCall call;
        call.kind = kind;
        disk_.note(std::move(call), path);
        return {};
    }

    RecordedDisk& disk_;
    FileSystem& below_;
};

}  // namespace

struct RecordedDisk::Vfs {
    Below below;
    sqlite3_vfs vfs{};
};

RecordedDisk::RecordedDisk(Path folder, FileSystem& below)
    : folder_(std::move(folder)),
      vfs_(std::make_unique<Vfs>()),
      files_(std::make_unique<RecordedFiles>(*this, below))
{
    static std::atomic<int> number{0};
    name_ = "recorded" + std::to_string(++number);
    vfs_->below.vfs = sqlite3_vfs_find("unix");
    vfs_->below.disk = this;
    sqlite3_vfs& vfs = vfs_->vfs;
    vfs = passingVfs<RecordedFile>(vfs_->below, name_.c_str(), openFile);
    vfs.xDelete = deleteFile;
    sqlite3_vfs_register(&vfs, 0);
}

RecordedDisk::~RecordedDisk() { sqlite3_vfs_unregister(&vfs_->vfs); }

void RecordedDisk::note(DiskCall call, const Path& path)
{
    const std::string relative = path.lexically_relative(folder_).generic_string();
    if (relative.empty() || relative.starts_with("..") || relative.ends_with("-shm")) {
        return;  // the index of the log in memory is made anew after a crash
    }
    call.path = relative;
    const std::lock_guard guard(mutex_);
    calls_.push_back(std::move(call));
}

const Path& RecordedDisk::kept(const char* path)
{
    const std::lock_guard guard(mutex_);
    return *paths_.emplace(path).first;
}

void RecordedDisk::refuse(Refuse what, std::size_t after, bool lasting, bool full)
{
    toRefuse_ = Refusal{what, after, lasting, full};
    asked_ = 0;
    refused_ = false;
}

std::optional<int> RecordedDisk::refusal(Refuse what)
{
    if (!toRefuse_ || toRefuse_->what != what) {
        return std::nullopt;
    }
    const std::size_t before = asked_++;
    if (before != toRefuse_->after && (!toRefuse_->lasting || before < toRefuse_->after)) {
        return std::nullopt;
    }
    refused_ = true;
    return toRefuse_->full         ? SQLITE_FULL
           : what == Refuse::Write ? SQLITE_IOERR_WRITE
                                   : SQLITE_IOERR_FSYNC;
}

void RecordedDisk::acknowledge(ByteView what)
{
    DiskCall call;
    call.kind = DiskCall::Kind::Acknowledge;
    call.bytes.assign(what.begin(), what.end());
    const std::lock_guard guard(mutex_);
    calls_.push_back(std::move(call));
}

}  // namespace spile::support

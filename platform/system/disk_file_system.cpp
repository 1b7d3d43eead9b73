#include "platform/system/disk_file_system.hpp"

#include "platform/system/descriptor.hpp"

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstdio>
#include <fcntl.h>
#include <optional>
#include <unistd.h>
#include <utility>

namespace spile::system {

namespace {

class DiskInput final : public InputFile {
public:
    DiskInput(Descriptor file, std::uint64_t size, Path path)
        : file_(std::move(file)), size_(size), path_(std::move(path))
    {
    }
    [[nodiscard]] std::uint64_t size() const override { return size_; }
    [[nodiscard]] Result<void> readAt(std::uint64_t offset, std::span<std::uint8_t> into) override
    {
        auto count = file_.readAt(offset, into);
        if (!count) {
            return passOn(count);
        }
        if (*count < into.size()) {
            return fail(ErrorCode::Damaged, path_.string(), "ends too early");
        }
        return {};
    }

private:
    Descriptor file_;
    std::uint64_t size_;
    Path path_;
};

class DiskOutput final : public OutputFile {
public:
    explicit DiskOutput(Descriptor file) : file_(std::move(file)) {}
    [[nodiscard]] Result<void> append(ByteView bytes) override { return file_.write(bytes); }
    [[nodiscard]] Result<void> sync() override { return file_.syncFile(); }

private:
    Descriptor file_;
};

class DiskLock final : public FileLock {
public:
    explicit DiskLock(Descriptor file) : file_(std::move(file)) {}

private:
    Descriptor file_;
};

}  // namespace

static Result<std::unique_ptr<OutputFile>> createWithMode(const Path& path, unsigned mode)
{
    auto file = Descriptor::open(path, O_WRONLY | O_CREAT | O_EXCL | O_APPEND, mode);
    if (!file) {
        return passOn(file);
    }
    return std::make_unique<DiskOutput>(std::move(*file));
}

Result<std::unique_ptr<InputFile>> DiskFileSystem::open(const Path& path)
{
    // O_NONBLOCK: what a person points at may be a pipe, whose opening would wait for a writer.
    auto file = Descriptor::open(path, O_RDONLY | O_NONBLOCK);
    if (!file) {
        return passOn(file);
    }
    auto size = file->fileSize();
    if (!size) {
        return passOn(size);
    }
    return std::make_unique<DiskInput>(std::move(*file), *size, path);
}

Result<std::unique_ptr<OutputFile>> DiskFileSystem::create(const Path& path)
{
    return createWithMode(path, 0644);
}

Result<std::unique_ptr<OutputFile>> DiskFileSystem::createPrivate(const Path& path)
{
    return createWithMode(path, 0600);
}

Result<void> DiskFileSystem::rename(const Path& from, const Path& to)
{
    if (std::rename(from.c_str(), to.c_str()) != 0) {
        return failOn(from, errno);
    }
    return {};
}

Result<void> DiskFileSystem::remove(const Path& path)
{
    if (std::remove(path.c_str()) != 0) {
        return failOn(path, errno);
    }
    return {};
}

Result<void> DiskFileSystem::makeFolder(const Path& path)
{
    std::error_code error;
    std::filesystem::create_directories(path, error);
    if (error) {
        return failOn(path, error.value());
    }
    return {};
}

Result<void> DiskFileSystem::syncFolder(const Path& path)
{
    // The parent of a bare file name is the empty path.
    auto folder = Descriptor::open(path.empty() ? Path(".") : path, O_RDONLY | O_DIRECTORY);
    if (!folder) {
        return passOn(folder);
    }
    return folder->syncFolder();
}

Result<std::uint64_t> DiskFileSystem::freeBytes(const Path& folder)
{
    std::error_code error;
    const auto space = std::filesystem::space(folder, error);
    if (error) {
        return fail(ErrorCode::Storage, folder.string(), error.message());
    }
    return space.available;
}

bool DiskFileSystem::exists(const Path& path)
{
    std::error_code error;
    return std::filesystem::exists(path, error);
}

Result<std::vector<std::string>> DiskFileSystem::list(const Path& folder)
{
    std::vector<std::string> names;
    std::error_code error;
    std::filesystem::directory_iterator entry(folder, error);
    while (!error && entry != std::filesystem::directory_iterator()) {
        names.push_back(entry->path().filename().string());
        entry.increment(error);
    }
    if (error) {
        return failOn(folder, error.value());
    }
    std::sort(names.begin(), names.end());
    return names;
}

// A lock file holds the holder's text, and after it this and the number of its process.
static constexpr std::string_view processMark = "\nprocess ";

static tl::unexpected<Error> refuseLocked(const Descriptor& file, const Path& path)
{
    std::array<std::uint8_t, 1024> start{};
    const std::size_t count = file.readAt(0, start).value_or(0);
    const std::string_view text = asText(ByteView(start).first(count));
    const std::size_t mark = text.rfind(processMark);
    if (mark == std::string_view::npos) {  // locked a moment ago, not yet written
        return fail(ErrorCode::Locked, path.string(), {}, "try again");
    }
    std::string_view process = text.substr(mark + processMark.size());
    process = process.substr(0, process.find('\n'));
    return fail(ErrorCode::Locked, path.string(), std::string(text.substr(0, mark)),
                "close it there first (process " + std::string(process) + ')');
}

Result<std::unique_ptr<FileLock>> DiskFileSystem::lock(const Path& path, const std::string& holder)
{
    auto file = Descriptor::open(path, O_RDWR | O_CREAT, 0644);
    if (!file) {
        return passOn(file);
    }
    auto locked = file->tryLock();
    if (!locked) {
        return passOn(locked);
    }
    if (!*locked) {
        return refuseLocked(*file, path);
    }
    const std::string text = holder + std::string(processMark) + std::to_string(::getpid()) + '\n';
    if (auto done = file->truncate(); !done) {
        return passOn(done);
    }
    if (auto done = file->write(asBytes(text)); !done) {
        return passOn(done);
    }
    return std::make_unique<DiskLock>(std::move(*file));
}

}  // namespace spile::system

#include "core/base/file_system.hpp"

#include <algorithm>
#include <functional>
#include <limits>

namespace spile::inline base {

Result<std::uint64_t> FileSystem::freeBytes(const Path& /*folder*/)
{
    return std::numeric_limits<std::uint64_t>::max();
}

Result<Bytes> readWhole(FileSystem& files, const Path& path, std::uint64_t maxBytes)
{
    auto file = files.open(path);
    if (!file) {
        return passOn(file);
    }
    const std::uint64_t size = (*file)->size();
    if (size > maxBytes) {
        return fail(ErrorCode::TooLarge, path.string(), std::to_string(size),
                    std::to_string(maxBytes));
    }
    Bytes bytes(size);
    if (auto done = (*file)->readAt(0, bytes); !done) {
        return passOn(done);
    }
    return bytes;
}

Path folderOf(const Path& path) { return path.has_parent_path() ? path.parent_path() : Path("."); }

namespace {

using Fill = std::function<Result<void>(OutputFile&)>;
using Create = Result<std::unique_ptr<OutputFile>> (FileSystem::*)(const Path&);

Result<void> fillAndRename(FileSystem& files, const Path& temporary, const Path& path,
                           const Fill& fill, Create create)
{
    SPILE_ASSIGN(file, (files.*create)(temporary));
    SPILE_TRY(fill(*file));
    SPILE_TRY(file->sync());
    file.reset();
    SPILE_TRY(files.rename(temporary, path));
    return files.syncFolder(folderOf(path));
}

// The whole new file or what was there: a temporary name beside it, renamed when it is durable.
Result<void> writeNew(FileSystem& files, const Path& path, const Fill& fill,
                      Create create = &FileSystem::create)
{
    const Path temporary = path.parent_path() / (".tmp-" + path.filename().string());
    if (files.exists(temporary)) {  // left by a process that was killed
        SPILE_TRY(files.remove(temporary));
    }
    auto done = fillAndRename(files, temporary, path, fill, create);
    if (!done && files.exists(temporary)) {
        std::ignore = files.remove(temporary);  // the first error is the one to report
    }
    return done;
}

}  // namespace

Result<void> writeWhole(FileSystem& files, const Path& path, ByteView bytes)
{
    return writeNew(files, path, [&](OutputFile& file) { return file.append(bytes); });
}

Result<void> writeWholePrivate(FileSystem& files, const Path& path, ByteView bytes)
{
    return writeNew(
        files, path, [&](OutputFile& file) { return file.append(bytes); },
        &FileSystem::createPrivate);
}

Result<void> copyWhole(FileSystem& files, const Path& from, const Path& to)
{
    SPILE_ASSIGN(source, files.open(from));
    return writeNew(files, to, [&](OutputFile& file) -> Result<void> {
        constexpr std::uint64_t pieceMost = std::uint64_t{1} << 20U;
        Bytes piece;
        for (std::uint64_t at = 0; at < source->size(); at += piece.size()) {
            piece.resize(std::min(pieceMost, source->size() - at));
            SPILE_TRY(source->readAt(at, piece));
            SPILE_TRY(file.append(piece));
        }
        return {};
    });
}

}  // namespace spile::inline base

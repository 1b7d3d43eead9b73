#include "core/base/file_system.hpp"

namespace spile::inline base {

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

static Result<void> fillAndRename(FileSystem& files, const Path& temporary, const Path& path,
                                  ByteView bytes)
{
    auto file = files.create(temporary);
    if (!file) {
        return passOn(file);
    }
    if (auto done = (*file)->append(bytes); !done) {
        return done;
    }
    if (auto done = (*file)->sync(); !done) {
        return done;
    }
    file->reset();
    if (auto done = files.rename(temporary, path); !done) {
        return done;
    }
    return files.syncFolder(folderOf(path));
}

Result<void> writeWhole(FileSystem& files, const Path& path, ByteView bytes)
{
    const Path temporary = path.parent_path() / (".tmp-" + path.filename().string());
    if (files.exists(temporary)) {  // left by a process that was killed
        if (auto done = files.remove(temporary); !done) {
            return done;
        }
    }
    auto done = fillAndRename(files, temporary, path, bytes);
    if (!done && files.exists(temporary)) {
        std::ignore = files.remove(temporary);  // the first error is the one to report
    }
    return done;
}

}  // namespace spile::inline base

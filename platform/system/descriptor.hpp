#pragma once

#include "core/base/bytes.hpp"
#include "core/base/file_system.hpp"
#include "core/base/result.hpp"

#include <cstdint>
#include <span>

/// What the other files of this folder share: POSIX calls that are repeated until they are done.
namespace spile::system {

/// Return the error that `systemError` (a value of errno) means for `path`.
[[nodiscard]] tl::unexpected<Error> failOn(const Path& path, int systemError);

/// An open file of the system, closed by the destructor.
class Descriptor {
public:
    /// Errors    NotFound, Conflict (O_EXCL), StorageFull, else Storage.
    [[nodiscard]] static Result<Descriptor> open(const Path& path, int flags, unsigned mode = 0);

    Descriptor(Descriptor&& other) noexcept;
    Descriptor& operator=(Descriptor&& other) noexcept;
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    ~Descriptor();

    /// Errors    Storage if it is not a plain file.
    [[nodiscard]] Result<std::uint64_t> fileSize() const;
    /// Return how many bytes were read: fewer than asked for only at the end of the file.
    [[nodiscard]] Result<std::size_t> readAt(std::uint64_t offset,
                                             std::span<std::uint8_t> into) const;
    [[nodiscard]] Result<void> write(ByteView bytes) const;
    [[nodiscard]] Result<void> truncate() const;
    [[nodiscard]] Result<void> syncFile() const;
    /// As syncFile(), for a folder; does nothing where folders cannot be synced.
    [[nodiscard]] Result<void> syncFolder() const;
    /// Take the lock of the file without waiting. False if another descriptor has it.
    [[nodiscard]] Result<bool> tryLock() const;

private:
    Descriptor(int number, Path path) : number_(number), path_(std::move(path)) {}

    int number_;  ///< -1 after a move
    Path path_;   ///< for errors
};

}  // namespace spile::system

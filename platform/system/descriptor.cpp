#include "platform/system/descriptor.hpp"

#include <algorithm>
#include <cerrno>
#include <fcntl.h>
#include <limits>
#include <sys/file.h>
#include <sys/stat.h>
#include <system_error>
#include <unistd.h>
#include <utility>

namespace spile::system {

// More than this is asked for in pieces: Apple's read and write refuse over 2^31 - 1 bytes.
static constexpr std::size_t largestTransfer = std::size_t{1} << 30U;

tl::unexpected<Error> failOn(const Path& path, int systemError)
{
    switch (systemError) {
        case ENOSPC:
        case EDQUOT:
            return fail(ErrorCode::StorageFull, path.string());
        case ENOENT:
            return fail(ErrorCode::NotFound, path.string());
        case EEXIST:
        case ENOTEMPTY:
            return fail(ErrorCode::Conflict, path.string());
        default:
            return fail(ErrorCode::Storage, path.string(),
                        std::generic_category().message(systemError));
    }
}

// Calls again as long as a signal interrupts.
template <class Call>
static auto untilDone(Call call)
{
    auto answer = call();
    while (answer < 0 && errno == EINTR) {
        answer = call();
    }
    return answer;
}

Result<Descriptor> Descriptor::open(const Path& path, int flags, unsigned mode)
{
    const int number = untilDone([&] { return ::open(path.c_str(), flags | O_CLOEXEC, mode); });
    if (number < 0) {
        return failOn(path, errno);
    }
    return Descriptor(number, path);
}

Descriptor::Descriptor(Descriptor&& other) noexcept
    : number_(std::exchange(other.number_, -1)), path_(std::move(other.path_))
{
}

Descriptor& Descriptor::operator=(Descriptor&& other) noexcept
{
    std::swap(number_, other.number_);
    std::swap(path_, other.path_);
    return *this;
}

Descriptor::~Descriptor()
{
    if (number_ >= 0) {
        ::close(number_);  // not again on EINTR: Linux has closed it by then
    }
}

Result<std::uint64_t> Descriptor::fileSize() const
{
    struct stat status {};
    if (::fstat(number_, &status) != 0) {
        return failOn(path_, errno);
    }
    if (!S_ISREG(status.st_mode)) {
        return fail(ErrorCode::Storage, path_.string(), "not a plain file");
    }
    return static_cast<std::uint64_t>(status.st_size);
}

Result<std::size_t> Descriptor::readAt(std::uint64_t offset, std::span<std::uint8_t> into) const
{
    std::size_t done = 0;
    while (done < into.size()) {
        if (offset > static_cast<std::uint64_t>(std::numeric_limits<off_t>::max()) - done) {
            break;  // no file reaches this far
        }
        const std::span<std::uint8_t> rest = into.subspan(done);
        const ssize_t count = untilDone([&] {
            return ::pread(number_, rest.data(), std::min(rest.size(), largestTransfer),
                           static_cast<off_t>(offset + done));
        });
        if (count < 0) {
            return failOn(path_, errno);
        }
        if (count == 0) {
            break;
        }
        done += static_cast<std::size_t>(count);
    }
    return done;
}

Result<void> Descriptor::write(ByteView bytes) const
{
    while (!bytes.empty()) {
        const ssize_t count = untilDone([&] {
            return ::write(number_, bytes.data(), std::min(bytes.size(), largestTransfer));
        });
        if (count < 0) {
            return failOn(path_, errno);
        }
        bytes = bytes.subspan(static_cast<std::size_t>(count));
    }
    return {};
}

Result<void> Descriptor::truncate() const
{
    if (untilDone([&] { return ::ftruncate(number_, 0); }) != 0) {
        return failOn(path_, errno);
    }
    return {};
}

Result<void> Descriptor::syncFile() const
{
#if defined(__APPLE__)
    // Apple's fsync leaves the bytes in the drive's cache; some network disks know only that.
    if (untilDone([&] { return ::fcntl(number_, F_FULLFSYNC); }) == 0) {
        return {};
    }
    const int done = untilDone([&] { return ::fsync(number_); });
#else
    const int done = untilDone([&] { return ::fdatasync(number_); });
#endif
    if (done != 0) {
        return failOn(path_, errno);
    }
    return {};
}

Result<void> Descriptor::syncFolder() const
{
    // EINVAL: a file system that has no such call, as some that are mounted over a network.
    if (untilDone([&] { return ::fsync(number_); }) != 0 && errno != EINVAL) {
        return failOn(path_, errno);
    }
    return {};
}

Result<bool> Descriptor::tryLock() const
{
    if (untilDone([&] { return ::flock(number_, LOCK_EX | LOCK_NB); }) == 0) {
        return true;
    }
    if (errno == EWOULDBLOCK) {
        return false;
    }
    return failOn(path_, errno);
}

}  // namespace spile::system

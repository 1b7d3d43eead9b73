#include "platform/system/system_random.hpp"

#include <cerrno>
#include <cstdlib>

#if defined(__APPLE__) || defined(__ANDROID__)

namespace spile::system {

void SystemRandom::fill(std::span<std::uint8_t> bytes)
{
    ::arc4random_buf(bytes.data(), bytes.size());
}

}  // namespace spile::system

#else

#include <sys/random.h>

namespace spile::system {

void SystemRandom::fill(std::span<std::uint8_t> bytes)
{
    while (!bytes.empty()) {
        const ssize_t count = ::getrandom(bytes.data(), bytes.size(), 0);
        if (count < 0 && errno != EINTR) {
            std::abort();
        }
        if (count > 0) {
            bytes = bytes.subspan(static_cast<std::size_t>(count));
        }
    }
}

}  // namespace spile::system

#endif

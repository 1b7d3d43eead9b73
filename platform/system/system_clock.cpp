#include "platform/system/system_clock.hpp"

#include "core/base/sha256.hpp"
#include "platform/system/descriptor.hpp"

#include <array>
#include <ctime>
#include <fcntl.h>
#include <optional>
#include <string>

namespace spile::system {

#if defined(CLOCK_BOOTTIME)
static constexpr clockid_t bootClock = CLOCK_BOOTTIME;  // counts sleep too
#else
static constexpr clockid_t bootClock = CLOCK_MONOTONIC;
#endif

static Milliseconds read(clockid_t clock)
{
    timespec time{};
    ::clock_gettime(clock, &time);  // fails only for a clock that does not exist
    return std::chrono::duration_cast<Milliseconds>(std::chrono::seconds(time.tv_sec) +
                                                    std::chrono::nanoseconds(time.tv_nsec));
}

// The name that Linux gives each start, if we may read it.
static std::optional<std::string> nameOfBoot()
{
    auto file = Descriptor::open("/proc/sys/kernel/random/boot_id", O_RDONLY);
    if (!file) {
        return std::nullopt;
    }
    std::array<std::uint8_t, 64> text{};
    auto count = file->readAt(0, text);
    if (!count || *count == 0) {
        return std::nullopt;
    }
    const std::string_view line = asText(ByteView(text).first(*count));
    return std::string(line.substr(0, line.find('\n')));
}

BootId bootIdFrom(std::string_view name)
{
    const Sha256 hash = sha256(asBytes(name));
    return BootId::fromBytes(hash.bytes().first(BootId::size)).value_or(BootId());
}

SystemClock::SystemClock()
{
    const auto name = nameOfBoot();
    const auto start =
        std::chrono::round<std::chrono::seconds>(now().time_since_epoch() - sinceBoot());
    bootId_ = bootIdFrom(name ? *name : std::to_string(start.count()));
}

Instant SystemClock::now() const { return Instant(read(CLOCK_REALTIME)); }

Milliseconds SystemClock::sinceBoot() const { return read(bootClock); }

}  // namespace spile::system

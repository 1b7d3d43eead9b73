#include "platform/system/system_clock.hpp"

#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <string>
#include <vector>

namespace spile::system {

TEST(SystemClock, ShowsTheWallTimeToTheMillisecond)
{
    using std::chrono::floor;
    const SystemClock clock;
    const auto before = floor<Milliseconds>(std::chrono::system_clock::now());
    const Instant now = clock.now();
    const auto after = floor<Milliseconds>(std::chrono::system_clock::now());
    EXPECT_LE(before, now);
    EXPECT_LE(now, after);
}

TEST(SystemClock, CountsFromTheStartOfTheMachine)
{
    // The first number of /proc/uptime is the time since boot in seconds, sleep included.
    double before = 0.0;
    double after = 0.0;
    const SystemClock clock;
    std::ifstream("/proc/uptime") >> before;
    const double seconds = std::chrono::duration<double>(clock.sinceBoot()).count();
    std::ifstream("/proc/uptime") >> after;
    EXPECT_LE(before - 0.02, seconds);  // that file shows hundredths
    EXPECT_LE(seconds, after + 0.02);
}

TEST(SystemClock, NamesTheStartAsLinuxDoesOrByItsTime)
{
    const SystemClock clock;
    std::vector<BootId> right;
    std::string name;
    if (std::ifstream("/proc/sys/kernel/random/boot_id") >> name) {
        right.push_back(bootIdFrom(name));
    } else {
        const auto start = (clock.now().time_since_epoch() - clock.sinceBoot()).count() / 1000;
        right = {bootIdFrom(std::to_string(start)), bootIdFrom(std::to_string(start + 1))};
    }
    EXPECT_THAT(right, testing::Contains(clock.bootId()));
    EXPECT_EQ(clock.bootId(), SystemClock().bootId());
}

TEST(SystemClock, MakesTheIdFromTheStartOfAHash)
{
    // SHA-256 of "abc" begins so: FIPS 180-4, example.
    EXPECT_EQ(bootIdFrom("abc").hex(), "ba7816bf8f01cfea");
}

}  // namespace spile::system

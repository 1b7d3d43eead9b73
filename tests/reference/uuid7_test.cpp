// Source: RFC 9562, appendix A.6 "Example of a UUIDv7 Value": the time, the random fields and the
// id they make. Exact.
#include "core/base/id_source.hpp"
#include "core/base/simulated.hpp"

#include <algorithm>
#include <gtest/gtest.h>

namespace spile {

namespace {

class GivenRandom final : public Random {
public:
    explicit GivenRandom(std::string_view hex) : bytes_(*fromHex(hex)) {}
    void fill(std::span<std::uint8_t> bytes) override
    {
        std::copy_n(bytes_.begin(), bytes.size(), bytes.begin());
    }

private:
    Bytes bytes_;
};

}  // namespace

TEST(Uuid7Source, MatchesTheExampleOfTheRfc)
{
    // rand_a is CC3 and rand_b is 18C4DC0C0C07398F; every bit that the format owns is set.
    GivenRandom random(
        "ffffffffffff"
        "fcc3"
        "d8c4dc0c0c07398f");
    // Tuesday, February 22, 2022 2:22:22.00 PM GMT-05:00
    const SimulatedClock clock(*fromIso("2022-02-22T19:22:22Z"));
    EXPECT_EQ(Uuid7Source(clock, random).next().hex(), "017f22e279b07cc398c4dc0c0c07398f");
}

}  // namespace spile

// Codes for labels that are printed before their barrels are registered.
#include "core/cellar/acts/registering.hpp"
#include "core/scan/barrel_code.hpp"
#include "tests/support/test_device.hpp"

#include <gtest/gtest.h>
#include <set>

namespace spile::cellar {

namespace {

struct SpareCodes : testing::Test {
    support::TestDevice device{77};
    std::unique_ptr<Cellar> cellar =
        *Cellar::create(device.cellarFolder(), device.outside(), {"Test", "7K2Q", "Desk"});
};

}  // namespace

TEST_F(SpareCodes, AreValidAndDifferent)
{
    const auto codes = spareCodes(*cellar, mostSpares);
    ASSERT_TRUE(codes);
    EXPECT_EQ((std::set(codes->begin(), codes->end()).size()), 500U);
    for (const std::string& code : *codes) {
        EXPECT_TRUE(scan::isCode("7K2Q", code)) << code;
    }
}

TEST_F(SpareCodes, AreThoseOfNoBarrel)
{
    const SeededRandom before = device.random;
    const std::string next = spareCodes(*cellar, 1)->front();
    ASSERT_TRUE(registerBarrel(*cellar, {.code = next}));
    device.random = before;  // the code that is taken now would come first again
    EXPECT_NE(spareCodes(*cellar, 1)->front(), next);
}

TEST_F(SpareCodes, AreNotTheSameTwiceInOneSheet)
{
    // A machine whose randomness repeats itself: the second code would be the first.
    struct Repeating final : Random {
        SeededRandom random{3};
        int calls = 0;
        void fill(std::span<std::uint8_t> bytes) override
        {
            constexpr int callsOfTwoCodes = 10;
            if (++calls <= callsOfTwoCodes) {
                random = calls % (callsOfTwoCodes / 2) == 1 ? SeededRandom(3) : random;
            }
            random.fill(bytes);
        }
    } repeating;
    support::TestDevice other{78};
    const auto again = Cellar::create(other.cellarFolder(),
                                      {other.clock, other.files, repeating, other.ids, other.keys},
                                      {"Test", "7K2Q", "Desk"});
    ASSERT_TRUE(again);
    repeating.calls = 0;
    const auto codes = spareCodes(**again, 2);
    ASSERT_TRUE(codes);
    EXPECT_NE(codes->front(), codes->back());
}

TEST_F(SpareCodes, SayTheirRange)
{
    EXPECT_EQ(spareCodes(*cellar, 0).error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(spareCodes(*cellar, 501).error().limit, "1 to 500");
}

}  // namespace spile::cellar

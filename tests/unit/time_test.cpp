#include "core/base/time.hpp"

#include <gtest/gtest.h>

namespace spile {

TEST(IsoTime, WritesAndReadsTheSameMoment)
{
    const auto t = fromIso("2026-03-14T08:05:30Z");
    ASSERT_TRUE(t.has_value());
    EXPECT_EQ(toIsoTime(*t), "2026-03-14T08:05:30Z");
    EXPECT_EQ(toIsoDate(*t), "2026-03-14");
    EXPECT_EQ(fromIso("2026-03-14"), fromIso("2026-03-14T00:00Z"));
}

TEST(IsoTime, WritesMillisecondsOnlyIfThereAreAny)
{
    EXPECT_EQ(toIsoTime(instantFromMs(0)), "1970-01-01T00:00:00Z");
    EXPECT_EQ(toIsoTime(instantFromMs(-1)), "1969-12-31T23:59:59.999Z");
}

TEST(IsoTime, RefusesWhatNoCalendarHas)
{
    for (const char* text : {"", "2026", "2026-3-14", "2026-02-29", "2026-13-01", "2026-03-14T",
                             "2026-03-14T24:00Z", "2026-03-14T08:60Z", "2026-03-14T08:05",
                             "2026-03-14T08:05:61Z", "2026-03-14 08:05Z", "2026-03-14x"}) {
        EXPECT_FALSE(fromIso(text).has_value()) << text;
    }
    EXPECT_TRUE(fromIso("2024-02-29").has_value());
}

}  // namespace spile

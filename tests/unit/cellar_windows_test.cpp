// Windows set by hand: what a beer should taste like.
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/acts/windows.hpp"
#include "core/cellar/queries.hpp"
#include "core/cellar/vocabulary.hpp"
#include "tests/support/small_cellar.hpp"

#include <gtest/gtest.h>

namespace spile::cellar {

namespace {

class Windows : public testing::Test {
protected:
    support::TestDevice device{95};
    std::unique_ptr<Cellar> cellar = device.newCellar();
    support::SmallCellar small = support::fillSmallCellar(*cellar);
    const std::vector<Window> wanted = {{"vanilla", 5, 7}, {"smoke", 2, 4}};

    std::vector<Window> ofBatch() { return *windowsOfBatch(cellar->database(), small.batch); }
    std::vector<Window> ofBarrel() { return *windowsOfBarrel(cellar->database(), small.barrel); }
    std::size_t targets() { return named(cellar->database(), "target", {}, 10)->size(); }
};

}  // namespace

TEST_F(Windows, GiveABatchATargetOfItsOwn)
{
    EXPECT_TRUE(ofBatch().empty());
    EXPECT_TRUE(ofBarrel().empty());
    const auto before = support::entryCount(*cellar);
    ASSERT_TRUE(setWindows(*cellar, small.batch, wanted));
    EXPECT_EQ(ofBatch(), wanted);
    EXPECT_EQ(ofBarrel(), wanted);
    EXPECT_EQ(support::entryCount(*cellar), before + 2) << "the target, and the batch amended";
    EXPECT_EQ(targets(), 1U);
    EXPECT_EQ(named(cellar->database(), "target", {}, 10)->front().name,
              named(cellar->database(), "batch", {}, 10)->front().name);
    EXPECT_EQ((*attributesOf(cellar->database(), small.barrel))[1], "smoke")
        << "sheets ask for them first";
}

TEST_F(Windows, AmendTheTargetThatIsThere)
{
    ASSERT_TRUE(setWindows(*cellar, small.batch, wanted));
    const auto before = support::entryCount(*cellar);
    const std::vector<Window> changed = {{"vanilla", 4, 8}};
    ASSERT_TRUE(setWindows(*cellar, small.batch, changed));
    EXPECT_EQ(ofBarrel(), changed) << "what is left out is cleared";
    EXPECT_EQ(support::entryCount(*cellar), before + 1);
    EXPECT_EQ(targets(), 1U);
    ASSERT_TRUE(setWindows(*cellar, small.batch, changed));
    EXPECT_EQ(support::entryCount(*cellar), before + 1) << "nothing new, nothing recorded";
    ASSERT_TRUE(setWindows(*cellar, small.batch, {}));
    EXPECT_TRUE(ofBarrel().empty());
    ASSERT_TRUE(setWindows(*cellar, small.batch, wanted));
    EXPECT_EQ(ofBarrel(), wanted);
}

TEST_F(Windows, AreSharedByTheBatchesOfATarget)
{
    const SubjectId target = *registerTarget(*cellar, "Round", {{"oak", 4, 6}});
    NewBatch one;
    one.name = "One";
    one.target = target;
    NewBatch two = one;
    two.name = "Two";
    const SubjectId first = *registerBatch(*cellar, one);
    const SubjectId second = *registerBatch(*cellar, two);
    EXPECT_EQ(*windowsOfBatch(cellar->database(), first), (std::vector<Window>{{"oak", 4, 6}}));
    ASSERT_TRUE(setWindows(*cellar, first, wanted));
    EXPECT_EQ(*windowsOfBatch(cellar->database(), second), wanted);
}

TEST_F(Windows, RefuseWhatIsNoRange)
{
    const auto before = support::entryCount(*cellar);
    const auto refused = [&](const std::vector<Window>& windows) {
        const auto set = setWindows(*cellar, small.batch, windows);
        EXPECT_FALSE(set);
        return set ? ErrorCode::Cancelled : set.error().code;
    };
    EXPECT_EQ(refused({{"oak", 6, 5}}), ErrorCode::OutOfRange);
    EXPECT_EQ(refused({{"oak", 0, 5}}), ErrorCode::OutOfRange);
    EXPECT_EQ(refused({{"oak", 5, 10}}), ErrorCode::OutOfRange);
    EXPECT_EQ(refused({{"oak", 4, 5}, {"oak", 6, 7}}), ErrorCode::Conflict);
    EXPECT_EQ(setWindows(*cellar, small.barrel, wanted).error().code, ErrorCode::NotFound);
    EXPECT_TRUE(setWindows(*cellar, small.batch, {{"oak", 5, 5}})) << "one step is a range";
    EXPECT_EQ(support::entryCount(*cellar), before + 2);
}

TEST_F(Windows, GoWithTheDayFile)
{
    ASSERT_TRUE(setWindows(*cellar, small.batch, wanted));
    const Path file = device.folder.path() / "day.spile";
    ASSERT_TRUE(handOut(*cellar, file, {}));
    support::TestDevice other(96);
    EXPECT_EQ(*windowsOfBarrel(other.join(file)->database(), small.barrel), wanted);
}

}  // namespace spile::cellar

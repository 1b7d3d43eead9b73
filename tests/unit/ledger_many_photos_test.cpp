// More photos than one day file has room for.
#include "tests/support/fleet.hpp"

#include <gtest/gtest.h>

namespace spile::cellar {

namespace {

constexpr int photos =
    20'100;  // the members of a ZIP file are 20,000 at most: FORMAT.md, section 4

void recordPhotos(Cellar& cellar, const SubjectId& barrel)
{
    auto change = cellar.ledger().change();
    ASSERT_TRUE(change);
    ledger::NewEntry entry{"of a later version", barrel, {}, {}, {}, {}, {}};
    for (int i = 0; i < photos; ++i) {
        const std::string picture = "picture " + std::to_string(i);
        const auto hash = cellar.ledger().photos().add(asBytes(picture));
        ASSERT_TRUE(hash) << support::textOf(hash.error());
        entry.photos.push_back({*hash, picture.size()});
        if (entry.photos.size() == ledger::photosMax || i + 1 == photos) {
            ASSERT_TRUE(change->record(entry));
            entry.photos.clear();
        }
    }
    ASSERT_TRUE(change->commit());
}

std::int64_t missing(Cellar& cellar)
{
    return *cellar.database().integer(-1, "SELECT count(*) FROM photo WHERE present = 0");
}

}  // namespace

TEST(ManyPhotos, ComeWithTheNextDayFileWhereOneHasNoRoomForThem)
{
    support::Fleet fleet(2);
    recordPhotos(fleet.cellar(0), fleet.small().barrel);
    const Path file = fleet.at(0).folder / "all.spile";
    const auto out = handOut(fleet.cellar(0), file, {});
    ASSERT_TRUE(out) << support::textOf(out.error());
    EXPECT_EQ(out->file.photos + out->file.photosLeft, static_cast<std::uint64_t>(photos));
    EXPECT_GT(out->file.photosLeft, 0U);
    EXPECT_EQ(out->file.missingPhotos, 0U) << "they are here";

    fleet.takeIn(1, file);
    EXPECT_EQ(missing(fleet.cellar(1)), static_cast<std::int64_t>(out->file.photosLeft));
    fleet.takeIn(0, fleet.handOut(1, {}));
    fleet.takeIn(1, fleet.handOut(0, 1));
    EXPECT_EQ(missing(fleet.cellar(1)), 0);
}

}  // namespace spile::cellar

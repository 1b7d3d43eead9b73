// Day files that are strange, but whole.
#include "tests/fault/bad_day_file.hpp"

#include <filesystem>

namespace spile::cellar {

namespace {

using Fault22_OwnDayFile = BadDayFile;
using Fault59_SealedDayFile = BadDayFile;
using Fault64_RenamedDayFile = BadDayFile;

}  // namespace

TEST_F(Fault59_SealedDayFile, OpensWithItsPassphraseOnly)
{
    const Path sealed = phoneDevice.folder.path() / "sealed.spile";
    ASSERT_TRUE(handOut(*phone, sealed, {}, {}, "cold cellar"));
    const auto none = takeIn(*desk, sealed);
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().subject, "passphrase");
    const auto wrong = takeIn(*desk, sealed, {}, "warm cellar");
    ASSERT_FALSE(wrong);
    EXPECT_EQ(wrong.error().subject, "passphrase");
    expectUnchanged();
    const auto taken = takeIn(*desk, sealed, {}, "cold cellar");
    ASSERT_TRUE(taken) << textOf(taken.error());
    EXPECT_EQ(taken->added, 4U);  // three draws and a photo
    EXPECT_TRUE(std::filesystem::is_empty(deskDevice.cellarFolder() / "outbox"));
    EXPECT_TRUE(std::filesystem::is_empty(phoneDevice.cellarFolder() / "outbox"));
    EXPECT_FALSE(handOut(*phone, sealed, {}, {}, "cold cellar"));  // it replaces nothing
}

TEST_F(Fault59_SealedDayFile, IsMadeInTheOutboxToo)
{
    const Path outbox = phoneDevice.cellarFolder() / "outbox";
    const auto made = handOut(*phone, outbox / "sealed.spile", {}, {}, "cold cellar");
    ASSERT_TRUE(made) << textOf(made.error());
    EXPECT_EQ(phoneDevice.files.list(outbox)->size(), 1U);
    EXPECT_TRUE(takeIn(*desk, outbox / "sealed.spile", {}, "cold cellar"));
}

TEST_F(Fault22_OwnDayFile, AddsNothingToItsAuthor)
{
    const auto own = takeIn(*phone, file);
    ASSERT_TRUE(own) << textOf(own.error());
    EXPECT_EQ(own->added, 0U);
    EXPECT_EQ(own->known, own->entries);
}

TEST_F(Fault64_RenamedDayFile, IsTheSame)
{
    const Path renamed = deskDevice.folder.path() / "Copy of day (1).bin";
    std::filesystem::copy_file(file, renamed);
    EXPECT_TRUE(takeIn(*desk, renamed));
    EXPECT_EQ(takeIn(*desk, file)->added, 0U);
}

}  // namespace spile::cellar

// The main job by its acts alone: two phones and a desk, without a screen.
#include "core/cellar/acts/correcting.hpp"
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/acts/filling.hpp"
#include "core/cellar/acts/photographing.hpp"
#include "core/cellar/checking.hpp"
#include "core/cellar/join_code.hpp"
#include "core/cellar/queries.hpp"
#include "core/picture/encode.hpp"
#include "tests/support/test_device.hpp"

#include <gtest/gtest.h>

namespace spile::cellar {

namespace {

Bytes smallPicture()
{
    picture::Image image{8, 8, picture::PixelFormat::Rgb8, std::vector<std::uint8_t>(192, 90)};
    return *picture::encodePng(image);
}

struct MainJob : testing::Test {
    support::TestDevice deskDevice{1};
    support::TestDevice oneDevice{2};
    support::TestDevice twoDevice{3};
    std::unique_ptr<Cellar> desk = deskDevice.newCellar();
    std::unique_ptr<Cellar> one, two;
    SubjectId ada, kim;
    RegisteredBarrel barrel;

    void SetUp() override
    {
        ada = *registerPerson(*desk, "Ada");
        kim = *registerPerson(*desk, "Kim");
        const SubjectId batch = *registerBatch(*desk, {"Night Ferry"});
        barrel = *registerBarrel(
            *desk, {.mark = "Rum 3", .spirit = "rum", .size = litres(190), .fillsBefore = 0});
        ASSERT_TRUE(
            recordFill(*desk, {.barrel = barrel.barrel, .batch = batch, .volume = litres(185)}));
        const Path start = deskDevice.folder.path() / "start.spile";
        ASSERT_TRUE(handOut(*desk, start, {}));
        one = oneDevice.join(start);
        two = twoDevice.join(start);
        twoDevice.clock.pass(std::chrono::minutes(1));  // so that the second phone tastes second
    }

    void tasteOn(Cellar& phone, const SubjectId& person, int vanilla)
    {
        ASSERT_TRUE(recordDraw(
            phone, {.barrel = barrel.barrel, .volume = millilitres(200), .method = "sample hole"}));
        const auto sheet = openSheet(phone, barrel.barrel, person);
        ASSERT_TRUE(sheet);
        ASSERT_TRUE(tapScore(phone, *sheet, "vanilla", vanilla));
        ASSERT_TRUE(tapScore(phone, *sheet, "oak", std::nullopt));
        ASSERT_TRUE(closeSheet(phone, *sheet));
    }

    Path handedOut(Cellar& cellar, support::TestDevice& device, const std::string& name)
    {
        const Path file = device.folder.path() / name;
        const auto handed = handOut(cellar, file, desk->ledger().device());
        EXPECT_TRUE(handed) << handed.error().value;
        return file;
    }
};

}  // namespace

TEST_F(MainJob, EndsWithBothTastingsAndThePhotoAtTheDesk)
{
    tasteOn(*one, ada, 7);
    tasteOn(*two, kim, 5);
    const auto photo = recordPhoto(
        *one, {.barrel = barrel.barrel, .picture = smallPicture(), .purpose = "colour"});
    ASSERT_TRUE(photo) << photo.error().value;
    const Path first = handedOut(*one, oneDevice, "one.spile");
    const Path second = handedOut(*two, twoDevice, "two.spile");

    const auto waiting = takeIn(*desk, second);
    ASSERT_TRUE(waiting) << waiting.error().value;
    EXPECT_EQ(waiting->added, 0U);
    EXPECT_EQ(waiting->waiting, 2U);
    const auto admitted =
        admit(*desk, joinCode(two->ledger().device()), "Phone two", ledger::DeviceRole::Phone);
    ASSERT_TRUE(admitted);
    EXPECT_EQ(admitted->linked, 2U);
    ASSERT_TRUE(
        admit(*desk, joinCode(one->ledger().device()), "Phone one", ledger::DeviceRole::Phone));
    const auto taken = takeIn(*desk, first);
    ASSERT_TRUE(taken) << taken.error().value;
    EXPECT_EQ(taken->added, 3U);
    EXPECT_EQ(taken->photos, 1U);
    EXPECT_EQ(takeIn(*desk, first)->added, 0U);

    const auto history = historyOf(desk->database(), barrel.barrel);
    ASSERT_TRUE(history);
    ASSERT_EQ(history->tastings.size(), 2U);
    EXPECT_EQ(history->tastings[0].person, "Ada");
    EXPECT_EQ(history->tastings[0].scores.at("vanilla"), 7);
    EXPECT_EQ(history->tastings[0].scores.at("oak"), std::nullopt);
    EXPECT_EQ(history->tastings[0].device, "Phone one");
    ASSERT_EQ(history->photos.size(), 1U);
    EXPECT_EQ(history->photos[0].hash, photo->photo.hash);
    EXPECT_TRUE(history->photos[0].here);
    const auto rows = barrelsWithCode(desk->database(), barrel.code);
    ASSERT_EQ(rows->size(), 1U);
    EXPECT_NEAR(inLitres(*rows->front().volume), 184.6, 1e-9);
    EXPECT_EQ(rows->front().beer, "Night Ferry");
    EXPECT_EQ(rows->front().fillNumber, 1);

    const auto report = check(*desk, {});
    ASSERT_TRUE(report) << report.error().value;
    for (const Error& problem : report->problems) {
        ADD_FAILURE() << problem.subject << ": " << problem.value << " " << problem.limit;
    }
    EXPECT_EQ(report->devices, 3U);
}

TEST_F(MainJob, GivesTheSameStateInEitherOrder)
{
    tasteOn(*one, ada, 7);
    tasteOn(*two, kim, 5);
    ASSERT_TRUE(
        admit(*desk, joinCode(one->ledger().device()), "Phone one", ledger::DeviceRole::Phone));
    ASSERT_TRUE(
        admit(*desk, joinCode(two->ledger().device()), "Phone two", ledger::DeviceRole::Phone));
    const Path all = deskDevice.folder.path() / "all.spile";
    ASSERT_TRUE(handOut(*desk, all, {}));
    const Path first = handedOut(*one, oneDevice, "one.spile");
    const Path second = handedOut(*two, twoDevice, "two.spile");

    ASSERT_TRUE(takeIn(*one, all));
    ASSERT_TRUE(takeIn(*one, second));
    ASSERT_TRUE(takeIn(*two, first));
    ASSERT_TRUE(takeIn(*two, all));
    ASSERT_TRUE(takeIn(*desk, second));
    ASSERT_TRUE(takeIn(*desk, first));
    EXPECT_EQ(*stateRoot(*one), *stateRoot(*two));
    EXPECT_EQ(*stateRoot(*one), *stateRoot(*desk));
}

}  // namespace spile::cellar

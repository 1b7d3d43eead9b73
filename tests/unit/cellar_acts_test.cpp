// What each act refuses: the error names the field, the value and what would be right, and
// nothing is saved.
#include "core/base/sha256.hpp"
#include "core/cellar/acts/correcting.hpp"
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/acts/filling.hpp"
#include "core/cellar/acts/flight.hpp"
#include "core/cellar/acts/photographing.hpp"
#include "core/cellar/acts/sheet.hpp"
#include "core/cellar/checking.hpp"
#include "core/cellar/join_code.hpp"
#include "core/cellar/queries.hpp"
#include "tests/support/small_cellar.hpp"

#include <gtest/gtest.h>
#include <limits>

namespace spile::cellar {

namespace {

const SubjectId nobody(std::array<std::uint8_t, 16>{9, 9, 9});
constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();

constexpr std::uint32_t number(Field field) { return static_cast<std::uint32_t>(field); }

class Acts : public testing::Test {
protected:
    support::TestDevice device{71};
    std::unique_ptr<Cellar> cellar = device.newCellar();
    support::SmallCellar small = support::fillSmallCellar(*cellar);
    SubjectId full = small.barrel;
    SubjectId bare = registerBarrel(*cellar, {.mark = "Rum 4"})->barrel;

    template <class Act>
    void expectRefused(ErrorCode code, const std::string& subject, const std::string& value,
                       const std::string& remedy, Act act)
    {
        SCOPED_TRACE(subject + " " + value);
        const Sha256 before = support::storedBytes(device.cellarFolder());
        const auto done = act();
        ASSERT_FALSE(done);
        const Error& error = done.error();
        EXPECT_EQ(error.code, code) << support::textOf(error);
        EXPECT_EQ(error.subject, subject);
        EXPECT_NE(error.value.find(value), std::string::npos) << support::textOf(error);
        EXPECT_NE(error.limit.find(remedy), std::string::npos) << support::textOf(error);
        EXPECT_EQ(support::storedBytes(device.cellarFolder()), before) << "something was saved";
    }

    NewDraw draw(Volume volume) const
    {
        return {.barrel = full, .volume = volume, .method = "sample hole"};
    }
    NewTaste taste(int score) const
    {
        return {
            .barrel = full, .scores = {{"oak", score}}, .circumstance = {.person = small.person}};
    }
};

}  // namespace

TEST_F(Acts, RefuseANameThatIsNone)
{
    using enum ErrorCode;
    expectRefused(Malformed, "name", "nothing", "a value",
                  [&] { return registerPerson(*cellar, ""); });
    expectRefused(OutOfRange, "name", "aaa", "1 to 80 characters",
                  [&] { return registerPerson(*cellar, std::string(81, 'a')); });
    expectRefused(Malformed, "name", "c328", "UTF-8",
                  [&] { return registerPlace(*cellar, "\xc3\x28"); });
    EXPECT_TRUE(registerPerson(*cellar, std::string(80, 'a')));
}

TEST_F(Acts, RefuseABarrelThatCannotBe)
{
    using enum ErrorCode;
    const auto with = [&](const NewBarrel& barrel) {
        return [this, barrel] { return registerBarrel(*cellar, barrel); };
    };
    expectRefused(OutOfRange, "size_ml", "499", "500 to", with({.size = millilitres(499)}));
    expectRefused(NotFinite, "size_ml", "", "", with({.size = litres(notANumber)}));
    expectRefused(OutOfRange, "char_level", "6", "0 to 5", with({.charLevel = 6}));
    expectRefused(OutOfRange, "fills_before", "-1", "0 to 50", with({.fillsBefore = -1}));
    expectRefused(OutOfRange, "mark", "mmm", "24 characters", with({.mark = std::string(25, 'm')}));
    expectRefused(OutOfRange, "tare_g", "99", "100 to", with({.tare = grams(99)}));
    expectRefused(NotFound, "place", nobody.hex(), "registered", with({.place = nobody}));
    expectRefused(NotFound, "batch", nobody.hex(), "registered",
                  with({.fullSince = FullSince{.since = {device.clock.now()}, .batch = nobody}}));
    expectRefused(
        OutOfRange, "volume_ml", "0", "1 to",
        with({.fullSince = FullSince{.since = {device.clock.now()}, .volume = litres(0)}}));
}

TEST_F(Acts, RefuseACodeThatIsWrongOrTaken)
{
    const auto mistyped = registerBarrel(*cellar, {.code = "ABCDEF"});
    ASSERT_FALSE(mistyped);
    EXPECT_EQ(mistyped.error().code, ErrorCode::Malformed);
    const std::string shown = small.code.substr(0, 3) + "-" + small.code.substr(3);
    expectRefused(ErrorCode::Conflict, "code", shown, "no barrel has",
                  [&] { return registerBarrel(*cellar, {.code = small.code}); });
}

TEST_F(Acts, RefuseBatchesAndTargetsOutsideTheirRanges)
{
    using enum ErrorCode;
    expectRefused(OutOfRange, "abv_e2", "8100", "0 to 8000", [&] {
        return registerBatch(*cellar, {.name = "Night Ferry", .alcoholByVolume = 0.81});
    });
    expectRefused(OutOfRange, "sg_e4", "8900", "9000 to 13000", [&] {
        return registerBatch(*cellar, {.name = "Night Ferry", .specificGravity = 0.89});
    });
    expectRefused(NotFound, "target", nobody.hex(), "registered",
                  [&] { return registerBatch(*cellar, {.name = "A", .target = nobody}); });
    expectRefused(OutOfRange, "window of oak", "6 to 5", "low before high", [&] {
        return registerTarget(*cellar, "Round", {{"oak", 6, 5}});
    });
    expectRefused(OutOfRange, "high", "10", "1 to 9", [&] {
        return registerTarget(*cellar, "Round", {{"oak", 1, 10}});
    });
}

TEST_F(Acts, RefuseWhatABarrelsStateForbids)
{
    using enum ErrorCode;
    expectRefused(Conflict, "barrel", "holds beer", "emptied first",
                  [&] { return recordFill(*cellar, {.barrel = full}); });
    expectRefused(Conflict, "barrel", "is empty", "record its fill",
                  [&] { return recordEmpty(*cellar, {.barrel = bare}); });
    expectRefused(Conflict, "barrel", "is empty", "record its fill", [&] {
        return recordDraw(*cellar, {.barrel = bare, .volume = litres(1), .method = "valve"});
    });
    expectRefused(Conflict, "barrel", "is empty", "record its fill", [&] {
        return recordGauge(*cellar, {.barrel = bare, .volume = litres(1), .method = "dip"});
    });
    expectRefused(Conflict, "barrel", "is empty", "record its fill",
                  [&] { return recordVerdict(*cellar, {.barrel = bare, .verdict = "hold"}); });
    expectRefused(Conflict, "barrel", "is empty", "record its fill", [&] {
        return beginFlight(*cellar, {.glasses = {{101, full}, {102, bare}}});
    });
}

TEST_F(Acts, RefuseSubjectsThatAreNotRegistered)
{
    using enum ErrorCode;
    expectRefused(NotFound, "barrel", nobody.hex(), "registered",
                  [&] { return recordFill(*cellar, {.barrel = nobody}); });
    expectRefused(NotFound, "barrel", nobody.hex(), "registered",
                  [&] { return recordCheck(*cellar, {.barrel = nobody, .finding = "dry"}); });
    expectRefused(NotFound, "batch", nobody.hex(), "registered",
                  [&] { return recordFill(*cellar, {.barrel = bare, .batch = nobody}); });
    expectRefused(NotFound, "place", nobody.hex(), "registered",
                  [&] { return recordMove(*cellar, full, nobody); });
    expectRefused(NotFound, "person", nobody.hex(), "registered", [&] {
        return recordCheck(*cellar,
                           {.barrel = full, .finding = "dry", .circumstance = {.person = nobody}});
    });
    expectRefused(NotFound, "person", nobody.hex(), "registered",
                  [&] { return openSheet(*cellar, full, nobody); });
    expectRefused(NotFound, "barrel", nobody.hex(), "registered",
                  [&] { return openSheet(*cellar, nobody, small.person); });
    // A batch is no barrel, though its id is known.
    expectRefused(NotFound, "barrel", small.batch.hex(), "registered",
                  [&] { return recordFill(*cellar, {.barrel = small.batch}); });
}

TEST_F(Acts, RefuseADrawOfMoreThanThereIs)
{
    using enum ErrorCode;
    expectRefused(OutOfRange, "volume", "190.01 L", "190.00 L it holds; gauge it",
                  [&] { return recordDraw(*cellar, draw(litres(190.01))); });
    expectRefused(OutOfRange, "volume_ml", "0", "1 to",
                  [&] { return recordDraw(*cellar, draw(litres(0))); });
    expectRefused(Malformed, "draw_method", "nothing", "a value", [&] {
        return recordDraw(*cellar, {.barrel = full, .volume = litres(1), .method = ""});
    });
    EXPECT_TRUE(recordDraw(*cellar, draw(litres(190))));
}

TEST_F(Acts, RefuseMeasurementsOutsideTheirRanges)
{
    using enum ErrorCode;
    expectRefused(Malformed, "reading", "nothing", "gravity, pH",
                  [&] { return recordReading(*cellar, {.barrel = full}); });
    expectRefused(OutOfRange, "ph_e2", "1001", "100 to 1000",
                  [&] { return recordReading(*cellar, {.barrel = full, .ph = 10.01}); });
    expectRefused(OutOfRange, "temp_mc", "100001", "-20000 to 100000", [&] {
        return recordReading(*cellar, {.barrel = full, .temperature = celsius(100.001)});
    });
    expectRefused(NotFinite, "sg_e4", "", "", [&] {
        return recordReading(*cellar, {.barrel = full, .specificGravity = notANumber});
    });
    expectRefused(OutOfRange, "dip_mm", "5001", "0 to 5000", [&] {
        return recordGauge(
            *cellar,
            {.barrel = full, .volume = litres(1), .method = "dip", .dip = millimetres(5001)});
    });
    expectRefused(Malformed, "verdict", "maybe", "hold, ready",
                  [&] { return recordVerdict(*cellar, {.barrel = full, .verdict = "maybe"}); });
    expectRefused(Malformed, "finding", "nothing", "a value",
                  [&] { return recordCheck(*cellar, {.barrel = full, .finding = ""}); });
}

TEST_F(Acts, RefuseATastingOutsideTheLadderOrWithoutATaster)
{
    using enum ErrorCode;
    expectRefused(OutOfRange, "score", "10", "1 to 9",
                  [&] { return recordTaste(*cellar, taste(10)); });
    expectRefused(OutOfRange, "score", "0", "1 to 9",
                  [&] { return recordTaste(*cellar, taste(0)); });
    NewTaste faulty = taste(5);
    faulty.faults["acetic"] = 0;
    expectRefused(OutOfRange, "strength", "0", "1 to 9",
                  [&] { return recordTaste(*cellar, faulty); });
    NewTaste unliked = taste(5);
    unliked.liking = 0;
    expectRefused(OutOfRange, "liking", "0", "1 to 9",
                  [&] { return recordTaste(*cellar, unliked); });
    NewTaste anonymous = taste(5);
    anonymous.circumstance.person = {};
    expectRefused(Malformed, "person", "nothing", "a value",
                  [&] { return recordTaste(*cellar, anonymous); });
    expectRefused(OutOfRange, "glasses", "0", "1 to 60 rows",
                  [&] { return beginFlight(*cellar, {.name = "Monday"}); });
}

TEST_F(Acts, RefuseAPictureThatIsNone)
{
    const Sha256 before = support::storedBytes(device.cellarFolder());
    const Bytes picture = {1, 2, 3};
    EXPECT_FALSE(recordPhoto(*cellar, {.barrel = full, .picture = picture, .purpose = "colour"}));
    const Bytes good = support::smallPicture();
    EXPECT_FALSE(recordPhoto(*cellar, {.barrel = full, .picture = good, .purpose = ""}));
    EXPECT_FALSE(recordPhoto(*cellar, {.barrel = nobody, .picture = good, .purpose = "colour"}));
    EXPECT_EQ(support::storedBytes(device.cellarFolder()), before);
}

TEST_F(Acts, RefuseCorrectionsThatMakeNoSense)
{
    using enum ErrorCode;
    const EntryId made = *recordDraw(*cellar, draw(litres(1)));
    const EntryId note = *amend(*cellar, made, {{number(Field::Note), "spilt"}});
    const EntryId unknown(std::array<std::uint8_t, 32>{1});
    const ledger::Fields oneLitre = {{number(Field::VolumeMl), std::int64_t{1000}}};
    expectRefused(NotFound, "record", unknown.hex(), "in the cellar",
                  [&] { return amend(*cellar, unknown, oneLitre); });
    expectRefused(NotFound, "record", unknown.hex(), "in the cellar",
                  [&] { return voidEntry(*cellar, unknown); });
    expectRefused(Malformed, "amend", "amend", "can be corrected",
                  [&] { return amend(*cellar, note, oneLitre); });
    expectRefused(Malformed, "amend", "draw", "and a field",
                  [&] { return amend(*cellar, made, {}); });
    expectRefused(Malformed, "draw", "field 30", "this kind has", [&] {
        return amend(*cellar, made, {{number(Field::MassG), std::int64_t{1}}});
    });
    expectRefused(Malformed, "volume_ml", "nothing", "a value", [&] {
        return amend(*cellar, made, {{number(Field::VolumeMl), ledger::Value()}});
    });
    expectRefused(OutOfRange, "volume_ml", "0", "1 to", [&] {
        return amend(*cellar, made, {{number(Field::VolumeMl), std::int64_t{0}}});
    });
    expectRefused(Malformed, "volume_ml", "another type", "", [&] {
        return amend(*cellar, made, {{number(Field::VolumeMl), "a litre"}});
    });
    for (const char* kind : {"genesis", "device"}) {
        const auto first =
            cellar->database().first([](const ledger::Row& row) { return row.id<EntryId>(0); },
                                     "SELECT id FROM entry WHERE kind = ?", kind);
        expectRefused(Conflict, "void", kind, "cellar's work",
                      [&] { return voidEntry(*cellar, **first); });
        expectRefused(Malformed, "amend", kind, "can be corrected", [&] {
            return amend(*cellar, **first, {{number(Field::Name), "Other"}});
        });
    }
}

TEST_F(Acts, RefuseDevicesThatCannotBeAdmitted)
{
    using enum ErrorCode;
    const auto admitted = [&](Cellar& at, const std::string& code) {
        return [&at, code] { return admit(at, code, "Phone", ledger::DeviceRole::Phone); };
    };
    const DeviceId phone(std::array<std::uint8_t, 16>{5});
    std::string mistyped = joinCode(phone);
    mistyped[0] = mistyped[0] == '0' ? '1' : '0';
    expectRefused(Malformed, "join code", mistyped, "28 characters", admitted(*cellar, mistyped));
    ASSERT_TRUE(admitted(*cellar, joinCode(phone))());
    expectRefused(Conflict, "device", phone.hex().substr(0, 8), "admitted already",
                  admitted(*cellar, joinCode(phone)));

    support::TestDevice other(72);
    const Path day = device.folder.path() / "day.spile";
    ASSERT_TRUE(handOut(*cellar, day, {}));
    const auto joined = other.join(day);
    const auto refused = admitted(*joined, joinCode(DeviceId(std::array<std::uint8_t, 16>{6})))();
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, Conflict);
    EXPECT_EQ(refused.error().limit, "admit it at a desk");
}

TEST_F(Acts, RegisterABarrelThatHasBeenFullSinceSomeMonth)
{
    const Instant august = *fromIso("2025-08-01");
    const auto made = registerBarrel(
        *cellar,
        {.mark = "Rum 9",
         .fillsBefore = 2,
         .fullSince = FullSince{
             .since = {august, 120}, .precision = DatePrecision::Month, .batch = small.batch}});
    ASSERT_TRUE(made);
    const auto row = barrelsWithCode(cellar->database(), made->code)->front();
    EXPECT_TRUE(row.filled);
    EXPECT_EQ(row.filledAt, august);
    EXPECT_EQ(row.filledPrecision, DatePrecision::Month);
    EXPECT_EQ(row.beer, "Night Ferry");
    EXPECT_EQ(row.volume, std::nullopt);  // not invented
    EXPECT_EQ(row.fillNumber, 3);
    EXPECT_EQ(row.nextStep, "taste");  // too late to look for leaks, so the first tasting
    EXPECT_EQ(row.due, august + std::chrono::days(182));
    // Without a known volume a draw is taken at its word.
    EXPECT_TRUE(
        recordDraw(*cellar, {.barrel = made->barrel, .volume = litres(500), .method = "valve"}));
    EXPECT_FALSE(recordFill(*cellar, {.barrel = made->barrel}));
}

}  // namespace spile::cellar

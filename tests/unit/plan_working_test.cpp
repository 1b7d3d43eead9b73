// Work sheets are worked through: what is kept, what follows, what is recorded, and that timers
// keep real time.
#include "core/cellar/acts/filling.hpp"
#include "core/cellar/acts/tending.hpp"
#include "core/plan/asks.hpp"
#include "core/plan/working.hpp"
#include "tests/support/small_cellar.hpp"

#include <fstream>
#include <gmock/gmock.h>
#include <sstream>

namespace spile::plan {

using std::chrono::minutes;
using std::chrono::seconds;
using support::TestDevice;
using testing::ElementsAre;

namespace {

Sheet shipped(const std::string& name)
{
    std::ifstream in(std::string(SPILE_SOURCE_DIR) + "/assets/sheets/" + name + ".sheet");
    std::stringstream text;
    text << in.rdbuf();
    return parseSheet(text.str()).value();
}

cellar::WorkValue number(std::int64_t value) { return {value, {}}; }
cellar::WorkValue word(const std::string& text) { return {{}, text}; }

struct Bench {
    TestDevice device{41};
    std::unique_ptr<cellar::Cellar> cellar = device.newCellar();
    SubjectId person = cellar::registerPerson(*cellar, "Jo").value();
    SubjectId barrel = registered();

    SubjectId registered() const
    {
        cellar::NewBarrel fresh;
        fresh.mark = "Rum 9";
        fresh.size = usGallons(53);
        fresh.emptied = device.clock.now() - std::chrono::days(40);
        return cellar::registerBarrel(*cellar, fresh).value().barrel;
    }
    SubjectId begin(const Sheet& sheet) const
    {
        return cellar::beginWork(*cellar, sheet.name, sheet.steps.front().name, barrel, person)
            .value();
    }
    void keep(const SubjectId& run, const std::string& name, const cellar::WorkValue& value) const
    {
        ASSERT_TRUE(cellar::keepValue(*cellar, run, name, value).has_value()) << name;
    }
    void tickAll(const SubjectId& run, const Step& step) const
    {
        for (const Tick& tick : step.ticks) {
            keep(run, tick.name, number(1));
        }
    }
    // Ticks, fills in with the usual numbers and first words, and ends each step; says what failed.
    std::string workThrough(const Sheet& sheet, const SubjectId& run,
                            const std::map<std::string, std::string>& words = {}) const
    {
        for (int guard = 0; guard < 30; ++guard) {
            const auto work = cellar::readWork(*cellar, run);
            if (!work) {
                return "not open";
            }
            const Step& step = *findStep(sheet, work->step);
            tickAll(run, step);
            fillIn(run, step, words);
            const auto finished = finishStep(*cellar, sheet, run, {});
            if (!finished) {
                return step.name + ": " + support::textOf(finished.error());
            }
            if (finished->nextStep.empty()) {
                return "";
            }
        }
        return "it does not end";
    }
    void fillIn(const SubjectId& run, const Step& step,
                const std::map<std::string, std::string>& words) const
    {
        for (const Part& part : step.asks) {
            const AskSpec& ask = *findAsk(part.name);
            const auto given = words.find(part.name);
            if (ask.kind == AskKind::Number) {
                keep(run, part.name, number(ask.usual));
            } else if (given != words.end()) {
                keep(run, part.name, word(given->second));
            } else if (!ask.words.empty()) {
                keep(run, part.name, word(std::string(ask.words.front())));
            }
        }
    }
    [[nodiscard]] cellar::BarrelHistory history() const
    {
        return cellar::historyOf(cellar->database(), barrel).value();
    }
};

}  // namespace

TEST(WorkThrough, FillingRecordsFillReadingAndFirstLook)
{
    Bench bench;
    const Sheet fill = shipped("fill");
    const std::int64_t before = support::entryCount(*bench.cellar);
    EXPECT_EQ(bench.workThrough(fill, bench.begin(fill), {{"batch", "Night Ferry"}}), "");
    const auto history = bench.history();
    ASSERT_EQ(history.fills.size(), 1U);
    EXPECT_EQ(history.fills[0].beer, "Night Ferry");
    EXPECT_DOUBLE_EQ(inLitres(history.fills[0].volume.value()), 200);
    EXPECT_DOUBLE_EQ(history.fills[0].alcoholByVolume.value(), 0.10);
    ASSERT_EQ(history.readings.size(), 1U);
    EXPECT_EQ(history.readings[0].hydrometerReference, celsius(20));
    EXPECT_EQ(history.readings[0].sampleTemperature, celsius(20));
    cellar::ReadingRow warm = history.readings[0];
    warm.sampleTemperature = celsius(25);
    EXPECT_EQ(gravityAt20(history.readings[0]), warm.specificGravity);
    EXPECT_GT(gravityAt20(warm).value(), warm.specificGravity.value() + 0.0009);
    ASSERT_EQ(history.others.size(), 1U);
    EXPECT_EQ(history.others[0].text, "dry");
    // Each step is an entry, with its facts: 10 steps, a batch, a fill, a reading and a check.
    EXPECT_EQ(support::entryCount(*bench.cellar) - before,
              static_cast<std::int64_t>(fill.steps.size()) + 4);
    EXPECT_TRUE(cellar::openWork(*bench.cellar).value().empty());
    EXPECT_EQ(support::problemsOf(*bench.cellar), "");
}

TEST(WorkThrough, EverySheetComesToItsEnd)
{
    for (const char* name : {"receive", "swell", "purge", "fill", "leaks", "gauge", "sample_hole",
                             "syringe", "top_up"}) {
        SCOPED_TRACE(name);
        Bench bench;
        const Sheet sheet = shipped(name);
        if (sheet.barrels == SheetFor::Full) {
            const Sheet fill = shipped("fill");
            ASSERT_EQ(bench.workThrough(fill, bench.begin(fill)), "");
        }
        EXPECT_EQ(bench.workThrough(sheet, bench.begin(sheet), {{"repair", "waxed"}}), "");
    }
    Bench bench;
    const Sheet between = shipped("between");
    EXPECT_EQ(bench.workThrough(between, bench.begin(between)), "");
    EXPECT_EQ(bench.workThrough(between, bench.begin(between), {{"next_use", "re-wet and store"}}),
              "");
}

TEST(WorkThrough, GaugesByWeightDipMeterAndNail)
{
    Bench bench;
    const Sheet fill = shipped("fill");
    ASSERT_EQ(bench.workThrough(fill, bench.begin(fill)), "");
    const Sheet gauge = shipped("gauge");
    for (const char* way : {"weight", "dip", "meter", "nail"}) {
        ASSERT_EQ(bench.workThrough(gauge, bench.begin(gauge), {{"gauge_way", way}}), "") << way;
    }
    const auto gauges = bench.history().gauges;
    ASSERT_EQ(gauges.size(), 4U);
    // 200 kg net at the gravity that was read, 1.0200: conventional weighing, 196.6 L.
    EXPECT_NEAR(inLitres(gauges[0].volume), 196.6, 0.2);
    EXPECT_NEAR(inLitres(gauges[1].volume), 195.0, 0.2);  // a dip of 550 mm
    EXPECT_NEAR(inLitres(gauges[2].volume), 200, 1e-9);
    EXPECT_EQ(gauges[3].bound, cellar::Bound::AtLeast);
    // A bound does not say what it holds: the meter's volume stands.
    const auto row = cellar::barrelById(bench.cellar->database(), bench.barrel).value();
    EXPECT_NEAR(inLitres(row->volume.value()), 200, 1e-9);
}

TEST(WorkThrough, TapeAndScaleBecomeTheBarrelsMeasures)
{
    Bench bench;
    const Sheet receive = shipped("receive");
    ASSERT_EQ(bench.workThrough(receive, bench.begin(receive)), "");
    const auto measures = cellar::measuresOf(bench.cellar->database(), bench.barrel).value();
    EXPECT_EQ(measures.tare, kilograms(50));
    EXPECT_EQ(measures.stave, millimetres(26));
    ASSERT_TRUE(measures.bilge.has_value());
    EXPECT_NEAR(inMillimetres(*measures.bilge), 2080 / 3.14159265 - 2 * 26, 1);
}

TEST(FinishStep, WantsEverythingFilledInAndSavesNothingElse)
{
    Bench bench;
    const Sheet fill = shipped("fill");
    const SubjectId run = bench.begin(fill);
    const std::int64_t before = support::entryCount(*bench.cellar);
    const auto early = finishStep(*bench.cellar, fill, run, {});
    ASSERT_FALSE(early.has_value());
    EXPECT_EQ(early.error().subject, "gravity_still");
    EXPECT_EQ(support::entryCount(*bench.cellar), before);
    EXPECT_EQ(cellar::readWork(*bench.cellar, run)->step, "fit");
}

TEST(FinishStep, SkipsWithAReasonAndRecordsNoFact)
{
    Bench bench;
    const Sheet receive = shipped("receive");
    const SubjectId run = bench.begin(receive);
    const auto silent = finishStep(*bench.cellar, receive, run, {cellar::outcome::skipped, "", {}});
    ASSERT_FALSE(silent.has_value());
    EXPECT_EQ(silent.error().subject, "reason");
    ASSERT_TRUE(
        finishStep(*bench.cellar, receive, run, {cellar::outcome::skipped, "done before", {}})
            .has_value());
    const auto others = bench.history().others;
    ASSERT_EQ(others.size(), 1U);  // no check, but that a step was skipped
    EXPECT_EQ(others[0].kind, "sheet_step");
    EXPECT_EQ(others[0].text, "receive\nskipped\ndone before");
    EXPECT_EQ(cellar::readWork(*bench.cellar, run)->step, "smell");
}

TEST(FinishStep, LeavesStepsOutWhoseConditionDoesNotHold)
{
    Bench bench;
    const Sheet fill = shipped("fill");
    ASSERT_EQ(bench.workThrough(fill, bench.begin(fill)), "");
    const Sheet leaks = shipped("leaks");
    const SubjectId run = bench.begin(leaks);
    bench.tickAll(run, leaks.steps.front());
    bench.keep(run, "finding", word("dry"));
    EXPECT_EQ(finishStep(*bench.cellar, leaks, run, {})->nextStep, "bung");
    const SubjectId other = bench.begin(leaks);
    bench.tickAll(other, leaks.steps.front());
    bench.keep(other, "finding", word("weeping stave"));
    EXPECT_EQ(finishStep(*bench.cellar, leaks, other, {})->nextStep, "repair");
}

TEST(OpenWork, KeepsValuesStepAndTimerOverARestart)
{
    Bench bench;
    const Sheet swell = shipped("swell");
    const SubjectId run = bench.begin(swell);
    bench.keep(run, "hoops_tight", number(1));
    bench.keep(run, "note", word("slow"));
    const auto timer = cellar::startTimer(*bench.cellar, run, minutes(30)).value();
    bench.cellar.reset();
    bench.cellar = bench.device.reopen();
    const auto work = cellar::openWork(*bench.cellar).value();
    ASSERT_EQ(work.size(), 1U);
    EXPECT_EQ(work[0].run, run);
    EXPECT_EQ(work[0].step, "hoops");
    EXPECT_EQ(work[0].timer, timer);
    EXPECT_EQ(work[0].values.at("hoops_tight"), number(1));
    EXPECT_EQ(work[0].values.at("note"), word("slow"));
}

TEST(OpenWork, RecordsRealTimeThoughTheWallClockIsSet)
{
    Bench bench;
    const Sheet swell = shipped("swell");
    const SubjectId run = bench.begin(swell);
    bench.keep(run, "hoops_tight", number(1));
    ASSERT_TRUE(finishStep(*bench.cellar, swell, run, {}).has_value());
    ASSERT_TRUE(cellar::startTimer(*bench.cellar, run, minutes(30)).has_value());
    bench.device.clock.pass(minutes(10));
    bench.device.clock.setWall(bench.device.clock.now() + std::chrono::hours(5));
    ASSERT_TRUE(
        finishStep(*bench.cellar, swell, run, {cellar::outcome::early, {}, {}}).has_value());
    const auto elapsed = bench.cellar->database().integer(
        -1, "SELECT elapsed_s FROM state_sheet_step WHERE step = 'upper_head'");
    EXPECT_EQ(elapsed.value(), 600);
    EXPECT_FALSE(cellar::readWork(*bench.cellar, run)->timer.has_value());
}

TEST(OpenWork, PausesATimerThatMeasuresWhatStops)
{
    Bench bench;
    const Sheet purge = shipped("purge");
    const SubjectId run = bench.begin(purge);
    ASSERT_TRUE(cellar::startTimer(*bench.cellar, run, minutes(10)).has_value());
    bench.device.clock.pass(minutes(4));
    ASSERT_TRUE(cellar::stopWork(*bench.cellar, run, true).has_value());
    bench.device.clock.pass(minutes(60));
    const auto stopped = cellar::readWork(*bench.cellar, run).value();
    EXPECT_TRUE(stopped.stopped);
    EXPECT_EQ(stopped.timer->pausedLeft, Milliseconds(minutes(6)));
    ASSERT_TRUE(cellar::goOnWithWork(*bench.cellar, run).has_value());
    const auto going = cellar::readWork(*bench.cellar, run).value();
    EXPECT_FALSE(going.timer->pausedLeft.has_value());
    EXPECT_EQ(going.timer->bootEnd - bench.device.clock.sinceBoot(), Milliseconds(minutes(6)));
}

TEST(OpenWork, RefusesWhatIsNotOpen)
{
    Bench bench;
    const SubjectId nobody = bench.device.ids.next();
    EXPECT_EQ(cellar::readWork(*bench.cellar, nobody).error().code, ErrorCode::NotFound);
    EXPECT_EQ(cellar::keepValue(*bench.cellar, nobody, "a", number(1)).error().code,
              ErrorCode::NotFound);
    EXPECT_EQ(cellar::startTimer(*bench.cellar, nobody, seconds(1)).error().code,
              ErrorCode::NotFound);
    EXPECT_EQ(cellar::giveUpWork(*bench.cellar, nobody).error().code, ErrorCode::NotFound);
}

TEST(Tending, RecordsTopUpsDosesRepairsAndClimate)
{
    Bench bench;
    const Sheet fill = shipped("fill");
    ASSERT_EQ(bench.workThrough(fill, bench.begin(fill)), "");
    ASSERT_TRUE(
        cellar::recordTopUp(*bench.cellar, {bench.barrel, litres(3), "the same"}).has_value());
    const auto row = cellar::barrelById(bench.cellar->database(), bench.barrel).value();
    EXPECT_NEAR(inLitres(row->volume.value()), 203, 1e-9);
    EXPECT_FALSE(cellar::recordDose(*bench.cellar, {bench.barrel, "spirit", litres(1), litres(2)})
                     .has_value());
    EXPECT_TRUE(cellar::recordRepair(*bench.cellar, {bench.barrel, "waxed"}).has_value());
    const SubjectId place = cellar::registerPlace(*bench.cellar, "Cave").value();
    ASSERT_TRUE(cellar::recordClimate(*bench.cellar, {place, celsius(12.5), 0.85}).has_value());
    const auto climates = cellar::climatesOf(bench.cellar->database(), place).value();
    ASSERT_EQ(climates.size(), 1U);
    EXPECT_DOUBLE_EQ(inCelsius(climates[0].temperature), 12.5);
    EXPECT_DOUBLE_EQ(climates[0].relativeHumidity, 0.85);
}

}  // namespace spile::plan

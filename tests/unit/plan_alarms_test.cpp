// What is asked about, and what is not.
#include "core/liquor/extract.hpp"
#include "core/liquor/mixing.hpp"
#include "core/plan/alarms.hpp"

#include <algorithm>
#include <gtest/gtest.h>

namespace spile::plan {

namespace {

using std::chrono::days;
using std::chrono::weeks;

const Instant filled = *fromIso("2025-03-01T10:00Z");

// A barrel of 200 L that was filled with beer of 1.020 and 11 % and never looked at since.
WorkFacts fullBarrel(int fillNumber)
{
    WorkFacts facts;
    facts.barrel.filled = true;
    facts.barrel.filledAt = filled;
    facts.barrel.fillNumber = fillNumber;
    facts.barrel.size = litres(200);
    facts.barrel.volume = litres(200);
    cellar::FillRow fill;
    fill.at = filled;
    fill.volume = litres(200);
    fill.specificGravity = 1.020;
    fill.alcoholByVolume = 0.11;
    facts.history.fills.push_back(fill);
    facts.now = filled + weeks(20);
    return facts;
}

void read(WorkFacts& facts, std::chrono::weeks after, double gravity, std::optional<double> ph = {})
{
    cellar::ReadingRow reading;
    reading.at = filled + after;
    reading.specificGravity = gravity;
    reading.ph = ph;
    facts.history.readings.push_back(reading);
}

void tasted(WorkFacts& facts, Instant at, const std::map<std::string, std::int64_t>& faults)
{
    cellar::TasteRow taste;
    taste.at = at;
    taste.faults = faults;
    facts.history.tastings.push_back(taste);
}

void found(WorkFacts& facts, const char* kind, const char* text, Instant at)
{
    cellar::OtherRow other;
    other.kind = kind;
    other.text = text;
    other.at = at;
    facts.history.others.push_back(other);
}

const Alarm* alarmOf(const std::vector<Alarm>& alarms, AlarmKind kind)
{
    const auto it = std::find_if(alarms.begin(), alarms.end(),
                                 [&](const Alarm& alarm) { return alarm.kind == kind; });
    return it == alarms.end() ? nullptr : &*it;
}

bool raises(const WorkFacts& facts, AlarmKind kind)
{
    const auto alarms = alarmsOf(facts, nullptr);
    return alarmOf(alarms, kind) != nullptr;
}

// The gravity of 200 L of such a beer after 4 L of 60 % have come back out of the wood.
double afterSpirit()
{
    const auto beer = liquor::strengthByAlcohol(1.020, 0.11);
    const auto before = liquor::liquorOf(litres(200), 0.11, beer->realExtract);
    const auto spirit = liquor::liquorOf(litres(4), 0.6, 0);
    return liquor::describe(*before + *spirit)->specificGravity;
}

}  // namespace

TEST(Alarms, ASoundBarrelRaisesNone)
{
    WorkFacts facts = fullBarrel(1);
    read(facts, weeks(18), 1.020);
    EXPECT_TRUE(alarmsOf(facts, nullptr).empty());
    facts.barrel.filled = false;
    EXPECT_TRUE(alarmsOf(facts, nullptr).empty());
}

TEST(Alarms, SpiritGivenBackIsNoFermentationOnAFirstFillAndTheSameFallIsOneOnAThird)
{
    const double fallen = afterSpirit();
    EXPECT_LT(fallen, 1.0185);
    for (const int fill : {1, 3}) {
        WorkFacts facts = fullBarrel(fill);
        read(facts, weeks(6), (1.020 + fallen) / 2);
        read(facts, weeks(12), fallen);
        read(facts, weeks(18), fallen);
        EXPECT_EQ(raises(facts, AlarmKind::Referments), fill == 3) << fill;
        EXPECT_FALSE(raises(facts, AlarmKind::GravityFalls));
    }
}

TEST(Alarms, AFallAfterTheEighthWeekIsOneOnAFirstFillToo)
{
    WorkFacts facts = fullBarrel(1);
    read(facts, weeks(9), 1.0185);
    read(facts, weeks(18), 1.0120);
    const auto alarms = alarmsOf(facts, nullptr);
    const Alarm* const alarm = alarmOf(alarms, AlarmKind::Referments);
    ASSERT_NE(alarm, nullptr);
    EXPECT_DOUBLE_EQ(alarm->before, 1.0185);
    EXPECT_DOUBLE_EQ(alarm->now, 1.0120);
    EXPECT_LT(alarm->limit, 1.0185);
    EXPECT_GT(alarm->limit, 1.0120);
}

TEST(Alarms, BeforeTheEighthWeekOnlyAGrowingFallIs)
{
    WorkFacts steady = fullBarrel(1);
    read(steady, weeks(2), 1.0190);
    read(steady, weeks(4), 1.0180);
    read(steady, weeks(6), 1.0175);
    EXPECT_FALSE(raises(steady, AlarmKind::GravityFalls));
    WorkFacts growing = fullBarrel(1);
    read(growing, weeks(2), 1.0195);
    read(growing, weeks(4), 1.0180);
    read(growing, weeks(6), 1.0140);
    EXPECT_TRUE(raises(growing, AlarmKind::GravityFalls));
    WorkFacts withPh = fullBarrel(1);
    read(withPh, weeks(2), 1.0190, 4.4);
    read(withPh, weeks(4), 1.0175, 4.2);
    EXPECT_TRUE(raises(withPh, AlarmKind::GravityFalls));
}

TEST(Alarms, WhatWasMixedInBeginsTheReadingsAnew)
{
    WorkFacts facts = fullBarrel(3);
    read(facts, weeks(4), 1.020);
    cellar::DoseRow water;
    water.at = filled + weeks(5);
    water.substance = "water";
    water.volume = litres(10);
    facts.history.doses.push_back(water);
    read(facts, weeks(14), 1.019 - 0.002);
    EXPECT_FALSE(raises(facts, AlarmKind::Referments));
}

TEST(Alarms, APhThatFallsIsAskedAbout)
{
    WorkFacts facts = fullBarrel(2);
    read(facts, weeks(1), 1.020, 4.40);
    read(facts, weeks(18), 1.020, 4.25);
    EXPECT_FALSE(raises(facts, AlarmKind::PhFalls));
    facts.history.readings.back().ph = 4.15;
    EXPECT_TRUE(raises(facts, AlarmKind::PhFalls));
}

TEST(Alarms, FaultsOfTheLastSittingAre)
{
    WorkFacts facts = fullBarrel(2);
    tasted(facts, filled + weeks(10), {{"vinegar", 6}});
    EXPECT_TRUE(raises(facts, AlarmKind::SourFault));
    tasted(facts, filled + weeks(14), {{"wet cardboard", 2}});
    EXPECT_FALSE(raises(facts, AlarmKind::SourFault));
    EXPECT_FALSE(raises(facts, AlarmKind::Oxidised)) << "too faint";
    tasted(facts, filled + weeks(18), {{"wet cardboard", 5}, {"butter", 7}});
    const auto alarms = alarmsOf(facts, nullptr);
    ASSERT_EQ(alarms.size(), 1U);
    EXPECT_EQ(alarms.front().kind, AlarmKind::Oxidised);
    EXPECT_EQ(alarms.front().word, "wet cardboard");
}

TEST(Alarms, AnUnsoundLookIsUntilItIsMended)
{
    WorkFacts facts = fullBarrel(2);
    found(facts, "check", "weeping stave", filled + weeks(17));
    EXPECT_TRUE(raises(facts, AlarmKind::Unsound));
    found(facts, "repair", "nothing yet", filled + weeks(18));
    EXPECT_TRUE(raises(facts, AlarmKind::Unsound));
    found(facts, "repair", "peg driven", filled + weeks(18));
    EXPECT_FALSE(raises(facts, AlarmKind::Unsound));
}

TEST(Alarms, AGaugeFarBelowWhatEvaporationExplainsIsALeak)
{
    WorkFacts facts = fullBarrel(2);
    cellar::GaugeRow gauge;
    gauge.method = "weight";
    gauge.at = filled + weeks(16);
    gauge.volume = litres(165);
    facts.history.gauges.push_back(gauge);
    const auto alarms = alarmsOf(facts, nullptr);
    const Alarm* const leak = alarmOf(alarms, AlarmKind::Leaks);
    ASSERT_NE(leak, nullptr);
    EXPECT_GT(leak->now, leak->limit);
    facts.history.gauges.back().volume = litres(193);
    EXPECT_FALSE(raises(facts, AlarmKind::Leaks));
}

TEST(Alarms, ABarrelThatNobodyLookedAtForFiveMonthsIsSilent)
{
    WorkFacts facts = fullBarrel(2);
    facts.now = filled + days(150);
    EXPECT_FALSE(raises(facts, AlarmKind::Silent));
    facts.now = filled + days(160);
    EXPECT_TRUE(raises(facts, AlarmKind::Silent));
    tasted(facts, filled + days(100), {});
    EXPECT_FALSE(raises(facts, AlarmKind::Silent));
}

TEST(Alarms, WhatWasForeseenIsCompared)
{
    const WorkFacts facts = fullBarrel(2);
    outlook::BarrelOutlook outlook;
    outlook::AttributeOutlook acidity;
    acidity.attribute = "acidity";
    acidity.scores.push_back({{}, facts.now, {}, "Kim", 7.5});
    acidity.lastMean = 7.5;
    acidity.lastForeseen = 1.5;
    acidity.lastTail = 0.002;
    outlook.attributes.push_back(acidity);
    const auto alarms = alarmsOf(facts, &outlook);
    const Alarm* const jump = alarmOf(alarms, AlarmKind::AcidityJumps);
    ASSERT_NE(jump, nullptr);
    EXPECT_DOUBLE_EQ(jump->before, 2.2);
    EXPECT_DOUBLE_EQ(jump->now, 7);
    outlook.attributes.front().lastTail = 0.2;
    EXPECT_EQ(alarmOf(alarmsOf(facts, &outlook), AlarmKind::AcidityJumps), nullptr);
    outlook.advice = outlook::Advice::TooFar;
    outlook.chances.push_back({facts.now, 0.02, 0.95});
    const auto late = alarmsOf(facts, &outlook);
    ASSERT_NE(alarmOf(late, AlarmKind::TooFar), nullptr);
    EXPECT_DOUBLE_EQ(alarmOf(late, AlarmKind::TooFar)->now, 0.95);
}

}  // namespace spile::plan

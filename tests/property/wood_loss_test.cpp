// What must hold of every barrel's course, whatever the numbers.
#include "core/wood/evaporation.hpp"
#include "core/wood/loss_step.hpp"
#include "core/wood/vapour.hpp"
#include "tests/property/wood_draws.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace spile::wood {

namespace {

std::vector<CourseDay> courseOf(const liquor::Liquor& start, const Wood& wood,
                                const std::vector<Climate>& days)
{
    std::vector<CourseDay> course(days.size());
    RC_ASSERT(lossCourse(start, wood, days, course).has_value());
    return course;
}

double finalStrength(const liquor::Liquor& start, const Wood& wood, const Climate& climate)
{
    return courseOf(start, wood, steady(climate, 180)).back().alcoholByVolume;
}

}  // namespace

RC_GTEST_PROP(Vapour, RisesWithTemperature, ())
{
    const double a = *between(-15, 45);
    const double b = *between(-15, 45);
    RC_PRE(a < b);
    RC_ASSERT(waterVapourPressure(celsius(a)).value() < waterVapourPressure(celsius(b)).value());
    RC_ASSERT(ethanolVapourPressure(celsius(a)).value() <
              ethanolVapourPressure(celsius(b)).value());
}

// x d(ln gE) + (1 - x) d(ln gW) = 0 along x.
RC_GTEST_PROP(Activity, ObeysGibbsAndDuhem, ())
{
    const double x = *between(0.001, 0.999);
    const Temperature t = celsius(*between(-15, 45));
    constexpr double step = 1e-4;
    const auto below = activityCoefficients(x - step, t).value();
    const auto above = activityCoefficients(x + step, t).value();
    const double ethanol = std::log(above.ethanol / below.ethanol);
    const double water = std::log(above.water / below.water);
    RC_ASSERT(std::fabs(x * ethanol + (1 - x) * water) < 1e-9);
}

RC_GTEST_PROP(Activity, OfThePureIsOne, ())
{
    const Temperature t = celsius(*between(-15, 45));
    RC_ASSERT(activityCoefficients(1, t).value().ethanol == 1.0);
    RC_ASSERT(activityCoefficients(0, t).value().water == 1.0);
}

RC_GTEST_PROP(Activity, OfTheInnerStepIsTheSame, ())
{
    const double x = *between(0, 1);
    const Temperature t = celsius(*between(-15, 45));
    const auto inner = vapourPressures(x, vapourBasis(t).value());
    const auto outer = activityCoefficients(x, t).value();
    const double ethanol = x * outer.ethanol * ethanolVapourPressure(t).value().si();
    RC_ASSERT(std::fabs(inner.ethanol - ethanol) <= 1e-12 * ethanol);
    RC_ASSERT(std::fabs(inner.waterActivity - (1 - x) * outer.water) <= 1e-14);
}

RC_GTEST_PROP(Loss, IsMoreInDrierAir, ())
{
    const auto start = *anyLiquor();
    const Wood wood = *anyWood();
    const Climate humid = *anyClimate();
    Climate dry = humid;
    dry.relativeHumidity *= *between(0, 0.999);
    RC_PRE(dry.relativeHumidity < humid.relativeHumidity);
    RC_ASSERT(evaporated(start, wood, humid, days(30)).value() <
              evaporated(start, wood, dry, days(30)).value());
}

RC_GTEST_PROP(Loss, IsMoreThroughThinnerWood, ())
{
    const auto start = *anyLiquor();
    const Climate climate{celsius(*between(0, 35)), *between(0, 0.6)};
    const Wood thick = *anyWood();
    Wood thin = thick;
    thin.stave = (*between(0.3, 0.99)) * thick.stave;
    RC_ASSERT(lossRates(start, thick, climate).value().water <=
              lossRates(start, thin, climate).value().water);
    // Twice as thin lets twice as much through.
    Wood half = thick;
    half.stave = 0.5 * thick.stave;
    const double once = lossRates(start, thick, climate).value().water.si();
    RC_ASSERT(std::fabs(lossRates(start, half, climate).value().water.si() - 2 * once) <=
              1e-12 * std::fabs(once));
}

RC_GTEST_PROP(Loss, RaisesStrengthInDryAirAndLowersItInHumid, ())
{
    const auto start = liquor::liquorOf(litres(200), *between(0.06, 0.14), *between(3, 9)).value();
    const double strength = liquor::describe(start).value().alcoholByVolume;
    Wood wood = *anyWood();
    wood.ethanolShare = *between(ethanolSharePrior.low, ethanolSharePrior.high);
    const Temperature t = celsius(*between(5, 30));
    RC_ASSERT(finalStrength(start, wood, {t, *between(0, 0.45)}) > strength);
    RC_ASSERT(finalStrength(start, wood, {t, *between(0.86, 1)}) < strength);
}

RC_GTEST_PROP(Loss, KeepsTheExtractToTheLastBit, ())
{
    auto liquor = *anyLiquor();
    const Mass extract = liquor.extract;
    const Conductance wood = conductance(*anyWood());
    for (const Climate& climate : *anyDays(1, 100)) {
        RC_ASSERT(dry(liquor, wood, drying(climate).value(), factor::day));
    }
    RC_ASSERT(liquor.extract == extract);
}

// What is missing is what the rates took, and each row describes what is left.
RC_GTEST_PROP(Course, BalancesWithItsRates, ())
{
    auto liquor = *anyLiquor();
    const Wood wood = *anyWood();
    const auto climates = *anyDays(1, 60);
    const auto course = courseOf(liquor, wood, climates);
    for (std::size_t i = 0; i < climates.size(); ++i) {
        const Rates rates = lossRates(liquor, wood, climates[i]).value();
        liquor.water = liquor.water - kilograms(rates.water.si() * factor::day);
        liquor.ethanol = liquor.ethanol - kilograms(rates.ethanol.si() * factor::day);
        const liquor::Mixed left = liquor::describe(liquor).value();
        // The course reads the extract's gravity off a cubic: 1e-8.
        RC_ASSERT(std::fabs(course[i].specificGravity - left.specificGravity) < 1e-8);
        RC_ASSERT(std::fabs(course[i].volume / left.volume - 1) < 1e-8);
        RC_ASSERT(std::fabs(course[i].alcoholByVolume - left.alcoholByVolume) < 1e-8);
        RC_ASSERT(std::fabs(course[i].realExtract - left.realExtract) < 1e-10);
    }
}

RC_GTEST_PROP(Course, AgreesWithTheLossOverTheSameTime, ())
{
    const auto start = *anyLiquor();
    const Wood wood = *anyWood();
    const Climate climate = *anyClimate();
    const auto count = *rc::gen::inRange<std::size_t>(1, 200);
    const auto course = courseOf(start, wood, steady(climate, count));
    const Volume gone = evaporated(start, wood, climate, days(static_cast<double>(count))).value();
    const Volume before = liquor::describe(start).value().volume;
    RC_ASSERT(std::fabs((before - course.back().volume - gone).si()) < 1e-8 * before.si());
}

RC_GTEST_PROP(Loss, AnswersEveryInput, ())
{
    const liquor::Liquor liquor{kilograms(*anyDouble()), kilograms(*anyDouble()),
                                kilograms(*anyDouble())};
    const Wood wood{squareMetres(*anyDouble()), metres(*anyDouble()), *anyDouble(), *anyDouble()};
    const Climate climate{kelvins(*anyDouble()), *anyDouble()};
    const auto sound = liquor::liquorOf(litres(200), 0.1, 7).value();
    const Wood soundWood{squareMetres(1.83)};
    const auto isFine = [](const Result<Rates>& rates) {
        return !rates || (std::isfinite(rates->water.si()) && std::isfinite(rates->ethanol.si()));
    };
    RC_ASSERT(isFine(lossRates(liquor, soundWood, {})));
    RC_ASSERT(isFine(lossRates(sound, wood, {})));
    RC_ASSERT(isFine(lossRates(sound, soundWood, climate)));
    RC_ASSERT(isFine(lossRates(liquor, wood, climate)));
    std::array<CourseDay, 3> rows;
    const std::array days{Climate{}, climate, Climate{}};
    if (lossCourse(liquor, soundWood, days, rows)) {
        for (const CourseDay& row : rows) {
            RC_ASSERT(std::isfinite(row.volume.si()));
            RC_ASSERT(std::isfinite(row.alcoholByVolume));
            RC_ASSERT(std::isfinite(row.specificGravity));
            RC_ASSERT(std::isfinite(row.realExtract));
        }
    }
    // A hundred years would be slow; what is no duration ends at once.
    const double time = *anyDouble();
    RC_PRE(!(time >= 0 && time < 4e9));
    const auto gone = evaporated(sound, wood, climate, seconds(time));
    RC_ASSERT((!gone || std::isfinite(gone->si())));
}

RC_GTEST_PROP(Vapour, AnswersEveryInput, ())
{
    const Temperature t = kelvins(*anyDouble());
    const double x = *anyDouble();
    const auto water = waterVapourPressure(t);
    const auto ethanol = ethanolVapourPressure(t);
    const auto trace = traceEthanolActivity(t);
    const auto both = activityCoefficients(x, t);
    RC_ASSERT((!water || std::isfinite(water->si())));
    RC_ASSERT((!ethanol || std::isfinite(ethanol->si())));
    RC_ASSERT((!trace || std::isfinite(*trace)));
    RC_ASSERT((!both || (std::isfinite(both->ethanol) && std::isfinite(both->water))));
}

}  // namespace spile::wood

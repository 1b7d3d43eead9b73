// A barrel's own rate of loss, learnt from gauges of barrels whose rate is known.
#include "core/wood/climate_days.hpp"
#include "core/wood/gravity_sign.hpp"
#include "core/wood/loss_rate.hpp"
#include "core/wood/oxygen.hpp"
#include "core/wood/rewetting.hpp"
#include "core/wood/soakage.hpp"
#include "tests/property/wood_draws.hpp"

#include <gtest/gtest.h>
#include <random>
#include <rapidcheck/gtest.h>

namespace spile::wood {

namespace {

rc::Gen<LossRate> anyRate()
{
    return rc::gen::map(rc::gen::tuple(between(-24, -20), between(0.02, 1)), [](const auto& d) {
        return LossRate{std::get<0>(d), std::get<1>(d)};
    });
}

LossSeen seenOf(double predicted, double measured, double deviation)
{
    return {litres(predicted), litres(measured), litres(deviation)};
}

// What is known of a barrel of permeance `k` after `gauges` intervals in which it should lose 3 L
// at the prior's median, each gauged with a deviation of 0.7 L.
LossRate learnt(double k, int gauges, unsigned seed, int badGauge = -1)
{
    std::mt19937 random(seed);
    std::normal_distribution<double> error(0, 0.7);
    LossRate rate = lossRatePrior();
    for (int i = 0; i < gauges; ++i) {
        const double perPermeance = 3.0 / permeancePrior.median;
        const double measured = k * perPermeance + error(random) + (i == badGauge ? 30 : 0);
        const double predicted = std::exp(rate.logMedian) * perPermeance;
        rate = updated(rate, seenOf(predicted, measured, 0.7)).value();
    }
    return rate;
}

}  // namespace

RC_GTEST_PROP(LossRate, IsNeverKnownWorseAfterAGauge, ())
{
    const LossRate prior = *anyRate();
    const auto seen = seenOf(*between(-5, 20), *between(-1, 60), *between(0.3, 5));
    const auto after = updated(prior, seen);
    if (after) {
        RC_ASSERT(after->logSd <= prior.logSd);
    }
}

RC_GTEST_PROP(LossRate, MovesTowardsWhatWasSeenAndNotBeyond, ())
{
    const LossRate prior = *anyRate();
    const double predicted = *between(0.1, 20);
    const double measured = *between(0.1, 60);
    const auto after = updated(prior, seenOf(predicted, measured, *between(0.3, 5))).value();
    const double moved = after.logMedian - prior.logMedian;
    const double asked = std::log(measured / predicted);
    RC_ASSERT(moved * asked >= 0);
    RC_ASSERT(std::fabs(moved) <= std::fabs(asked) + 1e-12);
    RC_ASSERT(std::fabs(moved) <= 2.5 * prior.logSd + 1e-12);
}

// Within three times of the middle: 0.67e-10 to 6e-10.
RC_GTEST_PROP(LossRate, ConvergesOnTheBarrelsOwn, ())
{
    const double k = permeancePrior.median * std::exp(*between(-1.1, 1.1));
    const auto seed = *rc::gen::arbitrary<unsigned>();
    const LossRate few = learnt(k, 3, seed);
    const LossRate many = learnt(k, 60, seed);
    RC_ASSERT(many.logSd < few.logSd);
    // 60 gauges of 0.7 L know a loss to 0.09 L: five of that, of a loss of 1 to 9 L.
    const double exact = 0.7 / std::sqrt(60.0) / (3.0 * k / permeancePrior.median);
    RC_ASSERT(std::fabs(many.logMedian - std::log(k)) < 5 * exact + 0.02);
    RC_ASSERT(std::fabs(many.logMedian - std::log(k)) < 5 * many.logSd + 0.02);
}

RC_GTEST_PROP(LossRate, StandsOneBadGauge, ())
{
    const double k = permeancePrior.median * std::exp(*between(-0.7, 0.7));
    const auto seed = *rc::gen::arbitrary<unsigned>();
    const int bad = *rc::gen::inRange(0, 12);
    const LossRate clean = learnt(k, 12, seed);
    const LossRate spoilt = learnt(k, 12, seed, bad);
    // 30 L too much in one of twelve gauges of some 3 L moves the rate by less than its spread.
    RC_ASSERT(std::fabs(spoilt.logMedian - clean.logMedian) < 0.25);
}

RC_GTEST_PROP(LossRate, SpreadIsOrderedAndBack, ())
{
    const LossRate rate = *anyRate();
    const Spread s = spreadOf(rate);
    RC_ASSERT(s.low < s.median);
    RC_ASSERT(s.median < s.high);
    RC_ASSERT(std::fabs(std::log(s.high / s.low) / (2 * spreadReach) - rate.logSd) < 1e-12);
}

RC_GTEST_PROP(LossSign, IsALeakOnlyBeyondTwiceAndReadingError, ())
{
    const LossRate rate = *anyRate();
    const double predicted = *between(0, 10);
    const double deviation = *between(0.1, 3);
    const double measured = *between(-5, 40);
    const auto verdict = judgeLoss(rate, seenOf(predicted, measured, deviation)).value();
    const bool isLeak = measured - 2 * deviation > 2 * predicted + 1e-9;
    const bool isNoLeak = measured - 2 * deviation < 2 * predicted - 1e-9;
    RC_ASSERT((!isLeak || verdict.sign == LossSign::Leak));
    RC_ASSERT((!isNoLeak || verdict.sign != LossSign::Leak));
    RC_ASSERT((verdict.sign == LossSign::Usual || measured > predicted));
}

RC_GTEST_PROP(LossRate, AnswersEveryInput, ())
{
    const LossRate prior{*anyDouble(), *anyDouble()};
    const LossSeen seen{cubicMetres(*anyDouble()), cubicMetres(*anyDouble()),
                        cubicMetres(*anyDouble())};
    const LossSeen likely = seenOf(*between(-5, 5), *between(-5, 5), *between(1e-5, 5));
    for (const LossSeen& one : {seen, likely}) {
        for (const LossRate& rate : {prior, lossRatePrior()}) {
            const auto after = updated(rate, one);
            RC_ASSERT((!after || (std::isfinite(after->logMedian) && std::isfinite(after->logSd))));
            const auto verdict = judgeLoss(rate, one);
            RC_ASSERT((!verdict || std::isfinite(verdict->leakAbove.si())));
        }
    }
    const auto deviation = readingDeviation(GaugeMethod::Dip, cubicMetres(*anyDouble()));
    RC_ASSERT((!deviation || std::isfinite(deviation->si())));
}

RC_GTEST_PROP(Soakage, IsMoreTheLongerABarrelStoodEmpty, ())
{
    const Area inner = squareMetres(*between(0.1, 5));
    const double a = *between(0, 120);
    const double b = *between(0, 120);
    RC_PRE(a < b);
    const auto less = soakagePrior(inner, days(a)).value();
    const auto more = soakagePrior(inner, days(b)).value();
    RC_ASSERT(less.low < more.low);
    RC_ASSERT(less.median < more.median);
    RC_ASSERT(less.high < more.high);
    const auto wetted = soakagePrior(inner, days(b), days(*between(1, 30))).value();
    RC_ASSERT(wetted.median < more.median);
}

RC_GTEST_PROP(Oxygen, OfALedgerIsOrderedAndGrows, ())
{
    const Volume beer = litres(*between(0, 500));
    const Volume head = litres(*between(0, 50));
    const std::array ledger{
        throughWood(squareMetres(*between(0.1, 5)), standardStave, days(*between(0, 800))).value(),
        drawn(DrawMethod::SampleHole, beer, head).value(),
        drawn(DrawMethod::Valve, beer, head).value(),
        drawn(DrawMethod::Bunghole, beer, head).value(),
        opened(head).value(),
        handled(Handling::Transfer, beer).value(),
        handled(Handling::TransferBelow, beer).value(),
        handled(Handling::ToppingUp, beer).value()};
    for (const OxygenTaken& taken : ledger) {
        RC_ASSERT(taken.low <= taken.median);
        RC_ASSERT(taken.median <= taken.high);
    }
    RC_ASSERT(ledger[1].median <= ledger[2].median);
    RC_ASSERT(ledger[2].median <= ledger[3].median);
    RC_ASSERT(total(ledger).median >= total(std::span(ledger).first(7)).median);
    RC_ASSERT(total({}) == OxygenTaken{});
}

RC_GTEST_PROP(OtherFormulas, AnswerEveryInput, ())
{
    const auto isFine = [](const auto& result) {
        return !result || (std::isfinite(result->low.si()) && std::isfinite(result->high.si()));
    };
    const Area inner = squareMetres(*anyDouble());
    const Duration time = seconds(*anyDouble());
    const Volume volume = cubicMetres(*anyDouble());
    const Volume other = cubicMetres(*anyDouble());
    RC_ASSERT(isFine(throughWood(inner, standardStave, time)));
    RC_ASSERT(isFine(drawn(DrawMethod::Bunghole, volume, other)));
    RC_ASSERT(isFine(opened(volume)));
    RC_ASSERT(isFine(handled(Handling::Transfer, volume)));
    RC_ASSERT(isFine(soakagePrior(inner, time, seconds(*anyDouble()))));
    const auto soaked = soakedBy(time);
    RC_ASSERT((!soaked || std::isfinite(*soaked)));
    const auto depth = soakage(inner, metres(*anyDouble()), *anyDouble());
    RC_ASSERT((!depth || std::isfinite(depth->si())));
    const auto rate = scaledOxygenRate(*anyDouble(), *anyDouble(), metres(*anyDouble()),
                                       *anyDouble(), metres(*anyDouble()));
    RC_ASSERT((!rate || std::isfinite(*rate)));
    const auto wetting = rewetting(inner, time);
    RC_ASSERT((!wetting || std::isfinite(wetting->spirit.high.si())));
    const auto left =
        leftByRewetting({volume, *anyDouble(), *anyDouble()}, {other, *anyDouble(), *anyDouble()});
    RC_ASSERT((!left || std::isfinite(left->mass().si())));
    const liquor::Liquor liquor{kilograms(*anyDouble()), kilograms(*anyDouble()),
                                kilograms(*anyDouble())};
    const auto spirited = withSpirit(liquor::liquorOf(litres(1), 0.1, 7).value(), liquor);
    RC_ASSERT((!spirited || std::isfinite(spirited->gravityGained)));
    const auto gravity = judgeGravity({liquor, liquor, liquor, *anyDouble(), *anyDouble()});
    RC_ASSERT((!gravity || std::isfinite(gravity->bySpirit)));
}

RC_GTEST_PROP(ClimateDays, AnswerEveryInputWithClimatesInRange, ())
{
    const auto records = *rc::gen::container<std::vector<ClimateRecord>>(rc::gen::map(
        rc::gen::tuple(rc::gen::oneOf(rc::gen::inRange<std::int64_t>(-500'000, 500'000),
                                      rc::gen::arbitrary<std::int64_t>()),
                       rc::gen::oneOf(between(258.15, 318.15), anyDouble()),
                       rc::gen::oneOf(between(0, 1), anyDouble())),
        [](const auto& d) {
            return ClimateRecord{std::get<0>(d), {kelvins(std::get<1>(d)), std::get<2>(d)}};
        }));
    std::array<Climate, 6> out;
    if (climateDays(records, *rc::gen::inRange<std::int64_t>(-500'000, 500'000), out)) {
        for (const Climate& day : out) {
            RC_ASSERT(checkClimate(day).has_value());
        }
    }
}

}  // namespace spile::wood

// Whatever is moved between barrels, lots and packages, nothing is made and nothing is lost.
#include "core/cellar/acts/filling.hpp"
#include "core/cellar/acts/lots.hpp"
#include "core/cellar/acts/packing.hpp"
#include "core/cellar/acts/tending.hpp"
#include "core/trace/account.hpp"
#include "tests/support/fleet.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace spile::trace {

namespace {

struct Move {
    int what, from, to, amount;  // 0 to 99
};

// A cellar of three barrels and three lots, in which people do things.
class Place {
public:
    Place()
    {
        cellar::Cellar& cellar = fleet_.cellar(0);
        barrels_ = {fleet_.small().barrel};
        for (int i = 0; i < 2; ++i) {
            barrels_.push_back(cellar::registerBarrel(cellar, {.size = litres(200)})->barrel);
        }
        for (const char* name : {"One", "Two", "Three"}) {
            lots_.push_back(*cellar::registerLot(cellar, {.name = name}));
        }
    }

    // What the records forbid is not done.
    void act(const Move& move)
    {
        cellar::Cellar& cellar = fleet_.cellar(0);
        // Clocks that jump back and forth must not matter.
        fleet_.at(0).clock.setWall(fleet_.at(0).clock.now() +
                                   std::chrono::hours(move.amount % 7 == 0 ? -30 : 5));
        const SubjectId barrel = barrels_[static_cast<std::size_t>(move.from) % 3];
        const SubjectId from = lots_[static_cast<std::size_t>(move.from) % 3];
        const SubjectId to = lots_[static_cast<std::size_t>(move.to) % 3];
        const Volume volume = litres(1 + move.amount);
        switch (move.what % 8) {
            case 0:
            case 1:
                std::ignore =
                    cellar::recordTransfer(cellar, {.lot = to,
                                                    .from = barrel,
                                                    .volume = volume,
                                                    .alcoholByVolume = 0.05 + 0.001 * move.from,
                                                    .specificGravity = 1.0 + 0.0004 * move.amount});
                break;
            case 2:
                std::ignore =
                    cellar::recordTransfer(cellar, {.lot = to, .from = from, .volume = volume});
                break;
            case 3:
                std::ignore = cellar::recordEmpty(cellar, {.barrel = barrel});
                std::ignore =
                    cellar::recordFill(cellar, {.barrel = barrel, .volume = volume, .lot = to});
                break;
            case 4:
                std::ignore =
                    cellar::recordTopUp(cellar, {.barrel = barrel, .volume = volume, .lot = to});
                break;
            case 5:
                std::ignore = cellar::recordFinish(
                    cellar,
                    {.lot = to, .substance = "rum", .volume = volume, .alcoholByVolume = 0.4});
                break;
            case 6:
                if (const auto packed = cellar::recordPackage(
                        cellar, {.lot = to,
                                 .lotCode = "L" + std::to_string(packages_.size()),
                                 .packages = {{"bottle 500 mL", millilitres(500), 1 + move.amount}},
                                 .lost = litres(0.1 * move.from)})) {
                    packages_.push_back(*packed);
                }
                break;
            default:
                std::ignore = cellar::recordDiscard(cellar, {to, volume, "trub"});
        }
    }

    [[nodiscard]] ledger::Database& database() { return fleet_.cellar(0).database(); }
    [[nodiscard]] const std::vector<SubjectId>& lots() const { return lots_; }
    [[nodiscard]] const std::vector<EntryId>& packages() const { return packages_; }

private:
    support::Fleet fleet_{1};
    std::vector<SubjectId> barrels_, lots_;
    std::vector<EntryId> packages_;
};

bool agree(Mass a, Mass b, Mass whole) { return std::abs((a - b).si()) <= 1e-12 * whole.si(); }

rc::Gen<std::vector<Move>> moves()
{
    const auto number = rc::gen::inRange(0, 100);
    return rc::gen::container<std::vector<Move>>(
        rc::gen::construct<Move>(number, number, number, number));
}

}  // namespace

RC_GTEST_PROP(TraceProperty, MassAlcoholAndExtractAreKept, ())
{
    Place place;
    for (const Move& move : *moves()) {
        place.act(move);
    }
    for (const SubjectId& lot : place.lots()) {
        const auto one = balanceOf(place.database(), lot);
        RC_ASSERT(one.has_value());
        const liquor::Liquor out =
            one->packaged + one->lost + one->passedOn + one->discarded + one->left;
        RC_ASSERT(agree(out.water, one->in.water, one->in.mass()));
        RC_ASSERT(agree(out.ethanol, one->in.ethanol, one->in.mass()));
        RC_ASSERT(agree(out.extract, one->in.extract, one->in.mass()));
    }
}

RC_GTEST_PROP(TraceProperty, SharesOfWhatPackagesBeganWithMakeOne, ())
{
    Place place;
    for (const Move& move : *moves()) {
        place.act(move);
    }
    for (const EntryId& package : place.packages()) {
        const auto up = upFromPackage(place.database(), package);
        RC_ASSERT(up.has_value());
        double sum = 0;
        for (const Beginning& beginning : up->beginnings) {
            sum += beginning.share;
        }
        for (const Addition& addition : up->additions) {
            sum += addition.share;
        }
        RC_ASSERT(std::abs(sum - 1) <= 1e-12);
    }
}

RC_GTEST_PROP(TraceProperty, WhatIsFoundUpwardsIsFoundDownwards, ())
{
    Place place;
    for (const Move& move : *moves()) {
        place.act(move);
    }
    for (const EntryId& package : place.packages()) {
        const auto up = upFromPackage(place.database(), package);
        RC_ASSERT(up.has_value());
        for (const Stay& stay : up->stays) {
            const auto reached = down(place.database(), {Start::What::Fill, {}, stay.fill});
            RC_ASSERT(reached.has_value());
            RC_ASSERT(
                std::any_of(reached->packages.begin(), reached->packages.end(),
                            [&](const Reached& one) { return one.package.entry == package; }));
        }
    }
}

}  // namespace spile::trace

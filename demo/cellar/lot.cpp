// One lot of the demo, from two barrels to packages and out of the house.
#include "core/cellar/acts/filling.hpp"
#include "core/cellar/acts/lots.hpp"
#include "core/cellar/acts/packing.hpp"
#include "demo/cellar/history.hpp"
#include "demo/cellar/invented.hpp"

#include <array>

namespace spile::demo {

using namespace std::chrono_literals;

namespace {

constexpr std::string_view lotName = "Night Ferry Coconut";
constexpr std::string_view lotCode = "26-209A";
constexpr int finishAfter = 1;  // days since the barrels were emptied
constexpr int takeOutAfter = 8;
constexpr int holdAfter = 9;
constexpr int resultAfter = 13;
constexpr int packageAfter = 14;
constexpr int releaseAfter = 20;

constexpr double strength = 0.119;  // of the beer out of the barrels
constexpr double gravity = 1.027;

cellar::PackageCount bottles(std::int64_t count)
{
    return {"bottle 330 mL", millilitres(330), count};
}
cellar::PackageCount kegs(std::int64_t count) { return {"keg 20 L", litres(20), count}; }

}  // namespace

Result<void> History::moveIntoLot(const InventedBarrel& barrel, int day)
{
    cellar::Cellar& desk = *world_.desk_.cellar;
    if (!lot_) {
        SPILE_ASSIGN(
            lot, cellar::registerLot(desk, {.name = std::string(lotName), .circumstance = by(0)}));
        lot_ = lot;
    }
    lotFilledOn_ = day;
    SPILE_TRY(cellar::recordTransfer(desk, {.lot = *lot_,
                                            .from = barrel.barrel,
                                            .volume = litres(0.92 * barrel.sizeLitres),
                                            .alcoholByVolume = strength,
                                            .specificGravity = gravity,
                                            .temperature = celsius(13),
                                            .method = "pump",
                                            .circumstance = by(2)}));
    SPILE_TRY(cellar::recordCost(desk, {.subject = barrel.barrel,
                                        .cost = 180,
                                        .what = "the barrel",
                                        .fillsExpected = 3,
                                        .circumstance = by(0)}));
    return {};
}

Result<void> History::tendLot(int day)
{
    if (!lot_) {
        return {};
    }
    cellar::Cellar& desk = *world_.desk_.cellar;
    switch (day - lotFilledOn_) {
        case finishAfter:
            return putCoconutIn();
        case takeOutAfter:
            return cellar::recordTakeOut(desk, coconut_, by(1)).map([](const EntryId&) {});
        case holdAfter: {
            SPILE_ASSIGN(hold, cellar::recordHold(desk, *lot_, "laboratory result", by(0)));
            hold_ = hold;
            return {};
        }
        case resultAfter:
            return cellar::recordClear(desk, hold_, "sound", by(0)).map([](const EntryId&) {});
        case packageAfter:
            return packLot();
        case releaseAfter:
            return releaseSome();
        default:
            return {};
    }
}

Result<void> History::putCoconutIn()
{
    cellar::Cellar& desk = *world_.desk_.cellar;
    SPILE_ASSIGN(coconut,
                 cellar::recordFinish(desk, {.lot = *lot_,
                                             .substance = "coconut",
                                             .mass = kilograms(4.4),
                                             .allergen = "coconut",
                                             .until = world_.desk_.clock.now() +
                                                      std::chrono::days(takeOutAfter - finishAfter),
                                             .circumstance = by(1, "toasted, in a bag")}));
    coconut_ = coconut;
    return cellar::recordCost(
               desk, {.subject = *lot_, .cost = 62, .what = "coconut", .circumstance = by(1)})
        .map([](const EntryId&) {});
}

Result<void> History::packLot()
{
    cellar::Cellar& desk = *world_.desk_.cellar;
    SPILE_ASSIGN(packed, cellar::recordPackage(
                             desk, {.lot = *lot_,
                                    .lotCode = std::string(lotCode),
                                    .packages = {bottles(720), kegs(5)},
                                    .lost = litres(6),
                                    .alcoholByVolume = strength,
                                    .labelStrength = 0.119,
                                    .law = "EU",
                                    .co2Volumes = 2.3,
                                    .bestBefore = world_.desk_.clock.now() + std::chrono::days(730),
                                    .circumstance = by(2)}));
    packed_ = packed;
    SPILE_TRY(cellar::recordCost(
        desk,
        {.subject = *lot_, .cost = 318, .what = "bottles, crowns, labels", .circumstance = by(0)}));
    if (const auto& batch = world_.batches_.front()) {
        return cellar::recordCost(desk, {.subject = *batch,
                                         .cost = 2450,
                                         .what = "malt, hops, yeast, energy",
                                         .forVolume = litres(1400),
                                         .circumstance = by(0)})
            .map([](const EntryId&) {});
    }
    return {};
}

Result<void> History::releaseSome()
{
    cellar::Cellar& desk = *world_.desk_.cellar;
    struct Release {
        const char* to;
        std::vector<cellar::PackageCount> packages;
    };
    const std::array<Release, 2> releases{{{"The Lock-keeper's Arms", {bottles(48), kegs(2)}},
                                           {"Corner Shop on Quay Street", {bottles(120)}}}};
    for (const Release& release : releases) {
        world_.pass(30min);
        SPILE_TRY(cellar::recordRelease(desk, {packed_, release.to, release.packages, by(0)}));
    }
    return {};
}

}  // namespace spile::demo

#include "core/plan/packaging.hpp"

#include "core/liquor/strength.hpp"
#include "core/units/checks.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

namespace spile::plan {

namespace {

constexpr double volumeMost = 1e6;   // m3
constexpr double contentMost = 1e3;  // m3
constexpr double contentLeast = 1e-6;
constexpr double usFluidOunces = 1.0 / 128;  // gallons

constexpr std::array trade = {Package{"bottle 330 mL", millilitres(330)},
                              Package{"bottle 12 fl oz", usGallons(12 * usFluidOunces)},
                              Package{"bottle 375 mL", millilitres(375)},
                              Package{"bottle 500 mL", millilitres(500)},
                              Package{"bottle 22 fl oz", usGallons(22 * usFluidOunces)},
                              Package{"bottle 750 mL", millilitres(750)},
                              Package{"bottle 1.5 L", millilitres(1500)},
                              Package{"can 330 mL", millilitres(330)},
                              Package{"can 12 fl oz", usGallons(12 * usFluidOunces)},
                              Package{"can 440 mL", millilitres(440)},
                              Package{"can 16 fl oz", usGallons(16 * usFluidOunces)},
                              Package{"cask, pin", imperialGallons(4.5)},
                              Package{"cask, firkin", imperialGallons(9)},
                              Package{"cask, kilderkin", imperialGallons(18)},
                              Package{"keg 1/6 bbl", usBeerBarrels(1.0 / 6)},
                              Package{"keg 20 L", litres(20)},
                              Package{"keg 1/4 bbl", usBeerBarrels(0.25)},
                              Package{"keg 30 L", litres(30)},
                              Package{"keg 50 L", litres(50)},
                              Package{"keg 1/2 bbl", usBeerBarrels(0.5)}};

Result<void> needVolume(Volume volume, double lossShare)
{
    SPILE_TRY(needBetween("volume_m3", volume.si(), 0, volumeMost));
    return needBetween("loss_share", lossShare, 0, 1);
}

Result<void> needContent(Volume content)
{
    return needBetween("content_m3", content.si(), contentLeast, contentMost);
}

std::size_t countOf(Volume volume, Volume content)
{
    constexpr double nearlyFull = 1e-6;
    return static_cast<std::size_t>(std::floor(volume / content + nearlyFull));
}

// What is left after `count` packages; the last of them may have been a millionth short.
Volume restOf(Volume volume, std::size_t count, Volume content)
{
    return std::max(Volume(), volume - static_cast<double>(count) * content);
}

}  // namespace

std::span<const Package> packages() { return trade; }

Result<Packed> packInto(Volume volume, Volume content, double lossShare)
{
    SPILE_TRY(needVolume(volume, lossShare));
    SPILE_TRY(needContent(content));
    Packed packed;
    packed.lost = lossShare * volume;
    const Volume left = volume - packed.lost;
    packed.count = countOf(left, content);
    packed.rest = restOf(left, packed.count, content);
    packed.packed = left - packed.rest;
    return packed;
}

Result<Packed> packOrders(Volume volume, double lossShare, std::span<const PackageOrder> orders,
                          std::span<std::size_t> counts)
{
    SPILE_TRY(needVolume(volume, lossShare));
    if (counts.size() != orders.size()) {
        return fail(ErrorCode::OutOfRange, "counts", std::to_string(counts.size()),
                    std::to_string(orders.size()));
    }
    for (const PackageOrder& order : orders) {
        SPILE_TRY(needContent(order.content));
    }
    Packed packed;
    packed.lost = lossShare * volume;
    packed.rest = volume - packed.lost;
    for (std::size_t i = 0; i < orders.size(); ++i) {
        const Volume content = orders[i].content;
        counts[i] = std::min(orders[i].countMost, countOf(packed.rest, content));
        packed.count += counts[i];
        packed.rest = restOf(packed.rest, counts[i], content);
    }
    packed.packed = volume - packed.lost - packed.rest;
    return packed;
}

Result<double> labelStrength(double alcoholByVolume)
{
    SPILE_TRY(needBetween("alcohol_by_volume", alcoholByVolume, 0, 1));
    return std::round(alcoholByVolume * 1000) / 1000;
}

Result<double> labelTolerance(LabelLaw law, double labelled)
{
    SPILE_TRY(needBetween("labelled_by_volume", labelled, 0, 1));
    switch (law) {
        case LabelLaw::UnitedStates:
            return 0.003;
        case LabelLaw::EuropeanUnion:
            return labelled <= 0.055 ? 0.005 : 0.01;
    }
    return fail(ErrorCode::Unsupported, "label_law");
}

Result<LabelCheck> checkLabel(LabelLaw law, double labelled, double measured, double uncertainty)
{
    SPILE_TRY(needBetween("measured_by_volume", measured, 0, 1));
    SPILE_TRY(needBetween("uncertainty_by_volume", uncertainty, 0, 1));
    SPILE_ASSIGN(tolerance, labelTolerance(law, labelled));
    constexpr double rounding = 1e-9;  // 10.3 less 10.0 is a little more than 0.3
    constexpr double usBeerLeast = 0.005;
    const bool hasLeast = law == LabelLaw::UnitedStates && labelled >= usBeerLeast;
    const double least = std::max(labelled - tolerance, hasLeast ? usBeerLeast : 0) - rounding;
    const double most = labelled + tolerance + rounding;
    LabelCheck check{labelled, tolerance, measured - labelled, LabelVerdict::Unsure};
    if (measured - uncertainty >= least && measured + uncertainty <= most) {
        check.verdict = LabelVerdict::Within;
    } else if (measured + uncertainty < least || measured - uncertainty > most) {
        check.verdict = LabelVerdict::Outside;
    }
    return check;
}

Result<FinishTotals> finishTotals(Volume at20, double alcoholByVolume)
{
    SPILE_TRY(needVolume(at20, 0));
    SPILE_ASSIGN(alcohol, liquor::pureAlcohol(at20, alcoholByVolume));
    return FinishTotals{inUsBeerBarrels(at20), alcohol};
}

}  // namespace spile::plan

// What the barrel holds: full, at a dip, by weight, at the nail.
#include "core/liquor/ethanol_water.hpp"
#include "core/liquor/gravity.hpp"
#include "core/liquor/weighing.hpp"
#include "core/plan/barrel_shape.hpp"
#include "core/plan/numbers_parts.hpp"
#include "core/vessel/measuring.hpp"

#include <algorithm>
#include <array>

namespace spile::plan {

namespace {

constexpr double e4 = 1e4;
constexpr double usualGravity = 1.015;  // of strong beer; 0.01 of it is 1 % of the volume
// Cold beer, from 4 °C, that comes to 20 °C, and a little more.
constexpr Temperature coldest = celsius(4);
constexpr Length stickError = millimetres(5);  // common practice, no source
constexpr Length leastHeadspace = millimetres(20);

Result<vessel::Barrel> shapeOf(const WorkFacts& facts)
{
    return plan::shapeOf(facts.measures, facts.barrel.size);
}

Result<Volume> byWeight(const WorkFacts& facts)
{
    SPILE_ASSIGN(gross, needAnswer(facts, "mass_g"));
    const auto asked = answered(facts, "tare_g");
    if (!asked && !facts.measures.tare) {
        return fail(ErrorCode::NotFound, "tare_g", "nothing", "the weight of the empty barrel");
    }
    const Mass tare = asked ? grams(*asked) : *facts.measures.tare;
    return liquor::volumeByWeight(grams(gross) - tare, gravityOf(facts));
}

Result<Volume> byDip(const WorkFacts& facts)
{
    SPILE_ASSIGN(shape, shapeOf(facts));
    SPILE_ASSIGN(dip, needAnswer(facts, "dip_mm"));
    // A stick is read to a few millimetres: just above the bilge is full.
    const Length read = millimetres(dip);
    const bool full = read > shape.bilge && read - shape.bilge <= stickError;
    return vessel::lyingVolume(shape, full ? shape.bilge : read);
}

// The nail stands on the head's circle; the surface is level over the whole barrel.
Result<Volume> atNail(const WorkFacts& facts)
{
    SPILE_ASSIGN(shape, shapeOf(facts));
    SPILE_ASSIGN(nail, needAnswer(facts, "nail_mm"));
    const Length lowest = 0.5 * (shape.bilge - shape.head);
    return vessel::lyingVolume(shape, lowest + millimetres(nail));
}

SheetNumber volume(const Result<Volume>& found)
{
    return numberFrom(found, [](Volume held) { return said(Form::Volume, held.si()); });
}

SheetNumber full(const WorkFacts& facts) { return volume(fullVolumeOf(facts)); }
SheetNumber volumeFromWeight(const WorkFacts& facts) { return volume(byWeight(facts)); }
SheetNumber volumeFromDip(const WorkFacts& facts) { return volume(byDip(facts)); }
SheetNumber volumeAtNail(const WorkFacts& facts) { return volume(atNail(facts)); }

SheetNumber fullByTape(const WorkFacts& facts)
{
    const auto found = [&]() -> Result<Volume> {
        SPILE_ASSIGN(measures, measuresFromTape(facts));
        SPILE_ASSIGN(shape, plan::shapeOf(measures, {}));
        return vessel::fullVolume(shape);
    }();
    return volume(found);
}

// By how much the beer of a full barrel grows as it warms to 20 °C.
Result<Volume> growth(const WorkFacts& facts)
{
    SPILE_ASSIGN(whole, fullVolumeOf(facts));
    constexpr double strong = 0.10;
    SPILE_ASSIGN(warm, liquor::volumeAt20(whole, strong, coldest));
    return warm - whole;
}

SheetNumber headspaceVolume(const WorkFacts& facts)
{
    return numberFrom(growth(facts), [](Volume more) { return said(Form::Volume, more.si()); });
}

SheetNumber headspace(const WorkFacts& facts)
{
    const auto found = [&]() -> Result<Length> {
        SPILE_ASSIGN(shape, shapeOf(facts));
        SPILE_ASSIGN(whole, vessel::fullVolume(shape));
        SPILE_ASSIGN(more, growth(facts));
        SPILE_ASSIGN(dip, vessel::lyingDip(shape, whole - more));
        return std::max(shape.bilge - dip, leastHeadspace);
    }();
    return numberFrom(found, [](Length gap) { return said(Form::Length, gap.si()); });
}

// Above the lees and well below the level to come: a quarter to a half of the head.
SheetNumber onHead(const WorkFacts& facts, double share)
{
    return numberFrom(shapeOf(facts), [&](const vessel::Barrel& shape) {
        return said(Form::Length, share * shape.head.si());
    });
}
SheetNumber holeLow(const WorkFacts& facts) { return onHead(facts, 0.25); }
SheetNumber holeHigh(const WorkFacts& facts) { return onHead(facts, 0.5); }

constexpr std::array specs = {
    NumberSpec{"full", full},
    NumberSpec{"full_by_tape", fullByTape},
    NumberSpec{"volume_from_weight", volumeFromWeight},
    NumberSpec{"volume_from_dip", volumeFromDip},
    NumberSpec{"volume_at_nail", volumeAtNail},
    NumberSpec{"headspace", headspace},
    NumberSpec{"headspace_volume", headspaceVolume},
    NumberSpec{"hole_low", holeLow},
    NumberSpec{"hole_high", holeHigh},
};

}  // namespace

std::span<const NumberSpec> barrelNumbers() { return specs; }

double gravityOf(const WorkFacts& facts)
{
    if (const auto now = answered(facts, "sg_e4")) {
        return *now / e4;
    }
    const auto& readings = facts.history.readings;
    const auto last = std::find_if(readings.rbegin(), readings.rend(), [](const auto& reading) {
        return gravityAt20(reading).has_value();
    });
    return last == readings.rend() ? usualGravity : gravityAt20(*last).value_or(usualGravity);
}

std::optional<Duration> emptyFor(const WorkFacts& facts)
{
    if (const auto said = answered(facts, "empty_days")) {
        return days(*said);
    }
    const auto& emptied = facts.barrel.emptiedAt;
    if (facts.barrel.filled || !emptied || *emptied > facts.now) {
        return std::nullopt;
    }
    return seconds(std::chrono::duration<double>(facts.now - *emptied).count());
}

Result<Area> innerAreaOf(const WorkFacts& facts)
{
    SPILE_ASSIGN(shape, shapeOf(facts));
    return vessel::innerArea(shape);
}

Result<Volume> fullVolumeOf(const WorkFacts& facts)
{
    SPILE_ASSIGN(shape, shapeOf(facts));
    return vessel::fullVolume(shape);
}

std::optional<Volume> volumeByWay(std::string_view way, const WorkFacts& facts)
{
    const auto found = way == "weight"        ? byWeight(facts)
                       : way == "dip"         ? byDip(facts)
                       : way == "nail"        ? atNail(facts)
                       : way == "filled full" ? fullVolumeOf(facts)
                                              : needVolumeAnswer(facts, "volume_ml");
    return found ? std::optional(*found) : std::nullopt;
}

Result<cellar::BarrelMeasures> measuresFromTape(const WorkFacts& facts)
{
    SPILE_ASSIGN(bilge, needAnswer(facts, "bilge_girth_mm"));
    SPILE_ASSIGN(chime, needAnswer(facts, "chime_girth_mm"));
    SPILE_ASSIGN(length, needAnswer(facts, "outer_length_mm"));
    SPILE_ASSIGN(stave, needAnswer(facts, "stave_mm"));
    SPILE_ASSIGN(barrel, vessel::barrelFromOutside({millimetres(bilge), millimetres(chime),
                                                    millimetres(length), millimetres(stave)}));
    cellar::BarrelMeasures measures;
    measures.length = barrel.length;
    measures.bilge = barrel.bilge;
    measures.head = barrel.head;
    measures.stave = millimetres(stave);
    return measures;
}

}  // namespace spile::plan

// From the barrel into a lot: how hard, how long, how much, and what was lost.
#include "core/gas/pushing.hpp"
#include "core/liquor/weighing.hpp"
#include "core/outlook/usual_priors.hpp"
#include "core/plan/barrel_shape.hpp"
#include "core/plan/numbers_parts.hpp"
#include "core/plan/watching.hpp"

#include <algorithm>
#include <array>

namespace spile::plan {

namespace {

constexpr double waterAt20 = 998.2;  // kg/m3: what a gravity of 1 weighs

Density densityOf(const WorkFacts& facts)
{
    return kilogramsPerCubicMetre(gravityOf(facts) * waterAt20);
}

Result<Pressure> pushOf(const WorkFacts& facts)
{
    SPILE_ASSIGN(push, needAnswer(facts, "push_pa"));
    return pascals(push);
}

SheetNumber pushPressure(const WorkFacts& facts)
{
    return numberFrom(pushOf(facts), [](Pressure push) { return said(Form::Pressure, push.si()); });
}

Result<Force> forceOf(const WorkFacts& facts)
{
    SPILE_ASSIGN(push, pushOf(facts));
    SPILE_ASSIGN(shape, shapeOf(facts.measures, facts.barrel.size));
    return gas::headForce(shape.head, push);
}

// Without a size nobody knows the force, but whether the pressure is too high.
SheetNumber headForce(const WorkFacts& facts)
{
    SheetNumber number =
        numberFrom(forceOf(facts), [](Force force) { return said(Form::Force, force.si()); });
    const auto push = pushOf(facts);
    const auto caution = push ? gas::pushCaution(*push) : gas::PushCaution::Fine;
    number.caution = caution && *caution != gas::PushCaution::Fine;
    number.refuses = caution && *caution == gas::PushCaution::Refuse;
    return number;
}

SheetNumber headWeight(const WorkFacts& facts)
{
    return numberFrom(forceOf(facts), [](Force force) {
        return said(Form::Mass, inNewtons(force) / factor::standardGravity);
    });
}

// When the last of the beer is lifted from the barrel's lowest point.
SheetNumber liftPressure(const WorkFacts& facts)
{
    const auto found = [&]() -> Result<Pressure> {
        SPILE_ASSIGN(lift, needAnswer(facts, "lift_mm"));
        return gas::liftPressure(millimetres(lift), densityOf(facts));
    }();
    return numberFrom(found,
                      [](Pressure held) { return said(Form::Pressure, std::max(held.si(), 0.0)); });
}

Result<wood::VolumeSpread> expectedOut(const WorkFacts& facts)
{
    if (const auto watch = watchOf(facts)) {
        return watch->volume;
    }
    SPILE_ASSIGN(full, fullVolumeOf(facts));
    const Volume held = facts.barrel.volume.value_or(full);
    return wood::VolumeSpread{held, held, held};
}

Result<Duration> emptyingTime(const WorkFacts& facts)
{
    SPILE_ASSIGN(held, expectedOut(facts));
    const std::string way = chosen(facts, "way_out");
    if (way == "pump") {
        SPILE_ASSIGN(flow, needAnswer(facts, "pump_ml_min"));
        return gas::pumpingTime(held.median, litresPerMinute(flow / 1e3));
    }
    SPILE_ASSIGN(bore, needAnswer(facts, "line_bore_um"));
    SPILE_ASSIGN(length, needAnswer(facts, "line_mm"));
    SPILE_ASSIGN(lift, needAnswer(facts, "lift_mm"));
    SPILE_ASSIGN(shape, shapeOf(facts.measures, facts.barrel.size));
    SPILE_ASSIGN(full, vessel::fullVolume(shape));
    SPILE_ASSIGN(depth, vessel::lyingDip(shape, std::min(held.median, full)));
    Pressure gauge{};
    if (way == "CO2 push") {
        SPILE_ASSIGN(push, pushOf(facts));
        gauge = push;
    }
    return gas::emptyingTime({millimetres(bore / 1e3), millimetres(length)}, gauge,
                             millimetres(lift) - depth, millimetres(lift), held.median,
                             densityOf(facts));
}

SheetNumber timeToEmpty(const WorkFacts& facts)
{
    constexpr double flowError = 1.15;  // pushing.hpp: 15 %
    const auto found = emptyingTime(facts);
    if (!found && found.error().subject == "gauge_bar") {
        SheetNumber number = inWord("It does not run: more pressure, or the line's end lower.");
        number.caution = true;
        return number;
    }
    return numberFrom(found, [](Duration time) {
        return said(Form::Duration, time.si(), time.si() / flowError, time.si() * flowError);
    });
}

SheetNumber kitMark(const WorkFacts& facts)
{
    const bool sour = facts.barrel.sour;
    const std::string kit = chosen(facts, "kit");
    SheetNumber number =
        inWord(sour ? "It has held sour beer, or is kept for it: only kit kept for sour beer."
                    : "It is clean: only kit that never touched sour beer.");
    number.caution = sour;
    number.refuses = !kit.empty() && (kit == "sour") != sour;
    return number;
}

SheetNumber volumeOutNumber(const WorkFacts& facts)
{
    return numberFrom(volumeOut(facts),
                      [](Volume volume) { return said(Form::Volume, volume.si()); });
}

SheetNumber yieldShare(const WorkFacts& facts)
{
    const auto found = [&]() -> Result<double> {
        SPILE_ASSIGN(out, volumeOut(facts));
        SPILE_ASSIGN(held, expectedOut(facts));
        return out / held.median;
    }();
    return numberFrom(found, [](double share) { return said(Form::Share, share); });
}

// What went in and out since the fill.
struct Course {
    Volume filled, drawn, toppedUp;
    [[nodiscard]] Volume left() const { return filled + toppedUp - drawn; }
};

Result<Course> courseOf(const WorkFacts& facts)
{
    const auto& fills = facts.history.fills;
    if (fills.empty() || !fills.back().volume) {
        return fail(ErrorCode::NotFound, "loss_filled", "nothing", "a fill with its volume");
    }
    Course course{*fills.back().volume, {}, {}};
    for (const cellar::DrawRow& draw : facts.history.draws) {
        course.drawn = course.drawn + (draw.at >= fills.back().at ? draw.volume : Volume());
    }
    for (const cellar::TopUpRow& topUp : facts.history.topUps) {
        course.toppedUp = course.toppedUp + (topUp.at >= fills.back().at ? topUp.volume : Volume());
    }
    return course;
}

SheetNumber ofCourse(const WorkFacts& facts, Volume Course::*part)
{
    return numberFrom(courseOf(facts),
                      [&](const Course& all) { return said(Form::Volume, (all.*part).si()); });
}
SheetNumber lossFilled(const WorkFacts& facts) { return ofCourse(facts, &Course::filled); }
SheetNumber lossDrawn(const WorkFacts& facts) { return ofCourse(facts, &Course::drawn); }
SheetNumber lossToppedUp(const WorkFacts& facts) { return ofCourse(facts, &Course::toppedUp); }

SheetNumber lossEvaporated(const WorkFacts& facts)
{
    const auto found = [&]() -> Result<wood::VolumeSpread> {
        SPILE_ASSIGN(course, courseOf(facts));
        SPILE_ASSIGN(watch, watchOf(facts));
        const Volume left = course.left();
        return wood::VolumeSpread{left - watch.volume.high, left - watch.volume.median,
                                  left - watch.volume.low};
    }();
    return numberFrom(found, [](const wood::VolumeSpread& lost) {
        return said(Form::Volume, lost.median.si(), lost.low.si(), lost.high.si());
    });
}

wood::GaugeMethod methodOut(const WorkFacts& facts)
{
    const std::string way = chosen(facts, "out_way");
    return way == "weight" ? wood::GaugeMethod::Weight
           : way == "dip"  ? wood::GaugeMethod::Dip
                           : wood::GaugeMethod::Meter;
}

// Beside what the model knows stands how well the volume that came out is known.
SheetNumber lossUnexplained(const WorkFacts& facts)
{
    const auto found = [&]() -> Result<wood::VolumeSpread> {
        SPILE_ASSIGN(watch, watchOf(facts));
        SPILE_ASSIGN(out, volumeOut(facts));
        SPILE_ASSIGN(heel, needVolumeAnswer(facts, "heel_ml"));
        SPILE_ASSIGN(error, wood::readingDeviation(methodOut(facts), out));
        const Volume there = out + heel;
        const Volume reach = wood::spreadReach * error;
        return wood::VolumeSpread{watch.volume.low - there - reach, watch.volume.median - there,
                                  watch.volume.high - there + reach};
    }();
    return numberFrom(found, [](const wood::VolumeSpread& lost) {
        SheetNumber number = said(Form::Volume, lost.median.si(), lost.low.si(), lost.high.si());
        number.caution = lost.low > Volume() || lost.high < Volume();
        return number;
    });
}

SheetNumber nextDeadline(const WorkFacts& facts)
{
    const auto within = nextUseWithin(chosen(facts, "next_use"));
    return within ? said(Form::Duration, static_cast<double>(within->count()) * factor::day)
                  : inWord("no deadline");
}

SheetNumber woodLeft(const WorkFacts& facts)
{
    if (!facts.barrel.fillNumber) {
        return unknown("fill");
    }
    return said(Form::Share, outlook::leftToGive(static_cast<int>(*facts.barrel.fillNumber) + 1));
}

constexpr std::array specs = {
    NumberSpec{"push_pressure", pushPressure},
    NumberSpec{"head_force", headForce},
    NumberSpec{"head_weight", headWeight},
    NumberSpec{"lift_pressure", liftPressure},
    NumberSpec{"time_to_empty", timeToEmpty},
    NumberSpec{"kit_mark", kitMark},
    NumberSpec{"volume_out", volumeOutNumber},
    NumberSpec{"yield_share", yieldShare},
    NumberSpec{"loss_filled", lossFilled},
    NumberSpec{"loss_topped_up", lossToppedUp},
    NumberSpec{"loss_drawn", lossDrawn},
    NumberSpec{"loss_evaporated", lossEvaporated},
    NumberSpec{"loss_unexplained", lossUnexplained},
    NumberSpec{"next_deadline", nextDeadline},
    NumberSpec{"wood_left", woodLeft},
};

}  // namespace

std::span<const NumberSpec> emptyingNumbers() { return specs; }

Result<Volume> volumeOut(const WorkFacts& facts)
{
    const std::string way = chosen(facts, "out_way");
    if (way == "weight") {
        SPILE_ASSIGN(before, needAnswer(facts, "mass_g"));
        SPILE_ASSIGN(after, needAnswer(facts, "mass_after_g"));
        if (after >= before) {
            return fail(ErrorCode::OutOfRange, "mass_after_g", std::to_string(after),
                        "less than before");
        }
        return liquor::volumeByWeight(grams(before - after), gravityOf(facts));
    }
    if (way == "dip") {
        SPILE_ASSIGN(shape, shapeOf(facts.measures, facts.barrel.size));
        SPILE_ASSIGN(before, needAnswer(facts, "dip_mm"));
        SPILE_ASSIGN(after, needAnswer(facts, "dip_after_mm"));
        if (after >= before) {
            return fail(ErrorCode::OutOfRange, "dip_after_mm", std::to_string(after),
                        "less than before");
        }
        SPILE_ASSIGN(held, vessel::lyingVolume(shape, std::min(millimetres(before), shape.bilge)));
        SPILE_ASSIGN(left, vessel::lyingVolume(shape, millimetres(after)));
        return held - left;
    }
    return needVolumeAnswer(facts, "out_ml");
}

std::optional<std::chrono::days> nextUseWithin(std::string_view nextUse)
{
    return nextUse == "refill at once"     ? std::optional(std::chrono::days(2))
           : nextUse == "re-wet and store" ? std::optional(std::chrono::days(30))
                                           : std::nullopt;
}

}  // namespace spile::plan

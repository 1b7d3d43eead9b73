// What spirit does to the beer, and what stands in the barrel.
#include "core/liquor/gravity.hpp"
#include "core/plan/numbers_parts.hpp"
#include "core/plan/watching.hpp"
#include "core/wood/oxygen.hpp"
#include "core/wood/rewetting.hpp"
#include "core/wood/soakage.hpp"

#include <array>

namespace spile::plan {

namespace {

constexpr double e4 = 1e4;
// The beer that is to come, where nobody has said what it is: a strong one, common practice.
constexpr double usualAbv = 0.10;
constexpr double usualExtract = 7;  // °P
constexpr double usualSpirit = 0.45;

Result<Duration> needEmptyFor(const WorkFacts& facts)
{
    const auto empty = emptyFor(facts);
    return empty ? Result<Duration>(*empty)
                 : Result<Duration>(
                       fail(ErrorCode::NotFound, "days_empty", "nothing", "when it was emptied"));
}

Result<wood::Rewetting> rewettingOf(const WorkFacts& facts)
{
    SPILE_ASSIGN(inner, innerAreaOf(facts));
    SPILE_ASSIGN(empty, needEmptyFor(facts));
    return wood::rewetting(inner, empty);
}

SheetNumber daysEmpty(const WorkFacts& facts)
{
    return numberFrom(needEmptyFor(facts),
                      [](Duration empty) { return said(Form::Duration, empty.si()); });
}

Result<wood::EmptyBarrel> needsOf(const WorkFacts& facts)
{
    SPILE_ASSIGN(empty, needEmptyFor(facts));
    return wood::emptyBarrelNeeds(empty);
}

SheetNumber fitness(const WorkFacts& facts)
{
    return numberFrom(needsOf(facts), [](wood::EmptyBarrel needs) {
        switch (needs) {
            case wood::EmptyBarrel::FillAsItIs:
                return inWord("Fill it as it is.");
            case wood::EmptyBarrel::Rewet:
                return inWord("Re-wet it with spirit before it is filled.");
            case wood::EmptyBarrel::SwellFirst:
                return inWord("Swell it first, then re-wet it.");
            case wood::EmptyBarrel::ProveItHolds:
                break;
        }
        return inWord("Prove first that it still holds water.");
    });
}

SheetNumber wetSpirit(const WorkFacts& facts)
{
    return numberFrom(rewettingOf(facts), [](const wood::Rewetting& wet) {
        return said(Form::Volume, wet.spirit.median.si(), wet.spirit.low.si(),
                    wet.spirit.high.si());
    });
}

// To hold a barrel wet takes what re-wets one that has stood empty for a month.
SheetNumber holdSpirit(const WorkFacts& facts)
{
    const auto found = [&]() -> Result<wood::Rewetting> {
        SPILE_ASSIGN(inner, innerAreaOf(facts));
        constexpr double aMonth = 30;
        return wood::rewetting(inner, days(aMonth));
    }();
    return numberFrom(found, [](const wood::Rewetting& wet) {
        return said(Form::Volume, wet.spirit.median.si(), wet.spirit.low.si(),
                    wet.spirit.high.si());
    });
}

SheetNumber soak(const WorkFacts& facts)
{
    const auto found = [&]() -> Result<wood::VolumeSpread> {
        SPILE_ASSIGN(inner, innerAreaOf(facts));
        SPILE_ASSIGN(empty, needEmptyFor(facts));
        return wood::soakagePrior(inner, empty);
    }();
    return numberFrom(found, [](const wood::VolumeSpread& soakage) {
        return said(Form::Volume, soakage.median.si(), soakage.low.si(), soakage.high.si());
    });
}

// The beer that will fill the barrel, with that spirit in it.
Result<wood::WithSpirit> withSpiritLeft(const WorkFacts& facts, const liquor::Liquor& spirit)
{
    SPILE_ASSIGN(full, fullVolumeOf(facts));
    const double abv = answered(facts, "abv_e2").value_or(usualAbv * e4) / e4;
    SPILE_ASSIGN(beer, liquor::liquorOf(full, abv, usualExtract));
    return wood::withSpirit(beer, spirit);
}

SheetNumber spiritAdds(const WorkFacts& facts)
{
    const auto found = [&]() -> Result<wood::WithSpirit> {
        const double strength = answered(facts, "spirit_abv_e2").value_or(usualSpirit * e4) / e4;
        auto volume = needVolumeAnswer(facts, "spirit_ml");
        if (!volume) {
            SPILE_ASSIGN(wet, rewettingOf(facts));
            volume = wet.spirit.median;
        }
        SPILE_ASSIGN(spirit, liquor::liquorOf(*volume, strength, 0));
        return withSpiritLeft(facts, spirit);
    }();
    return numberFrom(found, [](const wood::WithSpirit& with) {
        return said(Form::StrengthRise, with.strengthGained);
    });
}

SheetNumber spiritTaken(const WorkFacts& facts)
{
    const auto found = [&]() -> Result<Volume> {
        SPILE_ASSIGN(poured, needVolumeAnswer(facts, "spirit_ml"));
        SPILE_ASSIGN(drained, needVolumeAnswer(facts, "drained_ml"));
        if (drained > poured) {
            return fail(ErrorCode::OutOfRange, "drained_ml");
        }
        return poured - drained;
    }();
    return numberFrom(found, [](Volume taken) { return said(Form::Volume, taken.si()); });
}

SheetNumber spiritLeftAdds(const WorkFacts& facts)
{
    const auto found = [&]() -> Result<wood::WithSpirit> {
        SPILE_ASSIGN(poured, needVolumeAnswer(facts, "spirit_ml"));
        SPILE_ASSIGN(drained, needVolumeAnswer(facts, "drained_ml"));
        SPILE_ASSIGN(strength, needAnswer(facts, "spirit_abv_e2"));
        SPILE_ASSIGN(
            left, wood::leftByRewetting({poured, strength / e4, 0}, {drained, strength / e4, 0}));
        return withSpiritLeft(facts, left);
    }();
    return numberFrom(found, [](const wood::WithSpirit& with) {
        return said(Form::StrengthRise, with.strengthGained);
    });
}

SheetNumber trueGravity(const WorkFacts& facts)
{
    const auto found = [&]() -> Result<double> {
        SPILE_ASSIGN(reading, needAnswer(facts, "sg_e4"));
        SPILE_ASSIGN(mc, needAnswer(facts, "sample_temp_mc"));
        return liquor::correctedGravity(reading / e4, celsius(mc / 1e3),
                                        hydrometerReference(facts.values));
    }();
    return numberFrom(found, [&](double gravity) {
        SheetNumber number = said(Form::Gravity, gravity);
        number.caution = liquor::isFarFromReference(
            celsius(answered(facts, "sample_temp_mc").value_or(0) / 1e3));
        return number;
    });
}

SheetNumber expectedNow(const WorkFacts& facts)
{
    return numberFrom(watchOf(facts), [](const Watch& watch) {
        return said(Form::Volume, watch.volume.median.si(), watch.volume.low.si(),
                    watch.volume.high.si());
    });
}

SheetNumber gaugedNow(const WorkFacts& facts)
{
    return facts.barrel.volume ? said(Form::Volume, facts.barrel.volume->si())
                               : unknown("volume_ml");
}

SheetNumber lossSign(const WorkFacts& facts)
{
    return numberFrom(watchOf(facts), [](const Watch& watch) {
        if (!watch.last) {
            return inWord("Too early to tell.");
        }
        SheetNumber number = inWord("What it loses is usual for it.");
        if (watch.last->sign == wood::LossSign::Watch) {
            number = inWord("It loses more than foreseen: gauge again in two weeks.");
        } else if (watch.last->sign == wood::LossSign::Leak) {
            number = inWord("It may leak. Measured again? Was it filled full? Drips on the floor?");
            number.caution = true;
        }
        return number;
    });
}

SheetNumber leftAfterDraw(const WorkFacts& facts)
{
    const auto found = [&]() -> Result<Volume> {
        SPILE_ASSIGN(draw, needVolumeAnswer(facts, "draw_ml"));
        if (!facts.barrel.volume) {
            return fail(ErrorCode::NotFound, "volume_ml");
        }
        return *facts.barrel.volume - draw;
    }();
    return numberFrom(found, [](Volume left) { return said(Form::Volume, left.si()); });
}

SheetNumber oxygenBy(wood::DrawMethod method, const WorkFacts& facts)
{
    const auto found = [&]() -> Result<wood::OxygenTaken> {
        SPILE_ASSIGN(draw, needVolumeAnswer(facts, "draw_ml"));
        SPILE_ASSIGN(full, fullVolumeOf(facts));
        const Volume held = facts.barrel.volume.value_or(full);
        return wood::drawn(method, draw, std::max(full - held, Volume()));
    }();
    return numberFrom(found, [](const wood::OxygenTaken& taken) {
        return said(Form::Oxygen, taken.median.si(), taken.low.si(), taken.high.si());
    });
}

SheetNumber oxygenHole(const WorkFacts& facts)
{
    return oxygenBy(wood::DrawMethod::SampleHole, facts);
}
SheetNumber oxygenBung(const WorkFacts& facts)
{
    return oxygenBy(wood::DrawMethod::Bunghole, facts);
}

SheetNumber afterTopUp(const WorkFacts& facts)
{
    const auto found = [&]() -> Result<Volume> {
        SPILE_ASSIGN(added, needVolumeAnswer(facts, "top_up_ml"));
        SPILE_ASSIGN(watch, watchOf(facts));
        return watch.volume.median + added;
    }();
    return numberFrom(found, [](Volume volume) { return said(Form::Volume, volume.si()); });
}

SheetNumber topUpRoom(const WorkFacts& facts)
{
    const auto found = [&]() -> Result<Volume> {
        SPILE_ASSIGN(full, fullVolumeOf(facts));
        SPILE_ASSIGN(watch, watchOf(facts));
        return std::max(full - watch.volume.median, Volume());
    }();
    return numberFrom(found, [](Volume room) { return said(Form::Volume, room.si()); });
}

SheetNumber leakLook(const WorkFacts& facts)
{
    const auto& fills = facts.history.fills;
    if (fills.empty()) {
        return unknown("fill");
    }
    const auto since = facts.now - fills.back().at;
    using std::chrono::hours;
    return since < hours(12)       ? inWord("again tomorrow")
           : since < hours(60)     ? inWord("again on the third day")
           : since < hours(24 * 6) ? inWord("again a week after filling")
                                   : inWord("whenever you pass by");
}

SheetNumber refillBy(const WorkFacts& /*facts*/)
{
    constexpr double days = 14;
    return said(Form::Duration, days * factor::day);  // emptyBarrelNeeds(): so long it stays wet
}

constexpr std::array specs = {
    NumberSpec{"days_empty", daysEmpty},
    NumberSpec{"fitness", fitness},
    NumberSpec{"wet_spirit", wetSpirit},
    NumberSpec{"soak", soak},
    NumberSpec{"hold_spirit", holdSpirit},
    NumberSpec{"spirit_adds", spiritAdds},
    NumberSpec{"spirit_taken", spiritTaken},
    NumberSpec{"spirit_left_adds", spiritLeftAdds},
    NumberSpec{"true_gravity", trueGravity},
    NumberSpec{"expected_now", expectedNow},
    NumberSpec{"gauged_now", gaugedNow},
    NumberSpec{"loss_sign", lossSign},
    NumberSpec{"left_after_draw", leftAfterDraw},
    NumberSpec{"oxygen_hole", oxygenHole},
    NumberSpec{"oxygen_bung", oxygenBung},
    NumberSpec{"after_top_up", afterTopUp},
    NumberSpec{"top_up_room", topUpRoom},
    NumberSpec{"leak_look", leakLook},
    NumberSpec{"refill_by", refillBy},
};

}  // namespace

std::span<const NumberSpec> beerNumbers() { return specs; }

}  // namespace spile::plan

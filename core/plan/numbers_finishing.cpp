// What goes into a lot: additions by a bench trial, and carbon dioxide.
#include "core/gas/carbonation.hpp"
#include "core/plan/numbers_parts.hpp"

#include <algorithm>
#include <array>

namespace spile::plan {

namespace {

constexpr double e2 = 1e2;
// Of what beer holds after fermenting, what is left after months in wood: from memory.
constexpr double heldLeast = 0.3;
constexpr double heldUsual = 0.6;
constexpr double heldMost = 0.9;
constexpr Temperature warmStore = celsius(30);

SheetNumber lotLeft(const WorkFacts& facts)
{
    return numberFrom(needLotFacts(facts), [](const LotFacts& lot) {
        return said(Form::Volume, std::max(lot.row.left(), Volume()).si());
    });
}

// The trial's dose, scaled by the volumes of lot and glass.
SheetNumber finishDose(const WorkFacts& facts)
{
    const bool liquid = chosen(facts, "addition") == "spirit";
    const auto found = [&]() -> Result<double> {
        SPILE_ASSIGN(lot, needLotFacts(facts));
        SPILE_ASSIGN(glass, needVolumeAnswer(facts, "trial_ml"));
        SPILE_ASSIGN(dose, needAnswer(facts, liquid ? "trial_dose_ul" : "trial_dose_mg"));
        const double glasses = std::max(lot.row.left(), Volume()) / glass;
        return glasses * (liquid ? millilitres(dose / 1e3).si() : grams(dose / 1e3).si());
    }();
    return numberFrom(found,
                      [&](double dose) { return said(liquid ? Form::Volume : Form::Dose, dose); });
}

SheetNumber allergens(const WorkFacts& facts)
{
    return numberFrom(needLotFacts(facts), [](const LotFacts& lot) {
        const auto all = lot.history.allergens();
        if (all.empty()) {
            return inWord("none");
        }
        SheetNumber number{Form::Words, 0, {}, {}, {}, true};
        for (const std::string& one : all) {
            number.word += (number.word.empty() ? "" : "\n") + one;
        }
        return number;
    });
}

SheetNumber daysOf(const WorkFacts& facts, const std::string& ask)
{
    return numberFrom(needAnswer(facts, ask),
                      [](double count) { return said(Form::Duration, days(count).si()); });
}
SheetNumber firstTasting(const WorkFacts& facts) { return daysOf(facts, "first_taste_days"); }
SheetNumber takeOut(const WorkFacts& facts)
{
    const auto contact = answered(facts, "contact_days");
    return contact && *contact == 0 ? inWord("it stays in") : daysOf(facts, "contact_days");
}

// Four times between the first tasting and the end: common practice.
SheetNumber tasteEvery(const WorkFacts& facts)
{
    const auto found = [&]() -> Result<Duration> {
        SPILE_ASSIGN(first, needAnswer(facts, "first_taste_days"));
        SPILE_ASSIGN(contact, needAnswer(facts, "contact_days"));
        constexpr double times = 4;
        return days(std::max(std::round((contact - first) / times), 1.0));
    }();
    return numberFrom(found, [](Duration every) { return said(Form::Duration, every.si()); });
}

Result<double> wantedVolumes(const WorkFacts& facts)
{
    SPILE_ASSIGN(volumes, needAnswer(facts, "volumes_e2"));
    return volumes / e2;
}

SheetNumber kegPressure(const WorkFacts& facts)
{
    const auto found = [&]() -> Result<Pressure> {
        SPILE_ASSIGN(volumes, wantedVolumes(facts));
        SPILE_ASSIGN(mc, needAnswer(facts, "carb_temp_mc"));
        return gas::kegPressure(volumes, celsius(mc / 1e3));
    }();
    return numberFrom(
        found, [](Pressure gauge) { return said(Form::Pressure, std::max(gauge.si(), 0.0)); });
}

// Until a twentieth of the way is left.
SheetNumber carbonatingTime(const WorkFacts& facts)
{
    const auto found = [&]() -> Result<Duration> {
        SPILE_ASSIGN(last, wantedVolumes(facts));
        const std::string way = chosen(facts, "gas_way");
        if (way.empty()) {
            return fail(ErrorCode::NotFound, "gas_way", "nothing", "how the gas gets in");
        }
        const auto how = way == "shaken"            ? gas::Carbonating::Shaken
                         : way == "through a stone" ? gas::Carbonating::Stone
                                                    : gas::Carbonating::Standing;
        constexpr double left = 0.05;
        return gas::timeToVolumes(0, last, (1 - left) * last, gas::usualTimeConstant(how));
    }();
    return numberFrom(found, [](Duration time) { return said(Form::Duration, time.si()); });
}

struct Held {
    double low, there, high;
};
Result<Held> heldOf(const WorkFacts& facts)
{
    if (const auto measured = answered(facts, "co2_now_e2")) {
        return Held{*measured / e2, *measured / e2, *measured / e2};
    }
    SPILE_ASSIGN(mc, needAnswer(facts, "warmest_mc"));
    SPILE_ASSIGN(residual, gas::residualVolumes(celsius(mc / 1e3)));
    return Held{heldLeast * residual, heldUsual * residual, heldMost * residual};
}

SheetNumber residualCo2(const WorkFacts& facts)
{
    return numberFrom(heldOf(facts), [](const Held& held) {
        return said(Form::Co2, held.there, held.low, held.high);
    });
}

SheetNumber primingSugar(const WorkFacts& facts)
{
    return numberFrom(primingOf(facts),
                      [](const Priming& priming) { return said(Form::Dose, priming.sugar.si()); });
}

// What the sugar makes stands fast; what was there does not.
Result<Held> finalOf(const WorkFacts& facts)
{
    SPILE_ASSIGN(wanted, wantedVolumes(facts));
    SPILE_ASSIGN(priming, primingOf(facts));
    return Held{wanted - priming.there + priming.low, wanted,
                wanted - priming.there + priming.high};
}

SheetNumber finalCo2(const WorkFacts& facts)
{
    return numberFrom(finalOf(facts), [](const Held& held) {
        SheetNumber number = said(Form::Co2, held.there, held.low, held.high);
        number.caution = held.high >= gas::bottleVolumesCaution;
        return number;
    });
}

SheetNumber bottlePressure(const WorkFacts& facts)
{
    const auto found = [&]() -> Result<std::array<Pressure, 3>> {
        SPILE_ASSIGN(held, finalOf(facts));
        SPILE_ASSIGN(low, gas::bottlePressure(held.low, warmStore));
        SPILE_ASSIGN(there, gas::bottlePressure(held.there, warmStore));
        SPILE_ASSIGN(high, gas::bottlePressure(held.high, warmStore));
        return std::array{low, there, high};
    }();
    return numberFrom(found, [&](const std::array<Pressure, 3>& all) {
        SheetNumber number = said(Form::Pressure, all[1].si(), all[0].si(), all[2].si());
        number.caution = finalCo2(facts).caution;
        return number;
    });
}

constexpr std::array specs = {
    NumberSpec{"lot_left", lotLeft},         NumberSpec{"finish_dose", finishDose},
    NumberSpec{"allergens", allergens},      NumberSpec{"first_tasting", firstTasting},
    NumberSpec{"taste_every", tasteEvery},   NumberSpec{"take_out", takeOut},
    NumberSpec{"keg_pressure", kegPressure}, NumberSpec{"carbonating_time", carbonatingTime},
    NumberSpec{"residual_co2", residualCo2}, NumberSpec{"priming_sugar", primingSugar},
    NumberSpec{"final_co2", finalCo2},       NumberSpec{"pressure_in_bottles", bottlePressure},
};

}  // namespace

std::span<const NumberSpec> finishingNumbers() { return specs; }

Result<Priming> primingOf(const WorkFacts& facts)
{
    SPILE_ASSIGN(lot, needLotFacts(facts));
    SPILE_ASSIGN(wanted, wantedVolumes(facts));
    SPILE_ASSIGN(held, heldOf(facts));
    const std::string word = chosen(facts, "sugar");
    if (word.empty()) {
        return fail(ErrorCode::NotFound, "sugar", "nothing", "which sugar");
    }
    const auto sugar = word == "glucose"                  ? gas::Sugar::Glucose
                       : word == "glucose with its water" ? gas::Sugar::DextroseMonohydrate
                                                          : gas::Sugar::Sucrose;
    SPILE_ASSIGN(mass,
                 gas::primingSugar(sugar, std::max(lot.row.left(), Volume()), held.there, wanted));
    return Priming{held.low, held.there, held.high, mass};
}

}  // namespace spile::plan

// What the sheets from the barrel to the bottle record.
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/filling.hpp"
#include "core/cellar/acts/lots.hpp"
#include "core/plan/recording.hpp"
#include "core/plan/work_values.hpp"

#include <algorithm>
#include <array>

namespace spile::plan {

namespace {

bool takesAll(const Recording& r) { return textIn(r.values(), "how_much") != "a part"; }

// The lot becomes known now, if it is a new one.
Made recordedTransfer(const Recording& r)
{
    SPILE_ASSIGN(volume, volumeOut(r.facts));
    SPILE_ASSIGN(lot, cellar::lotNamed(r.cellar, textIn(r.values(), "lot")));
    cellar::NewTransfer transfer{lot, r.barrel(), volume};
    transfer.alcoholByVolume = fractionIn(r.values(), "abv_e2");
    transfer.specificGravity = fractionIn(r.values(), "sg_e4");
    transfer.method = textIn(r.values(), "way_out");
    transfer.circumstance = r.by;
    return made(cellar::transferEntry(r.cellar, transfer));
}

// What was taken from a barrel that goes on.
Made recordedPart(const Recording& r)
{
    if (takesAll(r)) {
        return std::optional<ledger::NewEntry>();
    }
    SPILE_ASSIGN(volume, volumeOut(r.facts));
    return made(cellar::drawEntry(r.cellar, {r.barrel(), volume, "transfer", {}, {}, r.by}));
}

Made recordedEmpty(const Recording& r)
{
    const auto volume = volumeOut(r.facts);  // it may be that nobody measured it
    cellar::NewEmpty empty;
    empty.barrel = r.barrel();
    empty.volume = volume ? std::optional(*volume) : std::nullopt;
    empty.nextUse = textIn(r.values(), "next_use");
    empty.heel = volumeIn(r.values(), "heel_ml");
    if (const auto within = nextUseWithin(empty.nextUse)) {
        empty.until = r.facts.now + *within;
    }
    empty.programme = textIn(r.values(), "programme");
    empty.method = textIn(r.values(), "way_out");
    empty.circumstance = r.by;
    return made(cellar::emptyEntry(r.cellar, empty));
}

Made recordedFinish(const Recording& r)
{
    cellar::NewFinish finish;
    finish.lot = r.lot();
    finish.substance = textIn(r.values(), "addition");
    if (finish.substance == "spirit") {
        finish.volume = volumeIn(r.values(), "spirit_ml");
        finish.alcoholByVolume = fractionIn(r.values(), "spirit_abv_e2");
    } else {
        finish.mass = massIn(r.values(), "added_g");
    }
    const std::string allergen = textIn(r.values(), "allergen");
    finish.allergen = allergen == "none" ? "" : allergen;
    if (const auto days = numberIn(r.values(), "contact_days"); days && *days > 0) {
        finish.until = r.facts.now + std::chrono::days(*days);
    }
    finish.circumstance = r.by;
    return made(cellar::finishEntry(r.cellar, finish));
}

Made recordedTreatment(const Recording& r)
{
    cellar::NewTreatment treatment{r.lot(), textIn(r.values(), "treatment")};
    if (treatment.method == "pasteurised") {
        treatment.temperature = temperatureIn(r.values(), "treat_temp_mc");
        if (const auto held = numberIn(r.values(), "held_s")) {
            treatment.held = std::chrono::seconds(*held);
        }
    }
    treatment.circumstance = r.by;
    return made(cellar::treatmentEntry(r.cellar, treatment));
}

Made recordedCarbonation(const Recording& r)
{
    cellar::NewCarbonation carbonation{r.lot(), textIn(r.values(), "carbonating")};
    carbonation.volumes = static_cast<double>(numberIn(r.values(), "volumes_e2").value_or(0)) / 1e2;
    carbonation.circumstance = r.by;
    if (carbonation.method == "priming") {
        SPILE_ASSIGN(priming, primingOf(r.facts));
        carbonation.sugar = priming.sugar;
    } else {
        const SheetNumber pressure = numberOf("keg_pressure", r.facts);
        carbonation.gauge =
            pressure.form == Form::Pressure ? std::optional(pascals(pressure.value)) : std::nullopt;
        carbonation.temperature = temperatureIn(r.values(), "carb_temp_mc");
    }
    return made(cellar::carbonationEntry(r.cellar, carbonation));
}

Instant monthsAfter(Instant from, std::int64_t count)
{
    using std::chrono::sys_days;
    using std::chrono::year_month_day;
    const auto date = std::chrono::floor<std::chrono::days>(from);
    year_month_day later = year_month_day(date) + std::chrono::months(count);
    if (!later.ok()) {
        later = later.year() / later.month() / std::chrono::last;
    }
    return Instant(sys_days(later).time_since_epoch() + (from - date));
}

Made recordedPackage(const Recording& r)
{
    cellar::NewPackage package;
    package.lot = r.lot();
    package.lotCode = textIn(r.values(), "lot_code");
    package.packages = packagesOf(r.facts);
    if (package.packages.empty()) {
        return fail(ErrorCode::Malformed, "count_a", "nothing", "at least one package");
    }
    const Volume lost = r.facts.lot->row.left() - cellar::contentOf(package.packages);
    const auto share = fractionIn(r.values(), "loss_e2").value_or(0);
    // Not more than was foreseen: the rest is still there.
    package.lost = std::clamp(lost, Volume(), share * r.facts.lot->row.left());
    package.alcoholByVolume = fractionIn(r.values(), "abv_e2");
    package.labelStrength = fractionIn(r.values(), "label_abv_e2");
    package.law = textIn(r.values(), "law");
    const auto& carbonations = r.facts.lot->history.carbonations;
    if (!carbonations.empty()) {
        package.co2Volumes = carbonations.back().volumes;
    }
    if (const auto months = numberIn(r.values(), "best_before_months")) {
        package.bestBefore = monthsAfter(r.facts.now, *months);
    }
    package.circumstance = r.by;
    return made(cellar::packageEntry(r.cellar, package));
}

constexpr std::array recorders = {
    Recorder{"transfer", recordedTransfer},     Recorder{"part", recordedPart},
    Recorder{"empty", recordedEmpty},           Recorder{"finish", recordedFinish, true},
    Recorder{"treat", recordedTreatment, true}, Recorder{"carbonate", recordedCarbonation, true},
    Recorder{"package", recordedPackage, true},
};

}  // namespace

std::span<const Recorder> lotRecorders() { return recorders; }

}  // namespace spile::plan

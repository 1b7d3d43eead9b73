#include "core/plan/numbers.hpp"

#include "core/liquor/gravity.hpp"
#include "core/plan/barrel_shape.hpp"
#include "core/plan/numbers_parts.hpp"
#include "core/plan/packaging.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

namespace spile::plan {

namespace {

const std::vector<NumberSpec>& table()
{
    static const std::vector<NumberSpec> all = [] {
        std::vector<NumberSpec> made;
        for (const auto part : {barrelNumbers(), gasNumbers(), beerNumbers(), emptyingNumbers(),
                                finishingNumbers(), packagingNumbers()}) {
            made.insert(made.end(), part.begin(), part.end());
        }
        return made;
    }();
    return all;
}

std::optional<std::int64_t> scaled(const std::optional<double>& value, double scale)
{
    return value ? std::optional<std::int64_t>(std::llround(*value * scale)) : std::nullopt;
}

template <class Get>
std::optional<double> lastReading(const WorkFacts& facts, Get get)
{
    const auto& readings = facts.history.readings;
    const auto last = std::find_if(readings.rbegin(), readings.rend(),
                                   [&](const auto& reading) { return get(reading).has_value(); });
    return last == readings.rend() ? std::nullopt : get(*last);
}

using Stored = std::optional<std::int64_t>;

struct Expected {
    std::string_view ask;
    Stored (*of)(const WorkFacts&);
};

Stored expectedMass(const WorkFacts& facts)
{
    const auto full = fullVolumeOf(facts);
    constexpr double gramsPerMl = 1.01;  // of strong beer, near enough to begin from
    return full && facts.measures.tare ? Stored(std::llround(inGrams(*facts.measures.tare) +
                                                             gramsPerMl * inMillilitres(*full)))
                                       : std::nullopt;
}

Stored expectedDip(const WorkFacts& facts)
{
    const auto shape = shapeOf(facts.measures, facts.barrel.size);
    return shape ? Stored(std::llround(inMillimetres(shape->bilge))) : std::nullopt;
}

Result<std::optional<LotFacts>> lotFacts(ledger::Database& database, const SubjectId& subject,
                                         Instant now)
{
    SPILE_ASSIGN(row, cellar::lotById(database, subject));
    if (!row) {
        return std::optional<LotFacts>();
    }
    SPILE_ASSIGN(history, cellar::lotHistory(database, subject));
    LotFacts facts{std::move(*row), std::move(history), {}};
    for (char letter = 'A'; letter <= 'Z' && facts.freeCode.empty(); ++letter) {
        const std::string code = lotCodeOf(now, letter);
        SPILE_ASSIGN(taken, cellar::packagedAs(database, code));
        facts.freeCode = taken.empty() ? code : std::string();
    }
    return std::optional(std::move(facts));
}

// Of the beer that came in, by volume: where the stepper begins.
std::optional<double> strengthOfLot(const LotFacts& lot)
{
    double volume = 0;
    double alcohol = 0;
    for (const cellar::TransferRow& in : lot.history.transfers) {
        if (in.alcoholByVolume) {
            volume += in.volume.si();
            alcohol += in.volume.si() * *in.alcoholByVolume;
        }
    }
    return volume > 0 ? std::optional(alcohol / volume) : std::nullopt;
}

// How many packages the plan says.
Stored plannedCount(const WorkFacts& facts, const char* number)
{
    const SheetNumber planned = numberOf(number, facts);
    return planned.form == Form::Count ? Stored(std::llround(planned.value)) : std::nullopt;
}

// The dose that the trial leads to, in the ask's unit.
Stored scaledDose(const WorkFacts& facts, Form form, double perSi)
{
    const SheetNumber dose = numberOf("finish_dose", facts);
    return dose.form == form ? Stored(std::llround(dose.value * perSi)) : std::nullopt;
}

constexpr double e2 = 1e2;
constexpr double e4 = 1e4;
constexpr double perKilogram = 1e3;
constexpr double perCubicMetre = 1e6;

constexpr std::array expectations = {
    Expected{"volume_ml",
             [](const WorkFacts& facts) {
                 const auto full = fullVolumeOf(facts);
                 return full ? Stored(std::llround(inMillilitres(*full))) : std::nullopt;
             }},
    Expected{"tare_g",
             [](const WorkFacts& facts) {
                 const auto& tare = facts.measures.tare;
                 return tare ? Stored(std::llround(inGrams(*tare))) : std::nullopt;
             }},
    Expected{"mass_g", expectedMass},
    Expected{"dip_mm", expectedDip},
    Expected{"sg_e4",
             [](const WorkFacts& facts) {
                 return scaled(lastReading(facts, [](const auto& r) { return r.specificGravity; }),
                               e4);
             }},
    Expected{"ph_e2",
             [](const WorkFacts& facts) {
                 return scaled(lastReading(facts, [](const auto& r) { return r.ph; }), e2);
             }},
    Expected{"abv_e2",
             [](const WorkFacts& facts) {
                 if (facts.lot) {
                     return scaled(strengthOfLot(*facts.lot), e4);
                 }
                 const auto& fills = facts.history.fills;
                 return fills.empty() ? std::nullopt : scaled(fills.back().alcoholByVolume, e4);
             }},
    Expected{"out_ml",
             [](const WorkFacts& facts) {
                 const SheetNumber held = numberOf("expected_now", facts);
                 return held.form == Form::Volume ? Stored(std::llround(held.value * perCubicMetre))
                                                  : std::nullopt;
             }},
    Expected{"added_g",
             [](const WorkFacts& facts) { return scaledDose(facts, Form::Dose, perKilogram); }},
    Expected{"spirit_ml",
             [](const WorkFacts& facts) { return scaledDose(facts, Form::Volume, perCubicMetre); }},
    Expected{"label_abv_e2",
             [](const WorkFacts& facts) {
                 const auto measured = answered(facts, "abv_e2");
                 const auto label = labelStrength(measured.value_or(0) / e4);
                 return measured && label ? Stored(std::llround(*label * e4)) : std::nullopt;
             }},
    Expected{"count_a", [](const WorkFacts& facts) { return plannedCount(facts, "packs_a"); }},
    Expected{"count_b", [](const WorkFacts& facts) { return plannedCount(facts, "packs_b"); }},
    Expected{"count_c", [](const WorkFacts& facts) { return plannedCount(facts, "packs_c"); }},
};

}  // namespace

Result<WorkFacts> readFacts(ledger::Database& database, const SubjectId& subject, Instant now)
{
    SPILE_ASSIGN(row, cellar::barrelById(database, subject));
    SPILE_ASSIGN(lot, row ? std::nullopt : lotFacts(database, subject, now));
    if (!row && !lot) {
        return fail(ErrorCode::NotFound, "barrel", subject.hex(), "one that is registered");
    }
    WorkFacts facts;
    facts.now = now;
    facts.lot = std::move(lot);
    if (!row) {
        return facts;
    }
    facts.barrel = std::move(*row);
    SPILE_ASSIGN(measures, cellar::measuresOf(database, subject));
    facts.measures = measures;
    SPILE_ASSIGN(history, cellar::historyOf(database, subject));
    facts.history = std::move(history);
    if (facts.barrel.placeId) {
        SPILE_ASSIGN(climate, cellar::climatesOf(database, *facts.barrel.placeId));
        facts.climate = std::move(climate);
    }
    return facts;
}

SheetNumber numberOf(std::string_view name, const WorkFacts& facts)
{
    const auto& all = table();
    const auto found = std::find_if(all.begin(), all.end(),
                                    [&](const NumberSpec& spec) { return spec.name == name; });
    return found == all.end() ? unknown(std::string(name)) : found->of(facts);
}

std::span<const std::string_view> numberNames()
{
    static const std::vector<std::string_view> names = [] {
        std::vector<std::string_view> made;
        for (const NumberSpec& spec : table()) {
            made.push_back(spec.name);
        }
        return made;
    }();
    return names;
}

std::optional<std::int64_t> expectedOf(std::string_view ask, const WorkFacts& facts)
{
    const auto* const found = std::find_if(expectations.begin(), expectations.end(),
                                           [&](const Expected& one) { return one.ask == ask; });
    return found == expectations.end() ? std::nullopt : found->of(facts);
}

bool isUnusual(std::string_view ask, std::int64_t stored, const WorkFacts& facts)
{
    const auto expected = expectedOf(ask, facts);
    if (!expected) {
        return false;
    }
    // Further than a barrel's own spread and more than a careless reading.
    const auto far = [&](std::int64_t by) { return std::abs(stored - *expected) > by; };
    constexpr std::int64_t gravitySlip = 150;  // 0.0150
    constexpr std::int64_t phSlip = 60;        // 0.60
    if (ask == "sg_e4") {
        return far(gravitySlip);
    }
    if (ask == "ph_e2") {
        return far(phSlip);
    }
    if (ask == "volume_ml" || ask == "mass_g" || ask == "tare_g") {
        return far(*expected / 4);
    }
    return false;
}

std::optional<double> gravityAt20(const cellar::ReadingRow& reading)
{
    if (!reading.specificGravity || !reading.sampleTemperature || !reading.hydrometerReference) {
        return reading.specificGravity;
    }
    const auto corrected = liquor::correctedGravity(
        *reading.specificGravity, *reading.sampleTemperature, *reading.hydrometerReference);
    return corrected ? *corrected : *reading.specificGravity;
}

Temperature hydrometerReference(const cellar::WorkValues& values)
{
    const auto found = values.find("hydrometer");
    const std::string word = found == values.end() ? "" : found->second.text;
    if (word == "made for 60 °F") {
        return fahrenheit(60);
    }
    return celsius(word == "made for 15 °C" ? 15 : 20);
}

}  // namespace spile::plan

#include "qml/viewmodels/calculating_facts.hpp"

#include "core/plan/barrel_shape.hpp"

#include <array>

namespace spile::viewmodels {

namespace {

using Facts = plan::WorkFacts;
using Known = std::optional<double>;  // in SI

template <class Quantity>
Known si(const std::optional<Quantity>& quantity)
{
    return quantity ? Known(quantity->si()) : Known();
}

Known secondsBetween(Instant from, Instant to)
{
    const double seconds = std::chrono::duration<double>(to - from).count();
    return seconds >= 0 ? Known(seconds) : Known();
}

// --- the barrel

Known size(const Facts& facts) { return si(facts.barrel.size); }
Known measuredFull(const Facts& facts) { return si(facts.measures.full); }
Known tare(const Facts& facts) { return si(facts.measures.tare); }
Known stave(const Facts& facts) { return si(facts.measures.stave); }

// Only together do they make a shape.
Known measure(const Facts& facts, const std::optional<Length>& one)
{
    const cellar::BarrelMeasures& all = facts.measures;
    return all.length && all.bilge && all.head ? si(one) : Known();
}
Known length(const Facts& facts) { return measure(facts, facts.measures.length); }
Known bilge(const Facts& facts) { return measure(facts, facts.measures.bilge); }
Known head(const Facts& facts) { return measure(facts, facts.measures.head); }

Known headOfShape(const Facts& facts)
{
    const auto shape = plan::shapeOf(facts.measures, facts.barrel.size);
    return shape ? Known(shape->head.si()) : Known();
}
Known full(const Facts& facts)
{
    if (const auto shape = plan::shapeOf(facts.measures, facts.barrel.size)) {
        if (const auto volume = vessel::fullVolume(*shape)) {
            return volume->si();
        }
    }
    return size(facts);
}

// --- the beer in it

const cellar::FillRow* lastFill(const Facts& facts)
{
    return facts.barrel.filled && !facts.history.fills.empty() ? &facts.history.fills.back()
                                                               : nullptr;
}

Known held(const Facts& facts) { return facts.barrel.filled ? si(facts.barrel.volume) : Known(); }

// The last reading since the fill, else what the fill says.
Known lastMeasured(const Facts& facts, Known cellar::ReadingRow::*ofReading,
                   Known cellar::FillRow::*ofFill)
{
    const cellar::FillRow* fill = lastFill(facts);
    if (fill == nullptr) {
        return {};
    }
    const auto& readings = facts.history.readings;
    for (auto row = readings.rbegin(); row != readings.rend() && row->at >= fill->at; ++row) {
        if (*row.*ofReading) {
            return *row.*ofReading;
        }
    }
    return fill->*ofFill;
}
Known strength(const Facts& facts)
{
    return lastMeasured(facts, &cellar::ReadingRow::alcoholByVolume,
                        &cellar::FillRow::alcoholByVolume);
}
Known gravity(const Facts& facts)
{
    return lastMeasured(facts, &cellar::ReadingRow::specificGravity,
                        &cellar::FillRow::specificGravity);
}

// --- what happened since

Known timeInBarrel(const Facts& facts)
{
    return facts.barrel.filled && facts.barrel.filledAt
               ? secondsBetween(*facts.barrel.filledAt, facts.now)
               : Known();
}
// Until now, or until the fill that is in it.
Known timeEmpty(const Facts& facts)
{
    const cellar::BarrelRow& barrel = facts.barrel;
    if (!barrel.emptiedAt || (barrel.filled && !barrel.filledAt)) {
        return {};
    }
    return secondsBetween(*barrel.emptiedAt, barrel.filled ? *barrel.filledAt : facts.now);
}

template <class Row>
Known countSinceFill(const Facts& facts, const std::vector<Row>& rows)
{
    const cellar::FillRow* fill = lastFill(facts);
    return fill == nullptr ? Known()
                           : Known(static_cast<double>(std::count_if(
                                 rows.begin(), rows.end(),
                                 [&](const Row& row) { return row.at >= fill->at; })));
}
Known draws(const Facts& facts) { return countSinceFill(facts, facts.history.draws); }
Known topUps(const Facts& facts) { return countSinceFill(facts, facts.history.topUps); }

// The last gauge of this fill: what was found, and when.
const cellar::GaugeRow* lastGauge(const Facts& facts)
{
    const cellar::FillRow* fill = lastFill(facts);
    const auto& gauges = facts.history.gauges;
    return fill != nullptr && fill->volume && !gauges.empty() && gauges.back().at > fill->at
               ? &gauges.back()
               : nullptr;
}
Known filledWith(const Facts& facts)
{
    return lastFill(facts) != nullptr ? si(lastFill(facts)->volume) : Known();
}
Known found(const Facts& facts)
{
    return lastGauge(facts) != nullptr ? Known(lastGauge(facts)->volume.si()) : Known();
}
Known timeToGauge(const Facts& facts)
{
    return lastGauge(facts) != nullptr ? secondsBetween(lastFill(facts)->at, lastGauge(facts)->at)
                                       : timeInBarrel(facts);
}
Known drawnToGauge(const Facts& facts)
{
    const cellar::GaugeRow* gauge = lastGauge(facts);
    if (gauge == nullptr) {
        return {};
    }
    const Instant from = lastFill(facts)->at;
    double drawn = 0;
    for (const cellar::DrawRow& draw : facts.history.draws) {
        drawn += draw.at >= from && draw.at <= gauge->at ? draw.volume.si() : 0;
    }
    for (const cellar::TopUpRow& topUp : facts.history.topUps) {
        drawn -= topUp.at >= from && topUp.at <= gauge->at ? topUp.volume.si() : 0;
    }
    return drawn;
}

// --- its place

Known temperature(const Facts& facts)
{
    return facts.climate.empty() ? Known() : Known(facts.climate.back().temperature.si());
}
Known humidity(const Facts& facts)
{
    return facts.climate.empty() ? Known() : Known(facts.climate.back().relativeHumidity);
}

// By calculator and not by the input's name alone, which may mean another thing elsewhere: the
// length over all, the warmest that the beer ever was.
struct Meaning {
    std::string_view calculator, input;
    Known (*of)(const Facts&);
};
constexpr std::array meanings = {Meaning{"mix", "first-volume", held},
                                 Meaning{"mix", "first-abv", strength},
                                 Meaning{"mix", "first-gravity", gravity},
                                 Meaning{"spirit-to-reach", "volume", held},
                                 Meaning{"spirit-to-reach", "abv", strength},
                                 Meaning{"spirit-to-reach", "gravity", gravity},
                                 Meaning{"alcohol", "final", gravity},
                                 Meaning{"alcohol", "abv", strength},
                                 Meaning{"gauge", "size", size},
                                 Meaning{"gauge", "length", length},
                                 Meaning{"gauge", "bilge", bilge},
                                 Meaning{"gauge", "head", head},
                                 Meaning{"gauge", "full", measuredFull},
                                 Meaning{"gauge", "tare", tare},
                                 Meaning{"gauge", "gravity", gravity},
                                 Meaning{"dip-table", "size", size},
                                 Meaning{"dip-table", "length", length},
                                 Meaning{"dip-table", "bilge", bilge},
                                 Meaning{"dip-table", "head", head},
                                 Meaning{"dip-table", "full", measuredFull},
                                 Meaning{"barrel", "stave", stave},
                                 Meaning{"purge", "volume", full},
                                 Meaning{"purge", "temperature", temperature},
                                 Meaning{"room-air", "temperature", temperature},
                                 Meaning{"push", "head", headOfShape},
                                 Meaning{"push", "volume", held},
                                 Meaning{"push", "gravity", gravity},
                                 Meaning{"prime", "volume", held},
                                 Meaning{"loss", "volume", held},
                                 Meaning{"loss", "abv", strength},
                                 Meaning{"loss", "gravity", gravity},
                                 Meaning{"loss", "size", size},
                                 Meaning{"loss", "stave", stave},
                                 Meaning{"loss", "temperature", temperature},
                                 Meaning{"loss", "humidity", humidity},
                                 Meaning{"loss", "empty", timeEmpty},
                                 Meaning{"soak", "size", size},
                                 Meaning{"soak", "empty", timeEmpty},
                                 Meaning{"explain", "full", filledWith},
                                 Meaning{"explain", "found", found},
                                 Meaning{"explain", "drawn", drawnToGauge},
                                 Meaning{"explain", "time", timeToGauge},
                                 Meaning{"explain", "temperature", temperature},
                                 Meaning{"explain", "humidity", humidity},
                                 Meaning{"explain", "abv", strength},
                                 Meaning{"explain", "gravity", gravity},
                                 Meaning{"explain", "stave", stave},
                                 Meaning{"explain", "empty", timeEmpty},
                                 Meaning{"wet", "size", size},
                                 Meaning{"wet", "empty", timeEmpty},
                                 Meaning{"wet", "beer-volume", held},
                                 Meaning{"wet", "beer-abv", strength},
                                 Meaning{"wet", "beer-gravity", gravity},
                                 Meaning{"oxygen", "size", size},
                                 Meaning{"oxygen", "stave", stave},
                                 Meaning{"oxygen", "time", timeInBarrel},
                                 Meaning{"oxygen", "draws", draws},
                                 Meaning{"oxygen", "top-ups", topUps},
                                 Meaning{"oxygen", "temperature", temperature},
                                 Meaning{"package", "volume", held},
                                 Meaning{"package", "abv", strength}};

// The asks of the work sheets that this device remembers, in their stored units.
struct Remembered {
    std::string_view calculator, input, ask;
    double perStored;
};
constexpr double airChange = 1e-2 / factor::hour;
constexpr std::array rememberedAsks = {
    Remembered{"purge", "pressure", "pressure_pa", 1},
    Remembered{"purge", "hose-bore", "bore_um", 1e-6},
    Remembered{"purge", "hose-length", "hose_mm", 1e-3},
    Remembered{"purge", "cylinder", "cylinder_g", 1e-3},
    Remembered{"purge", "room", "room_l", 1e-3},
    Remembered{"purge", "air-changes", "air_changes_e2", airChange},
    Remembered{"room-air", "room", "room_l", 1e-3},
    Remembered{"room-air", "air-changes", "air_changes_e2", airChange}};

void give(plan::Given& given, const plan::Calculator& calculator, std::string_view name,
          Known value)
{
    const plan::CalculatorInput* input = plan::findInput(calculator, name);
    if (value && input != nullptr && *value >= input->least && *value <= input->most) {
        given.set(name, *value);
    }
}

}  // namespace

void giveFacts(plan::Given& given, const plan::Calculator& calculator, const plan::WorkFacts& facts)
{
    for (const Meaning& meaning : meanings) {
        if (meaning.calculator == calculator.name) {
            give(given, calculator, meaning.input, meaning.of(facts));
        }
    }
}

void giveRemembered(plan::Given& given, const plan::Calculator& calculator,
                    const Settings& settings)
{
    for (const Remembered& one : rememberedAsks) {
        if (one.calculator != calculator.name) {
            continue;
        }
        const QString ask =
            QString::fromUtf8(one.ask.data(), static_cast<qsizetype>(one.ask.size()));
        const QVariant last = settings.lastAnswer(ask);
        if (last.canConvert<qlonglong>()) {
            give(given, calculator, one.input,
                 one.perStored * static_cast<double>(last.toLongLong()));
        }
    }
}

}  // namespace spile::viewmodels

#include "core/plan/recording.hpp"

#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/filling.hpp"
#include "core/cellar/acts/tasting.hpp"
#include "core/cellar/acts/tending.hpp"
#include "core/cellar/vocabulary.hpp"
#include "core/plan/work_values.hpp"

#include <algorithm>
#include <array>

namespace spile::plan {

namespace {

Made checked(const Recording& r, const std::string& finding)
{
    return made(
        cellar::checkEntry(r.cellar, {r.barrel(), finding, cellar::isSound(finding), r.by}));
}

// A beer by its name: the one that is known, or a new one.
Result<std::optional<SubjectId>> batchOf(const Recording& r)
{
    const std::string name = textIn(r.values(), "batch");
    if (name.empty()) {
        return std::optional<SubjectId>();
    }
    SPILE_ASSIGN(batch, cellar::batchNamed(r.cellar, name));
    return std::optional(batch);
}

// The lot that a barrel is filled from; it has to be there. The newest of that name.
Result<std::optional<SubjectId>> sourceOf(const Recording& r)
{
    const std::string name = textIn(r.values(), "from_lot");
    if (name.empty()) {
        return std::optional<SubjectId>();
    }
    constexpr int most = 500;
    SPILE_ASSIGN(lots, cellar::lots(r.cellar.database(), {}, most));
    const auto found = std::find_if(lots.begin(), lots.end(),
                                    [&](const cellar::LotRow& lot) { return lot.name == name; });
    if (found == lots.end()) {
        return fail(ErrorCode::NotFound, "from_lot", name, "a lot that is known");
    }
    return std::optional(found->lot);
}

Result<Volume> needVolume(const Recording& r, const std::string& way)
{
    const auto volume = volumeByWay(way, r.facts);
    if (!volume) {
        return fail(ErrorCode::Malformed, "volume_ml", way, "all that the volume follows from");
    }
    return *volume;
}

Made recordedFill(const Recording& r)
{
    SPILE_ASSIGN(volume, needVolume(r, textIn(r.values(), "fill_way")));
    SPILE_ASSIGN(batch, batchOf(r));
    SPILE_ASSIGN(lot, sourceOf(r));
    return made(cellar::fillEntry(
        r.cellar, {r.barrel(), batch, volume, fractionIn(r.values(), "abv_e2"), {}, r.by, lot}));
}

Made recordedGauge(const Recording& r)
{
    const std::string way = textIn(r.values(), "gauge_way");
    SPILE_ASSIGN(volume, needVolume(r, way));
    cellar::NewGauge gauge{r.barrel(), volume, way, {}, {}, {}, r.by};
    if (way == "dip") {
        gauge.dip = millimetres(static_cast<double>(numberIn(r.values(), "dip_mm").value_or(0)));
    } else if (way == "weight") {
        gauge.mass = massIn(r.values(), "mass_g");
    } else if (way == "nail") {
        gauge.bound = textIn(r.values(), "nail_runs") == "yes" ? cellar::Bound::AtLeast
                                                               : cellar::Bound::AtMost;
    }
    return made(cellar::gaugeEntry(r.cellar, gauge));
}

Made recordedReading(const Recording& r)
{
    cellar::NewReading reading;
    reading.barrel = r.barrel();
    if (const auto gravity = fractionIn(r.values(), "sg_e4")) {
        reading.specificGravity = gravity;
        reading.sampleTemperature = temperatureIn(r.values(), "sample_temp_mc");
        if (reading.sampleTemperature) {
            reading.hydrometerReference = hydrometerReference(r.values());
        }
    }
    if (const auto ph = numberIn(r.values(), "ph_e2")) {
        reading.ph = static_cast<double>(*ph) / 1e2;
    }
    reading.temperature = temperatureIn(r.values(), "temp_mc");
    reading.circumstance = r.by;
    return made(cellar::readingEntry(reading));
}

Made recordedDraw(const Recording& r, const char* method)
{
    return made(cellar::drawEntry(
        r.cellar,
        {r.barrel(), volumeIn(r.values(), "draw_ml").value_or(Volume()), method, {}, {}, r.by}));
}

Made recordedDose(const Recording& r)
{
    const std::string substance = textIn(r.values(), "substance");
    if (substance.empty()) {  // the spirit was skipped
        return std::optional<ledger::NewEntry>();
    }
    return made(cellar::doseEntry(r.cellar, {r.barrel(),
                                             substance,
                                             volumeIn(r.values(), "spirit_ml"),
                                             volumeIn(r.values(), "drained_ml"),
                                             {},
                                             fractionIn(r.values(), "spirit_abv_e2"),
                                             r.by}));
}

Made recordedTopUp(const Recording& r)
{
    SPILE_ASSIGN(batch, batchOf(r));
    SPILE_ASSIGN(lot, sourceOf(r));
    return made(cellar::topUpEntry(r.cellar, {r.barrel(),
                                              volumeIn(r.values(), "top_up_ml").value_or(Volume()),
                                              {},
                                              batch,
                                              fractionIn(r.values(), "abv_e2"),
                                              r.by,
                                              lot}));
}

// Measures correct the registration; they are an act of their own, before the step's.
Made recordedMeasures(const Recording& r)
{
    SPILE_ASSIGN(measures, measuresFromTape(r.facts));
    SPILE_TRY(cellar::recordMeasures(r.cellar, r.barrel(), measures));
    return std::optional<ledger::NewEntry>();
}

Made recordedTare(const Recording& r)
{
    cellar::BarrelMeasures measures;
    measures.tare = massIn(r.values(), "tare_g");
    SPILE_TRY(cellar::recordMeasures(r.cellar, r.barrel(), measures));
    return std::optional<ledger::NewEntry>();
}

Made recordedEmptied(const Recording& r)
{
    SPILE_ASSIGN(days, needDays(r.values()));
    cellar::BarrelMeasures measures;
    measures.emptied = r.facts.now - std::chrono::days(days);
    SPILE_TRY(cellar::recordMeasures(r.cellar, r.barrel(), measures));
    return std::optional<ledger::NewEntry>();
}

constexpr std::string_view tasting = "taste";

constexpr std::array recorders = {
    Recorder{"check", [](const Recording& r) { return checked(r, textIn(r.values(), "finding")); }},
    Recorder{"check_after",
             [](const Recording& r) { return checked(r, textIn(r.values(), "finding_after")); }},
    Recorder{"repair",
             [](const Recording& r) {
                 return made(cellar::repairEntry(r.cellar,
                                                 {r.barrel(), textIn(r.values(), "repair"), r.by}));
             }},
    Recorder{"fill", recordedFill},
    Recorder{"gauge", recordedGauge},
    Recorder{"reading", recordedReading},
    Recorder{"draw_hole", [](const Recording& r) { return recordedDraw(r, "sample hole"); }},
    Recorder{"draw_bung", [](const Recording& r) { return recordedDraw(r, "bunghole"); }},
    Recorder{"dose", recordedDose},
    Recorder{"top_up", recordedTopUp},
    Recorder{"measures", recordedMeasures},
    Recorder{"tare", recordedTare},
    Recorder{"emptied", recordedEmptied},
    Recorder{tasting, [](const Recording&) { return Made(std::nullopt); }},
};

const Recorder* findRecorder(std::string_view name)
{
    for (const std::span<const Recorder> all :
         {std::span<const Recorder>(recorders), lotRecorders()}) {
        const auto found = std::find_if(all.begin(), all.end(),
                                        [&](const Recorder& one) { return one.name == name; });
        if (found != all.end()) {
            return &*found;
        }
    }
    return nullptr;
}

}  // namespace

Result<std::vector<ledger::NewEntry>> entriesOf(const Step& step, const Recording& recording)
{
    std::vector<ledger::NewEntry> entries;
    for (const std::string& name : step.records) {
        const Recorder* recorder = findRecorder(name);
        if (recorder == nullptr) {
            return fail(ErrorCode::NotFound, "sheet", name, "something that a step can record");
        }
        if (recorder->onLot && !recording.facts.lot) {
            return fail(ErrorCode::NotFound, "lot", name, "work on a lot");
        }
        SPILE_ASSIGN(entry, recorder->make(recording));
        if (entry) {
            entries.push_back(std::move(*entry));
        }
    }
    return entries;
}

bool knowsRecord(std::string_view name) { return findRecorder(name) != nullptr; }

bool tastes(const Step& step)
{
    return std::find(step.records.begin(), step.records.end(), tasting) != step.records.end();
}

}  // namespace spile::plan

#include "core/cellar/true_time.hpp"
#include "core/plan/numbers.hpp"
#include "platform/desk/rows.hpp"

#include <cmath>

namespace spile::desk {

using nlohmann::json;

double litresOf(Volume v) { return std::round(inMillilitres(v)) / 1e3; }

// What is dated after `now` is marked: a clock is wrong, or a date was mistyped.
void addTimeRemark(json& made, const cellar::FactRow& row, Instant now)
{
    if (cellar::isInFuture(row.at, now)) {
        made["in_future"] = true;
    }
    if (row.clock) {
        made["clock_said"] = toIsoTime(*row.clock);
    }
}

namespace {

json orNull(const std::string& text) { return text.empty() ? json() : json(text); }

json orNull(const std::optional<Volume>& v) { return v ? json(litresOf(*v)) : json(); }

template <class T>
json orNull(const std::optional<T>& value)
{
    return value ? json(*value) : json();
}

json fact(const cellar::FactRow& row, Instant now)
{
    json made = {{"at", toIsoTime(row.at)}, {"entry", row.entry.hex()}, {"device", row.device}};
    if (!row.person.empty()) {
        made["person"] = row.person;
    }
    if (!row.note.empty()) {
        made["note"] = row.note;
    }
    addTimeRemark(made, row, now);
    if (row.amended) {
        made["amended"] = true;
    }
    if (row.twoValues) {
        made["two_values"] = true;
    }
    return made;
}

json toJson(const cellar::FillRow& row, Instant now)
{
    json made = fact(row, now);
    made["beer"] = orNull(row.beer);
    made["volume_l"] = orNull(row.volume);
    made["filled_on"] = dateText(row.at, row.precision);
    return made;
}

json toJson(const cellar::GaugeRow& row, Instant now)
{
    json made = fact(row, now);
    made["volume_l"] = litresOf(row.volume);
    made["method"] = row.method;
    if (row.bound != cellar::Bound::None) {
        made["bound"] = row.bound == cellar::Bound::AtLeast ? "at least" : "at most";
    }
    return made;
}

json toJson(const cellar::DrawRow& row, Instant now)
{
    json made = fact(row, now);
    made["volume_l"] = litresOf(row.volume);
    made["method"] = row.method;
    return made;
}

json toJson(const cellar::TasteRow& row, Instant now)
{
    json made = fact(row, now);
    made["taster"] = row.person;
    made["scores"] = json::object();
    for (const auto& [attribute, score] : row.scores) {
        made["scores"][attribute] = orNull(score);
    }
    made["faults"] = row.faults;
    made["liking"] = orNull(row.liking);
    return made;
}

json percentOrNull(const std::optional<double>& fraction)
{
    return fraction ? json(std::round(*fraction * 1e4) / 1e2) : json();
}

json celsiusOrNull(const std::optional<Temperature>& temperature)
{
    return temperature ? json(std::round(inCelsius(*temperature) * 1e3) / 1e3) : json();
}

json toJson(const cellar::ReadingRow& row, Instant now)
{
    json made = fact(row, now);
    made["sg"] = orNull(row.specificGravity);  // as read
    if (row.sampleTemperature && row.hydrometerReference) {
        made["sg_20c"] = std::round(plan::gravityAt20(row).value_or(0) * 1e4) / 1e4;
    }
    made["ph"] = orNull(row.ph);
    made["abv_percent"] = percentOrNull(row.alcoholByVolume);
    made["temp_c"] = celsiusOrNull(row.temperature);
    made["hydrometer_ref_c"] = celsiusOrNull(row.hydrometerReference);
    made["sample_temp_c"] = celsiusOrNull(row.sampleTemperature);
    return made;
}

json toJson(const cellar::TopUpRow& row, Instant now)
{
    json made = fact(row, now);
    made["volume_l"] = litresOf(row.volume);
    made["what"] = orNull(row.what);
    made["abv_percent"] = percentOrNull(row.alcoholByVolume);
    return made;
}

json toJson(const cellar::DoseRow& row, Instant now)
{
    json made = fact(row, now);
    made["substance"] = row.substance;
    made["volume_l"] = orNull(row.volume);
    made["drained_l"] = orNull(row.drained);
    made["mass_kg"] = row.mass ? json(inKilograms(*row.mass)) : json();
    made["abv_percent"] = percentOrNull(row.alcoholByVolume);
    return made;
}

json toJson(const cellar::OtherRow& row, Instant now)
{
    json made = fact(row, now);
    made["kind"] = row.kind;
    made["text"] = row.text;
    if (row.chance) {
        made["outlook_chance"] = *row.chance;
    }
    if (row.best) {
        made["outlook_best_at"] = toIsoTime(*row.best);
    }
    return made;
}

json toJson(const cellar::PhotoRow& row, Instant now)
{
    json made = fact(row, now);
    made["sha256"] = row.hash.hex();
    made["bytes"] = row.bytes;
    made["purpose"] = row.purpose;
    made["here"] = row.here;
    return made;
}

template <class Row>
json list(const std::vector<Row>& rows, Instant now)
{
    json made = json::array();
    for (const Row& row : rows) {
        made.push_back(toJson(row, now));
    }
    return made;
}

}  // namespace

std::string dateText(Instant t, cellar::DatePrecision precision)
{
    std::string day = toIsoDate(t);
    switch (precision) {
        case cellar::DatePrecision::Day:
            return day;
        case cellar::DatePrecision::Month:
            return day.substr(0, 7);
        case cellar::DatePrecision::Year:
            return day.substr(0, 4);
    }
    return day;
}

json toJson(const cellar::BarrelRow& barrel)
{
    return {{"code", barrel.code},
            {"mark", orNull(barrel.mark)},
            {"spirit", orNull(barrel.spirit)},
            {"fill_number", orNull(barrel.fillNumber)},
            {"beer", orNull(barrel.beer)},
            {"place", orNull(barrel.place)},
            {"size_l", orNull(barrel.size)},
            {"volume_l", orNull(barrel.volume)},
            {"filled_on",
             barrel.filledAt ? json(dateText(*barrel.filledAt, barrel.filledPrecision)) : json()},
            {"tastings_count", barrel.tastings},
            {"next_step", barrel.nextStep},
            {"due_on", barrel.due ? json(toIsoDate(*barrel.due)) : json()},
            {"due_reason", orNull(barrel.dueReason)}};
}

json toJson(const cellar::BarrelHistory& history, Instant now)
{
    return {{"fills", list(history.fills, now)},       {"gauges", list(history.gauges, now)},
            {"draws", list(history.draws, now)},       {"tastings", list(history.tastings, now)},
            {"readings", list(history.readings, now)}, {"photos", list(history.photos, now)},
            {"top_ups", list(history.topUps, now)},    {"doses", list(history.doses, now)},
            {"others", list(history.others, now)}};
}

}  // namespace spile::desk

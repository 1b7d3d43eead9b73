#include "core/wood/climate_days.hpp"

#include <algorithm>
#include <limits>

namespace spile::wood {

namespace {

constexpr std::int64_t secondsPerDay = 86'400;

Result<void> needRecords(std::span<const ClimateRecord> records)
{
    for (std::size_t i = 0; i < records.size(); ++i) {
        SPILE_TRY(checkClimate(records[i].climate));
        if (i > 0 && records[i].second < records[i - 1].second) {
            return fail(ErrorCode::Malformed, "climate records", std::to_string(i),
                        "records in order of time");
        }
    }
    return {};
}

// The end of a day that begins at `second`, or the end of time.
std::int64_t dayAfter(std::int64_t second)
{
    constexpr std::int64_t last = std::numeric_limits<std::int64_t>::max();
    return second > last - secondsPerDay ? last : second + secondsPerDay;
}

Climate meanOf(std::span<const ClimateRecord> records)
{
    // From the first record on, so that equal records have exactly their own mean.
    const Climate& first = records.front().climate;
    double kelvin = 0;
    double humidity = 0;
    for (const ClimateRecord& record : records) {
        kelvin += record.climate.temperature.si() - first.temperature.si();
        humidity += record.climate.relativeHumidity - first.relativeHumidity;
    }
    const auto count = static_cast<double>(records.size());
    return {kelvins(first.temperature.si() + kelvin / count),
            std::clamp(first.relativeHumidity + humidity / count, 0.0, 1.0)};
}

}  // namespace

Result<void> climateDays(std::span<const ClimateRecord> records, std::int64_t firstSecond,
                         std::span<Climate> out, const Climate& usual)
{
    SPILE_TRY(checkClimate(usual));
    SPILE_TRY(needRecords(records));
    std::size_t next = 0;
    while (next < records.size() && records[next].second < firstSecond) {
        ++next;
    }
    Climate held = next > 0 ? records[next - 1].climate : usual;
    std::int64_t begin = firstSecond;
    for (Climate& day : out) {
        const std::int64_t end = dayAfter(begin);
        const std::size_t first = next;
        while (next < records.size() && records[next].second < end) {
            ++next;
        }
        day = held;
        if (next > first) {
            // One record stays as it is: the mean would cost its last digit.
            day = next - first == 1 ? records[first].climate
                                    : meanOf(records.subspan(first, next - first));
            held = records[next - 1].climate;
        }
        begin = end;
    }
    return {};
}

}  // namespace spile::wood

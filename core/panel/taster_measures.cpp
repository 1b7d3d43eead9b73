#include "core/panel/components.hpp"
#include "core/panel/least_squares.hpp"
#include "core/panel/taster_records.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <map>
#include <numeric>
#include <set>

namespace spile::panel {

// A drift needs sittings over some time, and so does the knowledge of what a sitting moves.
static constexpr std::size_t sittingsNeeded = 3;
static constexpr double driftMonthsNeeded = 6;
static constexpr double monthsPerYear = 12;

static std::vector<double> columnOf(const std::vector<Meeting>& meetings, double Meeting::*value)
{
    std::vector<double> column;
    std::transform(meetings.begin(), meetings.end(), std::back_inserter(column),
                   [value](const Meeting& meeting) { return meeting.*value; });
    return column;
}

static double meanOf(const std::vector<Meeting>& meetings, double Meeting::*value)
{
    const std::vector<double> column = columnOf(meetings, value);
    return std::accumulate(column.begin(), column.end(), 0.0) / static_cast<double>(column.size());
}

static std::size_t sittingsOf(const std::vector<Meeting>& meetings)
{
    std::set<int> sessions;
    for (const Meeting& meeting : meetings) {
        sessions.insert(meeting.session);
    }
    return sessions.size();
}

// The variance that a taster's mood of a sitting gives to all its residuals.
static double sittingVariance(const std::vector<Meeting>& meetings,
                              const std::vector<double>& residuals)
{
    std::map<int, int> place;
    for (const Meeting& meeting : meetings) {
        place.emplace(meeting.session, static_cast<int>(place.size()));
    }
    Factor sitting{{}, static_cast<int>(place.size())};
    for (const Meeting& meeting : meetings) {
        sitting.level.push_back(place[meeting.session]);
    }
    // One glass a sitting: the residuals' own scatter has it all.
    const auto found = componentsOf(residuals, {sitting});
    return found ? found->deviations[0] * found->deviations[0] : 0;
}

// How far the latest sitting lies off what the earlier ones foretell.
static std::optional<Measured> latestOf(const std::vector<Meeting>& meetings, bool beersDiffer)
{
    std::vector<Meeting> earlier;
    std::vector<Meeting> latest;
    std::partition_copy(
        meetings.begin(), meetings.end(), std::back_inserter(latest), std::back_inserter(earlier),
        [&](const Meeting& meeting) { return meeting.session == meetings.back().session; });
    if (earlier.size() < static_cast<std::size_t>(beersNeeded) ||
        sittingsOf(earlier) < sittingsNeeded) {
        return std::nullopt;
    }
    std::vector<std::vector<double>> columns;
    if (beersDiffer) {
        columns.push_back(columnOf(earlier, &Meeting::expected));
    }
    const auto fit = straightFit(columnOf(earlier, &Meeting::score), columns);
    if (!fit || !(fit->variance > 0)) {
        return std::nullopt;
    }
    const auto glasses = static_cast<double>(latest.size());
    Measured off;
    std::vector<double> centre(columns.size());
    for (const Meeting& meeting : latest) {
        const std::vector<double> x(columns.size(), meeting.expected);
        off.value += (meeting.score - fit->at(x)) / glasses;
        for (double& mean : centre) {
            mean += meeting.expected / glasses;
        }
    }
    off.error = std::sqrt(fit->variance * (1 / glasses + fit->relativeVarianceAt(centre)) +
                          sittingVariance(earlier, fit->residuals));
    return off;
}

// The drift of the bias in a year, from `fitted` a month. Where all beers rise, a gain that is not
// known well looks like a drift, and so does a gain that is not 1 in the bare difference to the
// others; what both show is the taster's.
static std::optional<Measured> driftOf(const std::vector<Meeting>& meetings, Measured fitted)
{
    std::vector<double> apart;
    apart.reserve(meetings.size());
    for (const Meeting& meeting : meetings) {
        apart.push_back(meeting.score - meeting.given);
    }
    const auto bare = straightFit(apart, {columnOf(meetings, &Meeting::months)});
    if (!bare) {
        return std::nullopt;
    }
    Measured drift;
    if (fitted.value * bare->slopes[0] > 0) {
        drift.value = std::copysign(std::min(std::abs(fitted.value), std::abs(bare->slopes[0])),
                                    fitted.value);
    }
    drift.error = std::max(fitted.error, bare->slopeError(0));
    // Against the others; against the panel, the taster included, it is less by one share.
    const double others = meanOf(meetings, &Meeting::others);
    const double yearly = monthsPerYear * others / (others + 1);
    return Measured{drift.value * yearly, drift.error * yearly};
}

void measure(const std::vector<Meeting>& meetings, bool beersDiffer, TasterOnAttribute& taster)
{
    if (meetings.size() < static_cast<std::size_t>(beersNeeded)) {
        return;
    }
    const bool drifts = sittingsOf(meetings) >= sittingsNeeded &&
                        meetings.back().months - meetings.front().months >= driftMonthsNeeded;
    std::vector<std::vector<double>> columns;
    if (beersDiffer) {
        columns.push_back(columnOf(meetings, &Meeting::expected));
    }
    if (drifts) {
        columns.push_back(columnOf(meetings, &Meeting::months));
    }
    const auto fit = straightFit(columnOf(meetings, &Meeting::score), columns);
    if (!fit) {
        return;
    }
    double gain = 1;
    if (beersDiffer) {
        gain = fit->slopes.front();
        taster.gain = Measured{gain, fit->slopeError(0)};
    }
    if (drifts) {
        taster.driftPerYear =
            driftOf(meetings, {fit->slopes.back(), fit->slopeError(columns.size() - 1)});
    }
    // What scatters is the taster and what is not known of the beers.
    const double unsure = meanOf(meetings, &Meeting::unsure);
    const double own = std::max(fit->variance - gain * gain * unsure, stepVariance);
    taster.spread = Spread{std::sqrt(own), fit->freedom, 0, 0, false};
    taster.latest = latestOf(meetings, beersDiffer);
}

}  // namespace spile::panel

#include "core/plan/flights.hpp"

#include <algorithm>
#include <set>

namespace spile::plan {

using cellar::FlightGlass;
using cellar::FlightRow;
using panel::Soundness;

namespace {

constexpr int lowestNumber = 101;
constexpr int highestNumber = 999;
constexpr std::int64_t sourFrom = 7;

int freeNumber(Random& random, std::set<int>& taken)
{
    for (;;) {
        const int number =
            lowestNumber + static_cast<int>(random.below(highestNumber - lowestNumber + 1));
        if (taken.insert(number).second) {
            return number;
        }
    }
}

Result<void> checkBarrels(const std::vector<SubjectId>& barrels)
{
    if (barrels.size() < flightBarrelsLeast || barrels.size() > flightBarrelsMost) {
        return fail(ErrorCode::OutOfRange, "barrels", std::to_string(barrels.size()), "2 to 12");
    }
    if (std::set<SubjectId>(barrels.begin(), barrels.end()).size() != barrels.size()) {
        return fail(ErrorCode::Conflict, "barrels", "one is named twice", "each once");
    }
    return {};
}

// A number of its own for the design's row: the same on every device.
int seedOf(const SubjectId& flight)
{
    const ByteView bytes = flight.bytes();
    constexpr int byte = 256;
    return static_cast<int>(bytes[SubjectId::size - 2]) * byte +
           static_cast<int>(bytes[SubjectId::size - 1]);
}

Soundness soundnessBy(AlarmKind kind)
{
    switch (kind) {
        case AlarmKind::PhFalls:
        case AlarmKind::AcidityJumps:
        case AlarmKind::SourFault:
            return Soundness::Sour;
        case AlarmKind::Referments:
        case AlarmKind::GravityFalls:
        case AlarmKind::Oxidised:
        case AlarmKind::Unsound:
            return Soundness::Suspect;
        case AlarmKind::Leaks:
        case AlarmKind::Silent:
        case AlarmKind::TooFar:
            return Soundness::Clean;
    }
    return Soundness::Clean;
}

Soundness soundnessBySigns(const cellar::Signs& signs)
{
    if (signs.faults.contains("vinegar") || signs.faults.contains("solvent") ||
        signs.acidity.value_or(0) >= sourFrom) {
        return Soundness::Sour;
    }
    const bool suspect = signs.looksUnsound || !signs.faults.empty() || signs.verdict == "destroy";
    return suspect ? Soundness::Suspect : Soundness::Clean;
}

}  // namespace

Soundness soundnessOf(const cellar::Signs& signs, const std::vector<Alarm>& alarms)
{
    Soundness worst = soundnessBySigns(signs);
    for (const Alarm& alarm : alarms) {
        worst = std::max(worst, soundnessBy(alarm.kind));
    }
    return worst;
}

Result<Suspicion> suspicionOf(ledger::Database& database, const SubjectId& barrel, Instant now)
{
    Suspicion suspicion;
    SPILE_ASSIGN(signs, cellar::signsOf(database, barrel));
    SPILE_ASSIGN(facts, readFacts(database, barrel, now));
    suspicion.signs = std::move(signs);
    suspicion.alarms = alarmsOf(facts, nullptr);
    suspicion.soundness = soundnessOf(suspicion.signs, suspicion.alarms);
    return suspicion;
}

Result<cellar::NewFlight> planFlight(ledger::Database& database, Random& random,
                                     const std::vector<SubjectId>& barrels, bool pourOneTwice,
                                     Instant now)
{
    SPILE_TRY(checkBarrels(barrels));
    std::vector<Soundness> soundness;
    for (const SubjectId& barrel : barrels) {
        SPILE_ASSIGN(suspicion, suspicionOf(database, barrel, now));
        soundness.push_back(suspicion.soundness);
    }
    const auto clean =
        static_cast<std::size_t>(std::count(soundness.begin(), soundness.end(), Soundness::Clean));
    if (pourOneTwice && clean == 0) {
        return fail(ErrorCode::Conflict, "barrels", "none is clean", "a clean one to pour twice");
    }
    // The clean ones come first, so their places are 0 to clean - 1.
    const std::size_t twice =
        pourOneTwice ? random.below(static_cast<std::uint32_t>(clean)) : barrels.size();
    cellar::NewFlight flight;
    std::set<int> taken;
    for (const std::size_t barrel : panel::drawOrder(soundness)) {
        const bool repeats = flight.glasses.size() == twice;
        flight.glasses.push_back({freeNumber(random, taken), barrels[barrel]});
        if (repeats) {
            flight.glasses.push_back({freeNumber(random, taken), barrels[barrel]});
        }
    }
    flight.cleanGlasses = static_cast<int>(clean) + (pourOneTwice ? 1 : 0);
    return flight;
}

const FlightGlass* nextToDraw(const FlightRow& flight)
{
    const auto next = std::find_if(flight.glasses.begin(), flight.glasses.end(),
                                   [](const FlightGlass& glass) { return !glass.drawn; });
    return next == flight.glasses.end() ? nullptr : &*next;
}

const FlightGlass* nextToTaste(const FlightRow& flight, const SubjectId& taster, int place)
{
    std::vector<Soundness> soundness;
    for (const FlightGlass& glass : flight.glasses) {
        soundness.push_back(glass.clean ? Soundness::Clean : Soundness::Suspect);
    }
    for (const std::size_t index : panel::glassOrder(soundness, seedOf(flight.flight), place)) {
        const FlightGlass& glass = flight.glasses[index];
        if (glass.drawn && !glass.isTastedBy(taster)) {
            return &glass;
        }
    }
    return nullptr;
}

}  // namespace spile::plan

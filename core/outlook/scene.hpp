#pragma once

#include "core/outlook/barrel_outlook.hpp"
#include "core/outlook/learned.hpp"

/// What is told of a barrel, once all of it is read. Private to core/outlook.
namespace spile::outlook {

inline constexpr std::size_t weeksForeseen = 104;

struct WindowNow {
    std::optional<LineWindow> window;
    WindowSource source = WindowSource::None;
    int wishes = 0;
};

// All that is known of the barrel when its attributes are looked at.
struct Scene {
    const CellarModel::Learned& learned;
    const cellar::BarrelStays& barrel;
    const cellar::Stay& stay;
    const Aging& aging;
    std::map<std::string, WindowNow> windows;
    std::map<SubjectId, std::string> names;
    Instant now, horizon;
    std::optional<Replaced> added;  // a what-if's top-up or mixing
    std::map<std::string, Belief> addedLevels;
    bool brief = false;  // only what the calendar shows: no courses, no scores
};

/// The same as outlookOf(), without what the calendar does not show.
[[nodiscard]] Result<BarrelOutlook> briefOutlook(ledger::Database& database,
                                                 const CellarModel& model, const SubjectId& barrel,
                                                 Instant now);

/// Return the outlook of the scene's barrel.
[[nodiscard]] BarrelOutlook tellAll(const Scene& scene);

}  // namespace spile::outlook

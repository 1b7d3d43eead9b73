#pragma once

#include "core/base/file_system.hpp"
#include "core/base/time.hpp"

#include <QString>
#include <vector>

namespace spile::viewmodels {

/// Where day files come from and go to on this machine: what differs between phones and desks.
///
/// Threads   any number: media and folders may be slow, so they are asked for off the UI thread.
class FilePlaces {
public:
    struct Place {
        QString name;  // for people: "Downloads", "Memory stick BLUE"
        Path folder;
    };
    struct Found {
        Path file;
        QString name;
        Instant changed;
        std::uint64_t bytes = 0;
    };

    virtual ~FilePlaces() = default;
    /// Where a day file can be handed over to, the likeliest first.
    [[nodiscard]] virtual std::vector<Place> targets() = 0;
    /// The day files that lie in the usual places, the newest first.
    [[nodiscard]] virtual std::vector<Found> dayFiles() = 0;
    /// Bytes that are free where the cellar lies.
    [[nodiscard]] virtual std::uint64_t freeBytes() = 0;
};

}  // namespace spile::viewmodels

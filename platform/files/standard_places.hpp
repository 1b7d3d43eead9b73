#pragma once

#include "qml/viewmodels/file_places.hpp"

namespace spile::files {

/// The folders and mounted media of this machine, by the system's own names.
class StandardPlaces final : public viewmodels::FilePlaces {
public:
    /// `cellarFolder` is where the records lie, for the room that is left there.
    explicit StandardPlaces(Path cellarFolder) : cellarFolder_(std::move(cellarFolder)) {}

    [[nodiscard]] std::vector<Place> targets() override;
    [[nodiscard]] std::vector<Found> dayFiles() override;
    [[nodiscard]] std::uint64_t freeBytes() override;

private:
    Path cellarFolder_;
};

}  // namespace spile::files

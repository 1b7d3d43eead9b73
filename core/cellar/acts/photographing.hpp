#pragma once

#include "core/cellar/acts/act.hpp"

#include <string>

namespace spile::cellar {

struct NewPhoto {
    SubjectId barrel;
    ByteView picture;                   // a JPEG or PNG file
    std::string purpose;                // "colour", "head", "place"
    std::optional<EntryId> taste = {};  // the tasting it belongs to
    Circumstance circumstance = {};
};

struct RecordedPhoto {
    EntryId entry;
    ledger::PhotoRef photo;
};

/// Store a photo without the location and other metadata in it, then its entry: the entry is only
/// there if the photo is durable.
///
/// Errors    besides those of every act: Unsupported, Damaged or TooLarge for the picture.
[[nodiscard]] Result<RecordedPhoto> recordPhoto(Cellar& cellar, const NewPhoto& photo);

}  // namespace spile::cellar

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

/// Make the entry of a photo that is stored; recordPhoto() and closeSheet() record it.
[[nodiscard]] Result<ledger::NewEntry> photoEntry(const SubjectId& barrel,
                                                  const ledger::PhotoRef& photo,
                                                  const std::string& purpose,
                                                  const Circumstance& circumstance);

/// Store a photo without the location and other metadata in it, then its entry: the entry is only
/// there if the photo is durable.
///
/// Errors    besides those of every act: Unsupported, Damaged or TooLarge for the picture.
[[nodiscard]] Result<RecordedPhoto> recordPhoto(Cellar& cellar, const NewPhoto& photo);

}  // namespace spile::cellar

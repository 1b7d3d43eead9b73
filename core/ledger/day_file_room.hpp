#pragma once

#include "core/ledger/bundle_format.hpp"
#include "core/ledger/zip.hpp"

namespace spile::ledger {

/// How much a day file has room for. Tests give less.
struct DayFileRoom {
    /// Of the members that a ZIP file may have the rest are for entries, 8 GB of them.
    std::size_t photos = ZipLimits().maxMembers - 1000;
    /// Photos that it asks for.
    std::size_t asked = headerListMost;
};

/// Leave `most` of the photos that the day file of that number asks for, in order: those from a
/// place on that moves with the number. What nobody has does not keep the others from being asked
/// for, whichever of the numbers a receiver gets.
void askForSome(std::vector<Sha256>& missing, std::size_t most, std::uint64_t number);

}  // namespace spile::ledger

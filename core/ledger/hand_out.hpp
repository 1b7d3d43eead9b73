#pragma once

#include "core/base/job.hpp"
#include "core/ledger/day_file_room.hpp"
#include "core/ledger/ledger.hpp"

namespace spile::ledger {

struct HandedOut {
    Sha256 bundle;
    std::uint64_t number = 0;
    std::uint64_t entries = 0;
    std::uint64_t photos = 0;
    std::uint64_t missingPhotos = 0;  // known of, but not on this device, or damaged
    std::uint64_t leftOut = 0;        // entries that are damaged here, with the rest of their taps
    std::uint64_t leftOutPhotos = 0;  // the same
    std::uint64_t photosLeft = 0;     // for which a file has no room; a later one brings them
};

/// Write a day file to `file`: all entries and photos that `to` is not known to hold, or all there
/// are if `to` is none, so that any device can take it in or join with it.
///
/// Changes no record; may be repeated at will. After any loss of power there is the whole file or
/// none. A day file that this device made for this cellar is replaced.
///
/// What is damaged here is left out and noted, and asked for: the file says to the others that this
/// device has only what comes before, so that their next ones for it bring it back (mending.hpp).
///
/// Where there are more photos than a file has room for, the receiver's own day file asks for the
/// others, and the next one for it has them. Where more are missing than it may ask for, each file
/// asks for others of them.
///
/// With a passphrase it is sealed (seal.hpp), and replaces nothing.
///
/// Errors    Conflict if `file` is something else; StorageFull, Storage, Cancelled: nothing is
/// left.
[[nodiscard]] Result<HandedOut> handOut(Ledger& ledger, const Path& file,
                                        const std::optional<DeviceId>& to,
                                        const std::string& program, const Job& job,
                                        const std::string& passphrase = {},
                                        const DayFileRoom& room = {});

}  // namespace spile::ledger

#pragma once

#include "core/base/job.hpp"
#include "core/ledger/bundle_reader.hpp"
#include "core/ledger/ledger.hpp"
#include "core/ledger/trust.hpp"

namespace spile::ledger {

struct TakenIn {
    DeviceId from;
    std::uint64_t number = 0;
    Instant made{};             // by the clock of the device that wrote it
    std::uint64_t entries = 0;  // in the file
    std::uint64_t added = 0;  // count now and did not before, those included that had been waiting
    std::uint64_t known = 0;  // were here already
    std::uint64_t waiting =
        0;  // stored, until their device is admitted or the gap before them closes
    std::uint64_t photos = 0;        // photos that are new here
    std::uint64_t mended = 0;        // were damaged here, and are as they were signed again
    std::optional<Renewed> renewed;  // this device was copied or set back: it has a new key
};

/// Take in a day file. It is verified whole before anything is written; then it is written in
/// slices of at most 20 ms, between which other work can run. Killed anywhere, it can be run again
/// with the same result; run twice, it adds nothing.
///
/// A sealed file needs its passphrase; it is opened in the cellar's own folder meanwhile.
///
/// Errors    Foreign, Damaged, Unsupported, TooLarge, Conflict ("passphrase"): the cellar is
///           unchanged. StorageFull, Storage, Cancelled: a part may be stored; the next run
///           finishes it.
[[nodiscard]] Result<TakenIn> takeIn(Ledger& ledger, const Path& file, SignatureCheck check,
                                     const Job& job, const std::string& passphrase = {});

/// Make a replica of the cellar that the day file belongs to and take the file in.
///
/// Errors    those of Ledger::createReplica and takeIn; NotFound if the file does not hold the
///           cellar from its beginning.
[[nodiscard]] Result<std::unique_ptr<Ledger>> join(const Path& folder, const Outside& outside,
                                                   Projection& projection, const Path& file,
                                                   const Job& job, const std::string& vfs = {},
                                                   const std::string& passphrase = {});

struct Admitted {
    EntryId entry;
    std::uint64_t linked = 0;  // records of it that had been waiting and count now
};

/// Let a device belong to the cellar: append its `device` entry and count what waited for it.
///
/// With the owner's key, the owner admits it.
///
/// Errors    Conflict if it is admitted already, or this device may not admit, or `owner` is not
///           the key of this cellar.
[[nodiscard]] Result<Admitted> admit(Ledger& ledger, const DeviceId& device,
                                     const std::string& name, DeviceRole role,
                                     const std::optional<SigningKey>& owner = {});

}  // namespace spile::ledger

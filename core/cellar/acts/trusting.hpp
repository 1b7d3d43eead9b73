#pragma once

#include "core/cellar/acts/act.hpp"

/// Acts on who belongs to the cellar: a lost device is cut off, what it recorded after is taken
/// over one record at a time, the owner lets it in again. FORMAT.md, section 3, says what they do.
namespace spile::cellar {

struct NewCut {
    DeviceId device;
    /// The number of its last record that counts; 0: none does. None: all that is here counts.
    std::optional<std::uint64_t> lastSeq = {};
    std::string reason = {};
    std::optional<SubjectId> person = {};
};

/// Cut a device off: what it records after the cut is set aside on every device.
///
/// Errors    Conflict if this device may not admit others, if the device is this one or the owner's
///           key, has no record of that number, or is cut off already and this cut would set no
///           more aside; NotFound if nobody has heard of it.
[[nodiscard]] Result<EntryId> cutOff(Cellar& cellar, const NewCut& cut);

/// Let records that are set aside count.
///
/// Errors    Conflict if this device may not admit others; NotFound for one that is not set aside.
[[nodiscard]] Result<std::vector<EntryId>> adopt(Cellar& cellar,
                                                 const std::vector<EntryId>& entries,
                                                 const std::optional<SubjectId>& person = {});

/// Let a device that was cut off count again with all its records. Only the owner's key can.
///
/// Errors    Conflict if `owner` is not the key of this cellar or the device is not cut off.
[[nodiscard]] Result<void> reinstate(Cellar& cellar, const ledger::SigningKey& owner,
                                     const DeviceId& device, const std::string& reason = {});

}  // namespace spile::cellar

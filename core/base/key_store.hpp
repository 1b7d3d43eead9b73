#pragma once

#include "core/base/ids.hpp"
#include "core/base/result.hpp"

#include <optional>

namespace spile::inline base {

/// The 32 secret bytes that an Ed25519 key pair grows from (RFC 8032, section 5.1.5).
using KeySeed = ByteId<struct KeySeedKind, 32>;

enum class KeyName : std::uint8_t {
    Device,      ///< signs what this device records
    Owner,       ///< signed the cellar's beginning; should lie offline, away from the cellar
    NextDevice,  ///< will sign once the records say so: a key that is being renewed
};

/// Where secrets lie: the platform's protected place, or files only their owner can read.
class KeyStore {
public:
    virtual ~KeyStore() = default;
    /// None if there is no such key; Damaged if there is one that cannot be read.
    [[nodiscard]] virtual Result<std::optional<KeySeed>> load(KeyName name) = 0;
    /// Errors    Conflict if there is one: a key is never overwritten.
    [[nodiscard]] virtual Result<void> save(KeyName name, const KeySeed& seed) = 0;
    /// Make NextDevice the key Device, whose old key is gone for ever.
    ///
    /// Errors    NotFound if there is no NextDevice.
    [[nodiscard]] virtual Result<void> turnToNext() = 0;
};

}  // namespace spile::inline base

#pragma once

#include "core/ledger/bundle_reader.hpp"
#include "core/ledger/signature_checks.hpp"

namespace spile::ledger {

/// Follows the ranges of a bundle's header entry by entry and refuses what does not fit them.
class EntryWalk {
public:
    EntryWalk(const BundleHeader& header,
              const std::unordered_map<DeviceId, PublicKey, IdHash>& keys, SignatureCheck check)
        : header_(header), keys_(keys), check_(check)
    {
    }

    /// Check the next entry against its range, its body and its signature; of a bad signature this
    /// may hear only later, at finish() at the latest.
    [[nodiscard]] Result<VerifiedEntry> next(SignedEntry entry);
    /// Check that nothing is missing at the end.
    [[nodiscard]] Result<void> finish();

private:
    [[nodiscard]] Result<void> fits(const VerifiedEntry& entry);
    [[nodiscard]] Result<void> fitsGroup(const VerifiedEntry& entry, bool lastOfRange);
    [[nodiscard]] Result<void> isSigned(const VerifiedEntry& entry, bool lastOfRange);

    const BundleHeader& header_;
    const std::unordered_map<DeviceId, PublicKey, IdHash>& keys_;
    SignatureCheck check_;
    SignatureChecks signatures_;
    std::size_t range_ = 0;
    std::uint64_t inRange_ = 0;  // how many of the current range were seen
    std::uint64_t seen_ = 0;
    EntryId previous_;
    std::optional<Group> open_;  // the group that the next entry must continue
};

}  // namespace spile::ledger

#pragma once

#include "core/ledger/bundle_format.hpp"
#include "tests/support/zip_archives.hpp"

namespace spile::support {

/// A day file taken apart, to be altered and put together again: what a forger with a key can do.
class DayFile {
public:
    /// The test fails if there is no sound archive at `path`.
    explicit DayFile(const Path& path);
    /// Throws if it is no sound archive.
    explicit DayFile(ByteView archive);
    /// A bag in the folder `top` (with its slash), with members as they may be.
    DayFile(std::string top, ZipContents content)
        : members(std::move(content)), top_(std::move(top))
    {
    }

    /// The members by their path in the bag, in their order. Alter them, then seal().
    ZipContents members;

    [[nodiscard]] std::string& member(const std::string& name);
    [[nodiscard]] ledger::BundleHeader header();
    void setHeader(const ledger::BundleHeader& header);
    [[nodiscard]] std::vector<ledger::SignedEntry> entries();
    void setEntries(const std::vector<ledger::SignedEntry>& entries);

    /// Make the Payload-Oxum, the manifests and the signature anew, with `key`, for the members as
    /// they are now.
    void seal(const ledger::SigningKey& key);
    /// The archive, also with names that ZipWriter would refuse.
    [[nodiscard]] Bytes archive() const;
    /// Write the archive over `path`.
    void write(const Path& path) const;

private:
    std::string top_;
};

/// Write `bytes` over whatever is at `path`.
void overwrite(const Path& path, ByteView bytes);
/// Return all bytes of a file.
[[nodiscard]] Bytes contentOf(const Path& path);

}  // namespace spile::support

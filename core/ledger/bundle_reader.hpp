#pragma once

#include "core/base/file_system.hpp"
#include "core/base/job.hpp"
#include "core/ledger/bundle_format.hpp"
#include "core/ledger/zip.hpp"

#include <functional>
#include <memory>
#include <unordered_map>

namespace spile::ledger {

/// Which signatures are checked besides the hashes, which always are.
enum class SignatureCheck : std::uint8_t {
    EveryEntry,
    /// Only the last entry of each range: its signature covers those before it through the chain
    /// of hashes. An entry's own signature may then be bad although its content is right.
    RangeEnds,
    None,  ///< the file was taken in before, with its signatures checked
};

/// A day file, read piece by piece; nothing in it is believed before verify() has passed.
///
/// Errors    Damaged, naming the part, if it is not byte for byte what its writer made;
///           Unsupported if it needs a newer reader; TooLarge beyond the limits of FORMAT.md.
class BundleReader {
public:
    /// Open the container and check its shape, manifests, signature and header.
    [[nodiscard]] static Result<BundleReader> open(FileSystem& files, const Path& path);

    [[nodiscard]] const BundleHeader& header() const { return header_; }
    /// Tells this bundle from all others, whatever its file is called.
    [[nodiscard]] const Sha256& identity() const { return identity_; }

    /// Check every byte: files against manifests, entries against chains, bodies and signatures.
    /// `seen` is given each entry as it passes.
    ///
    /// Errors    Foreign if it belongs to another cellar than `cellar`; Cancelled.
    [[nodiscard]] Result<void> verify(const CellarId& cellar, SignatureCheck check, const Job& job,
                                      const std::function<void(const VerifiedEntry&)>& seen);

    /// Give each entry once more, in the order it is in here. Requires verify() to have passed: by
    /// their hashes the files are still those that it read.
    [[nodiscard]] Result<void> eachEntry(const std::function<Result<void>(VerifiedEntry&&)>& use);

    [[nodiscard]] std::vector<PhotoRef> photos() const;
    [[nodiscard]] Result<void> readPhoto(const Sha256& hash, std::uint64_t offset,
                                         std::span<std::uint8_t> into);

private:
    BundleReader(std::unique_ptr<InputFile> file, ZipReader zip)
        : file_(std::move(file)), zip_(std::move(zip))
    {
    }
    [[nodiscard]] Result<void> readFrame();
    [[nodiscard]] Result<void> readManifests();
    [[nodiscard]] Result<void> checkNames() const;
    [[nodiscard]] Result<void> checkKeys();
    [[nodiscard]] Result<Bytes> member(const std::string& name, std::uint64_t bytesMax);
    [[nodiscard]] Result<Bytes> checkedMember(const std::string& name, std::uint64_t bytesMax);
    [[nodiscard]] Result<void> eachSigned(const std::function<Result<void>(SignedEntry&&)>& use);
    [[nodiscard]] Result<void> verifyStreamed(const std::string& name);

    std::unique_ptr<InputFile> file_;
    ZipReader zip_;
    std::string top_;  // the one top-level folder, with its slash
    Manifest payload_;
    Manifest tags_;
    Sha256 identity_;
    BundleHeader header_;
    std::unordered_map<DeviceId, PublicKey, IdHash> keys_;
};

}  // namespace spile::ledger

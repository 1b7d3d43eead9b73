#pragma once

#include "core/base/time.hpp"
#include "core/ledger/chains.hpp"

#include <map>
#include <string>
#include <vector>

/// The parts of a day file apart from its container: header, manifests, signature. FORMAT.md.
namespace spile::ledger {

/// The names of the bag's files, below its one top-level folder.
namespace bag {
inline constexpr const char* declaration = "bagit.txt";
inline constexpr const char* info = "bag-info.txt";
inline constexpr const char* manifest = "manifest-sha256.txt";
inline constexpr const char* tagManifest = "tagmanifest-sha256.txt";
inline constexpr const char* signature = "signature.cbor";
inline constexpr const char* header = "data/bundle.cbor";
inline constexpr const char* readMe = "data/README.txt";
inline constexpr const char* entryFolder = "data/entries/";
inline constexpr const char* photoFolder = "data/photos/";
}  // namespace bag

/// A stretch of one device's chain without gaps or branches: seq `first` to `last`.
struct ChainRange {
    DeviceId device;
    std::uint64_t first = 0;
    std::uint64_t last = 0;
    EntryId before;  // the entry at first - 1; zero if first is 1
    EntryId end;     // the entry at last
    friend bool operator==(const ChainRange&, const ChainRange&) = default;
};

/// So many members a list of the header has at most.
inline constexpr std::size_t headerListMost = 100'000;

struct BundleHeader {
    CellarId cellar;
    DeviceId from;
    std::uint64_t number = 0;  // counts what this device handed out
    Instant made;
    std::vector<Head> have;          // all that the sender holds: its receipt to the others
    std::vector<ChainRange> ranges;  // what is in here, in the order it is in here
    std::vector<PublicKey> keys;     // of every device in `ranges`
    std::uint64_t entries = 0;
    std::uint64_t photos = 0;
    std::vector<Sha256> missing;  // photos the sender knows of but has not
    std::string program;          // the version that wrote it, for people
    friend bool operator==(const BundleHeader&, const BundleHeader&) = default;
};

[[nodiscard]] Bytes encodeHeader(const BundleHeader& header);
/// Errors    Damaged, or Unsupported if it asks for a newer reader. Keys it does not know are
///           passed over, so that a newer writer can add some.
[[nodiscard]] Result<BundleHeader> decodeHeader(ByteView bytes);

/// What a manifest lists: the SHA-256 of each file by its path.
using Manifest = std::map<std::string, Sha256>;

/// Source    RFC 8493 (BagIt), section 2.1.3.
[[nodiscard]] std::string writeManifest(const Manifest& manifest);
/// Errors    Damaged if a line is not a hash, two spaces and a path, or a path stands twice.
[[nodiscard]] Result<Manifest> readManifest(std::string_view text, const std::string& name);

/// Who vouches for a bundle.
struct BundleSignature {
    PublicKey key;
    Signature signature;
};

[[nodiscard]] BundleSignature signBundle(const SigningKey& key, const Sha256& tagManifest);
[[nodiscard]] bool verifyBundle(const BundleSignature& signature, const Sha256& tagManifest);
[[nodiscard]] Bytes encodeSignature(const BundleSignature& signature);
[[nodiscard]] Result<BundleSignature> decodeSignature(ByteView bytes);

}  // namespace spile::ledger

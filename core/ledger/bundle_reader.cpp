#include "core/ledger/bundle_reader.hpp"

#include "core/base/sha256.hpp"
#include "core/ledger/entry_walk.hpp"

#include <algorithm>
#include <set>

namespace spile::ledger {

namespace {

constexpr std::uint64_t tagBytesMax = std::uint64_t{8} << 20U;
constexpr std::uint64_t entryFileBytesMax = std::uint64_t{16} << 20U;

tl::unexpected<Error> damagedBundle(const std::string& what)
{
    return fail(ErrorCode::Damaged, "day file", what, "copy it again");
}

bool isPhoto(const std::string& path) { return path.starts_with(bag::photoFolder); }
bool isEntryFile(const std::string& path) { return path.starts_with(bag::entryFolder); }

std::optional<Sha256> photoHash(const std::string& path)
{
    return Sha256::fromHex(
        std::string_view(path).substr(std::string_view(bag::photoFolder).size()));
}

}  // namespace

Result<BundleReader> BundleReader::open(FileSystem& files, const Path& path)
{
    SPILE_ASSIGN(file, files.open(path));
    auto opened = ZipReader::open(*file);
    if (!opened) {
        Error error = opened.error();
        if (error.limit.empty()) {
            error.limit = "copy it again";
        }
        return tl::unexpected(std::move(error));
    }
    ZipReader& zip = *opened;
    BundleReader reader(std::move(file), std::move(zip));
    SPILE_TRY(reader.readFrame());
    return reader;
}

Result<Bytes> BundleReader::member(const std::string& name, std::uint64_t bytesMax)
{
    const ZipMember* found = zip_.find(top_ + name);
    if (found == nullptr) {
        return damagedBundle(name + " is missing");
    }
    return zip_.readWhole(*found, bytesMax);
}

Result<Bytes> BundleReader::checkedMember(const std::string& name, std::uint64_t bytesMax)
{
    SPILE_ASSIGN(bytes, member(name, bytesMax));
    const Manifest& manifest = name.starts_with("data/") ? payload_ : tags_;
    const auto listed = manifest.find(name);
    if (listed == manifest.end() || listed->second != sha256(bytes)) {
        return damagedBundle(name);
    }
    return std::move(bytes);
}

Result<void> BundleReader::readFrame()
{
    if (zip_.members().empty()) {
        return damagedBundle("it is empty");
    }
    const std::string& first = zip_.members().front().name;
    top_ = first.substr(0, first.find('/') + 1);
    SPILE_TRY(readManifests());
    SPILE_TRY(checkNames());
    SPILE_ASSIGN(headerBytes, checkedMember(bag::header, tagBytesMax));
    SPILE_ASSIGN(header, decodeHeader(headerBytes));
    header_ = std::move(header);
    return checkKeys();
}

Result<void> BundleReader::readManifests()
{
    SPILE_ASSIGN(tagBytes, member(bag::tagManifest, tagBytesMax));
    identity_ = sha256(tagBytes);
    SPILE_ASSIGN(tags, readManifest(asText(tagBytes), bag::tagManifest));
    tags_ = std::move(tags);
    SPILE_ASSIGN(manifestBytes, checkedMember(bag::manifest, tagBytesMax));
    SPILE_ASSIGN(payload, readManifest(asText(manifestBytes), bag::manifest));
    payload_ = std::move(payload);
    for (const char* name : {bag::declaration, bag::info}) {
        SPILE_TRY(checkedMember(name, tagBytesMax));
    }
    return {};
}

// Every file in the container is listed once and every listed file is there: nothing rides along.
Result<void> BundleReader::checkNames() const
{
    std::set<std::string> listed = {top_ + bag::tagManifest, top_ + bag::signature};
    for (const auto& [name, hash] : tags_) {
        listed.insert(top_ + name);
    }
    for (const auto& [name, hash] : payload_) {
        const bool known = name == bag::header || name == bag::readMe || isEntryFile(name) ||
                           (isPhoto(name) && photoHash(name) == hash);
        if (!known) {
            return damagedBundle(name);
        }
        listed.insert(top_ + name);
    }
    std::set<std::string> held;
    for (const ZipMember& member : zip_.members()) {
        held.insert(member.name);
    }
    return held == listed ? Result<void>()
                          : damagedBundle("its files are not those its manifests list");
}

Result<void> BundleReader::checkKeys()
{
    SPILE_ASSIGN(signatureBytes, member(bag::signature, tagBytesMax));
    SPILE_ASSIGN(signature, decodeSignature(signatureBytes));
    if (deviceIdOf(signature.key) != header_.from || !verifyBundle(signature, identity_)) {
        return damagedBundle(bag::signature);
    }
    for (const PublicKey& key : header_.keys) {
        keys_.emplace(deviceIdOf(key), key);
    }
    for (const ChainRange& range : header_.ranges) {
        if (!keys_.contains(range.device)) {
            return damagedBundle("a device's key is missing");
        }
    }
    return {};
}

Result<void> BundleReader::verifyStreamed(const std::string& name)
{
    Sha256Stream hash;
    SPILE_TRY(zip_.forEachChunk(*zip_.find(top_ + name), [&](ByteView chunk) {
        hash.add(chunk);
        return Result<void>();
    }));
    return hash.finish() == payload_.at(name) ? Result<void>() : damagedBundle(name);
}

Result<void> BundleReader::verify(const CellarId& cellar, SignatureCheck check, const Job& job,
                                  const std::function<void(const VerifiedEntry&)>& seen)
{
    if (header_.cellar != cellar) {
        return fail(ErrorCode::Foreign, "day file",
                    "of cellar " + header_.cellar.hex().substr(0, 8),
                    "this is cellar " + cellar.hex().substr(0, 8));
    }
    if (photos().size() != header_.photos) {
        return damagedBundle("its header counts other photos");
    }
    std::uint64_t done = 0;
    const std::uint64_t total = header_.entries + header_.photos;
    EntryWalk walk(header_, keys_, check);
    SPILE_TRY(eachSigned([&](SignedEntry&& entry) -> Result<void> {
        SPILE_ASSIGN(verified, walk.next(std::move(entry)));
        seen(verified);
        constexpr std::uint64_t reportEvery = 256;
        if (++done % reportEvery == 0 && !job.advance(done, total)) {
            return fail(ErrorCode::Cancelled, "day file");
        }
        return {};
    }));
    SPILE_TRY(walk.finish());
    for (const auto& [name, hash] : payload_) {
        if (!isEntryFile(name)) {
            SPILE_TRY(verifyStreamed(name));
        }
        if (isPhoto(name) && !job.advance(++done, total)) {
            return fail(ErrorCode::Cancelled, "day file");
        }
    }
    return {};
}

Result<void> BundleReader::eachSigned(const std::function<Result<void>(SignedEntry&&)>& use)
{
    for (const auto& [name, hash] : payload_) {  // in the order of their names: of their numbers
        if (!isEntryFile(name)) {
            continue;
        }
        SPILE_ASSIGN(bytes, checkedMember(name, entryFileBytesMax));
        for (ByteView rest = bytes; !rest.empty();) {
            SPILE_ASSIGN(entry, takeWire(rest));
            SPILE_TRY(use(std::move(entry)));
        }
    }
    return {};
}

Result<void> BundleReader::eachEntry(const std::function<Result<void>(VerifiedEntry&&)>& use)
{
    return eachSigned([&](SignedEntry&& entry) -> Result<void> {
        SPILE_ASSIGN(core, decodeCore(entry.core));
        const EntryId id = entry.id();
        return use({std::move(entry), id, std::move(core)});
    });
}

std::vector<PhotoRef> BundleReader::photos() const
{
    std::vector<PhotoRef> photos;
    for (const auto& [name, hash] : payload_) {
        if (isPhoto(name)) {
            photos.push_back({hash, zip_.find(top_ + name)->size});
        }
    }
    return photos;
}

Result<void> BundleReader::readPhoto(const Sha256& hash, std::uint64_t offset,
                                     std::span<std::uint8_t> into)
{
    return zip_.readAt(*zip_.find(top_ + bag::photoFolder + hash.hex()), offset, into);
}

}  // namespace spile::ledger

#include "core/ledger/bundle_writer.hpp"

#include "core/base/sha256.hpp"
#include "core/ledger/zip.hpp"

#include <array>
#include <cstdio>

namespace spile::ledger {

namespace {

constexpr std::size_t entryFileBytes = std::size_t{8} << 20U;

std::string entryFileName(int number)
{
    std::array<char, 32> name{};
    std::snprintf(name.data(), name.size(), "%06d.cborseq", number);
    return std::string(bag::entryFolder) + name.data();
}

std::string readMeText(const BundleContent& content)
{
    return "A Spile day file of the cellar \"" + content.cellarName + "\".\n" + "Made " +
           toIsoTime(content.header.made) + " by device " + content.header.from.hex().substr(0, 8) +
           ", number " + std::to_string(content.header.number) + ": " +
           std::to_string(content.header.entries) + " records, " +
           std::to_string(content.header.photos) + " photos.\n" +
           "Take it in with Spile. Nothing in it has to be unpacked.\n";
}

// One member after the other, and the manifest that lists them.
class BagWriter {
public:
    BagWriter(OutputFile& file, std::string top) : zip_(file), top_(std::move(top)) {}

    Result<void> add(const std::string& name, ByteView bytes)
    {
        SPILE_ASSIGN(hash, zip_.addBytes(top_ + name, bytes));
        bytes_ += bytes.size();
        ++files_;
        manifest_.emplace(name, hash);
        return {};
    }
    Result<void> addPhoto(const PhotoRef& photo, InputFile& file)
    {
        const std::string name = std::string(bag::photoFolder) + photo.hash.hex();
        SPILE_ASSIGN(hash, zip_.addFile(top_ + name, file));
        if (hash != photo.hash) {
            return fail(ErrorCode::Damaged, "photo", photo.hash.hex(),
                        "take in a day file that has it");
        }
        bytes_ += file.size();
        ++files_;
        manifest_.emplace(name, hash);
        return {};
    }
    // The files above were the payload; what follows are tags, up to the signature.
    Result<Sha256> finish(const BundleHeader& header, const SigningKey& key)
    {
        const std::string payload = writeManifest(manifest_);
        const std::string oxum = std::to_string(bytes_) + "." + std::to_string(files_);
        manifest_.clear();
        SPILE_TRY(add(bag::declaration,
                      asBytes("BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n")));
        const std::string info =
            "Payload-Oxum: " + oxum + "\nBag-Group-Identifier: " + header.from.hex() + "-" +
            std::to_string(header.number) + "\nExternal-Identifier: " + header.cellar.hex() + "\n";
        SPILE_TRY(add(bag::info, asBytes(info)));
        SPILE_TRY(add(bag::manifest, asBytes(payload)));
        const std::string tags = writeManifest(manifest_);
        const Sha256 identity = sha256(asBytes(tags));
        SPILE_TRY(add(bag::tagManifest, asBytes(tags)));
        SPILE_TRY(add(bag::signature, encodeSignature(signBundle(key, identity))));
        SPILE_TRY(zip_.finish());
        return identity;
    }

private:
    ZipWriter zip_;
    std::string top_;
    Manifest manifest_;
    std::uint64_t bytes_ = 0;
    std::uint64_t files_ = 0;
};

Result<void> addEntries(BagWriter& bag, const BundleContent& content)
{
    Bytes chunk;
    int number = 0;
    const auto flush = [&]() -> Result<void> {
        if (chunk.empty()) {
            return {};
        }
        SPILE_TRY(bag.add(entryFileName(++number), chunk));
        chunk.clear();
        return {};
    };
    SPILE_TRY(content.entries([&](const SignedEntry& entry) -> Result<void> {
        appendWire(chunk, entry);
        return chunk.size() >= entryFileBytes ? flush() : Result<void>();
    }));
    return flush();
}

}  // namespace

Result<Sha256> writeBundle(FileSystem& files, const Path& path, const std::string& top,
                           const BundleContent& content, const PhotoStore& photos,
                           const SigningKey& key, const Job& job)
{
    SPILE_ASSIGN(file, files.create(path));
    BagWriter bag(*file, top + "/");
    SPILE_TRY(bag.add(bag::header, encodeHeader(content.header)));
    SPILE_TRY(bag.add(bag::readMe, asBytes(readMeText(content))));
    SPILE_TRY(addEntries(bag, content));
    std::uint64_t done = 0;
    for (const PhotoRef& photo : content.photos) {
        SPILE_ASSIGN(photoFile, files.open(photos.pathOf(photo.hash)));
        SPILE_TRY(bag.addPhoto(photo, *photoFile));
        if (!job.advance(++done, content.photos.size())) {
            return fail(ErrorCode::Cancelled, "day file");
        }
    }
    SPILE_ASSIGN(identity, bag.finish(content.header, key));
    SPILE_TRY(file->sync());
    return identity;
}

}  // namespace spile::ledger

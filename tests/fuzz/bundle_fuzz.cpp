// Whole day files. As they come, the checksums stop most of them; so an input may also be the bag's
// members, put into a sound archive, and with manifests and a signature that fit them.
#include "core/base/sha256.hpp"
#include "core/ledger/bundle_reader.hpp"
#include "tests/fuzz/input.hpp"
#include "tests/support/day_file.hpp"
#include "tests/support/memory_file_system.hpp"

#include <algorithm>
#include <array>

namespace {

using namespace spile;
using namespace spile::ledger;
using fuzz::Input;
using fuzz::require;
using support::DayFile;
using support::ZipContents;

constexpr std::array bagNames = {bag::header,
                                 bag::readMe,
                                 "data/entries/000001.cborseq",
                                 "data/entries/000002.cborseq",
                                 bag::declaration,
                                 bag::info,
                                 bag::manifest,
                                 bag::tagManifest,
                                 bag::signature};

std::string nameOf(std::size_t which, ByteView content, Input& input)
{
    if (which < bagNames.size()) {
        return bagNames[which];
    }
    return which == bagNames.size() ? bag::photoFolder + sha256(content).hex() : input.text(130);
}

// Members as the input has them, each with a number for its name and its length before it.
ZipContents membersFrom(Input& input)
{
    ZipContents members;
    while (!input.empty() && members.size() < 40) {
        const std::size_t which = input.below(bagNames.size() + 2);
        const ByteView content = input.bytes(input.number(2));
        const std::string name = nameOf(which, content, input);
        members.emplace_back(name, asText(content));
    }
    return members;
}

void addMissing(ZipContents& members)
{
    for (const char* name : bagNames) {
        const bool there = std::any_of(members.begin(), members.end(),
                                       [&](const auto& member) { return member.first == name; });
        if (!there && !std::string_view(name).starts_with(bag::entryFolder)) {
            members.emplace_back(name, "");
        }
    }
}

// Manifests, sender and signature as a forger makes them who has a key.
void sealAnew(DayFile& file)
{
    addMissing(file.members);
    const SigningKey forger(KeySeed({7}));
    if (auto header = decodeHeader(asBytes(file.member(bag::header)))) {
        header->from = forger.deviceId();
        file.setHeader(*header);
    }
    file.member(bag::info) += '\n';
    file.seal(forger);
}

Bytes archiveFrom(Input& input)
{
    const std::uint8_t how = input.byte();
    if (how % 2U == 0) {
        const ByteView whole = input.rest();
        return {whole.begin(), whole.end()};
    }
    DayFile file("7K2Q-0-1/", membersFrom(input));
    if (how % 4U == 3) {
        sealAnew(file);
    }
    return file.archive();
}

void readArchive(ByteView archive)
{
    if (const auto contents = support::unzipped(archive)) {
        const Bytes written = support::zipOf(*contents);
        require(std::equal(archive.begin(), archive.end(), written.begin(), written.end()),
                "an archive that its writer would not write");
    }
}

void readPhotos(BundleReader& reader)
{
    for (const PhotoRef& photo : reader.photos()) {
        Bytes bytes(photo.bytes);
        require(reader.readPhoto(photo.hash, 0, bytes).has_value(), "a photo is not read");
        require(sha256(bytes) == photo.hash, "a photo of other content");
    }
}

void readDayFile(FileSystem& files, const Path& path)
{
    auto reader = BundleReader::open(files, path);
    if (!reader) {
        return;
    }
    std::uint64_t seen = 0;
    const CellarId cellar = reader->header().cellar;
    const auto verified = reader->verify(cellar, SignatureCheck::EveryEntry, {},
                                         [&](const VerifiedEntry&) { ++seen; });
    if (!verified) {
        return;
    }
    require(seen == reader->header().entries, "other entries than its header counts");
    std::uint64_t again = 0;
    require(reader
                ->eachEntry([&](VerifiedEntry&&) {
                    ++again;
                    return Result<void>();
                })
                .has_value(),
            "verified, but not read again");
    require(again == seen, "read again with other entries");
    readPhotos(*reader);
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    Input input(data, size);
    const Bytes archive = archiveFrom(input);
    readArchive(archive);
    support::MemoryFileSystem files;
    const Path path = "/day.spile";
    require((*files.create(path))->append(archive).has_value(), "no file in memory");
    readDayFile(files, path);
    return 0;
}

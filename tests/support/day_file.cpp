#include "tests/support/day_file.hpp"

#include "core/base/sha256.hpp"

#include <algorithm>
#include <fstream>
#include <iterator>
#include <stdexcept>

namespace spile::support {

namespace {

constexpr const char* entryFile = "data/entries/000001.cborseq";

bool isPayload(const std::string& name) { return name.starts_with("data/"); }

}  // namespace

void overwrite(const Path& path, ByteView bytes)
{
    std::ofstream file(path, std::ios::binary | std::ios::trunc);
    file << asText(bytes);
}

Bytes contentOf(const Path& path)
{
    std::ifstream file(path, std::ios::binary);
    const std::string text(std::istreambuf_iterator<char>(file), {});
    return {text.begin(), text.end()};
}

DayFile::DayFile(const Path& path) : DayFile(contentOf(path)) {}

DayFile::DayFile(ByteView archive)
{
    auto contents = unzipped(archive);
    if (!contents || contents->empty()) {
        throw std::runtime_error("no day file");
    }
    top_ = contents->front().first.substr(0, contents->front().first.find('/') + 1);
    for (auto& [name, bytes] : *contents) {
        members.emplace_back(name.substr(top_.size()), std::move(bytes));
    }
}

std::string& DayFile::member(const std::string& name)
{
    const auto found = std::find_if(members.begin(), members.end(),
                                    [&](const auto& item) { return item.first == name; });
    if (found == members.end()) {
        throw std::runtime_error("no member " + name);
    }
    return found->second;
}

ledger::BundleHeader DayFile::header()
{
    return *ledger::decodeHeader(asBytes(member(ledger::bag::header)));
}

void DayFile::setHeader(const ledger::BundleHeader& header)
{
    member(ledger::bag::header) = asText(ledger::encodeHeader(header));
}

std::vector<ledger::SignedEntry> DayFile::entries()
{
    std::vector<ledger::SignedEntry> entries;
    for (ByteView rest = asBytes(member(entryFile)); !rest.empty();) {
        entries.push_back(*ledger::takeWire(rest));
    }
    return entries;
}

void DayFile::setEntries(const std::vector<ledger::SignedEntry>& entries)
{
    Bytes bytes;
    for (const ledger::SignedEntry& entry : entries) {
        ledger::appendWire(bytes, entry);
    }
    member(entryFile) = asText(bytes);
}

void DayFile::seal(const ledger::SigningKey& key)
{
    ledger::Manifest payload;
    std::size_t bytes = 0;
    for (const auto& [name, content] : members) {
        if (isPayload(name)) {
            payload.emplace(name, sha256(asBytes(content)));
            bytes += content.size();
        }
    }
    std::string& info = member(ledger::bag::info);
    info = "Payload-Oxum: " + std::to_string(bytes) + "." + std::to_string(payload.size()) +
           info.substr(info.find('\n'));
    member(ledger::bag::manifest) = ledger::writeManifest(payload);
    ledger::Manifest tags;
    for (const auto& [name, content] : members) {
        if (!isPayload(name) && name != ledger::bag::tagManifest &&
            name != ledger::bag::signature) {
            tags.emplace(name, sha256(asBytes(content)));
        }
    }
    std::string& tagManifest = member(ledger::bag::tagManifest);
    tagManifest = ledger::writeManifest(tags);
    member(ledger::bag::signature) =
        asText(ledger::encodeSignature(ledger::signBundle(key, sha256(asBytes(tagManifest)))));
}

Bytes DayFile::archive() const
{
    ZipContents full;
    for (const auto& [name, content] : members) {
        full.emplace_back(top_ + name, content);
    }
    return zipOfAnyNames(full);
}

void DayFile::write(const Path& path) const { overwrite(path, archive()); }

}  // namespace spile::support

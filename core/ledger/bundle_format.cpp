#include "core/ledger/bundle_format.hpp"

#include "core/ledger/cbor.hpp"

#include <utility>

namespace spile::ledger {

namespace {

enum Key : std::uint64_t {
    Format = 1,
    MinReader,
    Cellar,
    From,
    Number,
    Made,
    Have,
    Ranges,
    Keys,
    Entries,
    Photos,
    Missing,
    Program
};

constexpr std::uint64_t format = 1;

tl::unexpected<Error> damagedHeader(std::string what)
{
    return fail(ErrorCode::Damaged, bag::header, std::move(what), "copy it again");
}

template <class Id>
Result<void> readId(CborReader& in, Id& into)
{
    SPILE_ASSIGN(bytes, in.bytes());
    const auto id = Id::fromBytes(bytes);
    if (!id) {
        return damagedHeader("an id has the wrong size");
    }
    into = *id;
    return {};
}

Result<void> readNumber(CborReader& in, std::uint64_t& into)
{
    SPILE_ASSIGN(number, in.unsignedInteger());
    into = number;
    return {};
}

Result<void> expectArray(CborReader& in, std::size_t count)
{
    SPILE_ASSIGN(found, in.array());
    return found == count ? Result<void>() : damagedHeader("a list of the wrong length");
}

Result<void> readOne(CborReader& in, Head& head)
{
    SPILE_TRY(expectArray(in, 3));
    SPILE_TRY(readId(in, head.device));
    SPILE_TRY(readNumber(in, head.seq));
    return readId(in, head.id);
}

Result<void> readOne(CborReader& in, ChainRange& range)
{
    SPILE_TRY(expectArray(in, 5));
    SPILE_TRY(readId(in, range.device));
    SPILE_TRY(readNumber(in, range.first));
    SPILE_TRY(readNumber(in, range.last));
    SPILE_TRY(readId(in, range.before));
    SPILE_TRY(readId(in, range.end));
    if (range.first == 0 || range.last < range.first ||
        (range.first == 1) != range.before.isZero()) {
        return damagedHeader("a range that cannot be");
    }
    return {};
}

template <class Kind, std::size_t N>
Result<void> readOne(CborReader& in, ByteId<Kind, N>& id)
{
    return readId(in, id);
}

template <class T>
Result<void> readList(CborReader& in, std::vector<T>& into)
{
    SPILE_ASSIGN(count, in.array());
    if (count > headerListMost) {
        return damagedHeader("a list too long");
    }
    for (std::size_t i = 0; i < count; ++i) {
        SPILE_TRY(readOne(in, into.emplace_back()));
    }
    return {};
}

Result<void> readFormat(CborReader& in, std::uint64_t key)
{
    SPILE_ASSIGN(version, in.unsignedInteger());
    if (key == MinReader && version > format) {
        return fail(ErrorCode::Unsupported, "day file", "needs format " + std::to_string(version),
                    "update Spile");
    }
    return {};
}

Result<void> readTexts(CborReader& in, std::uint64_t key, BundleHeader& header)
{
    if (key == Program) {
        SPILE_ASSIGN(program, in.text());
        header.program = program;
        return {};
    }
    if (key == Made) {
        SPILE_ASSIGN(made, in.integer());
        header.made = instantFromMs(made);
        return {};
    }
    SPILE_TRY(in.item());  // from a newer writer
    return {};
}

Result<void> readValue(CborReader& in, std::uint64_t key, BundleHeader& header)
{
    switch (key) {
        case Format:
        case MinReader:
            return readFormat(in, key);
        case Cellar:
            return readId(in, header.cellar);
        case From:
            return readId(in, header.from);
        case Number:
            return readNumber(in, header.number);
        case Have:
            return readList(in, header.have);
        case Ranges:
            return readList(in, header.ranges);
        case Keys:
            return readList(in, header.keys);
        case Entries:
            return readNumber(in, header.entries);
        case Photos:
            return readNumber(in, header.photos);
        case Missing:
            return readList(in, header.missing);
        default:
            return readTexts(in, key, header);
    }
}

Bytes bundleMessage(const Sha256& tagManifest)
{
    static constexpr std::string_view context("spile-bundle-v1\0", 16);
    CborWriter message;  // its raw() alone: the two parts one after the other
    message.raw(asBytes(context));
    message.raw(tagManifest.bytes());
    return message.take();
}

}  // namespace

Bytes encodeHeader(const BundleHeader& header)
{
    CborWriter out;
    out.map(13);
    for (const auto& [key, number] : {std::pair{Format, format}, std::pair{MinReader, format}}) {
        out.unsignedInteger(key);
        out.unsignedInteger(number);
    }
    out.unsignedInteger(Cellar);
    out.bytes(header.cellar.bytes());
    out.unsignedInteger(From);
    out.bytes(header.from.bytes());
    out.unsignedInteger(Number);
    out.unsignedInteger(header.number);
    out.unsignedInteger(Made);
    out.integer(toMs(header.made));
    out.unsignedInteger(Have);
    out.array(header.have.size());
    for (const Head& head : header.have) {
        out.array(3);
        out.bytes(head.device.bytes());
        out.unsignedInteger(head.seq);
        out.bytes(head.id.bytes());
    }
    out.unsignedInteger(Ranges);
    out.array(header.ranges.size());
    for (const ChainRange& range : header.ranges) {
        out.array(5);
        out.bytes(range.device.bytes());
        out.unsignedInteger(range.first);
        out.unsignedInteger(range.last);
        out.bytes(range.before.bytes());
        out.bytes(range.end.bytes());
    }
    out.unsignedInteger(Keys);
    out.array(header.keys.size());
    for (const PublicKey& key : header.keys) {
        out.bytes(key.bytes());
    }
    out.unsignedInteger(Entries);
    out.unsignedInteger(header.entries);
    out.unsignedInteger(Photos);
    out.unsignedInteger(header.photos);
    out.unsignedInteger(Missing);
    out.array(header.missing.size());
    for (const Sha256& hash : header.missing) {
        out.bytes(hash.bytes());
    }
    out.unsignedInteger(Program);
    out.text(header.program);
    return out.take();
}

Result<BundleHeader> decodeHeader(ByteView bytes)
{
    SPILE_TRY(CborReader(bytes).item());  // the profile as a whole: order of keys, depth
    CborReader in(bytes);
    SPILE_ASSIGN(count, in.map());
    BundleHeader header;
    std::uint64_t seen = 0;
    for (std::size_t i = 0; i < count; ++i) {
        SPILE_ASSIGN(key, in.unsignedInteger());
        SPILE_TRY(readValue(in, key, header));
        seen |= key <= Program ? std::uint64_t{1} << key : 0;
    }
    constexpr std::uint64_t all = (std::uint64_t{1} << (Program + 1)) - 2;
    if (seen != all || !in.atEnd()) {
        return damagedHeader("a part is missing or too much");
    }
    return header;
}

std::string writeManifest(const Manifest& manifest)
{
    std::string text;
    for (const auto& [path, hash] : manifest) {
        text += hash.hex() + "  " + path + "\n";
    }
    return text;
}

Result<Manifest> readManifest(std::string_view text, const std::string& name)
{
    Manifest manifest;
    constexpr std::size_t hashChars = 2 * Sha256::size;
    while (!text.empty()) {
        const std::size_t end = text.find('\n');
        const std::string_view line = text.substr(0, end);
        const auto hash = Sha256::fromHex(line.substr(0, hashChars));
        if (end == std::string_view::npos || !hash || line.size() <= hashChars + 2 ||
            line.substr(hashChars, 2) != "  ") {
            return fail(ErrorCode::Damaged, name, std::string(line.substr(0, 80)), "copy it again");
        }
        if (!manifest.emplace(line.substr(hashChars + 2), *hash).second) {
            return fail(ErrorCode::Damaged, name, "a path stands twice", "copy it again");
        }
        text.remove_prefix(end + 1);
    }
    return manifest;
}

BundleSignature signBundle(const SigningKey& key, const Sha256& tagManifest)
{
    return {key.publicKey(), key.sign(bundleMessage(tagManifest))};
}

bool verifyBundle(const BundleSignature& signature, const Sha256& tagManifest)
{
    return verify(signature.key, bundleMessage(tagManifest), signature.signature);
}

Bytes encodeSignature(const BundleSignature& signature)
{
    CborWriter out;
    out.array(2);
    out.bytes(signature.key.bytes());
    out.bytes(signature.signature.bytes());
    return out.take();
}

Result<BundleSignature> decodeSignature(ByteView bytes)
{
    CborReader in(bytes);
    SPILE_TRY(expectArray(in, 2));
    BundleSignature signature;
    SPILE_TRY(readId(in, signature.key));
    SPILE_TRY(readId(in, signature.signature));
    if (!in.atEnd()) {
        return fail(ErrorCode::Damaged, bag::signature, "bytes after the end", "copy it again");
    }
    return signature;
}

}  // namespace spile::ledger

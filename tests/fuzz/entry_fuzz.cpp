// Records of any bytes: they are read or refused, and what is read is written as the very same
// bytes.
#include "core/base/sha256.hpp"
#include "core/ledger/cbor.hpp"
#include "core/ledger/entry_walk.hpp"
#include "core/ledger/fields.hpp"
#include "tests/fuzz/input.hpp"

#include <algorithm>

namespace {

using namespace spile;
using namespace spile::ledger;
using fuzz::Input;
using fuzz::require;

void requireSame(ByteView read, const Bytes& written, std::string_view what)
{
    require(std::equal(read.begin(), read.end(), written.begin(), written.end()),
            "read, but written as other bytes", what);
}

// Reads one item through each of the reader's questions and writes it again.
void copyItem(CborReader& in, CborWriter& out)
{
    switch (*in.peek()) {
        case CborType::Unsigned:
            return out.unsignedInteger(*in.unsignedInteger());
        case CborType::Negative: {
            // The profile has smaller numbers than 64 bits hold; only an item passes over them.
            CborReader ahead = in;
            const auto number = ahead.integer();
            return number ? out.integer(*in.integer()) : out.raw(*in.item());
        }
        case CborType::Bytes:
            return out.bytes(*in.bytes());
        case CborType::Text:
            return out.text(*in.text());
        case CborType::Bool:
            return out.boolean(*in.boolean());
        case CborType::Null:
            require(in.null().has_value(), "null is not read as null");
            return out.null();
        case CborType::Array:
        case CborType::Map:
            break;
    }
    const bool isMap = *in.peek() == CborType::Map;
    const std::size_t count = isMap ? *in.map() : *in.array();
    isMap ? out.map(count) : out.array(count);
    for (std::size_t i = 0; i < (isMap ? 2 * count : count); ++i) {
        copyItem(in, out);
    }
}

void readItem(ByteView bytes)
{
    const auto item = CborReader(bytes).item();
    if (!item) {
        return;
    }
    CborReader in(*item);
    CborWriter out;
    copyItem(in, out);
    requireSame(*item, out.written(), "item");
}

void readFields(ByteView bytes)
{
    if (const auto fields = decodeFields(bytes)) {
        requireSame(bytes, encodeFields(*fields), "body");
    }
}

void readCore(ByteView bytes)
{
    if (const auto core = decodeCore(bytes)) {
        requireSame(bytes, encodeCore(*core), "core");
    }
}

std::vector<SignedEntry> readSequence(ByteView bytes)
{
    std::vector<SignedEntry> entries;
    Bytes written;
    ByteView rest = bytes;
    while (!rest.empty()) {
        auto entry = takeWire(rest);
        if (!entry) {
            break;
        }
        appendWire(written, *entry);
        entries.push_back(std::move(*entry));
    }
    requireSame(bytes.first(bytes.size() - rest.size()), written, "sequence");
    return entries;
}

// Ranges as a header would have them that is made for these entries.
BundleHeader headerFor(const std::vector<SignedEntry>& entries)
{
    BundleHeader header;
    for (const SignedEntry& entry : entries) {
        const auto core = decodeCore(entry.core);
        if (!core) {
            continue;
        }
        header.cellar = core->cellar;
        if (header.ranges.empty() || header.ranges.back().device != core->device) {
            header.ranges.push_back({core->device, core->seq, core->seq, core->previous, {}});
        }
        header.ranges.back().last = core->seq;
        header.ranges.back().end = entry.id();
        ++header.entries;
    }
    return header;
}

// Binds each body to its core, and the core to the one before it, as far as it can be read.
void mend(std::vector<SignedEntry>& entries)
{
    EntryId before;
    for (SignedEntry& entry : entries) {
        if (auto core = decodeCore(entry.core)) {
            core->bodyHash = sha256(entry.body);
            core->bodyBytes = static_cast<std::uint32_t>(entry.body.size());
            if (core->seq > 1) {
                core->previous = before.isZero() ? core->previous : before;
            }
            entry.core = encodeCore(*core);
            before = entry.id();
        }
    }
}

void walk(ByteView bytes, bool mended)
{
    std::vector<SignedEntry> entries = readSequence(bytes);
    if (mended) {
        mend(entries);
    }
    const BundleHeader header = headerFor(entries);
    const std::unordered_map<DeviceId, PublicKey, IdHash> noKeys;
    EntryWalk steps(header, noKeys, SignatureCheck::None);
    std::uint64_t passed = 0;
    for (const SignedEntry& entry : entries) {
        const auto verified = steps.next(entry);
        if (!verified) {
            break;
        }
        require(sha256(verified->entry.body) == verified->core.bodyHash, "a body of another hash");
        ++passed;
    }
    require(!steps.finish() || passed == header.entries, "it ends before its entries do");
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    Input input(data, size);
    switch (input.byte() % 6U) {
        case 0:
            readItem(input.rest());
            break;
        case 1:
            readFields(input.rest());
            break;
        case 2:
            readCore(input.rest());
            break;
        case 3:
            (void)readSequence(input.rest());
            break;
        case 4:
            walk(input.rest(), false);
            break;
        default:
            walk(input.rest(), true);
            break;
    }
    return 0;
}

#include "core/ledger/entry.hpp"

#include "core/base/sha256.hpp"
#include "core/ledger/cbor.hpp"

#include <algorithm>

namespace spile::ledger {

EntryId SignedEntry::id() const { return *EntryId::fromBytes(sha256(core).bytes()); }

Bytes signedMessage(const CellarId& cellar, const EntryId& id)
{
    static constexpr std::string_view context("spile-entry-v1\0", 15);
    Bytes message(context.begin(), context.end());
    message.insert(message.end(), cellar.bytes().begin(), cellar.bytes().end());
    message.insert(message.end(), id.bytes().begin(), id.bytes().end());
    return message;
}

SignedEntry signEntry(Entry entry, ByteView body, const SigningKey& key)
{
    entry.device = key.deviceId();
    entry.bodyHash = sha256(body);
    entry.bodyBytes = static_cast<std::uint32_t>(body.size());
    SignedEntry made{encodeCore(entry), {}, Bytes(body.begin(), body.end())};
    made.signature = key.sign(signedMessage(entry.cellar, made.id()));
    return made;
}

void appendWire(Bytes& out, const SignedEntry& entry)
{
    CborWriter item;
    item.array(3);
    item.bytes(entry.core);
    item.bytes(entry.signature.bytes());
    item.bytes(entry.body);
    out.insert(out.end(), item.written().begin(), item.written().end());
}

Result<SignedEntry> takeWire(ByteView& sequence)
{
    CborReader in(sequence);
    SPILE_ASSIGN(count, in.array());
    if (count != 3) {
        return fail(ErrorCode::Damaged, "record", "not three parts");
    }
    SPILE_ASSIGN(core, in.bytes());
    SPILE_ASSIGN(signatureBytes, in.bytes());
    SPILE_ASSIGN(body, in.bytes());
    const auto signature = Signature::fromBytes(signatureBytes);
    if (!signature || core.size() > coreBytesMax || body.size() > bodyBytesMax) {
        return fail(ErrorCode::Damaged, "record", "a part has the wrong size");
    }
    sequence = sequence.last(in.left());
    return SignedEntry{Bytes(core.begin(), core.end()), *signature,
                       Bytes(body.begin(), body.end())};
}

}  // namespace spile::ledger

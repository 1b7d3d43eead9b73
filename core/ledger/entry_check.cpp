#include "core/ledger/entry_check.hpp"

#include "core/base/sha256.hpp"
#include "core/ledger/entry.hpp"
#include "core/ledger/signature_checks.hpp"

namespace spile::ledger {

namespace {

// The columns that were taken from the bytes.
bool agrees(const Row& row, const Entry& core, const CellarId& cellar)
{
    return core.seq == static_cast<std::uint64_t>(row.integer(1)) && core.kind == row.text(2) &&
           core.subject == row.id<SubjectId>(3) && core.target == row.idIfAny<EntryId>(4) &&
           toMs(core.eventTime()) == row.integer(5) && core.device == row.id<DeviceId>(9) &&
           core.cellar == cellar;
}

bool isSigned(const Row& row, const Entry& core, const EntryId& id)
{
    return !row.isNull(10) && row.integer(11) != 0 &&
           verify(row.id<PublicKey>(10), signedMessage(core.cellar, id), row.id<Signature>(8));
}

Error damagedRecord(const DeviceId& device, std::uint64_t seq, const char* what)
{
    return {ErrorCode::Damaged, "record " + placeOf(device, seq), what,
            "take in a day file for all from a device that has it, or restore a backup"};
}

constexpr const char* otherBytes = "its bytes are not those it was signed as";
constexpr const char* otherBody = "its body is not the one it was signed with";
constexpr const char* otherRow = "its row does not agree with its bytes";
constexpr const char* otherSignature = "its signature does not hold";

bool isBodyOf(const Entry& core, ByteView body)
{
    return sha256(body) == core.bodyHash && body.size() == core.bodyBytes;
}

}  // namespace

Result<Entry> wholeEntry(const EntryId& id, ByteView core, ByteView body, const DeviceId& device,
                         std::uint64_t seq)
{
    auto entry = decodeCore(core);
    if (!entry || EntryId::fromBytes(sha256(core).bytes()) != id) {
        return tl::unexpected(damagedRecord(device, seq, otherBytes));
    }
    if (!isBodyOf(*entry, body)) {
        return tl::unexpected(damagedRecord(device, seq, otherBody));
    }
    return entry;
}

Result<Entry> waitingEntry(const Row& row)
{
    const auto id = row.id<EntryId>(0);
    const auto device = row.id<DeviceId>(4);
    const auto seq = static_cast<std::uint64_t>(row.integer(5));
    SPILE_ASSIGN(core, wholeEntry(id, row.blob(1), row.blob(2), device, seq));
    if (core.device != device || core.seq != seq) {
        return tl::unexpected(damagedRecord(device, seq, otherRow));
    }
    if (row.isNull(6) ||
        !verify(row.id<PublicKey>(6), signedMessage(core.cellar, id), row.id<Signature>(3))) {
        return tl::unexpected(damagedRecord(device, seq, otherSignature));
    }
    return std::move(core);
}

std::vector<Error> wrongWith(const Row& row, const CellarId& cellar)
{
    std::vector<Error> wrong;
    const auto id = row.id<EntryId>(0);
    const auto say = [&](const char* what) {
        wrong.push_back(
            damagedRecord(row.id<DeviceId>(9), static_cast<std::uint64_t>(row.integer(1)), what));
    };
    const auto core = decodeCore(row.blob(6));
    if (!core || EntryId::fromBytes(sha256(row.blob(6)).bytes()) != id) {
        say(otherBytes);
        return wrong;
    }
    if (!isBodyOf(*core, row.blob(7))) {
        say(otherBody);
    }
    if (!agrees(row, *core, cellar)) {
        say(otherRow);
    }
    if (core->seq > 1 && row.isNull(12)) {
        say("the entry before it is missing");
    }
    if (!isSigned(row, *core, id)) {
        say(otherSignature);
    }
    return wrong;
}

}  // namespace spile::ledger

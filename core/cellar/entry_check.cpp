#include "core/cellar/entry_check.hpp"

#include "core/base/sha256.hpp"
#include "core/ledger/entry.hpp"

namespace spile::cellar {

namespace {

// The columns that were taken from the bytes.
bool agrees(const ledger::Row& row, const ledger::Entry& core, const CellarId& cellar)
{
    return core.seq == static_cast<std::uint64_t>(row.integer(1)) && core.kind == row.text(2) &&
           core.subject == row.id<SubjectId>(3) && core.target == row.idIfAny<EntryId>(4) &&
           toMs(core.eventTime()) == row.integer(5) && core.device == row.id<DeviceId>(9) &&
           core.cellar == cellar;
}

bool isSigned(const ledger::Row& row, const ledger::Entry& core, const EntryId& id)
{
    return !row.isNull(10) && row.integer(11) != 0 &&
           ledger::verify(row.id<ledger::PublicKey>(10), ledger::signedMessage(core.cellar, id),
                          row.id<ledger::Signature>(8));
}

}  // namespace

std::vector<Error> wrongWith(const ledger::Row& row, const CellarId& cellar)
{
    std::vector<Error> wrong;
    const auto id = row.id<EntryId>(0);
    const auto say = [&](const char* what) {
        wrong.push_back({ErrorCode::Damaged, "record " + id.hex().substr(0, 8), what,
                         "restore a backup, or join anew by a day file"});
    };
    const auto core = ledger::decodeCore(row.blob(6));
    if (!core || sha256(row.blob(6)).hex() != id.hex()) {
        say("its bytes are not those it was signed as");
        return wrong;
    }
    const ByteView body = row.blob(7);
    if (sha256(body) != core->bodyHash || body.size() != core->bodyBytes) {
        say("its body is not the one it was signed with");
    }
    if (!agrees(row, *core, cellar)) {
        say("its row does not agree with its bytes");
    }
    if (core->seq > 1 && row.isNull(12)) {
        say("the entry before it is missing");
    }
    if (!isSigned(row, *core, id)) {
        say("its signature does not hold");
    }
    return wrong;
}

}  // namespace spile::cellar

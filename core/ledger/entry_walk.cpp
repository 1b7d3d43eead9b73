#include "core/ledger/entry_walk.hpp"

#include "core/base/sha256.hpp"
#include "core/ledger/cbor.hpp"

namespace spile::ledger {

namespace {

tl::unexpected<Error> damagedFile(const std::string& what)
{
    return fail(ErrorCode::Damaged, "day file", what, "copy it again");
}

std::string placeOf(const Entry& core) { return ledger::placeOf(core.device, core.seq); }

}  // namespace

Result<VerifiedEntry> EntryWalk::next(SignedEntry entry)
{
    SPILE_ASSIGN(core, decodeCore(entry.core));
    const EntryId id = entry.id();
    VerifiedEntry found{std::move(entry), id, std::move(core)};
    if (found.core.bodyBytes != found.entry.body.size() ||
        sha256(found.entry.body) != found.core.bodyHash) {
        return damagedFile("body of record " + placeOf(found.core));
    }
    CborReader body(found.entry.body);
    SPILE_TRY(body.item());
    if (!body.atEnd()) {
        return damagedFile("body of record " + placeOf(found.core));
    }
    SPILE_TRY(fits(found));
    return found;
}

Result<void> EntryWalk::fits(const VerifiedEntry& entry)
{
    if (range_ == header_.ranges.size()) {
        return damagedFile("more records than its header says");
    }
    const ChainRange& range = header_.ranges[range_];
    const Entry& core = entry.core;
    const EntryId& expected = inRange_ == 0 ? range.before : previous_;
    if (core.cellar != header_.cellar || core.device != range.device ||
        core.seq != range.first + inRange_ || core.previous != expected) {
        return damagedFile("record " + placeOf(core) + " is out of its chain");
    }
    const bool lastOfRange = core.seq == range.last;
    if (lastOfRange && entry.id != range.end) {
        return damagedFile("record " + placeOf(core) + " is not the one its header names");
    }
    SPILE_TRY(fitsGroup(entry, lastOfRange));
    SPILE_TRY(isSigned(entry, lastOfRange));
    previous_ = entry.id;
    ++inRange_;
    ++seen_;
    if (lastOfRange) {
        ++range_;
        inRange_ = 0;
    }
    return {};
}

// The entries of one tap stand one after the other, and no range ends between them.
Result<void> EntryWalk::fitsGroup(const VerifiedEntry& entry, bool lastOfRange)
{
    const std::optional<Group>& group = entry.core.group;
    const bool continues = open_ ? group == open_ : !group || group->index == 0;
    if (!continues) {
        return damagedFile("record " + placeOf(entry.core) + " breaks a group");
    }
    open_ = group && group->index + 1 < group->count
                ? std::optional(Group{group->index + 1, group->count})
                : std::nullopt;
    if (open_ && lastOfRange) {
        return damagedFile("record " + placeOf(entry.core) + " leaves a group unfinished");
    }
    return {};
}

Result<void> EntryWalk::isSigned(const VerifiedEntry& entry, bool lastOfRange)
{
    const bool wanted = check_ == SignatureCheck::EveryEntry ||
                        (check_ == SignatureCheck::RangeEnds && lastOfRange);
    const Entry& core = entry.core;
    return wanted ? signatures_.add({keys_.at(core.device), core.cellar, entry.id,
                                     entry.entry.signature, core.device, core.seq})
                  : Result<void>();
}

Result<void> EntryWalk::finish()
{
    if (range_ != header_.ranges.size() || seen_ != header_.entries) {
        return damagedFile("fewer records than its header says");
    }
    return signatures_.finish();
}

}  // namespace spile::ledger

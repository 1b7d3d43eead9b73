#pragma once

#include "core/ledger/database.hpp"
#include "core/ledger/entry.hpp"
#include "core/ledger/entry_number.hpp"

#include <string_view>
#include <vector>

/// Whether a stored entry is still what it was signed as. SQLite does not notice a flipped bit in a
/// row, so its bytes are hashed and verified anew.
namespace spile::ledger {

/// The entries after a row of table entry, as many as asked for; -1: all. With each whether the
/// entry before it in its chain is there and both indices find it.
inline constexpr std::string_view storedEntries =
    "SELECT e.id, e.seq, e.kind, e.subject, e.target, e.at_ms, e.core, e.body, e.signature, "
    "c.device, c.public_key, c.trusted, (SELECT p.seq FROM entry AS q CROSS JOIN entry AS p "
    "ON " SPILE_ID_PART("p.n") " = " SPILE_ID_PART("q.n") " AND " SPILE_ID_BEGINNING("p.id") " = "
    SPILE_ID_BEGINNING("q.id") " AND p.id = q.id WHERE q.d = e.d AND q.seq = e.seq - 1 LIMIT 1), "
    "e.n "
    "FROM entry AS e LEFT JOIN device_chain AS c USING(d) WHERE e.n > ? ORDER BY e.n LIMIT ?";
inline constexpr int storedRowColumn = 13;

/// Whether it says that bytes are not those of an entry, and not that they could not be read.
[[nodiscard]] inline bool isOfContent(const Error& error)
{
    return error.code == ErrorCode::Damaged || error.code == ErrorCode::Unsupported;
}

/// Return the entry whose bytes these are.
///
/// Errors    Damaged, named by the device and the number that its row says, if the bytes are not
///           those of `id` or the body is not the one it was signed with.
[[nodiscard]] Result<Entry> wholeEntry(const EntryId& id, ByteView core, ByteView body,
                                       const DeviceId& device, std::uint64_t seq);

/// Entries that wait, with their devices' keys, to be read by waitingEntry().
#define SPILE_WAITING_ENTRIES                                                         \
    "SELECT waiting.id, core, body, signature, device, waiting.seq, public_key FROM " \
    "waiting LEFT JOIN device_chain USING(device) "
/// Return what waits, as it was signed.
///
/// Errors    Damaged if it is not that any more.
[[nodiscard]] Result<Entry> waitingEntry(const Row& row);

/// What is wrong with one row of storedEntries: its hash, its columns, its chain, its signature. It
/// is named by its device and its number there.
[[nodiscard]] std::vector<Error> wrongWith(const Row& row, const CellarId& cellar);

}  // namespace spile::ledger

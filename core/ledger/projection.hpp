#pragma once

#include "core/base/ids.hpp"
#include "core/base/result.hpp"
#include "core/ledger/database.hpp"
#include "core/ledger/entry.hpp"

namespace spile::ledger {

/// An entry that counts: its chain is whole up to it and its device is admitted.
struct CountedEntry {
    std::int64_t n = 0;  // its row in table entry
    EntryId id;
    Entry core;
    ByteView body;
};

/// The state tables that are folded from the ledger, in the same file and the same transaction.
///
/// What they hold must depend only on the set of entries that were given and not withdrawn, not on
/// the order: that is what makes two desks agree.
class Projection {
public:
    virtual ~Projection() = default;
    /// Goes up whenever the tables or the meaning of an entry change; the tables are then made
    /// anew.
    [[nodiscard]] virtual std::int64_t version() const = 0;
    /// Make the tables, empty. `temporary`: as temporary tables of this connection, which then
    /// hide those of the file.
    [[nodiscard]] virtual Result<void> create(Database& database, bool temporary) = 0;
    [[nodiscard]] virtual Result<void> drop(Database& database) = 0;
    /// Fold one entry in. Each counted entry that is not set aside is given once.
    [[nodiscard]] virtual Result<void> apply(Database& database, const CountedEntry& entry) = 0;
    /// Undo apply(): the entry is set aside, and the state must be as if it had not come. Its row
    /// in `set_aside` is there by now.
    [[nodiscard]] virtual Result<void> withdraw(Database& database, const CountedEntry& entry) = 0;
    /// Finish what depends on several entries; called before each commit.
    [[nodiscard]] virtual Result<void> settle(Database& database) = 0;
    /// Forget what apply() left for settle(): the transaction was rolled back.
    virtual void forget() = 0;
    /// Return the SHA-256 over all rows in the order of their keys.
    [[nodiscard]] virtual Result<Sha256> root(Database& database) = 0;
};

}  // namespace spile::ledger

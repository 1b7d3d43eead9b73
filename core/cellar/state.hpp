#pragma once

#include "core/cellar/kind.hpp"
#include "core/ledger/projection.hpp"

#include <map>
#include <memory>
#include <set>
#include <string>
#include <unordered_map>
#include <utility>
#include <vector>

/// The state of a cellar: what its entries say together, as SQL tables (SCHEMA.md).
///
/// What a row holds follows from the set of entries alone. A fact's row is its entry with the
/// corrections to it applied; a barrel's summary is computed anew from its facts whenever one of
/// them is touched. So the order in which entries arrive leaves no trace.
namespace spile::cellar {

/// The statements for the table of one kind, made from its row in the table of kinds.
struct KindStatements {
    std::string create;
    std::string upsert;
    std::string exists;  // whether a subject has a live entry of the kind
    std::string remove;
    struct ItemTable {
        Field field;
        std::string create;
        std::string clear;
        std::string insert;
    };
    std::vector<ItemTable> items;
};

class State final : public ledger::Projection {
public:
    State();
    ~State() override;
    State(const State&) = delete;
    State& operator=(const State&) = delete;

    [[nodiscard]] std::int64_t version() const override;
    [[nodiscard]] Result<void> create(ledger::Database& database, bool temporary) override;
    [[nodiscard]] Result<void> drop(ledger::Database& database) override;
    [[nodiscard]] Result<void> apply(ledger::Database& database,
                                     const ledger::CountedEntry& entry) override;
    [[nodiscard]] Result<void> withdraw(ledger::Database& database,
                                        const ledger::CountedEntry& entry) override;
    [[nodiscard]] Result<void> settle(ledger::Database& database) override;
    void forget() override
    {
        touched_.clear();
        corrections_.clear();
        clocks_.clear();
    }
    [[nodiscard]] Result<Sha256> root(ledger::Database& database) override;

    /// Whether the records have a subject of that kind, not voided. Requires a known kind.
    [[nodiscard]] Result<bool> has(ledger::Database& database, std::string_view kind,
                                   const SubjectId& subject) const;

    /// The names of all state tables, sorted.
    [[nodiscard]] std::vector<std::string> tables() const;

private:
    /// Make what the state says of one entry anew; nothing if it is not here yet.
    [[nodiscard]] Result<void> refresh(ledger::Database& database, const EntryId& id);
    /// The same for one that is set aside: nothing is left of it.
    [[nodiscard]] Result<void> removeAll(ledger::Database& database, const EntryId& id,
                                         const ledger::Entry& core);
    [[nodiscard]] Result<void> settleCorrections(ledger::Database& database);
    /// Make anew what was recorded by clocks of which something else is known now.
    [[nodiscard]] Result<void> settleClocks(ledger::Database& database);
    [[nodiscard]] Result<void> noteClock(ledger::Database& database, const EntryId& observation);
    [[nodiscard]] Result<void> writeFact(ledger::Database& database, const KindSpec& kind,
                                         const EntryId& id, const ledger::Entry& core,
                                         ByteView body);
    /// Say whether a person has to decide about it.
    [[nodiscard]] static Result<void> noteUnsettled(ledger::Database& database, const EntryId& id,
                                                    bool voided, bool twoValues);
    [[nodiscard]] static Result<void> writeItems(ledger::Database& database,
                                                 const KindStatements& statements,
                                                 const EntryId& id, const SubjectId& subject,
                                                 const ledger::Fields& fields);

    std::unordered_map<std::string_view, KindStatements> statements_;  // by kind
    std::map<std::string, std::string> contents_;   // by table: the statement that reads it whole
    std::set<SubjectId> touched_;                   // barrels whose summary is to be made anew
    std::vector<EntryId> corrections_;              // that came since the last settle()
    std::set<std::pair<DeviceId, BootId>> clocks_;  // of which an observation came or went
};

}  // namespace spile::cellar

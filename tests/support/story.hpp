#pragma once

#include "tests/support/history.hpp"
#include "tests/support/naive_cellar.hpp"

#include <functional>
#include <map>
#include <set>

namespace spile::support {

/// A history while it is carried out: what each device must have by now is known beside it.
///
/// Errors    std::runtime_error, at what is wrong.
class Story {
public:
    Story(MemoryFleet& fleet, const History& history);
    ~Story();
    Story(const Story&) = delete;
    Story& operator=(const Story&) = delete;

    void play(const Step& step);
    /// Let everything reach everybody, and compare.
    void finish();

private:
    // A device, or a copy of its folder that both go on with.
    struct Holder {
        MemoryFleet::Member* member = nullptr;
        std::set<EntryId> has;  // it was recorded or taken in here: counted or waiting
        std::optional<DatabaseImage> backup;
        std::set<EntryId> backupHas;
    };
    using Ids = std::vector<EntryId>;

    void record(Holder& at, const Step& step);
    void keep(Holder& at, const EntryId& id);
    void keepAll(Holder& at, const Ids& ids);
    void recordOne(Holder& at, ledger::NewEntry entry);
    void recordTaste(Holder& at, const Step& step);
    void recordNewer(Holder& at, const Step& step);
    void amend(Holder& at, const Step& step);
    void admit(Holder& at, const Step& step);
    void cutOff(Holder& at, const Step& step);
    void reinstate(Holder& at, const Step& step);
    void observe(Holder& at, const Step& step);
    void exchange(const Step& step);
    void exchangePart(const Step& step);
    void clone(Holder& original);
    void backUp(Holder& at);
    void restore(Holder& at);

    void carry(Holder& from, Holder& to);
    void carryDayFile(Holder& from, Holder& to, bool forOne);
    void deliver(Holder& to, const Ids& ids);
    void link(Holder& at);
    void compare(Holder& at);
    void admitAll();
    void exchangeUntilQuiet();
    void compareRebuilt(Holder& at, const Sha256& root);
    void compareShuffled(const std::set<EntryId>& linked, const Sha256& root);

    [[nodiscard]] Ids besideInGroup(const EntryId& id) const;
    [[nodiscard]] Holder& holder(unsigned i) { return holders_[i % holders_.size()]; }
    [[nodiscard]] NaiveEntries entriesOf(const std::set<EntryId>& ids) const;
    [[nodiscard]] NaiveCellar said(const std::set<EntryId>& has, const DeviceId& self) const;
    [[nodiscard]] SubjectId barrel(unsigned i) const { return barrels_[i % barrels_.size()]; }
    [[nodiscard]] EntryId someEntry(const Holder& at, unsigned i) const;
    [[nodiscard]] ledger::NewEntry entry(const std::string& kind, const SubjectId& subject,
                                         ledger::Fields fields, const Step& step) const;

    MemoryFleet& fleet_;
    const History& history_;
    SeededRandom random_;  // for what no step says: orders of delivery
    std::vector<Holder> holders_;
    std::vector<SubjectId> barrels_;
    Ids all_;  // every entry, as they were recorded
    std::uint8_t boots_ = 0;
    std::map<EntryId, ledger::VerifiedEntry> verified_;
    NaiveEntries naive_;
    std::vector<Path> dayFiles_;
};

}  // namespace spile::support

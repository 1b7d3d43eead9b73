#pragma once

#include "core/cellar/acts/exchanging.hpp"
#include "tests/support/quick_file_system.hpp"
#include "tests/support/small_cellar.hpp"

#include <memory>
#include <vector>

/// Several devices of one cellar, on a disk whose syncs are left out so that thousands of acts take
/// seconds.
namespace spile::support {

class Fleet {
public:
    /// One device of the fleet. The first is the desk that made the cellar.
    struct Member {
        explicit Member(std::uint64_t seed) : random(seed) {}

        SimulatedClock clock{*fromIso("2025-09-01T08:00Z")};
        SeededRandom random;
        Uuid7Source ids{clock, random};
        MemoryKeyStore keys;
        MemoryKeyStore keysOfBackup;
        Path folder;
        std::unique_ptr<cellar::Cellar> cellar;
    };

    /// Make a cellar with the person, batch and barrel of fillSmallCellar() and `devices` - 1
    /// more devices that have joined it and are not admitted.
    explicit Fleet(std::size_t devices);

    [[nodiscard]] std::size_t size() const { return members_.size(); }
    [[nodiscard]] Member& at(std::size_t i) { return *members_[i % members_.size()]; }
    [[nodiscard]] cellar::Cellar& cellar(std::size_t i) { return *at(i).cellar; }
    [[nodiscard]] const SmallCellar& small() const { return small_; }

    /// Hand a day file out of `from`, for `to` alone or for all; return where it is.
    Path handOut(std::size_t from, std::optional<std::size_t> to);
    /// Take a day file in at `to`; the test fails if it is refused.
    ledger::TakenIn takeIn(std::size_t to, const Path& file);
    /// Let the desk admit every device that is not, then bring all records everywhere; return
    /// whether anybody learned anything by it.
    bool exchangeAll();
    /// The same until nobody does: one that finds itself copied goes on under a new key, which is
    /// news again.
    void exchangeUntilQuiet();

    /// Keep a copy of a device as it is now, and put it back later: what a backup does.
    void backUp(std::size_t i);
    /// False if there is no backup.
    bool restore(std::size_t i);

private:
    [[nodiscard]] Outside outside(Member& member);
    void open(Member& member);

    TempFolder folder_;
    system::DiskFileSystem disk_;
    QuickFileSystem files_{disk_};
    std::vector<std::unique_ptr<Member>> members_;
    SmallCellar small_;
    int handed_ = 0;
};

/// Return a hash over all records of a cellar as they are stored: cores, bodies, signatures.
[[nodiscard]] Sha256 recordBytes(cellar::Cellar& cellar);

}  // namespace spile::support

#pragma once

#include "core/ledger/bundle_writer.hpp"
#include "tests/support/real_device.hpp"

#include <vector>

/// A cellar of any size on the real disk, made by real devices' signed chains: a desk and 1,000
/// phones that it admitted. A hundred entries to a barrel: its registration, its fill, and then
/// tastings, draws, gauges, checks, readings and verdicts, and a correction now and then, each
/// entry by another phone and of another barrel than the one before.
namespace spile::bench {

inline constexpr std::int64_t phones = 1000;
inline constexpr std::int64_t entriesOfBarrel = 100;
/// A day is the same at any size: 40 records by each phone, each of another barrel, of 1,000
/// barrels from all over the cellar.
inline constexpr std::int64_t recordsOfPhone = 40;
inline constexpr std::int64_t barrelsOfDay = 1000;

class GrownCellar {
public:
    /// Open the cellar in `folder`, or make it, with its phones and no barrels.
    explicit GrownCellar(const Path& folder);

    /// Add entries until there are `entries` for as many barrels as that makes. Without syncs and
    /// in one transaction: for making, not for measuring.
    void growTo(std::int64_t entries);
    /// Write a day of all phones into the new day file `file`. It is not taken in.
    void writeDay(const Path& file);

    [[nodiscard]] cellar::Cellar& cellar() { return *cellar_; }
    [[nodiscard]] std::int64_t entries();
    [[nodiscard]] std::int64_t barrels();
    /// The barrel with the number `i`, from 0 on.
    [[nodiscard]] static SubjectId barrel(std::int64_t i);

private:
    struct Phone {
        ledger::SigningKey key;
        std::uint64_t seq = 0;
        EntryId head;
        EntryId gauge;  // the last one that it recorded; zero if there is none yet
    };
    void admitPhones();
    void readHeads();
    [[nodiscard]] ledger::VerifiedEntry sign(Phone& phone, ledger::NewEntry made,
                                             std::int64_t number);
    [[nodiscard]] ledger::NewEntry fact(Phone& phone, const SubjectId& barrel, std::int64_t number);

    support::RealDevice device_;
    std::unique_ptr<cellar::Cellar> cellar_;
    std::vector<Phone> phones_;
};

}  // namespace spile::bench

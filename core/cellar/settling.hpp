#pragma once

#include "core/cellar/field.hpp"
#include "core/ledger/database.hpp"
#include "core/ledger/entry.hpp"

#include <string>
#include <vector>

/// What several devices have left for a person to decide. Nothing is lost while nobody decides, and
/// a decision is a record like any other (acts/settling.hpp).
namespace spile::cellar {

enum class Unsettled : std::uint8_t {
    TwoValues = 1,           ///< a record was corrected on two devices to different values
    VoidedAndCorrected = 2,  ///< it was taken back on one and corrected on another
    SameCode = 3,            ///< two barrels have one code
    FilledTwice = 4,         ///< a barrel was filled twice without being emptied between
    GaugedTwice = 5,         ///< two devices gauged it within ten minutes: two looks, or one twice
    Overfull = 6,            ///< its fill or a gauge says more than it holds
    Overdrawn = 7,           ///< more went out of it than was in it
    Copied = 8,              ///< a device's key has signed two records with one number
    SetAside = 9,            ///< a device that was cut off, or does not belong, has records that
                             ///< count nowhere
    Waiting = 10,            ///< a device that nobody has admitted has records
    Newer = 11,              ///< records that need a newer program
};

struct UnsettledRow {
    Unsettled what = Unsettled::TwoValues;
    std::string key;    // names it for good, 8 digits; the same on every device
    std::string about;  // the barrel's mark, the lot's, person's, ... or the device's name
    std::string kind;   // of the record; empty if it is about a barrel or a device
    EntryId entry;      // the record
    SubjectId subject;  // what it is about; of a barrel or lot with that name
    DeviceId device;    // which recorded it, or which it is about
    std::string deviceName;
    std::string formerName;  // of a device that waits: of the one that it says it was before
    Instant at{};
    std::uint64_t count = 0;  // of records
};

/// Note that there is something to decide about a barrel, or that there is nothing any more.
[[nodiscard]] Result<void> noteBarrel(ledger::Database& database, Unsettled what,
                                      const SubjectId& barrel, bool open);
/// Return what a device is called; empty if nobody gave it a name.
[[nodiscard]] Result<std::string> nameOfDevice(ledger::Database& database, const DeviceId& device);

/// All that is to be settled, the records first; at most `limit` of each kind.
[[nodiscard]] Result<std::vector<UnsettledRow>> toSettle(ledger::Database& database, int limit);
/// How much there is, counted up to 100.
[[nodiscard]] Result<int> howMuchToSettle(ledger::Database& database);

/// What can be done about one of them.
enum class Settling : std::uint8_t {
    SetValue,    ///< this value it is
    KeepVoided,  ///< it stays taken back
    BringBack,   ///< it counts, as it was corrected
    NewCode,     ///< this barrel gets a new code, and a new label
    TakeBack,    ///< this record is taken back
    KeepBoth,    ///< both are right: this one is confirmed
    CutOff,      ///< what the old key signs from here on counts no more
    Adopt,       ///< this record counts
    Admit,       ///< the device belongs to the cellar
};

struct Choice {
    Settling does = Settling::SetValue;
    EntryId entry;      // the correction, void, fill or record
    SubjectId subject;  // the barrel
    std::uint32_t field = 0;
    ledger::Value value;                   // null: without a value
    std::optional<std::int64_t> volumeMl;  // that the record says
    std::string kind;                      // of the record
    std::string deviceName;                // who says so
    Instant at{};
};

/// The choices, in an order that is the same on every device. None where a person has to do
/// something else first: update the program.
[[nodiscard]] Result<std::vector<Choice>> choicesFor(ledger::Database& database,
                                                     const UnsettledRow& row);

}  // namespace spile::cellar

#pragma once

#include "core/base/ids.hpp"
#include "core/base/time.hpp"
#include "core/ledger/database.hpp"
#include "core/ledger/entry.hpp"
#include "core/units/units.hpp"

#include <limits>
#include <map>
#include <optional>
#include <string>
#include <vector>

/// What was recorded on this device, and what of it is known to have gone where.
///
/// Errors    of every query: those of ledger::Database.
namespace spile::cellar {

/// One thing of which a person says "I did": not what admits devices or corrects other records.
struct OwnAct {
    EntryId entry;
    std::uint64_t seq = 0;
    std::string kind;
    Instant at;                    // when it is said to have happened
    Instant recorded;              // when it was recorded
    std::optional<Instant> clock;  // what `at` was by the clock, where that was set right
    SubjectId subject;
    std::string barrelCode, barrelMark;  // empty if it is about something else
    // The flight and glass that it belongs to: by itself, or by the tasting that it answers.
    std::optional<SubjectId> flight;
    std::optional<int> glass;
    std::string person;
    bool voided = false;
    std::optional<EntryId> voidedBy;  // the record to void to let it count again
    bool amended = false;
    bool handedOut = false;  // in a day file that was written here
    // What a line about it needs, its corrections applied.
    std::string name;  // of what was registered or begun; the beer filled in; the place moved to
    std::optional<Volume> volume;
    std::string text;    // finding, verdict, method, next use or purpose
    int scores = 0;      // attributes judged
    std::string device;  // the device that it is about: its name, or the beginning of its id
    std::optional<Milliseconds> ahead;  // how far a clock that was looked at was
};

/// Before which `seq` the newest page begins.
inline constexpr std::uint64_t fromTheNewest = std::numeric_limits<std::int64_t>::max();

/// What this device recorded before its entry `beforeSeq`, the newest first.
[[nodiscard]] Result<std::vector<OwnAct>> ownActs(ledger::Database& database,
                                                  std::uint64_t beforeSeq, int limit);

struct DayFileMade {
    Instant made;
    std::uint64_t number = 0;
    std::uint64_t entries = 0;   // of all devices
    std::optional<DeviceId> to;  // none: for everybody
};

/// This device's entries that no day file written here covers, for whomever it was.
struct Unsent {
    std::uint64_t entries = 0;
    std::map<std::string, std::uint64_t> byKind;
    std::uint64_t photos = 0;
    std::optional<DayFileMade> last;  // the day file that was written last
};
[[nodiscard]] Result<Unsent> unsent(ledger::Database& database);

/// What another device is proven to hold of this one's entries, by its own last day file.
struct Receipt {
    DeviceId id;
    std::string device;       // its name; the beginning of its id if it is not admitted
    Instant takenIn;          // when its last day file was taken in here
    std::uint64_t holds = 0;  // up to this seq
    std::uint64_t lacks = 0;  // entries after it
};
/// One for each other device of which a day file was taken in, in the order of their ids.
[[nodiscard]] Result<std::vector<Receipt>> receipts(ledger::Database& database);

}  // namespace spile::cellar

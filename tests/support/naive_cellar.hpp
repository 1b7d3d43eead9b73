#pragma once

#include "core/ledger/entry.hpp"
#include "core/ledger/fields.hpp"

#include <map>
#include <memory>
#include <optional>
#include <set>
#include <string>

/// A cellar as the documents describe it (FORMAT.md section 3, SCHEMA.md), in the plainest form: a
/// function of a set of entries, without tables, order of arrival or memory. What the product says
/// is compared with it.
namespace spile::support {

struct NaiveEntry {
    ledger::Entry core;
    Bytes body;
};
using NaiveEntries = std::map<EntryId, std::shared_ptr<const NaiveEntry>>;

/// What counts as later: when it happened (but never later than it was recorded), then device,
/// number and id.
using NaiveOrder = std::tuple<Instant, DeviceId, std::uint64_t, EntryId>;

struct NaiveFact {
    std::string kind;
    SubjectId subject;
    NaiveOrder order;
    Instant at;                    // when it is said to have happened
    std::optional<Instant> clock;  // the same by its device's clock, where that was set right
    std::optional<EntryId> target;
    ledger::Fields fields;  // corrected; those that this version knows of the kind
    bool voided = false, amended = false, twoValues = false;
};

/// What the list of barrels shows of one.
struct NaiveBarrel {
    std::optional<std::string> mark, verdict;
    std::optional<SubjectId> place, batch;
    std::optional<EntryId> fill;  // none: it is empty
    friend bool operator==(const NaiveBarrel&, const NaiveBarrel&) = default;
};

struct NaiveCellar {
    std::set<EntryId> linked;             // their chain is whole and their device was ever admitted
    std::set<EntryId> counted;            // of these; the others belong to what was cut off
    std::map<EntryId, NaiveFact> facts;   // of counted entries
    std::map<EntryId, bool> corrections;  // counted amendments and voids: whether they are voided
    std::set<EntryId> unknown;            // counted, of kinds and versions that nobody here knows
    std::map<SubjectId, NaiveBarrel> barrels;
};

/// Return what `entries` say together in the ledger of the device `self`.
[[nodiscard]] NaiveCellar naiveCellar(const NaiveEntries& entries, const CellarId& cellar,
                                      const DeviceId& self);

}  // namespace spile::support

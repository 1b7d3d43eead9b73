#pragma once

#include "core/cellar/ways.hpp"

#include <map>
#include <set>
#include <string>
#include <vector>

/// The records that a lot's beer descends from, and all that was taken from the lots among them;
/// for the files of core/trace alone.
namespace spile::trace {

/// A record on the way of beer. One that leads from lot to lot is taken out of one and comes into
/// the other.
struct Node {
    enum class Kind : std::uint8_t { Fill, TopUp, Transfer, Finish, Package, Discard };
    EntryId entry;
    SubjectId subject;  // the barrel of a fill or top-up, else the lot
    cellar::WayOrder order;
    std::optional<Volume> volume;
    Volume lost{};  // of the volume, in packaging
    std::optional<double> alcoholByVolume, specificGravity;
    std::optional<Mass> mass;         // of a finish
    std::string substance, allergen;  // of a finish or top-up
    std::vector<std::size_t> held;    // of a transfer out of a barrel: its fill, and top-ups
    std::optional<EntryId> mix;       // that it was taken of
    std::optional<SubjectId> batch;   // of a fill or top-up
    std::optional<SubjectId> person;
    int rank = 0;  // above all that it descends from
    Kind kind{};
};

struct Graph {
    std::vector<Node> nodes;
    std::map<EntryId, std::size_t> byEntry;
    std::map<EntryId, std::vector<std::size_t>> mixes;  // what each is made of; voided left out
    std::map<SubjectId, std::vector<std::size_t>> ins;  // by lot
    std::vector<std::size_t> order;                     // each after all that it descends from
    std::vector<SubjectId> cutShort;   // lots with a transfer whose fill is not in the records
    std::vector<SubjectId> takenBack;  // lots of whose mixes something was voided

    [[nodiscard]] const Node* find(const EntryId& entry) const;
};

/// Read all that the beer of `lot` descends from.
///
/// Errors    those of ledger::Database.
[[nodiscard]] Result<Graph> graphAbove(ledger::Database& database, const SubjectId& lot);

}  // namespace spile::trace

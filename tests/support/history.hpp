#pragma once

#include "tests/support/memory_fleet.hpp"

#include <cstdint>
#include <iosfwd>
#include <optional>
#include <string>
#include <vector>

/// What several devices do over months, drawn from a seed.
namespace spile::support {

enum class What : std::uint8_t {
    Barrel,
    Fill,
    Empty,
    Move,
    Verdict,
    Draw,
    Taste,  // a group: with readings that answer it
    Note,
    Amend,
    Void,
    Newer,  // a kind, a version or a field that nobody here knows
    SetClock,
    PassTime,
    Exchange,
    ExchangePart,  // so that there are gaps, and corrections before what they correct
    Admit,
    BackUp,
    Restore,
    Clone,
    CutOff,
    Adopt,
    Reinstate,
    Reboot,
    Observe  // what a device's clock shows, or that this one's is wrong
};

/// One thing that one device does; the numbers choose among what there is to choose from.
struct Step {
    What what = What::Note;
    unsigned device = 0, a = 0, b = 0, c = 0;
};
std::ostream& operator<<(std::ostream& out, const Step& step);

struct History {
    std::uint64_t seed = 0;
    std::size_t devices = 2;
    bool dayFiles = false;  // exchanged by day files, which takes ten times as long
    std::vector<Step> steps;
};
std::ostream& operator<<(std::ostream& out, const History& history);

[[nodiscard]] History historyOf(std::uint64_t seed);

/// Carry `history` out and compare what the devices hold with the naive cellar at each exchange;
/// then exchange until nothing is new and compare all with each other. Return what is wrong; empty
/// if nothing is.
[[nodiscard]] std::string faultOf(MemoryFleet& fleet, const History& history);

/// Leave steps out of a faulty history as long as it stays faulty.
[[nodiscard]] History shortened(MemoryFleet& fleet, History history);

}  // namespace spile::support

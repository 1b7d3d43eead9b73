#include "tests/support/history.hpp"

#include "tests/support/story.hpp"

#include <algorithm>
#include <array>
#include <ostream>

namespace spile::support {

namespace {

struct Weight {
    What what;
    unsigned usual, correcting;
};
constexpr std::array weights = {
    Weight{What::Barrel, 2, 0},    Weight{What::Fill, 4, 1},     Weight{What::Empty, 3, 1},
    Weight{What::Move, 4, 1},      Weight{What::Verdict, 4, 1},  Weight{What::Draw, 4, 2},
    Weight{What::Taste, 3, 1},     Weight{What::Note, 2, 1},     Weight{What::Amend, 8, 20},
    Weight{What::Void, 5, 8},      Weight{What::Newer, 2, 1},    Weight{What::SetClock, 3, 1},
    Weight{What::PassTime, 3, 2},  Weight{What::Exchange, 8, 6}, Weight{What::ExchangePart, 5, 5},
    Weight{What::Admit, 5, 3},     Weight{What::BackUp, 2, 1},   Weight{What::Restore, 2, 1},
    Weight{What::Clone, 1, 1},     Weight{What::CutOff, 3, 2},   Weight{What::Adopt, 2, 1},
    Weight{What::Reinstate, 1, 1}, Weight{What::Reboot, 1, 1},   Weight{What::Observe, 4, 4}};
constexpr std::array names = {
    "barrel",  "fill",    "empty", "move",    "verdict", "draw",      "taste",         "note",
    "amend",   "void",    "newer", "clock",   "pass",    "exchange",  "exchange part", "admit",
    "back up", "restore", "clone", "cut off", "adopt",   "reinstate", "reboot",        "observe"};

What draw(SeededRandom& random, bool correcting)
{
    const auto weightOf = [&](const Weight& weight) {
        return correcting ? weight.correcting : weight.usual;
    };
    unsigned total = 0;
    for (const Weight& weight : weights) {
        total += weightOf(weight);
    }
    auto at = static_cast<unsigned>(random.next() % total);
    for (const Weight& weight : weights) {
        if (at < weightOf(weight)) {
            return weight.what;
        }
        at -= weightOf(weight);
    }
    return What::Note;
}

}  // namespace

std::ostream& operator<<(std::ostream& out, const Step& step)
{
    return out << names.at(static_cast<std::size_t>(step.what)) << " on " << step.device << " ("
               << step.a << ", " << step.b << ", " << step.c << ")";
}

std::ostream& operator<<(std::ostream& out, const History& history)
{
    out << "seed " << history.seed << ", " << history.devices << " devices, "
        << (history.dayFiles ? "day files" : "entries") << "\n";
    for (const Step& step : history.steps) {
        out << "  " << step << "\n";
    }
    return out;
}

History historyOf(std::uint64_t seed)
{
    SeededRandom random(seed);
    constexpr std::uint64_t dayFilesEvery = 67;
    constexpr unsigned leastSteps = 20, mostSteps = 60, numbers = 1000;
    History history{
        seed, 2 + random.next() % (MemoryFleet::devices - 1), seed % dayFilesEvery == 0, {}};
    const bool correcting = random.next() % 2 == 0;
    history.steps.resize(leastSteps + random.next() % (mostSteps - leastSteps + 1));
    for (Step& step : history.steps) {
        const auto number = [&] { return static_cast<unsigned>(random.next() % numbers); };
        step.what = draw(random, correcting);
        // By a day file a device learns that it was copied or set back and takes a new key, which
        // the merge property has.
        const bool copies = step.what == What::Restore || step.what == What::Clone;
        if (history.dayFiles && copies) {
            step.what = What::Note;
        }
        step.device = number();
        step.a = number();
        step.b = number();
        step.c = number();
    }
    return history;
}

std::string faultOf(MemoryFleet& fleet, const History& history)
{
    try {
        Story story(fleet, history);
        for (const Step& step : history.steps) {
            story.play(step);
        }
        story.finish();
        return {};
    } catch (const std::exception& fault) {
        return fault.what();
    }
}

History shortened(MemoryFleet& fleet, History history)
{
    for (std::size_t piece = history.steps.size() / 2; piece > 0; piece /= 2) {
        for (std::size_t at = 0; at + piece <= history.steps.size();) {
            History without = history;
            const auto from = without.steps.begin() + static_cast<std::ptrdiff_t>(at);
            without.steps.erase(from, from + static_cast<std::ptrdiff_t>(piece));
            if (faultOf(fleet, without).empty()) {
                at += piece;
            } else {
                history = without;
            }
        }
    }
    return history;
}

}  // namespace spile::support

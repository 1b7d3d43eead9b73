// Whatever several devices record, correct, copy, restore and exchange, with clocks two years off:
// all come to one state, and it is the one that the naive cellar has.
//
// SPILE_HISTORY=SEED carries out that one alone; SPILE_HISTORIES=N so many in all, not 20,000.
#include "tests/support/history.hpp"

#include <cstdlib>
#include <gtest/gtest.h>

namespace spile::support {

namespace {

// Sanitizers make each history ten times as slow.
#ifdef SPILE_SANITIZED
constexpr std::uint64_t usualHistories = 2000;
#else
constexpr std::uint64_t usualHistories = 20'000;
#endif
constexpr std::uint64_t parts = 4;  // that CTest runs side by side

std::optional<std::uint64_t> numberFrom(const char* variable)
{
    const char* text = std::getenv(variable);
    return text == nullptr ? std::nullopt : std::optional(std::strtoull(text, nullptr, 10));
}

// Made once: what it holds is put back for each history.
MemoryFleet& fleet()
{
    static MemoryFleet one;
    return one;
}

void expectNoFault(std::uint64_t seed)
{
    const History history = historyOf(seed);
    if (faultOf(fleet(), history).empty()) {
        return;
    }
    const History few = shortened(fleet(), history);
    FAIL() << "SPILE_HISTORY=" << seed << " shows it again. Shortened: " << few
           << faultOf(fleet(), few);
}

}  // namespace

class Histories : public testing::TestWithParam<std::uint64_t> {};

TEST_P(Histories, EndInOneStateThatTheNaiveCellarHasToo)
{
    if (const auto seed = numberFrom("SPILE_HISTORY")) {
        if (GetParam() == 0) {
            expectNoFault(*seed);
        }
        return;
    }
    const std::uint64_t count = numberFrom("SPILE_HISTORIES").value_or(usualHistories) / parts;
    for (std::uint64_t i = 0; i < count && !HasFailure(); ++i) {
        expectNoFault(i * parts + GetParam());
    }
}

INSTANTIATE_TEST_SUITE_P(Part, Histories, testing::Range(std::uint64_t{0}, parts));

}  // namespace spile::support

#pragma once

#include "tests/bench/report.hpp"

#include <atomic>
#include <cstdlib>
#include <new>

/// For benches of formulas: counts what is allocated, and times a call beside a baseline. Include
/// it in the bench's one source file: it replaces operator new.
namespace spile::bench {

inline std::atomic<long> allocations = 0;

// What a call takes, with the baseline measured between its batches: what else the machine does
// then falls on both.
struct Pair {
    Times baseline;
    Times work;

    [[nodiscard]] double ratio() const { return work.median() / baseline.median(); }
};

template <class Baseline, class Work>
Pair timed(Baseline baseline, Work work)
{
    constexpr int batches = 200;
    constexpr int calls = 1000;
    Pair pair;
    for (int batch = 0; batch < batches; ++batch) {
        const auto start = std::chrono::steady_clock::now();
        for (int i = 0; i < calls; ++i) {
            baseline(i);
        }
        const std::chrono::duration<double> taken = std::chrono::steady_clock::now() - start;
        pair.baseline.addSeconds(taken.count() / calls);
        pair.work.add(work);
    }
    return pair;
}

}  // namespace spile::bench

// NOLINTBEGIN(misc-new-delete-overloads,misc-definitions-in-headers): the sized forms call these.
void* operator new(std::size_t size)
{
    ++spile::bench::allocations;
    if (void* memory = std::malloc(size)) {  // NOLINT(cppcoreguidelines-no-malloc)
        return memory;
    }
    throw std::bad_alloc();
}
void operator delete(void* memory) noexcept { std::free(memory); }
void operator delete(void* memory, std::size_t /*size*/) noexcept { std::free(memory); }
// NOLINTEND(misc-new-delete-overloads,misc-definitions-in-headers)

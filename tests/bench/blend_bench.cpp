// The bench's search in a cellar of 60 barrels with eight attributes. With --long up to eight
// barrels too, which takes half a minute.
#include "core/blend/bench.hpp"
#include "tests/bench/report.hpp"

#include <cmath>
#include <ctime>
#include <random>
#include <string_view>

namespace spile::bench {

namespace {

using namespace blend;

constexpr std::size_t attributes = 8;

Problem cellar(std::size_t barrels, unsigned seed)
{
    std::mt19937 random(seed);
    const auto between = [&](double low, double high) {
        return low + (high - low) * static_cast<double>(random()) / 4294967296.0;
    };
    Problem problem;
    for (std::size_t a = 0; a < attributes; ++a) {
        problem.wishes.push_back({std::string(1, static_cast<char>('a' + a)), between(3.5, 6.5)});
    }
    for (std::size_t i = 0; i < barrels; ++i) {
        Barrel barrel{std::to_string(i), 10 * std::floor(between(2, 8)), between(0.1, 0.13)};
        for (std::size_t a = 0; a < attributes; ++a) {
            barrel.mean.push_back(between(1, 9));
            barrel.deviation.push_back(between(0.3, 0.7));
        }
        problem.barrels.push_back(barrel);
    }
    problem.limits = {4, 0, 0.1, 40, 1000, 0.105, 0.125};
    return problem;
}

double processor() { return static_cast<double>(std::clock()) / CLOCKS_PER_SEC; }

// Stops a search after so many seconds of this core.
struct Stopping {
    explicit Stopping(double seconds) : until(processor() + seconds) {}
    Job job()
    {
        return Job(
            [this](std::uint64_t, std::uint64_t) {
                if (processor() > until) {
                    token.cancel();
                }
            },
            &token);
    }
    double until;
    CancelToken token;
};

void search(std::size_t barrels, std::size_t most, std::size_t parts, double seconds,
            const char* goal, double window = 0)
{
    Problem problem = cellar(barrels, 1);
    for (Wish& wish : problem.wishes) {
        if (window > 0) {
            wish.low = *wish.target - window;
            wish.high = *wish.target + window;
        }
    }
    problem.limits.barrelsMost = most;
    problem.limits.partsMost = parts;
    Stopping stopping(seconds);
    const double start = processor();
    double first = 0;
    double best = 0;
    const auto found = bestBlends(problem, stopping.job(), [&](const Blend& blend) {
        first = processor() - start;
        best = blend.distance;
    });
    must(found);
    std::printf("  %3zu barrels, up to %zu, %zu in part%s  %8.3f s  best %.4f after %.2f s, %s",
                barrels, most, parts, window > 0 ? ", windows" : "         ", processor() - start,
                std::sqrt(best), first, found->proven ? "proven" : "not proven");
    if (!found->proven) {
        std::printf(" (bound %.4f)", std::sqrt(found->bound));
    }
    std::printf("  goal %s\n", goal);
}

}  // namespace

int run(bool all)
{
    title("blend: the nearest blends (processor time on one core; distances as roots)");
    for (std::size_t most = 4; most <= 6; ++most) {
        search(20, most, 0, 30, "none");
        search(40, most, 0, 30, "none");
        search(60, most, 0, 30, most == 6 ? "1 s" : "none");
    }
    search(60, 4, 1, 30, "none");
    search(60, 5, 1, 30, "1 s");
    search(60, 6, 1, 30, "10 s");
    search(60, 4, 2, 30, "none");
    search(60, 5, 2, 30, "none");
    search(60, 6, 2, 20, "none");
    search(60, 7, 0, 30, "none");
    if (all) {
        search(60, 8, 0, 20, "20 s, or its gap");
        search(60, 8, 1, 20, "20 s, or its gap");
    }
    search(60, 6, 0, 30, "1 s", 1);
    search(60, 6, 1, 30, "10 s", 1);
    search(60, 6, 0, 30, "none", 0.4);
    search(60, 6, 1, 30, "none", 0.4);
    return 0;
}

}  // namespace spile::bench

int main(int argc, char** argv)
{
    try {
        return spile::bench::run(argc > 1 && std::string_view(argv[1]) == "--long");
    } catch (const std::exception& e) {
        std::fprintf(stderr, "%s\n", e.what());
        return 1;
    }
}

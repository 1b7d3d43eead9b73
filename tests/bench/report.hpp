#pragma once

#include "core/base/result.hpp"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <stdexcept>
#include <string>
#include <vector>

/// Times and how they are printed: each beside its baseline of the same run, with the goal that
/// the ledger is to reach. Only an error makes a bench fail, never a time.
namespace spile::bench {

template <class T>
void must(const Result<T>& result)
{
    if (!result) {
        throw std::runtime_error(result.error().subject + ": " + result.error().value);
    }
}

class Times {
public:
    template <class Work>
    void add(Work work)
    {
        const auto start = std::chrono::steady_clock::now();
        work();
        addSeconds(std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count());
    }
    void addSeconds(double seconds) { seconds_.push_back(seconds); }
    void addAll(const Times& others)
    {
        seconds_.insert(seconds_.end(), others.seconds_.begin(), others.seconds_.end());
    }
    [[nodiscard]] double quantile(double q) const
    {
        std::vector<double> sorted = seconds_;
        std::sort(sorted.begin(), sorted.end());
        return sorted.at(static_cast<std::size_t>(q * static_cast<double>(sorted.size() - 1)));
    }
    [[nodiscard]] double median() const { return quantile(0.5); }

private:
    std::vector<double> seconds_;
};

inline void title(const std::string& text) { std::printf("\n%s\n", text.c_str()); }

inline void row(const std::string& name, const Times& times)
{
    std::printf("  %-44s p50 %9.3f ms  p99 %9.3f ms\n", name.c_str(), times.median() * 1e3,
                times.quantile(0.99) * 1e3);
}

inline void row(const std::string& name, const Times& times, const Times& baseline,
                const std::string& goal)
{
    std::printf("  %-44s p50 %9.3f ms  p99 %9.3f ms  ratio %5.2f  goal %s\n", name.c_str(),
                times.median() * 1e3, times.quantile(0.99) * 1e3,
                times.median() / baseline.median(), goal.c_str());
}

/// Run a bench; an error ends it with exit 1 and its words.
inline int guarded(void (*bench)())
{
    try {
        bench();
        return EXIT_SUCCESS;
    } catch (const std::exception& error) {
        std::fprintf(stderr, "bench failed: %s\n", error.what());
        return EXIT_FAILURE;
    }
}

}  // namespace spile::bench

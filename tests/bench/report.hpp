#pragma once

#include "core/base/result.hpp"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <stdexcept>
#include <string>
#include <sys/resource.h>
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

/// Processor time of all threads of this process so far, in seconds.
inline double processorSeconds()
{
    rusage used{};
    ::getrusage(RUSAGE_SELF, &used);
    const auto seconds = [](const timeval& t) {
        return static_cast<double>(t.tv_sec) + static_cast<double>(t.tv_usec) * 1e-6;
    };
    return seconds(used.ru_utime) + seconds(used.ru_stime);
}

class Times {
public:
    template <class Work>
    void add(Work work)
    {
        const auto start = std::chrono::steady_clock::now();
        const double processorBefore = processorSeconds();
        work();
        processor_ += processorSeconds() - processorBefore;
        addSeconds(std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count());
    }
    void addSeconds(double seconds) { seconds_.push_back(seconds); }
    void addAll(const Times& others)
    {
        seconds_.insert(seconds_.end(), others.seconds_.begin(), others.seconds_.end());
        processor_ += others.processor_;
    }
    [[nodiscard]] double quantile(double q) const
    {
        std::vector<double> sorted = seconds_;
        std::sort(sorted.begin(), sorted.end());
        return sorted.at(static_cast<std::size_t>(q * static_cast<double>(sorted.size() - 1)));
    }
    [[nodiscard]] double median() const { return quantile(0.5); }

    /// What all threads of this process took of processors meanwhile: what a busy machine, which
    /// lets them wait, does not lengthen.
    [[nodiscard]] double processor() const { return processor_; }

private:
    std::vector<double> seconds_;
    double processor_ = 0;
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

/// The same ratio of processor times, for a machine that has other work to do.
inline void processorRow(const Times& times, const Times& baseline)
{
    std::printf("  %-44s     %9.3f ms      %9.3f ms  ratio %5.2f\n",
                "  processor time, and the baseline's", times.processor() * 1e3,
                baseline.processor() * 1e3, times.processor() / baseline.processor());
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

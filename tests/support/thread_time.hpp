#pragma once

#include <ctime>

namespace spile::support {

/// Return the seconds of a processor that `work` takes in this thread, whatever else runs.
template <class Work>
double threadSeconds(const Work& work)
{
    const auto now = [] {
        timespec time{};
        clock_gettime(CLOCK_THREAD_CPUTIME_ID, &time);
        return static_cast<double>(time.tv_sec) + 1e-9 * static_cast<double>(time.tv_nsec);
    };
    const double begun = now();
    work();
    return now() - begun;
}

}  // namespace spile::support

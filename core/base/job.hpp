#pragma once

#include <atomic>
#include <cstdint>
#include <functional>
#include <utility>

namespace spile::inline base {

/// Asks a long job to stop; set from any thread.
class CancelToken {
public:
    void cancel() { cancelled_ = true; }
    [[nodiscard]] bool isCancelled() const { return cancelled_; }

private:
    std::atomic<bool> cancelled_{false};
};

/// How much of a job is done, 0 to 1.
[[nodiscard]] inline double shareOf(std::uint64_t done, std::uint64_t total)
{
    return total == 0 ? 0.0 : static_cast<double>(done) / static_cast<double>(total);
}

/// What a long job reports to and obeys. The default reports to nobody and never stops.
class Job {
public:
    using Report = std::function<void(std::uint64_t done, std::uint64_t total)>;
    using Waits = std::function<bool()>;

    Job() = default;
    /// `waits` tells whether other work waits for the next report, which lets it run; without it,
    /// some may at any time.
    Job(Report report, const CancelToken* cancel, Waits waits = {})
        : report_(std::move(report)), cancel_(cancel), waits_(std::move(waits))
    {
    }

    /// Tell how far it is. False if the job should stop.
    [[nodiscard]] bool advance(std::uint64_t done, std::uint64_t total) const
    {
        if (report_) {
            report_(done, total);
        }
        return cancel_ == nullptr || !cancel_->isCancelled();
    }

    /// This job for one of several parts that are equally long, counted from 0.
    [[nodiscard]] Job part(std::uint64_t which, std::uint64_t parts) const
    {
        Report ofAll;
        if (report_) {
            ofAll = [report = report_, which, parts](std::uint64_t done, std::uint64_t total) {
                report(which * total + done, parts * total);
            };
        }
        return {std::move(ofAll), cancel_, waits_};
    }

    /// Whether there is anybody who could wait for it.
    [[nodiscard]] bool isAlone() const { return !report_; }
    /// Whether other work waits for the next report.
    [[nodiscard]] bool isAwaited() const { return !isAlone() && (!waits_ || waits_()); }

private:
    Report report_;
    const CancelToken* cancel_ = nullptr;
    Waits waits_;
};

}  // namespace spile::inline base

#pragma once

#include <atomic>
#include <cstdint>
#include <functional>

namespace spile::inline base {

/// Asks a long job to stop; set from any thread.
class CancelToken {
public:
    void cancel() { cancelled_ = true; }
    [[nodiscard]] bool isCancelled() const { return cancelled_; }

private:
    std::atomic<bool> cancelled_{false};
};

/// What a long job reports to and obeys. The default reports to nobody and never stops.
class Job {
public:
    using Report = std::function<void(std::uint64_t done, std::uint64_t total)>;

    Job() = default;
    Job(Report report, const CancelToken* cancel) : report_(std::move(report)), cancel_(cancel) {}

    /// Tell how far it is. False if the job should stop.
    [[nodiscard]] bool advance(std::uint64_t done, std::uint64_t total) const
    {
        if (report_) {
            report_(done, total);
        }
        return cancel_ == nullptr || !cancel_->isCancelled();
    }

private:
    Report report_;
    const CancelToken* cancel_ = nullptr;
};

}  // namespace spile::inline base

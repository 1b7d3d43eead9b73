#pragma once

#include "core/base/job.hpp"
#include "core/ledger/ledger.hpp"

namespace spile::ledger {

/// Commits what it is given whenever a slice is full: when other work waits for it, or when it has
/// as many entries as can be committed before any work would have waited too long.
class Slices {
public:
    /// Reports to `job` how much of what is expected is done.
    Slices(Ledger& ledger, const Job& job);

    /// So much more is to be done.
    void expect(std::uint64_t more) { total_ += more; }
    void did(std::uint64_t some) { done_ += some; }

    /// The change that is open now.
    [[nodiscard]] Result<Change*> change();
    /// So many entries more are in the slice; commit if it is full.
    [[nodiscard]] Result<void> steps(std::int64_t count);
    [[nodiscard]] Result<void> commit();
    /// Nothing more is to be done, and what is still waiting is not waited for.
    [[nodiscard]] Result<void> finish();
    /// Let other work run. Requires no change to be open.
    ///
    /// Errors    Cancelled.
    [[nodiscard]] Result<void> rest();

private:
    [[nodiscard]] Milliseconds now() const { return ledger_.outside().clock.sinceBoot(); }
    void learnFrom(Milliseconds committing);

    Ledger& ledger_;
    const Job& job_;
    std::uint64_t total_ = 0;
    std::int64_t most_;  // entries of a slice
    std::uint64_t done_ = 0;
    std::int64_t inSlice_ = 0;
    std::int64_t sinceClock_ = 0;
    Milliseconds started_{0};
    std::optional<Change> change_;
};

/// Let all that waits count that can by now; return how many entries that were.
[[nodiscard]] Result<std::uint64_t> linkWaiting(Slices& slices);

}  // namespace spile::ledger

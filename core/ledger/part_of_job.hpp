#pragma once

#include "core/base/job.hpp"

#include <algorithm>

namespace spile::ledger {

/// A part of a longer job, for what reports on that part alone: it goes on from `before` of `whole`
/// to `before + share`, and stops where the longer one is stopped.
class PartOfJob {
public:
    PartOfJob(const Job& longer, std::uint64_t before, std::uint64_t share, std::uint64_t whole)
        : longer_(longer),
          part_(
              [this, before, share, whole](std::uint64_t done, std::uint64_t total) {
                  const std::uint64_t of = total == 0 ? 0 : share * std::min(done, total) / total;
                  if (!longer_.advance(before + of, whole)) {
                      stop_.cancel();
                  }
              },
              &stop_, [this] { return longer_.isAwaited(); })
    {
    }
    PartOfJob(const PartOfJob&) = delete;
    PartOfJob& operator=(const PartOfJob&) = delete;
    ~PartOfJob() = default;

    [[nodiscard]] const Job& job() const { return longer_.isAlone() ? longer_ : part_; }

private:
    const Job& longer_;
    CancelToken stop_;
    Job part_;
};

}  // namespace spile::ledger

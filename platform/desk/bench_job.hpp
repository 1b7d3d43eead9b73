#pragma once

#include "platform/desk/session.hpp"

namespace spile::desk {

/// A job that tells how far it is, and ends after so many seconds with what there is by then.
class BenchJob {
public:
    BenchJob(const Session& session, double seconds)
        : told_(session.job("bench")),
          job_(
              [this, &session, begun = session.clock().sinceBoot(),
               most = Milliseconds(static_cast<std::int64_t>(seconds * 1000))](
                  std::uint64_t done, std::uint64_t total) {
                  (void)told_.advance(done, total);
                  if (session.clock().sinceBoot() - begun >= most) {
                      enough_.cancel();
                  }
              },
              &enough_)
    {
    }
    BenchJob(const BenchJob&) = delete;
    BenchJob& operator=(const BenchJob&) = delete;
    BenchJob(BenchJob&&) = delete;
    BenchJob& operator=(BenchJob&&) = delete;
    ~BenchJob() = default;

    [[nodiscard]] const Job& job() const { return job_; }

private:
    Job told_;
    CancelToken enough_;
    Job job_;
};

}  // namespace spile::desk

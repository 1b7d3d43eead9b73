#include "core/ledger/slices.hpp"

#include <algorithm>

namespace spile::ledger {

namespace {

// How long other work waits at most for a slice and for its commit.
constexpr Milliseconds waitMost{20};
// What is written of an entry lies all over the indices: a commit writes many pages anew, however
// few entries it has, so the fewer slices the better.
constexpr std::int64_t sliceMost = 20'000;
constexpr std::int64_t sliceLeast = 250;

}  // namespace

Slices::Slices(Ledger& ledger, const Job& job)
    : ledger_(ledger), job_(job), most_(job.isAlone() ? sliceMost : sliceLeast)
{
}

Result<Change*> Slices::change()
{
    if (!change_) {
        SPILE_ASSIGN(begun, ledger_.change());
        change_.emplace(std::move(begun));
        started_ = now();
        inSlice_ = 0;
    }
    return &*change_;
}

Result<void> Slices::steps(std::int64_t count)
{
    inSlice_ += count;
    sinceClock_ += count;
    constexpr std::int64_t lookAtClockEvery = 16;
    if (sinceClock_ < lookAtClockEvery) {
        return {};
    }
    sinceClock_ = 0;
    const bool full = inSlice_ >= most_ || (job_.isAwaited() && now() - started_ >= waitMost);
    return full ? commit() : Result<void>();
}

Result<void> Slices::commit()
{
    if (!change_) {
        return {};
    }
    const Milliseconds begun = now();
    SPILE_TRY(change_->commit());
    change_.reset();
    if (!job_.isAlone()) {
        learnFrom(now() - begun);
    }
    return rest();
}

Result<void> Slices::finish()
{
    done_ = total_;
    return change_ ? commit() : rest();
}

Result<void> Slices::rest()
{
    if (!job_.advance(std::min(done_, total_), total_)) {
        return fail(ErrorCode::Cancelled, "day file");
    }
    return {};
}

void Slices::learnFrom(Milliseconds committing)
{
    const std::int64_t longest = committing > waitMost ? most_ / 2 : most_ * 2;
    // A slice that was cut short says nothing about a long one.
    const bool says = committing > waitMost || inSlice_ >= most_;
    most_ = says ? std::clamp(longest, sliceLeast, sliceMost) : most_;
}

// What one pass links may admit a device that it has passed by: until one finds nothing.
Result<std::uint64_t> linkWaiting(Slices& slices)
{
    constexpr std::int64_t atOnce = 100;
    std::uint64_t all = 0;
    std::int64_t inPass = 0;
    WaitingPlace place;
    for (;;) {
        SPILE_ASSIGN(change, slices.change());
        SPILE_ASSIGN(linked, change->chains().linkWaiting(atOnce, place));
        if (linked > 0) {
            inPass += linked;
            slices.did(static_cast<std::uint64_t>(linked));
            SPILE_TRY(slices.steps(linked));
        } else if (inPass > 0) {
            all += static_cast<std::uint64_t>(std::exchange(inPass, 0));
            place = {};
        } else {
            return all;
        }
    }
}

}  // namespace spile::ledger

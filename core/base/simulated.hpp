#pragma once

#include "core/base/clock.hpp"
#include "core/base/random.hpp"

namespace spile::inline base {

/// A clock that stands until it is moved: for tests, and for the demo's invented months.
class SimulatedClock final : public Clock {
public:
    explicit SimulatedClock(Instant start) : now_(start) {}

    [[nodiscard]] Instant now() const override { return now_; }
    [[nodiscard]] Milliseconds sinceBoot() const override { return sinceBoot_; }
    [[nodiscard]] BootId bootId() const override { return bootId_; }

    /// Let time pass: both clocks move.
    void pass(Milliseconds time)
    {
        now_ += time;
        sinceBoot_ += time;
    }
    /// Set the wall clock alone, as a person or a dead battery does.
    void setWall(Instant now) { now_ = now; }
    /// Start the machine anew.
    void reboot(const BootId& id)
    {
        bootId_ = id;
        sinceBoot_ = Milliseconds(0);
    }

private:
    Instant now_;
    Milliseconds sinceBoot_{0};
    BootId bootId_;
};

/// The same bytes for the same seed, on every machine. Never for keys that must stay secret.
///
/// Source    SplitMix64: Steele, Lea and Flood, OOPSLA 2014, doi:10.1145/2660193.2660195;
///           constants from memory, checked in tests/unit/simulated_test.cpp.
class SeededRandom final : public Random {
public:
    explicit SeededRandom(std::uint64_t seed) : state_(seed) {}

    void fill(std::span<std::uint8_t> bytes) override;
    [[nodiscard]] std::uint64_t next();
    /// Return a number in [0, 1), with 53 random bits.
    [[nodiscard]] double unit();
    /// Return a number that is normally distributed around `mean`.
    [[nodiscard]] double normal(double mean, double deviation);

private:
    std::uint64_t state_;
};

}  // namespace spile::inline base

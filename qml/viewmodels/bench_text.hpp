#pragma once

#include "core/plan/bench_answers.hpp"
#include "qml/viewmodels/bench_items.hpp"
#include "qml/viewmodels/formats.hpp"

#include <QCoreApplication>

namespace spile::viewmodels {

/// The bench's answers in words.
class BenchText {
    Q_DECLARE_TR_FUNCTIONS(BenchText)

public:
    BenchText(const plan::Bench& bench, const Formats& formats) : bench_(bench), formats_(formats)
    {
    }

    /// "Rum 1, Rum 3 (60 L of it)".
    [[nodiscard]] QString barrels(const blend::Blend& blend) const;
    /// "7 in 10 that all is inside"; empty without windows.
    [[nodiscard]] QString chance(const blend::Blend& blend) const;
    /// "412 L, 11.6 % vol, off by 0.8 points".
    [[nodiscard]] QString inShort(const plan::BenchAnswer& answer) const;
    /// What it comes to and what it costs, a line each.
    [[nodiscard]] std::vector<BenchItem> costs(const plan::BenchAnswer& answer) const;
    /// Each attribute with its range, its window and the chance of lying in it.
    [[nodiscard]] std::vector<BenchItem> levels(const plan::BenchAnswer& answer) const;
    /// What stands in the way, a line each.
    [[nodiscard]] std::vector<BenchItem> inTheWay(const blend::Found& found) const;
    /// Whether the nearest is proven, and else how much nearer one could be.
    [[nodiscard]] QString proof(const blend::Found& found) const;
    /// Which barrels are not on the bench; empty if all are.
    [[nodiscard]] QString leftOut() const;

private:
    [[nodiscard]] QString points(double distance) const;
    [[nodiscard]] QString range(const QString& middle, const QString& low,
                                const QString& high) const;
    [[nodiscard]] bool hasWindows() const;

    const plan::Bench& bench_;
    const Formats& formats_;
};

}  // namespace spile::viewmodels

// Prints how well the outlook foresees simulated barrels, and what its rule of tasting is worth:
// the tables of assets/handbook/outlook-measured.md. A short form by default; --full for that of
// the page, which takes minutes.
#include "tests/support/simulated_forecasts.hpp"
#include "tests/support/simulated_pulling.hpp"

#include <cstdio>
#include <string_view>

namespace spile::test {

namespace {

struct Counts {
    int forecasts, dates, pulled;  // barrels
};

void calibrationTable(const Counts& counts)
{
    std::printf("\nUnder the model, %d barrels: how often the truth lay inside\n",
                counts.forecasts);
    std::printf(
        "| months ahead | 50 %% | 80 %% | 95 %% | chi square (19) |\n|---|---|---|---|---|\n");
    const Horizons horizons = calibrate(counts.forecasts, 1);
    for (std::size_t i = 0; i < horizons.size(); ++i) {
        const Calibration& one = horizons.at(i);
        std::printf("| %g | %.3f | %.3f | %.3f | %.1f |\n", monthsAhead.at(i), one.inside50,
                    one.inside80, one.inside95, one.chiSquare());
    }
}

void truthTable(const Counts& counts)
{
    std::printf(
        "\nSeven truths, %d barrels each: error three months ahead, in points; and how often "
        "the truth lay in the 95 %% interval\n",
        counts.forecasts);
    std::printf(
        "| truth | outlook | last value | straight line | 95 %% now | +1 | +3 | +6 |\n"
        "|---|---|---|---|---|---|---|---|\n");
    double outlook = 0;
    double ratio = 0;
    for (const Truth truth : truths) {
        const TruthErrors errors = foresee(truth, counts.forecasts, 7);
        std::printf("| %s | %.2f | %.2f | %.2f |", nameOf(truth).data(), errors.outlook,
                    errors.lastValue, errors.line);
        for (const Calibration& one : errors.horizons) {
            std::printf(" %.3f |", one.inside95);
        }
        std::printf("\n");
        outlook += errors.outlook / truths.size();
        ratio += errors.outlook / errors.lastValue / truths.size();
    }
    std::printf("mean of the outlook's errors %.3f, of its ratios to the last value's %.3f\n",
                outlook, ratio);
}

void dateTable(const Counts& counts)
{
    std::printf(
        "\nDate of coming to 4.5, %d barrels each: median error in months; and how often the "
        "date lay in the outlook's 80 %% interval\n",
        counts.dates);
    std::printf(
        "| truth, sittings | outlook | last value | last two | straight line | 80 %% |\n"
        "|---|---|---|---|---|---|\n");
    for (const bool mixed : {false, true}) {
        for (const int sittings : {2, 4, 6}) {
            const DateErrors errors = readyDates(mixed, sittings, counts.dates, 11);
            std::printf("| %s, %d | %.1f | %.1f | %.1f | %.1f | %.2f |\n",
                        mixed ? "mixed" : "saturating", sittings, errors.outlook, errors.lastValue,
                        errors.lastTwo, errors.line, errors.inside80);
        }
    }
}

void policyRow(const char* windows, const char* name, const PullingSetting& setting, Policy policy)
{
    const PullingResult result = pullBarrels(setting, policy, outlook::TastingRule{});
    std::printf("| %s | %s | %.2f (%d) | %.3f | %.3f / %.3f | %.1f |\n", windows, name,
                result.tastings, result.tastings90, result.inside, result.early, result.late,
                result.delayMonths);
    std::fflush(stdout);
}

void policyTable(const Counts& counts)
{
    std::printf("\nTasting and pulling, %d barrels each\n", counts.pulled);
    std::printf(
        "| windows | policy | tastings (90 %%) | pulled inside | early / late | months after "
        "the window opened |\n|---|---|---|---|---|---|\n");
    PullingSetting faster = wideWindows();
    faster.trueRateRatio = 1.6;
    const std::array settings = {std::pair{"wide", wideWindows()},
                                 std::pair{"wide, barrels faster than believed", faster},
                                 std::pair{"tight", tightWindows()}};
    for (auto [windows, setting] : settings) {
        setting.barrels = counts.pulled;
        policyRow(windows, "monthly, raw", setting, Policy::RawMonthly);
        policyRow(windows, "monthly, model", setting, Policy::ModelMonthly);
        policyRow(windows, "rule", setting, Policy::Rule);
    }
}

}  // namespace

}  // namespace spile::test

int main(int count, char** words)
{
    using namespace spile::test;
    const bool full = count > 1 && std::string_view(words[1]) == "--full";
    const Counts counts = full ? Counts{6000, 1500, 2000} : Counts{600, 100, 50};
    std::printf("Simulated barrels with assumed curves: they test the mathematics, not beer.\n");
    calibrationTable(counts);
    truthTable(counts);
    dateTable(counts);
    policyTable(counts);
    return 0;
}

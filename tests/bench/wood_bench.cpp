// The two-year course of a barrel, day by day, beside one evaluation of the density formula for
// water and ethanol in the same run.
#include "core/liquor/ethanol_water.hpp"
#include "core/wood/loss_band.hpp"
#include "tests/bench/counted.hpp"

#include <array>
#include <cmath>
#include <numbers>

namespace spile::bench {

namespace {

constexpr std::size_t days = 730;

using Year = std::array<wood::Climate, days>;

Year seasons()
{
    Year all;
    for (std::size_t i = 0; i < days; ++i) {
        const double turn = 2 * std::numbers::pi * static_cast<double>(i) / 365;
        all[i] = {celsius(15 - 6 * std::cos(turn)), 0.70 + 0.05 * std::sin(turn)};
    }
    return all;
}

void line(const char* name, const Pair& pair, const char* goal)
{
    std::printf("  %-44s %10.1f ns  beside %5.1f ns  ratio %8.1f  goal %s\n", name,
                pair.work.median() * 1e9, pair.baseline.median() * 1e9, pair.ratio(), goal);
}

void bench()
{
    title("wood: a two-year daily course (730 days)");
    double kept = 0;  // what is computed is used, else it would not be
    const auto plainDensity = [&](int i) {
        const auto density = liquor::densityByMass(0.05 + 1e-5 * i, celsius(15.0 + 1e-3 * i));
        must(density);
        kept += density->si();
    };
    const auto start = liquor::liquorOf(litres(200), 0.10, 7.0);
    must(start);
    const wood::Wood wood{squareMetres(1.83)};
    const wood::WoodPrior prior{squareMetres(1.83)};
    const wood::VolumeSpread soakage{litres(0), litres(1), litres(2)};
    static const Year changing = seasons();
    static const Year even{};
    static std::array<wood::CourseDay, days> course;
    static std::array<wood::BandDay, days> band;

    const auto courseOver = [&](const Year& climate) {
        must(wood::lossCourse(*start, wood, climate, course));
        kept += course.back().volume.si();
    };
    const auto bandOver = [&](const Year& climate) {
        must(wood::lossBand(*start, prior, soakage, climate, band));
        kept += band.back().volume.low.si();
    };
    const Pair ofChanging = timed(plainDensity, [&] { courseOver(changing); });
    const Pair ofEven = timed(plainDensity, [&] { courseOver(even); });
    const Pair ofBand = timed(plainDensity, [&] { bandOver(changing); });
    const long before = allocations;
    courseOver(changing);
    courseOver(even);
    bandOver(changing);
    const long counted = allocations - before;

    line("course, a new climate each day", ofChanging, "below 1500");
    line("course, one climate", ofEven, "below 1500");
    line("band of seven courses", ofBand, "none");
    std::printf("  %-44s %10ld     goal 0\n", "allocations in all these courses", counted);
    std::printf("  (%g)\n", kept);
}

}  // namespace

}  // namespace spile::bench

int main() { return spile::bench::guarded(spile::bench::bench); }

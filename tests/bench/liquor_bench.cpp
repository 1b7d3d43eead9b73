// Strength and density, beside one evaluation of the density formula for water and ethanol at a new
// temperature. Each row is a million calls, so that its milliseconds are nanoseconds a call.
#include "core/liquor/ethanol_water.hpp"
#include "core/liquor/extract.hpp"
#include "core/liquor/gravity.hpp"
#include "core/liquor/mixing.hpp"
#include "tests/bench/counted.hpp"

#include <cmath>

namespace {

using namespace spile;
using namespace spile::liquor;

constexpr int rounds = 15;
constexpr int calls = 1'000'000;
constexpr int inputs = 1000;  // different ones, over and over

long counted = 0;  // allocations while the clock ran

// Times a million calls of `work`, which is given a number that goes from 0 to 1.
template <class Work>
bench::Times timesOf(Work work)
{
    bench::Times times;
    double sum = 0;
    for (int round = 0; round < rounds; ++round) {
        const long before = bench::allocations;
        const auto start = std::chrono::steady_clock::now();
        for (int i = 0; i < calls; ++i) {
            sum += work(static_cast<double>(i % inputs) / inputs);
        }
        const std::chrono::duration<double> taken = std::chrono::steady_clock::now() - start;
        counted += bench::allocations - before;
        times.addSeconds(taken.count());
    }
    if (!std::isfinite(sum)) {
        throw std::runtime_error("a sum that is no number");
    }
    return times;
}

void run()
{
    bench::title("liquor: a million calls each, so that ms are ns a call");
    const auto once = timesOf([](double x) { return densityByMass(x, celsius(17 + x))->si(); });
    bench::row("density of a strength, the plain formula", once);
    bench::row("strength of a density", timesOf([](double x) {
                   return *massFractionByDensity(kilogramsPerCubicMetre(801 + x * 190),
                                                 celsius(17 + x));
               }),
               once, "10");
    bench::row("by volume to by mass", timesOf([](double x) { return *massFractionByVolume(x); }),
               once, "10");
    bench::row("gravity of an extract",
               timesOf([](double x) { return *specificGravityOfPlato(40 * x); }), once, "1");
    bench::row("strength of a beer by its gravities", timesOf([](double x) {
                   return strengthByGravities(1.1, 1.02 + 0.03 * x)->realExtract;
               }),
               once, "20");
    bench::row("masses to volume and strength, unchecked", timesOf([](double x) {
                   return describeUnchecked({kilograms(170), kilograms(15 + x), kilograms(14)})
                       .alcoholByVolume;
               }),
               once, "2");
    std::printf("  %-44s %8ld  goal 0\n", "allocations in all these calls", counted);
}

}  // namespace

int main() { return bench::guarded(run); }

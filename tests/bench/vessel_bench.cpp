// The dip table of a barrel on its side, a row for each millimetre, beside one evaluation of the
// density formula for water and ethanol in the same run.
#include "core/liquor/ethanol_water.hpp"
#include "core/vessel/barrel.hpp"
#include "tests/bench/counted.hpp"

#include <array>

namespace spile::bench {

namespace {

constexpr std::size_t rows = 600;

void line(const char* name, const Pair& pair, int calls, const char* goal)
{
    const double each = pair.work.median() / calls;
    std::printf("  %-44s %10.1f ns  beside %5.1f ns  ratio %8.1f  goal %s\n", name, each * 1e9,
                pair.baseline.median() * 1e9, each / pair.baseline.median(), goal);
}

vessel::Barrel barrelOf(vessel::Profile profile)
{
    return {profile, millimetres(776), millimetres(600), millimetres(520), 1};
}

void bench()
{
    title("vessel: a dip table of 600 rows");
    double kept = 0;  // what is computed is used, else it would not be
    const auto plainDensity = [&](int i) {
        const auto density = liquor::densityByMass(0.05 + 1e-5 * i, celsius(15.0 + 1e-3 * i));
        must(density);
        kept += density->si();
    };
    static std::array<vessel::DipRow, rows> table;
    const Length step = (1.0 / (rows - 1)) * millimetres(600);
    const auto tableOf = [&](vessel::Profile profile) {
        must(vessel::dipTable(barrelOf(profile), step, table));
        kept += table[rows / 2].volume.si();
    };
    constexpr int dips = 100;
    const auto dipsOf = [&](double tilt) {
        for (int i = 1; i < dips + 1; ++i) {
            const auto dip = vessel::lyingDip(barrelOf(vessel::Profile::Parabola),
                                              litres(200.0 * i / (dips + 2)), tilt);
            must(dip);
            kept += dip->si();
        }
    };

    line("parabola", timed(plainDensity, [&] { tableOf(vessel::Profile::Parabola); }), 1,
         "below 8000");
    line("ellipse", timed(plainDensity, [&] { tableOf(vessel::Profile::Ellipse); }), 1, "none");
    line("circle", timed(plainDensity, [&] { tableOf(vessel::Profile::Circle); }), 1, "none");
    line("one dip of a volume", timed(plainDensity, [&] { dipsOf(0); }), dips, "none");
    line("one dip of a volume, leaning", timed(plainDensity, [&] { dipsOf(0.02); }), dips, "none");
    const long before = allocations;
    tableOf(vessel::Profile::Parabola);
    tableOf(vessel::Profile::Circle);
    dipsOf(0);
    const long counted = allocations - before;
    std::printf("  %-44s %10ld     goal 0\n", "allocations in two tables and 100 dips", counted);
    std::printf("  (%g)\n", kept);
}

}  // namespace

}  // namespace spile::bench

int main() { return spile::bench::guarded(spile::bench::bench); }

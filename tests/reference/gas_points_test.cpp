// Sources: each point of gas.csv names its own. Tolerances: half a unit of the last digit printed,
// or the disagreement between sources that the point states.
#include "core/gas/carbonation.hpp"
#include "core/gas/flow.hpp"
#include "core/gas/isopropanol.hpp"
#include "core/gas/oxygen.hpp"
#include "core/gas/purging.hpp"
#include "core/gas/pushing.hpp"
#include "core/gas/room.hpp"
#include "core/gas/solubility.hpp"
#include "tests/support/check_points.hpp"

#include <cmath>
#include <gtest/gtest.h>

namespace spile::gas {

namespace {

using support::checkPoints;
using support::Formula;
using support::Point;
using support::valueOf;

constexpr double million = 1e6;

double in(const Point& point, const std::string& name) { return point.input.at(name); }

Temperature temperatureOf(const Point& point) { return celsius(in(point, "temp_c")); }
Pressure gaugeOf(const Point& point) { return psi(in(point, "gauge_psi")); }
Length boreOf(const Point& point) { return millimetres(in(point, "bore_mm")); }

double gramsOf(const Result<Density>& density) { return valueOf(density.map(inGramsPerLitre)); }
double milligramsOf(const Result<Density>& density)
{
    return valueOf(density.map(inMilligramsPerLitre));
}
double psiOf(const Result<Pressure>& pressure) { return valueOf(pressure.map(inPsi)); }
double perMinuteOf(const Result<MassFlow>& flow) { return valueOf(flow.map(inKilogramsPerMinute)); }

std::map<std::string, Formula> solubilities()
{
    return {{"co2_in_water_g_l",
             [](const Point& p) {
                 return gramsOf(co2InWater(temperatureOf(p), in(p, "atm") * atmosphere));
             }},
            {"co2_in_water_mol_l",
             [](const Point& p) {
                 return gramsOf(co2InWater(temperatureOf(p), in(p, "atm") * atmosphere)) / 44.0095;
             }},
            {"co2_mole_fraction_1000",
             [](const Point& p) {
                 return 1000 * valueOf(co2MoleFractionInWater(temperatureOf(p),
                                                              pascals(1000 * in(p, "kpa"))));
             }},
            {"co2_in_beer_g_l",
             [](const Point& p) {
                 return gramsOf(co2InBeer(temperatureOf(p), atmosphere + bars(in(p, "gauge_bar"))));
             }},
            {"co2_g_l_of_volumes",
             [](const Point& p) { return gramsOf(co2Dissolved(in(p, "volumes"))); }},
            {"oxygen_saturation_mg_l",
             [](const Point& p) { return milligramsOf(oxygenSaturation(temperatureOf(p))); }},
            {"oxygen_in_air_mg_l",
             [](const Point& p) { return milligramsOf(oxygenInAir(temperatureOf(p))); }},
            {"oxygen_taken_up_mg_l", [](const Point& p) {
                 return milligramsOf(oxygenTakenUp(litres(in(p, "head_l")), in(p, "exchanged"),
                                                   litres(in(p, "beer_l")), temperatureOf(p)));
             }}};
}

Sugar sugarOf(const Point& point)
{
    static const std::map<std::string, Sugar> sugars{
        {"sucrose", Sugar::Sucrose},
        {"glucose", Sugar::Glucose},
        {"dextrose_monohydrate", Sugar::DextroseMonohydrate}};
    return sugars.at(point.word.at("sugar"));
}

std::map<std::string, Formula> carbonations()
{
    return {{"keg_psi",
             [](const Point& p) {
                 return psiOf(kegPressure(in(p, "volumes"), fahrenheit(in(p, "temp_f"))));
             }},
            {"keg_volumes",
             [](const Point& p) {
                 return valueOf(kegVolumes(psi(in(p, "psi")), fahrenheit(in(p, "temp_f"))));
             }},
            {"residual_volumes",
             [](const Point& p) { return valueOf(residualVolumes(temperatureOf(p))); }},
            {"co2_per_sugar", [](const Point& p) { return co2PerSugar(sugarOf(p)); }},
            {"priming_g",
             [](const Point& p) {
                 return valueOf(primingSugar(sugarOf(p), litres(in(p, "beer_l")), in(p, "residual"),
                                             in(p, "target"))
                                    .map(inGrams));
             }},
            {"bottle_bar", [](const Point& p) {
                 return valueOf(bottlePressure(in(p, "volumes"), temperatureOf(p)).map(inBars));
             }}};
}

Result<MassFlow> throughBore(const Point& point)
{
    return orificeFlow(atmosphere + gaugeOf(point), atmosphere, boreOf(point),
                       temperatureOf(point));
}

// Where the flow through a bore stops rising as the pressure behind it falls.
double chokingRatio(const Point& /*point*/)
{
    const auto flow = [](double ratio) {
        return orificeFlow(bars(5), ratio * bars(5), millimetres(6), celsius(20)).value().si();
    };
    double low = 0.1;
    double high = 0.9;
    for (int i = 0; i < 60; ++i) {
        const double middle = (low + high) / 2;
        (flow(middle) < flow(0.1) * (1 - 1e-13) ? high : low) = middle;
    }
    return low;
}

std::map<std::string, Formula> flows()
{
    return {{"orifice_kg_min", [](const Point& p) { return perMinuteOf(throughBore(p)); }},
            {"orifice_l_min",
             [](const Point& p) {
                 const Mass aMinute = kilograms(perMinuteOf(throughBore(p)));
                 return valueOf(volumeAtOneAtmosphere(aMinute, temperatureOf(p)).map(inLitres));
             }},
            {"choking_ratio", chokingRatio},
            {"hose_kg_min",
             [](const Point& p) {
                 return perMinuteOf(hoseFlow(atmosphere + gaugeOf(p), atmosphere, boreOf(p),
                                             metres(in(p, "hose_m")), temperatureOf(p)));
             }},
            {"line_kg_min", [](const Point& p) {
                 return perMinuteOf(lineFlow(atmosphere + gaugeOf(p), atmosphere, boreOf(p),
                                             metres(in(p, "hose_m")), temperatureOf(p)));
             }}};
}

double purgeMeasure(const Point& point)
{
    const PurgeLine line{gaugeOf(point), boreOf(point), Length(), temperatureOf(point)};
    const Volume vessel = litres(in(point, "vessel_l"));
    const Purge purge =
        (point.input.contains("minutes") ? purgeFor(line, vessel, minutes(in(point, "minutes")))
                                         : purgeTo(line, vessel, in(point, "target_percent") / 100))
            .value();
    const std::map<std::string, double> measures = {{"gas_kg", purge.gas.si()},
                                                    {"gas_l", inLitres(purge.gasAt1Atm)},
                                                    {"turnovers", purge.turnovers},
                                                    {"oxygen_percent", 100 * purge.residualOxygen},
                                                    {"oxygen_mg", million * purge.oxygenLeft.si()},
                                                    {"time_s", purge.time.si()}};
    return measures.at(point.word.at("measure"));
}

PressureCycles cyclesAt(const Point& point)
{
    const double vessel = point.input.contains("vessel_l") ? in(point, "vessel_l") : 200;
    return cyclesOf(static_cast<int>(in(point, "cycles")), gaugeOf(point), litres(vessel),
                    celsius(20))
        .value();
}

std::map<std::string, Formula> purges()
{
    return {
        {"turnovers_to", [](const Point& p) { return valueOf(turnoversTo(in(p, "oxygen"))); }},
        {"part_left_percent",
         [](const Point& p) { return 100 * valueOf(dilutedOxygen(in(p, "turnovers"), 1)); }},
        {"cycles_oxygen_percent", [](const Point& p) { return 100 * cyclesAt(p).residualOxygen; }},
        {"cycles_gas_kg", [](const Point& p) { return cyclesAt(p).gas.si(); }},
        {"purge", purgeMeasure}};
}

Exposure exposureOf(const Point& point)
{
    const Volume volume = cubicMetres(in(point, "room_m3"));
    const Room room{volume, airChanges(volume, in(point, "air_changes")).value()};
    return exposureTo(room, {litresPerMinute(192.7), minutes(10)}).value();
}

double co2Limit(const Point& point)
{
    const std::map<std::string, double> limits{{"eight_hour", co2EightHourLimit},
                                               {"short_term", co2ShortTermLimit},
                                               {"danger", co2DangerLimit}};
    return million * limits.at(point.word.at("limit"));
}

std::map<std::string, Formula> rooms()
{
    return {{"room_peak_ppm", [](const Point& p) { return million * exposureOf(p).peak; }},
            {"room_short_term_ppm",
             [](const Point& p) { return million * exposureOf(p).shortTermMean; }},
            {"room_eight_hour_ppm",
             [](const Point& p) { return million * exposureOf(p).eightHourMean; }},
            {"room_added_ppm",
             [](const Point& p) {
                 return million * valueOf(co2Added(cubicMetres(in(p, "room_m3")),
                                                   kilograms(in(p, "kg")), temperatureOf(p)));
             }},
            {"co2_limit_ppm", co2Limit}};
}

BeerLine beerLineOf(const Point& point)
{
    return {boreOf(point), metres(in(point, "hose_m")), in(point, "losses")};
}
Density liquidOf(const Point& point) { return kilogramsPerCubicMetre(in(point, "density_kg_m3")); }

std::map<std::string, Formula> pushes()
{
    return {
        {"head_force_kn",
         [](const Point& p) {
             return valueOf(
                        headForce(millimetres(in(p, "diameter_mm")), gaugeOf(p)).map(inNewtons)) /
                    1000;
         }},
        {"lift_psi",
         [](const Point& p) {
             return psiOf(liftPressure(metres(in(p, "height_m")), liquidOf(p)));
         }},
        {"push_psi",
         [](const Point& p) {
             return inPsi(p.word.at("limit") == "limit" ? pushLimit : pushWarning);
         }},
        {"beer_flow_l_min",
         [](const Point& p) {
             return valueOf(
                 beerFlow(beerLineOf(p), gaugeOf(p), metres(in(p, "lift_m")), liquidOf(p))
                     .map(inLitresPerMinute));
         }},
        {"emptying_s", [](const Point& p) {
             return valueOf(emptyingTime(beerLineOf(p), gaugeOf(p), metres(in(p, "first_m")),
                                         metres(in(p, "last_m")), litres(in(p, "l")), liquidOf(p))
                                .map(inSeconds));
         }}};
}

double isopropanolMeasure(const Point& point)
{
    const std::map<std::string, double> measures{
        {"flash_f", inFahrenheit(isopropanolFlashPoint)},
        {"lower_percent", 100 * isopropanolLowerLimit},
        {"upper_percent", 100 * isopropanolUpperLimit},
        {"danger_ppm", million * isopropanolDanger},
        {"eight_hour_ppm", million * isopropanolEightHourLimit},
        {"ignition_c", inCelsius(isopropanolIgnition)},
        {"air_m3_of_10_ml", airAtLowerLimit(millilitres(10)).value().si()}};
    return measures.at(point.word.at("measure"));
}

}  // namespace

TEST(Gas, MatchesPublishedPoints)
{
    std::map<std::string, Formula> all{{"isopropanol", isopropanolMeasure}};
    for (auto&& some : {solubilities(), carbonations(), flows(), purges(), rooms(), pushes()}) {
        all.insert(some.begin(), some.end());
    }
    checkPoints("gas.csv", all);
}

}  // namespace spile::gas

// Sources: each point of wood.csv names its own. Tolerances: half a unit of the last digit printed
// or the disagreement that the point states.
#include "core/gas/oxygen.hpp"
#include "core/liquor/extract.hpp"
#include "core/wood/evaporation.hpp"
#include "core/wood/explanation.hpp"
#include "core/wood/gravity_sign.hpp"
#include "core/wood/loss_rate.hpp"
#include "core/wood/oxygen.hpp"
#include "core/wood/rewetting.hpp"
#include "core/wood/soakage.hpp"
#include "core/wood/vapour.hpp"
#include "tests/support/check_points.hpp"

#include <gtest/gtest.h>

namespace spile::wood {

namespace {

using support::Formula;
using support::Point;

double in(const Point& point, const std::string& name) { return point.input.at(name); }

Temperature temperatureOf(const Point& p) { return celsius(in(p, "temp_c")); }

Climate climateOf(const Point& p) { return {temperatureOf(p), in(p, "rh_percent") / 100}; }

Area innerOf(const Point& p) { return squareMetres(in(p, "inner_m2")); }

Wood woodOf(const Point& p) { return {squareMetres(1.83), standardStave, in(p, "k_1e10") * 1e-10}; }

liquor::Liquor litresAt(double volume, double percent, double plato)
{
    return liquor::liquorOf(litres(volume), percent / 100, plato).value();
}

liquor::Liquor spirit(const Point& p) { return litresAt(200, in(p, "abv_percent"), 0); }

double litresOf(const Result<Volume>& volume) { return support::valueOf(volume.map(inLitres)); }

double yearlyPercent(const Point& p)
{
    const auto start = litresAt(200, in(p, "abv_percent"), in(p, "plato"));
    return litresOf(evaporated(start, {squareMetres(1.83)}, climateOf(p), days(365))) / 2.0;
}

// Water and ethanol left after the months of the point, from 200 L at 10 % and 7 °P.
liquor::Mixed after(const Point& p)
{
    const Wood wood = woodOf(p);
    liquor::Liquor left = litresAt(200, 10, 7);
    const auto count = static_cast<int>(in(p, "time_d"));
    for (int day = 0; day < count; ++day) {
        const auto rates = lossRates(left, wood, climateOf(p));
        left.water = left.water - kilograms(rates.value().water.si() * factor::day);
        left.ethanol = left.ethanol - kilograms(rates.value().ethanol.si() * factor::day);
    }
    return liquor::describe(left).value();
}

// Where the strength neither rises nor falls.
double neutralHumidity(const Point& p)
{
    const auto start = spirit(p);
    const double strength = liquor::describe(start).value().alcoholByVolume;
    Wood wood{squareMetres(1.83)};
    wood.ethanolShare = in(p, "share");
    double low = 0.3;
    double high = 0.95;
    for (int i = 0; i < 40; ++i) {
        const Climate air{celsius(18), (low + high) / 2};
        CourseDay end;
        const auto done = lossCourse(start, wood, {&air, 1}, {&end, 1});
        EXPECT_TRUE(done.has_value());
        (end.alcoholByVolume > strength ? low : high) = air.relativeHumidity;
    }
    return (low + high) / 2;
}

double gramsADay(MassFlow flow) { return flow.si() * 1e3 * factor::day; }

Result<Rates> ratesOf(const Point& p)
{
    return lossRates(litresAt(200, 10, 0), {squareMetres(1.83)}, climateOf(p));
}

std::map<std::string, Formula> vapours()
{
    return {
        {"water_vapour_pa",
         [](const Point& p) { return waterVapourPressure(temperatureOf(p)).value().si(); }},
        {"ethanol_vapour_pa",
         [](const Point& p) { return ethanolVapourPressure(temperatureOf(p)).value().si(); }},
        {"ethanol_over_mixture_torr",
         [](const Point& p) {
             const Temperature t = temperatureOf(p);
             return in(p, "x") * activityCoefficients(in(p, "x"), t).value().ethanol *
                    ethanolVapourPressure(t).value().si() / 133.322;
         }},
        {"trace_ethanol_activity",
         [](const Point& p) { return support::valueOf(traceEthanolActivity(temperatureOf(p))); }},
        {"ethanol_mole_fraction",
         [](const Point& p) { return liquor::ethanolMoleFraction(spirit(p)); }},
        {"ethanol_over_pa",
         [](const Point& p) {
             return vapourPressures(liquor::ethanolMoleFraction(spirit(p)),
                                    vapourBasis(temperatureOf(p)).value())
                 .ethanol;
         }},
        {"water_activity",
         [](const Point& p) {
             return vapourPressures(liquor::ethanolMoleFraction(spirit(p)),
                                    vapourBasis(temperatureOf(p)).value())
                 .waterActivity;
         }},
        {"ethanol_activity_coefficient", [](const Point& p) {
             return activityCoefficients(in(p, "x"), temperatureOf(p)).value().ethanol;
         }}};
}

std::map<std::string, Formula> losses()
{
    return {
        {"water_loss_g_day", [](const Point& p) { return gramsADay(ratesOf(p).value().water); }},
        {"ethanol_loss_g_day",
         [](const Point& p) { return gramsADay(ratesOf(p).value().ethanol); }},
        {"neutral_humidity", neutralHumidity},
        {"loss_l",
         [](const Point& p) {
             return litresOf(
                 evaporated(litresAt(200, 10, 7), woodOf(p), climateOf(p), days(in(p, "time_d"))));
         }},
        {"strength_after_percent", [](const Point& p) { return 100 * after(p).alcoholByVolume; }},
        {"gravity_after", [](const Point& p) { return after(p).specificGravity; }},
        {"loss_percent_six_months",
         [](const Point& p) {
             const Wood wood{innerOf(p)};
             return 100 *
                    litresOf(evaporated(litresAt(in(p, "l"), 10, 7), wood, {celsius(18), 0.65},
                                        days(182))) /
                    in(p, "l");
         }},
        {"yearly_loss_percent", yearlyPercent}};
}

VolumeSpread soakageOf(const Point& p)
{
    return soakagePrior(innerOf(p), days(in(p, "empty_d"))).value();
}

OxygenTaken throughWoodOf(const Point& p)
{
    return throughWood(innerOf(p), millimetres(in(p, "stave_mm")), seconds(factor::year)).value();
}

double milligramsPerLitre(Mass oxygen, double beer) { return inGrams(oxygen) * 1e3 / beer; }

double airsOxygen() { return gas::oxygenInAir(celsius(20)).value().si(); }

// Milligrams in a litre that is handled as the point says.
OxygenTaken handledOf(const Point& p)
{
    const std::string& what = p.word.at("what");
    const auto handling = what == "transfer"         ? Handling::Transfer
                          : what == "transfer_below" ? Handling::TransferBelow
                                                     : Handling::ToppingUp;
    return handled(handling, litres(1)).value();
}

std::map<std::string, Formula> soakageAndOxygen()
{
    return {
        {"soakage_l",
         [](const Point& p) {
             return litresOf(soakage(innerOf(p), millimetres(in(p, "depth_mm"))));
         }},
        {"soakage_prior_low_l", [](const Point& p) { return inLitres(soakageOf(p).low); }},
        {"soakage_prior_high_l", [](const Point& p) { return inLitres(soakageOf(p).high); }},
        {"soaked_share",
         [](const Point& p) { return support::valueOf(soakedBy(days(in(p, "time_d")))); }},
        {"scaled_oxygen_rate",
         [](const Point& p) {
             return support::valueOf(
                 scaledOxygenRate(in(p, "rate"), in(p, "from_per_m"), millimetres(in(p, "from_mm")),
                                  in(p, "to_per_m"), millimetres(in(p, "to_mm"))));
         }},
        {"wood_oxygen_mg_l_year_low",
         [](const Point& p) { return milligramsPerLitre(throughWoodOf(p).low, in(p, "l")); }},
        {"wood_oxygen_mg_l_year_median",
         [](const Point& p) { return milligramsPerLitre(throughWoodOf(p).median, in(p, "l")); }},
        {"wood_oxygen_mg_l_year_high",
         [](const Point& p) { return milligramsPerLitre(throughWoodOf(p).high, in(p, "l")); }},
        {"head_space_oxygen_mg_l",
         [](const Point& p) {
             // A draw from above of as much beer as there is head space: all of it is new air.
             const auto taken = drawn(DrawMethod::Bunghole, litres(in(p, "head_l")), Volume{});
             return milligramsPerLitre(taken.value().median, in(p, "beer_l"));
         }},
        {"opening_share_low",
         [](const Point& p) {
             return opened(litres(in(p, "head_l"))).value().low.si() /
                    (in(p, "head_l") * 1e-3 * airsOxygen());
         }},
        {"opening_share_high",
         [](const Point& p) {
             return opened(litres(in(p, "head_l"))).value().high.si() /
                    (in(p, "head_l") * 1e-3 * airsOxygen());
         }},
        {"handling_low_mg_l",
         [](const Point& p) { return milligramsPerLitre(handledOf(p).low, 1); }},
        {"handling_median_mg_l",
         [](const Point& p) { return milligramsPerLitre(handledOf(p).median, 1); }},
        {"handling_high_mg_l",
         [](const Point& p) { return milligramsPerLitre(handledOf(p).high, 1); }}};
}

double gravityBySpirit(const Point& p)
{
    const auto beer = liquor::strengthByAlcohol(in(p, "gravity"), 0.10);
    const auto start = litresAt(in(p, "beer_l"), 10, beer.value().realExtract);
    GravityCase seen;
    seen.before = start;
    seen.after = start;
    seen.spiritMost = litresAt(in(p, "spirit_l"), in(p, "spirit_percent"), 0);
    return judgeGravity(seen).value().bySpirit;
}

double gallonsLeft(const Point& p)
{
    const Volume full = usGallons(in(p, "gallons"));
    const auto start = litresAt(in(p, "l"), 10, 7);
    const auto gone = evaporated(start, woodOf(p), climateOf(p), days(182));
    return inUsGallons(full - gone.value() - litres(in(p, "soak_l")));
}

double isMoreThanExplained(const Point& p)
{
    LossCase seen;
    const Volume full = usGallons(in(p, "gallons"));
    seen.start = liquor::liquorOf(full, 0.10, 7).value();
    seen.wood.inner = squareMetres(1.83);
    seen.climate = climateOf(p);
    seen.time = days(182);
    seen.empty = days(in(p, "empty_d"));
    seen.lost = full - usGallons(in(p, "left"));
    seen.readingError = litres(3);
    const auto explained = explainLoss(seen);
    return explained.value().moreThanExplained ? 1 : 0;
}

std::map<std::string, Formula> practice()
{
    return {{"rewetting_l_low",
             [](const Point& p) {
                 return inLitres(rewetting(innerOf(p), days(in(p, "empty_d"))).value().spirit.low);
             }},
            {"rewetting_l_high",
             [](const Point& p) {
                 return inLitres(rewetting(innerOf(p), days(in(p, "empty_d"))).value().spirit.high);
             }},
            {"gravity_by_spirit", gravityBySpirit},
            {"gallons_left", gallonsLeft},
            {"is_more_than_explained", isMoreThanExplained},
            {"meter_deviation_percent", [](const Point& p) {
                 const Volume full = litres(in(p, "l"));
                 return 100 * (readingDeviation(GaugeMethod::Meter, full).value() / full);
             }}};
}

}  // namespace

TEST(Wood, MatchesItsPoints)
{
    std::map<std::string, Formula> all = vapours();
    all.merge(losses());
    all.merge(soakageAndOxygen());
    all.merge(practice());
    support::checkPoints("wood.csv", all);
}

}  // namespace spile::wood

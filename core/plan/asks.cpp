#include "core/plan/asks.hpp"

#include "core/cellar/vocabulary.hpp"
#include "core/plan/packaging.hpp"
#include "core/units/units.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>
#include <vector>

namespace spile::plan {

namespace {

using Word = std::string_view;

constexpr std::array<Word, 2> yesNo = {"yes", "no"};
constexpr std::array<Word, 2> holes = {"there", "new"};
constexpr std::array<Word, 4> gaugeWays = {"weight", "nail", "meter", "dip"};
constexpr std::array<Word, 4> fillWays = {"meter", "weight", "dip", "filled full"};
constexpr std::array<Word, 3> hydrometers = {"made for 20 °C", "made for 60 °F", "made for 15 °C"};
constexpr std::array<Word, 2> shares = {"all of it", "a part"};
constexpr std::array<Word, 3> waysOut = {"pump", "gravity", "CO2 push"};
constexpr std::array<Word, 3> outWays = {"meter", "weight", "dip"};
constexpr std::array<Word, 2> programmes = {"clean", "sour"};
constexpr std::array<Word, 9> additions = {"vanilla",   "cacao",  "coconut",     "fruit", "spice",
                                           "oak cubes", "spirit", "fresh yeast", "other"};
constexpr std::array<Word, 6> allergens = {"none", "tree nuts", "coconut",
                                           "milk", "gluten",    "sulphites"};
constexpr std::array<Word, 2> treatments = {"filtered", "pasteurised"};
constexpr std::array<Word, 2> carbonatings = {"forced", "priming"};
constexpr std::array<Word, 3> gasWays = {"standing", "shaken", "through a stone"};
constexpr std::array<Word, 3> sugars = {"table sugar", "glucose", "glucose with its water"};
constexpr std::array<Word, 2> laws = {"US", "EU"};
constexpr std::array<Word, 3> wettings = {"spirit of the same kind", "another spirit", "water"};

// How many of the stored unit make one of the shown: exact, from the factors of units.hpp.
constexpr double mlPerGallon = factor::usGallon / 1e-6;
constexpr double mlPerOunce = mlPerGallon / 128;
constexpr double gramsPerPound = factor::pound / 1e-3;
constexpr double mmPerInch = factor::inch / 1e-3;
constexpr double mmPerFoot = 12 * mmPerInch;
constexpr double litresPerCubicFoot =
    12 * 12 * 12 * factor::inch * factor::inch * factor::inch / 1e-3;
constexpr double mcPerFahrenheit = 1000.0 / 1.8;

constexpr Scale litre{"L", 1000, 0, 1, 1};
constexpr Scale gallon{"gal", mlPerGallon, 0, 0.25, 2};
constexpr Scale tenthLitre{"L", 1000, 0, 0.1, 1};
constexpr Scale ounces{"fl oz", mlPerOunce, 0, 4, 0};
constexpr Scale millilitre{"mL", 1, 0, 10, 0};
constexpr Scale ounce{"fl oz", mlPerOunce, 0, 0.5, 1};
constexpr Scale kilogram{"kg", 1000, 0, 1, 1};
constexpr Scale pound{"lb", gramsPerPound, 0, 1, 0};
constexpr Scale centimetre{"cm", 10, 0, 0.5, 1};
constexpr Scale inch{"in", mmPerInch, 0, 0.25, 2};
constexpr Scale millimetre{"mm", 1, 0, 1, 0};
constexpr Scale sixteenth{"in", mmPerInch, 0, 0.0625, 4};
constexpr Scale celsius{"°C", 1000, 0, 0.5, 1};
constexpr Scale fahrenheit{"°F", mcPerFahrenheit, 32, 1, 0};
constexpr Scale gravity{"", 1e4, 0, 0.0005, 4};
constexpr Scale ph{"", 100, 0, 0.01, 2};
constexpr Scale percent{"%", 100, 0, 0.1, 1};
constexpr Scale wholePercent{"%", 100, 0, 0.5, 1};
constexpr Scale bar{"bar", factor::bar, 0, 0.05, 2};
constexpr Scale psi{"psi", factor::psi, 0, 0.5, 1};
constexpr Scale boreMm{"mm", 1000, 0, 0.5, 1};
constexpr Scale boreInch{"in", mmPerInch * 1000, 0, 0.0625, 4};
constexpr Scale metre{"m", 1000, 0, 0.5, 1};
constexpr Scale foot{"ft", mmPerFoot, 0, 1, 0};
constexpr Scale cubicMetre{"m³", 1000, 0, 5, 0};
constexpr Scale cubicFoot{"ft³", litresPerCubicFoot, 0, 100, 0};
constexpr Scale dayCount{"days", 1, 0, 1, 0};
constexpr Scale metresUp{"m", 1000, 0, 0.1, 1};
constexpr Scale feetUp{"ft", mmPerFoot, 0, 0.5, 1};
constexpr Scale litrePerMinute{"L/min", 1000, 0, 1, 0};
constexpr Scale gallonPerMinute{"gal/min", mlPerGallon, 0, 0.5, 1};
constexpr Scale gramsOfMg{"g", 1000, 0, 0.05, 2};
constexpr Scale tenthMl{"mL", 1000, 0, 0.1, 1};
constexpr double gramsPerOunce = gramsPerPound / 16;
constexpr Scale gram{"g", 1, 0, 5, 0};
constexpr Scale ounceMass{"oz", gramsPerOunce, 0, 0.25, 2};
constexpr Scale minutesOfSeconds{"min", 60, 0, 0.25, 2};
constexpr Scale monthCount{"months", 1, 0, 1, 0};
constexpr Scale plain{"", 1, 0, 1, 0};
constexpr Scale volumesOfGas{"volumes", 100, 0, 0.05, 2};
constexpr Scale anHour{"1/h", 100, 0, 0.1, 1};

constexpr AskSpec number(Word name, std::int64_t least, std::int64_t most, std::int64_t usual,
                         const Scale& metric, const Scale& us)
{
    return {name, AskKind::Number, least, most, usual, metric, us, {}, false, false};
}
constexpr AskSpec remembered(AskSpec ask)
{
    ask.remembered = true;
    return ask;
}
constexpr AskSpec optional(AskSpec ask)
{
    ask.optional = true;
    return ask;
}
constexpr AskSpec choice(Word name, std::span<const Word> words)
{
    return {name, AskKind::Words, 0, 0, 0, {}, {}, words, false, false};
}

AskSpec named(Word name, AskKind kind)
{
    return {name, kind, 0, 0, 0, {}, {}, {}, false, kind == AskKind::Batch};
}

std::span<const Word> packageWords()
{
    static const std::vector<Word> names = [] {
        std::vector<Word> made;
        for (const Package& package : packages()) {
            made.push_back(package.name);
        }
        return made;
    }();
    return names;
}

// "Usual" is where a stepper starts: common practice, no source.
const auto& table()
{
    static const std::array asks = {
        // what the barrel holds
        number("volume_ml", 500, 1'000'000, 200'000, litre, gallon),
        number("top_up_ml", 100, 100'000, 5'000, tenthLitre, gallon),
        number("draw_ml", 10, 20'000, 100, millilitre, ounce),
        number("mass_g", 1'000, 1'500'000, 250'000, kilogram, pound),
        number("dip_mm", 0, 3'000, 550, centimetre, inch),
        number("nail_mm", 0, 2'000, 350, centimetre, inch),
        number("heel_ml", 0, 50'000, 1'000, tenthLitre, ounces),
        number("drained_ml", 0, 50'000, 1'000, tenthLitre, ounces),
        // the beer
        number("sg_e4", 9'800, 12'000, 10'200, gravity, gravity),
        optional(number("sample_temp_mc", 0, 40'000, 20'000, celsius, fahrenheit)),
        optional(number("ph_e2", 250, 700, 440, ph, ph)),
        optional(number("temp_mc", -5'000, 40'000, 12'000, celsius, fahrenheit)),
        optional(number("abv_e2", 0, 3'000, 1'000, percent, percent)),
        // spirit
        number("spirit_ml", 0, 50'000, 2'000, tenthLitre, ounces),
        remembered(number("spirit_abv_e2", 0, 8'000, 4'500, wholePercent, wholePercent)),
        // gas and room
        remembered(number("pressure_pa", 1'000, 500'000, 34'474, bar, psi)),
        remembered(number("bore_um", 1'000, 50'000, 6'000, boreMm, boreInch)),
        remembered(number("hose_mm", 100, 50'000, 3'000, metre, foot)),
        remembered(number("cylinder_g", 0, 100'000, 10'000, kilogram, pound)),
        remembered(number("room_l", 5'000, 10'000'000, 100'000, cubicMetre, cubicFoot)),
        remembered(number("air_changes_e2", 0, 5'000, 50, anHour, anHour)),
        // the barrel
        number("empty_days", 0, 5'000, 30, dayCount, dayCount),
        number("tare_g", 1'000, 500'000, 50'000, kilogram, pound),
        number("bilge_girth_mm", 500, 8'000, 2'080, centimetre, inch),
        number("chime_girth_mm", 400, 8'000, 1'780, centimetre, inch),
        number("outer_length_mm", 200, 5'000, 900, centimetre, inch),
        number("stave_mm", 8, 80, 26, millimetre, sixteenth),
        // words
        choice("finding", cellar::checkFindings()),
        choice("finding_after", cellar::checkFindings()), choice("repair", cellar::repairs()),
        choice("bung", cellar::bungs()), choice("next_use", cellar::nextUses()),
        choice("substance", wettings), choice("gauge_way", gaugeWays), choice("fill_way", fillWays),
        choice("hole", holes), choice("nail_runs", yesNo),
        remembered(optional(choice("hydrometer", hydrometers))), named("batch", AskKind::Batch),
        // emptying
        optional(named("from_lot", AskKind::Lot)), named("lot", AskKind::Lot),
        choice("kit", programmes), choice("how_much", shares), choice("way_out", waysOut),
        remembered(number("line_bore_um", 2'000, 60'000, 19'000, boreMm, boreInch)),
        remembered(number("line_mm", 500, 50'000, 5'000, metre, foot)),
        number("lift_mm", -10'000, 10'000, 500, metresUp, feetUp),
        remembered(number("pump_ml_min", 500, 500'000, 20'000, litrePerMinute, gallonPerMinute)),
        number("push_pa", 1'000, 100'000, 10'342, bar, psi), choice("out_way", outWays),
        number("out_ml", 500, 1'000'000, 190'000, litre, gallon),
        number("mass_after_g", 500, 500'000, 52'000, kilogram, pound),
        number("dip_after_mm", 0, 3'000, 10, centimetre, inch), choice("programme", programmes),
        // finishing
        choice("addition", additions), number("trial_ml", 20, 5'000, 100, millilitre, millilitre),
        number("trial_dose_mg", 10, 500'000, 200, gramsOfMg, gramsOfMg),
        number("trial_dose_ul", 50, 500'000, 1'000, tenthMl, tenthMl),
        number("added_g", 1, 900'000, 200, gram, ounceMass), choice("allergen", allergens),
        number("contact_days", 0, 365, 7, dayCount, dayCount),
        number("first_taste_days", 1, 180, 2, dayCount, dayCount), choice("treatment", treatments),
        number("treat_temp_mc", 40'000, 90'000, 60'000, celsius, fahrenheit),
        number("held_s", 5, 14'400, 1'200, minutesOfSeconds, minutesOfSeconds),
        // carbonating
        choice("carbonating", carbonatings),
        number("volumes_e2", 100, 450, 240, volumesOfGas, volumesOfGas),
        number("carb_temp_mc", 0, 30'000, 4'000, celsius, fahrenheit), choice("gas_way", gasWays),
        number("warmest_mc", 0, 30'000, 18'000, celsius, fahrenheit),
        optional(number("co2_now_e2", 0, 300, 50, volumesOfGas, volumesOfGas)),
        choice("sugar", sugars),
        // packaging
        choice("package_a", packageWords()), optional(choice("package_b", packageWords())),
        optional(choice("package_c", packageWords())),
        optional(number("most_a", 0, 1'000'000, 10, plain, plain)),
        optional(number("most_b", 0, 1'000'000, 10, plain, plain)),
        number("loss_e2", 0, 5'000, 300, percent, percent),
        number("count_a", 0, 1'000'000, 100, plain, plain),
        optional(number("count_b", 0, 1'000'000, 100, plain, plain)),
        optional(number("count_c", 0, 1'000'000, 100, plain, plain)),
        remembered(choice("law", laws)),
        optional(number("label_abv_e2", 0, 3'000, 1'000, percent, percent)),
        named("lot_code", AskKind::Code),
        number("best_before_months", 1, 120, 24, monthCount, monthCount)};
    return asks;
}

}  // namespace

std::span<const AskSpec> allAsks() { return table(); }

const AskSpec* findAsk(std::string_view name)
{
    const auto& asks = table();
    const auto* const found = std::find_if(asks.begin(), asks.end(),
                                           [&](const AskSpec& ask) { return ask.name == name; });
    return found == asks.end() ? nullptr : found;
}

Result<void> checkAsk(std::string_view name, std::int64_t stored)
{
    const AskSpec* ask = findAsk(name);
    if (ask == nullptr || ask->kind != AskKind::Number) {
        return fail(ErrorCode::NotFound, "ask", std::string(name), "a number that a step asks for");
    }
    if (stored < ask->least || stored > ask->most) {
        return fail(ErrorCode::OutOfRange, std::string(name), std::to_string(stored),
                    std::to_string(ask->least) + " to " + std::to_string(ask->most));
    }
    return {};
}

double shown(std::int64_t stored, const Scale& scale)
{
    return static_cast<double>(stored) / scale.storedPerUnit + scale.offset;
}

std::int64_t stored(double shown, const Scale& scale)
{
    return std::llround((shown - scale.offset) * scale.storedPerUnit);
}

}  // namespace spile::plan

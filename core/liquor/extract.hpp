#pragma once

#include "core/base/result.hpp"
#include "core/units/units.hpp"

/// How strong a beer is and what it was brewed from. Extracts in °P (grams in 100 g), alcohol in
/// fractions 0 to 1, gravities 20/20 °C.
namespace spile::liquor {

/// What can be said of a beer from two of its numbers.
struct BeerStrength {
    double originalExtract = 0;
    double realExtract = 0;
    double apparentExtract = 0;
    double alcoholByMass = 0;
    double alcoholByVolume = 0;
    double uncertaintyAbv = 0;  ///< +- in alcoholByVolume: 0.003, or 2 % of it where that is more
};

/// Return the strength of a beer fermented from `originalGravity` to `finalGravity`.
///
/// Balling's balance of fermentation, with the real extract found so that alcohol and extract
/// together have the final gravity (Tabarié), which holds for strong beers too.
///
/// Range     `originalGravity` 1 to 1.170; `finalGravity` from the driest the balance allows to
///           `originalGravity`.
/// Errors    NotFinite; OutOfRange. `subject` is "original_gravity" or "final_gravity".
/// Accuracy  the balance itself: 2 % of the alcohol between published variants; see uncertaintyAbv.
/// Limits    a beer as fermented: not after spirit from the wood, water or fruit came to it.
/// Source    Balling 1865 as in De Clerck, A Textbook of Brewing (1958), and MEBAK: 2.0665 g of
///           extract give 1 g of alcohol, 0.9565 g of CO2 and 0.11 g of yeast; Tabarié 1830.
[[nodiscard]] Result<BeerStrength> strengthByGravities(double originalGravity, double finalGravity);

/// Return the same from the gravity and a measured strength, with the original extract the beer
/// would have had if all its alcohol came of fermentation.
///
/// Range     `specificGravity` 0.980 to 1.200, `alcoholByVolume` 0 to 0.25; real extract 0 or more.
/// Errors    NotFinite; OutOfRange. `subject` is "specific_gravity", "alcohol_by_volume" or
///           "real_extract_p".
/// Accuracy  strengthByGravities() and back: within 1e-9.
[[nodiscard]] Result<BeerStrength> strengthByAlcohol(double specificGravity,
                                                     double alcoholByVolume);

/// Return the strength by the table for the duty on beer, a cross-check: (OG - PG) times the factor
/// of its row.
///
/// Range     `originalGravity` - `presentGravity` 0 to 0.1007.
/// Errors    NotFinite; OutOfRange. `subject` is "original_gravity" or "gravity_difference".
/// Source    HM Revenue and Customs, Excise Notice 226, 30.3, table of factors.
[[nodiscard]] Result<double> hmrcAlcoholByVolume(double originalGravity, double presentGravity);

/// Return which part of the original extract has fermented, 0 to 1; by its gravity alone for the
/// apparent one, which alcohol's lightness flatters.
///
/// Errors    NotFinite; OutOfRange if there was no extract. `subject` is "original_extract_p".
[[nodiscard]] Result<double> realAttenuation(const BeerStrength& beer);
[[nodiscard]] Result<double> apparentAttenuation(const BeerStrength& beer);

/// Return the density of a beer at 20 °C.
///
/// Range     `alcoholByMass` 0 to 1, `realExtract` 0 to 44 °P, together at most the whole.
/// Errors    NotFinite; OutOfRange. `subject` is "alcohol_by_mass" or "real_extract_p".
/// Source    Tabarié 1830: alcohol's and extract's gravity add over water.
[[nodiscard]] Result<Density> beerDensity(double alcoholByMass, double realExtract);

}  // namespace spile::liquor

#pragma once

#include <array>
#include <string_view>

/// The invented brewery: every name and number here is made up for the demo and stands for nobody.
namespace spile::demo {

inline constexpr std::string_view cellarName = "Seven Steps Cellar";
inline constexpr std::string_view cellarMark = "7STP";
inline constexpr std::array<std::string_view, 3> people = {"Ada", "Kim", "Tomas"};

struct InventedBeer {
    std::string_view name;
    double specificGravity;
    double alcoholByVolume;
    double colourEbc;
    int brewedOnDay;  // of the demo's 14 months
};
inline constexpr std::array<InventedBeer, 5> beers = {
    InventedBeer{"Night Ferry", 1.108, 0.116, 110.0, 3},
    InventedBeer{"Slack Water", 1.092, 0.098, 48.0, 24},
    InventedBeer{"Long Harvest", 1.098, 0.104, 26.0, 52},
    InventedBeer{"Ember Gate", 1.086, 0.089, 78.0, 95},
    InventedBeer{"Winter Road", 1.102, 0.110, 62.0, 150}};

struct InventedSpirit {
    std::string_view spirit;
    std::string_view shortName;  // begins the barrels' marks
    std::string_view wood;
    int charLevel;
    double sizeLitres;
    double tareKg;
};
inline constexpr std::array<InventedSpirit, 6> spirits = {
    InventedSpirit{"bourbon", "Bourbon", "American oak", 4, 200, 48},
    InventedSpirit{"rye", "Rye", "American oak", 3, 200, 49},
    InventedSpirit{"rum", "Rum", "American oak", 2, 190, 46},
    InventedSpirit{"malt whisky", "Malt", "European oak", 1, 250, 58},
    InventedSpirit{"brandy", "Brandy", "French oak", 1, 225, 52},
    InventedSpirit{"apple brandy", "Apple", "French oak", 0, 110, 30}};

/// How an attribute moves with months in wood on the nine steps of the ladder: from `start`
/// towards `end` with a time constant of `months`; and where the brewers say it is right, if they
/// have an opinion of it.
struct InventedCourse {
    std::string_view attribute;
    double start, end, months;
    int wantedFrom = 0, wantedTo = 0;
};
inline constexpr std::array<InventedCourse, 7> courses = {
    InventedCourse{"vanilla", 1.2, 7.0, 5.0, 5, 7}, InventedCourse{"oak", 1.0, 7.2, 8.0, 4, 6},
    InventedCourse{"spirit", 2.0, 6.4, 3.5, 4, 7},  InventedCourse{"roast", 6.5, 4.2, 9.0},
    InventedCourse{"sweetness", 6.0, 5.0, 7.0},     InventedCourse{"dried fruit", 2.5, 5.6, 10.0},
    InventedCourse{"acidity", 1.2, 2.2, 12.0, 1, 3}};

inline constexpr std::string_view start = "2025-09-01T07:00Z";
inline constexpr int days = 425;  // 14 months

}  // namespace spile::demo

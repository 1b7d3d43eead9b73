#include "core/vessel/presets.hpp"

#include "core/units/checks.hpp"
#include "core/vessel/measuring.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace spile::vessel {

namespace {

constexpr Barrel inside(double lengthMm, double bilgeMm, double headMm)
{
    return {Profile::Parabola, millimetres(lengthMm), millimetres(bilgeMm), millimetres(headMm), 1};
}

// clang-format off
constexpr std::array<Preset, 11> table = {{
    {"5 gallon",           inside( 353.2, 273.1, 236.7), millimetres(18), usGallons(5),  Basis::SimilarTo53},
    {"10 gallon",          inside( 445.0, 344.1, 298.2), millimetres(20), usGallons(10), Basis::SimilarTo53},
    {"quarter cask 50 L",  inside( 488.3, 377.5, 327.2), millimetres(21), litres(50),    Basis::SimilarTo53},
    {"15 gallon",          inside( 509.4, 393.9, 341.4), millimetres(22), usGallons(15), Basis::SimilarTo53},
    {"30 gallon",          inside( 641.9, 496.3, 430.1), millimetres(24), usGallons(30), Basis::SimilarTo53},
    {"quarter cask 125 L", inside( 662.7, 512.4, 444.1), millimetres(25), litres(125),   Basis::SimilarTo53},
    {"53 gallon",          inside( 776.0, 600.0, 520.0), millimetres(26), usGallons(53), Basis::PublishedOutside},
    {"225 litre",          inside( 787.0, 637.0, 535.0), millimetres(21), litres(225),   Basis::PublishedOutside},
    {"hogshead 250 L",     inside( 814.7, 659.5, 553.9), millimetres(25), litres(250),   Basis::SimilarTo225},
    {"300 litre",          inside( 865.8, 700.8, 588.6), millimetres(27), litres(300),   Basis::SimilarTo225},
    {"puncheon 500 L",     inside(1026.5, 830.9, 697.8), millimetres(30), litres(500),   Basis::SimilarTo225},
}};
// clang-format on

}  // namespace

std::span<const Preset> presets() { return table; }

Result<Preset> nearestPreset(Volume full)
{
    SPILE_TRY(needBetween("full_volume_l", inLitres(full), 1, 5000));
    const auto distance = [full](const Preset& preset) {
        return std::abs(std::log(preset.volume / full));
    };
    return *std::min_element(table.begin(), table.end(), [&](const Preset& a, const Preset& b) {
        return distance(a) < distance(b);
    });
}

Result<Barrel> similarTo(Volume full)
{
    SPILE_ASSIGN(preset, nearestPreset(full));
    return scaledTo(preset.barrel, full);
}

}  // namespace spile::vessel

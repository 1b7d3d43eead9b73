#pragma once

#include "core/outlook/dictionary.hpp"
#include "core/units/units.hpp"

#include <optional>
#include <string>
#include <string_view>

/// What is believed of an attribute's course before anything was tasted.
///
/// Source    assumed, no barrels stand behind them: the cellar's own finished barrels teach better
///           ones (learning.hpp). That later fills give less and slower: Rous and Alderson 1983,
///           see wood/extraction.hpp.
namespace spile::outlook {

/// What is known of the barrel and the fill.
struct BarrelKind {
    int fillNumber = 0;  // 1: the first beer after the spirit; 0: not known
    std::string spirit;
    std::optional<int> charLevel;
    std::optional<Volume> size;
};

[[nodiscard]] CoursePrior usualPrior(std::string_view attribute, const BarrelKind& kind);

/// The share of what the first fill took from the wood that a later one can still take.
[[nodiscard]] double leftToGive(int fillNumber);

/// Whether an attribute comes from the wood and what it held, and not from the beer.
[[nodiscard]] bool comesFromWood(std::string_view attribute);

}  // namespace spile::outlook

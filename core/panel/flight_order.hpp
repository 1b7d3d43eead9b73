#pragma once

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

/// In which order barrels are drawn and glasses are tasted.
///
/// Source    clean before suspect before sour, so that no hose, thief or tongue carries a sour beer
///           on: common practice, no source. The order within: serving_order.hpp.
namespace spile::panel {

/// What is known of a barrel before it is drawn.
enum class Soundness : std::uint8_t { Clean, Suspect, Sour };

/// Return in which order the barrels are drawn, as indices of `barrels`: clean ones first, sour
/// ones last; those of a kind as they were given.
[[nodiscard]] std::vector<std::size_t> drawOrder(std::span<const Soundness> barrels);

/// Return in which order a taster takes the glasses of a flight, as indices of `glasses`: a row of
/// the Williams design over the clean ones, then one over the suspect and sour ones.
///
/// Shape     the tasters of one flight have places 0, 1, 2 and so on, each a row of its own as long
///           as there are rows (n for an even number of glasses, 2n for an odd one); the next
///           flight begins one row on.
/// Range     any flight and place.
[[nodiscard]] std::vector<std::size_t> glassOrder(std::span<const Soundness> glasses, int flight,
                                                  int place);

}  // namespace spile::panel

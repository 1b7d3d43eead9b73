#pragma once

#include "core/scan/redraw_places.hpp"
#include "core/scan/redraw_plane.hpp"

#include <span>
#include <vector>

namespace spile::scan::redraw {

/// A part of a picture, turned and scaled so that a symbol would lie upright in it, as far as its
/// place was guessed. Spots in it are in modules from the symbol's guessed top left corner.
class Patch {
public:
    static constexpr int perModule = 4;  // pixels of the patch

    /// Take the patch from the module `first` to `end` both ways of `place`, which is given in the
    /// pixels of `planes[0]`; each further plane is half the one before.
    void take(std::span<const Plane> planes, const Place& place, int first, int end);

    [[nodiscard]] int margin() const { return margin_; }  // modules before the guessed symbol

    [[nodiscard]] int side() const { return side_; }  // pixels
    /// The light at a spot, the nearest pixel's, slightly smoothed.
    [[nodiscard]] float level(Spot spot) const { return levels_[indexOf(spot)]; }
    /// How much darker than its surroundings, in their deviations: -100 to 100 for -1.5 to 1.5.
    [[nodiscard]] int contrast(Spot spot) const { return contrast_[indexOf(spot)]; }
    [[nodiscard]] const std::vector<std::int8_t>& contrasts() const { return contrast_; }

private:
    [[nodiscard]] std::size_t indexOf(Spot spot) const;
    void normalise();

    int side_ = 0;
    int margin_ = 0;
    std::vector<float> raw_;
    std::vector<float> levels_;
    std::vector<std::int8_t> contrast_;
    std::vector<float> columns_;
    std::vector<float> squares_;
};

}  // namespace spile::scan::redraw

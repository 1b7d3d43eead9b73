#pragma once

#include "core/scan/redraw_cores.hpp"

#include <span>
#include <vector>

namespace spile::scan::redraw {

/// Where a symbol may lie: its top left corner and the step of one module along and down.
struct Place {
    Spot origin;
    Spot along;
    Spot down;
    float doubt = 0;       // the less, the likelier
    bool isWhole = false;  // known from all three finders
    bool isAlone = false;  // known from one finder, which need not be the top left one

    [[nodiscard]] Spot middle(int size) const
    {
        return origin + 0.5F * static_cast<float>(size) * (along + down);
    }
    [[nodiscard]] float module() const { return std::sqrt(std::abs(cross(along, down))); }
};

/// Guesses where symbols of `size` modules lie from the cores of their finders: three of them, or
/// two and the shape of these. Likelier ones first.
class PlaceFinder {
public:
    void find(std::vector<Core>& cores, int size, std::vector<Place>& places);

private:
    void fromThree(std::span<const Core> cores, int size);
    void fromTwo(std::span<const Core> cores, int size);
    void fromOne(std::span<const Core> cores);

    void addThree(const Core& corner, const Core& right, const Core& below, int size);
    void addTwo(const Core& from, const Core& to, int size);
    void addDiagonal(const Core& right, const Core& below, Spot a, Spot b, int size);

    std::vector<Place> three_;
    std::vector<Place> two_;
    std::vector<Place> one_;
};

}  // namespace spile::scan::redraw

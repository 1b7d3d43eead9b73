#pragma once

#include "core/scan/redraw_geometry.hpp"
#include "core/scan/redraw_plane.hpp"

#include <vector>

namespace spile::scan::redraw {

/// The dark middle of a finder pattern, 3 x 3 modules, as a parallelogram.
struct Core {
    Spot centre;
    Spot right;  // from the centre to the middle of a side: 1.5 modules
    Spot down;   // and to that of the next side, clockwise
    float area = 0;
    float score = 0;  // how well the rings around it are those of a finder: 0 to 2

    [[nodiscard]] float module() const { return std::sqrt(area) / 3; }
};

/// Finds the cores of finder patterns, even where their outer rings are damaged: islands of dark
/// pixels that are compact, square when what the camera did to them is undone, and stand in a
/// light ring which stands in a dark one.
class CoreFinder {
public:
    /// Add what is found in `dark`, as DarkMap marks it.
    void find(const Plane& dark, std::vector<Core>& cores);

private:
    struct Run {
        int y, begin, end;  // of dark pixels in a row, the end not included
        int parent;         // a run of the same island with a lower or the same index
        int next;           // the next of its island, or -1
    };
    struct Island {
        int area = 0;
        int left = 0, right = 0, top = 0, bottom = 0;
        int first = -1, last = -1;
    };
    void collectRuns(const Plane& dark);
    void collectIslands();
    int rootOf(int run);
    void join(int a, int b);
    bool measure(const Island& island, Core& core);

    std::vector<Run> runs_;
    std::vector<int> islandOf_;
    std::vector<Island> islands_;
    std::vector<Spot> outline_;
};

}  // namespace spile::scan::redraw

#pragma once

#include "core/scan/redraw_patch.hpp"
#include "core/scan/redraw_patterns.hpp"

#include <array>
#include <span>
#include <vector>

namespace spile::scan::redraw {

/// Where the modules of a symbol lie in a patch: what a camera sees of a plane, and what a round
/// label adds to it.
struct Grid {
    Corners corners{};
    Spot bendAlong;  // moves by this times (u^2 - 1), u from -1 to 1 across the symbol
    Spot bendDown;   // and this times (v^2 - 1)
    float fit = 0;   // -1.5 to 1.5: how well the known patterns lie on dark and light
};

/// How clear the known patterns of a symbol are.
struct Clearness {
    float sharpness = 0;  // contrast of single modules as a share of that of the finders' cores
    float damage = 0;     // share of modules that are of the other colour
};

/// Finds the grid by trying small moves of it, as long as they make the known patterns fit better.
class GridFitter {
public:
    explicit GridFitter(const KnownPatterns& patterns);

    /// Guess from where the patch was taken. The guesses hold until the next, the best first.
    [[nodiscard]] std::span<const Grid> guess(const Patch& patch);
    /// Guess from one finder, which lies where the top left one of the patch should: it may be any
    /// of the three, any way up.
    [[nodiscard]] std::span<const Grid> guessFromOne(const Patch& patch);
    /// Improve a guess.
    void fit(Grid& grid, const Patch& patch);
    [[nodiscard]] Clearness clearnessOf(const Grid& grid, const Patch& patch) const;
    /// The spot of a module given by its centre, for the grid.
    class Mapping {
    public:
        Mapping(const Grid& grid, int size);
        [[nodiscard]] Spot at(float x, float y) const;

    private:
        Perspective perspective_;
        Spot bendAlong_;
        Spot bendDown_;
        float toUnit_;
    };

private:
    // A pattern that can be found by itself: a finder or the alignment pattern.
    struct Landmark {
        Spot centre;
        std::vector<Spot> places;  // of its modules, from its centre
        std::vector<int> signs;
    };
    void addLandmark(const KnownPatterns& patterns, int row, int column, int reach);
    struct Match {
        int value;  // the more, the better
        int x;      // pixels of the patch
        int y;
    };
    void prepare(const Landmark& landmark, const Patch& patch);
    [[nodiscard]] int matchAt(const Landmark& landmark, const Patch& patch, int x, int y) const;
    [[nodiscard]] Match bestAround(const Landmark& landmark, const Patch& patch, Match middle,
                                   int range, int stride, std::span<const Spot> excluded) const;
    void search(const Landmark& landmark, const Patch& patch, Spot around, int reach,
                std::vector<Spot>& found);
    [[nodiscard]] Corners cornersFrom(const std::array<Spot, 4>& centres) const;
    void combine(const std::vector<Spot>& topLefts, const std::vector<Spot>& topRights,
                 const std::vector<Spot>& bottomLefts, const Patch& patch);
    std::span<const Grid> bestGuesses();
    [[nodiscard]] bool isTiming(std::size_t known) const;
    [[nodiscard]] bool isFinder(std::size_t known) const;
    [[nodiscard]] float scoreOf(const Grid& grid, const Patch& patch);
    template <class Move>
    bool improve(Grid& grid, const Patch& patch, float step, Move move);
    bool moveCorners(Grid& grid, const Patch& patch, float step);
    bool bend(Grid& grid, const Patch& patch, float step);

    int size_;
    // The known modules, one array for each so that the compiler takes several at a time.
    std::vector<float> x_, y_, u_, v_, sign_;
    std::vector<int> index_;
    std::vector<Landmark> landmarks_;  // top left, top right, bottom right, bottom left
    std::array<Spot, 4>
        cornersInSquare_{};  // the symbol's corners where the landmarks are a square
    std::array<std::vector<Spot>, 9> found_;
    std::vector<Spot> alignment_;
    std::vector<Grid> guesses_;
    std::vector<int> offsets_;  // of a landmark's modules in the patch
    int border_ = 0;            // pixels of the patch that they reach
};

}  // namespace spile::scan::redraw

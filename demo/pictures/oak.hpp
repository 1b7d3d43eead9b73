#pragma once

#include "demo/pictures/noise.hpp"
#include "demo/pictures/rgb.hpp"

#include <vector>

namespace spile::demo {

/// A flat board of oak, cut somewhere out of a trunk: `u` runs along the grain, `v` across [mm].
///
/// The rings are those of an invented trunk around a pith line near the board: close to it they
/// open into arches, far from it they run as straight lines, as in real boards.
class OakBoard {
public:
    explicit OakBoard(SeededRandom& random);

    /// Return the share of light that the clean board gives back.
    [[nodiscard]] Rgb albedo(double u, double v, const Noise& noise) const;
    /// Bend the grain around a knot at (u, v) of this half length along the grain.
    void addKnot(double u, double v, double size);

private:
    struct Knot {
        double u, v, size;
    };
    [[nodiscard]] double knotDarkness(double u, double v, const Noise& noise) const;

    double offset_;  // where in the noise this board lies, so that no two look alike
    double pith_;
    double depth_;
    double slope_;
    double spacing_;
    double contrast_;
    double fleck_;
    double tone_;
    double grey_;
    std::vector<Knot> knots_;
};

/// Return the share of light that the sawn end of a stave gives back; x along its width, y along
/// its thickness [mm].
[[nodiscard]] Rgb endGrain(double x, double y, double tone, double slant, const Noise& noise);

/// The boards of a barrel's head, side by side.
class HeadBoards {
public:
    /// Range     radius [mm] of the head.
    HeadBoards(SeededRandom& random, double radius);

    /// Return the share of light given back at a place from the head's centre, joints included.
    [[nodiscard]] Rgb albedo(double x, double y, const Noise& noise) const;

private:
    struct Placed {
        double from, to;  // across the boards
        OakBoard board;
    };
    double cos_;
    double sin_;
    std::vector<Placed> boards_;
};

}  // namespace spile::demo

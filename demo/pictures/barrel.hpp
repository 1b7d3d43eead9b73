#pragma once

#include "demo/pictures/light.hpp"
#include "demo/pictures/oak.hpp"
#include "demo/pictures/vec3.hpp"

#include <cstdint>
#include <vector>

namespace spile::demo {

enum class Part : std::uint8_t {
    Cellar,    // nothing of a barrel
    Head,      // the boards, set back behind the rim
    Wall,      // the inner side of the staves, between rim and head
    Chime,     // the ends of the staves
    HoopEdge,  // the steel hoop seen from the front
    Side,      // hoop and staves seen from the side
};

struct Hit {
    Part part = Part::Cellar;
    Vec3 place;
};

/// One barrel that lies with its head to the camera. Its axis is z; z = 0 is the chime's plane.
class Barrel {
public:
    static constexpr double headRadius = 272.0;  // [mm]
    static constexpr double chimeRadius = 300.0;
    static constexpr double hoopRadius = 303.2;
    static constexpr double headDepth = 24.0;  // how far the head is set back

    explicit Barrel(SeededRandom& random);

    /// Find what a ray meets first. `from` must lie in front of the chime's plane.
    [[nodiscard]] static Hit meet(Vec3 from, Vec3 ray);

    /// Return the light from a place that meet() found.
    ///
    /// Shape     `turn` turns the wood about the axis, so that one barrel's timber can serve
    ///           its neighbours too.
    [[nodiscard]] Rgb shade(const Hit& hit, Vec3 ray, const Light& light, const Noise& noise,
                            const Spin& turn) const;
    /// Return the share of the lamp that reaches a place of the head over the chime.
    [[nodiscard]] static double lampOnHead(Vec3 place, const Light& light);

private:
    struct Stave {
        double from;  // [rad]
        double tone;
        double slant;
        OakBoard board;
    };
    struct StavePlace {
        const Stave* stave;
        double arc;    // from the stave's edge [mm]
        double joint;  // distance to the nearer joint [mm]
    };
    [[nodiscard]] StavePlace staveAt(double x, double y) const;
    [[nodiscard]] Rgb headAlbedo(double x, double y, const Noise& noise) const;
    [[nodiscard]] Rgb shadedChime(Vec3 place, const Light& light, const Noise& noise) const;
    [[nodiscard]] Rgb shadedSteel(Vec3 place, Vec3 normal, Vec3 ray, const Light& light,
                                  const Noise& noise) const;
    [[nodiscard]] Rgb shadedSide(Vec3 place, Vec3 ray, const Light& light,
                                 const Noise& noise) const;

    HeadBoards head_;
    std::vector<Stave> staves_;
    double scorchX_;
    double scorchY_;
    double scorch_;
    double tide_;
    double rust_;
};

}  // namespace spile::demo

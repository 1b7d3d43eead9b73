#pragma once

#include "core/base/simulated.hpp"
#include "core/picture/image.hpp"
#include "demo/pictures/rgb.hpp"
#include "demo/pictures/vec3.hpp"

#include <cstdint>
#include <functional>
#include <vector>

namespace spile::demo {

/// A pinhole camera. Scenes and pictures share their axes: x to the right, y down, z away.
struct Camera {
    int width = 0;
    int height = 0;
    double focal = 0.0;  // [px]
    Vec3 origin;
    Vec3 right{1.0, 0.0, 0.0};
    Vec3 down{0.0, 1.0, 0.0};
    Vec3 forward{0.0, 0.0, 1.0};

    /// Return the direction, of length 1, in which the camera sees a place of the picture.
    [[nodiscard]] Vec3 ray(double column, double row) const
    {
        return unitOf((column + 0.5 - 0.5 * width) * right + (row + 0.5 - 0.5 * height) * down +
                      focal * forward);
    }
};

/// The light that arrives at each pixel, before the sensor.
struct Frame {
    int width = 0;
    int height = 0;
    std::vector<Rgb> light;

    Frame(int w, int h);
    [[nodiscard]] Rgb& at(int column, int row);
};

/// What a ray of the camera met.
struct Seen {
    Rgb light;
    std::uint32_t subject = 0;  // any number; pixels of one surface share it
    bool fine = false;          // full of detail: one sample a pixel is too few
};

/// Look along the ray of every pixel; where it is fine or the subject changes, along four.
[[nodiscard]] Frame painted(const Camera& camera, const std::function<Seen(Vec3 ray)>& look);

/// What lens and sensor do to the light.
struct Film {
    double exposure = 1.0;    // multiplies the light; 1 is white
    double vignetting = 0.3;  // share of light lost in the corners
    double blur = 0.7;        // deviation of the lens's blur [px]
    double noise = 2.0;       // deviation at middle grey, in steps of 255
};

/// Turn light into an sRGB picture: vignetting, blur, a soft shoulder at white, noise.
[[nodiscard]] picture::Image developed(const Frame& frame, const Film& film, SeededRandom& random);

}  // namespace spile::demo

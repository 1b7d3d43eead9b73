#include "tests/support/head_film.hpp"

#include "core/picture/transform.hpp"
#include "core/scan/reader.hpp"
#include "demo/pictures/head.hpp"
#include "tests/support/film.hpp"
#include "tests/support/symbol_pictures.hpp"

#include <cmath>

namespace spile::support {

namespace {

constexpr int frameCount = 6;
constexpr int framesPerSecond = 12;
constexpr double stainRadius = 0.2;  // of a symbol's side
constexpr double light = 0.16;       // of a well lit head
constexpr double noise = 3;          // deviation in steps of 255

// A stain over the corner of each symbol, brown and wet.
void stain(picture::Image& picture)
{
    const picture::Image grey = picture::toGrey(picture);
    const auto symbols = scan::readPicture(viewOf(grey));
    for (const scan::Code& symbol : symbols.value()) {
        const scan::Point at = symbol.corners[0];
        const double side = std::hypot(symbol.corners[1].x - at.x, symbol.corners[1].y - at.y);
        for (int y = 0; y < picture.height; ++y) {
            for (int x = 0; x < picture.width; ++x) {
                if (std::hypot(x - at.x, y - at.y) < stainRadius * side) {
                    const auto pixel = static_cast<std::size_t>(3 * (y * picture.width + x));
                    picture.pixels[pixel] = 62;
                    picture.pixels[pixel + 1] = 40;
                    picture.pixels[pixel + 2] = 24;
                }
            }
        }
    }
}

void dim(picture::Image& picture, std::uint64_t seed)
{
    for (std::uint8_t& part : picture.pixels) {
        part = static_cast<std::uint8_t>(light * part);
    }
    addNoise(picture, noise, seed);
}

}  // namespace

std::vector<picture::Image> headFrames(const scan::LabelText& label, const std::string& mark,
                                       HeadFilm film)
{
    std::vector<picture::Image> frames;
    for (int i = 0; i < frameCount; ++i) {
        demo::HeadScene scene;
        scene.labelText = scan::labelText(label);
        scene.shownCode = scan::shown(label.code);
        scene.mark = mark;
        scene.seed = 11;
        scene.width = 800;
        scene.height = 600;
        scene.distance_m = 0.52;
        scene.tilt_deg = 4.0 * i;
        scene.roll_deg = 1.5 * i;
        frames.push_back(demo::renderHead(scene));
        if (film == HeadFilm::Hard) {
            stain(frames.back());
            dim(frames.back(), static_cast<std::uint64_t>(i));
        }
    }
    return frames;
}

Bytes headFilm(const scan::LabelText& label, const std::string& mark, HeadFilm film)
{
    return filmOf(headFrames(label, mark, film), framesPerSecond);
}

}  // namespace spile::support

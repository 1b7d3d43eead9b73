#include "tests/support/symbol_pictures.hpp"

#include "core/base/simulated.hpp"
#include "core/scan/zxing_compat.hpp"

#include <algorithm>
#include <cmath>
#include <string>

namespace spile::support {

using picture::Image;

static constexpr int heightOfCode128 = 40;  // modules

static std::size_t indexOf(const Image& picture, int x, int y)
{
    return static_cast<std::size_t>(y) * static_cast<std::size_t>(picture.width) +
           static_cast<std::size_t>(x);
}

static std::uint8_t toLevel(double value)
{
    return static_cast<std::uint8_t>(std::lround(std::clamp(value, 0.0, 255.0)));
}

static ZXing::BitMatrix modulesOf(std::string_view text, scan::Format format, int eccLevel)
{
    const auto zxingFormat = format == scan::Format::QrCode       ? ZXing::BarcodeFormat::QRCode
                             : format == scan::Format::DataMatrix ? ZXing::BarcodeFormat::DataMatrix
                                                                  : ZXing::BarcodeFormat::Code128;
    return ZXing::MultiFormatWriter(zxingFormat)
        .setMargin(0)
        .setEccLevel(eccLevel)
        .encode(std::string(text), 0, format == scan::Format::Code128 ? heightOfCode128 : 0);
}

static Image turnedOnce(const Image& picture)
{
    Image turned = plainPicture(picture.height, picture.width);
    for (int y = 0; y < turned.height; ++y) {
        for (int x = 0; x < turned.width; ++x) {
            turned.pixels[indexOf(turned, x, y)] =
                picture.pixels[indexOf(picture, y, picture.height - 1 - x)];
        }
    }
    return turned;
}

Image drawSymbol(std::string_view text, const SymbolStyle& style)
{
    const ZXing::BitMatrix modules = modulesOf(text, style.format, style.eccLevel);
    const int border = 2 * style.quietZone;
    Image picture = plainPicture((modules.width() + border) * style.pixelsPerModule,
                                 (modules.height() + border) * style.pixelsPerModule, style.light);
    const int quiet = style.quietZone * style.pixelsPerModule;
    for (int y = quiet; y < picture.height - quiet; ++y) {
        for (int x = quiet; x < picture.width - quiet; ++x) {
            if (modules.get((x - quiet) / style.pixelsPerModule,
                            (y - quiet) / style.pixelsPerModule)) {
                picture.pixels[indexOf(picture, x, y)] = style.dark;
            }
        }
    }
    for (int turn = 0; turn < style.quarterTurns; ++turn) {
        picture = turnedOnce(picture);
    }
    return picture;
}

Image plainPicture(int width, int height, std::uint8_t level)
{
    const auto count = static_cast<std::size_t>(width) * static_cast<std::size_t>(height);
    return {width, height, picture::PixelFormat::Grey8, std::vector<std::uint8_t>(count, level)};
}

void paste(Image& whole, const Image& part, int x, int y)
{
    for (int row = 0; row < part.height; ++row) {
        const auto from = part.pixels.begin() + static_cast<std::ptrdiff_t>(indexOf(part, 0, row));
        std::copy(from, from + part.width,
                  whole.pixels.begin() + static_cast<std::ptrdiff_t>(indexOf(whole, x, y + row)));
    }
}

void addNoise(Image& picture, double deviation, std::uint64_t seed)
{
    SeededRandom random(seed);
    for (std::uint8_t& pixel : picture.pixels) {
        pixel = toLevel(random.normal(pixel, deviation));
    }
}

void addGradient(Image& picture, double right)
{
    for (int y = 0; y < picture.height; ++y) {
        for (int x = 0; x < picture.width; ++x) {
            std::uint8_t& pixel = picture.pixels[indexOf(picture, x, y)];
            pixel = toLevel(pixel * (1.0 - (1.0 - right) * x / picture.width));
        }
    }
}

}  // namespace spile::support

#include "core/picture/transform.hpp"

#include "core/picture/reducer.hpp"

#include <algorithm>
#include <string>

namespace spile::picture {

static std::string toText(int width, int height)
{
    return std::to_string(width) + " x " + std::to_string(height);
}

static bool isSide(int length) { return length >= 1 && length <= longestSide; }

Result<void> checkSound(const Image& image)
{
    if (!isSide(image.width) || !isSide(image.height)) {
        return fail(ErrorCode::OutOfRange, "image size", toText(image.width, image.height),
                    "sides of 1 to " + std::to_string(longestSide));
    }
    const std::size_t needed = pixelBytes(image.width, image.height, image.format);
    if (image.pixels.size() != needed) {
        return fail(ErrorCode::OutOfRange, "image pixels",
                    std::to_string(image.pixels.size()) + " bytes",
                    std::to_string(needed) + " bytes");
    }
    return {};
}

Size fitted(Size size, int maxSide)
{
    const int longer = std::max(size.width, size.height);
    if (longer <= maxSide) {
        return size;
    }
    const auto scaled = [&](int side) {
        const std::int64_t doubled = std::int64_t{2} * side * maxSide + longer;
        return std::max(1, static_cast<int>(doubled / (std::int64_t{2} * longer)));
    };
    return {scaled(size.width), scaled(size.height)};
}

Result<Image> resized(const Image& image, Size size)
{
    if (auto sound = checkSound(image); !sound) {
        return passOn(sound);
    }
    if (!isSide(size.width) || !isSide(size.height)) {
        return fail(ErrorCode::OutOfRange, "image size", toText(size.width, size.height),
                    "sides of 1 to " + std::to_string(longestSide));
    }
    Reducer reducer(image.width, image.height, blankImage(size.width, size.height, image.format));
    const std::size_t rowBytes = pixelBytes(image.width, 1, image.format);
    const std::span<const std::uint8_t> pixels(image.pixels);
    for (std::size_t start = 0; start < pixels.size(); start += rowBytes) {
        reducer.addRow(pixels.subspan(start, rowBytes));
    }
    return reducer.take();
}

// Where in the source the pixel (x, y) of the seen image lies.
struct Place {
    int x, y;
};

static Place sourceOf(int x, int y, Size source, int orientation)
{
    const int right = source.width - 1;
    const int bottom = source.height - 1;
    switch (orientation) {
        case 2:
            return {right - x, y};
        case 3:
            return {right - x, bottom - y};
        case 4:
            return {x, bottom - y};
        case 5:
            return {y, x};
        case 6:
            return {y, bottom - x};
        case 7:
            return {right - y, bottom - x};
        default:  // 8
            return {right - y, x};
    }
}

Image oriented(Image image, int orientation)
{
    if (orientation < 2 || orientation > 8) {
        return image;
    }
    const bool swapsSides = orientation >= 5;
    Image seen = blankImage(swapsSides ? image.height : image.width,
                            swapsSides ? image.width : image.height, image.format);
    const std::size_t bytes = bytesPerPixel(image.format);
    auto out = seen.pixels.begin();
    for (int y = 0; y < seen.height; ++y) {
        for (int x = 0; x < seen.width; ++x) {
            const Place place = sourceOf(x, y, {image.width, image.height}, orientation);
            const std::size_t from = pixelBytes(image.width, place.y, image.format) +
                                     static_cast<std::size_t>(place.x) * bytes;
            out = std::copy_n(image.pixels.begin() + static_cast<std::ptrdiff_t>(from), bytes, out);
        }
    }
    return seen;
}

Image toGrey(const Image& image)
{
    if (image.format == PixelFormat::Grey8) {
        return image;
    }
    Image grey{image.width, image.height, PixelFormat::Grey8, {}};
    grey.pixels.reserve(image.pixels.size() / 3);
    for (std::size_t i = 0; i + 2 < image.pixels.size(); i += 3) {
        grey.pixels.push_back(luminance(image.pixels[i], image.pixels[i + 1], image.pixels[i + 2]));
    }
    return grey;
}

}  // namespace spile::picture

#include "core/scan/reader.hpp"

#include "core/scan/zxing_compat.hpp"

#include <algorithm>
#include <exception>
#include <limits>

namespace spile::scan {

using picture::LuminanceView;

// Below this a halved picture has less than 1 pixel a module even if one symbol fills it.
static constexpr int shortestSideToHalve = 64;

static std::optional<Error> whyUnsound(const LuminanceView& view)
{
    const auto error = [](const char* subject, int value, std::string limit) {
        return Error{ErrorCode::OutOfRange, subject, std::to_string(value), std::move(limit)};
    };
    if (view.data == nullptr) {
        return Error{ErrorCode::OutOfRange, "picture", "no pixels", "a luminance plane"};
    }
    const std::string sides = "1 to " + std::to_string(longestViewSide);
    if (view.width <= 0 || view.width > longestViewSide) {
        return error("picture width", view.width, sides);
    }
    if (view.height <= 0 || view.height > longestViewSide) {
        return error("picture height", view.height, sides);
    }
    if (view.pixelStride <= 0) {
        return error("pixel stride", view.pixelStride, "at least 1");
    }
    // The library multiplies in int, so the whole plane must fit one.
    constexpr std::int64_t most = std::numeric_limits<int>::max();
    if (view.rowStride < std::int64_t{view.width} * view.pixelStride ||
        std::int64_t{view.rowStride} * view.height > most) {
        return error("row stride", view.rowStride,
                     "at least width * pixel stride, all rows within 2^31 - 1 bytes");
    }
    return std::nullopt;
}

static ZXing::ImageView asZxing(const LuminanceView& view)
{
    return {view.data,      view.width,      view.height, ZXing::ImageFormat::Lum,
            view.rowStride, view.pixelStride};
}

static std::optional<Format> formatOf(ZXing::BarcodeFormat format)
{
    switch (format) {
        case ZXing::BarcodeFormat::QRCode:
            return Format::QrCode;
        case ZXing::BarcodeFormat::DataMatrix:
            return Format::DataMatrix;
        case ZXing::BarcodeFormat::Code128:
            return Format::Code128;
        default:
            return std::nullopt;
    }
}

// None if the library reports a symbol that it could not read.
static std::optional<Code> codeOf(const zxing::Barcode& barcode)
{
    const auto format = formatOf(barcode.format());
    if (!barcode.isValid() || !format) {
        return std::nullopt;
    }
    Code code{barcode.text(), *format, {}};
    const auto& position = barcode.position();
    const std::array corners = {position.topLeft(), position.topRight(), position.bottomRight(),
                                position.bottomLeft()};
    std::transform(corners.begin(), corners.end(), code.corners.begin(), [](const auto& corner) {
        return Point{corner.x, corner.y};
    });
    return code;
}

// Four times the centre, to stay in whole numbers.
static Point centreTimesFour(const Code& code)
{
    Point sum;
    for (const Point& corner : code.corners) {
        sum.x += corner.x;
        sum.y += corner.y;
    }
    return sum;
}

// Whether the centre of `b` lies in the upright box around `a`.
static bool isSamePlace(const Code& a, const Code& b)
{
    const Point centre = centreTimesFour(b);
    const auto [left, right] =
        std::minmax({a.corners[0].x, a.corners[1].x, a.corners[2].x, a.corners[3].x});
    const auto [top, bottom] =
        std::minmax({a.corners[0].y, a.corners[1].y, a.corners[2].y, a.corners[3].y});
    return centre.x >= 4 * left && centre.x <= 4 * right && centre.y >= 4 * top &&
           centre.y <= 4 * bottom;
}

std::vector<Code> withoutRepeats(std::vector<Code> codes)
{
    auto end = codes.begin();  // of those kept
    for (auto code = codes.begin(); code != codes.end(); ++code) {
        const bool repeats = std::any_of(codes.begin(), end, [&](const Code& kept) {
            return kept.text == code->text && kept.format == code->format &&
                   isSamePlace(kept, *code);
        });
        if (!repeats) {
            std::iter_swap(end++, code);
        }
    }
    codes.erase(end, codes.end());
    return codes;
}

static void addValid(const zxing::Barcodes& found, std::vector<Code>& codes)
{
    for (const zxing::Barcode& barcode : found) {
        if (auto code = codeOf(barcode)) {
            codes.push_back(std::move(*code));
        }
    }
}

static std::vector<Code> readAll(const LuminanceView& view)
{
    std::vector<Code> codes;
    zxing::Options matrix = zxing::plainOptions();
    matrix.setFormats(ZXing::BarcodeFormat::QRCode | ZXing::BarcodeFormat::DataMatrix);
    addValid(ZXing::ReadBarcodes(asZxing(view), matrix), codes);

    // ZXing 1.4 ends the process on an assertion when it merges several linear codes of several
    // sizes of the picture; one symbol from one size cannot get there.
    zxing::Options linear = zxing::plainOptions();
    linear.setFormats(ZXing::BarcodeFormat::Code128);
    linear.setMaxNumberOfSymbols(1);
    linear.setTryDownscale(false);
    addValid(ZXing::ReadBarcodes(asZxing(view), linear), codes);
    return withoutRepeats(std::move(codes));
}

// A copy of half the width and height; each pixel the mean of four.
static picture::Image halved(const LuminanceView& view)
{
    picture::Image half{view.width / 2, view.height / 2, picture::PixelFormat::Grey8, {}};
    half.pixels.reserve(static_cast<std::size_t>(half.width) *
                        static_cast<std::size_t>(half.height));
    const std::ptrdiff_t right = view.pixelStride;
    const std::ptrdiff_t below = view.rowStride;
    for (int y = 0; y < half.height; ++y) {
        const std::uint8_t* pixel = view.data + 2 * below * y;
        for (int x = 0; x < half.width; ++x, pixel += 2 * right) {
            const int sum = pixel[0] + pixel[right] + pixel[below] + pixel[below + right];
            half.pixels.push_back(static_cast<std::uint8_t>((sum + 2) / 4));
        }
    }
    return half;
}

// The second look: what is too large, too blurred or too noisy for the first may show at half size.
static std::vector<Code> readHalved(const LuminanceView& view)
{
    const picture::Image half = halved(view);
    std::vector<Code> codes = readAll({half.pixels.data(), half.width, half.height, half.width, 1});
    for (Code& code : codes) {
        for (Point& corner : code.corners) {
            corner = {2 * corner.x, 2 * corner.y};
        }
    }
    return codes;
}

static std::int64_t distanceFromMiddle(const Code& code, const LuminanceView& view)
{
    const Point centre = centreTimesFour(code);
    const std::int64_t x = std::int64_t{centre.x} - 2 * std::int64_t{view.width};
    const std::int64_t y = std::int64_t{centre.y} - 2 * std::int64_t{view.height};
    return x * x + y * y;
}

Result<std::vector<Code>> readPicture(const LuminanceView& view)
{
    if (auto error = whyUnsound(view)) {
        return tl::unexpected<Error>(std::move(*error));
    }
    try {
        std::vector<Code> codes = readAll(view);
        if (codes.empty() && std::min(view.width, view.height) >= shortestSideToHalve) {
            codes = readHalved(view);
        }
        std::stable_sort(codes.begin(), codes.end(), [&](const Code& a, const Code& b) {
            return distanceFromMiddle(a, view) < distanceFromMiddle(b, view);
        });
        return codes;
    } catch (const std::exception& e) {
        return fail(ErrorCode::Unsupported, "picture", e.what(), "another picture of the code");
    }
}

static std::optional<Code> readOneQr(const LuminanceView& view, bool alsoSmaller)
{
    zxing::Options options = zxing::plainOptions();
    options.setFormats(ZXing::BarcodeFormat::QRCode);
    options.setMaxNumberOfSymbols(1);
    options.setTryDownscale(alsoSmaller);
    for (const zxing::Barcode& barcode : ZXing::ReadBarcodes(asZxing(view), options)) {
        if (auto code = codeOf(barcode)) {
            return code;
        }
    }
    return std::nullopt;
}

// People aim: the middle half of each side holds the label more often than not, at a fifth of the
// cost of the frame.
static std::optional<Code> readMiddle(const LuminanceView& frame)
{
    const int left = frame.width / 4;
    const int top = frame.height / 4;
    LuminanceView middle = frame;
    middle.data += std::ptrdiff_t{top} * frame.rowStride + std::ptrdiff_t{left} * frame.pixelStride;
    middle.width = std::max(frame.width / 2, 1);
    middle.height = std::max(frame.height / 2, 1);
    auto code = readOneQr(middle, false);
    if (code) {
        for (Point& corner : code->corners) {
            corner = {corner.x + left, corner.y + top};
        }
    }
    return code;
}

std::optional<Code> readFrame(const LuminanceView& frame)
{
    if (whyUnsound(frame)) {
        return std::nullopt;
    }
    try {
        auto code = readMiddle(frame);
        return code ? code : readOneQr(frame, true);
    } catch (const std::exception&) {
        return std::nullopt;
    }
}

std::optional<LabelText> ownLabel(const Code& code)
{
    return code.format == Format::QrCode ? parseLabelText(code.text) : std::nullopt;
}

}  // namespace spile::scan

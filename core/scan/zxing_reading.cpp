#include "core/scan/zxing_reading.hpp"

#include "core/scan/zxing_compat.hpp"

#include <algorithm>
#include <limits>

namespace spile::scan {

using picture::LuminanceView;

std::optional<Error> whyUnsound(const LuminanceView& view)
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
    constexpr std::int64_t mostBytes = std::numeric_limits<int>::max();
    if (view.rowStride < std::int64_t{view.width} * view.pixelStride ||
        std::int64_t{view.rowStride} * view.height > mostBytes) {
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

static void setFormats(Kind kind, zxing::Options& options)
{
    switch (kind) {
        case Kind::Qr:
            options.setFormats(ZXing::BarcodeFormat::QRCode);
            break;
        case Kind::DataMatrix:
            options.setFormats(ZXing::BarcodeFormat::DataMatrix);
            break;
        case Kind::QrAndDataMatrix:
            options.setFormats(ZXing::BarcodeFormat::QRCode | ZXing::BarcodeFormat::DataMatrix);
            break;
        case Kind::Code128:
            options.setFormats(ZXing::BarcodeFormat::Code128);
            break;
    }
}

std::vector<Code> readByZxing(const LuminanceView& view, const Wanted& wanted)
{
    zxing::Options options = zxing::plainOptions();
    setFormats(wanted.kind, options);
    const bool isLinear = wanted.kind == Kind::Code128;
    options.setMaxNumberOfSymbols(isLinear ? std::uint8_t{1} : wanted.most);
    options.setTryDownscale(wanted.alsoSmaller && !isLinear);
    options.setIsPure(wanted.isPure);
    if (wanted.isBlackAndWhite) {
        options.setBinarizer(ZXing::Binarizer::FixedThreshold);
    }
    std::vector<Code> codes;
    for (const zxing::Barcode& barcode : ZXing::ReadBarcodes(asZxing(view), options)) {
        if (auto code = codeOf(barcode)) {
            codes.push_back(std::move(*code));
        }
    }
    return codes;
}

}  // namespace spile::scan

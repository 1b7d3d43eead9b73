#include "core/scan/reader.hpp"

#include "core/scan/code_order.hpp"
#include "core/scan/frame_passes.hpp"
#include "core/scan/live_reader.hpp"
#include "core/scan/zxing_reading.hpp"

#include <algorithm>
#include <array>
#include <exception>

namespace spile::scan {

using picture::LuminanceView;

// Below this a halved picture has less than 1 pixel a module even if one symbol fills it.
static constexpr int shortestSideToHalve = 64;

static std::vector<Code> readAll(const LuminanceView& view)
{
    constexpr std::uint8_t most = 255;
    auto codes = readByZxing(view, {.kind = Kind::QrAndDataMatrix, .most = most});
    addNew(readByZxing(view, {.kind = Kind::Code128}), codes);
    return codes;
}

// The second look: what is too large, too blurred or too noisy for the first may show at half size.
static std::vector<Code> readHalved(const LuminanceView& view)
{
    redraw::Plane half;
    halve(view, half);
    auto codes = readAll(half.view());
    placeInWhole(codes, {}, 2);
    return codes;
}

// Damaged symbols of one size, in the picture and at smaller sizes of it.
static std::vector<Code> readDamaged(const LuminanceView& view, int modules)
{
    constexpr int shortestSide = 400;
    Redrawer redrawer(modules, true);
    auto codes = redrawer.read(view);
    std::array<redraw::Plane, 2> planes;
    LuminanceView smaller = view;
    double scale = 1;
    for (std::size_t i = 0;
         codes.empty() && std::min(smaller.width, smaller.height) >= shortestSide; ++i) {
        halve(smaller, planes.at(i % 2));
        smaller = planes.at(i % 2).view();
        scale *= 2;
        codes = redrawer.read(smaller);
        placeInWhole(codes, {}, scale);
    }
    return codes;
}

// The third: the size of our labels first, then those beside it.
static std::vector<Code> readDamagedOfAnySize(const LuminanceView& view)
{
    for (const int modules : {label::size, 21, 29}) {
        if (auto codes = readDamaged(view, modules); !codes.empty()) {
            return codes;
        }
    }
    return {};
}

// The last: as a live frame is looked at, in all ways.
static std::vector<Code> readAsFrame(const LuminanceView& view)
{
    FramePasses passes;
    auto codes = passes.sharpenedMiddle(view);
    return codes.empty() ? passes.thresholdedMiddle(view) : codes;
}

Result<std::vector<Code>> readPicture(const LuminanceView& view)
{
    if (auto error = whyUnsound(view)) {
        return tl::unexpected<Error>(std::move(*error));
    }
    try {
        std::vector<Code> codes = readAll(view);
        const bool isLargeEnough = std::min(view.width, view.height) >= shortestSideToHalve;
        for (const auto& look : {readHalved, readDamagedOfAnySize, readAsFrame}) {
            if (codes.empty() && isLargeEnough) {
                codes = look(view);
            }
        }
        orderFromMiddle(codes, view.width, view.height);
        return codes;
    } catch (const std::exception& e) {
        return fail(ErrorCode::Unsupported, "picture", e.what(), "another picture of the code");
    }
}

std::optional<Code> readFrame(const LuminanceView& frame)
{
    thread_local LiveReader reader;
    Looked looked = reader.lookThoroughly(frame);
    return looked.codes.empty() ? std::nullopt : std::optional(std::move(looked.codes.front()));
}

std::optional<LabelText> ownLabel(const Code& code)
{
    return code.format == Format::QrCode ? parseLabelText(code.text) : std::nullopt;
}

}  // namespace spile::scan

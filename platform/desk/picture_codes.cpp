#include "platform/desk/picture_codes.hpp"

#include "core/picture/decode.hpp"
#include "core/picture/transform.hpp"

#include <algorithm>

namespace spile::desk {

namespace {

// A symbol too large or too blurred at full size may be found at half of it.
Result<std::vector<scan::Code>> readBothSizes(const picture::Image& image)
{
    SPILE_ASSIGN(codes, scan::readPicture(picture::viewOf(image)));
    constexpr int smallest = 64;
    if (std::min(image.width, image.height) < 2 * smallest) {
        return std::move(codes);
    }
    SPILE_ASSIGN(half, picture::resized(image, {image.width / 2, image.height / 2}));
    SPILE_ASSIGN(more, scan::readPicture(picture::viewOf(half)));
    for (scan::Code& code : more) {
        for (scan::Point& corner : code.corners) {
            corner = {corner.x * 2, corner.y * 2};
        }
        codes.push_back(std::move(code));
    }
    return scan::withoutRepeats(std::move(codes));
}

}  // namespace

Result<std::vector<scan::Code>> codesIn(FileSystem& files, const std::string& name)
{
    const picture::DecodeOptions options{picture::PixelFormat::Grey8};
    SPILE_ASSIGN(bytes, readWhole(files, name, options.limits.bytes));
    SPILE_ASSIGN(image, picture::decode(bytes, options));
    return readBothSizes(image);
}

Result<std::string> symbolIn(FileSystem& files, const std::string& name, const std::string& what,
                             const std::function<bool(const std::string&)>& isOne)
{
    SPILE_ASSIGN(codes, codesIn(files, name));
    std::erase_if(codes, [&](const scan::Code& code) {
        return code.format != scan::Format::QrCode || !isOne(code.text);
    });
    if (codes.empty()) {
        return fail(ErrorCode::NotFound, what, name,
                    "a sharp picture of it, filled by it; or type what stands beside it");
    }
    const bool same = std::all_of(codes.begin(), codes.end(), [&](const scan::Code& code) {
        return code.text == codes.front().text;
    });
    if (!same) {
        return fail(ErrorCode::Conflict, what, name + " shows several", "a picture of one");
    }
    return std::move(codes.front().text);
}

}  // namespace spile::desk

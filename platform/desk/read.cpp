// read: the codes in pictures.
#include "core/picture/decode.hpp"
#include "core/picture/transform.hpp"
#include "core/scan/reader.hpp"
#include "platform/desk/commands.hpp"
#include "platform/desk/rows.hpp"

#include <algorithm>

namespace spile::desk {

using nlohmann::json;

namespace {

std::string nameOf(scan::Format format)
{
    switch (format) {
        case scan::Format::QrCode:
            return "QRCode";
        case scan::Format::DataMatrix:
            return "DataMatrix";
        case scan::Format::Code128:
            return "Code128";
    }
    return "";
}

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

Result<std::vector<scan::Code>> readFile(FileSystem& files, const std::string& name)
{
    const picture::DecodeOptions options{picture::PixelFormat::Grey8};
    SPILE_ASSIGN(bytes, readWhole(files, name, options.limits.bytes));
    SPILE_ASSIGN(image, picture::decode(bytes, options));
    return readBothSizes(image);
}

}  // namespace

int read(Session& session, const std::vector<std::string>& images)
{
    json answers = json::array();
    std::vector<std::vector<std::string>> lines;
    int exit = Done;
    for (const std::string& name : images) {
        const auto codes = readFile(session.files(), name);
        if (!codes) {
            Session::remark("spile-desk: " + name + ": " + worded(codes.error()));
            answers.push_back(
                {{"file", name}, {"codes", json::array()}, {"error", worded(codes.error())}});
            exit = exitOf(codes.error());
            continue;
        }
        json list = json::array();
        for (const scan::Code& code : *codes) {
            const bool ours = scan::ownLabel(code).has_value();
            list.push_back({{"text", code.text}, {"format", nameOf(code.format)}, {"ours", ours}});
            lines.push_back({name, nameOf(code.format), code.text, ours ? "a barrel's label" : ""});
        }
        answers.push_back({{"file", name}, {"codes", list}});
        if (codes->empty()) {
            lines.push_back({name, "no code found"});
        }
    }
    session.answer(answers, table(lines));
    return exit;
}

}  // namespace spile::desk

#include "core/scan/symbol.hpp"

#include "core/scan/zxing_compat.hpp"

#include <exception>
#include <string>

namespace spile::scan {

static constexpr std::string_view alphanumeric = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:";
static constexpr std::size_t longestText = 20;  // version 2 at level H

static ModuleGrid encode(const std::string& text, QrLevel level)
{
    // ZXing's 0 to 8 in pairs: L, M, Q, H.
    const int eccLevel = level == QrLevel::M ? 4 : level == QrLevel::Q ? 6 : 8;
    const ZXing::BitMatrix bits = ZXing::MultiFormatWriter(ZXing::BarcodeFormat::QRCode)
                                      .setEccLevel(eccLevel)
                                      .setMargin(0)
                                      .encode(text, 0, 0);
    ModuleGrid grid;
    grid.size = bits.width();
    grid.modules.reserve(static_cast<std::size_t>(grid.size) * static_cast<std::size_t>(grid.size));
    for (int row = 0; row < grid.size; ++row) {
        for (int column = 0; column < grid.size; ++column) {
            grid.modules.push_back(bits.get(column, row));
        }
    }
    return grid;
}

std::optional<ModuleGrid> encodeQr(const std::string& text, QrLevel level)
{
    try {
        return encode(text, level);
    } catch (const std::exception&) {  // too long, or a character it does not know
        return std::nullopt;
    }
}

Result<ModuleGrid> makeQr(std::string_view text)
{
    if (text.empty() || text.size() > longestText) {
        return fail(ErrorCode::OutOfRange, "QR text", std::string(text), "1 to 20 characters");
    }
    if (text.find_first_not_of(alphanumeric) != std::string_view::npos) {
        return fail(ErrorCode::Malformed, "QR text", std::string(text), std::string(alphanumeric));
    }
    try {
        return encode(std::string(text), QrLevel::H);
    } catch (const std::exception& e) {  // not seen for texts of this range
        return fail(ErrorCode::Unsupported, "QR text", std::string(text), e.what());
    }
}

}  // namespace spile::scan

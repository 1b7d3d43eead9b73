#include "core/scan/redraw_confirm.hpp"

#include "core/scan/label_bits.hpp"
#include "core/scan/symbol.hpp"
#include "core/scan/zxing_reading.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace spile::scan::redraw {

static constexpr std::size_t mostModules = 41;  // a side, version 6

std::optional<Code> readClean(std::span<const bool> modules, int size, Plane& drawn)
{
    constexpr int pixels = 4;
    constexpr int quiet = 4;
    const int side = (size + 2 * quiet) * pixels;
    drawn.resize(side, side);
    std::fill(drawn.pixels.begin(), drawn.pixels.end(), std::uint8_t{255});
    for (int y = 0; y < size * pixels; ++y) {
        std::uint8_t* row = drawn.row(y + quiet * pixels) + std::ptrdiff_t{quiet} * pixels;
        for (int x = 0; x < size * pixels; ++x) {
            if (modules[indexAt(y / pixels, x / pixels, size)]) {
                row[x] = 0;
            }
        }
    }
    auto codes = readByZxing(drawn.view(), {.alsoSmaller = false, .isPure = true});
    if (codes.empty()) {
        return std::nullopt;
    }
    codes.front().corners = {};
    return std::move(codes.front());
}

// The mask of a symbol that is whole, from its format information.
static int maskOf(const ModuleGrid& grid)
{
    constexpr unsigned formatMask = 5;  // of these three bits
    const auto bit = [&](int column) { return grid.dark(8, column) ? 1U : 0U; };
    return static_cast<int>((bit(2) << 2U | bit(3) << 1U | bit(4)) ^ formatMask);
}

// How well what was seen agrees with `grid`, were its mask `mask`: -1 to 1, each module by how
// clear it is; without the known patterns and the format information.
static float agreement(const KnownPatterns& patterns, const Softs& softs, const ModuleGrid& grid,
                       int mask)
{
    const int drawnMask = maskOf(grid);
    float agree = 0;
    float all = 0;
    for (int row = 0; row < patterns.size; ++row) {
        for (int column = 0; column < patterns.size; ++column) {
            const bool isFormat = row == 8 || column == 8;
            if (isFormat || patterns.at(row, column) != 0) {
                continue;
            }
            const bool turns =
                label::isMasked(mask, row, column) != label::isMasked(drawnMask, row, column);
            const float soft = softs[indexAt(row, column, patterns.size)];
            const float clear = std::clamp(soft, -1.0F, 1.0F);
            agree += grid.dark(row, column) != turns ? clear : -clear;
            all += std::abs(clear);
        }
    }
    return all > 0 ? agree / all : 0;
}

static bool isConfirmed(const KnownPatterns& patterns, const Softs& softs, const std::string& text)
{
    constexpr float leastAgreement = 0.7F;
    for (const QrLevel level : {QrLevel::H, QrLevel::Q, QrLevel::M}) {
        const auto grid = encodeQr(text, level);
        for (int mask = 0; grid && grid->size == patterns.size && mask < label::masks; ++mask) {
            if (agreement(patterns, softs, *grid, mask) >= leastAgreement) {
                return true;
            }
        }
    }
    return false;
}

std::optional<Code> readAny(const KnownPatterns& patterns, const Softs& softs, Plane& drawn)
{
    std::array<bool, mostModules * mostModules> modules{};
    for (std::size_t i = 0; i < softs.size(); ++i) {
        modules.at(i) = patterns.signs[i] == 0 ? softs[i] > 0 : patterns.signs[i] > 0;
    }
    auto code = readClean(std::span(modules).first(softs.size()), patterns.size, drawn);
    return code && isConfirmed(patterns, softs, code->text) ? code : std::nullopt;
}

}  // namespace spile::scan::redraw

#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>

/// What is inside the QR symbols of version 2 at level H, which our labels are: where their bits
/// lie and what they say.
///
/// Source    ISO/IEC 18004:2015, 7.3 to 7.9.
namespace spile::scan::label {

inline constexpr int size = 25;  // modules
inline constexpr int modules = size * size;
inline constexpr int dataBytes = 16;
inline constexpr int parityBytes = 28;
inline constexpr int codewords = dataBytes + parityBytes;
inline constexpr int bits = 8 * codewords;
inline constexpr int masks = 8;

using Word = std::array<std::uint8_t, codewords>;

/// The module of each bit of the codewords, the first byte's highest first: row * size + column.
[[nodiscard]] const std::array<std::uint16_t, bits>& bitModules();
/// Whether `mask` changes the colour of a module, in symbols of any size.
[[nodiscard]] bool isMasked(int mask, int row, int column);
/// The same for a module given as bitModules() gives it.
[[nodiscard]] inline bool isMasked(int mask, int module)
{
    return isMasked(mask, module / size, module % size);
}

/// A module of the format information and whether it is dark.
struct FormatModule {
    std::uint16_t module;
    bool dark;
};
/// The two bits that stand for an error correction level.
enum class LevelBits : std::uint8_t { M = 0, L = 1, H = 2, Q = 3 };
/// The format information with `mask`, both copies.
[[nodiscard]] std::array<FormatModule, 30> formatModules(int mask, LevelBits level = LevelBits::H);

/// The codewords of `text`, 1 to 20 characters of the QR alphanumeric set; none for others.
[[nodiscard]] std::optional<Word> encode(std::string_view text);
/// The text of codewords that encode() makes of it, bit by bit; none for any others.
[[nodiscard]] std::optional<std::string> decode(const Word& word);

/// The modules of a symbol, all patterns included: true = dark.
[[nodiscard]] std::array<bool, modules> draw(const Word& word, int mask);

/// What the codewords of every label of ours have in common: the mode, the length, "S1", the end
/// and the padding. A bit of `known` is 1 where that of `value` holds.
struct Common {
    Word known{};
    Word value{};
};
[[nodiscard]] const Common& ownLabels();

}  // namespace spile::scan::label

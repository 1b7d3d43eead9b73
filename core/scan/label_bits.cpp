#include "core/scan/label_bits.hpp"

#include "core/scan/barrel_code.hpp"
#include "core/scan/redraw_patterns.hpp"
#include "core/scan/reed_solomon.hpp"

#include <algorithm>
#include <vector>

namespace spile::scan::label {

static constexpr std::string_view alphanumeric = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:";
static constexpr unsigned alphanumericMode = 2;
static constexpr std::size_t longestText = 20;
static constexpr int dataBits = 8 * dataBytes;

static bool isFormat(int row, int column)
{
    const bool byRow = row == 8 && (column <= 8 || column >= size - 8);
    const bool byColumn = column == 8 && (row <= 8 || row >= size - 8);
    return byRow || byColumn;
}

// The modules of two columns that carry bits, right before left, in the direction of reading.
static void addColumns(const redraw::KnownPatterns& patterns, int right, bool isUpward,
                       std::vector<std::uint16_t>& places)
{
    for (int i = 0; i < size; ++i) {
        const int row = isUpward ? size - 1 - i : i;
        for (const int column : {right, right - 1}) {
            if (patterns.at(row, column) == 0 && !isFormat(row, column)) {
                places.push_back(static_cast<std::uint16_t>(row * size + column));
            }
        }
    }
}

// Right to left in pairs of columns, up and down by turns.
static std::array<std::uint16_t, bits> placeBits()
{
    const redraw::KnownPatterns patterns(size);
    std::vector<std::uint16_t> all;
    for (int right = size - 1; right > 0; right -= 2) {
        if (right == 6) {
            right = 5;  // the column of the timing pattern
        }
        addColumns(patterns, right, ((right + 1) & 2) == 0, all);
    }
    std::array<std::uint16_t, bits> places{};
    std::copy_n(all.begin(), places.size(), places.begin());  // 7 modules are left over
    return places;
}

const std::array<std::uint16_t, bits>& bitModules()
{
    static const std::array<std::uint16_t, bits> places = placeBits();
    return places;
}

bool isMasked(int mask, int row, int column)
{
    const int i = row;  // as the standard names them
    const int j = column;
    switch (mask) {
        case 0:
            return (i + j) % 2 == 0;
        case 1:
            return i % 2 == 0;
        case 2:
            return j % 3 == 0;
        case 3:
            return (i + j) % 3 == 0;
        case 4:
            return (i / 2 + j / 3) % 2 == 0;
        case 5:
            return i * j % 2 + i * j % 3 == 0;
        case 6:
            return (i * j % 2 + i * j % 3) % 2 == 0;
        default:
            return ((i + j) % 2 + i * j % 3) % 2 == 0;
    }
}

std::array<FormatModule, 30> formatModules(int mask, LevelBits level)
{
    const unsigned data = static_cast<unsigned>(level) << 3U | static_cast<unsigned>(mask);
    unsigned rest = data;
    for (int i = 0; i < 10; ++i) {
        rest = rest << 1U ^ (rest >> 9U) * 0x537U;
    }
    const unsigned word = (data << 10U | rest) ^ 0x5412U;
    std::array<FormatModule, 30> all{};
    for (int i = 0; i < 15; ++i) {
        const bool dark = (word >> static_cast<unsigned>(i) & 1U) != 0;
        // Down column 8 and along row 8 at the top left, past the timing; then the other copy.
        const int along = i < 6 ? i : i == 6 ? 7 : 8;
        const int first = i < 8 ? along * size + 8 : 8 * size + (i == 8 ? 7 : 14 - i);
        const int second = i < 8 ? 8 * size + size - 1 - i : (size - 15 + i) * size + 8;
        all[2 * static_cast<std::size_t>(i)] = {static_cast<std::uint16_t>(first), dark};
        all[2 * static_cast<std::size_t>(i) + 1] = {static_cast<std::uint16_t>(second), dark};
    }
    return all;
}

namespace {

class BitWriter {
public:
    explicit BitWriter(Word& word) : word_(word) {}

    void put(unsigned value, int count)
    {
        for (int i = count - 1; i >= 0; --i, ++length_) {
            if ((value >> static_cast<unsigned>(i) & 1U) != 0) {
                word_[static_cast<std::size_t>(length_ / 8)] |=
                    static_cast<std::uint8_t>(0x80U >> static_cast<unsigned>(length_ % 8));
            }
        }
    }
    [[nodiscard]] int length() const { return length_; }

private:
    Word& word_;
    int length_ = 0;
};

unsigned bitsAt(const Word& word, int from, int count)
{
    unsigned value = 0;
    for (int i = from; i < from + count; ++i) {
        value = value << 1U | (static_cast<unsigned>(word[static_cast<std::size_t>(i / 8)]) >>
                                   static_cast<unsigned>(7 - i % 8) &
                               1U);
    }
    return value;
}

void putText(std::string_view text, BitWriter& out)
{
    const auto valueOf = [](char c) { return static_cast<unsigned>(alphanumeric.find(c)); };
    out.put(alphanumericMode, 4);
    out.put(static_cast<unsigned>(text.size()), 9);
    std::size_t i = 0;
    for (; i + 1 < text.size(); i += 2) {
        out.put(valueOf(text[i]) * 45 + valueOf(text[i + 1]), 11);
    }
    if (i < text.size()) {
        out.put(valueOf(text[i]), 6);
    }
}

// The end, then whole bytes of padding.
void putEnd(BitWriter& out)
{
    out.put(0, std::min(4, dataBits - out.length()));
    out.put(0, (8 - out.length() % 8) % 8);
    for (unsigned pad = 0xec; out.length() < dataBits; pad ^= 0xecU ^ 0x11U) {
        out.put(pad, 8);
    }
}

Common commonOfOwnLabels()
{
    constexpr int prefixBits = 4 + 9 + 11;
    constexpr int textBits = 4 + 9 + 6 * 11;
    const Word word = *encode("S10000000000");
    Common common;
    for (int i = 0; i < dataBits; ++i) {
        if (i < prefixBits || i >= textBits) {
            const auto bit = static_cast<std::uint8_t>(0x80U >> static_cast<unsigned>(i % 8));
            const auto byte = static_cast<std::size_t>(i / 8);
            common.known[byte] |= bit;
            common.value[byte] |= static_cast<std::uint8_t>(word[byte] & bit);
        }
    }
    return common;
}

}  // namespace

std::optional<Word> encode(std::string_view text)
{
    if (text.empty() || text.size() > longestText ||
        text.find_first_not_of(alphanumeric) != std::string_view::npos) {
        return std::nullopt;
    }
    Word word{};
    BitWriter out(word);
    putText(text, out);
    putEnd(out);
    const std::span<std::uint8_t> all(word);
    addParity(all.first<dataBytes>(), all.last<parityBytes>());
    return word;
}

std::optional<std::string> decode(const Word& word)
{
    const unsigned count = bitsAt(word, 4, 9);
    if (bitsAt(word, 0, 4) != alphanumericMode || count == 0 || count > longestText) {
        return std::nullopt;
    }
    std::string text;
    int at = 13;
    const auto take = [&](int width, unsigned characters) {
        const unsigned value = bitsAt(word, at, width);
        at += width;
        if (characters == 2) {
            text += alphanumeric[value / 45 % 45];
        }
        text += alphanumeric[value % 45];
    };
    for (unsigned i = 0; i + 1 < count; i += 2) {
        take(11, 2);
    }
    if (count % 2 == 1) {
        take(6, 1);
    }
    // Values that stand for no character, another end or other padding: not what encode() makes.
    if (encode(text) != word) {
        return std::nullopt;
    }
    return text;
}

std::array<bool, modules> draw(const Word& word, int mask)
{
    static const redraw::KnownPatterns patterns(size);
    std::array<bool, modules> dark{};
    for (std::size_t i = 0; i < dark.size(); ++i) {
        // What carries no bit, the 7 modules that are left over, is masked all the same.
        dark[i] =
            patterns.signs[i] == 0 ? isMasked(mask, static_cast<int>(i)) : patterns.signs[i] > 0;
    }
    for (const FormatModule& format : formatModules(mask)) {
        dark[format.module] = format.dark;
    }
    const auto& places = bitModules();
    for (std::size_t i = 0; i < bits; ++i) {
        const bool isOne = (word[i / 8] & 0x80U >> i % 8) != 0;
        dark[places[i]] = isOne != isMasked(mask, places[i]);
    }
    return dark;
}

const Common& ownLabels()
{
    static const Common common = commonOfOwnLabels();
    return common;
}

}  // namespace spile::scan::label

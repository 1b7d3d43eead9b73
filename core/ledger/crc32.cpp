#include "core/ledger/crc32.hpp"

#include <array>

namespace spile::ledger {

using Table = std::array<std::uint32_t, 256>;

// tables[0] moves the state over one byte; tables[k] moves it over k zero bytes more.
static constexpr std::array<Table, 8> makeTables()
{
    std::array<Table, 8> tables{};
    for (std::uint32_t byte = 0; byte < 256; ++byte) {
        std::uint32_t state = byte;
        for (int bit = 0; bit < 8; ++bit) {
            state = (state & 1U) != 0 ? (state >> 1U) ^ 0xedb88320U : state >> 1U;
        }
        tables[0][byte] = state;
    }
    for (std::size_t k = 1; k < tables.size(); ++k) {
        for (std::size_t byte = 0; byte < 256; ++byte) {
            const std::uint32_t before = tables[k - 1][byte];
            tables[k][byte] = (before >> 8U) ^ tables[0][before & 0xffU];
        }
    }
    return tables;
}

static constexpr std::array<Table, 8> tables = makeTables();

static std::uint32_t wordAt(ByteView bytes, std::size_t at)
{
    return bytes[at] | std::uint32_t{bytes[at + 1]} << 8U | std::uint32_t{bytes[at + 2]} << 16U |
           std::uint32_t{bytes[at + 3]} << 24U;
}

void Crc32::add(ByteView bytes)
{
    std::uint32_t state = state_;
    while (bytes.size() >= 8) {
        const std::uint32_t low = state ^ wordAt(bytes, 0);
        const std::uint32_t high = wordAt(bytes, 4);
        state = tables[7][low & 0xffU] ^ tables[6][low >> 8U & 0xffU] ^
                tables[5][low >> 16U & 0xffU] ^ tables[4][low >> 24U] ^ tables[3][high & 0xffU] ^
                tables[2][high >> 8U & 0xffU] ^ tables[1][high >> 16U & 0xffU] ^
                tables[0][high >> 24U];
        bytes = bytes.subspan(8);
    }
    for (const std::uint8_t byte : bytes) {
        state = (state >> 8U) ^ tables[0][(state ^ byte) & 0xffU];
    }
    state_ = state;
}

std::uint32_t crc32(ByteView bytes)
{
    Crc32 crc;
    crc.add(bytes);
    return crc.value();
}

}  // namespace spile::ledger

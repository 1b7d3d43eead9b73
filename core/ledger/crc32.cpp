#include "core/ledger/crc32.hpp"

#include <array>

#if defined(__x86_64__)
#include <immintrin.h>
#define SPILE_FOLDING __attribute__((target("pclmul,sse4.1")))
#endif

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

static std::uint32_t addByTables(std::uint32_t state, ByteView bytes)
{
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
    return state;
}

#if defined(__x86_64__)

// Photos are read with it three times over, so it has to be far quicker than SHA-256 is.
// Source    V. Gopal and others, Fast CRC Computation for Generic Polynomials Using PCLMULQDQ
//           Instruction, Intel, 2009: the folding of 64 and of 16 bytes, with its constants for
//           this polynomial. What is left of the folding goes through the tables.
namespace folding {

SPILE_FOLDING static __m128i load(ByteView bytes, std::size_t at)
{
    return _mm_loadu_si128(reinterpret_cast<const __m128i*>(bytes.data() + at));
}

SPILE_FOLDING static __m128i fold(__m128i state, __m128i constants, __m128i next)
{
    const __m128i low = _mm_clmulepi64_si128(state, constants, 0x00);
    const __m128i high = _mm_clmulepi64_si128(state, constants, 0x11);
    return _mm_xor_si128(_mm_xor_si128(low, high), next);
}

// Takes whole blocks of 16 bytes off the front of `bytes`. Requires at least 64.
SPILE_FOLDING static std::uint32_t takeBlocks(std::uint32_t state, ByteView& bytes)
{
    const __m128i over64 = _mm_set_epi64x(0x01c6e41596, 0x0154442bd4);
    const __m128i over16 = _mm_set_epi64x(0x00ccaa009e, 0x01751997d0);
    __m128i first = _mm_xor_si128(load(bytes, 0), _mm_cvtsi32_si128(static_cast<int>(state)));
    __m128i second = load(bytes, 16);
    __m128i third = load(bytes, 32);
    __m128i all = load(bytes, 48);
    for (bytes = bytes.subspan(64); bytes.size() >= 64; bytes = bytes.subspan(64)) {
        first = fold(first, over64, load(bytes, 0));
        second = fold(second, over64, load(bytes, 16));
        third = fold(third, over64, load(bytes, 32));
        all = fold(all, over64, load(bytes, 48));
    }
    second = fold(first, over16, second);
    third = fold(second, over16, third);
    all = fold(third, over16, all);
    for (; bytes.size() >= 16; bytes = bytes.subspan(16)) {
        all = fold(all, over16, load(bytes, 0));
    }
    std::array<std::uint8_t, 16> folded{};
    _mm_storeu_si128(reinterpret_cast<__m128i*>(folded.data()), all);
    return addByTables(0, folded);
}

}  // namespace folding

void Crc32::add(ByteView bytes)
{
    static const bool canFold = static_cast<bool>(__builtin_cpu_supports("pclmul")) &&
                                static_cast<bool>(__builtin_cpu_supports("sse4.1"));
    constexpr std::size_t worthIt = 64;
    if (canFold && bytes.size() >= worthIt) {
        state_ = folding::takeBlocks(state_, bytes);
    }
    state_ = addByTables(state_, bytes);
}

#else

void Crc32::add(ByteView bytes) { state_ = addByTables(state_, bytes); }

#endif

std::uint32_t crc32(ByteView bytes)
{
    Crc32 crc;
    crc.add(bytes);
    return crc.value();
}

}  // namespace spile::ledger

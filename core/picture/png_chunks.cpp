#include "core/picture/png_chunks.hpp"

#include <algorithm>
#include <string>
#include <zlib.h>

namespace spile::picture {

static constexpr std::size_t frame = 12;  // length, type and CRC around the data
static constexpr std::uint32_t longestData = 0x7FFFFFFF;

static auto damaged(std::size_t at, std::string why)
{
    return fail(ErrorCode::Damaged, "PNG file", std::move(why) + " at byte " + std::to_string(at),
                "a whole PNG file");
}

static bool isLetter(char c) { return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z'); }

static std::uint32_t crcOf(ByteView typeAndData)
{
    return static_cast<std::uint32_t>(crc32_z(0, typeAndData.data(), typeAndData.size()));
}

Result<std::optional<PngChunk>> PngChunks::next()
{
    if (ended_) {
        return std::nullopt;
    }
    const bool isFirst = at_ == 0;
    if (isFirst) {
        if (!isPng(file_)) {
            return damaged(0, "no signature");
        }
        at_ = pngSignature.size();
    }
    const ByteView rest = file_.subspan(at_);
    if (rest.size() < frame) {
        return damaged(file_.size(), "the file ends");
    }
    const std::uint32_t length = bigEndian32(rest, 0);
    if (length > longestData || length > rest.size() - frame) {
        return damaged(at_, "a chunk longer than the file");
    }
    const PngChunk chunk{asText(rest.subspan(4, 4)), rest.subspan(8, length),
                         rest.first(frame + length)};
    if (!std::all_of(chunk.type.begin(), chunk.type.end(), isLetter) ||
        isFirst != (chunk.type == "IHDR")) {
        return damaged(at_, "no chunk where one belongs");
    }
    at_ += chunk.whole.size();
    ended_ = chunk.type == "IEND";
    return chunk;
}

bool isPng(ByteView file) { return asText(file).starts_with(pngSignature); }

bool hasSoundCrc(const PngChunk& chunk)
{
    return crcOf(chunk.whole.subspan(4, 4 + chunk.data.size())) ==
           bigEndian32(chunk.whole, chunk.whole.size() - 4);
}

std::uint32_t bigEndian32(ByteView bytes, std::size_t offset)
{
    std::uint32_t value = 0;
    for (const std::uint8_t byte : bytes.subspan(offset, 4)) {
        value = value << 8 | byte;
    }
    return value;
}

static void appendBigEndian32(Bytes& file, std::uint32_t value)
{
    for (const int shift : {24, 16, 8, 0}) {
        file.push_back(static_cast<std::uint8_t>(value >> shift));
    }
}

void appendChunk(Bytes& file, std::string_view type, ByteView data)
{
    appendBigEndian32(file, static_cast<std::uint32_t>(data.size()));
    const std::size_t start = file.size();
    file.insert(file.end(), type.begin(), type.end());
    file.insert(file.end(), data.begin(), data.end());
    appendBigEndian32(file, crcOf(ByteView(file).subspan(start)));
}

}  // namespace spile::picture

#pragma once

#include "core/base/bytes.hpp"
#include "core/base/result.hpp"

#include <cstddef>
#include <optional>
#include <string_view>

// Internal to core/picture: a PNG file as its chunks, undecoded.
namespace spile::picture {

inline constexpr std::string_view pngSignature = "\x89PNG\r\n\x1A\n";

struct PngChunk {
    std::string_view type;  // four letters
    ByteView data;
    ByteView whole;  // length, type, data and CRC
};

/// Walks the chunks of a PNG file from its IHDR to its IEND.
class PngChunks {
public:
    explicit PngChunks(ByteView file) : file_(file) {}

    /// Return the next chunk; none after the IEND. The CRC is not looked at.
    ///
    /// Errors    Damaged where the file ends early, does not start with an IHDR, or a chunk has an
    ///           impossible length or type.
    /// Source    W3C PNG, third edition, section 5.
    [[nodiscard]] Result<std::optional<PngChunk>> next();

private:
    ByteView file_;
    std::size_t at_ = 0;
    bool ended_ = false;
};

[[nodiscard]] bool isPng(ByteView file);
[[nodiscard]] bool hasSoundCrc(const PngChunk& chunk);
/// Return the four bytes at `offset`, most significant first. Requires them to be there.
[[nodiscard]] std::uint32_t bigEndian32(ByteView bytes, std::size_t offset);
/// Append a chunk with its length and CRC.
void appendChunk(Bytes& file, std::string_view type, ByteView data);

}  // namespace spile::picture

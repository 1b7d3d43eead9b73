#include "core/picture/header.hpp"

#include "core/picture/exif.hpp"
#include "core/picture/jpeg_segments.hpp"
#include "core/picture/png_chunks.hpp"

#include <algorithm>
#include <limits>
#include <string>

namespace spile::picture {

// SOF0 to SOF15 without DHT (C4), JPG (C8) and DAC (CC), which lie among them.
static bool isStartOfFrame(std::uint8_t code)
{
    return code >= 0xC0 && code <= 0xCF && code != 0xC4 && code != 0xC8 && code != 0xCC;
}

// Baseline, extended and progressive, by Huffman or arithmetic coding.
static bool isDecodable(std::uint8_t startOfFrame)
{
    return startOfFrame <= 0xC2 || startOfFrame == 0xC9 || startOfFrame == 0xCA;
}

static auto unsupportedJpeg(std::string value)
{
    return fail(ErrorCode::Unsupported, "JPEG file", std::move(value),
                "baseline or progressive, 8 bits, grey or colour");
}

static Result<void> readFrameHeader(const JpegSegment& segment, Header& header)
{
    const ByteView frame = segment.payload;
    if (!isDecodable(segment.marker)) {
        return unsupportedJpeg("coding process " + std::to_string(segment.marker - 0xC0));
    }
    if (frame.size() < 6) {
        return fail(ErrorCode::Damaged, "JPEG file", "frame header too short", "a whole JPEG file");
    }
    if (frame[0] != 8) {
        return unsupportedJpeg(std::to_string(frame[0]) + " bits");
    }
    if (frame[5] != 1 && frame[5] != 3) {
        return unsupportedJpeg(std::to_string(frame[5]) + " components");
    }
    header.height = frame[1] << 8 | frame[2];
    header.width = frame[3] << 8 | frame[4];
    return {};
}

static Result<Header> readJpegHeader(ByteView bytes)
{
    Header header;
    bool hasExif = false;
    JpegSegments segments(bytes);
    for (;;) {
        auto segment = segments.next();
        if (!segment) {
            return passOn(segment);
        }
        if (!*segment || (*segment)->marker == marker::sos) {
            break;
        }
        const auto exif = exifOf(**segment);
        if (exif && !hasExif) {
            hasExif = true;
            header.orientation = orientationOf(*exif);
        }
        if (isStartOfFrame((*segment)->marker)) {
            if (auto read = readFrameHeader(**segment, header); !read) {
                return passOn(read);
            }
        }
    }
    return header;
}

static Result<Header> readPngHeader(ByteView bytes)
{
    Header header;
    header.format = FileFormat::Png;
    PngChunks chunks(bytes);
    auto first = chunks.next();
    if (!first) {
        return passOn(first);
    }
    const PngChunk& ihdr = **first;
    if (ihdr.data.size() != 13 || !hasSoundCrc(ihdr)) {
        return fail(ErrorCode::Damaged, "PNG file", "header chunk", "a whole PNG file");
    }
    constexpr std::uint32_t most = std::numeric_limits<int>::max();
    const std::uint32_t width = bigEndian32(ihdr.data, 0);
    const std::uint32_t height = bigEndian32(ihdr.data, 4);
    if (width > most || height > most) {
        return fail(ErrorCode::Damaged, "PNG file",
                    std::to_string(width) + " x " + std::to_string(height), "a whole PNG file");
    }
    header.width = static_cast<int>(width);
    header.height = static_cast<int>(height);
    // EXIF may follow the pixels. A file that ends before is the decoder's to report.
    for (auto chunk = chunks.next(); chunk && *chunk; chunk = chunks.next()) {
        if ((*chunk)->type == "eXIf" && hasSoundCrc(**chunk)) {
            header.orientation = orientationOf((*chunk)->data);
            break;
        }
    }
    return header;
}

static Result<void> checkSize(const Header& header, const Limits& limits)
{
    const std::string size = std::to_string(header.width) + " x " + std::to_string(header.height);
    if (header.width <= 0 || header.height <= 0) {
        return fail(ErrorCode::Damaged, "picture size", size, "a picture with pixels");
    }
    const std::uint64_t pixels =
        static_cast<std::uint64_t>(header.width) * static_cast<std::uint64_t>(header.height);
    if (header.width > limits.side || header.height > limits.side || pixels > limits.pixels) {
        return fail(ErrorCode::TooLarge, "picture size", size,
                    "sides up to " + std::to_string(limits.side) + ", up to " +
                        std::to_string(limits.pixels) + " pixels");
    }
    return {};
}

// What `bytes` seem to be, for the one who has to convert them.
static std::string kindOf(ByteView bytes)
{
    if (bytes.empty()) {
        return "empty file";
    }
    if (bytes.size() >= 12 && asText(bytes.subspan(4, 4)) == "ftyp") {  // ISO/IEC 14496-12
        const auto brand = asText(bytes.subspan(8, 4));
        return isUtf8(brand) ? std::string(brand) : toHex(bytes.subspan(8, 4));
    }
    return "starts with " + toHex(bytes.first(std::min<std::size_t>(bytes.size(), 4)));
}

Result<Header> readHeader(ByteView bytes, const Limits& limits)
{
    if (bytes.size() > limits.bytes) {
        return fail(ErrorCode::TooLarge, "picture file", std::to_string(bytes.size()) + " bytes",
                    "up to " + std::to_string(limits.bytes) + " bytes");
    }
    if (!isJpeg(bytes) && !isPng(bytes)) {
        return fail(ErrorCode::Unsupported, "picture file", kindOf(bytes), "a JPEG or PNG file");
    }
    auto header = isJpeg(bytes) ? readJpegHeader(bytes) : readPngHeader(bytes);
    if (!header) {
        return header;
    }
    if (auto checked = checkSize(*header, limits); !checked) {
        return passOn(checked);
    }
    return header;
}

}  // namespace spile::picture

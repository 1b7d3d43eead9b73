#include "core/picture/metadata.hpp"

#include "core/picture/exif.hpp"
#include "core/picture/jpeg_segments.hpp"
#include "core/picture/png_chunks.hpp"

#include <algorithm>
#include <array>
#include <string>
#include <string_view>

namespace spile::picture {

using namespace std::string_view_literals;

static void appendSegment(Bytes& file, std::uint8_t code, ByteView payload)
{
    const std::size_t length = payload.size() + 2;
    file.insert(file.end(), {0xFF, code, static_cast<std::uint8_t>(length >> 8),
                             static_cast<std::uint8_t>(length & 0xFF)});
    file.insert(file.end(), payload.begin(), payload.end());
}

// JFIF says how its pixels are to be scaled and may hold a small copy of the picture, perhaps from
// before it was cropped: the last two bytes of the fixed part are that copy's size.
static void appendJfif(Bytes& file, ByteView payload)
{
    constexpr std::size_t fixedPart = 14;
    if (payload.size() < fixedPart) {
        return;
    }
    Bytes plain(payload.begin(), payload.begin() + fixedPart);
    plain[fixedPart - 2] = 0;
    plain[fixedPart - 1] = 0;
    appendSegment(file, marker::app0, plain);
}

// What the pixels need: tables, frames and scans. SOF, DHT and DAC; SOS, DQT, DNL and DRI.
static bool isOfPixels(std::uint8_t code)
{
    return (code >= 0xC0 && code <= 0xCF && code != 0xC8) || (code >= 0xDA && code <= 0xDD);
}

static void appendWanted(Bytes& file, const JpegSegment& segment)
{
    constexpr std::size_t adobePart = 12;  // name, version, flags, transform
    if (isOfPixels(segment.marker)) {
        appendSegment(file, segment.marker, segment.payload);
        file.insert(file.end(), segment.scan.begin(), segment.scan.end());
    } else if (segment.marker == marker::app0 && startsWith(segment.payload, "JFIF\0"sv)) {
        appendJfif(file, segment.payload);
    } else if (segment.marker == marker::app2 && startsWith(segment.payload, "ICC_PROFILE\0"sv)) {
        appendSegment(file, segment.marker, segment.payload);
    } else if (segment.marker == marker::app14 && startsWith(segment.payload, "Adobe"sv) &&
               segment.payload.size() >= adobePart) {
        appendSegment(file, segment.marker, segment.payload.first(adobePart));
    }
}

static Bytes exifPayload(int orientation)
{
    constexpr std::string_view name = "Exif\0\0"sv;
    Bytes payload(name.begin(), name.end());
    const Bytes tiff = tiffWithOrientation(orientation);
    payload.insert(payload.end(), tiff.begin(), tiff.end());
    return payload;
}

static Result<Bytes> stripJpeg(ByteView bytes, int orientation)
{
    Bytes file = {0xFF, marker::soi};
    file.reserve(bytes.size() + 64);
    bool hasOrientation = orientation == 1;
    bool hasPixels = false;
    JpegSegments segments(bytes);
    auto segment = segments.next();
    for (; segment && *segment; segment = segments.next()) {
        // JFIF wants to be the first segment, EXIF does too: it follows JFIF, as cameras write it.
        if (!hasOrientation && (*segment)->marker != marker::app0) {
            appendSegment(file, marker::app1, exifPayload(orientation));
            hasOrientation = true;
        }
        hasPixels = hasPixels || (*segment)->marker == marker::sos;
        appendWanted(file, **segment);
    }
    if (!segment) {
        return passOn(segment);
    }
    if (!hasPixels) {
        return fail(ErrorCode::Damaged, "JPEG file", "no pixels", "a whole JPEG file");
    }
    file.insert(file.end(), {0xFF, marker::eoi});
    return file;
}

static bool isCritical(const PngChunk& chunk) { return (chunk.type[0] & 0x20) == 0; }

static bool isWanted(const PngChunk& chunk)
{
    static constexpr std::array wanted = {"IHDR"sv, "PLTE"sv, "IDAT"sv, "IEND"sv,
                                          "tRNS"sv, "gAMA"sv, "cHRM"sv, "sRGB"sv,
                                          "iCCP"sv, "sBIT"sv, "bKGD"sv, "pHYs"sv};
    return std::find(wanted.begin(), wanted.end(), chunk.type) != wanted.end();
}

static Result<void> checkChunk(const PngChunk& chunk)
{
    if (!hasSoundCrc(chunk)) {
        return fail(ErrorCode::Damaged, "PNG file", "checksum of chunk " + std::string(chunk.type),
                    "a whole PNG file");
    }
    if (isCritical(chunk) && !isWanted(chunk)) {
        return fail(ErrorCode::Unsupported, "PNG file", "chunk " + std::string(chunk.type),
                    "a plain PNG file");
    }
    return {};
}

static Result<Bytes> stripPng(ByteView bytes, int orientation)
{
    Bytes file(pngSignature.begin(), pngSignature.end());
    file.reserve(bytes.size() + 64);
    bool hasPixels = false;
    PngChunks chunks(bytes);
    auto chunk = chunks.next();
    for (; chunk && *chunk; chunk = chunks.next()) {
        const PngChunk& current = **chunk;
        if (auto sound = checkChunk(current); !sound) {
            return passOn(sound);
        }
        hasPixels = hasPixels || current.type == "IDAT";
        if (isWanted(current)) {
            file.insert(file.end(), current.whole.begin(), current.whole.end());
        }
        if (current.type == "IHDR" && orientation != 1) {
            appendChunk(file, "eXIf", tiffWithOrientation(orientation));
        }
    }
    if (!chunk) {
        return passOn(chunk);
    }
    if (!hasPixels) {
        return fail(ErrorCode::Damaged, "PNG file", "no pixels", "a whole PNG file");
    }
    return file;
}

Result<Bytes> stripMetadata(ByteView bytes, const Limits& limits)
{
    auto header = readHeader(bytes, limits);
    if (!header) {
        return passOn(header);
    }
    return header->format == FileFormat::Jpeg ? stripJpeg(bytes, header->orientation)
                                              : stripPng(bytes, header->orientation);
}

}  // namespace spile::picture

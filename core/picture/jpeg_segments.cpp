#include "core/picture/jpeg_segments.hpp"

#include <algorithm>
#include <string>

namespace spile::picture {

using namespace std::string_view_literals;

static constexpr std::string_view exifName = "Exif\0\0"sv;

static auto damaged(std::size_t at, std::string why)
{
    return fail(ErrorCode::Damaged, "JPEG file", std::move(why) + " at byte " + std::to_string(at),
                "a whole JPEG file");
}

// Within a scan, FF 00 is a byte of data, FF D0 to D7 are restarts and FF FF is filling.
static bool endsScan(std::uint8_t afterFf)
{
    return afterFf != 0x00 && afterFf != 0xFF && (afterFf < 0xD0 || afterFf > 0xD7);
}

// Markers without a length, which have no place between segments.
static bool standsAlone(std::uint8_t code)
{
    return code <= 0x01 || (code >= 0xD0 && code <= marker::soi);
}

ByteView JpegSegments::takeScan()
{
    const std::size_t start = at_;
    while (at_ < file_.size() &&
           (file_[at_] != 0xFF || at_ + 1 == file_.size() || !endsScan(file_[at_ + 1]))) {
        ++at_;
    }
    return file_.subspan(start, at_ - start);
}

Result<std::optional<JpegSegment>> JpegSegments::next()
{
    if (at_ == 0) {
        if (!isJpeg(file_)) {
            return damaged(0, "no start of image");
        }
        at_ = 2;
    }
    if (at_ < file_.size() && file_[at_] != 0xFF) {
        return damaged(at_, "no marker");
    }
    while (at_ < file_.size() && file_[at_] == 0xFF) {
        ++at_;
    }
    if (at_ == file_.size()) {
        return damaged(at_, "the file ends");
    }
    JpegSegment segment;
    segment.marker = file_[at_++];
    if (segment.marker == marker::eoi) {
        return std::nullopt;
    }
    if (standsAlone(segment.marker)) {
        return damaged(at_ - 1, "a marker out of place");
    }
    if (file_.size() - at_ < 2) {
        return damaged(file_.size(), "the file ends");
    }
    const std::size_t length = std::size_t{file_[at_]} << 8 | file_[at_ + 1];
    if (length < 2 || length > file_.size() - at_) {
        return damaged(at_, "a segment of impossible length");
    }
    segment.payload = file_.subspan(at_ + 2, length - 2);
    at_ += length;
    if (segment.marker == marker::sos) {
        segment.scan = takeScan();
    }
    return segment;
}

bool isJpeg(ByteView file) { return startsWith(file, "\xFF\xD8\xFF"); }

bool startsWith(ByteView bytes, std::string_view text) { return asText(bytes).starts_with(text); }

std::optional<ByteView> exifOf(const JpegSegment& segment)
{
    if (segment.marker != marker::app1 || !startsWith(segment.payload, exifName)) {
        return std::nullopt;
    }
    return segment.payload.subspan(exifName.size());
}

}  // namespace spile::picture

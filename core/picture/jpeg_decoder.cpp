#include "core/picture/decoders.hpp"
#include "core/picture/jpeg_errors.hpp"
#include "core/picture/reducer.hpp"
#include "core/picture/transform.hpp"

#include <algorithm>
#include <limits>
#include <string>
#include <utility>

namespace spile::picture {

namespace {

// Owns libjpeg's decompressor. Each step answers whether libjpeg went through with it.
class JpegDecompressor {
public:
    explicit JpegDecompressor(const Limits& limits) : scanLimit_(limits.scans)
    {
        info_.err = &errors_.manager;
        isMade_ = guarded(errors_, [this] { jpeg_create_decompress(&info_); });
        if (isMade_) {
            constexpr auto most = std::uint64_t{std::numeric_limits<long>::max()};
            info_.mem->max_memory_to_use =
                static_cast<long>(std::clamp<std::uint64_t>(limits.workingBytes, 1, most));
            progress_.progress_monitor = watchScans;
            info_.progress = &progress_;
            info_.client_data = this;
        }
    }
    ~JpegDecompressor() { jpeg_destroy_decompress(&info_); }
    JpegDecompressor(const JpegDecompressor&) = delete;
    JpegDecompressor& operator=(const JpegDecompressor&) = delete;

    // Read up to the first row of pixels, in steps of `denominator` source pixels.
    [[nodiscard]] bool start(ByteView bytes, PixelFormat format, unsigned denominator)
    {
        return isMade_ && guarded(errors_, [&] {
                   jpeg_mem_src(&info_, bytes.data(), bytes.size());
                   jpeg_read_header(&info_, TRUE);
                   info_.out_color_space = format == PixelFormat::Grey8 ? JCS_GRAYSCALE : JCS_RGB;
                   info_.scale_num = 1;
                   info_.scale_denom = denominator;
                   jpeg_start_decompress(&info_);
               });
    }
    [[nodiscard]] bool readRow(std::span<std::uint8_t> row)
    {
        JSAMPROW start = row.data();
        return guarded(errors_, [&] { jpeg_read_scanlines(&info_, &start, 1); });
    }
    // Read on to the end of the file, which must be there.
    [[nodiscard]] bool finish()
    {
        return guarded(errors_, [&] { jpeg_finish_decompress(&info_); });
    }

    [[nodiscard]] bool isOf(const Header& header) const
    {
        return info_.image_width == static_cast<JDIMENSION>(header.width) &&
               info_.image_height == static_cast<JDIMENSION>(header.height);
    }
    [[nodiscard]] int width() const { return static_cast<int>(info_.output_width); }
    [[nodiscard]] int height() const { return static_cast<int>(info_.output_height); }
    [[nodiscard]] tl::unexpected<Error> failure() const
    {
        return tl::unexpected<Error>(errors_.asError());
    }

private:
    // A scan costs a pass over the whole picture but can be a few bytes long.
    static void watchScans(j_common_ptr common)
    {
        const auto* info = reinterpret_cast<j_decompress_ptr>(common);
        auto* self = static_cast<JpegDecompressor*>(common->client_data);
        if (info->input_scan_number > self->scanLimit_) {
            self->errors_.code = ErrorCode::TooLarge;
            std::snprintf(self->errors_.message.data(), self->errors_.message.size(),
                          "more than %d scans", self->scanLimit_);
            std::longjmp(self->errors_.jump, 1);
        }
    }

    JpegErrors errors_;
    jpeg_decompress_struct info_{};
    jpeg_progress_mgr progress_{};
    int scanLimit_;
    bool isMade_ = false;
};

}  // namespace

// libjpeg leaves out detail for little cost in steps of 2; the rest is averaged.
static unsigned denominatorFor(const Header& header, int maxSide)
{
    const int longer = std::max(header.width, header.height);
    for (const int denominator : {8, 4, 2}) {
        if (longer / denominator >= maxSide) {
            return static_cast<unsigned>(denominator);
        }
    }
    return 1;
}

Result<Image> decodeJpeg(ByteView bytes, const Header& header, const DecodeOptions& options)
{
    JpegDecompressor decompressor(options.limits);
    if (!decompressor.start(bytes, options.format, denominatorFor(header, options.maxSide))) {
        return decompressor.failure();
    }
    if (!decompressor.isOf(header)) {
        return fail(ErrorCode::Damaged, "JPEG file", "more than one size", "a whole JPEG file");
    }
    const Size size = fitted({header.width, header.height}, options.maxSide);
    Reducer reducer(decompressor.width(), decompressor.height(),
                    blankImage(size.width, size.height, options.format));
    std::vector<std::uint8_t> row(pixelBytes(decompressor.width(), 1, options.format));
    for (int y = 0; y < decompressor.height(); ++y) {
        if (!decompressor.readRow(row)) {
            return decompressor.failure();
        }
        reducer.addRow(row);
    }
    if (!decompressor.finish()) {
        return decompressor.failure();
    }
    return reducer.take();
}

}  // namespace spile::picture

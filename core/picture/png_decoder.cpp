#include "core/picture/decoders.hpp"
#include "core/picture/png_errors.hpp"
#include "core/picture/reducer.hpp"
#include "core/picture/transform.hpp"

#include <algorithm>
#include <string>
#include <utility>

namespace spile::picture {

namespace {

// Owns libpng's reader. Each step answers whether libpng went through with it.
class PngReader {
public:
    PngReader()
        : png_(png_create_read_struct(PNG_LIBPNG_VER_STRING, &errors_, PngErrors::giveUp,
                                      PngErrors::ignore)),
          info_(png_ == nullptr ? nullptr : png_create_info_struct(png_))
    {
    }
    ~PngReader() { png_destroy_read_struct(&png_, &info_, nullptr); }
    PngReader(const PngReader&) = delete;
    PngReader& operator=(const PngReader&) = delete;

    // Read up to the first row and ask for 8 bits a channel, grey or colour, with alpha if any.
    [[nodiscard]] bool start(ByteView bytes)
    {
        rest_ = bytes;
        return info_ != nullptr && guarded(errors_, [this] {
                   png_set_read_fn(png_, this, readBytes);
                   png_set_user_limits(png_, longestSide, longestSide);
                   png_set_chunk_malloc_max(png_, png_alloc_size_t{4} << 20);
                   png_read_info(png_, info_);
                   png_set_expand(png_);
                   png_set_scale_16(png_);
                   passes_ = png_set_interlace_handling(png_);
                   png_read_update_info(png_, info_);
               });
    }
    [[nodiscard]] bool readRow(std::span<std::uint8_t> row)
    {
        return guarded(errors_, [&] { png_read_row(png_, row.data(), nullptr); });
    }
    // Read all rows at once, which an interlaced file asks for.
    [[nodiscard]] bool readRows(std::vector<png_bytep>& rows)
    {
        return guarded(errors_, [&] { png_read_image(png_, rows.data()); });
    }
    // Read on to the end of the file, which must be there.
    [[nodiscard]] bool finish()
    {
        return guarded(errors_, [this] { png_read_end(png_, nullptr); });
    }

    [[nodiscard]] bool isInterlaced() const { return passes_ > 1; }
    [[nodiscard]] std::size_t channels() const { return png_get_channels(png_, info_); }
    [[nodiscard]] std::size_t rowBytes() const { return png_get_rowbytes(png_, info_); }
    [[nodiscard]] tl::unexpected<Error> failure() const
    {
        return tl::unexpected<Error>(errors_.asError(ErrorCode::Damaged));
    }

private:
    static void readBytes(png_structp png, png_bytep into, std::size_t count)
    {
        auto* self = static_cast<PngReader*>(png_get_io_ptr(png));
        if (count > self->rest_.size()) {
            png_error(png, "the file ends");
        }
        std::copy_n(self->rest_.begin(), count, into);
        self->rest_ = self->rest_.subspan(count);
    }

    PngErrors errors_;
    png_structp png_;
    png_infop info_;
    ByteView rest_;
    int passes_ = 1;
};

}  // namespace

static std::uint8_t onWhite(std::uint8_t level, std::uint8_t alpha)
{
    return static_cast<std::uint8_t>((level * alpha + 255 * (255 - alpha) + 127) / 255);
}

// Bring a row of 1 to 4 channels (grey, grey and alpha, colour, colour and alpha) to `format`.
static void convertRow(std::span<const std::uint8_t> from, std::size_t channels, PixelFormat format,
                       std::span<std::uint8_t> to)
{
    const bool hasAlpha = channels == 2 || channels == 4;
    const bool isColour = channels >= 3;
    auto out = to.begin();
    for (std::size_t i = 0; i + channels <= from.size(); i += channels) {
        const std::uint8_t alpha = hasAlpha ? from[i + channels - 1] : std::uint8_t{255};
        const std::uint8_t red = onWhite(from[i], alpha);
        const std::uint8_t green = isColour ? onWhite(from[i + 1], alpha) : red;
        const std::uint8_t blue = isColour ? onWhite(from[i + 2], alpha) : red;
        if (format == PixelFormat::Grey8) {
            *out++ = luminance(red, green, blue);
        } else {
            *out++ = red;
            *out++ = green;
            *out++ = blue;
        }
    }
}

// Read all rows into `pixels`, if they may take so much.
static Result<void> readAllRows(PngReader& reader, const Header& header, const Limits& limits,
                                std::vector<std::uint8_t>& pixels)
{
    const auto height = static_cast<std::size_t>(header.height);
    const std::size_t needed = reader.rowBytes() * height;
    if (needed > limits.workingBytes) {
        return fail(ErrorCode::TooLarge, "interlaced PNG", std::to_string(needed) + " bytes",
                    "up to " + std::to_string(limits.workingBytes) + " bytes, or not interlaced");
    }
    pixels.resize(needed);
    std::vector<png_bytep> rows(height);
    for (std::size_t y = 0; y < height; ++y) {
        rows[y] = pixels.data() + y * reader.rowBytes();
    }
    if (!reader.readRows(rows)) {
        return reader.failure();
    }
    return {};
}

Result<Image> decodePng(ByteView bytes, const Header& header, const DecodeOptions& options)
{
    PngReader reader;
    if (!reader.start(bytes)) {
        return reader.failure();
    }
    std::vector<std::uint8_t> raw(reader.rowBytes());  // one row, or all of an interlaced file
    if (reader.isInterlaced()) {
        if (auto read = readAllRows(reader, header, options.limits, raw); !read) {
            return passOn(read);
        }
    }
    const Size size = fitted({header.width, header.height}, options.maxSide);
    Reducer reducer(header.width, header.height,
                    blankImage(size.width, size.height, options.format));
    std::vector<std::uint8_t> row(pixelBytes(header.width, 1, options.format));
    std::size_t start = 0;
    for (int y = 0; y < header.height; ++y) {
        if (reader.isInterlaced()) {
            start = static_cast<std::size_t>(y) * reader.rowBytes();
        } else if (!reader.readRow(raw)) {
            return reader.failure();
        }
        convertRow(std::span(raw).subspan(start, reader.rowBytes()), reader.channels(),
                   options.format, row);
        reducer.addRow(row);
    }
    if (!reader.finish()) {
        return reader.failure();
    }
    return reducer.take();
}

}  // namespace spile::picture

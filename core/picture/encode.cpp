#include "core/picture/encode.hpp"

#include "core/picture/jpeg_errors.hpp"
#include "core/picture/png_errors.hpp"
#include "core/picture/transform.hpp"

#include <cstdlib>
#include <new>
#include <string>

namespace spile::picture {

namespace {

class JpegCompressor {
public:
    JpegCompressor()
    {
        info_.err = &errors_.manager;
        isMade_ = guarded(errors_, [this] { jpeg_create_compress(&info_); });
    }
    ~JpegCompressor()
    {
        jpeg_destroy_compress(&info_);
        std::free(file_);  // libjpeg made it
    }
    JpegCompressor(const JpegCompressor&) = delete;
    JpegCompressor& operator=(const JpegCompressor&) = delete;

    [[nodiscard]] bool write(const Image& image, int quality)
    {
        return isMade_ && guarded(errors_, [&] {
                   jpeg_mem_dest(&info_, &file_, &fileSize_);
                   const bool isGrey = image.format == PixelFormat::Grey8;
                   info_.image_width = static_cast<JDIMENSION>(image.width);
                   info_.image_height = static_cast<JDIMENSION>(image.height);
                   info_.input_components = isGrey ? 1 : 3;
                   info_.in_color_space = isGrey ? JCS_GRAYSCALE : JCS_RGB;
                   jpeg_set_defaults(&info_);
                   jpeg_set_quality(&info_, quality, TRUE);
                   jpeg_start_compress(&info_, TRUE);
                   while (info_.next_scanline < info_.image_height) {
                       // The C interface lacks a const that it keeps.
                       auto* row = const_cast<JSAMPROW>(
                           image.pixels.data() + pixelBytes(image.width,
                                                            static_cast<int>(info_.next_scanline),
                                                            image.format));
                       jpeg_write_scanlines(&info_, &row, 1);
                   }
                   jpeg_finish_compress(&info_);
               });
    }
    [[nodiscard]] ByteView file() const { return {file_, fileSize_}; }
    [[nodiscard]] const char* message() const { return errors_.message.data(); }

private:
    JpegErrors errors_;
    jpeg_compress_struct info_{};
    unsigned char* file_ = nullptr;
    unsigned long fileSize_ = 0;
    bool isMade_ = false;
};

class PngWriter {
public:
    PngWriter()
        : png_(png_create_write_struct(PNG_LIBPNG_VER_STRING, &errors_, PngErrors::giveUp,
                                       PngErrors::ignore)),
          info_(png_ == nullptr ? nullptr : png_create_info_struct(png_))
    {
    }
    ~PngWriter() { png_destroy_write_struct(&png_, &info_); }
    PngWriter(const PngWriter&) = delete;
    PngWriter& operator=(const PngWriter&) = delete;

    [[nodiscard]] bool write(const Image& image)
    {
        return info_ != nullptr && guarded(errors_, [&] {
                   png_set_write_fn(png_, &file_, appendBytes, nullptr);
                   png_set_IHDR(png_, info_, static_cast<png_uint_32>(image.width),
                                static_cast<png_uint_32>(image.height), 8,
                                image.format == PixelFormat::Grey8 ? PNG_COLOR_TYPE_GRAY
                                                                   : PNG_COLOR_TYPE_RGB,
                                PNG_INTERLACE_NONE, PNG_COMPRESSION_TYPE_DEFAULT,
                                PNG_FILTER_TYPE_DEFAULT);
                   png_write_info(png_, info_);
                   for (int y = 0; y < image.height; ++y) {
                       png_write_row(
                           png_, image.pixels.data() + pixelBytes(image.width, y, image.format));
                   }
                   png_write_end(png_, nullptr);
               });
    }
    [[nodiscard]] Bytes takeFile() { return std::move(file_); }
    [[nodiscard]] const char* message() const { return errors_.message.data(); }

private:
    static bool tryAppend(Bytes& file, ByteView bytes) noexcept
    {
        try {
            file.insert(file.end(), bytes.begin(), bytes.end());
            return true;
        } catch (const std::bad_alloc&) {  // must not pass through C
            return false;
        }
    }
    static void appendBytes(png_structp png, png_bytep bytes, std::size_t count)
    {
        if (!tryAppend(*static_cast<Bytes*>(png_get_io_ptr(png)), {bytes, count})) {
            png_error(png, "out of memory");
        }
    }

    PngErrors errors_;
    png_structp png_;
    png_infop info_;
    Bytes file_;
};

}  // namespace

Result<Bytes> encodeJpeg(const Image& image, int quality)
{
    if (quality < 1 || quality > 100) {
        return fail(ErrorCode::OutOfRange, "JPEG quality", std::to_string(quality), "1 to 100");
    }
    if (auto sound = checkSound(image); !sound) {
        return passOn(sound);
    }
    JpegCompressor compressor;
    if (!compressor.write(image, quality)) {
        return fail(ErrorCode::Storage, "JPEG file", compressor.message(), "a smaller image");
    }
    return Bytes(compressor.file().begin(), compressor.file().end());
}

Result<Bytes> encodePng(const Image& image)
{
    if (auto sound = checkSound(image); !sound) {
        return passOn(sound);
    }
    PngWriter writer;
    if (!writer.write(image)) {
        return fail(ErrorCode::Storage, "PNG file", writer.message(), "a smaller image");
    }
    return writer.takeFile();
}

}  // namespace spile::picture

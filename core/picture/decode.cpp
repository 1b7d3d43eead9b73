#include "core/picture/decode.hpp"

#include "core/picture/decoders.hpp"
#include "core/picture/transform.hpp"

#include <string>
#include <utility>

namespace spile::picture {

Result<Image> decode(ByteView bytes, const DecodeOptions& options)
{
    if (options.maxSide < 1 || options.maxSide > longestSide) {
        return fail(ErrorCode::OutOfRange, "longest side", std::to_string(options.maxSide),
                    "1 to " + std::to_string(longestSide));
    }
    auto header = readHeader(bytes, options.limits);
    if (!header) {
        return passOn(header);
    }
    auto image = header->format == FileFormat::Jpeg ? decodeJpeg(bytes, *header, options)
                                                    : decodePng(bytes, *header, options);
    if (!image) {
        return image;
    }
    return oriented(std::move(*image), header->orientation);
}

}  // namespace spile::picture

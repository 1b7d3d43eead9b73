// Sources, both from memory: ITU-R BT.601, luminance 0.299 R + 0.587 G + 0.114 B; W3C PNG,
// section 11.2.5: the IEND chunk is empty, and its CRC, as every PNG file ends with it, is
// AE 42 60 82.
#include "core/picture/png_chunks.hpp"
#include "core/picture/transform.hpp"

#include <gtest/gtest.h>

namespace spile::picture {

TEST(ToGrey, MatchesRec601)
{
    // 255 times each weight: 76.245, 149.685, 29.07; and for yellow 225.93.
    const Image colours{4, 1, PixelFormat::Rgb8, {255, 0, 0, 0, 255, 0, 0, 0, 255, 255, 255, 0}};
    EXPECT_EQ(toGrey(colours).pixels, (std::vector<std::uint8_t>{76, 150, 29, 226}));
}

TEST(PngChunk, MatchesTheEndOfEveryPngFile)
{
    Bytes file;
    appendChunk(file, "IEND", {});
    EXPECT_EQ(toHex(file), "0000000049454e44ae426082");
}

}  // namespace spile::picture

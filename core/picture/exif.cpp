#include "core/picture/exif.hpp"

#include <cstddef>

namespace spile::picture {

static constexpr std::uint32_t orientationTag = 0x0112;
static constexpr std::uint32_t typeShort = 3;
static constexpr std::size_t entrySize = 12;

// Numbers in the byte order that the block states; none beyond its end.
class TiffReader {
public:
    explicit TiffReader(ByteView bytes) : bytes_(bytes) {}

    [[nodiscard]] bool isSound() const
    {
        return bytes_.size() >= 8 && bytes_[0] == bytes_[1] &&
               (bytes_[0] == 'I' || bytes_[0] == 'M') && number(2, 2) == 42;
    }
    [[nodiscard]] bool has(std::size_t offset, std::size_t count) const
    {
        return offset <= bytes_.size() && count <= bytes_.size() - offset;
    }
    /// Requires has(offset, count).
    [[nodiscard]] std::uint32_t number(std::size_t offset, std::size_t count) const
    {
        std::uint32_t value = 0;
        for (std::size_t i = 0; i < count; ++i) {
            const std::size_t at = bytes_[0] == 'M' ? i : count - 1 - i;
            value = value << 8 | bytes_[offset + at];
        }
        return value;
    }

private:
    ByteView bytes_;
};

int orientationOf(ByteView tiff)
{
    const TiffReader reader(tiff);
    if (!reader.isSound()) {
        return 1;
    }
    const std::size_t directory = reader.number(4, 4);
    if (!reader.has(directory, 2)) {
        return 1;
    }
    const std::size_t count = reader.number(directory, 2);
    for (std::size_t i = 0; i < count; ++i) {
        const std::size_t entry = directory + 2 + i * entrySize;
        if (!reader.has(entry, entrySize)) {
            return 1;
        }
        if (reader.number(entry, 2) == orientationTag && reader.number(entry + 2, 2) == typeShort) {
            const std::uint32_t value = reader.number(entry + 8, 2);
            return value >= 1 && value <= 8 ? static_cast<int>(value) : 1;
        }
    }
    return 1;
}

Bytes tiffWithOrientation(int orientation)
{
    return {'M', 'M',
            0,   42,
            0,   0,
            0,   8,  // first directory at 8
            0,   1,  // one entry
            1,   0x12,
            0,   3,
            0,   0,
            0,   1,  // orientation, one SHORT
            0,   static_cast<std::uint8_t>(orientation),
            0,   0,  // left-justified
            0,   0,
            0,   0};  // no further directory
}

}  // namespace spile::picture

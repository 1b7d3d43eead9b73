// Views of any size, stride and content, frame after frame: no crash and nothing out of bounds, for
// the plane ends with its last pixel. And codewords of any kind: what is corrected is a valid word.
#include "core/scan/label_bits.hpp"
#include "core/scan/label_decoder.hpp"
#include "core/scan/live_reader.hpp"
#include "core/scan/reed_solomon.hpp"
#include "tests/fuzz/driver.hpp"

#include <algorithm>
#include <cstdlib>
#include <iostream>
#include <vector>

namespace {

using namespace spile;
using namespace spile::scan;

// The input, eaten from the front; zeros when it is empty.
class Bytes {
public:
    Bytes(const std::uint8_t* data, std::size_t size) : rest_(data, size) {}

    std::uint8_t byte()
    {
        if (rest_.empty()) {
            return 0;
        }
        const std::uint8_t first = rest_.front();
        rest_ = rest_.subspan(1);
        return first;
    }

private:
    std::span<const std::uint8_t> rest_;
};

void stop(std::string_view why)
{
    std::cerr << why << '\n';
    std::abort();
}

// A label with each module's bit from the input turned where it says so, or the input over and
// over.
std::uint8_t levelAt(int x, int y, unsigned pixels, const std::vector<std::uint8_t>& bytes)
{
    static const auto modules = label::draw(*label::encode("S1K4TN7K2QFM"), 2);
    const std::uint8_t byte = bytes[static_cast<std::size_t>(y * 31 + x) % bytes.size()];
    const int column = x / static_cast<int>(pixels) - 4;
    const int row = y / static_cast<int>(pixels) - 4;
    const bool isLabel = column >= 0 && row >= 0 && column < label::size && row < label::size;
    if (pixels < 2 || !isLabel) {
        return byte;
    }
    const bool dark = modules[static_cast<std::size_t>(row * label::size + column)];
    return static_cast<std::uint8_t>((dark ? 40 : 200) + byte % 32U - 16);
}

void readView(Bytes& bytes)
{
    static LiveReader live;
    const int width = 1 + bytes.byte() + (bytes.byte() % 4 == 0 ? 256 : 0);
    const int height = 1 + bytes.byte();
    const int pixelStride = 1 + bytes.byte() % 3;
    const int rowStride = width * pixelStride + bytes.byte() % 5;
    const unsigned pixels = 1 + bytes.byte() % 6U;
    std::vector<std::uint8_t> content;
    for (std::size_t i = 0; i < 64; ++i) {
        content.push_back(bytes.byte());
    }
    const auto size =
        static_cast<std::size_t>(rowStride * (height - 1) + (width - 1) * pixelStride + 1);
    std::vector<std::uint8_t> plane(size);
    for (int y = 0; y < height; ++y) {
        for (int x = 0; x < width; ++x) {
            plane[static_cast<std::size_t>(y * rowStride + x * pixelStride)] =
                levelAt(x, y, pixels, content);
        }
    }
    const picture::LuminanceView view{plane.data(), width, height, rowStride, pixelStride};
    (void)live.look(view);
    switch (bytes.byte() % 4U) {
        case 0:
            if (!readPicture(view)) {
                stop("a sound view is refused");
            }
            break;
        case 1:
            (void)readFrame(view);
            break;
        default:
            break;
    }
}

void correctWord(Bytes& bytes)
{
    label::Word word = *label::encode("S1K4TN7K2QFM");
    std::vector<std::uint8_t> erased;
    for (std::uint8_t i = 0; i < label::codewords; ++i) {
        const std::uint8_t byte = bytes.byte();
        if (byte % 3U == 0) {
            word[i] ^= byte;
        }
        if (byte % 7U == 0) {
            erased.push_back(i);
        }
    }
    const label::Word before = word;
    if (!correct(word, label::parityBytes, erased)) {
        if (word != before) {
            stop("changed, but not corrected");
        }
        return;
    }
    std::array<std::uint8_t, label::parityBytes> parity{};
    addParity(std::span(word).first<label::dataBytes>(), parity);
    if (!std::equal(parity.begin(), parity.end(), word.begin() + label::dataBytes)) {
        stop("corrected to what is no codeword");
    }
}

void correctSofts(Bytes& bytes)
{
    std::vector<float> softs;
    for (int i = 0; i < label::modules; ++i) {
        softs.push_back(static_cast<float>(bytes.byte()) / 85 - 1.5F);
    }
    if (label::correctLabel(softs)) {
        stop("noise is read");
    }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    Bytes bytes(data, size);
    switch (bytes.byte() % 4U) {
        case 0:
            correctWord(bytes);
            break;
        case 1:
            correctSofts(bytes);
            break;
        default:
            readView(bytes);
            break;
    }
    return 0;
}

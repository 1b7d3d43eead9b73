// Views of any size, stride and content, frame after frame: no crash and nothing out of bounds, for
// the plane ends with its last pixel. And codewords of any kind: what is corrected is a valid word.
#include "core/scan/label_bits.hpp"
#include "core/scan/label_decoder.hpp"
#include "core/scan/live_reader.hpp"
#include "core/scan/reed_solomon.hpp"
#include "tests/fuzz/input.hpp"

#include <algorithm>
#include <vector>

namespace {

using namespace spile;
using namespace spile::scan;
using fuzz::Input;
using fuzz::stop;

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

void readView(Input& input)
{
    static LiveReader live;
    const int width = 1 + input.byte() + (input.byte() % 4 == 0 ? 256 : 0);
    const int height = 1 + input.byte();
    const int pixelStride = 1 + input.byte() % 3;
    const int rowStride = width * pixelStride + input.byte() % 5;
    const unsigned pixels = 1 + input.byte() % 6U;
    std::vector<std::uint8_t> content;
    for (std::size_t i = 0; i < 64; ++i) {
        content.push_back(input.byte());
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
    switch (input.byte() % 4U) {
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

void correctWord(Input& input)
{
    label::Word word = *label::encode("S1K4TN7K2QFM");
    std::vector<std::uint8_t> erased;
    for (std::uint8_t i = 0; i < label::codewords; ++i) {
        const std::uint8_t byte = input.byte();
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

void correctSofts(Input& input)
{
    std::vector<float> softs;
    for (int i = 0; i < label::modules; ++i) {
        softs.push_back(static_cast<float>(input.byte()) / 85 - 1.5F);
    }
    if (label::correctLabel(softs)) {
        stop("noise is read");
    }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    Input input(data, size);
    switch (input.byte() % 4U) {
        case 0:
            correctWord(input);
            break;
        case 1:
            correctSofts(input);
            break;
        default:
            readView(input);
            break;
    }
    return 0;
}

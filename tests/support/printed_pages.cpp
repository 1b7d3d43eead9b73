#include "tests/support/printed_pages.hpp"

#include "tests/support/command.hpp"

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <set>

namespace spile::support {

namespace {

// A PGM file of 8 bits, as pdftoppm writes it.
picture::Image readPgm(const Path& file)
{
    std::ifstream in(file, std::ios::binary);
    std::string magic;
    int most = 0;
    picture::Image image;
    in >> magic >> image.width >> image.height >> most;
    in.get();
    image.pixels.assign(std::istreambuf_iterator<char>(in), {});
    const auto pixels = picture::pixelBytes(image.width, image.height, image.format);
    return magic == "P5" && most == 255 && image.pixels.size() == pixels ? image : picture::Image();
}

}  // namespace

std::vector<picture::Image> printed(const Path& file, int dotsPerInch)
{
    const Path folder = file.string() + "." + std::to_string(dotsPerInch);
    std::filesystem::create_directory(folder);
    const Ended ended = run(SPILE_PDFTOPPM, {"-gray", "-r", std::to_string(dotsPerInch),
                                             file.string(), (folder / "page").string()});
    std::set<Path> names;  // page-01.pgm before page-02.pgm
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        names.insert(entry.path());
    }
    std::vector<picture::Image> pages;
    if (ended.exit == 0 && ended.err.empty()) {
        std::transform(names.begin(), names.end(), std::back_inserter(pages), readPgm);
    }
    std::filesystem::remove_all(folder);
    return pages;
}

picture::LuminanceView partOf(const picture::Image& page, const labels::Box& box, int dotsPerInch)
{
    const auto pixel = [dotsPerInch](double mm) {
        return static_cast<int>(std::lround(mm * dotsPerInch / 25.4));
    };
    const int left = std::max(0, pixel(box.left));
    const int top = std::max(0, pixel(box.top));
    const int right = std::min(page.width, pixel(box.right()));
    const int bottom = std::min(page.height, pixel(box.bottom()));
    return {page.pixels.data() + static_cast<std::ptrdiff_t>(top) * page.width + left, right - left,
            bottom - top, page.width, 1};
}

std::string wordsIn(const Path& file)
{
    return run(SPILE_PDFTOTEXT, {"-raw", file.string(), "-"}).out;
}

std::string wrongIn(const Path& file)
{
    const Ended ended = run(SPILE_QPDF, {"--check", file.string()});
    return ended.exit == 0 ? "" : ended.out + ended.err;
}

}  // namespace spile::support

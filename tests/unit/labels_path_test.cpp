// What a screen shows of a label is what is printed: its path, painted here, beside the printed
// page.
#include "core/labels/label_path.hpp"
#include "core/labels/pdf.hpp"
#include "tests/support/printed_pages.hpp"
#include "tests/support/temp_folder.hpp"

#include <algorithm>
#include <cmath>
#include <fstream>
#include <gtest/gtest.h>
#include <sstream>

namespace spile::labels {

namespace {

struct Spot {
    double x = 0, y = 0;
};
using Polygon = std::vector<Spot>;

void addCurve(Polygon& polygon, const Spot& b, const Spot& c, const Spot& d)
{
    constexpr int pieces = 12;
    const Spot a = polygon.back();
    for (int i = 1; i <= pieces; ++i) {
        const double t = i / static_cast<double>(pieces);
        const double u = 1 - t;
        const auto mix = [&](double p, double q, double r, double s) {
            return u * u * u * p + 3 * u * u * t * q + 3 * u * t * t * r + t * t * t * s;
        };
        polygon.push_back({mix(a.x, b.x, c.x, d.x), mix(a.y, b.y, c.y, d.y)});
    }
}

// The subset of SVG's path data that pathOf() writes.
std::vector<Polygon> polygonsOf(const std::string& path)
{
    std::vector<Polygon> polygons;
    std::istringstream in(path);
    const auto spot = [&in] {
        Spot read;
        in >> read.x >> read.y;
        return read;
    };
    for (char letter = 0; in >> letter;) {
        Spot last = polygons.empty() || polygons.back().empty() ? Spot{} : polygons.back().back();
        if (letter == 'M') {
            polygons.push_back({spot()});
        } else if (letter == 'L') {
            polygons.back().push_back(spot());
        } else if (letter == 'H' || letter == 'V') {
            in >> (letter == 'H' ? last.x : last.y);
            polygons.back().push_back(last);
        } else if (letter == 'C') {
            const Spot b = spot();
            const Spot c = spot();
            addCurve(polygons.back(), b, c, spot());
        } else if (letter != 'Z') {
            ADD_FAILURE() << "a step " << letter;
        }
    }
    return polygons;
}

// Which pixels of a row lie inside, by the rule of odd crossings.
std::vector<bool> rowOf(const std::vector<Polygon>& polygons, double y, int width,
                        double mmPerPixel)
{
    std::vector<double> crossings;
    for (const Polygon& polygon : polygons) {
        for (std::size_t i = 0; i < polygon.size(); ++i) {
            const Spot& a = polygon[i];
            const Spot& b = polygon[(i + 1) % polygon.size()];
            if ((a.y <= y) != (b.y <= y)) {
                crossings.push_back(a.x + (y - a.y) / (b.y - a.y) * (b.x - a.x));
            }
        }
    }
    std::sort(crossings.begin(), crossings.end());
    std::vector<bool> row;
    std::size_t before = 0;
    for (int x = 0; x < width; ++x) {
        while (before < crossings.size() && crossings[before] <= (x + 0.5) * mmPerPixel) {
            ++before;
        }
        row.push_back(before % 2 == 1);
    }
    return row;
}

}  // namespace

TEST(LabelPath, IsWhatIsPrinted)
{
    constexpr int dots = 300;
    constexpr double mmPerPixel = 25.4 / dots;
    const auto sheets = layOut({.cellarMark = "7K2Q",
                                .labels = {{"000005", "Ru\xC3\x9F 3x4 \xC5\x98u\xCC\x88"}},
                                .stock = *findStock("roll-100x50")});
    const support::TempFolder folder;
    const Path file = folder.path() / "labels.pdf";
    std::ofstream(file, std::ios::binary) << asText(*pdfOf(*sheets, ""));
    const auto pages = support::printed(file, dots);
    ASSERT_EQ(pages.size(), 1U);
    const picture::Image& page = pages.front();
    const auto polygons = polygonsOf(pathOf(sheets->pages.front().labels.front()));
    int both = 0;
    int one = 0;
    for (int y = 0; y < page.height; ++y) {
        const auto shown = rowOf(polygons, (y + 0.5) * mmPerPixel, page.width, mmPerPixel);
        for (int x = 0; x < page.width; ++x) {
            const bool isPrinted = page.pixels[static_cast<std::size_t>(y * page.width + x)] < 128;
            both += isPrinted && shown[static_cast<std::size_t>(x)] ? 1 : 0;
            one += isPrinted != shown[static_cast<std::size_t>(x)] ? 1 : 0;
        }
    }
    EXPECT_GT(both, 50'000);
    EXPECT_LT(one, both / 50) << "only at the edges";
}

}  // namespace spile::labels

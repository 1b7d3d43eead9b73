#include "core/scan/redraw.hpp"

#include "core/scan/redraw_confirm.hpp"

#include <algorithm>

namespace spile::scan {

using namespace redraw;

namespace {

// Where cores are looked for: in which plane (0 as it is, 1 halved), and against which
// surroundings.
struct Look {
    std::size_t plane;
    int radius;
    int percent;
};
constexpr std::array<Look, 4> looks = {Look{0, 20, 10}, Look{0, 12, 6}, Look{1, 12, 8},
                                       Look{0, 6, 3}};

constexpr float smallestModule = 1.3F;  // pixels
constexpr float leastGuess = 0.25F;     // of the fit, to be improved
constexpr float leastFit = 0.3F;        // and then read

// The ways to tell dark from light, the cheap one first.
enum class Way { Middle, Sharpened, SharpenedAgain, Mean };
constexpr std::array ways = {Way::Middle, Way::Sharpened, Way::SharpenedAgain, Way::Mean};

// Where a symbol that was read lies: nothing else is looked for there.
bool isInside(Spot spot, const Code& code)
{
    const auto& corners = code.corners;
    for (std::size_t i = 0; i < 4; ++i) {
        const Spot from{static_cast<float>(corners[i].x), static_cast<float>(corners[i].y)};
        const Spot to{static_cast<float>(corners[(i + 1) % 4].x),
                      static_cast<float>(corners[(i + 1) % 4].y)};
        if (cross(to - from, spot - from) < 0) {
            return false;
        }
    }
    return true;
}

}  // namespace

Redrawer::Redrawer(int size, bool anyLevel)
    : patterns_(size),
      anyLevel_(anyLevel || size != label::size),
      fitter_(patterns_),
      sampler_(patterns_)
{
}

// The last word has ZXing: it reads the symbol as it was corrected, drawn whole and clean.
std::optional<Code> Redrawer::confirmed(const label::Corrected& corrected)
{
    auto code = readClean(label::draw(corrected.word, corrected.mask), label::size, drawn_);
    return code && code->text == corrected.text ? code : std::nullopt;
}

std::optional<Code> Redrawer::readTogether(std::span<const float> softs)
{
    const auto corrected = label::correctLabel(softs);
    return corrected ? confirmed(*corrected) : std::nullopt;
}

std::optional<Code> Redrawer::readSofts()
{
    auto code = patterns_.size == label::size ? readTogether(softs_) : std::nullopt;
    return code || !anyLevel_ ? code : readAny(patterns_, softs_, drawn_);
}

std::optional<Code> Redrawer::readModules(const Grid& grid)
{
    sampler_.sample(patch_, grid);
    for (const Way way : ways) {
        switch (way) {
            case Way::Middle:
                sampler_.compare(ModuleSampler::Against::Middle, softs_);
                break;
            case Way::Mean:
                sampler_.compare(ModuleSampler::Against::Mean, softs_);
                break;
            case Way::Sharpened:
            case Way::SharpenedAgain:
                sampler_.compareSharpened(softs_, way == Way::SharpenedAgain);
                break;
        }
        if (auto code = readSofts()) {
            return code;
        }
        if (way == Way::SharpenedAgain && grid.fit > unread_.fit) {
            unread_.fit = grid.fit;
            unread_.softs = softs_;
        }
    }
    return std::nullopt;
}

std::array<Point, 4> Redrawer::cornersOf(const Place& place, const Grid& grid)
{
    std::array<Point, 4> corners{};
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const Spot corner = grid.corners[i];
        const Spot at = place.origin + corner.x * place.along + corner.y * place.down;
        corners[i] = {static_cast<int>(std::lround(at.x)), static_cast<int>(std::lround(at.y))};
    }
    return corners;
}

// What advice and later frames need of a symbol that was found but not read.
void Redrawer::remember(const Place& place, const Grid& grid)
{
    if (grid.fit < unread_.fit) {
        return;
    }
    const float sideInModules =
        0.5F *
        (length(grid.corners[2] - grid.corners[0]) + length(grid.corners[3] - grid.corners[1])) /
        1.4142136F;
    unread_.module = place.module() * sideInModules / static_cast<float>(patterns_.size);
    const Clearness clearness = fitter_.clearnessOf(grid, patch_);
    unread_.corners = cornersOf(place, grid);
    unread_.sharpness = clearness.sharpness;
    unread_.damage = clearness.damage;
}

std::optional<Code> Redrawer::readAt(const Place& place)
{
    constexpr int margin = 6;
    const int size = patterns_.size;
    patch_.take(planes_, place, place.isAlone ? margin - size : -margin, size + margin);
    for (Grid grid : place.isAlone ? fitter_.guessFromOne(patch_) : fitter_.guess(patch_)) {
        if (grid.fit < leastGuess) {
            break;
        }
        fitter_.fit(grid, patch_);
        if (grid.fit < leastFit) {
            continue;
        }
        if (auto code = readModules(grid)) {
            code->corners = cornersOf(place, grid);
            return code;
        }
        remember(place, grid);
    }
    return std::nullopt;
}

bool Redrawer::isSeen(const Place& place) const
{
    const float near = 0.7F * place.module();
    const Spot middle = place.middle(patterns_.size);
    return std::any_of(seen_.begin(), seen_.end(), [&](const Place& other) {
        return place.isAlone == other.isAlone && length(place.origin - other.origin) < near &&
               length(middle - other.middle(patterns_.size)) < near;
    });
}

std::vector<Code> Redrawer::read(const picture::LuminanceView& part)
{
    std::vector<Code> codes;
    unread_.fit = 0;
    unread_.softs.clear();
    const auto shortest = static_cast<float>(std::min(part.width, part.height));
    if (shortest < smallestModule * static_cast<float>(patterns_.size)) {
        return codes;
    }
    gather(part, planes_[0]);
    halve(part, planes_[1]);
    seen_.clear();
    cores_.clear();
    for (const Look look : looks) {
        darkMap_.mark(planes_[look.plane], look.radius, look.percent, dark_);
        inLook_.clear();
        coreFinder_.find(dark_, inLook_);
        addCores(look.plane == 0 ? 1.0F : 2.0F);
        placeFinder_.find(cores_, patterns_.size, places_);
        readPlaces(codes);
        if (!codes.empty()) {
            break;
        }
    }
    return codes;
}

void Redrawer::readPlaces(std::vector<Code>& codes)
{
    for (const Place& place : places_) {
        const Spot middle = place.middle(patterns_.size);
        const bool isTaken = std::any_of(codes.begin(), codes.end(),
                                         [&](const Code& code) { return isInside(middle, code); });
        // After the first it must be a whole one.
        const bool isPromising = codes.empty() || place.isWhole;
        if (place.module() < smallestModule || !isPromising || isTaken || isSeen(place)) {
            continue;
        }
        seen_.push_back(place);
        if (auto code = readAt(place)) {
            codes.push_back(std::move(*code));
        }
    }
}

// The same core is found in several looks.
void Redrawer::addCores(float scale)
{
    for (Core core : inLook_) {
        core.centre = scale * core.centre;
        core.right = scale * core.right;
        core.down = scale * core.down;
        core.area *= scale * scale;
        if (std::none_of(cores_.begin(), cores_.end(), [&](const Core& other) {
                return length(other.centre - core.centre) < other.module();
            })) {
            cores_.push_back(core);
        }
    }
}

}  // namespace spile::scan

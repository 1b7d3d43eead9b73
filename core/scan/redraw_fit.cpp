#include "core/scan/redraw_fit.hpp"

#include <algorithm>
#include <cmath>

namespace spile::scan::redraw {

GridFitter::Mapping::Mapping(const Grid& grid, int size)
    : perspective_(Perspective::ofSquare(static_cast<float>(size), grid.corners)),
      bendAlong_(grid.bendAlong),
      bendDown_(grid.bendDown),
      toUnit_(2 / static_cast<float>(size))
{
}

Spot GridFitter::Mapping::at(float x, float y) const
{
    const float u = x * toUnit_ - 1;
    const float v = y * toUnit_ - 1;
    return perspective_.at(x, y) + (u * u - 1) * bendAlong_ + (v * v - 1) * bendDown_;
}

GridFitter::GridFitter(const KnownPatterns& patterns) : size_(patterns.size)
{
    const float toUnit = 2 / static_cast<float>(size_);
    for (const KnownPatterns::Known& known : patterns.known) {
        x_.push_back(known.x);
        y_.push_back(known.y);
        const float u = known.x * toUnit - 1;
        const float v = known.y * toUnit - 1;
        u_.push_back(u * u - 1);
        v_.push_back(v * v - 1);
        sign_.push_back(known.sign);
    }
    index_.resize(x_.size());
    addLandmark(patterns, 3, 3, 4);
    addLandmark(patterns, 3, size_ - 4, 4);
    addLandmark(patterns, size_ - 7, size_ - 7, 2);
    addLandmark(patterns, size_ - 4, 3, 4);
    Corners centres;
    for (std::size_t i = 0; i < 4; ++i) {
        centres[i] = landmarks_[i].centre;
    }
    const Perspective back = Perspective::ofSquare(1, centres).inverse();
    const auto side = static_cast<float>(size_);
    cornersInSquare_ = {back.at(0, 0), back.at(side, 0), back.at(side, side), back.at(0, side)};
}

void GridFitter::addLandmark(const KnownPatterns& patterns, int row, int column, int reach)
{
    Landmark landmark;
    landmark.centre = {static_cast<float>(column) + 0.5F, static_cast<float>(row) + 0.5F};
    for (int y = -reach; y <= reach; ++y) {
        for (int x = -reach; x <= reach; ++x) {
            const bool isOutside =
                row + y < 0 || column + x < 0 || row + y >= size_ || column + x >= size_;
            landmark.places.push_back({static_cast<float>(x), static_cast<float>(y)});
            landmark.signs.push_back(isOutside ? -1 : patterns.at(row + y, column + x));
        }
    }
    landmarks_.push_back(std::move(landmark));
}

static constexpr int noMatch = -1000000;

static int pixelOf(float modules, const Patch& patch)
{
    return static_cast<int>(
        std::floor((modules + static_cast<float>(patch.margin())) * Patch::perModule));
}

void GridFitter::prepare(const Landmark& landmark, const Patch& patch)
{
    offsets_.clear();
    border_ = 0;
    for (const Spot place : landmark.places) {
        const int x = static_cast<int>(place.x) * Patch::perModule;
        const int y = static_cast<int>(place.y) * Patch::perModule;
        border_ = std::max({border_, x, y});
        offsets_.push_back(y * patch.side() + x);
    }
}

int GridFitter::matchAt(const Landmark& landmark, const Patch& patch, int x, int y) const
{
    const int side = patch.side();
    if (std::min(x, y) < border_ || std::max(x, y) >= side - border_) {
        return noMatch;
    }
    const std::int8_t* here = patch.contrasts().data() + std::ptrdiff_t{y} * side + x;
    int sum = 0;
    for (std::size_t i = 0; i < offsets_.size(); ++i) {
        sum += landmark.signs[i] * here[offsets_[i]];
    }
    return sum;
}

GridFitter::Match GridFitter::bestAround(const Landmark& landmark, const Patch& patch, Match middle,
                                         int range, int stride,
                                         std::span<const Spot> excluded) const
{
    const auto isExcluded = [&](int x, int y) {
        constexpr int near = Patch::perModule + 2;
        return std::any_of(excluded.begin(), excluded.end(), [&](Spot other) {
            return std::abs(pixelOf(other.x, patch) - x) < near &&
                   std::abs(pixelOf(other.y, patch) - y) < near;
        });
    };
    Match best = middle;
    for (int y = middle.y - range; y <= middle.y + range; y += stride) {
        for (int x = middle.x - range; x <= middle.x + range; x += stride) {
            const int value = isExcluded(x, y) ? noMatch : matchAt(landmark, patch, x, y);
            if (value > best.value) {
                best = {value, x, y};
            }
        }
    }
    return best;
}

// Find where the landmark matches best within `reach` modules, twice: the second at another place.
void GridFitter::search(const Landmark& landmark, const Patch& patch, Spot around, int reach,
                        std::vector<Spot>& found)
{
    prepare(landmark, patch);
    const Match middle{noMatch, pixelOf(around.x, patch), pixelOf(around.y, patch)};
    const auto modules = [&](int pixel) {
        return (static_cast<float>(pixel) + 0.5F) / Patch::perModule -
               static_cast<float>(patch.margin());
    };
    for (int round = 0; round < 2; ++round) {
        constexpr int stride = Patch::perModule / 2;
        const Match rough =
            bestAround(landmark, patch, middle, reach * Patch::perModule, stride, found);
        if (rough.value <= 0) {
            return;
        }
        const Match best = bestAround(landmark, patch, rough, 1, 1, {});
        found.push_back({modules(best.x), modules(best.y)});
    }
}

Corners GridFitter::cornersFrom(const std::array<Spot, 4>& centres) const
{
    const auto perspective = Perspective::ofSquare(1, centres);
    Corners corners;
    for (std::size_t i = 0; i < 4; ++i) {
        corners[i] = perspective.at(cornersInSquare_[i].x, cornersInSquare_[i].y);
    }
    return corners;
}

// Keep what fits best of all combinations; the alignment pattern is looked for where it then is.
void GridFitter::combine(const std::vector<Spot>& topLefts, const std::vector<Spot>& topRights,
                         const std::vector<Spot>& bottomLefts, const Patch& patch)
{
    Grid grid;
    const auto apart = static_cast<float>(size_ - 7);
    const float share = (apart - 3) / apart;
    for (const Spot topLeft : topLefts) {
        for (const Spot topRight : topRights) {
            for (const Spot bottomLeft : bottomLefts) {
                const Spot guessed =
                    topLeft + share * (topRight - topLeft) + share * (bottomLeft - topLeft);
                alignment_.clear();
                search(landmarks_[2], patch, guessed, 2, alignment_);
                alignment_.push_back(guessed);
                for (const Spot bottomRight : alignment_) {
                    Grid tried;
                    tried.corners = cornersFrom({topLeft, topRight, bottomRight, bottomLeft});
                    tried.fit = scoreOf(tried, patch);
                    if (tried.fit > grid.fit) {
                        grid = tried;
                    }
                }
            }
        }
    }
    guesses_.push_back(grid);
}

std::span<const Grid> GridFitter::bestGuesses()
{
    constexpr std::size_t most = 3;
    std::sort(guesses_.begin(), guesses_.end(),
              [](const Grid& a, const Grid& b) { return a.fit > b.fit; });
    return {guesses_.data(), std::min(guesses_.size(), most)};
}

std::span<const Grid> GridFitter::guess(const Patch& patch)
{
    for (const std::size_t i : {0U, 1U, 3U}) {
        found_[i].clear();
        search(landmarks_[i], patch, landmarks_[i].centre, 3, found_[i]);
        found_[i].push_back(landmarks_[i].centre);
    }
    guesses_.clear();
    combine(found_[0], found_[1], found_[3], patch);
    return bestGuesses();
}

std::span<const Grid> GridFitter::guessFromOne(const Patch& patch)
{
    // Nine places of finders around the one, row by row.
    const auto apart = static_cast<float>(size_ - 7);
    for (int i = 0; i < 9; ++i) {
        auto& found = found_[static_cast<std::size_t>(i)];
        const Spot step{static_cast<float>(i % 3) - 1, std::floor(static_cast<float>(i) / 3) - 1};
        const Spot place = landmarks_[0].centre + apart * step;
        found.clear();
        if (i != 4) {
            search(landmarks_[0], patch, place, 3, found);
        }
        found.push_back(place);
    }
    const auto foundAt = [this](int x, int y) -> const std::vector<Spot>& {
        return found_[indexAt(y + 1, x + 1, 3)];
    };
    guesses_.clear();
    int x = 1;
    int y = 0;
    for (int turn = 0; turn < 4; ++turn) {
        // Along the symbol is (x, y), down it (-y, x).
        combine(foundAt(0, 0), foundAt(x, y), foundAt(-y, x), patch);
        combine(foundAt(-x, -y), foundAt(0, 0), foundAt(-x - y, x - y), patch);
        combine(foundAt(y, -x), foundAt(x + y, y - x), foundAt(0, 0), patch);
        const int before = x;
        x = -y;
        y = before;
    }
    return bestGuesses();
}

float GridFitter::scoreOf(const Grid& grid, const Patch& patch)
{
    const auto p = Perspective::ofSquare(static_cast<float>(size_), grid.corners);
    const Spot bendU = grid.bendAlong;
    const Spot bendV = grid.bendDown;
    const auto last = static_cast<float>(patch.side() - 1);
    const int side = patch.side();
    const auto margin = static_cast<float>(patch.margin());
    const std::size_t count = x_.size();
    for (std::size_t i = 0; i < count; ++i) {
        const float w = 1 / (p.wx * x_[i] + p.wy * y_[i] + 1);
        const float x =
            (p.xx * x_[i] + p.xy * y_[i] + p.x1) * w + u_[i] * bendU.x + v_[i] * bendV.x;
        const float y =
            (p.yx * x_[i] + p.yy * y_[i] + p.y1) * w + u_[i] * bendU.y + v_[i] * bendV.y;
        const float column = (x + margin) * Patch::perModule;
        const float row = (y + margin) * Patch::perModule;
        const float safeColumn = column > 0 ? (column < last ? column : last) : 0;
        const float safeRow = row > 0 ? (row < last ? row : last) : 0;
        index_[i] = static_cast<int>(safeRow) * side + static_cast<int>(safeColumn);
    }
    const std::int8_t* contrast = patch.contrasts().data();
    float sum = 0;
    for (std::size_t i = 0; i < count; ++i) {
        sum += sign_[i] * static_cast<float>(contrast[index_[i]]);
    }
    return sum * 0.015F / static_cast<float>(count);
}

template <class Move>
bool GridFitter::improve(Grid& grid, const Patch& patch, float step, Move move)
{
    bool isBetter = false;
    for (const Spot way : {Spot{step, 0}, Spot{-step, 0}, Spot{0, step}, Spot{0, -step}}) {
        Grid tried = grid;
        move(tried, way);
        tried.fit = scoreOf(tried, patch);
        if (tried.fit > grid.fit + 1e-4F) {
            grid = tried;
            isBetter = true;
        }
    }
    return isBetter;
}

bool GridFitter::moveCorners(Grid& grid, const Patch& patch, float step)
{
    bool isBetter = false;
    for (std::size_t i = 0; i < 4; ++i) {
        isBetter |= improve(grid, patch, step,
                            [i](Grid& g, Spot way) { g.corners[i] = g.corners[i] + way; });
    }
    for (std::size_t i = 0; i < 4; ++i) {
        isBetter |= improve(grid, patch, step, [i](Grid& g, Spot way) {
            g.corners[i] = g.corners[i] + way;
            g.corners[(i + 1) % 4] = g.corners[(i + 1) % 4] + way;
        });
    }
    isBetter |= improve(grid, patch, step, [](Grid& g, Spot way) {
        for (Spot& corner : g.corners) {
            corner = corner + way;
        }
    });
    return isBetter;
}

bool GridFitter::bend(Grid& grid, const Patch& patch, float step)
{
    bool isBetter =
        improve(grid, patch, step, [](Grid& g, Spot way) { g.bendAlong = g.bendAlong + way; });
    isBetter |=
        improve(grid, patch, step, [](Grid& g, Spot way) { g.bendDown = g.bendDown + way; });
    return isBetter;
}

bool GridFitter::isTiming(std::size_t known) const
{
    constexpr float line = 6.5F;
    const auto isBetween = [this](float at) {
        return at > 8 && at < static_cast<float>(size_ - 8);
    };
    return (x_[known] == line && isBetween(y_[known])) ||
           (y_[known] == line && isBetween(x_[known]));
}

bool GridFitter::isFinder(std::size_t known) const
{
    const auto far = static_cast<float>(size_ - 7);
    const bool isRight = x_[known] > far;
    const bool isBelow = y_[known] > far;
    return (x_[known] < 7 || isRight) && (y_[known] < 7 || isBelow) && !(isRight && isBelow);
}

Clearness GridFitter::clearnessOf(const Grid& grid, const Patch& patch) const
{
    constexpr float covered = -20;  // of 100: it is of the other colour, and says nothing of blur
    const Mapping mapping(grid, size_);
    // Timing alternates from module to module; the cores of finders are three modules wide.
    float fine = 0;
    float coarse = 0;
    float fineCount = 0;
    float coarseCount = 0;
    float damaged = 0;
    for (std::size_t i = 0; i < x_.size(); ++i) {
        const auto seen = sign_[i] * static_cast<float>(patch.contrast(mapping.at(x_[i], y_[i])));
        if (seen < covered) {
            ++damaged;
        } else if (isTiming(i)) {
            fine += seen;
            ++fineCount;
        } else if (sign_[i] > 0 && isFinder(i)) {
            coarse += seen;
            ++coarseCount;
        }
    }
    const bool isMeasured = fineCount > 0 && coarse > 0;
    return {isMeasured ? fine / fineCount / (coarse / coarseCount) : 0,
            damaged / static_cast<float>(x_.size())};
}

void GridFitter::fit(Grid& grid, const Patch& patch)
{
    for (const float step : {1.0F, 0.6F, 0.35F, 0.2F}) {
        if (moveCorners(grid, patch, step)) {
            moveCorners(grid, patch, step);
        }
    }
    if (grid.fit < 0.25F) {
        return;
    }
    for (const float step : {0.5F, 0.25F, 0.12F}) {
        if (bend(grid, patch, step)) {
            bend(grid, patch, step);
        }
        moveCorners(grid, patch, step);
    }
}

}  // namespace spile::scan::redraw

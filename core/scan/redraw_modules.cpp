#include "core/scan/redraw_modules.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace spile::scan::redraw {

// A smaller range of levels than this share of the widest is not stretched to a full one.
static constexpr float leastRange = 0.3F;

ModuleSampler::ModuleSampler(const KnownPatterns& patterns)
    : patterns_(patterns), side_(patterns.size + 2 * border)
{
}

void ModuleSampler::sample(const Patch& patch, const Grid& grid)
{
    const GridFitter::Mapping mapping(grid, patterns_.size);
    levels_.resize(indexAt(side_, 0, side_));
    std::size_t i = 0;
    for (int row = -border; row < patterns_.size + border; ++row) {
        for (int column = -border; column < patterns_.size + border; ++column) {
            float sum = 0;
            for (const float dy : {0.33F, 0.67F}) {
                for (const float dx : {0.33F, 0.67F}) {
                    sum += patch.level(
                        mapping.at(static_cast<float>(column) + dx, static_cast<float>(row) + dy));
                }
            }
            levels_[i++] = sum / 4;
        }
    }
    const int halves = 2 * side_ + 1;
    halves_.resize(indexAt(halves, 0, halves));
    i = 0;
    for (int y = 0; y < halves; ++y) {
        for (int x = 0; x < halves; ++x) {
            halves_[i++] = patch.level(mapping.at(0.5F * static_cast<float>(x) - border,
                                                  0.5F * static_cast<float>(y) - border));
        }
    }
}

// The modules within `around` of one, the ends that the border leaves.
static constexpr int around = 3;
static int firstBeside(int at) { return std::max(at - around, 0); }
static int lastBeside(int at, int side) { return std::min(at + around, side - 1); }

ModuleSampler::Surroundings ModuleSampler::alongRow(int row, int column) const
{
    Surroundings all;
    const int last = lastBeside(column, side_);
    for (int c = firstBeside(column); c <= last; ++c) {
        const float level = levels_[indexAt(row, c, side_)];
        all.low = std::min(all.low, level);
        all.high = std::max(all.high, level);
        all.mean += level;
    }
    all.mean /= static_cast<float>(last - firstBeside(column) + 1);
    return all;
}

ModuleSampler::Surroundings ModuleSampler::downColumn(int row, int column) const
{
    Surroundings all;
    const int last = lastBeside(row, side_);
    for (int r = firstBeside(row); r <= last; ++r) {
        const Surroundings& one = along_[indexAt(r, column, side_)];
        all.low = std::min(all.low, one.low);
        all.high = std::max(all.high, one.high);
        all.mean += one.mean;
    }
    all.mean /= static_cast<float>(last - firstBeside(row) + 1);
    return all;
}

void ModuleSampler::compareAll(Against against)
{
    const auto count = levels_.size();
    middle_.resize(count);
    range_.resize(count);
    compared_.resize(count);
    along_.resize(count);
    std::size_t i = 0;
    for (int row = 0; row < side_; ++row) {
        for (int column = 0; column < side_; ++column) {
            along_[i++] = alongRow(row, column);
        }
    }
    i = 0;
    widest_ = 1;
    for (int row = 0; row < side_; ++row) {
        for (int column = 0; column < side_; ++column, ++i) {
            const Surroundings all = downColumn(row, column);
            middle_[i] = against == Against::Middle ? (all.low + all.high) / 2 : all.mean;
            range_[i] = all.high - all.low;
            widest_ = std::max(widest_, range_[i]);
        }
    }
    for (i = 0; i < count; ++i) {
        compared_[i] = darkness(levels_[i], i);
    }
}

float ModuleSampler::darkness(float level, std::size_t module) const
{
    const float range = std::max(range_[module], leastRange * widest_);
    return std::clamp(2 * (middle_[module] - level) / range, -1.5F, 1.5F);
}

void ModuleSampler::take(Softs& softs) const
{
    softs.clear();
    for (int row = 0; row < patterns_.size; ++row) {
        const auto first = compared_.begin() + std::ptrdiff_t{row + border} * side_ + border;
        softs.insert(softs.end(), first, first + patterns_.size);
    }
}

void ModuleSampler::compare(Against against, Softs& softs)
{
    compareAll(against);
    take(softs);
}

void ModuleSampler::compareHalves()
{
    const int halves = 2 * side_ + 1;
    comparedHalves_.resize(halves_.size());
    std::size_t half = 0;
    for (int y = 0; y < halves; ++y) {
        for (int x = 0; x < halves; ++x, ++half) {
            const auto module =
                indexAt(std::min(y / 2, side_ - 1), std::min(x / 2, side_ - 1), side_);
            comparedHalves_[half] = darkness(halves_[half], module);
        }
    }
}

ModuleSampler::Inputs ModuleSampler::inputsAt(int row, int column) const
{
    const int halves = 2 * side_ + 1;
    Inputs inputs;
    std::size_t k = 0;
    for (int dy = -reach; dy <= reach; ++dy) {
        const float* from = comparedHalves_.data() +
                            std::ptrdiff_t{2 * (row + border) + 1 + dy} * halves +
                            std::ptrdiff_t{2 * (column + border) + 1};
        for (int dx = -reach; dx <= reach; ++dx) {
            inputs[k++] = from[dx];
        }
    }
    inputs[k] = 1;
    return inputs;
}

void ModuleSampler::learn(const Inputs& inputs, float sign)
{
    for (std::size_t i = 0; i < taps; ++i) {
        const float input = inputs[i];
        float* row = equations_[i].data();
        for (std::size_t k = 0; k < taps; ++k) {
            row[k] += input * inputs[k];
        }
        row[taps] += input * sign;
    }
}

// Gauss and Jordan; the matrix is positive definite by the ridge.
bool ModuleSampler::solve()
{
    for (std::size_t i = 0; i < taps; ++i) {
        if (!(equations_[i][i] > 1e-6F)) {
            return false;
        }
        for (std::size_t row = 0; row < taps; ++row) {
            if (row == i) {
                continue;
            }
            const float factor = equations_[row][i] / equations_[i][i];
            for (std::size_t k = i; k <= taps; ++k) {
                equations_[row][k] -= factor * equations_[i][k];
            }
        }
    }
    for (std::size_t i = 0; i < taps; ++i) {
        weights_[i] = equations_[i][taps] / equations_[i][i];
    }
    return true;
}

void ModuleSampler::learnPatterns()
{
    constexpr std::size_t middle = taps / 2;
    constexpr float covered = -0.5F;  // damage teaches nothing about the blur
    for (const KnownPatterns::Known& known : patterns_.known) {
        const Inputs inputs =
            inputsAt(static_cast<int>(std::floor(known.y)), static_cast<int>(std::floor(known.x)));
        if (inputs[middle] * known.sign > covered) {
            learn(inputs, known.sign);
        }
    }
}

void ModuleSampler::learnClear(const Softs& softs)
{
    constexpr float clear = 0.5F;
    for (int row = 0; row < patterns_.size; ++row) {
        for (int column = 0; column < patterns_.size; ++column) {
            const float soft = softs[indexAt(row, column, patterns_.size)];
            if (patterns_.at(row, column) == 0 && std::abs(soft) > clear) {
                learn(inputsAt(row, column), soft > 0 ? 1.0F : -1.0F);
            }
        }
    }
}

bool ModuleSampler::compareSharpened(Softs& softs, bool again)
{
    if (!again) {
        compareAll(Against::Mean);
        compareHalves();
    }
    equations_ = {};
    learnPatterns();
    if (again) {
        learnClear(softs);
    }
    constexpr float ridge = 4;
    for (std::size_t i = 0; i < taps; ++i) {
        equations_[i][i] += ridge;
    }
    if (!solve()) {
        return false;
    }
    softs.clear();
    for (int row = 0; row < patterns_.size; ++row) {
        for (int column = 0; column < patterns_.size; ++column) {
            const Inputs inputs = inputsAt(row, column);
            const float sum =
                std::inner_product(inputs.begin(), inputs.end(), weights_.begin(), 0.0F);
            softs.push_back(std::clamp(sum, -1.5F, 1.5F));
        }
    }
    return true;
}

}  // namespace spile::scan::redraw

#pragma once

#include "core/scan/redraw_fit.hpp"

#include <span>
#include <vector>

namespace spile::scan::redraw {

/// How dark each module of a symbol is: above 0 dark, below light, about 1 and -1 when clear; the
/// nearer to 0 the less it says. Row by row.
using Softs = std::vector<float>;

/// Reads the modules of a symbol from a patch in several ways, of which one may be right where
/// others are not.
class ModuleSampler {
public:
    explicit ModuleSampler(const KnownPatterns& patterns);

    /// How a level is compared with its surroundings of 7 x 7 modules.
    enum class Against { Middle, Mean };

    void sample(const Patch& patch, const Grid& grid);
    /// The sampled levels against their surroundings.
    void compare(Against against, Softs& softs);
    /// The same with what a blur has spread brought back: each module is a weighted sum of what is
    /// seen within a module around it, with the weights that make the known patterns come out best.
    /// With `softs` of before, `again` learns from the clear ones of these too. False if they tell
    /// nothing.
    bool compareSharpened(Softs& softs, bool again);

private:
    static constexpr int border = 2;  // modules of the quiet zone that are sampled too
    static constexpr int reach = 2;   // half modules
    static constexpr int across = 2 * reach + 1;
    static constexpr int taps = across * across + 1;  // and a constant
    using Inputs = std::array<float, taps>;

    // The least, the greatest and the mean level of the modules around one.
    struct Surroundings {
        float low = 1e9F;
        float high = -1e9F;
        float mean = 0;
    };
    [[nodiscard]] Surroundings alongRow(int row, int column) const;
    [[nodiscard]] Surroundings downColumn(int row, int column) const;
    void compareAll(Against against);
    [[nodiscard]] float darkness(float level, std::size_t module) const;
    void take(Softs& softs) const;
    void compareHalves();
    [[nodiscard]] Inputs inputsAt(int row, int column) const;
    void learnPatterns();
    void learnClear(const Softs& softs);
    void learn(const Inputs& inputs, float sign);
    bool solve();

    const KnownPatterns& patterns_;
    int side_;  // modules with borders
    std::vector<float> levels_;
    std::vector<float> halves_;  // levels at every half module, the border's outer edge included
    std::vector<float> compared_;
    std::vector<float> comparedHalves_;
    float widest_ = 1;
    std::vector<float> middle_;  // the level between dark and light around each module
    std::vector<float> range_;   // and the range of levels there
    std::vector<Surroundings> along_;
    std::array<std::array<float, taps + 1>, taps> equations_{};
    std::array<float, taps> weights_{};
};

}  // namespace spile::scan::redraw

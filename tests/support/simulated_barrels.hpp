#pragma once

#include "core/outlook/course.hpp"

#include <array>
#include <cstdint>
#include <functional>
#include <random>
#include <string_view>
#include <vector>

/// Barrels whose true courses are known, with the scores that tasters would give them. Everything
/// is drawn from a fixed seed. All values are assumed: they test the mathematics, not beer.
namespace spile::test {

/// A source of the same numbers on every machine.
class Draws {
public:
    explicit Draws(std::uint64_t seed) : engine_(seed) {}
    double uniform(double low = 0, double high = 1);
    double normal(double mean = 0, double deviation = 1);
    int whole(int low, int high);  // both ends included

private:
    std::mt19937_64 engine_;
};

/// How levels really go. The first is what the saturating shape assumes; of the others the model
/// has some in its dictionary and some not.
enum class Truth : std::uint8_t {
    Saturating,
    Diffusing,    // tanh of the root of time
    FastAndSlow,  // two steps at once
    Linear,
    Sigmoid,
    RiseThenFall,
    UnloggedTopUp  // saturating, 15 % replaced at ten months and never written down
};
inline constexpr std::array truths = {Truth::Saturating,   Truth::Diffusing, Truth::FastAndSlow,
                                      Truth::Linear,       Truth::Sigmoid,   Truth::RiseThenFall,
                                      Truth::UnloggedTopUp};
[[nodiscard]] std::string_view nameOf(Truth truth);

using TrueCourse = std::function<double(double age)>;
[[nodiscard]] TrueCourse drawCourse(Truth truth, Draws& draws);
/// One drawn from the model's own prior: its shapes with their weights.
[[nodiscard]] TrueCourse drawFromPrior(const outlook::CoursePrior& prior, Draws& draws);

struct SimulatedBarrel {
    TrueCourse course;
    std::vector<double> bias;  // of each taster, in this barrel
    double panelBias = 0;      // their mean
    double sigma = 0.9;
    double lastAge = 6;
    outlook::CourseData data;

    /// The level on the panel's scale.
    [[nodiscard]] double level(double age) const { return course(age) + panelBias; }
};

/// The variance of a taster's bias in one barrel: house-wide 0.8, and their own in it 0.5.
inline constexpr double biasVariance = 0.8 * 0.8 + 0.5 * 0.5;

/// Draw tasters and `sessions` monthly sittings from an age of six months on; each taster is there
/// a little more often than not, and at least one is.
[[nodiscard]] SimulatedBarrel drawBarrel(TrueCourse course, int tasters, int sessions,
                                         Draws& draws);
/// Draw the scores of one sitting.
void sit(SimulatedBarrel& barrel, double age, bool all, Draws& draws);

/// The mean of each sitting: what a brewer would keep without a model.
struct SittingMean {
    double age = 0, mean = 0;
};
[[nodiscard]] std::vector<SittingMean> sittingMeans(const outlook::CourseData& data);

/// The model that these barrels are looked at with.
[[nodiscard]] outlook::CourseModel modelFor(std::size_t tasters);

}  // namespace spile::test

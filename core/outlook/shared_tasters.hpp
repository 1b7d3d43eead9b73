#pragma once

#include "core/base/job.hpp"
#include "core/outlook/course.hpp"

#include <optional>
#include <span>
#include <vector>

/// The biases of the tasters of a whole cellar in one attribute, from all barrels together:
/// expectation propagation with one normal site a barrel. Each barrel is then looked at with what
/// all others say of its tasters.
///
/// Accuracy  means within 0.005 and deviations within 0.006 of a joint Markov chain in the
///           reference's third data set (tests/reference/outlook_datasets_test.cpp).
/// Source    T. P. Minka, "Expectation propagation for approximate Bayesian inference" (2001); from
///           memory. The model: worked out for this program.
namespace spile::outlook {

struct SharedSetting {
    CourseGrid grid;
    Noise noise;
    Wrongs wrongs;
    double houseVariance = 0.64;  // of a taster's bias in all barrels
    double ownVariance = 0.25;    // of what is their own in one barrel
    std::vector<double> scatter;  // of each taster, relative; as many as there are tasters
    std::vector<double> panel;    // the reference panel's weights; add to 1
};

/// One barrel's beer: its tasters are numbered as in the cellar.
struct SharedBarrel {
    CoursePrior prior;
    CourseData data;
};

class SharedTasters {
public:
    /// Nothing but the setting: all biases are 0, as sure as they are at first.
    explicit SharedTasters(SharedSetting setting);

    /// Learn from barrels; from the beginning if their number differs from the last time, else on
    /// from what is known. False if `job` stops it. The order of the barrels does not matter once
    /// it has converged, which takes about four sweeps.
    [[nodiscard]] bool learn(std::span<const SharedBarrel> barrels, int sweeps, const Job& job);

    [[nodiscard]] std::size_t size() const { return setting_.panel.size(); }
    [[nodiscard]] const SharedSetting& setting() const { return setting_; }
    /// A taster's bias in the house.
    [[nodiscard]] Belief bias(std::size_t taster) const;

    /// A course of `barrel`, with what all but the barrel `site` says of its tasters; none: with
    /// what all say.
    [[nodiscard]] Course courseOf(const SharedBarrel& barrel,
                                  std::optional<std::size_t> site) const;

private:
    struct Site {
        std::vector<std::size_t> tasters;  // those who scored it
        std::vector<double> precision, shift;
    };
    // A normal by its precision and what that makes of its mean.
    struct Natural {
        std::vector<double> precision, shift;
    };
    // What is known of all but one barrel.
    struct Cavity {
        std::vector<double> mean, covariance;
        bool sound = true;
    };
    struct Local {
        CourseModel model;
        CourseData data;
        std::vector<std::size_t> tasters;
    };

    [[nodiscard]] Cavity without(const Site* site) const;
    [[nodiscard]] Local localise(const SharedBarrel& barrel, const Cavity& cavity) const;
    void settle(const SharedBarrel& barrel, Site& site);
    static void add(const Site& site, double sign, Natural& all);

    SharedSetting setting_;
    Natural all_;
    std::vector<Site> sites_;
};

}  // namespace spile::outlook

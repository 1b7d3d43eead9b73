#include "core/outlook/shared_tasters.hpp"

#include "core/outlook/small_matrix.hpp"

#include <algorithm>
#include <cmath>

namespace spile::outlook {

namespace {

// The inverse of a full symmetric matrix; empty if it is not positive definite.
std::vector<double> inverse(std::vector<double> matrix, std::size_t n)
{
    if (std::isnan(factorise(matrix, n))) {
        return {};
    }
    std::vector<double> inverted(n * n);
    invertFactor(matrix, inverted, n);
    return inverted;
}

std::vector<double> product(std::span<const double> a, std::span<const double> b, std::size_t n)
{
    std::vector<double> made(n * n, 0);
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t k = 0; k < n; ++k) {
            for (std::size_t j = 0; j < n; ++j) {
                made[i * n + j] += a[i * n + k] * b[k * n + j];
            }
        }
    }
    return made;
}

std::vector<double> transposed(std::span<const double> a, std::size_t n)
{
    std::vector<double> made(n * n);
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t j = 0; j < n; ++j) {
            made[j * n + i] = a[i * n + j];
        }
    }
    return made;
}

std::vector<std::size_t> tastersOf(const CourseData& data)
{
    std::vector<std::size_t> tasters;
    for (const Scored& score : data.scores) {
        tasters.push_back(static_cast<std::size_t>(score.taster));
    }
    std::sort(tasters.begin(), tasters.end());
    tasters.erase(std::unique(tasters.begin(), tasters.end()), tasters.end());
    return tasters;
}

}  // namespace

SharedTasters::SharedTasters(SharedSetting setting) : setting_(std::move(setting))
{
    const std::size_t n = size();
    all_.precision.assign(n * n, 0);
    all_.shift.assign(n, 0);
    for (std::size_t i = 0; i < n; ++i) {
        all_.precision[i * n + i] = 1 / setting_.houseVariance;
    }
}

void SharedTasters::add(const Site& site, double sign, Natural& all)
{
    const std::size_t n = all.shift.size();
    const std::size_t own = site.tasters.size();
    for (std::size_t i = 0; i < own; ++i) {
        all.shift[site.tasters[i]] += sign * site.shift[i];
        for (std::size_t j = 0; j < own; ++j) {
            all.precision[site.tasters[i] * n + site.tasters[j]] +=
                sign * site.precision[i * own + j];
        }
    }
}

SharedTasters::Cavity SharedTasters::without(const Site* site) const
{
    const std::size_t n = size();
    Natural rest = all_;
    if (site != nullptr) {
        add(*site, -1, rest);
    }
    Cavity cavity;
    cavity.covariance = inverse(rest.precision, n);
    if (cavity.covariance.empty()) {  // a site that takes away more than there is: leave it in
        cavity.sound = false;
        rest = all_;
        cavity.covariance = inverse(rest.precision, n);
    }
    cavity.mean.resize(n);
    multiply(cavity.covariance, rest.shift, cavity.mean, n);
    return cavity;
}

// The barrel's own tasters, and all others of the panel as one.
SharedTasters::Local SharedTasters::localise(const SharedBarrel& barrel, const Cavity& cavity) const
{
    const std::size_t n = size();
    Local local;
    local.tasters = tastersOf(barrel.data);
    const std::size_t own = local.tasters.size();
    std::vector<double> rest = setting_.panel;
    for (const std::size_t taster : local.tasters) {
        rest[taster] = 0;
    }
    const bool others = std::any_of(rest.begin(), rest.end(), [](double w) { return w != 0; });
    const std::size_t all = own + (others ? 1 : 0);
    TasterBelief& belief = local.model.tasters;
    belief.mean.assign(all, 0);
    belief.covariance.assign(all * all, 0);
    belief.scatter.assign(all, 1);
    belief.panel.assign(all, 1);
    for (std::size_t i = 0; i < own; ++i) {
        const std::size_t taster = local.tasters[i];
        belief.mean[i] = cavity.mean[taster];
        belief.scatter[i] = setting_.scatter[taster];
        belief.panel[i] = setting_.panel[taster];
        for (std::size_t j = 0; j < own; ++j) {
            belief.covariance[i * all + j] = cavity.covariance[taster * n + local.tasters[j]];
        }
        belief.covariance[i * all + i] += setting_.ownVariance;
    }
    if (others) {
        std::vector<double> along(n);
        multiply(cavity.covariance, rest, along, n);
        belief.mean[own] = dot(rest, cavity.mean, n);
        for (std::size_t i = 0; i < own; ++i) {
            belief.covariance[i * all + own] = along[local.tasters[i]];
            belief.covariance[own * all + i] = along[local.tasters[i]];
        }
        belief.covariance[own * all + own] =
            dot(rest, along, n) + setting_.ownVariance * dot(rest, rest, n);
    }
    local.model.prior = barrel.prior;
    local.model.grid = setting_.grid;
    local.model.noise = setting_.noise;
    local.model.wrongs = setting_.wrongs;
    local.data = barrel.data;
    for (Scored& score : local.data.scores) {
        score.taster = static_cast<int>(std::lower_bound(local.tasters.begin(), local.tasters.end(),
                                                         static_cast<std::size_t>(score.taster)) -
                                        local.tasters.begin());
    }
    return local;
}

void SharedTasters::settle(const SharedBarrel& barrel, Site& site)
{
    const Cavity cavity = without(&site);
    if (!cavity.sound || barrel.data.scores.empty()) {
        return;
    }
    const Local local = localise(barrel, cavity);
    const std::size_t own = local.tasters.size();
    const std::size_t all = local.model.tasters.size();
    const Course course(local.model, local.data);
    std::vector<double> mean(all);
    std::vector<double> spread(all * all);
    course.tasters(mean, spread);
    // From what a taster is in this barrel back to what they are in the house.
    std::vector<double> house(own * own);
    std::vector<double> both(own * own);
    std::vector<double> here(own * own);
    for (std::size_t i = 0; i < own; ++i) {
        for (std::size_t j = 0; j < own; ++j) {
            both[i * own + j] = local.model.tasters.covariance[i * all + j];
            house[i * own + j] = both[i * own + j] - (i == j ? setting_.ownVariance : 0);
            here[i * own + j] = spread[i * all + j];
        }
    }
    const std::vector<double> gain = product(house, inverse(both, own), own);
    std::vector<double> covariance = product(product(gain, here, own), transposed(gain, own), own);
    const std::vector<double> told = product(gain, house, own);
    for (std::size_t i = 0; i < own * own; ++i) {
        covariance[i] += house[i] - told[i];
    }
    const std::vector<double> after = inverse(covariance, own);
    const std::vector<double> before = inverse(house, own);
    if (after.empty() || before.empty()) {
        return;
    }
    std::vector<double> moved(own);
    std::vector<double> step(own);
    for (std::size_t i = 0; i < own; ++i) {
        step[i] = mean[i] - local.model.tasters.mean[i];
    }
    multiply(gain, step, moved, own);
    add(site, -1, all_);
    site.tasters = local.tasters;
    site.precision.assign(own * own, 0);
    site.shift.assign(own, 0);
    for (std::size_t i = 0; i < own; ++i) {
        for (std::size_t j = 0; j < own; ++j) {
            const double prior = local.model.tasters.mean[j];
            site.precision[i * own + j] = after[i * own + j] - before[i * own + j];
            site.shift[i] += after[i * own + j] * (prior + moved[j]) - before[i * own + j] * prior;
        }
    }
    add(site, 1, all_);
}

bool SharedTasters::learn(std::span<const SharedBarrel> barrels, int sweeps, const Job& job)
{
    if (sites_.size() != barrels.size()) {
        *this = SharedTasters(setting_);
        sites_.resize(barrels.size());
    }
    for (int sweep = 0; sweep < sweeps; ++sweep) {
        for (std::size_t i = 0; i < barrels.size(); ++i) {
            settle(barrels[i], sites_[i]);
            if (!job.advance(static_cast<std::uint64_t>(sweep) * barrels.size() + i + 1,
                             static_cast<std::uint64_t>(sweeps) * barrels.size())) {
                return false;
            }
        }
    }
    return true;
}

Belief SharedTasters::bias(std::size_t taster) const
{
    const Cavity all = without(nullptr);
    return {all.mean[taster], std::sqrt(all.covariance[taster * size() + taster])};
}

Course SharedTasters::courseOf(const SharedBarrel& barrel, std::optional<std::size_t> site) const
{
    const Local local = localise(barrel, without(site ? &sites_[*site] : nullptr));
    return {local.model, local.data};
}

}  // namespace spile::outlook

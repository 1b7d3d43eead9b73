// Scores at an end of the line: expectation propagation within one part.
#include "core/outlook/course_fit.hpp"
#include "core/outlook/normal.hpp"
#include "core/outlook/small_matrix.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace spile::outlook {

namespace {

constexpr int sweeps = 6;

}  // namespace

// The noise of a cut score about the state: with its session's, where that has no dimension.
double CourseFit::siteVariance(std::size_t record, double sigma) const
{
    const auto taster = static_cast<std::size_t>(data_.scores[record].taster);
    const double scatter = model_.tasters.scatter[taster];
    const double share = sessions_[sessionOf_[record]].apart ? 0 : model_.noise.sessionShare;
    return sigma * sigma * (scatter * scatter + share * share);
}

void CourseFit::fillRow(std::size_t record)
{
    std::fill(row_.begin(), row_.end(), 0.0);
    std::copy_n(&rows_[record * 3], amounts_, row_.begin());
    row_[amounts_ + static_cast<std::size_t>(data_.scores[record].taster)] = 1;
    if (sessions_[sessionOf_[record]].apart) {
        row_[sessionPlace(record)] = 1;
    }
}

// Adds a step of precision and shift along row_, whose image_ under the covariance is known.
void CourseFit::updateSite(double precisionStep, double shiftStep)
{
    const std::size_t d = all_;
    const double variance = dot(row_, image_, d);
    const double at = dot(row_, mean_, d);
    const double grown = 1 + precisionStep * variance;
    const double step = (shiftStep - precisionStep * at) / grown;
    const double shrink = precisionStep / grown;
    for (std::size_t i = 0; i < d; ++i) {
        mean_[i] += step * image_[i];
        for (std::size_t j = 0; j < d; ++j) {
            covariance_[i * d + j] -= shrink * image_[i] * image_[j];
        }
    }
}

// Leaves row_ and image_ at the site's own.
CourseFit::Rest CourseFit::withoutSite(const Site& site, double sigma)
{
    fillRow(site.record);
    multiply(covariance_, row_, image_, all_);
    const double variance = dot(row_, image_, all_);
    const double left = 1 - variance * site.precision;
    Rest rest;
    rest.variance = variance / left;
    rest.centre = (dot(row_, mean_, all_) - variance * site.shift) / left;
    rest.side = data_.scores[site.record].line >= lineHigh ? 1 : -1;
    rest.spread = std::sqrt(siteVariance(site.record, sigma) + rest.variance);
    rest.z = rest.side * (rest.centre - rest_[site.record]) / rest.spread;
    return rest;
}

// With x the state less its prior mean, a cut score says: row'x + noise lies beyond its rest_.
double CourseFit::settleCut(double sigma)
{
    sites_ = firstSites_;
    std::copy(covariance_.begin(), covariance_.end(), startCovariance_.begin());
    std::copy(mean_.begin(), mean_.end(), startMean_.begin());
    for (int sweep = 0; sweep < sweeps; ++sweep) {
        for (Site& site : sites_) {
            const auto [cavity, centre, side, spread, z] = withoutSite(site, sigma);
            const double ratio = millsRatio(z);
            const double tiltedMean = centre + side * cavity * ratio / spread;
            const double tilted =
                cavity - cavity * cavity * ratio * (z + ratio) / (spread * spread);
            const double precision = 1 / tilted - 1 / cavity;
            const double shift = tiltedMean / tilted - centre / cavity;
            updateSite(precision - site.precision, shift - site.shift);
            site.precision = precision;
            site.shift = shift;
        }
    }
    return siteEvidence(sigma);
}

// What the cut scores add to the logarithm of the evidence (Minka 2001, section 3.2): each one's
// own chance, and how the normals that stand for them fit together.
double CourseFit::siteEvidence(double sigma)
{
    const std::size_t d = all_;
    double sum = 0;
    for (const Site& site : sites_) {
        const Rest rest = withoutSite(site, sigma);
        sum += logNormalBelow(rest.z);
        if (site.precision > 0) {
            const double grown = 1 + rest.variance * site.precision;
            const double off = site.precision * rest.centre - site.shift;
            sum += (std::log(grown) + off * off / (site.precision * grown)) / 2;
        }
    }
    // Then one after the other from the beginning, as normals.
    covariance_.swap(startCovariance_);
    mean_.swap(startMean_);
    for (const Site& site : sites_) {
        fillRow(site.record);
        multiply(covariance_, row_, image_, d);
        if (site.precision > 0) {
            const double variance = dot(row_, image_, d);
            const double grown = 1 + variance * site.precision;
            const double off = site.precision * dot(row_, mean_, d) - site.shift;
            sum -= (std::log(grown) + off * off / (site.precision * grown)) / 2;
        }
        updateSite(site.precision, site.shift);
    }
    return sum;
}

}  // namespace spile::outlook

// Source: NIST Statistical Reference Datasets, nonlinear regression: Misra1a (D. Misra, dental
// research, monomolecular adsorption, 1978; 14 observations, lower difficulty) and BoxBOD (G. E. P.
// Box, W. G. Hunter and J. S. Hunter, "Statistics for Experimenters", 1978, pp. 483-487; 6
// observations, higher difficulty), both y = b1 (1 - e^(-b2 x)). Data, starts and certified values:
// seen, in several public copies.
#include "core/wood/extraction.hpp"

#include <array>
#include <cmath>
#include <gtest/gtest.h>
#include <vector>

namespace spile::wood {

namespace {

struct Observation {
    double x, y;
};

struct Estimate {
    double value, deviation;
};

struct Fit {
    Estimate b1, b2;
    double squares = 0;
};

const std::vector<Observation> misra1a{
    {77.6, 10.07},  {114.9, 14.73}, {141.1, 17.94}, {190.8, 23.93}, {239.9, 29.61},
    {289.0, 35.18}, {332.8, 40.02}, {378.4, 44.82}, {434.8, 50.76}, {477.3, 55.05},
    {536.8, 61.01}, {593.1, 66.40}, {689.1, 75.47}, {760.0, 81.78}};
const std::vector<Observation> boxBod{{1, 109}, {2, 149}, {3, 149}, {5, 191}, {7, 213}, {10, 224}};

double squaresAt(const std::vector<Observation>& data, double b1, double b2)
{
    double sum = 0;
    for (const auto& [x, y] : data) {
        sum += std::pow(y - b1 * saturatingBasis(b2, x)[1], 2);
    }
    return sum;
}

// Gauss and Newton; a step that makes things worse is halved. A curve that starts at nothing has
// the one amount b1; its slope in b2 is b1 x e^(-b2 x), the other half of the basis times b1 x.
Fit fitted(const std::vector<Observation>& data, double b1, double b2)
{
    double a11 = 0;
    double a12 = 0;
    double a22 = 0;
    double squares = squaresAt(data, b1, b2);
    for (int round = 0; round < 200; ++round) {
        double r1 = 0;
        double r2 = 0;
        a11 = a12 = a22 = 0;
        for (const auto& [x, y] : data) {
            const Basis basis = saturatingBasis(b2, x);
            const double slope = b1 * x * basis[0];
            const double rest = y - b1 * basis[1];
            a11 += basis[1] * basis[1];
            a12 += basis[1] * slope;
            a22 += slope * slope;
            r1 += basis[1] * rest;
            r2 += slope * rest;
        }
        const double determinant = a11 * a22 - a12 * a12;
        double step1 = (a22 * r1 - a12 * r2) / determinant;
        double step2 = (a11 * r2 - a12 * r1) / determinant;
        for (int i = 0; i < 60; ++i) {
            const bool isAllowed = b2 + step2 > 0;
            if (isAllowed && squaresAt(data, b1 + step1, b2 + step2) <= squares) {
                b1 += step1;
                b2 += step2;
                squares = squaresAt(data, b1, b2);
                break;
            }
            step1 /= 2;
            step2 /= 2;
        }
    }
    const double variance = squares / static_cast<double>(data.size() - 2);
    const double determinant = a11 * a22 - a12 * a12;
    return {{b1, std::sqrt(variance * a22 / determinant)},
            {b2, std::sqrt(variance * a11 / determinant)},
            squares};
}

void expectCertified(const Fit& fit, const Fit& certified)
{
    const auto expectNear = [](double value, double expected) {
        EXPECT_NEAR(value, expected, 1e-8 * expected);
    };
    expectNear(fit.b1.value, certified.b1.value);
    expectNear(fit.b1.deviation, certified.b1.deviation);
    expectNear(fit.b2.value, certified.b2.value);
    expectNear(fit.b2.deviation, certified.b2.deviation);
    expectNear(fit.squares, certified.squares);
}

}  // namespace

TEST(SaturatingBasis, GivesTheCertifiedFitOfMisra1a)
{
    const Fit certified{{2.3894212918e+02, 2.7070075241e+00},
                        {5.5015643181e-04, 7.2668688436e-06},
                        1.2455138894e-01};
    expectCertified(fitted(misra1a, 500, 0.0001), certified);
    expectCertified(fitted(misra1a, 250, 0.0005), certified);
}

TEST(SaturatingBasis, GivesTheCertifiedFitOfBoxBod)
{
    const Fit certified{{2.1380940889e+02, 1.2354515176e+01},
                        {5.4723748542e-01, 1.0455993237e-01},
                        1.1680088766e+03};
    expectCertified(fitted(boxBod, 1, 1), certified);
    expectCertified(fitted(boxBod, 100, 0.75), certified);
}

}  // namespace spile::wood

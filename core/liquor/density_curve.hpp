#pragma once

#include "core/liquor/root.hpp"

#include <array>
#include <cstddef>

namespace spile::liquor {

/// The coefficients of the general formula for the density of water and ethanol.
///
/// Source    OIML R 22, International alcoholometric tables (1973, edition 1975), general formula;
///           the same in Council Directive 76/766/EEC (OJ L 262, 27.9.1976, p. 149), Annex, 4.
///           A1 to A4 and B1 to B4 read in the directive; the rest in transcriptions that agree
///           digit for digit. Their sums are tested, and the table made of them.
namespace r22 {

// a[k] belongs to p^k, b[k] to (t - 20)^(k + 1), c<i>[k] to p^(k + 1) (t - 20)^i.
inline constexpr std::array<double, 12> a = {
    9.982012300e2, -1.929769495e2, 3.891238958e2, -1.668103923e3, 1.352215441e4, -8.829278388e4,
    3.062874042e5, -6.138381234e5, 7.470172998e5, -5.478461354e5, 2.234460334e5, -3.903285426e4};
inline constexpr std::array<double, 6> b = {-2.0618513e-1, -5.2682542e-3, 3.6130013e-5,
                                            -3.8957702e-7, 7.1693540e-9,  -9.9739231e-11};
inline constexpr std::array<double, 11> c1 = {
    1.693443461530087e-1, -1.046914743455169e1, 7.196353469546523e1, -7.047478054272792e2,
    3.924090430035045e3,  -1.210164659068747e4, 2.248646550400788e4, -2.605562982188164e4,
    1.852373922069467e4,  -7.420201433430137e3, 1.285617841998974e3};
inline constexpr std::array<double, 10> c2 = {
    -1.193013005057010e-2, 2.517399633803461e-1, -2.170575700536993,   1.353034988843029e1,
    -5.029988758547014e1,  1.096355666577570e2,  -1.422753946421155e2, 1.080435942856230e2,
    -4.414153236817392e1,  7.442971530188783};
inline constexpr std::array<double, 9> c3 = {
    -6.802995733503803e-4, 1.876837790289664e-2, -2.002561813734156e-1,
    1.022992966719220,     -2.895696483903638,   4.810060584300675,
    -4.672147440794683,    2.458043105903461,    -5.411227621436812e-1};
inline constexpr std::array<double, 4> c4 = {4.075376675622027e-6, -8.763058573471110e-6,
                                             6.515031360099368e-6, -1.515784836987210e-6};
inline constexpr std::array<double, 2> c5 = {-2.788074354782409e-8, 1.345612883493354e-8};

/// Add the terms in p^1, p^2, ... that belong to one power of the temperature.
template <std::size_t count>
constexpr void add(std::array<double, 12>& terms, const std::array<double, count>& c,
                   double power) noexcept
{
    for (std::size_t k = 0; k < count; ++k) {
        terms[k + 1] += c[k] * power;
    }
}

}  // namespace r22

/// The density of water and ethanol against the mass fraction of ethanol at one temperature: the
/// general formula with its terms in temperature added up once. For loops; ethanol_water.hpp has
/// the functions that check what they are given.
class DensityCurve {
public:
    /// Requires  `t` in °C, -20 to 40.
    constexpr explicit DensityCurve(double t) noexcept
    {
        const double tau = t - 20;
        double power = 1;
        for (const double b : r22::b) {
            power *= tau;
            terms_[0] += b * power;
        }
        r22::add(terms_, r22::c1, tau);
        r22::add(terms_, r22::c2, tau * tau);
        r22::add(terms_, r22::c3, tau * tau * tau);
        r22::add(terms_, r22::c4, tau * tau * tau * tau);
        r22::add(terms_, r22::c5, tau * tau * tau * tau * tau);
    }

    /// kg/m3. Requires 0 <= `p` <= 1.
    [[nodiscard]] constexpr double at(double p) const noexcept
    {
        // Even and odd powers apart: two short chains instead of one long.
        const double square = p * p;
        double even = terms_[10];
        double odd = terms_[11];
        for (std::size_t k = 10; k > 0; k -= 2) {
            even = even * square + terms_[k - 2];
            odd = odd * square + terms_[k - 1];
        }
        return even + odd * p;
    }

    [[nodiscard]] constexpr ValueAndSlope withSlope(double p) const noexcept
    {
        double slope = 0;
        for (std::size_t k = terms_.size() - 1; k > 0; --k) {
            slope = slope * p + static_cast<double>(k) * terms_[k];
        }
        return {at(p), slope};
    }

private:
    std::array<double, 12> terms_ = r22::a;
};

}  // namespace spile::liquor

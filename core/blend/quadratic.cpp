#include "core/blend/quadratic.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace spile::blend {

namespace {

using Vector = std::vector<double>;

double dot(const Vector& a, const Vector& b)
{
    double sum = 0;
    for (std::size_t i = 0; i < a.size(); ++i) {
        sum += a[i] * b[i];
    }
    return sum;
}

// Makes m a triangle and does the same to `right`, by the largest pivots; false if m has no
// inverse.
bool eliminate(std::vector<Vector>& m, Vector& right)
{
    constexpr double nothing = 1e-14;
    const std::size_t n = right.size();
    const auto largest = [&](std::size_t k) {
        std::size_t pivot = k;
        for (std::size_t i = k + 1; i < n; ++i) {
            pivot = std::abs(m[i][k]) > std::abs(m[pivot][k]) ? i : pivot;
        }
        return pivot;
    };
    for (std::size_t k = 0; k < n; ++k) {
        const std::size_t pivot = largest(k);
        if (!(std::abs(m[pivot][k]) > nothing)) {
            return false;
        }
        std::swap(m[k], m[pivot]);
        std::swap(right[k], right[pivot]);
        for (std::size_t i = k + 1; i < n; ++i) {
            const double times = m[i][k] / m[k][k];
            for (std::size_t j = k; j < n; ++j) {
                m[i][j] -= times * m[k][j];
            }
            right[i] -= times * right[k];
        }
    }
    return true;
}

// Solves m x = right, x in its place.
bool solve(std::vector<Vector> m, Vector& right)
{
    if (!eliminate(m, right)) {
        return false;
    }
    for (std::size_t k = right.size(); k-- > 0;) {
        for (std::size_t j = k + 1; j < right.size(); ++j) {
            right[k] -= m[k][j] * right[j];
        }
        right[k] /= m[k][k];
    }
    return true;
}

class DualSolver {
public:
    explicit DualSolver(const Quadratic& programme) : p_(programme) {}

    std::optional<Vector> run()
    {
        if (!prepare()) {
            return std::nullopt;
        }
        const std::size_t stepsMost = 50 * (p_.a.size() + p_.size + 1);
        for (std::size_t step = 0; step < stepsMost; ++step) {
            const std::size_t worst = mostViolated();
            if (worst == p_.a.size()) {
                return x_;
            }
            if (!bring(worst)) {
                return std::nullopt;
            }
        }
        return std::nullopt;
    }

private:
    // The inverse of H, scaled bounds, and the least value without bounds.
    bool prepare()
    {
        const std::size_t n = p_.size;
        inverse_.assign(n, Vector(n, 0));
        std::vector<Vector> h(n, Vector(n));
        for (std::size_t i = 0; i < n; ++i) {
            std::copy_n(p_.h.begin() + static_cast<std::ptrdiff_t>(i * n), n, h[i].begin());
        }
        for (std::size_t j = 0; j < n; ++j) {
            Vector column(n, 0);
            column[j] = 1;
            if (!solve(h, column)) {
                return false;
            }
            for (std::size_t i = 0; i < n; ++i) {
                inverse_[i][j] = column[i];
            }
        }
        x_.assign(n, 0);
        for (std::size_t i = 0; i < n; ++i) {
            x_[i] = -dot(inverse_[i], p_.g);
        }
        sign_.assign(p_.a.size(), 1);
        for (const Vector& a : p_.a) {
            scale_.push_back(std::sqrt(dot(a, a)));
        }
        return true;
    }

    [[nodiscard]] double shortOf(std::size_t k) const
    {
        return sign_[k] * (p_.b[k] - dot(p_.a[k], x_));
    }

    [[nodiscard]] bool isActive(std::size_t k) const
    {
        return std::find(active_.begin(), active_.end(), k) != active_.end();
    }

    // Equalities first, each once; then the inequality that is broken most; the count if none is.
    std::size_t mostViolated()
    {
        constexpr double closeEnough = 1e-11;
        for (std::size_t k = 0; k < p_.equalities; ++k) {
            if (!isActive(k)) {
                sign_[k] = p_.b[k] < dot(p_.a[k], x_) ? -1 : 1;
                return k;
            }
        }
        std::size_t worst = p_.a.size();
        double most = closeEnough;
        for (std::size_t k = p_.equalities; k < p_.a.size(); ++k) {
            const double size = std::max(std::abs(p_.b[k]), scale_[k]);
            const double by = size > 0 ? shortOf(k) / size : 0;
            if (by > most && !isActive(k)) {
                most = by;
                worst = k;
            }
        }
        return worst;
    }

    // The step in x that turns the bound's multiplier up by one, what it does to the others', and
    // how far the bound alone would let x go.
    bool direction(std::size_t k, Vector& z, Vector& r, double& alone) const
    {
        const std::size_t n = p_.size;
        Vector normal = p_.a[k];
        for (double& value : normal) {
            value *= sign_[k];
        }
        const auto times = [&](const Vector& v) {
            Vector out(n);
            for (std::size_t i = 0; i < n; ++i) {
                out[i] = dot(inverse_[i], v);
            }
            return out;
        };
        const Vector whole = times(normal);
        z = whole;
        alone = dot(normal, whole);
        r.assign(active_.size(), 0);
        if (active_.empty()) {
            return true;
        }
        std::vector<Vector> step;
        std::vector<Vector> cross(active_.size(), Vector(active_.size()));
        for (const std::size_t other : active_) {
            Vector a = p_.a[other];
            for (double& value : a) {
                value *= sign_[other];
            }
            step.push_back(times(a));
        }
        for (std::size_t i = 0; i < active_.size(); ++i) {
            for (std::size_t j = 0; j < active_.size(); ++j) {
                cross[i][j] = sign_[active_[i]] * dot(p_.a[active_[i]], step[j]);
            }
            r[i] = sign_[active_[i]] * dot(p_.a[active_[i]], whole);
        }
        if (!solve(cross, r)) {
            return false;
        }
        for (std::size_t i = 0; i < active_.size(); ++i) {
            for (std::size_t j = 0; j < n; ++j) {
                z[j] -= r[i] * step[i][j];
            }
        }
        return true;
    }

    // How far the multiplier can go up before an active bound's would turn, and which that is.
    [[nodiscard]] std::pair<double, std::size_t> firstToTurn(const Vector& r) const
    {
        std::pair<double, std::size_t> first{std::numeric_limits<double>::infinity(), 0};
        for (std::size_t i = 0; i < active_.size(); ++i) {
            if (active_[i] >= p_.equalities && r[i] > 0) {
                first = std::min(first, {force_[i] / r[i], i});
            }
        }
        return first;
    }

    void go(double step, const Vector& z, const Vector& r)
    {
        for (std::size_t i = 0; i < active_.size(); ++i) {
            force_[i] -= step * r[i];
        }
        for (std::size_t j = 0; j < x_.size(); ++j) {
            x_[j] += step * z[j];
        }
    }

    // Brings bound k to hold with equality, dropping those that pull the wrong way.
    bool bring(std::size_t k)
    {
        double multiplier = 0;
        for (;;) {
            Vector z;
            Vector r;
            double alone = 0;
            if (!direction(k, z, r, alone)) {
                return false;
            }
            const auto [most, dropped] = firstToTurn(r);
            double along = sign_[k] * dot(p_.a[k], z);
            constexpr double none = 1e-11;
            if (along <= none * alone) {  // the active bounds leave x no way to go
                z.assign(z.size(), 0);
                along = 0;
            }
            const double full = shortOf(k) / along;  // infinite without a way
            const double step = std::min(most, full);
            if (!std::isfinite(step)) {
                return false;  // no x keeps this bound beside the others
            }
            go(step, z, r);
            multiplier += step;
            if (full <= most) {
                active_.push_back(k);
                force_.push_back(multiplier);
                return true;
            }
            active_.erase(active_.begin() + static_cast<std::ptrdiff_t>(dropped));
            force_.erase(force_.begin() + static_cast<std::ptrdiff_t>(dropped));
        }
    }

    const Quadratic& p_;
    std::vector<Vector> inverse_;
    Vector x_, sign_, scale_;
    std::vector<std::size_t> active_;
    Vector force_;  // the multipliers of the active bounds
};

}  // namespace

std::optional<std::vector<double>> leastOf(const Quadratic& programme)
{
    return DualSolver(programme).run();
}

}  // namespace spile::blend

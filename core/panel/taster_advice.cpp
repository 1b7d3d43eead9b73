#include "core/panel/attribute_reading.hpp"

#include <algorithm>
#include <cmath>

namespace spile::panel {

namespace {

// A number in which one taster is worse the larger it is, on one attribute.
struct Sign {
    int attribute = 0;
    Measured size;      // compared with the limit
    Measured measured;  // told
};

constexpr double noMore = 1e-12;

// The worst attribute, if it alone or the mean of all lies beyond the limit, and beyond half of it
// even if chance had a hand in it: the panel's other odd tasters move a plain one by so much.
const Sign* worstBeyond(const std::vector<Sign>& signs, double limit)
{
    double sum = 0;
    double errors = 0;
    double squares = 0;
    const Sign* worst = nullptr;
    for (const Sign& sign : signs) {
        sum += sign.size.value;
        errors += sign.size.error;
        squares += sign.size.error * sign.size.error;
        if (worst == nullptr || sign.size.value > worst->size.value) {
            worst = &sign;
        }
    }
    const auto isSure = [limit](double value, double error, double sure) {
        return value >= limit - noMore && value >= limit / 2 + sure * error;
    };
    const auto all = static_cast<double>(signs.size());
    const double error = std::sqrt(haloShare * errors * errors + (1 - haloShare) * squares);
    if (worst != nullptr && isSure(sum / all, error / all, sureOfAll)) {
        return worst;
    }
    const Sign* alone = nullptr;
    for (const Sign& sign : signs) {
        const bool isWorse = alone == nullptr || sign.size.value > alone->size.value;
        if (isWorse && isSure(sign.size.value, sign.size.error, sureOfOne)) {
            alone = &sign;
        }
    }
    return alone;
}

// What one kind of advice is about: its signs and their limit.
class Advisor {
public:
    explicit Advisor(const TasterReport& report) : report_(report) {}

    std::vector<Advice> run()
    {
        if (report_.beers < beersNeeded) {
            return {{AdviceKind::TooFew, {}, {}, 0, beersNeeded - report_.beers}};
        }
        check(AdviceKind::ReadsHigh, signs(&TasterOnAttribute::bias, 0, 1), biasLimit);
        check(AdviceKind::ReadsLow, signs(&TasterOnAttribute::bias, 0, -1), biasLimit);
        check(AdviceKind::Wide, spreads(), std::log(wideLimit), wideLimit);
        check(AdviceKind::NarrowRange, signs(&TasterOnAttribute::gain, 1, -1), 1 - narrowGain,
              narrowGain);
        check(AdviceKind::WideRange, signs(&TasterOnAttribute::gain, 1, 1), wideGain - 1, wideGain);
        const bool drifts =
            checkBothWays(AdviceKind::Drifting, &TasterOnAttribute::driftPerYear, driftLimit);
        if (!drifts) {
            checkBothWays(AdviceKind::OutOfLineLately, &TasterOnAttribute::latest, latestLimit);
        }
        if (advice_.empty()) {
            advice_.push_back({AdviceKind::Steady, {}, {}, 0, report_.beers});
        }
        return std::move(advice_);
    }

private:
    using Number = std::optional<Measured> TasterOnAttribute::*;

    // How far a number lies above `usual`, or below it for a direction of -1.
    [[nodiscard]] std::vector<Sign> signs(Number number, double usual, double direction) const
    {
        std::vector<Sign> found;
        for (const TasterOnAttribute& one : report_.attributes) {
            if (const auto& value = one.*number; value && one.beers >= beersNeeded) {
                found.push_back(
                    {one.attribute, {direction * (value->value - usual), value->error}, *value});
            }
        }
        return found;
    }

    // The logarithm of a taster's spread beside the others': its error is known from the freedom.
    [[nodiscard]] std::vector<Sign> spreads() const
    {
        std::vector<Sign> found;
        for (const TasterOnAttribute& one : report_.attributes) {
            if (!one.spread || one.spread->othersFreedom < 1) {
                continue;
            }
            // Steps of the ladder alone scatter this much, even if repeats happen to be the same.
            const double least = std::sqrt(stepVariance);
            const double times =
                std::max(one.spread->deviation, least) / std::max(one.spread->others, least);
            const double error =
                std::sqrt(0.5 / one.spread->freedom + 0.5 / one.spread->othersFreedom);
            found.push_back({one.attribute, {std::log(times), error}, {times, error}});
        }
        return found;
    }

    bool check(AdviceKind kind, const std::vector<Sign>& found, double limit)
    {
        return check(kind, found, limit, limit);
    }

    bool check(AdviceKind kind, const std::vector<Sign>& found, double limit, double told)
    {
        const Sign* worst = worstBeyond(found, limit);
        if (worst != nullptr) {
            advice_.push_back({kind, worst->attribute, worst->measured, told, report_.beers});
        }
        return worst != nullptr;
    }

    bool checkBothWays(AdviceKind kind, Number number, double limit)
    {
        return check(kind, signs(number, 0, 1), limit) || check(kind, signs(number, 0, -1), limit);
    }

    const TasterReport& report_;
    std::vector<Advice> advice_;
};

}  // namespace

std::vector<Advice> adviceFor(const TasterReport& report) { return Advisor(report).run(); }

}  // namespace spile::panel

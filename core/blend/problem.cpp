#include "core/blend/problem.hpp"

#include <cmath>
#include <set>

namespace spile::blend {

static std::string text(double value) { return std::to_string(value); }

static Result<void> checkRange(const std::string& what, double value, double low, double high,
                               const char* range)
{
    if (!std::isfinite(value)) {
        return fail(ErrorCode::NotFinite, what);
    }
    if (value < low || value > high) {
        return fail(ErrorCode::OutOfRange, what, text(value), range);
    }
    return {};
}

static constexpr double far = 1e9;

static Result<void> checkBounds(const std::string& what, const std::optional<double>& low,
                                const std::optional<double>& high)
{
    if (low && high && *low > *high) {
        return fail(ErrorCode::Conflict, what, text(*low) + " to " + text(*high),
                    "the lower bound first");
    }
    return {};
}

static Result<void> checkWishes(const std::vector<Wish>& wishes)
{
    std::set<std::string> seen;
    bool targeted = false;
    for (const Wish& wish : wishes) {
        if (!seen.insert(wish.attribute).second) {
            return fail(ErrorCode::Conflict, wish.attribute, "named twice", "each attribute once");
        }
        SPILE_TRY(checkRange("weight of " + wish.attribute, wish.weight, 1e-9, far, "above 0"));
        for (const auto* number : {&wish.target, &wish.low, &wish.high}) {
            if (*number) {
                SPILE_TRY(checkRange(wish.attribute, **number, -far, far, "a level"));
            }
        }
        SPILE_TRY(checkBounds("window of " + wish.attribute, wish.low, wish.high));
        targeted = targeted || wish.target;
    }
    if (!targeted) {
        return fail(ErrorCode::OutOfRange, "target", "none", "a target for at least one attribute");
    }
    return {};
}

static Result<void> checkBarrel(const Barrel& barrel, const std::vector<Wish>& wishes)
{
    const std::string& name = barrel.name;
    SPILE_TRY(checkRange("amount of " + name, barrel.amount, 1e-9, far, "above 0"));
    SPILE_TRY(checkRange("strength of " + name, barrel.strength, 0, 1, "0 to 1"));
    if (barrel.mean.size() != wishes.size() || barrel.deviation.size() != wishes.size()) {
        return fail(ErrorCode::OutOfRange, name, std::to_string(barrel.mean.size()) + " levels",
                    "a level and its deviation for each of the " + std::to_string(wishes.size()) +
                        " attributes");
    }
    for (std::size_t i = 0; i < wishes.size(); ++i) {
        const std::string what = wishes[i].attribute + " of " + name;
        SPILE_TRY(checkRange(what, barrel.mean[i], -far, far, "a level"));
        SPILE_TRY(checkRange("deviation of " + what, barrel.deviation[i], 0, far, "0 or more"));
    }
    return {};
}

static Result<void> checkLimits(const Limits& limits)
{
    if (limits.barrelsMost < 1 || limits.barrelsMost > barrelsAtMost) {
        return fail(ErrorCode::OutOfRange, "number of barrels", std::to_string(limits.barrelsMost),
                    "1 to " + std::to_string(barrelsAtMost));
    }
    if (limits.partsMost > partsAtMost) {
        return fail(ErrorCode::OutOfRange, "number of part barrels",
                    std::to_string(limits.partsMost), "0 to " + std::to_string(partsAtMost));
    }
    SPILE_TRY(checkRange("least share of a part barrel", limits.leastShare, 0, 1, "0 to 1"));
    SPILE_TRY(checkRange("least volume", limits.amountLeast, 0, far, "0 or more"));
    if (limits.amountMost) {
        SPILE_TRY(checkRange("greatest volume", *limits.amountMost, 1e-9, far, "above 0"));
    }
    for (const auto* strength : {&limits.strengthLeast, &limits.strengthMost}) {
        if (*strength) {
            SPILE_TRY(checkRange("strength", **strength, 0, 1, "0 to 1"));
        }
    }
    SPILE_TRY(checkBounds("volume", limits.amountLeast, limits.amountMost));
    return checkBounds("strength", limits.strengthLeast, limits.strengthMost);
}

Result<void> checkProblem(const Problem& problem)
{
    SPILE_TRY(checkWishes(problem.wishes));
    SPILE_TRY(checkLimits(problem.limits));
    if (problem.barrels.empty() || problem.barrels.size() > candidatesAtMost) {
        return fail(ErrorCode::OutOfRange, "barrels", std::to_string(problem.barrels.size()),
                    "1 to " + std::to_string(candidatesAtMost));
    }
    std::set<std::string> seen;
    for (const Barrel& barrel : problem.barrels) {
        if (!seen.insert(barrel.name).second) {
            return fail(ErrorCode::Conflict, "barrel", barrel.name, "each barrel once");
        }
        SPILE_TRY(checkBarrel(barrel, problem.wishes));
    }
    return {};
}

}  // namespace spile::blend

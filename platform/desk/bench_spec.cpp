#include "platform/desk/bench_spec.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <set>

namespace spile::desk {

using nlohmann::json;

namespace {

tl::unexpected<Error> wrong(const std::string& member, const std::string& limit)
{
    return fail(ErrorCode::Malformed, member, {}, limit);
}

Result<void> checkMembers(const json& object, const std::string& what,
                          const std::set<std::string>& known)
{
    if (!object.is_object()) {
        return wrong(what, "an object in braces");
    }
    for (const auto& [name, value] : object.items()) {
        if (!known.contains(name)) {
            return fail(ErrorCode::Malformed, what, name, "no such member is known");
        }
    }
    return {};
}

// The number of that name; none if it is missing or null.
Result<std::optional<double>> numberOf(const json& object, const std::string& name)
{
    const auto found = object.find(name);
    if (found == object.end() || found->is_null()) {
        return std::optional<double>();
    }
    if (!found->is_number()) {
        return wrong(name, "a number");
    }
    return std::optional(found->get<double>());
}

Result<double> numberOf(const json& object, const std::string& name, double usual)
{
    SPILE_ASSIGN(found, numberOf(object, name));
    return found.value_or(usual);
}

Result<std::size_t> countOf(const json& object, const std::string& name, std::size_t usual)
{
    const auto found = object.find(name);
    if (found == object.end() || found->is_null()) {
        return usual;
    }
    if (!found->is_number_unsigned()) {
        return wrong(name, "a whole number, 0 or more");
    }
    return found->get<std::size_t>();
}

// The object of that name, with nothing but numbers in it; empty if it is missing.
Result<std::map<std::string, double>> numbersOf(const json& object, const std::string& name)
{
    std::map<std::string, double> numbers;
    const auto found = object.find(name);
    if (found == object.end() || found->is_null()) {
        return numbers;
    }
    if (!found->is_object()) {
        return wrong(name, "an object with a number for each attribute");
    }
    for (const auto& [attribute, value] : found->items()) {
        if (!value.is_number()) {
            return wrong(std::string(name).append(" of ").append(attribute), "a number");
        }
        numbers[attribute] = value.get<double>();
    }
    return numbers;
}

Result<void> readWindows(const json& spec, std::map<std::string, blend::Wish>& wishes)
{
    const auto windows = spec.find("window");
    if (windows == spec.end() || windows->is_null()) {
        return {};
    }
    if (!windows->is_object()) {
        return wrong("window", "an object with two numbers for each attribute");
    }
    for (const auto& [attribute, pair] : windows->items()) {
        if (!pair.is_array() || pair.size() != 2 || !pair[0].is_number() || !pair[1].is_number()) {
            return wrong("window of " + attribute, "two numbers, the lower first");
        }
        blend::Wish& wish = wishes[attribute];
        wish.low = pair[0].get<double>();
        wish.high = pair[1].get<double>();
    }
    return {};
}

Result<std::vector<blend::Wish>> readWishes(const json& spec)
{
    std::map<std::string, blend::Wish> wishes;
    SPILE_ASSIGN(targets, numbersOf(spec, "target"));
    for (const auto& [attribute, target] : targets) {
        wishes[attribute].target = target;
    }
    SPILE_TRY(readWindows(spec, wishes));
    SPILE_ASSIGN(weights, numbersOf(spec, "weight"));
    for (const auto& [attribute, weight] : weights) {
        if (!wishes.contains(attribute)) {
            return fail(ErrorCode::Malformed, "weight", attribute,
                        "an attribute that has a target or a window");
        }
        wishes[attribute].weight = weight;
    }
    std::vector<blend::Wish> list;
    for (auto& [attribute, wish] : wishes) {
        wish.attribute = attribute;
        list.push_back(wish);
    }
    return list;
}

Result<blend::Barrel> readBarrel(const json& object, const std::vector<blend::Wish>& wishes,
                                 bool needsStrength)
{
    SPILE_TRY(checkMembers(object, "barrel", {"name", "volume_l", "strength_abv", "mean", "sd"}));
    const auto name = object.find("name");
    if (name == object.end() || !name->is_string()) {
        return wrong("name of a barrel", "a text");
    }
    blend::Barrel barrel{name->get<std::string>()};
    SPILE_ASSIGN(volume, numberOf(object, "volume_l"));
    if (!volume) {
        return wrong("volume_l of " + barrel.name, "a number");
    }
    barrel.amount = *volume;
    SPILE_ASSIGN(strength, numberOf(object, "strength_abv"));
    if (!strength && needsStrength) {
        return wrong("strength_abv of " + barrel.name, "a number, since its bounds are given");
    }
    barrel.strength = strength.value_or(0) / perCent;
    SPILE_ASSIGN(mean, numbersOf(object, "mean"));
    SPILE_ASSIGN(deviation, numbersOf(object, "sd"));
    for (const blend::Wish& wish : wishes) {
        const auto level = mean.find(wish.attribute);
        if (level == mean.end()) {
            return wrong("mean of " + barrel.name, "a number for " + wish.attribute);
        }
        barrel.mean.push_back(level->second);
        const auto doubt = deviation.find(wish.attribute);
        barrel.deviation.push_back(doubt == deviation.end() ? 0 : doubt->second);
    }
    return barrel;
}

Result<blend::Limits> readLimits(const json& spec)
{
    blend::Limits limits;
    const auto strength = [&](const char* name) -> Result<std::optional<double>> {
        SPILE_ASSIGN(found, numberOf(spec, name));
        return found ? std::optional(*found / perCent) : std::nullopt;
    };
    SPILE_ASSIGN(barrels, countOf(spec, "max_barrels", limits.barrelsMost));
    SPILE_ASSIGN(parts, countOf(spec, "max_part", limits.partsMost));
    SPILE_ASSIGN(share, numberOf(spec, "min_part_share", limits.leastShare));
    SPILE_ASSIGN(volumeLeast, numberOf(spec, "volume_min_l", limits.amountLeast));
    SPILE_ASSIGN(volumeMost, numberOf(spec, "volume_max_l"));
    SPILE_ASSIGN(strengthLeast, strength("strength_min_abv"));
    SPILE_ASSIGN(strengthMost, strength("strength_max_abv"));
    return blend::Limits{barrels,    parts,         share,       volumeLeast,
                         volumeMost, strengthLeast, strengthMost};
}

}  // namespace

Result<blend::Problem> readBenchSpec(std::string_view text)
{
    const json spec = json::parse(text, nullptr, false);
    if (spec.is_discarded()) {
        return wrong("bench file", "JSON");
    }
    SPILE_TRY(checkMembers(
        spec, "bench file",
        {"target", "weight", "window", "barrels", "max_barrels", "max_part", "min_part_share",
         "volume_min_l", "volume_max_l", "strength_min_abv", "strength_max_abv"}));
    blend::Problem problem;
    SPILE_ASSIGN(wishes, readWishes(spec));
    problem.wishes = std::move(wishes);
    SPILE_ASSIGN(limits, readLimits(spec));
    problem.limits = limits;
    const auto barrels = spec.find("barrels");
    if (barrels == spec.end() || !barrels->is_array()) {
        return wrong("barrels", "a list of barrels");
    }
    for (const json& object : *barrels) {
        SPILE_ASSIGN(barrel, readBarrel(object, problem.wishes,
                                        limits.strengthLeast || limits.strengthMost));
        problem.barrels.push_back(std::move(barrel));
    }
    return problem;
}

}  // namespace spile::desk

#pragma once

#include "core/plan/numbers.hpp"

#include <cmath>
#include <string>

/// The numbers of numbers.hpp, by subject; for the files numbers*.cpp alone.
namespace spile::plan {

struct NumberSpec {
    std::string_view name;
    SheetNumber (*of)(const WorkFacts&);
};
[[nodiscard]] std::span<const NumberSpec> barrelNumbers();
[[nodiscard]] std::span<const NumberSpec> gasNumbers();
[[nodiscard]] std::span<const NumberSpec> beerNumbers();
[[nodiscard]] std::span<const NumberSpec> emptyingNumbers();
[[nodiscard]] std::span<const NumberSpec> finishingNumbers();
[[nodiscard]] std::span<const NumberSpec> packagingNumbers();

/// What was chosen; empty if nothing was.
[[nodiscard]] inline std::string chosen(const WorkFacts& facts, const std::string& name)
{
    const auto found = facts.values.find(name);
    return found == facts.values.end() ? std::string() : found->second.text;
}
[[nodiscard]] inline SheetNumber unknown(std::string name)
{
    return {Form::None, 0, {}, {}, std::move(name), false};
}
[[nodiscard]] inline SheetNumber said(Form form, double value)
{
    return {form, value, {}, {}, {}, false};
}
[[nodiscard]] inline SheetNumber said(Form form, double value, double low, double high)
{
    return {form, value, low, high, {}, false};
}
[[nodiscard]] inline SheetNumber inWord(std::string word)
{
    return {Form::Word, 0, {}, {}, std::move(word), false};
}

/// The number of a result, or the name of what stands in its way.
template <class T, class Say>
[[nodiscard]] SheetNumber numberFrom(const Result<T>& result, Say say)
{
    return result ? say(*result) : unknown(result.error().subject);
}

[[nodiscard]] inline std::optional<double> answered(const WorkFacts& facts, const std::string& name)
{
    const auto found = facts.values.find(name);
    return found == facts.values.end() || !found->second.number
               ? std::nullopt
               : std::optional(static_cast<double>(*found->second.number));
}
/// Errors    NotFound, naming the ask.
[[nodiscard]] inline Result<double> needAnswer(const WorkFacts& facts, const std::string& name)
{
    const auto found = answered(facts, name);
    return found ? Result<double>(*found)
                 : Result<double>(fail(ErrorCode::NotFound, name, "nothing", "a number"));
}
[[nodiscard]] inline Result<Volume> needVolumeAnswer(const WorkFacts& facts,
                                                     const std::string& name)
{
    SPILE_ASSIGN(ml, needAnswer(facts, name));
    return millilitres(ml);
}

/// Errors    NotFound, subject "lot", if it is no lot that is worked on.
[[nodiscard]] inline Result<LotFacts> needLotFacts(const WorkFacts& facts)
{
    return facts.lot ? Result<LotFacts>(*facts.lot)
                     : Result<LotFacts>(fail(ErrorCode::NotFound, "lot", "nothing", "a lot"));
}

/// As it was read last, else what is usual of strong beer.
[[nodiscard]] double gravityOf(const WorkFacts& facts);
/// How long the barrel has been empty; as long as is usual for a bought one if nobody knows.
[[nodiscard]] std::optional<Duration> emptyFor(const WorkFacts& facts);
[[nodiscard]] Result<Area> innerAreaOf(const WorkFacts& facts);
[[nodiscard]] Result<Volume> fullVolumeOf(const WorkFacts& facts);

}  // namespace spile::plan

#include "core/units/parse.hpp"

#include <cmath>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace spile {

namespace {

rc::Gen<Measurand> anyMeasurand()
{
    return rc::gen::map(rc::gen::inRange(0, static_cast<int>(Measurand::Count) + 1),
                        [](int i) { return static_cast<Measurand>(i); });
}

rc::Gen<double> anyAmount()
{
    return rc::gen::map(
        rc::gen::pair(rc::gen::inRange(-12, 19), rc::gen::arbitrary<std::int32_t>()),
        [](const auto& drawn) {
            return std::pow(10.0, drawn.first) * static_cast<double>(drawn.second) / 2147483648.0;
        });
}

// Words of which quantities are made, in any order.
rc::Gen<std::string> anyNearQuantity()
{
    const auto pieces = rc::gen::container<std::vector<std::string>>(rc::gen::element<std::string>(
        "1", "0", "53", ".", ",", "e", "E", "-", "+", " ", "\t", "inf", "nan", "0x", "L", "gal",
        "%", "C", "\u00b0", "psi", "SG", "/h", "min", "999", std::string(1, '\0')));
    return rc::gen::map(pieces, [](const std::vector<std::string>& drawn) {
        std::string text;
        for (const std::string& piece : drawn) {
            text += piece;
        }
        return text;
    });
}

}  // namespace

RC_GTEST_PROP(Quantity, IsReadBackAsItWasWritten, ())
{
    const Measurand measurand = *anyMeasurand();
    const auto units = unitsOf(measurand);
    const UnitSpec& spec = units[*rc::gen::inRange<std::size_t>(0, units.size())];
    const double amount = *anyAmount();
    const double si = measurand == Measurand::Count ? std::floor(std::abs(amount)) : amount;
    const auto text = formatQuantity(si, measurand, spec.symbol, 17);
    RC_ASSERT(text.has_value());
    const auto back = parseQuantity(*text, measurand);
    RC_ASSERT(back.has_value());
    RC_ASSERT(std::abs(*back - si) <= 1e-15 * (std::abs(si) + std::abs(spec.offset)));
}

RC_GTEST_PROP(Quantity, IsWrittenAsTheNearestOfItsDigits, ())
{
    const double amount = *anyAmount();
    const int digits = *rc::gen::inRange(1, 18);
    RC_PRE(amount != 0);
    const auto back =
        parseQuantity(*formatQuantity(amount, Measurand::Mass, "kg", digits), Measurand::Mass);
    RC_ASSERT(back.has_value());
    const double power = std::floor(std::log10(std::abs(amount)));
    RC_ASSERT(std::abs(*back - amount) <=
              0.5000001 * std::pow(10.0, power - digits + 1) + 1e-15 * std::abs(amount));
}

RC_GTEST_PROP(ParseQuantity, AnswersAnyBytesWithAFiniteNumberOrAnError, ())
{
    const Measurand measurand = *anyMeasurand();
    const auto text = *rc::gen::oneOf(rc::gen::arbitrary<std::string>(), anyNearQuantity());
    const auto parsed = parseQuantity(text, measurand);
    if (parsed) {
        RC_ASSERT(std::isfinite(*parsed));
        // Nothing is read as a quantity that has no digit or has more than its grammar.
        RC_ASSERT(text.find_first_of("0123456789") != std::string::npos);
        RC_ASSERT((text.find_first_of(std::string(",xif\0", 5)) == std::string::npos ||
                   text.find("proof") != std::string::npos ||
                   text.find("min") != std::string::npos));
    } else {
        RC_ASSERT(parsed.error().value == text);
        RC_ASSERT(!parsed.error().limit.empty());
    }
}

}  // namespace spile

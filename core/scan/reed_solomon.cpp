#include "core/scan/reed_solomon.hpp"

#include <algorithm>
#include <array>
#include <cstddef>

namespace spile::scan {

namespace {

constexpr int most = 64;  // of check bytes
constexpr int order = 255;

struct Field {
    std::array<std::uint8_t, 2 * std::size_t{order}> power{};  // of the root x
    std::array<std::uint8_t, order + 1> log{};
};

constexpr Field makeField()
{
    Field field;
    unsigned value = 1;
    for (unsigned i = 0; i < order; ++i) {
        field.power[i] = static_cast<std::uint8_t>(value);
        field.power[i + order] = static_cast<std::uint8_t>(value);
        field.log[value] = static_cast<std::uint8_t>(i);
        value <<= 1U;
        if (value > order) {
            value ^= 0x11dU;
        }
    }
    return field;
}

constexpr Field field = makeField();

std::uint8_t powerOf(int exponent)
{
    return field.power[static_cast<std::size_t>(exponent % order)];
}

std::uint8_t times(std::uint8_t a, std::uint8_t b)
{
    return a == 0 || b == 0 ? std::uint8_t{0}
                            : field.power[std::size_t{field.log[a]} + std::size_t{field.log[b]}];
}

std::uint8_t inverse(std::uint8_t a) { return field.power[std::size_t{order} - field.log[a]]; }

// From the constant up.
using Polynomial = std::array<std::uint8_t, most + 1>;

std::uint8_t valueAt(const Polynomial& polynomial, int degree, std::uint8_t x)
{
    std::uint8_t value = 0;
    for (int i = degree; i >= 0; --i) {
        value =
            static_cast<std::uint8_t>(times(value, x) ^ polynomial[static_cast<std::size_t>(i)]);
    }
    return value;
}

struct Locator {
    Polynomial polynomial{};
    int degree = 0;
};

// The polynomial whose roots are the inverse places of what is erased.
Locator locatorOf(std::span<const std::uint8_t> erased, std::size_t length)
{
    Locator locator;
    locator.polynomial[0] = 1;
    for (const std::uint8_t index : erased) {
        const std::uint8_t place = powerOf(static_cast<int>(length) - 1 - index);
        ++locator.degree;
        for (int i = locator.degree; i > 0; --i) {
            const auto at = static_cast<std::size_t>(i);
            locator.polynomial[at] ^= times(locator.polynomial[at - 1], place);
        }
    }
    return locator;
}

// Berlekamp and Massey: lengthen `locator` by the errors that are not known.
void findErrors(const Polynomial& syndromes, int parity, Locator& locator)
{
    const int erasures = locator.degree;
    Polynomial previous = locator.polynomial;
    int degree = erasures;
    for (int r = erasures; r < parity; ++r) {
        std::uint8_t discrepancy = 0;
        for (int i = 0; i <= std::min(r, most); ++i) {
            discrepancy ^= times(locator.polynomial[static_cast<std::size_t>(i)],
                                 syndromes[static_cast<std::size_t>(r - i)]);
        }
        std::copy_backward(previous.begin(), previous.end() - 1, previous.end());
        previous[0] = 0;
        if (discrepancy == 0) {
            continue;
        }
        Polynomial next = locator.polynomial;
        for (std::size_t i = 0; i < next.size(); ++i) {
            next[i] ^= times(discrepancy, previous[i]);
        }
        if (2 * degree <= r + erasures) {
            degree = r + 1 + erasures - degree;
            const std::uint8_t scale = inverse(discrepancy);
            for (std::size_t i = 0; i < next.size(); ++i) {
                previous[i] = times(locator.polynomial[i], scale);
            }
        }
        locator.polynomial = next;
    }
    locator.degree = most;
    while (locator.degree > 0 &&
           locator.polynomial[static_cast<std::size_t>(locator.degree)] == 0) {
        --locator.degree;
    }
}

bool syndromesOf(std::span<const std::uint8_t> word, int parity, Polynomial& syndromes)
{
    bool isValid = true;
    for (int i = 0; i < parity; ++i) {
        std::uint8_t value = 0;
        const std::uint8_t root = powerOf(i);
        for (const std::uint8_t byte : word) {
            value = static_cast<std::uint8_t>(times(value, root) ^ byte);
        }
        syndromes[static_cast<std::size_t>(i)] = value;
        isValid = isValid && value == 0;
    }
    return isValid;
}

// Forney: what to add to each byte. False if the locator has not as many roots as it should.
bool findCorrections(const Polynomial& syndromes, int parity, const Locator& locator,
                     std::span<std::uint8_t> corrections)
{
    // The evaluator: syndromes times locator, as far as the parity reaches.
    Polynomial evaluator{};
    for (int i = 0; i < parity; ++i) {
        for (int j = 0; j <= std::min(i, locator.degree); ++j) {
            evaluator[static_cast<std::size_t>(i)] ^=
                times(locator.polynomial[static_cast<std::size_t>(j)],
                      syndromes[static_cast<std::size_t>(i - j)]);
        }
    }
    // The derivative has the odd coefficients, one place lower.
    Polynomial derivative{};
    for (int i = 1; i <= locator.degree; i += 2) {
        derivative[static_cast<std::size_t>(i - 1)] =
            locator.polynomial[static_cast<std::size_t>(i)];
    }
    int roots = 0;
    for (std::size_t index = 0; index < corrections.size(); ++index) {
        const int exponent = static_cast<int>(corrections.size() - 1 - index);
        const std::uint8_t inversePlace = powerOf(order - exponent);
        if (valueAt(locator.polynomial, locator.degree, inversePlace) != 0) {
            continue;
        }
        const std::uint8_t slope = valueAt(derivative, locator.degree, inversePlace);
        if (slope == 0) {
            return false;
        }
        ++roots;
        corrections[index] = times(
            powerOf(exponent), times(valueAt(evaluator, parity - 1, inversePlace), inverse(slope)));
    }
    return roots == locator.degree;
}

}  // namespace

bool correct(std::span<std::uint8_t> word, int parity, std::span<const std::uint8_t> erased)
{
    if (parity > most || static_cast<int>(erased.size()) > parity) {
        return false;
    }
    Polynomial syndromes{};
    if (syndromesOf(word, parity, syndromes)) {
        return true;
    }
    Locator locator = locatorOf(erased, word.size());
    const int erasures = locator.degree;
    findErrors(syndromes, parity, locator);
    std::array<std::uint8_t, order> all{};
    const auto corrections = std::span(all).first(word.size());
    if (2 * locator.degree - erasures > parity ||
        !findCorrections(syndromes, parity, locator, corrections)) {
        return false;
    }
    const auto apply = [&] {
        std::transform(
            word.begin(), word.end(), corrections.begin(), word.begin(),
            [](std::uint8_t a, std::uint8_t b) { return static_cast<std::uint8_t>(a ^ b); });
    };
    apply();
    const bool isValid = syndromesOf(word, parity, syndromes);
    if (!isValid) {
        apply();  // back
    }
    return isValid;
}

void addParity(std::span<const std::uint8_t> data, std::span<std::uint8_t> parity)
{
    const auto count = static_cast<int>(parity.size());
    Polynomial generator{};
    generator[0] = 1;
    for (int i = 0; i < count; ++i) {
        const std::uint8_t root = powerOf(i);
        for (int j = i + 1; j > 0; --j) {
            const auto at = static_cast<std::size_t>(j);
            generator[at] =
                static_cast<std::uint8_t>(generator[at - 1] ^ times(generator[at], root));
        }
        generator[0] = times(generator[0], root);
    }
    std::fill(parity.begin(), parity.end(), std::uint8_t{0});
    for (const std::uint8_t byte : data) {
        const auto factor = static_cast<std::uint8_t>(byte ^ parity[0]);
        std::copy(parity.begin() + 1, parity.end(), parity.begin());
        parity.back() = 0;
        for (int j = 0; j < count; ++j) {
            parity[static_cast<std::size_t>(j)] ^=
                times(factor, generator[static_cast<std::size_t>(count - 1 - j)]);
        }
    }
}

}  // namespace spile::scan

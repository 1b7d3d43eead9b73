#include "core/base/simulated.hpp"
#include "core/scan/reed_solomon.hpp"

#include <algorithm>
#include <gtest/gtest.h>
#include <numeric>
#include <rapidcheck/gtest.h>
#include <vector>

namespace spile::scan {

RC_GTEST_PROP(ReedSolomon, CorrectsAllThatItPromises, ())
{
    const int parity = *rc::gen::inRange(2, 65);
    const int data = *rc::gen::inRange(1, 120);
    const int erasures = *rc::gen::inRange(0, std::min(parity, data + parity) + 1);
    const int errors = *rc::gen::inRange(0, (parity - erasures) / 2 + 1);
    SeededRandom random(*rc::gen::arbitrary<std::uint32_t>());
    std::vector<std::uint8_t> word(static_cast<std::size_t>(data + parity));
    const std::span<std::uint8_t> all(word);
    random.fill(all.first(static_cast<std::size_t>(data)));
    addParity(all.first(static_cast<std::size_t>(data)),
              all.last(static_cast<std::size_t>(parity)));
    const auto sent = word;

    std::vector<std::uint8_t> places(word.size());
    std::iota(places.begin(), places.end(), std::uint8_t{0});
    for (std::size_t i = places.size(); i > 1; --i) {
        std::swap(places[i - 1], places[random.below(static_cast<std::uint32_t>(i))]);
    }
    for (int i = 0; i < erasures + errors; ++i) {
        // What is erased may be right by chance; an error is not.
        const auto change =
            static_cast<std::uint8_t>(i < erasures ? random.below(256) : 1 + random.below(255));
        word[places[static_cast<std::size_t>(i)]] ^= change;
    }
    RC_ASSERT(
        correct(word, parity,
                std::span<const std::uint8_t>(places).first(static_cast<std::size_t>(erasures))));
    RC_ASSERT((word == sent));
}

RC_GTEST_PROP(ReedSolomon, GivesACodewordOrChangesNothing, (std::vector<std::uint8_t> bytes))
{
    constexpr std::size_t parity = 10;
    RC_PRE((bytes.size() > parity && bytes.size() <= 255));
    const auto before = bytes;
    if (!correct(bytes, parity, {})) {
        RC_ASSERT((bytes == before));
        return;
    }
    std::vector<std::uint8_t> check(parity);
    const std::span<const std::uint8_t> all(bytes);
    addParity(all.first(all.size() - parity), check);
    RC_ASSERT(std::equal(check.begin(), check.end(), all.end() - parity));
}

}  // namespace spile::scan

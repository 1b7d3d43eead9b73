#pragma once

#include "core/scan/label_bits.hpp"

#include <optional>
#include <span>
#include <string>

namespace spile::scan::label {

/// A symbol of version 2 at level H, corrected as a whole.
struct Corrected {
    std::string text;
    Word word{};
    int mask = 0;
    /// How well the modules that were seen agree with the corrected ones: the sum of those that do
    /// less those that do not, each by how clear it was, over the sum of all. Modules that were
    /// taken for granted do not count.
    float agreement = 0;
};

/// Correct a symbol from how dark each of its modules is (redraw::Softs of 25 x 25).
///
/// The least clear codewords count as erased, of which the Reed-Solomon code bears twice as many as
/// of errors; and what all labels of ours have in common is taken for granted in one of the tries,
/// whose text then must be a label's. Accepted is only what agrees well with what was seen.
[[nodiscard]] std::optional<Corrected> correctLabel(std::span<const float> softs);

}  // namespace spile::scan::label

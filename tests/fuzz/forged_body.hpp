#pragma once

#include "core/base/ids.hpp"
#include "core/ledger/fields.hpp"
#include "tests/fuzz/input.hpp"

#include <vector>

namespace spile::fuzz {

/// A number in a range, at its ends, or beside it.
[[nodiscard]] std::int64_t numberNear(std::int64_t least, std::int64_t most, Input& input);

/// What a forged record can speak of.
struct Referable {
    std::vector<SubjectId> subjects;
    std::vector<EntryId> known;  ///< records that are somewhere already
    std::vector<EntryId> made;   ///< those before it in its own file

    [[nodiscard]] SubjectId subject(Input& input) const;
    /// One of `known` and `made`, or one that nobody has.
    [[nodiscard]] EntryId entry(std::size_t place) const;
};

/// A body for a record of `kind`: mostly its fields, mostly in their ranges.
[[nodiscard]] Bytes forgedBody(std::string_view kind, const Referable& known, Input& input);

}  // namespace spile::fuzz

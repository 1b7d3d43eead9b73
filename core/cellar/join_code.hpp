#pragma once

#include "core/base/ids.hpp"
#include "core/base/result.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace spile::cellar {

/// Return the code by which a device asks to be admitted: its id in 26 characters of the code
/// alphabet and 2 check characters, in groups of 4. Who has the code has no power by it; it only
/// says which device is meant.
[[nodiscard]] std::string joinCode(const DeviceId& device);

/// Read a join code, forgiving as for a barrel's (scan::tidied).
///
/// Errors    Malformed if it is not one, or mistyped.
[[nodiscard]] Result<DeviceId> parseJoinCode(std::string_view typed);

/// What the symbol says that a device shows to be admitted: which device, and whose cellar it has
/// joined.
struct JoinSymbol {
    std::string cellarMark;  // 4 characters
    DeviceId device;

    friend bool operator==(const JoinSymbol&, const JoinSymbol&) = default;
};

/// Return the text of that symbol: "S2", mark, id and check as in a join code, the check over the
/// mark too. 34 characters, so version 3 at level H. A barrel's label begins with "S1" and has 12.
///
/// Requires  a valid mark.
[[nodiscard]] std::string joinSymbolText(const JoinSymbol& symbol);

/// Read the text of a symbol. None if it is not exactly such a text, check included.
[[nodiscard]] std::optional<JoinSymbol> parseJoinSymbol(std::string_view text);

}  // namespace spile::cellar

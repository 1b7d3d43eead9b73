#pragma once

#include "core/base/ids.hpp"
#include "core/ledger/database.hpp"
#include "core/units/units.hpp"

#include <span>
#include <string>
#include <string_view>
#include <vector>

/// The words that sheets and lists of choices offer, as they stand in the records: English, for
/// ever the same. The app translates them for the screen; a person may write others.
///
/// Source    common practice, no source.
namespace spile::cellar {

using WordList = std::span<const std::string_view>;

[[nodiscard]] WordList usualAttributes();
[[nodiscard]] WordList usualFaults();
[[nodiscard]] WordList noteChips();
[[nodiscard]] WordList drawMethods();
[[nodiscard]] WordList gaugeMethods();
[[nodiscard]] WordList checkFindings();
/// Whether a barrel with this finding is sound; a finding that is not in the list is not.
[[nodiscard]] bool isSound(std::string_view finding);
[[nodiscard]] WordList repairs();
[[nodiscard]] WordList verdicts();
[[nodiscard]] WordList nextUses();
/// Why a device is cut off.
[[nodiscard]] WordList cutReasons();
/// What closes a barrel.
[[nodiscard]] WordList bungs();
[[nodiscard]] WordList usualSpirits();
[[nodiscard]] WordList usualWoods();

struct BarrelSize {
    std::string_view name;
    Volume volume;
};
/// The sizes that barrels are usually made in, the smallest first.
[[nodiscard]] std::span<const BarrelSize> barrelSizes();

inline constexpr std::size_t sheetAttributesMost = 12;

/// Return the attributes that a sheet for `barrel` asks for, at most 12, each once: those of its
/// batch's target first, then those scored already in this fill, then the usual ones.
[[nodiscard]] Result<std::vector<std::string>> attributesOf(ledger::Database& database,
                                                            const SubjectId& barrel);

}  // namespace spile::cellar

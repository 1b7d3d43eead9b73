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

using Words = std::span<const std::string_view>;

[[nodiscard]] Words usualAttributes();
[[nodiscard]] Words usualFaults();
[[nodiscard]] Words noteChips();
[[nodiscard]] Words drawMethods();
[[nodiscard]] Words gaugeMethods();
[[nodiscard]] Words checkFindings();
/// Whether a barrel with this finding is sound; a finding that is not in the list is not.
[[nodiscard]] bool isSound(std::string_view finding);
[[nodiscard]] Words repairs();
[[nodiscard]] Words verdicts();
[[nodiscard]] Words nextUses();
/// What closes a barrel.
[[nodiscard]] Words bungs();
[[nodiscard]] Words usualSpirits();
[[nodiscard]] Words usualWoods();

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

#pragma once

#include "core/panel/tasters.hpp"

#include <map>
#include <span>

/// One attribute of panelReportOf(). Private to it.
namespace spile::panel {

struct AttributeReading {
    PanelOnAttribute panel;
    std::map<int, TasterOnAttribute> tasters;
};

/// Requires scores of one attribute, sorted by session, barrel, taster and repeat.
[[nodiscard]] AttributeReading readAttribute(std::span<const Score> scores);

/// What a taster is told; requires that `attributes` of the report is filled.
[[nodiscard]] std::vector<Advice> adviceFor(const TasterReport& report);

}  // namespace spile::panel

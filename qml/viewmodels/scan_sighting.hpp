#pragma once

#include "core/cellar/cellar.hpp"
#include "core/cellar/queries.hpp"
#include "core/scan/reader.hpp"
#include "qml/viewmodels/join_sighting.hpp"

#include <optional>
#include <string>
#include <vector>

namespace spile::viewmodels {

/// What is asked of the records about a code that was read or typed.
struct ScanQuestion {
    std::optional<scan::LabelText> label;      // none: it is not a label of any cellar
    std::vector<scan::LabelText> beside;       // others in the same frame
    std::string typed;                         // a whole code; empty: none was typed
    std::optional<cellar::JoinSymbol> joiner;  // a device that asks to be let in
};

/// What the records say.
struct ScanSighting {
    std::string cellarMark;
    std::optional<scan::LabelText> label;
    bool isTypedWrong = false;
    std::vector<cellar::BarrelRow> barrels;  // that have the code, or may have been meant
    std::vector<cellar::BarrelRow> beside;   // others in view
    std::optional<JoinSighting> joiner;
};

/// Return the labels of cellars among `codes`, in their order, each once.
[[nodiscard]] std::vector<scan::LabelText> labelsIn(const std::vector<scan::Code>& codes);

/// Ask the records. On the thread that owns them.
[[nodiscard]] Result<ScanSighting> sight(cellar::Cellar& cellar, const ScanQuestion& question);

}  // namespace spile::viewmodels

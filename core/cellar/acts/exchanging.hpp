#pragma once

#include "core/cellar/acts/sheet.hpp"
#include "core/ledger/hand_out.hpp"

/// Acts that bring the devices' records together.
namespace spile::cellar {

/// The version of this program, as day files name it.
inline constexpr const char* programVersion = "spile 0.1.0";

struct DayFileOut {
    ledger::HandedOut file;
    std::vector<OpenSheet> openSheets;  // what is on them is not in the file
};

/// Write a day file, sealed if there is a passphrase: ledger::handOut, whose errors it has.
[[nodiscard]] Result<DayFileOut> handOut(Cellar& cellar, const Path& file,
                                         const std::optional<DeviceId>& to, const Job& job = {},
                                         const std::string& passphrase = {});

/// Take a day file in, every signature checked: ledger::takeIn, whose errors it has.
[[nodiscard]] Result<ledger::TakenIn> takeIn(Cellar& cellar, const Path& file, const Job& job = {},
                                             const std::string& passphrase = {});

/// Return the device whose join symbol says `text`.
///
/// Errors    Malformed if it is no such text; Conflict if the device has joined another cellar.
[[nodiscard]] Result<DeviceId> deviceOfSymbol(Cellar& cellar, std::string_view text);

/// Let the device with this join code belong to the cellar: ledger::admit, whose errors it has,
/// and Malformed for a mistyped code.
[[nodiscard]] Result<ledger::Admitted> admit(Cellar& cellar, std::string_view code,
                                             const std::string& name, ledger::DeviceRole role,
                                             const std::optional<ledger::SigningKey>& owner = {});

}  // namespace spile::cellar

#pragma once

#include "core/cellar/cellar.hpp"
#include "core/cellar/join_code.hpp"

#include <QCoreApplication>
#include <QString>
#include <optional>
#include <string>
#include <vector>

namespace spile::viewmodels {

/// What the records say of a device that asks to be let in.
struct JoinSighting {
    cellar::JoinSymbol symbol;
    bool foreign = false;  ///< it has joined another cellar
    bool own = false;      ///< it is this device
    bool cutOff = false;
    std::optional<std::string> admittedAs;
    bool mayAdmit = false;               ///< this device
    std::vector<std::string> admitters;  ///< who may, by their names
};

/// Ask the records. On the thread that owns them.
[[nodiscard]] Result<JoinSighting> sightJoiner(cellar::Cellar& cellar,
                                               const cellar::JoinSymbol& symbol);

/// How the app says why a device cannot be let in here.
class JoinText {
    Q_DECLARE_TR_FUNCTIONS(JoinText)

public:
    /// Empty: it can.
    [[nodiscard]] static QString hindrance(const JoinSighting& sighting);
    /// Who can let devices in, where this device cannot.
    [[nodiscard]] static QString whoCan(const std::vector<std::string>& admitters);
    [[nodiscard]] static QString ownersKey();
};

}  // namespace spile::viewmodels

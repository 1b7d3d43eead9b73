#pragma once

#include "core/plan/tasters.hpp"
#include "qml/viewmodels/formats.hpp"

#include <QCoreApplication>

namespace spile::viewmodels {

/// What the tasters are like, in plain sentences. Lengths on the line are told in steps of the
/// ladder.
class TasterText {
    Q_DECLARE_TR_FUNCTIONS(TasterText)

public:
    /// "Reads about 1.3 steps high at vanilla (sure within 0.4). Taste beside the others and
    /// compare."; `attribute` is the screen's word. Sure: within two standard errors.
    [[nodiscard]] static QString advice(const panel::Advice& advice, const QString& attribute,
                                        const Formats& formats);
    /// "Agreement: fair with one taster, good with 3 tasters.", or why it cannot be told.
    [[nodiscard]] static QString agreement(const panel::PanelOnAttribute& attribute);

private:
    [[nodiscard]] static QString grade(double agreement);
};

}  // namespace spile::viewmodels

#pragma once

#include "core/cellar/lots.hpp"
#include "qml/viewmodels/formats.hpp"
#include "qml/viewmodels/part_rows.hpp"

#include <QCoreApplication>
#include <vector>

namespace spile::viewmodels {

/// What a lot's page tells of it.
class LotText {
    Q_DECLARE_TR_FUNCTIONS(LotText)

public:
    /// What came in and what was done, part by part. Finishes that are in, holds that are open and
    /// packages that are left have pads.
    [[nodiscard]] static std::vector<PartLine> parts(const cellar::LotHistory& lot,
                                                     const Formats& formats);
    /// "120 × bottle 330 mL, 6 × keg 20 L"
    [[nodiscard]] static QString counts(const std::vector<cellar::PackageCount>& packages,
                                        const Formats& formats);
    /// "bottle 330 mL"
    [[nodiscard]] static QString package(const cellar::PackageCount& package,
                                         const Formats& formats);
    /// "12.5 kg", "40 g"
    [[nodiscard]] static QString mass(Mass mass, const Formats& formats);
    /// "L-26A, Tue 14 Oct"
    [[nodiscard]] static QString packaging(const cellar::PackageRow& row, const Formats& formats);
    /// "Tue 14 Oct · Ada", and the note below.
    [[nodiscard]] static QString when(const cellar::FactRow& row, const Formats& formats);

private:
    [[nodiscard]] static PartLine line(const QString& kind, const cellar::FactRow& row,
                                       const QString& said, const QStringList& beside,
                                       const Formats& formats);
    [[nodiscard]] static PartLine finish(const cellar::FinishRow& row, const Formats& formats);
    [[nodiscard]] static PartLine carbonation(const cellar::CarbonationRow& row,
                                              const Formats& formats);
    [[nodiscard]] static PartLine reading(const cellar::ReadingRow& row, const Formats& formats);
    [[nodiscard]] static PartLine package(const cellar::PackageRow& row, const Formats& formats);
    [[nodiscard]] static PartLine wayOut(const cellar::WayOutRow& row, const Formats& formats);
};

}  // namespace spile::viewmodels

#pragma once

#include "core/trace/reports.hpp"
#include "qml/viewmodels/formats.hpp"
#include "qml/viewmodels/part_rows.hpp"

#include <QCoreApplication>
#include <vector>

namespace spile::viewmodels {

/// What the reports tell, a line a period, stay or lot.
class ReportText {
    Q_DECLARE_TR_FUNCTIONS(ReportText)

public:
    /// The newest period first.
    [[nodiscard]] static std::vector<PartLine> duty(const std::vector<trace::DutyRow>& rows,
                                                    trace::Period period, const Formats& formats);
    /// The newest period first, then each stay that ended, the last one first.
    [[nodiscard]] static std::vector<PartLine> losses(const std::vector<trace::DutyRow>& rows,
                                                      const std::vector<cellar::EndedStay>& stays,
                                                      trace::Period period, const Formats& formats);
    [[nodiscard]] static std::vector<PartLine> costs(const std::vector<trace::LotCost>& lots,
                                                     const Formats& formats);

private:
    [[nodiscard]] static QString named(Instant from, trace::Period period, const Formats& formats);
    [[nodiscard]] static QString dutyVolume(Volume volume, const Formats& formats);
    [[nodiscard]] static PartLine stayLost(const cellar::EndedStay& stay, const Formats& formats);
};

}  // namespace spile::viewmodels

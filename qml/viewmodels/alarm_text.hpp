#pragma once

#include "core/plan/alarms.hpp"
#include "qml/viewmodels/formats.hpp"
#include "qml/viewmodels/outlook_rows.hpp"

#include <QCoreApplication>
#include <vector>

namespace spile::viewmodels {

/// What each alarm saw, and what to check before anything is done.
class AlarmText {
    Q_DECLARE_TR_FUNCTIONS(AlarmText)

public:
    [[nodiscard]] static std::vector<SaidLine> lines(const std::vector<plan::Alarm>& alarms,
                                                     const Formats& formats);
    /// What moves that should not, by these alarms: "the pH falls". Each once.
    [[nodiscard]] static QStringList moving(const std::vector<plan::Alarm>& alarms);

private:
    [[nodiscard]] static QString saw(const plan::Alarm& alarm, const Formats& formats);
    [[nodiscard]] static QString check(plan::AlarmKind kind);
};

}  // namespace spile::viewmodels

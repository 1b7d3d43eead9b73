#pragma once

#include "core/trace/trace.hpp"
#include "qml/viewmodels/formats.hpp"
#include "qml/viewmodels/part_rows.hpp"

#include <QCoreApplication>
#include <vector>

namespace spile::viewmodels {

/// What the page of a trace tells, and the recall list as a text.
class TraceText {
    Q_DECLARE_TR_FUNCTIONS(TraceText)

public:
    /// Barrels, beers and additions have a pad that traces them down.
    [[nodiscard]] static std::vector<PartLine> up(const trace::Upward& up, const Formats& formats);
    /// Lots have a pad that opens them.
    [[nodiscard]] static std::vector<PartLine> down(const trace::Downward& down,
                                                    const Formats& formats);
    /// All packages concerned, to whom they went and what is left in the house: a text to be
    /// printed or sent.
    [[nodiscard]] static QString recall(const QString& of, const trace::Downward& down,
                                        const Formats& formats);
    /// "34 % · 51 L"
    [[nodiscard]] static QString share(double share, Volume whole, const Formats& formats);

private:
    [[nodiscard]] static PartLine stay(const trace::Stay& stay, Volume whole,
                                       const Formats& formats);
    [[nodiscard]] static PartLine addition(const trace::Addition& addition, const Formats& formats);
    [[nodiscard]] static QString odd(const trace::Oddity& oddity, const Formats& formats);
    [[nodiscard]] static QStringList reached(const trace::Reached& reached, const Formats& formats);
};

}  // namespace spile::viewmodels

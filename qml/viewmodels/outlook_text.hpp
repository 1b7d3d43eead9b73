#pragma once

#include "core/cellar/acts/foreseeing.hpp"
#include "core/outlook/barrel_outlook.hpp"
#include "qml/viewmodels/formats.hpp"

#include <QCoreApplication>

namespace spile::viewmodels {

/// What an outlook comes to, whether it was just computed or kept.
struct OutlookInShort {
    std::string advice;  // as cellar::advice names it
    std::optional<cellar::KeptOutlook::Best> best;
    Instant horizon;
    std::string weakest;  // the attribute that limits it; empty: not known
};
[[nodiscard]] OutlookInShort shortOf(const outlook::BarrelOutlook& outlook);
[[nodiscard]] OutlookInShort shortOf(const cellar::KeptOutlook& outlook);

/// Outlooks in plain sentences.
class OutlookText {
    Q_DECLARE_TR_FUNCTIONS(OutlookText)

public:
    /// "Wait. Best from 3 Oct to 12 Dec: 7 in 10 that all is inside. Vanilla limits it."
    [[nodiscard]] static QString advice(const OutlookInShort& outlook, const Formats& formats);
    /// "3 Oct to 12 Dec"; "from 3 Oct on" where it does not end before the horizon; empty without
    /// windows.
    [[nodiscard]] static QString span(const OutlookInShort& outlook, const Formats& formats);
    /// Why a tasting is when it is: "may decide", "before it goes too far", "a look again"; empty
    /// for habit.
    [[nodiscard]] static QString reason(const std::string& reason);
    /// The same as a sentence, with the chance that it ends in pulling.
    [[nodiscard]] static QString reason(const outlook::NextTasting& next, const Formats& formats);
    /// "Kim's 8 on 3 Sep does not fit the others (7 in 10 that it is off). ..."
    [[nodiscard]] static QString doubt(const outlook::SeenScore& score, double doubt,
                                       const Formats& formats);
    /// A level of the line as a score with a decimal: "5.2".
    [[nodiscard]] static QString score(double line, const Formats& formats);
    /// "5.2 (4.1 to 6.4)".
    [[nodiscard]] static QString level(const outlook::LevelPoint& point, const Formats& formats);
    /// "4 to 6"; scores that lie inside a window by hand, its edges if it was taught.
    [[nodiscard]] static QString window(const outlook::AttributeOutlook& attribute,
                                        const Formats& formats);
};

}  // namespace spile::viewmodels

#include "qml/viewmodels/outlook_text.hpp"

#include "core/panel/line.hpp"
#include "core/plan/foreseen.hpp"
#include "qml/viewmodels/words.hpp"

namespace spile::viewmodels {

OutlookInShort shortOf(const outlook::BarrelOutlook& outlook)
{
    OutlookInShort made{plan::wordOf(outlook.advice), {}, outlook.horizon, outlook.weakest};
    if (outlook.advice != outlook::Advice::NoWindows) {
        made.best = cellar::KeptOutlook::Best{outlook.chanceNow, outlook.bestChance,
                                              outlook.bestFrom, outlook.best, outlook.bestTo};
    }
    return made;
}

OutlookInShort shortOf(const cellar::KeptOutlook& outlook)
{
    return {outlook.advice, outlook.best, outlook.horizon, {}};
}

QString OutlookText::span(const OutlookInShort& outlook, const Formats& formats)
{
    if (!outlook.best) {
        return {};
    }
    constexpr auto step = std::chrono::days(7);  // of the course of chances
    return outlook.best->to + step > outlook.horizon
               ? tr("from %1 on").arg(formats.day(outlook.best->from))
               : tr("%1 to %2", "two dates")
                     .arg(formats.day(outlook.best->from), formats.day(outlook.best->to));
}

QString OutlookText::advice(const OutlookInShort& outlook, const Formats& formats)
{
    if (!outlook.best) {
        return tr(
            "No windows yet: say more, right or too much after a tasting, or set them by hand.");
    }
    const QString weakest = word(outlook.weakest);
    const QString now = formats.chance(outlook.best->chanceNow);
    if (outlook.advice == cellar::advice::pull) {
        return tr("Ready now by its scores: %1 that all is inside.").arg(now);
    }
    if (outlook.advice == cellar::advice::tooFar) {
        const QString said = tr("It may have gone too far: %1 that all is inside now.").arg(now);
        return weakest.isEmpty() ? said
                                 : tr("%1 Look at this first: %2.", "a sentence, an attribute")
                                       .arg(said, weakest);
    }
    constexpr auto step = std::chrono::days(7);
    const bool endless = outlook.best->to + step > outlook.horizon;
    const QString chance = formats.chance(outlook.best->chance);
    const QString said =
        endless ? tr("Wait. Best from %1 on: %2 that all is inside then.")
                      .arg(formats.day(outlook.best->from), chance)
                : tr("Wait. Best from %1 to %2: %3 that all is inside then.")
                      .arg(formats.day(outlook.best->from), formats.day(outlook.best->to), chance);
    return weakest.isEmpty()
               ? said
               : tr("%1 What limits it: %2.", "a sentence, an attribute").arg(said, weakest);
}

QString OutlookText::reason(const std::string& reason)
{
    if (reason == cellar::tastingReason::decides) {
        return tr("may decide");
    }
    if (reason == cellar::tastingReason::beforeTooFar) {
        return tr("before it goes too far");
    }
    if (reason == cellar::tastingReason::looksAgain) {
        return tr("a look again");
    }
    return reason == cellar::tastingReason::atOnce ? tr("an alarm asks for it") : QString();
}

QString OutlookText::reason(const outlook::NextTasting& next, const Formats& formats)
{
    switch (next.reason) {
        case outlook::TastingReason::Decides:
            return tr("It may decide: %1 that it ends in emptying the barrel.")
                .arg(formats.chance(next.decides));
        case outlook::TastingReason::BeforeTooFar:
            return tr("Later, something may have gone too far.");
        case outlook::TastingReason::LooksAgain:
            return tr("Nothing decides before, but not longer without a look.");
        case outlook::TastingReason::Habit:
            return tr("By habit: after six months, then monthly.");
        case outlook::TastingReason::AtOnce:
            return tr("An alarm asks for it.");
    }
    return {};
}

QString OutlookText::doubt(const outlook::SeenScore& score, double doubt, const Formats& formats)
{
    const QString name = score.name.empty() ? tr("somebody") : QString::fromStdString(score.name);
    return tr("The %1 of %2 on %3 does not fit the others: %4 that it is off. Check it; nothing is "
              "deleted.",
              "a score, a taster, a date, a chance")
        .arg(formats.locale.toString(panel::scoreOfLine(score.line), 'f', 0), name,
             formats.day(score.at), formats.chance(doubt));
}

QString OutlookText::score(double line, const Formats& formats)
{
    return formats.locale.toString(panel::scoreOfLine(line), 'f', 1);
}

QString OutlookText::level(const outlook::LevelPoint& point, const Formats& formats)
{
    return tr("%1 (%2 to %3)", "a score with its range")
        .arg(score(point.middle, formats), score(point.low, formats), score(point.high, formats));
}

QString OutlookText::window(const outlook::AttributeOutlook& attribute, const Formats& formats)
{
    if (!attribute.window) {
        return {};
    }
    constexpr double half = panel::pointsPerStep / 2;
    const bool byHand = attribute.source == outlook::WindowSource::ByHand;
    const double low = attribute.window->low;
    const double high = attribute.window->high;
    const bool openBelow = low <= outlook::lineLow;
    const bool openAbove = high >= outlook::lineHigh;
    const auto said = [&](double line) {
        return formats.locale.toString(panel::scoreOfLine(line), 'f', byHand ? 0 : 1);
    };
    return tr("%1 to %2", "two scores")
        .arg(said(byHand && !openBelow ? low + half : low),
             said(byHand && !openAbove ? high - half : high));
}

}  // namespace spile::viewmodels

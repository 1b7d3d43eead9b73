#include "qml/viewmodels/report_text.hpp"

#include "qml/viewmodels/context.hpp"

namespace spile::viewmodels {

namespace {

QString money(double amount, const Formats& formats)
{
    return formats.locale.toString(amount, 'f', 2);
}

}  // namespace

// Periods are those of UTC, whatever the device's own zone.
QString ReportText::named(Instant from, trace::Period period, const Formats& formats)
{
    const std::chrono::year_month_day day(std::chrono::floor<std::chrono::days>(from));
    const int year = static_cast<int>(day.year());
    const auto month = static_cast<int>(static_cast<unsigned>(day.month()));
    switch (period) {
        case trace::Period::Month:
            return tr("%1 %2", "a month, a year")
                .arg(formats.locale.standaloneMonthName(month), QString::number(year));
        case trace::Period::Quarter:
            return tr("Quarter %1 of %2")
                .arg(QString::number((month - 1) / 3 + 1), QString::number(year));
        case trace::Period::Year:
            return QString::number(year);
    }
    return {};
}

// As a return asks for it, whatever units the app shows.
QString ReportText::dutyVolume(Volume volume, const Formats& formats)
{
    const double litres = inLitres(volume);
    return tr("%1 L, %2 hL, %3 US barrels")
        .arg(formats.locale.toString(litres, 'f', 1), formats.locale.toString(litres / 100, 'f', 3),
             formats.locale.toString(inUsBeerBarrels(volume), 'f', 3));
}

std::vector<PartLine> ReportText::duty(const std::vector<trace::DutyRow>& rows,
                                       trace::Period period, const Formats& formats)
{
    const auto alcohol = [&](Volume volume) {
        return tr("%1 litres of alcohol").arg(formats.locale.toString(inLitres(volume), 'f', 2));
    };
    std::vector<PartLine> lines;
    for (auto row = rows.rbegin(); row != rows.rend(); ++row) {
        if (row->packaged == Volume{} && row->released == Volume{}) {
            lines.push_back(partLine(QStringLiteral("duty"), QString::number(toMs(row->from)),
                                     named(row->from, period, formats),
                                     {tr("Nothing was packaged or released.")}));
            continue;
        }
        lines.push_back(partLine(
            QStringLiteral("duty"), QString::number(toMs(row->from)),
            named(row->from, period, formats),
            {tr("Packaged: %1", "volumes").arg(dutyVolume(row->packaged, formats)),
             alcohol(row->packagedAlcohol),
             tr("Released: %1", "volumes").arg(dutyVolume(row->released, formats)),
             alcohol(row->releasedAlcohol),
             row->strengthMissing
                 ? tr("The strength of some of it is not known: its alcohol is not counted.")
                 : QString()}));
    }
    return lines;
}

PartLine ReportText::stayLost(const cellar::EndedStay& stay, const Formats& formats)
{
    const auto lost = trace::unexplainedLoss(stay);
    QString text = tr("Its fill or its end was not measured: what it lost is not known.");
    if (lost && stay.in && *stay.in > Volume{}) {
        text = tr("%1 of %2 (%3 %): evaporated, soaked in or leaked", "what a barrel lost")
                   .arg(formats.volume(*lost), formats.volume(*stay.in),
                        formats.locale.toString(*lost / *stay.in * 100, 'f', 1));
    }
    return partLine(
        QStringLiteral("stay"), textOf(stay.fill),
        stay.beer.empty()
            ? said(stay.barrelName)
            : tr("%1, %2", "a barrel, a beer").arg(said(stay.barrelName), said(stay.beer)),
        {tr("%1 to %2", "days").arg(formats.date(stay.filled), formats.date(stay.emptied)), text});
}

std::vector<PartLine> ReportText::losses(const std::vector<trace::DutyRow>& rows,
                                         const std::vector<cellar::EndedStay>& stays,
                                         trace::Period period, const Formats& formats)
{
    std::vector<PartLine> all;
    for (auto row = rows.rbegin(); row != rows.rend(); ++row) {
        all.push_back(partLine(QStringLiteral("loss"), QString::number(toMs(row->from)),
                               named(row->from, period, formats),
                               {tr("Not explained by any record, of barrels emptied: %1")
                                    .arg(formats.volume(row->evaporated)),
                                tr("Drawn as samples: %1").arg(formats.volume(row->drawn)),
                                tr("Lost in packing: %1").arg(formats.volume(row->lostPacking)),
                                tr("Poured away: %1").arg(formats.volume(row->discarded))}));
    }
    std::vector<PartLine> lines;
    for (auto stay = stays.rbegin(); stay != stays.rend(); ++stay) {
        lines.push_back(stayLost(*stay, formats));
    }
    addPart(all, std::move(lines), tr("Barrels that were emptied"));
    return all;
}

std::vector<PartLine> ReportText::costs(const std::vector<trace::LotCost>& lots,
                                        const Formats& formats)
{
    std::vector<PartLine> all;
    for (const trace::LotCost& lot : lots) {
        std::vector<PartLine> lines;
        lines.push_back(partLine(
            QStringLiteral("lot"), textOf(lot.lot),
            lot.perLitre ? tr("%1 a litre, %2 in all")
                               .arg(money(*lot.perLitre, formats), money(lot.whole, formats))
                         : tr("%1 in all").arg(money(lot.whole, formats)),
            {lot.packaged > Volume{}
                 ? tr("Of the %1 that were packaged").arg(formats.volume(lot.packaged))
                 : tr("Of the %1 that are there").arg(formats.volume(lot.in)),
             lot.own > 0 ? tr("Finishes, packages, work: %1").arg(money(lot.own, formats))
                         : QString(),
             lot.passedOn > 0 ? tr("Beer from other lots: %1").arg(money(lot.passedOn, formats))
                              : QString(),
             lot.complete ? QString() : tr("Not every barrel and beer of it has a cost yet.")}));
        for (const trace::StayCost& stay : lot.stays) {
            lines.push_back(partLine(
                QStringLiteral("stay"), textOf(lot.lot) + QString::number(lines.size()),
                tr("%1: %2 a litre", "a barrel, money")
                    .arg(said(stay.barrelName), money(stay.perLitre, formats)),
                {tr("%1 of %2", "volume, beer").arg(formats.volume(stay.into), said(stay.beer)),
                 tr("Beer %1, barrel %2", "money")
                     .arg(money(stay.beerCost, formats), money(stay.barrelCost, formats)),
                 stay.evaporated ? tr("Evaporated, soaked in or leaked: %1")
                                       .arg(formats.volume(*stay.evaporated))
                                 : QString()}));
        }
        addPart(all, std::move(lines), said(lot.name));
    }
    return all;
}

}  // namespace spile::viewmodels

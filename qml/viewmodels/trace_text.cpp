#include "qml/viewmodels/trace_text.hpp"

#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/lot_text.hpp"
#include "qml/viewmodels/words.hpp"

namespace spile::viewmodels {

QString TraceText::share(double share, Volume whole, const Formats& formats)
{
    return tr("%1 % · %2", "a share, a volume")
        .arg(formats.locale.toString(share * 100, 'f', share < 0.1 ? 1 : 0),
             formats.volume(share * whole));
}

PartLine TraceText::stay(const trace::Stay& stay, Volume whole, const Formats& formats)
{
    QStringList before;
    if (!stay.spirit.empty()) {
        before << capitalised(word(stay.spirit));
    }
    for (const std::string& beer : stay.heldBefore) {
        before << said(beer);
    }
    const QString days =
        stay.emptied
            ? tr("%1 to %2", "days").arg(formats.date(stay.filled), formats.date(*stay.emptied))
            : tr("since %1").arg(formats.date(stay.filled));
    PartLine line = partLine(
        QStringLiteral("barrel"), textOf(stay.fill),
        stay.fillNumber ? tr("%1, fill %2", "a barrel, a number")
                              .arg(said(stay.barrelName),
                                   formats.locale.toString(static_cast<int>(*stay.fillNumber)))
                        : said(stay.barrelName),
        {share(stay.share, whole, formats), said(stay.beer), days,
         before.isEmpty() ? QString()
                          : tr("Held before: %1").arg(before.join(QStringLiteral(", ")))});
    line.share = stay.share;
    line.pad = tr("Where did it go?");
    return line;
}

PartLine TraceText::addition(const trace::Addition& addition, const Formats& formats)
{
    const QString amount = addition.mass     ? LotText::mass(*addition.mass, formats)
                           : addition.volume ? formats.volume(*addition.volume)
                                             : QString();
    PartLine line = partLine(
        QStringLiteral("addition"), textOf(addition.entry),
        amount.isEmpty() ? capitalised(word(addition.substance))
                         : tr("%1, %2", "a substance, how much")
                               .arg(capitalised(word(addition.substance)), amount),
        {addition.allergen.empty() ? QString() : tr("Allergen: %1").arg(word(addition.allergen)),
         tr("into %1, %2", "a barrel or lot, a day")
             .arg(said(addition.into), formats.date(addition.at))});
    // What was put into a barrel went where the barrel's beer went.
    line.pad = addition.intoBarrel ? QString() : tr("Where did it go?");
    return line;
}

QString TraceText::odd(const trace::Oddity& oddity, const Formats& formats)
{
    const QString lot = said(oddity.subject);
    switch (oddity.what) {
        case trace::Oddity::What::MoreOutThanIn:
            return tr("%1: by the records %2 more went out than came in.")
                .arg(lot, formats.volume(oddity.volume));
        case trace::Oddity::What::StrengthUnknown:
            return tr("%1: the strength of something that came in is not known; it counts as "
                      "water.")
                .arg(lot);
        case trace::Oddity::What::FillUnknown:
            return tr("%1: something came in out of a barrel whose fill is not recorded.").arg(lot);
        case trace::Oddity::What::TakenBack:
            return tr("%1: a record of what came in was taken back.").arg(lot);
    }
    return {};
}

std::vector<PartLine> TraceText::up(const trace::Upward& up, const Formats& formats)
{
    std::vector<PartLine> all;
    std::vector<PartLine> lines;
    const auto close = [&](const QString& heading) {
        addPart(all, std::exchange(lines, {}), heading);
    };
    for (const trace::Oddity& one : up.oddities) {
        lines.push_back(
            partLine(QStringLiteral("odd"), QString::number(lines.size()), odd(one, formats), {}));
    }
    close(tr("What does not add up"));
    for (const trace::Stay& one : up.stays) {
        lines.push_back(stay(one, up.volume, formats));
    }
    close(tr("Barrels"));
    for (const trace::Beginning& one : up.beginnings) {
        PartLine line = partLine(QStringLiteral("beer"),
                                 one.batch ? textOf(*one.batch) : QString::number(lines.size()),
                                 one.name.empty() ? tr("Not known") : word(one.name),
                                 {share(one.share, up.volume, formats)});
        line.share = one.share;
        line.pad = one.batch ? tr("Where did it go?") : QString();
        lines.push_back(std::move(line));
    }
    close(tr("Beers"));
    for (const trace::Addition& one : up.additions) {
        lines.push_back(addition(one, formats));
    }
    close(tr("What was put in"));
    for (const trace::LotPassed& one : up.lots) {
        PartLine line = partLine(QStringLiteral("lot"), textOf(one.lot), said(one.name),
                                 {share(one.share, up.volume, formats)});
        line.pad = tr("Open the lot");
        lines.push_back(std::move(line));
    }
    close(tr("Lots it passed"));
    for (const trace::Hand& one : up.hands) {
        QStringList did;
        for (const std::string& what : one.did) {
            did << word("done " + what);
        }
        lines.push_back(partLine(QStringLiteral("person"), QString::number(lines.size()),
                                 said(one.name), {did.join(QStringLiteral(", "))}));
    }
    close(tr("People"));
    return all;
}

QStringList TraceText::reached(const trace::Reached& reached, const Formats& formats)
{
    QStringList lines{
        LotText::counts(reached.package.packages, formats),
        tr("Left in the house: %1").arg(LotText::counts(reached.package.left, formats))};
    for (const cellar::ReleaseRow& release : reached.releases) {
        lines << tr("To %1, %2: %3", "who, day, packages")
                     .arg(said(release.to), formats.date(release.at),
                          LotText::counts(release.packages, formats));
    }
    return lines;
}

std::vector<PartLine> TraceText::down(const trace::Downward& down, const Formats& formats)
{
    std::vector<PartLine> all;
    std::vector<PartLine> lines;
    for (const trace::Reached& one : down.packages) {
        lines.push_back(
            partLine(QStringLiteral("package"), textOf(one.package.entry),
                     tr("%1: %2", "a lot, its packages")
                         .arg(said(one.lotName), LotText::packaging(one.package, formats)),
                     reached(one, formats)));
    }
    addPart(all, std::exchange(lines, {}), tr("Packages"));
    for (const trace::LotPassed& one : down.lots) {
        PartLine line = partLine(QStringLiteral("lot"), textOf(one.lot), said(one.name), {});
        line.pad = tr("Open the lot");
        lines.push_back(std::move(line));
    }
    addPart(all, std::exchange(lines, {}), tr("Lots"));
    for (const trace::InBarrel& one : down.barrels) {
        lines.push_back(partLine(
            QStringLiteral("in"), textOf(one.barrel) + QString::number(lines.size()),
            said(one.barrelName), {one.still ? tr("It lies there now") : tr("It lay there")}));
    }
    addPart(all, std::move(lines), tr("In barrels"));
    return all;
}

QString TraceText::recall(const QString& of, const trace::Downward& down, const Formats& formats)
{
    QStringList lines{tr("Recall list: %1").arg(of),
                      tr("Made %1").arg(formats.dateAndTime(formats.now())), QString()};
    if (down.packages.empty()) {
        lines << tr("Nothing of it has been packaged.");
    }
    for (const trace::Reached& one : down.packages) {
        lines << tr("%1: %2", "a lot, its packages")
                     .arg(said(one.lotName), LotText::packaging(one.package, formats));
        for (const QString& line : reached(one, formats)) {
            lines << QStringLiteral("  ") + line;
        }
        lines << QString();
    }
    for (const trace::InBarrel& one : down.barrels) {
        if (one.still) {
            lines << tr("Still in the barrel %1").arg(said(one.barrelName));
        }
    }
    return lines.join(QLatin1Char('\n')) + QLatin1Char('\n');
}

}  // namespace spile::viewmodels

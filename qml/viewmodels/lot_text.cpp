#include "qml/viewmodels/lot_text.hpp"

#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/words.hpp"

#include <QRegularExpression>
#include <algorithm>

namespace spile::viewmodels {

namespace {

QString joined(const QStringList& words) { return words.join(QStringLiteral(" · ")); }

// The figures that were measured.
QString measured(const std::optional<double>& strength, const std::optional<double>& gravity,
                 const Formats& formats)
{
    QStringList values;
    if (strength) {
        values << formats.strength(*strength);
    }
    if (gravity) {
        values << formats.gravity(*gravity);
    }
    return joined(values);
}

// Make one line of each row.
template <class Row, class Make>
std::vector<PartLine> eachOf(const std::vector<Row>& rows, Make make)
{
    std::vector<PartLine> lines;
    lines.reserve(rows.size());
    for (const Row& row : rows) {
        lines.push_back(make(row));
    }
    return lines;
}

}  // namespace

QString LotText::mass(Mass mass, const Formats& formats)
{
    const double kg = inKilograms(mass);
    return kg < 1 ? tr("%1 g").arg(formats.locale.toString(inGrams(mass), 'f', kg < 0.1 ? 1 : 0))
                  : tr("%1 kg").arg(formats.locale.toString(kg, 'f', 2));
}

QString LotText::package(const cellar::PackageCount& package, const Formats& formats)
{
    // Its name may say the content already.
    const QString name = word(package.package);
    return name.contains(QRegularExpression(QStringLiteral("[0-9]")))
               ? name
               : tr("%1 of %2", "bottle of 330 mL").arg(name, formats.volume(package.content));
}

QString LotText::counts(const std::vector<cellar::PackageCount>& packages, const Formats& formats)
{
    QStringList words;
    for (const cellar::PackageCount& one : packages) {
        if (one.count > 0) {
            words << tr("%1 × %2", "a count of packages")
                         .arg(formats.locale.toString(static_cast<qlonglong>(one.count)),
                              package(one, formats));
        }
    }
    return words.isEmpty() ? tr("none", "no packages") : words.join(QStringLiteral(", "));
}

QString LotText::packaging(const cellar::PackageRow& row, const Formats& formats)
{
    return tr("%1, %2", "a lot code, a day")
        .arg(row.lotCode.empty() ? tr("No lot code") : said(row.lotCode), formats.date(row.at));
}

QString LotText::when(const cellar::FactRow& row, const Formats& formats)
{
    const QString day = formats.dateAndTime(row.at);
    const QString by = row.person.empty() ? day : joined({day, said(row.person)});
    return row.note.empty() ? by : by + QLatin1Char('\n') + said(row.note);
}

PartLine LotText::line(const QString& kind, const cellar::FactRow& row, const QString& what,
                       const QStringList& beside, const Formats& formats)
{
    return partLine(kind, textOf(row.entry), what, beside + QStringList{when(row, formats)});
}

PartLine LotText::finish(const cellar::FinishRow& row, const Formats& formats)
{
    const QString amount = row.mass     ? mass(*row.mass, formats)
                           : row.volume ? formats.volume(*row.volume)
                                        : QString();
    QString stays;
    if (row.takenOut) {
        stays = tr("Taken out %1").arg(formats.date(*row.takenOut));
    } else if (row.until) {
        stays =
            tr("To be taken out by %1 (%2)").arg(formats.date(*row.until), formats.due(*row.until));
    }
    PartLine made =
        line(QStringLiteral("finish"), row,
             tr("%1, %2", "a substance, how much").arg(capitalised(word(row.substance)), amount),
             {row.allergen.empty() ? QString() : tr("Allergen: %1").arg(word(row.allergen)), stays},
             formats);
    made.pad = row.takenOut || !row.until ? QString() : tr("Taken out");
    return made;
}

PartLine LotText::carbonation(const cellar::CarbonationRow& row, const Formats& formats)
{
    QStringList how;
    if (row.gauge) {
        how << tr("%1 bar").arg(formats.locale.toString(inBars(*row.gauge), 'f', 2));
    }
    if (row.temperature) {
        how << formats.temperature(*row.temperature);
    }
    if (row.sugar) {
        how << tr("%1 of sugar").arg(mass(*row.sugar, formats));
    }
    return line(
        QStringLiteral("carbonation"), row,
        tr("%1, %2 volumes of CO2", "forced, 2.5 volumes")
            .arg(capitalised(word(row.method)), formats.locale.toString(row.volumes, 'f', 2)),
        {joined(how)}, formats);
}

PartLine LotText::reading(const cellar::ReadingRow& row, const Formats& formats)
{
    QStringList values;
    values << measured(row.alcoholByVolume, row.specificGravity, formats);
    if (row.ph) {
        values << tr("pH %1").arg(formats.ph(*row.ph));
    }
    if (row.temperature) {
        values << formats.temperature(*row.temperature);
    }
    values.removeAll(QString());
    return line(QStringLiteral("reading"), row, joined(values), {}, formats);
}

PartLine LotText::package(const cellar::PackageRow& row, const Formats& formats)
{
    QStringList strength;
    if (row.labelStrength) {
        strength << tr("%1 on the label").arg(formats.strength(*row.labelStrength));
    }
    if (row.alcoholByVolume) {
        strength << tr("%1 measured").arg(formats.strength(*row.alcoholByVolume));
    }
    PartLine made =
        line(QStringLiteral("package"), row, packaging(row, formats),
             {counts(row.packages, formats),
              tr("Left in the house: %1").arg(counts(row.left, formats)), joined(strength),
              row.lost && *row.lost > Volume{} ? tr("%1 lost").arg(formats.volume(*row.lost))
                                               : QString(),
              row.bestBefore ? tr("Best before %1").arg(formats.date(*row.bestBefore)) : QString(),
              row.whileHeld ? tr("Packaged while another device held the lot: look into it.")
                            : QString()},
             formats);
    const bool left = std::any_of(row.left.begin(), row.left.end(),
                                  [](const auto& one) { return one.count > 0; });
    made.pad = left ? tr("Release") : QString();
    made.otherPad = tr("Trace it");
    return made;
}

PartLine LotText::wayOut(const cellar::WayOutRow& row, const Formats& formats)
{
    const QString what = row.kind == "discard"    ? tr("%1 poured away: %2", "volume, why")
                         : row.kind == "transfer" ? tr("%1 into the lot %2", "volume, name")
                         : row.kind == "top_up"   ? tr("%1 topped up %2", "volume, barrel")
                                                  : tr("%1 filled into %2", "volume, barrel");
    return line(
        QStringLiteral("out"), row,
        what.arg(formats.volume(row.volume), row.kind == "discard" ? word(row.to) : said(row.to)),
        {}, formats);
}

std::vector<PartLine> LotText::parts(const cellar::LotHistory& lot, const Formats& formats)
{
    std::vector<PartLine> all;
    addPart(all,
            eachOf(lot.holds,
                   [&](const cellar::HoldRow& row) {
                       PartLine made = line(
                           QStringLiteral("hold"), row, word(row.reason),
                           {row.cleared ? tr("Result: %1, %2", "outcome, day")
                                              .arg(word(row.outcome), formats.date(*row.cleared))
                                        : tr("No result yet: nothing is packaged or "
                                             "released.")},
                           formats);
                       made.pad = row.cleared ? QString() : tr("Result is in");
                       return made;
                   }),
            tr("Holds"));
    addPart(all,
            eachOf(lot.transfers,
                   [&](const cellar::TransferRow& row) {
                       return line(QStringLiteral("transfer"), row,
                                   tr("%1 from %2", "volume, barrel or lot")
                                       .arg(formats.volume(row.volume), said(row.fromName)),
                                   {said(row.beer),
                                    measured(row.alcoholByVolume, row.specificGravity, formats)},
                                   formats);
                   }),
            tr("What came in"));
    addPart(all, eachOf(lot.finishes, [&](const auto& row) { return finish(row, formats); }),
            tr("Finishes"));
    addPart(all,
            eachOf(lot.treatments,
                   [&](const cellar::TreatmentRow& row) {
                       return line(
                           QStringLiteral("treatment"), row, capitalised(word(row.method)),
                           {row.temperature ? formats.temperature(*row.temperature) : QString()},
                           formats);
                   }),
            tr("Filtered, pasteurised"));
    addPart(all,
            eachOf(lot.carbonations, [&](const auto& row) { return carbonation(row, formats); }),
            tr("Carbonated"));
    addPart(all, eachOf(lot.readings, [&](const auto& row) { return reading(row, formats); }),
            tr("Readings"));
    addPart(all, eachOf(lot.packages, [&](const auto& row) { return package(row, formats); }),
            tr("Packages"));
    addPart(all,
            eachOf(lot.releases,
                   [&](const cellar::ReleaseRow& row) {
                       return line(QStringLiteral("release"), row,
                                   tr("To %1: %2", "who, packages")
                                       .arg(said(row.to), counts(row.packages, formats)),
                                   {}, formats);
                   }),
            tr("Released"));
    addPart(all, eachOf(lot.waysOut, [&](const auto& row) { return wayOut(row, formats); }),
            tr("Other ways out"));
    return all;
}

}  // namespace spile::viewmodels

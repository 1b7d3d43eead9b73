#include "qml/viewmodels/history_rows.hpp"

#include "core/plan/numbers.hpp"
#include "qml/viewmodels/words.hpp"

namespace spile::viewmodels {

namespace {

class Lines {
public:
    explicit Lines(const Formats& formats) : formats_(formats) {}

    HistoryLine& add(const cellar::FactRow& fact, const QString& what, const QString& detail)
    {
        HistoryLine& line = lines_.emplace_back();
        line.id = textOf(fact.entry);
        line.atMs = toMs(fact.at);
        line.when = formats_.marked(formats_.date(fact.at), fact.at);
        line.what = what;
        line.detail = detail;
        if (fact.clock) {
            line.detail += (detail.isEmpty() ? QString() : QStringLiteral("\n")) +
                           formats_.setRight(fact.clock);
        }
        line.who = QString::fromStdString(fact.person);
        return line;
    }

    std::vector<HistoryLine> sorted()
    {
        std::stable_sort(lines_.begin(), lines_.end(),
                         [](const auto& a, const auto& b) { return a.atMs > b.atMs; });
        return std::move(lines_);
    }

private:
    const Formats& formats_;
    std::vector<HistoryLine> lines_;
};

QString joined(const QStringList& parts) { return parts.join(QStringLiteral(", ")); }

QString withNote(const QString& detail, const cellar::FactRow& fact)
{
    const QString note = QString::fromStdString(fact.note);
    return note.isEmpty() ? detail : detail.isEmpty() ? note : detail + QStringLiteral("\n") + note;
}

QString fillText(const cellar::FillRow& fill, const Formats& formats)
{
    QStringList parts;
    if (!fill.beer.empty()) {
        parts << QString::fromStdString(fill.beer);
    }
    if (fill.volume) {
        parts << formats.volume(*fill.volume);
    }
    return joined(parts);
}

QString readingText(const cellar::ReadingRow& reading, const Formats& formats)
{
    QStringList parts;
    if (reading.specificGravity) {
        parts << HistoryRows::tr("gravity %1")
                     .arg(formats.gravity(
                         plan::gravityAt20(reading).value_or(*reading.specificGravity)));
    }
    if (reading.ph) {
        parts << HistoryRows::tr("pH %1").arg(formats.ph(*reading.ph));
    }
    if (reading.temperature) {
        parts << formats.temperature(*reading.temperature);
    }
    if (reading.alcoholByVolume) {
        parts << formats.strength(*reading.alcoholByVolume);
    }
    return joined(parts);
}

QString doseText(const cellar::DoseRow& dose, const Formats& formats)
{
    QStringList parts{word(dose.substance)};
    if (dose.volume) {
        parts << formats.volume(*dose.volume);
    }
    if (dose.alcoholByVolume) {
        parts << formats.strength(*dose.alcoholByVolume);
    }
    if (dose.drained) {
        parts << HistoryRows::tr("drained %1").arg(formats.volume(*dose.drained));
    }
    return joined(parts);
}

QString topUpText(const cellar::TopUpRow& topUp, const Formats& formats)
{
    QStringList parts{formats.volume(topUp.volume)};
    if (!topUp.what.empty()) {
        parts << QString::fromStdString(topUp.what);
    }
    return joined(parts);
}

// What a gauge says: a volume, or a bound.
QString gaugeText(const cellar::GaugeRow& gauge, const Formats& formats)
{
    const QString volume = formats.volume(gauge.volume);
    switch (gauge.bound) {
        case cellar::Bound::AtLeast:
            return HistoryRows::tr("at least %1: the nail runs").arg(volume);
        case cellar::Bound::AtMost:
            return HistoryRows::tr("at most %1: the nail does not run").arg(volume);
        case cellar::Bound::None:
            break;
    }
    return HistoryRows::tr("%1 by %2", "182 L by dip").arg(volume, word(gauge.method));
}

// A step of a work sheet that did not go by the sheet: "Fill, skipped: no tool at hand".
QString stepText(const std::string& text)
{
    const QStringList parts = QString::fromStdString(text).split(QLatin1Char('\n'));
    if (parts.size() < 3) {
        return QString::fromStdString(text);
    }
    return HistoryRows::tr("%1, %2: %3", "a sheet, an outcome, a reason")
        .arg(word("sheet " + parts[0].toStdString()), word(parts[1].toStdString()),
             word(parts[2].toStdString()));
}

// A verdict, and what the outlook said on that day.
QString verdictText(const cellar::OtherRow& verdict, const Formats& formats)
{
    return verdict.chance ? HistoryRows::tr("%1; the outlook that day: %2 that all was inside",
                                            "a verdict, a chance")
                                .arg(word(verdict.text), formats.chance(*verdict.chance))
                          : word(verdict.text);
}

}  // namespace

QString scoresText(const cellar::TasteRow& taste, const Formats& formats)
{
    QStringList scores;
    for (const auto& [attribute, score] : taste.scores) {
        const QString value = score ? formats.locale.toString(static_cast<qlonglong>(*score))
                                    : HistoryRows::tr("not judged");
        scores << QStringLiteral("%1 %2").arg(word(attribute), value);
    }
    if (taste.liking) {
        scores << HistoryRows::tr("liking %1").arg(*taste.liking);
    }
    QStringList faults;
    for (const auto& [fault, strength] : taste.faults) {
        faults << QStringLiteral("%1 %2").arg(word(fault)).arg(strength);
    }
    return faults.isEmpty() ? joined(scores)
                            : HistoryRows::tr("%1; wrong: %2", "scores; faults")
                                  .arg(joined(scores), joined(faults));
}

std::vector<HistoryLine> linesOf(const cellar::BarrelHistory& history, const Formats& formats,
                                 bool hidden, const std::function<QUrl(const Sha256&)>& photoFile)
{
    Lines lines(formats);
    for (const auto& fill : history.fills) {
        lines.add(fill, HistoryRows::tr("Filled"), withNote(fillText(fill, formats), fill)).when =
            formats.marked(formats.date(fill.at, fill.precision), fill.at);
    }
    for (const auto& gauge : history.gauges) {
        lines.add(gauge, HistoryRows::tr("Gauged"), withNote(gaugeText(gauge, formats), gauge));
    }
    for (const auto& draw : history.draws) {
        lines.add(draw, HistoryRows::tr("Drawn"),
                  withNote(HistoryRows::tr("%1 at the %2", "200 mL at the sample hole")
                               .arg(formats.volume(draw.volume), word(draw.method)),
                           draw));
    }
    for (const auto& topUp : history.topUps) {
        lines.add(topUp, HistoryRows::tr("Topped up"), withNote(topUpText(topUp, formats), topUp));
    }
    for (const auto& dose : history.doses) {
        lines.add(dose, HistoryRows::tr("Put in"), withNote(doseText(dose, formats), dose));
    }
    for (const auto& taste : history.tastings) {
        lines.add(taste, HistoryRows::tr("Tasted"),
                  hidden ? HistoryRows::tr("Scores are hidden until your sheet is closed.")
                         : withNote(scoresText(taste, formats), taste));
    }
    for (const auto& reading : history.readings) {
        lines.add(reading, HistoryRows::tr("Measured"),
                  withNote(readingText(reading, formats), reading));
    }
    for (const auto& fact : history.others) {
        lines.add(fact, capitalised(word("done " + fact.kind)),
                  withNote(hidden                      ? QString()
                           : fact.kind == "sheet_step" ? stepText(fact.text)
                                                       : verdictText(fact, formats),
                           fact));
    }
    for (const auto& photo : history.photos) {
        HistoryLine& line = lines.add(
            photo, HistoryRows::tr("Photo"),
            photo.here ? word(photo.purpose)
                       : HistoryRows::tr("%1, still on another device").arg(word(photo.purpose)));
        line.id += QString::fromStdString(photo.hash.hex());
        if (photo.here && !hidden) {
            line.photo = photoFile(photo.hash);
        }
    }
    return lines.sorted();
}

QVariant HistoryRows::data(const QModelIndex& index, int role) const
{
    const HistoryLine* line = rowAt(index.row());
    if (line == nullptr) {
        return {};
    }
    switch (role) {
        case EntryRole:
            return line->id;
        case When:
            return line->when;
        case What:
            return line->what;
        case Detail:
            return line->detail;
        case Who:
            return line->who;
        case Photo:
            return line->photo;
        default:
            return {};
    }
}

QHash<int, QByteArray> HistoryRows::roleNames() const
{
    return {{EntryRole, "entry"}, {When, "when"}, {What, "what"},
            {Detail, "detail"},   {Who, "who"},   {Photo, "photo"}};
}

}  // namespace spile::viewmodels

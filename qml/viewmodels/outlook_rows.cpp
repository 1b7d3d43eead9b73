#include "qml/viewmodels/outlook_rows.hpp"

#include "core/panel/line.hpp"
#include "qml/viewmodels/outlook_text.hpp"
#include "qml/viewmodels/time_axis.hpp"
#include "qml/viewmodels/words.hpp"

#include <algorithm>

namespace spile::viewmodels {

using outlook::AttributeOutlook;
using outlook::LevelPoint;

namespace {

QPointF pointOf(Instant from, Instant at, double line)
{
    return {daysSince(from, at), panel::scoreOfLine(line)};
}

// The names of the tasters in the order of their first scores; the third stands for all others.
QStringList tasterNames(const AttributeOutlook& attribute)
{
    constexpr qsizetype most = 3;
    QStringList names;
    for (const outlook::SeenScore& score : attribute.scores) {
        const QString name = QString::fromStdString(score.name);
        if (!names.contains(name)) {
            names << name;
        }
    }
    if (names.size() > most) {
        names = names.first(most);
        names.last() = AttributeRows::tr("others", "tasters");
    }
    return names;
}

void addScores(AttributeLine& line, const AttributeOutlook& attribute, Instant filled)
{
    const QStringList names = tasterNames(attribute);
    line.firstName = names.value(0);
    line.secondName = names.value(1);
    line.thirdName = names.value(2);
    for (const outlook::SeenScore& score : attribute.scores) {
        const QPointF point = pointOf(filled, score.at, score.line);
        const QString name = QString::fromStdString(score.name);
        (name == line.firstName    ? line.first
         : name == line.secondName ? line.second
                                   : line.third)
            << point;
        if (attribute.doubtfulScore == score.taste) {
            line.doubtful << point;
        }
    }
}

QString noteLines(const AttributeOutlook& attribute, const outlook::BarrelOutlook& outlook,
                  const Formats& formats)
{
    QStringList lines;
    constexpr double mostly = 0.5;
    if (attribute.priorShare > mostly) {
        lines << AttributeRows::tr("Mostly what is usual, little tasted here.");
    }
    if (attribute.entryMiddle && *attribute.entryMiddle > outlook.now && attribute.window) {
        lines << AttributeRows::tr("Comes into its window about %1.")
                     .arg(formats.day(*attribute.entryMiddle));
    } else if (attribute.window && attribute.neverByHorizon > mostly) {
        lines << AttributeRows::tr("It may not come into its window by %1: %2.", "a date, a chance")
                     .arg(formats.day(outlook.horizon), formats.chance(attribute.neverByHorizon));
    }
    for (const outlook::SeenScore& score : attribute.scores) {
        if (attribute.doubtfulScore == score.taste) {
            lines << OutlookText::doubt(score, attribute.doubt, formats);
        }
    }
    return lines.join(QLatin1Char('\n'));
}

QString windowText(const AttributeOutlook& attribute, const LevelPoint& now, const Formats& formats)
{
    if (!attribute.window) {
        return {};
    }
    const QString inside =
        AttributeRows::tr("inside %1: %2", "a window, a chance")
            .arg(OutlookText::window(attribute, formats), formats.chance(now.within));
    return attribute.source == outlook::WindowSource::Taught
               ? AttributeRows::tr(
                     "%1; the window is learned from %n call(s) of more, right or "
                     "too much",
                     "", attribute.directions)
                     .arg(inside)
               : inside;
}

}  // namespace

LevelPoint pointAt(const std::vector<LevelPoint>& course, Instant at)
{
    const auto after =
        std::lower_bound(course.begin(), course.end(), at,
                         [](const LevelPoint& point, Instant time) { return point.at < time; });
    if (after == course.begin()) {
        return course.front();
    }
    if (after == course.end()) {
        return course.back();
    }
    const LevelPoint& before = *(after - 1);
    const double share = std::chrono::duration<double>(at - before.at) /
                         std::chrono::duration<double>(after->at - before.at);
    const auto between = [share](double a, double b) { return a + share * (b - a); };
    return {at, between(before.low, after->low), between(before.middle, after->middle),
            between(before.high, after->high), between(before.within, after->within)};
}

QString readingAt(const AttributeOutlook& attribute, Instant at, Milliseconds about,
                  const Formats& formats)
{
    if (attribute.course.empty()) {
        return {};
    }
    const LevelPoint point = pointAt(attribute.course, at);
    QStringList parts{AttributeRows::tr("%1: %2", "a date, a score with its range")
                          .arg(formats.day(at), OutlookText::level(point, formats))};
    if (attribute.window) {
        parts << AttributeRows::tr("inside: %1", "a chance").arg(formats.chance(point.within));
    }
    for (const outlook::SeenScore& score : attribute.scores) {
        if (std::chrono::abs(score.at - at) <= about) {
            parts << AttributeRows::tr("%1 scored %2 on %3", "a taster, a score, a date")
                         .arg(QString::fromStdString(score.name),
                              formats.locale.toString(panel::scoreOfLine(score.line), 'f', 0),
                              formats.day(score.at));
        }
    }
    return parts.join(QStringLiteral("; "));
}

AttributeLine lineOf(const AttributeOutlook& attribute, const outlook::BarrelOutlook& outlook,
                     const Formats& formats)
{
    AttributeLine line;
    line.attribute = QString::fromStdString(attribute.attribute);
    line.name = capitalised(word(attribute.attribute));
    for (const LevelPoint& point : attribute.course) {
        line.lower << pointOf(outlook.filled, point.at, point.low);
        line.upper << pointOf(outlook.filled, point.at, point.high);
        line.middle << pointOf(outlook.filled, point.at, point.middle);
    }
    addScores(line, attribute, outlook.filled);
    line.note = noteLines(attribute, outlook, formats);
    if (attribute.course.empty()) {
        return line;
    }
    const LevelPoint now = pointAt(attribute.course, outlook.now);
    const LevelPoint& then = attribute.course.back();
    line.now = OutlookText::level(now, formats);
    line.window = windowText(attribute, now, formats);
    line.spoken =
        AttributeRows::tr("%1 over time: now %2, on %3 %4",
                          "an attribute, a level, a date, a level")
            .arg(line.name, line.now, formats.day(then.at), OutlookText::level(then, formats));
    if (attribute.window) {
        const QPointF from =
            pointOf(outlook.filled, attribute.course.front().at, attribute.window->low);
        const QPointF to = pointOf(outlook.filled, then.at, attribute.window->high);
        line.windowBox = {from, {to.x(), from.y()}, to, {from.x(), to.y()}, from};
    }
    return line;
}

QVariant AttributeRows::data(const QModelIndex& index, int role) const
{
    const AttributeLine* line = rowAt(index.row());
    if (line == nullptr) {
        return {};
    }
    switch (role) {
        case Name:
            return line->name;
        case Now:
            return line->now;
        case Window:
            return line->window;
        case Note:
            return line->note;
        case Spoken:
            return line->spoken;
        case Lower:
            return QVariant::fromValue(line->lower);
        case Upper:
            return QVariant::fromValue(line->upper);
        case Middle:
            return QVariant::fromValue(line->middle);
        case WindowBox:
            return QVariant::fromValue(line->windowBox);
        case First:
            return QVariant::fromValue(line->first);
        case Second:
            return QVariant::fromValue(line->second);
        case Third:
            return QVariant::fromValue(line->third);
        case Doubtful:
            return QVariant::fromValue(line->doubtful);
        case FirstName:
            return line->firstName;
        case SecondName:
            return line->secondName;
        case ThirdName:
            return line->thirdName;
        default:
            return {};
    }
}

QHash<int, QByteArray> AttributeRows::roleNames() const
{
    return {{Name, "name"},
            {Now, "now"},
            {Window, "windowText"},
            {Note, "note"},
            {Spoken, "spoken"},
            {Lower, "lower"},
            {Upper, "upper"},
            {Middle, "middle"},
            {WindowBox, "windowBox"},
            {First, "first"},
            {Second, "second"},
            {Third, "third"},
            {Doubtful, "doubtful"},
            {FirstName, "firstName"},
            {SecondName, "secondName"},
            {ThirdName, "thirdName"}};
}

QVariant SaidRows::data(const QModelIndex& index, int role) const
{
    const SaidLine* line = rowAt(index.row());
    if (line == nullptr) {
        return {};
    }
    return role == Said ? line->said : role == Beside ? line->beside : QVariant();
}

QHash<int, QByteArray> SaidRows::roleNames() const { return {{Said, "said"}, {Beside, "beside"}}; }

}  // namespace spile::viewmodels

#include "qml/viewmodels/bench_text.hpp"

#include "qml/viewmodels/barrel_rows.hpp"
#include "qml/viewmodels/outlook_text.hpp"
#include "qml/viewmodels/words.hpp"

#include <algorithm>
#include <cmath>

namespace spile::viewmodels {

namespace {

using What = blend::InTheWay::What;

QString lineName(const blend::Wish& wish) { return capitalised(word(wish.attribute)); }

qreal shareOfLine(double level) { return std::clamp(level / panel::lineLength, 0.0, 1.0); }

}  // namespace

QString BenchText::barrels(const blend::Blend& blend) const
{
    QStringList names;
    for (const blend::Share& share : blend.shares) {
        const plan::BenchBarrel& barrel = bench_.barrels[share.barrel];
        const Volume taken = Volume::fromSi(share.amount);
        const bool part = share.amount < bench_.problem.barrels[share.barrel].amount;
        names << (part ? tr("%1 (%2 of it)", "a barrel, a volume")
                             .arg(nameOf(barrel.row), formats_.volume(taken))
                       : nameOf(barrel.row));
    }
    return names.join(QStringLiteral(", "));
}

bool BenchText::hasWindows() const
{
    return std::any_of(bench_.problem.wishes.begin(), bench_.problem.wishes.end(),
                       [](const blend::Wish& wish) { return wish.low || wish.high; });
}

QString BenchText::chance(const blend::Blend& blend) const
{
    return hasWindows() ? tr("%1 that all is inside").arg(formats_.chance(blend.chance))
                        : QString();
}

QString BenchText::points(double distance) const
{
    return formats_.locale.toString(std::sqrt(distance), 'f', 1);
}

QString BenchText::range(const QString& middle, const QString& low, const QString& high) const
{
    return tr("%1 (%2 to %3)", "a value and its range").arg(middle, low, high);
}

QString BenchText::inShort(const plan::BenchAnswer& answer) const
{
    return tr("%1, %2, off by %3 points")
        .arg(formats_.volume(answer.mixed.volume), formats_.strength(answer.mixed.alcoholByVolume),
             points(answer.blend.distance));
}

std::vector<BenchItem> BenchText::costs(const plan::BenchAnswer& answer) const
{
    std::vector<BenchItem> items;
    const auto add = [&](const char* id, const QString& title, const QString& value,
                         const QString& note = {}) {
        items.push_back({QString::fromLatin1(id), title, value, note});
    };
    add("volume", tr("Volume"),
        range(formats_.volume(answer.volume.median), formats_.volume(answer.volume.low),
              formats_.volume(answer.volume.high)),
        tr("8 in 10 that it lies there"));
    add("strength", tr("Strength"),
        range(formats_.strength(answer.strength.median), formats_.strength(answer.strength.low),
              formats_.strength(answer.strength.high)));
    add("offBy", tr("Off by"), tr("%1 points of the line").arg(points(answer.blend.distance)));
    QStringList left;
    for (const plan::Ullaged& one : answer.ullaged) {
        left << tr("%1: %2 stay, with air over them")
                    .arg(nameOf(bench_.barrels[one.barrel].row), formats_.volume(one.left));
    }
    add("ullaged", tr("Left in part"), left.isEmpty() ? tr("none") : left.join(u'\n'));
    add("beers", tr("Beers mixed"), formats_.locale.toString(static_cast<int>(answer.beers)));
    if (answer.oldest) {
        const QString oldest = formats_.age(*answer.oldest);
        const QString youngest = formats_.age(*answer.youngest);
        add("age", tr("Time in wood"),
            oldest == youngest ? oldest : tr("%1 to %2", "ages").arg(youngest, oldest));
    }
    return items;
}

std::vector<BenchItem> BenchText::levels(const plan::BenchAnswer& answer) const
{
    std::vector<BenchItem> items;
    for (std::size_t i = 0; i < bench_.problem.wishes.size(); ++i) {
        const blend::Wish& wish = bench_.problem.wishes[i];
        const double mean = answer.blend.mean[i];
        const double reach = wood::spreadReach * answer.blend.deviation[i];
        const auto score = [&](double line) { return OutlookText::score(line, formats_); };
        BenchItem item{QString::fromStdString(wish.attribute), lineName(wish),
                       range(score(mean), score(mean - reach), score(mean + reach)),
                       wish.low || wish.high
                           ? tr("%1 inside", "a chance").arg(formats_.chance(answer.chances[i]))
                           : QString()};
        item.from = shareOfLine(mean - reach);
        item.to = shareOfLine(mean + reach);
        item.mark = shareOfLine(mean);
        for (const std::optional<double>& edge : {wish.low, wish.high}) {
            if (edge) {
                item.places << shareOfLine(*edge);
            }
        }
        items.push_back(std::move(item));
    }
    return items;
}

std::vector<BenchItem> BenchText::inTheWay(const blend::Found& found) const
{
    std::vector<BenchItem> items;
    for (const blend::InTheWay& way : found.inTheWay) {
        const auto said = [&](double value) {
            return way.what == What::Attribute  ? OutlookText::score(value, formats_)
                   : way.what == What::Strength ? formats_.strength(value)
                                                : formats_.volume(Volume::fromSi(value));
        };
        const QString name = way.what == What::Attribute ? lineName(bench_.problem.wishes[way.wish])
                             : way.what == What::Strength ? tr("Strength")
                                                          : tr("Volume");
        const QString sentence = way.reached < way.bound ? tr("comes to %1, asked for at least %2")
                                                         : tr("comes to %1, asked for at most %2");
        items.push_back({QString::number(items.size()),
                         name,
                         sentence.arg(said(way.reached), said(way.bound)),
                         {}});
    }
    return items;
}

QString BenchText::proof(const blend::Found& found) const
{
    if (found.blends.empty()) {
        return found.proven ? tr("Every set of barrels was looked at: none keeps all bounds.")
                            : tr("Not every set of barrels was looked at; none keeps all bounds.");
    }
    const QString nearest = points(found.blends.front().distance);
    return found.proven
               ? tr("Every set of barrels was looked at: none is off by less than %1 points.")
                     .arg(nearest)
               : tr("Stopped before all were looked at: the nearest is off by %1 points, and none "
                    "by less than %2.")
                     .arg(nearest, points(found.bound));
}

QString BenchText::leftOut() const
{
    QStringList suspect;
    QStringList sour;
    QStringList unknown;
    for (const plan::LeftOut& one : bench_.leftOut) {
        (one.why == plan::LeftOut::Why::Suspect ? suspect
         : one.why == plan::LeftOut::Why::Sour  ? sour
                                                : unknown)
            << nameOf(one.row);
    }
    QStringList sentences;
    const auto add = [&](const QStringList& names, const QString& sentence) {
        if (!names.isEmpty()) {
            sentences << sentence.arg(names.join(QStringLiteral(", ")));
        }
    };
    add(suspect, tr("Left out as suspect: %1."));
    add(sour, tr("Left out as sour: %1."));
    add(unknown, tr("Left out, since nobody wrote down what they hold: %1."));
    return sentences.join(u' ');
}

}  // namespace spile::viewmodels

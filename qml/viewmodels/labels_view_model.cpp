#include "qml/viewmodels/labels_view_model.hpp"

#include "core/cellar/acts/registering.hpp"
#include "core/cellar/queries.hpp"
#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/notice.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace spile::viewmodels {

using labels::LabelWords;
using labels::Stock;
using labels::StockKind;

namespace {

constexpr std::array allKinds{StockKind::Plain, StockKind::Sheet, StockKind::Roll};
constexpr int stepCm = 5;
constexpr int stepInches = 2;

std::vector<Stock> stocksOf(StockKind kind)
{
    std::vector<Stock> found;
    for (const Stock& stock : labels::stocks()) {
        if (stock.kind == kind) {
            found.push_back(stock);
        }
    }
    return found;
}

}  // namespace

LabelsViewModel::LabelsViewModel(Context& context, FilePlaces& places, QObject* parent)
    : QObject(parent), context_(context), places_(places), stock_(stocksOf(StockKind::Plain)[0])
{
}

void LabelsViewModel::begin(std::optional<LabelWords> barrel)
{
    barrel_ = std::move(barrel);
    subject_ = 0;
    from_ = 1;
    forget();
    emit changed();
    context_.workers.aside(
        this, [&places = places_] { return places.targets(); },
        [this](std::vector<FilePlaces::Place> folders) {
            folders_ = std::move(folders);
            folder_ = 0;
            emit changed();
        });
    context_.workers.read(
        this, [](cellar::Cellar& cellar) { return readRecords(cellar); },
        [this](Result<Records> records) {
            if (!records) {
                context_.notice.refuse(textOf(records.error()));
                return;
            }
            records_ = std::move(*records);
            loaded_ = true;
            show();
        });
}

Result<LabelsViewModel::Records> LabelsViewModel::readRecords(cellar::Cellar& cellar)
{
    constexpr int page = 200;
    Records records{cellar.identity().mark, {}};
    cellar::AfterBarrel after;
    for (bool more = true; more;) {
        SPILE_ASSIGN(rows, cellar::barrels(cellar.database(), after, page));
        for (const cellar::BarrelRow& row : rows) {
            records.barrels.push_back({row.code, row.mark});
        }
        more = rows.size() == page;
        after = rows.empty() ? after : cellar::afterBarrel(rows.back());
    }
    return records;
}

// What was written was of another choice.
void LabelsViewModel::forget()
{
    file_.clear();
    fileText_.clear();
    incompleteText_.clear();
    error_.clear();
}

LabelsViewModel::Subject LabelsViewModel::chosen() const
{
    return static_cast<Subject>(subject_ + (barrel_ ? 0 : 1));
}

QStringList LabelsViewModel::subjects() const
{
    QStringList words{tr("All barrels"), tr("Spare codes")};
    if (barrel_) {
        words.prepend(QString::fromStdString(barrel_->mark.empty() ? scan::shown(barrel_->code)
                                                                   : barrel_->mark));
    }
    return words;
}

QStringList LabelsViewModel::kinds() const
{
    return {tr("Head plates"), tr("Sheets of labels"), tr("A label roll")};
}

int LabelsViewModel::kind() const
{
    return static_cast<int>(std::find(allKinds.begin(), allKinds.end(), stock_.kind) -
                            allKinds.begin());
}

QStringList LabelsViewModel::stocks() const
{
    QStringList words;
    for (const Stock& stock : stocksOf(stock_.kind)) {
        words << said(stock);
    }
    return words;
}

int LabelsViewModel::stock() const
{
    const std::vector<Stock> offered = stocksOf(stock_.kind);
    const auto found = std::find_if(offered.begin(), offered.end(),
                                    [this](const Stock& s) { return s.name == stock_.name; });
    return static_cast<int>(found - offered.begin());
}

QString LabelsViewModel::said(const Stock& stock) const
{
    const auto mm = [this](double value) {
        return context_.formats.locale.toString(std::round(value * 10) / 10, 'g', 6);
    };
    const QString paper = std::string_view(stock.name).find("letter") == std::string_view::npos
                              ? tr("A4")
                              : tr("US Letter");
    switch (stock.kind) {
        case StockKind::Plain:
            return paper;
        case StockKind::Roll:
            return tr("%1 × %2 mm").arg(mm(stock.width), mm(stock.height));
        case StockKind::Sheet:
            return tr("%1, %2 of %3 × %4 mm", "paper, labels on it, width, height")
                .arg(paper)
                .arg(stock.positions())
                .arg(mm(stock.width), mm(stock.height));
    }
    return {};
}

QString LabelsViewModel::distance() const
{
    return context_.formats.locale.toString(
        us() ? static_cast<int>(std::lround(inInches(distance_)))
             : static_cast<int>(std::lround(inMillimetres(distance_) / 10)));
}

QString LabelsViewModel::distanceUnit() const { return us() ? tr("in") : tr("cm"); }

QString LabelsViewModel::distanceStep() const
{
    return QString::number(us() ? stepInches : stepCm);
}

QString LabelsViewModel::bigDistanceStep() const
{
    return QString::number(10 * (us() ? stepInches : stepCm));
}

QString LabelsViewModel::lengthText(Length length) const
{
    return us() ? tr("%1 in").arg(std::lround(inInches(length)))
                : tr("%1 cm").arg(std::lround(inMillimetres(length) / 10));
}

void LabelsViewModel::chooseSubject(int index)
{
    subject_ = index;
    show();
}

void LabelsViewModel::chooseKind(int index)
{
    if (index != kind()) {
        const std::vector<Stock> offered = stocksOf(allKinds.at(static_cast<std::size_t>(index)));
        const auto fits = [this](const Stock& stock) {
            return labels::fit(stock, distance_).has_value();
        };
        const auto usual = std::find_if(offered.begin(), offered.end(), [&](const Stock& stock) {
            const bool isRoll = stock.kind == StockKind::Roll;
            return fits(stock) && (!isRoll || stock.name == labels::usualRoll);
        });
        stock_ = usual == offered.end() ? offered.front() : *usual;
        from_ = 1;
        show();
    }
}

void LabelsViewModel::chooseStock(int index)
{
    stock_ = stocksOf(stock_.kind).at(static_cast<std::size_t>(index));
    from_ = 1;
    show();
}

void LabelsViewModel::chooseFolder(int index)
{
    folder_ = index;
    emit changed();
}

void LabelsViewModel::stepSpares(int count)
{
    spares_ = std::clamp(spares_ + count, 1, cellar::mostSpares);
    show();
}

void LabelsViewModel::stepDistance(int count)
{
    const double step = us() ? inches(stepInches).si() : stepCm / 100.0;
    const double stepped = (std::round(distance_.si() / step) + count) * step;
    distance_ =
        metres(std::clamp(stepped, labels::nearestReading.si(), labels::farthestReading.si()));
    show();
}

void LabelsViewModel::stepFrom(int count)
{
    from_ = std::clamp(from_ + count, 1, std::max(1, stock_.positions()));
    show();
}

void LabelsViewModel::toggleTestPage()
{
    testPage_ = !testPage_;
    show();
}

QStringList LabelsViewModel::folders() const
{
    QStringList names;
    for (const FilePlaces::Place& place : folders_) {
        names << place.name;
    }
    return names;
}

}  // namespace spile::viewmodels

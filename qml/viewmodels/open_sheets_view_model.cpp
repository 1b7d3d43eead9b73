#include "qml/viewmodels/open_sheets_view_model.hpp"

#include "qml/viewmodels/barrel_rows.hpp"
#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/notice.hpp"
#include "qml/viewmodels/sheet_steps.hpp"
#include "qml/viewmodels/words.hpp"

namespace spile::viewmodels {

QString glassName(const cellar::OpenSheet& sheet)
{
    return OpenSheetsViewModel::tr("Glass %1").arg(sheet.glass.value_or(0));
}

QVariant OpenSheetRows::data(const QModelIndex& index, int role) const
{
    const OpenSheetLine* line = rowAt(index.row());
    if (line == nullptr) {
        return {};
    }
    switch (role) {
        case Barrel:
            return line->barrel;
        case Taster:
            return line->taster;
        case Where:
            return line->where;
        case When:
            return line->when;
        default:
            return {};
    }
}

QHash<int, QByteArray> OpenSheetRows::roleNames() const
{
    return {{Barrel, "barrel"}, {Taster, "taster"}, {Where, "where"}, {When, "when"}};
}

OpenSheetsViewModel::OpenSheetsViewModel(Context& context, QObject* parent)
    : QObject(parent), context_(context)
{
    connect(&context_.workers, &Workers::changed, this, &OpenSheetsViewModel::refresh);
}

void OpenSheetsViewModel::setInterruption(const QString& text)
{
    interruption_ = text;
    emit changed();
}

void OpenSheetsViewModel::refresh()
{
    context_.workers.read(
        this,
        [](cellar::Cellar& cellar) -> Result<std::vector<Found>> {
            SPILE_ASSIGN(open, cellar::openSheets(cellar));
            std::vector<Found> all;
            for (const cellar::OpenSheet& sheet : open) {
                Found found{sheet, {}, {}, 0, 0, {}};
                SPILE_ASSIGN(row, cellar::barrelById(cellar.database(), sheet.barrel));
                SPILE_ASSIGN(content, cellar::readSheet(cellar, sheet.sheet));
                SPILE_ASSIGN(taster, cellar::nameOfPerson(cellar.database(), sheet.person));
                SheetSteps steps(content.taste.attributeOrder);
                steps.goTo(sheet.step);
                found.barrel = sheet.flight ? glassName(sheet) : row ? nameOf(*row) : QString();
                found.taster = QString::fromStdString(taster);
                found.step = steps.index() + 1;
                found.steps = steps.count();
                found.stepName = QString::fromStdString(
                    steps.attribute().empty() ? "step " + steps.name() : steps.attribute());
                all.push_back(std::move(found));
            }
            return all;
        },
        [this](Result<std::vector<Found>> found) {
            if (found) {
                take(*found);
            } else {
                context_.notice.refuse(textOf(found.error()));
            }
        });
}

void OpenSheetsViewModel::take(const std::vector<Found>& found)
{
    sheets_.clear();
    std::vector<OpenSheetLine> lines;
    const Formats& formats = context_.formats;
    for (const Found& one : found) {
        sheets_.push_back(one.sheet);
        const QString step = capitalised(word(one.stepName.toStdString()));
        lines.push_back({textOf(one.sheet.sheet), one.barrel, one.taster,
                         tr("%1, %2 of %3", "Oak, 3 of 9").arg(step).arg(one.step).arg(one.steps),
                         formats.daysFromToday(one.sheet.opened) == 0
                             ? tr("begun %1, now %2")
                                   .arg(formats.time(one.sheet.opened), formats.time(formats.now()))
                             : tr("begun %1").arg(formats.dateAndTime(one.sheet.opened))});
    }
    rows_.replace(std::move(lines));
    emit changed();
    emit read();
}

void OpenSheetsViewModel::goOn(int index)
{
    if (index >= 0 && index < static_cast<int>(sheets_.size())) {
        emit chosen(sheets_[static_cast<std::size_t>(index)]);
    }
}

}  // namespace spile::viewmodels

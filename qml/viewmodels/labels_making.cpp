// One label to look at, and the file of all: the second part of labels_view_model.cpp.
#include "core/cellar/acts/registering.hpp"
#include "core/labels/label_path.hpp"
#include "core/labels/pdf.hpp"
#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/labels_view_model.hpp"

#include <QDateTime>
#include <algorithm>

namespace spile::viewmodels {

namespace {

// A code that no barrel has: what is drawn for spare labels, whose codes are made when they are
// written.
std::string exampleCode(const std::string& mark)
{
    const std::string serial = "00000";
    for (const char check : scan::codeAlphabet) {
        if (scan::isCode(mark, serial + check)) {
            return serial + check;
        }
    }
    return {};
}

}  // namespace

std::size_t LabelsViewModel::labelCount() const
{
    switch (chosen()) {
        case Subject::ThisBarrel:
            return 1;
        case Subject::AllBarrels:
            return records_.barrels.size();
        case Subject::Spares:
            return static_cast<std::size_t>(spares_);
    }
    return 0;
}

// All but the codes of spare labels.
labels::Order LabelsViewModel::order() const
{
    labels::Order order{.cellarMark = records_.cellarMark,
                        .labels = {},
                        .stock = stock_,
                        .distance = distance_,
                        .from = from_,
                        .testPage = testPage_};
    if (chosen() == Subject::ThisBarrel) {
        order.labels = {*barrel_};
    } else if (chosen() == Subject::AllBarrels) {
        order.labels = records_.barrels;
    }
    return order;
}

QString LabelsViewModel::problemOf(const Error& error) const
{
    if (error.subject != "label stock") {
        return textOf(error);
    }
    const auto farthest = labels::farthestOf(stock_);
    return tr("Labels of this size are too small to be read from %1. They serve up to %2.")
        .arg(lengthText(distance_), lengthText(farthest.value_or(labels::nearestReading)));
}

// Lay out one label of what is chosen, and count them all.
void LabelsViewModel::show()
{
    forget();
    picture_.clear();
    pictureText_.clear();
    countText_.clear();
    problem_ = loaded_ && labelCount() == 0 ? tr("No barrel is registered yet.") : QString();
    if (const auto fitted = labels::fit(stock_, distance_); !fitted) {
        problem_ = problemOf(fitted.error());
    } else if (loaded_ && problem_.isEmpty()) {
        showPicture(*fitted);
    }
    emit changed();
}

void LabelsViewModel::showPicture(const labels::Fitted& fitted)
{
    labels::Order one = order();
    one.labels.resize(std::min<std::size_t>(one.labels.size(), 1));
    if (one.labels.empty()) {
        one.labels.push_back({exampleCode(one.cellarMark), {}});
    }
    one.testPage = false;
    const auto sheets = labels::layOut(one);
    if (!sheets) {
        problem_ = problemOf(sheets.error());
        return;
    }
    const labels::PlacedLabel& label = sheets->pages.front().labels.front();
    const QLocale& locale = context_.formats.locale;
    picture_ = QString::fromStdString(labels::pathOf(label));
    pictureSize_ = {label.cell.width, label.cell.height};
    pictureText_ = tr("%1 × %2 mm, %n symbol(s) with modules of %3 mm", "",
                      static_cast<int>(label.symbols.size()))
                       .arg(locale.toString(label.cell.width, 'f', 0),
                            locale.toString(label.cell.height, 'f', 0),
                            locale.toString(sheets->module, 'f', 1));
    const auto count = static_cast<int>(labelCount());
    const int onPage = fitted.stock.positions();
    const int pages = (from_ - 1 + count + onPage - 1) / onPage + (testPage_ ? 1 : 0);
    countText_ = tr("%1 on %2", "labels, pages")
                     .arg(tr("%n label(s)", "", count), tr("%n page(s)", "", pages));
}

QString LabelsViewModel::fileName() const
{
    return QString::fromStdString(file_.filename().string());
}

void LabelsViewModel::write()
{
    if (writing_ || !problem_.isEmpty() || !loaded_) {
        return;
    }
    forget();
    if (folders_.empty()) {
        error_ = tr("There is no folder to write to. Put in a memory stick.");
        emit changed();
        return;
    }
    writing_ = true;
    emit changed();
    if (!isForSpares()) {
        writeOrder(order());
        return;
    }
    context_.workers.read(
        this,
        [count = spares_](cellar::Cellar& cellar) { return cellar::spareCodes(cellar, count); },
        [this, spares = order()](Result<std::vector<std::string>> codes) {
            if (!codes) {
                tell(passOn(codes), {});
                return;
            }
            labels::Order all = spares;
            for (std::string& code : *codes) {
                all.labels.push_back({std::move(code), {}});
            }
            writeOrder(std::move(all));
        });
}

void LabelsViewModel::writeOrder(labels::Order order)
{
    const FilePlaces::Place place = folders_[static_cast<std::size_t>(folder_)];
    const QDateTime when = QDateTime::fromMSecsSinceEpoch(toMs(context_.formats.now()));
    const std::string name = "labels-" + order.cellarMark + "-" +
                             when.toString(QStringLiteral("yyyy-MM-dd-HHmmss")).toStdString() +
                             ".pdf";
    context_.workers.aside(
        this,
        [order = std::move(order), file = place.folder / name, title = tr("Barrel labels"),
         &files = context_.outside.files]() -> Result<Written> {
            SPILE_ASSIGN(sheets, labels::layOut(order));
            SPILE_ASSIGN(bytes, labels::pdfOf(sheets, title.toStdString()));
            SPILE_TRY(writeWhole(files, file, bytes));
            return Written{file, bytes.size(), order.labels.size(), sheets.pages.size(),
                           sheets.incomplete};
        },
        [this, folder = place.name](const Result<Written>& written) { tell(written, folder); });
}

void LabelsViewModel::tell(const Result<Written>& written, const QString& folder)
{
    writing_ = false;
    if (!written) {
        error_ = problemOf(written.error());
        emit changed();
        return;
    }
    file_ = written->file;
    fileText_ = tr("%1 on %2, %3, in %4.", "labels, pages, size, folder")
                    .arg(tr("%n label(s)", "", static_cast<int>(written->labels)),
                         tr("%n page(s)", "", static_cast<int>(written->pages)),
                         context_.formats.size(written->bytes), folder);
    QStringList marks;
    for (const std::string& mark : written->incomplete) {
        marks << QString::fromStdString(mark);
    }
    incompleteText_ = marks.isEmpty() ? QString()
                                      : tr("A box stands for characters that the font lacks: %1")
                                            .arg(marks.join(QStringLiteral(", ")));
    emit changed();
}

}  // namespace spile::viewmodels

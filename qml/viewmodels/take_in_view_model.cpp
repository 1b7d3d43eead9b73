#include "qml/viewmodels/take_in_view_model.hpp"

#include "core/cellar/acts/exchanging.hpp"
#include "qml/viewmodels/error_text.hpp"

namespace spile::viewmodels {

TakeInViewModel::TakeInViewModel(Context& context, FilePlaces& places, QObject* parent)
    : QObject(parent), context_(context), places_(places)
{
}

void TakeInViewModel::begin()
{
    context_.workers.aside(
        this, [&places = places_] { return places.dayFiles(); },
        [this](std::vector<FilePlaces::Found> found) {
            found_ = std::move(found);
            emit changed();
        });
    if (!busy_) {
        result_.clear();
        error_.clear();
    }
    emit changed();
}

QStringList TakeInViewModel::files() const
{
    QStringList lines;
    for (const FilePlaces::Found& file : found_) {
        lines << tr("%1\n%2, %3", "file, when, size")
                     .arg(file.name, context_.formats.dateAndTime(file.changed),
                          context_.formats.size(file.bytes));
    }
    return lines;
}

void TakeInViewModel::setPath(const QString& path)
{
    if (path != path_) {
        path_ = path;
        error_.clear();
        emit changed();
    }
}

void TakeInViewModel::setJoins(bool joins)
{
    joins_ = joins;
    emit changed();
}

void TakeInViewModel::takeFound(int index)
{
    if (index >= 0 && index < static_cast<int>(found_.size())) {
        take(found_[static_cast<std::size_t>(index)].file);
    }
}

void TakeInViewModel::takePath()
{
    if (path_.trimmed().isEmpty()) {
        error_ = tr("Type where the day file lies, or drop it here.");
        emit changed();
        return;
    }
    take(path_.trimmed().toStdString());
}

void TakeInViewModel::takeUrl(const QUrl& url)
{
    take(url.isLocalFile() ? url.toLocalFile().toStdString() : url.toString().toStdString());
}

void TakeInViewModel::cancel() { context_.workers.cancelWork(); }

void TakeInViewModel::take(const Path& file)
{
    if (busy_) {
        return;
    }
    busy_ = true;
    progress_ = 0;
    result_.clear();
    error_.clear();
    emit changed();
    if (joins_) {
        emit joinWanted(QString::fromStdString(file.string()));
        return;
    }
    context_.workers.work(
        this,
        [file](cellar::Cellar& cellar, const Job& job) {
            return cellar::takeIn(cellar, file, job);
        },
        [this](std::uint64_t done, std::uint64_t total) {
            progress_ = total == 0 ? 0.0 : static_cast<qreal>(done) / static_cast<qreal>(total);
            emit progressed();
        },
        [this](Result<ledger::TakenIn> taken) {
            busy_ = false;
            if (!taken) {
                error_ = textOf(taken.error());
            } else {
                result_ = taken->added == 0 && taken->waiting == 0
                              ? tr("Nothing new: all of it was here already.")
                              : tr("%n record(s) added.", "", static_cast<int>(taken->added));
                if (taken->photos > 0) {
                    result_ += QLatin1Char(' ') +
                               tr("%n photo(s) added.", "", static_cast<int>(taken->photos));
                }
                if (taken->waiting > 0) {
                    result_ +=
                        QLatin1Char(' ') + tr("%n record(s) wait until their device is let in.", "",
                                              static_cast<int>(taken->waiting));
                }
            }
            emit changed();
        });
}

void TakeInViewModel::joined(const QString& error)
{
    busy_ = false;
    error_ = error;
    emit changed();
}

}  // namespace spile::viewmodels

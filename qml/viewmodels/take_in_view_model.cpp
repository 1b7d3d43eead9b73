#include "qml/viewmodels/take_in_view_model.hpp"

#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/set_aside.hpp"
#include "core/cellar/true_time.hpp"
#include "qml/viewmodels/error_text.hpp"

namespace spile::viewmodels {

namespace {

struct Taken {
    ledger::TakenIn file;
    std::uint64_t setAside = 0;  // of the device that made it
};

}  // namespace

TakeInViewModel::TakeInViewModel(Context& context, FilePlaces& places, QObject* parent)
    : QObject(parent), context_(context), places_(places)
{
}

void TakeInViewModel::begin()
{
    context_.workers.aside(
        this, [&places = places_] { return std::pair(places.dayFiles(), places.targets()); },
        [this](std::pair<std::vector<FilePlaces::Found>, std::vector<FilePlaces::Place>> found) {
            found_ = std::move(found.first);
            looked_ = std::move(found.second);
            emit changed();
        });
    if (!busy_) {
        result_.clear();
        renewed_.clear();
        ahead_.clear();
        error_.clear();
        sealed_.clear();
        passphrase_.clear();
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

QString TakeInViewModel::lookedIn() const
{
    QStringList names;
    for (const FilePlaces::Place& place : looked_) {
        names << place.name;
    }
    return names.isEmpty()
               ? tr("Looked on memory sticks for files whose names end in .spile.")
               : tr("Looked in %1 and on memory sticks for files whose names end in .spile.")
                     .arg(names.join(QStringLiteral(", ")));
}

QString TakeInViewModel::sealedName() const
{
    return QString::fromStdString(sealed_.filename().string());
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
        choose(found_[static_cast<std::size_t>(index)].file);
    }
}

void TakeInViewModel::takePath()
{
    if (path_.trimmed().isEmpty()) {
        error_ = tr("Type where the day file lies, or drop it here.");
        emit changed();
        return;
    }
    choose(path_.trimmed().toStdString());
}

void TakeInViewModel::takeUrl(const QUrl& url)
{
    choose(url.isLocalFile() ? url.toLocalFile().toStdString() : url.toString().toStdString());
}

void TakeInViewModel::cancel() { context_.workers.cancelWork(); }

void TakeInViewModel::setPassphrase(const QString& passphrase)
{
    if (passphrase != passphrase_) {
        passphrase_ = passphrase;
        error_.clear();
        emit changed();
    }
}

void TakeInViewModel::choose(const Path& file)
{
    if (!busy_) {
        sealed_.clear();
        passphrase_.clear();
        take(file);
    }
}

void TakeInViewModel::unseal()
{
    if (asksPassphrase() && !passphrase_.trimmed().isEmpty()) {
        take(sealed_);
    }
}

void TakeInViewModel::take(const Path& file)
{
    if (busy_) {
        return;
    }
    busy_ = true;
    progress_ = 0;
    file_ = file;
    result_.clear();
    renewed_.clear();
    ahead_.clear();
    error_.clear();
    emit changed();
    const QString passphrase = passphrase_.trimmed();
    if (joins_) {
        emit joinWanted(QString::fromStdString(file.string()), passphrase);
        return;
    }
    context_.workers.work(
        this,
        [file, passphrase = passphrase.toStdString()](cellar::Cellar& cellar,
                                                      const Job& job) -> Result<Taken> {
            SPILE_ASSIGN(taken, cellar::takeIn(cellar, file, job, passphrase));
            SPILE_ASSIGN(aside, cellar::countSetAside(cellar.database(), taken.from));
            return Taken{std::move(taken), aside};
        },
        [this](std::uint64_t done, std::uint64_t total) { report(done, total); },
        [this](const Result<Taken>& taken) {
            busy_ = false;
            if (taken) {
                this->taken(taken->file, taken->setAside);
            } else {
                refused(taken.error());
            }
            emit changed();
        });
}

void TakeInViewModel::report(std::uint64_t done, std::uint64_t total)
{
    progress_ = shareOf(done, total);
    emit progressed();
}

void TakeInViewModel::taken(const ledger::TakenIn& taken, std::uint64_t setAside)
{
    sealed_.clear();
    passphrase_.clear();
    result_ = taken.added == 0 && taken.waiting == 0
                  ? tr("Nothing new: all of it was here already.")
                  : tr("%n record(s) added.", "", static_cast<int>(taken.added));
    if (taken.photos > 0) {
        result_ += QLatin1Char(' ') + tr("%n photo(s) added.", "", static_cast<int>(taken.photos));
    }
    if (taken.waiting > 0) {
        result_ += QLatin1Char(' ') + tr("%n record(s) wait until their device is let in.", "",
                                         static_cast<int>(taken.waiting));
    }
    if (setAside > 0) {
        result_ += QLatin1Char(' ') +
                   tr("The device that made the file is cut off or not let in: %n record(s) of it "
                      "count nowhere. They stand on Today, under To settle.",
                      "", static_cast<int>(setAside));
    }
    from_ = taken.from;
    if (cellar::isInFuture(taken.made, context_.formats.now())) {
        ahead_ = tr("The file was made at %1, later than now. The clock of the device that made it "
                    "is ahead, or this one's is behind.")
                     .arg(context_.formats.dateAndTime(taken.made));
    }
    if (taken.renewed) {
        needsLettingIn_ = !taken.renewed->admitted;
        renewed_ = needsLettingIn_
                       ? tr("This device was copied or set back to an earlier state. It "
                            "goes on under a new key: let it in at the desk again.")
                       : tr("This device was copied or set back to an earlier state. "
                            "It goes on under a new key.");
    }
}

// The first time a file turns out to be sealed nothing went wrong: its passphrase is asked for.
void TakeInViewModel::refused(const Error& error)
{
    const bool sealed = error.code == ErrorCode::Conflict && error.subject == "passphrase";
    const bool asked = asksPassphrase();
    if (!sealed) {
        const QString name = QString::fromStdString(file_.filename().string());
        const bool isPart = error.subject == "day file";
        error_ = error.code == ErrorCode::NotFound
                     ? (isPart ? tr("%1 does not hold the cellar from its beginning. A day file "
                                    "for everybody does.")
                               : tr("%1 is not there. Say where it lies."))
                           .arg(name)
                     : tr("%1: %2", "a file, and what is wrong with it").arg(name, textOf(error));
        return;
    }
    sealed_ = file_;
    error_ =
        asked ? tr("That is not the passphrase of this file. Nothing was changed.") : QString();
}

void TakeInViewModel::joined(const Result<void>& joined)
{
    busy_ = false;
    error_.clear();
    if (joined) {
        sealed_.clear();
        passphrase_.clear();
    } else {
        refused(joined.error());
    }
    emit changed();
}

}  // namespace spile::viewmodels

#include "qml/viewmodels/day_file_view_model.hpp"

#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/acts/sheet.hpp"
#include "core/ledger/ballast.hpp"
#include "core/ledger/seal.hpp"
#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/notice.hpp"
#include "qml/viewmodels/words.hpp"

#include <QDateTime>

namespace spile::viewmodels {

namespace {

// "7STP-2026-11-26-182000.spile": sorts by time, says whose it is, and fits every file system.
std::string fileNameFor(const std::string& mark, Instant now, bool sealed)
{
    const QDateTime when = QDateTime::fromMSecsSinceEpoch(toMs(now));
    return mark + "-" + when.toString(QStringLiteral("yyyy-MM-dd-HHmmss")).toStdString() +
           (sealed ? "-sealed" : "") + ".spile";
}

}  // namespace

DayFileViewModel::DayFileViewModel(Context& context, FilePlaces& places, QObject* parent)
    : QObject(parent), context_(context), places_(places)
{
    connect(&context_.workers, &Workers::changed, this, [this] {
        if (loaded_) {
            refresh();
        }
    });
}

void DayFileViewModel::begin()
{
    if (!writing_) {
        file_.clear();
        fileText_.clear();
        passphrase_.clear();
        sealed_ = false;
        handedText_.clear();
        error_.clear();
    }
    context_.workers.aside(
        this, [&places = places_] { return places.targets(); },
        [this](std::vector<FilePlaces::Place> targets) {
            targets_ = std::move(targets);
            emit changed();
        });
    refresh();
    emit changed();
}

void DayFileViewModel::refresh()
{
    context_.workers.read(
        this,
        [](cellar::Cellar& cellar) -> Result<Journal> {
            SPILE_ASSIGN(unsent, cellar::unsent(cellar.database()));
            SPILE_ASSIGN(receipts, cellar::receipts(cellar.database()));
            SPILE_ASSIGN(sheets, cellar::openSheets(cellar));
            return Journal{std::move(unsent), std::move(receipts), static_cast<int>(sheets.size()),
                           cellar.identity().mark};
        },
        [this](Result<Journal> journal) {
            if (!journal) {
                context_.notice.refuse(textOf(journal.error()));
                return;
            }
            journal_ = std::move(*journal);
            openSheets_ = journal_.openSheets;
            if (!loaded_ && !journal_.receipts.empty()) {
                receiver_ = 1;  // a device that has sent its own file is most likely meant
            }
            loaded_ = true;
            emit changed();
        });
}

QString DayFileViewModel::unsentText() const
{
    const auto entries = static_cast<int>(journal_.unsent.entries);
    return entries == 0 ? tr("All that was recorded here is in a day file.")
                        : tr("%n record(s) on this device are in no day file yet.", "", entries);
}

QString DayFileViewModel::shortText() const
{
    const auto entries = static_cast<int>(journal_.unsent.entries);
    return entries == 0 ? tr("Nothing new") : tr("%n new record(s)", "", entries);
}

QStringList DayFileViewModel::unsentKinds() const
{
    QStringList lines;
    for (const auto& [kind, count] : journal_.unsent.byKind) {
        lines << QStringLiteral("%1 × %2").arg(count).arg(word("done " + kind));
    }
    return lines;
}

QString DayFileViewModel::lastText() const
{
    const auto& last = journal_.unsent.last;
    if (!last) {
        return tr("No day file has been written on this device.");
    }
    return tr("Last day file: %1, %n record(s).", "", static_cast<int>(last->entries))
        .arg(context_.formats.dateAndTime(last->made));
}

QStringList DayFileViewModel::receipts() const
{
    QStringList lines;
    for (const cellar::Receipt& receipt : journal_.receipts) {
        const QString when = context_.formats.dateAndTime(receipt.takenIn);
        const auto lacks = static_cast<int>(receipt.lacks);
        lines << (lacks == 0 ? tr("%1 had all of this device's records by %2.")
                                   .arg(QString::fromStdString(receipt.device), when)
                             : tr("%1 lacks %n of this device's records, as of %2.", "", lacks)
                                   .arg(QString::fromStdString(receipt.device), when));
    }
    return lines;
}

QStringList DayFileViewModel::receivers() const
{
    QStringList names{tr("Everybody")};
    for (const cellar::Receipt& receipt : journal_.receipts) {
        names << QString::fromStdString(receipt.device);
    }
    return names;
}

void DayFileViewModel::setReceiver(int receiver)
{
    if (receiver != receiver_) {
        receiver_ = receiver;
        emit changed();
    }
}

void DayFileViewModel::setSealed(bool sealed)
{
    if (sealed != sealed_) {
        sealed_ = sealed;
        emit changed();
    }
}

QString DayFileViewModel::fileName() const
{
    return QString::fromStdString(file_.filename().string());
}

QStringList DayFileViewModel::targets() const
{
    QStringList names;
    for (const FilePlaces::Place& place : targets_) {
        names << place.name;
    }
    return names;
}

void DayFileViewModel::write()
{
    if (writing_) {
        return;
    }
    writing_ = true;
    progress_ = 0;
    error_.clear();
    handedText_.clear();
    emit changed();
    std::optional<DeviceId> to;
    if (receiver_ > 0 && receiver_ <= static_cast<int>(journal_.receipts.size())) {
        to = journal_.receipts[static_cast<std::size_t>(receiver_ - 1)].id;
    }
    struct Written {
        Path file;
        cellar::DayFileOut out;
        std::uint64_t bytes = 0;
        std::string passphrase;
    };
    context_.workers.work(
        this,
        [to, sealed = sealed_, name = fileNameFor(journal_.mark, context_.formats.now(), sealed_)](
            cellar::Cellar& cellar, const Job& job) -> Result<Written> {
            FileSystem& files = cellar.outside().files;
            const Path folder = cellar.ledger().folder().outbox();
            SPILE_TRY(files.makeFolder(folder));
            const std::string passphrase =
                sealed ? ledger::newPassphrase(cellar.outside().random) : std::string();
            const auto handOut = [&] {
                return cellar::handOut(cellar, folder / name, to, job, passphrase);
            };
            auto handed = handOut();
            // What is kept for a full disk is for this too: with the file the records are
            // elsewhere.
            if (!handed && handed.error().code == ErrorCode::StorageFull &&
                ledger::giveUpBallast(files, cellar.ledger().folder().folder)) {
                handed = handOut();
            }
            SPILE_ASSIGN(out, handed);
            SPILE_ASSIGN(file, files.open(folder / name));
            return Written{folder / name, std::move(out), file->size(), passphrase};
        },
        [this](std::uint64_t done, std::uint64_t total) {
            progress_ = shareOf(done, total);
            emit progressed();
        },
        [this](Result<Written> written) {
            writing_ = false;
            if (!written) {
                error_ = textOf(written.error());
                emit changed();
                return;
            }
            file_ = written->file;
            passphrase_ = QString::fromStdString(written->passphrase);
            fileText_ = tr("%n record(s)", "", static_cast<int>(written->out.file.entries)) +
                        QStringLiteral(", ") +
                        tr("%n photo(s)", "", static_cast<int>(written->out.file.photos)) +
                        QStringLiteral(", ") + context_.formats.size(written->bytes);
            const std::uint64_t leftOut =
                written->out.file.leftOut + written->out.file.leftOutPhotos;
            leftOutText_ = leftOut == 0
                               ? QString()
                               : tr("%n record(s) or photo(s) that are damaged on this device are "
                                    "not in it. It asks the others for them: take in what they "
                                    "hand out.",
                                    "", static_cast<int>(leftOut));
            emit changed();
        });
}

void DayFileViewModel::cancel() { context_.workers.cancelWork(); }

void DayFileViewModel::handOver(int target)
{
    if (writing_ || file_.empty() || target < 0 || target >= static_cast<int>(targets_.size())) {
        return;
    }
    const FilePlaces::Place place = targets_[static_cast<std::size_t>(target)];
    writing_ = true;
    error_.clear();
    emit changed();
    context_.workers.aside(
        this,
        [&files = context_.outside.files, from = file_,
         to = place.folder / file_.filename()](const Job&) -> Result<Path> {
            SPILE_TRY(copyWhole(files, from, to));
            return to;
        },
        [](std::uint64_t, std::uint64_t) {},
        [this, place](Result<Path> copied) {
            writing_ = false;
            if (copied) {
                handedText_ = tr("Copied to %1 at %2.")
                                  .arg(place.name, context_.formats.time(context_.formats.now()));
            } else if (copied.error().code == ErrorCode::StorageFull) {
                error_ =
                    tr("%1 has no room for it. Free some space there, or choose another place.")
                        .arg(place.name);
            } else {
                error_ = textOf(copied.error());
            }
            emit changed();
        });
}

}  // namespace spile::viewmodels

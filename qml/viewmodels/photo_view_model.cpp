#include "qml/viewmodels/photo_view_model.hpp"

#include "core/cellar/acts/photographing.hpp"
#include "core/cellar/acts/sheet.hpp"
#include "qml/viewmodels/barrel_rows.hpp"
#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/taking_back.hpp"
#include "qml/viewmodels/words.hpp"

#include <array>

namespace spile::viewmodels {

namespace {

constexpr std::array<std::string_view, 2> barrelPurposes{"head", "place"};
constexpr std::string_view sheetPurpose = "colour";

}  // namespace

struct PhotoViewModel::Wanted {
    Path file;
    SubjectId barrel, sheet;
    std::string purpose;
    cellar::Circumstance circumstance;
};

PhotoViewModel::PhotoViewModel(Context& context, FilePlaces& places, QObject* parent)
    : QObject(parent), context_(context), places_(places)
{
}

void PhotoViewModel::beginForBarrel(const cellar::BarrelRow& barrel,
                                    std::optional<SubjectId> person)
{
    barrel_ = barrel;
    sheet_ = {};
    person_ = person;
    begin();
}

void PhotoViewModel::beginForSheet(const cellar::BarrelRow& barrel, const SubjectId& sheet)
{
    barrel_ = barrel;
    sheet_ = sheet;
    begin();
}

void PhotoViewModel::begin()
{
    ++begun_;
    purpose_ = 0;
    busy_ = false;
    another();
}

QString PhotoViewModel::barrelName() const { return nameOf(barrel_); }

QStringList PhotoViewModel::purposes() const
{
    return isOfSheet() ? QStringList() : QStringList{tr("The head"), tr("Its place")};
}

std::string PhotoViewModel::purposeWord() const
{
    return std::string(isOfSheet() ? sheetPurpose
                                   : barrelPurposes[static_cast<std::size_t>(purpose_)]);
}

void PhotoViewModel::setPurpose(int purpose)
{
    if (purpose >= 0 && purpose < purposes().size() && purpose != purpose_) {
        purpose_ = purpose;
        emit changed();
    }
}

QString PhotoViewModel::take()
{
    if (!canTake()) {
        return {};
    }
    if (!folder_) {
        folder_ = std::make_unique<QTemporaryDir>();
    }
    if (places_.freeBytes() < leastFreeBytes || !folder_->isValid()) {
        failForRoom();
        return {};
    }
    error_.clear();
    busy_ = true;
    emit changed();
    return folder_->path();
}

void PhotoViewModel::takingFailed() { fail(tr("The camera gave no photo. Try again.")); }

void PhotoViewModel::failForRoom()
{
    fail(
        tr("Photo not kept: storage is full. All that was kept before is safe. Free some space, "
           "then take it again."));
}

void PhotoViewModel::fail(const QString& text)
{
    busy_ = false;
    error_ = text;
    emit changed();
}

// Called on the writer's thread.
Result<PhotoViewModel::Kept> PhotoViewModel::record(cellar::Cellar& cellar, const Wanted& wanted)
{
    SPILE_ASSIGN(bytes, readWhole(cellar.outside().files, wanted.file, ledger::photoBytesMax));
    Kept kept;
    if (wanted.sheet.isZero()) {
        SPILE_ASSIGN(recorded, cellar::recordPhoto(cellar, {.barrel = wanted.barrel,
                                                            .picture = bytes,
                                                            .purpose = wanted.purpose,
                                                            .circumstance = wanted.circumstance}));
        kept.entry = recorded.entry;
        kept.hash = recorded.photo.hash;
    } else {
        SPILE_ASSIGN(photo, cellar::keepPhoto(cellar, wanted.sheet, bytes, wanted.purpose));
        kept.hash = photo.hash;
    }
    kept.file = cellar.ledger().photos().pathOf(kept.hash);
    return kept;
}

void PhotoViewModel::keep(const QString& file)
{
    Wanted wanted{Path(file.toStdString()), barrel_.barrel, sheet_, purposeWord(), {}};
    wanted.circumstance.person = person_;
    wanted.circumstance.at = Formats::eventTime(context_.formats.now());
    busy_ = true;
    emit changed();
    context_.workers.act(
        this, [wanted](cellar::Cellar& cellar) { return record(cellar, wanted); },
        [this, begun = begun_, file = wanted.file](const Result<Kept>& kept) {
            // Only a temporary file: if it stays, the folder goes with the app.
            context_.workers.aside(
                this, [&files = context_.outside.files, file] { return files.remove(file); },
                [](const Result<void>&) {});
            if (begun == begun_) {
                taken(kept);
            }
        });
}

void PhotoViewModel::taken(const Result<Kept>& kept)
{
    if (kept) {
        busy_ = false;
        error_.clear();
        kept_ = *kept;
        picture_ = QUrl::fromLocalFile(QString::fromStdString(kept_.file.string()));
        emit changed();
        if (isOfSheet()) {
            emit keptOnSheet();
        }
        return;
    }
    switch (kept.error().code) {
        case ErrorCode::StorageFull:
            failForRoom();
            break;
        case ErrorCode::Damaged:
        case ErrorCode::Unsupported:
        case ErrorCode::TooLarge:
            fail(tr("Photo not kept: it cannot be read. Take it again."));
            break;
        default:
            fail(textOf(kept.error()));
    }
}

void PhotoViewModel::undo()
{
    if (!isKept()) {
        return;
    }
    if (!isOfSheet()) {
        takeBack(context_, kept_.entry)();
        another();
        return;
    }
    busy_ = true;
    emit changed();
    context_.workers.act(
        this,
        [sheet = sheet_, hash = kept_.hash.hex()](cellar::Cellar& cellar) -> Result<void> {
            SPILE_ASSIGN(last, cellar::lastTap(cellar, sheet));
            if (last && last->name == hash) {
                SPILE_ASSIGN(undone, cellar::undoTap(cellar, sheet));
                std::ignore = undone;
            }
            return {};
        },
        [this](const Result<void>& done) {
            if (!done) {
                fail(textOf(done.error()));
                return;
            }
            busy_ = false;
            another();
            emit keptOnSheet();
        });
}

void PhotoViewModel::another()
{
    kept_ = {};
    picture_.clear();
    error_.clear();
    emit changed();
}

}  // namespace spile::viewmodels

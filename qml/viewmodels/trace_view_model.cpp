#include "qml/viewmodels/trace_view_model.hpp"

#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/trace_text.hpp"
#include "qml/viewmodels/words.hpp"

#include <QDateTime>
#include <QRegularExpression>
#include <algorithm>

namespace spile::viewmodels {

using trace::Named;
using What = trace::Start::What;

TraceViewModel::TraceViewModel(Context& context, FilePlaces& places, QObject* parent)
    : QObject(parent), context_(context), places_(places)
{
}

const Named* TraceViewModel::current() const
{
    return at_ < static_cast<int>(found_.size()) ? &found_[static_cast<std::size_t>(at_)] : nullptr;
}

// What was written was of another choice.
void TraceViewModel::forget()
{
    file_.clear();
    recallText_.clear();
    error_.clear();
}

void TraceViewModel::begin()
{
    typed_.clear();
    set({});
    context_.workers.aside(
        this, [&places = places_] { return places.targets(); },
        [this](std::vector<FilePlaces::Place> folders) {
            folders_ = std::move(folders);
            folder_ = 0;
            emit changed();
        });
}

void TraceViewModel::beginWithPackage(const EntryId& package, const SubjectId& lot,
                                      const QString& name)
{
    begin();
    set({{name.toStdString(), package, {What::Lot, lot, {}, {}}}});
}

void TraceViewModel::beginWith(const trace::Start& start, const QString& name)
{
    begin();
    set({{name.toStdString(), {}, start}});
}

void TraceViewModel::setTyped(const QString& text)
{
    if (text != typed_) {
        typed_ = text;
        error_.clear();
        emit changed();
    }
}

void TraceViewModel::search()
{
    const int asked = ++asked_;
    running_ = true;
    emit changed();
    context_.workers.study(
        this,
        [text = typed_.trimmed().toStdString()](ledger::Database& database, const Job&) {
            return trace::findNamed(database, text);
        },
        [this, asked](Result<std::vector<Named>> found) {
            if (asked != asked_) {
                return;
            }
            running_ = false;
            if (!found || found->empty()) {
                set({});
                error_ = found ? tr("Nothing of that name or code is in the records.")
                               : textOf(found.error());
                emit changed();
                return;
            }
            set(std::move(*found));
        });
}

void TraceViewModel::set(std::vector<Named> found)
{
    forget();
    found_ = std::move(found);
    at_ = 0;
    way_ = 0;
    look();
}

void TraceViewModel::chooseOther(int other)
{
    if (other != at_ && other >= 0 && other < static_cast<int>(found_.size())) {
        forget();
        at_ = other;
        look();
    }
}

void TraceViewModel::chooseWay(int way)
{
    way_ = way;
    show();
}

Result<TraceViewModel::Traced> TraceViewModel::trace(ledger::Database& database, const Named& named)
{
    Traced traced;
    if (named.package) {
        SPILE_ASSIGN(up, trace::upFromPackage(database, *named.package));
        traced.up = std::move(up);
    } else if (named.start.what == What::Lot) {
        SPILE_ASSIGN(up, trace::upFromLot(database, named.start.subject));
        traced.up = std::move(up);
    }
    SPILE_ASSIGN(down, trace::down(database, named.start));
    traced.down = std::move(down);
    return traced;
}

void TraceViewModel::look()
{
    const int asked = ++asked_;
    up_.reset();
    down_.reset();
    running_ = current() != nullptr;
    show();
    if (!running_) {
        return;
    }
    context_.workers.study(
        this,
        [named = *current()](ledger::Database& database, const Job&) {
            return trace(database, named);
        },
        [this, asked](Result<Traced> traced) {
            if (asked != asked_) {
                return;
            }
            running_ = false;
            if (traced) {
                up_ = std::move(traced->up);
                down_ = std::move(traced->down);
            } else {
                error_ = textOf(traced.error());
            }
            show();
        });
}

void TraceViewModel::show()
{
    if (up_ && way_ == 0) {
        parts_.replace(TraceText::up(*up_, context_.formats));
    } else if (down_) {
        parts_.replace(TraceText::down(*down_, context_.formats));
    } else {
        parts_.replace({});
    }
    emit changed();
}

QString TraceViewModel::name() const
{
    const Named* named = current();
    return named == nullptr ? QString() : word(named->name);
}

QString TraceViewModel::summary() const
{
    if (up_) {
        return up_->lotCode.empty()
                   ? tr("The lot as it stands, %1").arg(context_.formats.volume(up_->volume))
                   : tr("Packages of the lot %1, %2")
                         .arg(QString::fromStdString(up_->name),
                              context_.formats.volume(up_->volume));
    }
    if (!down_) {
        return {};
    }
    return down_->packages.empty() && down_->lots.empty()
               ? tr("Nothing of it has come into a lot.")
               : tr("%1, %2", "lots, packagings")
                     .arg(tr("%n lot(s)", "", static_cast<int>(down_->lots.size())),
                          tr("packaged %n time(s)", "", static_cast<int>(down_->packages.size())));
}

QStringList TraceViewModel::ways() const
{
    if (up_) {
        return {tr("Where it came from"), tr("Where it went")};
    }
    return down_ ? QStringList{tr("Where it went")} : QStringList();
}

QStringList TraceViewModel::others() const
{
    QStringList words;
    if (found_.size() < 2) {
        return words;
    }
    for (const Named& one : found_) {
        const QString name = word(one.name);
        switch (one.start.what) {
            case What::Lot:
                words << (one.package ? tr("%1, packages").arg(name) : tr("%1, lot").arg(name));
                break;
            case What::Barrel:
            case What::Fill:
                words << tr("%1, barrel").arg(name);
                break;
            case What::Batch:
                words << tr("%1, beer").arg(name);
                break;
            case What::Substance:
                words << tr("%1, put in").arg(name);
                break;
        }
    }
    return words;
}

void TraceViewModel::act(int index)
{
    const PartLine* line = parts_.rowAt(index);
    if (line == nullptr || line->pad.isEmpty()) {
        return;
    }
    if (line->kind == QLatin1String("lot")) {
        emit lotWanted(idOf<SubjectId>(line->id));
        return;
    }
    trace::Start start;
    std::string name;
    if (line->kind == QLatin1String("barrel")) {
        start.what = What::Fill;
        start.fill = idOf<EntryId>(line->id);
        name = line->said.toStdString();
    } else if (line->kind == QLatin1String("beer")) {
        start.what = What::Batch;
        start.subject = idOf<SubjectId>(line->id);
        name = line->said.toStdString();
    } else {
        const auto entry = idOf<EntryId>(line->id);
        const auto put = std::find_if(up_->additions.begin(), up_->additions.end(),
                                      [&](const auto& one) { return one.entry == entry; });
        if (put == up_->additions.end()) {
            return;
        }
        start.what = What::Substance;
        start.substance = name = put->substance;
    }
    set({{name, {}, start}});
}

QStringList TraceViewModel::folders() const
{
    QStringList names;
    for (const FilePlaces::Place& place : folders_) {
        names << place.name;
    }
    return names;
}

void TraceViewModel::chooseFolder(int folder)
{
    if (folder >= 0 && folder < static_cast<int>(folders_.size())) {
        folder_ = folder;
        emit changed();
    }
}

QString TraceViewModel::fileName() const
{
    return QString::fromStdString(file_.filename().string());
}

void TraceViewModel::recall()
{
    if (!canRecall()) {
        return;
    }
    forget();
    if (folders_.empty()) {
        error_ = tr("There is no folder to write to. Put in a memory stick.");
        emit changed();
        return;
    }
    writing_ = true;
    const QString text = TraceText::recall(name(), *down_, context_.formats);
    QString plain = name();
    plain.replace(QRegularExpression(QStringLiteral("[^A-Za-z0-9]+")), QStringLiteral("-"));
    const QDateTime when = QDateTime::fromMSecsSinceEpoch(toMs(context_.formats.now()));
    const QString file = QStringLiteral("recall-%1-%2.txt")
                             .arg(plain, when.toString(QStringLiteral("yyyy-MM-dd-HHmmss")));
    const FilePlaces::Place place = folders_[static_cast<std::size_t>(folder_)];
    emit changed();
    context_.workers.aside(
        this,
        [path = place.folder / file.toStdString(), bytes = text.toStdString(),
         &files = context_.outside.files]() -> Result<Path> {
            SPILE_TRY(writeWhole(files, path, asBytes(bytes)));
            return path;
        },
        [this, text](const Result<Path>& written) {
            writing_ = false;
            if (written) {
                file_ = *written;
                recallText_ = text;
            } else {
                error_ = textOf(written.error());
            }
            emit changed();
        });
}

}  // namespace spile::viewmodels

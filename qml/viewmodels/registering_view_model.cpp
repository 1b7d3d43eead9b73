#include "qml/viewmodels/registering_view_model.hpp"

#include "core/cellar/vocabulary.hpp"
#include "core/scan/barrel_code.hpp"
#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/names.hpp"
#include "qml/viewmodels/words.hpp"

#include <QDateTime>
#include <algorithm>

namespace spile::viewmodels {

namespace {

constexpr int monthsMost = 240;

template <class Words>
std::string chosenOf(const Words& stored, int index)
{
    return index < 0 ? std::string() : std::string(stored[static_cast<std::size_t>(index)]);
}

}  // namespace

/// What the writer needs of the form, as plain values.
struct RegisteringViewModel::Form {
    cellar::NewBarrel barrel;
    std::string newPlace, newBeer;
};

RegisteringViewModel::RegisteringViewModel(Context& context, QObject* parent)
    : QObject(parent), context_(context)
{
}

void RegisteringViewModel::begin(const QString& labelCode)
{
    mark_.clear();
    newPlace_.clear();
    newBeer_.clear();
    error_.clear();
    labelCode_ = labelCode.toStdString();
    size_ = spirit_ = wood_ = fills_ = place_ = beer_ = -1;
    monthsAgo_ = 0;
    full_ = busy_ = false;
    registered_ = {};
    readNames();
    emit changed();
}

void RegisteringViewModel::another()
{
    const int size = size_;
    const int spirit = spirit_;
    const int wood = wood_;
    const int fills = fills_;
    begin();
    size_ = size;
    spirit_ = spirit;
    wood_ = wood;
    fills_ = fills;
    emit changed();
}

void RegisteringViewModel::readNames()
{
    struct Names {
        std::vector<cellar::NamedRow> places, batches;
    };
    context_.workers.look(
        this,
        [](ledger::Database& database) -> Result<Names> {
            SPILE_ASSIGN(places, cellar::named(database, "place", {}, namesMost));
            SPILE_ASSIGN(batches, cellar::named(database, "batch", {}, namesMost));
            return Names{std::move(places), std::move(batches)};
        },
        [this](Result<Names> names) {
            if (names) {
                places_ = std::move(names->places);
                batches_ = std::move(names->batches);
                emit changed();
            }
        });
}

QString RegisteringViewModel::labelCode() const
{
    return labelCode_.empty() ? QString() : QString::fromStdString(scan::shown(labelCode_));
}

QStringList RegisteringViewModel::sizes() const
{
    QStringList sizes;
    for (const cellar::BarrelSize& size : cellar::barrelSizes()) {
        sizes << QStringLiteral("%1\n%2").arg(context_.formats.volume(size.volume),
                                              word(size.name));
    }
    return sizes;
}

QStringList RegisteringViewModel::spirits() const { return padWords(cellar::usualSpirits()); }
QStringList RegisteringViewModel::woods() const { return padWords(cellar::usualWoods()); }

QStringList RegisteringViewModel::fillsBefore() const
{
    return {tr("None: this is its first beer"), tr("One"), tr("Two"), tr("Three or more")};
}

QStringList RegisteringViewModel::places() const { return namesOf(places_); }
QStringList RegisteringViewModel::beers() const { return namesOf(batches_); }

Instant RegisteringViewModel::sinceWhen() const
{
    const QDateTime now = QDateTime::fromMSecsSinceEpoch(toMs(context_.formats.now()));
    const QDate month = now.date().addMonths(-monthsAgo_);
    const QDateTime middle(QDate(month.year(), month.month(), 15), QTime(12, 0));
    return instantFromMs(std::min(middle, now).toMSecsSinceEpoch());
}

QString RegisteringViewModel::since() const
{
    return context_.formats.date(sinceWhen(), cellar::DatePrecision::Month);
}

void RegisteringViewModel::stepSince(int months)
{
    set(monthsAgo_, std::clamp(monthsAgo_ - months, 0, monthsMost));
}

QString RegisteringViewModel::code() const
{
    return registered_.code.empty() ? QString()
                                    : QString::fromStdString(scan::shown(registered_.code));
}

RegisteringViewModel::Form RegisteringViewModel::form() const
{
    Form form;
    cellar::NewBarrel& barrel = form.barrel;
    barrel.mark = mark_.trimmed().toStdString();
    barrel.code = labelCode_;
    barrel.spirit = chosenOf(cellar::usualSpirits(), spirit_);
    barrel.wood = chosenOf(cellar::usualWoods(), wood_);
    if (size_ >= 0) {
        barrel.size = cellar::barrelSizes()[static_cast<std::size_t>(size_)].volume;
    }
    if (fills_ >= 0) {
        barrel.fillsBefore = fills_;
    }
    form.newPlace = newPlace_.trimmed().toStdString();
    barrel.place = subjectAt(places_, place_);
    if (full_) {
        cellar::FullSince full;
        full.since = Formats::eventTime(sinceWhen());
        full.precision = cellar::DatePrecision::Month;
        full.batch = subjectAt(batches_, beer_);
        barrel.fullSince = full;
        form.newBeer = newBeer_.trimmed().toStdString();
    }
    return form;
}

void RegisteringViewModel::record()
{
    if (busy_) {
        return;
    }
    set(busy_, true);
    context_.workers.act(
        this,
        [filled = form()](cellar::Cellar& cellar) -> Result<cellar::RegisteredBarrel> {
            Form form = filled;
            if (!form.newPlace.empty()) {
                SPILE_ASSIGN(place, cellar::placeNamed(cellar, form.newPlace));
                form.barrel.place = place;
            }
            if (!form.newBeer.empty()) {
                SPILE_ASSIGN(batch, cellar::batchNamed(cellar, form.newBeer));
                form.barrel.fullSince->batch = batch;
            }
            return cellar::registerBarrel(cellar, form.barrel);
        },
        [this](Result<cellar::RegisteredBarrel> made) {
            busy_ = false;
            if (made) {
                registered_ = *made;
            } else {
                error_ = textOf(made.error());
            }
            emit changed();
        });
}

}  // namespace spile::viewmodels

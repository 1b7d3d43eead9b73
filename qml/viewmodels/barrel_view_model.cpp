#include "qml/viewmodels/barrel_view_model.hpp"

#include "core/cellar/standing.hpp"
#include "core/plan/alarms.hpp"
#include "core/plan/barrel_shape.hpp"
#include "core/plan/watching.hpp"
#include "core/scan/barrel_code.hpp"
#include "qml/viewmodels/alarm_text.hpp"
#include "qml/viewmodels/barrel_rows.hpp"
#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/notice.hpp"
#include "qml/viewmodels/open_flights_view_model.hpp"
#include "qml/viewmodels/outlook_service.hpp"
#include "qml/viewmodels/words.hpp"

#include <algorithm>

namespace spile::viewmodels {

namespace {

bool pours(const std::vector<cellar::FlightRow>& flights, const SubjectId& barrel)
{
    return std::any_of(flights.begin(), flights.end(), [&](const cellar::FlightRow& flight) {
        return std::any_of(
            flight.glasses.begin(), flight.glasses.end(),
            [&](const cellar::FlightGlass& glass) { return glass.barrel == barrel; });
    });
}

}  // namespace

BarrelViewModel::BarrelViewModel(Context& context, QObject* parent)
    : QObject(parent), context_(context)
{
    connect(&context_.workers, &Workers::changed, this, &BarrelViewModel::refresh);
}

void BarrelViewModel::show(const SubjectId& barrel)
{
    if (barrel != barrel_) {
        barrel_ = barrel;
        row_ = {};
        openSheets_.clear();
        inFlight_ = false;
        history_.replace({});
        alarms_.replace({});
        shape_.reset();
        outlook_ = {};
        loaded_ = false;
        emit changed();
    }
    refresh();
}

void BarrelViewModel::setTasting(bool tasting)
{
    if (tasting == tasting_) {
        return;
    }
    if (tasting && !areScoresHidden()) {
        history_.replace({});  // not until it has been read again: at once
        alarms_.replace({});
    }
    tasting_ = tasting;
    emit changed();
    refresh();
}

// By the writer: open sheets are its own, and what is hidden must be so before it is read.
void BarrelViewModel::refresh()
{
    if (barrel_.isZero()) {
        return;
    }
    struct Found {
        std::optional<cellar::BarrelRow> row;
        std::vector<cellar::OpenSheet> sheets;
        bool inFlight = false;
        cellar::BarrelHistory history;
        std::map<Sha256, QUrl> photos;
    };
    context_.workers.read(
        this,
        [barrel = barrel_, now = context_.formats.now(),
         who = holderOf(context_)](cellar::Cellar& cellar) -> Result<Found> {
            SPILE_ASSIGN(row, cellar::barrelById(cellar.database(), barrel));
            SPILE_ASSIGN(sheets, cellar::openSheets(cellar));
            // The sheet of a flight does not tell which barrel it is of.
            std::erase_if(sheets, [&](const auto& sheet) {
                return sheet.barrel != barrel || sheet.flight.has_value();
            });
            SPILE_ASSIGN(flights, cellar::openFlights(cellar.database(), now, who));
            SPILE_ASSIGN(history, cellar::historyOf(cellar.database(), barrel));
            std::map<Sha256, QUrl> photos;
            for (const cellar::PhotoRow& photo : history.photos) {
                const Path file = cellar.ledger().photos().pathOf(photo.hash);
                photos[photo.hash] = QUrl::fromLocalFile(QString::fromStdString(file.string()));
            }
            return Found{row, std::move(sheets), pours(flights, barrel), std::move(history),
                         std::move(photos)};
        },
        [this, barrel = barrel_](Result<Found> found) {
            if (barrel != barrel_) {
                return;
            }
            if (!found) {
                context_.notice.refuse(textOf(found.error()));
                return;
            }
            row_ = found->row.value_or(cellar::BarrelRow());
            openSheets_ = std::move(found->sheets);
            inFlight_ = found->inFlight;
            history_.replace(linesOf(found->history, context_.formats, areScoresHidden(),
                                     [&](const Sha256& hash) { return found->photos.at(hash); }));
            loaded_ = true;
            emit changed();
        });
    refreshOutlook();
    lookForAlarms();
}

// By the reader: a course of two years takes a few milliseconds on a phone.
void BarrelViewModel::refreshOutlook()
{
    struct Found {
        std::optional<plan::Watch> watch;
        std::optional<vessel::Barrel> shape;
        std::optional<Volume> held;
    };
    context_.workers.look(
        this,
        [barrel = barrel_,
         now = context_.formats.now()](ledger::Database& database) -> Result<Found> {
            SPILE_ASSIGN(facts, plan::readFacts(database, barrel, now));
            Found found;
            if (auto shape = plan::shapeOf(facts.measures, facts.barrel.size)) {
                found.shape = *shape;
            }
            if (facts.barrel.filled) {
                if (auto watch = plan::watchOf(facts)) {
                    found.watch = *watch;
                }
            }
            found.held = facts.barrel.volume;
            return found;
        },
        [this, barrel = barrel_](Result<Found> found) {
            if (barrel != barrel_ || !found) {
                return;  // a barrel that is not known yet; the page says so by itself
            }
            shape_ = found->shape;
            outlook_ = {};
            if (found->watch) {
                takeWatch(*found->watch);
            }
            emit changed();
        });
}

// Apart from the rest: they rest on the whole outlook, and tell of scores.
void BarrelViewModel::lookForAlarms()
{
    const outlook::CellarModel model =
        outlooks_ != nullptr ? outlooks_->model() : outlook::CellarModel();
    context_.workers.look(
        this,
        [barrel = barrel_, model, now = context_.formats.now()](
            ledger::Database& database) -> Result<std::vector<plan::Alarm>> {
            SPILE_ASSIGN(facts, plan::readFacts(database, barrel, now));
            const auto outlook = outlook::outlookOf(database, model, barrel, now);
            return plan::alarmsOf(facts, outlook ? &*outlook : nullptr);
        },
        [this, barrel = barrel_](Result<std::vector<plan::Alarm>> found) {
            if (barrel == barrel_ && found) {
                alarms_.replace(areScoresHidden() ? std::vector<SaidLine>()
                                                  : AlarmText::lines(*found, context_.formats));
            }
        });
}

void BarrelViewModel::takeWatch(const plan::Watch& watch)
{
    outlook_.text = tr("%1 (%2 to %3)", "a volume with its range")
                        .arg(context_.formats.volume(watch.volume.median),
                             context_.formats.volume(watch.volume.low),
                             context_.formats.volume(watch.volume.high));
    outlook_.level = levelOf(watch.volume.median);
    if (watch.last && watch.last->sign == wood::LossSign::Leak) {
        outlook_.loss =
            word("It may leak. Measured again? Was it filled full? Drips on the floor?");
    } else if (watch.last && watch.last->sign == wood::LossSign::Watch) {
        outlook_.loss = word("It loses more than foreseen: gauge again in two weeks.");
    }
}

// How high that volume stands on the head, as a share of its height.
qreal BarrelViewModel::levelOf(Volume held) const
{
    if (!shape_) {
        return -1.0;
    }
    const auto full = vessel::fullVolume(*shape_);
    const auto level =
        full ? vessel::headLevel(*shape_, std::clamp(held, Volume(), *full)) : Result<double>(-1.0);
    return level ? *level : -1.0;
}

QString BarrelViewModel::name() const { return nameOf(row_); }
QString BarrelViewModel::code() const { return QString::fromStdString(scan::shown(row_.code)); }
QString BarrelViewModel::contents() const { return lineOf(row_, context_.formats).contents; }
QString BarrelViewModel::place() const { return QString::fromStdString(row_.place); }
int BarrelViewModel::standing() const
{
    return static_cast<int>(cellar::standingOf(row_, context_.formats.now()));
}
QString BarrelViewModel::reason() const { return reasonOf(row_, context_.formats); }

QString BarrelViewModel::filledText() const
{
    if (!row_.filled || !row_.filledAt) {
        return {};
    }
    const QString when = context_.formats.date(*row_.filledAt, row_.filledPrecision);
    const QString age = context_.formats.age(*row_.filledAt);
    return row_.fillNumber ? tr("%1, %2 in wood, beer number %3 of this barrel")
                                 .arg(when, age)
                                 .arg(*row_.fillNumber)
                           : tr("%1, %2 in wood").arg(when, age);
}

QString BarrelViewModel::sizeText() const
{
    return row_.size ? context_.formats.volume(*row_.size) : QString();
}

QString BarrelViewModel::levelText() const
{
    if (!row_.filled) {
        return tr("Empty");
    }
    return row_.volume ? context_.formats.volume(*row_.volume) : tr("Not gauged yet");
}

QString BarrelViewModel::tastedText() const
{
    if (!row_.lastTasted) {
        return tr("Not tasted yet");
    }
    return tr("%n time(s), last %1", "", static_cast<int>(row_.tastings))
        .arg(context_.formats.fromNow(*row_.lastTasted));
}

qreal BarrelViewModel::level() const
{
    if (!row_.filled) {
        return row_.code.empty() ? -1.0 : 0.0;
    }
    return row_.volume ? levelOf(*row_.volume) : -1.0;
}

QString BarrelViewModel::nextText() const
{
    if (!openSheets_.empty()) {
        return tr("Go on tasting");
    }
    if (row_.nextStep == "taste") {
        return tr("Draw and taste");
    }
    return row_.nextStep.empty() ? QString() : capitalised(word(row_.nextStep));
}

QString BarrelViewModel::openSheetText() const
{
    if (openSheets_.empty() && inFlight_ && !tasting_) {
        return tr("This barrel is in a flight. Scores are hidden until you have tasted all of it.");
    }
    if (openSheets_.empty()) {
        return tasting_ ? tr("Scores of before are hidden while you draw and taste.") : QString();
    }
    return tr("A tasting sheet is open since %1. Scores of before are hidden until it is closed.")
        .arg(context_.formats.time(openSheets_.front().opened));
}

}  // namespace spile::viewmodels

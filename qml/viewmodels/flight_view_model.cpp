#include "qml/viewmodels/flight_view_model.hpp"

#include "core/cellar/acts/correcting.hpp"
#include "core/plan/flights.hpp"
#include "core/scan/barrel_code.hpp"
#include "qml/viewmodels/barrel_rows.hpp"
#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/notice.hpp"
#include "qml/viewmodels/open_flights_view_model.hpp"

#include <algorithm>

namespace spile::viewmodels {

using cellar::FlightGlass;

QVariant FlightTasterRows::data(const QModelIndex& index, int role) const
{
    const FlightTasterLine* line = rowAt(index.row());
    if (line == nullptr) {
        return {};
    }
    return role == Name       ? QVariant(line->name)
           : role == Tasted   ? QVariant(line->tasted)
           : role == Finished ? QVariant(line->done)
                              : QVariant();
}

QHash<int, QByteArray> FlightTasterRows::roleNames() const
{
    return {{Name, "name"}, {Tasted, "tasted"}, {Finished, "finished"}};
}

QVariant RevealedRows::data(const QModelIndex& index, int role) const
{
    const RevealedLine* line = rowAt(index.row());
    if (line == nullptr) {
        return {};
    }
    return role == Glass    ? QVariant(line->glass)
           : role == Barrel ? QVariant(line->barrel)
                            : QVariant();
}

QHash<int, QByteArray> RevealedRows::roleNames() const
{
    return {{Glass, "glass"}, {Barrel, "barrel"}};
}

FlightViewModel::FlightViewModel(Context& context, PeopleViewModel& people, QObject* parent)
    : QObject(parent), context_(context), people_(people), pouring_(context, people)
{
    connect(&context_.workers, &Workers::changed, this, [this] {
        if (stage_ != Reading) {
            refresh();
        }
    });
    connect(&people_, &PeopleViewModel::changed, this, &FlightViewModel::arrange);
}

void FlightViewModel::open(const SubjectId& flight, const std::optional<SubjectId>& taster)
{
    flight_ = {};
    flight_.flight = flight;
    barrels_.clear();
    taster_.reset();
    pouredGlass_ = 0;
    stage_ = Reading;
    tasters_.replace({});
    revealed_.replace({});
    emit changed();
    if (taster) {
        joinAs(*taster);
    } else {
        refresh();
    }
}

void FlightViewModel::refresh()
{
    context_.workers.look(
        this,
        [id = flight_.flight](ledger::Database& database) -> Result<std::optional<Found>> {
            SPILE_ASSIGN(flight, cellar::flightById(database, id));
            if (!flight) {
                return std::optional<Found>();
            }
            Found found{std::move(*flight), {}};
            for (const FlightGlass& glass : found.flight.glasses) {
                SPILE_ASSIGN(row, cellar::barrelById(database, glass.barrel));
                found.barrels[glass.barrel] = row.value_or(cellar::BarrelRow());
            }
            return std::optional(std::move(found));
        },
        [this, id = flight_.flight](Result<std::optional<Found>> found) {
            if (id != flight_.flight) {
                return;
            }
            if (!found) {
                fail(found.error());
            } else if (*found) {
                take(std::move(**found));
            } else if (stage_ != Reading) {
                stage_ = Reading;  // it was taken back
                emit ended();
            }
        });
}

void FlightViewModel::take(Found found)
{
    flight_ = std::move(found.flight);
    barrels_ = std::move(found.barrels);
    if (plan::nextToDraw(flight_) != nullptr) {
        stage_ = Drawing;
    } else if (!taster_) {
        stage_ = Tasters;
    } else {
        stage_ = next() == nullptr ? Tasted : NextGlass;
    }
    beginGlass();
    arrange();
}

// The form of drawing begins anew for each glass, and keeps what was set while it is shown.
void FlightViewModel::beginGlass()
{
    const FlightGlass* glass = next();
    if (stage_ == Drawing && glass->number != pouredGlass_) {
        pouredGlass_ = glass->number;
        pouring_.openGlass(barrels_[glass->barrel], flight_.flight, glass->number);
    }
}

void FlightViewModel::arrange()
{
    std::vector<FlightTasterLine> lines;
    const auto all = static_cast<int>(flight_.glasses.size());
    for (const cellar::NamedRow& person : people_.people()) {
        FlightTasterLine line;
        line.id = textOf(person.subject);
        line.name = QString::fromStdString(person.name);
        const int tasted = flight_.tastedBy(person.subject);
        line.done = all > 0 && flight_.isFinishedBy(person.subject);
        line.tasted = line.done    ? tr("has tasted all")
                      : tasted > 0 ? tr("%1 of %2 tasted").arg(tasted).arg(all)
                                   : QString();
        lines.push_back(std::move(line));
    }
    tasters_.replace(std::move(lines));
    std::vector<RevealedLine> revealed;
    if (stage_ == Tasted) {
        for (const FlightGlass& glass : flight_.glasses) {
            revealed.push_back({tr("Glass %1").arg(glass.number), nameOf(barrels_[glass.barrel])});
        }
    }
    revealed_.replace(std::move(revealed));
    emit changed();
}

void FlightViewModel::fail(const Error& error)
{
    context_.notice.refuse(textOf(error));
    emit changed();
}

// What comes next: the glass to draw, or the one that this taster takes.
const FlightGlass* FlightViewModel::next() const
{
    if (const FlightGlass* glass = plan::nextToDraw(flight_)) {
        return glass;
    }
    return taster_ ? plan::nextToTaste(flight_, *taster_, place_) : nullptr;
}

QString FlightViewModel::title() const
{
    return stage_ == Reading ? QString() : titleOf(flight_, context_.formats);
}

QString FlightViewModel::progress() const
{
    const auto all = static_cast<int>(flight_.glasses.size());
    const auto at = [&](auto done) {
        return static_cast<int>(
                   std::count_if(flight_.glasses.begin(), flight_.glasses.end(), done)) +
               1;
    };
    if (stage_ == Drawing) {
        return tr("Draw glass %1 of %2").arg(at([](const auto& g) { return g.drawn; })).arg(all);
    }
    if (stage_ == NextGlass) {
        return tr("%1: glass %2 of %3", "taster")
            .arg(taster())
            .arg(flight_.tastedBy(*taster_) + 1)
            .arg(all);
    }
    return tr("%n glass(es)", "", all);
}

QString FlightViewModel::barrelName() const
{
    return stage_ == Drawing ? pouring_.barrelName() : QString();
}

QString FlightViewModel::barrelCode() const
{
    if (stage_ != Drawing) {
        return {};
    }
    const auto row = barrels_.find(next()->barrel);
    return row == barrels_.end() || row->second.mark.empty()
               ? QString()
               : QString::fromStdString(scan::shown(row->second.code));
}

QString FlightViewModel::glass() const
{
    const FlightGlass* glass = stage_ == Drawing || stage_ == NextGlass ? next() : nullptr;
    return glass == nullptr ? QString() : QString::number(glass->number);
}

bool FlightViewModel::isSuspect() const { return stage_ == Drawing && !next()->clean; }

bool FlightViewModel::isAgain() const
{
    return stage_ == Drawing &&
           std::any_of(flight_.glasses.begin(), flight_.glasses.end(), [&](const auto& glass) {
               return glass.drawn && glass.barrel == next()->barrel;
           });
}

bool FlightViewModel::canLeaveOut() const
{
    return stage_ == Drawing && flight_.glasses.size() > 1;
}

QString FlightViewModel::taster() const { return taster_ ? people_.nameOf(*taster_) : QString(); }

void FlightViewModel::leaveOut()
{
    if (!canLeaveOut()) {
        return;
    }
    const int number = next()->number;
    context_.workers.act(
        this,
        [id = flight_.flight, number](cellar::Cellar& cellar) {
            return cellar::leaveGlassOut(cellar, id, number);
        },
        [this, number](Result<EntryId> amended) {
            if (!amended) {
                fail(amended.error());
                return;
            }
            refresh();
            context_.notice.tell(tr("Glass %1 is left out: kept.").arg(number), [this, amended] {
                context_.workers.act(
                    this,
                    [entry = *amended](cellar::Cellar& cellar) {
                        return cellar::voidEntry(cellar, entry);
                    },
                    [this](Result<EntryId> back) {
                        if (!back) {
                            fail(back.error());
                        }
                    });
            });
        });
}

void FlightViewModel::joinAs(const SubjectId& taster)
{
    context_.workers.act(
        this,
        [id = flight_.flight, taster](cellar::Cellar& cellar) {
            return cellar::placeInFlight(cellar, id, taster);
        },
        [this, taster, id = flight_.flight](Result<int> place) {
            if (id != flight_.flight) {
                return;
            }
            if (place) {
                taster_ = taster;
                place_ = *place;
            } else {
                fail(place.error());
            }
            refresh();
        });
}

void FlightViewModel::chooseTaster(int index)
{
    if (const FlightTasterLine* line = tasters_.rowAt(index)) {
        const auto taster = idOf<SubjectId>(line->id);
        context_.notice.clear();  // who drew the last glass may not be who tastes
        people_.choose(index);
        joinAs(taster);
    }
}

void FlightViewModel::taste()
{
    if (stage_ == NextGlass) {
        const FlightGlass* glass = next();
        emit tasteWanted(flight_.flight, glass->number, glass->barrel);
    }
}

void FlightViewModel::nextTaster()
{
    taster_.reset();
    revealed_.replace({});
    stage_ = Tasters;  // at once: what was revealed is not for the next one
    emit changed();
    refresh();
}

void FlightViewModel::compare(int index)
{
    if (stage_ != Tasted || index < 0 || index >= static_cast<int>(flight_.glasses.size())) {
        return;
    }
    const FlightGlass& glass = flight_.glasses[static_cast<std::size_t>(index)];
    for (const cellar::FlightTaste& taste : glass.tastes) {
        if (taste.person == *taster_) {
            emit compareWanted(glass.barrel, taste.taste);
            return;
        }
    }
}

void FlightViewModel::end()
{
    context_.workers.act(
        this,
        [id = flight_.flight](cellar::Cellar& cellar) { return cellar::endFlight(cellar, id); },
        [this](Result<void> over) {
            if (over) {
                emit ended();
            } else {
                fail(over.error());
            }
        });
}

}  // namespace spile::viewmodels

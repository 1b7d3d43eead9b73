#include "qml/viewmodels/new_flight_view_model.hpp"

#include "core/cellar/folding.hpp"
#include "core/cellar/searching.hpp"
#include "qml/viewmodels/alarm_text.hpp"
#include "qml/viewmodels/barrel_rows.hpp"
#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/notice.hpp"
#include "qml/viewmodels/words.hpp"

#include <algorithm>

namespace spile::viewmodels {

namespace {

constexpr int barrelsMost = 2000;

bool isWithin(int chosen)
{
    return chosen >= static_cast<int>(plan::flightBarrelsLeast) &&
           chosen <= static_cast<int>(plan::flightBarrelsMost);
}

}  // namespace

QVariant FlightBarrelRows::data(const QModelIndex& index, int role) const
{
    const FlightBarrelLine* line = rowAt(index.row());
    if (line == nullptr) {
        return {};
    }
    switch (role) {
        case Title:
            return line->title;
        case Detail:
            return line->detail;
        case Suspect:
            return line->suspect;
        case Chosen:
            return line->chosen;
        default:
            return {};
    }
}

QHash<int, QByteArray> FlightBarrelRows::roleNames() const
{
    return {{Title, "title"}, {Detail, "detail"}, {Suspect, "suspect"}, {Chosen, "picked"}};
}

NewFlightViewModel::NewFlightViewModel(Context& context, PeopleViewModel& people, QObject* parent)
    : QObject(parent), context_(context), people_(people)
{
    connect(&people_, &PeopleViewModel::changed, this, &NewFlightViewModel::changed);
}

void NewFlightViewModel::open()
{
    chosen_.clear();
    search_.clear();
    error_.clear();
    twice_ = busy_ = loaded_ = false;
    candidates_.clear();
    rows_.replace({});
    look();
    emit changed();
}

void NewFlightViewModel::look()
{
    context_.workers.look(
        this,
        [now =
             context_.formats.now()](ledger::Database& database) -> Result<std::vector<Candidate>> {
            const cellar::BarrelSearch full{{}, cellar::Which::Full, now};
            SPILE_ASSIGN(found, cellar::searchBarrels(database, full, {}, barrelsMost));
            std::vector<Candidate> all;
            for (cellar::BarrelRow& row : found.rows) {
                SPILE_ASSIGN(suspicion, plan::suspicionOf(database, row.barrel, now));
                all.push_back({std::move(row), std::move(suspicion)});
            }
            return all;
        },
        [this](Result<std::vector<Candidate>> found) {
            if (!found) {
                context_.notice.refuse(textOf(found.error()));
                return;
            }
            candidates_ = std::move(*found);
            loaded_ = true;
            show();
        });
}

// What speaks against it, in the records' own words.
QString NewFlightViewModel::against(const Candidate& candidate) const
{
    const cellar::Signs& signs = candidate.suspicion.signs;
    QStringList words;
    for (const auto& [fault, strength] : signs.faults) {
        words << word(fault);
    }
    words << AlarmText::moving(candidate.suspicion.alarms);
    if (words.isEmpty() && candidate.suspicion.soundness == panel::Soundness::Sour) {
        words << tr("high acidity");
    }
    if (signs.looksUnsound) {
        words << tr("the last look over it");
    }
    if (signs.verdict == "destroy") {
        words << word(signs.verdict);
    }
    return words.join(QStringLiteral(", "));
}

void NewFlightViewModel::show()
{
    const std::string wanted = cellar::folded(search_.trimmed().toStdString());
    std::vector<FlightBarrelLine> lines;
    for (const Candidate& candidate : candidates_) {
        const BarrelLine barrel = lineOf(candidate.row, context_.formats);
        const QString all = barrel.title + QLatin1Char(' ') + barrel.code + QLatin1Char(' ') +
                            barrel.contents + QLatin1Char(' ') + barrel.place;
        if (cellar::folded(all.toStdString()).find(wanted) == std::string::npos) {
            continue;
        }
        FlightBarrelLine line;
        line.id = barrel.id;
        line.title = barrel.title;
        line.suspect = candidate.suspicion.soundness != panel::Soundness::Clean;
        line.detail =
            line.suspect ? tr("suspect: %1", "what speaks against a barrel").arg(against(candidate))
                         : barrel.contents;
        line.chosen = chosen_.contains(candidate.row.barrel);
        lines.push_back(std::move(line));
    }
    rows_.replace(std::move(lines));
    emit changed();
}

void NewFlightViewModel::setSearch(const QString& text)
{
    if (text != search_) {
        search_ = text;
        show();
    }
}

void NewFlightViewModel::toggle(int index)
{
    const FlightBarrelLine* line = rows_.rowAt(index);
    if (line == nullptr) {
        return;
    }
    const auto barrel = idOf<SubjectId>(line->id);
    if (chosen_.erase(barrel) == 0) {
        chosen_.insert(barrel);
    }
    error_.clear();
    show();
}

bool NewFlightViewModel::areMany() const
{
    constexpr std::size_t seenAtOnce = 12;
    return candidates_.size() > seenAtOnce;
}

bool NewFlightViewModel::canTwice() const
{
    return std::any_of(candidates_.begin(), candidates_.end(), [&](const Candidate& candidate) {
        return candidate.suspicion.soundness == panel::Soundness::Clean &&
               chosen_.contains(candidate.row.barrel);
    });
}

void NewFlightViewModel::toggleTwice()
{
    twice_ = !twice_;
    emit changed();
}

QString NewFlightViewModel::beginText() const
{
    const auto chosen = static_cast<int>(chosen_.size());
    if (isWithin(chosen)) {
        return tr("Draw from %n barrel(s)", "", chosen);
    }
    return chosen < static_cast<int>(plan::flightBarrelsLeast)
               ? tr("Choose at least two barrels")
               : tr("Choose at most %n barrel(s)", "", static_cast<int>(plan::flightBarrelsMost));
}

bool NewFlightViewModel::canBegin() const
{
    return !busy_ && people_.who().has_value() && isWithin(static_cast<int>(chosen_.size()));
}

void NewFlightViewModel::begin()
{
    if (!canBegin()) {
        return;
    }
    busy_ = true;
    error_.clear();
    emit changed();
    // In the order of the list, which is that of the racks.
    std::vector<SubjectId> barrels;
    for (const Candidate& candidate : candidates_) {
        if (chosen_.contains(candidate.row.barrel)) {
            barrels.push_back(candidate.row.barrel);
        }
    }
    cellar::Circumstance by;
    by.person = people_.who();
    by.at = Formats::eventTime(context_.formats.now());
    context_.workers.act(
        this,
        [barrels, by, twice = isTwice(),
         now = context_.formats.now()](cellar::Cellar& cellar) -> Result<SubjectId> {
            SPILE_ASSIGN(flight, plan::planFlight(cellar.database(), cellar.outside().random,
                                                  barrels, twice, now));
            flight.circumstance = by;
            return cellar::beginFlight(cellar, flight);
        },
        [this](Result<SubjectId> flight) {
            busy_ = false;
            if (!flight) {
                error_ = textOf(flight.error());
            }
            emit changed();
            if (flight) {
                emit begun(*flight);
            }
        });
}

}  // namespace spile::viewmodels

#include "qml/viewmodels/today_view_model.hpp"

#include "core/cellar/acts/correcting.hpp"
#include "core/cellar/true_time.hpp"
#include "core/scan/barrel_code.hpp"
#include "qml/viewmodels/clock_view_model.hpp"
#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/notice.hpp"
#include "qml/viewmodels/open_flights_view_model.hpp"
#include "qml/viewmodels/taking_back.hpp"
#include "qml/viewmodels/words.hpp"

#include <algorithm>

namespace spile::viewmodels {

namespace {

constexpr int pageRows = 50;

QString barrelOf(const cellar::OwnAct& act)
{
    return QString::fromStdString(act.barrelMark.empty() && !act.barrelCode.empty()
                                      ? scan::shown(act.barrelCode)
                                      : act.barrelMark);
}

QString aheadText(Milliseconds ahead)
{
    if (std::chrono::abs(ahead) < cellar::clockTolerance) {
        return JournalRows::tr("it was right", "a clock");
    }
    return (ahead.count() < 0 ? JournalRows::tr("it was behind by %1")
                              : JournalRows::tr("it was ahead by %1"))
        .arg(ClockViewModel::span(ahead));
}

QString detailOf(const cellar::OwnAct& act, const Formats& formats)
{
    QStringList parts;
    if (!act.name.empty()) {
        parts << QString::fromStdString(act.name);
    }
    if (act.volume) {
        parts << formats.volume(*act.volume);
    }
    if (!act.text.empty()) {
        parts << word(act.text);
    }
    if (act.scores > 0) {
        parts << JournalRows::tr("%n score(s)", "", act.scores);
    }
    if (act.ahead) {
        parts << aheadText(*act.ahead);
    }
    if (!act.person.empty()) {
        parts << QString::fromStdString(act.person);
    }
    if (act.clock) {
        parts << formats.setRight(act.clock);
    }
    return parts.join(QStringLiteral(", "));
}

QString stateOf(const cellar::OwnAct& act)
{
    if (act.voided) {
        return JournalRows::tr("Taken back");
    }
    return act.handedOut ? JournalRows::tr("In a day file") : JournalRows::tr("On this device");
}

// What is done with a glass of a flight that its holder still has to taste names the glass alone.
QString subjectOf(const cellar::OwnAct& act, bool blind)
{
    if (blind) {
        return JournalRows::tr("Glass %1").arg(act.glass.value_or(0));
    }
    return act.device.empty() ? barrelOf(act) : QString::fromStdString(act.device);
}

JournalLine lineOf(const cellar::OwnAct& act, bool blind, const Formats& formats)
{
    JournalLine line;
    line.id = textOf(act.entry);
    const Instant later = std::max(act.at, act.recorded);
    line.when =
        formats.marked(formats.daysFromToday(act.recorded) == 0 ? formats.time(act.recorded)
                                                                : formats.dateAndTime(act.recorded),
                       later);
    const QString done = capitalised(word("done " + act.kind));
    const QString about = subjectOf(act, blind);
    line.what = about.isEmpty() ? done : JournalRows::tr("%1: %2", "Rum 3: drawn").arg(about, done);
    line.detail = detailOf(act, formats);
    line.state = stateOf(act);
    line.voided = act.voided;
    line.stays = !cellar::mayVoid(act.kind);
    return line;
}

}  // namespace

QVariant JournalRows::data(const QModelIndex& index, int role) const
{
    const JournalLine* line = rowAt(index.row());
    if (line == nullptr) {
        return {};
    }
    switch (role) {
        case When:
            return line->when;
        case What:
            return line->what;
        case Detail:
            return line->detail;
        case State:
            return line->state;
        case Voided:
            return line->voided;
        case Stays:
            return line->stays;
        default:
            return {};
    }
}

QHash<int, QByteArray> JournalRows::roleNames() const
{
    return {{When, "when"},       {What, "what"},     {Detail, "detail"},
            {State, "stateText"}, {Voided, "voided"}, {Stays, "stays"}};
}

TodayViewModel::TodayViewModel(Context& context, QObject* parent)
    : QObject(parent), context_(context), wanted_(pageRows)
{
    connect(&context_.workers, &Workers::changed, this, [this] {
        if (loaded_) {
            refresh();
        }
    });
}

QString TodayViewModel::day() const { return context_.formats.date(context_.formats.now()); }

void TodayViewModel::refresh()
{
    struct Found {
        std::vector<cellar::OwnAct> acts;
        std::vector<cellar::FlightRow> flights;  // that must stay blind
    };
    context_.workers.look(
        this,
        [limit = wanted_, now = context_.formats.now(),
         who = holderOf(context_)](ledger::Database& database) -> Result<Found> {
            SPILE_ASSIGN(acts, cellar::ownActs(database, cellar::fromTheNewest, limit));
            SPILE_ASSIGN(flights, cellar::openFlights(database, now, who));
            return Found{std::move(acts), std::move(flights)};
        },
        [this](Result<Found> found) {
            if (!found) {
                context_.notice.refuse(textOf(found.error()));
                return;
            }
            acts_ = std::move(found->acts);
            loaded_ = true;
            std::vector<JournalLine> lines;
            for (const cellar::OwnAct& act : acts_) {
                const bool blind =
                    act.flight && std::any_of(found->flights.begin(), found->flights.end(),
                                              [&](const cellar::FlightRow& flight) {
                                                  return flight.flight == *act.flight;
                                              });
                lines.push_back(lineOf(act, blind, context_.formats));
            }
            rows_.replace(std::move(lines));
            emit changed();
        });
}

void TodayViewModel::more()
{
    if (rows_.rowCount() >= wanted_) {
        wanted_ += pageRows;
        refresh();
    }
}

void TodayViewModel::takeBackAt(int index)
{
    if (index >= 0 && index < static_cast<int>(acts_.size())) {
        const cellar::OwnAct& act = acts_[static_cast<std::size_t>(index)];
        if (act.voidedBy) {
            letCount(context_, *act.voidedBy)();
        } else {
            takeBack(context_, act.entry)();
        }
    }
}

}  // namespace spile::viewmodels

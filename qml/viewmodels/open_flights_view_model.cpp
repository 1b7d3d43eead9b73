#include "qml/viewmodels/open_flights_view_model.hpp"

#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/notice.hpp"
#include "qml/viewmodels/settings.hpp"

#include <algorithm>

namespace spile::viewmodels {

namespace {

QString whereOf(const cellar::FlightRow& flight, const std::optional<SubjectId>& who)
{
    const auto all = static_cast<int>(flight.glasses.size());
    if (!flight.isDrawn()) {
        const auto drawn = std::count_if(flight.glasses.begin(), flight.glasses.end(),
                                         [](const auto& glass) { return glass.drawn; });
        return OpenFlightsViewModel::tr("%1 of %n glass(es) drawn", "", all).arg(drawn);
    }
    return OpenFlightsViewModel::tr("%1 of %n glass(es) tasted", "", all)
        .arg(who ? flight.tastedBy(*who) : 0);
}

}  // namespace

QVariant OpenFlightRows::data(const QModelIndex& index, int role) const
{
    const OpenFlightLine* line = rowAt(index.row());
    if (line == nullptr) {
        return {};
    }
    switch (role) {
        case FlightId:
            return line->id;
        case Title:
            return line->title;
        case Where:
            return line->where;
        default:
            return {};
    }
}

QHash<int, QByteArray> OpenFlightRows::roleNames() const
{
    return {{FlightId, "flightId"}, {Title, "title"}, {Where, "where"}};
}

QString titleOf(const cellar::FlightRow& flight, const Formats& formats)
{
    if (!flight.name.empty()) {
        return QString::fromStdString(flight.name);
    }
    return OpenFlightsViewModel::tr("Flight of %1", "a time, or a date and time")
        .arg(formats.daysFromToday(flight.at) == 0 ? formats.time(flight.at)
                                                   : formats.dateAndTime(flight.at));
}

std::optional<SubjectId> holderOf(const Context& context)
{
    const auto last = idOf<SubjectId>(context.settings.lastPerson());
    return last.isZero() ? std::nullopt : std::optional(last);
}

OpenFlightsViewModel::OpenFlightsViewModel(Context& context, QObject* parent)
    : QObject(parent), context_(context)
{
    connect(&context_.workers, &Workers::changed, this, &OpenFlightsViewModel::refresh);
}

QString OpenFlightsViewModel::newest() const
{
    const OpenFlightLine* first = rows_.rowAt(0);
    return first == nullptr ? QString() : first->where;
}

void OpenFlightsViewModel::refresh()
{
    context_.workers.look(
        this,
        [now = context_.formats.now(), who = holderOf(context_)](ledger::Database& database) {
            return cellar::openFlights(database, now, who);
        },
        [this](Result<std::vector<cellar::FlightRow>> open) {
            if (!open) {
                context_.notice.refuse(textOf(open.error()));
                return;
            }
            flights_.clear();
            interrupted_ = 0;
            std::vector<OpenFlightLine> lines;
            for (const cellar::FlightRow& flight : *open) {
                flights_.push_back(flight.flight);
                interrupted_ += flight.isDrawn() ? 0 : 1;
                lines.push_back({textOf(flight.flight), titleOf(flight, context_.formats),
                                 whereOf(flight, holderOf(context_))});
            }
            rows_.replace(std::move(lines));
            emit changed();
            emit read();
        });
}

void OpenFlightsViewModel::goOn(int index)
{
    if (index >= 0 && index < static_cast<int>(flights_.size())) {
        emit chosen(flights_[static_cast<std::size_t>(index)]);
    }
}

}  // namespace spile::viewmodels

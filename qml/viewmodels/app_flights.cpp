// Flights and windows, and which page follows which: the third part of app_view_model.cpp.
#include "qml/viewmodels/app_view_model.hpp"

namespace spile::viewmodels {

void AppViewModel::connectFlights()
{
    connect(&newFlight_, &NewFlightViewModel::begun, this,
            [this](const SubjectId& flight) { showFlight(flight); });
    connect(&openFlights_, &OpenFlightsViewModel::chosen, this,
            [this](const SubjectId& flight) { showFlight(flight); });
    connect(&openFlights_, &OpenFlightsViewModel::read, this, &AppViewModel::askAboutOpen);
    connect(&flight_, &FlightViewModel::tasteWanted, &tasting_, &TastingViewModel::beginGlass);
    connect(&flight_, &FlightViewModel::compareWanted, this,
            [this](const SubjectId& barrel, const EntryId& taste) {
                comparing_.show(barrel, taste);
                barrel_.show(barrel);
                navigator_.open(Navigator::Compare);
            });
    connect(&flight_, &FlightViewModel::ended, this, [this] {
        if (navigator_.page() == Navigator::Flight) {
            navigator_.back();
        }
    });
    connect(&flight_, &FlightViewModel::changed, this, &AppViewModel::blindChanged);
    connect(&tasting_, &TastingViewModel::opened, this, &AppViewModel::blindChanged);
    connect(&navigator_, &Navigator::changed, this, &AppViewModel::blindChanged);
    // All that was set on the page of windows is recorded when it is left.
    connect(&navigator_, &Navigator::changed, this, [this] {
        if (!navigator_.pages().contains(Navigator::Windows)) {
            windows_.save();
        }
    });
}

bool AppViewModel::isBlind() const
{
    const auto& pages = navigator_.pages();
    return (pages.contains(Navigator::Flight) && flight_.isBlind()) ||
           (pages.contains(Navigator::Taste) && tasting_.isBlind()) ||
           (pages.contains(Navigator::BenchGlasses) && glasses_.isBlind());
}

void AppViewModel::showFlight(const SubjectId& flight, const std::optional<SubjectId>& taster)
{
    flight_.open(flight, taster);
    navigator_.remove(Navigator::NewFlight);
    navigator_.remove(Navigator::WasHere);
    navigator_.open(Navigator::Flight);
}

void AppViewModel::openFlight()
{
    newFlight_.open();
    openFlights_.refresh();
    navigator_.open(Navigator::NewFlight);
    askWho();
}

void AppViewModel::openWindows()
{
    windows_.open(barrel_.row().barrel);
    navigator_.open(Navigator::Windows);
}

}  // namespace spile::viewmodels

// The scenes of what several devices leave to be settled, and of the devices: a part of tour.cpp.
#include "core/cellar/join_code.hpp"
#include "platform/app/tour.hpp"

namespace spile::app {

using viewmodels::Navigator;

// Each thing there is to settle, one of a kind; nothing is decided.
std::vector<Tour::Scene> Tour::settling()
{
    const auto showRow = [this](int index) {
        return [this, index] {
            app_.openToSettle();
            settle();
            app_.toSettle()->choose(index);
        };
    };
    std::vector<Scene> scenes{{QStringLiteral("to-settle"), [this] {
                                   app_.navigator()->go(Navigator::Today);
                                   settle();
                                   app_.openToSettle();
                               }}};
    constexpr int mostKinds = 6;
    for (int i = 0; i < mostKinds; ++i) {
        scenes.push_back({QStringLiteral("settle-%1").arg(i), showRow(i)});
    }
    scenes.push_back(
        {QStringLiteral("today-to-settle"), [this] { app_.navigator()->go(Navigator::Today); }});
    scenes.push_back({QStringLiteral("devices"), [this] { app_.openDevices(); }});
    scenes.push_back({QStringLiteral("cut-off"), [this] { app_.devices()->choose(0); }});
    for (const int i : {0, 1}) {
        scenes.push_back({QStringLiteral("clock-%1").arg(i), [this, i] {
                              app_.navigator()->go(Navigator::Today);
                              app_.openDevices();
                              settle();
                              app_.devices()->openClock(i);
                          }});
    }
    scenes.push_back({QStringLiteral("admit"), [this] {
                          app_.openDevices();
                          settle();
                          app_.openAdmit();
                      }});
    scenes.push_back(
        {QStringLiteral("admit-asking"), [this] {
             app_.openAdmit(QString::fromStdString(cellar::joinCode(DeviceId({0x5e, 0xc0, 0x99}))));
         }});
    scenes.push_back({QStringLiteral("day-file-sealed"), [this] {
                          app_.navigator()->go(Navigator::Today);
                          app_.openDayFile();
                          settle();
                          app_.dayFile()->setSealed(true);
                          app_.dayFile()->write();
                      }});
    return scenes;
}

}  // namespace spile::app

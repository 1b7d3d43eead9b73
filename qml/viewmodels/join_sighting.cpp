#include "qml/viewmodels/join_sighting.hpp"

#include "core/cellar/devices.hpp"

#include <QStringList>

namespace spile::viewmodels {

Result<JoinSighting> sightJoiner(cellar::Cellar& cellar, const cellar::JoinSymbol& symbol)
{
    JoinSighting sighting;
    sighting.symbol = symbol;
    sighting.foreign = symbol.cellarMark != cellar.identity().mark;
    SPILE_ASSIGN(devices, cellar::devicesOf(cellar.database()));
    sighting.own = symbol.device == devices.own;
    sighting.mayAdmit = devices.ownStands.mayAdmit;
    sighting.admitters = devices.admitters();
    const cellar::DeviceRow* row = devices.find(symbol.device);
    if (row != nullptr && row->membership.admitted) {
        sighting.admittedAs = row->name;
        sighting.cutOff = row->membership.cutOff;
    }
    return sighting;
}

QString JoinText::hindrance(const JoinSighting& sighting)
{
    if (sighting.foreign) {
        return tr("This device has joined another cellar, %1. Let it join with a day file of this "
                  "one first.")
            .arg(QString::fromStdString(sighting.symbol.cellarMark));
    }
    if (sighting.own) {
        return tr("This is the code of this device itself.");
    }
    if (sighting.admittedAs) {
        const QString name = QString::fromStdString(*sighting.admittedAs);
        return sighting.cutOff
                   ? tr("%1 was cut off. Only the owner's key lets it in again, at a desk.")
                         .arg(name)
                   : tr("%1 is let in already.").arg(name);
    }
    return sighting.mayAdmit ? QString() : whoCan(sighting.admitters);
}

QString JoinText::whoCan(const std::vector<std::string>& admitters)
{
    constexpr std::size_t most = 5;
    QStringList names;
    for (const std::string& name : admitters) {
        names << QString::fromStdString(name);
        if (names.size() == most && admitters.size() > most) {
            names << QStringLiteral("…");
            break;
        }
    }
    return names.isEmpty()
               ? tr("No desk is left to let a device in. The owner's key can, at a desk.")
               : tr("This device may not let others in. Show the code to: %1.")
                     .arg(names.join(QStringLiteral(", ")));
}

QString JoinText::ownersKey()
{
    return tr("This is an owner's key. Put the sheet away: nothing here needs it.");
}

}  // namespace spile::viewmodels

#pragma once

#include "core/base/outside.hpp"
#include "qml/viewmodels/formats.hpp"
#include "qml/viewmodels/workers.hpp"

namespace spile::viewmodels {

class Notice;
class Settings;

/// What every view-model works with. Holds nothing: all must outlive its users.
struct Context {
    Workers& workers;
    Outside outside;
    const Formats& formats;
    Notice& notice;
    Settings& settings;
};

/// Ids stay typed in core and cross to QML as hexadecimal text; an id of nothing is empty.
template <class Id>
[[nodiscard]] QString textOf(const Id& id)
{
    return id.isZero() ? QString() : QString::fromStdString(id.hex());
}
template <class Id>
[[nodiscard]] Id idOf(const QString& text)
{
    return Id::fromHex(text.toStdString()).value_or(Id());
}

}  // namespace spile::viewmodels

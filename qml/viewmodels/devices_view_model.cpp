#include "qml/viewmodels/devices_view_model.hpp"

#include "core/cellar/acts/trusting.hpp"
#include "core/cellar/vocabulary.hpp"
#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/open_flights_view_model.hpp"
#include "qml/viewmodels/words.hpp"

namespace spile::viewmodels {

DevicesViewModel::DevicesViewModel(Context& context, QObject* parent)
    : QObject(parent), context_(context)
{
    connect(&context_.workers, &Workers::changed, this, [this] {
        if (loaded_) {
            refresh();
        }
    });
}

void DevicesViewModel::refresh()
{
    context_.workers.look(
        this, [](ledger::Database& database) { return cellar::devicesOf(database); },
        [this](Result<cellar::Devices> found) {
            if (found) {
                take(std::move(*found));
            } else {
                error_ = textOf(found.error());
            }
            emit changed();
        });
}

QString DevicesViewModel::standingOf(const cellar::DeviceRow& device)
{
    if (device.membership.cutOff) {
        return tr("Cut off");
    }
    if (!device.membership.admitted) {
        return tr("Not let in");
    }
    return device.membership.mayAdmit ? tr("A desk: it lets others in") : tr("Let in");
}

bool DevicesViewModel::mayCut(const cellar::DeviceRow& device) const
{
    return desk_ && !device.own && device.membership.admitted && !device.membership.cutOff;
}

void DevicesViewModel::take(cellar::Devices devices)
{
    devices_ = std::move(devices.rows);
    desk_ = devices.ownStands.mayAdmit;
    loaded_ = true;
    std::vector<PartLine> lines;
    for (const cellar::DeviceRow& device : devices_) {
        PartLine line = partLine(QStringLiteral("device"), textOf(device.device), said(device.name),
                                 {standingOf(device), device.own ? tr("This device") : QString()});
        line.pad = tr("Its clock");
        line.otherPad = mayCut(device) ? tr("Cut it off") : QString();
        lines.push_back(std::move(line));
    }
    rows_.replace(std::move(lines));
}

void DevicesViewModel::choose(int index)
{
    if (index >= 0 && index < static_cast<int>(devices_.size())) {
        chosen_ = devices_[static_cast<std::size_t>(index)];
        reason_ = -1;
        own_.clear();
        error_.clear();
        emit changed();
        emit chosen();
    }
}

void DevicesViewModel::openClock(int index)
{
    if (index >= 0 && index < static_cast<int>(devices_.size())) {
        emit clockWanted(devices_[static_cast<std::size_t>(index)].device);
    }
}

QStringList DevicesViewModel::reasons() const { return padWords(cellar::cutReasons()); }

void DevicesViewModel::chooseReason(int index)
{
    reason_ = index == reason_ ? -1 : index;
    own_.clear();
    emit changed();
}

void DevicesViewModel::setOwn(const QString& own)
{
    if (own != own_) {
        own_ = own;
        reason_ = own.trimmed().isEmpty() ? reason_ : -1;
        error_.clear();
        emit changed();
    }
}

void DevicesViewModel::cutOff()
{
    if (busy_) {
        return;
    }
    busy_ = true;
    error_.clear();
    cellar::NewCut cut;
    cut.device = chosen_.device;
    cut.reason = reason_ >= 0 ? std::string(cellar::cutReasons()[static_cast<std::size_t>(reason_)])
                              : own_.trimmed().toStdString();
    cut.person = holderOf(context_);
    context_.workers.act(
        this, [cut](cellar::Cellar& cellar) { return cellar::cutOff(cellar, cut); },
        [this, name = name()](const Result<EntryId>& done) {
            busy_ = false;
            if (done) {
                emit this->cut(tr("%1 is cut off. The others learn it by a day file.").arg(name));
            } else {
                error_ = textOf(done.error());
            }
            emit changed();
        });
}

}  // namespace spile::viewmodels

// Other devices, and which page follows which: the fifth part of app_view_model.cpp.
#include "core/cellar/cellar.hpp"
#include "qml/viewmodels/app_view_model.hpp"

namespace spile::viewmodels {

void AppViewModel::connectDevices()
{
    connect(&takeIn_, &TakeInViewModel::joinWanted, this, &AppViewModel::join);
    connect(&toSettle_, &ToSettleViewModel::chosen, this, [this](const cellar::UnsettledRow& row) {
        settle_.begin(row);
        navigator_.open(Navigator::Settle);
    });
    connect(&settle_, &SettleViewModel::settled, this, [this](const QString& said) {
        navigator_.remove(Navigator::Settle);
        notice_.tell(said);
    });
    connect(&devices_, &DevicesViewModel::chosen, this,
            [this] { navigator_.open(Navigator::CutOff); });
    connect(&devices_, &DevicesViewModel::cut, this, [this](const QString& said) {
        navigator_.remove(Navigator::CutOff);
        notice_.tell(said);
    });
    connect(&devices_, &DevicesViewModel::clockWanted, &clock_, &ClockViewModel::begin);
    connect(&takeIn_, &TakeInViewModel::clockWanted, &clock_, &ClockViewModel::begin);
    connect(&clock_, &ClockViewModel::opened, this, [this] { navigator_.open(Navigator::Clock); });
    connect(&clock_, &ClockViewModel::done, this, [this](const QString& said) {
        navigator_.remove(Navigator::Clock);
        notice_.tell(said);
    });
    connect(&admitting_, &AdmittingViewModel::admitted, this, [this](const QString& said) {
        navigator_.remove(Navigator::Admit);
        notice_.tell(said);
    });
    connect(&scan_, &ScanViewModel::deviceWanted, this, &AppViewModel::openAdmit);
    connect(&navigator_, &Navigator::changed, this, [this] {
        clock_.watch(navigator_.page() == Navigator::Today);
        if (!navigator_.pages().contains(Navigator::Clock)) {
            clock_.leave();
        }
        if (!navigator_.pages().contains(Navigator::Settle)) {
            settle_.leave();
        }
        if (!navigator_.pages().contains(Navigator::Devices)) {
            devices_.leave();
        }
        if (navigator_.page() == Navigator::Today || navigator_.page() == Navigator::Settings) {
            joining_.refresh();
            toSettle_.refresh();
        }
    });
}

void AppViewModel::beginWithDayFile() { openTakeIn(); }

void AppViewModel::join(const QString& file, const QString& passphrase)
{
    if (stage_ != FirstRun || std::exchange(makingCellar_, true)) {
        return;
    }
    openWith(
        [folder = start_.cellarFolder, outside = context_.outside, path = Path(file.toStdString()),
         passphrase = passphrase.toStdString()](const Job& job) {
            // Not stopped halfway: that would be a cellar with a part of its records.
            const Job whole(
                [&](std::uint64_t done, std::uint64_t total) { (void)job.advance(done, total); },
                nullptr);
            return cellar::Cellar::join(folder, outside, path, whole, {}, passphrase);
        },
        [this] {
            navigator_.go(Navigator::Today);
            openDevices();
            notice_.tell(tr("The records are here. Let the desk read this device's code now."));
        });
}

void AppViewModel::openDayFile() { navigator_.open(Navigator::DayFile); }
void AppViewModel::openTakeIn() { navigator_.open(Navigator::TakeIn); }

void AppViewModel::takeInFile(const QString& file)
{
    openTakeIn();
    takeIn_.takeUrl(QUrl::fromLocalFile(file));
}

void AppViewModel::openToSettle()
{
    toSettle_.refresh();
    navigator_.open(Navigator::ToSettle);
}

void AppViewModel::openDevices()
{
    devices_.refresh();
    navigator_.open(Navigator::Devices);
}

void AppViewModel::openAdmit(const QString& code)
{
    admitting_.begin(code);
    navigator_.open(Navigator::Admit);
}

}  // namespace spile::viewmodels

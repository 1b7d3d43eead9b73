#include "qml/viewmodels/admitting_view_model.hpp"

#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/devices.hpp"
#include "core/cellar/owner_key_text.hpp"
#include "qml/frames/frame_reader.hpp"
#include "qml/viewmodels/error_text.hpp"

#include <algorithm>

namespace spile::viewmodels {

AdmittingViewModel::AdmittingViewModel(Context& context, QObject* parent)
    : QObject(parent), context_(context)
{
}

void AdmittingViewModel::begin(const QString& code)
{
    forget();
    missing_.clear();
    readWhoCan();
    if (code.isEmpty()) {
        emit changed();
    } else {
        setCode(code);
    }
}

void AdmittingViewModel::readWhoCan()
{
    context_.workers.look(
        this, [](ledger::Database& database) { return cellar::devicesOf(database); },
        [this](const Result<cellar::Devices>& devices) {
            missing_ = !devices                      ? textOf(devices.error())
                       : devices->ownStands.mayAdmit ? QString()
                                                     : JoinText::whoCan(devices->admitters());
            emit changed();
        });
}

void AdmittingViewModel::forget()
{
    ++asked_;
    belief_.forget();
    state_ = Looking;
    desk_ = busy_ = false;
    code_.clear();
    codeError_.clear();
    message_.clear();
    device_.clear();
    name_.clear();
    error_.clear();
}

void AdmittingViewModel::again()
{
    forget();
    emit changed();
}

void AdmittingViewModel::offer(const QList<QString>& texts, const QList<QString>& formats)
{
    if (state_ != Looking || texts.isEmpty() || formats.isEmpty() || !missing_.isEmpty()) {
        return;
    }
    // Of several the device's; else the one that is aimed at.
    qsizetype at = 0;
    for (qsizetype i = 0; i < std::min(texts.size(), formats.size()); ++i) {
        if (cellar::parseJoinSymbol(texts[i].toStdString())) {
            at = i;
            break;
        }
    }
    const scan::Code code{texts[at].toStdString(), frames::formatNamed(formats[at]), {}};
    if (!belief_.take(code, context_.outside.clock.sinceBoot())) {
        return;
    }
    if (const auto symbol = cellar::parseJoinSymbol(code.text)) {
        ask(*symbol);
    } else if (scan::ownLabel(code)) {
        tell(tr("This is a barrel's label. Point the camera at the symbol on the other device."));
    } else if (cellar::isOwnerSymbol(code.text)) {
        tell(JoinText::ownersKey());
    } else {
        tell(
            tr("This is not the symbol of a device. It shows it under Today, Settings, "
               "Devices."));
    }
}

void AdmittingViewModel::tell(const QString& message)
{
    message_ = message;
    emit changed();
}

void AdmittingViewModel::setCode(const QString& code)
{
    if (code == code_) {
        return;
    }
    code_ = code;
    codeError_.clear();
    message_.clear();
    const std::string typed = code.toStdString();
    constexpr std::size_t whole = 28;
    if (const auto device = cellar::parseJoinCode(typed)) {
        askTyped(*device);
    } else if (scan::tidied(typed).size() >= whole) {
        codeError_ = tr("This code cannot be right. Compare it once more, character by character.");
    }
    emit changed();
}

void AdmittingViewModel::askTyped(const DeviceId& device)
{
    context_.workers.read(
        this,
        [device](cellar::Cellar& cellar) {  // a typed code does not say which cellar
            return sightJoiner(cellar, {cellar.identity().mark, device});
        },
        [this, asked = ++asked_](const Result<JoinSighting>& found) { take(found, asked); });
}

void AdmittingViewModel::ask(const cellar::JoinSymbol& symbol)
{
    context_.workers.read(
        this, [symbol](cellar::Cellar& cellar) { return sightJoiner(cellar, symbol); },
        [this, asked = ++asked_](const Result<JoinSighting>& found) { take(found, asked); });
}

void AdmittingViewModel::take(const Result<JoinSighting>& found, int asked)
{
    if (asked != asked_) {
        return;
    }
    if (!found) {
        tell(textOf(found.error()));
        return;
    }
    message_ = JoinText::hindrance(*found);
    if (message_.isEmpty()) {
        state_ = Asking;
        device_ = QString::fromStdString(cellar::joinCode(found->symbol.device));
    }
    emit changed();
}

void AdmittingViewModel::setName(const QString& name)
{
    if (name != name_) {
        name_ = name;
        error_.clear();
        emit changed();
    }
}

void AdmittingViewModel::setDesk(bool desk)
{
    if (desk != desk_) {
        desk_ = desk;
        emit changed();
    }
}

void AdmittingViewModel::admit()
{
    if (busy_ || state_ != Asking) {
        return;
    }
    const QString name = name_.trimmed();
    if (name.isEmpty()) {
        error_ = tr("Type what the device shall be called.");
        emit changed();
        return;
    }
    busy_ = true;
    error_.clear();
    const auto role = desk_ ? ledger::DeviceRole::Desk : ledger::DeviceRole::Phone;
    context_.workers.act(
        this,
        [code = device_.toStdString(), name = name.toStdString(), role](cellar::Cellar& cellar) {
            return cellar::admit(cellar, code, name, role);
        },
        [this, name](const Result<ledger::Admitted>& done) {
            busy_ = false;
            if (done) {
                emit admitted(tr("%1 is let in. It learns it by the next day file.").arg(name));
            } else {
                error_ = textOf(done.error());
            }
            emit changed();
        });
}

}  // namespace spile::viewmodels

#include "qml/viewmodels/joining_view_model.hpp"

#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/join_code.hpp"
#include "qml/viewmodels/error_text.hpp"

namespace spile::viewmodels {

JoiningViewModel::JoiningViewModel(Context& context, QObject* parent)
    : QObject(parent), context_(context)
{
    connect(&context_.workers, &Workers::changed, this, &JoiningViewModel::refresh);
}

void JoiningViewModel::refresh()
{
    struct Found {
        std::string cellar, code;
        ledger::Membership membership;
        bool readsOnly = false;
    };
    context_.workers.read(
        this,
        [](cellar::Cellar& cellar) -> Result<Found> {
            SPILE_ASSIGN(membership,
                         ledger::membershipOf(cellar.database(), cellar.ledger().device()));
            return Found{cellar.identity().name, cellar::joinCode(cellar.ledger().device()),
                         membership, cellar.ledger().readsOnly()};
        },
        [this](Result<Found> found) {
            if (found) {
                cellarName_ = QString::fromStdString(found->cellar);
                ownCode_ = QString::fromStdString(found->code);
                admitted_ = found->membership.admitted;
                mayAdmit_ = found->membership.mayAdmit;
                cutOff_ = found->membership.cutOff;
                readsOnly_ = found->readsOnly;
                emit changed();
            }
        });
}

void JoiningViewModel::setCode(const QString& code)
{
    if (code != code_) {
        code_ = code;
        error_.clear();
        result_.clear();
        emit changed();
    }
}

void JoiningViewModel::setName(const QString& name)
{
    if (name != name_) {
        name_ = name;
        error_.clear();
        emit changed();
    }
}

void JoiningViewModel::admit()
{
    if (name_.trimmed().isEmpty()) {
        error_ = tr("Type what the phone shall be called.");
        emit changed();
        return;
    }
    context_.workers.act(
        this,
        [code = code_.toStdString(), name = name_.trimmed().toStdString()](cellar::Cellar& cellar) {
            return cellar::admit(cellar, code, name, ledger::DeviceRole::Phone);
        },
        [this](Result<ledger::Admitted> admitted) {
            if (admitted) {
                result_ = tr("%1 is let in.").arg(name_.trimmed());
                code_.clear();
                name_.clear();
            } else {
                error_ = textOf(admitted.error());
            }
            emit changed();
        });
}

}  // namespace spile::viewmodels

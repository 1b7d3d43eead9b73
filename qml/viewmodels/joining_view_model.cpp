#include "qml/viewmodels/joining_view_model.hpp"

#include "core/cellar/join_code.hpp"
#include "core/labels/label_path.hpp"
#include "core/ledger/trust.hpp"

namespace spile::viewmodels {

JoiningViewModel::JoiningViewModel(Context& context, QObject* parent)
    : QObject(parent), context_(context)
{
    connect(&context_.workers, &Workers::changed, this, &JoiningViewModel::refresh);
}

void JoiningViewModel::refresh()
{
    struct Found {
        std::string cellar, code, symbol;
        int side = 0;
        ledger::Membership membership;
        bool readsOnly = false;
    };
    context_.workers.read(
        this,
        [](cellar::Cellar& cellar) -> Result<Found> {
            SPILE_ASSIGN(membership,
                         ledger::membershipOf(cellar.database(), cellar.ledger().device()));
            const DeviceId own = cellar.ledger().device();
            Found all{cellar.identity().name,     cellar::joinCode(own), {}, 0, membership,
                      cellar.ledger().readsOnly()};
            if (const auto grid = scan::encodeQr(
                    cellar::joinSymbolText({cellar.identity().mark, own}), scan::QrLevel::H)) {
                all.symbol = labels::pathOf(*grid);
                all.side = labels::pathSide(*grid);
            }
            return all;
        },
        [this](Result<Found> found) {
            if (found) {
                cellarName_ = QString::fromStdString(found->cellar);
                ownCode_ = QString::fromStdString(found->code);
                symbol_ = QString::fromStdString(found->symbol);
                symbolSide_ = found->side;
                admitted_ = found->membership.admitted;
                mayAdmit_ = found->membership.mayAdmit;
                cutOff_ = found->membership.cutOff;
                readsOnly_ = found->readsOnly;
                emit changed();
            }
        });
}

}  // namespace spile::viewmodels

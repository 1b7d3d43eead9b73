// A lot with packages, and what was written of it: a part of test_app.cpp.
#include "core/cellar/acts/lots.hpp"
#include "core/cellar/acts/packing.hpp"
#include "tests/gui/app/must.hpp"
#include "tests/gui/app/test_app.hpp"

#include <QFile>

namespace spile::support {

void TestApp::addLot(const QString& name, const QString& mark, const QString& lotCode)
{
    change([&](cellar::Cellar& cellar) {
        const cellar::Circumstance by{{}, ada_, {}};
        const SubjectId lot =
            must(cellar::registerLot(cellar, {.name = name.toStdString(), .circumstance = by}));
        must(cellar::recordTransfer(cellar, {.lot = lot,
                                             .from = barrels_.at(mark).barrel,
                                             .volume = litres(100),
                                             .alcoholByVolume = 0.11,
                                             .specificGravity = 1.02,
                                             .circumstance = by}));
        must(cellar::recordFinish(cellar, {.lot = lot,
                                           .substance = "coconut",
                                           .mass = kilograms(1.5),
                                           .allergen = "coconut",
                                           .until = device_->clock.now() + std::chrono::days(7),
                                           .circumstance = by}));
        must(cellar::recordPackage(cellar, {.lot = lot,
                                            .lotCode = lotCode.toStdString(),
                                            .packages = {{"bottle 500 mL", millilitres(500), 120}},
                                            .alcoholByVolume = 0.11,
                                            .circumstance = by}));
    });
}

QString TestApp::contentOf(const QString& file) const
{
    QFile content(file);
    return content.open(QIODevice::ReadOnly) ? QString::fromUtf8(content.readAll()) : QString();
}

}  // namespace spile::support

#include "qml/viewmodels/upkeep.hpp"

#include "core/ledger/ballast.hpp"

namespace spile::viewmodels {

using ledger::Database;

namespace {

constexpr std::chrono::seconds first{10};
constexpr std::chrono::minutes between{10};
constexpr int entriesAtOnce = 2000;  // a tenth of a second or two

}  // namespace

Upkeep::Upkeep(Context& context, QObject* parent) : QObject(parent), context_(context)
{
    connect(&next_, &QTimer::timeout, this, [this] {
        next_.start(between);
        goOn();
    });
}

void Upkeep::begin() { next_.start(first); }

void Upkeep::goOn()
{
    if (running_) {
        return;
    }
    running_ = true;
    // The folder is the cellar's own business, so the writer tells it.
    context_.workers.read(
        this,
        [](cellar::Cellar& cellar) {
            return Result<ledger::CellarFolder>(cellar.ledger().folder());
        },
        [this](const Result<ledger::CellarFolder>& found) {
            if (!found) {
                running_ = false;
                return;
            }
            const Outside outside = context_.outside;
            context_.workers.aside(
                this,
                [outside, folder = found->folder] {
                    return ledger::keepBallast(outside.files, outside.random, folder);
                },
                [](const Result<void>&) {});  // without it the disk is as full as it is
            context_.workers.study(
                this,
                [outside, photos = found->photos()](Database& database, const Job& job) {
                    return cellar::roundSoFar(database).and_then([&](const cellar::Round& round) {
                        return cellar::verifyNext(database,
                                                  ledger::PhotoStore(outside.files, photos), round,
                                                  entriesAtOnce, outside.clock.now(), job);
                    });
                },
                [this](const Result<cellar::Round>& round) {
                    running_ = false;
                    if (round) {
                        verified(*round);
                    }
                });
        });
}

void Upkeep::verified(const cellar::Round& round)
{
    context_.workers.read(  // not a change of the records, which all pages would look at
        this, [round](cellar::Cellar& cellar) { return cellar::keepRound(cellar, round); },
        [](const Result<void>&) {});  // it is verified once more
    const QString wrong =
        round.wrong().empty()
            ? QString()
            : tr("Something that is stored on this device is damaged (%1). Take in a day file with "
                 "everything from another device: it brings back what is damaged here.")
                  .arg(QString::fromStdString(round.wrong()));
    if (wrong != wrong_) {
        wrong_ = wrong;
        emit changed();
    }
}

}  // namespace spile::viewmodels

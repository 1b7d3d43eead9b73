#include "qml/viewmodels/outlook_service.hpp"

#include "core/plan/foreseen.hpp"

#include <algorithm>

namespace spile::viewmodels {

namespace {

constexpr auto learnAfterStart = std::chrono::milliseconds(1500);
constexpr auto changesSettled = std::chrono::milliseconds(4000);
constexpr auto outlookStale = std::chrono::hours(12);  // an outlook is one at a time
// So many are kept in one transaction of a few milliseconds; taps go between two.
constexpr std::size_t outlooksAtOnce = 100;

}  // namespace

OutlookService::OutlookService(Context& context, QObject* parent)
    : QObject(parent), context_(context)
{
    settling_.setSingleShot(true);
    connect(&settling_, &QTimer::timeout, this, &OutlookService::learnNow);
    connect(&context_.workers, &Workers::changed, this, [this] {
        if (begun_) {
            settling_.start(changesSettled);
        }
    });
}

void OutlookService::begin()
{
    begun_ = true;
    settling_.start(learnAfterStart);
}

void OutlookService::learnNow()
{
    settling_.stop();
    if (std::exchange(running_, true)) {
        again_ = true;
        return;
    }
    const Instant now = context_.formats.now();
    const bool isStale = !learnedAt_ || now - *learnedAt_ > outlookStale || now < *learnedAt_;
    context_.workers.study(
        this,
        [now, isStale, before = newest_](ledger::Database& database,
                                         const Job& job) -> Result<Learned> {
            Learned learned;
            SPILE_ASSIGN(newest, cellar::newestRecord(database));
            learned.newest = newest;
            if (newest == before && !isStale) {
                return learned;
            }
            SPILE_ASSIGN(model, outlook::CellarModel::learn(database, now, job));
            SPILE_ASSIGN(outlooks, plan::foreseenOf(database, model, now, job));
            learned.model = std::move(model);
            learned.outlooks = std::move(outlooks);
            return learned;
        },
        [this, now](Result<Learned> learned) {
            running_ = false;
            // What failed is tried again with the next change; the lists go by habit meanwhile.
            if (learned) {
                take(std::move(*learned), now);
            }
            if (std::exchange(again_, false)) {
                learnNow();
            }
        });
}

void OutlookService::take(Learned learned, Instant now)
{
    if (!learned.model) {
        return;
    }
    model_ = std::move(*learned.model);
    newest_ = learned.newest;
    learnedAt_ = now;
    keep(std::move(learned.outlooks), now);
    emit this->learned();
}

void OutlookService::keep(std::vector<cellar::KeptOutlook> outlooks, Instant now)
{
    for (std::size_t from = 0; from < outlooks.size(); from += outlooksAtOnce) {
        const std::size_t to = std::min(outlooks.size(), from + outlooksAtOnce);
        context_.workers.act(
            this,
            [part = std::vector(outlooks.begin() + static_cast<std::ptrdiff_t>(from),
                                outlooks.begin() + static_cast<std::ptrdiff_t>(to))](
                cellar::Cellar& cellar) { return cellar::keepOutlooks(cellar, part); },
            [](const Result<void>&) {});
    }
    context_.workers.act(
        this, [now](cellar::Cellar& cellar) { return cellar::forgetOutlooks(cellar, now); },
        [](const Result<void>&) {});
}

}  // namespace spile::viewmodels

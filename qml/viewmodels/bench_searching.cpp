// The search of the bench and its answers: the second part of bench_view_model.cpp.
#include "core/cellar/acts/benching.hpp"
#include "qml/viewmodels/bench_text.hpp"
#include "qml/viewmodels/bench_view_model.hpp"
#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/notice.hpp"

#include <QElapsedTimer>
#include <algorithm>

namespace spile::viewmodels {

namespace {

constexpr int tellEveryMs = 100;

}  // namespace

void BenchViewModel::refuse(const Error& error)
{
    error_ = error.subject == "barrels" && error.code == ErrorCode::OutOfRange
                 ? tr("No full and sound barrel of a known volume is left for the bench.")
                 : textOf(error);
    stage_ = Asking;
    emit changed();
}

void BenchViewModel::search()
{
    if (!canSearch() || stage_ == Searching) {
        return;
    }
    stage_ = Searching;
    error_.clear();
    best_.clear();
    progress_ = 0;
    search_.reset();
    emit changed();
    emit progressChanged();
    context_.workers.study(
        this,
        [ask = ask(), model = service_.model(), now = context_.formats.now()](
            ledger::Database& database, const Job& job) {
            return plan::benchOf(database, model, ask, now, job);
        },
        [this, asked = ++asked_](Result<plan::Bench> bench) {
            if (asked != asked_) {
                return;
            }
            if (bench) {
                searchOn(std::move(*bench));
            } else {
                refuse(bench.error());
            }
        });
}

void BenchViewModel::searchOn(plan::Bench bench)
{
    bench_ = std::make_shared<const plan::Bench>(std::move(bench));
    auto best = std::make_shared<Best>();
    search_ = context_.workers.aside(
        this,
        [bench = bench_, best](const Job& told) -> Result<Answered> {
            // It tells far more often than a screen can show.
            QElapsedTimer since;
            since.start();
            CancelToken enough;
            const Job job(
                [&](std::uint64_t done, std::uint64_t total) {
                    if (since.hasExpired(tellEveryMs)) {
                        since.restart();
                        if (!told.advance(done, total)) {
                            enough.cancel();
                        }
                    }
                },
                &enough);
            SPILE_ASSIGN(found, plan::blendsOf(*bench, job, [&](const blend::Blend& better) {
                             const std::lock_guard lock(best->mutex);
                             best->blend = better;
                         }));
            SPILE_ASSIGN(answers, plan::answersOf(*bench, found));
            return Answered{std::move(found), std::move(answers)};
        },
        [this, best, asked = asked_](std::uint64_t done, std::uint64_t total) {
            if (asked != asked_) {
                return;
            }
            progress_ = total > 0 ? static_cast<qreal>(done) / static_cast<qreal>(total) : 0;
            const std::lock_guard lock(best->mutex);
            if (best->blend) {
                best_ = BenchText(*bench_, context_.formats).barrels(*best->blend);
            }
            emit progressChanged();
        },
        [this, asked = asked_](Result<Answered> answered) {
            if (asked != asked_) {
                return;
            }
            search_.reset();
            if (answered) {
                take(std::move(*answered));
            } else {
                refuse(answered.error());
            }
        });
}

// Before the barrels are read there is nothing found yet.
void BenchViewModel::stop()
{
    if (search_) {
        search_->cancel();
    } else {
        askAgain();
    }
}

void BenchViewModel::askAgain()
{
    ++asked_;
    if (search_) {
        search_->cancel();
        search_.reset();
    }
    stage_ = Asking;
    emit changed();
}

void BenchViewModel::take(Answered answered)
{
    const BenchText text(*bench_, context_.formats);
    found_ = std::move(answered.answers);
    picked_.assign(found_.size(), false);
    proof_ = text.proof(answered.found);
    leftOut_ = text.leftOut();
    inTheWay_.replace(text.inTheWay(answered.found));
    open_ = found_.empty() ? -1 : 0;
    stage_ = Answers;
    showAnswers();
}

void BenchViewModel::showAnswers()
{
    const BenchText text(*bench_, context_.formats);
    std::vector<BenchItem> items;
    for (std::size_t i = 0; i < found_.size(); ++i) {
        QStringList lines{text.chance(found_[i].blend), text.inShort(found_[i])};
        lines.removeAll({});
        items.push_back(
            {QString::number(i), text.barrels(found_[i].blend), lines.join(u'\n'), {}, picked_[i]});
    }
    answers_.replace(std::move(items));
    const plan::BenchAnswer* open = opened();
    costs_.replace(open == nullptr ? std::vector<BenchItem>() : text.costs(*open));
    levels_.replace(open == nullptr ? std::vector<BenchItem>() : text.levels(*open));
    emit changed();
}

const plan::BenchAnswer* BenchViewModel::opened() const
{
    return open_ < 0 ? nullptr : &found_[static_cast<std::size_t>(open_)];
}

void BenchViewModel::showAnswer(int index)
{
    if (index >= 0 && index < static_cast<int>(found_.size())) {
        open_ = index;
        showAnswers();
    }
}

QString BenchViewModel::openTitle() const
{
    const plan::BenchAnswer* open = opened();
    return open == nullptr ? QString() : BenchText(*bench_, context_.formats).barrels(open->blend);
}

QString BenchViewModel::openChance() const
{
    const plan::BenchAnswer* open = opened();
    return open == nullptr ? QString() : BenchText(*bench_, context_.formats).chance(open->blend);
}

int BenchViewModel::pickedCount() const
{
    return static_cast<int>(std::count(picked_.begin(), picked_.end(), true));
}

bool BenchViewModel::isOpenPicked() const
{
    return open_ >= 0 && picked_[static_cast<std::size_t>(open_)];
}

bool BenchViewModel::canPick() const
{
    return open_ >= 0 && (isOpenPicked() || pickedCount() < cellar::benchGlassesMost);
}

bool BenchViewModel::canPour() const { return pickedCount() >= cellar::benchGlassesLeast; }

QString BenchViewModel::pickedText() const
{
    return canPour() ? tr("Mix %n glass(es)", "", pickedCount()) : tr("Mark two to four to mix");
}

void BenchViewModel::pick()
{
    if (canPick()) {
        picked_[static_cast<std::size_t>(open_)] = !isOpenPicked();
        showAnswers();
    }
}

void BenchViewModel::pour()
{
    if (!canPour()) {
        return;
    }
    cellar::NewBench bench;
    if (target_ >= 0) {
        const cellar::NamedRow& target = targets_[static_cast<std::size_t>(target_)];
        bench.target = target.subject;
        bench.name = target.name;
    }
    for (std::size_t i = 0; i < found_.size(); ++i) {
        if (!picked_[i]) {
            continue;
        }
        std::vector<cellar::BenchPart>& glass = bench.glasses.emplace_back();
        for (const blend::Share& share : found_[i].blend.shares) {
            glass.push_back(
                {bench_->barrels[share.barrel].row.barrel, Volume::fromSi(share.amount)});
        }
    }
    bench.circumstance.person = people_.who();
    picked_.assign(found_.size(), false);  // a second tap mixes nothing
    showAnswers();
    context_.workers.act(
        this, [bench](cellar::Cellar& cellar) { return cellar::recordBench(cellar, bench); },
        [this](Result<SubjectId> recorded) {
            if (recorded) {
                emit wanted(*recorded);
            } else {
                context_.notice.refuse(textOf(recorded.error()));
            }
        });
}

}  // namespace spile::viewmodels

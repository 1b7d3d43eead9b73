// What the bench is asked for; the search and its answers are in bench_searching.cpp.
#include "qml/viewmodels/bench_view_model.hpp"

#include "core/cellar/searching.hpp"
#include "core/cellar/vocabulary.hpp"
#include "qml/viewmodels/barrel_rows.hpp"
#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/names.hpp"
#include "qml/viewmodels/notice.hpp"

#include <algorithm>
#include <cmath>

namespace spile::viewmodels {

namespace {

constexpr int benchesPage = 5;
constexpr int barrelsOffered = 100;  // to be kept back
constexpr int bigStep = 10;          // small ones
constexpr double strengthStep = 0.001;
constexpr double strengthEnd = 0.25;
// Where limits begin: common practice, no source.
constexpr std::array<double, BenchViewModel::LimitCount> begins = {0.5, 0.2, 0.10, 0.12};

bool isVolume(int limit) { return limit < BenchViewModel::StrengthLeast; }

}  // namespace

BenchViewModel::BenchViewModel(Context& context, PeopleViewModel& people, OutlookService& service,
                               QObject* parent)
    : QObject(parent), context_(context), people_(people), service_(service)
{
}

void BenchViewModel::open(const std::optional<SubjectId>& barrel)
{
    ++asked_;
    if (search_) {
        search_->cancel();
    }
    stage_ = Asking;
    loaded_ = false;
    error_.clear();
    target_ = -1;
    kept_.clear();
    windows_.clear();
    benchesWanted_ = benchesPage;
    emit changed();
    readBenches();
    struct Found {
        std::vector<cellar::NamedRow> targets;
        std::vector<cellar::BarrelRow> full;
        std::vector<cellar::Window> windows;
        std::vector<std::string> attributes;
    };
    context_.workers.look(
        this,
        [barrel, now = context_.formats.now()](ledger::Database& database) -> Result<Found> {
            Found found;
            SPILE_ASSIGN(targets, cellar::named(database, "target", {}, namesMost));
            SPILE_ASSIGN(full, cellar::searchBarrels(database, {{}, cellar::Which::Full, now}, {},
                                                     barrelsOffered));
            if (barrel) {
                SPILE_ASSIGN(windows, cellar::windowsOfBarrel(database, *barrel));
                SPILE_ASSIGN(attributes, cellar::attributesOf(database, *barrel));
                found.windows = std::move(windows);
                found.attributes = std::move(attributes);
            } else {
                const auto usual = cellar::usualAttributes();
                found.attributes.assign(usual.begin(), usual.end());
            }
            found.targets = std::move(targets);
            found.full = std::move(full.rows);
            return found;
        },
        [this, asked = asked_](Result<Found> found) {
            if (asked != asked_) {
                return;
            }
            if (!found) {
                refuse(found.error());
                return;
            }
            targets_ = std::move(found->targets);
            full_ = std::move(found->full);
            windows_.begin(std::move(found->windows), found->attributes);
            loaded_ = true;
            emit changed();
        });
}

void BenchViewModel::readBenches()
{
    context_.workers.look(
        this,
        [wanted = benchesWanted_](ledger::Database& database) {
            return cellar::benches(database, {}, wanted + 1);
        },
        [this](Result<std::vector<cellar::BenchRow>> rows) {
            if (!rows) {
                return;
            }
            more_ = static_cast<int>(rows->size()) > benchesWanted_;
            std::vector<BenchItem> items;
            for (const cellar::BenchRow& row : *rows) {
                if (static_cast<int>(items.size()) == benchesWanted_) {
                    break;
                }
                items.push_back(
                    {textOf(row.bench),
                     row.name.empty() ? tr("Bench") : QString::fromStdString(row.name),
                     row.accepted ? tr("a glass is accepted") : tr("%n glass(es)", "", row.glasses),
                     context_.formats.dateAndTime(row.at), row.accepted});
            }
            benches_.replace(std::move(items));
            emit changed();
        });
}

void BenchViewModel::showMoreBenches()
{
    benchesWanted_ += benchesPage;
    readBenches();
}

void BenchViewModel::openBench(int index)
{
    if (const BenchItem* item = benches_.rowAt(index)) {
        emit wanted(idOf<SubjectId>(item->id));
    }
}

QList<QString> BenchViewModel::targets() const { return namesOf(targets_); }

void BenchViewModel::chooseTarget(int index)
{
    if (index < 0 || index >= static_cast<int>(targets_.size())) {
        return;
    }
    target_ = index;
    emit changed();
    const SubjectId target = targets_[static_cast<std::size_t>(index)].subject;
    context_.workers.look(
        this,
        [target](ledger::Database& database) { return cellar::windowsOfTarget(database, target); },
        [this, index, asked = asked_](Result<std::vector<cellar::Window>> windows) {
            if (windows && asked == asked_ && index == target_) {
                const auto usual = cellar::usualAttributes();
                windows_.begin(std::move(*windows), {usual.begin(), usual.end()});
                emit changed();
            }
        });
}

void BenchViewModel::stepLow(int index, int by) { windows_.stepLow(index, by); }
void BenchViewModel::stepHigh(int index, int by) { windows_.stepHigh(index, by); }

void BenchViewModel::toggleWindow(int index)
{
    windows_.toggle(index);
    emit changed();
}

QString BenchViewModel::barrelsMost() const { return context_.formats.locale.toString(most_); }

void BenchViewModel::stepBarrels(int count)
{
    most_ = std::clamp(most_ + count, 1, static_cast<int>(blend::barrelsAtMost));
    emit changed();
}

void BenchViewModel::togglePart()
{
    part_ = !part_;
    emit changed();
}

double BenchViewModel::stepOf(int limit) const
{
    const bool us = context_.formats.units == Formats::Units::Us;
    return !isVolume(limit) ? strengthStep : (us ? usGallons(1) : litres(10)).si();
}

void BenchViewModel::stepLimit(int limit, int count)
{
    if (limit < 0 || limit >= LimitCount) {
        return;
    }
    std::optional<double>& value = limits_.at(static_cast<std::size_t>(limit));
    const double step = stepOf(limit);
    if (!value) {
        value = begins.at(static_cast<std::size_t>(limit));
    } else {
        value = (std::round(*value / step) + count) * step;
    }
    constexpr double largestTank = 100;  // m3
    value = std::clamp(*value, step, isVolume(limit) ? largestTank : strengthEnd);
    emit changed();
}

void BenchViewModel::clearLimits()
{
    limits_ = {};
    emit changed();
}

QList<QString> BenchViewModel::limits() const
{
    QList<QString> texts;
    for (int limit = 0; limit < LimitCount; ++limit) {
        const auto& value = limits_.at(static_cast<std::size_t>(limit));
        texts << (!value            ? QString()
                  : isVolume(limit) ? context_.formats.volume(Volume::fromSi(*value))
                                    : context_.formats.strength(*value));
    }
    return texts;
}

QList<QString> BenchViewModel::smallSteps() const
{
    QList<QString> texts;
    for (int limit = 0; limit < LimitCount; ++limit) {
        texts << (isVolume(limit) ? context_.formats.volume(Volume::fromSi(stepOf(limit)))
                                  : context_.formats.strength(stepOf(limit)));
    }
    return texts;
}

QList<QString> BenchViewModel::bigSteps() const
{
    QList<QString> texts;
    for (int limit = 0; limit < LimitCount; ++limit) {
        const double step = bigStep * stepOf(limit);
        texts << (isVolume(limit) ? context_.formats.volume(Volume::fromSi(step))
                                  : context_.formats.strength(step));
    }
    return texts;
}

QList<QString> BenchViewModel::barrels() const
{
    QList<QString> names;
    for (const cellar::BarrelRow& row : full_) {
        names << nameOf(row);
    }
    return names;
}

QList<bool> BenchViewModel::kept() const
{
    QList<bool> kept;
    for (const cellar::BarrelRow& row : full_) {
        kept << kept_.contains(row.barrel);
    }
    return kept;
}

void BenchViewModel::toggleKept(int index)
{
    if (index >= 0 && index < static_cast<int>(full_.size())) {
        const SubjectId& barrel = full_[static_cast<std::size_t>(index)].barrel;
        if (kept_.erase(barrel) == 0) {
            kept_.insert(barrel);
        }
        emit changed();
    }
}

plan::BenchAsk BenchViewModel::ask() const
{
    plan::BenchAsk ask;
    for (const cellar::Window& window : windows_.given()) {
        ask.wishes.push_back({window.attribute, window.low, window.high});
    }
    ask.keptBack = kept_;
    ask.barrelsMost = static_cast<std::size_t>(most_);
    ask.partsMost = part_ ? 1 : 0;
    const auto volume = [&](Limit limit) {
        const auto& value = limits_.at(limit);
        return value ? std::optional(Volume::fromSi(*value)) : std::nullopt;
    };
    ask.most = volume(Tank);
    ask.least = volume(Least).value_or(Volume());
    ask.strengthLeast = limits_.at(StrengthLeast);
    ask.strengthMost = limits_.at(StrengthMost);
    return ask;
}

std::vector<std::string> BenchViewModel::attributes() const
{
    std::vector<std::string> attributes;
    for (const cellar::Window& window : windows_.given()) {
        attributes.push_back(window.attribute);
    }
    return attributes;
}

}  // namespace spile::viewmodels

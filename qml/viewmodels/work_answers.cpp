// What is filled in at the steps of a work sheet: the third part of work_view_model.cpp.
#include "core/plan/asks.hpp"
#include "qml/viewmodels/settings.hpp"
#include "qml/viewmodels/work_view_model.hpp"

#include <algorithm>
#include <cmath>

namespace spile::viewmodels {

// What is the same every time, such as the hose, is filled in as it was last.
void WorkViewModel::offerRemembered()
{
    if (step_ == nullptr || !isBegun()) {
        return;
    }
    std::vector<std::pair<std::string, cellar::WorkValue>> offered;
    for (const std::string& name : plan::shownNames(step_->asks, work_.values)) {
        const plan::AskSpec* ask = plan::findAsk(name);
        if (ask == nullptr || !ask->remembered || work_.values.contains(name)) {
            continue;
        }
        const auto last = context_.settings.lastAnswer(QString::fromStdString(name));
        if (ask->kind == plan::AskKind::Number) {
            const std::int64_t number =
                last.canConvert<qlonglong>() ? last.toLongLong() : ask->usual;
            if (plan::checkAsk(name, number)) {
                offered.push_back({name, {number, {}}});
            }
        } else if (!last.toString().isEmpty()) {
            offered.push_back({name, {{}, last.toString().toStdString()}});
        }
    }
    if (!offered.empty()) {
        perform([offered = std::move(offered)](cellar::Cellar& cellar,
                                               const SubjectId& run) -> Result<void> {
            for (const auto& [name, value] : offered) {
                SPILE_TRY(cellar::keepValue(cellar, run, name, value));
            }
            return {};
        });
    }
}

void WorkViewModel::keep(const std::string& ask, const std::optional<cellar::WorkValue>& value)
{
    perform([=](cellar::Cellar& cellar, const SubjectId& run) {
        return cellar::keepValue(cellar, run, ask, value);
    });
}

void WorkViewModel::tick(int index)
{
    if (step_ == nullptr || index < 0 || index >= static_cast<int>(step_->ticks.size())) {
        return;
    }
    const std::string& name = step_->ticks[static_cast<std::size_t>(index)].name;
    keep(name,
         work_.values.contains(name) ? std::nullopt : std::optional(cellar::WorkValue{1, {}}));
}

void WorkViewModel::stepAsk(const QString& askName, int count)
{
    const std::string name = askName.toStdString();
    const plan::AskSpec* ask = plan::findAsk(name);
    if (ask == nullptr || ask->kind != plan::AskKind::Number) {
        return;
    }
    const bool us = context_.formats.units == Formats::Units::Us;
    const plan::Scale& scale = us ? ask->us : ask->metric;
    const auto known = work_.values.find(name);
    std::int64_t number = plan::expectedOf(name, facts_).value_or(ask->usual);
    if (known != work_.values.end() && known->second.number) {
        const double steps =
            std::round(plan::shown(*known->second.number, scale) / scale.step) + count;
        number = plan::stored(steps * scale.step, scale);
    }
    number = std::clamp(number, ask->least, ask->most);
    if (ask->remembered) {
        context_.settings.setLastAnswer(askName, QVariant::fromValue<qlonglong>(number));
    }
    keep(name, cellar::WorkValue{number, {}});
}

void WorkViewModel::chooseWord(const QString& askName, int index)
{
    const std::string name = askName.toStdString();
    const plan::AskSpec* ask = plan::findAsk(name);
    if (ask == nullptr || index < 0) {
        return;
    }
    const auto at = static_cast<std::size_t>(index);
    std::string chosen;
    if (ask->kind == plan::AskKind::Words && at < ask->words.size()) {
        chosen = ask->words[at];
    } else if (const auto names = namesFor(*ask); at < names.size()) {
        chosen = names[at];
    }
    const auto known = work_.values.find(name);
    const bool again = known != work_.values.end() && known->second.text == chosen;
    if (ask->remembered) {
        context_.settings.setLastAnswer(askName, QString::fromStdString(chosen));
    }
    keep(name,
         again || chosen.empty() ? std::nullopt : std::optional(cellar::WorkValue{{}, chosen}));
}

std::vector<std::string> WorkViewModel::namesFor(const plan::AskSpec& ask) const
{
    std::vector<std::string> names;
    if (ask.kind == plan::AskKind::Batch) {
        for (const cellar::NamedRow& beer : beers_) {
            names.push_back(beer.name);
        }
    } else if (ask.kind == plan::AskKind::Lot) {
        for (const cellar::LotRow& lot : lots_) {
            names.push_back(lot.name);
        }
    } else if (ask.kind == plan::AskKind::Code && facts_.lot) {
        names.push_back(facts_.lot->freeCode);
    }
    return names;
}

void WorkViewModel::typeWord(const QString& askName, const QString& text)
{
    typed_[askName.toStdString()] = text;  // shown as it stands until all of it is kept
    perform([](cellar::Cellar&, const SubjectId&) { return Result<void>(); });
}

}  // namespace spile::viewmodels

// What the page of a work sheet says: the second part of work_view_model.cpp.
#include "core/plan/asks.hpp"
#include "core/scan/barrel_code.hpp"
#include "qml/viewmodels/barrel_rows.hpp"
#include "qml/viewmodels/names.hpp"
#include "qml/viewmodels/number_text.hpp"
#include "qml/viewmodels/words.hpp"
#include "qml/viewmodels/work_view_model.hpp"

#include <algorithm>

namespace spile::viewmodels {

QString WorkViewModel::title() const
{
    return sheet_ == nullptr ? QString() : WorkSheets::said(sheet_->title);
}

QString WorkViewModel::barrelName() const
{
    return isOnLot() ? QString::fromStdString(facts_.lot->row.name) : nameOf(facts_.barrel);
}

bool WorkViewModel::isAtFirst() const
{
    return step_ != nullptr && plan::placeOf(*sheet_, work_.step, work_.values).step == 1;
}

QString WorkViewModel::where() const
{
    if (step_ == nullptr) {
        return {};
    }
    const plan::Place place = plan::placeOf(*sheet_, work_.step, work_.values);
    return tr("%1 · step %2 of %3", "Rum 3, ...")
        .arg(barrelName())
        .arg(place.step)
        .arg(place.steps);
}

QString WorkViewModel::stepName() const { return QString::fromStdString(work_.step); }

bool WorkViewModel::leadsToTasting() const
{
    return sheet_ != nullptr && !work_.run.isZero() &&
           std::any_of(sheet_->steps.begin(), sheet_->steps.end(), plan::tastes);
}

QString WorkViewModel::cautions() const
{
    QStringList said;
    if (step_ != nullptr) {
        for (const std::string& name : step_->cautions) {
            said << filled(sheets_.caution(name).toStdString());
        }
    }
    return said.join(QStringLiteral("\n\n"));
}

// The numbers of this barrel stand where the words name them.
QString WorkViewModel::filled(const std::string& words) const
{
    QString text = QString::fromStdString(words);
    for (const std::string& name : plan::namesIn(words)) {
        text.replace(QStringLiteral("{%1}").arg(QString::fromStdString(name)),
                     said(numberOf(name)));
    }
    return text;
}

// They were computed with the rest of what was seen, not here on the UI thread.
plan::SheetNumber WorkViewModel::numberOf(const std::string& name) const
{
    const auto found = numbers_.find(name);
    return found == numbers_.end() ? plan::SheetNumber{plan::Form::None, 0, {}, {}, name}
                                   : found->second;
}

QString WorkViewModel::said(const plan::SheetNumber& number) const
{
    return viewmodels::textOf(number, context_.formats,
                              [this](const std::string& name) { return sheets_.label(name); });
}

QString WorkViewModel::say() const
{
    return step_ == nullptr ? QString() : filled(WorkSheets::said(step_->say).toStdString());
}

QString WorkViewModel::hint() const
{
    return step_ == nullptr || step_->hint.empty()
               ? QString()
               : filled(WorkSheets::said(step_->hint).toStdString());
}

QStringList WorkViewModel::ticks() const
{
    QStringList said;
    if (step_ != nullptr) {
        for (const plan::Tick& tick : step_->ticks) {
            said << WorkSheets::said(tick.words);
        }
    }
    return said;
}

QList<bool> WorkViewModel::ticked() const
{
    QList<bool> all;
    if (step_ != nullptr) {
        for (const plan::Tick& tick : step_->ticks) {
            all << work_.values.contains(tick.name);
        }
    }
    return all;
}

QString WorkViewModel::beginText() const
{
    if (const auto planned = plannedTime()) {
        const plan::SheetNumber time{plan::Form::Duration,
                                     std::chrono::duration<double>(*planned).count()};
        return tr("Begin: %1", "a time").arg(said(time));
    }
    return tr("Begin");
}

// What forbids the step: a pressure that is too high, a lot that is held.
QString WorkViewModel::refusal() const
{
    if (step_ == nullptr) {
        return {};
    }
    for (const std::string& name : plan::shownNames(step_->facts, work_.values)) {
        if (const plan::SheetNumber number = numberOf(name); number.refuses) {
            return tr("Not like this. %1: %2", "what stands in the way, its value")
                .arg(sheets_.label(name), said(number));
        }
    }
    return {};
}

QString WorkViewModel::beginMissing() const
{
    if (const QString refused = refusal(); !refused.isEmpty()) {
        // What is filled in at the step can still change it.
        return step_->asks.empty() ? refused : QString();
    }
    if (step_ == nullptr || !step_->timer || step_->timer->number.empty()) {
        return {};
    }
    const plan::SheetNumber number = numberOf(step_->timer->number);
    return number.form == plan::Form::Duration ? QString() : said(number);
}

QString WorkViewModel::pausedText() const
{
    return work_.timer && work_.timer->pausedLeft ? Deadline::written(*work_.timer->pausedLeft)
                                                  : QString();
}

QString WorkViewModel::timerCaption() const
{
    if (!pausedText().isEmpty()) {
        return tr("Paused");
    }
    return timer_.isOver() ? tr("Time is up") : QString();
}

bool WorkViewModel::isRipe() const
{
    return missing().isEmpty() && (!isTimed() || (timer_.isRunning() && timer_.isOver()));
}

QString WorkViewModel::missing() const
{
    if (step_ == nullptr || !isBegun()) {
        return {};
    }
    const std::string name = plan::missingOf(*step_, work_.values);
    const auto tick = std::find_if(step_->ticks.begin(), step_->ticks.end(),
                                   [&](const plan::Tick& one) { return one.name == name; });
    if (name.empty()) {
        return refusal();
    }
    return tick != step_->ticks.end() ? tr("Tick all off, or skip the step")
                                      : tr("Still open: %1").arg(sheets_.label(name));
}

bool WorkViewModel::canFinish() const
{
    return step_ != nullptr && !ending_ && isBegun() && !work_.stopped && missing().isEmpty();
}

QString WorkViewModel::finishText() const
{
    if (isTasting()) {
        return tr("Taste now");
    }
    const bool last =
        sheet_ != nullptr && plan::stepAfter(*sheet_, work_.step, work_.values) == nullptr;
    if (isTimed() && !isRipe()) {
        return last ? tr("Done early") : tr("Done early, next step");
    }
    return last ? tr("Done") : tr("Done, next step");
}

QString WorkViewModel::closeText() const
{
    return step_ == nullptr || step_->close.empty() || !isBegun() ? QString()
                                                                  : WorkSheets::said(step_->close);
}

QStringList WorkViewModel::skipReasons() { return padWords(plan::skipReasons()); }

AskLine WorkViewModel::lineOf(const std::string& name) const
{
    AskLine line;
    line.name = QString::fromStdString(name);
    line.label = sheets_.label(name);
    const plan::AskSpec* ask = plan::findAsk(name);
    if (ask == nullptr) {
        return line;
    }
    line.kind = static_cast<int>(ask->kind);
    const auto found = work_.values.find(name);
    const cellar::WorkValue value =
        found == work_.values.end() ? cellar::WorkValue() : found->second;
    if (ask->kind == plan::AskKind::Number) {
        const bool us = context_.formats.units == Formats::Units::Us;
        const plan::Scale& scale = us ? ask->us : ask->metric;
        const auto written = [&](double shown) {
            return context_.formats.locale.toString(shown, 'f', scale.decimals);
        };
        line.unit = word(scale.unit);
        line.smallStep = written(scale.step);
        line.bigStep = written(10 * scale.step);
        line.empty = !value.number;
        if (value.number) {
            line.readout = written(plan::shown(*value.number, scale));
            line.canLess = *value.number > ask->least;
            line.canMore = *value.number < ask->most;
            if (plan::isUnusual(name, *value.number, facts_)) {
                line.note = tr("Looks unusual for this barrel. Keep it, or change it.");
            }
        }
    } else if (ask->kind == plan::AskKind::Words) {
        const auto chosen = std::find(ask->words.begin(), ask->words.end(), value.text);
        line.words = padWords(std::vector(ask->words.begin(), ask->words.end()));
        line.choice = value.text.empty() || chosen == ask->words.end()
                          ? -1
                          : static_cast<int>(chosen - ask->words.begin());
    } else {
        offerNames(line, *ask);
    }
    if (ask->optional && line.note.isEmpty()) {
        line.note = tr("May be left out");
    }
    return line;
}

// Beers, lots or codes: those that are known, and a field for another.
void WorkViewModel::offerNames(AskLine& line, const plan::AskSpec& ask) const
{
    const std::string name(ask.name);
    const auto value = work_.values.find(name);
    const std::string kept = value == work_.values.end() ? std::string() : value->second.text;
    const auto names = namesFor(ask);
    const auto chosen = std::find(names.begin(), names.end(), kept);
    line.kind = AskRows::Named;
    for (const std::string& one : names) {
        line.words << QString::fromStdString(one);
    }
    line.choice = chosen == names.end() ? -1 : static_cast<int>(chosen - names.begin());
    const auto typed = typed_.find(name);
    line.text = typed != typed_.end() ? typed->second
                : line.choice < 0     ? QString::fromStdString(kept)
                                      : QString();
    if (ask.kind == plan::AskKind::Batch) {
        line.entry = names.empty() ? tr("The beer") : tr("Another beer");
    } else if (ask.kind == plan::AskKind::Lot) {
        line.entry = names.empty() ? tr("The lot") : tr("Another lot");
    } else {
        line.entry = tr("Another code");
    }
}

void WorkViewModel::showRows()
{
    std::vector<AskLine> asks;
    std::vector<FactLine> facts;
    if (step_ != nullptr) {
        for (const std::string& name : plan::shownNames(step_->asks, work_.values)) {
            asks.push_back(lineOf(name));
        }
        for (const std::string& name : plan::shownNames(step_->facts, work_.values)) {
            const plan::SheetNumber number = numberOf(name);
            facts.push_back(
                {QString::fromStdString(name), sheets_.label(name), said(number), number.caution});
        }
    }
    asks_.replace(std::move(asks));
    factRows_.replace(std::move(facts));
}

}  // namespace spile::viewmodels

#include "qml/viewmodels/work_view_model.hpp"

#include "core/plan/asks.hpp"
#include "qml/viewmodels/barrel_rows.hpp"
#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/names.hpp"
#include "qml/viewmodels/notice.hpp"
#include "qml/viewmodels/settings.hpp"

#include <algorithm>
#include <cmath>

namespace spile::viewmodels {

namespace {

// Kept beside what is filled in: that a step was begun.
std::string begunName(const plan::Step& step) { return "begun_" + step.name; }

}  // namespace

WorkViewModel::WorkViewModel(Context& context, PeopleViewModel& people, const WorkSheets& sheets,
                             QObject* parent)
    : QObject(parent),
      context_(context),
      people_(people),
      sheets_(sheets),
      timer_(context.outside.clock)
{
    connect(&timer_, &Deadline::reached, this, &WorkViewModel::changed);
    connect(&context_.workers, &Workers::changed, this, &WorkViewModel::refresh);
}

// Also what others have recorded of the barrel meanwhile.
Result<WorkViewModel::Seen> WorkViewModel::see(cellar::Cellar& cellar, const SubjectId& run)
{
    SPILE_ASSIGN(work, cellar::readWork(cellar, run));
    SPILE_ASSIGN(facts,
                 plan::readFacts(cellar.database(), work.barrel, cellar.outside().clock.now()));
    SPILE_ASSIGN(beers, cellar::named(cellar.database(), "batch", {}, namesMost));
    facts.values = work.values;
    return Seen{std::move(work), std::move(facts), std::move(beers)};
}

void WorkViewModel::begin(const std::string& sheet, const cellar::BarrelRow& barrel)
{
    const plan::Sheet* wanted = sheets_.find(sheet);
    const plan::Step* first = wanted == nullptr ? nullptr : plan::firstStep(*wanted, {});
    if (first == nullptr || !people_.who()) {
        return;
    }
    context_.workers.act(
        this,
        [=, barrel = barrel.barrel, person = *people_.who(),
         step = first->name](cellar::Cellar& cellar) -> Result<Seen> {
            SPILE_ASSIGN(open, cellar::openWork(cellar));
            const auto same = std::find_if(open.begin(), open.end(), [&](const auto& work) {
                return work.barrel == barrel && work.sheet == sheet;
            });
            if (same != open.end()) {
                SPILE_TRY(cellar::goOnWithWork(cellar, same->run));
                return see(cellar, same->run);
            }
            SPILE_ASSIGN(run, cellar::beginWork(cellar, sheet, step, barrel, person));
            return see(cellar, run);
        },
        [this](Result<Seen> seen) {
            const bool open = seen.has_value();
            take(std::move(seen));
            if (open) {
                emit opened();
            }
        });
}

void WorkViewModel::resume(const SubjectId& run)
{
    context_.workers.act(
        this,
        [run](cellar::Cellar& cellar) -> Result<Seen> {
            SPILE_TRY(cellar::goOnWithWork(cellar, run));
            return see(cellar, run);
        },
        [this](Result<Seen> seen) {
            const bool open = seen.has_value();
            take(std::move(seen));
            if (open) {
                emit opened();
            }
        });
}

void WorkViewModel::perform(Act act)
{
    if (busy_ || work_.run.isZero()) {
        return;
    }
    busy_ = true;
    error_.clear();
    context_.workers.act(
        this,
        [act = std::move(act), run = work_.run](cellar::Cellar& cellar) -> Result<Seen> {
            SPILE_TRY(act(cellar, run));
            return see(cellar, run);
        },
        [this](Result<Seen> seen) { take(std::move(seen)); });
}

void WorkViewModel::take(Result<Seen> seen)
{
    busy_ = false;
    if (!seen) {
        error_ = textOf(seen.error());
        emit changed();
        return;
    }
    error_.clear();
    const bool otherStep = seen->work.run != work_.run || seen->work.step != work_.step;
    const bool otherTimer = otherStep || seen->work.timer != work_.timer;
    work_ = std::move(seen->work);
    facts_ = std::move(seen->facts);
    beers_ = std::move(seen->beers);
    sheet_ = sheets_.find(work_.sheet);
    step_ = sheet_ == nullptr ? nullptr : plan::findStep(*sheet_, work_.step);
    if (otherTimer) {
        resumeTimer();
    }
    showRows();
    emit changed();
    if (otherStep) {
        offerRemembered();
    }
}

void WorkViewModel::refresh()
{
    if (work_.run.isZero() || busy_) {
        return;
    }
    context_.workers.read(
        this, [run = work_.run](cellar::Cellar& cellar) { return see(cellar, run); },
        [this, run = work_.run](Result<Seen> seen) {
            if (seen && run == work_.run && !busy_) {
                take(std::move(seen));
            }
        });
}

void WorkViewModel::resumeTimer()
{
    timer_.stop();
    if (work_.timer && !work_.timer->pausedLeft) {
        timer_.resume(work_.timer->wallEnd, work_.timer->bootEnd, work_.timer->bootId);
    }
}

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

bool WorkViewModel::needsBegin() const
{
    return step_ != nullptr && (!step_->cautions.empty() || step_->hold || step_->timer);
}

bool WorkViewModel::isBegun() const
{
    return !needsBegin() || work_.values.contains(begunName(*step_));
}

std::optional<Milliseconds> WorkViewModel::plannedTime() const
{
    constexpr double msPerSecond = 1e3;
    constexpr double msPerMinute = 6e4;
    if (!isTimed()) {
        return std::nullopt;
    }
    if (step_->timer->number.empty()) {
        return Milliseconds(std::llround(step_->timer->minutes * msPerMinute));
    }
    const plan::SheetNumber number = plan::numberOf(step_->timer->number, facts_);
    return number.form == plan::Form::Duration
               ? std::optional(Milliseconds(std::llround(number.value * msPerSecond)))
               : std::nullopt;
}

void WorkViewModel::beginStep()
{
    if (isBegun() || !beginMissing().isEmpty()) {
        return;
    }
    perform([name = begunName(*step_), planned = plannedTime()](
                cellar::Cellar& cellar, const SubjectId& run) -> Result<void> {
        if (planned) {
            SPILE_TRY(cellar::startTimer(cellar, run, *planned));
        }
        return cellar::keepValue(cellar, run, name, cellar::WorkValue{1, {}});
    });
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
    } else if (ask->kind == plan::AskKind::Batch && at < beers_.size()) {
        chosen = beers_[at].name;
    }
    const auto known = work_.values.find(name);
    const bool again = known != work_.values.end() && known->second.text == chosen;
    if (ask->remembered) {
        context_.settings.setLastAnswer(askName, QString::fromStdString(chosen));
    }
    keep(name,
         again || chosen.empty() ? std::nullopt : std::optional(cellar::WorkValue{{}, chosen}));
}

void WorkViewModel::typeWord(const QString& askName, const QString& text)
{
    const QString typed = text.trimmed();
    keep(askName.toStdString(), typed.isEmpty()
                                    ? std::nullopt
                                    : std::optional(cellar::WorkValue{{}, typed.toStdString()}));
}

void WorkViewModel::finish()
{
    if (!canFinish()) {
        return;
    }
    if (isTasting()) {
        emit tastingWanted();
        return;
    }
    endStep(isRipe() ? cellar::outcome::done : cellar::outcome::early, {});
}

void WorkViewModel::tasted(const SubjectId& barrel)
{
    if (isTasting() && work_.barrel == barrel) {
        endStep(cellar::outcome::done, {});
    }
}

void WorkViewModel::endStep(const std::string& outcome, const std::string& reason)
{
    if (busy_ || sheet_ == nullptr) {
        return;
    }
    struct Ended {
        plan::Finished finished;
        std::optional<Seen> seen;
    };
    busy_ = true;
    context_.workers.act(
        this,
        [sheet = *sheet_, run = work_.run, finish = plan::Finish{outcome, reason, people_.who()}](
            cellar::Cellar& cellar) -> Result<Ended> {
            SPILE_ASSIGN(finished, plan::finishStep(cellar, sheet, run, finish));
            if (finished.nextStep.empty()) {
                return Ended{finished, {}};
            }
            SPILE_ASSIGN(seen, see(cellar, run));
            return Ended{finished, std::move(seen)};
        },
        [this](Result<Ended> ended) {
            busy_ = false;
            if (!ended) {
                error_ = textOf(ended.error());
                emit changed();
            } else if (ended->seen) {
                take(std::move(*ended->seen));
            } else {
                work_ = {};
                timer_.stop();
                emit this->ended(true);
            }
        });
}

void WorkViewModel::skip(int reason)
{
    const auto reasons = plan::skipReasons();
    if (reason >= 0 && reason < static_cast<int>(reasons.size())) {
        endStep(cellar::outcome::skipped, std::string(reasons[static_cast<std::size_t>(reason)]));
    }
}

void WorkViewModel::stop()
{
    perform([pauses = holdsToBegin()](cellar::Cellar& cellar, const SubjectId& run) {
        return cellar::stopWork(cellar, run, pauses);
    });
}

void WorkViewModel::goOn()
{
    perform([](cellar::Cellar& cellar, const SubjectId& run) {
        return cellar::goOnWithWork(cellar, run);
    });
}

void WorkViewModel::giveUp()
{
    if (busy_) {
        return;
    }
    busy_ = true;
    context_.workers.act(
        this, [run = work_.run](cellar::Cellar& cellar) { return cellar::giveUpWork(cellar, run); },
        [this](Result<void> given) {
            busy_ = false;
            if (!given) {
                error_ = textOf(given.error());
                emit changed();
                return;
            }
            work_ = {};
            timer_.stop();
            emit ended(false);
        });
}

}  // namespace spile::viewmodels

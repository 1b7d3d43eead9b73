#include "qml/viewmodels/work_view_model.hpp"

#include "qml/viewmodels/barrel_rows.hpp"
#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/names.hpp"
#include "qml/viewmodels/notice.hpp"

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
Result<WorkViewModel::Seen> WorkViewModel::see(cellar::Cellar& cellar, const SubjectId& run,
                                               const WorkSheets& sheets)
{
    SPILE_ASSIGN(work, cellar::readWork(cellar, run));
    SPILE_ASSIGN(facts,
                 plan::readFacts(cellar.database(), work.barrel, cellar.outside().clock.now()));
    SPILE_ASSIGN(beers, cellar::named(cellar.database(), "batch", {}, namesMost));
    SPILE_ASSIGN(lots, cellar::lots(cellar.database(), {}, namesMost));
    facts.values = work.values;
    Seen seen{std::move(work), std::move(facts), std::move(beers), std::move(lots), {}};
    const plan::Sheet* sheet = sheets.find(seen.work.sheet);
    const plan::Step* step = sheet == nullptr ? nullptr : plan::findStep(*sheet, seen.work.step);
    if (step != nullptr) {
        for (const std::string& name :
             plan::numbersOf(*step, seen.work.values, sheets.cautionsOf(*step))) {
            seen.numbers[name] = plan::numberOf(name, seen.facts);
        }
    }
    return seen;
}

void WorkViewModel::begin(const std::string& sheet, const SubjectId& subject,
                          const QString& intoLot)
{
    const plan::Sheet* wanted = sheets_.find(sheet);
    const plan::Step* first = wanted == nullptr ? nullptr : plan::firstStep(*wanted, {});
    if (first == nullptr || !people_.who()) {
        return;
    }
    context_.workers.act(
        this,
        [=, &sheets = sheets_, person = *people_.who(), step = first->name,
         lot = intoLot.toStdString()](cellar::Cellar& cellar) -> Result<Seen> {
            SPILE_ASSIGN(open, cellar::openWork(cellar));
            const auto same = std::find_if(open.begin(), open.end(), [&](const auto& work) {
                return work.barrel == subject && work.sheet == sheet;
            });
            if (same != open.end()) {
                SPILE_TRY(cellar::goOnWithWork(cellar, same->run));
                return see(cellar, same->run, sheets);
            }
            SPILE_ASSIGN(run, cellar::beginWork(cellar, sheet, step, subject, person));
            if (!lot.empty()) {
                SPILE_TRY(cellar::keepValue(cellar, run, "lot", cellar::WorkValue{{}, lot}));
            }
            return see(cellar, run, sheets);
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
        [run, &sheets = sheets_](cellar::Cellar& cellar) -> Result<Seen> {
            SPILE_TRY(cellar::goOnWithWork(cellar, run));
            return see(cellar, run, sheets);
        },
        [this](Result<Seen> seen) {
            const bool open = seen.has_value();
            take(std::move(seen));
            if (open) {
                emit opened();
            }
        });
}

// Of a full disk also what was typed before, and could not be kept then.
Result<void> WorkViewModel::keepTyped(cellar::Cellar& cellar, const SubjectId& run,
                                      const std::map<std::string, QString>& typed)
{
    for (const auto& [ask, text] : typed) {
        const std::string word = text.trimmed().toStdString();
        SPILE_TRY(cellar::keepValue(
            cellar, run, ask,
            word.empty() ? std::nullopt : std::optional(cellar::WorkValue{{}, word})));
    }
    return {};
}

void WorkViewModel::perform(Act act)
{
    if (ending_ || work_.run.isZero()) {
        return;
    }
    ++pending_;
    context_.workers.act(
        this,
        [act = std::move(act), run = work_.run, typed = typed_,
         &sheets = sheets_](cellar::Cellar& cellar) -> Result<Seen> {
            SPILE_TRY(keepTyped(cellar, run, typed));
            SPILE_TRY(act(cellar, run));
            return see(cellar, run, sheets);
        },
        [this](Result<Seen> seen) {
            --pending_;
            if (seen && pending_ == 0) {
                typed_.clear();
            }
            if (!seen || pending_ == 0) {  // of several the last one knows all
                take(std::move(seen));
            }
        });
}

void WorkViewModel::take(Result<Seen> seen)
{
    if (!seen) {
        error_ = textOf(seen.error());
        emit changed();
        return;
    }
    error_.clear();
    const bool otherStep = seen->work.run != work_.run || seen->work.step != work_.step;
    const bool otherTimer = otherStep || seen->work.timer != work_.timer;
    if (otherStep) {
        typed_.clear();
    }
    work_ = std::move(seen->work);
    facts_ = std::move(seen->facts);
    beers_ = std::move(seen->beers);
    lots_ = std::move(seen->lots);
    numbers_ = std::move(seen->numbers);
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
    if (work_.run.isZero() || isBusy()) {
        return;
    }
    context_.workers.read(
        this,
        [run = work_.run, &sheets = sheets_](cellar::Cellar& cellar) {
            return see(cellar, run, sheets);
        },
        [this, run = work_.run](Result<Seen> seen) {
            if (seen && run == work_.run && !isBusy()) {
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
    const plan::SheetNumber number = numberOf(step_->timer->number);
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
    if (ending_ || sheet_ == nullptr) {
        return;
    }
    struct Ended {
        plan::Finished finished;
        std::optional<Seen> seen;
    };
    ending_ = true;
    context_.workers.act(
        this,
        [sheet = *sheet_, run = work_.run, typed = typed_, &sheets = sheets_,
         finish = plan::Finish{outcome, reason, people_.who()}](
            cellar::Cellar& cellar) -> Result<Ended> {
            SPILE_TRY(keepTyped(cellar, run, typed));
            SPILE_ASSIGN(finished, plan::finishStep(cellar, sheet, run, finish));
            if (finished.nextStep.empty()) {
                return Ended{finished, {}};
            }
            SPILE_ASSIGN(seen, see(cellar, run, sheets));
            return Ended{finished, std::move(seen)};
        },
        [this](Result<Ended> ended) {
            ending_ = false;
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
    if (ending_) {
        return;
    }
    ending_ = true;
    context_.workers.act(
        this, [run = work_.run](cellar::Cellar& cellar) { return cellar::giveUpWork(cellar, run); },
        [this](Result<void> given) {
            ending_ = false;
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

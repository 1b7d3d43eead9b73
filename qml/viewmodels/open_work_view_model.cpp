#include "qml/viewmodels/open_work_view_model.hpp"

#include "core/cellar/lots.hpp"
#include "core/plan/working.hpp"
#include "qml/viewmodels/barrel_rows.hpp"
#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/notice.hpp"

#include <algorithm>
#include <ranges>

namespace spile::viewmodels {

QVariant OpenWorkRows::data(const QModelIndex& index, int role) const
{
    const OpenWorkLine* line = rowAt(index.row());
    if (line == nullptr) {
        return {};
    }
    switch (role) {
        case Barrel:
            return line->barrel;
        case Sheet:
            return line->sheet;
        case Where:
            return line->where;
        case When:
            return line->when;
        case Stopped:
            return line->stopped;
        default:
            return {};
    }
}

QHash<int, QByteArray> OpenWorkRows::roleNames() const
{
    return {{Barrel, "barrel"},
            {Sheet, "sheet"},
            {Where, "where"},
            {When, "when"},
            {Stopped, "stopped"}};
}

OpenWorkViewModel::OpenWorkViewModel(Context& context, const WorkSheets& sheets, QObject* parent)
    : QObject(parent), context_(context), sheets_(sheets)
{
    connect(&context_.workers, &Workers::changed, this, &OpenWorkViewModel::refresh);
}

void OpenWorkViewModel::refresh()
{
    context_.workers.read(
        this,
        [](cellar::Cellar& cellar) -> Result<std::vector<Found>> {
            SPILE_ASSIGN(open, cellar::openWork(cellar));
            std::vector<Found> all;
            for (cellar::OpenWork& work : open) {
                SPILE_ASSIGN(row, cellar::barrelById(cellar.database(), work.barrel));
                SPILE_ASSIGN(lot, cellar::lotById(cellar.database(), work.barrel));
                SPILE_ASSIGN(person, cellar::nameOfPerson(cellar.database(), work.person));
                const QString name = lot ? QString::fromStdString(lot->name)
                                         : nameOf(row.value_or(cellar::BarrelRow()));
                all.push_back({std::move(work), name, person});
            }
            return all;
        },
        [this](Result<std::vector<Found>> found) {
            if (found) {
                take(std::move(*found));
            } else {
                context_.notice.refuse(textOf(found.error()));
            }
        });
}

void OpenWorkViewModel::take(std::vector<Found> found)
{
    found_ = std::move(found);
    const Formats& formats = context_.formats;
    std::vector<OpenWorkLine> lines;
    for (const Found& one : found_) {
        const plan::Sheet* sheet = sheets_.find(one.work.sheet);
        const QString title = sheet == nullptr ? QString::fromStdString(one.work.sheet)
                                               : WorkSheets::said(sheet->title);
        const plan::Place place = sheet == nullptr
                                      ? plan::Place()
                                      : plan::placeOf(*sheet, one.work.step, one.work.values);
        lines.push_back({textOf(one.work.run), one.name, textOf(one.work.barrel), title,
                         tr("step %1 of %2").arg(place.step).arg(place.steps),
                         tr("%1, begun %2", "a person, a time")
                             .arg(QString::fromStdString(one.person),
                                  formats.daysFromToday(one.work.begun) == 0
                                      ? formats.time(one.work.begun)
                                      : formats.dateAndTime(one.work.begun)),
                         one.work.stopped});
        watch(one, tr("%1, %2", "a sheet, a barrel").arg(title, one.name),
              sheet == nullptr ? nullptr : plan::findStep(*sheet, one.work.step));
    }
    std::erase_if(watches_, [&](const auto& watch) {
        return std::none_of(found_.begin(), found_.end(), [&](const Found& one) {
            return one.work.run == watch.first && one.work.timer == watch.second.timer;
        });
    });
    if (!caller_.isZero() && !watches_.contains(caller_)) {
        hush();
    }
    rows_.replace(std::move(lines));
    emit changed();
    emit read();
}

// Each timer calls once.
void OpenWorkViewModel::watch(const Found& found, const QString& name, const plan::Step* step)
{
    const auto& timer = found.work.timer;
    const SubjectId run = found.work.run;
    const auto watched = watches_.find(run);
    if (!timer || timer->pausedLeft ||
        (watched != watches_.end() && watched->second.timer == *timer)) {
        return;
    }
    // Gas runs on until somebody closes it.
    const QString close = step != nullptr && step->hold ? WorkSheets::said(step->close) : QString();
    auto deadline = std::make_unique<Deadline>(context_.outside.clock);
    connect(deadline.get(), &Deadline::reached, this, [this, run, name, close] {
        call_ = close.isEmpty() ? tr("%1: time is up").arg(name)
                                : tr("%1: time is up. %2").arg(name, close);
        caller_ = run;
        emit changed();
        emit called();
    });
    Deadline* const started = deadline.get();
    watches_[run] = {*timer, std::move(deadline)};
    started->resume(timer->wallEnd, timer->bootEnd, timer->bootId);
}

std::optional<SubjectId> OpenWorkViewModel::runFor(const SubjectId& barrel) const
{
    const auto newest = std::find_if(found_.rbegin(), found_.rend(),
                                     [&](const Found& one) { return one.work.barrel == barrel; });
    return newest == found_.rend() ? std::nullopt : std::optional(newest->work.run);
}

bool OpenWorkViewModel::isStopped(const SubjectId& run) const
{
    return std::any_of(found_.begin(), found_.end(),
                       [&](const Found& one) { return one.work.run == run && one.work.stopped; });
}

QString OpenWorkViewModel::titleFor(const SubjectId& barrel) const
{
    const auto run = runFor(barrel);
    const auto& rows = rows_.rows();
    const auto line = std::find_if(rows.begin(), rows.end(), [&](const OpenWorkLine& one) {
        return run && one.run == textOf(*run);
    });
    return line == rows.end() ? QString() : line->sheet;
}

void OpenWorkViewModel::goOn(int index)
{
    if (index >= 0 && index < static_cast<int>(found_.size())) {
        emit chosen(found_[static_cast<std::size_t>(index)].work.run);
    }
}

void OpenWorkViewModel::answer()
{
    const SubjectId run = caller_;
    hush();
    if (!run.isZero()) {
        emit chosen(run);
    }
}

void OpenWorkViewModel::hush()
{
    call_.clear();
    caller_ = {};
    emit changed();
}

}  // namespace spile::viewmodels

#include "qml/viewmodels/workers.hpp"

#include "core/ledger/ballast.hpp"

namespace spile::viewmodels {

Workers::Workers()
{
    writer_.thread = std::thread([this] {
        serve(writer_);
        cellar_.reset();
    });
    reader_.thread = std::thread([this] {
        serve(reader_);
        reading_.reset();
    });
    student_.thread = std::thread([this] { serve(student_); });
}

Workers::~Workers()
{
    cancelWork();
    ending_.cancel();
    end(writer_);
    end(reader_);
    end(student_);
}

void Workers::cancelWork()
{
    for (const auto& cancel : cancels_) {
        cancel->cancel();
    }
}

void Workers::send(Line& line, Lane lane, Task task)
{
    const std::lock_guard lock(line.mutex);
    (lane == Lane::Act ? line.acts : line.longs).push_back(std::move(task));
    line.wake.notify_one();
}

bool Workers::takeTask(std::deque<Task>& from, Task& task)
{
    if (from.empty()) {
        return false;
    }
    task = std::move(from.front());
    from.pop_front();
    return true;
}

bool Workers::hasActs(Line& line)
{
    const std::lock_guard lock(line.mutex);
    return !line.acts.empty();
}

void Workers::serve(Line& line)
{
    std::unique_lock lock(line.mutex);
    for (;;) {
        line.wake.wait(lock,
                       [&] { return line.ending || !line.acts.empty() || !line.longs.empty(); });
        Task task;
        // What was asked for before the end is done; long work that has not begun is not.
        if (!takeTask(line.acts, task) && (line.ending || !takeTask(line.longs, task))) {
            return;
        }
        lock.unlock();
        task();
        task = nullptr;
        lock.lock();
    }
}

void Workers::end(Line& line)
{
    {
        const std::lock_guard lock(line.mutex);
        line.ending = true;
        line.wake.notify_one();
    }
    line.thread.join();
}

// Called on the writer's thread, within long work that holds no transaction just now.
void Workers::runActs()
{
    for (;;) {
        Task task;
        {
            const std::lock_guard lock(writer_.mutex);
            if (!takeTask(writer_.acts, task)) {
                return;
            }
        }
        task();
    }
}

tl::unexpected<Error> Workers::noCellar() { return fail(ErrorCode::NotFound, "cellar"); }

// Called on the writer's thread. The reader gets its connection before anything it is asked next.
Result<void> Workers::hold(Opened opened)
{
    cellar_.reset();
    if (!opened) {
        return passOn(opened);
    }
    cellar_ = std::move(*opened);
    SPILE_ASSIGN(connection, cellar_->ledger().openReader());
    auto database = std::make_shared<ledger::Database>(std::move(connection));
    send(reader_, Lane::Act,
         [this, database] { reading_ = std::make_unique<ledger::Database>(std::move(*database)); });
    return {};
}

// Called on the writer's thread. A record that found the disk full gets the room that was kept for
// it: the cellar is opened anew, since its connection answers only errors after that.
bool Workers::makeRoom(const Error& error)
{
    if (error.code != ErrorCode::StorageFull || !cellar_ || !cellar_->database().isBroken()) {
        return false;
    }
    const Path folder = cellar_->ledger().folder().folder;
    const Outside outside = cellar_->outside();
    if (!ledger::giveUpBallast(outside.files, folder)) {
        return false;
    }
    cellar_.reset();
    return hold(cellar::Cellar::open(folder, outside)).has_value();
}

// Several changes in one turn of the UI's loop are told once.
void Workers::tellChanged()
{
    QMetaObject::invokeMethod(
        this,
        [this] {
            if (!changeTold_) {
                changeTold_ = true;
                QMetaObject::invokeMethod(
                    this,
                    [this] {
                        changeTold_ = false;
                        emit changed();
                    },
                    Qt::QueuedConnection);
            }
        },
        Qt::QueuedConnection);
}

// Called on the writer's thread.
Result<ledger::Database> Workers::openOwn()
{
    if (!cellar_) {
        return noCellar();
    }
    return cellar_->ledger().openReader();
}

void Workers::begun(Counted counted)
{
    if (counted == Counted::Yes && pending_++ == 0) {
        emit busyChanged();
    }
}

void Workers::ended(Counted counted)
{
    if (counted == Counted::Yes && --pending_ == 0) {
        emit busyChanged();
    }
}

}  // namespace spile::viewmodels

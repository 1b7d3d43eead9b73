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

void Workers::sendFirst(Line& line, Task act)
{
    const std::lock_guard lock(line.mutex);
    line.acts.push_front(std::move(act));
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

// Called on the writer's thread, within long work that holds no transaction just now. Where a
// record finds the disk full they wait until the work has ended, which comes to see it too.
void Workers::runActs()
{
    while (!cellar_->database().isBroken()) {
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

// Called on the writer's thread. What a full disk has closed is opened again before it is used.
Result<void> Workers::reopen()
{
    if (cellar_) {
        return {};
    }
    return reopens_ ? hold(reopens_()) : noCellar();
}

// Whether a record found the disk full; a file beside the records that did says nothing of them.
bool Workers::isFull(const Error& error)
{
    if (!cellar_ || !cellar_->database().isBroken()) {
        return false;
    }
    full_ = full_ || error.code == ErrorCode::StorageFull;
    return full_;
}

// Called on the writer's thread. A record that found the disk full gets the room that was kept for
// it. The cellar is opened anew in any case, since its connection answers only errors after that:
// without such room, once somebody has made some and taps again.
bool Workers::makeRoom(const Error& error)
{
    if (!isFull(error)) {
        return false;
    }
    const Path folder = cellar_->ledger().folder().folder;
    const Outside outside = cellar_->outside();
    reopens_ = [folder, outside] { return cellar::Cellar::open(folder, outside); };
    cellar_.reset();
    full_ = false;
    return ledger::giveUpBallast(outside.files, folder);
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
    SPILE_TRY(reopen());
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

#pragma once

#include "core/cellar/cellar.hpp"

#include <QObject>
#include <QPointer>
#include <QThreadPool>
#include <condition_variable>
#include <deque>
#include <functional>
#include <memory>
#include <mutex>
#include <thread>
#include <vector>

namespace spile::viewmodels {

/// The threads behind the screens: one that writes, one that reads, one that studies what takes
/// long, all on the one open cellar.
/// Nothing here waits on the UI thread; answers come back to it as values, by queued call, and
/// only while their receiver lives.
///
/// The writer takes acts (taps, records) before long work (day files), and also between two steps
/// of a long work, whenever that reports how far it is.
class Workers : public QObject {
    Q_OBJECT
    Q_PROPERTY(bool busy READ isBusy NOTIFY busyChanged FINAL)

public:
    Workers();
    /// Lets the acts that were asked for end, cancels long work, closes the cellar.
    ~Workers() override;
    Q_DISABLE_COPY_MOVE(Workers)

    using Opened = Result<std::unique_ptr<cellar::Cellar>>;

    /// Let `open(const Job&)` make or open the cellar, on the writer's thread, as long work is. An
    /// earlier cellar is closed. `report(done, total)` and `done(Result<void>)` come on the UI
    /// thread; cancelWork() stops it.
    template <class Open, class Report, class Done>
    void open(QObject* receiver, Open open, Report report, Done done)
    {
        auto [cancel, over] = cancellable(std::move(done));
        send(writer_, Lane::Long,
             [this, cancel = cancel, open = std::move(open),
              tell = reportTo(receiver, std::move(report)),
              back = backTo(receiver, std::move(over))] {
                 reopens_ = {};
                 back(hold(open(Job(tell, cancel.get()))));
             });
    }

    /// Run `act(Cellar&) -> Result<T>` on the writer; then `done(Result<T>)` on the UI thread. An
    /// act that finds the disk full is run once more if there was room kept for it.
    template <class Act, class Done>
    void act(QObject* receiver, Act act, Done done)
    {
        send(writer_, Lane::Act,
             [this, act = std::move(act), back = backTo(receiver, done)] { attempt(act, back); });
    }

    /// The same for what only reads, but needs what is this device's own: open sheets, folders.
    template <class Read, class Done>
    void read(QObject* receiver, Read read, Done done)
    {
        send(writer_, Lane::Act,
             [this, read = std::move(read), back = backTo(receiver, done)] { back(ask(read)); });
    }

    /// Run long work on the writer: `work(Cellar&, const Job&) -> Result<T>`. `report(done,
    /// total)` and `done(Result<T>)` come on the UI thread. cancelWork() stops it. Work whose
    /// records find the disk full begins once more if there was room kept for them.
    template <class Work, class Report, class Done>
    void work(QObject* receiver, Work work, Report report, Done done)
    {
        auto [cancel, over] = cancellable(std::move(done));
        send(writer_, Lane::Long,
             [this, cancel = cancel, work = std::move(work),
              tell = reportTo(receiver, std::move(report)),
              back = backTo(receiver, std::move(over))] {
                 const Job job(
                     [this, &tell](std::uint64_t now, std::uint64_t all) {
                         tell(now, all);
                         runActs();
                     },
                     cancel.get(), [this] { return hasActs(writer_); });
                 const auto once = [&](cellar::Cellar& cellar) {
                     inWork_ = true;
                     auto answer = work(cellar, job);
                     inWork_ = false;
                     return answer;
                 };
                 auto answer = ask(once);
                 if (!answer && makeRoom(answer.error())) {
                     answer = ask(once);
                 }
                 back(std::move(answer));
                 tellChanged();  // also a part that was done before it stopped
             });
    }
    /// Ask all long work to stop; each then ends with Cancelled.
    void cancelWork();

    /// Run `query(Database&) -> Result<T>` on the reader; then `done(Result<T>)` on the UI thread.
    template <class Query, class Done>
    void look(QObject* receiver, Query query, Done done)
    {
        send(reader_, Lane::Act, [this, query = std::move(query), back = backTo(receiver, done)] {
            using Answer = std::invoke_result_t<Query, ledger::Database&>;
            back(reading_ ? query(*reading_) : Answer(noCellar()));
        });
    }

    /// Run long `query(Database&, const Job&) -> Result<T>` beside all others, one after the other,
    /// on a connection of its own; then `done(Result<T>)` on the UI thread. Nobody waits for it: it
    /// does not count as busy, and only the end of the app cancels it.
    template <class Query, class Done>
    void study(QObject* receiver, Query query, Done done)
    {
        using Answer = std::invoke_result_t<Query, ledger::Database&, const Job&>;
        send(writer_, Lane::Act,
             [this, query = std::move(query), back = backTo(receiver, done, Counted::No)] {
                 auto connection = openOwn();
                 if (!connection) {
                     back(Answer(passOn(connection)));
                     return;
                 }
                 auto database = std::make_shared<ledger::Database>(std::move(*connection));
                 send(student_, Lane::Long,
                      [this, database, query, back] { back(query(*database, Job({}, &ending_))); });
             });
    }

    /// Run `work()` beside all, for what may be slow and needs no cellar: media, folders.
    template <class Work, class Done>
    void aside(QObject* receiver, Work work, Done done)
    {
        pool_.start([work = std::move(work), back = backTo(receiver, done)] { back(work()); });
    }

    /// The same for long `work(const Job&)`: `report(done, total)` comes on the UI thread as well.
    /// What is returned stops it.
    template <class Work, class Report, class Done>
    std::shared_ptr<CancelToken> aside(QObject* receiver, Work work, Report report, Done done)
    {
        auto [cancel, over] = cancellable(std::move(done));
        pool_.start(
            [cancel = cancel, work = std::move(work), tell = reportTo(receiver, std::move(report)),
             back = backTo(receiver, std::move(over))] { back(work(Job(tell, cancel.get()))); });
        return cancel;
    }

    /// Whether anything that was asked for has not been answered yet.
    [[nodiscard]] bool isBusy() const { return pending_ > 0; }

signals:
    void busyChanged();
    /// The records have changed: what a screen shows may be out of date.
    void changed();

private:
    enum class Lane : std::uint8_t { Act, Long };
    enum class Counted : std::uint8_t { No, Yes };  // as busy
    using Task = std::function<void()>;
    struct Line {
        std::mutex mutex;
        std::condition_variable wake;
        std::deque<Task> acts, longs;
        bool ending = false;
        std::thread thread;
    };

    // Makes what stops long work, and what forgets it when its answer comes.
    template <class Done>
    auto cancellable(Done done)
    {
        auto cancel = std::make_shared<CancelToken>();
        cancels_.push_back(cancel);
        return std::pair(cancel, [this, cancel, done = std::move(done)](auto answer) {
            std::erase(cancels_, cancel);
            done(std::move(answer));
        });
    }
    // Makes what brings an answer back to the UI thread. Called on the UI thread.
    template <class Done>
    auto backTo(QObject* receiver, Done done, Counted counted = Counted::Yes)
    {
        begun(counted);
        return [this, counted, to = QPointer<QObject>(receiver),
                done = std::move(done)](auto&& answer) {
            auto kept = std::make_shared<std::decay_t<decltype(answer)>>(
                std::forward<decltype(answer)>(answer));
            QMetaObject::invokeMethod(
                this,
                [this, counted, to, done, kept] {
                    if (to) {
                        done(std::move(*kept));
                    }
                    ended(counted);
                },
                Qt::QueuedConnection);
        };
    }
    template <class Report>
    auto reportTo(QObject* receiver, Report report)
    {
        return [this, to = QPointer<QObject>(receiver), report = std::move(report)](
                   std::uint64_t now, std::uint64_t all) {
            QMetaObject::invokeMethod(
                this,
                [to, report, now, all] {
                    if (to) {
                        report(now, all);
                    }
                },
                Qt::QueuedConnection);
        };
    }

    // Called on the writer's thread: what `use(Cellar&)` answers.
    template <class Use>
    auto ask(const Use& use) -> std::invoke_result_t<Use, cellar::Cellar&>
    {
        Result<void> there = reopen();
        return there ? use(*cellar_) : passOn(there);
    }
    template <class Act, class Back>
    void attempt(const Act& act, const Back& back)
    {
        auto answer = ask(act);
        if (!answer && isFull(answer.error())) {
            if (inWork_) {  // which holds the cellar, and ends now that there are only errors
                sendFirst(writer_, [this, act, back] { attempt(act, back); });
                return;
            }
            if (makeRoom(answer.error())) {
                answer = ask(act);
            }
        }
        const bool changed = answer.has_value();
        back(std::move(answer));
        if (changed) {
            tellChanged();
        }
    }

    static void send(Line& line, Lane lane, Task task);
    static void sendFirst(Line& line, Task act);
    static void serve(Line& line);
    static void end(Line& line);
    static bool takeTask(std::deque<Task>& from, Task& task);
    [[nodiscard]] static bool hasActs(Line& line);
    [[nodiscard]] static tl::unexpected<Error> noCellar();
    [[nodiscard]] Result<void> hold(Opened opened);
    [[nodiscard]] Result<void> reopen();
    [[nodiscard]] bool isFull(const Error& error);
    [[nodiscard]] bool makeRoom(const Error& error);
    void runActs();
    void tellChanged();
    void begun(Counted counted);
    void ended(Counted counted);
    [[nodiscard]] Result<ledger::Database> openOwn();

    CancelToken ending_;
    Line writer_, reader_, student_;
    std::unique_ptr<cellar::Cellar> cellar_;  // the writer's, as the next three
    std::function<Opened()> reopens_;         // what a full disk has closed
    bool inWork_ = false;
    bool full_ = false;                          // what has broken the cellar's connection was that
    std::unique_ptr<ledger::Database> reading_;  // the reader's
    std::vector<std::shared_ptr<CancelToken>> cancels_;  // of long work, the UI thread's
    int pending_ = 0;                                    // counted on the UI thread alone
    bool changeTold_ = false;
    QThreadPool pool_;  // last: it is waited for before the rest goes
};

}  // namespace spile::viewmodels

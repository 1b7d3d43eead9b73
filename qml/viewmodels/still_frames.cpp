#include "qml/viewmodels/still_frames.hpp"

#include "core/picture/decode.hpp"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QFuture>
#include <QPromise>
#include <QTemporaryFile>
#include <QThreadPool>
#include <chrono>
#include <utility>

namespace spile::viewmodels {

namespace {

constexpr int longestSide = 1920;  // as a camera's frame

QStringList picturesOf(const QUrl& source)
{
    const QFileInfo file(source.toLocalFile());
    if (!file.isDir()) {
        return file.isFile() ? QStringList{file.filePath()} : QStringList();
    }
    QStringList files;
    const QDir folder(file.filePath());
    for (const QString& name : folder.entryList(
             {QStringLiteral("*.jpg"), QStringLiteral("*.jpeg"), QStringLiteral("*.png")},
             QDir::Files, QDir::Name)) {
        files << folder.filePath(name);
    }
    return files;
}

Result<picture::Image> decoded(const QString& name)
{
    QFile file(name);
    if (!file.open(QIODevice::ReadOnly)) {
        return fail(ErrorCode::NotFound, name.toStdString());
    }
    const QByteArray bytes = file.readAll();
    return picture::decode({reinterpret_cast<const std::uint8_t*>(bytes.data()),
                            static_cast<std::size_t>(bytes.size())},
                           {picture::PixelFormat::Grey8, longestSide, {}});
}

// A copy with a name of its own; nothing if it cannot be made.
QString copied(const QString& name, const QString& folder)
{
    QFile source(name);
    const QString suffix = QFileInfo(name).suffix();
    QTemporaryFile copy(QDir(folder).filePath(QStringLiteral("still-XXXXXX.") + suffix));
    if (!source.open(QIODevice::ReadOnly) || !copy.open()) {
        return {};
    }
    const QByteArray bytes = source.readAll();
    if (copy.write(bytes) != bytes.size() || !copy.flush()) {
        return {};
    }
    copy.setAutoRemove(false);
    return copy.fileName();
}

// Run `work` in the pool, then `done` with its answer in the thread of `receiver`, if that lives.
template <class Work, class Done>
void inPool(QObject* receiver, Work work, Done done)
{
    using Answer = std::invoke_result_t<Work>;
    auto promise = std::make_shared<QPromise<Answer>>();
    promise->start();
    promise->future().then(receiver, std::move(done));
    QThreadPool::globalInstance()->start([promise, work = std::move(work)] {
        promise->addResult(work());
        promise->finish();
    });
}

}  // namespace

StillFrames::StillFrames(QObject* parent) : QObject(parent)
{
    pace_.setInterval(std::chrono::milliseconds(400));
    connect(&pace_, &QTimer::timeout, this, &StillFrames::showNext);
    connect(&reader_, &frames::FrameReader::read, this,
            [this](const QList<QString>& texts, const QList<QString>& formats) {
                if (active_) {
                    emit codesRead(texts, formats);
                }
            });
    connect(&reader_, &frames::FrameReader::nothing, this, [this](const QString& advice) {
        if (active_) {
            emit nothingRead(advice);
        }
    });
}

void StillFrames::setSource(const QUrl& source)
{
    if (source != source_) {
        source_ = source;
        restart();
    }
}

void StillFrames::setActive(bool active)
{
    if (active != active_) {
        active_ = active;
        restart();
    }
}

QUrl StillFrames::current() const
{
    return shown_.isEmpty() ? QUrl() : QUrl::fromLocalFile(shown_);
}

void StillFrames::restart()
{
    reader_.restart();
    files_ = active_ ? picturesOf(source_) : QStringList();
    problem_ = files_.isEmpty() ? QStringLiteral("absent") : QString();
    next_ = 0;
    shown_.clear();
    if (files_.isEmpty()) {
        pace_.stop();
    } else {
        pace_.start();
        showNext();
    }
    emit changed();
}

void StillFrames::showNext()
{
    if (files_.isEmpty() || std::exchange(decoding_, true)) {
        return;
    }
    const QString file = files_[next_];
    next_ = (next_ + 1) % files_.size();
    inPool(
        this, [file] { return std::make_shared<Result<picture::Image>>(decoded(file)); },
        [this, file](const std::shared_ptr<Result<picture::Image>>& picture) {
            decoding_ = false;
            if (!active_ || !files_.contains(file)) {
                return;
            }
            problem_ = *picture ? QString() : QStringLiteral("unreadable");
            if (*picture) {
                shown_ = file;
                reader_.offer(frames::frameOf(std::move(**picture)));
            }
            emit changed();
        });
}

void StillFrames::takePhoto(const QString& folder)
{
    inPool(
        this, [file = shown_, folder] { return file.isEmpty() ? QString() : copied(file, folder); },
        [this](const QString& photo) {
            if (photo.isEmpty()) {
                emit photoFailed();
            } else {
                emit photoTaken(photo);
            }
        });
}

}  // namespace spile::viewmodels

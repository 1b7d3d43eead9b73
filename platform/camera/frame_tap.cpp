#include "platform/camera/frame_tap.hpp"

#include "platform/camera/luminance_plane.hpp"

#include <QDir>
#include <QImage>
#include <QTemporaryFile>
#include <QThreadPool>
#include <mutex>
#include <optional>
#include <utility>

namespace spile::camera {

struct FrameTap::Mailbox {
    std::mutex mutex;
    FrameTap* owner = nullptr;  // gone once null
    QVideoFrame newest;
};

namespace {

constexpr int photoQuality = 92;

/// Mapped where it is read, not where it comes.
class TappedFrame final : public frames::Frame {
public:
    explicit TappedFrame(QVideoFrame frame) : frame_(std::move(frame)) {}
    picture::LuminanceView luminance() override
    {
        mapped_.emplace(std::move(frame_));
        return mapped_->luminance().value_or(picture::LuminanceView());
    }

private:
    QVideoFrame frame_;
    std::optional<MappedFrame> mapped_;
};

// Return the file, or nothing if it cannot be made.
QString keepPicture(const QVideoFrame& frame, const QString& folder)
{
    // Qt 6.4 writes past the picture for this one.
    if (frame.pixelFormat() == QVideoFrameFormat::Format_YUV422P) {
        return {};
    }
    const QImage picture = frame.toImage();
    QTemporaryFile file(QDir(folder).filePath(QStringLiteral("frame-XXXXXX.jpg")));
    file.setAutoRemove(false);
    if (picture.isNull() || !file.open() || !picture.save(&file, "JPG", photoQuality)) {
        file.remove();
        return {};
    }
    return file.fileName();
}

}  // namespace

FrameTap::FrameTap(QObject* parent) : QObject(parent), mailbox_(std::make_shared<Mailbox>())
{
    mailbox_->owner = this;
    connect(&reader_, &frames::FrameReader::read, this,
            [this](const QList<QString>& texts, const QList<QString>& formats) {
                count(taken_);
                emit read(texts, formats);
            });
    connect(&reader_, &frames::FrameReader::nothing, this, [this](const QString& advice) {
        count(taken_);
        emit nothing(advice);
    });
    connect(&reader_, &frames::FrameReader::unreadable, this, [this] { count(dropped_); });
    // Emitted in another thread.
    connect(this, &FrameTap::pictureMade, this, &FrameTap::tellPhoto, Qt::QueuedConnection);
}

FrameTap::~FrameTap()
{
    disconnect(connection_);
    const std::lock_guard lock(mailbox_->mutex);
    mailbox_->owner = nullptr;
}

void FrameTap::setSink(QVideoSink* sink)
{
    if (sink == sink_) {
        return;
    }
    disconnect(connection_);
    sink_ = sink;
    if (!sink_.isNull()) {
        // Runs in whatever thread the frame comes in, and may outlive this object by one frame.
        connection_ = connect(
            sink_, &QVideoSink::videoFrameChanged, [mailbox = mailbox_](const QVideoFrame& frame) {
                const std::lock_guard lock(mailbox->mutex);
                mailbox->newest = frame;
                if (mailbox->owner != nullptr && frame.isValid()) {  // else the sink is emptied
                    mailbox->owner->reader_.offer(std::make_unique<TappedFrame>(frame));
                }
            });
    }
    restart();
    emit sinkChanged();
}

void FrameTap::restart()
{
    taken_ = 0;
    dropped_ = 0;
    {
        const std::lock_guard lock(mailbox_->mutex);
        mailbox_->newest = {};
    }
    reader_.restart();
    emit changed();
}

void FrameTap::count(int& frames)
{
    if (frames++ == 0) {
        emit changed();
    }
}

void FrameTap::keepFrame(const QString& folder)
{
    const std::lock_guard lock(mailbox_->mutex);
    QThreadPool::globalInstance()->start([mailbox = mailbox_, frame = mailbox_->newest, folder] {
        const QString file = frame.isValid() ? keepPicture(frame, folder) : QString();
        const std::lock_guard answering(mailbox->mutex);
        if (mailbox->owner != nullptr) {
            emit mailbox->owner->pictureMade(file);
        } else {
            QFile::remove(file);
        }
    });
}

void FrameTap::tellPhoto(const QString& file)
{
    if (file.isEmpty()) {
        emit photoFailed();
    } else {
        emit photoTaken(file);
    }
}

}  // namespace spile::camera

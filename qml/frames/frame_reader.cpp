#include "qml/frames/frame_reader.hpp"

#include <QThreadPool>
#include <cstring>
#include <mutex>
#include <utility>

namespace spile::frames {

struct FrameReader::Mailbox {
    Decode decode;
    std::mutex mutex;
    FrameReader* owner = nullptr;  // gone once null
    picture::Image waiting;        // the two buffers are swapped and used again
    bool hasWaiting = false;
    bool reading = false;
    picture::Image current;  // the pool's, while it reads
};

namespace {

void copy(const picture::LuminanceView& from, picture::Image& to)
{
    to.width = from.width;
    to.height = from.height;
    to.pixels.resize(picture::pixelBytes(from.width, from.height, picture::PixelFormat::Grey8));
    std::uint8_t* out = to.pixels.data();
    for (int y = 0; y < from.height; ++y) {
        const std::uint8_t* row = from.data + std::ptrdiff_t{y} * from.rowStride;
        if (from.pixelStride == 1) {
            std::memcpy(out, row, static_cast<std::size_t>(from.width));
        } else {
            for (int x = 0; x < from.width; ++x) {
                out[x] = row[std::ptrdiff_t{x} * from.pixelStride];
            }
        }
        out += from.width;
    }
}

bool isEmpty(const picture::LuminanceView& frame)
{
    return frame.data == nullptr || frame.width <= 0 || frame.height <= 0;
}

}  // namespace

FrameReader::FrameReader(QObject* parent, Decode decode)
    : QObject(parent), mailbox_(std::make_shared<Mailbox>())
{
    mailbox_->decode = std::move(decode);
    mailbox_->owner = this;
}

FrameReader::~FrameReader()
{
    const std::lock_guard lock(mailbox_->mutex);
    mailbox_->owner = nullptr;
    mailbox_->hasWaiting = false;
}

void FrameReader::offer(const picture::LuminanceView& frame)
{
    if (isEmpty(frame)) {
        return;
    }
    const std::lock_guard lock(mailbox_->mutex);
    copy(frame, mailbox_->waiting);
    mailbox_->hasWaiting = true;
    if (!std::exchange(mailbox_->reading, true)) {
        QThreadPool::globalInstance()->start([mailbox = mailbox_] { work(*mailbox); });
    }
}

// In the pool: reads until nothing waits. The mutex is held only to swap buffers and to post.
void FrameReader::work(Mailbox& mailbox)
{
    std::unique_lock lock(mailbox.mutex);
    while (std::exchange(mailbox.hasWaiting, false)) {
        std::swap(mailbox.waiting, mailbox.current);
        lock.unlock();
        const auto code = mailbox.decode(viewOf(mailbox.current));
        lock.lock();
        if (FrameReader* owner = mailbox.owner) {
            QMetaObject::invokeMethod(
                owner,
                [owner, code] {
                    if (code) {
                        emit owner->read(QString::fromStdString(code->text), nameOf(code->format));
                    } else {
                        emit owner->nothing();
                    }
                },
                Qt::QueuedConnection);
        }
    }
    mailbox.reading = false;
}

QString nameOf(scan::Format format)
{
    switch (format) {
        case scan::Format::QrCode:
            return QStringLiteral("qr");
        case scan::Format::DataMatrix:
            return QStringLiteral("data matrix");
        case scan::Format::Code128:
            return QStringLiteral("code 128");
    }
    return {};
}

scan::Format formatNamed(const QString& name)
{
    for (const scan::Format format : {scan::Format::DataMatrix, scan::Format::Code128}) {
        if (name == nameOf(format)) {
            return format;
        }
    }
    return scan::Format::QrCode;
}

}  // namespace spile::frames

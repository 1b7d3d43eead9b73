#include "qml/frames/frame_reader.hpp"

#include <QThreadPool>
#include <array>
#include <mutex>
#include <optional>
#include <utility>

namespace spile::frames {

struct FrameReader::Mailbox {
    Looker looker;      // the pool's
    int looksFrom = 0;  // and the beginning that it looks from
    std::mutex mutex;
    FrameReader* owner = nullptr;  // gone once null
    std::unique_ptr<Frame> waiting;
    int beginning = 0;  // counts the restarts
    bool reading = false;
};

namespace {

constexpr std::array formats = {scan::Format::QrCode, scan::Format::DataMatrix,
                                scan::Format::Code128};
constexpr std::array advices = {scan::Advice::None, scan::Advice::Light, scan::Advice::Closer,
                                scan::Advice::Still, scan::Advice::Wipe};

// None if the frame has a form that is not read.
std::optional<scan::Looked> lookAt(Frame& frame, const Looker& looker)
{
    const picture::LuminanceView view = frame.luminance();
    if (view.data == nullptr || view.width <= 0 || view.height <= 0) {
        return std::nullopt;
    }
    return looker.look(view);
}

}  // namespace

Looker liveLooker()
{
    auto reader = std::make_shared<scan::LiveReader>();
    return {[reader](const picture::LuminanceView& frame) { return reader->look(frame); },
            [reader] { reader->restart(); }};
}

FrameReader::FrameReader(QObject* parent, Looker looker)
    : QObject(parent), mailbox_(std::make_shared<Mailbox>())
{
    mailbox_->looker = std::move(looker);
    mailbox_->owner = this;
}

FrameReader::~FrameReader()
{
    const std::lock_guard lock(mailbox_->mutex);
    mailbox_->owner = nullptr;
    mailbox_->waiting.reset();
}

void FrameReader::offer(std::unique_ptr<Frame> frame)
{
    if (frame == nullptr) {
        return;
    }
    const std::lock_guard lock(mailbox_->mutex);
    std::swap(mailbox_->waiting, frame);
    if (!std::exchange(mailbox_->reading, true)) {
        QThreadPool::globalInstance()->start([mailbox = mailbox_] { work(*mailbox); });
    }
}

void FrameReader::restart()
{
    const std::lock_guard lock(mailbox_->mutex);
    mailbox_->waiting.reset();
    ++mailbox_->beginning;
}

// In the pool: reads until nothing waits. The mutex is held only to take a frame and to post.
void FrameReader::work(Mailbox& mailbox)
{
    std::unique_lock lock(mailbox.mutex);
    while (std::unique_ptr<Frame> frame = std::exchange(mailbox.waiting, nullptr)) {
        const int beginning = mailbox.beginning;
        lock.unlock();
        if (std::exchange(mailbox.looksFrom, beginning) != beginning) {
            mailbox.looker.restart();
        }
        auto looked = lookAt(*frame, mailbox.looker);
        frame.reset();  // the camera has it back before anybody is told
        lock.lock();
        if (FrameReader* owner = mailbox.owner) {
            QMetaObject::invokeMethod(
                owner,
                [owner, beginning, looked = std::move(looked)] {
                    if (beginning != owner->mailbox_->beginning) {
                        return;
                    }
                    if (looked) {
                        owner->tell(*looked);
                    } else {
                        emit owner->unreadable();
                    }
                },
                Qt::QueuedConnection);
        }
    }
    mailbox.reading = false;
}

void FrameReader::tell(const scan::Looked& looked)
{
    if (looked.codes.empty()) {
        emit nothing(nameOf(looked.advice));
        return;
    }
    QStringList texts;
    QStringList codeFormats;
    for (const scan::Code& code : looked.codes) {
        texts << QString::fromStdString(code.text);
        codeFormats << nameOf(code.format);
    }
    emit read(texts, codeFormats);
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
    for (const scan::Format format : formats) {
        if (name == nameOf(format)) {
            return format;
        }
    }
    return scan::Format::QrCode;
}

QString nameOf(scan::Advice advice)
{
    switch (advice) {
        case scan::Advice::None:
            return {};
        case scan::Advice::Light:
            return QStringLiteral("light");
        case scan::Advice::Closer:
            return QStringLiteral("closer");
        case scan::Advice::Still:
            return QStringLiteral("still");
        case scan::Advice::Wipe:
            return QStringLiteral("wipe");
    }
    return {};
}

scan::Advice adviceNamed(const QString& name)
{
    for (const scan::Advice advice : advices) {
        if (name == nameOf(advice)) {
            return advice;
        }
    }
    return scan::Advice::None;
}

}  // namespace spile::frames

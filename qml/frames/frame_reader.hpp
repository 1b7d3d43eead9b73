#pragma once

#include "core/picture/image.hpp"
#include "core/scan/reader.hpp"

#include <QObject>
#include <functional>
#include <memory>
#include <optional>

namespace spile::frames {

/// Reads codes in the frames of a camera, in a thread of the pool. One frame is read at a time and
/// one waits; a newer one takes the place of that which waits, so what is read is never old.
///
/// Threads   offer() from any, one at a time; the signals come in the thread this object lives in.
class FrameReader : public QObject {
    Q_OBJECT

public:
    using Decode = std::function<std::optional<scan::Code>(const picture::LuminanceView&)>;

    explicit FrameReader(QObject* parent = nullptr, Decode decode = scan::readFrame);
    /// Does not wait for a frame that is being read: that ends by itself and tells nobody.
    ~FrameReader() override;
    Q_DISABLE_COPY_MOVE(FrameReader)

    /// Copy the frame and return at once. A view without pixels is passed over.
    void offer(const picture::LuminanceView& frame);

signals:
    /// A code was read; `format` is "qr", "data matrix" or "code 128".
    void read(const QString& text, const QString& format);
    /// A frame was read and held no code.
    void nothing();

private:
    struct Mailbox;
    static void work(Mailbox& mailbox);

    std::shared_ptr<Mailbox> mailbox_;
};

/// The word for a format that crosses to QML and back; formatNamed() takes any other for QrCode.
[[nodiscard]] QString nameOf(scan::Format format);
[[nodiscard]] scan::Format formatNamed(const QString& name);

}  // namespace spile::frames

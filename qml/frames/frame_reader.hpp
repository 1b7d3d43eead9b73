#pragma once

#include "core/scan/live_reader.hpp"
#include "qml/frames/frame.hpp"

#include <QObject>
#include <QStringList>
#include <functional>
#include <memory>

namespace spile::frames {

/// What looks at one frame after another; a test may put another in its place.
struct Looker {
    std::function<scan::Looked(const picture::LuminanceView&)> look;
    std::function<void()> restart;  // forget the frames of before
};
/// A scan::LiveReader of its own.
[[nodiscard]] Looker liveLooker();

/// Reads codes in the frames of one camera, in a thread of the pool. One frame is read at a time
/// and one waits; a newer one takes the place of that which waits, so what is read is never old,
/// and no more than two frames of the camera are held. Nothing is copied.
///
/// Threads   offer() from any; the others, and the signals, in the thread this object lives in.
class FrameReader : public QObject {
    Q_OBJECT

public:
    explicit FrameReader(QObject* parent = nullptr, Looker looker = liveLooker());
    /// Does not wait for a frame that is being read: that ends by itself and tells nobody.
    ~FrameReader() override;
    Q_DISABLE_COPY_MOVE(FrameReader)

    /// Take the frame and return at once.
    void offer(std::unique_ptr<Frame> frame);
    /// Begin anew: frames that came before count no more and tell nobody.
    void restart();

signals:
    /// Codes were read in a frame, that nearest its middle first; a format is "qr", "data matrix"
    /// or "code 128".
    void read(const QList<QString>& texts, const QList<QString>& formats);
    /// A frame was read and held no code. What would help: "light", "closer", "still", "wipe";
    /// empty if nothing speaks for any.
    void nothing(const QString& advice);
    /// A frame came in a form that is not read.
    void unreadable();

private:
    struct Mailbox;
    static void work(Mailbox& mailbox);
    void tell(const scan::Looked& looked);

    std::shared_ptr<Mailbox> mailbox_;
};

/// The words for a format and an advice that cross to QML and back. formatNamed() takes any other
/// for QrCode, adviceNamed() for None.
[[nodiscard]] QString nameOf(scan::Format format);
[[nodiscard]] scan::Format formatNamed(const QString& name);
[[nodiscard]] QString nameOf(scan::Advice advice);
[[nodiscard]] scan::Advice adviceNamed(const QString& name);

}  // namespace spile::frames

#pragma once

#include "qml/frames/frame_reader.hpp"

#include <QMetaObject>
#include <QObject>
#include <QPointer>
#include <QString>
#include <QVideoSink>
#include <QtQml/qqmlregistration.h>
#include <memory>

namespace spile::camera {

/// Taps the frames that are shown and has codes read in them. Frames may come in any thread, as
/// often as they like: only the newest is kept. It is mapped and read in the pool, never here.
class FrameTap : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QVideoSink* sink READ sink WRITE setSink NOTIFY sinkChanged FINAL)
    /// Frames have come from this sink.
    Q_PROPERTY(bool running READ isRunning NOTIFY changed FINAL)
    /// They come in a form that is not read.
    Q_PROPERTY(bool unreadable READ isUnreadable NOTIFY changed FINAL)

public:
    explicit FrameTap(QObject* parent = nullptr);
    ~FrameTap() override;
    Q_DISABLE_COPY_MOVE(FrameTap)

    [[nodiscard]] QVideoSink* sink() const { return sink_; }
    void setSink(QVideoSink* sink);
    [[nodiscard]] bool isRunning() const { return taken_ + dropped_ > 0; }
    [[nodiscard]] bool isUnreadable() const { return taken_ == 0 && dropped_ > 0; }
    /// Frames of a form that is not read.
    [[nodiscard]] int dropped() const { return dropped_; }

    /// Begin anew: nothing has come yet.
    Q_INVOKABLE void restart();
    /// Keep the newest frame as a picture in `folder`; `photoTaken` or `photoFailed` follows.
    Q_INVOKABLE void keepFrame(const QString& folder);

signals:
    void sinkChanged();
    void changed();
    /// As FrameReader has them.
    void read(const QList<QString>& texts, const QList<QString>& formats);
    void nothing(const QString& advice);
    void photoTaken(const QString& file);
    void photoFailed();
    // Of its own, from another thread.
    void pictureMade(const QString& file);

private:
    struct Mailbox;
    void count(int& frames);
    void tellPhoto(const QString& file);

    frames::FrameReader reader_;
    std::shared_ptr<Mailbox> mailbox_;
    QPointer<QVideoSink> sink_;
    QMetaObject::Connection connection_;
    int taken_ = 0;
    int dropped_ = 0;
};

}  // namespace spile::camera

#pragma once

#include "qml/frames/frame_reader.hpp"

#include <QObject>
#include <QStringList>
#include <QTimer>
#include <QUrl>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// Pictures in a camera's place, for demonstrations and tests: one file, or those of a folder one
/// after another, again and again. Each is shown, and codes are read in it as in a frame.
class StillFrames : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QUrl source READ source WRITE setSource NOTIFY changed FINAL)
    Q_PROPERTY(bool active READ isActive WRITE setActive NOTIFY changed FINAL)
    /// The picture that is shown.
    Q_PROPERTY(QUrl current READ current NOTIFY changed FINAL)
    /// As FrameSource has it: "absent" without pictures, "unreadable".
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)

public:
    explicit StillFrames(QObject* parent = nullptr);

    /// Put a copy of the picture that is shown into `folder`; `photoTaken` or `photoFailed`
    /// follows.
    Q_INVOKABLE void takePhoto(const QString& folder);

    [[nodiscard]] QUrl source() const { return source_; }
    void setSource(const QUrl& source);
    [[nodiscard]] bool isActive() const { return active_; }
    void setActive(bool active);
    [[nodiscard]] QUrl current() const;
    [[nodiscard]] QString problem() const { return active_ ? problem_ : QString(); }

signals:
    void changed();
    /// As FrameReader has them.
    void codesRead(const QList<QString>& texts, const QList<QString>& formats);
    void nothingRead(const QString& advice);
    void photoTaken(const QString& file);
    void photoFailed();

private:
    void restart();
    void showNext();

    frames::FrameReader reader_;
    QTimer pace_;
    QUrl source_;
    QStringList files_;
    qsizetype next_ = 0;
    QString shown_;
    QString problem_;
    bool active_ = false;
    bool decoding_ = false;
};

}  // namespace spile::viewmodels

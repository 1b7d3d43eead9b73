#pragma once

#include <QObject>
#include <QTimer>
#include <QtQml/qqmlregistration.h>
#include <functional>

namespace spile::viewmodels {

/// What was just kept, with its undo, or what went wrong: the bar above the foot of every page.
class Notice : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(QString text READ text NOTIFY changed FINAL)
    Q_PROPERTY(bool shown READ isShown NOTIFY changed FINAL)
    Q_PROPERTY(bool undoable READ isUndoable NOTIFY changed FINAL)
    Q_PROPERTY(bool refused READ isRefused NOTIFY changed FINAL)

public:
    explicit Notice(QObject* parent = nullptr);

    [[nodiscard]] QString text() const { return text_; }
    [[nodiscard]] bool isShown() const { return !text_.isEmpty(); }
    [[nodiscard]] bool isUndoable() const { return static_cast<bool>(undo_); }
    [[nodiscard]] bool isRefused() const { return refused_; }

    /// Say what was kept. It stays until the next act, or ten seconds.
    void tell(const QString& text, std::function<void()> undo = {});
    /// Say what went wrong; it stays until it is put away or the next act.
    void refuse(const QString& text);
    /// What went wrong is tried again.
    void forgetRefusal();
    Q_INVOKABLE void undo();
    Q_INVOKABLE void clear();

signals:
    void changed();

private:
    void show(const QString& text, std::function<void()> undo, bool refused);

    QString text_;
    std::function<void()> undo_;
    bool refused_ = false;
    QTimer fades_;
};

}  // namespace spile::viewmodels

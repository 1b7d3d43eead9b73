#pragma once

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// The pages of the handbook, in Markdown, one at a time.
class HandbookViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(QList<QString> titles READ titles CONSTANT FINAL)
    /// The page that is read; -1: the list of them.
    Q_PROPERTY(int current READ current WRITE setCurrent NOTIFY changed FINAL)
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString text READ text NOTIFY changed FINAL)

public:
    explicit HandbookViewModel(QObject* parent = nullptr);

    [[nodiscard]] QStringList titles() const;
    [[nodiscard]] int current() const { return current_; }
    void setCurrent(int page);
    /// Turn to the page of that file; to the list if there is none.
    Q_INVOKABLE void turnTo(const QString& file);
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString text() const;

signals:
    void changed();

private:
    QStringList files_;
    int current_ = -1;
};

}  // namespace spile::viewmodels

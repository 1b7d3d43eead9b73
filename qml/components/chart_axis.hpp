#pragma once

#include <QFont>
#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

namespace spile::components {

/// Places the words of an axis so that none lies over another: it leaves out every second, or more,
/// if there is no room.
class ChartAxis : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QList<QString> words MEMBER words_ NOTIFY changed FINAL)
    /// Where the words belong, in units of the data; as many as there are words.
    Q_PROPERTY(QList<qreal> places MEMBER places_ NOTIFY changed FINAL)
    Q_PROPERTY(qreal from MEMBER from_ NOTIFY changed FINAL)
    Q_PROPERTY(qreal extent MEMBER extent_ NOTIFY changed FINAL)
    Q_PROPERTY(qreal length MEMBER length_ NOTIFY changed FINAL)
    Q_PROPERTY(qreal gap MEMBER gap_ NOTIFY changed FINAL)
    Q_PROPERTY(QFont font MEMBER font_ NOTIFY changed FINAL)
    /// Words stand below one another, the axis running upwards.
    Q_PROPERTY(bool upright MEMBER upright_ NOTIFY changed FINAL)
    /// The width of the widest word, in pixels.
    Q_PROPERTY(qreal widest READ widest NOTIFY changed FINAL)
    /// Where each word's mark lies on the axis, in pixels.
    Q_PROPERTY(QList<qreal> marks READ marks NOTIFY changed FINAL)
    /// Where each word begins (its left, or its top), in pixels, held within the axis.
    Q_PROPERTY(QList<qreal> begins READ begins NOTIFY changed FINAL)
    /// Of the words, the first and each so many after it have room; at least 1.
    Q_PROPERTY(int every READ every NOTIFY changed FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] qreal widest() const;
    [[nodiscard]] QList<qreal> marks() const;
    [[nodiscard]] QList<qreal> begins() const;
    [[nodiscard]] int every() const;

signals:
    void changed();

private:
    [[nodiscard]] qsizetype count() const;
    [[nodiscard]] QList<qreal> extents() const;

    QList<QString> words_;
    QList<qreal> places_;
    qreal from_ = 0, extent_ = 0, length_ = 0, gap_ = 0;
    QFont font_;
    bool upright_ = false;
};

}  // namespace spile::components

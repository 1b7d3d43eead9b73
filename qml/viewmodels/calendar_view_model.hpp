#pragma once

#include "core/cellar/acts/foreseeing.hpp"
#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/outlook_service.hpp"
#include "qml/viewmodels/rows.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// A barrel in the calendar. Times are shares of the span that is shown, 0 to 1; -1: none.
struct CalendarLine {
    QString id;
    QString title;     // the brewer's mark, or the code
    QString contents;  // the beer
    QString best;      // "3 Oct to 12 Dec: 7 in 10"
    QString next;      // "Taste on 14 Sep"
    qreal from = -1, to = -1, mark = -1;

    [[nodiscard]] QString key() const { return id; }
    friend bool operator==(const CalendarLine&, const CalendarLine&) = default;
};

class CalendarRows : public Rows<CalendarLine> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")

public:
    enum Role { BarrelId = Qt::UserRole, Title, Contents, Best, Next, From, To, Mark };

    using Rows<CalendarLine>::Rows;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
};

/// When the barrels are ready: all full ones by when they are best, over two years.
class CalendarViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(spile::viewmodels::CalendarRows* barrels READ barrels CONSTANT FINAL)
    Q_PROPERTY(bool loaded READ isLoaded NOTIFY changed FINAL)
    Q_PROPERTY(bool empty READ isEmpty NOTIFY changed FINAL)
    Q_PROPERTY(bool learning READ isLearning NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> months READ months NOTIFY changed FINAL)
    Q_PROPERTY(QList<qreal> monthPlaces READ monthPlaces NOTIFY changed FINAL)
    /// Where now lies in what is shown.
    Q_PROPERTY(qreal now READ now NOTIFY changed FINAL)

public:
    CalendarViewModel(Context& context, OutlookService& service, QObject* parent = nullptr);

    void setShown(bool shown);
    Q_INVOKABLE void more();

    [[nodiscard]] CalendarRows* barrels() { return &rows_; }
    [[nodiscard]] bool isLoaded() const { return loaded_; }
    [[nodiscard]] bool isEmpty() const { return loaded_ && rows_.rowCount() == 0; }
    [[nodiscard]] bool isLearning() const { return !service_.hasLearned(); }
    [[nodiscard]] QList<QString> months() const { return months_; }
    [[nodiscard]] QList<qreal> monthPlaces() const { return monthPlaces_; }
    [[nodiscard]] qreal now() const;

signals:
    void changed();

private:
    void refresh();
    void take(const std::vector<cellar::ForeseenBarrel>& rows);
    [[nodiscard]] CalendarLine lineOf(const cellar::ForeseenBarrel& row) const;
    [[nodiscard]] qreal shareOf(Instant at) const;

    Context& context_;
    OutlookService& service_;
    CalendarRows rows_;
    Instant from_, to_;
    QList<QString> months_;
    QList<qreal> monthPlaces_;
    int wanted_;
    bool shown_ = false;
    bool loaded_ = false;
    bool complete_ = false;
};

}  // namespace spile::viewmodels

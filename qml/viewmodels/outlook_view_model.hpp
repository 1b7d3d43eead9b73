#pragma once

#include "qml/viewmodels/barrel_view_model.hpp"
#include "qml/viewmodels/outlook_rows.hpp"
#include "qml/viewmodels/outlook_service.hpp"

#include <QObject>
#include <QRectF>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// The outlook of the barrel that is shown: advice, the next tasting, and each attribute's course,
/// which a reader's line is moved over. Nothing of it is read while its scores must not be seen.
class OutlookViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(QString barrelName READ barrelName NOTIFY changed FINAL)
    Q_PROPERTY(QString beer READ beer NOTIFY changed FINAL)
    Q_PROPERTY(bool hidden READ isHidden NOTIFY changed FINAL)
    Q_PROPERTY(bool loaded READ isLoaded NOTIFY changed FINAL)
    /// Why there is no outlook; empty if there is one or none has been looked for yet.
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    /// The records have not been read through yet since the start.
    Q_PROPERTY(bool learning READ isLearning NOTIFY changed FINAL)
    Q_PROPERTY(QString advice READ advice NOTIFY changed FINAL)
    Q_PROPERTY(bool windows READ hasWindows NOTIFY changed FINAL)
    Q_PROPERTY(QString nextDate READ nextDate NOTIFY changed FINAL)
    Q_PROPERTY(QString nextReason READ nextReason NOTIFY changed FINAL)
    /// Of all charts: days since the fill; scores of the ladder, or chances in tenths.
    Q_PROPERTY(QRectF scoreRange READ scoreRange NOTIFY changed FINAL)
    Q_PROPERTY(QRectF chanceRange READ chanceRange NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> months READ months NOTIFY changed FINAL)
    Q_PROPERTY(QList<qreal> monthPlaces READ monthPlaces NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> rungs READ rungs CONSTANT FINAL)
    Q_PROPERTY(QList<qreal> rungPlaces READ rungPlaces CONSTANT FINAL)
    Q_PROPERTY(QList<QString> chanceWords READ chanceWords CONSTANT FINAL)
    Q_PROPERTY(QList<qreal> chancePlaces READ chancePlaces CONSTANT FINAL)
    Q_PROPERTY(QList<QPointF> inside READ inside NOTIFY changed FINAL)
    Q_PROPERTY(QList<QPointF> past READ past NOTIFY changed FINAL)
    Q_PROPERTY(QList<QPointF> bestLower READ bestLower NOTIFY changed FINAL)
    Q_PROPERTY(QList<QPointF> bestUpper READ bestUpper NOTIFY changed FINAL)
    Q_PROPERTY(QList<QPointF> nowInScores READ nowInScores NOTIFY changed FINAL)
    Q_PROPERTY(QString chanceSpoken READ chanceSpoken NOTIFY changed FINAL)
    Q_PROPERTY(spile::viewmodels::AttributeRows* attributes READ attributes CONSTANT FINAL)
    Q_PROPERTY(bool scored READ isScored NOTIFY changed FINAL)
    Q_PROPERTY(spile::viewmodels::SaidRows* calls READ calls CONSTANT FINAL)
    /// Where the reader's line stands, in days since the fill, and what is read there: the chance,
    /// and of each attribute in turn.
    Q_PROPERTY(qreal reader READ reader NOTIFY readerMoved FINAL)
    Q_PROPERTY(QString chanceRead READ chanceRead NOTIFY readerMoved FINAL)
    Q_PROPERTY(QList<QString> attributesRead READ attributesRead NOTIFY readerMoved FINAL)

public:
    OutlookViewModel(Context& context, BarrelViewModel& barrel, OutlookService& service,
                     QObject* parent = nullptr);

    /// Its page is shown, or not any more.
    void setShown(bool shown);
    /// Put the reader's line there, as far as the charts go.
    Q_INVOKABLE void readAt(qreal day);

    [[nodiscard]] QString barrelName() const { return barrel_.name(); }
    [[nodiscard]] QString beer() const { return barrel_.contents(); }
    [[nodiscard]] bool isHidden() const { return barrel_.areScoresHidden(); }
    [[nodiscard]] bool isLoaded() const { return outlook_.has_value(); }
    [[nodiscard]] QString problem() const { return problem_; }
    [[nodiscard]] bool isLearning() const { return !service_.hasLearned(); }
    [[nodiscard]] QString advice() const;
    [[nodiscard]] bool hasWindows() const;
    [[nodiscard]] QString nextDate() const;
    [[nodiscard]] QString nextReason() const;
    [[nodiscard]] QRectF scoreRange() const;
    [[nodiscard]] QRectF chanceRange() const;
    [[nodiscard]] QList<QString> months() const { return months_; }
    [[nodiscard]] QList<qreal> monthPlaces() const { return monthPlaces_; }
    [[nodiscard]] static QList<QString> rungs();
    [[nodiscard]] static QList<qreal> rungPlaces();
    [[nodiscard]] QList<QString> chanceWords() const;
    [[nodiscard]] static QList<qreal> chancePlaces();
    [[nodiscard]] QList<QPointF> inside() const { return inside_; }
    [[nodiscard]] QList<QPointF> past() const { return past_; }
    [[nodiscard]] QList<QPointF> bestLower() const;
    [[nodiscard]] QList<QPointF> bestUpper() const;
    [[nodiscard]] QList<QPointF> nowInScores() const;
    [[nodiscard]] QString chanceSpoken() const;
    [[nodiscard]] AttributeRows* attributes() { return &attributes_; }
    [[nodiscard]] bool isScored() const { return attributes_.rowCount() > 0; }
    [[nodiscard]] SaidRows* calls() { return &calls_; }
    [[nodiscard]] qreal reader() const { return reader_; }
    [[nodiscard]] QString chanceRead() const { return chanceRead_; }
    [[nodiscard]] QList<QString> attributesRead() const { return attributesRead_; }
    /// What is shown, for those that compare with it; none if nothing is.
    [[nodiscard]] const std::optional<outlook::BarrelOutlook>& outlook() const { return outlook_; }

signals:
    void changed();
    void readerMoved();

private:
    // Until it is known whether a sheet is open, too.
    [[nodiscard]] bool mayNotBeSeen() const { return !barrel_.isLoaded() || isHidden(); }
    void barrelChanged();
    void refresh();
    void clear();
    void take(outlook::BarrelOutlook outlook, const cellar::BarrelHistory& history);
    void takeCalls(const cellar::BarrelHistory& history);
    [[nodiscard]] qreal days(Instant at) const;

    Context& context_;
    BarrelViewModel& barrel_;
    OutlookService& service_;
    SubjectId shownBarrel_;
    std::optional<outlook::BarrelOutlook> outlook_;
    AttributeRows attributes_;
    SaidRows calls_;
    QList<QString> months_;
    QList<qreal> monthPlaces_;
    QList<QPointF> inside_, past_;
    QString problem_, chanceRead_;
    QList<QString> attributesRead_;
    qreal reader_ = 0;
    bool shown_ = false;
};

}  // namespace spile::viewmodels

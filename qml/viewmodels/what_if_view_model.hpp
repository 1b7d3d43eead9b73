#pragma once

#include "qml/viewmodels/outlook_view_model.hpp"

#include <QObject>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// What would become of the barrel whose outlook is shown in a warmer or cooler place, after a
/// top-up, or mixed with another barrel: beside what becomes of it as it is. Nothing is recorded.
class WhatIfViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(QString barrelName READ barrelName NOTIFY changed FINAL)
    Q_PROPERTY(bool hidden READ isHidden NOTIFY changed FINAL)
    /// The air of its place now; empty if it was never recorded.
    Q_PROPERTY(QString placeNow READ placeNow NOTIFY changed FINAL)
    Q_PROPERTY(QString temperature READ temperature NOTIFY changed FINAL)
    Q_PROPERTY(QString temperatureUnit READ temperatureUnit NOTIFY changed FINAL)
    Q_PROPERTY(QString temperatureStep READ temperatureStep NOTIFY changed FINAL)
    Q_PROPERTY(QString temperatureBigStep READ temperatureBigStep NOTIFY changed FINAL)
    Q_PROPERTY(bool temperatureKnown READ isTemperatureKnown NOTIFY changed FINAL)
    Q_PROPERTY(QString topUp READ topUp NOTIFY changed FINAL)
    Q_PROPERTY(bool topUpKnown READ isTopUpKnown NOTIFY changed FINAL)
    Q_PROPERTY(QString volumeStep READ volumeStep NOTIFY changed FINAL)
    Q_PROPERTY(QString bigVolumeStep READ bigVolumeStep NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> others READ others NOTIFY changed FINAL)
    Q_PROPERTY(int other READ other NOTIFY changed FINAL)
    Q_PROPERTY(QString share READ share NOTIFY changed FINAL)
    Q_PROPERTY(bool anything READ isAnything NOTIFY changed FINAL)
    Q_PROPERTY(QString error READ error NOTIFY changed FINAL)
    /// As it is, and as it would be.
    Q_PROPERTY(QString adviceNow READ adviceNow NOTIFY changed FINAL)
    Q_PROPERTY(QString adviceThen READ adviceThen NOTIFY changed FINAL)
    Q_PROPERTY(QString bestNow READ bestNow NOTIFY changed FINAL)
    Q_PROPERTY(QString bestThen READ bestThen NOTIFY changed FINAL)
    Q_PROPERTY(QString tasteNow READ tasteNow NOTIFY changed FINAL)
    Q_PROPERTY(QString tasteThen READ tasteThen NOTIFY changed FINAL)
    Q_PROPERTY(QList<QPointF> insideThen READ insideThen NOTIFY changed FINAL)

public:
    WhatIfViewModel(Context& context, BarrelViewModel& barrel, OutlookViewModel& outlook,
                    OutlookService& service, QObject* parent = nullptr);

    /// Begin with nothing changed.
    void begin();

    Q_INVOKABLE void stepTemperature(int count);
    Q_INVOKABLE void stepTopUp(int count);
    /// Choose the barrel to mix with; the chosen one again: none.
    Q_INVOKABLE void chooseOther(int index);
    Q_INVOKABLE void stepShare(int count);
    /// As it is again.
    Q_INVOKABLE void reset();

    [[nodiscard]] QString barrelName() const { return barrel_.name(); }
    [[nodiscard]] bool isHidden() const { return barrel_.areScoresHidden(); }
    [[nodiscard]] QString placeNow() const;
    [[nodiscard]] QString temperature() const;
    [[nodiscard]] QString temperatureUnit() const;
    [[nodiscard]] QString temperatureStep() const;
    [[nodiscard]] QString temperatureBigStep() const;
    [[nodiscard]] bool isTemperatureKnown() const { return celsius_.has_value(); }
    [[nodiscard]] QString topUp() const;
    [[nodiscard]] bool isTopUpKnown() const { return topUp_.has_value(); }
    [[nodiscard]] QString volumeStep() const;
    [[nodiscard]] QString bigVolumeStep() const;
    [[nodiscard]] QList<QString> others() const;
    [[nodiscard]] int other() const { return other_; }
    [[nodiscard]] QString share() const;
    [[nodiscard]] bool isAnything() const { return celsius_ || topUp_ || other_ >= 0; }
    [[nodiscard]] QString error() const { return error_; }
    [[nodiscard]] QString adviceNow() const;
    [[nodiscard]] QString adviceThen() const;
    [[nodiscard]] QString bestNow() const;
    [[nodiscard]] QString bestThen() const;
    [[nodiscard]] QString tasteNow() const;
    [[nodiscard]] QString tasteThen() const;
    [[nodiscard]] QList<QPointF> insideThen() const;

signals:
    void changed();

private:
    void readAround();
    void changeSoon();
    void compute();
    [[nodiscard]] bool us() const { return context_.formats.units == Formats::Units::Us; }
    [[nodiscard]] Volume held() const;
    [[nodiscard]] Volume stepSize() const;
    [[nodiscard]] outlook::WhatIf change() const;
    [[nodiscard]] QString bestOf(const std::optional<outlook::BarrelOutlook>& outlook) const;
    [[nodiscard]] QString tasteOf(const std::optional<outlook::BarrelOutlook>& outlook) const;

    Context& context_;
    BarrelViewModel& barrel_;
    OutlookViewModel& outlook_;
    OutlookService& service_;
    std::vector<cellar::BarrelRow> others_;
    std::optional<cellar::ClimateRow> climate_;
    std::optional<double> celsius_;
    std::optional<Volume> topUp_;
    int other_ = -1;
    int sharePercent_ = 50;
    std::optional<outlook::BarrelOutlook> then_;
    QString error_;
    QTimer settling_;
    int asked_ = 0;  // which question the answer must be to
};

}  // namespace spile::viewmodels

#pragma once

#include "core/cellar/queries.hpp"
#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/people_view_model.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// The air where a barrel lies, entered by hand; it drives what the barrel loses.
class ClimateViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(QString place READ place NOTIFY changed FINAL)
    /// What was recorded last; empty if nothing was.
    Q_PROPERTY(QString last READ last NOTIFY changed FINAL)
    Q_PROPERTY(QString temperature READ temperature NOTIFY changed FINAL)
    Q_PROPERTY(QString temperatureUnit READ temperatureUnit NOTIFY changed FINAL)
    Q_PROPERTY(QString temperatureStep READ temperatureStep NOTIFY changed FINAL)
    Q_PROPERTY(QString temperatureBigStep READ temperatureBigStep NOTIFY changed FINAL)
    Q_PROPERTY(QString humidity READ humidity NOTIFY changed FINAL)
    Q_PROPERTY(bool temperatureKnown READ isTemperatureKnown NOTIFY changed FINAL)
    Q_PROPERTY(bool humidityKnown READ isHumidityKnown NOTIFY changed FINAL)
    Q_PROPERTY(bool canRecord READ canRecord NOTIFY changed FINAL)
    Q_PROPERTY(QString missing READ missing NOTIFY changed FINAL)
    Q_PROPERTY(QString error READ error NOTIFY changed FINAL)

public:
    ClimateViewModel(Context& context, PeopleViewModel& people, QObject* parent = nullptr);

    /// For the room where that barrel lies.
    void begin(const cellar::BarrelRow& barrel);

    [[nodiscard]] QString place() const { return place_; }
    [[nodiscard]] QString last() const;
    [[nodiscard]] QString temperature() const;
    [[nodiscard]] QString temperatureUnit() const;
    [[nodiscard]] QString temperatureStep() const;
    [[nodiscard]] QString temperatureBigStep() const;
    [[nodiscard]] QString humidity() const;
    [[nodiscard]] bool isTemperatureKnown() const { return celsius_.has_value(); }
    [[nodiscard]] bool isHumidityKnown() const { return humidity_.has_value(); }
    [[nodiscard]] bool canRecord() const { return !busy_ && missing().isEmpty(); }
    [[nodiscard]] QString missing() const;
    [[nodiscard]] QString error() const { return error_; }

    Q_INVOKABLE void stepTemperature(int count);
    Q_INVOKABLE void stepHumidity(int count);
    Q_INVOKABLE void record();

signals:
    void changed();
    void recorded();

private:
    [[nodiscard]] bool us() const { return context_.formats.units == Formats::Units::Us; }

    Context& context_;
    PeopleViewModel& people_;
    QString place_;
    std::optional<SubjectId> placeId_;
    std::optional<cellar::ClimateRow> last_;
    std::optional<double> celsius_;
    std::optional<int> humidity_;  // %
    QString error_;
    bool busy_ = false;
};

}  // namespace spile::viewmodels

#pragma once

#include "core/cellar/queries.hpp"
#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/people_view_model.hpp"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// A sample is drawn: how, and how much.
class DrawingViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(QString barrelName READ barrelName NOTIFY changed FINAL)
    Q_PROPERTY(QString barrelId READ barrelId NOTIFY changed FINAL)
    Q_PROPERTY(QString contents READ contents NOTIFY changed FINAL)
    Q_PROPERTY(QString caution READ caution NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> methods READ methods CONSTANT FINAL)
    Q_PROPERTY(int method READ method WRITE setMethod NOTIFY changed FINAL)
    Q_PROPERTY(QString volume READ volume NOTIFY changed FINAL)
    Q_PROPERTY(QString smallStep READ smallStep NOTIFY changed FINAL)
    Q_PROPERTY(QString bigStep READ bigStep NOTIFY changed FINAL)
    Q_PROPERTY(bool canLess READ canLess NOTIFY changed FINAL)
    Q_PROPERTY(bool canRecord READ canRecord NOTIFY changed FINAL)
    Q_PROPERTY(QString error READ error NOTIFY changed FINAL)

public:
    DrawingViewModel(Context& context, PeopleViewModel& people, QObject* parent = nullptr);

    void open(const cellar::BarrelRow& barrel);
    /// The same for a glass of a flight.
    void openGlass(const cellar::BarrelRow& barrel, const SubjectId& flight, int glass);

    [[nodiscard]] QString barrelName() const;
    [[nodiscard]] QString barrelId() const { return textOf(barrel_.barrel); }
    [[nodiscard]] QString contents() const;
    [[nodiscard]] QString caution() const;
    [[nodiscard]] QStringList methods() const;
    [[nodiscard]] int method() const { return method_; }
    void setMethod(int method);
    [[nodiscard]] QString volume() const;
    [[nodiscard]] QString smallStep() const;
    [[nodiscard]] QString bigStep() const;
    [[nodiscard]] bool canLess() const;
    [[nodiscard]] bool canRecord() const { return !busy_ && people_.who().has_value(); }
    [[nodiscard]] QString error() const { return error_; }

    Q_INVOKABLE void step(int count);
    /// Record the draw; `drawn` follows when it is durable.
    Q_INVOKABLE void record();

signals:
    void changed();
    void drawn(const QString& barrelId);

private:
    [[nodiscard]] Volume stepSize() const;

    Context& context_;
    PeopleViewModel& people_;
    cellar::BarrelRow barrel_;
    std::optional<SubjectId> flight_;
    std::optional<int> glass_;
    int method_ = 0;
    Volume volume_;
    bool busy_ = false;
    QString error_;
};

}  // namespace spile::viewmodels

#pragma once

#include "qml/viewmodels/barrel_view_model.hpp"
#include "qml/viewmodels/open_work_view_model.hpp"
#include "qml/viewmodels/work_sheets.hpp"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// The work sheets that suit the barrel that is shown.
class SheetsViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(QString barrelName READ barrelName NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> titles READ titles NOTIFY changed FINAL)
    /// How many steps each has, or that it is open.
    Q_PROPERTY(QList<QString> hints READ hints NOTIFY changed FINAL)
    /// The one that comes next by what is due, as an index; -1: none.
    Q_PROPERTY(int next READ next NOTIFY changed FINAL)
    /// What the barrel's page says of open work, empty if there is none: "Go on: Fill".
    Q_PROPERTY(QString openText READ openText NOTIFY changed FINAL)

public:
    SheetsViewModel(Context& context, BarrelViewModel& barrel, OpenWorkViewModel& open,
                    const WorkSheets& sheets, QObject* parent = nullptr);

    [[nodiscard]] QString barrelName() const { return barrel_.name(); }
    [[nodiscard]] QStringList titles() const;
    [[nodiscard]] QStringList hints() const;
    [[nodiscard]] int next() const;
    [[nodiscard]] QString openText() const;

    Q_INVOKABLE void choose(int index);

signals:
    void changed();
    void chosen(const std::string& sheet);

private:
    [[nodiscard]] std::vector<const plan::Sheet*> offered() const;

    Context& context_;
    BarrelViewModel& barrel_;
    OpenWorkViewModel& open_;
    const WorkSheets& sheets_;
};

/// The sheet for what is due next with a barrel; empty if it is no work of a sheet.
[[nodiscard]] std::string sheetForStep(std::string_view nextStep);

}  // namespace spile::viewmodels

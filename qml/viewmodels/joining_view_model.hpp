#pragma once

#include "qml/viewmodels/context.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// Whose cellar this is and which device this is: the code that a desk lets it in by.
class JoiningViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(QString cellarName READ cellarName NOTIFY changed FINAL)
    Q_PROPERTY(QString ownCode READ ownCode NOTIFY changed FINAL)
    /// The same as a symbol: a path of the Drawing on a square of so many modules.
    Q_PROPERTY(QString symbol READ symbol NOTIFY changed FINAL)
    Q_PROPERTY(int symbolSide READ symbolSide NOTIFY changed FINAL)
    Q_PROPERTY(bool admitted READ isAdmitted NOTIFY changed FINAL)
    /// What it records now is set aside.
    Q_PROPERTY(bool cutOff READ isCutOff NOTIFY changed FINAL)
    /// A newer version wrote the cellar: nothing is recorded here.
    Q_PROPERTY(bool readsOnly READ readsOnly NOTIFY changed FINAL)
    Q_PROPERTY(bool mayAdmit READ mayAdmit NOTIFY changed FINAL)

public:
    explicit JoiningViewModel(Context& context, QObject* parent = nullptr);

    void refresh();

    [[nodiscard]] QString cellarName() const { return cellarName_; }
    [[nodiscard]] QString ownCode() const { return ownCode_; }
    [[nodiscard]] QString symbol() const { return symbol_; }
    [[nodiscard]] int symbolSide() const { return symbolSide_; }
    [[nodiscard]] bool isAdmitted() const { return admitted_; }
    [[nodiscard]] bool isCutOff() const { return cutOff_; }
    [[nodiscard]] bool readsOnly() const { return readsOnly_; }
    [[nodiscard]] bool mayAdmit() const { return mayAdmit_; }

signals:
    void changed();

private:
    Context& context_;
    QString cellarName_, ownCode_, symbol_;
    int symbolSide_ = 0;
    bool admitted_ = true;
    bool mayAdmit_ = false;
    bool cutOff_ = false;
    bool readsOnly_ = false;
};

}  // namespace spile::viewmodels

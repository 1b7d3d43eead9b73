#pragma once

#include "qml/viewmodels/context.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// Whose cellar this is and which device this is: the code that a desk lets it in by, and letting
/// others in.
class JoiningViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(QString cellarName READ cellarName NOTIFY changed FINAL)
    Q_PROPERTY(QString ownCode READ ownCode NOTIFY changed FINAL)
    Q_PROPERTY(bool admitted READ isAdmitted NOTIFY changed FINAL)
    /// What it records now is set aside.
    Q_PROPERTY(bool cutOff READ isCutOff NOTIFY changed FINAL)
    /// A newer version wrote the cellar: nothing is recorded here.
    Q_PROPERTY(bool readsOnly READ readsOnly NOTIFY changed FINAL)
    Q_PROPERTY(bool mayAdmit READ mayAdmit NOTIFY changed FINAL)
    Q_PROPERTY(QString code READ code WRITE setCode NOTIFY changed FINAL)
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY changed FINAL)
    Q_PROPERTY(QString result READ result NOTIFY changed FINAL)
    Q_PROPERTY(QString error READ error NOTIFY changed FINAL)

public:
    explicit JoiningViewModel(Context& context, QObject* parent = nullptr);

    void refresh();
    Q_INVOKABLE void admit();

    [[nodiscard]] QString cellarName() const { return cellarName_; }
    [[nodiscard]] QString ownCode() const { return ownCode_; }
    [[nodiscard]] bool isAdmitted() const { return admitted_; }
    [[nodiscard]] bool isCutOff() const { return cutOff_; }
    [[nodiscard]] bool readsOnly() const { return readsOnly_; }
    [[nodiscard]] bool mayAdmit() const { return mayAdmit_; }
    [[nodiscard]] QString code() const { return code_; }
    void setCode(const QString& code);
    [[nodiscard]] QString name() const { return name_; }
    void setName(const QString& name);
    [[nodiscard]] QString result() const { return result_; }
    [[nodiscard]] QString error() const { return error_; }

signals:
    void changed();

private:
    Context& context_;
    QString cellarName_, ownCode_, code_, name_, result_, error_;
    bool admitted_ = true;
    bool mayAdmit_ = false;
    bool cutOff_ = false;
    bool readsOnly_ = false;
};

}  // namespace spile::viewmodels

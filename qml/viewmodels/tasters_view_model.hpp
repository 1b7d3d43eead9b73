#pragma once

#include "core/plan/tasters.hpp"
#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/outlook_rows.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// What the tasters of this cellar are like, each beside the others. It shows no single score, so
/// it may be seen while scores are hidden.
class TastersViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    /// Each taster by name, and what is to be told them, a sentence a line.
    Q_PROPERTY(spile::viewmodels::SaidRows* tasters READ tasters CONSTANT FINAL)
    /// Each attribute, and how far the tasters agree on it.
    Q_PROPERTY(spile::viewmodels::SaidRows* attributes READ attributes CONSTANT FINAL)
    Q_PROPERTY(bool loaded READ isLoaded NOTIFY changed FINAL)
    Q_PROPERTY(bool empty READ isEmpty NOTIFY changed FINAL)
    /// Why the records could not be read; empty otherwise.
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)

public:
    explicit TastersViewModel(Context& context, QObject* parent = nullptr);

    /// While it is shown it follows the records.
    void setShown(bool shown);

    [[nodiscard]] SaidRows* tasters() { return &tasters_; }
    [[nodiscard]] SaidRows* attributes() { return &attributes_; }
    [[nodiscard]] bool isLoaded() const { return loaded_; }
    [[nodiscard]] bool isEmpty() const { return loaded_ && tasters_.rowCount() == 0; }
    [[nodiscard]] QString problem() const { return problem_; }

signals:
    void changed();

private:
    void refresh();
    void take(const plan::TastersOfCellar& told);

    Context& context_;
    SaidRows tasters_, attributes_;
    QString problem_;
    bool shown_ = false;
    bool loaded_ = false;
    bool running_ = false;
    bool again_ = false;
};

}  // namespace spile::viewmodels

#pragma once

#include "core/cellar/acts/windows.hpp"
#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/window_set.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// What the beer of a barrel should taste like: a range on the ladder for each attribute. What was
/// set is recorded once, when the page is left.
class WindowsViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(QString beer READ beer NOTIFY changed FINAL)
    Q_PROPERTY(bool loaded READ isLoaded NOTIFY changed FINAL)
    /// Whether it is known which beer the barrel holds.
    Q_PROPERTY(bool known READ isKnown NOTIFY changed FINAL)
    Q_PROPERTY(spile::viewmodels::WindowRows* windows READ windows CONSTANT FINAL)

public:
    explicit WindowsViewModel(Context& context, QObject* parent = nullptr);

    void open(const SubjectId& barrel);

    [[nodiscard]] QString beer() const { return beer_; }
    [[nodiscard]] bool isLoaded() const { return loaded_; }
    [[nodiscard]] bool isKnown() const { return !batch_.isZero(); }
    [[nodiscard]] WindowRows* windows() { return windows_.rows(); }

    Q_INVOKABLE void stepLow(int index, int by);
    Q_INVOKABLE void stepHigh(int index, int by);
    /// Give the attribute a window to begin from, or take its window off.
    Q_INVOKABLE void toggle(int index);
    /// Record what was changed; nothing if nothing was.
    void save();

signals:
    void changed();

private:
    Context& context_;
    WindowSet windows_;
    SubjectId barrel_, batch_;
    QString beer_;
    std::vector<cellar::Window> before_;  // as they are recorded
    bool loaded_ = false;
};

}  // namespace spile::viewmodels

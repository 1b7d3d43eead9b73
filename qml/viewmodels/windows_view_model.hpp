#pragma once

#include "core/cellar/acts/windows.hpp"
#include "core/cellar/queries.hpp"
#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/rows.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// The window of one attribute.
struct WindowLine {
    QString attribute;
    QString name;
    int low = 0;  // 0: no window
    int high = 0;
    QString text;  // "5 to 7, clear to strong"

    [[nodiscard]] QString key() const { return attribute; }
    friend bool operator==(const WindowLine&, const WindowLine&) = default;
};

class WindowRows : public Rows<WindowLine> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")

public:
    enum Role { Name = Qt::UserRole, WindowText, Given, CanLower, CanNarrow, CanRaise };

    using Rows<WindowLine>::Rows;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
};

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
    [[nodiscard]] WindowRows* windows() { return &rows_; }

    Q_INVOKABLE void stepLow(int index, int by);
    Q_INVOKABLE void stepHigh(int index, int by);
    /// Give the attribute a window to begin from, or take its window off.
    Q_INVOKABLE void toggle(int index);
    /// Record what was changed; nothing if nothing was.
    void save();

signals:
    void changed();

private:
    [[nodiscard]] cellar::Window* windowAt(int index);
    void show();

    Context& context_;
    WindowRows rows_;
    SubjectId barrel_, batch_;
    QString beer_;
    std::vector<cellar::Window> windows_;  // one for each line; low 0: none
    std::vector<cellar::Window> before_;   // as they are recorded
    bool loaded_ = false;
};

}  // namespace spile::viewmodels

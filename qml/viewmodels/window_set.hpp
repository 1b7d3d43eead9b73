#pragma once

#include "core/cellar/queries.hpp"
#include "qml/viewmodels/rows.hpp"

#include <QCoreApplication>
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

/// Windows that are being set on a page, a line for each attribute.
class WindowSet {
    Q_DECLARE_TR_FUNCTIONS(WindowSet)

public:
    [[nodiscard]] WindowRows* rows() { return &rows_; }

    /// Show these windows, then the attributes that have none.
    void begin(std::vector<cellar::Window> windows, const std::vector<std::string>& attributes);
    void clear() { begin({}, {}); }
    /// Those that are set.
    [[nodiscard]] std::vector<cellar::Window> given() const;

    void stepLow(int index, int by);
    void stepHigh(int index, int by);
    /// Give the attribute a window to begin from, or take its window off.
    void toggle(int index);

private:
    [[nodiscard]] static QString rungWord(int step);
    [[nodiscard]] static QString textOf(const cellar::Window& window);
    [[nodiscard]] cellar::Window* windowAt(int index);
    void show();

    WindowRows rows_;
    std::vector<cellar::Window> windows_;  // one for each line; low 0: none
};

}  // namespace spile::viewmodels

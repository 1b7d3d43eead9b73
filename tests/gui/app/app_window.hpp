#pragma once

#include "qml/viewmodels/app_view_model.hpp"

#include <QQmlEngine>
#include <QQuickItem>
#include <QQuickWindow>
#include <memory>

namespace spile::support {

/// The app's shell in a window, and a finger for it: for tests in C++.
class AppWindow {
public:
    explicit AppWindow(viewmodels::AppViewModel& app, QSize size = {390, 844});

    [[nodiscard]] QQuickWindow& window() { return window_; }
    [[nodiscard]] QQuickItem& shell() { return *shell_; }
    [[nodiscard]] QQmlEngine& engine() { return engine_; }
    void resize(QSize size);

    /// The first visible item with that objectName; null if there is none.
    [[nodiscard]] QQuickItem* find(const QString& name) const;
    /// Touch it for a moment, and let the app answer. False if it is not there or cannot be
    /// pressed.
    bool tap(const QString& name);
    /// Wait until the app has answered all. False if that takes too long.
    bool settle();

private:
    viewmodels::AppViewModel& app_;
    QQmlEngine engine_;
    QQuickWindow window_;
    std::unique_ptr<QQuickItem> shell_;
};

}  // namespace spile::support

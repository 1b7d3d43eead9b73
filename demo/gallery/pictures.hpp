#pragma once

#include <QImage>
#include <QQmlEngine>
#include <QQuickItem>
#include <QQuickWindow>
#include <QStringList>
#include <memory>

namespace spile::gallery {

/// The gallery in a window of its own, to be painted page by page.
///
/// Requires  a QGuiApplication; for the same pictures everywhere, the software renderer.
class Pictures {
public:
    Pictures();

    /// Return the names of the pages and of the palettes, in the order of their numbers.
    [[nodiscard]] QStringList pages() const;
    [[nodiscard]] static QStringList palettes();

    /// Show a page, without the bar to walk by; it has its size and is drawn when this returns.
    QQuickItem* show(int page, int palette, QSize size, double textScale = 1,
                     bool mirrored = false);
    /// Return what is shown, in pixels of the screen.
    [[nodiscard]] QImage grab();

    [[nodiscard]] QQuickWindow& window() { return window_; }

private:
    void waitForPhotos() const;

    QQmlEngine engine_;
    QQuickWindow window_;
    std::unique_ptr<QQuickItem> root_;
};

}  // namespace spile::gallery

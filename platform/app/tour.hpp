#pragma once

#include "qml/viewmodels/app_view_model.hpp"

#include <QQuickWindow>
#include <QString>
#include <functional>
#include <vector>

namespace spile::app {

/// Goes through every screen of the app, as a person would who does the whole job once. It records
/// what it has to, so give it a cellar that may be changed; with one that has barrels, as the
/// demo's has, all screens have something to show.
class Tour {
public:
    /// Called with each screen shown and at rest, and its name; false ends the tour.
    using Visit = std::function<bool(const QString& name)>;

    Tour(viewmodels::AppViewModel& app, QQuickWindow& window) : app_(app), window_(window) {}

    /// False if the cellar could not be opened, or `visit` ended it.
    [[nodiscard]] bool run(const Visit& visit);

    /// Wait until nothing that was asked for is outstanding and that has been drawn.
    void settle();

private:
    struct Scene {
        QString name;
        std::function<void()> go;
    };
    // Lets things happen until `done`, which is looked at again and again; false: it took too long.
    static bool waitFor(const std::function<bool()>& done);
    [[nodiscard]] bool begin(const Visit& visit);
    [[nodiscard]] std::vector<Scene> scenes();
    [[nodiscard]] std::vector<Scene> registering();
    [[nodiscard]] std::vector<Scene> tasting();
    [[nodiscard]] std::vector<Scene> recording();
    [[nodiscard]] std::vector<Scene> foreseeing();
    [[nodiscard]] std::vector<Scene> working();
    [[nodiscard]] std::vector<Scene> emptying();  // and all that follows until the bottle
    [[nodiscard]] std::vector<Scene> flying();
    [[nodiscard]] std::vector<Scene> benching();
    [[nodiscard]] std::vector<Scene> tastingBench();
    [[nodiscard]] std::vector<Scene> lots();
    [[nodiscard]] std::vector<Scene> tracing();
    [[nodiscard]] std::vector<Scene> exchanging();
    [[nodiscard]] std::vector<Scene> settling();
    void showBarrel();
    void showLot();
    [[nodiscard]] int heldPart();
    void goOnUntil(viewmodels::TastingViewModel::StepKind kind);

    viewmodels::AppViewModel& app_;
    QQuickWindow& window_;
};

}  // namespace spile::app

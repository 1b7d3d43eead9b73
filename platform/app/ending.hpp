#pragma once

#include "platform/app/options.hpp"
#include "qml/viewmodels/app_view_model.hpp"

#include <QQuickWindow>

namespace spile::app {

/// Go through every screen, write a picture of each if the options name a folder, and return what
/// the program ends with: 0, or 3 if a screen could not be shown or a picture not written.
///
/// `hasFailed` says whether QML has complained by then.
[[nodiscard]] int goThroughScreens(viewmodels::AppViewModel& app, QQuickWindow& window,
                                   const Options& options, const bool& hasFailed);

/// End the program when the first list of barrels has been drawn, and print the processor time it
/// took; for measuring starts.
void endAtFirstRows(viewmodels::AppViewModel& app, QQuickWindow& window);

}  // namespace spile::app

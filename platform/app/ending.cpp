#include "platform/app/ending.hpp"

#include "platform/app/tour.hpp"

#include <QCoreApplication>
#include <QDir>
#include <QImage>
#include <cstdio>
#include <ctime>

namespace spile::app {

namespace {

constexpr int refused = 3;

}  // namespace

int goThroughScreens(viewmodels::AppViewModel& app, QQuickWindow& window, const Options& options,
                     const bool& hasFailed)
{
    const QDir folder(options.pictures);
    if (!options.pictures.isEmpty() && !folder.mkpath(QStringLiteral("."))) {
        std::fprintf(stderr, "spile: %s cannot be made\n", qPrintable(options.pictures));
        return refused;
    }
    const bool done = Tour(app, window).run([&](const QString& name) {
        if (hasFailed) {
            std::fprintf(stderr, "spile: the screen %s cannot be shown\n", qPrintable(name));
            return false;
        }
        const QString file = folder.filePath(name + QStringLiteral(".png"));
        if (!options.pictures.isEmpty() && !window.grabWindow().save(file)) {
            std::fprintf(stderr, "spile: %s cannot be written\n", qPrintable(file));
            return false;
        }
        return true;
    });
    if (app.stage() == viewmodels::AppViewModel::Broken) {
        std::fprintf(stderr, "spile: %s\n", qPrintable(app.problem()));
    }
    return done && !hasFailed ? 0 : refused;
}

void endAtFirstRows(viewmodels::AppViewModel& app, QQuickWindow& window)
{
    QObject::connect(
        &window, &QQuickWindow::frameSwapped, &window,
        [&app] {
            if (app.due()->isLoaded()) {
                timespec spent{};
                clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &spent);
                std::printf("cpu_ms %.1f\n", static_cast<double>(spent.tv_sec) * 1e3 +
                                                 static_cast<double>(spent.tv_nsec) / 1e6);
                QCoreApplication::quit();
            }
        },
        Qt::QueuedConnection);
}

}  // namespace spile::app

// An empty Qt Quick window: what the start of the app is compared with. Ends at its first frame and
// prints the processor time that took.
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickWindow>
#include <cstdio>
#include <ctime>

int main(int argc, char** argv)
{
    QGuiApplication application(argc, argv);
    QQmlApplicationEngine engine;
    engine.loadData("import QtQuick\nWindow { visible: true; width: 390; height: 844 }");
    auto* window = qobject_cast<QQuickWindow*>(engine.rootObjects().value(0));
    if (window == nullptr) {
        return 2;
    }
    QObject::connect(
        window, &QQuickWindow::frameSwapped, window,
        [] {
            timespec spent{};
            clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &spent);
            std::printf("cpu_ms %.1f\n", static_cast<double>(spent.tv_sec) * 1e3 +
                                             static_cast<double>(spent.tv_nsec) / 1e6);
            QCoreApplication::quit();
        },
        Qt::QueuedConnection);
    return QGuiApplication::exec();
}

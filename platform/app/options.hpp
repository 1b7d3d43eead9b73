#pragma once

#include <QSize>
#include <QString>
#include <QUrl>

class QCoreApplication;

namespace spile::app {

/// What `spile` is started with.
struct Options {
    QString cellar;    // the cellar's folder
    QString settings;  // the file of this device's settings
    QUrl standIn;      // a picture, folder or video in the camera's place
    QSize size{390, 844};
    QString pictures;  // where to write a picture of every screen; empty: nowhere
    bool selfTest = false;
    bool quitAtFirstRows = false;
    QString dayFile;  // to be taken in
};

/// Read the command line; ends the program on wrong use (2), --help and --version (0).
[[nodiscard]] Options readOptions(QCoreApplication& application);

}  // namespace spile::app

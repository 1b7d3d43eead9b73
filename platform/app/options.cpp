#include "platform/app/options.hpp"

#include <QCommandLineParser>
#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>
#include <cstdio>
#include <cstdlib>

namespace spile::app {

namespace {

[[noreturn]] void refuse(const QString& why)
{
    std::fprintf(stderr, "spile: %s\n", qPrintable(why));
    std::exit(2);
}

QSize sizeFrom(const QString& text)
{
    const QStringList parts = text.split(QLatin1Char('x'));
    bool wideGood = false;
    bool highGood = false;
    const QSize size = parts.size() == 2
                           ? QSize(parts.at(0).toInt(&wideGood), parts.at(1).toInt(&highGood))
                           : QSize();
    constexpr int least = 200;
    constexpr int most = 8000;
    if (!wideGood || !highGood || size.width() < least || size.height() < least ||
        size.width() > most || size.height() > most) {
        refuse(QStringLiteral("--size %1 is not a size such as 390x844 (%2 to %3 each)")
                   .arg(text)
                   .arg(least)
                   .arg(most));
    }
    return size;
}

QUrl existing(const QString& path)
{
    const QFileInfo info(path);
    if (!info.exists()) {
        refuse(QStringLiteral("--camera %1 does not exist").arg(path));
    }
    return QUrl::fromLocalFile(info.absoluteFilePath());
}

}  // namespace

Options readOptions(QCoreApplication& application)
{
    const QString data = QStandardPaths::writableLocation(QStandardPaths::AppDataLocation);
    QCommandLineParser parser;
    parser.setApplicationDescription(
        QStringLiteral("Spile: the records of beer that ages in spirit barrels."));
    parser.addHelpOption();
    parser.addVersionOption();
    const QCommandLineOption cellar(
        QStringLiteral("cellar"),
        QStringLiteral("The cellar's folder (default: %1/cellar).").arg(data),
        QStringLiteral("DIR"), data + QStringLiteral("/cellar"));
    const QCommandLineOption settings(QStringLiteral("settings"),
                                      QStringLiteral("The file of this device's settings."),
                                      QStringLiteral("FILE"));
    const QCommandLineOption camera(
        QStringLiteral("camera"),
        QStringLiteral("A picture, a folder of pictures or a video in the camera's place."),
        QStringLiteral("FILE"));
    const QCommandLineOption size(QStringLiteral("size"), QStringLiteral("The window's size."),
                                  QStringLiteral("WxH"), QStringLiteral("390x844"));
    const QCommandLineOption pictures(QStringLiteral("pictures"),
                                      QStringLiteral("Write a picture of every screen and end."),
                                      QStringLiteral("DIR"));
    const QCommandLineOption selfTest(
        QStringLiteral("self-test"),
        QStringLiteral("Load every screen and end: 0 if all is well."));
    const QCommandLineOption quit(QStringLiteral("quit-at-first-rows"),
                                  QStringLiteral("End as soon as the first list is shown."));
    parser.addOptions({cellar, settings, camera, size, pictures, selfTest, quit});
    parser.addPositionalArgument(QStringLiteral("FILE"), QStringLiteral("A day file to take in."),
                                 QStringLiteral("[FILE]"));
    parser.process(application);
    const QStringList files = parser.positionalArguments();
    if (files.size() > 1) {
        refuse(QStringLiteral("one day file at a time, not %1").arg(files.size()));
    }
    Options options;
    options.cellar = QFileInfo(parser.value(cellar)).absoluteFilePath();
    options.settings =
        parser.isSet(settings) ? parser.value(settings) : options.cellar + QStringLiteral(".ini");
    options.standIn = parser.isSet(camera) ? existing(parser.value(camera)) : QUrl();
    options.size = sizeFrom(parser.value(size));
    options.pictures = parser.value(pictures);
    options.selfTest = parser.isSet(selfTest);
    options.quitAtFirstRows = parser.isSet(quit);
    options.dayFile =
        files.isEmpty() ? QString() : QFileInfo(files.constFirst()).absoluteFilePath();
    return options;
}

}  // namespace spile::app

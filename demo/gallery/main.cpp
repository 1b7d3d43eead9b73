#include "demo/gallery/pictures.hpp"

#include <QCommandLineParser>
#include <QDir>
#include <QGuiApplication>
#include <QQuickView>
#include <QTextStream>

namespace {

int complain(const QString& what)
{
    QTextStream(stderr) << what << '\n';
    return 2;
}

// Writes each page in each palette as PAGE-PALETTE.png.
int writePictures(const QString& folder, QSize size, double textScale)
{
    if (!QDir().mkpath(folder)) {
        return complain(QStringLiteral("cannot make %1").arg(folder));
    }
    spile::gallery::Pictures pictures;
    const QStringList pages = pictures.pages();
    const QStringList palettes = spile::gallery::Pictures::palettes();
    for (int page = 0; page < pages.size(); ++page) {
        for (int palette = 0; palette < palettes.size(); ++palette) {
            const QString file = QStringLiteral("%1/%2-%3.png")
                                     .arg(folder, pages[page].toLower(), palettes[palette]);
            pictures.show(page, palette, size, textScale);
            if (!pictures.grab().save(file)) {
                return complain(QStringLiteral("cannot write %1").arg(file));
            }
        }
    }
    return 0;
}

int showGallery(QSize size)
{
    QQuickView view;
    QQmlComponent component(view.engine());
    component.setData("import Spile.Gallery\nGallery {}", QUrl(QStringLiteral("qrc:/gallery.qml")));
    view.setResizeMode(QQuickView::SizeRootObjectToView);
    view.setContent(QUrl(QStringLiteral("qrc:/gallery.qml")), &component, component.create());
    view.resize(size);
    view.show();
    return QGuiApplication::exec();
}

}  // namespace

int main(int argc, char** argv)
{
    const QGuiApplication app(argc, argv);
    QCommandLineParser parser;
    parser.setApplicationDescription(
        QStringLiteral("Shows every component of the app with invented data."));
    parser.addHelpOption();
    const QCommandLineOption folder(QStringLiteral("pictures"),
                                    QStringLiteral("Write each page in each palette, and end."),
                                    QStringLiteral("DIR"));
    const QCommandLineOption size(QStringLiteral("size"), QStringLiteral("Of the window."),
                                  QStringLiteral("WxH"), QStringLiteral("390x844"));
    const QCommandLineOption text(QStringLiteral("text"), QStringLiteral("Size of text, 1 to 2."),
                                  QStringLiteral("SCALE"), QStringLiteral("1"));
    parser.addOptions({folder, size, text});
    parser.process(app);

    const QStringList sides = parser.value(size).split(u'x');
    const QSize wanted(sides.value(0).toInt(), sides.value(1).toInt());
    if (sides.size() != 2 || wanted.isEmpty()) {
        return complain(QStringLiteral("--size asks for WxH, such as 390x844"));
    }
    return parser.isSet(folder)
               ? writePictures(parser.value(folder), wanted, parser.value(text).toDouble())
               : showGallery(wanted);
}

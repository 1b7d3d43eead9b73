// Pictures that the app reads, and what is read in those that it prints: a part of test_app.cpp.
#include "core/picture/encode.hpp"
#include "core/scan/reader.hpp"
#include "demo/pictures/head.hpp"
#include "demo/pictures/sample.hpp"
#include "tests/gui/app/must.hpp"
#include "tests/gui/app/test_app.hpp"
#include "tests/support/head_film.hpp"
#include "tests/support/printed_pages.hpp"
#include "tests/support/symbol_pictures.hpp"

#include <QFile>
#include <QImage>
#include <QQuickItem>
#include <QQuickWindow>

namespace spile::support {

namespace {

void writeFile(const QString& path, const Bytes& bytes)
{
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(reinterpret_cast<const char*>(bytes.data()),
                                                       static_cast<qint64>(bytes.size())) < 0) {
        qFatal("%s cannot be written", qPrintable(path));
    }
}

}  // namespace

QString TestApp::headPicture(const QString& mark)
{
    const auto* found = [&]() -> const viewmodels::BarrelLine* {
        for (const viewmodels::BarrelLine& line : app_->due()->barrels()->rows()) {
            if (line.title == mark) {
                return &line;
            }
        }
        return nullptr;
    }();
    if (found == nullptr) {
        qFatal("no barrel %s", qPrintable(mark));
    }
    demo::HeadScene scene;
    const std::string code = scan::tidied(found->code.toStdString());
    scene.labelText = scan::labelText({"TEST", code});
    scene.shownCode = scan::shown(code);
    scene.mark = mark.toStdString();
    scene.width = 1280;
    scene.height = 960;
    const QString path = QString::fromStdString((device_->folder.path() / "head.jpg").string());
    writeFile(path, must(picture::encodeJpeg(demo::renderHead(scene), 85)));
    return path;
}

QString TestApp::headFilm(const QString& mark, bool hard)
{
    const QString path = QString::fromStdString((device_->folder.path() / "head.avi").string());
    writeFile(path, support::headFilm({"TEST", barrels_.at(mark).code}, mark.toStdString(),
                                      hard ? HeadFilm::Hard : HeadFilm::Clear));
    return path;
}

QString TestApp::samplePicture()
{
    demo::SampleScene scene;
    scene.width = 600;
    scene.height = 800;
    const QString path = QString::fromStdString((device_->folder.path() / "sample.jpg").string());
    writeFile(path, must(picture::encodeJpeg(demo::renderSample(scene), 85)));
    return path;
}

QString TestApp::symbolPicture(const QString& text) const
{
    const QString path = QString::fromStdString((device_->folder.path() / "symbol.png").string());
    const picture::Image symbol = drawSymbol(text.toStdString(), {.pixelsPerModule = 8});
    picture::Image frame = plainPicture(800, 600, 90);
    paste(frame, symbol, 200, 100);
    writeFile(path, must(picture::encodePng(frame)));
    return path;
}

QStringList TestApp::symbolsOn(QObject* root) const
{
    QQuickWindow* window = qobject_cast<QQuickItem*>(root)->window();
    const QImage seen = window->grabWindow().convertToFormat(QImage::Format_Grayscale8);
    QStringList texts;
    for (const scan::Code& code :
         must(scan::readPicture({seen.constBits(), seen.width(), seen.height(),
                                 static_cast<int>(seen.bytesPerLine()), 1}))) {
        texts << QString::fromStdString(code.text);
    }
    return texts;
}

QStringList TestApp::symbolsIn(const QString& file) const
{
    QStringList texts;
    constexpr int dots = 150;
    for (const picture::Image& page : printed(file.toStdString(), dots)) {
        for (const scan::Code& code : must(scan::readPicture(picture::viewOf(page)))) {
            texts << QString::fromStdString(code.text);
        }
    }
    return texts;
}

}  // namespace spile::support

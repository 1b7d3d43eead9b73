#include "platform/camera/luminance_plane.hpp"

#include "core/scan/reader.hpp"
#include "tests/support/symbol_pictures.hpp"

#include <QTest>

using namespace spile;
using Format = QVideoFrameFormat;

// Every format in memory that cameras and films give. A frame in memory is filled the way that
// format lies there, by the words of its own definition, and its luminance read back.
class LuminancePlaneTest : public QObject {
    Q_OBJECT

private slots:
    void readsBack_data();
    void readsBack();
    void knowsYuv422WithoutBuildingIt();
    void leavesOthersAlone();
};

namespace {

// The bytes of one grey pixel in the first plane: its level, or what must not be looked at.
constexpr int grey = -1;
constexpr int noise = 200;

}  // namespace

Q_DECLARE_METATYPE(QVideoFrameFormat::PixelFormat)

void LuminancePlaneTest::readsBack_data()
{
    QTest::addColumn<QVideoFrameFormat::PixelFormat>("format");
    QTest::addColumn<QList<int>>("pixel");
    const QList<int> planar{grey};
    QTest::newRow("NV12") << Format::Format_NV12 << planar;
    QTest::newRow("NV21") << Format::Format_NV21 << planar;
    QTest::newRow("YUV420P") << Format::Format_YUV420P << planar;
    QTest::newRow("YV12") << Format::Format_YV12 << planar;
    QTest::newRow("IMC1") << Format::Format_IMC1 << planar;
    QTest::newRow("IMC2") << Format::Format_IMC2 << planar;
    QTest::newRow("IMC3") << Format::Format_IMC3 << planar;
    QTest::newRow("IMC4") << Format::Format_IMC4 << planar;
    QTest::newRow("Y8") << Format::Format_Y8 << planar;
    QTest::newRow("YUYV") << Format::Format_YUYV << QList<int>{grey, noise};
    QTest::newRow("UYVY") << Format::Format_UYVY << QList<int>{noise, grey};
    QTest::newRow("Y16") << Format::Format_Y16 << QList<int>{noise, grey};
    QTest::newRow("P010") << Format::Format_P010 << QList<int>{noise, grey};
    QTest::newRow("P016") << Format::Format_P016 << QList<int>{noise, grey};
    const QList<int> greenSecond{noise, grey, noise, noise};
    QTest::newRow("BGRA") << Format::Format_BGRA8888 << greenSecond;
    QTest::newRow("BGRA premultiplied") << Format::Format_BGRA8888_Premultiplied << greenSecond;
    QTest::newRow("BGRX") << Format::Format_BGRX8888 << greenSecond;
    QTest::newRow("RGBA") << Format::Format_RGBA8888 << greenSecond;
    QTest::newRow("RGBX") << Format::Format_RGBX8888 << greenSecond;
    const QList<int> greenThird{noise, noise, grey, noise};
    QTest::newRow("ARGB") << Format::Format_ARGB8888 << greenThird;
    QTest::newRow("ARGB premultiplied") << Format::Format_ARGB8888_Premultiplied << greenThird;
    QTest::newRow("XRGB") << Format::Format_XRGB8888 << greenThird;
    QTest::newRow("ABGR") << Format::Format_ABGR8888 << greenThird;
    QTest::newRow("XBGR") << Format::Format_XBGR8888 << greenThird;
}

void LuminancePlaneTest::readsBack()
{
    QFETCH(const QVideoFrameFormat::PixelFormat, format);
    QFETCH(const QList<int>, pixel);
    picture::Image whole = support::plainPicture(158, 150);  // rows are padded to another width
    support::paste(whole, support::drawSymbol("S1ABCD7K2QFM"), 10, 10);

    QVideoFrame frame(Format(QSize(whole.width, whole.height), format));
    QVERIFY(frame.map(QVideoFrame::WriteOnly));
    for (int y = 0; y < whole.height; ++y) {
        uchar* out = frame.bits(0) + qsizetype{y} * frame.bytesPerLine(0);
        for (int x = 0; x < whole.width; ++x) {
            const int level = whole.pixels[static_cast<std::size_t>(y * whole.width + x)];
            for (const int part : pixel) {
                *out++ = static_cast<uchar>(part == grey ? level : part);
            }
        }
    }
    frame.unmap();

    const camera::MappedFrame mapped(frame);
    QVERIFY(mapped.luminance().has_value());
    const picture::LuminanceView view = *mapped.luminance();
    QCOMPARE(view.width, whole.width);
    QCOMPARE(view.height, whole.height);
    for (int y = 0; y < whole.height; ++y) {
        for (int x = 0; x < whole.width; ++x) {
            QCOMPARE(view.data[y * view.rowStride + x * view.pixelStride],
                     whole.pixels[static_cast<std::size_t>(y * whole.width + x)]);
        }
    }
    const auto code = scan::readFrame(view);
    QVERIFY(code.has_value());
    QCOMPARE(QString::fromStdString(code->text), "S1ABCD7K2QFM");
}

// Qt 6.4 makes its frames in memory too small.
void LuminancePlaneTest::knowsYuv422WithoutBuildingIt()
{
    const auto plane = camera::luminancePlane(Format::Format_YUV422P);
    QVERIFY(plane.has_value());
    QCOMPARE(plane->offset, 0);
    QCOMPARE(plane->pixelStride, 1);
}

void LuminancePlaneTest::leavesOthersAlone()
{
    for (const auto format : {Format::Format_Invalid, Format::Format_Jpeg,
                              Format::Format_SamplerExternalOES, Format::Format_SamplerRect}) {
        QVERIFY(!camera::luminancePlane(format).has_value());
    }
    const camera::MappedFrame mapped{QVideoFrame()};
    QVERIFY(!mapped.luminance().has_value());
}

QTEST_GUILESS_MAIN(LuminancePlaneTest)
#include "luminance_plane_test.moc"

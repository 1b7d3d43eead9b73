#include "qml/frames/frame_reader.hpp"

#include "core/scan/barrel_code.hpp"
#include "tests/support/symbol_pictures.hpp"

#include <QSemaphore>
#include <QSignalSpy>
#include <QTest>
#include <QThreadPool>
#include <atomic>

using namespace spile;
using frames::FrameReader;

namespace {

/// A decoder that tells what it was given when it is let: a frame's first pixel as text.
struct SlowDecoder {
    QSemaphore begun, mayEnd;
    std::atomic<int> atOnce{0}, most{0};

    FrameReader::Decode decode()
    {
        return [this](const picture::LuminanceView& view) -> std::optional<scan::Code> {
            most = std::max(most.load(), ++atOnce);
            begun.release();
            mayEnd.acquire();
            --atOnce;
            return scan::Code{std::to_string(view.data[0]), scan::Format::QrCode, {}};
        };
    }
};

}  // namespace

class FrameReaderTest : public QObject {
    Q_OBJECT

private slots:
    void readsALabel();
    void readsWithStrides();
    void saysWhenThereIsNothing();
    void keepsOnlyTheNewestFrameThatWaits();
    void copiesTheFrame();
    void mayGoWhileAFrameIsRead();
    void passesOverAViewWithoutPixels();
};

void FrameReaderTest::readsALabel()
{
    FrameReader reader;
    QSignalSpy read(&reader, &FrameReader::read);
    const picture::Image symbol = support::drawSymbol("S1ABCD7K2QFM");
    reader.offer(viewOf(symbol));
    QTRY_COMPARE(read.size(), 1);
    QCOMPARE(read.at(0).at(0).toString(), "S1ABCD7K2QFM");
    QCOMPARE(read.at(0).at(1).toString(), "qr");
}

void FrameReaderTest::readsWithStrides()
{
    const picture::Image symbol = support::drawSymbol("keg 12");
    const auto width = static_cast<std::size_t>(symbol.width);
    const std::size_t rowStride = 4 * width + 12;
    std::vector<std::uint8_t> pixels(rowStride * static_cast<std::size_t>(symbol.height), 0x55);
    for (std::size_t i = 0; i < symbol.pixels.size(); ++i) {
        pixels[i / width * rowStride + i % width * 4] = symbol.pixels[i];
    }
    FrameReader reader;
    QSignalSpy read(&reader, &FrameReader::read);
    reader.offer({pixels.data(), symbol.width, symbol.height, static_cast<int>(rowStride), 4});
    QTRY_COMPARE(read.size(), 1);
    QCOMPARE(read.at(0).at(0).toString(), "keg 12");
}

void FrameReaderTest::saysWhenThereIsNothing()
{
    FrameReader reader;
    QSignalSpy read(&reader, &FrameReader::read);
    QSignalSpy nothing(&reader, &FrameReader::nothing);
    const picture::Image blank = support::plainPicture(160, 120);
    reader.offer(viewOf(blank));
    QTRY_COMPARE(nothing.size(), 1);
    QCOMPARE(read.size(), 0);
}

void FrameReaderTest::keepsOnlyTheNewestFrameThatWaits()
{
    SlowDecoder slow;
    FrameReader reader(nullptr, slow.decode());
    QSignalSpy read(&reader, &FrameReader::read);
    const auto offer = [&](std::uint8_t level) {
        const picture::Image frame = support::plainPicture(8, 8, level);
        reader.offer(viewOf(frame));
    };
    offer(1);
    slow.begun.acquire();  // is being read; the caller was not held up
    for (std::uint8_t level = 2; level <= 9; ++level) {
        offer(level);
    }
    slow.mayEnd.release(100);
    QTRY_COMPARE(read.size(), 2);
    QCOMPARE(read.at(0).at(0).toString(), "1");
    QCOMPARE(read.at(1).at(0).toString(), "9");
    offer(10);  // and goes on after it has come to rest
    QTRY_COMPARE(read.size(), 3);
    QCOMPARE(slow.most.load(), 1);
}

void FrameReaderTest::copiesTheFrame()
{
    SlowDecoder slow;
    FrameReader reader(nullptr, slow.decode());
    QSignalSpy read(&reader, &FrameReader::read);
    picture::Image first = support::plainPicture(8, 8, 1);
    reader.offer(viewOf(first));
    slow.begun.acquire();
    picture::Image second = support::plainPicture(8, 8, 2);
    reader.offer(viewOf(second));
    second.pixels.assign(second.pixels.size(), 77);
    slow.mayEnd.release(2);
    QTRY_COMPARE(read.size(), 2);
    QCOMPARE(read.at(1).at(0).toString(), "2");
}

void FrameReaderTest::mayGoWhileAFrameIsRead()
{
    SlowDecoder slow;
    auto reader = std::make_unique<FrameReader>(nullptr, slow.decode());
    const picture::Image frame = support::plainPicture(8, 8, 1);
    reader->offer(viewOf(frame));
    slow.begun.acquire();
    reader->offer(viewOf(frame));
    reader.reset();  // returns although the decoder is held
    slow.mayEnd.release(2);
    QVERIFY(QThreadPool::globalInstance()->waitForDone(5000));
    QVERIFY(!slow.begun.tryAcquire());  // what waited was not read any more
}

void FrameReaderTest::passesOverAViewWithoutPixels()
{
    SlowDecoder slow;
    FrameReader reader(nullptr, slow.decode());
    reader.offer({});
    QVERIFY(QThreadPool::globalInstance()->waitForDone(5000));
    QVERIFY(!slow.begun.tryAcquire());
}

QTEST_GUILESS_MAIN(FrameReaderTest)
#include "frame_reader_test.moc"

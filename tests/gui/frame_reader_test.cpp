#include "qml/frames/frame_reader.hpp"

#include "tests/support/symbol_pictures.hpp"

#include <QSemaphore>
#include <QSignalSpy>
#include <QTest>
#include <QThread>
#include <QThreadPool>
#include <algorithm>
#include <atomic>

using namespace spile;
using frames::Frame;
using frames::FrameReader;

namespace {

/// Looks at a frame when it is let, and reads its first pixel as text.
struct SlowLooker {
    QSemaphore begun, mayEnd;
    std::atomic<int> atOnce{0}, most{0}, restarts{0};

    frames::Looker looker()
    {
        return {[this](const picture::LuminanceView& view) {
                    most = std::max(most.load(), ++atOnce);
                    begun.release();
                    mayEnd.acquire();
                    --atOnce;
                    return scan::Looked{{{std::to_string(view.data[0]), scan::Format::QrCode, {}}},
                                        scan::Advice::None};
                },
                [this] { ++restarts; }};
    }
};

/// A frame that tells what becomes of it.
class WatchedFrame final : public Frame {
public:
    struct Watch {
        std::atomic<int> alive{0}, mostAlive{0};
        std::atomic<QThread*> lookedIn{nullptr}, goneIn{nullptr};
    };
    WatchedFrame(Watch& watch, std::uint8_t level)
        : watch_(watch), picture_(support::plainPicture(8, 8, level))
    {
        watch_.mostAlive = std::max(watch_.mostAlive.load(), ++watch_.alive);
    }
    ~WatchedFrame() override
    {
        --watch_.alive;
        watch_.goneIn = QThread::currentThread();
    }
    Q_DISABLE_COPY_MOVE(WatchedFrame)
    picture::LuminanceView luminance() override
    {
        watch_.lookedIn = QThread::currentThread();
        return viewOf(picture_);
    }

private:
    Watch& watch_;
    picture::Image picture_;
};

/// A frame that lies in somebody's memory with strides, or in none.
class ViewedFrame final : public Frame {
public:
    explicit ViewedFrame(const picture::LuminanceView& view) : view_(view) {}
    picture::LuminanceView luminance() override { return view_; }

private:
    picture::LuminanceView view_;
};

std::unique_ptr<Frame> plainFrame(std::uint8_t level)
{
    return frames::frameOf(support::plainPicture(8, 8, level));
}

}  // namespace

class FrameReaderTest : public QObject {
    Q_OBJECT

private slots:
    void readsALabel();
    void readsWithStrides();
    void tellsAllCodesInTheirOrder();
    void saysWhatWouldHelp();
    void keepsOnlyTheNewestFrameThatWaits();
    void holdsTwoFramesAtMost();
    void looksAtNothingInItsOwnThread();
    void saysThatAFormIsNotRead();
    void beginsAnew();
    void mayGoWhileAFrameIsRead();
    void knowsItsWords();
};

void FrameReaderTest::readsALabel()
{
    FrameReader reader;
    QSignalSpy read(&reader, &FrameReader::read);
    reader.offer(frames::frameOf(support::drawSymbol("S1ABCD7K2QFM")));
    QTRY_COMPARE(read.size(), 1);
    QCOMPARE(read.at(0).at(0).toStringList(), QStringList{"S1ABCD7K2QFM"});
    QCOMPARE(read.at(0).at(1).toStringList(), QStringList{"qr"});
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
    reader.offer(std::make_unique<ViewedFrame>(picture::LuminanceView{
        pixels.data(), symbol.width, symbol.height, static_cast<int>(rowStride), 4}));
    QTRY_COMPARE(read.size(), 1);
    QCOMPARE(read.at(0).at(0).toStringList(), QStringList{"keg 12"});
}

void FrameReaderTest::tellsAllCodesInTheirOrder()
{
    FrameReader reader(nullptr, {[](const picture::LuminanceView&) {
                                     return scan::Looked{{{"near", scan::Format::QrCode, {}},
                                                          {"far", scan::Format::Code128, {}}},
                                                         scan::Advice::Light};
                                 },
                                 [] {}});
    QSignalSpy read(&reader, &FrameReader::read);
    QSignalSpy nothing(&reader, &FrameReader::nothing);
    reader.offer(plainFrame(1));
    QTRY_COMPARE(read.size(), 1);
    QCOMPARE(read.at(0).at(0).toStringList(), (QStringList{"near", "far"}));
    QCOMPARE(read.at(0).at(1).toStringList(), (QStringList{"qr", "code 128"}));
    QCOMPARE(nothing.size(), 0);
}

void FrameReaderTest::saysWhatWouldHelp()
{
    FrameReader reader(nullptr,
                       {[](const picture::LuminanceView& view) {
                            return scan::Looked{{}, static_cast<scan::Advice>(view.data[0])};
                        },
                        [] {}});
    QSignalSpy read(&reader, &FrameReader::read);
    QSignalSpy nothing(&reader, &FrameReader::nothing);
    for (std::uint8_t advice = 0; advice < 5; ++advice) {
        reader.offer(plainFrame(advice));
        QTRY_COMPARE(nothing.size(), advice + 1);
    }
    QStringList said;
    for (const auto& arguments : nothing) {
        said << arguments.at(0).toString();
    }
    QCOMPARE(said, (QStringList{"", "light", "closer", "still", "wipe"}));
    QCOMPARE(read.size(), 0);
}

void FrameReaderTest::keepsOnlyTheNewestFrameThatWaits()
{
    SlowLooker slow;
    FrameReader reader(nullptr, slow.looker());
    QSignalSpy read(&reader, &FrameReader::read);
    reader.offer(plainFrame(1));
    slow.begun.acquire();  // is being read; the caller was not held up
    for (std::uint8_t level = 2; level <= 9; ++level) {
        reader.offer(plainFrame(level));
    }
    slow.mayEnd.release(100);
    QTRY_COMPARE(read.size(), 2);
    QCOMPARE(read.at(0).at(0).toStringList(), QStringList{"1"});
    QCOMPARE(read.at(1).at(0).toStringList(), QStringList{"9"});
    reader.offer(plainFrame(10));  // and goes on after it has come to rest
    QTRY_COMPARE(read.size(), 3);
    QCOMPARE(slow.most.load(), 1);
}

void FrameReaderTest::holdsTwoFramesAtMost()
{
    SlowLooker slow;
    FrameReader reader(nullptr, slow.looker());
    QSignalSpy read(&reader, &FrameReader::read);
    WatchedFrame::Watch watch;
    reader.offer(std::make_unique<WatchedFrame>(watch, 1));
    slow.begun.acquire();
    for (int i = 0; i < 100; ++i) {
        reader.offer(std::make_unique<WatchedFrame>(watch, 2));
        QCOMPARE(watch.alive.load(), 2);
    }
    QCOMPARE(watch.mostAlive.load(), 3);  // with the one that just came
    slow.mayEnd.release(2);
    QTRY_COMPARE(read.size(), 2);
    QCOMPARE(watch.alive.load(), 0);
}

void FrameReaderTest::looksAtNothingInItsOwnThread()
{
    SlowLooker slow;
    slow.mayEnd.release(1);
    FrameReader reader(nullptr, slow.looker());
    QSignalSpy read(&reader, &FrameReader::read);
    WatchedFrame::Watch watch;
    reader.offer(std::make_unique<WatchedFrame>(watch, 1));
    QTRY_COMPARE(read.size(), 1);
    QVERIFY(watch.lookedIn.load() != nullptr);
    QVERIFY(watch.lookedIn.load() != QThread::currentThread());
    QCOMPARE(watch.goneIn.load(), watch.lookedIn.load());
}

void FrameReaderTest::saysThatAFormIsNotRead()
{
    SlowLooker slow;
    FrameReader reader(nullptr, slow.looker());
    QSignalSpy unreadable(&reader, &FrameReader::unreadable);
    reader.offer(nullptr);
    reader.offer(std::make_unique<ViewedFrame>(picture::LuminanceView()));
    QTRY_COMPARE(unreadable.size(), 1);
    QVERIFY(!slow.begun.tryAcquire());
}

void FrameReaderTest::beginsAnew()
{
    SlowLooker slow;
    FrameReader reader(nullptr, slow.looker());
    QSignalSpy read(&reader, &FrameReader::read);
    reader.offer(plainFrame(1));
    slow.begun.acquire();
    reader.offer(plainFrame(2));
    reader.restart();
    slow.mayEnd.release(2);
    QVERIFY(QThreadPool::globalInstance()->waitForDone(5000));
    reader.offer(plainFrame(3));
    QTRY_COMPARE(read.size(), 1);
    QCOMPARE(read.at(0).at(0).toStringList(), QStringList{"3"});
    QCOMPARE(slow.restarts.load(), 1);
    slow.mayEnd.release(1);
    reader.offer(plainFrame(4));
    QTRY_COMPARE(read.size(), 2);
    QCOMPARE(slow.restarts.load(), 1);  // not for each
}

void FrameReaderTest::mayGoWhileAFrameIsRead()
{
    SlowLooker slow;
    auto reader = std::make_unique<FrameReader>(nullptr, slow.looker());
    reader->offer(plainFrame(1));
    slow.begun.acquire();
    reader->offer(plainFrame(1));
    reader.reset();  // returns although the looker is held
    slow.mayEnd.release(2);
    QVERIFY(QThreadPool::globalInstance()->waitForDone(5000));
    QVERIFY(!slow.begun.tryAcquire());  // what waited was not read any more
}

void FrameReaderTest::knowsItsWords()
{
    for (const auto format :
         {scan::Format::QrCode, scan::Format::DataMatrix, scan::Format::Code128}) {
        QCOMPARE(frames::formatNamed(frames::nameOf(format)), format);
    }
    for (const auto advice : {scan::Advice::None, scan::Advice::Light, scan::Advice::Closer,
                              scan::Advice::Still, scan::Advice::Wipe}) {
        QCOMPARE(frames::adviceNamed(frames::nameOf(advice)), advice);
    }
}

QTEST_GUILESS_MAIN(FrameReaderTest)
#include "frame_reader_test.moc"
